"""Light that a plant would take from a point, over all places where the plant could stand.

A ray from a point at height z towards the sun passes height h at x + (h - z) t. A crown stands in its way
when its trunk stands in the crown's own shadow with the sun reversed: around x + (h - z) t, height by height,
of the part that rises above z. Level discs are ellipses r^2 J J^T as in sun.spans; a ball cut at height z is
its disc there and, beyond the chord between the two common tangents, the outline
S = r^2 J J^T + v^2 t t^T of the whole ball. Cylinders, cones and vases are hulls of two discs, a panel is
that of two rectangles.
On a slope the cut of ellipsoids is exact; that of the other solids is taken square to their trunk, which
differs a little for points at the height of the crown close beside it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import combinations

import numpy as np
from attrs import evolve, frozen

from yardplan.sun.casters import Caster, Crown, Prism
from yardplan.sun.grid import Grid
from yardplan.sun.leaves import DEPTH_UNIT, depths
from yardplan.sun.position import Floats
from yardplan.sun.rays import Rays as Cast
from yardplan.sun.rays import crown_columns, crown_hits
from yardplan.sun.spans import Ints, columns_between, expanded, rows_between

#: Narrower than this would divide by nothing, metres or square metres.
_THIN = 1e-12
#: Rays looked at in one go: a few MB.
_TOGETHER = 20_000


@frozen(eq=False)
class Rays:
    """Rays towards the sun, flat: start (x, y, z above the ground made level), shift `tx`, `ty` a metre of
    height, month 0 to 11, and the hours a day that each carries."""

    x: Floats
    y: Floats
    z: Floats
    tx: Floats
    ty: Floats
    month: Ints
    hours: Floats

    def __len__(self) -> int:
        return len(self.x)

    def taken(self, index: Ints | slice) -> Rays:
        """Some of them."""
        return Rays(
            self.x[index], self.y[index], self.z[index], self.tx[index], self.ty[index], self.month[index],
            self.hours[index],
        )

    def seen_from(self, place: tuple[float, float]) -> Rays:
        """The same with their starts as seen from a place."""
        x, y = place
        return self if x == y == 0.0 else evolve(self, x=self.x - x, y=self.y - y)


@frozen(eq=False)
class _Discs:
    """The ellipse of a unit disc's shadow for every ray: J J^T and its lower root."""

    gxx: Floats
    gxy: Floats
    gyy: Floats

    @classmethod
    def of(cls, rays: Rays, gradient: Gradient) -> _Discs:
        gx, gy = gradient
        a, b, c, d = 1.0 + rays.tx * gx, rays.tx * gy, rays.ty * gx, 1.0 + rays.ty * gy
        return cls(a * a + b * b, a * c + b * d, c * c + d * d)


Gradient = tuple[float, float]
#: Left and right of some items on rows at y; +inf and -inf where a row misses them.
Sides = Callable[[Ints, Floats], tuple[Floats, Floats]]
#: Lowest and highest y of each item, and its sides.
Outline = tuple[Floats, Floats, Sides]


def _ellipse_row(dy: Floats, sxx: Floats, sxy: Floats, syy: Floats) -> tuple[Floats, Floats]:
    """Left and right of an ellipse about (0, 0) at height dy."""
    syy = np.maximum(syy, _THIN)
    inside = 1.0 - dy**2 / syy
    half = np.sqrt(np.maximum(sxx - sxy**2 / syy, 0.0) * np.maximum(inside, 0.0))
    middle = sxy / syy * dy
    miss = inside < 0.0
    return np.where(miss, np.inf, middle - half), np.where(miss, -np.inf, middle + half)


def _segment_row(y: Floats, x0: Floats, y0: Floats, x1: Floats, y1: Floats) -> tuple[Floats, Floats]:
    """x of a straight part at height y, as left and right."""
    rise = y1 - y0
    flat = np.abs(rise) < _THIN
    share = (y - y0) / np.where(flat, 1.0, rise)
    x = x0 + share * (x1 - x0)
    miss = flat | (share < 0.0) | (share > 1.0)
    return np.where(miss, np.inf, x), np.where(miss, -np.inf, x)


