"""A new yard from width, depth and place: the lot is drawn, and what is known of the place is filled in."""

from __future__ import annotations

from typing import TYPE_CHECKING

from attrs import evolve
from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QGridLayout, QVBoxLayout, QWidget

from yardplan.units import FOOT, System
from yardplan.window.dialogs.place_field import PlaceField
from yardplan.window.panels.entry import (
    ChoiceEntry,
    Entry,
    TextEntry,
    day_reading,
    length_reading,
    text_reading,
)
from yardplan.window.panels.field_entries import reading_of
from yardplan.window.panels.parts import button, label
from yardplan.window.panels.site_plans import FIRST_FROST, LAST_FROST, UNITS, ZONE
from yardplan.yard.site import Origin, Site
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
    """Name, units, width, depth and place; `full` also zone and frost dates. `.yard()` makes the yard."""

    #: Whether a yard can be made of what is typed.
    ready = Signal(bool)

    def __init__(self, units: System, *, full: bool = True, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.units: System = units
        self.name = TextEntry("Name of the yard", text_reading(optional=False))
        self.unit_choice = ChoiceEntry("Measure in", UNITS.choices)
        self.width_entry = TextEntry("Width, left to right", length_reading(*SIDES, units))
        self.depth_entry = TextEntry("Depth, front to back", length_reading(*SIDES, units))
        self.place = PlaceField()
        self.zone = TextEntry(ZONE.name, reading_of(ZONE, units))
        self.last_frost = TextEntry(LAST_FROST.name, day_reading())
        self.first_frost = TextEntry(FIRST_FROST.name, day_reading())
        self._climate = (self.zone, self.last_frost, self.first_frost)
        self._lay_out(full)
        self.name.show_value("My yard")
        self.unit_choice.show_value(units)
        self._typed = False
        self._offer_sides()
        self._connect()

    def _lay_out(self, full: bool) -> None:
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setVerticalSpacing(6)
        grid.setHorizontalSpacing(8)
        grid.setColumnStretch(1, 1)
        lines: list[tuple[str, QWidget]] = [
            ("Name", self.name),
            ("Measure in", self.unit_choice),
            ("Width", self.width_entry),
            ("Depth", self.depth_entry),
            ("Place", self.place),
        ]
        if full:
            lines += [("Zone", self.zone), ("Last frost", self.last_frost), ("First frost", self.first_frost)]
        for row, (words, field) in enumerate(lines):
            caption = label(words)
            caption.setBuddy(field)
            caption.setContentsMargins(0, 4, 0, 0)
            grid.addWidget(caption, row, 0, Qt.AlignmentFlag.AlignTop)
            grid.addWidget(field, row, 1)
        for entry in self._climate:
            entry.set_placeholder("not known")

    def _connect(self) -> None:
        self.unit_choice.entered.connect(self._units_chosen)
        self.place.found.connect(self._place_found)
        for entry in (self.name, self.width_entry, self.depth_entry):
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
        """Fill in what is known of the place, and its usual units."""
        from yardplan.places.facts import to_site_fields

        fields = to_site_fields(facts) if facts else {}
        self.zone.show_value(fields.get("zone"))
        self.last_frost.show_value(fields.get("last_frost"))
        self.first_frost.show_value(fields.get("first_frost"))
        if facts is not None and not self._typed:
            units: System = "imperial" if facts.place.country in _FEET_COUNTRIES else "metric"
            if units != self.units:
                self.unit_choice.show_value(units)
                self._units_chosen(units)

    def faults(self) -> list[Entry]:
        """The fields whose text cannot be used."""
        return [
            entry for entry in (self.name, self.width_entry, self.depth_entry, *self._climate) if entry.fault
        ]

    def _tell(self) -> None:
        self.ready.emit(not self.faults())

    def yard(self) -> Yard:
        """The yard of what is typed: a rectangular lot and the site, its place looked up."""
        if self.place.wants_look_up():
            self.place.look_up()
        for entry in (self.name, self.width_entry, self.depth_entry, *self._climate):
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
        typed = {
            "zone": self.zone.value,
            "last_frost": self.last_frost.value,
            "first_frost": self.first_frost.value,
        }
        for fact, value in typed.items():
            if value != getattr(site, fact):
                kept = tuple(origin for origin in site.origins if origin.fact != fact)
                told = (Origin(fact=fact, text="typed in"),) if value is not None else ()
                site = evolve(site, **{fact: value}, origins=kept + told)
        return site


class NewYardDialog(QDialog):
    """The form as a box; `.yard()` after it was accepted."""

    def __init__(self, units: System = "metric", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle("New yard")
        self.setMinimumWidth(460)
        self._made: Yard | None = None
        self.form = NewYardForm(units)
        self.begin = button("Begin", "main")
        self.begin.setDefault(True)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
        buttons.addButton(self.begin, QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(16, 14, 16, 12)
        box.setSpacing(12)
        box.addWidget(self.form)
        box.addWidget(
            label("The lot can be redrawn corner by corner later; all else can be changed too.", "muted")
        )
        box.addStretch()
        box.addWidget(buttons)
        self.form.ready.connect(self.begin.setEnabled)

    def accept(self) -> None:
        """Close only when every field can be used."""
        self._made = self.form.yard()
        if not self.form.faults():
            super().accept()

    def yard(self) -> Yard:
        """The yard that was typed in; before it was accepted, of what is typed now."""
        return self._made if self._made is not None else self.form.yard()
