"""What reaches beyond the lot line: told for what is one's own, silent for next door's and for the street."""

from __future__ import annotations

import pytest
from attrs import evolve
from support.builders import plant, yard_of

from yardplan.checks import clearance
from yardplan.checks.clear import beyond
from yardplan.checks.finding import Weight
from yardplan.checks.run import CHECKS
from yardplan.checks.survey import moved_survey, survey_of
from yardplan.checks.wording import names_of, say
from yardplan.yard import edits
from yardplan.yard.change import difference
from yardplan.yard.ground import Barrier, Building, Outline, Paving
from yardplan.yard.planting import Bed, PlantKey, Row
from yardplan.yard.yard import Yard


def box(x: float, y: float, wide: float, deep: float) -> Outline:
    return ((x, y), (x + wide, y), (x + wide, y + deep), (x, y + deep))


def found(yard: Yard) -> list[tuple[str, str, Weight, float]]:
    """Thing, kind, weight and how far out, to the centimetre."""
    return [
        (f.things[0], f.kind, f.weight, round(float(f.figures["short"].value), 2))
        for f in beyond.run(survey_of(yard))
    ]


OUT = box(28.0, 5.0, 5.0, 3.0)  # 3 m over the line at x = 30


def test_a_bed_or_row_partly_or_wholly_outside_is_a_conflict():
    row = Row(id="R1", plant=PlantKey("hops", "Cascade"), line=((20, 15), (31.5, 15)), count=9, spacing=1)
    yard = yard_of(beds=(Bed(id="B1", outline=OUT), Bed(id="B2", outline=box(35, 5, 2, 2))), rows=(row,))
    assert found(yard) == [
        ("R1", "row_outside", Weight.CONFLICT, 1.5), ("B1", "row_outside", Weight.CONFLICT, 3.0),
        ("B2", "row_outside", Weight.CONFLICT, 7.0),
    ]


@pytest.mark.parametrize(
    "things",
    [
        {"buildings": (Building(id="X", footprint=OUT),)},
        {"barriers": (Barrier(id="X", line=((20.0, 5.0), (33.0, 5.0))),)},
        *({"pavings": (Paving(id="X", kind=kind, outline=OUT),)}  # type: ignore[arg-type]
          for kind in ("path", "drive", "terrace", "pool", "pond")),
    ],
)
def test_what_stands_there_is_a_caution_and_next_doors_is_none(things: dict[str, tuple[object]]):
    yard = yard_of(**things)
    assert found(yard) == [("X", "drawn_beyond", Weight.CAUTION, 3.0)]
    next_door = {name: tuple(evolve(one, beyond_lot=True) for one in all_) for name, all_ in things.items()}
    assert found(yard_of(**next_door)) == []


def test_a_line_that_merely_touches_is_inside():
    """A fence on the line, a tape's breadth over it; a house whose wall is the line."""
    yard = yard_of(
        barriers=(Barrier(id="F1", line=((0, 0), (30.05, 0), (30.05, 20))),),
        buildings=(Building(id="H1", footprint=box(24, 5, 6, 6)),),
        beds=(Bed(id="B1", outline=box(0, 0, 9, 1)),),
    )
    assert found(yard) == []
    off = evolve(yard, barriers=(Barrier(id="F1", line=((0, -0.2), (9, -0.2))),))
    assert [one[0] for one in found(off)] == ["F1"]


def test_a_fence_across_a_notch_of_the_lot_is_out_though_both_its_ends_are_in():
    lot = ((0, 0), (30, 0), (30, 20), (20, 20), (20, 10), (10, 10), (10, 20), (0, 20))
    fence = Barrier(id="F1", line=((5.0, 15.0), (25.0, 15.0)))
    assert found(evolve(yard_of(barriers=(fence,)), lot=lot)) == [("F1", "drawn_beyond", Weight.CAUTION, 5.0)]


def test_a_drive_leads_over_the_verge_to_the_street_and_the_street_lies_outside():
    street = Paving(id="S", kind="street", outline=box(-10, -8, 50, 6))
    drive = Paving(id="D", kind="drive", outline=box(5, -2, 3, 9))
    astray = Paving(id="P", kind="path", outline=box(-4, 10, 8, 1))
    assert found(yard_of(pavings=(street, drive, astray))) == [("P", "drawn_beyond", Weight.CAUTION, 4.0)]
    assert [one[0] for one in found(yard_of(pavings=(drive,)))] == ["D"]


def test_without_a_lot_nothing_lies_beyond_it():
    assert found(evolve(yard_of(beds=(Bed(id="B1", outline=OUT),)), lot=())) == []


def test_it_tells_to_ask_a_surveyor_and_counts_as_a_matter_of_law():
    survey = survey_of(yard_of(buildings=(Building(id="H1", name="Shed", footprint=OUT),)))
    said = say(beyond.run(survey)[0], names_of(survey))
    assert said.message == "Shed (H1) is drawn 3.0 m beyond the lot line."
    assert "licensed surveyor" in said.clears
    assert said.stake == "law"
    assert clearance.CHECK in CHECKS


def test_while_something_else_moves_the_very_findings_stay_and_one_that_moves_is_measured_anew():
    yard = yard_of(
        plant("A1", "apple:Liberty", (5, 5)),
        beds=(Bed(id="B1", outline=OUT),), buildings=(Building(id="H1", footprint=box(28, 12, 4, 4)),),
    )
    survey = survey_of(yard)
    before = beyond.run(survey)
    after = edits.move(yard, {"A1"}, (1, 1))
    same = beyond.run(moved_survey(survey, after, difference(yard, after)))
    assert same is before
    shifted = edits.move(yard, {"B1"}, (1, 0))
    moved = beyond.run(moved_survey(survey, shifted, difference(yard, shifted)))
    assert [f.figures["short"].value for f in moved] == [4.0, 2.0]
    assert moved[1] is before[1]
