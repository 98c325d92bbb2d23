"""Varieties of your own: facts typed in, checked, and kept in the yard's file."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from attrs import evolve
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialogButtonBox, QFrame, QGridLayout, QScrollArea, QVBoxLayout, QWidget

from yardplan.language import decimals, later, tr
from yardplan.plants.own import read_own
from yardplan.units import System, UnitError, format_length, parse_length
from yardplan.window.dialogs.box import BesideBox, press_by_enter, roomy
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.panels.entry import (
    ChoiceEntry,
    Entry,
    EntryError,
    Reading,
    TextEntry,
    number_reading,
    text_reading,
)
from yardplan.window.panels.parts import button, label
from yardplan.window.panels.site_plans import read_zone
from yardplan.yard.planting import PlantKey

_SEASONS = ("very early", "early", "early-mid", "mid", "mid-late", "late")
_YES_NO = (("", later("not known")), ("yes", later("yes")), ("no", later("no")))
_SELF = (
    ("", later("not known")),
    ("yes", later("sets fruit by itself")),
    ("partly", later("better with a partner")),
    ("no", later("needs a partner")),
)
_BETWEEN = (" to ", "–", "—", "..")


def read_span(typed: str, read: Any) -> list[float] | None:
    """`800 to 1000`, `3 m - 4 m` or one figure, as low and high. Raises EntryError."""
    text = typed.strip()
    if not text:
        return None
    for sign in (*_BETWEEN, tr(" to ")):
        text = text.replace(sign, "\0")
    if "\0" not in text and text.count("-") == 1 and not text.startswith("-"):
        text = text.replace("-", "\0")
    parts = [part for part in text.split("\0") if part.strip()]
    if len(parts) not in (1, 2):
        raise EntryError(tr("'{typed}' is not a span: write for example 3 to 4", typed=typed))
    values = [read(part) for part in parts]
    if values[0] > values[-1]:
        raise EntryError(tr("'{typed}': the smaller figure comes first", typed=typed))
    return [values[0], values[-1]]


def _plain(typed: str) -> float:
    try:
        value = float(typed.strip().replace(",", "."))
    except ValueError:
        raise EntryError(tr("'{typed}' is not a number", typed=typed.strip())) from None
    if not 0 <= value <= 5000:
        raise EntryError(tr("{value} is outside 0 to 5000", value=decimals(f"{value:g}")))
    return value


def span_reading(units: System | None) -> Reading:
    """Spans of lengths in the yard's units, or of plain figures where `units` is None."""

    def length(typed: str) -> float:
        try:
            return parse_length(typed, units or "metric")
        except UnitError as error:
            raise EntryError(str(error)) from None

    def say(value: float) -> str:
        return format_length(value, units) if units else decimals(f"{value:g}")

    def show(span: list[float] | None) -> str:
        if span is None:
            return ""
        return (
            say(span[0]) if span[0] == span[1] else tr("{low} to {high}", low=say(span[0]), high=say(span[1]))
        )

    return Reading(lambda typed: read_span(typed, length if units else _plain), show)


def _zone_reading() -> Reading:
    return Reading(lambda typed: read_zone(typed) if typed.strip() else None, lambda value: value or "")


def _said(choices: tuple[tuple[str, str], ...]) -> tuple[tuple[str, str], ...]:
    """Choices in the language shown."""
    return tuple((value, tr(words)) for value, words in choices)


