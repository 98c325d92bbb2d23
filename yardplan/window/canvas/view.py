"""Where the sheet is looked at from: metres to pixels and back, zoom about a point, pan, fit."""

from __future__ import annotations

from attrs import evolve, frozen
from PySide6.QtCore import QPointF
from PySide6.QtGui import QTransform

from yardplan.yard.ground import Point

#: Pixels per metre between which one can zoom: a whole farm on the screen to a hand's breadth.
MIN_SCALE, MAX_SCALE = 0.5, 2000.0
#: One notch of the wheel.
NOTCH = 1.2
#: At most so many notches count in one event, so that a fling does not throw the view away.
MAX_NOTCHES = 4.0

#: (left, bottom, right, top) in metres.
Bounds = tuple[float, float, float, float]


@frozen
class View:
    """`scale` pixels per metre, `centre` the place in metres in the middle of `width` x `height` pixels."""

    scale: float = 20.0
    centre: Point = (0.0, 0.0)
    width: int = 800
    height: int = 600

    def to_pixels(self, place: Point) -> QPointF:
        """Where a place is drawn."""
        return QPointF(
            (place[0] - self.centre[0]) * self.scale + self.width / 2,
            (self.centre[1] - place[1]) * self.scale + self.height / 2,
        )

    def to_metres(self, x: float, y: float) -> Point:
        """The place under a pixel."""
        return (
            (x - self.width / 2) / self.scale + self.centre[0],
            self.centre[1] - (y - self.height / 2) / self.scale,
        )

    @property
    def transform(self) -> QTransform:
        """Metres (y up) to pixels (y down)."""
        s = self.scale
        return QTransform(
            s, 0, 0, -s, self.width / 2 - self.centre[0] * s, self.height / 2 + self.centre[1] * s
        )

    @property
    def bounds(self) -> Bounds:
        """What is in view, metres."""
        left, top = self.to_metres(0, 0)
        right, bottom = self.to_metres(self.width, self.height)
        return (left, bottom, right, top)

    def sized(self, width: int, height: int) -> View:
        """The same place in a window of another size."""
        return evolve(self, width=max(width, 1), height=max(height, 1))

    def zoomed(self, factor: float, x: float, y: float) -> View:
        """Zoomed by a factor with the place under the pixel staying where it is."""
        scale = min(max(self.scale * factor, MIN_SCALE), MAX_SCALE)
        under = self.to_metres(x, y)
        centre = (
            under[0] - (x - self.width / 2) / scale,
            under[1] + (y - self.height / 2) / scale,
        )
        return evolve(self, scale=scale, centre=centre)

    def panned(self, dx: float, dy: float) -> View:
        """Shifted so that the drawing moves by (dx, dy) pixels."""
        return evolve(
            self, centre=(self.centre[0] - dx / self.scale, self.centre[1] + dy / self.scale)
        )

    def at_scale(self, scale: float) -> View:
        """Another scale about the middle of the window."""
        return evolve(self, scale=min(max(scale, MIN_SCALE), MAX_SCALE))

    def fitted(self, bounds: Bounds, margin: float = 48) -> View:
        """All of `bounds` in view with a margin in pixels; an empty yard shows 30 m by 20 m."""
        left, bottom, right, top = bounds
        wide, tall = max(right - left, 1.0), max(top - bottom, 1.0)
        room_x, room_y = max(self.width - 2 * margin, 50), max(self.height - 2 * margin, 50)
        scale = min(max(min(room_x / wide, room_y / tall), MIN_SCALE), MAX_SCALE)
        return evolve(self, scale=scale, centre=((left + right) / 2, (bottom + top) / 2))

    def showing(self, bounds: Bounds, margin: float = 60) -> View:
        """This view if it shows the bounds already, else moved (and zoomed out if need be) to show them."""
        left, bottom, right, top = bounds
        a, b = self.to_pixels((left, top)), self.to_pixels((right, bottom))
        inside = (
            margin <= a.x() and b.x() <= self.width - margin
            and margin <= a.y() and b.y() <= self.height - margin
        )
        if inside:
            return self
        if b.x() - a.x() > self.width - 2 * margin or b.y() - a.y() > self.height - 2 * margin:
            return self.fitted(bounds, margin)
        return evolve(self, centre=((left + right) / 2, (bottom + top) / 2))


def bounds_of(points: tuple[Point, ...]) -> Bounds | None:
    """The smallest upright rectangle round some points, or None for none."""
    if not points:
        return None
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return (min(xs), min(ys), max(xs), max(ys))
