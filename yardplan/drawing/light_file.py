"""The light over the ground as a picture file: plan, classes of hours, legend, scale, north."""

from __future__ import annotations

import os
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPointF, QRectF
from PySide6.QtGui import QGuiApplication, QImage, QImageWriter, QPainter

from yardplan.drawing.furniture import draw_north, draw_scale_bar
from yardplan.drawing.light_legend import draw_light_legend, legend_size, report_note
from yardplan.drawing.painter import draw_yard
from yardplan.drawing.style import colour
from yardplan.drawing.view import Layers, PlanView
from yardplan.plants.stand import Stand
from yardplan.sun.light import LightReport
from yardplan.yard.yard import Yard

#: Longer side of the plan and margin around it, pixels.
_PLAN, _MARGIN = 1400, 60


def _application() -> QGuiApplication:
    """The running application, or one without a screen: text needs one."""
    running = QGuiApplication.instance()
    if isinstance(running, QGuiApplication):
        return running
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    return QGuiApplication(["yardplan"])


def _view(yard: Yard, stand: Stand, report: LightReport) -> tuple[PlanView, float, float]:
    """The view of the field's ground, and the size of the plan in pixels."""
    x0, y0, x1, y1 = report.field.grid.bounds
    scale = _PLAN / max(x1 - x0, y1 - y0)
    wide, high = (x1 - x0) * scale, (y1 - y0) * scale
    view = PlanView(
        yard=yard, stand=stand, scale=scale, origin=(_MARGIN - x0 * scale, _MARGIN + y1 * scale),
        light=report.field, units=yard.site.units, layers=Layers(light=True, marks=False, partners=False),
        window=QRectF(0, 0, wide + 2 * _MARGIN, high + 2 * _MARGIN),
    )
    return view, wide, high


def light_image(yard: Yard, stand: Stand, report: LightReport) -> QImage:
    """The picture of a report's ground. Needs a QGuiApplication."""
    view, wide, high = _view(yard, stand, report)
    legend = legend_size(view, report_note(report))
    width = max(wide, legend[0]) + 2 * _MARGIN
    height = high + 2 * _MARGIN + legend[1] + _MARGIN / 2
    image = QImage(round(width), round(height), QImage.Format.Format_RGB32)
    image.fill(colour("paper"))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    draw_yard(painter, view)
    top = high + 1.5 * _MARGIN
    draw_light_legend(painter, view, QPointF(_MARGIN, top), report_note(report))
    if wide > legend[0] + 320:
        draw_scale_bar(painter, view, QPointF(_MARGIN + legend[0] + 40, top + legend[1] / 2))
        draw_north(painter, view, QPointF(_MARGIN + wide - 40, top + legend[1] / 2))
    painter.end()
    return image


def write_png(yard: Yard, stand: Stand, report: LightReport, path: str | Path) -> None:
    """Write the picture as PNG. Raises OSError where the file cannot be written."""
    application = _application()
    image = light_image(yard, stand, report)
    held = QByteArray()
    buffer = QBuffer(held)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    QImageWriter(buffer, QByteArray(b"png")).write(image)
    Path(path).write_bytes(held.data())
    del application
