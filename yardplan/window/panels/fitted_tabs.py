"""Tabs whose words shorten where they have no room, so that none has to be scrolled to."""

from __future__ import annotations

from PySide6.QtCore import QEvent
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QTabWidget, QWidget


class FittedTabs(QTabWidget):
    """Each panel has its words and shorter ones; all tabs that have them show the shorter where needed."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words: list[tuple[str, str]] = []
        self.setDocumentMode(True)
        self.tabBar().setDrawBase(False)
        self.tabBar().setExpanding(False)

    def add(self, panel: QWidget, words: str, short: str = "") -> None:
        """Add a panel at the end; `short` says the same in a narrow side, the whole then shows on hover."""
        self._words.append((words, short or words))
        self.addTab(panel, words)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._fit()
        super().resizeEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._fit()

    def _fit(self) -> None:
        """The whole words where all tabs fit, else the short ones, else those closer together."""
        for choice, tight in ((0, False), (1, False), (1, True)):
            self._set_tight(tight)
            for number, words in enumerate(self._words):
                if self.tabText(number) != words[choice]:
                    self.setTabText(number, words[choice])
                    self.setTabToolTip(number, words[0] if choice else "")
            if self.tabBar().sizeHint().width() <= self.width():
                return

    def _set_tight(self, tight: bool) -> None:
        bar = self.tabBar()
        if bool(bar.property("tight")) != tight:
            bar.setProperty("tight", tight)
            bar.style().unpolish(bar)
            bar.style().polish(bar)
