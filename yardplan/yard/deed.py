"""A lot line from the calls of a deed: bearings and distances walked from a corner back to it.

The gap between the end of the walk and its beginning is the closing error. It is shared out by the compass
rule: each corner moves by the share of the way walked up to it (Ghilani, Elementary Surveying, traverse
computations). A gap too large for that is a wrong figure, and is told instead.
"""

from __future__ import annotations

import math
import re

from attrs import frozen

from yardplan.language import any_of, decimals, tr
from yardplan.units import FOOT, System, UnitError
from yardplan.yard.bearings import bearing_or_azimuth, split_call
from yardplan.yard.edges import crosses_itself
from yardplan.yard.ground import Outline, Point

#: A walk that misses its beginning by more than one part in so many of its length holds a slip, not an error
#: of measuring: common practice (old chain surveys closed within 1 in 300, recorded ones within 1 in 5,000).
COARSEST = 200
#: Less than this is the rounding of the figures themselves, metres.
CLOSED = 0.0005
#: The gap is told to lie along a call within this angle, degrees: common practice.
_ALONG = 5.0
_FEWEST = 3
#: What deeds say around the figures of a call.
_BEGIN = re.compile(r"^(?:\d+[.)]\s+)?(?:(?:and|then|thence|running)[\s,]+)*", re.IGNORECASE)
_BETWEEN = re.compile(r"[\s,]+(?:(?:for\s+)?a\s+distance\s+of|for|distance)\s+", re.IGNORECASE)
_END = re.compile(r"[\s,;.]+(?:to\s+(?:a|an|the|said)\s.*|more\s+or\s+less.*)?$", re.IGNORECASE)


@frozen
class Call:
    """One course: `length` metres towards `clockwise` degrees from north; `line` of the text it stands in."""

    length: float
    clockwise: float
    line: int = 0


@frozen
class Walk:
    """The corners walked to, `gap` from the beginning to the end of the walk, and the length of the way."""

    corners: Outline
    gap: Point
    way: float

    @property
    def error(self) -> float:
        """The closing error, metres."""
        return math.hypot(*self.gap)

    @property
    def one_in(self) -> float:
        """The way over the closing error: 5,000 for an error of one part in so many; inf where it closes."""
        return self.way / self.error if self.error > CLOSED else math.inf


class DeedError(ValueError):
    """What is wrong with the calls, in words for a person."""


def read_calls(text: str, system: System) -> tuple[Call, ...]:
    """The calls, one to a line: `N 45°30'15" E 100.50 ft`, `123°15'20" 36,58 m`, `80 ft < S 10 W`.

    An angle without letters counts clockwise from north; a length without a unit is in the yard's. Raises
    DeedError with the number of the line.
    """
    lines = [(number, line.strip()) for number, line in enumerate(text.splitlines(), 1) if line.strip()]
    return tuple(_read_call(number, line, system) for number, line in lines)


def _read_call(number: int, line: str, system: System) -> Call:
    plain = _END.sub("", _BETWEEN.sub(" ", _BEGIN.sub("", line)))
    try:
        found = split_call(re.sub(r"\s*[<∠@]\s*", " ", plain), system, bearing_or_azimuth)
    except UnitError as error:
        raise DeedError(tr("Line {number}: {why}", number=number, why=str(error))) from None
    if found is None:
        raise DeedError(tr(
            "Line {number}: '{line}' is no bearing with a distance: write for example N 45°30' E 100.50 ft",
            number=number, line=line if len(line) <= 40 else line[:40] + "…",
        ))
    return Call(*found, line=number)


def walk(calls: tuple[Call, ...], start: Point, north: float) -> Walk:
    """Walk the calls from a corner; true north lies `north` degrees clockwise from the drawing's up."""
    points = [start]
    for call in calls:
        turn = math.radians(call.clockwise + north)
        x, y = points[-1]
        points.append((x + call.length * math.sin(turn), y + call.length * math.cos(turn)))
    end = points.pop()
    way = sum(call.length for call in calls)
    return Walk(tuple(points), (end[0] - start[0], end[1] - start[1]), way)


def shared_out(calls: tuple[Call, ...], walked: Walk) -> Outline:
    """The corners with the closing error shared out by the compass rule."""
    corners, gone = [], 0.0
    for call, (x, y) in zip(calls, walked.corners, strict=True):
        share = gone / walked.way
        # To a millionth of a millimetre, as places typed one by one are kept.
        corners.append((round(x - walked.gap[0] * share, 9), round(y - walked.gap[1] * share, 9)))
        gone += call.length
    return tuple(corners)


def lot_of(
    calls: tuple[Call, ...], start: Point, north: float, system: System = "metric"
) -> tuple[Walk, Outline]:
    """The walk as the deed says it, and the closed lot line. Raises DeedError where there is none."""
    if len(calls) < _FEWEST:
        raise DeedError(
            tr("A lot line needs three calls or more, one to a line, the last back to the beginning")
        )
    walked = walk(calls, start, north)
    if walked.one_in < COARSEST:
        raise DeedError(_too_far(calls, walked, north, system))
    corners = shared_out(calls, walked)
    if crosses_itself(corners, closed=True):
        raise DeedError(
            tr("These calls make a line that crosses itself: look at their letters and their order")
        )
    return walked, corners


def fine_length(metres: float, system: System) -> str:
    """A length as deeds write it: feet or metres with decimals, to a millimetre or a hundredth of a foot."""
    return decimals(f"{metres / FOOT:.2f} ft" if system == "imperial" else f"{metres:.3f} m")


def _too_far(calls: tuple[Call, ...], walked: Walk, north: float, system: System) -> str:
    """That the calls do not close, and which of them a wrong length would explain."""
    error = fine_length(walked.error, system)
    toward = math.degrees(math.atan2(*walked.gap)) - north
    lines = [str(call.line) for call in calls if _off_line(toward - call.clockwise) <= _ALONG]
    if not lines:
        return tr("The walk ends {error} from its beginning, too far to share out: look for a wrong figure "
                  "or letter, or a call left out", error=error)
    return tr("The walk ends {error} from its beginning, too far to share out. A wrong length in line "
              "{lines}, or a call left out, would explain it", error=error, lines=any_of(lines))


def _off_line(degrees: float) -> float:
    """How far two directions are from lying along one line, 0 to 90 degrees."""
    return abs((degrees + 90) % 180 - 90)
