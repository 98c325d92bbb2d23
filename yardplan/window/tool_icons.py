"""Pictures for the tools, drawn with the pen of the plan: what the tool draws, small."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPainterPath, QPen, QPixmap, QPolygonF

#: Side of an icon in pixels; drawn at up to three times that for dense screens.
SIDE = 22
_DENSITIES = (1, 2, 3)


def tool_icon(name: str, ink: QColor) -> QIcon:
    """The picture of a tool in the ink of the room."""
    icon = QIcon()
    for density in _DENSITIES:
        picture = QPixmap(QSize(SIDE, SIDE) * density)
        picture.setDevicePixelRatio(density)
        picture.fill(Qt.GlobalColor.transparent)
        painter = QPainter(picture)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(_pen(ink))
        DRAWINGS[name](painter)
        painter.end()
        icon.addPixmap(picture)
    return icon


def _pen(ink: QColor, width: float = 1.4) -> QPen:
    pen = QPen(ink, width)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    return pen


def _line(painter: QPainter, *places: tuple[float, float]) -> None:
    painter.drawPolyline(QPolygonF([QPointF(x, y) for x, y in places]))


def _select(painter: QPainter) -> None:
    corners = ((6, 3), (17, 12.5), (11.5, 13), (14.5, 18.5), (12, 19.5), (9.5, 14), (6, 17.5))
    painter.drawPolygon(QPolygonF([QPointF(x, y) for x, y in corners]))


def _lot(painter: QPainter) -> None:
    pen = QPen(painter.pen())
    pen.setDashPattern([5, 2, 1, 2])
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    painter.setPen(pen)
    painter.drawRect(QRectF(2.5, 4.5, 17, 13))


def _building(painter: QPainter) -> None:
    painter.drawRect(QRectF(3, 5, 16, 12))
    _line(painter, (3, 11), (19, 11))
    painter.setPen(_pen(painter.pen().color(), 0.7))
    for x in (6, 10, 14):
        _line(painter, (x, 17), (x + 4, 11))


def _barrier(painter: QPainter) -> None:
    _line(painter, (2, 11), (20, 11))
    for x in (5, 11, 17):
        _line(painter, (x - 2, 9), (x + 2, 13))
        _line(painter, (x - 2, 13), (x + 2, 9))


def _paving(painter: QPainter) -> None:
    painter.drawRect(QRectF(3, 5, 16, 12))
    _line(painter, (3, 11), (19, 11))
    for x, top in ((9, 5), (14.5, 5), (6.5, 11), (12, 11)):
        _line(painter, (x, top), (x, top + 6))


def _bed(painter: QPainter) -> None:
    path = QPainterPath(QPointF(3, 12))
    path.cubicTo(3, 5, 10, 5, 13, 6)
    path.cubicTo(18, 7, 20, 9, 19, 13)
    path.cubicTo(18, 18, 5, 18, 3, 12)
    painter.drawPath(path)
    for x, y in ((7, 11), (10, 13.5), (12, 9.5), (15, 12.5)):
        painter.drawPoint(QPointF(x, y))


def _row(painter: QPainter) -> None:
    _line(painter, (2, 11), (20, 11))
    for x in (4.5, 11, 17.5):
        painter.drawEllipse(QPointF(x, 11), 2.6, 2.6)


def _plant(painter: QPainter) -> None:
    painter.drawEllipse(QPointF(11, 11), 8, 8)
    _line(painter, (11, 7.5), (11, 14.5))
    _line(painter, (7.5, 11), (14.5, 11))


def _pot(painter: QPainter) -> None:
    painter.drawRect(QRectF(4, 4, 14, 14))
    painter.drawEllipse(QPointF(11, 11), 4.5, 4.5)


def _tree(painter: QPainter) -> None:
    pen = QPen(painter.pen())
    pen.setDashPattern([2.5, 2])
    painter.setPen(pen)
    painter.drawEllipse(QPointF(11, 11), 8.5, 8.5)
    painter.setPen(_pen(pen.color()))
    for x, y in ((11, 5.5), (16, 9), (14, 15), (8, 15), (6, 9)):
        _line(painter, (11, 11), (x, y))


def _service(painter: QPainter) -> None:
    _line(painter, (2, 15), (9, 15), (13, 7), (20, 7))
    painter.drawEllipse(QPointF(9, 15), 1.8, 1.8)
    painter.drawEllipse(QPointF(13, 7), 1.8, 1.8)


def _gate(painter: QPainter) -> None:
    _line(painter, (2, 17), (6, 17))
    _line(painter, (16, 17), (20, 17))
    _line(painter, (6, 17), (6, 7))
    painter.drawArc(QRectF(-4, 7, 20, 20), 0, 90 * 16)


def _tape(painter: QPainter) -> None:
    _line(painter, (3, 16), (19, 6))
    _line(painter, (1.5, 13.5), (4.5, 18.5))
    _line(painter, (17.5, 3.5), (20.5, 8.5))
    for t in (0.3, 0.5, 0.7):
        x, y = 3 + 16 * t, 16 - 10 * t
        _line(painter, (x, y), (x + 1.1, y + 1.8))


def _note(painter: QPainter) -> None:
    _line(painter, (5.5, 18), (11, 4), (16.5, 18))
    _line(painter, (7.7, 13), (14.3, 13))


DRAWINGS: dict[str, Callable[[QPainter], None]] = {
    "select": _select, "lot": _lot, "building": _building, "barrier": _barrier, "paving": _paving,
    "bed": _bed, "row": _row, "plant": _plant, "pot": _pot, "tree": _tree, "service": _service, "gate": _gate,
    "tape": _tape, "note": _note,
}
