from __future__ import annotations

import math
from datetime import date

import numpy as np
import pytest
from attrs import evolve
from hypothesis import given, settings
from hypothesis import strategies as st
from support import suns

from yardplan.sun.light import LightReport, PlantLight, day_report, light_report
from yardplan.sun.scene import Scene, before_planting, scene_of
from yardplan.sun.season import season_positions
from yardplan.yard import edits
from yardplan.yard.ground import Barrier
from yardplan.yard.site import Site

SOUTH = Site(latitude=42.0, longitude=-76.0)


def _live(scene: Scene) -> LightReport:
    return light_report(scene, "live", cell=1.0)


def _missing(light: PlantLight) -> float:
    return light.open_hours - light.hours


def _all(report: LightReport) -> list[PlantLight]:
    return [light for kind in (report.plants, report.rows, report.beds) for light in kind.values()]


def test_alone_in_the_open_everything_gets_the_open_hours() -> None:
    for habit in ("shade tree", "open centre", "conifer", "bush", "clump", "cane", "vine", "mat"):
        report = _live(suns.scene(suns.tree("A", (15, 15), suns.size(4, 5, habit=habit))))
        light = report.plants["A"]
        assert light.hours == pytest.approx(report.open_hours)
        assert light.open_light == pytest.approx(1.0)
        assert light.shaded_by == ()
        assert light.hours_midsummer > light.hours > light.hours_worst_month > light.hours_morning


