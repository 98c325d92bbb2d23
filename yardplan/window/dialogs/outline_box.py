"""Which closed line of a file is the lot line: the list, a small drawing, and the unit of the file."""

from __future__ import annotations

from collections.abc import Sequence
from math import isclose

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QCheckBox, QDialog, QHBoxLayout, QListWidget, QVBoxLayout, QWidget

from yardplan.files.exchange.outline import LotOutline, fault_of, scaled
from yardplan.language import decimals, later, tr, tr_n
from yardplan.units import FOOT, INCH, System, format_area, format_coarse
from yardplan.window.dialogs.box import press_by_enter, roomy
from yardplan.window.panels.parts import Check, Combo, button, label
from yardplan.window.theme import colours_now

#: Units a drawing may be in, metres to each.
_UNITS = (
    (1.0, later("metres")), (FOOT, later("feet")), (INCH, later("inches")), (0.01, later("centimetres")),
    (0.001, later("millimetres")),
)
_SIZE, _PICTURE, _EDGE = (560, 430), 220, 12.0


class _Picture(QWidget):
    """The chosen outline, as large as it fits."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.outline: LotOutline | None = None
        self.setFixedWidth(_PICTURE)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours = colours_now()
        painter.fillRect(self.rect(), QColor(colours.card))
        if self.outline is None:
            return
        room = QRectF(self.rect()).adjusted(_EDGE, _EDGE, -_EDGE, -_EDGE)
        wide, deep = self.outline.extent
        scale = min(room.width() / wide, room.height() / deep)
        left = min(x for x, _ in self.outline.corners)
        below = min(y for _, y in self.outline.corners)
        x0 = room.center().x() - wide * scale / 2
        y0 = room.center().y() + deep * scale / 2
        painter.setPen(QPen(QColor(colours.ink), 1.5))
        painter.setBrush(QColor(colours.panel))
        painter.drawPolygon(QPolygonF([
            QPointF(x0 + (x - left) * scale, y0 - (y - below) * scale) for x, y in self.outline.corners
        ]))


class OutlineBox(QDialog):
    """Closed lines of a file, largest first; one becomes the lot line."""

    #: The outline (LotOutline) to take, and whether the yard's place moves to it.
    chosen = Signal(object, bool)

    def __init__(
        self, outlines: Sequence[LotOutline], system: System, file_name: str, parent: QWidget | None = None,
        *, drawn: bool = False, replaces: bool = False, place_known: bool = False,
    ) -> None:
        """`drawn`: from a drawing, whose unit may have to be said; `replaces`: there is a lot line."""
        super().__init__(parent)
        self.setWindowTitle(tr("Lot line from {file}", file=file_name))
        self._outlines, self._system, self._drawn = tuple(outlines), system, drawn
        self.list = QListWidget()
        self.list.setAccessibleName(tr("Closed lines of the file"))
        self.unit = Combo()
        self.unit.setAccessibleName(tr("Unit of the drawing"))
        self.move_place: QCheckBox = Check(tr("Take the place on the map from the file too"))
        self.move_place.setChecked(not place_known)
        self.picture = _Picture()
        self.note = label("", "muted", wrap=True)
        self.fault = label("", "fault", wrap=True)
        self.use = button(tr("Use as lot line"), "main")
        self.leave = button(tr("Cancel"))
        self._replaces = replaces
        self._fill()
        self._lay_out()
        self.list.currentRowChanged.connect(self._show)
        self.unit.currentIndexChanged.connect(self._rescale)
        self.use.clicked.connect(self._take)
        self.leave.clicked.connect(self.reject)
        self.list.itemDoubleClicked.connect(lambda _item: self._take())
        self._rescale()

    def _fill(self) -> None:
        for metres, words in _UNITS:
            self.unit.addItem(tr(words), metres)
        said = self._said
        known = next((i for i, (metres, _) in enumerate(_UNITS) if said and isclose(metres, said)), 0)
        if said and not isclose(_UNITS[known][0], said):
            self.unit.addItem(tr("as the file says"), said)
            known = len(_UNITS)
        self.unit.setCurrentIndex(known)
        self.list.addItems([""] * len(self._outlines))
        self.list.setCurrentRow(0)

    @property
    def _said(self) -> float | None:
        """Metres to the drawing's unit as the file says."""
        return self._outlines[0].unit

    def _lay_out(self) -> None:
        middle, units, foot = QHBoxLayout(), QHBoxLayout(), QHBoxLayout()
        middle.addWidget(self.list, 1)
        middle.addWidget(self.picture)
        self._unit_label = label(tr("The drawing is in"), "muted")
        units.addWidget(self._unit_label)
        units.addWidget(self.unit)
        units.addStretch()
        foot.addStretch()
        foot.addWidget(self.leave)
        foot.addWidget(self.use)
        box = QVBoxLayout(self)
        box.setSpacing(8)
        box.addLayout(middle, 1)
        box.addLayout(units)
        box.addWidget(self.move_place)
        box.addWidget(self.note)
        box.addWidget(self.fault)
        box.addLayout(foot)
        self.resize(roomy(self, *_SIZE))
        self.unit.setVisible(self._drawn)
        self._unit_label.setVisible(self._drawn)
        press_by_enter(self.use)

    def _rescale(self, *_: object) -> None:
        """Another unit: every size is another."""
        for number in range(len(self._outlines)):
            self.list.item(number).setText(self._words(self.outline(number)))
        self._show()

    def outline(self, number: int) -> LotOutline:
        """The outline of that number in the unit chosen."""
        found = self._outlines[number]
        factor = self.unit.currentData() / (self._said or 1.0) if self._drawn else 1.0
        return found if factor == 1.0 else scaled(found, factor)

    def _words(self, outline: LotOutline) -> str:
        wide, deep = (format_coarse(length, self._system) for length in outline.extent)
        corners = tr_n("{n} corner", "{n} corners", len(outline.corners))
        return tr(
            "{name}: {width} by {depth}, {area}, {corners}", name=outline.name or tr("no name"), width=wide,
            depth=deep, area=format_area(outline.size, self._system), corners=corners,
        )

    def _show(self, *_: object) -> None:
        outline = self.outline(max(self.list.currentRow(), 0))
        self.picture.outline = outline
        self.picture.update()
        elsewhere = outline.latitude is not None
        self.move_place.setVisible(elsewhere)
        notes = []
        if self._drawn and self._said is None:
            notes.append(tr("The file does not say its unit: choose the one that gives the right size."))
        if elsewhere:
            notes.append(tr(
                "The line lies at {latitude} degrees north, {longitude} degrees east, far from this yard's "
                "place. Zone, frosts and temperatures stay as they are: check them on the site card.",
                latitude=decimals(f"{outline.latitude:.4f}"), longitude=decimals(f"{outline.longitude:.4f}"),
            ))
        if self._replaces:
            notes.append(tr("It takes the place of the lot line there is; what stands on the lot stays."))
        self.note.setText(" ".join(notes))
        wrong = fault_of(outline)
        self.fault.setText(tr("This line cannot be a lot line: {why}", why=wrong) if wrong else "")
        self.fault.setVisible(bool(wrong))
        self.use.setEnabled(not wrong)

    def _take(self) -> None:
        if not self.use.isEnabled():
            return
        outline = self.outline(max(self.list.currentRow(), 0))
        self.accept()
        self.chosen.emit(outline, outline.latitude is not None and self.move_place.isChecked())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._take()
        else:
            super().keyPressEvent(event)
