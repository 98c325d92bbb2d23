"""The light beside the sheet: what the overlay shows, the spot pointed at, who takes the plant's light."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Qt, QTimer, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QProgressBar, QScrollArea, QVBoxLayout, QWidget

from yardplan.language import later, tr
from yardplan.sun.ground_kinds import KINDS, PLANTINGS
from yardplan.window.light.ground_light import GroundLight
from yardplan.window.light.spot import SunSpot
from yardplan.window.light.spot_view import SpotView
from yardplan.window.light.takers_view import TakersView
from yardplan.window.light.words import KIND_TIPS, KIND_WORDS, PLANTING_TIPS, PLANTING_WORDS, plain
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.parts import Combo, Fold, button

_OFF = later("No overlay")


class OverlayChoice(QWidget):
    """Which light is laid over the ground, and how far its working out is."""

    def __init__(self, ground: GroundLight, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._ground = ground
        self.kind, self.planting = Combo(), Combo()
        self.kind.setAccessibleName(tr("Light over the ground"))
        self.planting.setAccessibleName(tr("Before or after planting"))
        self.kind.addItem(tr(_OFF))
        for kind in KINDS:
            self.kind.addItem(plain(tr(KIND_WORDS[kind])), kind)
            self.kind.setItemData(self.kind.count() - 1, tr(KIND_TIPS[kind]), Qt.ItemDataRole.ToolTipRole)
        for planting in PLANTINGS:
            self.planting.addItem(plain(tr(PLANTING_WORDS[planting])), planting)
            tip = tr(PLANTING_TIPS[planting])
            self.planting.setItemData(self.planting.count() - 1, tip, Qt.ItemDataRole.ToolTipRole)
        self.bar = QProgressBar()
        self.bar.setRange(0, 100)
        self.bar.setAccessibleName(tr("Light being worked out"))
        self.stop = button(tr("Stop"), "link", tip=tr("Stop working out; what shows stays, pale"))
        for part in (self.bar, self.stop):
            kept = part.sizePolicy()
            kept.setRetainSizeWhenHidden(True)
            part.setSizePolicy(kept)
        self._lay_out()
        self.kind.activated.connect(self._choose_kind)
        self.planting.activated.connect(self._choose_planting)
        self.stop.clicked.connect(ground.cancel)
        ground.chosen.connect(self.refresh)
        ground.changed.connect(self._show_progress)
        self.refresh()

    def _lay_out(self) -> None:
        line = QHBoxLayout()
        line.setSpacing(6)
        line.addWidget(self.bar, 1)
        line.addWidget(self.stop)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(4)
        box.addWidget(self.kind)
        box.addWidget(self.planting)
        box.addLayout(line)

    def _choose_kind(self, number: int) -> None:
        kind = self.kind.itemData(number)
        if kind is None:
            self._ground.show(False)
        else:
            self._ground.choose(kind)

    def _choose_planting(self, number: int) -> None:
        self._ground.choose_planting(self.planting.itemData(number))

    def refresh(self) -> None:
        """Show what is chosen."""
        with QSignalBlocker(self.kind), QSignalBlocker(self.planting):
            self.kind.setCurrentIndex(KINDS.index(self._ground.kind) + 1 if self._ground.on else 0)
            self.planting.setCurrentIndex(PLANTINGS.index(self._ground.planting))
        self.planting.setEnabled(self._ground.on)
        self._show_progress()

    def _show_progress(self) -> None:
        busy = self._ground.on and self._ground.share < 1.0
        self.bar.setVisible(busy)
        self.stop.setVisible(busy)
        self.bar.setValue(round(100 * self._ground.share))


class LightPanel(QScrollArea):
    """Three folds in one column."""

    tool_wanted = Signal()

    def __init__(
        self, open_yard: OpenYard, ground: GroundLight, spot: SunSpot, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.choice = OverlayChoice(ground)
        self.spot = SpotView(open_yard, spot)
        self.takers = TakersView(open_yard)
        self.folds = (
            Fold(tr("Hours of sun on the ground"), self.choice),
            Fold(tr("Sun at a spot"), self.spot),
            Fold(tr("Who takes its light"), self.takers),
        )
        body = QWidget()
        box = QVBoxLayout(body)
        box.setContentsMargins(2, 6, 6, 6)
        box.setSpacing(8)
        for fold in self.folds:
            box.addWidget(fold)
        box.addStretch()
        self.setAccessibleName(tr("Light"))
        self.setWidget(body)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.spot.tool_wanted.connect(self.tool_wanted)
        self.spot.appeared.connect(self.show_spot)

    def show_takers(self) -> None:
        """Unfold who takes the light and bring it into view."""
        self.takers.show_shade()
        self._bring_up(self.folds[2])

    def show_spot(self) -> None:
        """Unfold the spot and bring it into view."""
        self._bring_up(self.folds[1])

    def _bring_up(self, fold: Fold) -> None:
        """Its heading at the top, once everything has found its size."""
        fold.set_open(True)
        QTimer.singleShot(0, self, lambda: self.verticalScrollBar().setValue(fold.y() - 4))
