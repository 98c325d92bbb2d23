"""A picture under the plan: where its corners lie, set to scale, turned. Metres, degrees turned left."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from attrs import evolve

from yardplan.language import decimals, tr
from yardplan.yard.edits import EditError, turned
from yardplan.yard.ground import Outline, Picture, Point

if TYPE_CHECKING:
    from collections.abc import Callable

#: Widths of the ground that a picture can show, metres.
NARROWEST, WIDEST = 0.5, 20_000.0


def size(picture: Picture) -> tuple[float, float]:
    """Width and height on the ground, metres."""
    wide = math.dist(*picture.base)
    return wide, wide * picture.pixels[1] / picture.pixels[0]


def corners(picture: Picture) -> Outline:
    """Its corners on the ground: lower left, lower right, upper right, upper left."""
    (ax, ay), (bx, by) = picture.base
    share = picture.pixels[1] / picture.pixels[0]
    up = (-(by - ay) * share, (bx - ax) * share)
    return ((ax, ay), (bx, by), (bx + up[0], by + up[1]), (ax + up[0], ay + up[1]))


def middle(picture: Picture) -> Point:
    """Its middle on the ground."""
    (ax, ay), _, (cx, cy), _ = corners(picture)
    return ((ax + cx) / 2, (ay + cy) / 2)


def turn(picture: Picture) -> float:
    """How far it is turned, degrees counter-clockwise from upright, above -180 and up to 180."""
    (ax, ay), (bx, by) = picture.base
    return math.degrees(math.atan2(by - ay, bx - ax))


def _by(picture: Picture, mapped: Callable[[Point], Point]) -> Picture:
    return evolve(picture, base=tuple(mapped(point) for point in picture.base))


def moved_to(picture: Picture, centre: Point) -> Picture:
    """The picture with its middle somewhere else."""
    x, y = middle(picture)
    dx, dy = centre[0] - x, centre[1] - y
    return _by(picture, lambda p: (p[0] + dx, p[1] + dy))


def turned_to(picture: Picture, degrees: float) -> Picture:
    """The picture turned about its middle."""
    about, by = middle(picture), degrees - turn(picture)
    return _by(picture, lambda p: turned(p, about, by))


def with_width(picture: Picture, width: float) -> Picture:
    """The picture so wide on the ground, its middle where it was. Raises EditError."""
    return _grown(picture, middle(picture), width / size(picture)[0])


def to_scale(picture: Picture, a: Point, b: Point, length: float) -> Picture:
    """The picture made larger or smaller so that what lies at `a` and `b` is `length` metres apart.

    What lies at `a` stays there. Raises EditError where that cannot be meant.
    """
    far = math.dist(a, b)
    if far < 1e-9:
        raise EditError(tr("The two places are one: click them farther apart"))
    if length <= 0:
        raise EditError(tr("The distance must be more than nothing"))
    return _grown(picture, a, length / far)


def _grown(picture: Picture, about: Point, factor: float) -> Picture:
    width = size(picture)[0] * factor
    if not NARROWEST <= width <= WIDEST:
        said = decimals(f"{width:.1f} m" if width < 1000 else f"{width / 1000:.0f} km")
        raise EditError(
            tr("With this distance the picture would be {width} wide: is the unit right?", width=said)
        )
    x, y = about
    return _by(picture, lambda p: (x + (p[0] - x) * factor, y + (p[1] - y) * factor))
