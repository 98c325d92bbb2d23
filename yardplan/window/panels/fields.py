"""Fields for what is selected: every fact typed or chosen, tried on the plan at once, one undo step each."""

from __future__ import annotations

from collections.abc import Iterable
from functools import partial
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QFrame, QGridLayout, QScrollArea, QVBoxLayout, QWidget

from yardplan.checks.finding import Finding
from yardplan.language import tr, tr_n
from yardplan.units import format_area, format_coarse, format_length
from yardplan.window.open_yard import OpenYard
from yardplan.window.pacing import Paced
from yardplan.window.panels import subjects
from yardplan.window.panels.entry import CheckEntry, Entry, EntryError, TextEntry
from yardplan.window.panels.facts import selected_plant
from yardplan.window.panels.field_entries import entry_for, shape_of
from yardplan.window.panels.field_plans import FieldPlan
from yardplan.window.panels.fit_notes import fit_words
from yardplan.window.panels.in_hand import InHandCard
from yardplan.window.panels.parts import Elided, Fold, button, label
from yardplan.window.panels.trial_words import trial_words
from yardplan.window.theme import scaled

_CAPTION = 104


class FieldGrid(QWidget):
    """A column of captions and fields about one subject; edits go through the open yard."""

    def __init__(
        self, open_yard: OpenYard, parent: QWidget | None = None, *, caption: int = _CAPTION
    ) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._caption = scaled(caption)
        self._ids: frozenset[str] = frozenset()
        self._shape: tuple[Any, ...] = ()
        self.entries: dict[str, Entry] = {}
        self._plans: tuple[FieldPlan, ...] = ()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 2, 0, 2)
        self._grid.setHorizontalSpacing(8)
        self._grid.setVerticalSpacing(4)
        self._grid.setColumnMinimumWidth(0, self._caption)
        self._grid.setColumnStretch(1, 1)
        #: The variety being tried, with the findings before it.
        self._trying: tuple[TextEntry, tuple[Finding, ...]] | None = None
        open_yard.findings_changed.connect(self._tell_trial)

    def show_fields(self, plans: Iterable[FieldPlan], ids: frozenset[str]) -> None:
        """Show these fields of these things, keeping the widgets when only values changed."""
        plans = tuple(plans)
        yard = self._open_yard.shown_yard
        shape = shape_of(plans, yard, ids)
        if shape != self._shape:
            self._shape, self._ids, self._plans = shape, ids, plans
            self._build()
        for plan in self._plans:
            entry = self.entries[plan.path]
            if not entry.busy:
                entry.show_value(subjects.value_of(yard, ids, plan))
                self._hint(plan, entry)

    def _build(self) -> None:
        while (item := self._grid.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self._trying = None
        self.entries = {plan.path: self._made(line, plan) for line, plan in enumerate(self._plans)}

    def _made(self, line: int, plan: FieldPlan) -> Entry:
        open_yard = self._open_yard
        entry = entry_for(plan, open_yard.shown_yard, self._ids, open_yard.catalogue)
        entry.tried.connect(partial(self._try, plan))
        entry.entered.connect(partial(self._enter, plan))
        entry.left.connect(open_yard.drop_trial)
        if isinstance(entry, CheckEntry):
            self._grid.addWidget(entry, line, 0, 1, 2)
            return entry
        caption = label(tr(plan.name), wrap=True)
        caption.setFixedWidth(self._caption)
        caption.setBuddy(entry)
        caption.setToolTip(tr(plan.tip))
        self._grid.addWidget(caption, line, 0, Qt.AlignmentFlag.AlignTop)
        caption.setContentsMargins(0, 4, 0, 0)
        self._grid.addWidget(entry, line, 1)
        return entry

    def _hint(self, plan: FieldPlan, entry: Entry) -> None:
        """An empty size says what the catalogue gives."""
        if (
            plan.path not in ("spread", "height", "width")
            or not plan.optional
            or not isinstance(entry, TextEntry)
        ):
            return
        entry.set_placeholder(catalogue_size(self._open_yard, self._ids, plan.path))

    def _edited(self, plan: FieldPlan, value: Any) -> Any:
        open_yard = self._open_yard
        return subjects.edited(open_yard.yard, self._ids, plan, value, open_yard.catalogue, open_yard.units)

    def _try(self, plan: FieldPlan, value: Any) -> None:
        entry = self.entries[plan.path]
        if plan.sort == "plant" and isinstance(entry, TextEntry) and not self._open_yard.on_trial:
            self._trying = (entry, tuple(self._open_yard.findings))
        try:
            self._open_yard.show_trial(self._edited(plan, value))
        except EntryError as error:
            entry.show_fault(str(error))

    def _tell_trial(self) -> None:
        """Under a variety that is tried stands what it would bring."""
        if self._trying is None:
            return
        entry, before = self._trying
        if self._open_yard.on_trial:
            entry.show_echo(trial_words(self._open_yard, before))
        else:
            self._trying = None
            entry.show_echo("")

    def _enter(self, plan: FieldPlan, value: Any) -> None:
        self._trying = None
        try:
            yard = self._edited(plan, value)
        except EntryError as error:
            self._open_yard.drop_trial()
            self.entries[plan.path].show_fault(str(error))
            return
        key = f"{plan.path}:{','.join(sorted(self._ids))}"
        self._open_yard.commit(subjects.step_text(self._open_yard.yard, self._ids, plan), yard, merge=key)


def catalogue_size(open_yard: OpenYard, ids: frozenset[str], path: str) -> str:
    """What stands in an empty size field: the size the catalogue gives at full size, where it is one."""
    stand = open_yard.stand
    found = [plant.mature for plant in stand.plants if plant.id in ids]
    found += [row.mature for row in stand.rows if row.id in ids]
    if not found:
        return ""
    sizes = {
        format_coarse(size.height if path == "height" else size.spread, open_yard.units) for size in found
    }
    return tr("{size} by the catalogue", size=sizes.pop()) if len(sizes) == 1 else tr("by the catalogue")


class Fields(QWidget):
    """The panel of fields: the selection's facts, its corners, or the yard's when nothing is selected."""

    #: The whole site card is asked for.
    site_wanted = Signal()

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.plant_card = InHandCard(open_yard, about=selected_plant)
        self.title = Elided("", "heading")
        self.note = label("", "muted", wrap=True)
        self.grid = FieldGrid(open_yard)
        self.corner_grid = FieldGrid(open_yard)
        self.corners = Fold(tr("Edges and corners"), self.corner_grid, open_=False)
        self.corners.folded.connect(self.refresh)
        self.site_button = button(tr("Site card: climate, soil, place…"), "link")
        self.site_button.clicked.connect(self.site_wanted)
        self._lay_out()
        self._pace = Paced(open_yard, self._refresh_seen, self)
        self._pace_light = Paced(open_yard, self._light_came, self)
        open_yard.shown.connect(self._pace.soon)
        open_yard.selection_changed.connect(self._refresh_seen)
        open_yard.light_changed.connect(self._pace_light.soon)

    def _lay_out(self) -> None:
        inside = QWidget()
        box = QVBoxLayout(inside)
        box.setContentsMargins(0, 0, 6, 0)
        box.setSpacing(4)
        for part in (self.plant_card, self.title, self.note, self.grid, self.site_button, self.corners):
            box.addWidget(part)
        box.addStretch()
        scroll = QScrollArea()
        scroll.setWidget(inside)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(scroll)

    def _refresh_seen(self, *_: object) -> None:
        """Nobody looks at a hidden panel: it is renewed when it shows."""
        if self.isVisible():
            self.refresh()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.plant_card.refresh()
        self.refresh()

    def refresh(self, *_: object) -> None:
        """Show the facts of what is selected now."""
        yard, ids = self._open_yard.shown_yard, self._open_yard.selection
        self.title.setText(subjects.title_of(yard, ids))
        self.title.setVisible(selected_plant(self._open_yard) is None)
        self._show_note()
        self.grid.show_fields(subjects.plans_for(yard, ids), ids)
        self.site_button.setVisible(not ids)
        plans = subjects.corner_plans(yard, ids)
        self.corners.setVisible(bool(plans))
        if self.corners.open:
            self.corner_grid.show_fields(plans, ids)

    def _show_note(self, *_: object) -> None:
        """Measures of what is selected, and what fits in it."""
        said = (self._measure_note(), fit_words(self._open_yard))
        self.note.setText("\n".join(part for part in said if part))
        self.note.setVisible(bool(self.note.text()))

    def _light_came(self) -> None:
        if self.isVisible():
            self._show_note()

    def _measure_note(self) -> str:
        """The area of an outline or the length of a line, and its corners."""
        yard, ids, units = self._open_yard.shown_yard, self._open_yard.selection, self._open_yard.units
        points = subjects.corners(yard, ids)
        if len(points) < 3:
            return ""
        if subjects.closed(yard, ids):
            area = format_area(subjects.area_of(subjects.drawn(yard, ids)), units)
            if len(points) != len(subjects.drawn(yard, ids)):
                return area
            return tr_n("{area}, {n} corner", "{area}, {n} corners", len(points), area=area)
        length = format_length(subjects.length_of(points), units)
        return tr_n("{length} long, {n} corner", "{length} long, {n} corners", len(points), length=length)

    def focus_on(self, path: str) -> None:
        """Put the cursor into the field of a fact, where it is offered now."""
        self.refresh()
        entry = self.grid.entries.get(path)
        if entry is not None:
            entry.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def focus_first(self) -> None:
        """Put the cursor into the first field: F2 on the plan or in the list."""
        for entry in self.grid.entries.values():
            entry.setFocus(Qt.FocusReason.ShortcutFocusReason)
            if isinstance(entry, TextEntry):
                entry.line.selectAll()
            return
