"""Places by name, ZIP code and position."""

from __future__ import annotations

import subprocess
import sys
import zoneinfo
from difflib import SequenceMatcher

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from yardplan.places.lookup import (
    PlaceError,
    distance_km,
    find_places,
    near,
    nearest_town,
    nearest_zone,
    place_at,
)
from yardplan.places.spelling import fold, spelled
from yardplan.places.tables import MODELLED, OBSERVED, TOWNS, ZIPS, cells_of, station, table, text_of, town
from yardplan.shipped import resource


@pytest.mark.parametrize(
    ("words", "label"),
    [
        ("Ithaca, NY", "Ithaca, NY, US"), ("ithaca, new york", "Ithaca, NY, US"),
        ("zurich", "Zürich, Zürich, CH"),
        ("ZÜRICH", "Zürich, Zürich, CH"), ("Wroclaw", "Wrocław, Dolnośląskie, PL"),
        ("Bath", "Bath, England, GB"),
        ("Bath, ME", "Bath, ME, US"), ("Hobart, Tas", "Hobart, Tasmania, AU"),
        ("Temuco, CL", "Temuco, La Araucanía, CL"),
        ("Saint-Étienne", "Saint-Étienne, Auvergne-Rhône-Alpes, FR"), ("Pechino", "Beijing, Beijing Shi, CN"),
    ],
)
def test_the_first_town_is_the_one_meant(words: str, label: str) -> None:
    assert find_places(words)[0].label == label


def test_towns_of_one_name_come_by_population_and_a_whole_name_before_a_beginning() -> None:
    found = find_places("Bath", 20)
    exact = [place for place in found if place.name == "Bath"]
    assert found[: len(exact)] == exact
    assert [p.population for p in exact] == sorted((p.population for p in exact), reverse=True)
    assert any(place.name.startswith("Bath") and place.name != "Bath" for place in found)


@pytest.mark.parametrize("home", ["", "US", "DE"])
@pytest.mark.parametrize(
    ("words", "label"),
    [
        ("Itaca", "Ithaca, NY, US"), ("Ihtaca", "Ithaca, NY, US"), ("Uthaca", "Ithaca, NY, US"),
        ("Londn", "London, England, GB"), ("Cinncinati", "Cincinnati, OH, US"),
        ("San Fransisco", "San Francisco, CA, US"), ("Stutgart", "Stuttgart, Baden-Württemberg, DE"),
        ("Frankfrut", "Frankfurt am Main, Hessen, DE"), ("Zürch", "Zürich, Zürich, CH"),
        ("Wien", "Vienna, Wien, AT"), ("Portlnad", "Portland, OR, US"),
        ("Sidney", "Sydney, New South Wales, AU"),
    ],
)
def test_one_slip_still_offers_the_town_meant(words: str, label: str, home: str) -> None:
    found = find_places(words, 8, home)
    first = 1 if words in ("Itaca", "Wien", "Londn") else 5
    assert label in [place.label for place in found[:first]]


def test_names_rank_whole_then_by_likeness_size_and_country() -> None:
    first = {home: find_places("Birmingham", 8, home)[0].label for home in ("US", "GB")}
    assert first == {"US": "Birmingham, AL, US", "GB": "Birmingham, England, GB"}
    assert find_places("Paris", 8, "US")[0].country == "FR"
    assert [p.name for p in find_places("Bogota", 2)] == ["Bogotá", "Bogota"]
    begun = {home: find_places("Frankf", 8, home)[0].country for home in ("DE", "US")}
    assert begun == {"DE": "DE", "US": "DE"}
    assert find_places("Lyon, France")[0].label.endswith("FR")
    assert [p.region for p in find_places("Itaca, NY")] == ["NY"]


def test_a_guess_is_told_from_a_name_typed_in_full() -> None:
    typed = ("Ithaca", "Ithaca, NY", "Pechino", "zurich", "Itaca", "San Fr", "14850", "42.44, -76.5")
    guessed = [find_places(words)[0].guessed for words in typed]
    assert guessed == [False, False, False, False, True, True, False, False]


def test_the_ranking_looks_at_few_names_closely(monkeypatch: pytest.MonkeyPatch) -> None:
    """What takes time is comparing letters: of 80,000 names only those with one end right are compared."""
    compared = 0

    class Counted(SequenceMatcher[str]):
        def ratio(self) -> float:
            nonlocal compared
            compared += 1
            return super().ratio()

    monkeypatch.setattr("yardplan.places.by_name.SequenceMatcher", Counted)
    for words in ("Itaca", "San Fransisco", "Wien", "S"):
        compared = 0
        find_places(words)
        assert compared < 500, words


