import pytest
from support.builders import plant, yard_of

from yardplan.checks.run import findings
from yardplan.checks.shapes import area_of, coordinates, has_area, line_of, ring_of
from yardplan.checks.survey import survey_of
from yardplan.yard.ground import Building, Paving
from yardplan.yard.planting import Bed, PlantKey

BOW = ((0.0, 0.0), (4.0, 4.0), (4.0, 0.0), (0.0, 4.0))


@pytest.mark.parametrize(
    ("outline", "area"),
    [
        (((0, 0), (4, 0), (4, 3), (0, 3)), 12.0), (BOW, 8.0), (((0, 0), (4, 0), (8, 0)), 0.0),
        (((0, 0), (4, 0)), 0.0), ((), 0.0), (((0, 0), (4, 0), (4, 3), (0, 3), (0, 3)), 12.0),
    ],
)
def test_areas(outline, area: float):
    assert area_of(outline).area == pytest.approx(area)
    assert has_area(outline) == (area > 0)


def test_lines():
    assert line_of(((1.0, 2.0),)).length == 0
    assert coordinates(line_of(((1.0, 2.0), (3.0, 2.0)))) == ((1.0, 2.0), (3.0, 2.0))
    assert ring_of(((0.0, 0.0), (4.0, 0.0), (4.0, 3.0))).length == 12.0


def test_a_yard_of_crossed_outlines_is_checked_all_the_same():
    yard = yard_of(
        plant("A1", "apple:Liberty", (2, 3)), buildings=(Building(id="H1", footprint=BOW),),
        pavings=(Paving(id="P1", kind="pool", outline=BOW),),
        beds=(Bed(id="B1", outline=BOW, plant=PlantKey("strawberry", "Honeoye")),),
    )
    assert findings(survey_of(yard))
