"""First start: a short panel on the empty sheet, with a new yard, the samples, or a file to open."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from pathlib import Path

from attrs import evolve, frozen
from PySide6.QtCore import QEvent, QLocale, QObject, QRect, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from yardplan.language import tr, tr_n
from yardplan.shipped import folder
from yardplan.units import System
from yardplan.window.dialogs.new_yard import NewYardForm
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.parts import Elided, button, label
from yardplan.window.theme import TARGET, scaled
from yardplan.yard.site import Site

#: Recent files shown.
_RECENT = 3
#: Width with both columns beside each other, and below which captions stand above their fields, pixels.
_WIDE, _NARROW = 640, 300
#: Distance from the edge of the canvas and from the sheet's furniture; round the contents, with and without
#: much room. Pixels.
_AWAY, _FAR, _NEAR = 4, 24, 10

#: The field of the sheet and the boxes of its furniture, the north arrow first, at least one more. Pixels.
Furniture = Callable[[], tuple[QRectF, Sequence[QRectF]]]


@frozen
class Sample:
    """A shipped yard: its file, name and what it shows."""

    path: Path
    name: str
    words: str


def samples() -> list[Sample]:
    """The shipped yards, the first one to open at the head."""
    found = [sample_of(path) for path in sorted(folder("sample_yards").glob("*.yard"))]
    return sorted(found, key=lambda sample: (sample.path.stem != "first_orchard", sample.path.stem))


def sample_of(path: Path) -> Sample:
    """Name and contents of a yard file, read loosely: a damaged one is listed by its file name."""
    try:
        document = json.loads(path.read_text(encoding="utf-8"))
        site = document["site"]
        plants, rows = (len(document.get(part, ())) for part in ("plantings", "rows"))
        place, name = str(site.get("place", "")), str(site["name"])
    except (OSError, ValueError, LookupError, TypeError, AttributeError):
        return Sample(path, path.stem.replace("_", " "), "")
    counts = ((plants, tr_n("{n} plant", "{n} plants", plants)), (rows, tr_n("{n} row", "{n} rows", rows)))
    parts = [place, *(words for number, words in counts if number)]
    return Sample(path, name, ", ".join(part for part in parts if part))


def empty(open_yard: OpenYard) -> bool:
    """True when nothing is drawn and no file is open: the panel has its place."""
    yard = open_yard.shown_yard
    return open_yard.path is None and not yard.lot and not yard.ids()


class StartPanel(QFrame):
    """Lies in the middle of its parent while the yard is empty; goes when something is drawn or opened."""

    #: A yard was made of what was typed.
    began = Signal(object)
    #: A sample or recent file (Path) is to be opened.
    file_chosen = Signal(object)
    #: The file box is asked for.
    open_wanted = Signal()
    #: It shows, it is gone.
    came, went = Signal(), Signal()

    def __init__(
        self, open_yard: OpenYard, parent: QWidget | None = None, *, recent: Sequence[Path] = (),
        furniture: Furniture | None = None,
    ) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._furniture = furniture
        self._put_away = False
        self._inner = QWidget()
        self.setObjectName("start")
        self.setAccessibleName(tr("Begin: a new yard, a sample, or a file"))
        self.form = NewYardForm(usual_units())
        self.begin = button(tr("Begin"), "main", name=tr("Begin the new yard"))
        self.sample_buttons = [self._file_button(s.path, s.name, s.words) for s in samples()]
        self.recent_buttons = [
            self._file_button(path, path.name, str(path.parent)) for path in recent[:_RECENT]
        ]
        self.open_button = button(tr("Open a file…"), name=tr("Open a yard file"))
        self.draw_button = button(tr("Draw on the empty sheet"), "link", tip=tr("Close this panel (Esc)"))
        self._lay_out()
        self.begin.clicked.connect(self._begin)
        self.open_button.clicked.connect(self.open_wanted)
        self.draw_button.clicked.connect(self.put_away)
        self.form.ready.connect(self.begin.setEnabled)
        open_yard.shown.connect(self.refresh)
        open_yard.loaded.connect(self._loaded)
        if parent is not None:
            parent.installEventFilter(self)
        self.refresh()

    def _file_button(self, path: Path, name: str, words: str) -> QWidget:
        made = button(
            name,
            "link",
            name=tr("Open {name}, {words}", name=name, words=words)
            if words
            else tr("Open {name}", name=name),
        )
        made.clicked.connect(lambda: self.file_chosen.emit(path))
        line = QWidget()
        box = QVBoxLayout(line)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(0)
        box.addWidget(made)
        if words:
            small = Elided(words, "small")
            small.setContentsMargins(3, 0, 0, 0)
            # Below each other without a gap, the names would be too near to be hit apart.
            made.setMinimumHeight(scaled(TARGET))
            box.addWidget(small)
        return line

    def _lay_out(self) -> None:
        left, right = QVBoxLayout(), QVBoxLayout()
        for column in (left, right):
            column.setSpacing(8)
        left.addWidget(label(tr("A new yard"), "heading"))
        left.addWidget(self.form)
        left.addStretch(1)
        self._begin_line = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        for press in (self.begin, self.draw_button):
            self._begin_line.addWidget(press, 0, Qt.AlignmentFlag.AlignLeft)
        self._begin_line.addStretch()
        left.addLayout(self._begin_line)
        right.addWidget(label(tr("Samples to look at"), "heading"))
        for each in self.sample_buttons:
            right.addWidget(each)
        if self.recent_buttons:
            right.addWidget(label(tr("Lately open"), "heading"))
            for each in self.recent_buttons:
                right.addWidget(each)
        right.addStretch(1)
        right.addWidget(self.open_button, 0, Qt.AlignmentFlag.AlignLeft)
        self._columns = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._columns.setSpacing(28)
        self._columns.addLayout(left, 5)
        self._columns.addLayout(right, 4)
        self._box = box = QVBoxLayout(self._inner)
        box.addWidget(label(tr("Plan your yard"), "title", wrap=True))
        box.addLayout(self._columns)
        scroll = QScrollArea()
        scroll.setWidget(self._inner)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        around = QVBoxLayout(self)
        around.setContentsMargins(1, 1, 1, 1)
        around.addWidget(scroll)
        self._inner.installEventFilter(self)

    def refresh(self, *_: object) -> None:
        """Show while the yard is empty, unless it was put away."""
        wanted = empty(self._open_yard) and not self._put_away
        if wanted and self.isHidden():
            QTimer.singleShot(0, self, self._take_focus)
        elif not wanted and self.isVisible():
            # A picture or an outline from a file came in; after the step that brought it has ended.
            QTimer.singleShot(0, self, self._keep_typed)
        shown = self.isHidden() == wanted
        self.setVisible(wanted)
        if wanted:
            self._centre()
        if shown:
            (self.came if wanted else self.went).emit()

    def _take_focus(self) -> None:
        """Keys work here at once, without a click."""
        # Asked of the window, which may not be active yet.
        focus = self.window().focusWidget()
        if self.isVisible() and (focus is None or not self.isAncestorOf(focus)):
            self.form.name.setFocus(Qt.FocusReason.OtherFocusReason)
            self.form.name.line.selectAll()

    def _loaded(self) -> None:
        self._put_away = False
        self.refresh()

    def put_away(self) -> None:
        """Leave the sheet free to draw on; the place, name and units typed so far are the yard's."""
        self._put_away = True
        self.hide()
        self.went.emit()
        self._keep_typed()
        sheet = self.parentWidget()
        if sheet is not None:
            sheet.setFocus(Qt.FocusReason.OtherFocusReason)

    def _keep_typed(self) -> None:
        fresh = self._open_yard.path is None and self._open_yard.yard.site == Site()
        if fresh and self.form.touched and not self.form.faults():
            site = self.form.yard().site
            self._open_yard.commit(tr("Name and place"), evolve(self._open_yard.yard, site=site))

    def _begin(self) -> None:
        yard = self.form.yard()
        if not self.form.faults():
            self._open_yard.new(yard)
            self.began.emit(yard)

    def _centre(self) -> None:
        parent = self.parentWidget()
        if parent is None:
            return
        room = self._room(parent)
        beside = room.width() >= scaled(_WIDE)
        self._arrange(beside=beside, narrow=room.width() < scaled(_NARROW))
        wide = scaled(_WIDE) if beside else room.width()
        high = min(self._height_at(wide), room.height())
        # The middle of the sheet, as far as that keeps clear of its furniture.
        left = min(max((parent.width() - wide) // 2, room.left()), room.right() + 1 - wide)
        top = min(max((parent.height() - high) // 2, room.top()), room.bottom() + 1 - high)
        self.setGeometry(left, top, wide, high)
        self.raise_()

    def _height_at(self, wide: int) -> int:
        layout = self._inner.layout()
        assert layout is not None
        inner = wide - 4
        asked = layout.totalHeightForWidth(inner) if layout.hasHeightForWidth() else 0
        return max(asked, layout.totalSizeHint().height()) + 4

    def _arrange(self, *, beside: bool, narrow: bool) -> None:
        """Columns beside or below each other; little round them where they have little room."""
        direction = QBoxLayout.Direction
        self._columns.setDirection(direction.LeftToRight if beside else direction.TopToBottom)
        self._begin_line.setDirection(direction.TopToBottom if narrow else direction.LeftToRight)
        self.form.set_narrow(narrow)
        side, end = (_NEAR, _NEAR) if narrow else (_FAR, _FAR // 2)
        self._box.setContentsMargins(side, end, side, end)
        self._box.setSpacing(_NEAR)

    def _room(self, parent: QWidget) -> QRect:
        """Where it may lie: above scale bar and title block, left of the north arrow if that is enough."""
        whole = parent.rect().adjusted(_AWAY, _AWAY, -_AWAY, -_AWAY)
        if self._furniture is None:
            return whole
        field, (north, *foot) = self._furniture()
        room = field.toAlignedRect().adjusted(_AWAY, _AWAY, -_AWAY, -_AWAY)
        room.setBottom(round(min(box.top() for box in foot)) - _AWAY)
        clear = QRect(room)
        clear.setRight(round(north.left()) - _AWAY)
        middle_right = (parent.width() + scaled(_WIDE)) // 2
        return clear if middle_right > clear.right() and clear.width() >= scaled(_WIDE) else room

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Stay in the middle when the window changes its size; grow with what the place look-up shows."""
        wanted = QEvent.Type.LayoutRequest if watched is self._inner else QEvent.Type.Resize
        if event.type() == wanted and self.isVisible():
            self._centre()
        return bool(super().eventFilter(watched, event))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.put_away()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._begin()
        else:
            super().keyPressEvent(event)


def usual_units() -> System:
    """Feet where the system's own language setting measures so, else metres."""
    return (
        "metric"
        if QLocale.system().measurementSystem() == QLocale.MeasurementSystem.MetricSystem
        else "imperial"
    )