def test_state_and_country_are_spelled() -> None:
    typed = ("Ithaca, NY", "Itacaré", "zurich", "14850", "1, 100")
    said = [spelled(find_places(words)[0]) for words in typed]
    assert said == [
        "Ithaca, New York, United States", "Itacaré, Bahia, Brazil", "Zürich, Switzerland",
        "Ithaca, New York, United States", "Sumatera Utara, Indonesia",
    ]
    lines = [cells_of(line) for line in table(TOWNS).lines]
    with resource("places", "countries.csv").open(encoding="utf-8") as file:
        assert {line.partition(",")[0] for line in file} >= {cells[2] for cells in lines}


def test_an_unknown_word_after_the_comma_does_not_hide_the_town() -> None:
    assert find_places("Zurich, somewhere")[0].name == "Zürich"


@pytest.mark.parametrize("words", ["Nosuchtownanywhere", "", ",", "?(", "99999"])
def test_what_is_not_found_is_said(words: str) -> None:
    with pytest.raises(PlaceError, match="no "):
        find_places(words)


def test_a_zip_code_has_its_zone_place_and_time_zone() -> None:
    (place,) = find_places("14850")
    assert (place.name, place.region, place.zone, place.zip_code) == ("Ithaca", "NY", "6a", "14850")
    assert place.time_zone == "America/New_York"
    assert find_places("14850-1234") == [place]
    assert find_places("00501")[0].zip_code == "00501"


@pytest.mark.parametrize(
    ("words", "at"),
    [
        ("42.44, -76.5", (42.44, -76.5)), ("42.44 -76.5", (42.44, -76.5)), ("42.44N 76.5W", (42.44, -76.5)),
        ("42.44° N, 76.5° W", (42.44, -76.5)), ("43.5 S, 172.6 E", (-43.5, 172.6)),
        ("−43.5, 172.6", (-43.5, 172.6)),
        ("0, 0", (0, 0)), ("47,4; 8,5", (47.4, 8.5)),
    ],
)
def test_typed_positions(words: str, at: tuple[float, float]) -> None:
    (place,) = find_places(words)
    assert (place.latitude, place.longitude, place.found_by) == (*at, "position")


@pytest.mark.parametrize("words", ["91, 0", "-90.5, 10", "10, 181"])
def test_positions_off_the_globe_are_refused(words: str) -> None:
    with pytest.raises(PlaceError, match="latitude goes to 90"):
        find_places(words)


def test_a_position_gets_country_and_time_zone_of_the_nearest_town() -> None:
    place = place_at(44.6, -123.3, 70.0)
    assert (place.country, place.region, place.time_zone) == ("US", "OR", "America/Los_Angeles")
    assert place.elevation == 70.0
    assert nearest_town(-48.0, -120.0) is None
    assert place_at(-48.0, -120.0).time_zone is None


def test_the_nearest_zone_ends_at_its_limit() -> None:
    found = nearest_zone(42.44, -76.5)
    assert found is not None
    assert found[0].zone == "6a"
    assert found[1] < 5
    assert nearest_zone(47.4, 8.5) is None


@given(st.floats(-60, 70), st.floats(-180, 180), st.floats(1, 120))
@settings(max_examples=25, deadline=None)
def test_the_sieve_by_latitude_loses_nothing(latitude: float, longitude: float, within: float) -> None:
    found = {cells[0] for _, cells in near(OBSERVED, (latitude, longitude), within)}
    latitudes, longitudes, lines = table(OBSERVED)
    slow = {
        cells_of(line)[0] for line, lat, lon in zip(lines, latitudes, longitudes, strict=True)
        if distance_km((latitude, longitude), (lat, lon)) <= within
    }
    assert found == slow


def test_every_line_of_every_table_is_read() -> None:
    """Row counts as the tables' own notes state them (17 ZIP codes have no position)."""
    counts = {TOWNS: 66_967, ZIPS: 40_994 - 17, OBSERVED: 12_771, MODELLED: 9_582}
    assert {name: len(table(name).lines) for name in counts} == counts
    zones = {town(cells_of(line)).time_zone for line in table(TOWNS).lines}
    assert zones <= zoneinfo.available_timezones()
    for name in (OBSERVED, MODELLED):
        assert all(len(station(cells_of(line)).means) == 12 for line in table(name).lines)


def test_folding() -> None:
    assert fold("Łódź Straße Øre Saint-Étienne Xi'an ʻAlae") == "lodz strasse ore saint etienne xian alae"
    assert fold(text_of(TOWNS)).count("\n") == text_of(TOWNS).count("\n")


COLD = """
import time
start = time.process_time()
from yardplan.places.facts import facts_for
facts_for("Ithaca, NY")
print(time.process_time() - start)
"""


def test_a_first_lookup_with_all_its_facts_is_quick() -> None:
    """Processor time of a fresh process: reading tables, search, climate. Twice the aim of 0.3 s fails."""
    took = [
        float(subprocess.run([sys.executable, "-c", COLD], capture_output=True, text=True, check=True).stdout)
        for _ in range(3)
    ]
    assert min(took) < 0.6
