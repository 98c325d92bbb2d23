"""Shadows as spans of cells row by row, by closed formulas: no pixel is tested.

A point at height z over (x, y) throws its shadow to (x, y) - z t, where t = s_xy / s_z and s is the sun's
direction with the ground made level (see sun.casters). A level disc of radius r becomes the ellipse with the
matrix r^2 J J^T, J = I + t gradient^T (the identity on level ground); an ellipsoid's outline has
S = r^2 J J^T + v^2 t t^T. The row of an ellipse at dy from its centre spans
(Sxy/Syy) dy +- sqrt(det S / Syy) sqrt(1 - dy^2/Syy). Cones, vases, cylinders and domes are hulls of such
ellipses and points, met along their common tangents.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from yardplan.sun.casters import Caster, Crown, Prism
from yardplan.sun.convex import Solid
from yardplan.sun.grid import Grid
from yardplan.sun.leaves import depths
from yardplan.sun.position import Floats
from yardplan.yard.ground import Point

Ints = NDArray[np.signedinteger[Any]]
#: Shapes narrower than this, square metres, would divide by nothing.
_THIN = 1e-12


@frozen(eq=False)
class Beams:
    """Shadow directions on ground made level: `t` (n, 2) shift per metre of height, `months` 0 to 11,
    and the ellipse of a unit disc's shadow `gxx`, `gxy`, `gyy` (n,)."""

    t: Floats
    months: Ints
    gxx: Floats
    gxy: Floats
    gyy: Floats

    def __len__(self) -> int:
        return len(self.t)

    def part(self, start: int, end: int) -> Beams:
        """Some of the beams in a row."""
        cut = slice(start, end)
        return Beams(self.t[cut], self.months[cut], self.gxx[cut], self.gxy[cut], self.gyy[cut])


def beams_of(directions: Floats, months: Ints, gradient: Point) -> Beams:
    """Beams for sun directions on the drawing (n, 3), which must stand above the slope."""
    g = np.array(gradient)
    t = directions[:, :2] / (directions[:, 2] - directions[:, :2] @ g)[:, None]
    j = np.eye(2) + t[:, :, None] * g
    shadow = j @ j.transpose(0, 2, 1)
    return Beams(t, months, shadow[:, 0, 0], shadow[:, 0, 1], shadow[:, 1, 1])


@frozen(eq=False)
class Spans:
    """Spans of cells: beam, row, first column, one past the last, depth; all flat and of one length."""

    beam: Ints
    row: Ints
    start: Ints
    end: Ints
    depth: NDArray[np.int32]

    def __len__(self) -> int:
        return len(self.beam)


@frozen(eq=False)
class _Items:
    """Ellipses flat over casters and beams: centre and the three figures of the row formula."""

    x: Floats
    y: Floats
    lean: Floats
    width: Floats
    syy: Floats

    def taken(self, index: Ints) -> _Items:
        """The ellipses of some items."""
        return _Items(self.x[index], self.y[index], self.lean[index], self.width[index], self.syy[index])


def _ellipse(x: Floats, y: Floats, sxx: Floats, sxy: Floats, syy: Floats) -> _Items:
    syy = np.maximum(syy, _THIN)
    return _Items(x, y, sxy / syy, np.sqrt(np.maximum(sxx * syy - sxy**2, 0.0) / syy), syy)


def _reach(items: _Items) -> Floats:
    return np.sqrt(items.syy)


def _row_of(items: _Items, y: Floats) -> tuple[Floats, Floats]:
    """Left and right of the ellipses on rows at y; left +inf and right -inf where a row misses."""
    dy = y - items.y
    inside = 1.0 - dy**2 / items.syy
    half = items.width * np.sqrt(np.maximum(inside, 0.0))
    middle = items.x + items.lean * dy
    miss = inside < 0.0
    return np.where(miss, np.inf, middle - half), np.where(miss, -np.inf, middle + half)


@frozen(eq=False)
class Segments:
    """Straight parts of outlines, flat over items: from (x0, y0) to (x1, y1)."""

    x0: Floats
    y0: Floats
    x1: Floats
    y1: Floats

    def at(self, index: Ints, y: Floats) -> tuple[Floats, Floats]:
        """x on rows at y, as left and right; empty where the part does not reach the row."""
        y0, y1 = self.y0[index], self.y1[index]
        rise = y1 - y0
        flat = np.abs(rise) < _THIN
        share = (y - y0) / np.where(flat, 1.0, rise)
        x = self.x0[index] + share * (self.x1[index] - self.x0[index])
        miss = flat | (share < 0.0) | (share > 1.0)
        return np.where(miss, np.inf, x), np.where(miss, -np.inf, x)


