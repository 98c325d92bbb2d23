"""The shopping list as rows of a table; prices are the user's own and kept in the yard."""

from __future__ import annotations

import math
from typing import Any

from attrs import evolve
from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from yardplan.care.shopping import Item, Shopping, shopping
from yardplan.drawing.rows import bed_places
from yardplan.language import decimals, later, tr
from yardplan.window.open_yard import OpenYard
from yardplan.yard.change import Change

HEADS = (later("Item"), later("Quantity"), later("Price of one"), later("Cost"))
ITEM, QUANTITY, PRICE, COST = range(4)
#: The highest price that is taken for one.
_HIGHEST = 1e7

_Index = QModelIndex | QPersistentModelIndex


def read_price(typed: str) -> float | None:
    """A price from what was typed: `12`, `12.50` or `12,50`; None for nothing. Raises ValueError in words."""
    text = typed.strip().replace(" ", "").replace(",", ".")
    if not text:
        return None
    try:
        price = float(text)
    except ValueError:
        price = math.nan
    if not (math.isfinite(price) and 0 <= price <= _HIGHEST):
        raise ValueError(tr("'{typed}' is not a price: write for example 12.50", typed=typed))
    return price


class ShoppingRows(QAbstractTableModel):
    """Follows the open yard."""

    def __init__(self, open_yard: OpenYard, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.fault = ""
        self.bill: Shopping = Shopping(items=())
        self._watched, self._stale = True, False
        open_yard.shown.connect(self._shown)
        open_yard.loaded.connect(self.refresh)
        self.refresh()

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self.bill.items)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(HEADS)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = int(Qt.ItemDataRole.DisplayRole)
    ) -> Any:
        if orientation is Qt.Orientation.Horizontal and role == int(Qt.ItemDataRole.DisplayRole):
            return tr(HEADS[section])
        return None

    def data(self, index: _Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        if not index.isValid():
            return None
        item = self.bill.items[index.row()]
        if role in (int(Qt.ItemDataRole.DisplayRole), int(Qt.ItemDataRole.EditRole)):
            return self._words(item, index.column())
        if role == int(Qt.ItemDataRole.ToolTipRole):
            return item.note or None
        if role == int(Qt.ItemDataRole.TextAlignmentRole) and index.column() != ITEM:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return None

    def _words(self, item: Item, column: int) -> str:
        if column == ITEM:
            return item.name
        if column == QUANTITY:
            return item.amount
        value = item.price if column == PRICE else item.cost
        return "" if value is None else decimals(f"{value:.2f}")

    def flags(self, index: _Index) -> Qt.ItemFlag:
        flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        return flags | Qt.ItemFlag.ItemIsEditable if index.column() == PRICE else flags

    def setData(self, index: _Index, value: Any, role: int = int(Qt.ItemDataRole.EditRole)) -> bool:
        """Keep a price: one undo step of the yard. What is no price leaves the old one and says why."""
        if role != int(Qt.ItemDataRole.EditRole) or index.column() != PRICE:
            return False
        item = self.bill.items[index.row()]
        try:
            price = read_price(str(value))
        except ValueError as error:
            self.fault = str(error)
            self.dataChanged.emit(index, index)
            return False
        self.fault = ""
        yard = self._open_yard.yard
        prices = {key: kept for key, kept in yard.prices.items() if key != item.key}
        if price is not None:
            prices[item.key] = item.kept_price(price)
        self._open_yard.commit(tr("Price of {item}", item=item.name), evolve(yard, prices=prices))
        return True

    def set_currency(self, words: str) -> None:
        """Keep the currency that prices are in."""
        yard = self._open_yard.yard
        self._open_yard.commit(tr("Currency"), evolve(yard, currency=words.strip()))

    def _shown(self, _change: Change) -> None:
        if self._open_yard.on_trial:
            return
        if self._watched:
            self.refresh()
        else:
            self._stale = True

    def watch(self, on: bool) -> None:
        """Follow the yard only while somebody looks."""
        self._watched = on
        if on and self._stale:
            self.refresh()

    def refresh(self) -> None:
        """Take the list up anew; rows that stay keep their place and selection."""
        self._stale = False
        yard = self._open_yard.shown_yard
        counts = {bed.id: len(bed_places(bed)) for bed in yard.beds}
        bill = shopping(self._open_yard.survey, counts)
        if [item.key for item in bill.items] == [item.key for item in self.bill.items]:
            self.bill = bill
            if bill.items:
                self.dataChanged.emit(self.index(0, 0), self.index(len(bill.items) - 1, COST))
            return
        self.beginResetModel()
        self.bill = bill
        self.endResetModel()
