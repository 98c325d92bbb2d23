"""The main job with the keyboard alone: place, house, plants, a conflict cleared, a fact typed, saved."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from yardplan.checks.finding import Weight
from yardplan.files.reading import read_yard

#: So many presses of Tab at most from any part of the window to any other.
MOST_TABS = 40


class Typist:
    """A keyboard. What is pressed goes to whatever has the focus."""

    def __init__(self, window, qtbot):
        self.window, self.qtbot = window, qtbot

    @property
    def focus(self):
        return QApplication.focusWidget()

    def key(self, key, keys=Qt.KeyboardModifier.NoModifier):
        QTest.keyClick(self.focus, key, keys)
        QApplication.processEvents()

    def ctrl(self, letter):
        self.key(getattr(Qt.Key, f"Key_{letter}"), Qt.KeyboardModifier.ControlModifier)

    def text(self, words, *, enter=True):
        for letter in words:
            QTest.keyClicks(self.focus, letter)
        if enter:
            self.key(Qt.Key.Key_Return)

    def tab_to(self, part):
        """Tab until a part has the focus."""
        for _ in range(MOST_TABS):
            if self.focus is part or (part.isAncestorOf(self.focus)):
                return
            self.key(Qt.Key.Key_Tab)
        raise AssertionError(f"Tab does not lead to {part.accessibleName()}")

    def wait(self):
        yard = self.window.open_yard
        self.qtbot.waitUntil(lambda: not yard.checks.busy and yard.light is not None, timeout=20_000)


@pytest.fixture
def typist(make_window, qtbot):
    return Typist(make_window(), qtbot)


def warned(window):
    return [f for f in window.open_yard.findings if f.weight is not Weight.ADVICE]


def test_the_main_job_without_a_mouse(typist, tmp_path):
    window, yard = typist.window, typist.window.open_yard
    panel = window.start_panel
    typist.qtbot.waitUntil(lambda: panel.isAncestorOf(typist.focus))

    typist.tab_to(panel.form.place)
    typist.text("Geneva, NY")
    typist.tab_to(panel.begin)
    typist.key(Qt.Key.Key_Space)
    assert yard.yard.site.zone == "6b"

    # A house by typed place and size.
    typist.tab_to(window.canvas)
    typist.key(Qt.Key.Key_B)
    typist.text("3 m; 11 m")
    typist.text("6 m x 3 m")
    typist.key(Qt.Key.Key_Escape)
    (house,) = yard.yard.buildings
    assert [round(v, 3) for v in house.footprint[2]] == [9, 14]

    # Two apples too near each other, by typed places.
    for words, place in (("akane", "4 m; 4 m"), ("gala", "5.5 m; 4 m")):
        typist.ctrl("F")
        typist.text(words)
        typist.tab_to(window.canvas)
        typist.text(place)
        typist.key(Qt.Key.Key_Escape)
    assert [p.plant.cultivar for p in yard.yard.plantings] == ["Akane", "Gala"]
    typist.wait()
    assert any(f.check == "spacing" and f.weight is Weight.CONFLICT for f in warned(window))

    # The first finding, its step by Tab and Space.
    typist.key(Qt.Key.Key_F4)
    typist.tab_to(window.side.findings.step_button)
    assert "clear place" in typist.focus.text()
    typist.key(Qt.Key.Key_Space)
    typist.qtbot.waitUntil(lambda: not window.place_commands.busy, timeout=10_000)
    typist.wait()
    assert not [f for f in warned(window) if f.weight is Weight.CONFLICT and f.check == "spacing"]

    # From the list of everything to the fields of one; then the growth, the file and the sheets.
    typist.ctrl("E")
    assert window.side.plants.isAncestorOf(typist.focus)
    typist.key(Qt.Key.Key_Up)
    assert yard.selection == {"A1"}
    typist.key(Qt.Key.Key_F2)
    typist.tab_to(window.side.fields.grid.entries["planted"])
    typist.ctrl("A")
    typist.text("2026")
    assert yard.yard.find("A1").planted == 2026
    typist.tab_to(window.year.slider)
    typist.key(Qt.Key.Key_Home)
    assert yard.year == 0

    path = tmp_path / "typed.yard"
    window.questions.save_path = lambda suggested: path
    typist.ctrl("S")
    assert read_yard(path) == yard.yard
    typist.ctrl("P")
    typist.qtbot.waitUntil(lambda: QApplication.activeWindow() is window.take_home.boxes["sheets"])
    typist.key(Qt.Key.Key_Escape)
    assert not window.take_home.boxes["sheets"].isVisible()
