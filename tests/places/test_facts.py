"""Facts with their origins, and as fields of a site."""

from __future__ import annotations

import re

from attrs import evolve

from yardplan.places.facts import ZONE_SENTENCE, credits, facts_at, facts_for, to_site_fields
from yardplan.places.lookup import find_places, place_at
from yardplan.yard.site import Site


def test_every_fact_of_a_zip_code_says_where_it_came_from() -> None:
    facts = facts_for("14850")
    assert {origin.fact for origin in facts.origins} == {
        "place", "elevation", "region", "time_zone", "zone", "monthly_means", "frost",
    }
    assert ZONE_SENTENCE in facts.origin("zone")
    assert re.search(r"that of [\w ]+, \d+ km away; GeoNames", facts.origin("time_zone"))
    means = facts.origin("monthly_means")
    assert "km away" in means
    assert "1981-2010" in means
    assert means.startswith(facts.climate.grade)
    assert "cold hollows" in facts.origin("frost")
    assert facts.origin("nothing") == ""


def test_fields_fit_the_site() -> None:
    site = evolve(Site(), **to_site_fields(facts_for("Lucca")))
    assert site.place == "Lucca, Toscana, IT"
    assert site.monthly_means is not None
    assert len(site.monthly_means) == 12
    assert site.monthly_lows is not None
    assert all(low < mean for low, mean in zip(site.monthly_lows, site.monthly_means, strict=True))


def test_a_typed_height_replaces_that_of_the_table() -> None:
    facts = facts_for("14850", 350.0)
    assert to_site_fields(facts)["elevation"] == 350.0
    assert facts.origin("elevation") == "typed in"
    assert facts.climate.means is not None
    lower = facts_for("14850").climate.means
    assert lower is not None
    assert facts.climate.means[6] < lower[6]


def test_outside_the_us_the_zone_is_only_about() -> None:
    facts = facts_for("Lucca")
    assert facts.zone_estimated
    assert facts.zone == "8"
    assert "give or take one" in facts.origin("zone")


def test_a_us_town_takes_the_zone_of_the_nearest_zip_code_with_its_distance() -> None:
    facts = facts_for("Springfield, MO")
    assert facts.zone == "6b"
    assert not facts.zone_estimated
    assert "km away" in facts.origin("zone")
    assert ZONE_SENTENCE in facts.origin("zone")


def test_rare_frost_is_said_in_words() -> None:
    facts = facts_for("Hobart, Tasmania")
    assert to_site_fields(facts)["last_frost"] is None
    assert "frost is rare" in facts.origin("frost")


def test_where_nothing_is_known_fields_are_empty_not_guessed() -> None:
    fields = to_site_fields(facts_at(place_at(-48.0, -120.0)))
    for name in ("monthly_means", "zone", "last_frost", "first_frost", "time_zone", "elevation"):
        assert fields[name] is None


def test_the_credits_name_all_five_publishers() -> None:
    words = " ".join(credits())
    for name in ("GeoNames", "Census", "PRISM", "WMO", "NOAA NCEI", "CHELSA"):
        assert name in words


def test_facts_are_the_same_each_time() -> None:
    assert facts_at(find_places("Bath")[0]) == facts_at(find_places("Bath")[0])
