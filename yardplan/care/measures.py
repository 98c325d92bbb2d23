"""Measures inside care texts: written as printed, `[6-8 in]`, and said in the reader's units."""

from __future__ import annotations

import math
import re

from yardplan.language import decimals, tr
from yardplan.units import INCH, POUND, US_GALLON, System

_MARKED = re.compile(r"\[(\d+(?:\.\d+)?)(?:-(\d+(?:\.\d+)?))? (in|ft|F|lb|oz|gal)\]")
_FOOT_CM = 30.48
_OUNCE_G = 28.349523125


def said(text: str, system: System) -> str:
    """The text with each marked measure in the units asked for, metric values rounded."""
    return _MARKED.sub(lambda found: _one(found, system), text)


def bulk_words(litres: float, system: System) -> str:
    """Loose material as it is ordered, rounded up: `910 L`, `33 cu ft`."""
    if system == "imperial":
        return f"{math.ceil(litres / (1000 * (_FOOT_CM / 100) ** 3) - 1e-9):d} cu ft"
    step = 10 if litres > 100 else 1
    return f"{math.ceil(litres / step - 1e-9) * step:d} L"


def _one(found: re.Match[str], system: System) -> str:
    low, high, unit = found[1], found[2], found[3]
    if system == "imperial":
        words = "°F" if unit == "F" else unit
        return decimals(f"{low}{'-' + high if high else ''} {words}")
    values = [_metric(float(value), unit) for value in (low, high) if value is not None]
    # A centimetre and a metre of one range are told in the larger one's unit.
    unit = values[-1][1]
    numbers = [value / 100 if own == "cm" and unit == "m" else value for value, own in values]
    shown = [_short(number) for number in dict.fromkeys(numbers)]
    if len(shown) > 1 and min(numbers) < 0:
        shown = [tr("{low} to {high}", low=shown[0], high=shown[1])]
    return f"{'-'.join(shown)} {unit}"


def _short(value: float) -> str:
    return decimals(f"{value:.2f}".rstrip("0").rstrip(".")) or "0"


def _metric(value: float, unit: str) -> tuple[float, str]:
    if unit == "F":
        return round((value - 32) / 1.8), "°C"
    if unit == "lb":
        kilograms = value * POUND
        return (round(kilograms, 1), "kg") if kilograms >= 1 else (float(round(kilograms * 1000, -1)), "g")
    if unit == "oz":
        return float(round(value * _OUNCE_G)), "g"
    if unit == "gal":
        return float(round(value * US_GALLON)), "L"
    return _length(value * (INCH * 100 if unit == "in" else _FOOT_CM))


def _length(centimetres: float) -> tuple[float, str]:
    if centimetres < 1:
        return float(round(centimetres * 10)), "mm"
    if centimetres < 12:
        return (round(centimetres * 2) / 2 if centimetres < 6 else float(round(centimetres))), "cm"
    if centimetres < 75:
        return float(5 * round(centimetres / 5)), "cm"
    metres = centimetres / 100
    return (round(metres, 1) if metres < 10 else float(round(metres))), "m"
