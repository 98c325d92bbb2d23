"""Tables on paper: columns that wrap, the head again on every page, numbered pages."""

from __future__ import annotations

from collections.abc import Sequence

from attrs import evolve, frozen
from PySide6.QtCore import QRectF

from yardplan.drawing.breaking import broken
from yardplan.drawing.lettering import FACT, TITLE, Type, draw_text, text_size
from yardplan.drawing.style import FINE, HAIR, MEDIUM, UNIT_MM, mitred, pen
from yardplan.language import tr
from yardplan.sheets.document import Page
from yardplan.sheets.paper import Paper
from yardplan.sheets.surface import Surface

MARGIN = 14.0
_HEAD = Type(11.0, "bold")
_CELL = Type(11.5)
_KEY = Type(11.5, "bold")
#: Room on both sides of a column, and above and below a row, millimetres.
_PAD, _ROW_PAD = 1.4, 1.2
_TITLE_HIGH, _FOOT_HIGH, _NOTES_OFF = 13.0, 8.0, 3.0
#: Between two notes, millimetres.
_GAP = 0.8
#: Lines are broken for this many dots per millimetre; other surfaces differ by a rounding of type.
_MEASURE = 40.0


@frozen
class Column:
    """A column: its head, its share of the width, whether figures stand to the right, and its weight.

    In a column that is not `strong` as a whole, cells that say one of `strong_words` are.
    """

    head: str
    share: float
    right: bool = False
    strong: bool = False
    strong_words: frozenset[str] = frozenset()

    def face(self, cell: str) -> Type:
        """The type a cell is set in."""
        return _KEY if self.strong or cell in self.strong_words else _CELL


@frozen(kw_only=True)
class Table:
    """A table with its title and notes under it; the `lead` is read first and stands above."""

    title: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[str, ...], ...]
    lead: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()


@frozen
class _Line:
    """One row of a page: each cell's lines, and the row's height in millimetres."""

    cells: tuple[tuple[str, ...], ...]
    high: float


@frozen(eq=False)
class _Sheet:
    """What stands on one page: lines of the lead, rows, then lines of notes, each with the gap above it in
    millimetres."""

    rows: list[_Line]
    notes: list[tuple[float, str]]
    lead: list[tuple[float, str]]


def _line_high(face: Type) -> float:
    return text_size("N", face, UNIT_MM * _MEASURE)[1] / _MEASURE


class _Setter:
    """Breaks a table into lines and pages for one paper."""

    def __init__(self, table: Table, paper: Paper) -> None:
        self.table, self.paper = table, paper
        whole = sum(column.share for column in table.columns)
        room = paper.wide - 2 * MARGIN
        self.wides = [room * column.share / whole for column in table.columns]

    def line(self, cells: Sequence[str], head: bool = False) -> _Line:
        """Cells broken to their columns' widths."""
        cut = []
        for cell, wide, column in zip(cells, self.wides, self.table.columns, strict=True):
            face = _HEAD if head else column.face(cell)
            cut.append(tuple(broken(cell, (wide - 2 * _PAD) * _MEASURE * 0.98, face, UNIT_MM * _MEASURE)))
        deepest = max(len(lines) for lines in cut)
        return _Line(tuple(cut), deepest * _line_high(_HEAD if head else _CELL) + 2 * _ROW_PAD)

    def pages(self) -> list[_Sheet]:
        """Rows, then notes, laid out on pages; a row is never broken over two, a note only between lines."""
        head = self.line([column.head for column in self.table.columns], head=True)
        room = self.paper.high - 2 * MARGIN - _TITLE_HIGH - _FOOT_HIGH
        pages = [_Sheet([], [], self._broken(self.table.lead))]
        left = room - head.high - self.lead_high
        for row in self.table.rows:
            line = self.line(row)
            if line.high > left and pages[-1].rows:
                pages.append(_Sheet([], [], []))
                left = room - head.high
            pages[-1].rows.append(line)
            left -= line.high
        self._lay_notes(pages, left - _NOTES_OFF, room)
        return pages

    @property
    def lead_high(self) -> float:
        """Height of the lead with the gap under it, millimetres."""
        lines = self._broken(self.table.lead)
        return sum(gap + _line_high(FACT) for gap, _ in lines) + (_NOTES_OFF if lines else 0.0)

    def _broken(self, texts: Sequence[str]) -> list[tuple[float, str]]:
        """Texts as lines of the page's width, each with the gap above it."""
        wide = (self.paper.wide - 2 * MARGIN) * _MEASURE
        return [
            (_GAP if number == 0 else 0.0, line)
            for text in texts
            for number, line in enumerate(broken(text, wide, FACT, UNIT_MM * _MEASURE))
        ]

    def _lay_notes(self, pages: list[_Sheet], left: float, room: float) -> None:
        high = _line_high(FACT)
        for gap, text in self._broken(self.table.notes):
            if high + gap > left:
                pages.append(_Sheet([], [], []))
                left = room
            pages[-1].notes.append((gap, text))
            left -= high + gap


