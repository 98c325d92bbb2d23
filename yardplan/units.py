"""Measures as people type and read them. Metres, square metres, kilograms and litres inside.

Accepts feet and inches or metric in any field whatever the yard shows: `12' 6"`, `12 ft 6 in`,
`12'-6 1/2"`, `150"`, `3.8 m`, `3,8`, `380 cm`, `2 m 35 cm`; of old deeds chains, rods and links. A bare
number is in the shown unit. Thousands may stand in groups, `1,250.5 ft`; what could be a group or decimals is
refused rather than guessed.
1 in = 25.4 mm and 1 lb = 0.45359237 kg exactly (international yard and pound, 1959); a chain is 66 ft, a rod
16 1/2 ft and a link a hundredth of a chain (NIST Handbook 44, appendix C).
"""

from __future__ import annotations

import math
import re
from typing import TYPE_CHECKING, Literal

from yardplan.language import decimal_point, decimals, thousands, tr

if TYPE_CHECKING:
    from fractions import Fraction

System = Literal["imperial", "metric"]

FOOT = 0.3048
INCH = 0.0254
POUND = 0.45359237
US_GALLON = 3.785411784
#: Inches are shown to the nearest half, what a tape in a yard can do (shared words: lengths).
INCH_TICKS = 2
#: Longest length accepted, metres: 10 km, beyond any yard.
LONGEST = 10_000.0


class UnitError(ValueError):
    """A measure that could not be read, said in words for a person."""


_QUOTES = str.maketrans({
    "′": "'", "’": "'", "‘": "'", "ʹ": "'", "″": '"', "”": '"', "“": '"', "ʺ": '"',
    "−": "-", "–": "-", "\u00a0": " ", "\u2009": " ", "\u202f": " ",
    "½": " 1/2", "¼": " 1/4", "¾": " 3/4", "⅛": " 1/8", "⅜": " 3/8", "⅝": " 5/8", "⅞": " 7/8",
})
_NUMBER = r"(?:\d+\s+\d+/\d+|\d+/\d+|\d+(?:[.,]\d*)?|[.,]\d+)"
_FEET = re.compile(
    rf"(?P<feet>{_NUMBER})\s*(?:'|feet|foot|fuß|fuss|ft\.?)\s*-?\s*"
    rf"(?:(?P<inches>{_NUMBER})\s*(?:\"|''|inches|inch|in\.?|zoll)?)?"
)
_PLAIN = re.compile(rf"(?P<number>{_NUMBER})\s*(?P<unit>[a-zß\"']*)\.?")
_METRES = {
    "m": 1.0, "metre": 1.0, "metres": 1.0, "meter": 1.0, "meters": 1.0,
    "cm": 0.01, "mm": 0.001, "dm": 0.1, "km": 1000.0,
    '"': INCH, "''": INCH, "in": INCH, "inch": INCH, "inches": INCH, "yd": 3 * FOOT, "yard": 3 * FOOT,
    "yards": 3 * FOOT, "chain": 66 * FOOT, "chains": 66 * FOOT, "rod": 16.5 * FOOT, "rods": 16.5 * FOOT,
    "link": 0.66 * FOOT, "links": 0.66 * FOOT, "fuß": FOOT, "fuss": FOOT, "zoll": INCH,
}
_METRES_AND_CM = re.compile(r"(?P<metres>\d+)\s*m\s*(?P<cm>\d+(?:[.,]\d*)?)\s*cm")
#: A number in groups of three: two groups, or one and decimals behind the other sign, leave no doubt.
_GROUPED = re.compile(
    r"(?<![\d.,])\d{1,3}(?:(?:,\d{3})+\.\d+|(?:\.\d{3})+,\d+|(?:,\d{3}){2,}|(?:\.\d{3}){2,})(?![\d.,])"
)
#: One group behind the sign that does not stand before decimals here: a thousand, or a slip?
_DOUBTFUL = re.compile(r"(?<![\d.,])[1-9]\d{0,2}(?P<sign>[.,])\d{3}(?![\d.,])")


def _fraction(text: str) -> Fraction:
    """A number like `6 1/2`, `1/2`, `3.8` or `3,8`. Raises ZeroDivisionError on `1/0`."""
    from fractions import Fraction  # here, so that the window starts without it

    text = text.strip()
    if "/" in text:
        whole, _, part = text.rpartition(" ")
        over, under = part.split("/")
        return Fraction(whole.strip() or "0") + Fraction(int(over), int(under))
    return Fraction(text.replace(",", ".").rstrip(".") or "0")


def _unreadable(typed: str) -> UnitError:
    return UnitError(tr("'{typed}' is not a length: write for example 12' 6\" or 3.8 m", typed=typed))


def parse_length(typed: str, system: System = "metric", *, from_file: bool = False) -> float:
    """Metres from what a person typed; a bare number is feet (imperial) or metres (metric).

    Raises UnitError when the text is no length. A minus sign covers the whole: -1' 6" is -18 in. `from_file`:
    a program wrote it, in which `1,250` and `1.250` have three decimals.
    """
    text = _ungrouped(typed.translate(_QUOTES).strip().lower(), ask=not from_file)
    sign = -1 if text.startswith("-") else 1
    text = text[1:].strip() if text[:1] in ("-", "+") else text
    try:
        metres = _feet_and_inches(text)
        if metres is None:
            metres = _metres_and_cm(text)
        if metres is None:
            metres = _one_unit(text, system)
    except ZeroDivisionError:
        raise _unreadable(typed) from None
    except OverflowError:
        metres = math.inf
    if metres is None:
        raise _unreadable(typed)
    if metres > LONGEST:
        shown = typed if len(typed) <= 20 else typed[:20] + "…"
        raise UnitError(tr("'{typed}' is longer than 10 km", typed=shown))
    return sign * metres


