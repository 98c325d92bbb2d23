from __future__ import annotations

import datetime as dt
from collections.abc import Callable
from pathlib import Path

import icalendar
import pytest
from attrs import evolve
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot
from support import cares
from support.builders import plant
from support.widgets import too_small, unnamed

from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.care_card import tick_box
from yardplan.window.panels.care_panel import CarePanel
from yardplan.yard import edits
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]
TODAY = dt.date(2027, 5, 10)


@pytest.fixture
def yard(opened: Opened) -> OpenYard:
    return opened(cares.orchard(cares.site()))


@pytest.fixture
def panel(qtbot: QtBot, yard: OpenYard, theme) -> CarePanel:
    made = CarePanel(yard, today=TODAY)
    qtbot.addWidget(made)
    made.resize(560, 700)
    made.show()
    return made


def row_of(panel: CarePanel, row: str) -> int:
    lines = [panel.rows.line(n) for n in range(panel.rows.rowCount())]
    return next(n for n, line in enumerate(lines) if line.work is not None and line.work.first.row == row)


def test_month_shows_what_meets_it(panel: CarePanel) -> None:
    assert panel.rows.year == 2027
    assert panel.month.currentText() == "May"
    for number in range(panel.rows.rowCount()):
        line = panel.rows.line(number)
        assert line.shown.start <= dt.date(2027, 5, 31)
        assert line.shown.end >= dt.date(2027, 5, 1)
    listed = {task.id for n in range(panel.rows.rowCount()) for task in panel.rows.line(n).work.tasks}
    expected = {
        task.id for task in panel.rows.plan.tasks
        if task.start <= dt.date(2027, 5, 31) and task.end >= dt.date(2027, 5, 1)
    }
    assert listed >= expected
    assert len(expected) > 10


def test_without_a_planting_year_lines_say_for_which_years_they_are(panel: CarePanel, yard: OpenYard) -> None:
    assert "year 1 is the planting year" not in panel.quiet.text()
    young = evolve(yard.yard.plantings[0], planted=None)
    yard.commit("Change", evolve(yard.yard, plantings=(young, *yard.yard.plantings[1:])))
    panel.view.setCurrentIndex(panel.view.findData("year"))
    lines = [panel.rows.line(n) for n in range(panel.rows.rowCount())]
    titles = {line.work.first.row: line.title for line in lines if line.work.first.crop == "apple"}
    assert titles["water-young"] == "Water young trees, every 7 days (years 1 to 3)"
    assert titles["water-bearing"] == "Water deeply, every 7 days (from year 4)"
    assert titles["mulch-tree"].endswith("deep")
    assert "year 1 is the planting year" in panel.quiet.text()


def test_done_is_one_step_of_the_yard_and_comes_back(panel: CarePanel, yard: OpenYard) -> None:
    number = row_of(panel, "bb-mulch")
    task = panel.rows.line(number).work.first
    panel.rows.mark(number, True, TODAY)
    assert yard.yard.done == {task.id: "2027-05-10"}
    assert panel.rows.line(number).done == "2027-05-10"
    assert "Done on 2027-05-10" in panel.rows.line(number).details
    yard.undo_stack.undo()
    assert yard.yard.done == {}
    assert panel.rows.line(number).done is None
    yard.undo_stack.redo()
    assert panel.rows.line(number).done == "2027-05-10"


def test_marks_do_not_reckon_the_dates_anew(panel: CarePanel) -> None:
    before = panel.rows.plan
    panel.rows.mark(0, True, TODAY)
    assert panel.rows.plan is before


