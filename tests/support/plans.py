"""Plans drawn by hand for the drawing tests: stands without the catalogue, pictures to look into."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from yardplan.drawing.painting import painting
from yardplan.drawing.style import PALETTE
from yardplan.drawing.view import PlanView
from yardplan.plants.crop import Habit, Size
from yardplan.plants.stand import Stand, Standing
from yardplan.yard.ground import Point, StandingTree
from yardplan.yard.planting import Planting, PlantKey
from yardplan.yard.yard import Yard


def size(spread: float, habit: Habit = "central leader") -> Size:
    """A crown of that spread."""
    return Size(spread=spread, height=spread, crown_base=0.5, habit=habit)


def standing(
    key: str, place: Point, spread: float = 3.0, habit: Habit = "central leader", *,
    mature: float | None = None, what: str = "apple:Liberty", **fields: Any,
) -> Standing:
    """A plant of the plan with its size."""
    thing = Planting(id=key, plant=PlantKey.parse(what), place=place, **fields)
    grown = size(spread if mature is None else mature, habit)
    return Standing(id=key, thing=thing, key=thing.plant, place=place, size=size(spread, habit), mature=grown)


def old_tree(key: str, place: Point, spread: float = 5.0, habit: Habit = "shade tree") -> Standing:
    """A tree that stands there already."""
    thing = StandingTree(id=key, kind="oak, northern red", place=place, height=9.0, spread=spread)
    grown = size(spread, habit)
    return Standing(id=key, thing=thing, key=None, place=place, size=grown, mature=grown, beyond_lot=True)


def view_of(*plants: Standing, width: float = 20.0, depth: float = 12.0, scale: float = 40.0,
            yard: Yard | None = None, **fields: Any) -> PlanView:
    """A view of a rectangular yard, its upper left corner at the picture's."""
    if yard is None:
        lot = ((0.0, 0.0), (width, 0.0), (width, depth), (0.0, depth))
        yard = Yard(
            lot=lot,
            plantings=tuple(p.thing for p in plants if isinstance(p.thing, Planting)),
            standing_trees=tuple(p.thing for p in plants if isinstance(p.thing, StandingTree)),
        )
    stand = fields.pop("stand", Stand(year=None, plants=plants))
    window = QRectF(0, 0, width * scale, depth * scale)
    return PlanView(yard=yard, stand=stand, scale=scale, origin=(0.0, depth * scale), window=window, **fields)


def picture(draw: Callable[[QPainter], None], width: float, height: float) -> NDArray[np.uint8]:
    """What `draw` paints on paper, as (height, width, 3) red, green, blue."""
    image = QImage(int(width), int(height), QImage.Format.Format_RGB888)
    image.fill(QColor(PALETTE.paper))
    with painting(image) as painter:
        draw(painter)
    flat = np.frombuffer(image.constBits(), dtype=np.uint8).reshape(image.height(), image.bytesPerLine())
    return flat[:, : image.width() * 3].reshape(image.height(), image.width(), 3).copy()


def plan_picture(draw: Callable[[QPainter, PlanView], None], view: PlanView) -> NDArray[np.uint8]:
    """A layer of a view, as an array of its window."""
    assert view.window is not None
    return picture(lambda painter: draw(painter, view), view.window.width(), view.window.height())


def inked(pixels: NDArray[np.uint8], least: int = 40) -> NDArray[np.bool_]:
    """Where a picture is clearly darker than paper."""
    paper = np.array(QColor(PALETTE.paper).getRgb()[:3])
    return np.asarray((paper - pixels.astype(int)).max(axis=2) > least)


def near(pixels: NDArray[np.uint8], colour: str, within: int = 40) -> NDArray[np.bool_]:
    """Where a picture is close to a colour `#RRGGBB`."""
    wanted = np.array(QColor(colour).getRgb()[:3])
    return np.asarray(np.abs(pixels.astype(int) - wanted).max(axis=2) <= within)