@frozen(eq=False)
class _Flat:
    """Crowns of one shape times beams, flattened crown by crown."""

    x: Floats
    y: Floats
    radius: Floats
    base: Floats
    top: Floats
    tx: Floats
    ty: Floats
    gxx: Floats
    gxy: Floats
    gyy: Floats

    def disc(self, height: Floats) -> _Items:
        """Shadow of the level disc at a height."""
        r2 = self.radius**2
        return _ellipse(
            self.x - height * self.tx, self.y - height * self.ty, r2 * self.gxx, r2 * self.gxy, r2 * self.gyy
        )

    def ball(self, middle: Floats, half: Floats) -> _Items:
        """Shadow of the ellipsoid of a half height about a middle height."""
        r2, v2 = self.radius**2, half**2
        return _ellipse(
            self.x - middle * self.tx, self.y - middle * self.ty,
            r2 * self.gxx + v2 * self.tx**2, r2 * self.gxy + v2 * self.tx * self.ty,
            r2 * self.gyy + v2 * self.ty**2,
        )


def _flat(crowns: Sequence[Crown], beams: Beams) -> _Flat:
    table = np.array([[*c.place, c.radius, c.base, c.top] for c in crowns])
    each = np.repeat(table, len(beams), axis=0).T
    turn = [np.tile(a, len(crowns)) for a in (*beams.t.T, beams.gxx, beams.gxy, beams.gyy)]
    return _Flat(*each, *turn)


#: An outline: lowest and highest y of each item, and a function (items, y) -> left, right.
RowRule = Callable[[Ints, Floats], tuple[Floats, Floats]]
Outlines = tuple[Floats, Floats, RowRule]


def _hull_rows(ellipses: Sequence[_Items], segments: Sequence[Segments]) -> RowRule:
    """Rows of a hull: the outermost of its ellipses and straight parts."""

    def rows(index: Ints, y: Floats) -> tuple[Floats, Floats]:
        left, right = _row_of(ellipses[0].taken(index), y)
        for ellipse in ellipses[1:]:
            low, high = _row_of(ellipse.taken(index), y)
            np.minimum(left, low, out=left)
            np.maximum(right, high, out=right)
        for part in segments:
            low, high = part.at(index, y)
            np.minimum(left, low, out=left)
            np.maximum(right, high, out=right)
        return left, right

    return rows


def _ellipsoids(flat: _Flat) -> Outlines:
    ball = flat.ball((flat.top + flat.base) / 2.0, (flat.top - flat.base) / 2.0)
    reach = _reach(ball)
    return ball.y - reach, ball.y + reach, lambda index, y: _row_of(ball.taken(index), y)


def _cylinders(flat: _Flat) -> Outlines:
    low, high = flat.disc(flat.base), flat.disc(flat.top)
    mx, my = high.x - low.x, high.y - low.y
    # Points of the ellipse whose tangent runs along the shift: S u / sqrt(u' S u), u across the shift.
    r2 = flat.radius**2
    ux, uy = -my, mx
    px, py = r2 * (flat.gxx * ux + flat.gxy * uy), r2 * (flat.gxy * ux + flat.gyy * uy)
    norm = np.sqrt(np.maximum(ux * px + uy * py, _THIN))
    px, py = px / norm, py / norm
    sides = [
        Segments(low.x + sign * px, low.y + sign * py, high.x + sign * px, high.y + sign * py)
        for sign in (1.0, -1.0)
    ]
    reach = _reach(low)
    bottom = np.minimum(low.y, high.y) - reach
    return bottom, np.maximum(low.y, high.y) + reach, _hull_rows([low, high], sides)


