"""Clear ground against the real checks on random yards, and each reason by itself."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
import shapely
from attrs import evolve
from hypothesis import example, given, settings
from hypothesis import strategies as st
from support import grounds
from support.builders import plant, yard_of
from support.grounds import BAND, places

from yardplan.arrange.clear_ground import ClearGround, by_steps, clear_ground
from yardplan.checks.survey import survey_of
from yardplan.yard.ground import Building, Paving, Point, Service, StandingTree
from yardplan.yard.planting import Bed, Container, Planting, PlantKey, Row
from yardplan.yard.site import Site, Soil
from yardplan.yard.yard import Yard


def ground_of(yard: Yard, key: str, **how: Any) -> ClearGround:
    """Clear ground of a plant of the yard, without light unless asked for."""
    found = yard.find(key)
    assert isinstance(found, Planting)
    return clear_ground(survey_of(yard), found, **({"light": None} | how))


def reasons(ground: ClearGround, place: Point) -> set[str]:
    return {one.kind for one in ground.why(place)}


def beyond_the_band(ground: ClearGround, place: Point) -> bool:
    return ground.open.is_empty or ground.open.boundary.distance(shapely.Point(place)) > BAND


@settings(max_examples=30, deadline=None)
@given(st.integers(0, 10**6))
@example(500144)  # a dark strip along a slanting fence, between two nodes of the grid of light
@example(910253)  # the edge of a shadow on a neighbour that just has light enough
def test_deeper_inside_no_drop_raises_a_conflict_and_further_outside_every_drop_does(seed: int) -> None:
    rng = np.random.default_rng(seed)
    yard = grounds.random_yard(rng)
    moved = bool(rng.random() < 0.6)
    one = yard.plantings[int(rng.integers(len(yard.plantings)))] if moved else (
        grounds.planting(rng, "X9", (1.0, 1.0))
    )
    ground = clear_ground(survey_of(yard), one, light="live")
    kept = grounds.before(yard, one) | {(check, (one.id,)) for check, _ in ground.anywhere}
    for place in places(rng, yard, ground, 8):
        if beyond_the_band(ground, place):
            raised = grounds.conflicts(grounds.put(yard, one, place)) - kept
            assert ground.holds(place) == (not raised), (place, raised, reasons(ground, place))


@settings(max_examples=3, deadline=None)
@given(st.integers(0, 10**6))
def test_the_same_with_light_at_full_detail(seed: int) -> None:
    rng = np.random.default_rng(seed)
    yard = grounds.random_yard(rng)
    one = yard.plantings[0]
    ground = clear_ground(survey_of(yard), one, light="full")
    kept = grounds.before(yard, one, "full") | {(check, (one.id,)) for check, _ in ground.anywhere}
    for place in places(rng, yard, ground, 4):
        if beyond_the_band(ground, place):
            raised = grounds.conflicts(grounds.put(yard, one, place), "full") - kept
            assert ground.holds(place) == (not raised), (place, raised)


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 10**6))
def test_open_and_closed_share_out_the_lot(seed: int) -> None:
    rng = np.random.default_rng(seed)
    yard = grounds.random_yard(rng)
    ground = clear_ground(survey_of(yard), yard.plantings[0], light=None)
    closed = shapely.union_all([one.geometry for one in ground.closed])
    lot = shapely.Polygon(yard.lot)
    assert ground.open.intersection(closed).area == pytest.approx(0, abs=1e-6)
    assert ground.open.union(closed).intersection(lot).area == pytest.approx(lot.area, rel=1e-6)
    drawn = shapely.union_all([shapely.Polygon(rim, holes).buffer(0) for rim, *holes in ground.pieces()])
    # The drawing is true to two centimetres along every edge.
    assert drawn.symmetric_difference(ground.open).area <= 0.021 * ground.open.length


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 10**6))
def test_the_nearest_clear_place_is_clear_and_none_is_nearer(seed: int) -> None:
    rng = np.random.default_rng(seed)
    yard = grounds.random_yard(rng)
    one = yard.plantings[0]
    ground = clear_ground(survey_of(yard), one, light=None)
    near = ground.nearest(one.place)
    if near is None:
        assert ground.open.is_empty
        return
    # It stands clear, or a hand inside the nearest edge; where no ground is that wide, a finger inside.
    inside = [ground.open.buffer(-depth) for depth in (BAND, BAND / 10)]
    room = next((part for part in inside if not part.is_empty), ground.open)
    wanted = 0.0 if ground.holds(one.place) else room.distance(shapely.Point(one.place))
    assert math.dist(near, one.place) == pytest.approx(wanted, abs=1e-6)
    assert ground.open.distance(shapely.Point(near)) < 1e-6


def test_another_crown_closes_a_disc_three_quarters_of_what_both_ask_for() -> None:
    yard = yard_of(plant("A1", "apple:Liberty", (10, 10)), plant("A2", "apple:Liberty", (20, 10)))
    survey = survey_of(yard)
    wanted = (survey.plants["A1"].mature.spread + survey.plants["A2"].mature.spread) / 2
    ground = ground_of(yard, "A1")
    (disc,) = [one for one in ground.closed if one.kind == "overlap"]
    reach = 0.75 * wanted
    assert disc.geometry.area == pytest.approx(math.pi * reach**2, rel=0.01)
    assert disc.things == ("A2",)
    assert disc.figures["wanted"].value == pytest.approx(wanted)
    assert reasons(ground, (20 - reach + 0.05, 10)) == {"overlap"}
    assert ground.holds((20 - reach - 0.05, 10))


def test_two_panels_in_line_keep_their_length_apart_and_side_by_side_their_depth() -> None:
    yard = yard_of(
        plant("P1", "european pear:Conference", (5, 10), form="espalier"),
        plant("P2", "european pear:Conference", (15, 10), form="espalier"),
    )
    ground = ground_of(yard, "P1")
    (shape,) = [one.geometry for one in ground.closed if one.things == ("P2",)]
    x0, y0, x1, y1 = shape.bounds
    assert x1 - x0 > 3 * (y1 - y0)


def test_a_plant_trained_flat_may_stand_along_a_wall_but_not_end_on() -> None:
    house = Building(id="H1", footprint=((10, 10), (20, 10), (20, 16), (10, 16)))
    along = ground_of(yard_of(plant("P1", "european pear:Conference", (3, 3), form="espalier"),
                              buildings=(house,)), "P1")
    assert along.holds((15, 9.5))
    assert "crown_wall" in reasons(along, (20.5, 13))
    turned = yard_of(plant("P1", "european pear:Conference", (3, 3), form="espalier", facing=90),
                     buildings=(house,))
    assert "crown_wall" in reasons(ground_of(turned, "P1"), (15, 9.5))


@pytest.mark.parametrize(
    ("things", "place", "kind"),
    [
        ({"pavings": (Paving(id="X", kind="pond", outline=((10, 10), (14, 10), (14, 14), (10, 14))),)},
         (12, 12), "inside"),
        ({"services": (Service(id="X", kind="septic tank", points=((12, 12),)),)}, (12, 13), "septic_tank"),
        ({"services": (Service(id="X", kind="gas", points=((0, 12), (30, 12))),)}, (12, 12.3), "buried"),
        ({"services": (Service(id="X", kind="septic field", area=True,
                               points=((10, 10), (14, 10), (14, 14), (10, 14))),)},
         (12, 15), "septic_field"),
        ({"standing_trees": (StandingTree(id="X", kind="black walnut", place=(12, 12), height=15,
                                          spread=2),)},
         (20, 12), "juglone"),
        ({"buildings": (Building(id="X", footprint=((10, 10), (14, 10), (14, 14), (10, 14))),)},
         (12, 9.5), "building"),
        ({"rows": (Row(id="X", plant=PlantKey("red raspberry", "Latham"), line=((5, 12), (25, 12)), count=9,
                       spacing=0.6),)}, (12, 13), "row_plant"),
    ],
)
def test_each_thing_closes_ground_for_a_reason(things: dict[str, Any], place: Point, kind: str) -> None:
    yard = yard_of(plant("A1", "apple:Bramley's Seedling", (3, 3)), **things)
    ground = ground_of(yard, "A1")
    assert kind in reasons(ground, place)
    assert all(one.things == ("X",) for one in ground.why(place))


def test_outside_the_lot_is_closed_and_so_is_the_strip_the_law_keeps_free() -> None:
    site = Site(name="Yard", latitude=47.0, longitude=2.0, region="FR")
    yard = yard_of(plant("A1", "apple:Bramley's Seedling", (15, 10)), site=site)
    ground = ground_of(yard, "A1")
    assert reasons(ground, (-1, 10)) == {"outside"}
    assert reasons(ground, (1.5, 10)) == {"law"}
    assert ground.holds((2.1, 10))


def test_limy_ground_is_closed_to_a_blueberry_but_for_a_bed_of_acid_mix_and_pots() -> None:
    site = Site(name="Yard", latitude=42.0, longitude=0.0, soil=Soil(ph=8.2, lime=True, drainage="good"))
    bed = Bed(id="B1", outline=((10, 5), (14, 5), (14, 9), (10, 9)), soil=Soil(ph=4.8, lime=False))
    berry = plant("N1", "northern highbush blueberry:Patriot", (3, 3))
    ground = ground_of(yard_of(berry, site=site, beds=(bed,)), "N1")
    assert reasons(ground, (20, 12)) == {"needs_bed"}
    assert ground.holds((12, 7))
    potted = yard_of(evolve(berry, container="C1"), site=site,
                     containers=(Container(id="C1", place=(3, 3), volume=100),))
    assert ground_of(potted, "N1").holds((20, 12))


def test_ground_out_of_reach_of_the_only_partner_is_closed_both_ways() -> None:
    yard = yard_of(
        plant("CH1", "sweet cherry:Bing", (5, 10)), plant("CH2", "sweet cherry:Van", (12, 10)), width=120,
    )
    kinds = {one.kind: one for one in ground_of(yard, "CH1").closed}
    assert {"unset", "only_giver"} <= kinds.keys()
    assert kinds["unset"].things == ("CH2",)
    assert kinds["only_giver"].things == ("CH2",)
    ground = ground_of(yard, "CH1")
    assert {"unset", "only_giver"} <= reasons(ground, (110, 10))
    assert not reasons(ground, (25, 10))
    third = evolve(yard, plantings=(*yard.plantings, plant("CH3", "sweet cherry:Van", (100, 10))))
    assert not reasons(ground_of(third, "CH1"), (110, 10)) & {"unset"}


def test_a_plant_that_nothing_sets_is_told_so_and_closes_nothing() -> None:
    yard = yard_of(plant("CH1", "sweet cherry:Bing", (10, 10)))
    ground = ground_of(yard, "CH1")
    assert ("pollination", "unset") in ground.anywhere
    assert ground.holds((10, 10))


def test_too_cold_everywhere_is_told_and_closes_nothing() -> None:
    site = Site(name="Yard", latitude=52.0, longitude=0.0, zone="2b")
    ground = ground_of(yard_of(plant("P1", "peach:Redhaven", (10, 10)), site=site), "P1")
    assert ("hardiness", "too_cold") in ground.anywhere
    assert ground.holds((10, 10))


def test_an_alley_between_houses_is_too_dark_for_a_low_peach() -> None:
    houses = tuple(
        Building(id=key, footprint=((8, low), (24, low), (24, high), (8, high)), eaves=8, ridge=8)
        for key, low, high in (("H1", 4.0, 10.0), ("H2", 12.0, 16.0))
    )
    yard = yard_of(plant("P1", "peach:Redhaven", (4, 4), height=1.2, spread=1.0), buildings=houses)
    ground = ground_of(yard, "P1", light="live")
    assert reasons(ground, (16, 11)) == {"too_dark"}
    assert ground.holds((16, 1))
    assert not reasons(ground_of(yard, "P1"), (16, 11))


def test_a_tall_tree_may_not_stand_where_it_takes_a_neighbours_sun() -> None:
    yard = yard_of(
        plant("A1", "apple:Bramley's Seedling", (25, 3)),
        plant("S1", "gooseberry:Poorman", (14, 12)),
        plant("P1", "peach:Redhaven", (15, 10), height=1.2, spread=1.2),
    )
    ground = ground_of(yard, "A1", light="live")
    shading = [one for one in ground.closed if one.kind == "shades"]
    assert shading
    assert all(one.things[0] in {"S1", "P1"} for one in shading)
    # Below (south of) the low peach, beyond the reach of both crowns.
    spots = [one.geometry for one in shading if one.things == ("P1",)]
    assert spots
    assert spots[0].centroid.y < 10.0
    assert all(one.figures["hours"].value > one.figures["needed"].value for one in shading)


def test_light_comes_in_steps_and_only_closes_more() -> None:
    house = Building(id="H1", footprint=((8, 4), (24, 4), (24, 10), (8, 10)), eaves=8, ridge=11, roof="gable")
    yard = yard_of(plant("P1", "peach:Redhaven", (4, 4)), buildings=(house,))
    told: list[float] = []
    steps = list(by_steps(survey_of(yard), yard.plantings[0], progress=told.append))
    assert [one.light for one in steps] == [None, "live", "full"]
    assert steps[0].open.buffer(1e-9).covers(steps[1].open)
    assert steps[1].area == pytest.approx(steps[2].area, rel=0.02)
    assert told
    assert min(told) >= 0.0
    assert max(told) == 1.0


def test_a_yard_without_a_lot_looks_around_its_things() -> None:
    yard = evolve(yard_of(plant("A1", "apple:Liberty", (0, 0)), plant("A2", "apple:Liberty", (9, 0))), lot=())
    ground = ground_of(yard, "A1")
    assert ground.holds((-5, -5))
    assert reasons(ground, (9, 0.5)) == {"overlap"}


def test_what_stands_in_the_same_pot_goes_along() -> None:
    pot = Container(id="C1", place=(10, 10), volume=300)
    yard = yard_of(
        plant("F1", "fig:Chicago Hardy", (10, 10), container="C1"),
        plant("F2", "fig:Chicago Hardy", (10, 10), container="C1"), containers=(pot,),
    )
    assert all("F2" not in one.things for one in ground_of(yard, "F1").closed)