def _wider(one: tuple[Floats, Floats], other: tuple[Floats, Floats]) -> tuple[Floats, Floats]:
    return np.minimum(one[0], other[0]), np.maximum(one[1], other[1])


@frozen(eq=False)
class _Cut:
    """A ball cut level with the ray's start: how far above its middle, the section there (middle x, y and
    matrix), and the vector v^2 t + r^2 J g of the half-plane beyond the chord."""

    above: Floats
    x: Floats
    y: Floats
    dxx: Floats
    dxy: Floats
    dyy: Floats
    nx: Floats
    ny: Floats


def _cut_ellipsoid(rays: Rays, crown: Crown, gradient: Gradient) -> _Cut:
    """On ground made level an ellipsoid on a slope is sheared: its section stays an ellipse, off its axis."""
    gx, gy = gradient
    r2, v2 = crown.radius**2, ((crown.top - crown.base) / 2.0) ** 2
    steep = gx * gx + gy * gy
    tall2 = v2 + r2 * steep
    above = np.maximum(rays.z - (crown.base + crown.top) / 2.0, -np.sqrt(tall2))
    size = np.maximum(1.0 - above**2 / tall2, 0.0) * r2
    off = above * r2 / tall2
    return _Cut(
        above, rays.x + off * gx, rays.y + off * gy,
        size * (1.0 - r2 * gx * gx / tall2), size * (-r2 * gx * gy / tall2),
        size * (1.0 - r2 * gy * gy / tall2),
        v2 * rays.tx + r2 * (gx + rays.tx * steep), v2 * rays.ty + r2 * (gy + rays.ty * steep),
    )


def _cut_dome(rays: Rays, g: _Discs, crown: Crown) -> _Cut:
    low = np.maximum(crown.base, rays.z)
    above, v2 = low - crown.base, (crown.top - crown.base) ** 2
    size = crown.radius**2 * np.maximum(1.0 - above**2 / v2, 0.0)
    x, y = rays.x + rays.tx * (low - rays.z), rays.y + rays.ty * (low - rays.z)
    return _Cut(
        above, x, y, size * g.gxx, size * g.gxy, size * g.gyy, v2 * rays.tx, v2 * rays.ty
    )


def _ball(rays: Rays, g: _Discs, crown: Crown, gradient: Gradient) -> Outline:
    """An ellipsoid, or a dome as the upper half of one, cut at the ray's start."""
    dome = crown.shape == "dome"
    cut = _cut_dome(rays, g, crown) if dome else _cut_ellipsoid(rays, crown, gradient)
    middle = crown.base if dome else (crown.base + crown.top) / 2.0
    r2, v2 = crown.radius**2, (crown.top - middle) ** 2
    bx, by = rays.x + rays.tx * (middle - rays.z), rays.y + rays.ty * (middle - rays.z)
    sxx, sxy, syy = (
        r2 * one + v2 * two for one, two in
        ((g.gxx, rays.tx**2), (g.gxy, rays.tx * rays.ty), (g.gyy, rays.ty**2))
    )
    # Points of the outline whose contact lies above the cut: S^-1 (v^2 t + r^2 J g) . y >= above.
    det = np.maximum(sxx * syy - sxy**2, _THIN)
    nx, ny = (syy * cut.nx - sxy * cut.ny) / det, (sxx * cut.ny - sxy * cut.nx) / det

    def sides(item: Ints, y: Floats) -> tuple[Floats, Floats]:
        left, right = _ellipse_row(y - by[item], sxx[item], sxy[item], syy[item])
        slope, rest = nx[item], cut.above[item] - ny[item] * (y - by[item])
        upright = np.abs(slope) < _THIN
        limit = rest / np.where(upright, 1.0, slope)
        left = np.where(~upright & (slope > 0.0), np.maximum(left, limit), left)
        right = np.where(~upright & (slope < 0.0), np.minimum(right, limit), right)
        none = (left > right) | (upright & (rest > 0.0))
        flat = _ellipse_row(y - cut.y[item], cut.dxx[item], cut.dxy[item], cut.dyy[item])
        return _wider(
            (np.where(none, np.inf, left + bx[item]), np.where(none, -np.inf, right + bx[item])),
            (flat[0] + cut.x[item], flat[1] + cut.x[item]),
        )

    tall, wide = np.sqrt(syy), np.sqrt(np.maximum(cut.dyy, 0.0))
    return np.minimum(by - tall, cut.y - wide), np.maximum(by + tall, cut.y + wide), sides


