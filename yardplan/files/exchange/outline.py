"""Lot outlines that came from other formats, ready to be put into a yard."""

from __future__ import annotations

import math
from collections.abc import Iterable

from attrs import frozen

from yardplan.files.exchange.georeference import area
from yardplan.yard.ground import Outline, Point

#: Corners nearer than this to the one before are one corner, metres.
_SAME = 0.001


class ExchangeError(Exception):
    """A file of another format that could not be read or written, in one line for a person."""


@frozen(kw_only=True)
class LotOutline:
    """A closed outline found in a file: corners in the drawing's metres, counter-clockwise.

    `latitude`, `longitude` are set where the outline lies elsewhere than the yard: then the drawing's
    (0, 0) is there, and the site has to be moved with it. `size` in square metres.
    """

    name: str
    corners: Outline
    latitude: float | None = None
    longitude: float | None = None

    @property
    def size(self) -> float:
        """Area in square metres."""
        return abs(area(self.corners))


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
