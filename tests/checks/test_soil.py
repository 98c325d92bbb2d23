import pytest
from attrs import evolve
from hypothesis import given
from hypothesis import strategies as st
from support.builders import plant, yard_of

from yardplan.checks import soil
from yardplan.checks.finding import Finding, Weight
from yardplan.checks.rules import Rules
from yardplan.checks.soil_plan import Rooting, SoilPlan, plan_for, soil_plans
from yardplan.checks.soil_tables import TABLE_DEPTH, acidifiers, lime, sulfur
from yardplan.checks.survey import survey_of
from yardplan.plants.catalogue import catalogue
from yardplan.yard.planting import Bed, Container, PlantKey
from yardplan.yard.site import Site, Soil
from yardplan.yard.yard import Yard

LB_PER_100_SQ_FT = 0.45359237 / 9.290304
BLUEBERRY = "northern highbush blueberry:Patriot"
TEXTURES = st.sampled_from(
    [None, "sand", "loamy sand", "sandy loam", "loam", "silt loam", "clay loam", "clay"]
)


def on(ground: Soil, what: str = BLUEBERRY, **fields: object) -> Yard:
    return yard_of(plant("B1", what, (10, 10)), site=Site(latitude=42.0, soil=ground), **fields)


def found(yard: Yard) -> list[Finding]:
    return soil.run(survey_of(yard))


@pytest.mark.parametrize(
    ("ph", "lime", "kind", "weight"),
    [
        (5.0, None, None, None), (5.6, None, None, None), (5.9, None, "acidify", Weight.CAUTION),
        (6.5, None, "acidify_hard", Weight.CAUTION), (7.0, None, "needs_bed", Weight.CONFLICT),
        (8.3, None, "needs_bed_lime", Weight.CONFLICT), (6.0, True, "needs_bed_lime", Weight.CONFLICT),
        (3.5, None, "lime", Weight.ADVICE),
    ],
)
def test_blueberry_on_ground(ph: float, lime: bool | None, kind: str | None, weight: Weight | None):
    findings = found(on(Soil(ph=ph, texture="loam", lime=lime)))
    assert [(f.kind, f.weight) for f in findings] == ([(kind, weight)] if kind else [])


@pytest.mark.parametrize(
    ("ph", "kind"), [(6.5, None), (7.2, None), (7.6, "acidify"), (8.2, "limy"), (5.6, "lime"), (4.6, "lime")]
)
def test_apple_on_ground(ph: float, kind: str | None):
    findings = found(on(Soil(ph=ph, texture="loam"), "apple:Liberty"))
    assert [f.kind for f in findings] == ([kind] if kind else [])


def test_amounts_are_those_of_the_tables_times_the_area():
    (plan,) = soil_plans(survey_of(on(Soil(ph=6.5, texture="loam"))))
    assert plan.goal == pytest.approx(5.0)
    assert plan.amount is not None
    pound = LB_PER_100_SQ_FT * plan.rooting.area
    assert plan.amount.low == pytest.approx((2020 - 530) / 435.6 * pound)
    assert plan.amount.high == pytest.approx((1.6 * 0.5 + 3.2) * pound)


def test_a_large_dose_is_split_with_a_test_between():
    (small,) = soil_plans(survey_of(on(Soil(ph=5.9, texture="sand"))))
    assert [d.months for d in small.dressings] == [12.0]
    (large,) = soil_plans(survey_of(on(Soil(ph=6.5, texture="loam"))))
    assert [d.months for d in large.dressings] == [12.0, 9.0]
    assert large.amount is not None
    assert large.dressings[0].amount.high == pytest.approx(large.amount.high * 2 / 3, rel=1e-2)
    assert sum(d.amount.high for d in large.dressings) == pytest.approx(large.amount.high)


@pytest.mark.parametrize(
    ("texture", "ph", "number"), [("loam", 5.5, 1), ("loam", 4.6, 2), ("clay loam", 4.0, 3)]
)
def test_lime_is_split_by_its_amount(texture: str, ph: float, number: int):
    (plan,) = soil_plans(survey_of(on(Soil(ph=ph, texture=texture), "apple:Liberty")))  # type: ignore[arg-type]
    assert (plan.way, len(plan.dressings)) == ("lime", number)


def test_a_bed_with_its_own_soil():
    acid = Bed(id="D1", outline=((8, 8), (12, 8), (12, 12), (8, 12)), soil=Soil(ph=5.0), raised=0.3)
    assert found(on(Soil(ph=7.8), beds=(acid,))) == []
    assert [f.kind for f in found(on(Soil(ph=5.0), beds=(evolve(acid, soil=Soil(ph=7.8)),)))] == ["needs_bed"]


