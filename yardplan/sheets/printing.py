"""A document on a printer, never scaled to its margins."""

from __future__ import annotations

from PySide6.QtGui import QPainter
from PySide6.QtPrintSupport import QPrinter

from yardplan.drawing.style import on_white_paper
from yardplan.language import tr
from yardplan.sheets.document import Document
from yardplan.sheets.paper import SheetError
from yardplan.sheets.pdf import Progress, page_layout
from yardplan.sheets.surface import Surface


def print_document(document: Document, printer: QPrinter, progress: Progress | None = None) -> None:
    """Print all pages true to scale. Raises SheetError when the printer refuses."""
    printer.setFullPage(True)
    printer.setDocName(document.title)
    printer.setPageLayout(page_layout(document.pages[0].paper))
    painter = QPainter()
    if not painter.begin(printer):
        raise SheetError(tr("the printer did not start: save a PDF instead"))
    # With a full page the device begins at the paper's edge: margins are in the drawing.
    try:
        with on_white_paper():
            _draw(document, printer, painter, progress)
    finally:
        painter.end()


def _draw(document: Document, printer: QPrinter, painter: QPainter, progress: Progress | None) -> None:
    for number, page in enumerate(document.pages):
        if number:
            printer.setPageLayout(page_layout(page.paper))
            printer.newPage()
        page.draw(Surface(painter, printer.resolution() / 25.4))
        if progress is not None:
            progress((number + 1) / len(document.pages))
