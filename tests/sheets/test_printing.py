"""A printer gets the same drawing at the same scale: checked with Qt's own printing into a PDF."""

import pytest
from PySide6.QtPrintSupport import QPrinter
from support.pdf_lines import lengths_mm, reader_of
from support.plans import standing

from yardplan.plants.stand import Stand
from yardplan.sheets.document import Document
from yardplan.sheets.paper import PAPERS, SheetError, parse_scale
from yardplan.sheets.planting_plan import PlanRequest, plan_pages
from yardplan.sheets.printing import print_document
from yardplan.yard.yard import Yard


def document(scale="1:50"):
    plant = standing("A1", (3, 3))
    yard = Yard(lot=((0, 0), (10, 0), (10, 6), (0, 6)), plantings=(plant.thing,))
    request = PlanRequest(
        yard=yard, stand=Stand(year=None, plants=(plant,)), units="metric", scale=parse_scale(scale),
        paper=PAPERS["A4"],
    )
    return Document(title="Plan", pages=plan_pages(request))


@pytest.mark.parametrize("resolution", [300, 600, 1200])
def test_printed_bar_is_exact_at_the_printers_resolution(qapp, tmp_path, resolution):
    printer = QPrinter()
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "out.pdf"))
    printer.setResolution(resolution)
    told = []
    print_document(document("1:25"), printer, told.append)
    made = (tmp_path / "out.pdf").read_bytes()
    assert told[-1] == 1.0
    assert len(reader_of(made).pages) == len(document("1:25").pages)
    # A printer draws whole dots: one dot of 300 to the inch is 0.085 mm.
    assert min(abs(length - 100.0) for length in lengths_mm(made)) <= 25.4 / resolution


@pytest.mark.qt_log_ignore("QPainter::begin")
def test_a_printer_that_does_not_start_is_said(qapp, tmp_path):
    printer = QPrinter()
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "no" / "such" / "folder" / "out.pdf"))
    with pytest.raises(SheetError, match="did not start"):
        print_document(document(), printer)