def test_space_and_a_click_on_the_box_mark(panel: CarePanel, yard: OpenYard, qtbot: QtBot) -> None:
    panel.cards.setCurrentIndex(panel.rows.index(1))
    qtbot.keyClick(panel.cards, Qt.Key.Key_Space)
    first = dict(yard.yard.done)
    assert {task.id for task in panel.rows.line(1).work.tasks} == set(first)
    card = panel.cards.visualRect(panel.rows.index(0)).adjusted(1, 3, -1, -3)
    place = tick_box(card).center()
    qtbot.mouseClick(panel.cards.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert len(yard.yard.done) > len(first)
    qtbot.mouseClick(panel.cards.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert yard.yard.done == first
    qtbot.mouseClick(panel.cards.viewport(), Qt.MouseButton.LeftButton, pos=card.center())
    assert yard.yard.done == first


def test_only_what_is_to_do(panel: CarePanel) -> None:
    number = panel.rows.rowCount()
    panel.rows.mark(0, True, TODAY)
    panel.only_open.setChecked(True)
    assert panel.rows.rowCount() == number - 1


def test_kind_of_work_and_whole_year(panel: CarePanel) -> None:
    panel.view.setCurrentIndex(1)
    assert panel.month.isHidden()
    headings = [panel.rows.line(n).heading for n in range(panel.rows.rowCount())]
    assert [word for word in headings if word][:3] == ["Begun in 2026", "January", "February"]
    panel.kind.setCurrentIndex(panel.kind.findData("harvest"))
    kinds = {task.kind for n in range(panel.rows.rowCount()) for task in panel.rows.line(n).work.tasks}
    assert kinds == {"harvest"}


def test_sprays_not_placed_name_what_blocks(panel: CarePanel, yard: OpenYard) -> None:
    panel.view.setCurrentIndex(2)
    assert panel.rows.rowCount() == len(panel.rows.plan.refusals)
    panel.cards.setCurrentIndex(panel.rows.index(0))
    assert panel.details.text().startswith("No spray on these days, in bloom or being picked: ")
    assert "extension service" in panel.quiet.text()
    panel.rows.mark(0, True)
    assert yard.yard.done == {}


def test_year_by_year(panel: CarePanel, qtbot: QtBot) -> None:
    qtbot.mouseClick(panel.later, Qt.MouseButton.LeftButton)
    assert panel.year.text() == "2028"
    assert panel.rows.plan.year == 2028
    qtbot.mouseClick(panel.earlier, Qt.MouseButton.LeftButton)
    assert panel.rows.plan.year == 2027


def test_follows_the_yard(panel: CarePanel, yard: OpenYard) -> None:
    panel.view.setCurrentIndex(1)
    before = panel.rows.rowCount()
    yard.commit("Plant", edits.add(yard.yard, plant("G1", "grape:Concord", (20, 4), planted=2020)))
    assert panel.rows.rowCount() > before
    yard.commit("Site", evolve(yard.yard, site=cares.bare()))
    assert "usual months" in panel.quiet.text()


def test_hidden_it_does_no_work_and_is_right_when_it_shows_again(panel: CarePanel, yard: OpenYard) -> None:
    panel.hide()
    before = [panel.rows.line(n) for n in range(panel.rows.rowCount())]
    yard.commit("Plant", edits.add(yard.yard, plant("G1", "grape:Concord", (20, 4), planted=2020)))
    assert [panel.rows.line(n) for n in range(panel.rows.rowCount())] == before
    panel.show()
    assert any("G1" in panel.rows.line(n).things for n in range(panel.rows.rowCount()))


def test_plants_of_a_task_are_shown_on_the_plan(panel: CarePanel, yard: OpenYard, qtbot: QtBot) -> None:
    panel.cards.setCurrentIndex(panel.rows.index(row_of(panel, "bb-mulch")))
    with qtbot.waitSignal(yard.place_wanted) as asked:
        qtbot.mouseClick(panel.on_plan, Qt.MouseButton.LeftButton)
    assert yard.selection == {"B1"}
    assert asked.args == [((14.0, 4.0),)]


def test_calendar_file(panel: CarePanel, tmp_path: Path) -> None:
    panel.write_calendar(tmp_path / "care.ics")
    events = icalendar.Calendar.from_ical((tmp_path / "care.ics").read_bytes()).walk("VEVENT")
    assert len(events) == len(panel.rows.plan.tasks)
    assert panel.said.text().startswith("Written: care.ics")
    panel.write_calendar(tmp_path / "no" / "care.ics")
    assert panel.said.text().startswith("The calendar was not written")


def test_nothing_planted(qtbot: QtBot, opened: Opened, theme) -> None:
    made = CarePanel(opened(Yard()), today=TODAY)
    qtbot.addWidget(made)
    made.show()
    assert made.rows.rowCount() == 0
    assert "No work in this month" in made.quiet.text()


def test_everything_is_named_and_large_enough(panel: CarePanel) -> None:
    assert not unnamed(panel)
    assert not too_small(panel)


def test_the_window_opens_it_from_its_menu(make_window) -> None:
    window = make_window(cares.orchard(cares.site()))
    window.actions_["care"].trigger()
    box = window.take_home.boxes["care"]
    assert box.isVisible()
    assert box.panel.rows.rowCount() > 0
    box.close()


def test_water_of_each_plant_stands_in_the_details(panel: CarePanel) -> None:
    lines = [panel.rows.line(number) for number in range(panel.rows.rowCount())]
    details = next(one.details for one in lines if one.work.first.kind == "water" and "A1" in one.things)
    assert "gal) a plant in a dry midsummer week (inch-a-week rule)" in details
    assert "A1 Idared: May " in details
    assert " gal) a week." in details
