from __future__ import annotations

from collections.abc import Callable

import pytest
from attrs import evolve
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot
from support import builders
from support.orchards import MEANS
from support.widgets import too_small, unnamed

from yardplan.arrange.partners import _rank
from yardplan.plants.pollen import sets_fruit
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.panels.partner_list import PartnerList
from yardplan.yard import edits
from yardplan.yard.ground import Building
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]
_LIBERTY = PlantKey("apple", "Liberty")


@pytest.fixture
def partners(qtbot: QtBot, opened: Opened, theme) -> PartnerList:
    made = PartnerList(opened(builders.yard_of(builders.plant("A1", "apple:Liberty", (10, 10)))))
    qtbot.addWidget(made)
    made.resize(290, 500)
    made.show()
    return made


def keys(partners: PartnerList) -> list[PlantKey]:
    return [partners.rows.row(n).suggestion.key for n in range(partners.rows.rowCount())]


def test_model_keeps_qts_rules(partners: PartnerList, qtmodeltester) -> None:
    partners.show_for(_LIBERTY, "A1")
    qtmodeltester.check(partners.rows)


def test_listed_partners_do_set_fruit_and_none_is_a_clone(partners: PartnerList) -> None:
    partners.show_for(_LIBERTY, "A1")
    known = partners._open_yard.catalogue
    assert keys(partners)
    for key in keys(partners):
        assert key != _LIBERTY
        assert sets_fruit(known.cultivars[key], known.cultivars[_LIBERTY]).verdict != "no"
    assert partners.title.text() == "Partners for Liberty (A1)"
    assert "trunk to trunk" in partners.note.text()


def test_each_partner_tells_when_it_ripens_beside_the_plant(partners: PartnerList) -> None:
    """Order stays by pollination; the dates let a person spread the harvest."""
    yard = partners._open_yard.yard
    partners._open_yard.commit("Climate", edits.set_site(yard, monthly_means=MEANS))
    partners.show_for(_LIBERTY, "A1")
    rows = [partners.rows.row(n) for n in range(partners.rows.rowCount())]
    assert [row.suggestion for row in rows] == sorted((row.suggestion for row in rows), key=_rank)
    dated = [row for row in rows if row.ripens.startswith("ripens ")]
    beside = {row.ripens.rpartition(", ")[2] for row in dated}
    assert beside & {"before Liberty", "with Liberty", "after Liberty"}
    assert all(row.ripens in row.spoken for row in rows)
    assert {row.ripens for row in rows if row not in dated} <= {"when it ripens is not known here"}
    partners.show_for_all()
    assert all(partners.rows.row(n).ripens for n in range(partners.rows.rowCount()))


def test_a_plant_only_in_hand_can_be_asked_for(partners: PartnerList) -> None:
    partners.show_for(PlantKey("apple", "Jonathan"), None)
    assert keys(partners)
    assert PlantKey("apple", "Jonathan") not in keys(partners)
    assert partners._open_yard.yard.find("Q1") is None


def test_choosing_takes_in_hand_and_tells_where(partners: PartnerList, qtbot: QtBot) -> None:
    partners.show_for(_LIBERTY, "A1")
    box = partners.view.visualRect(partners.rows.index(1))
    with qtbot.waitSignal(partners.chosen) as seen:
        qtbot.mouseClick(partners.view.viewport(), Qt.MouseButton.LeftButton, pos=box.center())
    assert partners._open_yard.in_hand == InHand(plant=keys(partners)[1], near=("A1",))
    key, anchor, near = seen.args
    assert (key, anchor) == (keys(partners)[1], "A1")
    assert near > 1.0
    assert partners.reasons.isVisible()


def test_enter_takes_too(partners: PartnerList, qtbot: QtBot) -> None:
    partners.show_for(_LIBERTY, "A1")
    partners.view.setCurrentIndex(partners.rows.index(0))
    qtbot.keyClick(partners.view, Qt.Key.Key_Return)
    assert partners._open_yard.in_hand == InHand(plant=keys(partners)[0], near=("A1",))


def test_the_whole_yard_gets_the_fewest_additions(partners: PartnerList) -> None:
    partners.show_for_all()
    assert partners.rows.rowCount() >= 1
    assert "A1" in partners.rows.row(0).spoken


def test_a_yard_that_lacks_nothing_says_so(qtbot: QtBot, opened: Opened, theme) -> None:
    made = PartnerList(opened(builders.yard_of(builders.plant("C1", "sour cherry:Montmorency", (10, 10)))))
    qtbot.addWidget(made)
    made.show_for_all()
    assert "has what it needs" in made.note.text()


def test_everything_has_a_name_and_is_large_enough(partners: PartnerList) -> None:
    partners.show_for(_LIBERTY, "A1")
    assert unnamed(partners) == []
    assert too_small(partners) == []
    assert not partners.grab().isNull()


def test_a_full_yard_says_that_there_is_no_room(qtbot: QtBot, opened: Opened, theme) -> None:
    house = Building(id="H1", footprint=((0.0, 5.0), (30.0, 5.0), (30.0, 20.0), (0.0, 20.0)))
    yard = builders.yard_of(builders.plant("A1", "apple:Liberty", (15.0, 4.7)), buildings=(house,))
    made = PartnerList(opened(evolve(yard, lot=((0.0, 4.4), (30.0, 4.4), (30.0, 20.0), (0.0, 20.0)))))
    qtbot.addWidget(made)
    made.show_for(_LIBERTY, "A1")
    assert made.rows.rowCount() > 0
    assert not made.rows.row(0).room
    assert "No clear ground" in made.note.text()
    made._open_yard.commit("Open", builders.yard_of(builders.plant("A1", "apple:Liberty", (15.0, 10.0))))
    made.show_for(_LIBERTY, "A1")
    assert made.rows.row(0).room
    assert "No clear ground" not in made.note.text()


def test_reasons_name_all_that_an_addition_is_for(qtbot: QtBot, opened: Opened, theme) -> None:
    made = PartnerList(opened(builders.yard_of(
        builders.plant("A1", "apple:Empire", (4, 5)), builders.plant("A2", "apple:Empire", (9, 5)),
    )))
    qtbot.addWidget(made)
    made.show()
    made.show_for_all()
    assert made.rows.row(0).near == ("A1", "A2")
    made.view.setCurrentIndex(made.rows.index(0))
    assert "of Empire (A1) and Empire (A2)" in made.reasons.text()


def test_brought_up_with_a_plant_selected_it_answers_for_that_plant(
    qtbot: QtBot, partners: PartnerList
) -> None:
    """Neither an empty list nor a question that the person has answered already."""
    yard = partners._open_yard
    assert partners.rows.rowCount() == 0
    yard.select({"A1"})
    qtbot.waitUntil(lambda: partners.rows.rowCount() > 0)
    assert partners.title.text() == "Partners for Liberty (A1)"
    partners.show_for_all()
    title = partners.title.text()
    yard.select(())
    yard.select({"A1"})
    qtbot.wait(20)
    assert partners.title.text() == title
    partners.hide()
    partners.show()
    qtbot.waitUntil(lambda: partners.title.text() == "Partners for Liberty (A1)")
    partners.hide()
    yard.select(())
    yard.take_in_hand(InHand(plant=PlantKey("apple", "Gala")))
    partners.show()
    qtbot.waitUntil(lambda: partners.title.text() == "Partners for Gala")