def table_pages(table: Table, paper: Paper, subtitle: str = "") -> tuple[Page, ...]:
    """Pages of a table on a paper; `subtitle` stands under the title on each."""
    setter = _Setter(table, paper)
    pages = setter.pages()
    return tuple(
        Page(paper, table.title if number == 0 else tr("{title}, page {n}", title=table.title, n=number + 1),
             _TablePage(setter, sheet, number, len(pages), subtitle))
        for number, sheet in enumerate(pages)
    )


class _TablePage:
    """Draws one page of a table."""

    def __init__(self, setter: _Setter, sheet: _Sheet, number: int, count: int, subtitle: str) -> None:
        self.setter, self.sheet = setter, sheet
        self.number, self.count, self.subtitle = number, count, subtitle

    def __call__(self, surface: Surface) -> None:
        table, paper = self.setter.table, self.setter.paper
        draw_page_title(surface, table.title, self.subtitle)
        y = self._lines(surface, MARGIN + _TITLE_HIGH, self.sheet.lead)
        y += _NOTES_OFF if self.sheet.lead else 0.0
        if self.sheet.rows:
            head = self.setter.line([column.head for column in table.columns], head=True)
            self._rule(surface, y, MEDIUM)
            y = self._row(surface, head, y, head=True)
            self._rule(surface, y, FINE)
            for line in self.sheet.rows:
                y = self._row(surface, line, y)
                self._rule(surface, y, HAIR)
            y += _NOTES_OFF
        self._lines(surface, y, self.sheet.notes)
        foot = tr("page {n} of {count}", n=self.number + 1, count=self.count) if self.count > 1 else ""
        draw_foot(surface, paper, foot)

    def _lines(self, surface: Surface, y: float, lines: Sequence[tuple[float, str]]) -> float:
        """Draw lines of words; returns where the next begins."""
        for gap, text in lines:
            y += gap
            put(surface, MARGIN, y, text, FACT)
            y += _line_high(FACT)
        return y

    def _rule(self, surface: Surface, y: float, weight: float) -> None:
        surface.painter.setPen(mitred(pen("ink" if weight > HAIR else "rule", weight, surface.unit)))
        surface.painter.drawLine(
            surface.point(MARGIN, y), surface.point(self.setter.paper.wide - MARGIN, y)
        )

    def _row(self, surface: Surface, line: _Line, y: float, head: bool = False) -> float:
        """Draw one row; returns where the next begins."""
        x = MARGIN
        for lines, wide, column in zip(line.cells, self.setter.wides, self.setter.table.columns, strict=True):
            face = _HEAD if head else column.face(" ".join(lines))
            high = _line_high(_HEAD if head else _CELL)
            for i, text in enumerate(lines):
                left = x + _PAD
                if column.right:
                    left = x + wide - _PAD - text_size(text, face, surface.unit)[0] / surface.dots
                put(surface, left, y + _ROW_PAD + i * high, text, face)
            x += wide
        return y + line.high


def put(surface: Surface, x: float, y: float, text: str, face: Type) -> None:
    """Words with their upper left corner at a place in millimetres."""
    corner = surface.point(x, y)
    draw_text(surface.painter, surface.lettering, QRectF(corner, corner), text, evolve(face, halo=""))


def draw_page_title(surface: Surface, title: str, subtitle: str) -> None:
    """Title and subtitle at the top of a page of words."""
    put(surface, MARGIN, MARGIN - 2.0, title, evolve(TITLE, size=17.0))
    put(surface, MARGIN, MARGIN + 4.8, subtitle, FACT)


def draw_foot(surface: Surface, paper: Paper, words: str) -> None:
    """Words at the foot of a page, to the right."""
    if words:
        wide = text_size(words, FACT, surface.unit)[0] / surface.dots
        put(surface, paper.wide - MARGIN - wide, paper.high - MARGIN + 1.0, words, FACT)


