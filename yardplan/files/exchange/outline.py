"""Lot outlines that came from other formats, ready to be put into a yard."""

from __future__ import annotations

import math
from collections.abc import Iterable

from attrs import evolve, frozen

from yardplan.files.exchange.georeference import area
from yardplan.files.shape import RANGES
from yardplan.language import decimals, tr
from yardplan.yard import edits
from yardplan.yard.ground import Outline, Point
from yardplan.yard.origin_words import LOT_LINE
from yardplan.yard.site import Origin
from yardplan.yard.yard import Yard

#: Corners nearer than this to the one before are one corner, metres.
_SAME = 0.001
#: What a yard file can hold, and what a person can have meant: metres, and corners.
_FARTHEST, _NARROWEST, _MOST_CORNERS = RANGES["lot"].high, 0.5, 1000


class ExchangeError(Exception):
    """A file of another format that could not be read or written, in one line for a person."""


@frozen(kw_only=True)
class LotOutline:
    """A closed outline found in a file: corners in the drawing's metres, counter-clockwise.

    `latitude`, `longitude` are set where the outline lies elsewhere than the yard: then the drawing's
    (0, 0) is there, and the site has to be moved with it. `size` in square metres.
    `unit` metres to the drawing's unit as the file says; None where it says nothing.
    """

    name: str
    corners: Outline
    latitude: float | None = None
    longitude: float | None = None
    unit: float | None = None

    @property
    def size(self) -> float:
        """Area in square metres."""
        return abs(area(self.corners))

    @property
    def extent(self) -> tuple[float, float]:
        """Width and depth, metres."""
        xs, ys = [x for x, _ in self.corners], [y for _, y in self.corners]
        return max(xs) - min(xs), max(ys) - min(ys)


def scaled(outline: LotOutline, factor: float) -> LotOutline:
    """The outline with its corners that many times as far out: the file's unit was another."""
    return evolve(outline, corners=tuple((x * factor, y * factor) for x, y in outline.corners))


def fault_of(outline: LotOutline) -> str:
    """Why an outline cannot be a lot line, in words; empty where it can."""
    if max(abs(value) for corner in outline.corners for value in corner) > _FARTHEST:
        return tr("it reaches beyond {n} km: is the unit right?", n=f"{_FARTHEST / 1000:.0f}")
    if min(outline.extent) < _NARROWEST:
        return tr("it is less than {n} m across: is the unit right?", n=decimals(f"{_NARROWEST:g}"))
    if len(outline.corners) > _MOST_CORNERS:
        return tr("it has {n} corners, more than {most}", n=len(outline.corners), most=_MOST_CORNERS)
    return ""


def with_lot(yard: Yard, outline: LotOutline, file_name: str, *, move_site: bool = False) -> Yard:
    """The yard with the outline as its lot line, and with its place where the site moves there too."""
    changed = edits.set_lot(yard, outline.corners)
    if not move_site or outline.latitude is None or outline.longitude is None:
        return changed
    words = LOT_LINE.format(file=file_name)
    said = tuple(Origin(fact=fact, text=words) for fact in ("latitude", "longitude"))
    kept = tuple(one for one in yard.site.origins if one.fact not in {origin.fact for origin in said})
    return edits.set_site(
        changed, latitude=outline.latitude, longitude=outline.longitude, origins=(*kept, *said)
    )


def tidied(points: Iterable[Point]) -> Outline:
    """Corners without doubles and without the closing one, counter-clockwise."""
    kept: list[Point] = []
    for point in points:
        if not kept or math.dist(point, kept[-1]) > _SAME:
            kept.append(point)
    if len(kept) > 1 and math.dist(kept[0], kept[-1]) <= _SAME:
        kept.pop()
    corners = tuple(kept)
    return corners[::-1] if area(corners) < 0 else corners


def largest_first(found: Iterable[LotOutline]) -> tuple[LotOutline, ...]:
    """Outlines that enclose something, the largest first."""
    return tuple(sorted((o for o in found if len(o.corners) >= 3 and o.size > 0), key=lambda o: -o.size))
