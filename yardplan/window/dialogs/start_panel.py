"""First start: a short panel on the empty sheet, with a new yard, the samples, or a file to open."""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path

from attrs import evolve, frozen
from PySide6.QtCore import QEvent, QLocale, QObject, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QHBoxLayout,
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
#: Width with both columns beside each other, and distance from the edge of the canvas, pixels.
_WIDE, _AWAY = 640, 4


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

    def __init__(
        self, open_yard: OpenYard, parent: QWidget | None = None, *, recent: Sequence[Path] = ()
    ) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
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
        line = QHBoxLayout()
        line.addWidget(self.begin)
        line.addWidget(self.draw_button)
        line.addStretch()
        left.addLayout(line)
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
        box = QVBoxLayout(self._inner)
        box.setContentsMargins(24, 18, 24, 18)
        box.setSpacing(12)
        box.addWidget(label(tr("Plan your yard"), "title"))
        box.addLayout(self._columns)
        scroll = QScrollArea()
        scroll.setWidget(self._inner)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
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
        self.setVisible(wanted)
        if wanted:
            self._centre()

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
        room = parent.size() - QSize(2 * _AWAY, 2 * _AWAY)
        beside = room.width() >= scaled(_WIDE)
        direction = QBoxLayout.Direction
        self._columns.setDirection(direction.LeftToRight if beside else direction.TopToBottom)
        wanted = QSize(scaled(_WIDE) if beside else room.width(), self._inner.sizeHint().height() + 4)
        self.resize(wanted.boundedTo(room))
        self.move((parent.width() - self.width()) // 2, (parent.height() - self.height()) // 2)
        self.raise_()

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
