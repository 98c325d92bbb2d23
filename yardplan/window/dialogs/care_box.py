"""The box with the year's care: it stays open beside the plan."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from yardplan.language import tr
from yardplan.window.dialogs.box import BesideBox, closing_line, roomy
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.care_panel import CarePanel

_SIZE = (560, 720)


class CareBox(BesideBox):
    """Work of the year by date, with marks for what is done."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Care of the year"))
        self.panel = CarePanel(open_yard, self)
        box = QVBoxLayout(self)
        box.setContentsMargins(6, 6, 6, 6)
        box.addWidget(self.panel)
        box.addLayout(closing_line(self))
        self.resize(roomy(self, *_SIZE))
