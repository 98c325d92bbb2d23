"""Icons as line drawings on a grid of 24, drawn in the ink of the room they hang in."""

from __future__ import annotations

from functools import cache, lru_cache

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from yardplan.drawing.painting import painting
from yardplan.shipped import resource

#: Side of the grid the icons are drawn on.
GRID = 24
_DENSITIES = (1.0, 1.5, 2.0, 3.0)
#: What the drawings call the ink they are drawn in.
_INK = "currentColor"
#: How much of the ink a disabled icon keeps.
_DISABLED = 0.4


@cache
def icon_names() -> tuple[str, ...]:
    """Every icon there is."""
    return tuple(sorted(path.stem for path in resource("icons").glob("*.svg")))


@cache
def _source(name: str) -> str:
    path = resource("icons", f"{name}.svg")
    if not path.is_file():
        raise KeyError(f"there is no icon called {name}")
    return path.read_text(encoding="utf-8")


def paint_icon(painter: QPainter, name: str, box: QRectF, ink: QColor) -> None:
    """Draw an icon into a box. Raises KeyError when there is none of that name."""
    drawn = _source(name).replace(_INK, ink.name())
    painter.save()
    painter.setOpacity(painter.opacity() * ink.alphaF())
    QSvgRenderer(QByteArray(drawn.encode())).render(painter, box)
    painter.restore()


def _picture(name: str, ink: QColor, side: int, ratio: float) -> QPixmap:
    picture = QPixmap(QSize(round(side * ratio), round(side * ratio)))
    picture.setDevicePixelRatio(ratio)
    picture.fill(Qt.GlobalColor.transparent)
    with painting(picture) as painter:
        paint_icon(painter, name, QRectF(0, 0, side, side), ink)
    return picture


@lru_cache(maxsize=512)
def _icon(name: str, ink: str, side: int) -> QIcon:
    made = QIcon()
    pale = QColor(ink)
    pale.setAlphaF(_DISABLED)
    for ratio in _DENSITIES:
        made.addPixmap(_picture(name, QColor(ink), side, ratio))
        made.addPixmap(_picture(name, pale, side, ratio), QIcon.Mode.Disabled)
    return made


def icon(name: str, ink: QColor, side: int = GRID) -> QIcon:
    """An icon in the given ink, sharp on every screen; paler when its action is off.

    `side` in logical pixels. Ask again with another ink when the room turns dark. Raises KeyError when
    there is no icon of that name.
    """
    _source(name)
    return _icon(name, ink.name(), side)


def program_icon() -> QIcon:
    """The program's own icon at every size it comes in."""
    made = QIcon()
    drawn = resource("icon", "yardplan.svg").read_bytes()
    for side in (16, 24, 32, 48, 64, 128, 256):
        picture = QPixmap(side, side)
        picture.fill(Qt.GlobalColor.transparent)
        with painting(picture) as painter:
            QSvgRenderer(QByteArray(drawn)).render(painter, QRectF(0, 0, side, side))
        made.addPixmap(picture)
    return made
