"""SVG sheets read by a library of other hands, which resolves units, view boxes and transformations."""

from __future__ import annotations

import io

import pytest
from svgelements import SVG, Color, Shape, Text

from yardplan.files.reading import read_yard
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.sheets.paper import PAPERS, parse_scale
from yardplan.sheets.planting_plan import PlanRequest, plan_pages
from yardplan.sheets.svg import svg_text
from yardplan.shipped import folder
from yardplan.yard.ground import Barrier
from yardplan.yard.yard import Yard


def parsed(text: str) -> SVG:
    """The drawing in millimetres: one user unit to the millimetre."""
    return SVG.parse(io.StringIO(text), ppi=25.4)


def ends(drawing: SVG) -> list[tuple[float, float]]:
    """Width and height of every straight, inked line, millimetres."""
    shapes = [element for element in drawing.elements() if isinstance(element, Shape)]
    boxes = [box for shape in shapes if shape.stroke.value is not None and (box := shape.bbox()) is not None]
    return [(right - left, low - high) for left, high, right, low in boxes]


def test_ten_metres_at_one_to_fifty_are_two_hundred_millimetres(qapp) -> None:
    yard = Yard(
        lot=((0, 0), (10, 0), (10, 8), (0, 8)),
        barriers=(Barrier(id="W1", kind="wall", line=((0.0, 1.0), (10.0, 1.0)), thickness=0.1),),
    )
    (page,) = plan_pages(PlanRequest(
        yard=yard, stand=stand_of(yard, catalogue()), units="metric", scale=parse_scale("1:50"),
        paper=PAPERS["A3"],
    ))
    drawing = parsed(svg_text(page))
    assert (drawing.width, drawing.height) == (pytest.approx(420), pytest.approx(297))
    # Lines are written to a hundredth of a millimetre. The bar to be measured is 100 mm, so it cannot stand
    # in for the wall.
    level = [wide for wide, high in ends(drawing) if high < 0.02]
    assert any(abs(wide - 200.0) < 0.011 for wide in level)
    assert any(abs(wide - 100.0) < 0.011 for wide in level)


@pytest.mark.parametrize(("sample", "paper"), [("first_orchard", "A3"), ("walled_town_garden", "Letter")])
def test_everything_of_a_real_plan_is_understood(qapp, sample: str, paper: str) -> None:
    yard = read_yard(folder("sample_yards") / f"{sample}.yard")
    (page, *_) = plan_pages(PlanRequest(
        yard=yard, stand=stand_of(yard, catalogue()), units=yard.site.units, paper=PAPERS[paper],
    ))
    drawing = parsed(svg_text(page, "A plan"))
    shapes = [element for element in drawing.elements() if isinstance(element, Shape)]
    words = [element for element in drawing.elements() if isinstance(element, Text) and element.text.strip()]
    assert len(shapes) > 200
    assert {thing.id for thing in yard.plantings} <= {word.text.strip() for word in words}
    for shape in shapes:
        for paint in (shape.stroke, shape.fill):
            assert isinstance(paint, Color)
