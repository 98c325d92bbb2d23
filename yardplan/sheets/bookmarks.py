"""Bookmarks and language for a PDF that Qt wrote: Qt's writer knows neither.

They are appended as an incremental update (PDF 32000-1:2008, 7.5.6): the file Qt wrote stays as it is, byte
for byte, and a new catalogue, the outline (12.3.3) and a cross-reference section follow it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

_TRAILER = re.compile(rb"trailer\s*<<(.*?)>>\s*startxref\s*(\d+)\s*%%EOF\s*$", re.DOTALL)
_ROOT = re.compile(rb"/Root (\d+) 0 R")
_SIZE = re.compile(rb"/Size (\d+)")
_PAGE = re.compile(rb"(\d+) 0 obj\s*<<\s*/Type /Page\s")


class UnknownPdf(ValueError):
    """A PDF that is not built the way Qt builds it."""


def _text(words: str) -> bytes:
    """A text string in UTF-16 with its mark, as hexadecimal (7.9.2.2)."""
    return b"<" + (b"\xfe\xff" + words.encode("utf-16-be")).hex().upper().encode() + b">"


def _catalogue(data: bytes, number: int) -> bytes:
    """The inside of the catalogue's dictionary."""
    found = re.search(rb"(?:^|\s)%d 0 obj\s*<<(.*?)>>\s*endobj" % number, data, re.DOTALL)
    if found is None or b"/Type /Catalog" not in found[1]:
        raise UnknownPdf("the catalogue was not found")
    return found[1].strip()


def _outline(titles: Sequence[str], pages: Sequence[int], first: int) -> dict[int, bytes]:
    """The outline's objects: the root numbered `first`, one item a page after it."""
    last = first + len(titles)
    made = {first: b"/Type /Outlines /First %d 0 R /Last %d 0 R /Count %d" % (first + 1, last, len(titles))}
    for place, (title, page) in enumerate(zip(titles, pages, strict=True)):
        number = first + 1 + place
        parts = [b"/Title " + _text(title), b"/Parent %d 0 R" % first, b"/Dest [%d 0 R /Fit]" % page]
        if place:
            parts.append(b"/Prev %d 0 R" % (number - 1))
        if number < last:
            parts.append(b"/Next %d 0 R" % (number + 1))
        made[number] = b" ".join(parts)
    return made


def with_bookmarks(data: bytes, titles: Sequence[str], language: str) -> bytes:
    """The PDF with a bookmark for each page and its language set.

    Raises UnknownPdf when pages and titles do not agree or the file is built otherwise.
    """
    trailer = _TRAILER.search(data)
    if trailer is None:
        raise UnknownPdf("the trailer was not found")
    root, size = _ROOT.search(trailer[1]), _SIZE.search(trailer[1])
    pages = [int(number) for number in _PAGE.findall(data)]
    if root is None or size is None or len(pages) != len(titles):
        raise UnknownPdf(f"{len(pages)} pages for {len(titles)} titles")
    objects = _outline(titles, pages, int(size[1]))
    more = b" /Outlines %d 0 R /PageMode /UseOutlines /Lang " % int(size[1])
    objects[int(root[1])] = _catalogue(data, int(root[1])) + more + _text(language)
    return data + _update(len(data), objects, trailer[1], int(trailer[2]))


def _update(start: int, objects: dict[int, bytes], trailer: bytes, previous: int) -> bytes:
    """Objects, cross-reference section and trailer, to stand at offset `start`."""
    body, places = b"", {}
    for number in sorted(objects):
        places[number] = start + len(body)
        body += b"%d 0 obj\n<<\n%s\n>>\nendobj\n" % (number, objects[number])
    section = b"xref\n"
    for number in sorted(objects):
        section += b"%d 1\n%010d 00000 n \n" % (number, places[number])
    kept = _SIZE.sub(b"/Size %d" % (max(objects) + 1), trailer.strip())
    return body + section + b"trailer\n<<\n%s\n/Prev %d\n>>\nstartxref\n%d\n%%%%EOF\n" % (
        kept, previous, start + len(body)
    )
