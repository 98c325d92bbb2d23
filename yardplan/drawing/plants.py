"""Single plants and standing trees, stamped or painted at their places."""

from __future__ import annotations

import math

import numpy as np
from attrs import frozen
from numpy.typing import NDArray
from PySide6.QtGui import QPainter, QPixmap

from yardplan.drawing.habits import FORMS
from yardplan.drawing.sprites import BOOK
from yardplan.drawing.symbols import Look, draw_symbol
from yardplan.drawing.view import PlanView
from yardplan.plants.crop import Habit, Size
from yardplan.plants.stand import Stand, Standing
from yardplan.yard.ground import Point
from yardplan.yard.planting import Planting
from yardplan.yard.positions import chosen


def look_of(view: PlanView, plant: Standing) -> Look:
    """How a plant is drawn in this view."""
    thing = plant.thing
    habit = plant.size.habit
    turned = thing.facing if isinstance(thing, Planting) and FORMS[habit].turns else 0.0
    return Look(
        habit=habit,
        radius=plant.size.spread / 2 * view.scale,
        mature=plant.mature.spread / 2 * view.scale if view.layers.mature else 0.0,
        facing=turned,
        pot=plant.container.diameter * view.scale if plant.container else 0.0,
        standing=not plant.planted,
        unit=view.unit,
    )


def plain_look(view: PlanView, size: Size, facing: float = 0.0) -> Look:
    """How one plant of a row or bed is drawn: its size, facing `facing` degrees."""
    habit: Habit = size.habit
    return Look(habit=habit, radius=size.spread / 2 * view.scale, facing=facing, unit=view.unit)


def stamp(painter: QPainter, view: PlanView, place: Point, look: Look) -> None:
    """Draw one symbol at a place: stamped on the screen, painted on paper."""
    at = view.at(place)
    if not view.sees(at, look.reach):
        return
    picture = None if view.vector else BOOK.sprite(look, view.ratio)
    if picture is not None:
        half = picture.width() / view.ratio / 2
        painter.drawPixmap(round(at.x() - half), round(at.y() - half), picture)
        return
    painter.save()
    painter.translate(at)
    draw_symbol(painter, look)
    painter.restore()


@frozen(eq=False)
class _Prepared:
    """The stamps of one stand at one zoom, widest first, so that a pan only adds an offset."""

    stand: Stand
    setting: tuple[float, float, float, bool]
    ids: tuple[str, ...]
    plants: tuple[Standing, ...]
    pictures: tuple[QPixmap | None, ...]
    corners: NDArray[np.float64]
    halves: NDArray[np.float64]


_last: list[_Prepared] = []


def _prepared(view: PlanView) -> _Prepared:
    setting = (view.scale, view.unit, view.ratio, view.layers.mature)
    for kept in _last:
        if kept.stand is view.stand and kept.setting == setting:
            return kept
    made = _prepare(view, setting)
    _last.insert(0, made)
    del _last[2:]
    return made


def _prepare(view: PlanView, setting: tuple[float, float, float, bool]) -> _Prepared:
    plants = sorted(view.stand.plants, key=lambda p: (p.planted, -p.size.spread))
    looks: dict[tuple[object, ...], tuple[QPixmap | None, float]] = {}
    pictures: list[QPixmap | None] = []
    halves: list[float] = []
    for plant in plants:
        facing = plant.thing.facing if isinstance(plant.thing, Planting) else 0.0
        pot = plant.container.diameter if plant.container else 0.0
        size = plant.size
        sort = (size.habit, size.spread, plant.mature.spread, facing, pot, plant.planted)
        found = looks.get(sort)
        if found is None:
            look = look_of(view, plant)
            picture = BOOK.sprite(look, view.ratio)
            half = look.reach if picture is None else picture.width() / view.ratio / 2
            found = looks[sort] = (picture, half)
        pictures.append(found[0])
        halves.append(found[1])
    places = np.array([plant.place for plant in plants], dtype=float).reshape(-1, 2)
    radii: NDArray[np.float64] = np.array(halves, dtype=float)
    corners = places * np.array([view.scale, -view.scale]) - radii[:, None]
    return _Prepared(
        view.stand, setting, tuple(p.id for p in plants), tuple(plants), tuple(pictures), corners, radii
    )


def draw_single_plants(painter: QPainter, view: PlanView) -> None:
    """Every plant and standing tree of the view, widest first so that small ones stay in sight."""
    if view.vector or view.only is not None:
        _draw_one_by_one(painter, view)
        return
    ready = _prepared(view)
    if not ready.ids:
        return
    corners = ready.corners + view.origin
    seen = _seen(view, corners, ready.halves)
    spots = np.rint(corners).astype(int)[seen].tolist()
    without, blit = view.without, painter.drawPixmap
    for index, (x, y) in zip(seen.tolist(), spots, strict=True):
        picture = ready.pictures[index]
        if without and ready.ids[index] in without:
            continue
        if picture is not None:
            blit(x, y, picture)
        else:
            plant = ready.plants[index]
            stamp(painter, view, plant.place, look_of(view, plant))


def _seen(view: PlanView, corners: NDArray[np.float64], halves: NDArray[np.float64]) -> NDArray[np.intp]:
    """Indices of the stamps that touch the window."""
    if view.window is None:
        return np.arange(len(halves))
    window = view.window
    far = corners + 2 * halves[:, None]
    inside = (
        (far[:, 0] >= window.left()) & (corners[:, 0] <= window.right())
        & (far[:, 1] >= window.top()) & (corners[:, 1] <= window.bottom())
    )
    return np.flatnonzero(inside)


def _draw_one_by_one(painter: QPainter, view: PlanView) -> None:
    plants = view.stand.plants if view.only is None else chosen(view.stand.plants, view.only)
    drawn = (plant for plant in plants if view.draws(plant.id))
    for plant in sorted(drawn, key=lambda p: (p.planted, -p.size.spread)):
        if math.isfinite(plant.size.spread):
            stamp(painter, view, plant.place, look_of(view, plant))
