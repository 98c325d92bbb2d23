"""Fields to type in or choose from: each echoes what it understood and says the allowed range."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, Final

from attrs import frozen
from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit, QVBoxLayout, QWidget

from yardplan.language import decimals, later, tr
from yardplan.units import FOOT, System, UnitError, format_length, parse_length
from yardplan.window.panels.days import DayError, read_day, say_day
from yardplan.window.panels.parts import Check, Combo, label
from yardplan.window.theme import scaled
from yardplan.yard.bearings import read_angle


class _Mixed:
    """Stands for a value in which several selected things differ."""


MIXED: Final = _Mixed()
_SEVERAL = later("several values")


class EntryError(ValueError):
    """What is wrong with a typed value, in words for the person who typed it."""


@frozen
class Reading:
    """How a text field works: `read` raises EntryError, `show` gives text, `echo` what was understood."""

    read: Callable[[str], Any]
    show: Callable[[Any], str]
    echo: Callable[[Any], str] = lambda _value: ""


class Entry(QWidget):
    """One field. `tried` while a readable value is being typed, `entered` when it is done, `left` on Esc."""

    tried = Signal(object)
    entered = Signal(object)
    left = Signal()

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.name = name
        self._control: QWidget = self
        self._box = QVBoxLayout(self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(1)
        self.fault_label = label("", "fault", wrap=True)
        self.fault_label.hide()

    def _hold(self, control: QWidget, *under: QWidget) -> None:
        """Put the control in place, with the lines that may show under it."""
        self._control = control
        self.setFocusProxy(control)
        control.setAccessibleName(self.name)
        for part in (control, *under, self.fault_label):
            self._box.addWidget(part)

    def show_value(self, value: Any) -> None:
        """Show a value, or MIXED."""
        raise NotImplementedError

    @property
    def busy(self) -> bool:
        """True while a person is typing in it, so nothing may write over it."""
        return False

    @property
    def fault(self) -> str:
        """What is wrong with what was typed, or nothing."""
        return self.fault_label.text()

    def show_fault(self, text: str) -> None:
        """Show what is wrong, at the field; an empty text takes it away."""
        self.fault_label.setText(text)
        self.fault_label.setVisible(bool(text))
        control = self._control
        control.setAccessibleDescription(text)
        if control.property("fault") != ("true" if text else "false"):
            control.setProperty("fault", "true" if text else "false")
            control.style().unpolish(control)
            control.style().polish(control)


class _Line(QLineEdit):
    """A line edit that Esc leaves without a change."""

    given_up = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.isModified():
            self.given_up.emit()
            return
        super().keyPressEvent(event)


class TextEntry(Entry):
    """A line of text read by a Reading."""

    def __init__(self, name: str, reading: Reading, parent: QWidget | None = None) -> None:
        super().__init__(name, parent)
        self._reading = reading
        self._value: Any = None
        self._empty = ""
        self.line = _Line()
        self.echo_label = label("", "small", wrap=True)
        self.echo_label.hide()
        self._hold(self.line, self.echo_label)
        self.line.textEdited.connect(self._edited)
        self.line.editingFinished.connect(self._finished)
        self.line.given_up.connect(self._give_up)

    def set_placeholder(self, text: str) -> None:
        """What the empty field stands for."""
        self._empty = text
        self.line.setPlaceholderText(tr(_SEVERAL) if self._value is MIXED else text)

    def set_reading(self, reading: Reading) -> None:
        """Read and show differently from now on (other units)."""
        self._reading = reading
        if not self.busy:
            self.show_value(self._value)

    @property
    def value(self) -> Any:
        """The value shown last or entered last."""
        return self._value

    @property
    def busy(self) -> bool:
        return self.line.hasFocus() and self.line.isModified()

    def show_value(self, value: Any) -> None:
        self._value = value
        self.line.setText("" if value is MIXED else self._reading.show(value))
        self.line.setPlaceholderText(tr(_SEVERAL) if value is MIXED else self._empty)
        self.line.setCursorPosition(0)
        self.show_fault("")
        self.show_echo("")

    def show_echo(self, text: str) -> None:
        """Show in small what was understood, or what the value would bring."""
        self.echo_label.setText(text)
        self.echo_label.setVisible(bool(text))

    def _edited(self, text: str) -> None:
        try:
            value = self._reading.read(text)
        except EntryError as error:
            self.show_echo("")
            self.show_fault(str(error))
            return
        self.show_fault("")
        self.show_echo(self._reading.echo(value))
        self.tried.emit(value)

    def _finished(self) -> None:
        if not self.line.isModified():
            return
        try:
            value = self._reading.read(self.line.text())
        except EntryError as error:
            self.show_fault(str(error))
            self.left.emit()
            return
        self.show_value(value)
        self.line.setModified(False)
        self.entered.emit(value)

    def typed(self) -> Any:
        """What is typed now, None while it cannot be read."""
        try:
            return self._reading.read(self.line.text())
        except EntryError:
            return None

    def finish(self) -> None:
        """Take what is typed as done, as Enter would."""
        self._finished()

    def _give_up(self) -> None:
        self.show_value(self._value)
        self.line.selectAll()
        self.left.emit()


class ParagraphEntry(Entry):
    """Several lines of free text; done when the focus goes."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(name, parent)
        self.text = QPlainTextEdit()
        self.text.setTabChangesFocus(True)
        self.text.setFixedHeight(scaled(54))
        self.text.installEventFilter(self)
        self._hold(self.text)

    @property
    def busy(self) -> bool:
        return self.text.hasFocus() and self.text.document().isModified()

    def show_value(self, value: Any) -> None:
        self.text.setPlainText("" if value is MIXED else str(value))
        self.text.setPlaceholderText(tr(_SEVERAL) if value is MIXED else "")
        self.text.document().setModified(False)

    def eventFilter(self, watched: Any, event: QEvent) -> bool:
        if event.type() == QEvent.Type.FocusOut and self.text.document().isModified():
            self.text.document().setModified(False)
            self.entered.emit(self.text.toPlainText())
        return bool(super().eventFilter(watched, event))


