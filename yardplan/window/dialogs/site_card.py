"""The whole site on one card: place, winter, frost, monthly means, soil; where each fact came from."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialogButtonBox,
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from yardplan.checks.zones import rating_needed, site_zone
from yardplan.places.facts import PlaceFacts, to_site_fields
from yardplan.plants.chill import site_chill
from yardplan.units import System, format_temperature
from yardplan.window.dialogs.box import BesideBox
from yardplan.window.dialogs.month_fields import MonthFields
from yardplan.window.dialogs.place_field import PlaceField
from yardplan.window.dialogs.seen_bloom import SeenBloom
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.fields import FieldGrid
from yardplan.window.panels.parts import button, label
from yardplan.window.panels.site_plans import GROUPS
from yardplan.yard import edits
from yardplan.yard.site import Site

#: Facts that decide something, what they decide, and whether the site has them.
_DECIDES = (
    ("zone", "The hardiness zone", "which plants live through the winter"),
    ("last_frost", "The last frost day", "whether bloom is in danger"),
    ("first_frost", "The first frost day", "whether late fruit ripens"),
    (
        "monthly_means",
        "Monthly means",
        "when things bloom, and whether the winter is cold enough for fruit to set",
    ),
    ("soil.ph", "The soil's pH", "which fruits grow well, and what to add for the rest"),
    ("soil.texture", "The soil's texture", "how much sulfur or lime it takes"),
    ("soil.drainage", "Drainage", "where roots would drown"),
)
_FACT_WORDS = {
    "place": "Place",
    "elevation": "Height above the sea",
    "time_zone": "Time zone",
    "zone": "Zone",
    "monthly_means": "Monthly means",
    "frost": "Frost days",
    "last_frost": "Last frost",
    "first_frost": "First frost",
    "soil.ph": "Soil pH",
    "latitude": "Latitude",
    "longitude": "Longitude",
}


def missing_words(site: Site) -> list[str]:
    """What is not known, and what it would decide."""
    words = []
    for path, name, decides in _DECIDES:
        value = site.soil if path.startswith("soil.") else site
        if getattr(value, path.rpartition(".")[2]) is None:
            words.append(f"{name} would tell {decides}.")
    return words


def zone_words(site: Site, units: System) -> str:
    """What the zone means in degrees and by the British rating; chill where the months are known."""
    parts = []
    zone = site_zone(site.zone)
    if zone is not None:
        low, high = (format_temperature(value, units) for value in (zone.coldest, zone.warmest))
        parts.append(
            f"Zone {site.zone}: the coldest of a usual winter is {low} to {high}; single winters go lower. "
            f"Plants rated {rating_needed(zone.coldest)} or hardier by the RHS stand it."
        )
    chill = site_chill(site)
    if chill is not None:
        parts.append(f"Winter chill about {chill.hours:.0f} hours at or under 7 °C (45 °F).")
    return " ".join(parts)


def origin_words(site: Site) -> list[str]:
    """Where each looked-up or typed fact came from."""
    return [
        f"{_FACT_WORDS.get(origin.fact, origin.fact.replace('_', ' ').replace('.', ' '))}: {origin.text}"
        for origin in site.origins
    ]


class SiteCard(BesideBox):
    """Every fact of the site. Not modal: each field shows on the plan at once and is one undo step."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.setWindowTitle("Site card")
        self.resize(620, 680)
        self.place = PlaceField()
        self.take_button = button(
            "Use these facts", tip="Fill zone, frost days and monthly means in from this place"
        )
        self.take_button.setEnabled(False)
        self.grids = [FieldGrid(open_yard) for _ in GROUPS]
        self.meaning = label("", "muted", wrap=True)
        self.months = MonthFields(open_yard)
        self.seen = SeenBloom(open_yard)
        self.missing = label("", "muted", wrap=True)
        self.origins = label("", "small", wrap=True)
        self.origins.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._lay_out()
        self.place.set_words(open_yard.yard.site.place)
        self.place.found.connect(lambda facts: self.take_button.setEnabled(facts is not None))
        self.take_button.clicked.connect(self.take_facts)
        open_yard.shown.connect(self.refresh)
        open_yard.loaded.connect(lambda: self.place.set_words(open_yard.yard.site.place))
        self.refresh()

    def _lay_out(self) -> None:
        inside = QWidget()
        box = QVBoxLayout(inside)
        box.setContentsMargins(4, 4, 10, 4)
        box.setSpacing(6)
        box.addWidget(label("Look the place up", "heading"))
        line = QHBoxLayout()
        line.addWidget(self.place, 1)
        line.addWidget(self.take_button, 0, Qt.AlignmentFlag.AlignTop)
        box.addLayout(line)
        below: dict[str, list[QWidget]] = {
            "Winter and frost": [
                self.meaning,
                label("Monthly mean temperatures", "heading"),
                self.months,
                label("Bloom seen here", "heading"),
                self.seen,
            ],
        }
        for (title, _plans), grid in zip(GROUPS, self.grids, strict=True):
            box.addSpacing(6)
            for part in (label(title, "heading"), grid, *below.get(title, [])):
                box.addWidget(part)
        box.addSpacing(6)
        box.addWidget(self.missing)
        box.addWidget(label("Where the facts come from", "heading"))
        box.addWidget(self.origins)
        box.addStretch(1)
        scroll = QScrollArea()
        scroll.setWidget(inside)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        outer = QVBoxLayout(self)
        outer.addWidget(scroll)
        outer.addWidget(buttons)

    def refresh(self, *_: object) -> None:
        """Show the site as it is now."""
        site = self._open_yard.shown_yard.site
        for (_title, plans), grid in zip(GROUPS, self.grids, strict=True):
            grid.show_fields(plans, frozenset())
        self.meaning.setText(zone_words(site, site.units))
        self.meaning.setVisible(bool(self.meaning.text()))
        self.months.refresh()
        self.seen.refresh()
        missing = missing_words(site)
        self.missing.setText("\n".join(["Worth finding out:", *missing]) if missing else "")
        self.missing.setVisible(bool(missing))
        self.origins.setText("\n".join(origin_words(site)) or "Nothing was looked up yet.")

    def take_facts(self) -> None:
        """Fill in what the place's look-up found, as one undo step."""
        facts: PlaceFacts | None = self.place.facts
        if facts is not None:
            yard = edits.set_site(self._open_yard.yard, **to_site_fields(facts))
            self._open_yard.commit(f"Look up {facts.place.label or 'the place'}", yard)
