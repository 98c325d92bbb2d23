"""The season along the bottom: bloom, harvest, frost, and the day and hour that drive the shadows.

Plain records in, so that the chart knows nothing of how bloom is reckoned. Days are days of a common year,
1 for 1 January; a band that runs over the year's end has an end smaller than its start.
"""

from __future__ import annotations

from collections.abc import Sequence

from attrs import field, frozen
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QLinearGradient, QPainter, QPainterPath

from yardplan.drawing.lettering import Type, text_size
from yardplan.drawing.lettering import draw_text as draw_text_on
from yardplan.drawing.style import FINE, HAIR, MEDIUM, THIN, colour, pen
from yardplan.drawing.view import bare_view
from yardplan.language import day_month, month_name, tr, tr_n

YEAR = 365
MONTH_DAYS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
_STARTS = tuple(1 + sum(MONTH_DAYS[:i]) for i in range(12))

_HEAD = Type(11.0, "medium", ink="muted")
_KEY = Type(11.0, "bold")
_NAME = Type(11.0)
_FROST = Type(11.0, ink="caution", halo="paper")
_FLAG = Type(11.0, "medium", ink="paper")
_DAYS = Type(11.0, "medium", ink="caution", halo="paper")


@frozen
class Band:
    """Days of the year from `start` to `end`, with the day it is at its `full` where that is known.

    `error` days by which all of it may lie earlier or later.
    """

    start: float
    end: float
    full: float | None = None
    error: float = 0.0

    @property
    def with_error(self) -> Band:
        """The days over which it may lie."""
        return Band((self.start - self.error - 1) % YEAR + 1, (self.end + self.error - 1) % YEAR + 1)


@frozen(kw_only=True)
class SeasonRow:
    """One line of the chart: a plant, row or bed with its bands. `pale` where it is only an estimate.

    `shared` days in bloom with partners, in words.
    """

    thing: str
    name: str
    bloom: Band | None = None
    harvest: Band | None = None
    pale: bool = False
    shared: str = ""


@frozen
class FrostLine:
    """A day and what it means, e.g. "last frost, 5 years of 10". `before` True: frost lies before it."""

    day: float
    words: str
    before: bool = True


@frozen
class Together:
    """Days on which two rows of the chart (by thing) are in bloom together."""

    one: str
    other: str
    start: float
    end: float
    days: int


@frozen(kw_only=True)
class SeasonChart:
    """All that the chart shows. `hour` is clock time 0..24; `southern` starts the year in July."""

    rows: tuple[SeasonRow, ...] = ()
    frosts: tuple[FrostLine, ...] = ()
    together: tuple[Together, ...] = ()
    day: float | None = None
    hour: float | None = None
    southern: bool = False
    chosen: frozenset[str] = field(factory=frozenset)


def date_words(day: float) -> str:
    """A day of a common year in words: "24 April"."""
    number = int(round(day) - 1) % YEAR + 1
    month = max(i for i in range(12) if _STARTS[i] <= number)
    return day_month(month + 1, number - _STARTS[month] + 1)


def hour_words(hour: float) -> str:
    """A clock time: "15:20"."""
    minutes = round(hour * 60) % (24 * 60)
    return f"{minutes // 60}:{minutes % 60:02d}"


