from __future__ import annotations

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QDialog
from pytestqt.qtbot import QtBot
from support.widgets import unnamed

from yardplan.shipped import folder
from yardplan.window.main_window import MainWindow
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.theme import DARK, LIGHT, colours_now
from yardplan.yard.planting import PlantKey


@pytest.fixture
def window(qtbot: QtBot, theme, tmp_path) -> MainWindow:
    settings = QSettings(str(tmp_path / "window.ini"), QSettings.Format.IniFormat)
    made = MainWindow(OpenYard(), settings=settings, recovery=tmp_path)
    made.theme = theme
    qtbot.addWidget(made)
    made.open_yard.open(folder("sample_yards") / "first_orchard.yard")
    made.show()
    made.build_side()
    return made


def boxes(window: MainWindow) -> list[str]:
    return [box.windowTitle() for box in window.findChildren(QDialog) if box.isVisible()]


@pytest.mark.parametrize(
    ("command", "title"),
    [("site card", "Site card"), ("local rules", "Local rules"), ("own varieties", "Own varieties"),
     ("about", "About yardplan")],
)
def test_each_box_opens_once(window: MainWindow, command: str, title: str) -> None:
    window.actions_[command].trigger()
    window.actions_[command].trigger()
    assert boxes(window) == [title]
    assert all(unnamed(box) == [] for box in window.findChildren(QDialog))


def test_partner_lines_can_be_hidden_and_shown_again(window: MainWindow) -> None:
    for shown in (False, True):
        window.actions_["partners"].trigger()
        assert window.canvas.scene.layers.partners is shown


def test_commands_about_a_plant_wait_for_one(window: MainWindow) -> None:
    card, partners = window.actions_["variety card"], window.actions_["find partner"]
    assert not card.isEnabled()
    assert not partners.isEnabled()
    window.open_yard.select({"A1"})
    assert card.isEnabled()
    card.trigger()
    assert boxes(window) == ["Akane, apple"]
    partners.trigger()
    assert window.side.tabs.currentWidget() is window.side.partners
    assert window.side.partners.title.text() == "Partners for Akane (A1)"
    window.open_yard.select(())
    assert not card.isEnabled()
    window.open_yard.take_in_hand(InHand(plant=PlantKey("apple", "Liberty")))
    partners.trigger()
    assert window.side.partners.title.text() == "Partners for Liberty"


def test_what_the_yard_lacks_is_listed(window: MainWindow) -> None:
    window.actions_["yard partners"].trigger()
    assert window.side.partners.rows.rowCount() >= 1


def test_findings_are_walked_by_keys(window: MainWindow, qtbot: QtBot) -> None:
    with qtbot.waitSignal(window.open_yard.place_wanted):
        window.actions_["next finding"].trigger()
    first = window.open_yard.selection
    assert first
    window.actions_["next finding"].trigger()
    window.actions_["previous finding"].trigger()
    assert window.open_yard.selection == first


def test_appearance_is_chosen_and_remembered(window: MainWindow) -> None:
    window.actions_["scheme dark"].trigger()
    assert colours_now() is DARK
    window.panel_commands.appearance.aboutToShow.emit()
    assert window.actions_["scheme dark"].isChecked()
    window.actions_["scheme light"].trigger()
    assert colours_now() is LIGHT
    assert window.theme.choice == "light"


def test_no_two_commands_share_a_key(window: MainWindow) -> None:
    keys = [key.toString() for action in window.actions_.all() for key in action.shortcuts()]
    assert len(keys) == len(set(keys))
