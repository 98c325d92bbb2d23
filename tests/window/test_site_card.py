from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.window.dialogs.month_fields import degrees_reading
from yardplan.window.dialogs.site_card import SiteCard, origin_words
from yardplan.window.dialogs.site_meaning import meanings, notes
from yardplan.window.dialogs.site_missing import missing, missing_words
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.entry import EntryError, TextEntry
from yardplan.window.panels.site_plans import read_zone
from yardplan.yard.site import Origin, Site, Soil
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


@pytest.fixture
def card(qtbot: QtBot, opened: Opened, theme) -> SiteCard:
    made = SiteCard(opened(builders.yard_of(builders.plant("A1", "apple:Liberty", (4, 5)))))
    qtbot.addWidget(made)
    made.show()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def look_up(card: SiteCard, words: str) -> None:
    card.place.line.setText(words)
    card.place.look_up()


def test_a_look_up_fills_the_site_in_one_undo_step(card: SiteCard) -> None:
    open_yard = card._open_yard
    assert not card.take_button.isEnabled()
    look_up(card, "Ithaca, NY")
    card.take_button.click()
    site = open_yard.yard.site
    assert site.place.startswith("Ithaca")
    assert site.monthly_means is not None
    assert open_yard.undo_stack.count() == 1
    assert any(line.startswith("Hardiness zone: ") for line in origin_words(site))
    assert "Hardiness zone: " in card.origins.text()
    open_yard.undo_stack.undo()
    assert open_yard.yard.site.monthly_means is None


def test_a_typed_fact_takes_the_looked_up_origin_away(card: SiteCard, qtbot: QtBot) -> None:
    look_up(card, "Ithaca, NY")
    card.take_facts()
    entry = card.grids[1].entries["zone"]
    assert isinstance(entry, TextEntry)
    entry.setFocus()
    entry.line.selectAll()
    qtbot.keyClicks(entry.line, "5a")
    qtbot.keyClick(entry.line, Qt.Key.Key_Return)
    site = card._open_yard.yard.site
    assert site.zone == "5a"
    assert {o.fact: o.text for o in site.origins}["zone"] == "typed in"
    assert origin_words(site)[-1] == "Typed in: Hardiness zone"


def test_missing_facts_say_what_they_would_decide(card: SiteCard) -> None:
    place, winter, soil = (each.text() for each in card.missing)
    assert "country (in the US with its state) would tell" in place
    assert "Monthly means would tell when things bloom" in winter
    assert "pH would tell which fruits grow well" in soil
    # Each stands under one group of fields.
    told = [line for each in (place, winter, soil) for line in each.splitlines()]
    site = card._open_yard.yard.site
    assert sorted(told) == sorted(f"• {line}" for line in missing_words(site))
    assert missing(Site()) == [
        "latitude", "region", "elevation", "zone", "last_frost", "first_frost", "monthly_means", "soil.ph",
        "soil.texture", "soil.lime", "soil.drainage", "irrigated", "slope",
    ]
    assert len(missing_words(Site())) == 13
    assert "latitude" not in missing(Site(latitude=43.1))
    # At the very latitude that stands there until one is entered, somebody has said so.
    assert "latitude" not in missing(Site(origins=(Origin(fact="latitude", text="typed in"),)))
    assert "slope_aspect" in missing(Site(slope=0.05))
    # Lime is long dissolved in acid ground: there it decides nothing.
    assert "soil.lime" not in missing(Site(soil=Soil(ph=5.5)))
    assert "soil.lime" in missing(Site(soil=Soil(ph=7.4)))


def test_what_is_told_is_asked_for_no_more(card: SiteCard) -> None:
    assert "The slope (0 where it is level)" in card.missing[2].text()
    typed_into(card, 2, "slope", "0")
    assert "The slope (0" not in card.missing[2].text()
    typed_into(card, 2, "slope", "4")
    assert "Where the slope falls to" in card.missing[2].text()
    typed_into(card, 2, "slope_aspect", "180")
    typed_into(card, 0, "region", "US-NY")
    typed_into(card, 0, "elevation", "120 m")
    for path, value in (("irrigated", True), ("soil.lime", False)):
        card.grids[2].entries[path].entered.emit(value)
    told = {"region", "elevation", "irrigated", "soil.lime", "slope", "slope_aspect"}
    assert told.isdisjoint(missing(card._open_yard.yard.site))


