"""What commands print: tables for people, JSON for programs, one clear line for an error."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from typing import Any


class CommandError(Exception):
    """Ends a command with exit code 2 and one line for a person."""


def print_json(value: Any) -> None:
    """Print a value as JSON, keys in the order given."""
    import json

    json.dump(value, sys.stdout, ensure_ascii=False, indent=2, allow_nan=False)
    sys.stdout.write("\n")


def print_table(heads: Sequence[str], rows: Sequence[Sequence[str]]) -> None:
    """Print rows in columns as wide as they need."""
    widths = [max(len(row[i]) for row in (heads, *rows)) for i in range(len(heads))]
    for row in (heads, *rows):
        print("  ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)).rstrip())
