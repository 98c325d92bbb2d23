"""Pictures for under the plan, read from PNG, JPEG and PDF, made small enough to travel in a yard file.

What is kept is at most LONGEST_SIDE pixels long, as PNG or JPEG, whichever is smaller, within MOST_BYTES.
"""

from __future__ import annotations

import base64
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from attrs import frozen
from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QSize, Qt
from PySide6.QtGui import QColor, QImage, QImageReader, QImageWriter, QPainter

from yardplan.drawing.painting import painting
from yardplan.drawing.under_pictures import MOST_PIXELS
from yardplan.language import tr

#: Longest side of the picture that is kept, pixels: 60 m of yard at 2.5 cm a pixel.
LONGEST_SIDE = 2400
#: Bytes of the picture that is kept, at most.
MOST_BYTES = 5_000_000
#: Files larger than this are not read, bytes.
LARGEST_FILE = 100 * 1024 * 1024
#: Endings of the files that can be read.
ENDINGS = (".png", ".jpg", ".jpeg", ".pdf")
_QUALITIES = (88, 75, 60, 40)


class PictureError(Exception):
    """A picture that cannot be read, in one line for a person."""


@frozen
class ReadPicture:
    """A picture read from a file: what it is called, its pixels, and its bytes as base64."""

    name: str
    pixels: tuple[int, int]
    data: str


def pages_in(path: Path) -> int:
    """How many pages a file has: 1 for pictures. Raises PictureError."""
    if path.suffix.lower() != ".pdf":
        return 1
    with _pdf(path) as document:
        return len(document)


def read_picture(path: Path, page: int = 1) -> ReadPicture:
    """The picture in a file, or one page of a PDF, pages counted from 1. Raises PictureError."""
    _check_file(path)
    image = _page(path, page) if path.suffix.lower() == ".pdf" else _image(path)
    small = _on_white(image)
    data = _smallest(small)
    if data is None:
        raise PictureError(tr("{file} cannot be made small enough to be kept in the yard", file=path.name))
    return ReadPicture(path.name, (small.width(), small.height()), base64.b64encode(data).decode("ascii"))


def _check_file(path: Path) -> None:
    if path.suffix.lower() not in ENDINGS:
        raise PictureError(tr("{file} cannot be read: choose a PNG, JPEG or PDF file", file=path.name))
    try:
        size = path.stat().st_size
    except OSError:
        raise PictureError(tr("{file} cannot be opened", file=path.name)) from None
    if size > LARGEST_FILE:
        most = LARGEST_FILE // 2**20
        raise PictureError(tr("{file} is too large: at most {most} MB are read", file=path.name, most=most))


def _damaged(path: Path) -> PictureError:
    return PictureError(tr("{file} is damaged or not a picture", file=path.name))


def _image(path: Path) -> QImage:
    reader = QImageReader(str(path))
    reader.setAutoTransform(True)
    reader.setDecideFormatFromContent(True)
    size = reader.size()
    if not size.isValid():
        raise _damaged(path)
    if size.width() * size.height() > MOST_PIXELS:
        raise PictureError(tr(
            "{file} has {wide} x {high} pixels, more than can be read: make it smaller first",
            file=path.name, wide=size.width(), high=size.height(),
        ))
    if max(size.width(), size.height()) > LONGEST_SIDE:
        reader.setScaledSize(size.scaled(LONGEST_SIDE, LONGEST_SIDE, Qt.AspectRatioMode.KeepAspectRatio))
    image = reader.read()
    if image.isNull():
        raise _damaged(path)
    return image


@contextmanager
def _pdf(path: Path) -> Iterator[Any]:
    """An open PDF. Raises PictureError."""
    _check_file(path)
    try:
        import pypdfium2  # type: ignore[import-untyped]
    except ImportError:
        raise PictureError(
            tr("PDF pages need the package pypdfium2: install it with 'pip install pypdfium2'")
        ) from None
    try:
        document = pypdfium2.PdfDocument(path)
    except pypdfium2.PdfiumError as error:
        if "password" in str(error).lower():
            raise PictureError(tr("{file} is locked by a password", file=path.name)) from None
        raise _damaged(path) from None
    try:
        yield document
    except pypdfium2.PdfiumError:
        raise _damaged(path) from None
    finally:
        document.close()


def _page(path: Path, number: int) -> QImage:
    """A page of a PDF as a picture with LONGEST_SIDE pixels along its longer side."""
    with _pdf(path) as document:
        if not 1 <= number <= len(document):
            raise PictureError(tr("{file} has no page {number}", file=path.name, number=number))
        page = document[number - 1]
        longest = max(page.get_size())
        if longest <= 0:
            raise _damaged(path)
        bitmap = page.render(scale=LONGEST_SIDE / longest, prefer_bgrx=True)
        held = bytes(bitmap.buffer)
        image = QImage(held, bitmap.width, bitmap.height, bitmap.stride, QImage.Format.Format_RGB32)
        # A copy of its own: the bytes go with the page.
        return image.copy()


def _on_white(image: QImage) -> QImage:
    """The picture at most LONGEST_SIDE pixels long, on white where it is clear."""
    size = image.size()
    if max(size.width(), size.height()) > LONGEST_SIDE:
        size = size.scaled(LONGEST_SIDE, LONGEST_SIDE, Qt.AspectRatioMode.KeepAspectRatio)
    size = size.expandedTo(QSize(1, 1))
    paper = QImage(size, QImage.Format.Format_RGB32)
    paper.fill(QColor("white"))
    with painting(paper) as painter:
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawImage(paper.rect(), image)
    return paper


def _smallest(image: QImage) -> bytes | None:
    """The picture as PNG or JPEG, whichever is smaller; worse JPEG where it would be too large."""
    plain = _bytes(image, "PNG", -1)
    for quality in _QUALITIES:
        best = min((plain, _bytes(image, "JPEG", quality)), key=len)
        if len(best) <= MOST_BYTES:
            return best
    return None


def _bytes(image: QImage, kind: str, quality: int) -> bytes:
    held = QByteArray()
    buffer = QBuffer(held)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QImageWriter(buffer, QByteArray(kind.encode("ascii")))
    writer.setQuality(quality)
    writer.write(image)
    buffer.close()
    return bytes(held.data())
