"""Angles and bearings as people, deeds and instruments write them, in degrees.

A quadrant bearing (`N 45°30' E`, never more than 90) turns from north or south towards east or west; an
azimuth (`N 123°15'`, `Az 123.25`) turns clockwise from north all the way round. A minute is a 60th of a
degree, a second a 60th of a minute, a gon a 400th of a circle (ISO 80000-3).
"""

from __future__ import annotations

import re
from collections.abc import Callable

from yardplan.language import later, tr
from yardplan.units import System, UnitError, parse_length

#: The letters and the words of the winds as the language writes them; the English ones are read everywhere.
_WINDS = later("N E S W")
_WIND_WORDS = later("north east south west")
_CLOCKWISE = {"N": 0.0, "E": 90.0, "S": 180.0, "W": 270.0}
_AZIMUTHS = ("az", "azimuth", "azimut")
_SIGNS = str.maketrans({
    "′": "'", "’": "'", "‘": "'", "ʹ": "'", "″": '"', "”": '"', "“": '"', "ʺ": '"', "º": "°", "˚": "°",
    "−": "-", "–": "-", "\u00a0": " ", "\u2009": " ", "\u202f": " ",
})
_NUMBER = r"(?:\d+(?:[.,]\d*)?|[.,]\d+)"
_GON = re.compile(rf"(?P<gon>{_NUMBER})\s*gon", re.IGNORECASE)
#: Degrees, minutes and seconds with their signs, or with a space or a dash between as in field books.
_TURN = re.compile(
    rf"(?P<degrees>{_NUMBER})(?P<sign>\s*(?:°|degrees?|deg\.?))?\s*"
    rf"(?:[- ]?\s*(?P<minutes>{_NUMBER})\s*(?:'(?!')|minutes?|min\.?)?\s*"
    rf"(?:[- ]?\s*(?P<seconds>{_NUMBER})\s*(?:\"|''|seconds?|sec\.?)?)?)?",
    re.IGNORECASE,
)
_FIRST_WORD = re.compile(r"(?:due\s+)?(?P<word>[^\W\d_]+)\.?\s*(?P<rest>.*)", re.IGNORECASE | re.DOTALL)
_LAST_WORD = re.compile(r"(?P<rest>.*?[\d.,°'\"\s])(?P<word>[^\W\d_]+)\.?", re.DOTALL)
#: More is no turn but a slip of the finger, degrees: ten times round.
_MOST = 3600.0


def _number(text: str | None) -> float:
    return float((text or "0").replace(",", "."))


def _turn(text: str) -> float | None:
    """Degrees without a sign before them, or None. Raises UnitError where minutes or seconds reach 60."""
    gon = _GON.fullmatch(text)
    if gon is not None:
        return _number(gon["gon"]) * 0.9
    match = _TURN.fullmatch(text)
    if match is None:
        return None
    parts = [match[name] for name in ("degrees", "minutes", "seconds")]
    given = [part for part in parts if part is not None]
    if any(set(part) & {".", ","} for part in given[:-1]):
        return None
    degrees, minutes, seconds = map(_number, parts)
    if minutes >= 60 or seconds >= 60:
        raise UnitError(tr("'{text}' is not an angle: minutes and seconds stay below 60", text=text))
    return degrees + minutes / 60 + seconds / 3600


def read_angle(text: str) -> float:
    """Degrees: `45`, `-30°`, `22,5`, `45°30'15"`, `45-30-15`, `50 gon`. Raises UnitError."""
    plain = text.translate(_SIGNS).strip()
    sign = -1.0 if plain.startswith("-") else 1.0
    degrees = _turn(plain[1:].strip() if plain[:1] in ("-", "+") else plain)
    if degrees is None or degrees > _MOST:
        raise UnitError(tr("'{text}' is not an angle: write 90, 45°30' or a bearing like N 45 E", text=text))
    return sign * degrees


def _wind(word: str) -> str:
    """The wind in its English letter, whichever way it was written; an empty text for any other word."""
    table: dict[str, str] = {}
    # What the language itself writes goes last, so that it counts where the same letter means another wind.
    for letters in ("N E S W", "north east south west", tr(_WIND_WORDS), tr(_WINDS)):
        table |= dict(zip(letters.lower().split(), _CLOCKWISE, strict=True))
    return table.get(word.lower(), "")


def read_bearing(text: str) -> float | None:
    """A direction in degrees clockwise from north; None where the text is none.

    `N 45°30' E`, `S 45-30-15 W`, `North 45 East`, `E`, `due north`, `N 123.25`, `Az 123°15'`. Raises
    UnitError where it is one with a figure that cannot be.
    """
    first = _FIRST_WORD.fullmatch(text.translate(_SIGNS).strip())
    if first is None:
        return None
    begin, rest = _wind(first["word"]), first["rest"].strip()
    azimuth = first["word"].lower() in _AZIMUTHS
    if not begin and not azimuth:
        return None
    if not rest:
        return _CLOCKWISE[begin] if begin else None
    last = _LAST_WORD.fullmatch(rest)
    end = _wind(last["word"]) if last is not None else ""
    if last is not None and end:
        return _quadrant(begin, _turn(last["rest"].strip()), end, text)
    turn = _turn(rest) if azimuth or begin == "N" else None
    if turn is not None and turn > 360:
        raise UnitError(tr("'{text}' is no direction: from north it is at most 360 degrees round", text=text))
    return turn


def _quadrant(begin: str, turn: float | None, end: str, text: str) -> float | None:
    if turn is None or begin not in ("N", "S") or end not in ("E", "W"):
        return None
    if turn > 90:
        raise UnitError(
            tr("'{text}' is no bearing: from north or south it turns at most 90 degrees", text=text)
        )
    turns = {"NE": turn, "SE": 180 - turn, "SW": 180 + turn, "NW": 360 - turn}
    return turns[begin + end] % 360


def bearing_or_azimuth(text: str) -> float | None:
    """As `read_bearing`; an angle without letters counts clockwise from north, as an instrument shows it."""
    found = read_bearing(text)
    if found is not None:
        return found
    try:
        angle = read_angle(text)
    except UnitError:
        return None
    return angle if 0 <= angle <= 360 else None


def split_call(
    text: str, system: System, direction: Callable[[str], float | None] = read_bearing
) -> tuple[float, float] | None:
    """The length in metres and the direction of a call such as `N 45°30' E 100.50 ft` or `100.5 ft N 45 E`.

    None where the text is none. Where it can be split in several ways, the longest direction counts, so that
    minutes and seconds are not taken for the length. Raises UnitError where a bearing cannot be.
    """
    # A comma between figures is a decimal sign, before a space it parts bearing and distance.
    breaks = list(re.finditer(r"\s*[,;:]?\s+", text.strip()))
    for found in reversed(breaks):
        call = _call(text.strip()[found.end():], text.strip()[:found.start()], system, direction)
        if call is not None:
            return call
    for found in breaks:
        call = _call(text.strip()[:found.start()], text.strip()[found.end():], system, read_bearing)
        if call is not None:
            return call
    return None


def _call(
    length: str, turn: str, system: System, direction: Callable[[str], float | None]
) -> tuple[float, float] | None:
    try:
        metres = parse_length(length, system)
    except UnitError:
        return None
    clockwise = direction(turn)
    return (metres, clockwise) if clockwise is not None and metres > 0 else None