class ChoiceEntry(Entry):
    """One of several values, each with the words that show."""

    def __init__(self, name: str, choices: Sequence[tuple[Any, str]], parent: QWidget | None = None) -> None:
        super().__init__(name, parent)
        self.combo = Combo()
        self._hold(self.combo)
        self._values: list[Any] = []
        self.set_choices(choices)
        self.combo.activated.connect(self._picked)

    def set_choices(self, choices: Sequence[tuple[Any, str]]) -> None:
        """Offer other values."""
        self._values = [value for value, _ in choices]
        self.combo.clear()
        self.combo.addItems([words for _, words in choices])

    def show_value(self, value: Any) -> None:
        if value is not MIXED and value not in self._values:
            self._values.append(value)
            self.combo.addItem(str(value))
        self.combo.setPlaceholderText(tr(_SEVERAL) if value is MIXED else "")
        self.combo.setCurrentIndex(-1 if value is MIXED else self._values.index(value))

    @property
    def value(self) -> Any:
        """What is chosen."""
        number = self.combo.currentIndex()
        return MIXED if number < 0 else self._values[number]

    def _picked(self, number: int) -> None:
        self.entered.emit(self._values[number])


class CheckEntry(Entry):
    """Yes or no; partly ticked where several things differ."""

    def __init__(self, name: str, words: str, parent: QWidget | None = None) -> None:
        super().__init__(name, parent)
        self.check = Check(words)
        self._hold(self.check)
        self.check.setAccessibleName(words)
        self.check.clicked.connect(self._clicked)

    def show_value(self, value: Any) -> None:
        self.check.setTristate(value is MIXED)
        state = Qt.CheckState.PartiallyChecked
        if value is not MIXED:
            state = Qt.CheckState.Checked if value else Qt.CheckState.Unchecked
        self.check.setCheckState(state)

    def _clicked(self) -> None:
        self.check.setTristate(False)
        self.entered.emit(self.check.isChecked())


def _or_none(read: Callable[[str], Any], optional: bool) -> Callable[[str], Any]:
    """A reader that takes an empty text for None where that is allowed."""

    def reader(typed: str) -> Any:
        if not typed.strip():
            if optional:
                return None
            raise EntryError(tr("a value is needed here"))
        return read(typed)

    return reader


