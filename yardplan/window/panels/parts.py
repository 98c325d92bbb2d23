"""Small parts that the panels share: labels, folds, verdict marks, filter chips."""

from __future__ import annotations

import re
from typing import Literal

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
    QResizeEvent,
    QShowEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QLabel,
    QLineEdit,
    QPushButton,
    QSizePolicy,
    QStyle,
    QStyleOptionButton,
    QStyleOptionComboBox,
    QStylePainter,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from yardplan.checks.finding import Weight
from yardplan.language import later, tr
from yardplan.window.theme import TARGET, Colours, colours_now, scaled, text_scale

Look = Literal["title", "heading", "muted", "small", "fault", "plain"]
#: A verdict or weight as a form: tick, cross, ring, dot, dash; never told by colour alone.
Sign = Literal["good", "conflict", "caution", "advice", "unknown"]

#: The space between a figure and its unit.
_FIGURE = re.compile(r"(?<=\d) (?=(?:%|m|cm|mm|ft|in|h|kg|lb|L|gal|°[CF])\b|%)")

SIGN_OF: dict[Weight, Sign] = {
    Weight.CONFLICT: "conflict",
    Weight.CAUTION: "caution",
    Weight.ADVICE: "advice",
}
#: Pixels of a drop-down beside its words, besides the arrow; the side of a tick box, with its edge, that a
#: tick is drawn for.
_AROUND_WORDS, _TICK_BOX = 10, 16
#: What a screen reader says for a sign.
SIGN_WORDS: dict[Sign, str] = {
    "good": later("good"),
    "conflict": later("conflict"),
    "caution": later("caution"),
    "advice": later("advice"),
    "unknown": later("not known"),
}


def kept_together(text: str) -> str:
    """The text with figures and their units on one line."""
    return _FIGURE.sub("\u00a0", text)


def label(
    text: str = "", look: Look = "plain", *, wrap: bool = False, parent: QWidget | None = None
) -> QLabel:
    """A label dressed by the style sheet. Plain text only: names from a file are never read as markup."""
    made = QLabel(text, parent)
    made.setTextFormat(Qt.TextFormat.PlainText)
    made.setProperty("look", look)
    made.setWordWrap(wrap)
    if wrap:
        made.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
    return made


def button(text: str, look: str = "plain", *, name: str = "", tip: str = "") -> QPushButton:
    """A push button; `name` is what a screen reader says where the text alone would not do."""
    made = QPushButton(text)
    made.setProperty("look", look)
    made.setAccessibleName(name or text.replace("&", ""))
    made.setToolTip(tip)
    made.setAutoDefault(False)
    if look == "link":
        made.setCursor(Qt.CursorShape.PointingHandCursor)
    return made


class SearchLine(QLineEdit):
    """A line to search with; `words` say what is searched. Its cross is large enough to be hit."""

    def __init__(self, words: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setPlaceholderText(words)
        self.setAccessibleName(words)
        self.setClearButtonEnabled(True)
        self._cross = self.findChild(QToolButton)
        if self._cross is not None:
            self._cross.setAccessibleName(tr("Clear what is typed"))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._enlarge()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._enlarge()

    def _enlarge(self) -> None:
        """Qt makes the cross 22 pixels wide and less high."""
        side = max(self.height(), scaled(TARGET))
        if self._cross is not None:
            self._cross.setGeometry(self.width() - side, 0, side, side)


def sign_colour(sign: Sign, colours: Colours) -> str:
    """The colour that repeats what the sign's form says."""
    return {
        "good": colours.leaf,
        "conflict": colours.conflict,
        "caution": colours.caution,
        "advice": colours.muted,
        "unknown": colours.muted,
    }[sign]


def draw_sign(painter: QPainter, box: QRectF, sign: Sign, colours: Colours) -> None:
    """Draw a sign within a square box: tick, cross, ring, dot or dash."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(QColor(sign_colour(sign, colours)), 2.0, c=Qt.PenCapStyle.RoundCap))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.translate(box.topLeft())
    painter.scale(box.width() / 12, box.height() / 12)
    if sign == "good":
        painter.drawPolyline(QPolygonF([QPointF(2, 6.5), QPointF(5, 9.5), QPointF(10.5, 2.5)]))
    elif sign == "conflict":
        painter.drawLine(QPointF(2, 2), QPointF(10, 10))
        painter.drawLine(QPointF(10, 2), QPointF(2, 10))
    elif sign == "caution":
        painter.drawEllipse(QPointF(6, 6), 4.2, 4.2)
    elif sign == "advice":
        painter.setBrush(painter.pen().color())
        painter.drawEllipse(QPointF(6, 6), 1.6, 1.6)
    else:
        painter.drawLine(QPointF(2, 6), QPointF(10, 6))
    painter.restore()


class Combo(QComboBox):
    """A drop-down with an arrow in any scheme; the wheel does not change it while a panel is scrolled."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setMinimumContentsLength(8)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()

    def showPopup(self) -> None:
        """The list is as wide as its longest words."""
        self.view().setMinimumWidth(self.view().sizeHintForColumn(0) + 24)
        super().showPopup()

    def paintEvent(self, _event: QPaintEvent) -> None:
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        option.currentText = self.fontMetrics().elidedText(
            option.currentText or self.placeholderText(), Qt.TextElideMode.ElideRight,
            self.width() - scaled(TARGET) - _AROUND_WORDS,
        )
        painter = QStylePainter(self)
        painter.drawComplexControl(QStyle.ComplexControl.CC_ComboBox, option)
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(colours_now().muted), 1.6, c=Qt.PenCapStyle.RoundCap))
        painter.translate(self.width() - scaled(13), self.height() / 2)
        painter.scale(text_scale(), text_scale())
        painter.drawPolyline(QPolygonF([QPointF(-4, -2), QPointF(0, 2), QPointF(4, -2)]))


