"""A first yard from the start panel in at most 40 actions: five plants, all set fruit, nothing left."""

from __future__ import annotations

import math

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from support.window_hands import drag, pixel

from yardplan.checks.finding import Weight
from yardplan.checks.pollination import outlooks_for
from yardplan.plants.fruit_set import fruit_sets
from yardplan.window.panels.findings_list import PARTNER_STEP

#: From the issue: clicks, drags and typed fields of the whole way.
MOST = 40


class Newcomer:
    """Mouse and keyboard of somebody at the window; every click, drag, key and typed text is counted."""

    def __init__(self, window, qtbot):
        self.window, self.qtbot = window, qtbot
        self.did: list[str] = []

    def _count(self, what):
        self.did.append(what)

    def click(self, widget: QWidget, at: QPoint | None = None):
        assert widget.isVisible(), widget
        QTest.mouseMove(widget, at or widget.rect().center())
        QTest.mouseClick(widget, Qt.MouseButton.LeftButton, pos=at or widget.rect().center())
        self._count(f"click {widget.accessibleName() or type(widget).__name__}")

    def type(self, text):
        """Into whatever has the keyboard."""
        QTest.keyClicks(self.window.focusWidget(), text)
        self._count(f"type {text}")

    def key(self, key, keys=Qt.KeyboardModifier.NoModifier):
        QTest.keyClick(self.window.focusWidget(), key, keys)
        self._count(f"key {key.name}")

    def click_sheet(self, place):
        self.click(self.window.canvas, pixel(self.window.canvas, place))

    def drag_sheet(self, start, end):
        drag(self.window.canvas, start, end)
        self._count("drag")

    def click_card(self, row):
        cards = self.window.side.findings.cards
        self.click(cards.viewport(), cards.visualRect(cards.model().index(row)).center())

    def plant(self, words, place):
        """Search, take the first one found in hand, click where it shall stand: four actions."""
        self.key(Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
        self.type(words)
        self.key(Qt.Key.Key_Return)
        self.click_sheet(place)

    def wait(self):
        """Look at the result; no action."""
        yard = self.window.open_yard
        self.qtbot.waitUntil(lambda: not yard.checks.busy and yard.light is not None, timeout=20_000)


def left_over(window):
    return [f for f in window.open_yard.findings if f.weight is not Weight.ADVICE]


@pytest.fixture
def newcomer(make_window, qtbot):
    return Newcomer(make_window(), qtbot)


def test_five_plants_that_all_set_fruit_and_nothing_left_in_forty_actions(newcomer):
    window, yard = newcomer.window, newcomer.window.open_yard
    panel = window.start_panel
    newcomer.qtbot.waitUntil(lambda: window.isAncestorOf(window.focusWidget()) and panel.isVisible())

    # The start panel: place and size.
    newcomer.click(panel.form.place.line)
    newcomer.type("Geneva, NY")
    newcomer.key(Qt.Key.Key_Return)
    newcomer.click(panel.begin)
    assert not panel.isVisible()
    (width, depth) = yard.yard.lot[2]
    assert yard.yard.site.zone == "6b"

    # Three plants picked from the list; the second stands too near the first.
    newcomer.plant("akane", (width * 0.25, depth * 0.7))
    newcomer.plant("montmorency", (width * 0.32, depth * 0.72))
    newcomer.plant("bartlett", (width * 0.8, depth * 0.72))
    newcomer.key(Qt.Key.Key_Escape)
    newcomer.wait()
    assert {"spacing", "pollination"} <= {f.check for f in left_over(window)}

    # The cherry is dragged to open ground; the card says it is clear.
    cherry = next(p for p in yard.yard.plantings if p.plant.crop == "sour cherry")
    newcomer.drag_sheet(cherry.place, (width * 0.25, depth * 0.25))
    newcomer.wait()
    assert {f.check for f in left_over(window)} == {"pollination"}

    # Each card left offers to find a partner.
    while left_over(window) and len(newcomer.did) < MOST:
        newcomer.click_card(0)
        assert window.side.findings.step_button.text() == PARTNER_STEP
        newcomer.click(window.side.findings.step_button)
        plant_a_partner(newcomer)
        newcomer.wait()

    assert left_over(window) == []
    plants = yard.yard.plantings
    assert len(plants) == 5
    assert len({plant.plant.crop for plant in plants}) >= 2
    assert {told.expected for told in fruit_sets(outlooks_for(yard.survey))} <= {"well", "alone"}
    assert len(newcomer.did) <= MOST, newcomer.did


def roomiest(window):
    """The place of the green hatch that lies farthest from everything, as an eye would pick it."""
    ground, yard = window.open_yard.clear.ground, window.open_yard.yard
    width, depth = yard.lot[2]

    def room(spot):
        edges = (spot[0], width - spot[0], spot[1], depth - spot[1])
        return min(*edges, *(math.dist(spot, plant.place) / 2 for plant in yard.plantings))

    spots = [(width * i / 20, depth * j / 20) for i in range(1, 20) for j in range(1, 20)]
    return max((spot for spot in spots if ground.holds(spot)), key=room)


def plant_a_partner(newcomer):
    """The second one of the list, an everyday variety, planted in the roomiest clear place."""
    window = newcomer.window
    view = window.side.partners.view
    newcomer.qtbot.waitUntil(lambda: view.model().rowCount() > 1, timeout=10_000)
    newcomer.click(view.viewport(), view.visualRect(view.model().index(1)).center())
    if window.open_yard.in_hand is None:
        newcomer.key(Qt.Key.Key_Return)
    newcomer.qtbot.waitUntil(lambda: window.open_yard.clear.ground is not None, timeout=10_000)
    newcomer.click_sheet(roomiest(window))
    newcomer.key(Qt.Key.Key_Escape)
