"""Where what is dragged leaves ink on the screen, so that a frame paints no more than that.

Every box is a little too large rather than too small: ink beyond would stay behind when the thing moves on.
"""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QRegion

from yardplan.window.canvas.snapping import Snapped
from yardplan.window.canvas.view import Bounds, View
from yardplan.window.tools.tool import Overlay

#: A thing's key, name and sizes stand within so many pixels of it, aside and above or below.
LABEL_ASIDE, LABEL_UP = 200.0, 60.0
#: Marks, grips and arrows reach so many pixels beyond their places.
MARK = 20.0
#: Words of a tool reach so many pixels from their place.
_TAG_ASIDE, _TAG_UP = 160.0, 24.0
#: Where more of the window than this share changes, all is painted again.
_MOST_SHARE = 0.7


def around(view: View, boxes: Iterable[Bounds], aside: float, up: float) -> list[QRectF]:
    """Boxes in metres as pixels, so many wider to each side."""
    corners = ((view.to_pixels((a, d)), view.to_pixels((c, b))) for a, b, c, d in boxes)
    return [QRectF(one, other).adjusted(-aside, -up, aside, up) for one, other in corners]


def overlay_boxes(view: View, overlay: Overlay, snapped: Snapped) -> list[QRectF]:
    """Where a tool's lines, grips and words stand."""
    places = [stroke.points for stroke in overlay.strokes] + [tuple(line) for line in snapped.guides]
    boxes = [_round(view, points, MARK, MARK) for points in places if points]
    boxes += [_round(view, (handle.place,), MARK, MARK) for handle in overlay.handles]
    boxes += [_round(view, (words.place,), _TAG_ASIDE, _TAG_UP) for words in overlay.words]
    if snapped.kind != "none":
        boxes.append(_round(view, (snapped.point,), _TAG_ASIDE, _TAG_UP))
    for disc in overlay.discs:
        radius = disc.radius * view.scale + MARK
        boxes.append(_round(view, (disc.centre,), radius, radius))
    return boxes


def _round(view: View, points: Iterable[tuple[float, float]], aside: float, up: float) -> QRectF:
    pixels = [view.to_pixels(point) for point in points]
    xs, ys = [place.x() for place in pixels], [place.y() for place in pixels]
    box = QRectF(QPointF(min(xs), min(ys)), QPointF(max(xs), max(ys)))
    return box.adjusted(-aside, -up, aside, up)


def region_of(boxes: Iterable[QRectF]) -> QRegion:
    """The whole pixels of the box round some boxes: a painter held to many pieces paints far slower."""
    whole = QRectF()
    for box in boxes:
        whole = whole.united(box)
    return QRegion(whole.toAlignedRect())


def worth_it(region: QRegion, view: View) -> bool:
    """True where painting this region alone saves work."""
    box = region.boundingRect()
    return box.width() * box.height() <= _MOST_SHARE * view.width * view.height