def _ungrouped(text: str, *, ask: bool) -> str:
    """Numbers without the signs between groups of three. Raises UnitError where one may be either.

    `1,250 ft` is 1250 to one and 1.25 to another: in a language with a decimal comma it is 1.25, elsewhere it
    is asked for anew, because a length wrong by a thousand is worse than a question.
    """
    text = _GROUPED.sub(_without_groups, text)
    doubtful = _DOUBTFUL.search(text) if ask else None
    if doubtful is not None and doubtful["sign"] != decimal_point():
        plain = doubtful[0].replace(doubtful["sign"], "")
        small = doubtful[0].replace(doubtful["sign"], decimal_point())
        raise UnitError(tr(
            "'{typed}' may be {many} or {few}: write one of these", typed=doubtful[0], many=plain, few=small
        ))
    return text


def _without_groups(found: re.Match[str]) -> str:
    signs = [sign for sign in found[0] if sign in ".,"]
    whole = found[0].replace(signs[0], "")
    return whole.replace(",", ".")


def _metres_and_cm(text: str) -> float | None:
    match = _METRES_AND_CM.fullmatch(text)
    return float(int(match["metres"]) + _fraction(match["cm"]) / 100) if match else None


def _feet_and_inches(text: str) -> float | None:
    match = _FEET.fullmatch(text)
    if match is None:
        return None
    inches = _fraction(match["inches"]) if match["inches"] else 0
    return float(_fraction(match["feet"]) * 12 + inches) * INCH


def _one_unit(text: str, system: System) -> float | None:
    match = _PLAIN.fullmatch(text)
    if match is None:
        return None
    unit = match["unit"]
    if not unit:
        factor = FOOT if system == "imperial" else 1.0
    elif unit in _METRES:
        factor = _METRES[unit]
    else:
        return None
    return float(_fraction(match["number"])) * factor


def _figure(value: float, unit: str, digits: int = 0, *, grouped: bool = False) -> str:
    """A number with its unit; no minus before a zero, and `unknown` for what is no number.

    `grouped`: in groups of three. Only for what is never typed: a shown length must read back as itself.
    """
    if not math.isfinite(value):
        return tr("unknown")
    text = f"{value:.{digits}f}"
    if float(text) == 0:
        text = text.removeprefix("-")
    return (thousands(float(text), digits) if grouped else decimals(text)) + unit


def _two_digits(value: float, unit: str) -> str:
    """A tenth below ten, whole numbers above, told after rounding: 9.97 is 10, not 10.0."""
    return _figure(value, unit, 1 if abs(value) < 9.95 else 0)


def format_length(metres: float, system: System = "metric", *, ticks: int = INCH_TICKS) -> str:
    """A length to what a tape can do: 1 cm, or half an inch. Rounded first, then split into feet."""
    if not math.isfinite(metres):
        return tr("unknown")
    return _feet_text(metres, ticks) if system == "imperial" else _figure(metres, " m", 2)


def _feet_text(metres: float, ticks: int) -> str:
    total = round(abs(metres) / INCH * ticks)
    feet, rest = divmod(total, 12 * ticks)
    whole, part = divmod(rest, ticks)
    common = math.gcd(part, ticks)
    fraction = f" {part // common}/{ticks // common}" if part else ""
    inches = f"{whole or ''}{fraction}".strip() if (whole or fraction) else ""
    sign = "-" if metres < 0 and total else ""
    if feet and inches:
        return f"{sign}{feet}' {inches}\""
    if feet:
        return f"{sign}{feet}'"
    return f"{sign}{inches or '0'}\""


def format_coarse(metres: float, system: System = "metric") -> str:
    """A length for reading, not for measuring: 0.1 m or whole inches up to 2 ft, then feet to a tenth."""
    if system == "metric":
        return _figure(metres, " m", 1)
    if math.isfinite(metres) and abs(round(metres / INCH)) < 24:
        return _figure(metres / INCH, " in")
    return _figure(metres / FOOT, " ft", 1).replace(decimals(".0 ft"), " ft")


def format_area(square_metres: float, system: System = "metric") -> str:
    """An area in square metres or square feet, large ones in groups of three: `12,500 sq ft`."""
    if system == "imperial":
        return _figure(square_metres / FOOT**2, " sq ft", grouped=True)
    return _figure(square_metres, " m²", 1, grouped=True)


def format_temperature(celsius: float, system: System = "metric") -> str:
    """A temperature in whole degrees C or F."""
    return _figure(celsius * 1.8 + 32, " °F") if system == "imperial" else _figure(celsius, " °C")


def format_temperature_difference(celsius: float, system: System = "metric") -> str:
    """A difference of temperatures, to a tenth of a degree C or whole degrees F."""
    return _figure(celsius * 1.8, " °F") if system == "imperial" else _figure(celsius, " °C", 1)


def format_weight(kilograms: float, system: System = "metric") -> str:
    """A weight in kilograms or pounds, to two useful digits."""
    return _two_digits(kilograms / POUND, " lb") if system == "imperial" else _two_digits(kilograms, " kg")


def format_volume(litres: float, system: System = "metric") -> str:
    """A volume in litres or US gallons."""
    return _two_digits(litres / US_GALLON, " gal") if system == "imperial" else _two_digits(litres, " L")
