"""Variants of the plan: keep, open, name and forget them, and see two or more side by side."""

from __future__ import annotations

import datetime
from collections.abc import Callable

from PySide6.QtCore import QEvent, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QHideEvent, QPainter, QPen, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QHeaderView,
    QItemDelegate,
    QListWidget,
    QListWidgetItem,
    QProgressBar,
    QSizePolicy,
    QStyleOptionViewItem,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from yardplan.language import tr, whole_date
from yardplan.window import variants_kept
from yardplan.window.comparing import Comparing, Facts, facts_of
from yardplan.window.dialogs.box import BesideBox, close_button, press_by_enter, roomy
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.parts import Check, button, label
from yardplan.window.panels.variant_picture import picture_of
from yardplan.window.panels.variant_rows import PICTURE, VariantRows
from yardplan.window.theme import TARGET, colours_now, scaled
from yardplan.yard.edits import EditError

#: Asks for one line of text: question and what stands there at first; None for cancel.
Ask = Callable[[str, str], str | None]
#: Ticked at first: the plan now and the newest variants.
_FIRST = 3
#: Room for the words of the rows, pixels.
_WORDS = 268
_ROW = Qt.ItemDataRole.UserRole


class _Ticked(QItemDelegate):
    """Lines with a box to tick whose edge can be seen on light and dark grounds alike."""

    def drawCheck(
        self, painter: QPainter, option: QStyleOptionViewItem, rect: QRect, state: Qt.CheckState
    ) -> None:
        c, box = colours_now(), QRectF(rect).adjusted(0.5, 0.5, -0.5, -0.5)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(c.edge), 1.2))
        painter.setBrush(QColor(c.card))
        painter.drawRoundedRect(box, 3, 3)
        if state == Qt.CheckState.Checked:
            painter.setPen(QPen(QColor(c.ink), 1.8))
            side, corner = box.width(), box.topLeft()
            painter.drawPolyline([
                corner + QPointF(side * x, side * y) for x, y in ((0.22, 0.54), (0.42, 0.74), (0.78, 0.28))
            ])
        painter.restore()


