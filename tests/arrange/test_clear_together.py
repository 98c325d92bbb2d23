"""Clear ground of rows, beds, pots and several plants together, against the real checks on random yards."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from attrs import evolve
from hypothesis import given, settings
from hypothesis import strategies as st
from support import grounds
from support.builders import plant, yard_of
from support.grounds import BAND, places

from yardplan.arrange.clear_ground import ClearGround, clear_ground
from yardplan.arrange.clear_together import clear_ground_together, steps_together
from yardplan.arrange.moving import moving_of
from yardplan.arrange.swept import holding, meeting_area, meeting_line
from yardplan.checks.survey import survey_of
from yardplan.yard import edits
from yardplan.yard.ground import Building, Paving, Point
from yardplan.yard.planting import Bed, Container, PlantKey, Row
from yardplan.yard.site import Site, Soil
from yardplan.yard.yard import Yard

#: What goes with rows, beds and plants in them wherever they lie, and with other plants by where they stand.
SOIL = frozenset({"soil", "drainage"})


def chosen_from(rng: np.random.Generator, yard: Yard) -> set[str]:
    """Some plants, a row, a bed, or a mixture."""
    kinds = [*(p.id for p in yard.plantings), *(row.id for row in yard.rows), *(bed.id for bed in yard.beds)]
    return set(rng.choice(kinds, size=min(len(kinds), int(rng.integers(1, 4))), replace=False).tolist())


def with_acid_lover(rng: np.random.Generator, yard: Yard) -> Yard:
    """A blueberry in one of the beds: it lives by the bed's soil."""
    if not yard.beds or rng.random() < 0.5:
        return yard
    x, y = np.mean(yard.beds[0].outline, axis=0)
    return edits.add(yard, plant("N1", "northern highbush blueberry:Patriot", (float(x), float(y))))


def there_without(yard: Yard, ids: frozenset[str]) -> grounds.Raised:
    """Conflicts that the things are not to blame for: there without them, and with them where they stand."""
    return grounds.conflicts(edits.remove(yard, ids)) & grounds.conflicts(yard)


def shifted(yard: Yard, ids: frozenset[str], anchor: Point, place: Point) -> Yard:
    return edits.move(yard, ids, (place[0] - anchor[0], place[1] - anchor[1]))


def beyond_the_band(ground: ClearGround, place: Point) -> bool:
    """True off the edge of clear ground; where there is none, deep in what closes the place."""
    here = shapely.Point(place)
    if not ground.open.is_empty:
        return bool(ground.open.boundary.distance(here) > BAND)
    return any(one.geometry.boundary.distance(here) > BAND for one in ground.why(place))


def blamed(found: grounds.Raised, kept: grounds.Raised, ids: frozenset[str]) -> grounds.Raised:
    """What a place is to blame for: not what was there without the things, not what they do to each other."""
    among = {one for one in found if len(one[1]) > 1 and ids.issuperset(one[1])}
    return found - kept - among


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 10**6))
def test_deeper_inside_no_drop_raises_a_conflict_and_further_outside_every_drop_does(seed: int) -> None:
    rng = np.random.default_rng(seed)
    yard = with_acid_lover(rng, grounds.random_yard(rng))
    ids = edits.together(yard, chosen_from(rng, yard))
    survey = survey_of(yard)
    ground = clear_ground_together(survey, ids, light="live")
    assert ground is not None
    anchor = ground.anchor or yard.find(ground.plant).place
    kept = there_without(yard, ids)
    lines = {thing.id for thing in (*yard.rows, *yard.beds)} | {
        one.id for one in yard.plantings for bed in yard.beds
        if bed.id in ids and shapely.Polygon(bed.outline).covers(shapely.Point(one.place))
    }
    anywhere = {check for check, _ in ground.anywhere}
    for place in places(rng, yard, ground, 5):
        if not beyond_the_band(ground, place):
            continue
        found = grounds.conflicts(shifted(yard, ids, anchor, place))
        raised = {
            one for one in blamed(found, kept, ids)
            if one[0] not in anywhere or (one[0] in SOIL and lines.isdisjoint(one[1]))
        }
        why = [(one.kind, one.things) for one in ground.why(place)]
        assert ground.holds(place) == (not raised), (ids, place, raised, why)


def test_a_row_is_closed_to_where_it_would_run_into_a_house_or_a_crown() -> None:
    row = Row(id="R1", plant=PlantKey("red raspberry", "Latham"), line=((3, 3), (9, 3)), count=9, spacing=0.6)
    house = Building(id="H1", footprint=((16, 6), (20, 6), (20, 10), (16, 10)))
    yard = evolve(yard_of(plant("A1", "apple:Liberty", (6, 14)), buildings=(house,)), rows=(row,))
    ground = clear_ground_together(survey_of(yard), {"R1"}, light=None)
    assert ground is not None
    assert ground.anchor == (6.0, 3.0)
    assert {one.kind for one in ground.why((14, 8))} == {"row_wall"}
    assert {one.kind for one in ground.why((6, 13.5))} == {"row_beside"}
    assert {one.kind for one in ground.why((2.5, 3))} == {"row_outside"}
    assert ground.holds((12.8, 8))
    near = ground.nearest((14, 8))
    assert near is not None
    assert near[0] == pytest.approx(13.0 - BAND, abs=0.02)


