"""What crop to expect of each plant, in plain words."""

import pytest
from support.builders import yard_of
from support.orchards import row_of, site

from yardplan.checks.pollination import outlooks_for
from yardplan.checks.survey import survey_of
from yardplan.plants.fruit_set import FruitSet, fruit_set, fruit_sets, share_words


def sets(*keys: str, apart: float = 4.0) -> dict[str, FruitSet]:
    survey = survey_of(yard_of(*row_of(*keys, apart=apart), width=200, site=site()))
    return {one.thing: one for one in fruit_sets(outlooks_for(survey))}


def test_well_set_with_donor_distance_days_and_share() -> None:
    one = sets("apple:Empire", "apple:Gala")["P1"]
    assert (one.words, one.donor, one.taken) == ("will set well", "Gala (P2)", "all")
    assert one.distance == pytest.approx(4.0)
    assert one.days.endswith("days, usual")


def test_half_the_pollen_is_said() -> None:
    # Gala S2 S5 and Golden Delicious S2 S3 share one allele.
    one = sets("apple:Gala", "apple:Golden Delicious")["P1"]
    assert (one.share, one.taken) == (0.5, "half")


def test_none_light_and_alone() -> None:
    found = sets("sweet cherry:Bing", "sweet cherry:Lambert", "peach:Redhaven", "european plum:Stanley")
    assert (found["P1"].expected, found["P1"].words) == ("none", "will not set")
    assert "Lambert" in found["P1"].why
    assert (found["P3"].words, found["P3"].gain) == ("sets by itself", "")
    assert found["P4"].words == "sets by itself"
    assert "poor weather" in found["P4"].gain
    far = sets("apple:Empire", "apple:Gala", apart=20.0)["P1"]
    assert (far.expected, far.words) == ("light", "light set")


def test_a_male_gives_pollen_only() -> None:
    male = next(one for one in sets("arctic kiwi:Pasha").values())
    assert (male.expected, male.words, male.taken) == (None, "bears no fruit, gives pollen", "")


def test_one_thing_by_its_id() -> None:
    survey = survey_of(yard_of(*row_of("apple:Empire", "apple:Gala"), site=site()))
    found = fruit_set(outlooks_for(survey), "P2")
    assert found is not None
    assert found.donor == "Empire (P1)"
    assert fruit_set(outlooks_for(survey), "Z1") is None


def test_shares_in_words() -> None:
    assert [share_words(share) for share in (None, 1.0, 0.5, 0.25)] == ["not known", "all", "half", "25 %"]