class VariantsBox(BesideBox):
    """The list of variants and the comparison of those that are ticked."""

    def __init__(self, open_yard: OpenYard, ask: Ask, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Variants of the plan"))
        self._open_yard, self._ask = open_yard, ask
        self.comparing = Comparing(open_yard, self)
        self.list = QListWidget()
        self.list.setItemDelegate(_Ticked(self.list))
        self.list.setAccessibleName(tr("Plans to compare: tick two or more"))
        self.keep = button(tr("Keep this plan…"), tip=tr("Give the plan as it is now a name and keep it"))
        self.take_up = button(tr("Open"), tip=tr("Put the chosen variant on the sheet; undo goes back"))
        self.rename = button(tr("Rename…"))
        self.forget = button(tr("Delete"), tip=tr("Undo brings it back"))
        self.fault = label("", "fault", wrap=True)
        self.note = label("", "muted", wrap=True)
        self.bar = QProgressBar()
        self.bar.setRange(0, 100)
        self.bar.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.bar.setAccessibleName(tr("How far the comparison is"))
        self.stop = button(tr("Stop"))
        self.only = Check(tr("Only what differs"))
        self.rows = VariantRows(self)
        self.table = self._made_table()
        self._lay_out()
        self._connect()
        self._fill()

    def _made_table(self) -> QTableView:
        table = QTableView()
        table.setAccessibleName(tr("Comparison"))
        table.setModel(self.rows)
        table.setIconSize(PICTURE)
        table.setShowGrid(False)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        table.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        table.setTabKeyNavigation(False)
        table.setCornerButtonEnabled(False)
        across, down = table.horizontalHeader(), table.verticalHeader()
        across.setDefaultSectionSize(PICTURE.width() + 12)
        across.setHighlightSections(False)
        down.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        down.setDefaultSectionSize(scaled(TARGET))
        down.hide()
        return table

    def _lay_out(self) -> None:
        side = QVBoxLayout()
        side.addWidget(label(tr("Tick the plans to compare."), "muted", wrap=True))
        side.addWidget(self.list, 1)
        for row in ((self.keep,), (self.take_up, self.rename, self.forget)):
            line = QHBoxLayout()
            for part in row:
                line.addWidget(part)
            side.addLayout(line)
        side.addWidget(self.fault)
        work = QHBoxLayout()
        work.addWidget(self.bar, 1)
        work.addWidget(self.stop)
        main = QVBoxLayout()
        main.addWidget(self.table, 1)
        main.addWidget(self.only)
        main.addWidget(self.note)
        main.addLayout(work)
        across, foot = QHBoxLayout(), QHBoxLayout()
        across.addLayout(side)
        across.addLayout(main, 1)
        foot.addStretch()
        foot.addWidget(close_button(self))
        box = QVBoxLayout(self)
        box.addLayout(across, 1)
        box.addLayout(foot)
        buttons = sum(part.sizeHint().width() + 6 for part in (self.take_up, self.rename, self.forget)) - 6
        self.list.setFixedWidth(max(scaled(216), buttons))
        self.fault.hide()
        self._show_busy()
        self.resize(roomy(self, 1040, 660))
        press_by_enter(self.keep)

    def _connect(self) -> None:
        self.keep.clicked.connect(self._keep)
        self.take_up.clicked.connect(self._open)
        self.rename.clicked.connect(self._rename)
        self.forget.clicked.connect(self._forget)
        self.stop.clicked.connect(self._stop)
        self.only.toggled.connect(self._show_differing)
        self.list.itemChanged.connect(lambda *_: self._compare())
        self.list.currentRowChanged.connect(lambda *_: self._refresh_buttons())
        self.list.itemDoubleClicked.connect(lambda *_: self._open())
        self.comparing.ready.connect(self._show_outcomes)
        self.comparing.busy_changed.connect(self._show_busy)
        self.comparing.progress.connect(lambda share: self.bar.setValue(round(100 * share)))
        self._open_yard.shown.connect(self._shown)
        self._open_yard.loaded.connect(self._refill)

    # The list

    def _names(self) -> tuple[str, ...]:
        """The variants by name, in the order they were kept."""
        return tuple(variant.name for variant in self._open_yard.yard.variants)

    def _fill(self) -> None:
        """The plan now and all variants; ticks stay, new ones are ticked while there are few."""
        ticked, known, chosen = self._ticked(), self._listed(), self._chosen()
        self.list.blockSignals(True)
        self.list.clear()
        self._add(tr("The plan now"), None, ticked=not known or None in ticked)
        for variant in self._open_yard.yard.variants:
            name = variant.name
            fresh = name not in known and len(self._ticked()) < _FIRST
            self._add(_listed(name, variant.kept), name, ticked=fresh or name in ticked)
        names = self._listed()
        self.list.setCurrentRow(names.index(chosen) if chosen in names else len(names) - 1)
        self.list.blockSignals(False)
        self._refresh_buttons()

    def _add(self, words: str, name: str | None, *, ticked: bool) -> None:
        item = QListWidgetItem(words)
        item.setData(_ROW, name)
        item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
        item.setCheckState(Qt.CheckState.Checked if ticked else Qt.CheckState.Unchecked)
        item.setSizeHint(QSize(100, scaled(TARGET + 6 if name is None else 2 * TARGET)))
        self.list.addItem(item)

    def _items(self) -> list[QListWidgetItem]:
        return [self.list.item(row) for row in range(self.list.count())]

    def _listed(self) -> list[str | None]:
        return [item.data(_ROW) for item in self._items()]

    def _ticked(self) -> list[str | None]:
        return [item.data(_ROW) for item in self._items() if item.checkState() == Qt.CheckState.Checked]

    def _chosen(self) -> str | None:
        """The variant the buttons are about; None for the plan now."""
        item = self.list.currentItem()
        name: str | None = None if item is None else item.data(_ROW)
        return name

    def _refresh_buttons(self) -> None:
        known = self._chosen() is not None
        for part in (self.take_up, self.rename, self.forget):
            part.setEnabled(known)

    def _refill(self) -> None:
        self._fill()
        self._compare()

    def _shown(self, *_: object) -> None:
        """The yard changed: variants are listed anew, the plan now is worked out when the hand rests."""
        if self._open_yard.on_trial:
            self.comparing.hold()
            return
        if list(self._names()) != self._listed()[1:]:
            self._fill()
        self._compare(rested=True)

    # What the buttons do

    def _do(self, does: Callable[[], object]) -> None:
        """Do it and say what stands against it."""
        try:
            does()
        except EditError as error:
            self.fault.setText(str(error))
            self.fault.show()
            return
        self.fault.hide()

    def _keep(self) -> None:
        typed = self._ask(variants_kept.question(), variants_kept.suggested(self._open_yard))
        if typed is not None:
            today = datetime.date.today()
            self._do(lambda: variants_kept.keep(self._open_yard, typed, today))

    def _open(self) -> None:
        name = self._chosen()
        if name is not None:
            self._do(lambda: variants_kept.open_variant(self._open_yard, name))

    def _rename(self) -> None:
        name = self._chosen()
        typed = None if name is None else self._ask(tr("What is this variant called?"), name)
        if name is not None and typed is not None:
            self._do(lambda: variants_kept.rename(self._open_yard, name, typed))

    def _forget(self) -> None:
        name = self._chosen()
        if name is not None:
            self._do(lambda: variants_kept.forget(self._open_yard, name))

    # The comparison

    def _wanted(self) -> list[tuple[str, Facts]]:
        """Names and facts of the plans that are ticked."""
        yard, year = self._open_yard.yard, self._open_yard.year
        plans = {variant.name: variant.plan for variant in yard.variants}
        ticked = [name for name in self._ticked() if name is None or name in plans]
        return [
            (tr("The plan now"), facts_of(yard, None, year)) if name is None
            else (name, facts_of(yard, plans[name], year))
            for name in ticked
        ]

    def _compare(self, *, rested: bool = False) -> None:
        if self.isVisible():
            self.comparing.want([facts for _, facts in self._wanted()], rested=rested)

    def _show_differing(self, only: bool) -> None:
        self.rows.show_differing(only)
        if self.rows.rowCount():
            self._size_parts()

    def _stop(self) -> None:
        self.comparing.cancel()
        self._say(tr("Stopped. Tick a plan to go on."))

    def _say(self, text: str) -> None:
        """Below the table, with room for it at once."""
        self.note.setText(text)
        lines = self.layout()
        if lines is not None:
            lines.activate()

    def _show_busy(self) -> None:
        busy = self.comparing.busy
        self.bar.setVisible(busy)
        self.stop.setVisible(busy)
        if busy:
            self._say(tr("Working out light, partners and findings…"))

    def _show_outcomes(self) -> None:
        """Everything asked for is there: side by side, drawn at the screen's own sharpness."""
        wanted = self._wanted()
        known = [(name, self.comparing.outcome(facts)) for name, facts in wanted]
        found = [(name, made) for name, made in known if made is not None]
        if len(found) != len(wanted):
            return
        ratio = self.devicePixelRatioF()
        pictures = [picture_of(made, PICTURE, ratio) for _, made in found]
        self.rows.show_plans([name for name, _ in found], [made for _, made in found], pictures)
        if self.rows.rowCount():
            self._size_parts()
        self._say(self._summary(len(found)))

    def _size_parts(self) -> None:
        """Room for the drawings and for the words beside them."""
        self.table.setRowHeight(0, PICTURE.height() + 12)
        self.table.setColumnWidth(0, scaled(_WORDS))

    def _summary(self, count: int) -> str:
        if count < 2:
            return tr("Tick two or more plans to see what differs; keep this plan to have one to compare.")
        return tr("What differs is set in bold. All plans are judged at the year shown.")

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._refill()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self.comparing.cancel()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            self.table.viewport().update()


def _listed(name: str, kept: str) -> str:
    """A variant in the list: its name and the day it was kept."""
    try:
        day = datetime.date.fromisoformat(kept)
    except ValueError:
        return name
    return f"{name}\n{tr('kept {day}', day=whole_date(day))}"
