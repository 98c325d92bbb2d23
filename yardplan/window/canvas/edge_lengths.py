"""Typing over the length of an edge: a small field at the edge, tried on the plan while it is typed."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QPoint, QPointF, Qt, Signal

from yardplan.language import tr
from yardplan.units import UnitError, format_length, parse_length
from yardplan.window.canvas.entry import LengthEntry
from yardplan.window.tools.edge_figures import figure_of, sole_edged
from yardplan.window.tools.naming import names_of
from yardplan.yard.edges import set_length, straight_edges
from yardplan.yard.edits import EditError
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.window.canvas.canvas import Canvas

#: Room for a length such as 112' 10 3/4", pixels.
_WIDE = 116
#: The field keeps so far from the edge of the sheet, pixels.
_MARGIN = 20


class EdgeField(LengthEntry):
    """The field at an edge; Tab and Shift+Tab go on to the next and the last edge."""

    #: Forward or back to another edge.
    stepped = Signal(int)

    def focusNextPrevChild(self, next_: bool) -> bool:
        self.stepped.emit(1 if next_ else -1)
        return True


class EdgeLengths(QObject):
    """Opens the field at an edge of the one thing selected, and gives the edge the length typed."""

    def __init__(self, canvas: Canvas) -> None:
        super().__init__(canvas)
        self._canvas = canvas
        self._open_yard = canvas.open_yard
        self._at: tuple[str, int] | None = None
        self._text = ""
        self.field = EdgeField(canvas)
        self.field.line.setMinimumWidth(_WIDE)
        self.field.line.setPlaceholderText("")
        self.field.sent.connect(self._send)
        self.field.closed.connect(self.close)
        self.field.stepped.connect(self._step)
        self.field.line.textEdited.connect(self._try)
        self._open_yard.selection_changed.connect(self._selection_changed)
        self._open_yard.loaded.connect(self.close)
        canvas.view_changed.connect(self._place)

    @property
    def open(self) -> bool:
        """True while a length is being typed."""
        return self._at is not None

    def begin_first(self) -> None:
        """The field at the first edge of what is selected: the way in by keyboard."""
        for key in sole_edged(self._open_yard):
            self.begin(key, 0)

    def begin(self, key: str, edge: int) -> None:
        """The field at one edge, its length ready to be typed over."""
        self._open_yard.drop_trial()
        edges = straight_edges(self._open_yard.yard, key)
        if edge >= len(edges):
            return
        self._at = (key, edge)
        a, b = edges[edge]
        self._text = format_length(math.dist(a, b), self._open_yard.units)
        name = names_of(self._open_yard.yard, {key})
        said = tr("Length of edge {number} of {name}", number=edge + 1, name=name)
        self.field.line.setAccessibleName(said)
        self.field.setToolTip(tr("{edge}. Any unit; Enter sets it, Tab goes to the next edge", edge=said))
        self.field.begin(self._text)
        self.field.line.selectAll()
        self._place()

    def close(self) -> None:
        """Leave the field; what was only tried is gone."""
        if self._at is None:
            return
        self._at = None
        self._open_yard.drop_trial()
        self.field.hide()
        self._canvas.setFocus(Qt.FocusReason.OtherFocusReason)

    def _changed(self, text: str) -> Yard:
        """The yard with the length typed. Raises UnitError or EditError."""
        assert self._at is not None
        return set_length(self._open_yard.yard, *self._at, parse_length(text, self._open_yard.units))

    def _try(self, text: str) -> None:
        """Show what the length would do, as far as it can be read."""
        if self._at is None:
            return
        try:
            self._open_yard.show_trial(self._changed(text))
        except (UnitError, EditError):
            self._open_yard.drop_trial()
        self._place()

    def _send(self, text: str) -> None:
        if self._set(text):
            self.close()

    def _set(self, text: str) -> bool:
        """Give the edge its length as one step; False when it was refused, with the reason beneath."""
        if self._at is None or text.strip() in ("", self._text):
            return True
        key, edge = self._at
        try:
            yard = self._changed(text)
        except (UnitError, EditError) as error:
            self._open_yard.drop_trial()
            self.field.show_fault(error)
            self._place()
            return False
        name = names_of(yard, {key})
        self._open_yard.commit(tr("Change edge of {name}", name=name), yard)
        a, b = straight_edges(yard, key)[edge]
        long = format_length(math.dist(a, b), self._open_yard.units)
        self._canvas.desk.say(
            tr("Edge {number} of {name} is {length}", number=edge + 1, name=name, length=long)
        )
        return True

    def _step(self, by: int) -> None:
        """On to another edge, once this one has its length."""
        if self._at is None or not self._set(self.field.line.text()):
            return
        key, edge = self._at
        count = len(straight_edges(self._open_yard.yard, key))
        self.begin(key, (edge + by) % max(count, 1))

    def _selection_changed(self) -> None:
        if self._at is not None and self._open_yard.selection != {self._at[0]}:
            self.close()

    def _middle(self, key: str, edge: int) -> QPointF:
        """Where the figure of the edge stands, or the middle of an edge too short for one, pixels."""
        view, pixel = self._canvas.view, 1 / self._canvas.view.scale
        origin = view.to_pixels((0.0, 0.0))
        figure = figure_of(self._open_yard, key, edge, pixel)
        if figure is not None:
            return origin + figure.middle
        a, b = straight_edges(self._open_yard.shown_yard, key)[edge]
        return (view.to_pixels(a) + view.to_pixels(b)) / 2

    def _place(self) -> None:
        """Over the figure of the edge, within the sheet."""
        if self._at is None:
            return
        key, edge = self._at
        if edge >= len(straight_edges(self._open_yard.shown_yard, key)):
            self.close()
            return
        field = self.field
        field.adjustSize()
        corner = (self._middle(key, edge) - QPointF(field.width() / 2, field.line.height() / 2)).toPoint()
        right = self._canvas.width() - field.width() - _MARGIN
        bottom = self._canvas.height() - field.height() - _MARGIN
        field.move(QPoint(min(max(corner.x(), _MARGIN), right), min(max(corner.y(), _MARGIN), bottom)))

