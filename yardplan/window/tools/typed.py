"""What can be typed while drawing: `12' 6"`, `3.8 m`, with an angle `3.8 m < 90`, `12 x 8`, `4; 2.5`."""

from __future__ import annotations

import re
from typing import Literal

from attrs import frozen

from yardplan.language import tr
from yardplan.units import System, UnitError, parse_length
from yardplan.window.canvas.geometry import along, polar
from yardplan.window.open_yard import OpenYard
from yardplan.yard.ground import Point


@frozen(kw_only=True)
class Typed:
    """A typed entry: one length, a length at an angle, a width by depth, or a place."""

    form: Literal["length", "angle", "size", "place"]
    first: float
    second: float = 0.0


def parse_typed(text: str, system: System, *, north: float = 0.0) -> Typed:
    """Read an entry. Raises UnitError with words for a person.

    An angle is in degrees counter-clockwise from the right of the drawing; a bearing (`N 45 E`, in German
    `N 45 O`; surveyors' quadrant bearing) or azimuth (`N 123.5`) counts from true north, which lies `north`
    degrees clockwise from the top.
    """
    if ";" in text:
        x, y = _two(text, ";")
        return Typed(form="place", first=parse_length(x, system), second=parse_length(y, system))
    for sign in ("<", "∠", "@"):
        if sign in text:
            length, turn = _two(text, sign)
            return Typed(form="angle", first=_above_zero(length, system), second=parse_angle(turn, north))
    # Here, not above: its patterns take longer to make ready than an empty window needs them.
    from yardplan.yard.bearings import split_call

    call = split_call(text, system)
    if call is not None:
        return Typed(form="angle", first=call[0], second=_from_north(call[1], north))
    parts = re.split(r"\s*[x×*]\s*|\s+by\s+", text.strip().lower())
    if len(parts) == 2:
        return Typed(
            form="size", first=_above_zero(parts[0], system), second=_above_zero(parts[1], system)
        )
    return Typed(form="length", first=_above_zero(text, system))


def _two(text: str, sign: str) -> tuple[str, str]:
    first, _, second = text.partition(sign)
    return first.strip(), second.strip()


def _above_zero(text: str, system: System) -> float:
    length = parse_length(text, system)
    if length <= 0:
        raise UnitError(tr("'{text}' must be more than nothing", text=text))
    return length


def parse_angle(text: str, north: float) -> float:
    """An angle or a bearing in degrees counter-clockwise from the right of the drawing. Raises UnitError."""
    from yardplan.yard.bearings import read_angle, read_bearing

    clockwise = read_bearing(text)
    return read_angle(text) if clockwise is None else _from_north(clockwise, north)


def _from_north(clockwise: float, north: float) -> float:
    """A direction counted clockwise from true north, counter-clockwise from the right of the drawing."""
    return (90 - clockwise - north) % 360


def parse_degrees(text: str) -> float:
    """A turn in degrees counter-clockwise: `45`, `-30°`, `22,5`, `45°30'`. Raises UnitError."""
    from yardplan.yard.bearings import read_angle

    try:
        return read_angle(text)
    except UnitError:
        raise UnitError(tr("'{typed}' is no number of degrees", typed=text)) from None


def place_typed(text: str, open_yard: OpenYard, origin: Point, here: Point) -> Point:
    """Where a typed entry puts what stood at `origin` and is shown at `here`. Raises UnitError."""
    entry = parse_typed(text, open_yard.units, north=open_yard.yard.site.north)
    if entry.form == "place":
        return (entry.first, entry.second)
    if entry.form == "angle":
        return polar(origin, entry.first, entry.second)
    if entry.form == "length":
        return along(origin, here, entry.first)
    raise UnitError(tr("Type one length, a length with an angle, or a place"))
