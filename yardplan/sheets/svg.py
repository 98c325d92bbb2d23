"""One page as SVG, in millimetres.

The SVG writer of Qt knows no clipping, so what is cut off at a field goes into a nested `svg` of its own,
which every reader cuts at its edges.
"""

from __future__ import annotations

import re
from html import unescape
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF, QSize
from PySide6.QtGui import QFont, QFontMetricsF, QPainter
from PySide6.QtSvg import QSvgGenerator

from yardplan.drawing.fonts import FAMILY
from yardplan.drawing.painting import painting
from yardplan.drawing.style import on_white_paper
from yardplan.sheets.document import Page
from yardplan.sheets.pdf import write_bytes
from yardplan.sheets.session import ensure_application
from yardplan.sheets.surface import Draw, Surface

#: Device pixels per millimetre: coordinates are whole tenths of a hundredth.
_DOTS = 100.0
#: What stands in for the bundled family where it is not installed.
_FALLBACK = f"{FAMILY}, Helvetica, Arial, sans-serif"
_WORDS = re.compile(
    r'<text(?P<rest>[^>]*? font-size="(?P<size>[\d.]+)" font-weight="(?P<weight>\d+)" '
    r'font-style="(?P<style>\w+)"[^>]*)>(?P<words>[^<]*)</text>'
)
_BODY = re.compile(r"</defs>(.*)</svg>", re.DOTALL)


def _generated(box: QRectF, draw: Draw, title: str = "") -> str:
    """What Qt writes for a drawing within a box."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    generator = QSvgGenerator()
    generator.setOutputDevice(buffer)
    generator.setTitle(title)
    generator.setDescription("")
    generator.setResolution(round(_DOTS * 25.4))
    generator.setSize(QSize(round(box.width()), round(box.height())))
    generator.setViewBox(box)
    with painting(generator) as painter:
        draw(painter)
    buffer.close()
    return bytes(data.data()).decode("utf-8")


class _SvgSurface(Surface):
    """Collects what is cut off at a field as nested drawings."""

    def __init__(self, painter: QPainter, nested: list[str]) -> None:
        super().__init__(painter, _DOTS)
        self._nested = nested

    def within(self, field: QRectF, draw: Draw) -> None:
        outer = self.painter

        def inner(painter: QPainter) -> None:
            self.painter = painter
            draw(painter)

        try:
            text = _generated(field, inner)
        finally:
            self.painter = outer
        body = _BODY.search(text)
        if body is None:
            raise ValueError("the SVG writer gave a drawing without a body")
        x, y, wide, high = field.x(), field.y(), field.width(), field.height()
        self._nested.append(
            f'<svg x="{x:g}" y="{y:g}" width="{wide:g}" height="{high:g}" '
            f'viewBox="{x:g} {y:g} {wide:g} {high:g}" overflow="hidden">{body[1]}</svg>\n'
        )


def svg_text(page: Page, title: str = "") -> str:
    """The page as an SVG document whose width and height are true millimetres."""
    ensure_application()
    nested: list[str] = []
    box = QRectF(0, 0, page.paper.wide * _DOTS, page.paper.high * _DOTS)
    with on_white_paper():
        whole = _generated(box, lambda painter: page.draw(_SvgSurface(painter, nested)), title or page.title)
    paper = f'<rect width="{box.width():g}" height="{box.height():g}" fill="#FFFFFF" stroke="none"/>\n'
    head, rest = whole.split("</defs>", 1)
    head = re.sub(r'width="[^"]*mm" height="[^"]*mm"',
                  f'width="{page.paper.wide:g}mm" height="{page.paper.high:g}mm"', head, count=1)
    # Nested svg elements belong to full SVG, not to the Tiny profile that Qt announces.
    head = head.replace(' version="1.2" baseProfile="tiny"', ' version="1.1"')
    body = rest.rsplit("</svg>", 1)[0]
    text = f"{head}</defs>\n{paper}{''.join(nested)}{body}</svg>\n"
    return _with_lengths(text).replace(f'font-family="{FAMILY}"', f'font-family="{_FALLBACK}"')


def _with_lengths(text: str) -> str:
    """Says of every word how long it is, so that another typeface takes the same room."""
    return _WORDS.sub(_with_length, text)


def _with_length(found: re.Match[str]) -> str:
    words = unescape(found["words"])
    if not words.strip():
        return found[0]
    face = QFont(FAMILY)
    face.setPixelSize(max(1, round(float(found["size"]))))
    face.setWeight(QFont.Weight(int(found["weight"])))
    face.setItalic(found["style"] == "italic")
    length = QFontMetricsF(face).horizontalAdvance(words)
    fitted = f'textLength="{length:.1f}" lengthAdjust="spacingAndGlyphs"'
    return f'<text {fitted}{found["rest"]}>{found["words"]}</text>'


def write_svg(page: Page, path: Path, title: str = "") -> None:
    """Write a page as SVG. Raises SheetError when the file cannot be written."""
    write_bytes(path, svg_text(page, title).encode("utf-8"))
