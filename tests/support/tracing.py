"""Ray casting with embreex through trimesh: the reference against which shade is tested.

Meshes are built in true space from sizes alone, not from the program's own solids: upright crowns on a plane
z = gx x + gy y, walls that follow it, buildings that are level. One ray runs from each cell to the sun and is
started again behind each hit, so that every caster on it counts once; a ray that starts inside a caster meets
its back face, which counts too.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

import numpy as np
import trimesh
from attrs import frozen
from scipy.spatial import ConvexHull
from trimesh.ray.ray_pyembree import RayMeshIntersector

from yardplan.sun.casters import Crown
from yardplan.sun.grid import Grid

#: Corners of the polygon that stands for a circle, scaled up to the circle's area.
AROUND = 96
LEVELS = 48
_START = 1e-4
_BEHIND = 2e-4


@frozen(eq=False)
class Body:
    """A mesh (triangles (t, 3, 3), true space) and its light by month."""

    triangles: np.ndarray[Any, Any]
    light: tuple[float, ...]


def _ground(gradient: tuple[float, float], x: Any, y: Any) -> Any:
    return gradient[0] * np.asarray(x) + gradient[1] * np.asarray(y)


def _revolved(profile: np.ndarray[Any, Any]) -> np.ndarray[Any, Any]:
    """Triangles of a profile of (radius, height) points turned about the upright axis."""
    scale = math.sqrt(math.pi / (AROUND / 2 * math.sin(2 * math.pi / AROUND)))
    turn = np.arange(AROUND + 1) * 2 * math.pi / AROUND
    ring = np.stack([np.cos(turn), np.sin(turn)], axis=1) * scale
    points = np.concatenate(
        [profile[:, None, :1] * ring[None], np.repeat(profile[:, None, 1:], AROUND + 1, axis=1)], axis=2
    )
    a, b, c, d = points[:-1, :-1], points[:-1, 1:], points[1:, 1:], points[1:, :-1]
    faces = np.concatenate([np.stack([a, b, c], axis=2), np.stack([a, c, d], axis=2)]).reshape(-1, 3, 3)
    sides = np.linalg.norm(np.cross(faces[:, 1] - faces[:, 0], faces[:, 2] - faces[:, 0]), axis=1)
    return faces[sides > 1e-12]


def _profile(shape: str, r: float, base: float, top: float) -> np.ndarray[Any, Any]:
    turn = np.linspace(-math.pi / 2, math.pi / 2, LEVELS + 1)
    if shape == "ellipsoid":
        return np.stack([r * np.cos(turn), (top + base) / 2 + (top - base) / 2 * np.sin(turn)], axis=1)
    if shape == "dome":
        up = np.linspace(0, math.pi / 2, LEVELS + 1)
        round_part = np.stack([r * np.cos(up), base + (top - base) * np.sin(up)], axis=1)
        return np.concatenate([[[0.0, base]], round_part])
    corners = {
        "cylinder": [[0, base], [r, base], [r, top], [0, top]],
        "cone": [[0, base], [r, base], [0, top]],
        "vase": [[0, base], [r, top], [0, top]],
    }
    return np.array(corners[shape], dtype=float)


def crown_body(crown: Crown, gradient: tuple[float, float] = (0.0, 0.0)) -> Body:
    """The mesh of an upright crown."""
    triangles = _revolved(_profile(crown.shape, crown.radius, crown.base, crown.top))
    triangles = triangles + np.array([*crown.place, float(_ground(gradient, *crown.place))])
    return Body(triangles, crown.light)


def hull_body(corners: Sequence[Sequence[float]], light: tuple[float, ...]) -> Body:
    """The mesh of the convex hull of corners in true space."""
    points = np.array(corners, dtype=float)
    hull = ConvexHull(points)
    return Body(points[hull.simplices], light)


def wall_body(a: tuple[float, float], b: tuple[float, float], width: float, base: float, top: float,
              light: tuple[float, ...], gradient: tuple[float, float] = (0.0, 0.0)) -> Body:
    """A straight wall whose foot and top follow the ground."""
    along = np.subtract(b, a) / math.dist(a, b)
    side = np.array([-along[1], along[0]]) * width / 2
    ring = [np.add(a, side), np.add(b, side), np.subtract(b, side), np.subtract(a, side)]
    corners = [[*p, float(_ground(gradient, *p)) + z] for p in ring for z in (base, top)]
    return hull_body(corners, light)


class Tracer:
    """Casts rays against bodies, up to 63 of them."""

    def __init__(self, bodies: Sequence[Body]) -> None:
        self.bodies = bodies
        corners = np.concatenate([body.triangles for body in bodies]).reshape(-1, 3)
        mesh = trimesh.Trimesh(corners, np.arange(len(corners)).reshape(-1, 3), process=False)
        # The intersector's own scene tells the distance of each hit, which its public calls leave out.
        self.scene = RayMeshIntersector(mesh, scale_to_box=False)._scene
        self.owner = np.repeat(np.arange(len(bodies)), [len(body.triangles) for body in bodies])

    def light(
        self, origins: np.ndarray[Any, Any], direction: np.ndarray[Any, Any], month: int
    ) -> np.ndarray[Any, Any]:
        """Share of the beam that reaches each origin (n, 3) from a direction."""
        left = np.ones(len(origins))
        met = np.zeros(len(origins), dtype=np.uint64)
        active = np.arange(len(origins))
        at = origins + _START * direction
        share = np.array([body.light[month] for body in self.bodies])
        while len(active):
            vectors = np.tile(direction, (len(active), 1))
            found = self.scene.run(at, vectors, output=1)
            hit = found["primID"] >= 0
            active, at = active[hit], at[hit]
            owner = self.owner[found["primID"][hit]]
            bit = np.uint64(1) << owner.astype(np.uint64)
            fresh = (met[active] & bit) == 0
            met[active] |= bit
            left[active[fresh]] *= share[owner[fresh]]
            at = at + (found["tfar"][hit][:, None] + _BEHIND) * direction
            still = left[active] > 0.0
            active, at = active[still], at[still]
        return left


def hours_by_tracing(bodies: Sequence[Body], grid: Grid, directions: np.ndarray[Any, Any],
                     months: np.ndarray[Any, Any], weights: np.ndarray[Any, Any],
                     gradient: tuple[float, float] = (0.0, 0.0)) -> np.ndarray[Any, Any]:
    """Hours in each cell of a grid by casting one ray a cell and position."""
    tracer = Tracer(bodies)
    x, y = np.meshgrid(grid.xs, grid.ys)
    origins = np.stack([x.ravel(), y.ravel(), _ground(gradient, x, y).ravel()], axis=1)
    hours = np.zeros(len(origins))
    for direction, month, weight in zip(directions, months, weights, strict=True):
        hours += weight * tracer.light(origins, direction, int(month))
    return hours.reshape(grid.rows, grid.cols)
