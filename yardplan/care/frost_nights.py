"""Frost nights by bud stage: the temperatures at which one flower bud in ten is lost (bud-kill.csv)."""

from __future__ import annotations

import csv
from collections.abc import Mapping
from functools import cache

from yardplan.language import tr
from yardplan.plants.frost import row_of
from yardplan.shipped import resource
from yardplan.units import System, format_temperature


@cache
def _stages() -> Mapping[str, tuple[tuple[str, float, str], ...]]:
    """Stages of each crop in order with the temperature in C and the source id."""
    found: dict[str, tuple[tuple[str, float, str], ...]] = {}
    with resource("plants", "bud-kill.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            if row["t10_C"]:
                source = row["sources"].split(";")[0].split("(")[0].strip()
                stage = (row["stage"], float(row["t10_C"]), source)
                found[row["crop"]] = (*found.get(row["crop"], ()), stage)
    return found


def stages(crop: str) -> tuple[tuple[str, float, str], ...]:
    """(stage, temperature in C, source id) in order; empty when the table has no such crop."""
    return _stages().get(row_of(crop), ())


def stage_words(crop: str, system: System) -> str:
    """What buds stand, in words: `one bud in ten dies at: silver tip -9 °C, ... full bloom -2 °C`."""
    known = [f"{tr(stage)} {format_temperature(celsius, system)}" for stage, celsius, _ in stages(crop)]
    return tr("one bud in ten dies at: {stages}", stages=", ".join(known)) if known else ""
