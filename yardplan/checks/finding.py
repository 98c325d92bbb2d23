"""A finding: what a check saw, as numbers. Words are made at the edge (checks.wording)."""

from __future__ import annotations

from collections.abc import Mapping
from enum import Enum
from typing import Literal

from attrs import field, frozen

from yardplan.yard.ground import Point

Measure = Literal[
    "length", "area", "hours", "share", "count", "temperature", "temperature difference", "days", "date",
    "weight", "volume", "ph", "text", "thing", "year",
]


#: What is at stake: a legal demand, someone's safety, lasting damage, awkward upkeep, or growth and crop.
Severity = Literal["law", "safety", "damage", "care", "growth"]


class Weight(Enum):
    """How much a finding matters."""

    CONFLICT = "conflict"
    CAUTION = "caution"
    ADVICE = "advice"


@frozen
class Figure:
    """A figure in base units: metres, m2, hours a day, share 0..1, degrees C, days, kg, litres.

    `thing` figures hold the id of a thing; `text` figures hold words that need no unit.
    """

    value: float | str
    measure: Measure


@frozen
class Mark:
    """A place to mark on the plan: a point, a line or an outline, metres; `hatch` fills the wrong place."""

    points: tuple[Point, ...]
    shape: Literal["point", "line", "area"] = "point"


@frozen(kw_only=True)
class Finding:
    """What one check found.

    `kind` names the sort of finding within its check (`overlap`); with the check and the things it is
    the finding's key, so a mark stays the same mark while its figures move.
    `source` is a source id of the bibliography or a rule name of the rules table.
    """

    check: str
    kind: str
    weight: Weight
    things: tuple[str, ...]
    figures: Mapping[str, Figure] = field(factory=dict)
    marks: tuple[Mark, ...] = ()
    source: str = ""
    fresh: bool = True

    @property
    def key(self) -> tuple[str, str, tuple[str, ...]]:
        """Identity of the finding while its figures change."""
        return (self.check, self.kind, self.things)