def _crowded(**site: float) -> Scene:
    trees = [
        suns.tree(f"A{n}", (6.0 + 4.0 * (n % 4), 6.0 + 4.0 * (n // 4)), suns.size(3.5, 3.0 + 0.3 * n))
        for n in range(8)
    ]
    return suns.scene(
        *trees,
        buildings=(suns.box("H", 4, 16, 12, 8, 5.0),),
        beds=(suns.bed("D", 20, 4, 4, 1.2),),
        barriers=(Barrier(id="F", line=((1, 3.2), (29, 3.2)), height=2.0, light_share=0.4),),
        rows=(suns.row("R", ((22.0, 10.0), (22.0, 18.0)), 8, 1.0, suns.size(0.8, 1.6, 0.3, "cane")),),
        site=evolve(SOUTH, **site),
    )


@pytest.mark.parametrize(
    "site",
    [
        {},
        {"slope": 0.15, "slope_aspect": 300.0},
        {"horizon": ((90.0, 12.0), (180.0, 4.0), (270.0, 20.0))},
    ],
    ids=["level", "slope", "horizon"],
)
def test_the_takers_add_up_to_what_is_missing(site: dict[str, float]) -> None:
    report = _live(_crowded(**site))
    assert len(_all(report)) == 10
    for light in _all(report):
        assert sum(hours for _, hours in light.shaded_by) == pytest.approx(_missing(light), abs=1e-9)
        assert light.id not in dict(light.shaded_by)
        assert 0.0 <= light.hours_worst_month <= light.hours_midsummer + 2.0
        assert 0.0 <= light.open_light <= 1.0
        assert [hours for _, hours in light.shaded_by] == sorted(
            (h for _, h in light.shaded_by), reverse=True
        )


def test_full_detail_agrees_with_live_and_tells_its_progress() -> None:
    told: list[float] = []
    scene = _crowded()
    full = light_report(scene, "full", told.append, cell=1.0)
    live = _live(scene)
    assert told == sorted(told)
    assert told[-1] == pytest.approx(1.0)
    for one, other in zip(_all(full), _all(live), strict=True):
        assert one.hours == pytest.approx(other.hours, abs=0.35)
        assert one.open_light == pytest.approx(other.open_light, abs=0.03)


def test_work_that_is_not_wanted_stops() -> None:
    class Unwanted(Exception):
        pass

    def stop(_: float) -> None:
        raise Unwanted

    with pytest.raises(Unwanted):
        light_report(_crowded(), "full", stop)


@settings(max_examples=15, deadline=None)
@given(
    st.tuples(st.floats(2, 28), st.floats(2, 28)),
    st.floats(0.5, 6),
    st.floats(1, 8),
    st.sampled_from(["shade tree", "open centre", "conifer", "cane", "clump"]),
)
def test_one_more_caster_never_adds_light(
    place: tuple[float, float], spread: float, height: float, habit: str
) -> None:
    before = [suns.tree("A", (12, 12), suns.size(3, 4)), suns.tree("B", (17, 14), suns.size(3, 4))]
    more = suns.tree("X", place, suns.size(spread, height, 0.3, habit))  # type: ignore[arg-type]
    less, most = _live(suns.scene(*before)), _live(suns.scene(*before, more))
    assert np.all(most.field.hours <= less.field.hours + 1e-5)
    for key in ("A", "B"):
        assert most.plants[key].hours <= less.plants[key].hours + 1e-9
        assert most.plants[key].open_light <= less.plants[key].open_light + 1e-9


@pytest.mark.parametrize("degrees", [30.0, 90.0, -140.0])
def test_turning_the_yard_and_its_north_together_changes_nothing(degrees: float) -> None:
    trees = [suns.tree(f"A{n}", (9.0 + 4 * n, 10.0 + 3 * n), suns.size(3.5, 4.0)) for n in range(3)]
    trees.append(suns.tree("V", (10.0, 16.0), suns.size(3.0, 2.0, 0.4, "vine"), facing=20.0))
    beds = (suns.bed("D", 14, 8, 4, 1.2),)
    fields = {
        "buildings": (suns.box("H", 4, 20, 9, 6, 5.0, roof="gable", ridge_angle=0.0, overhang=0.4),),
        "site": evolve(SOUTH, slope=0.1, slope_aspect=200.0, horizon=((80.0, 10.0), (200.0, 3.0))),
    }
    yard, stand = suns.yard_and_stand(*trees, beds=beds, **fields)  # type: ignore[arg-type]
    turned = edits.rotate(yard, yard.ids(), (15.0, 15.0), degrees)
    turned = edits.set_site(turned, north=yard.site.north - degrees)
    moved = evolve(
        stand,
        plants=tuple(evolve(p, thing=t, place=t.place) for p in stand.plants if (t := turned.find(p.id))),
        beds=tuple(evolve(b, bed=turned.find(b.id)) for b in stand.beds),
    )
    here, there = _live(scene_of(yard, stand)), _live(scene_of(turned, moved))
    for one, other in zip(_all(here), _all(there), strict=True):
        assert one.hours == pytest.approx(other.hours, abs=1e-6)
        assert one.open_light == pytest.approx(other.open_light, abs=0.005)
        assert dict(one.shaded_by).keys() == dict(other.shaded_by).keys()


def test_mirrored_hemispheres_agree() -> None:
    """The same sun mirrored north to south over a mirrored yard gives the same light."""
    trees = [
        suns.tree("A", (12, 12), suns.size(3, 4)),
        suns.tree("B", (14, 17), suns.size(4, 5, 0.5, "conifer")),
    ]
    fields = {"buildings": (suns.box("H", 5, 3, 8, 5, 4.0),)}
    yard, stand = suns.yard_and_stand(*trees, **fields)  # type: ignore[arg-type]
    mirrored = edits.place_by(yard, yard.ids(), lambda p: (p[0], 30.0 - p[1]))
    plants = tuple(
        evolve(p, thing=t, place=t.place)
        for p in stand.plants
        if (t := mirrored.find(p.id))  # type: ignore[union-attr]
    )
    positions = season_positions(yard.site, "live")
    flipped = evolve(positions, vectors=positions.vectors * np.array([1.0, -1.0, 1.0]))
    here = light_report(scene_of(yard, stand), "live", cell=1.0, positions=positions)
    there = light_report(
        scene_of(mirrored, evolve(stand, plants=plants)), "live", cell=1.0, positions=flipped
    )
    assert here.field.hours == pytest.approx(there.field.hours[::-1], abs=1e-4)
    for key in ("A", "B"):
        assert here.plants[key].hours == pytest.approx(there.plants[key].hours, abs=0.06)


def test_both_hemispheres_have_like_seasons() -> None:
    """At 40 north and south a wall on the side of the noon sun takes alike."""
    hours = []
    for latitude, y in ((40.0, 13.6), (-40.0, 16.4)):
        wall = Barrier(id="W", line=((5.0, y), (25.0, y)), height=8.0)
        scene = suns.scene(
            suns.tree("A", (15, 15), suns.size(2, 2.5)),
            barriers=(wall,),
            site=evolve(SOUTH, latitude=latitude),
        )
        hours.append(_live(scene).plants["A"].hours)
    assert hours[0] == pytest.approx(hours[1], abs=0.4)
    assert hours[0] < 9.0


def test_a_plant_inside_a_building_gets_nothing_from_it() -> None:
    scene = suns.scene(
        suns.tree("A", (10, 20), suns.size(1, 2)), buildings=(suns.box("H", 5, 15, 12, 8, 5.0),)
    )
    report = light_report(scene, "live", cell=0.5)
    assert report.plants["A"].hours == 0.0
    assert report.plants["A"].open_light == 0.0
    assert dict(report.plants["A"].shaded_by) == pytest.approx({"H": report.open_hours})
    assert report.field.at((10.0, 20.0)) == 0.0
    assert report.field.at((-5.0, 0.0)) is None


def test_opaque_pieces_of_one_house_count_once() -> None:
    """An L-shaped house is made of pieces; a second building behind shares alike all the same."""
    from yardplan.yard.ground import Building

    bed = suns.bed("D", 14, 10, 2, 2)
    outline = ((6.0, 4.0), (11.0, 4.0), (11.0, 18.0), (9.0, 18.0), (9.0, 9.0), (6.0, 9.0))
    angled = Building(id="L", footprint=outline, eaves=6, ridge=6)
    other = suns.box("S", -8, 0, 4, 24, 12)
    shares = dict(_live(suns.scene(beds=(bed,), buildings=(angled, other))).beds["D"].shaded_by)
    assert shares["L"] >= shares["S"] > 0.0


def test_sky_behind_a_long_wall() -> None:
    """The sky view beside an endless wall of apparent height B is (1 + cos B) / 2 (even sky)."""
    wall = Barrier(id="W", line=((-3000.0, 12.0), (3000.0, 12.0)), height=5.0, thickness=0.01)
    scene = suns.scene(beds=(suns.bed("D", 14.99, 14.99, 0.02, 0.02),), barriers=(wall,))
    low = math.atan2(5.0, 3.0)
    report = _live(scene)
    night = light_report(
        scene,
        "live",
        cell=1.0,
        positions=season_positions(scene.site).chosen(season_positions(scene.site).weight("sky") > 0.0),
    )
    assert night.beds["D"].open_light == pytest.approx((1 + math.cos(low)) / 2, abs=0.03)
    assert report.beds["D"].open_light != night.beds["D"].open_light


def test_horizon_takes_its_hours_from_all_alike() -> None:
    plain = _live(suns.scene(suns.tree("A", (15, 15), suns.size(3, 4))))
    hills = ((0.0, 15.0), (90.0, 15.0), (180.0, 15.0), (270.0, 15.0))
    report = _live(suns.scene(suns.tree("A", (15, 15), suns.size(3, 4)), site=evolve(SOUTH, horizon=hills)))
    assert report.open_hours == plain.open_hours
    taken = dict(report.plants["A"].shaded_by)
    assert set(taken) == {"horizon"}
    assert taken["horizon"] == pytest.approx(2 * 10.0 / 360 * 24 / math.cos(math.radians(42)), abs=0.6)
    assert float(report.field.hours.max()) == pytest.approx(report.plants["A"].hours, abs=1e-4)


def test_a_steep_slope_away_from_the_sun_is_dark_of_itself() -> None:
    site = evolve(SOUTH, slope=1.2, slope_aspect=0.0)
    scene = suns.scene(suns.tree("A", (15, 15), suns.size(1.0, 4)), site=site)
    light = day_report(scene, date(2026, 11, 20), "live", cell=1.0).plants["A"]
    # The noon sun of late November stands lower than the slope's 50 degrees.
    assert light.hours == 0.0
    assert dict(light.shaded_by) == pytest.approx({"slope": light.open_hours})
    assert _live(scene).plants["A"].hours > 8.0


def test_polar_night_and_day() -> None:
    tree = suns.tree("A", (15, 15), suns.size(3, 4))
    far = suns.scene(tree, site=Site(latitude=82.0))
    night = day_report(far, date(2026, 12, 21), "live", cell=1.0)
    assert night.open_hours == night.plants["A"].hours == 0.0
    assert night.plants["A"].worst_month == 0
    assert float(night.field.hours.max()) == 0.0
    assert night.plants["A"].open_light == pytest.approx(1.0)
    assert day_report(far, date(2026, 6, 21), "live", cell=1.0).plants["A"].hours == pytest.approx(24.0)
    winter = evolve(far, site=evolve(far.site, season=("11-15", "01-15")))
    assert light_report(winter, "live", cell=1.0).plants["A"].hours == 0.0


def test_one_date_is_its_own_season() -> None:
    report = day_report(_crowded(), date(2026, 4, 20), "live", cell=1.0)
    assert report.season == ("04-20", "04-20")
    assert report.plants["A0"].worst_month == 4
    assert report.plants["A0"].hours_worst_month == pytest.approx(report.plants["A0"].hours)


def test_bare_crowns_let_more_through_than_leafy_ones() -> None:
    scene = suns.scene(suns.tree("T", (15, 12), suns.size(6, 7)), beds=(suns.bed("D", 14, 13, 2, 1),))
    by_day = {month: day_report(scene, date(2026, month, 15), "live", cell=1.0).beds["D"] for month in (3, 7)}
    share = {month: light.hours / light.open_hours for month, light in by_day.items()}
    assert share[3] > share[7] + 0.1


def test_before_planting_only_what_stands_there_takes_light() -> None:
    scene = _crowded()
    before = _live(before_planting(scene))
    assert {by for light in _all(before) for by, _ in light.shaded_by} == {"H", "F"}
    assert np.all(before.field.hours >= _live(scene).field.hours - 1e-5)


def test_an_empty_yard_is_all_open() -> None:
    report = _live(suns.scene())
    assert report.plants == {}
    assert report.field.hours == pytest.approx(report.open_hours, abs=1e-4)


def test_plants_without_a_size_have_a_defined_light() -> None:
    none = suns.tree("A", (15, 15), suns.size(0.0, 0.0, 0.0))
    flat = suns.tree("B", (16, 15), suns.size(2.0, 0.0, 0.0, "vine"))
    report = _live(suns.scene(none, flat, suns.tree("C", (15, 11), suns.size(5, 6))))
    for light in report.plants.values():
        assert math.isfinite(light.hours)
        assert light.hours > 1.0
    assert "A" not in dict(report.plants["C"].shaded_by)


def test_a_building_half_a_kilometre_high_is_no_error() -> None:
    scene = suns.scene(
        suns.tree("A", (15, 15), suns.size(3, 4)), buildings=(suns.box("H", 5, 2, 20, 8, 500.0),)
    )
    light = _live(scene).plants["A"]
    assert 0.0 < light.hours < 8.0
    assert math.isfinite(light.open_light)
