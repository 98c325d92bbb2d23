"""The table of who takes the light of the one thing selected; its hours add up to what is missing."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from yardplan.language import decimals, later, percent, tr
from yardplan.sun.light import PlantLight
from yardplan.window.light.takers import Taken, subject_of, taken_from, tenths
from yardplan.window.light.words import month_name
from yardplan.window.open_yard import OpenYard
from yardplan.window.pacing import BESIDE
from yardplan.window.panels.parts import Check, label
from yardplan.window.theme import font

_NOTHING = later("Select one plant, row or bed to see who takes its light.")
_OLD = later("Of before, being worked out.")
_ROWS = 8
_SUM = later("in all")


class TakersView(QWidget):
    """Follows the selection and the light; `marked` says whether the casters are marked on the sheet."""

    #: What is marked on the sheet changed.
    marks_changed = Signal()

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._yard = open_yard
        self.taken: Taken | None = None
        self.title = label("", "heading", wrap=True)
        self.facts = label("", "muted", wrap=True)
        self.table = QTreeWidget()
        self.mark = Check(tr("Mark them on the sheet"))
        self._soon = QTimer(self, singleShot=True, interval=0)
        self._soon.timeout.connect(self.refresh)
        self._set_up()
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(4)
        for part in (self.title, self.facts, self.table, self.mark):
            box.addWidget(part)
        self.mark.toggled.connect(lambda _on: self.marks_changed.emit())
        self.table.itemActivated.connect(self._go_to)
        self.table.itemClicked.connect(self._go_to)
        for signal in (open_yard.selection_changed, open_yard.light_changed, open_yard.shown):
            signal.connect(self._refresh_soon)
        self.refresh()

    def _set_up(self) -> None:
        table = self.table
        table.setColumnCount(2)
        table.setHeaderLabels([tr("Taken by"), tr("h a day")])
        table.setRootIsDecorated(False)
        table.setUniformRowHeights(True)
        table.setAccessibleName(tr("Who takes its light, hours a day"))
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        header = table.header()
        header.setStretchLastSection(False)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionsClickable(False)
        table.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        table.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    @property
    def marked(self) -> bool:
        """True when casters are to be marked."""
        return self.mark.isChecked()

    def show_shade(self) -> None:
        """Mark the casters of what is selected."""
        self.mark.setChecked(True)
        self.refresh()

    def _refresh_soon(self, *_: object) -> None:
        """Several signals of one event make one renewal; none while nobody looks."""
        if self.isVisible() or self.marked:
            self._soon.start(BESIDE if self._yard.on_trial else 0)

    def showEvent(self, event: object) -> None:
        self.refresh()

    def refresh(self) -> None:
        """Show who takes the light now."""
        self._soon.stop()
        thing = subject_of(self._yard)
        self.taken = taken_from(self._yard, thing) if thing is not None else None
        known = self.taken is not None
        for part in (self.table, self.mark, self.facts):
            part.setVisible(known)
        if self.taken is None:
            self.title.setProperty("look", "muted")
            self.title.setText(tr(_NOTHING))
        else:
            self.title.setText(self.taken.name)
            self._show(self.taken)
            # While a thing is dragged the light is at most a frame behind.
            old = not self._yard.checks.light_fresh and not self._yard.on_trial
            for part in (self.table, self.facts):
                part.setEnabled(not old)
            if old:
                self.facts.setText(f"{tr(_OLD)} {self.facts.text()}")
        self.marks_changed.emit()

    def _show(self, taken: Taken) -> None:
        light = taken.light
        self.facts.setText(_facts(light))
        self.table.clear()
        shown = tenths([taker.hours for taker in taken.takers], taken.missing)
        for taker, hours in zip(taken.takers, shown, strict=True):
            item = _item(taker.name, hours)
            item.setData(0, Qt.ItemDataRole.UserRole, taker.id)
            self.table.addTopLevelItem(item)
        whole = _item(tr(_SUM) if taken.takers else tr("nothing takes any"), taken.missing)
        for column in (0, 1):
            whole.setFont(column, font(bold=True))
        self.table.addTopLevelItem(whole)
        rows = min(self.table.topLevelItemCount(), _ROWS)
        high = self.table.header().sizeHint().height() + rows * max(self.table.sizeHintForRow(0), 18) + 6
        self.table.setFixedHeight(high)

    def _go_to(self, item: QTreeWidgetItem, _column: int = 0) -> None:
        """Bring the caster into view; the plant stays selected, so that the table stays."""
        key = item.data(0, Qt.ItemDataRole.UserRole)
        thing = self._yard.shown_yard.find(key) if key else None
        if thing is not None:
            from yardplan.yard.edits import points_of

            self._yard.show_place(points_of(thing))


def _facts(light: PlantLight) -> str:
    """The figures of a thing's light in words."""
    parts = [tr("Midsummer {hours} h", hours=_tenths(light.hours_midsummer))]
    if light.worst_month:
        hours = _tenths(light.hours_worst_month)
        parts.append(tr("{hours} h in {month}", hours=hours, month=month_name(light.worst_month)))
    parts.append(tr("before 10 by the sun {hours} h", hours=_tenths(light.hours_morning)))
    parts.append(tr("{share} of open light", share=percent(light.open_light)))
    whole = tr(
        "{hours} h of direct sun a day, of {open} h in the open",
        hours=_tenths(light.hours), open=_tenths(light.open_hours),
    )
    return f"{whole}. {', '.join(parts)}."


def _tenths(hours: float) -> str:
    return decimals(f"{hours:.1f}")


def _item(name: str, hours: float) -> QTreeWidgetItem:
    made = QTreeWidgetItem([name, _tenths(hours)])
    made.setTextAlignment(1, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
    made.setToolTip(0, name)
    return made
