"""What the site's climate means, in degrees C and F side by side: zones, chill, summer heat, frost."""

from __future__ import annotations

from attrs import frozen
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from yardplan.checks.zones import rating_limits, rating_needed, zone_span
from yardplan.language import decimals, later, thousands, tr, tr_n
from yardplan.plants.chill import site_chill
from yardplan.plants.site_heat import SiteHeat, site_heat
from yardplan.window.panels.days import say_day
from yardplan.window.panels.parts import kept_together, label
from yardplan.yard.site import Site


@frozen(kw_only=True)
class Meaning:
    """One line: what is measured, its value here, and what that is in degrees C and in degrees F."""

    name: str
    here: str
    celsius: str
    fahrenheit: str


def _degrees(celsius: float, *, imperial: bool) -> str:
    shown = f"{celsius * 1.8 + 32:.0f}" if imperial else f"{celsius:.1f}".removesuffix(".0")
    signed = shown.replace("-0", "0") if shown in ("-0", "-0.0") else shown.replace("-", "\u2212")
    return decimals(signed)


def _range(low: float, high: float, *, imperial: bool) -> str:
    text = tr("{low} to {high}", low=_degrees(low, imperial=imperial), high=_degrees(high, imperial=imperial))
    return f"{text} {'°F' if imperial else '°C'}"


def _both(low: float, high: float) -> dict[str, str]:
    return {
        "celsius": _range(low, high, imperial=False), "fahrenheit": _range(low, high, imperial=True),
    }


def _stands(rating: str) -> dict[str, str]:
    """What a rating stands, in both units."""
    low, high = rating_limits(rating)
    if low is not None and high is not None:
        return _both(low, high)
    edge, text = (high or 0.0, later("colder than {limit}")) if low is None else (
        low, later("{limit} and warmer")
    )
    return {
        "celsius": tr(text, limit=f"{_degrees(edge, imperial=False)} °C"),
        "fahrenheit": tr(text, limit=f"{_degrees(edge, imperial=True)} °F"),
    }


def _zones(site: Site) -> list[Meaning]:
    span = zone_span(site.zone)
    if span is None:
        return []
    coldest, warmest = span
    zone = tr("about {zone}, estimated", zone=site.zone) if site.zone_estimated else str(site.zone)
    rating = rating_needed(coldest)
    return [
        Meaning(name=tr("USDA zone"), here=zone, **_both(coldest, warmest)),
        Meaning(name=tr("RHS rating"), here=tr("{rating} or hardier", rating=rating),
                **_stands(rating)),
    ]


def _thousands(value: float) -> str:
    return thousands(round(value, -1))


def _heat(heat: SiteHeat) -> list[Meaning]:
    days = heat.degree_days
    found = [
        Meaning(
            name=tr("Summer heat"), here=tr("degree days, about"),
            celsius=tr("{days} over {base} °C", days=_thousands(days), base=f"{heat.base:g}"),
            fahrenheit=tr(
                "{days} over {base} °F", days=_thousands(days * 1.8), base=f"{heat.base * 1.8 + 32:g}"
            ),
        )
    ]
    if heat.zone is not None and heat.hot_days is not None:
        hot = round(heat.hot_days)
        found.append(Meaning(
            name=tr("AHS heat zone"), here=tr("about {zone}, estimated", zone=heat.zone.name),
            celsius=tr_n("{n} day over 30 °C", "{n} days over 30 °C", hot),
            fahrenheit=tr_n("{n} day over 86 °F", "{n} days over 86 °F", hot),
        ))
    return found


def meanings(site: Site) -> list[Meaning]:
    """The lines that are known: zones, winter chill, summer heat."""
    found = _zones(site)
    chill = site_chill(site)
    if chill is not None:
        hours = thousands(chill.hours)
        known = tr("{hours} hours", hours=hours)
        found.append(Meaning(
            name=tr("Winter chill"),
            here=tr("about {hours} hours", hours=hours) if site.chill_hours is None else known,
            celsius=tr("at or under 7 °C"),
            fahrenheit=tr("at or under 45 °F"),
        ))
    heat = site_heat(site)
    return found + (_heat(heat) if heat is not None else [])


def frost_words(site: Site) -> list[str]:
    """Frost days with how often they are passed."""
    said = []
    if site.last_frost:
        said.append(tr("Half the years have a frost after {day}.", day=say_day(site.last_frost)))
    if site.last_frost_10:
        said.append(tr("One year in ten has one after {day}.", day=say_day(site.last_frost_10)))
    if site.first_frost:
        said.append(tr("In autumn half the years have had one by {day}.", day=say_day(site.first_frost)))
    if site.first_frost_10:
        said.append(tr("One year in ten has had one by {day}.", day=say_day(site.first_frost_10)))
    return said


def notes(site: Site) -> str:
    """What to keep in mind about the lines above."""
    said = frost_words(site)
    if zone_span(site.zone) is not None:
        said.append(tr("A zone is the mean of each winter's coldest night: single winters go lower."))
    if site.zone_estimated:
        said.append(tr("This zone is estimated from monthly temperatures and may be one off."))
    if site_chill(site) is not None:
        said.append(tr("Chill and heat are estimated from the monthly temperatures."))
    return " ".join(said)


class SiteMeaning(QWidget):
    """A small table of the lines, with notes under it; hidden while nothing is known."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(12)
        self._grid.setVerticalSpacing(2)
        for column, share in enumerate((3, 3, 4, 3)):
            self._grid.setColumnStretch(column, share)
        self.note = label("", "muted", wrap=True)
        self._cells: list[list[QLabel]] = []
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 4, 0, 4)
        box.addLayout(self._grid)
        box.addWidget(self.note)

    def rows(self) -> list[tuple[str, ...]]:
        """The texts shown, line by line."""
        shown = (line for line in self._cells if not line[0].isHidden())
        return [tuple(cell.text().replace("\u00a0", " ") for cell in line) for line in shown]

    def show_site(self, site: Site) -> None:
        """Show what a site's climate means."""
        lines = meanings(site)
        while len(self._cells) < len(lines):
            self._cells.append([self._cell(len(self._cells), column) for column in range(4)])
        for number, cells in enumerate(self._cells):
            line = lines[number] if number < len(lines) else None
            texts = ("", "", "", "") if line is None else (
                line.name, line.here, line.celsius, line.fahrenheit
            )
            for cell, text in zip(cells, texts, strict=True):
                cell.setText(kept_together(text))
                cell.setVisible(line is not None)
        self.note.setText(notes(site))
        self.setVisible(bool(lines) or bool(self.note.text()))

    def _cell(self, line: int, column: int) -> QLabel:
        made = label("", "muted" if column == 0 else "plain", wrap=True)
        self._grid.addWidget(made, line, column, Qt.AlignmentFlag.AlignTop)
        return made
