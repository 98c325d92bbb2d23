from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.plants.catalogue import catalogue
from yardplan.window.dialogs.about import AboutDialog
from yardplan.window.dialogs.command_finder import (
    CommandFinder,
    command_name,
    matching,
    menu_name,
    shortcut_words,
)
from yardplan.window.dialogs.cultivar_card import CultivarCard
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.panels.cultivar_facts import card_facts, readable_note
from yardplan.window.used_commands import COMMON, UsedCommands
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]
_LIBERTY, _RUSSET = PlantKey("apple", "Liberty"), PlantKey("apple", "Egremont Russet")


@pytest.fixture
def actions(qapp) -> list[QAction]:
    made = [QAction("&Undo"), QAction("&Redo"), QAction("Drop a &plant…"), QAction("Hidden && shown")]
    made[0].setShortcut(QKeySequence("Ctrl+Z"))
    made[1].setEnabled(False)
    made[2].setStatusTip("Click where the tree goes")
    return made


def test_commands_are_found_by_name_or_hint(actions: list[QAction]) -> None:
    assert [command_name(a) for a in matching(actions, "und")] == ["Undo"]
    assert [command_name(a) for a in matching(actions, "tree")] == ["Drop a plant"]
    assert len(matching(actions, "")) == 4
    assert matching(actions, "zzz") == []
    assert command_name(actions[3]) == "Hidden & shown"
    assert shortcut_words(actions[0]) == "Ctrl+Z"
    menu = QMenu("&Edit")
    menu.addAction(actions[0])
    assert menu_name(actions[0]) == "Edit"
    assert [command_name(a) for a in matching(actions, "edit")] == ["Undo"]


def names_of(found: list[QAction]) -> list[str]:
    return [command_name(action) for action in found]


def test_the_likeliest_command_comes_first(qapp) -> None:
    words = ("Replant", "The plant of the year", "Plant", "Plant list", "Open")
    made = [QAction(each) for each in words]
    made[4].setStatusTip("Plants of a file")
    assert names_of(matching(made, "plant")) == [
        "Plant", "Plant list", "The plant of the year", "Replant", "Open",
    ]
    made[3].setEnabled(False)
    made[0].setObjectName("replant")
    made[1].setText("A tree replanted")
    assert names_of(matching(made, "plant"))[1] == "Plant list"
    # Among equals the one used lately, then what can be done now.
    assert names_of(matching(made, "replant", ("replant",)))[0] == "Replant"
    assert names_of(matching(made, ""))[0] == "A tree replanted"
    assert names_of(matching(made, "", ("none", "replant")))[0] == "Replant"


def test_a_choice_of_an_inner_menu_says_what_it_sets(qapp) -> None:
    outer, inner, group = QMenu("&View"), QMenu("Te&xt size"), QActionGroup(None)
    outer.addMenu(inner)
    choice = inner.addAction("150 %")
    assert command_name(choice) == "150 %"
    group.addAction(choice)
    assert command_name(choice) == "Text size: 150 %"
    assert menu_name(choice) == "View"


def test_the_commands_used_last_are_kept_and_come_first(tmp_path) -> None:
    settings = QSettings(str(tmp_path / "used.ini"), QSettings.Format.IniFormat)
    used = UsedCommands(settings)
    assert tuple(used.first()) == COMMON
    for name in ("sheets", "undo", "grid", "find command", "sheets"):
        used.note(name)
    assert UsedCommands(settings).names == ("sheets", "grid")
    assert list(UsedCommands(settings).first())[:3] == ["sheets", "grid", "tool lot"]
    for number in range(9):
        used.note(f"command {number}")
    assert UsedCommands(settings).names[0] == "command 8"
    assert len(UsedCommands(settings).names) == 6


def test_enter_does_the_first_found_and_arrows_walk(qtbot: QtBot, theme, actions: list[QAction]) -> None:
    done: list[str] = []
    for action in actions:
        action.triggered.connect(lambda _on=False, a=action: done.append(command_name(a)))
    finder = CommandFinder(actions)
    qtbot.addWidget(finder)
    finder.show()
    qtbot.keyClicks(finder.line, "plant")
    qtbot.keyClick(finder.line, Qt.Key.Key_Return)
    assert done == ["Drop a plant"]
    assert not finder.isVisible()


def test_a_command_that_cannot_be_done_now_is_not_done(qtbot: QtBot, theme, actions: list[QAction]) -> None:
    finder = CommandFinder(actions)
    qtbot.addWidget(finder)
    finder.show()
    qtbot.keyClicks(finder.line, "redo")
    assert "not now" in finder.commands.index(0).data()
    qtbot.keyClick(finder.line, Qt.Key.Key_Return)
    assert finder.isVisible()
    finder.line.setText("zzz")
    assert finder.none.isVisible()
    assert unnamed(finder) == []


