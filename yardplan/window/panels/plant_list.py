"""The list of everything on the plan, in step with the selection: the way in without a mouse or a screen."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QItemSelection, QItemSelectionModel, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QVBoxLayout, QWidget

from yardplan.language import tr
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.parts import label
from yardplan.window.panels.plant_rows import FINDINGS, KEY, NAME, SIGN, PlantRows, SortedRows
from yardplan.window.theme import TARGET, colours_now, scaled
from yardplan.window.tools import commands
from yardplan.yard import edits

_WIDTHS = {KEY: 46, FINDINGS: 64}


class _Table(QTableView):
    """The table, with the keys of the plan: Enter shows the place, F2 goes to the fields, Del removes."""

    shown = Signal()
    edit_wanted = Signal()
    removed = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        signals = {
            Qt.Key.Key_Return: self.shown, Qt.Key.Key_Enter: self.shown, Qt.Key.Key_F2: self.edit_wanted,
            Qt.Key.Key_Delete: self.removed, Qt.Key.Key_Backspace: self.removed,
        }
        signal = signals.get(Qt.Key(event.key()))
        if signal is None:
            super().keyPressEvent(event)
        else:
            signal.emit()


class PlantList(QWidget):
    """Everything on the plan by key, name and findings; selects on the plan and follows it."""

    #: F2: the fields of what is selected are wanted.
    edit_wanted = Signal()

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._following = False
        self.rows = PlantRows(open_yard, colours_now(), self)
        self.sorted = SortedRows(self)
        self.sorted.setSourceModel(self.rows)
        self.sorted.setDynamicSortFilter(True)
        self.table = self._made_table()
        self.empty = label(tr("Nothing is on the plan yet."), "muted", wrap=True)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(self.empty)
        box.addWidget(self.table, 1)
        self._connect()
        self._follow()

    def _made_table(self) -> _Table:
        table = _Table()
        table.setAccessibleName(tr("Everything on the plan"))
        table.setModel(self.sorted)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setTabKeyNavigation(False)
        table.setIconSize(QSize(scaled(SIGN), scaled(SIGN)))
        table.setShowGrid(False)
        table.setWordWrap(False)
        table.setSortingEnabled(True)
        table.sortByColumn(KEY, Qt.SortOrder.AscendingOrder)
        table.verticalHeader().hide()
        table.verticalHeader().setDefaultSectionSize(scaled(TARGET))
        header = table.horizontalHeader()
        header.setHighlightSections(False)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setMinimumSectionSize(TARGET)
        for column, width in _WIDTHS.items():
            header.resizeSection(column, max(width, header.sectionSizeHint(column)))
        header.setSectionResizeMode(NAME, QHeaderView.ResizeMode.Stretch)
        return table

    def _connect(self) -> None:
        self.table.selectionModel().selectionChanged.connect(self._picked)
        self.table.doubleClicked.connect(lambda _index: self.show_selected())
        self.table.shown.connect(self.show_selected)
        self.table.edit_wanted.connect(self.edit_wanted)
        self.table.removed.connect(self.remove_selected)
        self.rows.modelReset.connect(self._follow)
        self._open_yard.selection_changed.connect(self._follow)

    def show_selected(self) -> None:
        """Bring the selected things into view on the plan."""
        yard = self._open_yard.shown_yard
        ids = self._open_yard.selection
        points = [p for thing in yard.things() if thing.id in ids for p in edits.points_of(thing)]
        points += yard.lot if "lot" in ids else ()
        if points:
            self._open_yard.show_place(tuple(points), ids)

    def remove_selected(self) -> None:
        """Take the selected things off the plan; undo brings them back."""
        commands.delete(self._open_yard)

    def _picked(self, *_: object) -> None:
        if self._following:
            return
        rows = self.table.selectionModel().selectedRows()
        ids = {key for index in rows for key in self.rows.ids_of(self.sorted.mapToSource(index).row())}
        self._following = True
        self._open_yard.select(ids)
        self._following = False

    def _follow(self, *_: object) -> None:
        """Select here what is selected on the plan."""
        self.empty.setVisible(self.rows.rowCount() == 0)
        if self._following:
            return
        self._following = True
        wanted = QItemSelection()
        first = None
        for row in self.rows.rows_of(self._open_yard.selection):
            index = self.sorted.mapFromSource(self.rows.index(row, KEY))
            wanted.select(index, index)
            first = first or index
        flags = QItemSelectionModel.SelectionFlag.ClearAndSelect | QItemSelectionModel.SelectionFlag.Rows
        self.table.selectionModel().select(wanted, flags)
        if first is not None:
            self.table.selectionModel().setCurrentIndex(first, QItemSelectionModel.SelectionFlag.NoUpdate)
            self.table.scrollTo(first)
        self._following = False

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            self.rows.set_colours(colours_now())
