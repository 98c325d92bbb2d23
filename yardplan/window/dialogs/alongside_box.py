"""A path or bed alongside something: what, along which side, how far off and how wide; shown while chosen."""

from __future__ import annotations

import math

from PySide6.QtWidgets import QDialogButtonBox, QFormLayout, QLabel, QLineEdit, QWidget

from yardplan.language import tr
from yardplan.units import FOOT, System, UnitError, format_length, parse_length
from yardplan.window.canvas.geometry import inside, polar
from yardplan.window.dialogs.box import TrialBox
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.parts import Combo
from yardplan.window.tools.naming import compass_word, names_of
from yardplan.yard import edits
from yardplan.yard.alongside import Along, Make, with_strip
from yardplan.yard.edges import LOT, edges_of, is_closed, outline_of
from yardplan.yard.edits import EditError
from yardplan.yard.ground import Point
from yardplan.yard.yard import Yard

#: Outlines with more edges are curves: a strip goes along all of them.
_MOST_EDGES = 24
#: Width of a path for one person with a barrow and of a bed reached from one side, as it is offered first:
#: common practice, metres.
_WIDTHS: dict[System, dict[Make, float]] = {
    "metric": {"path": 0.9, "bed": 0.6}, "imperial": {"path": 3 * FOOT, "bed": 2 * FOOT},
}
#: So far beside a line it is asked which of its sides lies in the lot, metres.
_BESIDE = 1.0


class AlongsideBox(TrialBox):
    """Every choice shows on the plan at once; Esc or Cancel leaves the plan as it was."""

    def __init__(self, open_yard: OpenYard, key: str, parent: QWidget | None = None) -> None:
        super().__init__(open_yard, parent)
        self._key = key
        yard = open_yard.yard
        self._closed = is_closed(yard, key)
        self.setWindowTitle(tr("Alongside {name}", name=names_of(yard, {key})))
        self.make = _choice(tr("What"), [(tr("Path"), "path"), (tr("Bed"), "bed")])
        self.edge = _choice(tr("Along"), self._edges(yard))
        self.side = _choice(tr("Side"), self._sides(yard))
        self.away = _entry(tr("Distance from it"), format_length(0.0, open_yard.units))
        self.width_ = _entry(tr("Width"), self._usual_width())
        self.fault = QLabel()
        self.fault.setObjectName("fault")
        self.fault.setWordWrap(True)
        self._lay_out()
        self._listen()
        self.refresh()

    def _edges(self, yard: Yard) -> list[tuple[str, object]]:
        """The whole, then each side with its length and the way it faces or runs."""
        points = outline_of(yard, self._key)
        edges = edges_of(points, closed=self._closed)
        whole = tr("all round it") if self._closed else tr("all of it")
        if len(edges) < 2 or len(edges) > _MOST_EDGES or edits.curve_of(yard, self._key) is not None:
            return [(whole, None)]
        return [(whole, None), *((self._edge_words(yard, edge, n), n) for n, edge in enumerate(edges))]

    def _edge_words(self, yard: Yard, edge: tuple[Point, ...], number: int) -> str:
        (ax, ay), (bx, by) = edge
        length = format_length(math.dist(*edge), self._open_yard.units)
        if not self._closed:
            return tr("stretch {number}, {length}", number=number + 1, length=length)
        points = outline_of(yard, self._key)
        out = -90 if _turns_left(points) else 90
        way = compass_word(math.degrees(math.atan2(by - ay, bx - ax)) + out, yard.site.north)
        return tr("side {number}: {length}, facing {way}", number=number + 1, length=length, way=way)

    def _sides(self, yard: Yard) -> list[tuple[str, object]]:
        """Left or not; of a line told by the compass, of an outline by in and out."""
        if self._closed:
            sides = [(tr("outside"), False), (tr("inside"), True)]
            return sides[::-1] if self._key == LOT else sides  # type: ignore[return-value]
        (ax, ay), *_, (bx, by) = outline_of(yard, self._key)
        along = math.degrees(math.atan2(by - ay, bx - ax))
        middle = ((ax + bx) / 2, (ay + by) / 2)
        turns = [(90, True), (-90, False)]
        # A fence mostly stands on the lot line: its side in the lot comes first.
        if len(yard.lot) > 2 and not inside(yard.lot, polar(middle, _BESIDE, along + 90)):
            turns.reverse()
        return [
            (tr("its {way} side", way=compass_word(along + turn, yard.site.north)), left)
            for turn, left in turns
        ]

    def _lay_out(self) -> None:
        form = QFormLayout(self)
        for field in (self.make, self.edge, self.side, self.away, self.width_):
            form.addRow(field.accessibleName(), field)
        form.addRow(self.fault)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        form.addRow(self.buttons)

    def _listen(self) -> None:
        self.make.currentIndexChanged.connect(self._made)
        for box in (self.edge, self.side):
            box.currentIndexChanged.connect(self.refresh)
        for line in (self.away, self.width_):
            line.textEdited.connect(self.refresh)

    def _made(self) -> None:
        """A bed is usually narrower than a path; a width that was typed stays."""
        if not self.width_.isModified():
            self.width_.setText(self._usual_width())
        self.refresh()

    def _usual_width(self) -> str:
        units = self._open_yard.units
        return format_length(_WIDTHS[units][self.make.currentData()], units)

    def _along(self) -> Along:
        units = self._open_yard.units
        return Along(
            key=self._key, edge=self.edge.currentData(), left=self.side.currentData(),
            away=parse_length(self.away.text(), units), width=parse_length(self.width_.text(), units),
        )

    def _drawn(self) -> tuple[Yard, tuple[str, ...]] | None:
        """The yard with the strip, or None with the fault shown."""
        try:
            drawn = with_strip(self._open_yard.yard, self._along(), self.make.currentData())
        except (UnitError, EditError) as error:
            self.fault.setText(str(error))
            return None
        self.fault.setText("")
        return drawn

    def refresh(self) -> None:
        """Show on the plan what is chosen."""
        drawn = self._drawn()
        self.fault.setVisible(drawn is None)
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(drawn is not None)
        if drawn is None:
            self._open_yard.drop_trial()
        else:
            self._open_yard.show_trial(drawn[0])

    def accept(self) -> None:
        drawn = self._drawn()
        if drawn is None:
            return
        yard, keys = drawn
        name = names_of(self._open_yard.yard, {self._key})
        text = tr("Bed alongside {name}", name=name)
        if self.make.currentData() == "path":
            text = tr("Path alongside {name}", name=name)
        self._open_yard.commit(text, yard, selection=keys)
        super().accept()


def _turns_left(points: tuple[Point, ...]) -> bool:
    """True for corners in counter-clockwise order."""
    pairs = zip(points, (*points[1:], points[0]), strict=True)
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in pairs) > 0


def _choice(name: str, choices: list[tuple[str, object]]) -> Combo:
    box = Combo()
    box.setAccessibleName(name)
    for words, value in choices:
        box.addItem(words, value)
    return box


def _entry(name: str, text: str) -> QLineEdit:
    line = QLineEdit(text)
    line.setAccessibleName(name)
    return line