def _pointed(flat: _Flat, disc_at: Floats, tip_at: Floats) -> Outlines:
    """Hull of a disc's ellipse and a tip. Tangent points in the frame where the ellipse is a circle."""
    disc = flat.disc(disc_at)
    x, y = flat.x - tip_at * flat.tx, flat.y - tip_at * flat.ty
    l11 = flat.radius * np.sqrt(flat.gxx)
    l21 = flat.radius * flat.gxy / np.sqrt(flat.gxx)
    l22 = flat.radius * np.sqrt(np.maximum(flat.gyy - flat.gxy**2 / flat.gxx, _THIN))
    px = (x - disc.x) / l11
    py = (y - disc.y - l21 * px) / l22
    far = np.hypot(px, py)
    outside = far > 1.0
    far = np.where(outside, far, 1.0)
    along, across = 1.0 / far**2, np.sqrt(1.0 - 1.0 / far**2) / far
    sides = []
    for sign in (1.0, -1.0):
        qx, qy = along * px - sign * across * py, along * py + sign * across * px
        ex, ey = disc.x + l11 * qx, disc.y + l21 * qx + l22 * qy
        # A tip inside the ellipse adds nothing: its straight parts shrink to nothing.
        sides.append(Segments(ex, ey, np.where(outside, x, ex), np.where(outside, y, ey)))
    reach = _reach(disc)
    tip = np.where(outside, y, disc.y)
    return np.minimum(disc.y - reach, tip), np.maximum(disc.y + reach, tip), _hull_rows([disc], sides)


def _cones(flat: _Flat) -> Outlines:
    return _pointed(flat, flat.base, flat.top)


def _vases(flat: _Flat) -> Outlines:
    return _pointed(flat, flat.top, flat.base)


def _domes(flat: _Flat) -> Outlines:
    """The disc of the flat bottom and, beyond the chord between the common tangents, half the ellipsoid."""
    disc, ball = flat.disc(flat.base), flat.ball(flat.base, flat.top - flat.base)
    # The chord runs along S_disc u with u across the shift; the half beyond lies away from the sun.
    ex = -flat.gxx * flat.ty + flat.gxy * flat.tx
    ey = -flat.gxy * flat.ty + flat.gyy * flat.tx
    nx, ny = ey, -ex
    away = np.where(nx * -flat.tx + ny * -flat.ty >= 0.0, 1.0, -1.0)
    nx, ny = nx * away, ny * away

    def rows(index: Ints, y: Floats) -> tuple[Floats, Floats]:
        left, right = _row_of(disc.taken(index), y)
        low, high = _row_of(ball.taken(index), y)
        slope, rise = nx[index], ny[index] * (y - ball.y[index])
        upright = np.abs(slope) < _THIN
        limit = ball.x[index] - rise / np.where(upright, 1.0, slope)
        low = np.where(~upright & (slope > 0.0), np.maximum(low, limit), low)
        high = np.where(~upright & (slope < 0.0), np.minimum(high, limit), high)
        none = (low > high) | (upright & (rise < 0.0))
        return (
            np.minimum(left, np.where(none, np.inf, low)), np.maximum(right, np.where(none, -np.inf, high))
        )

    reach = np.maximum(_reach(disc), _reach(ball))
    return ball.y - reach, ball.y + reach, rows


_RULES: dict[str, Callable[[_Flat], Outlines]] = {
    "ellipsoid": _ellipsoids, "cylinder": _cylinders, "cone": _cones, "vase": _vases, "dome": _domes,
}


def expanded(first: Ints, counts: Ints) -> tuple[Ints, Ints]:
    """Item number and running number first, first + 1, ... of each item's `counts` rows, flat."""
    item = np.repeat(np.arange(len(first)), counts)
    offset = np.cumsum(counts) - counts
    return item, np.arange(len(item)) + (first - offset)[item]


def rows_between(bottom: Floats, top: Floats, grid: Grid) -> tuple[Ints, Ints]:
    """First row and number of rows whose centres lie between two heights of the drawing."""
    first = np.clip(np.ceil((bottom - grid.y0) / grid.cell - 0.5), 0, grid.rows).astype(np.int64)
    last = np.clip(np.floor((top - grid.y0) / grid.cell - 0.5) + 1, 0, grid.rows).astype(np.int64)
    return first, np.maximum(last - first, 0)


def columns_between(left: Floats, right: Floats, grid: Grid) -> tuple[Ints, Ints]:
    """First column and one past the last whose centres lie between left and right."""
    start = np.clip(np.ceil((left - grid.x0) / grid.cell - 0.5), 0, grid.cols)
    end = np.clip(np.floor((right - grid.x0) / grid.cell - 0.5) + 1, 0, grid.cols)
    return start.astype(np.int64), end.astype(np.int64)