def test_zones_stand_side_by_side_in_both_units(card: SiteCard) -> None:
    """Zone 6a spans -10 to -5 degrees F (USDA Plant Hardiness Zone Map 2023), H7 is colder than -20 degrees C
    (Royal Horticultural Society 2013).
    """
    typed_into(card, 1, "zone", "6a")
    assert card.meaning.rows()[:2] == [
        ("USDA zone", "6a", "−23.3 to −20.6 °C", "−10 to −5 °F"),
        ("RHS rating", "H7 or hardier", "colder than −20 °C", "colder than −4 °F"),
    ]
    typed_into(card, 1, "zone", "")
    assert card.meaning.rows() == []
    assert card.meaning.isHidden()


def test_heat_and_chill_are_told_with_the_months_and_called_estimates(card: SiteCard) -> None:
    look_up(card, "Ithaca, NY")
    card.take_facts()
    lines = {line[0]: line[1:] for line in card.meaning.rows()}
    assert re.fullmatch(r"about [\d,]+ hours", lines["Winter chill"][0])
    assert re.fullmatch(r"[\d,]+ over 10 °C", lines["Summer heat"][1])
    assert re.fullmatch(r"[\d,]+ over 50 °F", lines["Summer heat"][2])
    assert lines["AHS heat zone"][0] == "about 4, estimated"
    assert re.fullmatch(r"\d+ days over 30 °C", lines["AHS heat zone"][1])
    assert "Chill and heat are estimated" in card.meaning.note.text()


def test_chill_known_on_the_spot_wins_over_the_estimate(card: SiteCard) -> None:
    look_up(card, "Ithaca, NY")
    card.take_facts()
    entry = typed_into(card, 1, "chill_hours", "1450 h")
    assert not entry.fault
    assert ("Winter chill", "1,450 hours", "at or under 7 °C", "at or under 45 °F") in card.meaning.rows()
    assert typed_into(card, 1, "chill_hours", "-3").fault == "-3 h is outside 0 h to 5000 h"
    # Looking the place up anew forgets it.
    card.take_facts()
    assert card._open_yard.yard.site.chill_hours is None


def test_frost_days_are_told_with_their_odds() -> None:
    site = Site(last_frost="05-10", last_frost_10="05-25", first_frost="10-02", first_frost_10="09-20")
    assert notes(site) == (
        "Half the years have a frost after 10 May. One year in ten has one after 25 May. In autumn half the "
        "years have had one by 2 October. One year in ten has had one by 20 September."
    )


def test_outside_the_us_the_zone_is_only_about(card: SiteCard) -> None:
    look_up(card, "Lucca")
    card.take_facts()
    assert card.meaning.rows()[0] == (
        "USDA zone", "about 8, estimated", "−12.2 to −6.7 °C", "10 to 20 °F"
    )
    assert "may be one off" in card.meaning.note.text()
    # What is known on the spot is no estimate any more.
    typed_into(card, 1, "zone", "9a")
    assert card.meaning.rows()[0][1] == "9a"
    assert next(line.here for line in meanings(card._open_yard.yard.site)) == "9a"
    assert "may be one off" not in card.meaning.note.text()


def test_months_count_once_all_twelve_are_there(card: SiteCard) -> None:
    open_yard = card._open_yard
    values = [-4, -3, 2, 8, 14, 19, 22, 21, 17, 11, 5, -1]
    for number, (entry, value) in enumerate(zip(card.months.entries, values, strict=True)):
        assert open_yard.yard.site.monthly_means is None
        entry.line.setText(str(value))
        entry.line.setModified(True)
        entry.finish()
        if number == 4:
            assert "7 more to go" in card.months.note.text()
    assert open_yard.yard.site.monthly_means == tuple(float(v) for v in values)
    assert open_yard.undo_stack.count() == 1


