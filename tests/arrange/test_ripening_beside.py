"""When suggested partners ripen beside the plant they set."""

from support.orchards import orchard

from yardplan.arrange.partners import partners_for
from yardplan.arrange.ripening_beside import ripening_beside
from yardplan.checks.pollination import net_for
from yardplan.plants.harvest import harvest_band
from yardplan.plants.pollen_reason import sex_of
from yardplan.yard.planting import PlantKey


def test_partners_ripen_before_with_and_after_the_plant_they_set() -> None:
    survey = orchard("apple:Empire")
    bloom = net_for(survey).place.bloom
    assert bloom is not None

    def middle(key: PlantKey) -> float:
        cultivar = survey.catalogue.cultivar(key)
        band = harvest_band(cultivar, bloom.band(cultivar))
        return (band.first + band.last) / 2

    own = middle(PlantKey.parse("apple:Empire"))
    found = {one.key: ripening_beside(survey, one.key, "P1") for one in partners_for(survey, "P1", limit=200)}
    assert {one.beside for one in found.values()} >= {"before", "with", "after"}
    for key, ripening in found.items():
        if ripening.beside is None:
            # Crabapples have no days from bloom to harvest in the tables; some varieties no bloom.
            assert key.crop == "crabapple" or bloom.band(survey.catalogue.cultivars[key]) is None
            assert ripening.words == "when it ripens is not known here"
        elif ripening.beside == "before":
            assert middle(key) < own
        elif ripening.beside == "after":
            assert middle(key) > own
    late = next(one for one in found.values() if one.beside == "after")
    assert late.words.startswith("ripens ")
    assert late.words.endswith(", after Empire")


def test_a_male_is_said_to_bear_no_fruit() -> None:
    survey = orchard("hardy kiwi:Geneva")
    male = next(
        one.key for one in survey.catalogue.cultivars.values()
        if one.crop == "hardy kiwi" and sex_of(one) == "male"
    )
    assert ripening_beside(survey, male, "P1").words == "bears no fruit itself"
