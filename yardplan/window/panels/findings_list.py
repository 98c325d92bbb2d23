"""The list of conflicts, cautions and advice: counts above, a card each, the place one click away."""

from __future__ import annotations

from PySide6.QtCore import QItemSelection, QItemSelectionModel, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QListView, QVBoxLayout, QWidget

from yardplan.checks.finding import Finding, Weight
from yardplan.language import later, tr
from yardplan.window.open_yard import OpenYard
from yardplan.window.pacing import Paced
from yardplan.window.panels.finding_card import FindingCard
from yardplan.window.panels.finding_counts import FindingCounts
from yardplan.window.panels.finding_rows import FindingRows, Row
from yardplan.window.panels.parts import button, label
from yardplan.window.panels.way_plan import WAY
from yardplan.window.theme import scaled
from yardplan.yard.yard import Yard

_HINT = later("Choose a line to see its place on the plan and the rule behind it.")
#: Room kept for two lines of the rule, so that the list keeps its height.
_RULE_HEIGHT = 30
#: The cards are never lower than this, pixels at the usual size of text: one of them and the next one's head.
_LEAST = 100
_NONE = later("Nothing stands against this plan.")
_EMPTY = later("Nothing is drawn yet. What does not fit, shades or lacks a partner will be listed here.")


PARTNER_STEP, SITE_STEP, FIELDS_STEP = (
    later("Find a partner…"),
    later("Open the site card…"),
    later("Go to its fields…"),
)
WAY_STEP = later("Choose the width of ways…")
SHADE_STEP, CLEAR_STEP = later("Show the shade"), later("Move to the nearest clear place")
#: Checks whose conflicts end where a plant stands on clear ground.
_OF_PLACE = frozenset({"spacing", "clearance", "neighbours", "soil", "drainage"})
#: The next step that the program can take for findings of a check.
_STEPS = {
    "pollination": PARTNER_STEP, "bloom": SITE_STEP, "known": FIELDS_STEP, "containers": FIELDS_STEP,
    "light": SHADE_STEP, "hardiness": FIELDS_STEP, "chill": FIELDS_STEP, "spacing": FIELDS_STEP,
}
#: Kinds of finding that lack a fact of the site.
_SITE_KINDS = frozenset({
    "zone_unknown", "drainage_missing", "no_climate", "from_afar", "too_mild", "observed",
})


#: Kinds of finding that hang on the width chosen for ways.
_WAY_KINDS = frozenset({"shut_off", "narrow_gate"})


def mover_of(finding: Finding, yard: Yard) -> str | None:
    """The plant that may be moved to end a conflict of places, or None."""
    if finding.weight is not Weight.CONFLICT or finding.check not in _OF_PLACE:
        return None
    named = finding.figures["mover"].value if "mover" in finding.figures else ""
    free = [thing.id for thing in yard.plantings if thing.id in finding.things and not thing.locked]
    return str(named) if named in free else free[0] if free else None


def step_words(finding: Finding, yard: Yard) -> str:
    """The next step for a finding in words, or nothing."""
    if mover_of(finding, yard) is not None:
        return CLEAR_STEP
    if finding.kind in _SITE_KINDS:
        return SITE_STEP
    if finding.check == "access" and finding.kind in _WAY_KINDS:
        return WAY_STEP
    thing = yard.find(finding.things[0]) if finding.things else None
    step = _STEPS.get(finding.check, "")
    if step == PARTNER_STEP and getattr(thing, "plant", None) is None:
        return ""
    return step if step == SITE_STEP or thing is not None else ""


class _Cards(QListView):
    """The cards; they wrap to the list's width, so a new width lays them out again."""

    chosen = Signal(int)
    choice_moved = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("cards")
        self.setAccessibleName(tr("Conflicts, cautions and advice"))
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setMouseTracking(True)
        self.setItemDelegate(FindingCard(self))
        self.clicked.connect(lambda index: self.chosen.emit(index.row()))

    def selectionChanged(self, selected: QItemSelection, deselected: QItemSelection) -> None:
        super().selectionChanged(selected, deselected)
        self.viewport().update()
        self.choice_moved.emit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.scheduleDelayedItemsLayout()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            if self.currentIndex().isValid():
                self.chosen.emit(self.currentIndex().row())
            return
        super().keyPressEvent(event)

    def minimumSizeHint(self) -> QSize:
        return QSize(120, scaled(_LEAST))


