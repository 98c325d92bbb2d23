from support.builders import plant, yard_of

from yardplan.checks import known
from yardplan.checks.survey import survey_of


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
