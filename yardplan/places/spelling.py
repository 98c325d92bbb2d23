"""Names of places as they are typed and told: letters without accents, states and countries in full."""

from __future__ import annotations

import csv
import unicodedata
from functools import cache

from yardplan.language import tr
from yardplan.places.tables import Place
from yardplan.shipped import resource

#: Letters that do not come apart into a letter and an accent.
_LETTERS = {
    "ı": "i", "ł": "l", "ø": "o", "ß": "ss", "đ": "d", "ð": "d", "æ": "ae", "œ": "oe", "ə": "e", "ħ": "h",
    "þ": "th", "’": "", "‘": "", "ʻ": "", "ʼ": "", "'": "", "–": " ", "-": " ",
}


def fold(text: str) -> str:
    """Small letters without accents: Zürich and zurich fold alike."""
    text = text.lower()
    for letter, plain in _LETTERS.items():
        text = text.replace(letter, plain)
    return unicodedata.normalize("NFKD", text).encode("ascii", "ignore").decode("ascii")


@cache
def _named(table: str, key: str) -> dict[str, str]:
    """The names of a small table by their letters."""
    with resource("places", table).open(encoding="utf-8", newline="") as file:
        return {row[key]: row["name"] for row in csv.DictReader(file)}


def spelled(place: Place) -> str:
    """Name, state and country in full: `Ithaca, New York, United States`; empty for a bare position."""
    state = place.region
    if place.country == "US":
        state = _named("us_states.csv", "letters").get(state, state)
    if fold(state) == fold(place.name):
        state = ""
    country = tr(_named("countries.csv", "code").get(place.country, place.country))
    return ", ".join(part for part in (place.name, state, country) if part)


def is_in(region: str, country: str, where: str) -> bool:
    """True when folded words name the region or country, in English, its letters or the language shown."""
    if country == "US" and fold(_named("us_states.csv", "letters").get(region, "")) == where:
        return True
    name = _named("countries.csv", "code").get(country, "")
    countries = (country.lower(), fold(name), fold(tr(name)))
    return fold(region).startswith(where) or where in countries
