import math

import pytest
from attrs import evolve
from hypothesis import given, settings
from hypothesis import strategies as st
from support.builders import plant, yard_of

from yardplan.checks.finding import Finding, Weight
from yardplan.checks.ordering import natural
from yardplan.checks.run import CHECKS, counts, findings, in_order
from yardplan.checks.survey import moved_survey, survey_of
from yardplan.yard import edits
from yardplan.yard.change import Change, difference
from yardplan.yard.ground import Barrier, Building, Gate, Paving, Service, StandingTree
from yardplan.yard.planting import Bed, Container, PlantKey, Row
from yardplan.yard.site import Site, Soil
from yardplan.yard.yard import COLLECTIONS, Yard

FULL = yard_of(
    plant("A1", "apple:Liberty", (8, 9), rootstock="M26"),
    plant("A2", "apple:Enterprise", (10.3, 9.7), rootstock="M26"),
    plant("A10", "apple:Egremont Russet", (1.1, 5), form="espalier, 2-3 tiers, M26", facing=90.0),
    plant("P1", "european pear:Bartlett", (20, 15)),
    plant("C1", "red currant:Red Lake", (21, 14)),
    plant("F1", "fig:Brown Turkey", (28, 19)),
    buildings=(
        Building(id="H1", footprint=((2.0, 12.0), (12.0, 12.0), (12.0, 19.0), (2.0, 19.0)), overhang=0.5),
    ),
    barriers=(Barrier(id="W1", line=((14.0, 2.0), (14.0, 9.0)), height=2.0),),
    pavings=(Paving(id="D1", kind="path", outline=((15.0, 1.0), (16.0, 1.0), (16.0, 12.0), (15.0, 12.0))),),
    services=(Service(id="S1", kind="gas", points=((19.0, 0.0), (19.0, 20.0))),),
    standing_trees=(
        StandingTree(id="T1", kind="oak, northern red", place=(33.0, 10.0), height=18, spread=14),
    ),
    rows=(
        Row(
            id="R1", plant=PlantKey("red raspberry", "Latham"), line=((3.0, 2.0), (9.0, 2.0)), count=10,
            spacing=0.6,
        ),
    ),
    beds=(
        Bed(
            id="B1", outline=((22.0, 4.0), (25.0, 4.0), (25.0, 6.0), (22.0, 6.0)),
            plant=PlantKey("strawberry", "Honeoye"),
        ),
    ),
)


def numbers(found: list[Finding]) -> list[tuple[object, ...]]:
    """Findings as keys, weights and figures to compare within rounding, without marks."""
    return [
        (
            *f.key, f.weight,
            {
                name: figure.value if isinstance(figure.value, str) else pytest.approx(figure.value, abs=1e-4)
                for name, figure in f.figures.items()
            },
        )
        for f in found
    ]


def plain(found: list[Finding]) -> list[tuple[object, ...]]:
    """Findings as keys, weights and figures."""
    return [(*f.key, f.weight, {name: figure.value for name, figure in f.figures.items()}) for f in found]


def near(yard: Yard) -> list[tuple[object, ...]]:
    return plain(findings(survey_of(yard), near_only=True))


#: The same yard with facts that bring every other check in: soil, slope, gate, pot, walnut, wild brambles.
RICH = evolve(
    FULL,
    site=Site(
        latitude=42.0, zone="5b", region="US-MA", slope=0.06, slope_aspect=95.0, first_frost="09-20",
        last_frost="05-10", soil=Soil(ph=6.6, texture="loam", drainage="fair"),
        monthly_means=(-5.0, -4.0, 1.0, 7.5, 13.5, 18.5, 21.0, 20.0, 16.0, 9.5, 4.0, -2.0),
    ),
    plantings=(
        *FULL.plantings, plant("B1", "northern highbush blueberry:Patriot", (25, 9)),
        plant("S1x", "strawberry:Honeoye", (24, 12), container="K1"),
    ),
    containers=(Container(id="K1", place=(24, 12), volume=3.0),),
    barriers=(Barrier(id="W1", line=((13.0, 2.0), (13.0, 11.0)), height=2.0),),
    gates=(Gate(id="G1", place=(0.0, 5.0), width=0.5),),
    standing_trees=(
        *FULL.standing_trees,
        StandingTree(id="T2", kind="black walnut", place=(-6.0, 3.0), height=16, spread=12),
        StandingTree(id="T3", kind="wild raspberry", place=(40.0, 3.0), height=1.5, spread=2),
    ),
)


def everything(yard: Yard) -> list[Finding]:
    return findings(survey_of(yard))


def shuffled(yard: Yard, random) -> Yard:
    """The same yard with every list of things in another order."""
    for name in COLLECTIONS:
        things = list(getattr(yard, name))
        random.shuffle(things)
        yard = evolve(yard, **{name: tuple(things)})
    return yard


