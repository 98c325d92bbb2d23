"""Starts Qt, dresses it and opens the first window."""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import QEvent, QSettings, QTimer
from PySide6.QtGui import QFileOpenEvent
from PySide6.QtWidgets import QApplication

from yardplan.window.languages import in_force, speak
from yardplan.window.main_window import MainWindow
from yardplan.window.theme import Theme
from yardplan.window.tidy import Tidy


class Application(QApplication):
    """The program's Qt application; takes files that the system hands over (macOS)."""

    def __init__(self, arguments: list[str]) -> None:
        super().__init__([*arguments, "-style", "fusion"])
        self.setProperty("style", "fusion")
        self.setOrganizationName("yardplan")
        self.setApplicationName("yardplan")
        self.setApplicationDisplayName("")
        self.window: MainWindow | None = None

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QFileOpenEvent) and self.window is not None:
            self.window.documents.open_path(Path(event.file()))
            return True
        return super().event(event)


def start(path: Path | None) -> Application:
    """The application with its window shown, and the yard in it if one is named; not yet running."""
    app = Application(sys.argv[:1])
    speak(in_force(QSettings()))
    theme = Theme(QSettings())
    theme.apply()
    window = MainWindow()
    window.theme = theme
    theme.changed.connect(window.tools.dress)
    app.window = window
    if path is not None:
        window.documents.load(path)
    tidy = Tidy(lambda: window.canvas.tool.busy or window.open_yard.on_trial)
    app.aboutToQuit.connect(tidy.stop)
    window.canvas.painted_first.connect(
        lambda: QTimer.singleShot(0, lambda: _settle(window, tidy, offer=path is None))
    )
    window.show()
    return app


def run(path: Path | None) -> int:
    """Show the window, with a yard if one is named, until it is closed. Returns the exit code."""
    app = start(path)
    code = app.exec()
    app.window = None
    return code


def _settle(window: MainWindow, tidy: Tidy, *, offer: bool) -> None:
    """Once the window is on the screen: its side, work left from a crash, and a tidy memory."""
    window.build_side()
    if offer:
        window.autosave.offer(window.questions)
        if window.help is not None:
            window.help.first_run()
    tidy.start()