class OwnVariety(BesideBox):
    """Add a variety or change one of your own. What you do not know stays empty."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.setWindowTitle(tr("Own varieties"))
        self.resize(roomy(self, 480, 600))
        self.which = ChoiceEntry(tr("Variety to edit"), ())
        self.entries = self._made_entries(open_yard.units)
        self.fault = label("", "fault", wrap=True)
        self.keep = button(tr("Keep"), "main", name=tr("Keep this variety"))
        self.remove = button(tr("Remove"), name=tr("Remove this variety from the yard's file"))
        self._lay_out()
        self.which.entered.connect(self.show_record)
        self.keep.clicked.connect(self.keep_record)
        self.remove.clicked.connect(self.remove_record)
        open_yard.shown.connect(self._yard_changed)
        self._fill_which()
        self.show_record(None)

    def _made_entries(self, units: System) -> dict[str, Entry]:
        crops = self._open_yard.catalogue.crops
        seasons = (("", tr("not known")), *((season, tr(season)) for season in _SEASONS))
        entries: dict[str, Entry] = {
            "crop": ChoiceEntry(
                tr("Kind"), sorted(((crop, tr(crop)) for crop in crops), key=lambda pair: pair[1].casefold())
            ),
            "name": TextEntry(tr("Name"), text_reading(optional=False, longest=60)),
            "self_fruitful": ChoiceEntry(tr("Partner"), _said(_SELF)),
            "bloom_season": ChoiceEntry(tr("Bloom"), seasons),
            "harvest_season": TextEntry(tr("Ripens"), text_reading(longest=40)),
            "zone_min": TextEntry(tr("Coldest zone"), _zone_reading()),
            "zone_max": TextEntry(tr("Warmest zone"), _zone_reading()),
            "chill_hours": TextEntry(tr("Winter chill, h"), span_reading(None)),
            "height": TextEntry(tr("Height"), span_reading(units)),
            "spread": TextEntry(tr("Spread"), span_reading(units)),
            "ploidy": TextEntry(tr("Sets of chromosomes"), number_reading(1, 8, digits=0, optional=True)),
            "s_alleles": TextEntry(tr("Pollen alleles"), text_reading(longest=40)),
            "container": ChoiceEntry(tr("In a pot"), _said(_YES_NO)),
            "thornless": ChoiceEntry(tr("Thornless"), _said(_YES_NO)),
            "note": TextEntry(tr("Note"), text_reading()),
            "source": TextEntry(tr("You know it from"), text_reading()),
        }
        for entry in entries.values():
            if isinstance(entry, TextEntry):
                entry.set_placeholder(tr("not known"))
        return entries

    def _lay_out(self) -> None:
        inside = QWidget()
        grid = QGridLayout(inside)
        grid.setContentsMargins(2, 2, 10, 2)
        grid.setColumnStretch(1, 1)
        grid.setVerticalSpacing(5)
        for row, entry in enumerate((self.which, *self.entries.values())):
            caption = label(entry.name)
            caption.setBuddy(entry)
            caption.setContentsMargins(0, 4, 0, 0)
            grid.addWidget(caption, row, 0, Qt.AlignmentFlag.AlignTop)
            grid.addWidget(entry, row, 1)
        grid.setRowStretch(len(self.entries) + 1, 1)
        scroll = QScrollArea()
        scroll.setWidget(inside)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.addButton(self.keep, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.addButton(self.remove, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(14, 12, 14, 12)
        box.addWidget(label(tr("They travel inside this yard's file."), "muted"))
        for part in (scroll, self.fault, buttons):
            box.addWidget(part)
        press_by_enter(self.keep)

    def _fill_which(self) -> None:
        own = self._open_yard.shown_yard.own_cultivars
        names = [
            (number, f"{record.get('name')}, {tr(str(record.get('crop')))}")
            for number, record in enumerate(own)
        ]
        self.which.set_choices([(None, tr("a new one")), *names])

    def _yard_changed(self, change: Any) -> None:
        if "own_cultivars" in change.whole:
            self._fill_which()
            self.which.show_value(None)
            self.remove.setEnabled(False)

    def show_record(self, number: int | None) -> None:
        """Show one of the yard's own varieties, or an empty form."""
        own = self._open_yard.shown_yard.own_cultivars
        record: Mapping[str, Any] = {} if number is None else own[number]
        self.which.show_value(number)
        self.remove.setEnabled(number is not None)
        self.fault.setText("")
        for name, entry in self.entries.items():
            usual = "apple" if name == "crop" else "" if isinstance(entry, ChoiceEntry) else None
            entry.show_value(record.get(name, usual))

    def record(self) -> dict[str, Any]:
        """What is typed in, empty facts left out."""
        values: dict[str, Any] = {}
        for name, entry in self.entries.items():
            if isinstance(entry, TextEntry):
                entry.finish()
                values[name] = entry.value
            elif isinstance(entry, ChoiceEntry):
                values[name] = entry.value
        return {name: value for name, value in values.items() if value not in (None, "")}

    def keep_record(self) -> None:
        """Check the facts and keep them as one undo step; the variety is then in hand."""
        record = self.record()
        faults = [entry.name for entry in self.entries.values() if entry.fault]
        if faults:
            self.fault.setText(tr("To be put right first: {fields}.", fields=', '.join(faults)))
            return
        _, wrong = read_own([record], self._open_yard.catalogue.crops)
        if wrong:
            self.fault.setText("; ".join(wrong))
            return
        self.fault.setText("")
        yard = self._open_yard.yard
        names = (record["crop"], record["name"])
        kept = tuple(held for held in yard.own_cultivars if (held.get("crop"), held.get("name")) != names)
        self._open_yard.commit(
            tr("Keep variety {name}", name=record['name']), evolve(yard, own_cultivars=(*kept, record))
        )
        self._open_yard.take_in_hand(InHand(plant=PlantKey(*names)))

    def remove_record(self) -> None:
        """Take the shown variety out of the file; plants of it stay and are said to be not known."""
        number = self.which.value
        if number is not None:
            yard = self._open_yard.yard
            own = yard.own_cultivars
            kept = own[:number] + own[number + 1 :]
            name = own[number].get("name")
            self._open_yard.commit(tr("Remove variety {name}", name=name), evolve(yard, own_cultivars=kept))
            self.show_record(None)
