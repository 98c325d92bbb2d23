from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QWidget
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.files.writing import yard_to_json
from yardplan.window.dialogs import start_panel
from yardplan.window.dialogs.start_panel import StartPanel, sample_of
from yardplan.window.open_yard import OpenYard
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


@pytest.fixture
def samples_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    yard = builders.yard_of(builders.plant("A1", "apple:Liberty", (3, 4)))
    (tmp_path / "first_orchard.yard").write_text(yard_to_json(yard), encoding="utf-8")
    (tmp_path / "a_broken_one.yard").write_text("{", encoding="utf-8")
    monkeypatch.setattr(start_panel, "folder", lambda _name: tmp_path)
    return tmp_path


@pytest.fixture
def sheet(qtbot: QtBot) -> QWidget:
    made = QWidget()
    made.resize(900, 600)
    qtbot.addWidget(made)
    made.show()
    return made


@pytest.fixture
def panel(qtbot: QtBot, opened: Opened, theme, sheet: QWidget, samples_folder: Path) -> StartPanel:
    return StartPanel(opened(Yard()), sheet, recent=[samples_folder / "mine.yard"])


def test_it_lies_in_the_middle_of_the_empty_sheet(panel: StartPanel, sheet: QWidget, qtbot: QtBot) -> None:
    assert panel.isVisible()
    sheet.resize(1100, 700)
    qtbot.waitUntil(lambda: abs(panel.geometry().center().x() - 549) <= 1)
    assert abs(panel.geometry().center().y() - 349) <= 1


def test_samples_are_listed_with_name_and_contents_and_a_damaged_one_by_its_file(
    panel: StartPanel, samples_folder: Path
) -> None:
    words = [b.text() for holder in panel.sample_buttons for b in holder.findChildren(QPushButton)]
    assert words == ["Test yard", "a broken one"]
    assert sample_of(samples_folder / "first_orchard.yard").words == "1 plant"


def test_shipped_samples_can_all_be_listed() -> None:
    for sample in start_panel.samples():
        assert sample.name == json.loads(sample.path.read_text(encoding="utf-8"))["site"]["name"]


def test_a_sample_is_chosen_by_a_click(panel: StartPanel, samples_folder: Path, qtbot: QtBot) -> None:
    with qtbot.waitSignal(panel.file_chosen) as seen:
        panel.sample_buttons[0].findChildren(QPushButton)[0].click()
    assert seen.args == [samples_folder / "first_orchard.yard"]
    with qtbot.waitSignal(panel.file_chosen) as again:
        panel.recent_buttons[0].findChildren(QPushButton)[0].click()
    assert again.args == [samples_folder / "mine.yard"]


def test_begin_makes_the_yard_and_the_panel_goes(panel: StartPanel, qtbot: QtBot) -> None:
    with qtbot.waitSignal(panel.began):
        panel.begin.click()
    assert len(panel._open_yard.yard.lot) == 4
    assert not panel.isVisible()
    panel._open_yard.new(Yard())
    assert panel.isVisible()


def test_a_side_of_nothing_begins_nothing(panel: StartPanel) -> None:
    panel.form.width_entry.line.setText("0")
    panel.form.width_entry.line.setModified(True)
    panel._begin()
    assert panel._open_yard.yard.lot == ()
    assert panel.isVisible()


def test_esc_leaves_the_sheet_free_to_draw(panel: StartPanel, qtbot: QtBot) -> None:
    qtbot.keyClick(panel, Qt.Key.Key_Escape)
    assert not panel.isVisible()
    panel.refresh()
    assert not panel.isVisible()


def test_an_opened_yard_shows_no_panel(qtbot: QtBot, opened: Opened, theme, sheet: QWidget) -> None:
    made = StartPanel(opened(builders.yard_of()), sheet)
    assert not made.isVisible()


def test_everything_has_a_name_and_is_large_enough(panel: StartPanel) -> None:
    assert unnamed(panel) == []
    assert too_small(panel) == []
