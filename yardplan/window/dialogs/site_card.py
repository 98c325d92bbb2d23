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

from yardplan.language import later, tr
from yardplan.places.facts import PlaceFacts, to_site_fields
from yardplan.window.dialogs.box import BesideBox, press_by_enter, roomy
from yardplan.window.dialogs.month_fields import MonthFields
from yardplan.window.dialogs.place_field import PlaceField, home_country
from yardplan.window.dialogs.seen_bloom import SeenBloom
from yardplan.window.dialogs.site_meaning import SiteMeaning
from yardplan.window.dialogs.site_missing import missing_words
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.fields import FieldGrid
from yardplan.window.panels.parts import button, label
from yardplan.window.panels.site_plans import GROUPS
from yardplan.yard import edits
from yardplan.yard.origin_words import origin_said
from yardplan.yard.site import TYPED, Site

#: What facts are called where they came from.
_FACT_WORDS = {
    "place": later("Place"),
    "region": later("Country and state"),
    "elevation": later("Height above the sea"),
    "time_zone": later("Time zone"),
    "zone": later("Hardiness zone"),
    "monthly_means": later("Monthly temperatures"),
    "chill_hours": later("Winter chill"),
    "frost": later("Frost days"),
    "last_frost": later("Last frost"),
    "last_frost_10": later("Last frost, 1 year of 10"),
    "first_frost": later("First frost"),
    "first_frost_10": later("First frost, 1 year of 10"),
    "soil.ph": later("Soil pH"),
    "soil.texture": later("Texture"),
    "soil.lime": later("Free lime"),
    "soil.drainage": later("Drainage"),
    "irrigated": later("Watered"),
    "slope": later("Slope"),
    "slope_aspect": later("Falls towards"),
    "latitude": later("Latitude"),
    "longitude": later("Longitude"),
    "north": later("North"),
    "horizon": later("Skyline"),
}
#: Typed facts that need no word on where they came from.
_PLAIN = ("name", "units")


def origin_words(site: Site) -> list[str]:
    """Where each looked-up fact came from, a line each; what was typed in comes last in one line."""
    told = [origin for origin in site.origins if origin.fact not in _PLAIN]
    looked_up = [origin for origin in told if origin.text != TYPED]
    said = [f"{_fact_words(origin.fact)}: {origin_said(origin.text)}" for origin in looked_up]
    typed = [_fact_words(origin.fact) for origin in told if origin.text == TYPED]
    return said + ([tr("Typed in: {facts}", facts=", ".join(typed))] if typed else [])


def _fact_words(fact: str) -> str:
    return tr(_FACT_WORDS[fact]) if fact in _FACT_WORDS else fact.replace("_", " ").replace(".", " ")


#: Facts typed below the fields of a group, by the first of its fields.
_BELOW = {"zone": ("monthly_means",)}
#: Room for the longest name of a fact on one line, pixels.
_CAPTION = 170


class SiteCard(BesideBox):
    """Every fact of the site. Not modal: each field shows on the plan at once and is one undo step."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.setWindowTitle(tr("Site card"))
        self.resize(roomy(self, 620, 680))
        self.place = PlaceField()
        self.take_button = button(
            tr("Use these facts"), tip=tr("Fill zone, frost days and monthly means in from this place")
        )
        self.take_button.setEnabled(False)
        self.grids = [FieldGrid(open_yard, caption=_CAPTION) for _ in GROUPS]
        self.meaning = SiteMeaning()
        self.months = MonthFields(open_yard)
        self.seen = SeenBloom(open_yard)
        #: What each group lacks, under its fields.
        self.missing = [label("", "muted", wrap=True) for _ in GROUPS]
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
        box.addWidget(label(tr("Look the place up"), "heading"))
        line = QHBoxLayout()
        line.addWidget(self.place, 1)
        line.addWidget(self.take_button, 0, Qt.AlignmentFlag.AlignTop)
        box.addLayout(line)
        below: dict[str, list[QWidget]] = {
            "Winter and frost": [
                self.meaning,
                label(tr("Monthly mean temperatures"), "heading"),
                self.months,
                label(tr("Bloom seen here"), "heading"),
                self.seen,
            ],
        }
        for (title, _plans), grid, missing in zip(GROUPS, self.grids, self.missing, strict=True):
            box.addSpacing(6)
            for part in (label(tr(title), "heading"), grid, missing, *below.get(title, [])):
                box.addWidget(part)
        box.addSpacing(6)
        box.addWidget(label(tr("Where the facts come from"), "heading"))
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
        press_by_enter(buttons.button(QDialogButtonBox.StandardButton.Close))

    def refresh(self, *_: object) -> None:
        """Show the site as it is now."""
        site = self._open_yard.shown_yard.site
        self.place.home = home_country(site.region)
        for (_title, plans), grid, missing in zip(GROUPS, self.grids, self.missing, strict=True):
            grid.show_fields(plans, frozenset())
            words = missing_words(site, {*(plan.path for plan in plans), *_BELOW.get(plans[0].path, ())})
            missing.setText("\n".join(f"• {line}" for line in words))
            missing.setVisible(bool(words))
        self.meaning.show_site(site)
        self.months.refresh()
        self.seen.refresh()
        self.origins.setText("\n".join(origin_words(site)) or tr("Nothing was looked up yet."))

    def take_facts(self) -> None:
        """Fill in what the place's look-up found, as one undo step."""
        facts: PlaceFacts | None = self.place.facts
        if facts is not None:
            yard = edits.set_site(self._open_yard.yard, **to_site_fields(facts))
            place = facts.place.label
            text = tr("Look up {place}", place=place) if place else tr("Look up the place")
            self._open_yard.commit(text, yard)
