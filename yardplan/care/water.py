"""How much water: reference evapotranspiration, crop coefficients, and amounts for one plant.

Source of the formulas: FAO Irrigation and Drainage Paper 56 (1998), equations 21-25 and 52, and the
canopy-area method of University of California Cooperative Extension. 1 mm on 1 m2 is 1 litre.
"""

from __future__ import annotations

import csv
import math
from collections.abc import Sequence
from functools import cache

from attrs import frozen

from yardplan.shipped import resource

#: mm of water evaporated by 1 MJ/m2 (FAO-56, equation 20).
MM_PER_MJ = 0.408
#: Solar constant, MJ per m2 and minute (FAO-56, equation 21).
SOLAR_CONSTANT = 0.0820


@cache
def figures() -> dict[str, float]:
    """The figures of resources/care/water.csv by name."""
    with resource("care", "water.csv").open(encoding="utf-8", newline="") as file:
        return {row["figure"]: float(row["value"]) for row in csv.DictReader(file)}


@frozen
class Coefficients:
    """Crop coefficients at bud break, midsummer and leaf fall; `estimate` where no table row fits."""

    start: float
    mid: float
    end: float
    source: str
    estimate: bool = False


@cache
def _table() -> dict[str, Coefficients]:
    with resource("care", "crop-coefficients.csv").open(encoding="utf-8", newline="") as file:
        return {
            row["row"]: Coefficients(
                float(row["kc_start"]), float(row["kc_mid"]), float(row["kc_end"]), row["source"]
            )
            for row in csv.DictReader(file)
        }


@cache
def _row_of() -> dict[str, tuple[str, str]]:
    with resource("care", "water-crops.csv").open(encoding="utf-8", newline="") as file:
        return {row["crop"]: (row["row"], row["source"]) for row in csv.DictReader(file)}


@frozen
class Stages:
    """Days of slow start, rise, midsummer and fall of water use, counted from `start`, an anchor of a season.

    `rest` True for evergreens, which go on drinking after the last stage.
    """

    start: str
    days: tuple[int, int, int, int]
    source: str

    @property
    def rest(self) -> bool:
        """True where the end's coefficient holds on through the winter."""
        return self.start.startswith("month")

    def coefficient(self, crop: Coefficients, day: float) -> float:
        """Crop coefficient on a day counted from the start: flat, rising, flat, falling (FAO-56, chapter 6).

        0 before the start and after the last stage of kinds that lose their leaves.
        """
        ini, rise, mid, fall = self.days
        if day < 0:
            return crop.end if self.rest else 0.0
        if day <= ini:
            return crop.start
        if day <= ini + rise:
            return crop.start + (crop.mid - crop.start) * (day - ini) / rise
        if day <= ini + rise + mid:
            return crop.mid
        if day <= sum(self.days):
            return crop.mid + (crop.end - crop.mid) * (day - ini - rise - mid) / fall
        return crop.end if self.rest else 0.0


@cache
def _stage_rows() -> dict[tuple[str, str], Stages]:
    with resource("care", "water-stages.csv").open(encoding="utf-8", newline="") as file:
        return {
            (row["row"], row["latitude"]): Stages(
                row["from"],
                (int(row["start_days"]), int(row["rise_days"]), int(row["mid_days"]), int(row["fall_days"])),
                row["source"],
            )
            for row in csv.DictReader(file)
        }


def stages(crop: str, latitude: float) -> Stages:
    """How a crop's water use goes through its season at a latitude in degrees."""
    row, _ = _row_of().get(crop, ("other", ""))
    far = "high" if abs(latitude) >= figures()["high latitude"] else "low"
    rows = _stage_rows()
    return rows.get((row, "any")) or rows.get((row, far)) or rows["other", far]