@frozen
class SeasonLayout:
    """Where everything of the chart lies. `box` in device pixels, `unit` device pixels per style unit.

    `aside` style units at the right for the words on partners, 0 for none; `vector` True on paper.
    """

    chart: SeasonChart
    box: QRectF
    unit: float = 1.0
    ratio: float = 1.0
    gutter: float = 150.0
    row_height: float = 18.0
    first: int = 0
    aside: float = 0.0
    vector: bool = False

    @property
    def field(self) -> QRectF:
        """The part under the month names and right of the plant names."""
        u = self.unit
        return self.box.adjusted(self.gutter * u, 20 * u, -(14 + self.aside) * u, -20 * u)

    @property
    def start(self) -> int:
        """The first day shown: 1 January, or 1 July in the south."""
        return _STARTS[6] if self.chart.southern else 1

    def x(self, day: float) -> float:
        """Device x of a day."""
        return self.field.left() + ((day - self.start) % YEAR) / YEAR * self.field.width()

    def day(self, x: float) -> float:
        """The day under a device x, within the year shown."""
        part = min(max((x - self.field.left()) / max(self.field.width(), 1.0), 0.0), 1.0 - 1e-9)
        return (self.start - 1 + part * YEAR) % YEAR + 1

    def y(self, row: int) -> float:
        """Device y of the middle of a row."""
        return self.field.top() + (row - self.first + 0.5) * self.row_height * self.unit

    @property
    def seen(self) -> range:
        """Rows that fit."""
        count = max(0, int(self.field.height() / (self.row_height * self.unit)))
        return range(self.first, min(self.first + count, len(self.chart.rows)))

    def row(self, y: float) -> int | None:
        """The row under a device y."""
        index = self.first + int((y - self.field.top()) // (self.row_height * self.unit))
        return index if index in self.seen and y >= self.field.top() else None

    def spans(self, band: Band) -> list[tuple[float, float]]:
        """Device x from and to of a band: two pieces where it runs over the edge of the year shown."""
        left, right = self.x(band.start), self.x(band.end)
        if right >= left:
            return [(left, right)]
        return [(left, self.field.right()), (self.field.left(), right)]


def draw_season(painter: QPainter, layout: SeasonLayout) -> None:
    """Draw the whole chart; its ground is the caller's."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _draw_frost(painter, layout)
    _draw_months(painter, layout)
    for index in layout.seen:
        _draw_row(painter, layout, index)
    if layout.aside:
        _draw_aside(painter, layout)
    _draw_frost_words(painter, layout)
    _draw_day(painter, layout)
    # Over the day's line, which would cross out the words.
    for together in layout.chart.together:
        _draw_together(painter, layout, together)
    painter.restore()


def _text(painter: QPainter, layout: SeasonLayout, x: float, y: float, text: str, face: Type) -> None:
    """Words with their left at x, centred on y."""
    high = text_size(text, face, layout.unit)[1]
    view = bare_view(layout.unit, layout.ratio, vector=layout.vector)
    draw_text_on(painter, view, QRectF(x, y - high / 2, 0, 0), text, face)


def _month_names(layout: SeasonLayout) -> tuple[str, ...]:
    """Names of the months in full; all cut to three letters, or to one, where one does not fit."""
    room = layout.field.width() / 12 - 4 * layout.unit
    whole = tuple(month_name(month) for month in range(1, 13))
    for letters in (None, 3):
        names = tuple(name[:letters] for name in whole)
        if all(text_size(name, _HEAD, layout.unit)[0] <= room for name in names):
            return names
    return tuple(name[:1] for name in whole)


def _draw_months(painter: QPainter, layout: SeasonLayout) -> None:
    box, u = layout.field, layout.unit
    for month, name in enumerate(_month_names(layout)):
        left = layout.x(_STARTS[month])
        painter.setPen(pen("rule", HAIR, u))
        painter.drawLine(QPointF(left, box.top()), QPointF(left, box.bottom()))
        middle = left + MONTH_DAYS[month] / YEAR * box.width() / 2
        _text(painter, layout, middle - text_size(name, _HEAD, u)[0] / 2, box.top() - 10 * u, name, _HEAD)
    painter.setPen(pen("rule", THIN, u))
    painter.drawLine(box.topLeft(), box.topRight())
    painter.drawLine(QPointF(box.right(), box.top()), box.bottomRight())


def _draw_frost(painter: QPainter, layout: SeasonLayout) -> None:
    """A cold wash that thins out towards the last frost and thickens after the first."""
    box = layout.field
    for line in layout.chart.frosts:
        x = layout.x(line.day)
        reach = 0.12 * box.width() * (-1 if line.before else 1)
        end = min(max(x + reach, box.left()), box.right())
        fade = QLinearGradient(QPointF(end, 0), QPointF(x, 0))
        fade.setColorAt(0.0, colour("frost", 0.0))
        fade.setColorAt(0.25, colour("frost"))
        fade.setColorAt(1.0, colour("frost"))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(fade)
        painter.drawRect(QRectF(QPointF(min(x, end), box.top()), QPointF(max(x, end), box.bottom())))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _draw_frost_words(painter: QPainter, layout: SeasonLayout) -> None:
    """Dashed lines, with their words at the foot."""
    box, u = layout.field, layout.unit
    for line in layout.chart.frosts:
        x = layout.x(line.day)
        painter.setPen(pen("caution", FINE, u, (4.0, 3.0)))
        painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom() + 6 * u))
    for words, place in frost_words(layout):
        _text(painter, layout, place.left(), place.center().y(), words, _FROST)


def frost_words(layout: SeasonLayout) -> list[tuple[str, QRectF]]:
    """What stands at the foot of the frost lines, and where: all the words, else dates, as far as they fit.

    Words stand on the cold side where they can, never under the names, on the flag or on each other.
    """
    lines = layout.chart.frosts
    whole = _placed(layout, [line.words for line in lines])
    return whole if len(whole) == len(lines) else _placed(layout, [date_words(line.day) for line in lines])


def _placed(layout: SeasonLayout, texts: Sequence[str]) -> list[tuple[str, QRectF]]:
    """The words of the frost lines that find a place, with it."""
    flag = flag_box(layout)
    taken = [] if flag is None else [flag]
    said: list[tuple[str, QRectF]] = []
    for line, words in zip(layout.chart.frosts, texts, strict=True):
        places = _frost_places(layout, line, words, flag)
        found = next((place for place in places if _frost_free(layout, place, taken)), None)
        if found is not None:
            said.append((words, found))
            taken.append(found)
    return said


def _frost_places(layout: SeasonLayout, line: FrostLine, words: str, flag: QRectF | None) -> list[QRectF]:
    """Beside the line on the cold side, or there beyond a flag in the way; beside it on the other side."""
    u, x = layout.unit, layout.x(line.day)
    wide, high = text_size(words, _FROST, u)
    before, after = x - 4 * u - wide, x + 4 * u
    lefts = [before if line.before else after]
    if flag is not None and line.before and flag.left() < x:
        lefts.append(min(before, flag.left() - 6 * u - wide))
    elif flag is not None and not line.before and flag.right() > x:
        lefts.append(max(after, flag.right() + 6 * u))
    lefts.append(after if line.before else before)
    top = layout.field.bottom() + 9 * u - high / 2
    return [QRectF(left, top, wide, high) for left in lefts]


def _frost_free(layout: SeasonLayout, place: QRectF, taken: Sequence[QRectF]) -> bool:
    u = layout.unit
    inside = layout.field.left() <= place.left() and place.right() <= layout.box.right() - 2 * u
    return inside and not any(place.adjusted(-4 * u, 0, 4 * u, 0).intersects(other) for other in taken)


def _draw_row(painter: QPainter, layout: SeasonLayout, index: int) -> None:
    row, y, u = layout.chart.rows[index], layout.y(index), layout.unit
    if row.thing in layout.chart.chosen:
        painter.fillRect(
            QRectF(layout.box.left(), y - 8.5 * u, layout.box.width(), 17 * u), colour("caution", 0.07)
        )
    left = layout.box.left() + 12 * u
    _text(painter, layout, left, y, row.thing, _KEY)
    after = left + max(text_size(row.thing, _KEY, u)[0], 22 * u) + 6 * u
    _text(painter, layout, after, y, _cut(row.name, layout.field.left() - after - 6 * u, u), _NAME)
    if row.bloom is not None:
        _draw_bloom(painter, layout, row, row.bloom, y)
    if row.harvest is not None:
        _draw_harvest(painter, layout, row.harvest, y, row.pale)


def _cut(text: str, room: float, unit: float, face: Type = _NAME) -> str:
    """The words, or as many letters as fit and an ellipsis."""
    if text_size(text, face, unit)[0] <= room:
        return text
    while text and text_size(text + "…", face, unit)[0] > room:
        text = text[:-1]
    return text.rstrip() + "…"


def _draw_bloom(painter: QPainter, layout: SeasonLayout, row: SeasonRow, band: Band, y: float) -> None:
    """A petal: it opens with the first flower, is widest at full bloom and closes at petal fall."""
    u = layout.unit
    _draw_error(painter, layout, band, y, "ink")
    painter.setPen(pen("muted" if row.pale else "ink", FINE, u, (3.0, 2.0) if row.pale else ()))
    for left, right in layout.spans(band):
        widest = layout.x(band.full) if band.full is not None else (left + right) / 2
        widest = min(max(widest, left), right)
        painter.setBrush(colour("paper"))
        painter.drawPath(_petal(left, widest, right, y, 6.2 * u))
    if band.full is not None:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour("muted" if row.pale else "ink"))
        painter.drawEllipse(QPointF(layout.x(band.full), y), 2.2 * u, 2.2 * u)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _draw_error(painter: QPainter, layout: SeasonLayout, band: Band, y: float, ink: str) -> None:
    """A pale bar over the days by which a band may lie earlier or later."""
    if not band.error:
        return
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(ink, 0.13))
    for left, right in layout.spans(band.with_error):
        painter.drawRoundedRect(
            QRectF(left, y - 3 * layout.unit, right - left, 6 * layout.unit), 3 * layout.unit, 3 * layout.unit
        )
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _draw_aside(painter: QPainter, layout: SeasonLayout) -> None:
    """The column of partners right of the year."""
    left = layout.field.right() + 12 * layout.unit
    _text(painter, layout, left, layout.field.top() - 10 * layout.unit, tr("in bloom together"), _HEAD)
    for index in layout.seen:
        _text(painter, layout, left, layout.y(index), layout.chart.rows[index].shared, _NAME)


def _petal(left: float, widest: float, right: float, y: float, half: float) -> QPainterPath:
    path = QPainterPath(QPointF(left, y))
    for side in (-1, 1):
        rise, fall = widest - left, right - widest
        top = QPointF(widest, y + side * half)
        if side < 0:
            path.cubicTo(QPointF(left + 0.25 * rise, top.y()), QPointF(widest - 0.3 * rise, top.y()), top)
            path.cubicTo(
                QPointF(widest + 0.3 * fall, top.y()), QPointF(right - 0.25 * fall, top.y()),
                QPointF(right, y),
            )
        else:
            path.cubicTo(QPointF(right - 0.25 * fall, top.y()), QPointF(widest + 0.3 * fall, top.y()), top)
            path.cubicTo(
                QPointF(widest - 0.3 * rise, top.y()), QPointF(left + 0.25 * rise, top.y()), QPointF(left, y)
            )
    path.closeSubpath()
    return path


def _draw_harvest(painter: QPainter, layout: SeasonLayout, band: Band, y: float, pale: bool) -> None:
    """A hatched bar."""
    u = layout.unit
    _draw_error(painter, layout, band, y, "leaf")
    for left, right in layout.spans(band):
        box = QRectF(left, y - 4.5 * u, max(right - left, 4 * u), 9 * u)
        painter.setPen(pen("leaf", FINE, u, (3.0, 2.0) if pale else ()))
        painter.setBrush(colour("clear"))
        painter.drawRoundedRect(box, 2 * u, 2 * u)
        painter.setPen(pen("leaf", HAIR, u))
        _hatch_box(painter, box, 4 * u)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _hatch_box(painter: QPainter, box: QRectF, gap: float) -> None:
    """Slanting lines cut to a box."""
    x = box.left() - box.height() + gap / 2
    while x < box.right():
        start, end = max(x, box.left()), min(x + box.height(), box.right())
        if end > start:
            foot = box.bottom() + x
            painter.drawLine(QPointF(start, foot - start), QPointF(end, foot - end))
        x += gap


def _draw_together(painter: QPainter, layout: SeasonLayout, together: Together) -> None:
    """A frame over the days two rows share, with the number of days beside it.

    Where one of the rows is scrolled away, the frame stands on the other alone and names it.
    """
    index = {row.thing: i for i, row in enumerate(layout.chart.rows)}
    pair = [t for t in (together.one, together.other) if t in index]
    rows = sorted(index[t] for t in pair if index[t] in layout.seen)
    if not rows or len(pair) < 2:
        return
    u, reach = layout.unit, layout.row_height / 2 - 1
    left, right = layout.x(together.start), layout.x(together.end)
    box = QRectF(QPointF(left, layout.y(rows[0]) - reach * u), QPointF(right, layout.y(rows[-1]) + reach * u))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen("caution", MEDIUM, u))
    painter.drawRoundedRect(box, 3 * u, 3 * u)
    hidden = next((layout.chart.rows[index[t]] for t in pair if index[t] not in layout.seen), None)
    words = tr_n("{n} day together", "{n} days together", together.days)
    if hidden is not None:
        words = tr("{days} with {thing} {name}", days=words, thing=hidden.thing, name=hidden.name)
    at, shown = _beside(layout, box, words)
    _text(painter, layout, at, (box.top() + box.bottom()) / 2, shown, _DAYS)


def _beside(layout: SeasonLayout, frame: QRectF, words: str) -> tuple[float, str]:
    """Where words on a frame begin: at its right, nearer where the chart ends, else at its left; else cut."""
    u, wide = layout.unit, text_size(words, _DAYS, layout.unit)[0]
    right = layout.box.right() - wide - 4 * u
    if right >= frame.right() + 6 * u:
        return min(frame.right() + 22 * u, right), words
    left = frame.left() - 6 * u - wide
    if left >= layout.field.left():
        return left, words
    at = frame.right() + 6 * u
    return at, _cut(words, layout.box.right() - at, u, _DAYS)


def _draw_day(painter: QPainter, layout: SeasonLayout) -> None:
    """The chosen day: a line, and a flag with day and hour at its foot."""
    chart, u = layout.chart, layout.unit
    if chart.day is None:
        return
    x, box = layout.x(chart.day), layout.field
    painter.setPen(pen("ink", MEDIUM, u))
    painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom() + 2 * u))
    flag = flag_box(layout)
    if flag is None:
        return
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour("ink"))
    painter.drawRoundedRect(flag, 3 * u, 3 * u)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    _text(painter, layout, flag.left() + 8 * u, flag.center().y(), _flag_words(chart), _FLAG)


def _flag_words(chart: SeasonChart) -> str:
    words = "" if chart.day is None else date_words(chart.day)
    return words + (f"  {hour_words(chart.hour)}" if chart.hour is not None else "")


def flag_box(layout: SeasonLayout) -> QRectF | None:
    """Where the flag of the chosen day stands; None without one."""
    if layout.chart.day is None:
        return None
    u = layout.unit
    wide, high = text_size(_flag_words(layout.chart), _FLAG, u)
    x = layout.x(layout.chart.day)
    left = max(x - wide / 2 - 8 * u, layout.field.left() - 8 * u)
    left = max(min(left, layout.box.right() - wide - 16 * u), layout.box.left())
    return QRectF(left, layout.field.bottom() + 1 * u, wide + 16 * u, high + 3 * u)


def height_for(rows: Sequence[SeasonRow], unit: float = 1.0, row_height: float = 18.0) -> float:
    """Device height that shows all rows."""
    return (40.0 + len(rows) * row_height) * unit
