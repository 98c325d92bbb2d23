"""A small drawing of a plan, with the marks of what is wrong and no words."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPixmap

from yardplan.care.outcome import Outcome
from yardplan.drawing.painter import draw_yard
from yardplan.drawing.style import colour, pen
from yardplan.drawing.view import Layers, PlanView, fitted

#: Style units of a small drawing: lines are drawn finer than on the sheet.
_UNIT = 0.5
_LAYERS = Layers(grid=False, labels=False, shadows=False, notes=False, partners=False)


def picture_of(outcome: Outcome, size: QSize, ratio: float) -> QPixmap:
    """The plan on its paper, `size` in pixels of the screen, `ratio` device pixels to one."""
    picture = QPixmap(size * ratio)
    picture.setDevicePixelRatio(ratio)
    picture.fill(colour("paper"))
    box = QRectF(0, 0, size.width(), size.height())
    bare = PlanView(
        yard=outcome.yard, stand=outcome.stand, scale=1.0, origin=(0.0, 0.0), unit=_UNIT, ratio=ratio,
        window=box, findings=outcome.found, units=outcome.yard.site.units, layers=_LAYERS,
    )
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    draw_yard(painter, fitted(bare, box.adjusted(4, 4, -4, -4), beyond=1.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen("rule", 1.0))
    painter.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5))
    painter.end()
    return picture