def test_lows_and_highs_move_with_a_typed_mean(card: SiteCard) -> None:
    look_up(card, "Ithaca, NY")
    card.take_facts()
    before = card._open_yard.yard.site
    assert before.monthly_means is not None
    assert before.monthly_highs is not None
    july = card.months.entries[6]
    july.line.setText(f"{before.monthly_means[6] + 2:.1f}")
    july.line.setModified(True)
    july.finish()
    after = card._open_yard.yard.site
    assert after.monthly_highs is not None
    assert after.monthly_highs[6] == pytest.approx(before.monthly_highs[6] + 2)
    assert after.monthly_highs[0] == before.monthly_highs[0]
    for entry in card.months.entries:
        entry.line.setText("")
        entry.line.setModified(True)
        entry.finish()
    assert card._open_yard.yard.site.monthly_highs is None


def test_months_are_typed_in_the_yards_degrees() -> None:
    assert degrees_reading("imperial").read("50 °F") == pytest.approx(10.0)
    assert degrees_reading("metric").read("−3,5") == pytest.approx(-3.5)
    assert degrees_reading("imperial").show(10.0) == "50 °F"
    for bad in ("99 °C", "cold", "nan"):
        with pytest.raises(EntryError):
            degrees_reading("metric").read(bad)


def test_a_seen_bloom_day_is_kept_and_removed(card: SiteCard) -> None:
    for entry, text in ((card.seen.plant, "Liberty, apple"), (card.seen.day, "12 may")):
        entry.line.setText(text)
        entry.line.setModified(True)
    card.seen.add_button.click()
    assert card._open_yard.yard.site.observed_bloom == (("apple:Liberty", "05-12"),)
    card.seen._remove(0)
    assert card._open_yard.yard.site.observed_bloom == ()


def test_a_bloom_day_without_a_variety_is_refused(card: SiteCard) -> None:
    card.seen.day.line.setText("12 may")
    card.seen.day.line.setModified(True)
    card.seen.add_button.click()
    assert card.seen.plant.fault == "a variety is needed"
    assert card._open_yard.undo_stack.count() == 0


def typed_into(card: SiteCard, group: int, path: str, text: str) -> TextEntry:
    entry = card.grids[group].entries[path]
    assert isinstance(entry, TextEntry)
    entry.line.setText(text)
    entry.line.setModified(True)
    entry.finish()
    return entry


def test_season_skyline_zone_and_country_are_typed(card: SiteCard) -> None:
    typed_into(card, 2, "season:0", "1 May")
    typed_into(card, 2, "horizon", "90 12; 180° 8,5°")
    typed_into(card, 0, "time_zone", "America/New_York")
    typed_into(card, 0, "region", "US-NY")
    site = card._open_yard.yard.site
    assert site.season == ("05-01", "09-30")
    assert site.horizon == ((90.0, 12.0), (180.0, 8.5))
    assert (site.time_zone, site.region) == ("America/New_York", "US-NY")


@pytest.mark.parametrize(
    ("group", "path", "text"),
    [(2, "horizon", "90"), (2, "horizon", "400 5"), (2, "season:1", ""), (0, "time_zone", "Mars/Olympus"),
     (0, "latitude", "80")],
)
def test_facts_that_cannot_be_are_refused(card: SiteCard, group: int, path: str, text: str) -> None:
    before = card._open_yard.yard.site
    assert typed_into(card, group, path, text).fault
    assert card._open_yard.yard.site == before


def test_a_look_up_tells_the_country_for_its_laws(card: SiteCard) -> None:
    look_up(card, "Ithaca, NY")
    card.take_facts()
    assert card._open_yard.yard.site.region == "US-NY"


@pytest.mark.parametrize(("typed", "zone"), [("6b", "6b"), (" Zone 6B ", "6b"), ("13a", "13a"), ("4", "4")])
def test_zones_as_people_write_them(typed: str, zone: str) -> None:
    assert read_zone(typed) == zone


@pytest.mark.parametrize("typed", ["0a", "14a", "6c", "H5", "-3"])
def test_what_is_no_zone_is_refused(typed: str) -> None:
    with pytest.raises(EntryError, match="not a zone"):
        read_zone(typed)


def test_everything_has_a_name_and_is_large_enough(card: SiteCard) -> None:
    assert unnamed(card) == []
    assert too_small(card) == []
