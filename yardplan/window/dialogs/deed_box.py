"""The lot line from a deed: its calls typed or pasted, seen on the plan while they are typed."""

from __future__ import annotations

import math

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialogButtonBox, QLineEdit, QPlainTextEdit, QVBoxLayout, QWidget

from yardplan.language import thousands, tr
from yardplan.units import UnitError, format_area, format_length
from yardplan.window.canvas.geometry import area_of
from yardplan.window.dialogs.box import TrialBox, roomy
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.parts import label
from yardplan.window.tools.typed import parse_typed
from yardplan.yard import edits
from yardplan.yard.deed import DeedError, Walk, fine_length, lot_of, read_calls
from yardplan.yard.edges import LOT
from yardplan.yard.ground import Outline, Point

_SIZE = (460, 420)


class DeedBox(TrialBox):
    """Each change shows on the plan at once; Esc or Cancel leaves the plan as it was."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(open_yard, parent)
        self.setWindowTitle(tr("Lot line from a deed"))
        lot = open_yard.yard.lot
        self._start: Point = lot[0] if lot else (0.0, 0.0)
        self.calls = QPlainTextEdit()
        self.calls.setTabChangesFocus(True)
        self.calls.setAccessibleName(tr("Calls of the deed"))
        self.calls.setPlaceholderText(
            tr("N 45°30'15\" E 100.50 ft\nS 44°29'45\" E 60.25 ft\n123°15' 36.58 m")
        )
        self.start = QLineEdit("; ".join(format_length(part, open_yard.units) for part in self._start))
        self.start.setAccessibleName(tr("Place of the first corner"))
        self.told = label("", "muted", wrap=True)
        self.fault = label("", "fault", wrap=True)
        self._lay_out()
        self.calls.textChanged.connect(self.refresh)
        self.start.textEdited.connect(self.refresh)
        self.refresh()

    def _lay_out(self) -> None:
        box = QVBoxLayout(self)
        box.setSpacing(8)
        box.addWidget(label(tr(
            "One call to a line, a bearing and a distance, the last back to the first corner. An angle "
            "without letters counts clockwise from north. North is true north as set in the yard's fields."
        ), "muted", wrap=True))
        box.addWidget(self.calls, 1)
        box.addWidget(label(self.start.accessibleName(), "muted"))
        box.addWidget(self.start)
        box.addWidget(self.told)
        box.addWidget(self.fault)
        buttons = QDialogButtonBox.StandardButton
        self.buttons = QDialogButtonBox(buttons.Ok | buttons.Cancel)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        box.addWidget(self.buttons)
        self.resize(roomy(self, *_SIZE))

    def _place(self) -> Point:
        if not self.start.isModified():
            return self._start
        entry = parse_typed(self.start.text(), self._open_yard.units)
        if entry.form != "place":
            typed = self.start.text()
            raise UnitError(tr("'{text}' is not a place: write right and up like 4; 2.5", text=typed))
        return (entry.first, entry.second)

    def _drawn(self) -> tuple[Walk, Outline] | None:
        """The walk and the lot line, or None with the fault shown; nothing is wrong with an empty box."""
        open_yard, text = self._open_yard, self.calls.toPlainText()
        try:
            calls = read_calls(text, open_yard.units)
            drawn = lot_of(calls, self._place(), open_yard.yard.site.north, open_yard.units)
        except (DeedError, UnitError) as error:
            self.fault.setText(str(error) if text.strip() else "")
            return None
        self.fault.setText("")
        return drawn

    def refresh(self) -> None:
        """Show on the plan what the calls say, and how they close."""
        drawn = self._drawn()
        self.fault.setVisible(bool(self.fault.text()))
        self.told.setText(self._words(*drawn) if drawn else "")
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(drawn is not None)
        if drawn is None:
            self._open_yard.drop_trial()
        else:
            self._open_yard.show_trial(edits.set_lot(self._open_yard.yard, drawn[1]))
            # A deed easily leaves the part of the sheet in sight.
            self._open_yard.show_place(drawn[1])

    def _words(self, walked: Walk, corners: Outline) -> str:
        units = self._open_yard.units
        area, way = format_area(area_of(corners), units), fine_length(walked.way, units)
        if math.isinf(walked.one_in):
            return tr("The calls close. {area}, {way} round.", area=area, way=way)
        return tr(
            "The calls miss their beginning by {error}, 1 part in {parts}: this is shared out over the "
            "corners by the way walked. {area}, {way} round.",
            error=fine_length(walked.error, units), parts=thousands(walked.one_in), area=area, way=way,
        )

    def accept(self) -> None:
        drawn = self._drawn()
        if drawn is None:
            return
        yard = edits.set_lot(self._open_yard.yard, drawn[1])
        self._open_yard.commit(tr("Draw the lot line from a deed"), yard, selection={LOT})
        super().accept()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        # Enter in the calls begins a line; with Ctrl it takes them.
        enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if enter and event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.accept()
        else:
            super().keyPressEvent(event)
