from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import pytest
from attrs import evolve
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QHelpEvent
from PySide6.QtWidgets import QApplication, QLabel, QToolTip, QWidget
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.checks.survey import survey_of
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.moment import say_hour
from yardplan.window.panels.season_rows import season_of
from yardplan.window.panels.season_strip import SeasonStrip
from yardplan.window.panels.year_control import LAST_YEAR, YearControl
from yardplan.yard import edits
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]

#: Monthly means in degrees C of an invented place with a cold winter.
_MEANS = (-5.0, -4.0, 1.0, 8.0, 14.0, 19.0, 21.5, 20.5, 16.5, 10.0, 4.0, -2.0)
_SITE = Site(name="Test", latitude=42.4, longitude=-76.5, zone="5b", last_frost="05-10", first_frost="10-02",
             monthly_means=_MEANS)


def yard() -> Yard:
    return builders.yard_of(
        builders.plant("A1", "apple:Liberty", (4, 5)), builders.plant("A2", "apple:Jonathan", (10, 5)),
        builders.plant("A3", "apple:Liberty", (16, 5)), site=_SITE,
    )


@pytest.fixture
def strip(qtbot: QtBot, opened: Opened, theme) -> SeasonStrip:
    made = SeasonStrip(opened(yard()))
    qtbot.addWidget(made)
    made.resize(1000, 170)
    made.show()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def test_one_row_a_variety_with_its_bloom(strip: SeasonStrip) -> None:
    chart = strip.chart.chart
    assert [(row.thing, row.name) for row in chart.rows] == [("A1", "Liberty ×2"), ("A2", "Jonathan")]
    for row in chart.rows:
        assert row.bloom is not None
        assert 100 < row.bloom.start < row.bloom.full < row.bloom.end < 160
    assert [line.before for line in chart.frosts] == [True, False]


def test_the_southern_year_starts_in_july(qtbot: QtBot) -> None:
    south = evolve(_SITE, latitude=-41.0, monthly_means=_MEANS[6:] + _MEANS[:6], last_frost="10-01")
    season = season_of(survey_of(evolve(yard(), site=south)))
    assert season.chart.southern
    bloom = season.chart.rows[0].bloom
    assert bloom is not None
    assert 260 < bloom.start < 345


def test_without_climate_and_place_it_says_what_is_missing(qtbot: QtBot) -> None:
    season = season_of(survey_of(evolve(yard(), site=Site())))
    assert all(row.bloom is None for row in season.chart.rows)
    assert "give the place" in season.note


def test_selected_plant_shows_the_days_with_its_partner(strip: SeasonStrip) -> None:
    strip._open_yard.select({"A1"})
    strip.refresh()
    chart = strip.chart.chart
    assert chart.chosen == {"A1"}
    assert len(chart.together) == 1
    assert {chart.together[0].one, chart.together[0].other} == {"A1", "A2"}
    assert chart.together[0].days > 0


def test_a_click_on_the_chart_sets_the_day(strip: SeasonStrip, qtbot: QtBot) -> None:
    layout = strip.chart.layout_now()
    place = QPoint(round(layout.x(172.0)), round(layout.field.center().y()))
    with qtbot.waitSignal(strip.day_changed):
        qtbot.mouseClick(strip.chart, Qt.MouseButton.LeftButton, pos=place)
    month, day = strip._open_yard.moment.day.split("-")
    assert month == "06"
    assert abs(int(day) - 21) <= 1


def test_a_click_on_a_name_selects_all_plants_of_the_row(strip: SeasonStrip, qtbot: QtBot) -> None:
    y = round(strip.chart.layout_now().y(0))
    qtbot.mouseClick(strip.chart, Qt.MouseButton.LeftButton, pos=QPoint(20, y))
    assert strip._open_yard.selection == {"A1", "A3"}


def test_keys_step_the_day(strip: SeasonStrip, qtbot: QtBot) -> None:
    strip.chart.setFocus()
    strip._open_yard.set_moment(evolve(strip._open_yard.moment, day="12-31"))
    strip.refresh()
    qtbot.keyClick(strip.chart, Qt.Key.Key_Right)
    assert strip._open_yard.moment.day == "01-01"


def test_day_and_hour_fields_drive_the_moment(strip: SeasonStrip, qtbot: QtBot) -> None:
    line = strip.moment.day.line
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, "24 april")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert strip._open_yard.moment.day == "04-24"
    with qtbot.waitSignal(strip.hour_changed):
        strip.moment.hour.setValue(92)
    assert strip._open_yard.moment.hour == pytest.approx(15 + 1 / 3)
    assert strip.moment.hour_text.text() == "15:20"
    strip.moment.after.click()
    assert strip._open_yard.moment.day == "05-01"


def test_hours_are_said_to_the_minute() -> None:
    assert [say_hour(h) for h in (0.0, 6.5, 15 + 1 / 3, 23.9999)] == ["0:00", "6:30", "15:20", "0:00"]


