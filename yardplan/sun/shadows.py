"""Shadows at one moment as outlines on the plan, for drawing."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime

import numpy as np
from attrs import frozen
from shapely.geometry import MultiPoint, MultiPolygon, Polygon
from shapely.ops import unary_union

from yardplan.sun.casters import Caster, Crown
from yardplan.sun.position import Floats, altitude_azimuth, refraction
from yardplan.sun.scene import OPEN, Scene, kept_from, on_drawing
from yardplan.sun.season import moment_position
from yardplan.sun.spans import Beams, beams_of
from yardplan.yard.ground import Point

#: Corners of the polygon drawn for a round outline.
_ROUND = 64


@frozen
class Shadow:
    """The shadow of one thing: its outline on the plan and the share of the beam let through."""

    owner: str
    outline: Polygon | MultiPolygon
    light: float


@frozen
class Moment:
    """The sun at a moment: altitude as seen (with refraction) and azimuth in degrees, and the shadows.

    `dark` is True when no sun reaches the yard: it is down, or behind the horizon or the slope.
    """

    at: datetime
    altitude: float
    azimuth: float
    dark: bool
    shadows: tuple[Shadow, ...]


def _ellipse(middle: Floats, half: Floats) -> Floats:
    """Corners of the ellipse {middle + half w}, |w| = 1; `half` is 2 x 2."""
    turn = np.arange(_ROUND) * 2.0 * np.pi / _ROUND
    return np.asarray(middle + np.column_stack([np.cos(turn), np.sin(turn)]) @ half.T)


@frozen(eq=False)
class _Cast:
    """One crown and one beam: where its discs and its ball throw their shadow."""

    crown: Crown
    t: Floats
    disc_half: Floats

    def disc(self, height: float) -> Floats:
        """Outline of the level disc at a height."""
        return _ellipse(np.array(self.crown.place) - height * self.t, self.crown.radius * self.disc_half)

    def tip(self, height: float) -> Floats:
        """Shadow of the point of the axis at a height."""
        return np.array([np.array(self.crown.place) - height * self.t])

    def ball(self, middle: float, half: float, *, away: bool = False) -> Floats:
        """Outline of the ellipsoid; `away` only its half beyond the middle, away from the sun."""
        square = self.crown.radius**2 * self.disc_half @ self.disc_half.T + half**2 * np.outer(self.t, self.t)
        outline = _ellipse(np.zeros(2), np.linalg.cholesky(square))
        if away:
            # The common tangents with the disc lie where the support across the shift is the same.
            disc = self.disc_half @ self.disc_half.T
            chord = disc @ np.array([-self.t[1], self.t[0]])
            side = np.array([chord[1], -chord[0]])
            side = side if side @ -self.t >= 0.0 else -side
            outline = outline[outline @ side >= 0.0]
        return np.asarray(outline + np.array(self.crown.place) - middle * self.t)


_OUTLINES: dict[str, Callable[[_Cast, Crown], Sequence[Floats]]] = {
    "ellipsoid": lambda cast, c: [cast.ball((c.top + c.base) / 2.0, (c.top - c.base) / 2.0)],
    "cylinder": lambda cast, c: [cast.disc(c.base), cast.disc(c.top)],
    "cone": lambda cast, c: [cast.disc(c.base), cast.tip(c.top)],
    "vase": lambda cast, c: [cast.disc(c.top), cast.tip(c.base)],
    "dome": lambda cast, c: [cast.disc(c.base), cast.ball(c.base, c.top - c.base, away=True)],
}


def outline_of(caster: Caster, beams: Beams, gradient: Point) -> Polygon:
    """The outline of a caster's shadow for the first of `beams`."""
    t = beams.t[0]
    if isinstance(caster, Crown):
        cast = _Cast(caster, t, np.eye(2) + np.outer(t, gradient))
        points = np.concatenate(_OUTLINES[caster.shape](cast, caster))
    else:
        points = caster.solid.corners[:, :2] - caster.solid.corners[:, 2:] * t
    hull = MultiPoint(points).convex_hull
    return hull if isinstance(hull, Polygon) else Polygon()


def _shadow(owner: str, parts: Sequence[Caster], beams: Beams, gradient: Point) -> Shadow | None:
    outlines = [outline_of(part, beams, gradient) for part in parts]
    whole = unary_union([outline for outline in outlines if not outline.is_empty])
    if not isinstance(whole, Polygon | MultiPolygon) or whole.is_empty:
        return None
    return Shadow(owner, whole, parts[0].light[int(beams.months[0])])


def shadows_at(scene: Scene, at: datetime) -> Moment:
    """The sun and all shadows at a moment (any time zone); no shadows where it is dark."""
    position = moment_position(at, scene.site)
    true, azimuth = altitude_azimuth(position.vectors)
    altitude = float(true[0] + refraction(true)[0])
    directions = on_drawing(position.vectors, scene.site.north)
    dark = altitude <= 0.0 or true[0] <= 0.0 or int(kept_from(scene, position)[0]) != OPEN
    if dark:
        return Moment(at, altitude, float(azimuth[0]), True, ())
    beams = beams_of(directions, position.months, scene.gradient)
    found = [_shadow(owner, parts, beams, scene.gradient) for owner, parts in scene.casters.items() if parts]
    shadows = tuple(shadow for shadow in found if shadow is not None)
    return Moment(at, altitude, float(azimuth[0]), False, shadows)
