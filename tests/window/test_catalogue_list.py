from __future__ import annotations

from collections.abc import Callable

import pytest
from attrs import evolve
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.plants.catalogue import catalogue
from yardplan.plants.chill import site_chill
from yardplan.plants.cultivar import SelfFruit
from yardplan.plants.finder import hardy_in
from yardplan.plants.growth import mature_size
from yardplan.window.canvas.plant_drop import PLANT_MIME
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.panels.catalogue_filter import Asked, listed, memory_columns, zone_words
from yardplan.window.panels.catalogue_list import CatalogueList
from yardplan.window.panels.catalogue_rows import spoken
from yardplan.yard.ground import Barrier
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
    choose.filters.ticks["hardy"].setChecked(True)
    choose.filters.ticks["alone"].setChecked(True)
    keys = shown(choose)
    assert keys
    for key in keys:
        cultivar = known.cultivars[key]
        assert hardy_in(cultivar, site.zone) is True
        assert cultivar.self_fruitful is SelfFruit.YES
    choose.filters.ticks["hardy"].setChecked(False)
    choose.filters.ticks["alone"].setChecked(False)
    choose.filters.ticks["thornless"].setChecked(True)
    assert {known.cultivars[key].thornless for key in shown(choose)} == {"yes"}
    choose.filters.ticks["thornless"].setChecked(False)
    choose.filters.ticks["container"].setChecked(True)
    assert all(known.cultivars[key].container.startswith("yes") for key in shown(choose))


def test_chill_ripening_and_width_are_asked_for(choose: CatalogueList) -> None:
    known = catalogue()
    open_yard = choose._open_yard
    assert not choose.filters.ticks["chilled"].isEnabled()
    means = (12.0, 12.5, 14.0, 16.0, 19.0, 23.0, 26.0, 26.0, 24.0, 20.0, 16.0, 13.0)
    mild = evolve(open_yard.yard.site, monthly_means=means)
    open_yard.commit("Mild winters", evolve(open_yard.yard, site=mild))
    choose.filters.ticks["chilled"].setChecked(True)
    chill = site_chill(mild)
    assert chill is not None
    assert shown(choose)
    assert all(known.cultivars[key].chill_hours[0] <= chill.hours for key in shown(choose))
    choose.filters.ticks["chilled"].setChecked(False)
    choose.filters.ripens.setCurrentIndex(choose.filters.ripens.findData("late"))
    choose.refresh()
    assert all("late" in known.cultivars[key].harvest_season.lower() for key in shown(choose))
    choose.filters.widest.line.setText("1.5 m")
    choose.filters.widest.line.setModified(True)
    choose.filters.widest.finish()
    keys = shown(choose)
    assert keys
    for key in keys:
        assert mature_size(known, builders.plant("X1", str(key), (0, 0))).spread <= 1.5
    assert choose.filter_button.text() == "Filter: 2"


def test_sun_at_the_selected_plant_is_asked_for(choose: CatalogueList, qtbot: QtBot) -> None:
    open_yard = choose._open_yard
    dark = builders.yard_of(
        builders.plant("A1", "apple:Liberty", (15, 1.2)),
        barriers=(Barrier(id="F1", line=((0.0, 0.0), (30.0, 0.0)), height=9.0),
                  Barrier(id="F2", line=((0.0, 2.5), (30.0, 2.5)), height=9.0)),
    )
    open_yard.new(dark)
    assert not choose.filters.ticks["sunny"].isEnabled()
    open_yard.select({"A1"})
    qtbot.waitUntil(lambda: choose.filters.spot_hours() is not None, timeout=20_000)
    choose.filters.refresh()
    choose.filters.ticks["sunny"].setChecked(True)
    hours = choose.filters.spot_hours()
    known = catalogue()
    assert hours < 6
    assert choose.filters.ticks["sunny"].text() == f"For {hours:.1f} h of sun"
    assert shown(choose)
    assert all(known.crops[key.crop].sun_needed <= hours for key in shown(choose))


def test_filter_by_kind(choose: CatalogueList) -> None:
    choose.crops.setCurrentIndex(choose.crops.findData("european plum"))
    choose.refresh()
    assert {key.crop for key in shown(choose)} == {"european plum"}


def test_hardy_here_needs_the_sites_zone(choose: CatalogueList) -> None:
    open_yard = choose._open_yard
    choose.filters.ticks["hardy"].setChecked(True)
    yard = open_yard.yard
    open_yard.commit("Forget the zone", evolve(yard, site=evolve(yard.site, zone=None)))
    assert not choose.filters.ticks["hardy"].isEnabled()
    assert not choose.filters.ticks["hardy"].isChecked()
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
    choose.filter_button.setChecked(True)
    assert unnamed(choose) == []
    assert too_small(choose) == []
    assert not choose.grab().isNull()


def test_a_slip_finds_what_was_meant_and_nonsense_says_what_to_try(choose: CatalogueList) -> None:
    """An empty list alone would leave a beginner who cannot spell Honeycrisp without an apple."""
    choose.search.setText("honeycrip")
    assert PlantKey("apple", "Honeycrisp") in shown(choose)
    assert choose.count.text().startswith("Nothing is called 'honeycrip'")
    choose.search.setText("bluberry, northern")
    assert choose.count.text().startswith("Nothing is called")
    choose.search.setText("aple")
    assert {key.crop for key in shown(choose)} >= {"apple"}
    choose.search.setText("qwertzuio")
    assert not shown(choose)
    assert "Try fewer letters" in choose.count.text()
    choose.crops.setCurrentIndex(choose.crops.findData("quince"))
    choose.search.setText("liberty")
    choose.refresh()
    assert "ask for all kinds" in choose.count.text()
