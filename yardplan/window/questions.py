"""Every question the window asks, in one place, so that tests can answer for a person."""

from __future__ import annotations

from pathlib import Path
from typing import Literal

# By module, so that a class of boxes is loaded when the first is asked for.
from PySide6 import QtWidgets

from yardplan.language import later, tr

SaveAnswer = Literal["save", "discard", "cancel"]
_FILES = later("Yards (*.yard);;All files (*)")


class Questions:
    """Asks with dialogs of the platform; replace an instance's methods to answer otherwise."""

    def __init__(self, window: QtWidgets.QWidget) -> None:
        self._window = window

    def save_changes(self, name: str) -> SaveAnswer:
        """Unsaved work: save it, discard it, or go on working (Esc and the closing cross)."""
        box = QtWidgets.QMessageBox(self._window)
        box.setIcon(QtWidgets.QMessageBox.Icon.Question)
        box.setText(tr("Save the changes to {name}?", name=name))
        box.setInformativeText(tr("What you do not save is lost."))
        buttons = QtWidgets.QMessageBox.StandardButton
        box.setStandardButtons(buttons.Save | buttons.Discard | buttons.Cancel)
        box.setDefaultButton(buttons.Save)
        box.setEscapeButton(buttons.Cancel)
        answers: dict[int, SaveAnswer] = {buttons.Save.value: "save", buttons.Discard.value: "discard"}
        return answers.get(int(box.exec()), "cancel")

    def restore(self, name: str, when: str) -> bool:
        """Whether to take up unsaved work that was kept when the program ended."""
        box = QtWidgets.QMessageBox(self._window)
        box.setIcon(QtWidgets.QMessageBox.Icon.Question)
        box.setText(tr("Take up the unsaved work on {name} of {when}?", name=name, when=when))
        box.setInformativeText(tr("The program ended before it was saved. The file itself is unchanged."))
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
        answer, fine = QtWidgets.QInputDialog.getMultiLineText(self._window, tr("Note"), question, text)
        return answer if fine else None

    def line(self, question: str, text: str) -> str | None:
        """One line, or None for cancel."""
        normal = QtWidgets.QLineEdit.EchoMode.Normal
        answer, fine = QtWidgets.QInputDialog.getText(self._window, "yardplan", question, normal, text)
        return answer if fine else None

    def tell_fault(self, title: str, text: str, details: str = "") -> None:
        """One clear message; every fault in the details."""
        box = QtWidgets.QMessageBox(self._window)
        box.setIcon(QtWidgets.QMessageBox.Icon.Warning)
        box.setText(title)
        box.setInformativeText(text)
        if details:
            box.setDetailedText(details)
        box.exec()
