"""Pictures under the plan: scans, surveys, aerial photographs, faded beneath everything."""

from __future__ import annotations

import base64
from functools import lru_cache

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPointF, Qt
from PySide6.QtGui import QImage, QImageReader, QPainter

from yardplan.drawing.lettering import GROUND, draw_text, text_size
from yardplan.drawing.shapes import polyline
from yardplan.drawing.style import FINE, pen
from yardplan.drawing.view import PlanView
from yardplan.language import tr
from yardplan.yard import pictures
from yardplan.yard.ground import Picture

#: Pixels of a picture at most: more would fill the memory before it could be refused.
MOST_PIXELS = 60_000_000


def draw_pictures(painter: QPainter, view: PlanView) -> None:
    """Every picture of the yard; on paper those that shall be printed."""
    if not view.layers.pictures:
        return
    for picture in view.yard.pictures:
        wanted = picture.printed or not view.vector
        if wanted and view.draws(picture.id) and view.sees_points(pictures.corners(picture)):
            _draw(painter, view, picture)


def _draw(painter: QPainter, view: PlanView, picture: Picture) -> None:
    image = decoded(picture.data)
    if image is None:
        _draw_missing(painter, view, picture)
        return
    wide, high = (side * view.scale for side in pictures.size(picture))
    shown = _smaller(picture.data, round(wide * view.ratio)) if not view.vector else image
    painter.save()
    painter.setOpacity(picture.opacity)
    if view.only is not None:
        # Dragged, it is painted after what lies on it: as ink on ink it hides nothing.
        painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_Multiply)
    painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
    painter.translate(view.at(picture.base[0]))
    painter.rotate(-pictures.turn(picture))
    painter.scale(wide / shown.width(), high / shown.height())
    painter.drawImage(QPointF(0, -shown.height()), shown)
    painter.restore()


def _draw_missing(painter: QPainter, view: PlanView, picture: Picture) -> None:
    """A crossed frame where a picture cannot be read."""
    corners = view.corners(pictures.corners(picture))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen("muted", FINE, view.unit))
    painter.drawPath(polyline(corners, closed=True))
    painter.drawLine(corners[0], corners[2])
    painter.drawLine(corners[1], corners[3])
    words = tr("This picture is damaged and cannot be shown")
    wide, high = text_size(words, GROUND, view.unit)
    box = polyline(corners).boundingRect()
    box.moveTo(box.center() - QPointF(wide / 2, high / 2))
    draw_text(painter, view, box, words, GROUND)


@lru_cache(maxsize=4)
def decoded(data: str) -> QImage | None:
    """The picture of a base64 text, ready to be painted; None where it is damaged."""
    try:
        held = QByteArray(base64.b64decode(data, validate=True))
    except ValueError:
        return None
    buffer = QBuffer(held)
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    reader = QImageReader(buffer)
    size = reader.size()
    if not size.isValid() or size.width() * size.height() > MOST_PIXELS:
        return None
    image = reader.read()
    return None if image.isNull() else image.convertToFormat(QImage.Format.Format_RGB32)


@lru_cache(maxsize=4)
def _smaller(data: str, wide: int) -> QImage:
    """The picture at the size it is shown, so that it is painted fast; never larger than its own."""
    image = decoded(data)
    assert image is not None
    if wide >= image.width():
        return image
    return image.scaledToWidth(max(wide, 1), Qt.TransformationMode.SmoothTransformation)
