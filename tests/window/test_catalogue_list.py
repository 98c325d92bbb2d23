from __future__ import annotations

from collections.abc import Callable

import pytest
from attrs import evolve
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.plants.catalogue import catalogue
from yardplan.plants.cultivar import SelfFruit
from yardplan.plants.finder import hardy_in
from yardplan.window.canvas.plant_drop import PLANT_MIME
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.panels.catalogue_filter import Asked, listed, memory_columns, zone_words
from yardplan.window.panels.catalogue_list import CatalogueList
from yardplan.window.panels.catalogue_rows import spoken
from yardplan.yard.planting import PlantKey
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


@pytest.fixture
def choose(qtbot: QtBot, opened: Opened, theme) -> CatalogueList:
    made = CatalogueList(opened(builders.yard_of()))
    qtbot.addWidget(made)
    made.resize(300, 600)
    made.show()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def shown(choose: CatalogueList) -> list[PlantKey]:
    return [choose.rows.cultivar(row).key for row in range(choose.rows.rowCount())]


def test_model_keeps_qts_rules(choose: CatalogueList, qtmodeltester) -> None:
    qtmodeltester.check(choose.rows)


def test_all_varieties_are_listed_until_asked_for_less(choose: CatalogueList) -> None:
    assert choose.rows.rowCount() == len(catalogue().cultivars)
    assert choose.count.text().startswith(f"{len(catalogue().cultivars)} varieties")


def test_typing_finds_and_enter_takes_the_first_in_hand(choose: CatalogueList, qtbot: QtBot) -> None:
    choose.search.setFocus()
    qtbot.keyClicks(choose.search, "egremont")
    assert shown(choose)[0] == PlantKey("apple", "Egremont Russet")
    qtbot.keyClick(choose.search, Qt.Key.Key_Return)
    assert choose._open_yard.in_hand == InHand(plant=PlantKey("apple", "Egremont Russet"))


def test_arrow_down_goes_to_the_list_and_enter_takes(choose: CatalogueList, qtbot: QtBot) -> None:
    choose.search.setFocus()
    qtbot.keyClicks(choose.search, "russet")
    qtbot.keyClick(choose.search, Qt.Key.Key_Down)
    assert choose.view.hasFocus()
    qtbot.keyClick(choose.view, Qt.Key.Key_Down)
    qtbot.keyClick(choose.view, Qt.Key.Key_Return)
    assert choose._open_yard.in_hand is not None
    assert choose._open_yard.in_hand.plant == shown(choose)[1]


def test_a_click_takes_in_hand(choose: CatalogueList, qtbot: QtBot) -> None:
    box = choose.view.visualRect(choose.rows.index(2))
    qtbot.mouseClick(choose.view.viewport(), Qt.MouseButton.LeftButton, pos=box.center())
    assert choose._open_yard.in_hand == InHand(plant=shown(choose)[2])


def test_filters_let_through_what_they_promise(choose: CatalogueList) -> None:
    known, site = catalogue(), choose._open_yard.shown_yard.site
    choose.ticks["hardy"].setChecked(True)
    choose.ticks["alone"].setChecked(True)
    keys = shown(choose)
    assert keys
    for key in keys:
        cultivar = known.cultivars[key]
        assert hardy_in(cultivar, site.zone) is True
        assert cultivar.self_fruitful is SelfFruit.YES
    choose.ticks["hardy"].setChecked(False)
    choose.ticks["alone"].setChecked(False)
    choose.ticks["thornless"].setChecked(True)
    assert {known.cultivars[key].thornless for key in shown(choose)} == {"yes"}
    choose.ticks["thornless"].setChecked(False)
    choose.ticks["container"].setChecked(True)
    assert all(known.cultivars[key].container.startswith("yes") for key in shown(choose))


def test_filter_by_kind(choose: CatalogueList) -> None:
    choose.crops.setCurrentIndex(choose.crops.findData("european plum"))
    choose.refresh()
    assert {key.crop for key in shown(choose)} == {"european plum"}


def test_hardy_here_needs_the_sites_zone(choose: CatalogueList) -> None:
    open_yard = choose._open_yard
    choose.ticks["hardy"].setChecked(True)
    yard = open_yard.yard
    open_yard.commit("Forget the zone", evolve(yard, site=evolve(yard.site, zone=None)))
    assert not choose.ticks["hardy"].isEnabled()
    assert not choose.ticks["hardy"].isChecked()
    assert choose.rows.rowCount() == len(catalogue().cultivars)


def test_rootstock_changes_the_size_in_hand(choose: CatalogueList) -> None:
    open_yard = choose._open_yard
    choose.take(PlantKey("apple", "Liberty"))
    assert choose.forms.isVisible()
    sizes = set()
    for stock in ("M27", "M25"):
        choose.forms.rootstock.setCurrentIndex(choose.forms.rootstock.findData(stock))
        choose.forms.rootstock.activated.emit(choose.forms.rootstock.currentIndex())
        assert open_yard.in_hand is not None
        assert open_yard.in_hand.rootstock == stock
        choose.in_hand.refresh()
        sizes.add(choose.in_hand.size_text.text())
    assert len(sizes) == 2
    open_yard.take_in_hand(None)
    assert not choose.forms.isVisible()
    assert choose.view.selectedIndexes() == []


def test_dragging_out_carries_the_plants_key(choose: CatalogueList) -> None:
    data = choose.rows.mimeData([choose.rows.index(0)])
    assert PlantKey.parse(bytes(data.data(PLANT_MIME).data()).decode()) == shown(choose)[0]


def test_own_varieties_appear_at_once(choose: CatalogueList) -> None:
    open_yard = choose._open_yard
    record = {"crop": "apple", "name": "Aunt Meta", "self_fruitful": "no"}
    open_yard.commit("Add Aunt Meta", evolve(open_yard.yard, own_cultivars=(record,)))
    assert PlantKey("apple", "Aunt Meta") in shown(choose)


def test_memory_is_said_in_words() -> None:
    known = catalogue()
    from_memory = next(c for c in known.cultivars.values() if memory_columns(c))
    confirmed = next(c for c in known.cultivars.values() if not memory_columns(c))
    assert "from memory" in spoken(from_memory)
    assert "from memory" not in spoken(confirmed)


def test_no_variety_is_listed_twice_and_words_never_add() -> None:
    every = listed(catalogue(), Asked(), Site())
    assert len({c.key for c in every}) == len(every)
    assert {c.key for c in listed(catalogue(), Asked(words="early"), Site())} < {c.key for c in every}


def test_zones_read_as_a_span() -> None:
    known = catalogue()
    liberty = known.cultivars[PlantKey("apple", "Liberty")]
    assert zone_words(liberty) == f"zones {liberty.zone_min}–{liberty.zone_max}"


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_everything_has_a_name_and_is_large_enough(choose: CatalogueList, theme, scheme: str) -> None:
    theme.choose(scheme)
    choose.take(PlantKey("apple", "Liberty"))
    assert unnamed(choose) == []
    assert too_small(choose) == []
    assert not choose.grab().isNull()
