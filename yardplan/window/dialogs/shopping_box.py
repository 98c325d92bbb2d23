"""The shopping list beside the plan: prices to type in, the total, and a file for a spreadsheet."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFileDialog,
    QHBoxLayout,
    QHeaderView,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from yardplan.language import thousands, tr, tr_n
from yardplan.window.beside_yard import beside
from yardplan.window.dialogs.box import BesideBox, close_button, press_by_enter, roomy
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.entry import TextEntry, text_reading
from yardplan.window.panels.parts import button, label
from yardplan.window.panels.shopping_rows import COST, ITEM, PRICE, QUANTITY, ShoppingRows
from yardplan.window.theme import TARGET, scaled

_LONGEST_CURRENCY = 12


class ShoppingBox(BesideBox):
    """What to buy for the yard."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Shopping list"))
        self._open_yard = open_yard
        self.rows = ShoppingRows(open_yard, self)
        self.table = QTableView()
        self.table.setModel(self.rows)
        self.table.setAccessibleName(tr("What to buy"))
        self.table.verticalHeader().hide()
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setEditTriggers(
            QAbstractItemView.EditTrigger.DoubleClicked | QAbstractItemView.EditTrigger.AnyKeyPressed
            | QAbstractItemView.EditTrigger.SelectedClicked
        )
        head = self.table.horizontalHeader()
        head.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        # One pixel of a row is its line.
        self.table.verticalHeader().setDefaultSectionSize(scaled(TARGET) + 1)
        head.setSectionResizeMode(ITEM, QHeaderView.ResizeMode.Stretch)
        for column in (QUANTITY, PRICE, COST):
            head.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        self.currency = TextEntry(tr("Currency"), text_reading(longest=_LONGEST_CURRENCY))
        self.currency.set_placeholder(tr("currency"))
        self.total = label("", "heading")
        self.fault = label("", "fault", wrap=True)
        self.note = label("", "muted", wrap=True)
        self.to_file = button(tr("Save as CSV…"), tip=tr("A table for a spreadsheet"))
        self._lay_out()
        self.rows.modelReset.connect(self._show)
        self.rows.dataChanged.connect(lambda *_: self._show())
        self.currency.entered.connect(lambda *_: self.rows.set_currency(str(self.currency.value or "")))
        self.to_file.clicked.connect(self._ask_file)
        self.table.selectionModel().currentChanged.connect(lambda *_: self._show())
        self._show()

    def _lay_out(self) -> None:
        foot = QHBoxLayout()
        foot.addWidget(label(tr("Prices in"), "muted"))
        foot.addWidget(self.currency)
        foot.addWidget(self.total)
        foot.addStretch()
        buttons = QHBoxLayout()
        buttons.addStretch()
        buttons.addWidget(self.to_file)
        buttons.addWidget(close_button(self))
        box = QVBoxLayout(self)
        box.setSpacing(6)
        box.addWidget(label(
            tr("Quantities are estimates to buy by. Prices are your own: click a price and type."), "muted",
            wrap=True,
        ))
        box.addWidget(self.table, 1)
        box.addWidget(self.note)
        box.addWidget(self.fault)
        box.addLayout(foot)
        box.addLayout(buttons)
        self.resize(roomy(self, 600, 520))
        press_by_enter(self.to_file)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.rows.watch(True)

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self.rows.watch(False)

    def _show(self) -> None:
        """The total and the note of the line chosen."""
        bill = self.rows.bill
        self.currency.show_value(bill.currency)
        if bill.total is None:
            self.total.setText(tr("no prices yet") if bill.items else tr("nothing to buy"))
        else:
            total = f"{bill.currency} {thousands(bill.total, 2)}".strip()
            self.total.setText(tr_n(
                "Total {total}, {n} line without a price", "Total {total}, {n} lines without a price",
                bill.unpriced, total=total,
            ) if bill.unpriced else tr("Total {total}", total=total))
        here = self.table.currentIndex()
        known = here.isValid() and here.row() < len(bill.items)
        self.note.setText(bill.items[here.row()].note if known else "")
        self.fault.setText(self.rows.fault)
        self.fault.setVisible(bool(self.rows.fault))

    def _ask_file(self) -> None:
        name = tr("{yard} shopping.csv", yard=self._open_yard.shown_yard.site.name)
        first = beside(self._open_yard, name)
        path, _ = QFileDialog.getSaveFileName(self, tr("Save as CSV"), first, "CSV (*.csv)")
        if path:
            self.write_csv(Path(path))

    def write_csv(self, path: Path) -> None:
        """Write the list (RFC 4180, UTF-8 with its mark, which spreadsheets look for)."""
        try:
            path.write_bytes(self.rows.bill.csv().encode("utf-8-sig"))
        except OSError as error:
            self.note.setText(tr("The list was not written: {fault}", fault=error.strerror or error))
            return
        self.note.setText(tr("Written: {name}", name=path.name))
