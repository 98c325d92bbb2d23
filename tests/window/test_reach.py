"""The whole window by keyboard and screen reader: names, targets, Tab order, room for the sheet."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot
from support.widgets import focusable, too_small, unnamed

from yardplan.shipped import folder
from yardplan.window.main_window import MainWindow
from yardplan.window.open_yard import OpenYard


@pytest.fixture
def window(qtbot: QtBot, theme, tmp_path) -> MainWindow:
    settings = QSettings(str(tmp_path / "window.ini"), QSettings.Format.IniFormat)
    made = MainWindow(OpenYard(), settings=settings, recovery=tmp_path)
    qtbot.addWidget(made)
    made.open_yard.open(folder("sample_yards") / "first_orchard.yard")
    made.resize(1280, 800)
    made.show()
    made.build_side()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def tabs_of(window: MainWindow) -> list[QWidget]:
    tabs = window.side.tabs
    return [tabs.widget(n) for n in range(tabs.count())]


def test_every_part_has_a_name_and_is_large_enough(window: MainWindow) -> None:
    window.open_yard.select({"A1"})
    for page in tabs_of(window):
        window.side.tabs.setCurrentWidget(page)
        assert unnamed(window) == []
        assert too_small(window) == []


def test_the_sheet_keeps_its_share_of_the_width(window: MainWindow) -> None:
    assert window.width() == 1280
    assert window.canvas.width() >= 0.6 * window.width()
    assert window.side.width() <= 340


@pytest.mark.parametrize("page", range(4))
def test_tab_visits_every_part_once_and_comes_back(window: MainWindow, page: int) -> None:
    window.open_yard.select({"A1"})
    window.side.tabs.setCurrentIndex(page)
    wanted = {
        part for part in focusable(window)
        if part.isEnabled() and part.focusPolicy() & Qt.FocusPolicy.TabFocus and part.isVisible()
    }
    assert len(wanted) > 15
    start = next(iter(wanted))
    start.setFocus()
    seen: list[QWidget] = []
    for _ in range(4 * len(wanted)):
        here = QApplication.focusWidget()
        if here is None or here in seen:
            break
        seen.append(here)
        window.focusNextChild()
    missed = wanted - set(seen)
    assert [f"{type(part).__name__} {part.accessibleName()}" for part in missed] == []


def test_f2_goes_to_the_first_field_of_what_is_selected(window: MainWindow) -> None:
    window.open_yard.select({"A1"})
    window.side.tabs.setCurrentWidget(window.side.plants)
    window.show_fields()
    assert window.side.fields.grid.entries["plant"].line.hasFocus()
