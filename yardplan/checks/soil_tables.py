"""Sulfur and lime by texture and pH, kg a square metre: published tables read linearly between their rows.

Table A gives sulfur to reach pH 4.5 (lb an acre), table B sulfur by step of pH (lb per 100 sq ft, 7 in deep),
table L ground limestone to reach pH 6.5 (lb per 100 sq ft). Amounts grow in proportion to the depth worked.
"""

from __future__ import annotations

import csv
from collections.abc import Mapping
from functools import cache

import numpy as np
from attrs import frozen

from yardplan.shipped import resource
from yardplan.units import FOOT, INCH, POUND
from yardplan.yard.site import Texture

#: Depth to which the tables' soil is worked: 7 in, printed for table B and the middle of 6 to 8 in for A.
TABLE_DEPTH = 7 * INCH
#: pH that tables A and L lead to.
SULFUR_FLOOR = 4.5
LIME_GOAL = 6.5
_PER_100_SQ_FT = POUND / (100 * FOOT**2)
_PER_ACRE = POUND / (43_560 * FOOT**2)


@frozen
class Spread:
    """An amount from a low to a high reading, in kg a square metre or kg."""

    low: float
    high: float

    def times(self, factor: float) -> Spread:
        """Both ends multiplied."""
        return Spread(self.low * factor, self.high * factor)


def _rows(name: str) -> list[dict[str, str]]:
    with resource("checks", name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


@cache
def table_a() -> Mapping[str, tuple[tuple[float, float], ...]]:
    """Table A by texture: (pH, lb an acre) from low pH to high."""
    return _by_texture("sulfur-a.csv", "lb_per_acre")


@cache
def table_l() -> Mapping[str, tuple[tuple[float, float], ...]]:
    """Table L by texture: (pH, lb per 100 sq ft) from low pH to high."""
    return _by_texture("lime.csv", "lb_per_100_sq_ft")


def _by_texture(name: str, column: str) -> Mapping[str, tuple[tuple[float, float], ...]]:
    table: dict[str, list[tuple[float, float]]] = {}
    for row in _rows(name):
        table.setdefault(row["texture"], []).append((float(row["ph"]), float(row[column])))
    return {texture: tuple(sorted(points)) for texture, points in table.items()}


@cache
def table_b() -> Mapping[str, Mapping[tuple[float, float], float]]:
    """Table B by texture: (from pH, to pH) and lb per 100 sq ft."""
    table: dict[str, dict[tuple[float, float], float]] = {}
    for row in _rows("sulfur-b.csv"):
        step = (float(row["from_ph"]), float(row["to_ph"]))
        table.setdefault(row["texture"], {})[step] = float(row["lb_per_100_sq_ft"])
    return table


@cache
def _columns() -> Mapping[str, Mapping[str, str]]:
    return {row["texture"]: row for row in _rows("texture-columns.csv")}


def _read(points: tuple[tuple[float, float], ...], zero: float, ph: float) -> float:
    """A table's amount at a pH, nothing at `zero`; beyond its ends the last step goes on."""
    xs, ys = zip(*sorted((*points, (zero, 0.0))), strict=True)
    if ph > xs[-1]:
        return float(ys[-1] + (ph - xs[-1]) * (ys[-1] - ys[-2]) / (xs[-1] - xs[-2]))
    if ph < xs[0]:
        return float(ys[0] + (ph - xs[0]) * (ys[1] - ys[0]) / (xs[1] - xs[0]))
    return float(np.interp(ph, xs, ys))


def sulfur_a(texture: Texture, start: float, goal: float) -> float | None:
    """Sulfur by table A, kg a square metre at table depth; None where it has no column."""
    names = _columns()[texture]["sulfur_a"]
    if not names:
        return None
    amounts = [
        _read(table_a()[name], SULFUR_FLOOR, start) - _read(table_a()[name], SULFUR_FLOOR, goal)
        for name in names.split("+")
    ]
    return max(sum(amounts) / len(amounts), 0.0) * _PER_ACRE


def sulfur_b(texture: Texture, start: float, goal: float) -> float:
    """Sulfur by table B, kg a square metre at 7 in: the steps passed through, shared out within each."""
    steps = table_b()[_columns()[texture]["sulfur_b"]]
    highest, lowest = max(high for high, _ in steps), min(low for _, low in steps)
    total = 0.0
    for (high, low), amount in steps.items():
        top = start if high == highest else min(start, high)
        foot = goal if low == lowest else max(goal, low)
        total += amount * max(top - foot, 0.0) / (high - low)
    return total * _PER_100_SQ_FT


_UNKNOWN: tuple[Texture, ...] = ("sand", "loam", "clay")


def sulfur(texture: Texture | None, start: float, goal: float, depth: float = TABLE_DEPTH) -> Spread:
    """Elemental sulfur from one pH down to another, kg a square metre: both tables as a range.

    Where the texture is not known the range runs from sand to clay.
    """
    readings: list[float] = []
    for name in (texture,) if texture is not None else _UNKNOWN:
        by_a = sulfur_a(name, start, goal)
        readings += [sulfur_b(name, start, goal)] + ([by_a] if by_a is not None else [])
    return Spread(min(readings), max(readings)).times(depth / TABLE_DEPTH)


def lime(texture: Texture | None, start: float, goal: float, depth: float = TABLE_DEPTH) -> Spread:
    """Ground limestone from one pH up to another (at most 6.5), kg a square metre, by table L."""
    readings = []
    for name in (texture,) if texture is not None else _UNKNOWN:
        points = table_l()[_columns()[name]["lime"]]
        top = min(goal, LIME_GOAL)
        amount = _read(points, LIME_GOAL, start) - _read(points, LIME_GOAL, top)
        readings.append(max(amount, 0.0) * _PER_100_SQ_FT)
    return Spread(min(readings), max(readings)).times(depth / TABLE_DEPTH)


@frozen
class Acidifier:
    """Another material that makes soil acid: its weight as a multiple of elemental sulfur."""

    material: str
    times_sulfur: float
    food_crops: bool
    source: str
    note: str


@cache
def acidifiers() -> tuple[Acidifier, ...]:
    """The materials, elemental sulfur first."""
    return tuple(
        Acidifier(
            row["material"], float(row["times_sulfur"]), row["food_crops"] == "yes", row["source"],
            row["note"],
        )
        for row in _rows("acidifiers.csv")
    )
