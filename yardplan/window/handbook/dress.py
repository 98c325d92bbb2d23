"""The look of a handbook page: headings, air between lines, tables, pictures no wider than the view."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QUrl
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QImage,
    QTextBlock,
    QTextBlockFormat,
    QTextCharFormat,
    QTextCursor,
    QTextDocument,
    QTextFormat,
    QTextFragment,
    QTextFrame,
    QTextFrameFormat,
    QTextImageFormat,
    QTextLength,
    QTextTable,
)

from yardplan.window.theme import Colours, scaled

#: Pixel sizes of headings by level, and of the text.
_HEADINGS = {1: 20, 2: 16, 3: 14}
_TEXT = 14
#: Height of a line as a share of its usual height, percent; space before and after a paragraph, pixels.
_LINE, _BEFORE, _AFTER = 118.0, 2, 7


def dress(document: QTextDocument, colours: Colours) -> None:
    """Give every block of a fresh document its look."""
    for block in _blocks(document):
        level = block.blockFormat().headingLevel()
        cursor, shape = QTextCursor(block), QTextBlockFormat()
        if level:
            shape.setTopMargin(scaled(16 if level > 1 else 0))
            shape.setBottomMargin(scaled(6))
        elif cursor.currentTable() is None:
            # A picture is one line: a share of its height would be a gap below it.
            share = 100.0 if _pictured(block) else _LINE
            shape.setLineHeight(share, QTextBlockFormat.LineHeightTypes.ProportionalHeight.value)
            shape.setTopMargin(scaled(_BEFORE))
            shape.setBottomMargin(scaled(_AFTER if block.textList() is None else _BEFORE))
        cursor.mergeBlockFormat(shape)
    _letters(document)
    _links(document, colours)
    for frame in document.rootFrame().childFrames():
        _table(frame, colours)


def _blocks(document: QTextDocument) -> Iterator[QTextBlock]:
    block = document.begin()
    while block.isValid():
        yield block
        block = block.next()


def _pictured(block: QTextBlock) -> bool:
    """True for a paragraph with a picture."""
    walk = block.begin()
    while not walk.atEnd():
        if walk.fragment().charFormat().isImageFormat():
            return True
        walk += 1
    return False


def _fragments(document: QTextDocument) -> list[QTextFragment]:
    found = []
    for block in _blocks(document):
        walk = block.begin()
        while not walk.atEnd():
            found.append(walk.fragment())
            walk += 1
    return found


def _select(document: QTextDocument, piece: QTextFragment) -> QTextCursor:
    cursor = QTextCursor(document)
    cursor.setPosition(piece.position())
    cursor.setPosition(piece.position() + piece.length(), QTextCursor.MoveMode.KeepAnchor)
    return cursor


def _letters(document: QTextDocument) -> None:
    """Sizes in pixels; Markdown gives headings only a step against the usual size, which would win."""
    for piece in _fragments(document):
        cursor = _select(document, piece)
        level = cursor.blockFormat().headingLevel()
        look = piece.charFormat()
        look.clearProperty(QTextFormat.Property.FontSizeAdjustment)
        look.setProperty(QTextFormat.Property.FontPixelSize, scaled(_HEADINGS.get(level, _TEXT)))
        if level or look.fontWeight() > QFont.Weight.DemiBold:
            # The heaviest face of the family.
            look.setFontWeight(QFont.Weight.DemiBold)
        cursor.setCharFormat(look)


def _links(document: QTextDocument, colours: Colours) -> None:
    """Links in the scheme's colour, underlined: not told by colour alone."""
    for piece in _fragments(document):
        if piece.charFormat().isAnchor():
            look = QTextCharFormat()
            look.setForeground(QBrush(QColor(colours.link)))
            look.setFontUnderline(True)
            _select(document, piece).mergeCharFormat(look)


def _table(frame: QTextFrame, colours: Colours) -> None:
    if not isinstance(frame, QTextTable):
        return
    shape = frame.format()
    shape.setCellPadding(scaled(4))
    shape.setCellSpacing(0)
    shape.setBorderCollapse(True)
    shape.setBorder(1)
    shape.setBorderStyle(QTextFrameFormat.BorderStyle.BorderStyle_Solid)
    shape.setBorderBrush(QBrush(QColor(colours.rule)))
    shape.setWidth(QTextLength(QTextLength.Type.PercentageLength, 100))
    shape.setTopMargin(scaled(4))
    shape.setBottomMargin(scaled(10))
    frame.setFormat(shape)


def fit_pictures(document: QTextDocument, room: int) -> None:
    """Show each picture in its own size, or as wide as there is room (pixels)."""
    for piece in _fragments(document):
        look = piece.charFormat()
        if not look.isImageFormat():
            continue
        picture = QTextImageFormat(look)
        url = document.baseUrl().resolved(QUrl(picture.name()))
        size = QImage(url.toLocalFile()).size()
        if size.isEmpty():
            continue
        wide = min(size.width(), max(room, 60))
        picture.setWidth(wide)
        picture.setHeight(wide * size.height() / size.width())
        _select(document, piece).setCharFormat(picture)
