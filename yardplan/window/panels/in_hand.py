"""The card of the plant in hand or selected: name, size, and the facts that decide with their verdicts."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QRect, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from yardplan.language import tr
from yardplan.units import format_coarse
from yardplan.window.open_yard import OpenYard
from yardplan.window.pacing import BESIDE
from yardplan.window.panels.facts import CHECKS_OF, OTHER, Fact, Subject, facts_of, plant_in_hand, standing_of
from yardplan.window.panels.forms import size_in_hand, size_words
from yardplan.window.panels.parts import SIGN_WORDS, Elided, button, draw_sign, label
from yardplan.window.theme import BASE, SMALL, colours_now, font, scaled, text_scale

#: The column of names is at least so wide, pixels; the gap behind the longest.
_NAME_WIDTH, _GAP = 54, 8
_LINE_HEIGHT = 18
#: From this size of text on a fact takes two lines.
_LARGE = 1.5
#: The facts of every plant and one line for all else.
_LINES = len(CHECKS_OF) + 1


class _FactLine(QWidget):
    """One fact on one line: sign, name, value, and in small what the verdict rests on.

    The line never grows, so that nothing under it moves while a plant is dragged; what has no room shows
    on hover and is always spoken.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.fact = Fact("", "unknown", "")
        self.setFixedHeight(scaled(_LINE_HEIGHT) * (2 if _in_two_lines() else 1))

    def show_fact(self, fact: Fact) -> None:
        """Show another fact."""
        self.fact = fact
        self.setAccessibleName(f"{fact.spoken}. {tr(SIGN_WORDS[fact.sign])}")
        self.setToolTip(f"{fact.value}\n{fact.detail}" if fact.detail else fact.value)
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter, c = QPainter(self), colours_now()
        draw_sign(painter, QRectF(1, scaled(3), scaled(12), scaled(12)), self.fact.sign, c)
        box = self.rect().adjusted(scaled(20), 0, 0, 0)
        box.setHeight(scaled(_LINE_HEIGHT))
        _draw(painter, box, tr(self.fact.name), font(SMALL + 1), c.muted)
        box = box.adjusted(_name_width(), 0, 0, 0)
        used = _draw(painter, box, self.fact.value, font(BASE, bold=True), c.ink)
        beside = box.translated(0, box.height()) if _in_two_lines() else box.adjusted(used + 8, 0, 0, 0)
        _draw(painter, beside, self.fact.detail, font(SMALL), c.muted)


def _in_two_lines() -> bool:
    """Large text leaves no room beside a value: what stands behind it always has a line of its own."""
    return text_scale() >= _LARGE


def _name_width() -> int:
    """Pixels for the names of all facts in the language shown, so that all values begin in one line."""
    metrics = QFontMetrics(font(SMALL + 1))
    longest = max(metrics.horizontalAdvance(tr(name)) for name in (*CHECKS_OF, OTHER))
    return max(scaled(_NAME_WIDTH), longest + _GAP)


def _draw(painter: QPainter, box: QRect, text: str, face: QFont, colour: str) -> int:
    """Draw words that end in dots where they have no room; returns the width they take."""
    metrics = QFontMetrics(face)
    cut = metrics.elidedText(text, Qt.TextElideMode.ElideRight, max(box.width(), 0))
    painter.setFont(face)
    painter.setPen(QColor(colour))
    painter.drawText(box, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter), cut)
    return metrics.horizontalAdvance(cut)


#: Which plant a card is about.
About = Callable[[OpenYard], Subject | None]