def within(value: float, low: float, high: float, say: Callable[[float], str]) -> float:
    """The value, or EntryError with the allowed range."""
    if not low <= value <= high:
        raise EntryError(
            tr("{value} is outside {low} to {high}", value=say(value), low=say(low), high=say(high))
        )
    return value


def length_reading(low: float, high: float, units: System, *, optional: bool = False) -> Reading:
    """Lengths in any unit, shown in the yard's; the echo says it in the other system too."""
    other: System = "imperial" if units == "metric" else "metric"

    def read(typed: str) -> float:
        try:
            metres = parse_length(typed, units)
        except UnitError as error:
            raise EntryError(str(error)) from None
        return within(metres, low, high, lambda m: format_length(m, units))

    def show(value: float | None) -> str:
        return "" if value is None else format_length(value, units)

    def echo(value: float | None) -> str:
        return "" if value is None else f"= {format_length(value, units)}, {format_length(value, other)}"

    return Reading(_or_none(read, optional), show, echo)


def elevation_reading(low: float, high: float, units: System) -> Reading:
    """A height above the sea, shown in whole metres or feet: nobody knows it better. Empty is None."""

    def say(metres: float) -> str:
        return f"{metres / FOOT:.0f} ft" if units == "imperial" else f"{metres:.0f} m"

    def read(typed: str) -> float:
        try:
            metres = parse_length(typed, units)
        except UnitError as error:
            raise EntryError(str(error)) from None
        return within(metres, low, high, say)

    return Reading(_or_none(read, True), lambda value: "" if value is None else say(value))


def number_reading(
    low: float, high: float, unit: str = "", *, factor: float = 1.0, digits: int = 1, optional: bool = False
) -> Reading:
    """Plain numbers, a unit behind if wanted; `factor` shown ones make one of ours (100 for percent)."""
    behind = f" {unit}" if unit else ""

    def say(value: float) -> str:
        shown = f"{value * factor:.{digits}f}"
        return decimals(shown.rstrip("0").rstrip(".") if "." in shown else shown) + behind

    def read(typed: str) -> float:
        text = typed.strip().removesuffix(unit).strip().replace(",", ".").replace("−", "-")
        try:
            value = float(text) / factor
        except ValueError:
            raise EntryError(tr("'{typed}' is not a number", typed=typed)) from None
        value = within(value, low, high, say)
        if digits or factor != 1.0:
            return value
        if value != int(value):
            raise EntryError(tr("'{typed}' is not a whole number", typed=typed))
        return int(value)

    return Reading(_or_none(read, optional), lambda v: "" if v is None else say(v))


#: Angles are shown to so many decimals at most: 4 seconds of arc, 1 mm at 50 m.
_ANGLE_DIGITS = 3


def angle_reading(low: float, high: float, *, optional: bool = False) -> Reading:
    """Degrees, with decimals or with minutes and seconds: `45.5`, `45°30'`, `50 gon`; kept as typed."""
    shown = number_reading(low, high, "°", digits=_ANGLE_DIGITS, optional=optional)

    def read(typed: str) -> float:
        try:
            degrees = read_angle(typed)
        except UnitError as error:
            raise EntryError(str(error)) from None
        return within(degrees, low, high, shown.show)

    return Reading(_or_none(read, optional), shown.show)


def text_reading(*, optional: bool = True, longest: int = 200, empty: str | None = "") -> Reading:
    """A line of free text; `empty` is what an empty line stands for."""

    def read(typed: str) -> str | None:
        text = " ".join(typed.split())
        if not text and optional:
            return empty
        if not text:
            raise EntryError(tr("a name is needed here"))
        if len(text) > longest:
            raise EntryError(tr("{n} characters are too many: {most} at most", n=len(text), most=longest))
        return text

    return Reading(read, lambda value: "" if value is None else str(value))


def day_reading(*, optional: bool = True) -> Reading:
    """A day of the year."""

    def read(typed: str) -> str:
        try:
            return read_day(typed)
        except DayError as error:
            raise EntryError(str(error)) from None

    def say(value: str | None) -> str:
        return "" if value is None else say_day(value)

    return Reading(_or_none(read, optional), say, lambda value: f"= {say(value)}" if value else "")
