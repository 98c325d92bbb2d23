"""Pictures kept of the sheet: the still part is painted once and shown again until it changes."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import cast

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, QSizeF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPixmap, QRegion

from yardplan.window.canvas.view import View

Paint = Callable[[QPainter, View], None]

#: The still picture reaches so far beyond the window on each side, as a share, so that a pan shows ground.
MARGIN = 0.25
#: A picture is shifted by multiples of so many pixels: whole dots on screens of the usual densities.
_STEP = 20


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
        #: What came into it by a pan and is not painted yet, pixels of the picture.
        self.bare = QRegion()
        #: True once a pan moved it on: what it shows is right but its labels were placed for elsewhere.
        self.carried = False
        #: A picture of before that shows more ground: what lies behind where this one is bare.
        self._wide: tuple[QPixmap, View] | None = None

    def forget(self, *, behind: bool = True) -> None:
        """Something in it changed; `behind`: in the picture behind it too."""
        if behind:
            self._wide = None
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
        """True when the picture was painted for this scale and place and covers the window."""
        return not self.carried and self.covers(view)

    def at_scale(self, view: View) -> bool:
        """True when there is a picture and it has this scale."""
        return self._picture is not None and self._view.scale == view.scale

    def covers(self, view: View) -> bool:
        """True when the picture has this scale and reaches round the window."""
        if not self.at_scale(view):
            return False
        left, bottom, right, top = view.bounds
        a, b, c, d = self._view.bounds
        return a <= left and b <= bottom and c >= right and d >= top

    def renew(self, view: View, ratio: float, paint: Paint) -> None:
        """Paint it for this view."""
        wide, tall = round(view.width * (1 + 2 * MARGIN)), round(view.height * (1 + 2 * MARGIN))
        self._keep_wide(view)
        # Even differences keep the middle on a whole pixel, so that lines stay as sharp as painted directly.
        self._view = view.sized(wide + (wide - view.width) % 2, tall + (tall - view.height) % 2)
        wiped, before = self._wiped(ratio), self.inked
        picture = wiped or _blank(self._view.width, self._view.height, ratio, self._ground)
        painter = QPainter(picture)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint(painter, self._view)
        painter.end()
        self._picture = picture
        self.bare, self.carried = QRegion(), False
        self.painted += 1
        if wiped is None or self._news is None or before is None or self.inked is None:
            self._news = None
        else:
            for rect in (*before, *self.inked):
                self._news = self._news.united(rect.toAlignedRect())

    def _keep_wide(self, view: View) -> None:
        """Zoomed in, the picture of before stays behind the new one, unless one of more ground does."""
        if self._ground is None or self._picture is None or not self.bare.isEmpty():
            return
        more = self._wide is None or self._view.scale < self._wide[1].scale
        if more and self._view.scale < view.scale:
            self._wide, self._picture = (self._picture, self._view), None
        elif self._wide is not None and view.scale <= self._wide[1].scale:
            self._wide = None

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

    def patch(self, region: QRegion, paint: Callable[[QPainter], object]) -> None:
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

    def window_in(self, view: View) -> QRectF:
        """The window of a view of the same scale, pixels of the picture."""
        left, _, _, top = view.bounds
        return QRectF(self._view.to_pixels((left, top)), QSizeF(view.width, view.height))

    def carry(self, view: View) -> None:
        """Move it on so that the window of a view of the same scale is in its middle; what comes in is bare.

        It moves by whole dots, so that what was painted stays as sharp as it was.
        """
        picture, ratio = self._picture, 1.0 if self._picture is None else self._picture.devicePixelRatio()
        off = self.window_in(view).center() - QPointF(self._view.width / 2, self._view.height / 2)
        x, y = (round(way / _STEP) * _STEP for way in (off.x(), off.y()))
        if picture is None or not (x or y) or not (_STEP * ratio).is_integer():
            return
        self._view = self._view.panned(-x, -y)
        whole = QRect(0, 0, self._view.width, self._view.height)
        kept = whole.intersected(whole.translated(-x, -y))
        if not kept.isEmpty():
            picture.scroll(round(-x * ratio), round(-y * ratio), picture.rect())
        came = QRegion(whole).subtracted(QRegion(kept))
        self.bare = came.united(self.bare.translated(-x, -y).intersected(whole))
        self._news, self.carried = None, True
        self._clear(self.bare)

    def _clear(self, region: QRegion) -> None:
        """Bare paper, or nothing, in a region."""
        assert self._picture is not None
        painter = QPainter(self._picture)
        painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_Source)
        for rect in rects_of(region):
            painter.fillRect(rect, self._ground or Qt.GlobalColor.transparent)
        painter.setClipRegion(region)
        self._show_wide(painter, self._view)
        painter.end()

    def _show_wide(self, painter: QPainter, view: View) -> None:
        """The picture behind, stretched."""
        if self._wide is None:
            return
        picture, known = self._wide
        left, bottom, right, top = known.bounds
        target = QRectF(view.to_pixels((left, top)), view.to_pixels((right, bottom)))
        painter.drawPixmap(target, picture, QRectF(picture.rect()))

    def tell_wide(self, region: QRegion) -> None:
        """What was painted again in a region is copied, made smaller, to the picture behind."""
        if self._wide is None or self._picture is None:
            return
        picture, known = self._wide
        ratio = self._picture.devicePixelRatio()
        painter = QPainter(picture)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        for rect in rects_of(region.intersected(QRect(0, 0, self._view.width, self._view.height))):
            part = QRectF(rect)
            corner = known.to_pixels(self._view.to_metres(part.left(), part.top()))
            target = QRectF(corner, part.size() * (known.scale / self._view.scale))
            source = QRectF(part.topLeft() * ratio, part.size() * ratio)
            painter.drawPixmap(target, self._picture, source)
        painter.end()

    def show(self, painter: QPainter, view: View) -> None:
        """Put the picture where it belongs in this view, stretched if the scale differs."""
        if self._picture is None:
            return
        left, _, _, top = self._view.bounds
        corner = view.to_pixels((left, top))
        if view.scale == self._view.scale:
            self._copy(painter, QPointF(round(corner.x()), round(corner.y())))
            return
        factor, ratio = view.scale / self._view.scale, self._picture.devicePixelRatio()
        whole = QRectF(0, 0, self._view.width, self._view.height)
        if not QRectF(corner, whole.size() * factor).contains(QRectF(0, 0, view.width, view.height)):
            self._show_wide(painter, view)
        # Only where there is ink: to lay a large clear picture over another takes long.
        for part in [whole] if self.inked is None else [rect & whole for rect in self.inked]:
            target = QRectF(corner + part.topLeft() * factor, part.size() * factor)
            painter.drawPixmap(target, self._picture, QRectF(part.topLeft() * ratio, part.size() * ratio))

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
            self._renew(key, view, ratio, parts, paint)
        assert self._picture is not None
        for rect in parts:
            whole = QRectF(rect.toAlignedRect())
            source = QRectF(whole.topLeft() * ratio, whole.size() * ratio)
            painter.drawPixmap(whole, self._picture, source)

    def _renew(
        self, key: object, view: View, ratio: float, parts: Sequence[QRectF],
        paint: Callable[[QPainter], None],
    ) -> None:
        """Paint it afresh, on the picture of before where that has the size: only its parts are seen."""
        size = QSize(round(view.width * ratio), round(view.height * ratio))
        if self._picture is None or self._picture.size() != size:
            self._picture = _blank(view.width, view.height, ratio)
        own = QPainter(self._picture)
        own.setCompositionMode(QPainter.CompositionMode.CompositionMode_Source)
        for rect in parts:
            own.fillRect(rect.toAlignedRect(), Qt.GlobalColor.transparent)
        own.setCompositionMode(QPainter.CompositionMode.CompositionMode_SourceOver)
        own.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint(own)
        own.end()
        self._key = key


def rects_of(region: QRegion) -> list[QRect]:
    """The rectangles that a region is made of."""
    # PySide's own declarations do not know that a region can be gone through.
    return list(cast("Iterable[QRect]", region))


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
