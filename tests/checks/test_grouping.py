import pytest
from support.builders import plant, yard_of

from yardplan.checks import drainage, soil
from yardplan.checks.finding import Figure, Finding, Weight
from yardplan.checks.grouping import grouped
from yardplan.checks.soil_plan import soil_plans
from yardplan.checks.survey import survey_of
from yardplan.checks.wording import names_of, say
from yardplan.yard.site import Site, Soil


def made(thing: str, weight: Weight = Weight.ADVICE, ph: float = 5.0, least: float = 1.0) -> Finding:
    figures = {"ph": Figure(ph, "ph"), "least": Figure(least, "weight"), "own": Figure(thing, "text")}
    return Finding(check="soil", kind="lime", weight=weight, things=(thing,), figures=figures)


def test_like_findings_become_one_with_sums():
    (one,) = grouped([made("A10"), made("A2", least=2.5)], ("ph",), ("least",))
    assert one.things == ("A2", "A10")
    assert one.figures["least"].value == 3.5
    assert one.figures["count"].value == 2
    assert "own" not in one.figures


def test_unlike_figures_and_conflicts_stay_apart():
    found = grouped([made("A1"), made("A2", ph=6.0), made("A3", Weight.CONFLICT)], ("ph",))
    assert [f.things for f in found] == [("A1",), ("A2",), ("A3",)]
    assert len(grouped([made("A1", Weight.CONFLICT), made("A2", Weight.CONFLICT)], ("ph",))) == 2


def test_soil_of_many_is_said_once_with_the_amounts_of_all():
    site = Site(latitude=42.0, soil=Soil(ph=5.0, texture="loam", drainage="fair"))
    trees = [plant(f"A{i}", "apple:Liberty", (5.0 * i, 5)) for i in (1, 2, 3)]
    survey = survey_of(yard_of(*trees, site=site))
    (finding,) = soil.run(survey)
    total = sum(plan.amount.high for plan in soil_plans(survey) if plan.amount is not None)
    assert finding.things == ("A1", "A2", "A3")
    assert finding.figures["least"].value == pytest.approx(total)
    said = say(finding, names_of(survey))
    assert "Liberty (A1), Liberty (A2) and Liberty (A3)" in said.message
    assert drainage.run(survey) == []