def _spans(beam: Ints, row: Ints, left: Floats, right: Floats, depth: NDArray[np.int32], grid: Grid) -> Spans:
    start, end = columns_between(left, right, grid)
    keep = end > start
    return Spans(beam[keep], row[keep], start[keep], end[keep], depth[keep])


def crown_spans(crowns: Sequence[Crown], beams: Beams, grid: Grid) -> list[Spans]:
    """Spans of crowns, one set a shape."""
    found = []
    for shape, rule in _RULES.items():
        group = [c for c in crowns if c.shape == shape]
        if group:
            found.append(_shape_spans(group, rule, beams, grid))
    return found


def _shape_spans(
    group: Sequence[Crown], rule: Callable[[_Flat], Outlines], beams: Beams, grid: Grid
) -> Spans:
    bottom, top, rows = rule(_flat(group, beams))
    first, counts = rows_between(bottom, top, grid)
    item, row = expanded(first, counts)
    left, right = rows(item, grid.y0 + (row + 0.5) * grid.cell)
    depth = np.concatenate([depths(c.light)[beams.months] for c in group])
    return _spans(item % len(beams), row, left, right, depth[item], grid)


def prism_spans(prism: Prism, beams: Beams, grid: Grid) -> Spans:
    """Spans of a flat-faced solid: the hull of its corners' shadows, edge by edge."""
    left, right = _hull_sides(prism.solid, beams, grid)
    beam, row = np.nonzero(left <= right)
    depth = depths(prism.light)[beams.months]
    return _spans(beam, row, left[beam, row], right[beam, row], depth[beam], grid)


def shadow_corners(solid: Solid, beams: Beams) -> Floats:
    """Shadows of a solid's corners, (beams, corners, 2)."""
    return np.asarray(solid.corners[:, :2] - beams.t[:, None, :] * solid.corners[:, 2:])


def _hull_edges(points: Floats) -> tuple[Ints, Ints, Ints]:
    """Beam, from and to of the hull's edges, counter-clockwise: all other points lie on the left.

    Points on one line give the edge's parts as well, which cover the same rows once more.
    """
    step = points[:, None, :, :] - points[:, :, None, :]
    cross = step[:, :, :, None, 0] * step[:, :, None, :, 1] - step[:, :, :, None, 1] * step[:, :, None, :, 0]
    size = float(np.ptp(points, axis=1).max()) ** 2 + 1.0
    edge = np.all(cross >= -1e-12 * size, axis=3) & np.any(step != 0.0, axis=3)
    beam, start, end = np.nonzero(edge)
    return beam, start, end


def _hull_sides(solid: Solid, beams: Beams, grid: Grid) -> tuple[Floats, Floats]:
    """Left and right of the shadow on every row of every beam; +inf and -inf where there is none."""
    left = np.full((len(beams), grid.rows), np.inf)
    right = np.full((len(beams), grid.rows), -np.inf)
    if len(beams) == 0:
        return left, right
    points = shadow_corners(solid, beams)
    beam, start, end = _hull_edges(points)
    p, q = points[beam, start], points[beam, end]
    rise = q[:, 1] - p[:, 1]
    first, counts = rows_between(np.minimum(p[:, 1], q[:, 1]), np.maximum(p[:, 1], q[:, 1]), grid)
    counts[rise == 0.0] = 0
    slope = (q[:, 0] - p[:, 0]) / np.where(rise == 0.0, 1.0, rise)
    item, row = expanded(first, counts)
    x = p[item, 0] + (grid.y0 + (row + 0.5) * grid.cell - p[item, 1]) * slope[item]
    up = rise[item] > 0.0
    # Counter-clockwise, an edge that climbs is on the right and one that falls on the left.
    right[beam[item[up]], row[up]] = x[up]
    left[beam[item[~up]], row[~up]] = x[~up]
    return left, right


def spans_of(casters: Sequence[Caster], beams: Beams, grid: Grid) -> list[Spans]:
    """Spans of all casters, in a few sets."""
    crowns = [c for c in casters if isinstance(c, Crown)]
    return crown_spans(crowns, beams, grid) + [
        prism_spans(c, beams, grid) for c in casters if isinstance(c, Prism)
    ]
