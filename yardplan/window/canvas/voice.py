"""Speaks the outcome of gestures to screen readers."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget


def say(widget: QWidget, text: str) -> None:
    """Announce a sentence where a screen reader listens; kept as the widget's status for tests and others."""
    from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent

    widget.setProperty("said", text)
    if QAccessible.isActive():
        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(widget, text))
