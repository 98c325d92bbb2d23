"""A painter that is always ended: Qt aborts when a device goes away while it is still painted on."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtGui import QPaintDevice, QPainter


@contextmanager
def painting(device: QPaintDevice) -> Iterator[QPainter]:
    """A smooth painter on a device, ended whatever happens."""
    painter = QPainter(device)
    painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
    try:
        yield painter
    finally:
        painter.end()
