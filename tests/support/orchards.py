"""Yards and surveys for tests of pollination and bloom."""

from __future__ import annotations

from typing import Any

from support.builders import plant, yard_of
from yardplan.checks.finding import Finding
from yardplan.checks.survey import Survey, survey_of
from yardplan.yard.ground import Point, StandingTree
from yardplan.yard.planting import Planting
from yardplan.yard.site import Site

#: Klein-Altendorf, 1991-2019: monthly means published with the bloom records of Bonn.
MEANS = (2.57, 3.24, 6.33, 9.78, 13.57, 16.50, 18.68, 18.14, 14.64, 10.54, 6.32, 3.34)


def site(**fields: Any) -> Site:
    """A site near Bonn, zone 7b."""
    given: dict[str, Any] = {
        "name": "Orchard", "place": "Bonn", "latitude": 50.6, "longitude": 7.0, "elevation": 160.0,
        "zone": "7b", "monthly_means": MEANS, "last_frost": "04-25",
    }
    return Site(**(given | fields))


def row_of(*keys: str, apart: float = 6.0, start: Point = (3.0, 5.0)) -> tuple[Planting, ...]:
    """Plants P1, P2, ... in a row, `apart` metres from each other."""
    return tuple(plant(f"P{i}", key, (start[0] + (i - 1) * apart, start[1])) for i, key in enumerate(keys, 1))


def orchard(*keys: str, apart: float = 6.0, **fields: Any) -> Survey:
    """The survey of a yard with plants P1, P2, ... in a row."""
    given: dict[str, Any] = {"site": site(), "width": 60, "depth": 30}
    return survey_of(yard_of(*row_of(*keys, apart=apart), **(given | fields)))


def tree(key: str, kind: str, place: Point, **fields: Any) -> StandingTree:
    """A standing tree next door."""
    given: dict[str, Any] = {"height": 5.0, "spread": 4.0, "donor": "seedling"}
    return StandingTree(id=key, kind=kind, place=place, **(given | fields))


def kinds(found: list[Finding]) -> dict[str, str]:
    """Kind of finding by the first thing it is about."""
    return {finding.things[0] if finding.things else "": finding.kind for finding in found}
