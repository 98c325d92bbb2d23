"""Find a partner: varieties that would set fruit on a plant, ranked; the chosen one is in hand."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent, QShowEvent
from PySide6.QtWidgets import QAbstractItemView, QListView, QVBoxLayout, QWidget

from yardplan.checks.wording import names_of
from yardplan.language import later, tr
from yardplan.units import format_coarse
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.panels.facts import plant_in_hand, selected_plant
from yardplan.window.panels.partner_rows import PartnerCard, PartnerRow, PartnerRows, rows_for, rows_for_all
from yardplan.window.panels.parts import button, label
from yardplan.yard.planting import PlantKey

_ASK = later("Select a plant to see what would set fruit on it, or see what the whole yard lacks.")
_NONE = later("No variety of the catalogue that lives here is known to set fruit on it.")
_NO_ROOM = later("No clear ground is left there: make room, or graft a branch onto it.")
_ENOUGH = later("Every plant on the plan has what it needs to set fruit.")


class _View(QListView):
    """The suggestions; Enter takes one in hand."""

    taken = Signal(QModelIndex)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("Varieties that would set fruit"))
        self.setUniformItemSizes(True)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMouseTracking(True)
        self.setItemDelegate(PartnerCard(self))
        self.clicked.connect(self.taken)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.taken.emit(self.currentIndex())
            return
        super().keyPressEvent(event)

    def minimumSizeHint(self) -> QSize:
        return QSize(120, 90)


class PartnerList(QWidget):
    """Partners for one plant, or the fewest plants to add so that all crop."""

    #: A variety was taken in hand: its PlantKey, the id it is to stand near, and within how many metres.
    chosen = Signal(object, str, float)

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.rows = PartnerRows(self)
        self.title = label(tr("Partners"), "heading", wrap=True)
        self.note = label(tr(_ASK), "muted", wrap=True)
        self.view = _View()
        self.view.setModel(self.rows)
        self.reasons = label("", "small", wrap=True)
        self.all_button = button(
            tr("What the whole yard lacks"),
            name=tr("Fewest plants to add so that every plant crops"),
            tip=tr("The fewest plants to add so that every plant crops"),
        )
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(4)
        for part in (self.title, self.note, self.view, self.reasons, self.all_button):
            box.addWidget(part)
        box.setStretch(2, 1)
        self.all_button.clicked.connect(self.show_for_all)
        self.view.taken.connect(self._take)
        self.view.selectionModel().currentChanged.connect(self._show_reasons)
        self._asked = False
        self._later = QTimer(self, singleShot=True, interval=0)
        self._later.timeout.connect(self._ask_for_selected)
        open_yard.loaded.connect(self.clear)
        open_yard.selection_changed.connect(self._selection_changed)

    def showEvent(self, event: QShowEvent) -> None:
        """Brought to the front without a question, it answers for the plant selected."""
        super().showEvent(event)
        self._asked = False
        self._later.start()

    def _selection_changed(self) -> None:
        if self.isVisible() and not self._asked:
            self._later.start()

    def _ask_for_selected(self) -> None:
        subject = selected_plant(self._open_yard) or plant_in_hand(self._open_yard)
        if not self._asked and subject is not None:
            planted = subject.id and self._open_yard.yard.find(subject.id)
            self.show_for(subject.key, subject.id if planted else None)

    def clear(self) -> None:
        """Ask anew: another yard was opened."""
        self._asked = False
        self._show([], tr("Partners"), tr(_ASK))

    def show_for(self, key: PlantKey, thing_id: str | None) -> None:
        """List partners for a plant on the plan, or for one only in hand (`thing_id` None)."""
        self._asked = True
        rows = rows_for(self._open_yard.survey, key, thing_id)
        where = f" ({thing_id})" if thing_id else ""
        near = (
            tr("Plant it within {distance} of it, trunk to trunk.", distance=self._near(rows[0]))
            if rows
            else tr(_NONE)
        )
        if rows and not rows[0].room:
            near = f"{near} {tr(_NO_ROOM)}"
        self._show(rows, tr("Partners for {variety}", variety=f"{key.cultivar}{where}"), near)

    def show_for_all(self) -> None:
        """List the fewest plants to add so that every plant crops."""
        self._asked = True
        rows, left = rows_for_all(self._open_yard.survey)
        names = names_of(self._open_yard.shown_yard)
        note = "" if rows or left else tr(_ENOUGH)
        if left:
            note = tr(
                "Nothing known here helps {plants}.", plants=", ".join(names.get(each, each) for each in left)
            )
        self._show(rows, tr("What the whole yard lacks"), note)

    def _show(self, rows: list[PartnerRow], title: str, note: str) -> None:
        self.rows.show_rows(rows)
        self.title.setText(title)
        self.note.setText(note)
        self.note.setVisible(bool(note))
        self._show_reasons(QModelIndex())

    def _near(self, row: PartnerRow) -> str:
        return format_coarse(row.suggestion.near, self._open_yard.units)

    def _show_reasons(self, index: QModelIndex, *_: object) -> None:
        words = ""
        if index.isValid():
            row = self.rows.row(index.row())
            names = names_of(self._open_yard.shown_yard)
            beside = [names[each] for each in row.near or (row.anchor,) if each in names]
            near = [
                tr("Within {distance} of {plants}", distance=self._near(row), plants=tr(" and ").join(beside))
            ] if beside else []
            told = [reason[:1].upper() + reason[1:] for reason in row.suggestion.reasons]
            words = ". ".join([*near, *told]) + "."
        self.reasons.setText(words)
        self.reasons.setVisible(bool(words))

    def _take(self, index: QModelIndex) -> None:
        row = self.rows.row(index.row())
        self._open_yard.take_in_hand(InHand(plant=row.suggestion.key, near=row.near))
        self.chosen.emit(row.suggestion.key, row.anchor, row.suggestion.near)
