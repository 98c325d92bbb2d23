import re

import pytest
from support.builders import plant, yard_of

from yardplan.checks.finding import Figure, Finding, Weight
from yardplan.checks.run import CHECKS
from yardplan.checks.spacing import CHECK as SPACING
from yardplan.checks.wording import checks_by_name, figure_text, names_of, say, severity_of
from yardplan.yard.ground import Building, StandingTree


def overlap(**fields: object) -> Finding:
    figures = {
        "distance": Figure(2.9, "length"), "wanted": Figure(4.0, "length"), "short": Figure(1.1, "length"),
        "overlap": Figure(0.275, "share"), "direction": Figure("north", "text"),
        "mover": Figure("A2", "thing"), "stays": Figure("A1", "thing"),
    }
    given = {"source": "spacing-too-close", "figures": figures} | fields
    return Finding(check="spacing", kind="overlap", weight=Weight.CONFLICT, things=("A1", "A2"), **given)


NAMES = {"A1": "Liberty (A1)", "A2": "Enterprise (A2)"}


def test_figures_in_the_readers_units():
    metric, imperial = say(overlap(), NAMES, "metric"), say(overlap(), NAMES, "imperial")
    assert "2.9 m" in metric.message
    assert "9.5 ft" in imperial.message
    assert metric.title == "1.1 m too close"
    assert metric.clears.startswith("Move Enterprise (A2) 1.1 m to the north")


def test_the_source_is_written_out():
    assert "practice" in say(overlap(), NAMES).source_text.lower()
    assert "Houston" in say(overlap(source="structure-low"), NAMES).source_text


def test_a_local_figure_is_said():
    figures = dict(overlap().figures) | {"local_rule": Figure("spacing-too-close", "text")}
    text = say(overlap(figures=figures), NAMES).source_text
    assert text.startswith("Local figure of this yard for spacing-too-close (ours: 0.25 share)")


def test_a_part_in_brackets_needs_its_figure():
    from yardplan.checks.wording import _filled

    text = "{a}[ takes {hours} from {by}][, {none}]."
    assert _filled(text, {"a": "garage", "hours": "1 h", "by": "A1"}) == "Garage takes 1 h from A1."


@pytest.mark.parametrize(
    ("figure", "metric", "imperial"),
    [
        (Figure(3.048, "length"), "3.0 m", "10 ft"), (Figure(0.5, "share"), "50 %", "50 %"),
        (Figure(5.25, "hours"), "5.2 h", "5.2 h"), (Figure(-17.78, "temperature"), "-18 °C", "0 °F"),
        (Figure(1, "days"), "1 day", "1 day"), (Figure(9.2, "days"), "9 days", "9 days"),
        (Figure("04-24", "date"), "24 April", "24 April"), (Figure(6.25, "ph"), "6.2", "6.2"),
        (Figure(4.5359237, "weight"), "4.5 kg", "10 lb"), (Figure(2, "count"), "2", "2"),
        (Figure(2027, "year"), "2027", "2027"), (Figure("A1", "thing"), "Liberty (A1)", "Liberty (A1)"),
    ],
)
def test_measures(figure: Figure, metric: str, imperial: str):
    assert figure_text(figure, NAMES, "metric") == metric
    assert figure_text(figure, NAMES, "imperial") == imperial


def test_names_of_things():
    yard = yard_of(
        plant("A1", "apple:Liberty", (1, 1)),
        buildings=(Building(id="H1", name="Garage", footprint=((0, 0), (1, 0), (1, 1))),),
        standing_trees=(StandingTree(id="T1", kind="black walnut", place=(9, 9), height=15, spread=12),),
    )
    names = names_of(yard)
    assert (names["A1"], names["H1"], names["T1"]) == ("Liberty (A1)", "Garage (H1)", "black walnut (T1)")
    assert names["lot"] == "lot line"


def test_every_kind_has_a_sentence_and_a_way_out():
    for check in CHECKS:
        for kind, wording in check.wording.items():
            assert wording.message.endswith((".", "]")), (check.name, kind)
            assert wording.clears, (check.name, kind)
            assert len(wording.title) < 60, (check.name, kind)
            parts = re.sub(r"\{\w+\}", "", wording.message + wording.clears)
            assert "{" not in parts, (check.name, kind)


def test_checks_by_name_has_them_all():
    assert set(checks_by_name()) == {check.name for check in CHECKS}
    assert checks_by_name()["spacing"] is SPACING


@pytest.mark.parametrize(
    ("check", "kind", "source", "severity"),
    [
        ("spacing", "overlap", "spacing-too-close", "growth"),
        ("clearance", "buried", "service-small", "safety"),
        ("clearance", "building", "structure-low", "damage"), ("spacing", "crown_wall", "wall-gap", "care"),
        # No rule of the table stands behind these: a law of a country, a call, a published pair.
        ("clearance", "law", "french-civil-code-671", "law"),
        ("clearance", "ask_first", "one-call-new-york", "law"),
        ("ribes law", "barred", "ribes-trade-list", "law"),
        ("pollination", "half", "niab-pollen-compatibility", "growth"),
    ],
)
def test_what_is_at_stake(check: str, kind: str, source: str, severity: str):
    finding = Finding(check=check, kind=kind, weight=Weight.CAUTION, things=("A1",), source=source)
    assert severity_of(finding) == severity
    assert say(finding, NAMES).stake == severity
