"""Makes the right field for each plan: lengths, numbers, choices, days, plants."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable
from typing import Any

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QCompleter

from yardplan.checks.rules import Rules
from yardplan.language import tr
from yardplan.plants.catalogue import Catalogue
from yardplan.units import US_GALLON, System
from yardplan.window.panels import history_entry
from yardplan.window.panels.entry import (
    CheckEntry,
    ChoiceEntry,
    Entry,
    EntryError,
    ParagraphEntry,
    Reading,
    TextEntry,
    angle_reading,
    day_reading,
    elevation_reading,
    length_reading,
    number_reading,
    text_reading,
)
from yardplan.window.panels.field_plans import Choices, FieldPlan
from yardplan.window.panels.site_plans import read_skyline, read_time_zone, read_zone, say_skyline
from yardplan.window.panels.way_plan import way_choices, way_shape
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Thing, Yard


def plant_words(key: PlantKey) -> str:
    """A variety as read and typed: `Liberty, apple`."""
    return f"{key.cultivar}, {tr(key.crop)}"


def plant_reading(catalogue: Catalogue, *, optional: bool = False) -> Reading:
    """A variety typed by name; the kind behind it is needed only where two kinds share the name."""

    def read(typed: str) -> PlantKey | None:
        text = typed.strip()
        if not text and optional:
            return None
        name, _, crop = (part.strip().lower() for part in text.rpartition(","))
        wanted = name if name else crop
        kind = crop if name else ""
        named = [k for k in catalogue.cultivars if k.cultivar.lower() == wanted]
        found = [key for key in named if not kind or kind in (key.crop.lower(), tr(key.crop).lower())]
        if len(found) == 1:
            return found[0]
        if found:
            raise EntryError(tr(
                "several kinds have a {name}: write for example '{example}'",
                name=text, example=plant_words(found[0]),
            ))
        raise EntryError(tr("the catalogue has no '{name}'", name=text))

    shared = Counter(key.cultivar for key in catalogue.cultivars)

    def show(key: PlantKey | None) -> str:
        if key is None:
            return ""
        return key.cultivar if shared[key.cultivar] == 1 else plant_words(key)

    return Reading(read, show)


class PlantEntry(TextEntry):
    """A variety by name, with the catalogue's names offered while typing; an offered one is tried at once."""

    def __init__(self, name: str, catalogue: Catalogue, *, optional: bool = False) -> None:
        super().__init__(name, plant_reading(catalogue, optional=optional))
        completer = QCompleter(sorted(plant_words(key) for key in catalogue.cultivars), self)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setFilterMode(Qt.MatchFlag.MatchContains)
        completer.setMaxVisibleItems(12)
        completer.activated.connect(self._offered)
        completer.highlighted.connect(self._looked_at)
        self.line.setCompleter(completer)

    def _edited(self, text: str) -> None:
        """Half a name is no fault yet: it is judged when the field is left."""
        try:
            self.tried.emit(self._reading.read(text))
        except EntryError:
            self.show_fault("")

    def _looked_at(self, text: str) -> None:
        """A name looked at in the list is tried on the plan; Esc or another field takes it back."""
        # The line takes the name up by itself, before or after this: it counts as typed once both are done.
        QTimer.singleShot(0, self, lambda: self._try(text))

    def _try(self, text: str) -> None:
        self.line.setModified(True)
        self._edited(text)

    def _offered(self, text: str) -> None:
        self.line.setText(text)
        self.line.setModified(True)
        self._finished()


def tree_reading(kinds: Iterable[str]) -> Reading:
    """The kind of a tree, typed in the language shown or in that of the file; others stay as typed."""
    by_name = {tr(kind).casefold(): kind for kind in kinds}
    plain = text_reading(optional=False)

    def read(typed: str) -> str:
        text = str(plain.read(typed))
        return by_name.get(text.casefold(), text)

    return Reading(read, lambda value: "" if value is None else tr(str(value)))


class TreeEntry(TextEntry):
    """The kind of a standing tree; the kinds whose size and shade are known are offered while typing."""

    def __init__(self, name: str, catalogue: Catalogue) -> None:
        kinds = {*catalogue.tree_kinds, *catalogue.crops}
        super().__init__(name, tree_reading(kinds))
        completer = QCompleter(sorted(tr(kind) for kind in kinds), self)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setFilterMode(Qt.MatchFlag.MatchContains)
        completer.activated.connect(self._offered)
        self.line.setCompleter(completer)

    def _edited(self, text: str) -> None:
        """Half a name is not tried on the plan."""
        self.show_fault("" if text.strip() else tr("a kind is needed here"))

    def _offered(self, text: str) -> None:
        self.line.setText(text)
        self.line.setModified(True)
        self._finished()


