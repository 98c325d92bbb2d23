"""Pictures of tools and commands: line drawings of resources/icons in the ink of the room."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QGuiApplication, QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from yardplan.shipped import resource
from yardplan.window.theme import scaled

#: Side of an icon in pixels, grown with the text; drawn at twice that too where the screen is dense.
SIDE = 22


@lru_cache(maxsize=256)
def icon(name: str, ink: str) -> QIcon:
    """The picture of that name with `ink` (`#RRGGBB`) for its lines."""
    drawing = resource("icons", f"{name}.svg").read_text(encoding="utf-8").replace("currentColor", ink)
    renderer = QSvgRenderer(QByteArray(drawing.encode("utf-8")))
    made = QIcon()
    dense = QGuiApplication.primaryScreen().devicePixelRatio() > 1
    side = scaled(SIDE)
    for density in (1, 2) if dense else (1,):
        picture = QPixmap(QSize(side, side) * density)
        picture.fill(Qt.GlobalColor.transparent)
        painter = QPainter(picture)
        renderer.render(painter, QRectF(0, 0, side * density, side * density))
        painter.end()
        picture.setDevicePixelRatio(density)
        made.addPixmap(picture)
    return made


def program_icon() -> QIcon:
    """The program's own picture."""
    return QIcon(str(resource("icon", "yardplan.svg")))
