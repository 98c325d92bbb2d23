"""Type and pictures need a Qt application; a command line without a screen gets one without a screen."""

from __future__ import annotations

import os
import sys

from PySide6.QtGui import QGuiApplication

_held: list[QGuiApplication] = []


def ensure_application() -> None:
    """Start Qt where it is not running yet, without a window."""
    if QGuiApplication.instance() is not None:
        return
    if sys.platform.startswith("linux"):
        os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    _held.append(QGuiApplication([sys.argv[0]]))