def _crop_choices(things: Iterable[Thing], catalogue: Catalogue, sort: str) -> Choices:
    """Rootstocks or forms of the one kind that all the things are, after the kind's usual one."""
    keys = [getattr(thing, "plant", None) for thing in things]
    crops = {key.crop for key in keys if key is not None}
    crop = catalogue.crop(crops.pop()) if len(crops) == 1 else None
    if crop is None:
        return ((None, tr("usual")),)
    if sort == "rootstock":
        return ((None, tr("usual")), *((stock.name, stock.name) for stock in crop.rootstocks))
    return (
        (None, tr("usual: {form}", form=tr(crop.usual_form))),
        *((form.form, tr(form.form)) for form in crop.forms),
    )


def _choices(plan: FieldPlan, yard: Yard, ids: frozenset[str], catalogue: Catalogue) -> Choices:
    if plan.sort == "container":
        return ((None, tr("the ground")), *((pot.id, f"{pot.name} ({pot.id})") for pot in yard.containers))
    if plan.sort == "way":
        return way_choices(Rules(yard.rules), yard.site.units)
    if plan.sort in ("rootstock", "form"):
        return _crop_choices((t for t in yard.things() if t.id in ids), catalogue, plan.sort)
    return tuple((value, tr(words)) for value, words in plan.choices)


def reading_of(plan: FieldPlan, units: System) -> Reading:
    """How a typed field reads and shows in the yard's units."""
    makers: dict[str, Callable[[], Reading]] = {
        "text": lambda: text_reading(empty=None if plan.optional else ""),
        "length": lambda: length_reading(plan.low, plan.high, units, optional=plan.optional),
        "elevation": lambda: elevation_reading(plan.low, plan.high, units),
        "number": lambda: _number_reading(plan),
        "whole": lambda: number_reading(plan.low, plan.high, digits=0, optional=plan.optional),
        "volume": lambda: _volume_reading(plan, units),
        "day": lambda: day_reading(optional=plan.optional),
        "time zone": lambda: Reading(read_time_zone, lambda value: value or ""),
        "skyline": lambda: Reading(read_skyline, say_skyline),
        "earlier": lambda: history_entry.READING,
        "zone": lambda: Reading(_zone, lambda value: value or ""),
    }
    return makers[plan.sort]()


def _number_reading(plan: FieldPlan) -> Reading:
    if plan.unit == "°":
        return angle_reading(plan.low, plan.high, optional=plan.optional)
    return number_reading(
        plan.low, plan.high, plan.unit, factor=plan.factor, digits=plan.digits, optional=plan.optional
    )


def _zone(typed: str) -> str | None:
    return read_zone(typed) if typed.strip() else None


def _volume_reading(plan: FieldPlan, units: System) -> Reading:
    if units == "imperial":
        return number_reading(plan.low, plan.high, "gal", factor=1 / US_GALLON)
    return number_reading(plan.low, plan.high, "L")


def entry_for(plan: FieldPlan, yard: Yard, ids: frozenset[str], catalogue: Catalogue) -> Entry:
    """The field of a plan, ready to show a value."""
    entry: Entry
    name = tr(plan.name)
    if plan.sort == "plant":
        entry = PlantEntry(name, catalogue, optional=plan.optional)
    elif plan.sort == "tree":
        entry = TreeEntry(name, catalogue)
    elif plan.sort == "check":
        entry = CheckEntry(name, name)
    elif plan.sort == "paragraph":
        entry = ParagraphEntry(name)
    elif plan.sort in ("choice", "container", "rootstock", "form", "way"):
        entry = ChoiceEntry(name, _choices(plan, yard, ids, catalogue))
    else:
        entry = TextEntry(name, reading_of(plan, yard.site.units))
    entry.setToolTip(tr(plan.tip))
    if isinstance(entry, TextEntry):
        entry.set_placeholder(tr(plan.empty))
    return entry


def shape_of(plans: Iterable[FieldPlan], yard: Yard, ids: frozenset[str]) -> tuple[Any, ...]:
    """What the fields' layout hangs on: while it stays the same only the values are renewed."""
    things = [thing for thing in yard.things() if thing.id in ids]
    crops = tuple(getattr(getattr(thing, "plant", None), "crop", "") for thing in things)
    pots = tuple((pot.id, pot.name) for pot in yard.containers)
    return (tuple(plan.path for plan in plans), ids, crops, pots, yard.site.units, way_shape(yard))
