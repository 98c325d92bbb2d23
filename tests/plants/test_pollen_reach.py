"""How near a plant in hand should stand to each plant it would be a partner of."""

from support.builders import plant, yard_of
from support.orchards import site

from yardplan.checks.pollination import net_for
from yardplan.checks.survey import survey_of
from yardplan.plants.catalogue import catalogue
from yardplan.plants.pollen_range import pollen_range
from yardplan.plants.pollen_reach import PartnerReach, partner_reaches
from yardplan.yard.planting import PlantKey


def reaches(key: str, *ids: str) -> tuple[PartnerReach, ...]:
    survey = survey_of(yard_of(
        plant("A1", "apple:Gala", (4, 4)), plant("A2", "apple:Bramley's Seedling", (9, 4)),
        plant("P1", "peach:Redhaven", (14, 4)), site=site(),
    ))
    cultivar = catalogue().cultivars[PlantKey.parse(key)]
    return partner_reaches(net_for(survey), cultivar, "semi-dwarf", ids)


def ids(key: str) -> set[str]:
    return {one.node.id for one in reaches(key)}


def test_kin_that_give_or_take_are_named_and_others_not() -> None:
    assert ids("apple:Empire") == {"A1", "A2"}
    assert ids("apple:Mutsu") == {"A1"}, "two triploids do nothing for each other"
    assert ids("apple:Tenroy") == {"A2"}, "a sport of Gala sets Bramley but not Gala"
    assert ids("european pear:Bartlett") == set()


def test_only_those_asked_for() -> None:
    assert [one.node.id for one in reaches("apple:Empire", "A2")] == ["A2"]


def test_distances_are_those_of_the_receivers_range() -> None:
    survey = survey_of(yard_of(site=site()))
    expected = pollen_range("apple", "semi-dwarf", net_for(survey).place.limits)
    found = reaches("apple:Empire")[0]
    assert (found.best, found.outer) == (expected.best, expected.outer)