def coefficients(crop: str, *, grass_floor: bool = False, frost: bool = True) -> Coefficients:
    """Crop coefficients of a crop, by floor cover and whether winters bring killing frost."""
    row, source = _row_of().get(crop, ("", "memory"))
    floor = f"{row}: {'grass' if grass_floor else 'bare'} floor, {'killing frost' if frost else 'no frost'}"
    found = _table().get(row) or _table().get(floor)
    if found is None:
        guess = figures()["default Kc"]
        return Coefficients(guess, guess, guess, "memory", estimate=True)
    return Coefficients(found.start, found.mid, found.end, found.source, estimate=source == "memory")


def extraterrestrial_radiation(latitude: float, day_of_year: int) -> float:
    """Radiation above the air on level ground, MJ per m2 and day (FAO-56, equations 21-25)."""
    phi = math.radians(latitude)
    turn = 2 * math.pi * day_of_year / 365
    distance = 1 + 0.033 * math.cos(turn)
    declination = 0.409 * math.sin(turn - 1.39)
    sunset = math.acos(max(-1.0, min(1.0, -math.tan(phi) * math.tan(declination))))
    level = sunset * math.sin(phi) * math.sin(declination)
    slant = math.cos(phi) * math.cos(declination) * math.sin(sunset)
    return 24 * 60 / math.pi * SOLAR_CONSTANT * distance * (level + slant)


def reference_evapotranspiration(low: float, high: float, radiation: float) -> float:
    """Reference evapotranspiration, mm a day, from mean daily low and high in degrees C.

    Hargreaves' equation (FAO-56, equation 52) with `radiation` in MJ per m2 and day; never negative.
    """
    mean = (low + high) / 2
    spread = max(high - low, 0.0)
    return max(0.0, 0.0023 * (mean + 17.8) * math.sqrt(spread) * radiation * MM_PER_MJ)


def monthly_reference(latitude: float, lows: Sequence[float], highs: Sequence[float]) -> tuple[float, ...]:
    """Reference evapotranspiration of the twelve months, mm a day, at mid-month."""
    middles = [15 + 30.4 * month for month in range(12)]
    return tuple(
        reference_evapotranspiration(low, high, extraterrestrial_radiation(latitude, round(day)))
        for low, high, day in zip(lows, highs, middles, strict=True)
    )


def crown_area(spread: float) -> float:
    """Area under a crown, m2, from its diameter in metres."""
    return math.pi * (spread / 2) ** 2


def young_factor(cover: float) -> float:
    """How much more a small tree under drip gets: `cover` is its share of full crown area, 0 to 1."""
    small, full = figures()["small cover"], figures()["full cover"]
    most = figures()["young tree factor"]
    if cover <= small:
        return most
    return 1.0 if cover >= full else most + (1 - most) * (cover - small) / (full - small)


def weekly_litres(
    spread: float, coefficient: float, reference: float, *, rain: float = 0.0, cover: float = 1.0,
    efficiency: float | None = None,
) -> float:
    """Litres to give one plant in a week.

    `spread` metres; `reference` mm a day; `rain` effective mm in the week; `cover` share of full size;
    `efficiency` share that reaches the roots (None: drip).
    """
    reaches = figures()["drip efficiency"] if efficiency is None else efficiency
    need = 7 * coefficient * reference * young_factor(cover) - rain
    return max(0.0, need * crown_area(spread) / reaches)


def inch_a_week_litres(spread: float, rain: float = 0.0) -> float:
    """Litres a week by the inch-a-week rule, rain (mm in the week) taken off."""
    return max(0.0, figures()["inch a week"] - rain) * crown_area(spread)


def effective_rain(month: float) -> float:
    """Rain of a month that reaches the roots, mm (FAO training manual 3)."""
    large = figures()["rain large month"]
    return max(0.0, 0.8 * month - 25 if month > large else 0.6 * month - 10)


def container_litres_a_day(spread: float, coefficient: float, reference: float) -> float:
    """Litres a day for a plant in a pot, by its crown, with a share for the pot's exposed sides."""
    return coefficient * reference * crown_area(spread) * figures()["container exposure"]
