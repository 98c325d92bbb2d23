"""The languages of the window: texts translated and said; the compiled file up to date; Qt asked at use."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import get_args

import pytest
from PySide6.QtCore import QLocale, QSettings
from PySide6.QtWidgets import QDialog, QMenu
from pytestqt.qtbot import QtBot
from support import texts
from support.seen_texts import english_among, seen_in
from support.unwrapped import unwrapped

from yardplan.checks.finding import Weight
from yardplan.files.reading import read_yard
from yardplan.language import tr, tr_n
from yardplan.sheets.document import Document
from yardplan.window.dialogs.command_finder import CommandFinder
from yardplan.window.languages import LANGUAGES, choose, chosen, in_force, speak
from yardplan.window.main_window import MainWindow
from yardplan.window.panels.history_entry import READING
from yardplan.yard.ground import BarrierKind, PavingKind, Roof, ServiceKind
from yardplan.yard.planting import Pattern
from yardplan.yard.site import Drainage, Texture

OTHERS = sorted(set(LANGUAGES) - {"en"})
#: Words with a space that nobody sees, or that are the same in every language.
NOT_SAID = re.compile(
    r"equal steps|in line|in hand|top left|very early|not proved|1/[48] in|yardplan \{\}|\{\} – yardplan"
    r"|\{\} ft|\{\} \{\}\.ics|(?:tool|card|group|export) \{\}|yardplan long work|QPushButton.*|has its own F1"
    r"|\{every command\}|(?:\{\} )?[\w ]*\(?(?:\*\.\w+ ?)+\)?"
)
#: Commands that open the boxes.
BOXES = (
    "site card", "local rules", "variety card", "own varieties", "sheets", "shopping", "care", "about",
    "history",
)


@pytest.mark.parametrize("code", OTHERS)
def test_every_text_is_translated_with_the_same_names(code: str) -> None:
    known = texts.translations(code)
    for room, said in texts.said().items():
        for text, count in said.items():
            assert text in known, (room, text)
            forms = known[text] if isinstance(known[text], list) else [known[text]]
            assert isinstance(known[text], list) == count, (room, text)
            for form in forms:
                assert texts.names_in(form) | {"n"} == texts.names_in(text) | {"n"}, (room, text, form)


@pytest.mark.parametrize("code", OTHERS)
def test_no_text_has_two_translations_and_none_is_obsolete(code: str) -> None:
    said = texts.said()
    for path in (texts.LANGUAGES / code).glob("*.ts"):
        sources = re.findall(r"<source>", path.read_text(encoding="utf-8"))
        assert len(sources) == len(said[path.stem]), path.name


@pytest.mark.parametrize("code", OTHERS)
def test_the_compiled_file_is_what_the_texts_say(code: str, tmp_path: Path) -> None:
    texts.compile_to(code, tmp_path / "fresh.qm")
    assert (tmp_path / "fresh.qm").read_bytes() == (texts.LANGUAGES / f"yardplan_{code}.qm").read_bytes()


def test_qt_is_asked_at_use_and_english_comes_back(qtbot: QtBot) -> None:
    before = QLocale()
    try:
        speak("de")
        assert tr("As the system") == "Wie das System"
        assert tr_n("{n} plant", "{n} plants", 1) == "1 Pflanze"
        assert tr_n("{n} plant", "{n} plants", 4) == "4 Pflanzen"
        assert QLocale().language() == QLocale.Language.German
    finally:
        speak("en")
        QLocale.setDefault(before)
    assert tr("As the system") == "As the system"
    assert tr_n("{n} plant", "{n} plants", 1) == "1 plant"


def test_the_choice_is_remembered(tmp_path: Path) -> None:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    assert chosen(settings) == "system"
    choose(settings, "de")
    assert chosen(settings) == in_force(settings) == "de"


def test_the_window_and_its_boxes_are_all_in_german(
    german: None, qtbot: QtBot, make_window: Callable[..., MainWindow]
) -> None:
    window = make_window(read_yard(Path("sample_yards/first_orchard.yard")))
    known = texts.translations("de")
    assert window.menus["File"].title().replace("&", "") == "Datei"
    seen = seen_in(window)
    window.open_yard.select({window.open_yard.yard.plantings[0].id})
    qtbot.wait(20)
    seen |= seen_in(window)
    for name in BOXES:
        window.actions_[name].trigger()
    CommandFinder(window.actions_.all(), window)
    qtbot.wait(20)
    seen |= seen_in(window)
    for box in window.findChildren(QDialog):
        box.close()
    assert len(seen) > 700
    left = english_among(seen, known)
    assert not left, "\n".join(left)
    words = {word for text in seen for word in re.findall(r"\w+", text)}
    assert not words & {"Undo", "Redo", "File", "Save", "Cancel", "Close", "Delete", "needs", "about"}


def test_the_documents_own_words_are_among_the_texts() -> None:
    said = {text for room in texts.said().values() for text in room}
    kinds = (Roof, BarrierKind, PavingKind, ServiceKind, Pattern, Texture, Drainage)
    assert {word for kind in kinds for word in get_args(kind)} <= said
    assert {weight.value for weight in Weight} <= said


def test_what_grew_before_is_typed_in_german_and_kept_in_the_words_of_the_rules(german: None) -> None:
    read = READING.read("Tomate bis 2024; Apfel")
    assert [(each.crop, each.until) for each in read] == [("tomato", 2024), ("apple", None)]
    assert READING.show(read) == "Tomate 2024; Apfel"


def access_keys(names: list[str]) -> list[str]:
    """The letters marked in the words of a menu."""
    return [found[1].lower() for name in names if (found := re.search(r"&(\w)", name.replace("&&", "")))]


@pytest.mark.parametrize("code", sorted(LANGUAGES))
def test_no_menu_has_one_access_key_for_two_commands(
    code: str, qtbot: QtBot, make_window: Callable[..., MainWindow]
) -> None:
    before = QLocale()
    speak(code)
    try:
        window = make_window()
        menus = [window.menuBar(), *window.findChildren(QMenu)]
        doubled = {
            menu.objectName() or menu.windowTitle() or str(names): keys for menu in menus
            if (names := [action.text() for action in menu.actions() if action.text()])
            and len(keys := access_keys(names)) != len(set(keys))
        }
    finally:
        speak("en")
        QLocale.setDefault(before)
    assert doubled == {}


def test_no_text_of_the_window_is_left_unsaid(make_window: Callable[..., MainWindow]) -> None:
    """A text that goes through none of `tr`, `tr_n` and `later` would stay English in every language."""
    names = {action.objectName() for action in make_window().actions_.all()}
    window = texts.ROOT / "yardplan" / "window"
    left = [
        f"{path.relative_to(window)}:{line}: {words}"
        for path in sorted(window.rglob("*.py"))
        for line, words in unwrapped(path)
        if words not in names and not NOT_SAID.fullmatch(words)
    ]
    assert left == []


def test_documents_are_marked_with_their_language(german: None) -> None:
    assert Document(title="x", pages=()).language == "de"
    speak("en")
    assert Document(title="x", pages=()).language == "en"
