"""Sizes of the panels, kept from one session to the next.

Qt keeps them with the window's state, but restores that before the panels are built and have a size.
"""

from __future__ import annotations

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QDockWidget, QWidget

_KEY = "window/size/{name}"


def keep_size(settings: QSettings, dock: QDockWidget) -> None:
    """Remember the width and height of a panel that shows and has been built."""
    if dock.isVisible() and isinstance(dock.widget(), QWidget):
        size = dock.size()
        settings.setValue(_KEY.format(name=dock.objectName()), f"{size.width()} {size.height()}")


def kept_size(settings: QSettings, dock: QDockWidget) -> tuple[int, int] | None:
    """Width and height the panel had, pixels, or None where none is known."""
    width, _, height = str(settings.value(_KEY.format(name=dock.objectName()), "")).partition(" ")
    return (int(width), int(height)) if width.isdecimal() and height.isdecimal() else None