def test_a_planted_bed_counts_its_own_area_and_depth():
    bed = Bed(
        id="D1", outline=((8, 8), (12, 8), (12, 12), (8, 12)), depth=0.3556,
        plant=PlantKey("strawberry", "Honeoye"),
    )
    yard = yard_of(beds=(bed,), site=Site(latitude=42.0, soil=Soil(ph=5.0, texture="loam")))
    (plan,) = soil_plans(survey_of(yard))
    assert plan.rooting.area == pytest.approx(16.0)
    assert plan.per_area is not None
    assert plan.per_area.high == pytest.approx(2 * lime("loam", 5.0, 6.0).high)


def test_a_container_is_filled_anew():
    pot = Container(id="C1", place=(10, 10), volume=40, soil=Soil(ph=7.0))
    yard = on(Soil(ph=5.0), containers=(pot,))
    yard = evolve(yard, plantings=(evolve(yard.plantings[0], container="C1"),))
    assert [f.kind for f in found(yard)] == ["repot"]
    assert found(evolve(yard, containers=(evolve(pot, soil=Soil(ph=5.0)),))) == []


def test_missing_facts_are_asked_for_where_they_decide():
    (asked,) = found(on(Soil()))
    assert (asked.kind, asked.things, asked.weight) == ("ph_missing_acid", ("B1",), Weight.CAUTION)
    (mild,) = found(on(Soil(), "apple:Liberty"))
    assert (mild.kind, mild.weight) == ("ph_missing", Weight.ADVICE)
    assert [f.kind for f in found(on(Soil(ph=5.9)))] == ["acidify", "texture_missing"]


@given(TEXTURES, st.floats(4.6, 7.4), st.floats(0.05, 2.0), st.floats(0.05, 1.0))
def test_sulfur_grows_with_the_gap(texture, start, gap, more):
    goal = max(start - gap, 4.5)
    wider = max(goal - more, 4.5)
    small, large = sulfur(texture, start, goal), sulfur(texture, start, wider)
    assert 0 <= small.low <= small.high
    assert large.low >= small.low - 1e-12
    assert large.high >= small.high - 1e-12


@given(TEXTURES, st.floats(3.8, 6.4), st.floats(0.0, 2.0))
def test_lime_grows_with_the_gap(texture, start, gap):
    assert lime(texture, start - gap, 6.5).high >= lime(texture, start, 6.5).high - 1e-12


def planned(kind: str, soil: Soil, area: float) -> SoilPlan:
    crop = catalogue().crop(kind)
    assert crop is not None
    rooting = Rooting(
        id="B1", crop=crop, soil=soil, area=area, depth=TABLE_DEPTH, home="ground", outline=((0.0, 0.0),)
    )
    return plan_for(rooting, Rules())


@given(
    st.sampled_from([("northern highbush blueberry", 5.9, 6.9, 1), ("apple", 4.2, 5.6, -1)]), TEXTURES,
    st.floats(0.0, 1.0), st.floats(0.0, 1.0), st.floats(1.0, 50.0), st.floats(1.01, 3.0),
)
def test_the_plan_asks_for_more_on_more_ground_and_for_a_wider_gap(kind, texture, one, other, area, factor):
    """Sulfur for blueberries and lime for apples: by the whole plan, not only by the tables."""
    name, low, high, sign = kind
    near, far = sorted((low + one * (high - low), low + other * (high - low)), key=lambda ph: sign * ph)
    small, wide = (planned(name, Soil(ph=ph, texture=texture), area) for ph in (near, far))
    large = planned(name, Soil(ph=near, texture=texture), area * factor)
    assert small.way == wide.way == large.way == ("acidify" if sign > 0 else "lime")
    assert small.amount is not None
    assert wide.amount is not None
    assert large.amount is not None
    assert 0 < small.gap <= wide.gap
    assert 0 < small.amount.high <= wide.amount.high + 1e-12
    assert small.amount.low <= wide.amount.low + 1e-12
    assert large.amount.high == pytest.approx(factor * small.amount.high)
    for plan in (small, wide, large):
        assert plan.amount is not None
        assert sum(part.amount.high for part in plan.dressings) == pytest.approx(plan.amount.high)


def test_other_materials_weigh_more_and_aluminum_is_not_for_fruit():
    by_name = {a.material: a for a in acidifiers()}
    assert by_name["elemental sulfur"].times_sulfur == 1
    assert by_name["iron sulfate"].times_sulfur == 6
    assert not by_name["aluminum sulfate"].food_crops
