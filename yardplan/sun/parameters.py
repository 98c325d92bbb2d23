"""Figures of the shade work that are data with a source: resources/sun.csv and crown_shapes.csv."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Literal, get_args

from attrs import frozen

from yardplan.plants.crop import Habit
from yardplan.plants.tables import Table
from yardplan.shipped import resource

Shape = Literal["ellipsoid", "cone", "vase", "cylinder", "dome", "panel"]


@frozen
class Parameter:
    """One figure with its unit and source id."""

    value: float
    unit: str
    source: str
    note: str


@frozen
class CrownShape:
    """Solids that stand for a crown: `young` below the share `grown_at` of full height, then `mature`."""

    young: Shape
    mature: Shape
    grown_at: float


@cache
def parameters() -> Mapping[str, Parameter]:
    """All figures by name. Raises TableError, with file, row and column, when the table is bad."""
    found: dict[str, Parameter] = {}
    with Table(resource("sun.csv"), ("name", "value", "unit", "source", "note")) as table:
        for row in table:
            name = row.needed("name")
            if name in found:
                row.fault("name", f"'{name}' stands there twice")
            found[name] = Parameter(
                row.real("value"), row.needed("unit"), row.needed("source"), row.text("note")
            )
    return found


def figure(name: str) -> float:
    """The value of one figure. Raises KeyError for a name that the table does not hold."""
    return parameters()[name].value


def count(name: str) -> int:
    """A figure that counts something."""
    return round(figure(name))


@cache
def crown_shapes() -> Mapping[Habit, CrownShape]:
    """The solid of each habit. Raises TableError, with file, row and column, when the table is bad."""
    found: dict[Habit, CrownShape] = {}
    with Table(resource("crown_shapes.csv"), ("habit", "young", "mature", "grown_at", "source")) as table:
        for row in table:
            young, mature = (row.one_of(column, get_args(Shape)) for column in ("young", "mature"))
            habit = row.one_of("habit", get_args(Habit))
            row.needed("source")
            found[habit] = CrownShape(young, mature, row.real("grown_at"))  # type: ignore[index, arg-type]
    return found
