"""Comma separated values (RFC 4180) that a spreadsheet cannot take for formulas."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence
from decimal import Decimal

#: A cell that starts so may be run as a formula; an apostrophe in front makes it a text
#: (OWASP, CSV Injection).
_DANGEROUS = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")


def harmless(value: object) -> str:
    """A cell's text; numbers stay numbers, texts that look like formulas get an apostrophe in front."""
    if value is None:
        return ""
    if isinstance(value, float):
        # Written out: 1e-05 is no length to a person.
        return repr(value) if "e" not in repr(value) else format(Decimal(repr(value)), "f")
    text = str(value)
    return "'" + text if isinstance(value, str) and _looks_dangerous(text) else text


def _looks_dangerous(text: str) -> bool:
    return text.lstrip("' ").startswith(_DANGEROUS)


def original(cell: str) -> str:
    """The text that `harmless` made a cell of."""
    cell = cell.strip()
    return cell[1:] if cell.startswith("'") and _looks_dangerous(cell[1:]) else cell


def to_csv(heads: Sequence[str], rows: Iterable[Sequence[object]]) -> str:
    """A table as text with CRLF line ends, cells quoted where needed."""
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(heads)
    writer.writerows([harmless(cell) for cell in row] for row in rows)
    return out.getvalue()


def from_csv(text: str) -> list[tuple[int, list[str]]]:
    """The lines of a table with their line numbers; commas, semicolons or tabs between cells.

    Raises csv.Error when the quoting is broken.
    """
    text = text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n")
    first = text.split("\n", 1)[0]
    between = max(",;\t", key=first.count)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=between, strict=True)
    return [(reader.line_num, row) for row in reader if any(cell.strip() for cell in row)]
