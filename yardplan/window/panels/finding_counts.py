"""How many conflicts, cautions and pieces of advice there are, each with the sign its cards bear."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QWidget

from yardplan.checks.finding import Weight
from yardplan.language import tr_n
from yardplan.window.panels.parts import SIGN_OF, SignMark, label
from yardplan.window.theme import SMALL, font, scaled

#: Between the sign and its words, and from one count to the next, pixels.
_NEAR, _APART = 3, 9


def count_text(weight: Weight, number: int) -> str:
    """`3 conflicts`, `1 caution`, `4 pieces of advice`."""
    if weight is Weight.CONFLICT:
        return tr_n("{n} conflict", "{n} conflicts", number)
    if weight is Weight.CAUTION:
        return tr_n("{n} caution", "{n} cautions", number)
    return tr_n("{n} piece of advice", "{n} pieces of advice", number)


class FindingCounts(QWidget):
    """One line; where the words have no room the figures stand alone beside their signs, never cut."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self._counts: dict[Weight, int] = dict.fromkeys(Weight, 0)
        line = QHBoxLayout(self)
        line.setContentsMargins(2, 2, 2, 2)
        line.setSpacing(_NEAR)
        self._texts: dict[Weight, QLabel] = {}
        for weight in Weight:
            if self._texts:
                line.addSpacing(_APART - 2 * _NEAR)
            line.addWidget(SignMark(SIGN_OF[weight]))
            self._texts[weight] = label()
            self._texts[weight].setFont(font(SMALL + 1))
            line.addWidget(self._texts[weight])
        line.addStretch()

    def show_counts(self, counts: dict[Weight, int]) -> None:
        """Show other counts."""
        self._counts = counts
        self._fit()
        words = [count_text(weight, counts[weight]) for weight in Weight]
        self.setAccessibleName(", ".join(words))
        self.setToolTip(", ".join(words))

    def _fit(self) -> None:
        for weight, text in self._texts.items():
            text.setText(count_text(weight, self._counts[weight]))
        line = self.layout()
        if line is not None and line.sizeHint().width() > self.width():
            for weight, text in self._texts.items():
                text.setText(str(self._counts[weight]))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def minimumSizeHint(self) -> QSize:
        return QSize(scaled(120), super().sizeHint().height())
