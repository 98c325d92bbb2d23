"""A new yard from width, depth and place: the lot is drawn, and what is known of the place is filled in."""

from __future__ import annotations

from typing import TYPE_CHECKING

from attrs import evolve
from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QWidget

from yardplan.language import tr
from yardplan.units import FOOT, System
from yardplan.window.dialogs.place_field import PlaceField
from yardplan.window.panels.entry import (
    ChoiceEntry,
    Entry,
    TextEntry,
    length_reading,
    text_reading,
)
from yardplan.window.panels.parts import label
from yardplan.window.panels.site_plans import UNITS
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.places.facts import PlaceFacts

#: Smallest and largest side of a new lot, metres.
SIDES = (1.0, 1000.0)
#: Width and depth offered at first, metres: a small back yard in round figures.
_OFFERED: dict[System, tuple[float, float]] = {"metric": (20.0, 15.0), "imperial": (60 * FOOT, 50 * FOOT)}
#: Countries that measure gardens in feet.
_FEET_COUNTRIES = frozenset({"US", "LR", "MM"})


class NewYardForm(QWidget):
    """Name, units, width, depth and place; `.yard()` makes the yard."""

    #: Whether a yard can be made of what is typed.
    ready = Signal(bool)

    def __init__(self, units: System, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.units: System = units
        self.name = TextEntry(tr("Name of the yard"), text_reading(optional=False))
        self.unit_choice = ChoiceEntry(
            tr("Measure in"), [(value, tr(words)) for value, words in UNITS.choices]
        )
        self.width_entry = TextEntry(tr("Width, left to right"), length_reading(*SIDES, units))
        self.depth_entry = TextEntry(tr("Depth, front to back"), length_reading(*SIDES, units))
        self.place = PlaceField()
        self._typed_in = (self.name, self.width_entry, self.depth_entry)
        self._lay_out()
        self.name.show_value(tr("My yard"))
        self.unit_choice.show_value(units)
        self._typed = False
        self._offer_sides()
        self._connect()

    def _lay_out(self) -> None:
        grid = self._grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setVerticalSpacing(6)
        grid.setHorizontalSpacing(8)
        grid.setColumnStretch(1, 1)
        lines: list[tuple[str, QWidget]] = [
            (tr("Name"), self.name),
            (tr("Measure in"), self.unit_choice),
            (tr("Width"), self.width_entry),
            (tr("Depth"), self.depth_entry),
            (tr("Place"), self.place),
        ]
        self._lines = []
        for words, field in lines:
            caption = label(words)
            caption.setBuddy(field)
            caption.setContentsMargins(0, 4, 0, 0)
            self._lines.append((caption, field))
        self._narrow: bool | None = None
        self.set_narrow(False)

    def set_narrow(self, narrow: bool) -> None:
        """Captions above their fields, or beside them."""
        if narrow == self._narrow:
            return
        self._narrow = narrow
        for row, (caption, field) in enumerate(self._lines):
            for part in (caption, field):
                self._grid.removeWidget(part)
            if narrow:
                self._grid.addWidget(caption, 2 * row, 0, 1, 2)
                self._grid.addWidget(field, 2 * row + 1, 0, 1, 2)
            else:
                self._grid.addWidget(caption, row, 0, Qt.AlignmentFlag.AlignTop)
                self._grid.addWidget(field, row, 1)

    def _connect(self) -> None:
        self.unit_choice.entered.connect(self._units_chosen)
        self.place.found.connect(self._place_found)
        for entry in self._typed_in:
            entry.entered.connect(lambda _value: self._tell())
            entry.left.connect(self._tell)
            entry.tried.connect(lambda _value: self._tell())
        for side in (self.width_entry, self.depth_entry):
            side.tried.connect(self._side_typed)

    def _offer_sides(self) -> None:
        for entry, side in zip((self.width_entry, self.depth_entry), _OFFERED[self.units], strict=True):
            entry.show_value(side)

    def _units_chosen(self, units: System) -> None:
        self.units = units
        for entry in (self.width_entry, self.depth_entry):
            entry.set_reading(length_reading(*SIDES, units))
        if not self._typed:
            self._offer_sides()

    def _side_typed(self, _value: object) -> None:
        self._typed = True

    def _place_found(self, facts: PlaceFacts | None) -> None:
        """Measure as is usual at the place, unless a side was typed already."""
        if facts is not None and not self._typed:
            units: System = "imperial" if facts.place.country in _FEET_COUNTRIES else "metric"
            if units != self.units:
                self.unit_choice.show_value(units)
                self._units_chosen(units)

    @property
    def touched(self) -> bool:
        """True when a place, another name or a side was typed."""
        named = self.name.line.text().strip() != tr("My yard")
        return bool(named or self._typed or self.place.line.text().strip())

    def faults(self) -> list[Entry]:
        """The fields whose text cannot be used."""
        return [entry for entry in self._typed_in if entry.fault]

    def _tell(self) -> None:
        self.ready.emit(not self.faults())

    def yard(self) -> Yard:
        """The yard of what is typed: a rectangular lot and the site, its place looked up."""
        if self.place.wants_look_up():
            self.place.look_up()
        for entry in self._typed_in:
            entry.finish()
        wide, deep = float(self.width_entry.value), float(self.depth_entry.value)
        lot = ((0.0, 0.0), (wide, 0.0), (wide, deep), (0.0, deep))
        return Yard(site=self._site(), lot=lot)

    def _site(self) -> Site:
        from yardplan.places.facts import to_site_fields

        site = Site(name=str(self.name.value), units=self.units)
        if self.place.facts is not None:
            site = evolve(site, **to_site_fields(self.place.facts))
        elif self.place.line.text().strip():
            site = evolve(site, place=self.place.line.text().strip())
        return site
