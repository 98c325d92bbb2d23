"""Straight lines and words of a PDF page in millimetres, read from its content stream with pypdf."""

from __future__ import annotations

import io
import math
from typing import Any

import pypdf
from pypdf.generic import ContentStream

POINT_MM = 25.4 / 72

Matrix = tuple[float, float, float, float, float, float]
Line = tuple[tuple[float, float], tuple[float, float]]


def times(m: Matrix, n: Matrix) -> Matrix:
    """The matrix that does m, then n."""
    return (
        m[0] * n[0] + m[1] * n[2], m[0] * n[1] + m[1] * n[3],
        m[2] * n[0] + m[3] * n[2], m[2] * n[1] + m[3] * n[3],
        m[4] * n[0] + m[5] * n[2] + n[4], m[4] * n[1] + m[5] * n[3] + n[5],
    )


def reader_of(data: bytes) -> pypdf.PdfReader:
    """The document in some bytes."""
    return pypdf.PdfReader(io.BytesIO(data))


class _Walk:
    """Follows a page's operators and collects straight lines."""

    def __init__(self) -> None:
        self.matrix: Matrix = (1, 0, 0, 1, 0, 0)
        self.stack: list[Matrix] = []
        self.lines: list[Line] = []
        self.here = (0.0, 0.0)

    def place(self, x: Any, y: Any) -> tuple[float, float]:
        a, b, c, d, e, f = self.matrix
        x, y = float(x), float(y)
        return ((x * a + y * c + e) * POINT_MM, (x * b + y * d + f) * POINT_MM)

    def step(self, operands: list[Any], operator: bytes) -> None:
        if operator == b"q":
            self.stack.append(self.matrix)
        elif operator == b"Q":
            self.matrix = self.stack.pop()
        elif operator == b"cm":
            self.matrix = times(tuple(float(v) for v in operands), self.matrix)  # type: ignore[arg-type]
        elif operator == b"m":
            self.here = self.place(*operands)
        elif operator == b"l":
            there = self.place(*operands)
            self.lines.append((self.here, there))
            self.here = there
        elif operator in (b"c", b"v", b"y"):
            self.here = self.place(*operands[-2:])


def lines_mm(data: bytes, page: int = 0) -> list[Line]:
    """Straight lines of a page, millimetres from its lower left corner."""
    document = reader_of(data)
    walk = _Walk()
    for operands, operator in ContentStream(document.pages[page].get_contents(), document).operations:
        walk.step(operands, operator)
    return walk.lines


def lengths_mm(data: bytes, page: int = 0) -> list[float]:
    """Lengths of the straight lines of a page, millimetres."""
    return [math.dist(a, b) for a, b in lines_mm(data, page)]
