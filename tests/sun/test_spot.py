from __future__ import annotations

from datetime import date

import pytest
from attrs import evolve
from support import suns

from yardplan.sun.light import light_report
from yardplan.sun.scene import Scene
from yardplan.sun.season import one_day
from yardplan.sun.spot import day_at, hours_on, spot_at
from yardplan.yard.site import Site

MIDSUMMER = date(2026, 6, 21)


def _scene(**site: float) -> Scene:
    return suns.scene(
        suns.tree("A", (15, 12), suns.size(4, 5)),
        buildings=(suns.box("H", 20, 5, 5, 20, 6.0),),
        site=evolve(Site(latitude=42.0, longitude=-76.0), **site),
    )


def test_the_day_bar_adds_up_and_names_what_blocks() -> None:
    day = day_at(_scene(), (16.0, 15.0), MIDSUMMER)
    assert {stretch.by for stretch in day.bar} == {None, "A", "H"}
    lit = sum((s.end - s.start).total_seconds() / 3600 * s.light for s in day.bar)
    assert lit == pytest.approx(day.hours, abs=0.1)
    assert 0.0 < day.hours < day.open_hours
    for before, after in zip(day.bar[:-1], day.bar[1:], strict=True):
        assert abs((after.start - before.end).total_seconds()) < 1.0
        assert (before.by, before.light) != (after.by, after.light)
    # The house stands in the east: it takes the morning.
    assert day.bar[0].by == "H"
    assert day.bar[0].light == 0.0


def test_the_year_follows_the_sun() -> None:
    spot = spot_at(_scene(), (10.0, 25.0))
    assert len(spot.months) == 12
    assert all(0.0 <= got <= open_ + 1e-9 for got, open_ in zip(spot.months, spot.open_months, strict=True))
    assert spot.open_months[5] == max(spot.open_months)
    assert spot.day.day == date(2026, 6, 21)
    south = spot_at(_scene(latitude=-42.0), (10.0, 25.0))
    assert south.open_months[11] == max(south.open_months)
    assert south.day.day.month == 12


def test_a_spot_agrees_with_the_field() -> None:
    scene = _scene()
    field = light_report(scene, "live", cell=0.25).field
    grid = field.grid
    for row, col in ((40, 50), (60, 62), (70, 76), (52, 58)):
        place = (float(grid.xs[col]), float(grid.ys[row]))
        assert spot_at(scene, place).season.hours == pytest.approx(float(field.hours[row, col]), abs=0.002)


def test_higher_up_there_is_more_sun() -> None:
    scene = _scene()
    assert hours_on(scene, (16.0, 15.0), MIDSUMMER, 7.0) > hours_on(scene, (16.0, 15.0), MIDSUMMER, 0.0)
    top = hours_on(scene, (16.0, 15.0), MIDSUMMER, 8.0)
    assert top == pytest.approx(one_day(MIDSUMMER, scene.site, 10.0).total("season"))


def test_inside_a_building_it_is_dark_by_its_name() -> None:
    spot = spot_at(_scene(), (22.0, 15.0))
    assert spot.season.hours == 0.0
    assert {stretch.by for stretch in spot.day.bar} == {"H"}
    assert spot.months == pytest.approx((0.0,) * 12)


def test_a_day_without_sun_has_an_empty_bar() -> None:
    day = day_at(_scene(latitude=80.0), (5.0, 5.0), date(2026, 12, 21))
    assert (day.hours, day.open_hours, day.bar) == (0.0, 0.0, ())


def test_hills_and_slopes_are_named() -> None:
    hills = evolve(_scene(), site=Site(latitude=42.0, longitude=-76.0, horizon=((0.0, 8.0),)))
    day = day_at(hills, (2.0, 2.0), MIDSUMMER)
    assert day.bar[0].by == day.bar[-1].by == "horizon"