def _radii(crown: Crown, low: Floats) -> tuple[Floats, Floats]:
    """Radius of a cylinder, cone or vase at a height and at its top."""
    share = (low - crown.base) / (crown.top - crown.base)
    full = np.full(len(low), crown.radius)
    if crown.shape == "cone":
        return full * (1.0 - share), full * 0.0
    return (full * share, full) if crown.shape == "vase" else (full, full)


def _two_discs(rays: Rays, g: _Discs, crown: Crown) -> Outline:
    """The hull of the discs at the cut and at the top, with their common tangents."""
    low = np.maximum(crown.base, rays.z)
    r0, r1 = _radii(crown, low)
    x0, y0 = rays.x + rays.tx * (low - rays.z), rays.y + rays.ty * (low - rays.z)
    x1, y1 = rays.x + rays.tx * (crown.top - rays.z), rays.y + rays.ty * (crown.top - rays.z)
    # In the frame where the ellipses are circles: L L^T = J J^T.
    l11 = np.sqrt(g.gxx)
    l21 = g.gxy / l11
    l22 = np.sqrt(np.maximum(g.gyy - l21**2, _THIN))
    ex = (x1 - x0) / l11
    ey = (y1 - y0 - l21 * ex) / l22
    far = np.maximum(np.hypot(ex, ey), _THIN)
    lean = (r0 - r1) / far
    apart = np.abs(lean) < 1.0
    lean = np.where(apart, lean, 0.0)
    across = np.sqrt(1.0 - lean**2)
    tangents = []
    for sign in (1.0, -1.0):
        nx = (lean * ex - sign * across * ey) / far
        ny = (lean * ey + sign * across * ex) / far
        px, py = l11 * nx, l21 * nx + l22 * ny
        # One disc inside the other: the straight parts shrink to nothing.
        tangents.append(tuple(
            np.where(apart, value, 0.0) + np.where(apart, 0.0, other)
            for value, other in (
                (x0 + r0 * px, x0), (y0 + r0 * py, y0), (x1 + r1 * px, x0), (y1 + r1 * py, y0),
            )
        ))

    def sides(item: Ints, y: Floats) -> tuple[Floats, Floats]:
        found = np.full(len(item), np.inf), np.full(len(item), -np.inf)
        for cx, cy, r in ((x0, y0, r0), (x1, y1, r1)):
            r2 = r[item] ** 2
            left, right = _ellipse_row(y - cy[item], r2 * g.gxx[item], r2 * g.gxy[item], r2 * g.gyy[item])
            found = _wider(found, (left + cx[item], right + cx[item]))
        for part in tangents:
            found = _wider(found, _segment_row(y, *(value[item] for value in part)))
        return found

    tall0, tall1 = r0 * np.sqrt(g.gyy), r1 * np.sqrt(g.gyy)
    return np.minimum(y0 - tall0, y1 - tall1), np.maximum(y0 + tall0, y1 + tall1), sides


def _panel(rays: Rays, prism: Prism) -> Outline:
    """A flat-trained plant: the hull of its rectangle at the cut and at the top."""
    corners = prism.solid.corners
    base, top = float(corners[:, 2].min()), float(corners[:, 2].max())
    ring = corners[corners[:, 2] == base][:, :2]
    low = np.maximum(base, rays.z)
    xs, ys = [], []
    for height in (low, np.full(len(rays), top)):
        for x, y in ring:
            xs.append(rays.x + rays.tx * (height - rays.z) - x)
            ys.append(rays.y + rays.ty * (height - rays.z) - y)
    pairs = list(combinations(range(len(xs)), 2))

    def sides(item: Ints, y: Floats) -> tuple[Floats, Floats]:
        found = np.full(len(item), np.inf), np.full(len(item), -np.inf)
        for i, j in pairs:
            found = _wider(found, _segment_row(y, xs[i][item], ys[i][item], xs[j][item], ys[j][item]))
        return found

    return np.min(ys, axis=0), np.max(ys, axis=0), sides


