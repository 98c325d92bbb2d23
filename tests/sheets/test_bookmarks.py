"""Bookmarks, title and language of the PDF, read back with pypdf."""

import pytest
from support.pdf_lines import reader_of

from yardplan.sheets.bookmarks import UnknownPdf, with_bookmarks
from yardplan.sheets.document import Document, Page
from yardplan.sheets.paper import PAPERS
from yardplan.sheets.pdf import pdf_bytes


def document(*titles):
    pages = tuple(Page(PAPERS["A4"], title, lambda surface: None) for title in titles)
    return Document(title="Maß und Äpfel", pages=pages)


def test_each_page_has_its_bookmark(qapp):
    read = reader_of(pdf_bytes(document("Planting plan", "Plant schedule", "Key ‘A’")))
    assert [entry.title for entry in read.outline] == ["Planting plan", "Plant schedule", "Key ‘A’"]
    assert [read.get_destination_page_number(entry) for entry in read.outline] == [0, 1, 2]


def test_language_and_title(qapp):
    read = reader_of(pdf_bytes(document("One")))
    assert read.root_object["/Lang"] == "en"
    assert read.metadata.title == "Maß und Äpfel"
    assert read.root_object["/PageMode"] == "/UseOutlines"


def test_what_qt_wrote_is_untouched(qapp):
    made = pdf_bytes(document("One"))
    first = made[: made.index(b"%%EOF") + 6]
    assert reader_of(first).metadata.title == "Maß und Äpfel"
    assert len(reader_of(first).pages) == len(reader_of(made).pages) == 1
    # A strict reader follows every cross-reference without repairing anything.
    import io

    import pypdf

    assert len(pypdf.PdfReader(io.BytesIO(made), strict=True).pages) == 1


def test_other_files_are_refused():
    with pytest.raises(UnknownPdf):
        with_bookmarks(b"%PDF-1.4\nnothing", ["One"], "en")
