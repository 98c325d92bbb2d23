"""The lot line from a deed in the real window: keys, the plan while typing, and the figures kept."""

import json
import math

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from support.builders import yard_of
from support.window_hands import trigger

from yardplan.units import FOOT
from yardplan.window.dialogs.deed_box import DeedBox
from yardplan.yard import edits


@pytest.fixture
def box(make_window):
    window = make_window(edits.set_site(yard_of(), units="imperial"))
    trigger(window, "deed")
    (found,) = window.findChildren(DeedBox)
    return window, found


def _lengths(lot):
    return [math.dist(a, b) / FOOT for a, b in zip(lot, (*lot[1:], lot[0]), strict=True)]


def test_calls_are_typed_seen_and_taken_by_keys(box, tmp_path):
    window, deed = box
    before = window.open_yard.yard.lot
    deed.start.selectAll()
    QTest.keyClicks(deed.start, "10; 20'")
    deed.calls.setFocus()
    for number, line in enumerate(("N 45-30-15 E 100.50", "S 44-29-45 E 60.25", "S 45-30-15 W 100.5")):
        if number:
            QTest.keyClick(deed.calls, Qt.Key.Key_Return)
        QTest.keyClicks(deed.calls, line)
    assert "in line 2, or a call left out" in deed.fault.text()
    assert not deed.told.text()
    assert window.open_yard.shown_yard.lot == before
    QTest.keyClick(deed.calls, Qt.Key.Key_Return)
    QTest.keyClicks(deed.calls, "N 44-29-45 W 60.30 ft")
    assert "by 0.05 ft, 1 part in 6,43" in deed.told.text()
    assert "6,058 sq ft, 321.55 ft round" in deed.told.text()
    assert window.open_yard.shown_yard.lot != before == window.open_yard.yard.lot
    seen, view = window.canvas.rect(), window.canvas.view
    assert all(seen.contains(view.to_pixels(p).toPoint()) for p in window.open_yard.shown_yard.lot)
    QTest.keyClick(deed.calls, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert deed.isHidden()
    assert window.open_yard.undo_stack.undoText() == "Draw the lot line from a deed"
    window.open_yard.save(tmp_path / "deed.yard")
    lot = json.loads((tmp_path / "deed.yard").read_text(encoding="utf-8"))["lot"]
    assert len(lot) == 4
    assert lot[0] == pytest.approx([10 * FOOT, 20 * FOOT], abs=1e-9)
    # The error of 0.05 ft lies along the second and fourth call: each takes its share of the way, by hand.
    share = 0.05 / 321.55
    by_hand = [100.5, 60.25 * (1 + share), 100.5, 60.30 * (1 - share)]
    assert _lengths(lot) == pytest.approx(by_hand, abs=1e-4)
    window.open_yard.undo_stack.undo()
    assert window.open_yard.yard.lot == before


def test_calls_that_do_not_close_are_told_and_not_drawn(box):
    window, deed = box
    before = window.open_yard.yard
    deed.calls.setPlainText("E 100\nN 60\nW 110\nS 60")
    assert deed.fault.text() == (
        "The walk ends 10.00 ft from its beginning, too far to share out. A wrong length in line 1 or 3, or "
        "a call left out, would explain it"
    )
    assert not deed.buttons.button(deed.buttons.StandardButton.Ok).isEnabled()
    QTest.keyClick(deed.calls, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert deed.isVisible()
    QTest.keyClick(deed, Qt.Key.Key_Escape)
    assert window.open_yard.shown_yard is window.open_yard.yard is before
