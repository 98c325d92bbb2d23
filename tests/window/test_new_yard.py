from __future__ import annotations

from collections.abc import Callable

import pytest
from attrs import evolve
from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot
from support.widgets import too_small, unnamed

from yardplan.places.lookup import place_at
from yardplan.window.dialogs.new_yard import NewYardForm
from yardplan.window.dialogs.place_field import PlaceField, home_country, offered_words, position_words
from yardplan.window.dialogs.site_card import SiteCard
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.entry import TextEntry


def put(entry: TextEntry, text: str) -> None:
    """Type into a field without a window."""
    entry.line.setText(text)
    entry.line.setModified(True)
    entry.line.textEdited.emit(text)


@pytest.fixture
def form(qtbot: QtBot, theme) -> NewYardForm:
    made = NewYardForm("metric")
    qtbot.addWidget(made)
    made.show()
    return made


def test_width_and_depth_in_any_unit_make_the_lot(form: NewYardForm) -> None:
    put(form.name, "  Behind   the barn ")
    put(form.width_entry, "50 ft")
    put(form.depth_entry, "12,5")
    yard = form.yard()
    assert yard.site.name == "Behind the barn"
    assert yard.lot == ((0.0, 0.0), (15.24, 0.0), (15.24, 12.5), (0.0, 12.5))


def test_a_place_fills_in_what_is_known_of_it(form: NewYardForm) -> None:
    form.place.line.setText("Ithaca, NY")
    form.place.look_up()
    assert "42.44° N" in form.place.summary.text()
    site = form.yard().site
    assert site.zone == "6a"
    assert site.latitude == pytest.approx(42.44, abs=0.05)
    assert site.monthly_means is not None
    assert site.units == "imperial"
    assert any(origin.fact == "zone" for origin in site.origins)


def test_a_place_that_is_not_found_is_said_and_does_not_stop_the_yard(form: NewYardForm) -> None:
    form.place.line.setText("Xyzzyville")
    yard = form.yard()
    assert "no place called" in form.place.summary.text().lower()
    assert yard.site.place == "Xyzzyville"
    assert yard.site.zone is None


def test_several_places_of_one_name_are_offered(form: NewYardForm) -> None:
    form.place.line.setText("Springfield")
    form.place.look_up()
    assert form.place.choice.isVisible()
    first = form.place.facts
    form.place.choice.activated.emit(1)
    assert form.place.facts is not None
    assert first is not None
    assert form.place.facts.place != first.place


def test_a_guessed_place_is_said_and_the_list_tells_state_and_country(form: NewYardForm) -> None:
    form.place.home = "US"
    form.place.line.setText("Itaca")
    form.place.look_up()
    choice = form.place.choice
    offered = [choice.itemText(i) for i in range(choice.count())]
    assert offered[0] == "Ithaca, New York, United States"
    assert "Itacaré, Bahia, Brazil" in offered
    assert len(set(offered)) == len(offered)
    assert form.place.summary.text().startswith("Taken for Ithaca, New York, United States: ")
    choice.activated.emit(0)
    assert form.place.summary.text().startswith("Ithaca, New York, United States: ")


def test_towns_of_the_site_s_country_are_looked_for_first(theme, qtbot: QtBot) -> None:
    yard = OpenYard()
    yard.new(evolve(yard.yard, site=evolve(yard.yard.site, region="US-OH")))
    card = SiteCard(yard)
    qtbot.addWidget(card)
    assert card.place.home == "US"
    card.place.line.setText("Birmingham")
    card.place.look_up()
    assert card.place.choice.itemText(0) == "Birmingham, Alabama, United States"
    assert home_country("DE") == "DE"


def test_places_that_would_read_alike_are_told_apart(qtbot: QtBot, theme) -> None:
    twice = [evolve(place_at(41.8 + i, -80.9), name="Geneva", region="OH", country="US") for i in (0, 1)]
    assert offered_words(twice) == [
        "Geneva, Ohio, United States, 41.80° N, 80.90° W", "Geneva, Ohio, United States, 42.80° N, 80.90° W",
    ]


def test_a_position_can_be_typed(form: NewYardForm) -> None:
    form.place.line.setText("-41.3, 174.8")
    form.place.look_up()
    assert form.yard().site.southern


@pytest.mark.parametrize("text", ["0", "2 km", "wide", ""])
def test_a_side_that_cannot_be_is_refused_at_the_field(form: NewYardForm, qtbot: QtBot, text: str) -> None:
    with qtbot.waitSignal(form.ready, check_params_cb=lambda ready: not ready):
        put(form.width_entry, text)
        form.width_entry.finish()
    assert form.width_entry.fault
    assert form.faults() == [form.width_entry]


def test_feet_come_in_round_figures(qtbot: QtBot, theme) -> None:
    made = NewYardForm("imperial")
    qtbot.addWidget(made)
    assert made.width_entry.line.text() == "60'"
    made.unit_choice.entered.emit("metric")
    assert made.width_entry.line.text() == "20.00 m"
    put(made.width_entry, "12")
    made.width_entry.finish()
    made.unit_choice.entered.emit("imperial")
    assert made.width_entry.line.text() == "39' 4 1/2\""


class Around(QWidget):
    """Stands for the box around the form and writes down the keys that reach it."""

    def __init__(self, form: NewYardForm) -> None:
        super().__init__()
        QVBoxLayout(self).addWidget(form)
        self.heard: list[int] = []

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self.heard.append(event.key())


def test_enter_in_the_place_looks_up_and_goes_no_further(qtbot: QtBot, theme) -> None:
    form = NewYardForm("metric")
    around = Around(form)
    qtbot.addWidget(around)
    around.show()
    around.activateWindow()
    qtbot.waitUntil(around.isActiveWindow)
    form.place.setFocus()
    qtbot.keyClicks(form.place.line, "14850")
    qtbot.keyClick(form.place.line, Qt.Key.Key_Return)
    assert form.place.facts is not None
    assert around.heard == []
    qtbot.keyClick(form.name.line, Qt.Key.Key_Return)
    assert around.heard == [Qt.Key.Key_Return]


@pytest.mark.parametrize(
    ("where", "words"),
    [((42.441, -76.497), "42.44° N, 76.50° W"), ((-41.3, 174.8), "41.30° S, 174.80° E")],
)
def test_positions_are_said_with_their_side(where: tuple[float, float], words: str) -> None:
    assert position_words(*where) == words


@pytest.mark.parametrize("made", [lambda: NewYardForm("metric"), PlaceField])
def test_everything_has_a_name_and_is_large_enough(qtbot: QtBot, theme, made: Callable) -> None:
    widget = made()
    qtbot.addWidget(widget)
    widget.show()
    assert unnamed(widget) == []
    assert too_small(widget) == []
