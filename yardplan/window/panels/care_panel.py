"""The year's care beside the plan: by month or as a list, with marks for what is done, kept in the yard."""

from __future__ import annotations

import datetime as dt
from pathlib import Path

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QHideEvent, QKeyEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFileDialog,
    QHBoxLayout,
    QListView,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from yardplan.care.calendar_file import CalendarError, calendar_file
from yardplan.care.tables import KINDS
from yardplan.language import later, tr, tr_n
from yardplan.window.beside_yard import beside
from yardplan.window.edges import Splitter
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.care_card import CareCard
from yardplan.window.panels.care_rows import CareRows, View
from yardplan.window.panels.days import MONTHS
from yardplan.window.panels.parts import Check, Combo, button, label
from yardplan.yard import edits

_VIEWS: tuple[tuple[View, str], ...] = (
    ("month", later("By month")), ("year", later("Whole year")), ("refused", later("Sprays not placed"))
)
_KIND_WORDS = {
    "prune": later("pruning"),
    "thin": later("thinning"),
    "feed": later("feeding"),
    "acidify": later("acidifying"),
    "mulch": later("mulching"),
    "water": later("watering"),
    "net": later("netting"),
    "frost": later("frost nights"),
    "protect": later("protecting"),
    "guard": later("trunk guards"),
    "spray": later("sprays"),
    "scout": later("looking"),
    "harvest": later("harvest"),
    "store": later("storing"),
    "plant": later("planting"),
}
_EMPTY: dict[View, str] = {
    "month": later("No work in this month."), "year": later("Nothing is planted yet, so there is no work."),
    "refused": later("No spray had to be left out."),
}
_CHOOSE = later("Choose a line to read how and why it is done.")
_GUARD = later(
    "Nothing is sprayed from some days before any flower in or beside the yard opens until its petals are "
    "down, nor on fruit that is being picked. The label, the law and your local extension service come first."
)


