from __future__ import annotations

import pytest
from attrs import evolve
from support.builders import plant, yard_of

from yardplan.checks import light
from yardplan.checks.finding import Finding, Weight
from yardplan.checks.survey import Survey, survey_of
from yardplan.checks.wording import names_of, say
from yardplan.sun.light import LightReport, PlantLight, light_report
from yardplan.sun.scene import scene_of
from yardplan.yard.ground import Building
from yardplan.yard.planting import Bed, PlantKey, Row
from yardplan.yard.yard import Yard

NEEDED, GOOD = 6.0, 8.0


def _light(key: str, hours: float, *by: tuple[str, float]) -> PlantLight:
    return PlantLight(
        id=key,
        hours=hours,
        hours_midsummer=hours + 1,
        hours_worst_month=hours - 1,
        worst_month=9,
        hours_morning=1.0,
        open_light=hours / 13,
        open_hours=13.0,
        shaded_by=by,
    )


def _with_hours(yard: Yard, **lights: PlantLight) -> Survey:
    """A survey whose report is the real one but for the lights given."""
    survey = survey_of(yard)
    report = light_report(scene_of(yard, survey.stand), "live", cell=2.0)
    known = {kind: {**getattr(report, kind)} for kind in ("plants", "rows", "beds")}
    for kind in known.values():
        kind.update({key: one for key, one in lights.items() if key in kind})
    return evolve(survey, light=evolve(report, **known))


def _apple(hours: float, *by: tuple[str, float]) -> list[Finding]:
    yard = yard_of(plant("A1", "apple:Liberty", (15, 10)), plant("P1", "european pear:Bosc", (10, 5)))
    return [f for f in light.run(_with_hours(yard, A1=_light("A1", hours, *by))) if f.things == ("A1",)]


@pytest.mark.parametrize(
    ("hours", "kind", "weight"),
    [
        (1.9, "shade", Weight.CONFLICT),
        (3.9, "too_dark", Weight.CONFLICT),
        (4.1, "dim", Weight.CAUTION),
        (5.9, "dim", Weight.CAUTION),
        (6.1, "could_be_better", Weight.ADVICE),
        (7.9, "could_be_better", Weight.ADVICE),
    ],
)
def test_weights_by_hours(hours: float, kind: str, weight: Weight) -> None:
    (finding,) = _apple(hours)
    assert (finding.kind, finding.weight) == (kind, weight)
    assert finding.figures["hours"].value == hours
    assert finding.figures["needed"].value == NEEDED
    assert finding.figures["good"].value == GOOD
    assert finding.key == ("light", kind, ("A1",))


def test_enough_sun_is_no_finding() -> None:
    assert _apple(8.1) == []


def test_the_takers_are_named_with_hours_and_side() -> None:
    (finding,) = _apple(3.0, ("P1", 5.5), ("horizon", 2.0), ("X9", 1.5), ("Y", 0.9), ("Z", 0.05))
    shown = finding.figures
    assert (shown["hours_1"].value, shown["by_1"].value, shown["side_1"].value) == (
        5.5,
        "P1",
        "the south-west",
    )
    assert shown["by_2"].value == "the sky line"
    assert "side_2" not in shown
    assert "hours_4" not in shown


def test_words_of_a_real_yard() -> None:
    garage = Building(
        id="B1",
        name="Garage",
        footprint=((0.0, 8.0), (6.0, 8.0), (6.0, 14.0), (0.0, 14.0)),
        eaves=7.6,
        ridge=9.6,
        roof="gable",
    )
    yard = yard_of(plant("A1", "apple:Liberty", (3, 14.6)), buildings=(garage,))
    survey = survey_of(yard)
    survey = evolve(survey, light=light_report(scene_of(yard, survey.stand)))
    (finding,) = light.run(survey)
    said = say(finding, names_of(survey), "metric")
    assert "from Garage (B1) to the south" in said.message
    assert "apple needs 6.0 h" in said.message or "6.0 h that apple needs" in said.message
    assert said.message.endswith(".")
    assert "Garage (B1)" in said.clears
    assert "Extension" in said.source_text or "Common practice" in said.source_text


@pytest.mark.parametrize("kind", sorted(light.CHECK.wording))
def test_every_kind_reads_well_without_takers(kind: str) -> None:
    hours = {"shade": 1.0, "too_dark": 3.0, "dim": 5.0, "could_be_better": 7.0}[kind]
    (finding,) = _apple(hours)
    assert finding.kind == kind
    said = say(finding, {"A1": "Liberty (A1)"}, "metric")
    for text in (said.title, said.message, said.clears):
        assert "{" not in text
        assert "[" not in text
        assert ".." not in text


def test_rows_and_beds_are_judged_too() -> None:
    row = Row(id="R1", plant=PlantKey("raspberry", "Latham"), line=((2, 2), (10, 2)), count=8, spacing=1.0)
    bed = Bed(id="D1", outline=((20, 2), (24, 2), (24, 4), (20, 4)), plant=PlantKey("strawberry", "Honeoye"))
    empty = Bed(id="D2", outline=((20, 8), (24, 8), (24, 9), (20, 9)))
    yard = yard_of(rows=(row,), beds=(bed, empty))
    dark = {key: _light(key, 1.0) for key in ("R1", "D1", "D2")}
    found = light.run(_with_hours(yard, **dark))
    assert {f.things[0]: f.marks[0].shape for f in found} == {"R1": "line", "D1": "area"}


def test_a_local_rule_is_used_and_named() -> None:
    yard = yard_of(plant("A1", "apple:Liberty", (15, 10)))
    local = evolve(yard, rules={"light-needed": 0.5})
    assert light.run(_with_hours(local, A1=_light("A1", 4.1)))[0].kind == "could_be_better"
    (finding,) = light.run(_with_hours(evolve(yard, rules={"light-conflict": 0.9}), A1=_light("A1", 5.0)))
    assert finding.kind == "too_dark"
    assert finding.figures["local_rule"].value == "light-conflict"


def test_without_a_report_nothing_is_said() -> None:
    survey = survey_of(yard_of(plant("A1", "apple:Liberty", (15, 10))))
    assert light.run(survey) == []
    assert not isinstance(survey.light, LightReport)