class FindingsList(QWidget):
    """Counts and cards of what the checks found. Click or Enter shows the place and selects its things."""

    #: Ids of the things concerned and the finding's marks: the place to show.
    go_to = Signal(object, object)
    #: Partners for a thing (its PlantKey, its id) are the next step.
    partners_wanted = Signal(object, object)
    #: The site card, or the fields of what is selected, is the next step.
    site_wanted = Signal()
    fields_wanted = Signal()
    #: A field of the yard itself is the next step, by its path.
    yard_field_wanted = Signal(str)
    #: Who takes the light of a thing, by id, is the next step.
    shade_wanted = Signal(str)
    #: The nearest clear place is wanted for a plant, by its id.
    clear_wanted = Signal(str)

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.rows = FindingRows(open_yard, self)
        self.counts = FindingCounts()
        self.cards = _Cards()
        self.cards.setModel(self.rows)
        self.quiet = label("", "muted", wrap=True)
        self.quiet.setAlignment(Qt.AlignmentFlag.AlignTop)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(2)
        #: The rule behind the chosen finding and where it was published.
        self.rule = label("", "small", wrap=True)
        self.rule.setMinimumHeight(scaled(_RULE_HEIGHT))
        self.rule.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.rule.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.step_button = button("", "link")
        self.step_button.clicked.connect(self._take_step)
        for part in (self.counts, self.quiet, self.cards, self.step_button, self.rule):
            box.addWidget(part)
        box.setStretch(2, 1)
        self.cards.chosen.connect(self.show_place)
        self.cards.choice_moved.connect(self._show_chosen)
        for signal in (self.rows.dataChanged, self.rows.rowsInserted, self.rows.layoutChanged):
            signal.connect(self._rows_changed)
        self._pace = Paced(open_yard, self._rows_changed, self)
        open_yard.shown.connect(self._pace.soon)
        self._rows_changed()

    def show_place(self, number: int) -> None:
        """Ask for the place of a finding to be shown and select what it is about."""
        found = self.rows.row(number).all
        marks = tuple(mark for finding in found for mark in finding.marks)
        things = tuple(dict.fromkeys(thing for finding in found for thing in finding.things))
        self.go_to.emit(things, marks)
        points = tuple(point for mark in marks for point in mark.points)
        self._open_yard.show_place(points, things)

    def step(self, by: int) -> None:
        """Show the next (1) or the previous (-1) finding's place."""
        if not self.rows.rowCount():
            return
        here = self.cards.currentIndex().row()
        number = (here + by) % self.rows.rowCount() if here >= 0 else 0
        flag = QItemSelectionModel.SelectionFlag.ClearAndSelect
        self.cards.selectionModel().setCurrentIndex(self.rows.index(number), flag)
        self.show_place(number)

    def _chosen(self) -> Row | None:
        chosen = self.cards.selectedIndexes()
        return self.rows.row(chosen[0].row()) if chosen else None

    def _show_chosen(self) -> None:
        """The rule behind the chosen finding and, where the program can help, the next step."""
        row = self._chosen()
        self.rule.setText(tr("Rule: {rule}", rule=row.said.source_text) if row else tr(_HINT))
        words = step_words(row.finding, self._open_yard.shown_yard) if row else ""
        self.step_button.setText(tr(words))
        self.step_button.setAccessibleName(tr(words))
        self.step_button.setVisible(bool(words))
        QTimer.singleShot(0, self, self._keep_chosen_in_view)

    def _keep_chosen_in_view(self) -> None:
        chosen = self.cards.selectedIndexes()
        if chosen:
            self.cards.scrollTo(chosen[0])

    def _take_step(self) -> None:
        row = self._chosen()
        if row is None:
            return
        words = step_words(row.finding, self._open_yard.shown_yard)
        if words == PARTNER_STEP:
            thing = self._open_yard.shown_yard.find(row.finding.things[0])
            self.partners_wanted.emit(getattr(thing, "plant", None), row.finding.things[0])
        elif words == SITE_STEP:
            self.site_wanted.emit()
        elif words == WAY_STEP:
            self.yard_field_wanted.emit(WAY.path)
        elif words == CLEAR_STEP:
            self.clear_wanted.emit(mover_of(row.finding, self._open_yard.shown_yard))
        elif words == SHADE_STEP:
            self.shade_wanted.emit(row.finding.things[0])
        else:
            self._open_yard.select(row.finding.things)
            self.fields_wanted.emit()

    def _fit_quiet(self) -> None:
        """A splitter does not ask a wrapped text for its height."""
        self.quiet.setMinimumHeight(self.quiet.heightForWidth(max(self.width(), 1)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_quiet()

    def _rows_changed(self, *_: object) -> None:
        self._show_chosen()
        self.counts.show_counts(self.rows.counts())
        empty = self.rows.rowCount() == 0
        drawn = bool(self._open_yard.shown_yard.lot) or bool(self._open_yard.shown_yard.ids())
        self.quiet.setText(tr(_NONE) if drawn else tr(_EMPTY))
        self.quiet.setVisible(empty)
        self._fit_quiet()
        self.cards.setVisible(not empty)
        self.rule.setVisible(not empty)
