from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from yardplan.window.panels.entry import (
    MIXED,
    CheckEntry,
    ChoiceEntry,
    EntryError,
    ParagraphEntry,
    TextEntry,
    angle_reading,
    day_reading,
    elevation_reading,
    length_reading,
    number_reading,
    text_reading,
)
from yardplan.window.panels.field_entries import reading_of
from yardplan.window.panels.field_plans import PLANS
from yardplan.yard.ground import Building


@given(st.floats(0.1, 99.0), st.sampled_from(["metric", "imperial"]))
def test_lengths_shown_are_read_back_to_half_an_inch(metres: float, units: str) -> None:
    reading = length_reading(0.05, 100.0, units)
    assert reading.read(reading.show(metres)) == pytest.approx(metres, abs=0.0065)


@pytest.mark.parametrize("typed", ["abc", "", "-1", "400 m", "12' x", "1/0 m"])
def test_lengths_out_of_range_or_unreadable_are_refused(typed: str) -> None:
    with pytest.raises(EntryError) as seen:
        length_reading(0.1, 40.0, "metric").read(typed)
    assert str(seen.value)


def test_refusal_names_the_range_in_the_yards_units() -> None:
    with pytest.raises(EntryError, match=r"40\.00 m"):
        length_reading(0.1, 40.0, "metric").read("50 m")
    with pytest.raises(EntryError, match=r"131' 3"):
        length_reading(0.1, 40.0, "imperial").read("150 ft")


@pytest.mark.parametrize(("typed", "value"), [("6.5", 6.5), ("6,5", 6.5), (" 7 ", 7.0)])
def test_numbers_take_point_and_comma(typed: str, value: float) -> None:
    assert number_reading(3.0, 10.0).read(typed) == value


@pytest.mark.parametrize("typed", ["15", "nan", "inf", "-1", "x"])
def test_ph_fifteen_and_no_numbers_are_refused(typed: str) -> None:
    with pytest.raises(EntryError):
        number_reading(3.0, 10.0).read(typed)


def test_shares_are_typed_in_percent() -> None:
    reading = number_reading(0.0, 1.0, "%", factor=100.0, digits=0)
    assert reading.read("35 %") == pytest.approx(0.35)
    assert reading.show(0.35) == "35 %"


@pytest.mark.parametrize(
    ("typed", "value"),
    [
        ("22.5", 22.5), ("22,5 °", 22.5), ("45°30'", 45.5), ("-12° 15′ 36″", -12.26), ("50 gon", 45.0),
        ("7", 7.0),
    ],
)
def test_angles_are_typed_as_instruments_show_them(typed: str, value: float) -> None:
    assert angle_reading(-360, 360).read(typed) == pytest.approx(value, abs=1e-12)


def test_half_a_degree_of_a_ridge_is_neither_cut_off_nor_hidden() -> None:
    """Fields without decimals once took 22.5 for 22, without a word."""
    (plan,) = (plan for plan in PLANS[Building] if plan.path == "ridge_angle")
    reading = reading_of(plan, "metric")
    assert reading.read("22.5") == 22.5
    assert reading.show(22.5) == "22.5 °"
    assert reading.show(90.0) == "90 °"
    for wrong in ("361", "nan", "N 45 E", "45°75'"):
        with pytest.raises(EntryError):
            reading.read(wrong)


def test_a_count_is_whole() -> None:
    assert number_reading(1, 50, digits=0).read("7,0") == 7
    with pytest.raises(EntryError, match="not a whole number"):
        number_reading(1, 50, digits=0).read("7.5")


def test_empty_is_none_where_allowed() -> None:
    assert length_reading(0.1, 40, "metric", optional=True).read("  ") is None
    assert day_reading().read("") is None
    assert text_reading(empty=None).read(" ") is None
    with pytest.raises(EntryError):
        text_reading(optional=False).read(" ")


@pytest.fixture
def entry(qtbot: QtBot, theme) -> TextEntry:
    holder = QWidget()
    box = QVBoxLayout(holder)
    made = TextEntry("Height", length_reading(0.1, 40.0, "metric"))
    box.addWidget(made)
    other = TextEntry("Spread", length_reading(0.1, 40.0, "metric"))
    box.addWidget(other)
    made.holder, made.other = holder, other  # type: ignore[attr-defined]
    qtbot.addWidget(holder)
    holder.show()
    qtbot.waitExposed(holder)
    holder.activateWindow()
    qtbot.waitUntil(holder.isActiveWindow)
    made.show_value(2.0)
    made.setFocus()
    return made


