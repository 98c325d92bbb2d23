"""Fixtures for tests of the window: open yards that stop their workers, and the program dressed light."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QLocale, QSettings
from PySide6.QtWidgets import QApplication

from yardplan.window.languages import speak
from yardplan.window.main_window import MainWindow
from yardplan.window.open_yard import OpenYard
from yardplan.window.questions import Questions
from yardplan.window.theme import Theme
from yardplan.yard.yard import Yard


@pytest.fixture(autouse=True)
def _collector_on_this_thread() -> Iterator[None]:
    """As in the program: the collector never runs on a worker, where it could destroy parts of a window."""
    gc.disable()
    yield
    gc.collect()
    # What is still there stays: the next collection need not walk it again.
    gc.freeze()
    gc.enable()


@pytest.fixture(autouse=True, scope="session")
def _clipboard_emptied(qapp: QApplication) -> Iterator[None]:
    """Offscreen, Qt lets go of what was copied only after Python has ended, which crashes the process."""
    yield
    qapp.clipboard().clear()


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


def _forbid_questions(window: MainWindow) -> None:
    """A question that a test does not answer fails it, in place of a box that waits for ever."""

    def forbidden(name: str) -> Callable[..., object]:
        def ask(*words: object) -> object:
            raise AssertionError(f"the window asked {name} {words}")

        return ask

    for name in [n for n in vars(Questions) if not n.startswith("_")]:
        setattr(window.questions, name, forbidden(name))


@pytest.fixture
def make_window(theme: Theme, qtbot, tmp_path) -> Iterator[Callable[..., MainWindow]]:
    """Make shown, furnished windows with settings and recovery of their own; closed when the test ends."""
    made: list[MainWindow] = []

    def make(yard: Yard | None = None, *, size: tuple[int, int] = (1280, 764)) -> MainWindow:
        settings = QSettings(str(tmp_path / f"window{len(made)}.ini"), QSettings.Format.IniFormat)
        window = MainWindow(OpenYard(yard), settings=settings, recovery=tmp_path / f"recovery{len(made)}")
        window.theme = theme
        _forbid_questions(window)
        made.append(window)
        window.resize(*size)
        window.show()
        window.build_side()
        window.canvas.fit()
        window.activateWindow()
        qtbot.waitUntil(lambda: QApplication.activeWindow() is window)
        return window

    yield make
    for window in made:
        window.questions.save_changes = lambda name: "discard"
        window.close()
        window.deleteLater()


@pytest.fixture
def windows() -> list[MainWindow]:
    """One window kept over the examples of a property."""
    return []


@pytest.fixture
def german() -> Iterator[None]:
    """German while the test runs."""
    before = QLocale()
    speak("de")
    yield
    speak("en")
    QLocale.setDefault(before)
