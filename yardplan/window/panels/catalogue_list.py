"""The catalogue to plant from: type what you look for, choose, and it is in hand for the next click."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QItemSelectionModel, QModelIndex, QObject, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QListView,
    QVBoxLayout,
    QWidget,
)

from yardplan.language import tr, tr_n
from yardplan.plants.cultivar import Cultivar
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.pacing import Paced
from yardplan.window.panels.catalogue_filter import Asked, listed, nearest
from yardplan.window.panels.catalogue_rows import MEMORY_MARK, CatalogueRow, CatalogueRows
from yardplan.window.panels.filters import FilterBox
from yardplan.window.panels.forms import FormChoice
from yardplan.window.panels.in_hand import InHandCard
from yardplan.window.panels.parts import Combo, SearchLine, button, label
from yardplan.yard.change import Change
from yardplan.yard.planting import PlantKey


class _View(QListView):
    """The list of varieties; Enter takes one in hand."""

    taken = Signal(QModelIndex)
    #: Taken by Enter: whoever works by keys goes on to the sheet.
    keyed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("Varieties of the catalogue"))
        self.setUniformItemSizes(True)
        self.setDragEnabled(True)
        self.setDragDropMode(QAbstractItemView.DragDropMode.DragOnly)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMouseTracking(True)
        self.setItemDelegate(CatalogueRow(self))
        self.clicked.connect(self.taken)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.taken.emit(self.currentIndex())
            self.keyed.emit()
            return
        super().keyPressEvent(event)

    def minimumSizeHint(self) -> QSize:
        return QSize(120, 90)


class CatalogueList(QWidget):
    """Searchable catalogue with filters; click or Enter takes a variety in hand, dragging plants it."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.rows = CatalogueRows(self)
        self.search = SearchLine(tr("Find a variety or kind"))
        self.crops = Combo()
        self.crops.setAccessibleName(tr("Kind of fruit"))
        self.filter_button = button(
            tr("Filter"), tip=tr("Hardy here, needs no partner, ripening, width and more")
        )
        self.filter_button.setCheckable(True)
        self.filters = FilterBox(open_yard)
        self.view = _View()
        self.view.setModel(self.rows)
        self.count = label("", "small", wrap=True)
        self.in_hand = InHandCard(open_yard)
        self.forms = FormChoice(open_yard)
        self._lay_out()
        self._connect()
        self._fill_crops()
        self.refresh()

    def _lay_out(self) -> None:
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(4)
        box.addWidget(self.search)
        kinds = QHBoxLayout()
        kinds.setSpacing(4)
        kinds.addWidget(self.crops, 1)
        kinds.addWidget(self.filter_button)
        box.addLayout(kinds)
        self.filters.hide()
        box.addWidget(self.filters)
        box.addWidget(self.count)
        box.addWidget(self.view, 1)
        box.addWidget(self.in_hand)
        box.addWidget(self.forms)

    def _connect(self) -> None:
        self.search.textChanged.connect(self.refresh)
        self.search.installEventFilter(self)
        self.crops.activated.connect(self.refresh)
        self.filter_button.toggled.connect(self.filters.setVisible)
        self.filters.changed.connect(self.refresh)
        self._open_yard.selection_changed.connect(self._spot_changed)
        self._pace = Paced(self._open_yard, self._spot_changed, self)
        self._open_yard.light_changed.connect(self._pace.soon)
        self.view.taken.connect(self._take)
        self._open_yard.in_hand_changed.connect(self._follow)
        self._open_yard.shown.connect(self._yard_changed)
        self._open_yard.loaded.connect(self.refresh)

    def _fill_crops(self) -> None:
        held = {cultivar.crop for cultivar in self._open_yard.catalogue.cultivars.values()}
        self.crops.addItem(tr("All kinds"), "")
        for words, crop in sorted((tr(crop), crop) for crop in held):
            self.crops.addItem(words, crop)

    def asked(self) -> Asked:
        """What the fields ask for now."""
        return self.filters.asked(self.search.text(), self.crops.currentData())

    def refresh(self, *_: object) -> None:
        """List what the filters let through."""
        site = self._open_yard.shown_yard.site
        self.filters.refresh()
        ticked = self.filters.number()
        self.filter_button.setText(tr("Filter: {number}", number=ticked) if ticked else tr("Filter"))
        self.filter_button.setAccessibleName(tr("Filters, {number} in force", number=ticked))
        asked = self.asked()
        found = listed(self._open_yard.catalogue, asked, site)
        meant = [] if found or not asked.words.strip() else nearest(self._open_yard.catalogue, asked, site)
        self._show_found(found or meant)
        if not found:
            self.count.setText(_none_words(asked, bool(meant), bool(ticked)))
        self._follow()

    def _show_found(self, found: list[Cultivar]) -> None:
        if self.rows.show_cultivars(found):
            self.view.scrollToTop()
        self.count.setText(tr_n(
            "{n} variety, {mark} partly from memory", "{n} varieties, {mark} partly from memory", len(found),
            mark=MEMORY_MARK,
        ))

    def _yard_changed(self, change: Change) -> None:
        if {"site", "own_cultivars"} & change.whole:
            self.refresh()

    def _spot_changed(self) -> None:
        """Another plant is selected: the sun there counts where it was asked for."""
        asked = self.filters.ticks["sunny"].isChecked()
        self.filters.refresh()
        if asked:
            self.refresh()

    def take(self, key: PlantKey) -> None:
        """Take a variety in hand in its kind's usual form."""
        self._open_yard.take_in_hand(InHand(plant=key))

    def _take(self, index: QModelIndex) -> None:
        self.take(self.rows.cultivar(index.row()).key)

    def _follow(self) -> None:
        """Mark the variety in hand in the list."""
        in_hand = self._open_yard.in_hand
        if in_hand is None:
            self.view.clearSelection()
            return
        for row in range(self.rows.rowCount()):
            if self.rows.cultivar(row).key == in_hand.plant:
                flag = QItemSelectionModel.SelectionFlag.ClearAndSelect
                self.view.selectionModel().setCurrentIndex(self.rows.index(row), flag)
                return

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.in_hand.refresh()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Arrow down leaves the search for the list; Enter takes the first one found."""
        if watched is self.search and isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            if event.key() == Qt.Key.Key_Down:
                self.view.setFocus(Qt.FocusReason.TabFocusReason)
                if not self.view.currentIndex().isValid() and self.rows.rowCount():
                    self.view.setCurrentIndex(self.rows.index(0))
                return True
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.rows.rowCount():
                self._take(self.rows.index(0))
                self.view.keyed.emit()
                return True
        return bool(super().eventFilter(watched, event))


def _none_words(asked: Asked, meant: bool, filtered: bool) -> str:
    """Nothing holds the words: what is listed in their place, or what to try."""
    words = asked.words.strip()
    if meant:
        return tr("Nothing is called '{words}'. Names like it:", words=words)
    if filtered or asked.crop:
        return tr("Nothing fits. Take away a filter, or ask for all kinds.")
    return tr("Nothing is called '{words}'. Try fewer letters, or a kind such as apple.", words=words)
