"""Every question the window asks, in one place, so that tests can answer for a person."""

from __future__ import annotations

from pathlib import Path
from typing import Literal

# By module, so that a class of boxes is loaded when the first is asked for.
from PySide6 import QtWidgets
from PySide6.QtGui import QKeySequence, QShortcut

from yardplan.language import later, tr

SaveAnswer = Literal["save", "discard", "cancel"]
#: Title of boxes that need none of their own: the name of the program.
_NAME = "yardplan"
#: Least width of a box in which something is typed, pixels.
_WIDE = 320
_FILES = later("Yards (*.yard);;All files (*)")


class Questions:
    """Asks with dialogs of the platform; replace an instance's methods to answer otherwise."""

    def __init__(self, window: QtWidgets.QWidget) -> None:
        self._window = window

    def save_changes(self, name: str) -> SaveAnswer:
        """Unsaved work: save it, discard it, or go on working (Esc and the closing cross)."""
        icon = QtWidgets.QMessageBox.Icon.Question
        box = self._message(
            icon, tr("Save the changes to {name}?", name=name), tr("What you do not save is lost."),
        )
        buttons = QtWidgets.QMessageBox.StandardButton
        box.setStandardButtons(buttons.Save | buttons.Discard | buttons.Cancel)
        box.setDefaultButton(buttons.Save)
        box.setEscapeButton(buttons.Cancel)
        answers: dict[int, SaveAnswer] = {buttons.Save.value: "save", buttons.Discard.value: "discard"}
        return answers.get(int(box.exec()), "cancel")

    def restore(self, name: str, when: str) -> bool:
        """Whether to take up unsaved work that was kept when the program ended."""
        icon = QtWidgets.QMessageBox.Icon.Question
        box = self._message(
            icon, tr("Take up the unsaved work on {name} of {when}?", name=name, when=when),
            tr("The program ended before it was saved. The file itself is unchanged."),
        )
        take = box.addButton(tr("Take it up"), QtWidgets.QMessageBox.ButtonRole.AcceptRole)
        box.addButton(tr("Leave it for now"), QtWidgets.QMessageBox.ButtonRole.RejectRole)
        box.setDefaultButton(take)
        box.exec()
        return box.clickedButton() is take

    def open_path(self, folder: Path) -> Path | None:
        """Which file to open."""
        ask = QtWidgets.QFileDialog.getOpenFileName
        name, _ = ask(self._window, tr("Open a yard"), str(folder), tr(_FILES))
        return Path(name) if name else None

    def save_path(self, suggested: Path) -> Path | None:
        """Where to save; `.yard` is added where no ending is typed."""
        ask = QtWidgets.QFileDialog.getSaveFileName
        name, _ = ask(self._window, tr("Save the yard as"), str(suggested), tr(_FILES))
        if not name:
            return None
        return Path(name) if Path(name).suffix else Path(name).with_suffix(".yard")

    def import_path(self, title: str, folder: Path, kinds: str) -> Path | None:
        """Which file of another format to read."""
        name, _ = QtWidgets.QFileDialog.getOpenFileName(self._window, title, str(folder), kinds)
        return Path(name) if name else None

    def export_path(self, title: str, suggested: Path, kinds: str) -> Path | None:
        """Where to write a file of another format."""
        name, _ = QtWidgets.QFileDialog.getSaveFileName(self._window, title, str(suggested), kinds)
        return Path(name) if name else None

    def text(self, question: str, text: str) -> str | None:
        """A few words, or None for cancel."""
        box = self._input(tr("Note"), question, text, lines=True)
        box.setLabelText(tr("{question} (Enter begins a new line, Ctrl+Enter takes it)", question=question))
        for key in ("Ctrl+Return", "Ctrl+Enter"):
            QShortcut(QKeySequence(key), box, box.accept)
        return box.textValue() if box.exec() else None

    def line(self, question: str, text: str) -> str | None:
        """One line, or None for cancel."""
        box = self._input(_NAME, question, text)
        return box.textValue() if box.exec() else None

    def _input(
        self, title: str, question: str, text: str, *, lines: bool = False
    ) -> QtWidgets.QInputDialog:
        box = QtWidgets.QInputDialog(self._window)
        box.setOption(QtWidgets.QInputDialog.InputDialogOption.UsePlainTextEditForTextInput, lines)
        box.setWindowTitle(title)
        box.setLabelText(question)
        box.setTextValue(text)
        box.setMinimumWidth(_WIDE)
        # What is typed in has no name of its own: a screen reader says the question.
        for part in box.findChildren(QtWidgets.QWidget):
            if isinstance(part, QtWidgets.QLineEdit | QtWidgets.QPlainTextEdit):
                part.setAccessibleName(question)
        return box

    def _message(self, icon: QtWidgets.QMessageBox.Icon, text: str, more: str) -> QtWidgets.QMessageBox:
        box = QtWidgets.QMessageBox(self._window)
        box.setWindowTitle(_NAME)
        box.setIcon(icon)
        box.setText(text)
        box.setInformativeText(more)
        return box

    def tell_fault(self, title: str, text: str, details: str = "") -> None:
        """One clear message; every fault in the details."""
        icon = QtWidgets.QMessageBox.Icon.Warning
        box = self._message(
            icon, title,
            text,
        )
        box.setStandardButtons(QtWidgets.QMessageBox.StandardButton.Ok)
        box.setDefaultButton(QtWidgets.QMessageBox.StandardButton.Ok)
        if details:
            box.setDetailedText(details)
        box.exec()