def test_typing_is_tried_echoed_and_entered_once(entry: TextEntry, qtbot: QtBot) -> None:
    tried, entered = [], []
    entry.tried.connect(tried.append)
    entry.entered.connect(entered.append)
    entry.line.selectAll()
    qtbot.keyClicks(entry.line, "12' 6\"")
    assert tried[-1] == pytest.approx(3.81)
    assert entry.echo_label.text() == "= 3.81 m, 12' 6\""
    assert entry.busy
    qtbot.keyClick(entry.line, Qt.Key.Key_Return)
    entry.other.setFocus()  # type: ignore[attr-defined]
    assert entered == [pytest.approx(3.81)]
    assert entry.line.text() == "3.81 m"


def test_a_slip_is_said_at_the_field_and_takes_nothing(entry: TextEntry, qtbot: QtBot) -> None:
    with qtbot.waitSignal(entry.left):
        entry.line.selectAll()
        qtbot.keyClicks(entry.line, "180")
        qtbot.keyClick(entry.line, Qt.Key.Key_Return)
    assert "outside 0.10 m to 40.00 m" in entry.fault
    assert entry.fault_label.isVisible()
    assert entry.line.accessibleDescription() == entry.fault
    assert entry.value == 2.0


def test_escape_puts_the_old_value_back(entry: TextEntry, qtbot: QtBot) -> None:
    qtbot.keyClicks(entry.line, "7")
    with qtbot.waitSignal(entry.left):
        qtbot.keyClick(entry.line, Qt.Key.Key_Escape)
    assert entry.line.text() == "2.00 m"
    assert entry.fault == ""


def test_differing_things_show_no_value(qtbot: QtBot, theme) -> None:
    text = TextEntry("Height", length_reading(0.1, 40.0, "metric"))
    choice = ChoiceEntry("Roof", (("flat", "flat"), ("hip", "hip")))
    check = CheckEntry("Evergreen", "Evergreen")
    words = ParagraphEntry("Note")
    for part in (text, choice, check, words):
        qtbot.addWidget(part)
        part.show_value(MIXED)
    assert text.line.text() == ""
    assert text.line.placeholderText() == "several values"
    assert choice.combo.currentIndex() == -1
    assert check.check.checkState() == Qt.CheckState.PartiallyChecked
    assert words.text.placeholderText() == "several values"


def test_a_choice_keeps_a_value_it_does_not_know(qtbot: QtBot, theme) -> None:
    choice = ChoiceEntry("Rootstock", ((None, "usual"), ("M26", "M26")))
    qtbot.addWidget(choice)
    choice.show_value("X99")
    assert choice.combo.currentText() == "X99"


def test_the_wheel_changes_no_choice(qtbot: QtBot, theme) -> None:
    choice = ChoiceEntry("Roof", (("flat", "flat"), ("hip", "hip")))
    qtbot.addWidget(choice)
    choice.show_value("flat")
    assert not choice.combo.hasFocus()
    from PySide6.QtCore import QPoint, QPointF
    from PySide6.QtGui import QWheelEvent

    event = QWheelEvent(
        QPointF(5, 5), QPointF(5, 5), QPoint(0, 0), QPoint(0, -120), Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )
    choice.combo.wheelEvent(event)
    assert choice.combo.currentText() == "flat"
    assert not event.isAccepted()


def test_heights_above_the_sea_are_whole_feet_or_metres() -> None:
    feet, metres = (elevation_reading(-450, 5000, units) for units in ("imperial", "metric"))
    assert feet.show(136.0) == "446 ft"
    assert metres.show(136.4) == "136 m"
    assert metres.read(metres.show(1250.0)) == pytest.approx(1250.0)
    assert feet.read("446 ft") == pytest.approx(446 * 0.3048)
    assert feet.read("") is None
    with pytest.raises(EntryError, match="6000 m is outside -450 m to 5000 m"):
        metres.read("6000")
