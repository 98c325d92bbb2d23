"""All that is known of a variety, fact by fact with its source; a second one beside it to compare."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QColor
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialogButtonBox,
    QHBoxLayout,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from yardplan.language import tr
from yardplan.window.dialogs.box import BesideBox, press_by_enter, roomy
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.panels.cultivar_facts import CardFact, card_facts
from yardplan.window.panels.field_entries import PlantEntry
from yardplan.window.panels.parts import button, label
from yardplan.window.theme import TARGET, colours_now, font
from yardplan.yard.planting import PlantKey

_MEMORY = " †"


class CultivarCard(BesideBox):
    """A card of one variety, or of two side by side. Not modal: the plan stays within reach."""

    #: A variety was taken in hand from the card.
    taken = Signal(object)

    def __init__(self, open_yard: OpenYard, key: PlantKey, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._keys: list[PlantKey] = [key]
        self.resize(roomy(self, 560, 560))
        self.title = label("", "title")
        self.beside = PlantEntry(tr("Compare with"), open_yard.catalogue, optional=True)
        self.beside.set_placeholder(tr("another variety"))
        self.table = self._made_table()
        self.source = label("", "small", wrap=True)
        self.source.setMinimumHeight(48)
        self.source.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.take_button = button(tr("Take in hand"), "main")
        self._lay_out()
        self.beside.entered.connect(self._compare)
        self.table.currentCellChanged.connect(self._show_source)
        self.take_button.clicked.connect(self._take)
        self.refresh()

    def _made_table(self) -> QTableWidget:
        table = QTableWidget()
        table.setAccessibleName(tr("Facts of the variety"))
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setTabKeyNavigation(False)
        table.setShowGrid(False)
        table.setWordWrap(True)
        table.verticalHeader().hide()
        table.verticalHeader().setMinimumSectionSize(TARGET)
        table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        table.horizontalHeader().setHighlightSections(False)
        table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        return table

    def _lay_out(self) -> None:
        top = QHBoxLayout()
        caption = label(tr("Compare with"))
        caption.setBuddy(self.beside)
        top.addWidget(caption)
        top.addWidget(self.beside, 1)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.addButton(self.take_button, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(14, 12, 14, 12)
        box.addWidget(self.title)
        box.addLayout(top)
        box.addWidget(self.table, 1)
        box.addWidget(
            label(tr("† from memory, not confirmed by a look-up. Choose a line to see its source."), "small")
        )
        box.addWidget(self.source)
        box.addWidget(buttons)
        press_by_enter(self.take_button)

    def refresh(self) -> None:
        """Show the facts of the variety, or of both."""
        names = [f"{key.cultivar}, {tr(key.crop)}" for key in self._keys]
        self.title.setText(names[0])
        self.setWindowTitle(tr(" and ").join(names))
        columns = [self._facts(key) for key in self._keys]
        order = list(dict.fromkeys(name for column in columns for name in column))
        self.table.setColumnCount(1 + len(columns))
        self.table.setRowCount(len(order))
        self.table.setHorizontalHeaderLabels([tr("Fact"), *(key.cultivar for key in self._keys)])
        for row, name in enumerate(order):
            values = [column.get(name) for column in columns]
            self._fill_row(row, name, values)
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.ResizeToContents)
        self._show_source(0)

    def _facts(self, key: PlantKey) -> dict[str, CardFact]:
        known = self._open_yard.catalogue
        cultivar = known.cultivar(key)
        if cultivar is None:
            return {
                tr("Variety"): CardFact(
                    tr("Variety"), tr("the catalogue does not hold it; its facts are not known")
                )
            }
        facts = card_facts(cultivar, known.crop(key.crop), self._open_yard.units)
        return {fact.name: fact for fact in facts}

    def _fill_row(self, row: int, name: str, values: list[CardFact | None]) -> None:
        caption = QTableWidgetItem(name)
        caption.setForeground(QColor(colours_now().muted))
        self.table.setItem(row, 0, caption)
        differ = len(values) > 1 and len({fact.value if fact else "" for fact in values}) > 1
        for column, fact in enumerate(values, 1):
            text = f"{fact.value}{_MEMORY if fact.memory else ''}" if fact else tr("not known")
            cell = QTableWidgetItem(text)
            cell.setData(Qt.ItemDataRole.UserRole, fact.source if fact else "")
            if differ:
                cell.setFont(font(bold=True))
            cell.setData(Qt.ItemDataRole.AccessibleTextRole, text.replace("†", tr("from memory")))
            self.table.setItem(row, column, cell)

    def _show_source(self, row: int, *_: int) -> None:
        sources = []
        for column in range(1, self.table.columnCount()):
            cell = self.table.item(row, column)
            text = cell.data(Qt.ItemDataRole.UserRole) if cell else ""
            if text and text not in sources:
                sources.append(text)
        self.source.setText(tr("Source: {sources}", sources='; '.join(sources)) if sources else "")

    def _compare(self, key: PlantKey | None) -> None:
        self._keys = [self._keys[0], *([key] if key is not None and key != self._keys[0] else [])]
        self.refresh()

    def _take(self) -> None:
        in_hand = InHand(plant=self._keys[0])
        self._open_yard.take_in_hand(in_hand)
        self.taken.emit(in_hand)
        self.close()
