"""The window's languages: every text translated, the compiled file up to date, Qt asked at use."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, QSettings
from pytestqt.qtbot import QtBot
from support import texts

from yardplan.language import tr, tr_n
from yardplan.window.languages import LANGUAGES, choose, chosen, in_force, speak

OTHERS = sorted(set(LANGUAGES) - {"en"})


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
