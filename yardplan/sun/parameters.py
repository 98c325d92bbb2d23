"""Figures of the shade work that are data with a source: resources/sun.csv and crown_shapes.csv."""

from __future__ import annotations

import csv
from collections.abc import Mapping
from functools import cache
from typing import Literal, get_args

from attrs import frozen

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


def _rows(name: str) -> list[dict[str, str]]:
    with resource(name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


@cache
def parameters() -> Mapping[str, Parameter]:
    """All figures by name."""
    return {
        row["name"]: Parameter(float(row["value"]), row["unit"], row["source"], row["note"])
        for row in _rows("sun.csv")
    }


def figure(name: str) -> float:
    """The value of one figure. Raises KeyError for a name that the table does not hold."""
    return parameters()[name].value


def count(name: str) -> int:
    """A figure that counts something."""
    return round(figure(name))


@cache
def crown_shapes() -> Mapping[str, CrownShape]:
    """The solid of each habit. Raises ValueError for a solid that is not known."""
    table = {}
    for row in _rows("crown_shapes.csv"):
        young, mature = row["young"], row["mature"]
        if young not in get_args(Shape) or mature not in get_args(Shape):
            raise ValueError(f"crown_shapes.csv, {row['habit']}: {young} or {mature} is no shape")
        table[row["habit"]] = CrownShape(young, mature, float(row["grown_at"]))  # type: ignore[arg-type]
    return table
