"""Checks of frost at bloom, winter chill and bloom dates on whole yards."""

import re

import pytest
from support.orchards import MEANS, orchard, site

from yardplan.checks import bloom, chill, frost
from yardplan.checks.finding import Finding, Weight
from yardplan.checks.survey import Survey
from yardplan.checks.wording import names_of, say

#: Monthly means of Fresno (WMO 1991-2020), one degree warmer.
WARM = (9.9, 12.3, 15.1, 17.9, 22.2, 26.4, 29.6, 28.9, 26.0, 20.3, 13.9, 9.6)


def of_kind(found: list[Finding], kind: str) -> list[Finding]:
    return [finding for finding in found if finding.kind == kind]


def test_early_bloomers_run_more_frost_than_late_ones() -> None:
    found = {f.things[0]: f for f in frost.run(orchard("apricot:Goldcot", "apple:Liberty", "quince:Vranja"))}
    assert found["P1"].weight is Weight.CAUTION
    assert float(found["P1"].figures["share"].value) > 0.5
    assert float(found["P2"].figures["share"].value) < 0.15
    assert "P3" not in found


def test_one_finding_a_crop_names_all_its_plants() -> None:
    found = frost.run(orchard("apricot:Goldcot", "apricot:Harglow", "apricot:Goldcot"))
    assert [finding.things for finding in found] == [("P1", "P3", "P2")]
    assert found[0].figures["varieties"].value == "Goldcot, Harglow"


def test_frost_is_left_alone_without_frost_dates() -> None:
    assert frost.run(orchard("apricot:Goldcot", site=site(last_frost=None))) == []


def test_high_chill_kinds_fail_where_winters_are_warm() -> None:
    warm = site(latitude=28.4, zone="10a",
                monthly_means=(15.9, 17.6, 19.6, 22.3, 25.2, 27.3, 28.1, 28.1, 27.2, 24.2, 20.1, 17.4))
    found = chill.run(orchard("peach:Redhaven", "peach:Flordaprince", site=warm))
    assert [(finding.things, finding.kind, finding.weight) for finding in found] == [
        (("P1",), "fails", Weight.CONFLICT),
    ]


def test_middling_chill_is_a_caution() -> None:
    mild = site(latitude=36.8, monthly_means=WARM)
    found = chill.run(orchard("peach:Contender", "peach:Babcock", site=mild))
    assert [(finding.things, finding.kind) for finding in found] == [(("P1",), "short")]


def test_low_chill_kinds_wake_early_in_the_cold() -> None:
    found = chill.run(orchard("apple:Anna", "apple:Fuji", "japanese plum:Santa Rosa"))
    assert [(finding.things, finding.kind) for finding in found] == [(("P1",), "wakes_early")]


def test_without_climate_chill_says_nothing() -> None:
    assert chill.run(orchard("peach:Redhaven", site=site(monthly_means=None))) == []


@pytest.mark.parametrize(
    ("fields", "kind"),
    [
        ({"monthly_means": None}, "from_afar"),
        ({"monthly_means": None, "latitude": -30.0}, "no_climate"),
        ({"monthly_means": tuple(m + 10 for m in MEANS)}, "too_mild"),
        ({"observed_bloom": (("apple", "77-01"),)}, "observed"),
        ({"monthly_means": MEANS[:4]}, "observed"),
    ],
)
def test_what_keeps_bloom_from_being_dated_is_said(fields: dict[str, object], kind: str) -> None:
    found = bloom.run(orchard("apple:Liberty", site=site(**fields)))
    assert of_kind(found, kind)


def test_a_dated_site_has_nothing_to_say() -> None:
    assert bloom.run(orchard("apple:Liberty")) == []
    assert bloom.run(orchard(site=site(monthly_means=None))) == []


def test_an_own_variety_without_class_is_asked_for_it() -> None:
    own = ({"crop": "apple", "name": "Mine"},)
    assert of_kind(bloom.run(orchard("apple:Mine", own_cultivars=own)), "no_class")


def test_words_are_whole() -> None:
    surveys: list[Survey] = [
        orchard("apricot:Goldcot", "apple:Anna", "apple:Mine",
                own_cultivars=({"crop": "apple", "name": "Mine"},)),
        orchard("peach:Contender", "peach:Redhaven", site=site(latitude=36.8, monthly_means=WARM)),
        orchard("peach:Redhaven", site=site(monthly_means=tuple(m + 16 for m in MEANS))),
        orchard("apple:Liberty", site=site(monthly_means=None)),
        orchard("apple:Liberty", site=site(monthly_means=None, latitude=-30.0)),
        orchard("apple:Liberty", site=site(observed_bloom=(("apple", "77-01"),))),
        orchard("apple:Liberty", site=site(last_frost="05-01")),
    ]
    for check in (frost, chill, bloom):
        seen = set()
        for survey in surveys:
            for finding in check.run(survey):
                said = say(finding, names_of(survey), "imperial")
                seen.add(finding.kind)
                for text in (said.title, said.message, said.clears, said.source_text):
                    assert text
                    assert not re.search(r"[{}\[\]]|nan|None", text), text
        assert seen == set(check.CHECK.wording)