def turned_and_moved(yard: Yard, turn: float, dx: float, dy: float) -> Yard:
    """The yard turned about a point and moved, lot and north with it."""
    ids = yard.ids()
    moved = edits.move(edits.rotate(yard, ids, (5.0, 5.0), turn), ids, (dx, dy))
    lot = tuple(
        (x + dx, y + dy) for x, y in (edits.turned(corner, (5.0, 5.0), turn) for corner in yard.lot)
    )
    site = evolve(yard.site, north=(yard.site.north - turn) % 360.0)
    return evolve(moved, lot=lot, site=site)


def test_the_rich_yard_wakes_nearly_every_check():
    woken = {finding.check for finding in everything(RICH)}
    asleep = {"light", "bloom", "rotation", "chill", "known", "frost", "ripening"}
    assert woken | asleep >= {check.name for check in CHECKS}


@settings(max_examples=8, deadline=None)
@given(st.randoms(use_true_random=False))
def test_the_order_of_things_does_not_change_any_finding(random):
    assert plain(everything(shuffled(RICH, random))) == numbers(everything(RICH))


@settings(max_examples=8, deadline=None)
@given(st.floats(-179, 179), st.floats(-50, 50), st.floats(-50, 50))
def test_moving_and_turning_the_yard_does_not_change_any_finding(turn, dx, dy):
    assert plain(everything(turned_and_moved(RICH, turn, dx, dy))) == numbers(everything(RICH))


def test_the_yard_of_these_tests_has_many_kinds_of_findings():
    assert len({f.key[:2] for f in findings(survey_of(FULL), near_only=True)}) >= 7


@settings(max_examples=15, deadline=None)
@given(st.randoms(use_true_random=False))
def test_the_order_of_things_does_not_change_findings(random):
    assert near(shuffled(FULL, random)) == near(FULL)


@settings(max_examples=20, deadline=None)
@given(st.floats(-179, 179), st.floats(-50, 50), st.floats(-50, 50))
def test_moving_and_turning_the_yard_with_its_north_does_not_change_findings(turn, dx, dy):
    assert near(turned_and_moved(FULL, turn, dx, dy)) == numbers(findings(survey_of(FULL), near_only=True))


@settings(max_examples=25, deadline=None)
@given(
    st.lists(
        st.tuples(
            st.sampled_from(["A1", "A2", "A10", "P1", "R1", "B1", "H1", "T1", "W1", "S1"]),
            st.floats(-6, 6), st.floats(-6, 6),
        ),
        min_size=1, max_size=4,
    )
)
def test_a_drag_finds_what_a_fresh_survey_finds(moves):
    survey, yard = survey_of(FULL), FULL
    for thing, dx, dy in moves:
        after = edits.move(yard, {thing}, (dx, dy))
        survey = moved_survey(survey, after, difference(yard, after))
        yard = after
        assert plain(findings(survey, near_only=True)) == numbers(findings(survey_of(yard), near_only=True))


def test_findings_are_sorted_by_weight_then_check_then_keys():
    found = findings(survey_of(FULL), near_only=True)
    weights = [list(Weight).index(f.weight) for f in found]
    assert weights == sorted(weights)
    assert found == in_order(reversed(found))
    assert natural("A2") < natural("A10") < natural("B1")


def test_checks_that_do_not_look_at_places_are_taken_over_while_things_move():
    survey = survey_of(FULL)
    shown = findings(survey)
    after = edits.move(FULL, {"F1"}, (-3.0, -3.0))
    change = difference(FULL, after)
    again = findings(moved_survey(survey, after, change), near_only=True, change=change, previous=shown)
    cold = [f for f in shown if f.check == "hardiness"]
    assert cold
    assert [f for f in again if f.check == "hardiness"] == cold


def test_findings_of_removed_things_are_dropped():
    survey = survey_of(FULL)
    shown = findings(survey)
    after = edits.remove(FULL, {"F1"})
    change = difference(FULL, after)
    again = findings(moved_survey(survey, after, change), near_only=True, change=change, previous=shown)
    assert not [f for f in again if "F1" in f.things]


def test_counts():
    found = findings(survey_of(FULL), near_only=True)
    assert sum(counts(found).values()) == len(found)
    assert counts([])[Weight.CONFLICT] == 0


@pytest.mark.parametrize("site", [Site(latitude=-35.0, zone="9b"), Site(latitude=60.0)])
def test_an_empty_yard_has_no_findings(site: Site):
    assert findings(survey_of(Yard(site=site))) == []
    assert findings(survey_of(yard_of(site=site))) == []


def test_no_figure_is_ever_not_a_number():
    heap = [plant(f"A{i}", "apple:Liberty", (5.0, 5.0)) for i in range(1, 4)]
    for finding in findings(survey_of(yard_of(*heap)), near_only=True):
        for figure in finding.figures.values():
            assert isinstance(figure.value, str) or math.isfinite(figure.value)


def test_a_change_of_nothing_keeps_findings():
    survey = survey_of(FULL)
    shown = findings(survey, near_only=True)
    assert findings(moved_survey(survey, FULL, Change()), near_only=True) == shown
