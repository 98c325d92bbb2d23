"""One page as a picture."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, Qt
from PySide6.QtGui import QImage, QImageWriter

from yardplan.drawing.painting import painting
from yardplan.drawing.style import on_white_paper
from yardplan.language import tr
from yardplan.sheets.document import Page
from yardplan.sheets.paper import SheetError
from yardplan.sheets.pdf import write_bytes
from yardplan.sheets.session import ensure_application
from yardplan.sheets.surface import Surface

#: Dots per inch of a picture for the screen and for sending.
RESOLUTION = 200


def page_image(page: Page, resolution: int = RESOLUTION) -> QImage:
    """The page as an image that knows its own size on paper."""
    ensure_application()
    dots = resolution / 25.4
    image = QImage(round(page.paper.wide * dots), round(page.paper.high * dots), QImage.Format.Format_RGB32)
    image.setDotsPerMeterX(round(dots * 1000))
    image.setDotsPerMeterY(round(dots * 1000))
    image.fill(Qt.GlobalColor.white)
    with painting(image) as painter, on_white_paper():
        page.draw(Surface(painter, dots))
    return image


def write_png(page: Page, path: Path, resolution: int = RESOLUTION) -> None:
    """Write a page as PNG. Raises SheetError when the file cannot be written."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    if not QImageWriter(buffer, QByteArray(b"png")).write(page_image(page, resolution)):
        raise SheetError(tr("{name} could not be made into a picture", name=path.name))
    buffer.close()
    write_bytes(path, bytes(data.data()))