def _outline(caster: Caster, rays: Rays, gradient: Gradient) -> Outline:
    if isinstance(caster, Prism):
        return _panel(rays, caster)
    discs = _Discs.of(rays, gradient)
    if caster.shape in ("ellipsoid", "dome"):
        return _ball(rays, discs, caster, gradient)
    return _two_discs(rays, discs, caster)


def _top(caster: Caster, gradient: Gradient) -> float:
    """Height above the ground made level up to which a caster rises; a round crown leans with the slope."""
    if not isinstance(caster, Crown):
        return float(caster.solid.corners[:, 2].max())
    if caster.shape != "ellipsoid":
        return caster.top
    middle = (caster.top + caster.base) / 2.0
    return middle + float(np.hypot(caster.top - middle, caster.radius * np.hypot(*gradient)))


def taken_by(casters: Sequence[Caster], rays: Rays, grid: Grid, gradient: Gradient) -> Floats:
    """Hours a day that a plant would take from the rays, (rows, cols), with its trunk at each cell's centre.

    `casters` are the plant's own, about a trunk at (0, 0); of things that move together, each where it stands
    as seen from their anchor, which then comes to lie at the cells.
    """
    found = np.zeros((grid.rows, grid.cols + 1))
    for caster in casters:
        aside = rays.seen_from(caster.place) if isinstance(caster, Crown) else rays
        dark = 1.0 - np.exp(depths(caster.light) * (-1.0 / DEPTH_UNIT))
        above = np.flatnonzero((rays.z < _top(caster, gradient)) & (rays.hours * dark[rays.month] > 0.0))
        for start in range(0, len(above), _TOGETHER):
            part = aside.taken(above[start : start + _TOGETHER])
            _add(found, _outline(caster, part, gradient), part.hours * dark[part.month], grid)
    taken: Floats = np.cumsum(found, axis=1)[:, :-1]
    return taken


def _add(found: Floats, outline: Outline, hours: Floats, grid: Grid) -> None:
    """Add hours where a span starts and take them off where it ends; the running sum fills it."""
    bottom, top, sides = outline
    first, counts = rows_between(bottom, top, grid)
    item, row = expanded(first, counts)
    left, right = sides(item, grid.y0 + (row + 0.5) * grid.cell)
    start, end = columns_between(left, right, grid)
    keep = end > start
    line, value = row[keep] * (grid.cols + 1), hours[item[keep]]
    size = found.size
    found += (
        np.bincount(line + start[keep], value, size) - np.bincount(line + end[keep], value, size)
    ).reshape(found.shape)


def is_exact(casters: Sequence[Caster], gradient: Gradient) -> bool:
    """True where `taken_by` tells exactly what rays cast one by one do."""
    level = gradient == (0.0, 0.0)
    return level or all(not isinstance(one, Crown) or one.shape == "ellipsoid" for one in casters)


def taken_at(casters: Sequence[Caster], rays: Rays, places: Floats, gradient: Gradient) -> Floats:
    """The same at single places (m, 2) by casting every ray: exact on any slope, and slower; crowns only."""
    found = np.zeros(len(places))
    directions = np.column_stack([rays.tx, rays.ty, np.ones(len(rays))])
    points = np.column_stack([rays.x, rays.y, rays.z])
    for caster in casters:
        if not isinstance(caster, Crown):
            continue
        hours = rays.hours * (1.0 - np.exp(depths(caster.light) * (-1.0 / DEPTH_UNIT)))[rays.month]
        columns = crown_columns([caster])
        for number, place in enumerate(places):
            shifted = points - np.array([*place, 0.0])
            hits = crown_hits(caster.shape, columns, Cast(shifted, directions, gradient))
            found[number] += hours[hits].sum()
    return found
