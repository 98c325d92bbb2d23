import pytest
from attrs import evolve
from support.builders import plant, yard_of

from yardplan.checks import containers
from yardplan.checks.finding import Weight
from yardplan.checks.survey import survey_of
from yardplan.yard.planting import Container
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

GALLON = 3.785411784


def potted(what: str, gallons: float, number: int = 1, zone: str = "6b") -> Yard:
    plants = [plant(f"A{i}", what, (5, 5), container="C1") for i in range(1, number + 1)]
    pot = Container(id="C1", place=(5, 5), volume=gallons * GALLON)
    return yard_of(*plants, containers=(pot,), site=Site(latitude=42.0, zone=zone))


def found(yard: Yard) -> list[tuple[str, Weight]]:
    findings = containers.run(survey_of(yard))
    return [(f.kind, f.weight) for f in findings if not f.kind.startswith("care") and f.kind != "unsuited"]


@pytest.mark.parametrize(
    ("what", "gallons"),
    [
        ("apple:Liberty", 15), ("fig:Brown Turkey", 15), ("red raspberry:Heritage", 10),
        ("red currant:Red Lake", 10), ("northern highbush blueberry:Patriot", 5), ("strawberry:Honeoye", 1),
    ],
)
def test_volume_by_crop(what: str, gallons: float):
    assert found(potted(what, gallons)) == []
    assert found(potted(what, gallons * 0.8)) == [("too_small", Weight.CAUTION)]
    assert found(potted(what, gallons * 0.4)) == [("too_small", Weight.CONFLICT)]


def test_plants_that_share_a_pot_need_the_sum():
    assert found(potted("strawberry:Honeoye", 3, number=3)) == []
    assert found(potted("strawberry:Honeoye", 2, number=3)) == [("crowded", Weight.CAUTION)]


@pytest.mark.parametrize(("zone", "kind"), [("6b", "care_cold"), ("9b", "care"), ("10a", "care")])
def test_winter_quarters_where_roots_would_freeze(zone: str, kind: str):
    kinds = [f.kind for f in containers.run(survey_of(potted("apple:Liberty", 20, zone=zone)))]
    assert kind in kinds


def test_a_variety_that_is_not_for_pots():
    kinds = [f.kind for f in containers.run(survey_of(potted("northern highbush blueberry:Duke", 20)))]
    assert "unsuited" in kinds


def test_a_container_that_is_not_there():
    yard = potted("apple:Liberty", 20)
    assert found(evolve(yard, containers=())) == [("lost", Weight.CAUTION)]
