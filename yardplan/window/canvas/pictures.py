"""Pictures kept of the sheet: the still part is painted once and shown again until it changes."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPixmap, QRegion

from yardplan.window.canvas.view import View

Paint = Callable[[QPainter, View], None]

#: The still picture reaches so far beyond the window on each side, as a share, so that a pan shows ground.
MARGIN = 0.25


class StillPicture:
    """A picture of the yard somewhat larger than the window; shifted by pans, stretched by zooms."""

    def __init__(self, ground: QColor | None = None) -> None:
        """`ground` fills it: an opaque picture is copied far faster than one that is laid over another."""
        self._ground = ground
        self._picture: QPixmap | None = None
        self._view = View()
        self.painted = 0
        #: Where there is ink, pixels of the picture; None: anywhere.
        self.inked: list[QRectF] | None = None
        self._news: QRegion | None = None

    def forget(self) -> None:
        """Something in it changed."""
        if self._picture is not None:
            self._news = None
        self._picture = None

    def news(self, view: View) -> QRegion | None:
        """Where it was painted since this was asked last, pixels of the window of a view; None: anywhere."""
        news, self._news = self._news, QRegion()
        if news is None or news.isEmpty():
            return news
        left, _, _, top = self._view.bounds
        corner = view.to_pixels((left, top))
        return news.translated(round(corner.x()), round(corner.y()))

    @property
    def empty(self) -> bool:
        """True when there is no picture to show."""
        return self._picture is None

    def fits(self, view: View) -> bool:
        """True when the picture was painted at this scale and covers the window."""
        if self._picture is None or self._view.scale != view.scale:
            return False
        left, bottom, right, top = view.bounds
        a, b, c, d = self._view.bounds
        return a <= left and b <= bottom and c >= right and d >= top

    def renew(self, view: View, ratio: float, paint: Paint) -> None:
        """Paint it for this view."""
        wide, tall = round(view.width * (1 + 2 * MARGIN)), round(view.height * (1 + 2 * MARGIN))
        # Even differences keep the middle on a whole pixel, so that lines stay as sharp as painted directly.
        self._view = view.sized(wide + (wide - view.width) % 2, tall + (tall - view.height) % 2)
        wiped, before = self._wiped(ratio), self.inked
        picture = wiped or _blank(self._view.width, self._view.height, ratio, self._ground)
        painter = QPainter(picture)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint(painter, self._view)
        painter.end()
        self._picture = picture
        self.painted += 1
        if wiped is None or self._news is None or before is None or self.inked is None:
            self._news = None
        else:
            for rect in (*before, *self.inked):
                self._news = self._news.united(rect.toAlignedRect())

    def _wiped(self, ratio: float) -> QPixmap | None:
        """The picture of before with its ink taken off, where it has the size wanted and little ink."""
        kept, size = self._picture, QSize(round(self._view.width * ratio), round(self._view.height * ratio))
        if kept is None or self.inked is None or self._ground is not None or kept.size() != size:
            return None
        painter = QPainter(kept)
        painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_Clear)
        for rect in self.inked:
            painter.fillRect(rect.toAlignedRect(), Qt.GlobalColor.transparent)
        painter.end()
        return kept

    @property
    def view(self) -> View:
        """The view it was painted for: larger than the window."""
        return self._view

    def patch(self, region: QRegion, paint: Callable[[QPainter], None]) -> None:
        """Clear a region of the picture and paint it again."""
        if self._picture is None:
            return
        painter = QPainter(self._picture)
        painter.setClipRegion(region)
        painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_Source)
        painter.fillRect(region.boundingRect(), self._ground or Qt.GlobalColor.transparent)
        painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_SourceOver)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint(painter)
        painter.end()
        if self._news is not None:
            self._news = self._news.united(region)

    def show(self, painter: QPainter, view: View) -> None:
        """Put the picture where it belongs in this view, stretched if the scale differs."""
        if self._picture is None:
            return
        left, _, _, top = self._view.bounds
        corner = view.to_pixels((left, top))
        if view.scale == self._view.scale:
            self._copy(painter, QPointF(round(corner.x()), round(corner.y())))
            return
        factor = view.scale / self._view.scale
        target = QRectF(corner.x(), corner.y(), self._view.width * factor, self._view.height * factor)
        painter.drawPixmap(target, self._picture, QRectF(self._picture.rect()))

    def inked_in(self, view: View) -> list[QRectF]:
        """Where there is ink, pixels of the window of a view; nothing where that is not told or not kept."""
        if self._picture is None or self.inked is None or view.scale != self._view.scale:
            return []
        left, _, _, top = self._view.bounds
        corner = view.to_pixels((left, top))
        return [box.translated(corner) for box in self.inked]

    def _copy(self, painter: QPainter, corner: QPointF) -> None:
        if self._picture is None:
            return
        if self.inked is None:
            painter.drawPixmap(corner, self._picture)
            return
        ratio = self._picture.devicePixelRatio()
        for rect in self.inked:
            whole = QRectF(rect.toAlignedRect())
            source = QRectF(whole.topLeft() * ratio, whole.size() * ratio)
            painter.drawPixmap(whole.translated(corner), self._picture, source)


class FixedPicture:
    """A picture as large as the window that does not move with the ground: the sheet's furniture."""

    def __init__(self) -> None:
        self._picture: QPixmap | None = None
        self._key: object = None

    def forget(self) -> None:
        """Something in it changed."""
        self._picture = None

    def show(
        self, painter: QPainter, key: object, view: View, ratio: float, parts: Sequence[QRectF],
        paint: Callable[[QPainter], None],
    ) -> None:
        """Put its `parts` on the screen, painted afresh when `key` differs from the last one."""
        if self._picture is None or key != self._key:
            picture = _blank(view.width, view.height, ratio)
            own = QPainter(picture)
            own.setRenderHint(QPainter.RenderHint.Antialiasing)
            paint(own)
            own.end()
            self._picture, self._key = picture, key
        for rect in parts:
            whole = QRectF(rect.toAlignedRect())
            source = QRectF(whole.topLeft() * ratio, whole.size() * ratio)
            painter.drawPixmap(whole, self._picture, source)


def _blank(width: int, height: int, ratio: float, ground: QColor | None = None) -> QPixmap:
    """An empty picture for a screen of that density, clear or filled."""
    size = QSize(round(width * ratio), round(height * ratio))
    if ground is None:
        picture = QPixmap(size)
        picture.fill(Qt.GlobalColor.transparent)
    else:
        filled = QImage(size, QImage.Format.Format_RGB32)
        filled.fill(ground)
        picture = QPixmap.fromImage(filled)
    picture.setDevicePixelRatio(ratio)
    return picture
