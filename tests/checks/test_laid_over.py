"""Beds over buildings, water, paving and each other, and rows through planted beds."""

from __future__ import annotations

import pytest
from attrs import evolve
from support.builders import plant, yard_of

from yardplan.checks.clear import laid_over
from yardplan.checks.finding import Weight
from yardplan.checks.survey import moved_survey, survey_of
from yardplan.checks.wording import names_of, say
from yardplan.units import INCH
from yardplan.yard import edits
from yardplan.yard.change import difference
from yardplan.yard.ground import Building, Outline, Paving
from yardplan.yard.planting import Bed, PlantKey, Row
from yardplan.yard.yard import Yard


def box(x: float, y: float, wide: float, deep: float) -> Outline:
    return ((x, y), (x + wide, y), (x + wide, y + deep), (x, y + deep))


def found(yard: Yard) -> list[tuple[str, Weight, tuple[str, ...]]]:
    return [(f.kind, f.weight, f.things) for f in laid_over.run(survey_of(yard))]


BED = Bed(id="B1", outline=box(5, 5, 6, 2))
STRAWBERRIES = evolve(BED, plant=PlantKey("strawberry", "Honeoye"))


def laid(yard: Yard, gap: float) -> Yard:
    """The bed so far off what lies at x = 11; below 0 it lies over it."""
    return edits.move(yard, {"B1"}, (-gap, 0.0))


THERE = box(11, 4, 4, 4)


def paved(kind: str) -> dict[str, tuple[Paving]]:
    return {"pavings": (Paving(id="X", kind=kind, outline=THERE),)}  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("things", "kind", "weight"),
    [
        ({"buildings": (Building(id="X", footprint=THERE),)}, "bed_on_building", Weight.CONFLICT),
        (paved("pool"), "bed_on_water", Weight.CONFLICT), (paved("pond"), "bed_on_water", Weight.CONFLICT),
        (paved("drive"), "bed_on_paving", Weight.CAUTION), (paved("path"), "bed_on_paving", Weight.CAUTION),
        ({"beds": (Bed(id="X", outline=THERE), BED)}, "bed_on_bed", Weight.CAUTION),
    ],
)
def test_a_bed_over_what_takes_its_ground_but_not_one_beside_it(
    things: dict[str, tuple[object, ...]], kind: str, weight: Weight
):
    yard = yard_of(**{"beds": (BED,), **things})
    for gap in (1.0, 0.0, -0.08):
        assert found(laid(yard, gap)) == []
    assert found(laid(yard, -0.5)) == [(kind, weight, ("B1", "X"))]


def test_a_bed_wholly_within_another_and_one_around_a_pond():
    small = Bed(id="B2", outline=box(6, 5.5, 1, 1))
    assert found(yard_of(beds=(small, BED))) == [("bed_on_bed", Weight.CAUTION, ("B1", "B2"))]
    pond = Paving(id="P1", kind="pond", outline=box(6, 5.5, 1, 1))
    assert [one[0] for one in found(yard_of(beds=(BED,), pavings=(pond,)))] == ["bed_on_water"]


def test_a_raised_bed_with_soil_of_its_own_may_stand_on_a_terrace_but_not_on_a_pool():
    terrace = Paving(id="P1", kind="terrace", outline=box(0, 0, 20, 20))
    for raised, kinds in ((8 * INCH, ["bed_on_paving"]), (12 * INCH, [])):
        bed = evolve(BED, raised=raised)
        assert [one[0] for one in found(yard_of(beds=(bed,), pavings=(terrace,)))] == kinds
        pool = evolve(terrace, kind="pool")
        assert [one[0] for one in found(yard_of(beds=(bed,), pavings=(pool,)))] == ["bed_on_water"]


def test_a_row_through_a_bed_of_another_kind_and_none_in_its_own_or_a_bare_one():
    row = Row(id="R1", plant=PlantKey("red raspberry", "Latham"), line=((2, 6), (14, 6)), count=9, spacing=1)
    through = [("row_in_bed", Weight.CONFLICT, ("R1", "B1"))]
    assert found(yard_of(rows=(row,), beds=(STRAWBERRIES,))) == through
    along = evolve(row, line=((2, 7), (14, 7)))
    own = evolve(BED, plant=PlantKey("red raspberry", "Nova"))
    for rows, bed in (((along,), STRAWBERRIES), ((row,), BED), ((row,), own)):
        assert found(yard_of(rows=rows, beds=(bed,))) == []


def test_it_says_how_wide_and_what_to_do():
    yard = yard_of(
        beds=(BED,), buildings=(Building(id="H1", name="Barn", footprint=box(9.5, 0, 6, 20)),),
        pavings=(Paving(id="P1", name="Court", kind="terrace", outline=box(0, 0, 6.2, 20)),),
    )
    survey = survey_of(yard)
    names = names_of(survey)
    barn, court = (say(finding, names) for finding in laid_over.run(survey))
    assert barn.message == "Bed (B1) lies over Barn (H1), up to 1.5 m wide: nothing grows there."
    assert barn.clears == "Move the bed off Barn (H1), or draw it smaller."
    assert "up to 1.2 m wide" in court.message
    assert "build the bed up by 0.3 m or more" in court.clears


def test_while_a_plant_moves_the_very_findings_stay_and_only_what_moves_is_measured_anew():
    yard = yard_of(
        plant("A1", "apple:Liberty", (25, 15)), beds=(BED, Bed(id="B2", outline=box(5, 15, 3, 3))),
        buildings=tuple(
            Building(id=key, footprint=box(*place))
            for key, place in (("H1", (9.5, 4, 4, 4)), ("H2", (4, 16, 3, 3)))
        ),
    )
    survey = survey_of(yard)
    before = laid_over.run(survey)
    after = edits.move(yard, {"A1"}, (1, 1))
    assert laid_over.run(moved_survey(survey, after, difference(yard, after))) is before
    shifted = edits.move(yard, {"H1"}, (0.5, 0))
    moved = laid_over.run(moved_survey(survey, shifted, difference(yard, shifted)))
    assert [f.figures["wide"].value for f in moved] == pytest.approx([1.0, 2.0])
    assert moved[1] is before[1]
