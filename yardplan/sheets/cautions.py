"""What a plan must warn of before anyone digs: from tables, by what the yard holds and where it lies."""

from __future__ import annotations

import csv
from functools import cache

from yardplan.language import mid_sentence, tr
from yardplan.shipped import resource
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard


@cache
def _table(*parts: str) -> tuple[dict[str, str], ...]:
    with resource(*parts).open(encoding="utf-8", newline="") as file:
        return tuple(csv.DictReader(file))


def dig_words(site: Site) -> str:
    """Whom to ask before digging, by the countries whose box holds the site; general words elsewhere.

    Where two countries' boxes overlap, both are named: a box cannot tell.
    """
    words = {row["country"]: row["words"] for row in _table("checks", "dig-first.csv")}
    found = {
        row["country"]: row["called"]
        for row in _table("sheets", "dig-places.csv")
        if float(row["west"]) <= site.longitude <= float(row["east"])
        and float(row["south"]) <= site.latitude <= float(row["north"])
        and row["country"] in words
    }
    if not found:
        return tr(words["other"]) + "."
    if len(found) == 1:
        return tr(words[next(iter(found))]) + "."
    return " ".join(f"{tr(called)}: {mid_sentence(tr(words[country]))}." for country, called in found.items())


def _applies(yard: Yard, when: str) -> bool:
    kinds = {service.kind for service in yard.services}
    if when == "services":
        return bool(kinds - {"overhead line"})
    if when == "overhead":
        return "overhead line" in kinds
    return when == "always"


def cautions(yard: Yard) -> tuple[str, ...]:
    """Sentences for the plan, the call before digging first."""
    rows = (row for row in _table("sheets", "cautions.csv") if _applies(yard, row["applies"]))
    return tuple(tr(row["words"]) or dig_words(yard.site) for row in rows)