class InHandCard(QWidget):
    """Follows the plant in hand, or with `about=selected_plant` the one selected; hidden without one."""

    #: The card with every fact of a variety is asked for: its PlantKey.
    card_wanted = Signal(object)
    #: Varieties that would set fruit on this plant are asked for: its PlantKey and its id or None.
    partners_wanted = Signal(object, object)

    def __init__(
        self, open_yard: OpenYard, parent: QWidget | None = None, *, about: About = plant_in_hand
    ) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._about = about
        self._subject: Subject | None = None
        self.title = label("", "title")
        self.kicker = Elided("", "muted")
        self.size_text = label("", "muted", wrap=True)
        self.lines = [_FactLine() for _ in range(_LINES)]
        self.facts_button = button(
            tr("All facts…"), "link", tip=tr("Every fact of this variety with its source")
        )
        self.partners_button = button(
            tr("Find a partner…"), "link", tip=tr("Varieties that would set fruit on it")
        )
        self.away_button = button(tr("Put away"), "link", tip=tr("Nothing in hand (Esc)"))
        self._lay_out()
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.timeout.connect(self.refresh)
        self._connect()
        self.refresh()

    def _lay_out(self) -> None:
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 2)
        box.setSpacing(3)
        head = QHBoxLayout()
        head.setSpacing(8)
        head.addWidget(self.title)
        head.addWidget(self.kicker, 1, Qt.AlignmentFlag.AlignBottom)
        box.addLayout(head)
        for part in (self.size_text, *self.lines):
            box.addWidget(part)
        links = QHBoxLayout()
        links.setContentsMargins(0, 0, 0, 0)
        links.setSpacing(10)
        for part in (self.facts_button, self.partners_button, self.away_button):
            links.addWidget(part)
        links.addStretch()
        box.addLayout(links)

    def _connect(self) -> None:
        open_yard = self._open_yard
        for signal in (
            open_yard.selection_changed,
            open_yard.in_hand_changed,
            open_yard.year_changed,
            open_yard.findings_changed,
            open_yard.light_changed,
            open_yard.loaded,
        ):
            signal.connect(self._refresh_soon)
        open_yard.shown.connect(self._refresh_soon)
        self.facts_button.clicked.connect(self._ask_facts)
        self.partners_button.clicked.connect(self._ask_partners)
        self.away_button.clicked.connect(lambda: self._open_yard.take_in_hand(None))

    def _ask_facts(self) -> None:
        if self._subject is not None:
            self.card_wanted.emit(self._subject.key)

    def _ask_partners(self) -> None:
        if self._subject is not None:
            self.partners_wanted.emit(self._subject.key, self._subject.id)

    def _refresh_soon(self, *_: object) -> None:
        """Several signals of one event make one renewal; none while the panel around it is hidden.

        While a gesture lasts the card follows some times a second.
        """
        around = self.parentWidget()
        if not self._soon.isActive() and (around is None or around.isVisible()):
            self._soon.start(BESIDE if self._open_yard.on_trial else 0)

    def refresh(self) -> None:
        """Show what is in hand or selected now."""
        self._soon.stop()
        self._subject = subject = self._about(self._open_yard)
        self.setVisible(subject is not None)
        if subject is None:
            return
        in_hand = self._about is plant_in_hand
        self.away_button.setVisible(in_hand)
        stock = self._stock(subject)
        kind = tr(subject.key.crop)
        if stock:
            kind = tr("{kind} on {rootstock}", kind=kind, rootstock=stock)
        where = tr("in hand") if in_hand or subject.id is None else subject.id
        self.kicker.setText(f"{where} · {kind}")
        self.title.setText(subject.key.cultivar)
        self.size_text.setText(self._size_words(subject))
        facts = facts_of(self._open_yard, subject)
        for line, fact in zip(self.lines, facts, strict=False):
            line.show_fact(fact)
        self.lines[-1].setVisible(len(facts) == _LINES)

    def _stock(self, subject: Subject) -> str | None:
        if subject.id is None:
            return self._open_yard.in_hand.rootstock if self._open_yard.in_hand else None
        return getattr(self._open_yard.shown_yard.find(subject.id), "rootstock", None)

    def _size_words(self, subject: Subject) -> str:
        """Full size, and the spread at the chosen year where one is chosen."""
        open_yard = self._open_yard
        if subject.id is None:
            in_hand = open_yard.in_hand
            if in_hand is None:
                return ""
            size = size_words(size_in_hand(open_yard.catalogue, in_hand), open_yard.units)
            return tr("{size} at full size", size=size)
        standing = standing_of(open_yard, subject.id)
        if standing is None:
            return ""
        words = tr("{size} at full size", size=size_words(standing.mature, open_yard.units))
        if open_yard.year is None:
            return words
        now = format_coarse(standing.size.spread, open_yard.units)
        return tr("{words}; year {year}: about {now} wide", words=words, year=open_yard.year, now=now)
