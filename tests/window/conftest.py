"""Fixtures for tests of the window: open yards that stop their workers, and the program dressed light."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from yardplan.window.open_yard import OpenYard
from yardplan.window.theme import Theme
from yardplan.yard.yard import Yard


@pytest.fixture
def opened(qapp: QApplication) -> Iterator[Callable[[Yard], OpenYard]]:
    """Open a yard; its workers are stopped when the test ends."""
    made: list[OpenYard] = []

    def open_it(yard: Yard) -> OpenYard:
        made.append(OpenYard(yard))
        return made[-1]

    yield open_it
    for each in made:
        each.close()


@pytest.fixture
def theme(qapp: QApplication, tmp_path) -> Iterator[Theme]:
    """The program's theme with settings of its own; the program is undressed when the test ends."""
    made = Theme(QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat))
    made.choose("light")
    yield made
    qapp.setStyleSheet("")