def test_a_bed_is_closed_to_houses_ponds_and_rows_of_another_kind_and_a_row_to_planted_beds() -> None:
    """Just as far as the check finds it; paving and bare beds close nothing."""
    raspberries = PlantKey("red raspberry", "Latham")
    row = Row(id="R1", plant=raspberries, line=((20, 4), (26, 4)), count=9, spacing=0.6)
    planted = PlantKey("strawberry", "Honeoye")
    bed = Bed(id="B1", outline=((2, 2), (6, 2), (6, 4), (2, 4)), plant=planted)
    bare = Bed(id="B2", outline=((20, 7), (24, 7), (24, 9), (20, 9)))
    house = Building(id="H1", footprint=((10, 2), (16, 2), (16, 8), (10, 8)))
    yard = evolve(
        yard_of(beds=(bed, bare), buildings=(house,)), rows=(row,), pavings=(
            Paving(id="P1", kind="pond", outline=((2, 12), (8, 12), (8, 18), (2, 18))),
            Paving(id="P2", kind="terrace", outline=((12, 12), (20, 12), (20, 18), (12, 18))),
        ),
    )
    survey = survey_of(yard)
    ground = clear_ground_together(survey, {"B1"}, light=None)
    assert ground.anchor == (4.0, 3.0)
    told = {place: [(one.kind, one.things) for one in ground.why(place)] for place in (
        (13, 5), (5, 15), (23, 4), (16, 15), (22, 8),
    )}
    assert told == {
        (13, 5): [("bed_over", ("H1",))], (5, 15): [("bed_over", ("P1",))],
        (23, 4): [("bed_under_row", ("R1",))], (16, 15): [], (22, 8): [],
    }
    assert ground.holds((8.05, 5))  # up to the hand's breadth that counts as touching
    assert not ground.holds((8.15, 5))
    rows = clear_ground_together(survey, {"R1"}, light=None)
    assert [(one.kind, one.things) for one in rows.why((6, 3))] == [("row_in_bed", ("B1",))]
    assert rows.holds((22, 8))


def test_a_row_with_more_plants_than_it_takes_is_so_wherever_it_runs() -> None:
    row = Row(id="R1", plant=PlantKey("red raspberry", "Latham"), line=((5, 5), (8, 5)), count=9, spacing=0.6)
    ground = clear_ground_together(survey_of(evolve(yard_of(), rows=(row,))), {"R1"}, light=None)
    assert ("beds", "row_full") in ground.anywhere
    assert ground.holds((15, 10))


def test_a_bed_may_not_leave_the_plant_that_lives_by_its_soil() -> None:
    site = Site(name="Yard", latitude=42.0, longitude=0.0, soil=Soil(ph=8.2, lime=True, drainage="good"))
    bed = Bed(id="B1", outline=((10, 5), (14, 5), (14, 9), (10, 9)), soil=Soil(ph=4.8, lime=False))
    yard = yard_of(plant("N1", "northern highbush blueberry:Patriot", (12, 7)), site=site, beds=(bed,))
    ground = clear_ground_together(survey_of(yard), {"B1"}, light=None)
    assert ground is not None
    assert ground.holds((13.5, 7))
    assert {one.kind for one in ground.why((18, 7))} == {"bed_needs_bed"}
    both = clear_ground_together(survey_of(yard), {"B1", "N1"}, light=None)
    assert both is not None
    assert both.holds((18, 7))


def test_a_bed_need_not_go_to_a_plant_that_suffers_where_no_bed_is() -> None:
    """It lies clear wherever it does no harm, though it would cure a plant in wet ground elsewhere."""
    site = Site(name="Yard", latitude=42.0, longitude=0.0, soil=Soil(drainage="poor"))
    outline = ((4.0, 4.0), (8.0, 4.0), (8.0, 6.0), (4.0, 6.0))
    bed = Bed(id="B1", outline=outline, raised=0.35, soil=Soil(drainage="good"))
    yard = yard_of(plant("P1", "peach:Redhaven", (20, 14)), site=site, beds=(bed,))
    ground = clear_ground_together(survey_of(yard), {"B1"}, light=None)
    assert ground.holds((6, 5))
    assert ground.holds((20, 14))
    inside = evolve(yard, plantings=(plant("P1", "peach:Redhaven", (6, 5)),))
    stays = clear_ground_together(survey_of(inside), {"B1"}, light=None)
    assert {one.kind for one in stays.why((20, 14))} == {"bed_wet"}