class _Cards(QListView):
    """The tasks; Space marks the one in focus, Enter shows its plants on the plan."""

    def __init__(self, rows: CareRows, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("cards")
        self.setModel(rows)
        self.setAccessibleName(tr("Work of the year"))
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setItemDelegate(CareCard(self))
        self._rows = rows

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.scheduleDelayedItemsLayout()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        here = self.currentIndex()
        if event.key() == Qt.Key.Key_Space and here.isValid():
            self._rows.mark(here.row(), self._rows.line(here.row()).done is None)
            return
        super().keyPressEvent(event)


class CarePanel(QWidget):
    """Year, month and view above; the tasks; what is known of the one chosen below."""

    def __init__(
        self, open_yard: OpenYard, parent: QWidget | None = None, *, today: dt.date | None = None
    ) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        day = today or dt.date.today()
        self.rows = CareRows(open_yard, day.year, self)
        self.cards = _Cards(self.rows)
        self.view, self.month, self.kind = Combo(), Combo(), Combo()
        self.year = label("", "heading")
        self.earlier = button("‹", name=tr("A year earlier"))
        self.later = button("›", name=tr("A year later"))
        self.only_open = Check(tr("only what is to do"))
        self.quiet = label("", "muted", wrap=True)
        self.details = label("", "plain", wrap=True)
        self.on_plan = button(tr("Show on the plan"), "link")
        self.to_file = button(tr("Save as calendar…"), tip=tr("An iCalendar file for any calendar program"))
        self.said = label("", "small", wrap=True)
        self._fill(day)
        self._lay_out()
        self._listen()
        self._show()

    def _fill(self, day: dt.date) -> None:
        for key, words in _VIEWS:
            self.view.addItem(tr(words), key)
        for number, words in enumerate(MONTHS, 1):
            self.month.addItem(tr(words), number)
        self.kind.addItem(tr("all work"), "")
        for kind in KINDS:
            self.kind.addItem(tr(_KIND_WORDS[kind]), kind)
        self.month.setCurrentIndex(day.month - 1)
        self.view.setMinimumContentsLength(18)
        names = ((self.view, tr("View")), (self.month, tr("Month")), (self.kind, tr("Kind of work")))
        for part, name in names:
            part.setAccessibleName(name)

    def _lay_out(self) -> None:
        head, filters, foot = QHBoxLayout(), QHBoxLayout(), QHBoxLayout()
        for part in (self.earlier, self.year, self.later, self.view, self.month):
            head.addWidget(part)
        head.addStretch()
        filters.addWidget(self.kind)
        filters.addWidget(self.only_open)
        filters.addStretch()
        filters.addWidget(self.to_file)
        self.details.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.details.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.details.setAccessibleName(tr("Details of the task"))
        below = QScrollArea()
        below.setWidgetResizable(True)
        below.setWidget(self.details)
        below.setFrameShape(QScrollArea.Shape.NoFrame)
        below.setAccessibleName(tr("What is known of the task"))
        split = Splitter()
        split.addWidget(self.cards)
        split.addWidget(below)
        split.setStretchFactor(0, 3)
        split.setStretchFactor(1, 2)
        split.setSizes([420, 200])
        foot.addWidget(self.on_plan)
        foot.addStretch()
        box = QVBoxLayout(self)
        box.setSpacing(6)
        box.addLayout(head)
        box.addLayout(filters)
        box.addWidget(self.quiet)
        box.addWidget(split, 1)
        box.addLayout(foot)
        box.addWidget(self.said)
        self.said.hide()

    def _listen(self) -> None:
        self.earlier.clicked.connect(lambda: self.rows.show(year=self.rows.year - 1))
        self.later.clicked.connect(lambda: self.rows.show(year=self.rows.year + 1))
        for combo in (self.view, self.month, self.kind):
            combo.currentIndexChanged.connect(self._show)
        self.only_open.toggled.connect(self._show)
        self.rows.modelReset.connect(self._reset)
        self.rows.dataChanged.connect(lambda *_: self._chosen())
        self.cards.selectionModel().currentChanged.connect(lambda *_: self._chosen())
        self.cards.doubleClicked.connect(self._go_to)
        self.on_plan.clicked.connect(lambda: self._go_to(self.cards.currentIndex()))
        self.to_file.clicked.connect(self._ask_file)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.rows.watch(True)

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self.rows.watch(False)

    def _show(self, *_: object) -> None:
        self.rows.show(
            month=self.month.currentData(), view=self.view.currentData(), kind=self.kind.currentData(),
            only_open=self.only_open.isChecked(),
        )

    def _reset(self) -> None:
        """Words that hang on what is listed."""
        self.year.setText(str(self.rows.year))
        self.month.setVisible(self.rows.view == "month")
        empty = self.rows.rowCount() == 0
        self.cards.setVisible(not empty)
        plan = self.rows.plan
        notes = [tr(_EMPTY[self.rows.view])] if empty else []
        if self.rows.view == "refused":
            notes.append(tr(_GUARD))
        if plan.by_month:
            notes.append(
                tr("Some dates rest on usual months: the site's temperatures or frosts are not known.")
            )
        if plan.by_years and not empty and self.rows.view != "refused":
            notes.append(tr(
                "Where no planting year is given, work of all ages is listed and says for which years it is; "
                "year 1 is the planting year."
            ))
        if plan.bloom_unknown:
            kinds = ", ".join(plan.bloom_unknown)
            notes.append(tr("Bloom here is not known of {kinds}: no spray is placed.", kinds=kinds))
        if plan.undated:
            kinds = ", ".join(plan.undated)
            notes.append(tr("Not dated for want of bloom dates here: {kinds}.", kinds=kinds))
        self.quiet.setText(" ".join(notes))
        self.quiet.setVisible(bool(notes))
        self._chosen()

    def _chosen(self) -> None:
        here = self.cards.currentIndex()
        known = here.isValid() and here.row() < self.rows.rowCount()
        line = self.rows.line(here.row()) if known else None
        none = tr(_CHOOSE) if self.rows.rowCount() else ""
        self.details.setText(line.details if line is not None else none)
        self.on_plan.setEnabled(line is not None)

    def _go_to(self, index: QModelIndex) -> None:
        """Select the task's plants and bring them into view."""
        if not index.isValid():
            return
        ids = self.rows.line(index.row()).things
        found = (self._open_yard.shown_yard.find(one) for one in ids)
        points = tuple(point for thing in found if thing is not None for point in edits.points_of(thing))
        self._open_yard.show_place(points, ids)

    def _ask_file(self) -> None:
        name = f"{self._open_yard.shown_yard.site.name} {self.rows.year}.ics"
        first = beside(self._open_yard, name)
        path, _ = QFileDialog.getSaveFileName(self, tr("Save as calendar"), first, tr("Calendar (*.ics)"))
        if path:
            self.write_calendar(Path(path))

    def write_calendar(self, path: Path) -> None:
        """Write the year as a calendar file and say so, or say why it cannot be done."""
        yard = self._open_yard.shown_yard
        try:
            path.write_bytes(calendar_file(self.rows.plan, yard))
        except (OSError, CalendarError) as error:
            fault = getattr(error, "strerror", None) or error
            said = tr("The calendar was not written: {fault}", fault=fault)
        else:
            said = tr_n(
                "Written: {name}, {n} task.", "Written: {name}, {n} tasks.", len(self.rows.plan.tasks),
                name=path.name,
            )
        self.said.setText(said)
        self.said.show()