def test_a_move_keeps_the_season(strip: SeasonStrip) -> None:
    strip.refresh()
    before = strip._season
    open_yard = strip._open_yard
    open_yard.show_trial(edits.move(open_yard.yard, {"A1"}, (0.5, 0.0)))
    strip.refresh()
    assert strip._season is before
    open_yard.commit("Remove", edits.remove(open_yard.yard, {"A2"}))
    strip.refresh()
    assert [row.name for row in strip.chart.chart.rows] == ["Liberty ×2"]


def test_the_chart_speaks(strip: SeasonStrip) -> None:
    strip.refresh()
    words = strip.chart.accessibleDescription()
    assert "A2 Jonathan blooms " in words
    assert "last frost, 5 years of 10: 10 May" in words


def test_many_rows_scroll(qtbot: QtBot, opened: Opened, theme) -> None:
    from yardplan.plants.catalogue import catalogue

    plants = [
        builders.plant(f"A{n}", f"apple:{cultivar.name}", (n, 5))
        for n, cultivar in enumerate(catalogue().of_crop("apple")[:12], 1)
    ]
    made = SeasonStrip(opened(builders.yard_of(*plants, site=_SITE)))
    qtbot.addWidget(made)
    made.resize(1000, 130)
    made.show()
    made._open_yard.select({"A12"})
    made.refresh()
    assert 11 in made.chart.layout_now().seen


def test_everything_has_a_name_and_is_large_enough(strip: SeasonStrip) -> None:
    assert unnamed(strip) == []
    assert too_small(strip) == []


def test_year_goes_from_planting_to_full_size(qtbot: QtBot, opened: Opened, theme) -> None:
    open_yard = opened(yard())
    control = YearControl(open_yard)
    qtbot.addWidget(control)
    control.show()
    assert control.text.text() == "Growth: full size"
    control.slider.setValue(0)
    assert open_yard.year == 0
    assert control.text.text() == "Growth: planting"
    qtbot.keyClick(control.slider, Qt.Key.Key_Right)
    assert open_yard.year == 1
    assert control.slider.accessibleName() == "Growth: year 1"
    small = open_yard.stand.plants[0].size.spread
    qtbot.keyClick(control.slider, Qt.Key.Key_End)
    assert open_yard.year is None
    assert open_yard.stand.plants[0].size.spread > small
    open_yard.set_year(LAST_YEAR + 40)
    assert control.slider.value() == LAST_YEAR
    assert unnamed(control) == []
    assert too_small(control) == []


def uncut(bar: QWidget) -> bool:
    """True when the parts of a bar stand side by side within it and every label has room for its words."""
    shown = [part for part in bar.children() if isinstance(part, QWidget) and part.isVisible()]
    boxes = sorted((part.geometry() for part in shown), key=lambda box: box.left())
    return (
        all(one.right() < other.left() for one, other in pairwise(boxes))
        and all(p.width() >= p.minimumSizeHint().width() for p in shown if isinstance(p, QLabel))
        and boxes[-1].right() <= bar.width()
    )


@pytest.mark.parametrize("width", [560, 700, 1000])
def test_a_narrow_strip_leaves_words_out_before_it_cuts_them(
    strip: SeasonStrip, qtbot: QtBot, width: int
) -> None:
    strip.resize(width, 170)
    qtbot.waitUntil(lambda: uncut(strip.moment))
    assert strip.moment.play.isVisible()
    assert strip.moment.sun.isVisible() is (width == 1000)


def test_hovering_a_row_tells_its_days_error_and_partners(strip: SeasonStrip, qtbot: QtBot) -> None:
    layout = strip.chart.layout_now()
    over = QPoint(round(layout.field.center().x()), round(layout.y(0)))
    QApplication.sendEvent(strip.chart, QHelpEvent(QEvent.Type.ToolTip, over, strip.chart.mapToGlobal(over)))
    words = QToolTip.text().splitlines()
    assert words[0].startswith("A1 Liberty ×2 blooms ")
    assert "5 days either way" in words[0]
    assert any(line.startswith("in bloom ") and "with A2" in line for line in words)
    off = QPoint(over.x(), 2)
    QApplication.sendEvent(strip.chart, QHelpEvent(QEvent.Type.ToolTip, off, strip.chart.mapToGlobal(off)))
    assert QToolTip.text().startswith("Drag to choose the day")
    QToolTip.hideText()


def test_frost_dates_are_told_on_hover_where_the_foot_has_no_room_for_them(strip) -> None:  # type: ignore[no-untyped-def]
    chart = strip.chart
    layout, line = chart.layout_now(), chart.chart.frosts[0]
    over = QPointF(layout.x(line.day), layout.y(0))
    assert chart.words_at(over) == "last frost, 5 years of 10: 10 May"
    foot = QPointF(layout.box.center().x(), layout.box.bottom() - 2)
    assert "first frost, 5 years of 10: 2 October" in chart.words_at(foot).splitlines()