def test_each_of_several_shades_a_neighbour_from_where_it_stands_itself() -> None:
    """The same ground as for the tall one alone, told for the anchor."""
    tall, far = plant("A1", "apple:Bramley's Seedling", (25, 3)), plant("A2", "gooseberry:Poorman", (31, 3))
    low = plant("P1", "peach:Redhaven", (15, 10), height=1.2, spread=1.2)
    yard = yard_of(tall, far, low, width=60, depth=40)
    survey = survey_of(yard)
    both = clear_ground_together(survey, {"A1", "A2"}, light="live")
    alone = clear_ground(survey_of(edits.remove(yard, {"A2"})), tall, light="live")
    ours, theirs = (
        [one.geometry for one in ground.closed if (one.kind, one.things) == ("shades", ("P1",))]
        for ground in (both, alone)
    )
    assert theirs
    assert ours
    here = shapely.transform(ours[0], lambda points: points - (both.anchor[0] - 25.0, both.anchor[1] - 3.0))
    assert here.intersection(theirs[0]).area > 0.9 * min(here.area, theirs[0].area)


def test_two_plants_keep_their_distance_to_each_other_and_are_counted_to_a_third() -> None:
    yard = yard_of(
        plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Akane", (6, 5)),
        plant("A3", "apple:Fiesta", (20, 12)),
    )
    ground = clear_ground_together(survey_of(yard), {"A1", "A2"}, light=None)
    assert ground is not None
    assert ground.anchor == (5.5, 5.0)
    assert ground.holds((8, 8))
    closed = {one.things for one in ground.why((20.5, 12))}
    assert closed == {("A3",)}


def test_one_plant_in_its_pot_has_the_ground_of_the_plant() -> None:
    pot = Container(id="C1", place=(10, 10), volume=300)
    yard = yard_of(plant("F1", "fig:Chicago Hardy", (10, 10), container="C1"), containers=(pot,))
    survey = survey_of(yard)
    together, single = clear_ground_together(survey, {"C1"}, light=None), clear_ground(
        survey, yard.plantings[0], light=None
    )
    assert together is not None
    assert together.anchor is None
    assert together.open.equals(single.open)


def test_nothing_is_told_of_houses_and_of_empty_pots() -> None:
    house = Building(id="H1", footprint=((16, 6), (20, 6), (20, 10), (16, 10)))
    pot = Container(id="C1", place=(10, 10), volume=30)
    yard = yard_of(plant("A1", "apple:Liberty", (5, 5)), buildings=(house,), containers=(pot,))
    survey = survey_of(yard)
    assert clear_ground_together(survey, {"H1", "A1"}) is None
    assert clear_ground_together(survey, {"C1"}) is None
    assert moving_of(survey, ()) is None


def test_light_comes_in_steps() -> None:
    house = Building(id="H1", footprint=((8, 4), (24, 4), (24, 10), (8, 10)), eaves=8, ridge=11, roof="gable")
    yard = yard_of(plant("P1", "peach:Redhaven", (4, 4)), plant("P2", "peach:Redhaven", (9, 14)),
                   buildings=(house,))
    told: list[float] = []
    steps = list(steps_together(survey_of(yard), {"P1", "P2"}, progress=told.append))
    assert [one.light for one in steps] == [None, "live", "full"]
    assert steps[0].open.buffer(1e-9).covers(steps[1].open)
    assert max(told) == 1.0


corners = st.lists(
    st.tuples(st.floats(-3, 3), st.floats(-3, 3)), min_size=2, max_size=5, unique=True
).map(lambda found: tuple((round(x, 2), round(y, 2)) for x, y in found))


@settings(max_examples=60, deadline=None)
@given(corners, st.tuples(st.floats(-8, 8), st.floats(-8, 8)))
def test_a_line_shifted_meets_a_shape_just_where_it_is_told(line: tuple[Point, ...], shift: Point) -> None:
    shape = shapely.Polygon([(0, 0), (4, 0), (4, 4), (3, 4), (3, 1), (0, 1)])
    meets, here = meeting_line(shape, line), shapely.Point(shift)
    if meets.boundary.distance(here) > 1e-6:
        moved = shapely.LineString([(x + shift[0], y + shift[1]) for x, y in line])
        assert meets.covers(here) == moved.intersects(shape)


@settings(max_examples=60, deadline=None)
@given(st.tuples(st.floats(-8, 8), st.floats(-8, 8)), st.floats(0.2, 6.0))
def test_an_area_shifted_meets_a_shape_just_where_it_is_told(shift: Point, wide: float) -> None:
    shape = shapely.Polygon([(0, 0), (1, 0), (1, 1), (0, 1)])
    outline = ((-wide, -wide), (wide, -wide), (wide, wide), (0.0, wide / 2), (-wide, wide))
    meets, here = meeting_area(shape, outline), shapely.Point(shift)
    if meets.boundary.distance(here) > 1e-6:
        moved = shapely.Polygon([(x + shift[0], y + shift[1]) for x, y in outline])
        assert meets.covers(here) == moved.intersects(shape)
        assert holding((0.5, 0.5), outline).covers(here) == moved.covers(shapely.Point(0.5, 0.5))
