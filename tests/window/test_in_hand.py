from __future__ import annotations

from collections.abc import Callable

import pytest
from attrs import evolve
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.panels.facts import CHECKS_OF, facts_of, plant_in_hand, selected_plant
from yardplan.window.panels.in_hand import InHandCard
from yardplan.yard import edits
from yardplan.yard.planting import PlantKey
from yardplan.yard.site import Site, Soil
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


def yard() -> Yard:
    site = Site(name="Test", latitude=42.4, longitude=-76.5, zone="5b", soil=Soil(ph=7.4))
    return builders.yard_of(
        builders.plant("A1", "apple:Liberty", (4, 5)), builders.plant("A2", "apple:Jonathan", (6, 5)),
        builders.plant("A3", "apple:Enterprise", (18, 12)), width=40, site=site,
    )


@pytest.fixture
def card(qtbot: QtBot, opened: Opened, theme) -> InHandCard:
    made = InHandCard(opened(yard()), about=selected_plant)
    qtbot.addWidget(made)
    made.resize(290, 300)
    made.show()
    return made


def facts(card: InHandCard, about=selected_plant) -> dict:
    subject = about(card._open_yard)
    assert subject is not None
    return {fact.name: fact for fact in facts_of(card._open_yard, subject)}


def test_with_nothing_in_hand_it_goes_away(card: InHandCard) -> None:
    card._open_yard.select(())
    card.refresh()
    assert not card.isVisible()
    card._open_yard.select({"A1", "A2"})
    card.refresh()
    assert not card.isVisible()


def test_a_plant_in_hand_shows_size_and_what_is_not_known_yet(card: InHandCard) -> None:
    card._about = plant_in_hand
    card._open_yard.take_in_hand(InHand(plant=PlantKey("apple", "Liberty"), rootstock="M26"))
    card.refresh()
    assert card.kicker.text() == "in hand · apple on M26"
    assert card.title.text() == "Liberty"
    assert "at full size" in card.size_text.text()
    found = facts(card, plant_in_hand)
    assert found["Room"].sign == "unknown"
    assert found["Partner"].value == "needs a partner"
    card.away_button.click()
    assert card._open_yard.in_hand is None


def test_a_plant_in_hand_tells_about_the_place_it_is_tried_at(card: InHandCard) -> None:
    open_yard = card._open_yard
    card._about = plant_in_hand
    open_yard.take_in_hand(InHand(plant=PlantKey("apple", "Akane")))
    tried = builders.plant("A4", "apple:Akane", (4.5, 5.5))
    open_yard.show_trial(edits.add(open_yard.yard, tried))
    assert facts(card, plant_in_hand)["Room"].sign == "conflict"
    open_yard.drop_trial()
    assert facts(card, plant_in_hand)["Room"].sign == "unknown"


def test_too_little_room_is_a_conflict_and_enough_is_good(card: InHandCard) -> None:
    open_yard = card._open_yard
    open_yard.select({"A1"})
    assert facts(card)["Room"].sign == "conflict"
    assert "too close" in facts(card)["Room"].value
    open_yard.select({"A3"})
    assert facts(card)["Room"].sign == "good"
    assert facts(card)["Room"].detail.startswith("nearest ")


def test_sun_shows_once_the_light_is_there(card: InHandCard, qtbot: QtBot) -> None:
    open_yard = card._open_yard
    open_yard.select({"A3"})
    qtbot.waitUntil(lambda: open_yard.light is not None, timeout=20_000)
    sun = facts(card)["Sun"]
    assert sun.value.endswith("h a day")
    assert sun.sign == "good"


def test_the_partner_is_named_with_its_distance(card: InHandCard, qtbot: QtBot) -> None:
    open_yard = card._open_yard
    open_yard.select({"A1"})
    partner = facts(card)["Partner"]
    assert "Jonathan (A2), 2.0 m" in partner.value
    alone = edits.remove(open_yard.yard, {"A2", "A3"})
    open_yard.commit("Remove", alone)
    qtbot.waitUntil(lambda: facts(card)["Partner"].sign == "conflict")


def test_the_crop_to_expect_is_said_plainly(card: InHandCard) -> None:
    open_yard = card._open_yard
    open_yard.commit("Two", builders.yard_of(
        builders.plant("A1", "apple:Empire", (4, 4)), builders.plant("A2", "apple:Gala", (9, 4)),
        builders.plant("CS1", "sour cherry:Montmorency", (14, 4)),
    ))
    open_yard.select({"A1"})
    assert (facts(card)["Fruit"].sign, facts(card)["Fruit"].value) == ("good", "will set well")
    assert facts(card)["Fruit"].detail == "takes all of its pollen"
    open_yard.select({"CS1"})
    fruit = facts(card)["Fruit"]
    assert (fruit.sign, fruit.value) == ("good", "sets by itself")
    assert "raise set" in fruit.detail
    open_yard.commit("One", edits.remove(open_yard.yard, {"A2"}))
    open_yard.select({"A1"})
    assert (facts(card)["Fruit"].sign, facts(card)["Fruit"].value) == ("conflict", "will not set")