def test_card_shows_facts_with_sources_and_marks_memory(qtbot: QtBot, opened: Opened, theme) -> None:
    card = CultivarCard(opened(builders.yard_of()), _LIBERTY)
    qtbot.addWidget(card)
    card.show()
    names = [card.table.item(row, 0).text() for row in range(card.table.rowCount())]
    assert {"Partner", "Winter", "Bloom", "Ripens", "Sun", "Soil pH"} <= set(names)
    cultivar = catalogue().cultivars[_LIBERTY]
    for row, name in enumerate(names):
        text = card.table.item(row, 1).text()
        fact = next(f for f in card_facts(cultivar, catalogue().crop("apple"), "metric") if f.name == name)
        assert text.endswith("†") is fact.memory
        card.table.setCurrentCell(row, 1)
        assert fact.source in card.source.text()
    assert unnamed(card) == []
    assert too_small(card) == []


def test_card_tells_looks_through_the_year_and_usual_diseases(qtbot: QtBot, opened: Opened, theme) -> None:
    """Liberty is resistant to scab and to cedar-apple rust (West Virginia University)."""
    card = CultivarCard(opened(builders.yard_of()), _LIBERTY)
    qtbot.addWidget(card)
    told = {card.table.item(row, 0).text(): row for row in range(card.table.rowCount())}
    values = {name: card.table.item(row, 1).text() for name, row in told.items()}
    assert {"Flowers", "Autumn colour", "Wildlife"} <= set(told)
    assert "pink" in values["Flowers"].lower() or "white" in values["Flowers"].lower()
    rust = next(name for name in told if "cedar-apple rust" in name.lower())
    scab = next(name for name in told if "scab" in name.lower())
    assert "resistant" in values[rust]
    assert "resistant" in values[scab]
    card.table.setCurrentCell(told[rust], 1)
    assert "West Virginia" in card.source.text()


def test_facts_in_which_two_varieties_differ_stand_out(qtbot: QtBot, opened: Opened, theme) -> None:
    card = CultivarCard(opened(builders.yard_of()), _LIBERTY)
    qtbot.addWidget(card)
    card.beside.entered.emit(_RUSSET)
    bold = 0
    for row in range(card.table.rowCount()):
        first, second = (card.table.item(row, column) for column in (1, 2))
        differ = first.text().rstrip(" †") != second.text().rstrip(" †")
        assert first.font().bold() is second.font().bold() is differ, card.table.item(row, 0).text()
        bold += differ
    assert 0 < bold < card.table.rowCount()


def test_two_varieties_side_by_side(qtbot: QtBot, opened: Opened, theme) -> None:
    card = CultivarCard(opened(builders.yard_of()), _LIBERTY)
    qtbot.addWidget(card)
    card.beside.entered.emit(_RUSSET)
    assert card.table.columnCount() == 3
    assert card.table.horizontalHeaderItem(2).text() == "Egremont Russet"
    card.beside.entered.emit(None)
    assert card.table.columnCount() == 2


def test_card_takes_in_hand(qtbot: QtBot, opened: Opened, theme) -> None:
    open_yard = opened(builders.yard_of())
    card = CultivarCard(open_yard, _LIBERTY)
    qtbot.addWidget(card)
    card.take_button.click()
    assert open_yard.in_hand == InHand(plant=_LIBERTY)


def test_card_of_an_unknown_variety_says_so(qtbot: QtBot, opened: Opened, theme) -> None:
    card = CultivarCard(opened(builders.yard_of()), PlantKey("apple", "Nobody's"))
    qtbot.addWidget(card)
    assert "not known" in card.table.item(0, 1).text()


def test_every_variety_of_the_catalogue_has_a_card() -> None:
    known = catalogue()
    for cultivar in known.cultivars.values():
        for fact in card_facts(cultivar, known.crop(cultivar.crop), "imperial"):
            assert fact.value
            assert "nan" not in fact.value.lower().split()
            assert "None" not in fact.value


def test_notes_leave_out_what_speaks_of_the_table() -> None:
    note = "bloom_order for apple = days from Red Delicious; very early bloom; hardy; zone_min was 4"
    assert readable_note(note) == "very early bloom; hardy"


def test_about_names_licence_qt_and_data(qtbot: QtBot, theme) -> None:
    from PySide6.QtWidgets import QPlainTextEdit

    about = AboutDialog()
    qtbot.addWidget(about)
    about.show()
    texts = "\n".join(edit.toPlainText() for edit in about.findChildren(QPlainTextEdit))
    for words in ("MIT", "Lesser General Public License", "SIL Open Font License", "GeoNames", "CC BY 4.0"):
        assert words in texts
    assert unnamed(about) == []