class Check(QCheckBox):
    """A tick box whose tick is a form, not only a colour."""

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        option = QStyleOptionButton()
        self.initStyleOption(option)
        box = self.style().subElementRect(QStyle.SubElement.SE_CheckBoxIndicator, option, self)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(colours_now().card), 2.0, c=Qt.PenCapStyle.RoundCap))
        painter.translate(box.topLeft())
        painter.scale(box.width() / _TICK_BOX, box.height() / _TICK_BOX)
        if self.checkState() == Qt.CheckState.Checked:
            painter.drawPolyline(QPolygonF([QPointF(4, 8), QPointF(7, 11), QPointF(12, 5)]))
        elif self.checkState() == Qt.CheckState.PartiallyChecked:
            painter.drawLine(QPointF(4, 8), QPointF(12, 8))


class SignMark(QWidget):
    """A sign as a widget of its own, named for screen readers."""

    def __init__(self, sign: Sign = "unknown", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._sign: Sign = sign
        self.setFixedSize(scaled(14), scaled(14))
        self.show_sign(sign)

    @property
    def sign(self) -> Sign:
        """What it shows."""
        return self._sign

    def show_sign(self, sign: Sign) -> None:
        """Show another sign."""
        self._sign = sign
        self.setAccessibleName(tr(SIGN_WORDS[sign]))
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        draw_sign(painter, QRectF(1, 1, scaled(12), scaled(12)), self._sign, colours_now())


class _FoldHead(QPushButton):
    """The clickable heading of a fold, with a triangle that points down when it is open."""

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours_now().muted))
        painter.translate(scaled(9), self.height() / 2)
        painter.scale(text_scale(), text_scale())
        painter.rotate(90 if self.isChecked() else 0)
        painter.drawPolygon(QPolygonF([QPointF(-3, -4), QPointF(4, 0), QPointF(-3, 4)]))


class Fold(QWidget):
    """A heading that folds what is under it away."""

    folded = Signal(bool)

    def __init__(
        self, title: str, body: QWidget, *, open_: bool = True, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._title, self._body = title, body
        self._head = _FoldHead()
        self._head.setProperty("look", "fold")
        self._head.setCheckable(True)
        self._head.toggled.connect(self._toggled)
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setSpacing(4)
        self._layout.addWidget(self._head)
        self._layout.addWidget(body)
        self._head.setChecked(open_)
        self._toggled(open_)

    @property
    def open(self) -> bool:
        """True when the body shows."""
        return self._head.isChecked()

    def set_open(self, open_: bool) -> None:
        """Open or fold."""
        self._head.setChecked(open_)

    def _toggled(self, open_: bool) -> None:
        self._body.setVisible(open_)
        self._head.setText(self._title)
        title = self._title
        spoken = tr("{title}, shown", title=title) if open_ else tr("{title}, folded", title=title)
        self._head.setAccessibleName(spoken)
        self.folded.emit(not open_)


class Elided(QLabel):
    """A one-line label that ends in dots when it has no room; the whole text shows on hover."""

    def __init__(self, text: str = "", look: Look = "plain", parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setProperty("look", look)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    def setText(self, text: str) -> None:
        super().setText(text)
        self.setToolTip(text)

    def minimumSizeHint(self) -> QSize:
        return QSize(20, super().minimumSizeHint().height())

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        text = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, self.width())
        painter.setPen(self.palette().color(self.foregroundRole()))
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, text)
