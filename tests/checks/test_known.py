from support.builders import plant, yard_of

from yardplan.checks import known
from yardplan.checks.survey import survey_of
from yardplan.checks.wording import say


def kinds(*plantings, **fields):
    return [(f.kind, f.things) for f in known.run(survey_of(yard_of(*plantings, **fields)))]


def test_a_plant_of_the_catalogue_is_no_finding():
    assert kinds(plant("A1", "apple:Liberty", (5, 5), rootstock="M26")) == []


def test_unknown_kind_variety_and_rootstock():
    assert kinds(plant("A1", "moonfruit:Liberty", (5, 5))) == [("unknown_kind", ("A1",))]
    assert kinds(plant("A1", "apple:No Such Apple", (5, 5))) == [("unknown_variety", ("A1",))]
    assert kinds(plant("A1", "apple:Liberty", (5, 5), rootstock="M999")) == [("unknown_rootstock", ("A1",))]
    assert kinds(plant("A1", "apple:Liberty", (5, 5), form="topiary")) == [("unknown_form", ("A1",))]


def test_local_figures_that_no_rule_takes():
    rules = {"structure-low": 500.0, "nonsense": 1.0, "wall-gap": 2.0}
    (finding,) = known.run(survey_of(yard_of(rules=rules)))
    assert finding.figures["rules"].value == "nonsense, structure-low"


def test_a_variety_of_ones_own_that_cannot_be_used_says_which_fact_is_wrong():
    record = {"crop": "apple", "name": "Old Garden", "bloom_season": "mid-lated", "chill_hours": [1000, 800]}
    survey = survey_of(yard_of(plant("A1", "apple:Old Garden", (5, 5)), own_cultivars=(record,)))
    found = known.run(survey)
    assert [f.kind for f in found] == ["unknown_variety", "own_fault", "own_fault"]
    said = [say(f, {"A1": "Old Garden (A1)"}, "metric").message for f in found[1:]]
    assert any("'mid-lated' is not one of" in words for words in said)
    assert any("low to high" in words for words in said)