def test_winter_and_soil_tell_good_from_bad_and_from_not_known(card: InHandCard) -> None:
    open_yard = card._open_yard
    open_yard.select({"A1"})
    assert (facts(card)["Winter"].sign, facts(card)["Winter"].value) == ("good", "hardy")
    assert facts(card)["Soil"].sign in ("advice", "caution")
    bare = evolve(open_yard.yard, site=evolve(open_yard.yard.site, zone=None, soil=Soil()))
    open_yard.commit("Forget", bare)
    assert facts(card)["Winter"].sign == "unknown"
    assert (facts(card)["Soil"].sign, facts(card)["Soil"].value) == ("unknown", "pH not known")
    cold = evolve(open_yard.yard, site=evolve(open_yard.yard.site, zone="2a"))
    open_yard.commit("Cold", cold)
    assert facts(card)["Winter"].sign in ("caution", "conflict")


def test_a_drag_renews_the_card(card: InHandCard, qtbot: QtBot) -> None:
    open_yard = card._open_yard
    open_yard.select({"A1"})
    qtbot.waitUntil(lambda: card.lines[3].fact.sign == "conflict")
    open_yard.show_trial(edits.move(open_yard.yard, {"A1"}, (4.0, 8.0)))
    qtbot.waitUntil(lambda: card.lines[3].fact.sign == "good")
    open_yard.drop_trial()
    qtbot.waitUntil(lambda: card.lines[3].fact.sign == "conflict")


def test_the_year_shows_the_size_then(card: InHandCard) -> None:
    card._open_yard.select({"A1"})
    card._open_yard.set_year(4)
    card.refresh()
    assert "year 4: about" in card.size_text.text()


def test_names_from_a_file_are_never_read_as_markup(card: InHandCard) -> None:
    open_yard = card._open_yard
    odd = edits.change(open_yard.yard, {"A1"}, plant=PlantKey("apple", "<b>Bold</b> & <img src=x>"))
    open_yard.commit("Odd", odd)
    open_yard.select({"A1"})
    card.refresh()
    assert card.title.text() == "<b>Bold</b> & <img src=x>"
    assert card.title.textFormat() == Qt.TextFormat.PlainText


def test_the_card_keeps_its_height_while_facts_change(card: InHandCard) -> None:
    open_yard = card._open_yard
    open_yard.select({"A1"})
    card.refresh()
    before = card.sizeHint().height()
    open_yard.show_trial(edits.move(open_yard.yard, {"A1"}, (4.0, 8.0)))
    card.refresh()
    assert card.sizeHint().height() == before
    assert all(line.toolTip() for line in card.lines[:6])


def test_links_ask_for_card_and_partners(card: InHandCard, qtbot: QtBot) -> None:
    card._open_yard.select({"A1"})
    card.refresh()
    with qtbot.waitSignal(card.card_wanted) as seen:
        card.facts_button.click()
    assert seen.args == [PlantKey("apple", "Liberty")]
    with qtbot.waitSignal(card.partners_wanted) as asked:
        card.partners_button.click()
    assert asked.args == [PlantKey("apple", "Liberty"), "A1"]


def test_every_check_is_named_as_the_house_names_it() -> None:
    from yardplan.checks.run import CHECKS

    spoken = {name for names in CHECKS_OF.values() for name in names}
    assert spoken <= {check.name for check in CHECKS}


def test_findings_of_other_checks_get_a_line_of_their_own(card: InHandCard) -> None:
    open_yard = card._open_yard
    odd = edits.change(open_yard.yard, {"A3"}, plant=PlantKey("apple", "Nobody's"))
    open_yard.commit("Odd", odd)
    open_yard.select({"A3"})
    card.refresh()
    assert facts(card)["Also"].sign == "caution"
    assert card.lines[-1].isVisible()
    open_yard.select({"A1"})
    card.refresh()
    assert not card.lines[-1].isVisible()


def test_everything_has_a_name_and_is_large_enough(card: InHandCard) -> None:
    card._open_yard.select({"A1"})
    card.refresh()
    assert unnamed(card) == []
    assert too_small(card) == []
