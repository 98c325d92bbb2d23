"""The six-step test: each step by itself, and what must hold for any two plants."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from yardplan.plants.bloom_tables import CLASSES
from yardplan.plants.catalogue import catalogue
from yardplan.plants.cultivar import Cultivar, SelfFruit
from yardplan.plants.limits import Limits
from yardplan.plants.pollen import Verdict, better_crossed, needs_partner, sets_fruit
from yardplan.plants.pollen_net import LEVEL
from yardplan.plants.pollen_reason import PollenPlace, sex_of
from yardplan.yard.planting import PlantKey


def apple(name: str, **facts: Any) -> Cultivar:
    known: dict[str, Any] = {
        "crop": "apple", "name": name, "ploidy": 2, "pollen_good": True, "bloom_season": "mid",
        "self_fruitful": SelfFruit.NO,
    }
    return Cultivar(**(known | facts))


def known(text: str) -> Cultivar:
    found = catalogue().cultivar(PlantKey.parse(text))
    assert found is not None
    return found


def step(verdict: Verdict, name: str) -> str:
    return next(reason.result for reason in verdict.reasons if reason.step == name)


def test_another_family_ends_the_test_at_once() -> None:
    verdict = sets_fruit(known("apple:Gala"), known("european pear:Bartlett"))
    assert verdict.verdict == "no"
    assert [reason.step for reason in verdict.reasons] == ["family"]


def test_steps_come_in_order() -> None:
    verdict = sets_fruit(known("apple:Gala"), known("apple:Empire"), distance=3.0)
    assert [reason.step for reason in verdict.reasons] == [
        "family", "clone", "pollen", "genetics", "bloom", "distance",
    ]
    assert verdict.verdict == "yes"


def test_a_clone_and_two_sports_of_one_parent_are_one_tree() -> None:
    for other in ("Gala", "Tenroy", "Galaxy"):
        assert step(sets_fruit(known("apple:Tenroy"), known(f"apple:{other}")), "clone") == "failed"


def test_a_triploid_gives_nothing_and_takes_from_a_diploid() -> None:
    triploid, diploid = apple("T", ploidy=3), apple("D")
    assert step(sets_fruit(triploid, diploid), "pollen") == "failed"
    assert sets_fruit(diploid, triploid).verdict == "not proved"


def test_a_triploid_is_still_bound_by_alleles() -> None:
    triploid = apple("T", ploidy=3, s_alleles=("S2", "S3", "S9"))
    verdict = sets_fruit(apple("D", s_alleles=("S2", "S3")), triploid)
    assert (verdict.verdict, verdict.share) == ("no", 0.0)


def test_half_the_pollen_is_accepted_with_a_flag() -> None:
    verdict = sets_fruit(apple("D", s_alleles=("S1", "S2")), apple("R", s_alleles=("S2", "S3")))
    assert (verdict.verdict, verdict.share, verdict.half) == ("yes", 0.5, True)


def test_a_broken_allele_works_one_way_only() -> None:
    broken = Cultivar(crop="sweet cherry", name="B", s_alleles=("S3", "S4'"), ploidy=2, pollen_good=True,
                      bloom_season="mid", self_fruitful=SelfFruit.YES)
    plain = Cultivar(crop="sweet cherry", name="P", s_alleles=("S3", "S4"), ploidy=2, pollen_good=True,
                     bloom_season="mid", self_fruitful=SelfFruit.NO)
    assert sets_fruit(broken, plain).share == 0.5
    assert sets_fruit(plain, broken).share == 0.0


def test_unknown_alleles_are_never_a_silent_yes() -> None:
    verdict = sets_fruit(known("apple:Liberty"), known("apple:Enterprise"))
    assert verdict.verdict == "not proved"
    assert any("not proved" in reason.words for reason in verdict.reasons)


def test_alleles_of_two_pear_kinds_are_not_compared() -> None:
    one = Cultivar(crop="asian pear", name="A", s_alleles=("S1", "S2"), ploidy=2, pollen_good=True,
                   bloom_season="mid")
    other = Cultivar(crop="european pear", name="E", s_alleles=("S1", "S2"), ploidy=2, pollen_good=True,
                     bloom_season="mid")
    verdict = sets_fruit(one, other)
    assert (verdict.verdict, verdict.share) == ("not proved", None)


@pytest.mark.parametrize(
    ("donor", "receiver", "expected"),
    [
        ("hardy kiwi:Meader Male", "hardy kiwi:Ananasnaya", "yes"),
        ("hardy kiwi:Geneva", "hardy kiwi:Ananasnaya", "no"),
        ("hardy kiwi:Ananasnaya", "hardy kiwi:Meader Male", "no"),
        ("hardy kiwi:Meader Male", "arctic kiwi:September Sun", "no"),
        ("grape (muscadine):Carlos", "grape (muscadine):Fry", "yes"),
        ("grape (muscadine):Fry", "grape (muscadine):Summit", "no"),
        ("sea buckthorn:Pollmix", "sea buckthorn:Leikora", "yes"),
        ("honeyberry/haskap:Tundra", "honeyberry/haskap:Borealis", "no"),
        ("honeyberry/haskap:Honeybee", "honeyberry/haskap:Tundra", "yes"),
        ("rabbiteye blueberry:Premier", "rabbiteye blueberry:Climax", "yes"),
        ("southern highbush blueberry:O'Neal", "rabbiteye blueberry:Climax", "partly"),
        ("northern highbush blueberry:Patriot", "half-high blueberry:Polaris", "yes"),
        ("northern highbush blueberry:Patriot", "rabbiteye blueberry:Climax", "no"),
        ("hazelnut:York", "hazelnut:Yamhill", "yes"),
        ("hazelnut:Barcelona", "hazelnut:Sacajawea", "no"),
        ("sour cherry:Ujfehertoi Furtos", "sour cherry:Pandy 7", "no"),
        ("nectarine:Redgold", "peach:J.H. Hale", "yes"),
        ("pawpaw:Overleese", "pawpaw:NC-1", "yes"),
        ("grape:Concord", "grape:St. Pepin", "yes"),
        ("european plum:Cambridge Gage", "european plum:President", "no"),
        ("sweet cherry:Bing", "european plum:Victoria", "no"),
    ],
)
def test_kinds_that_follow_their_own_rules(donor: str, receiver: str, expected: str) -> None:
    assert sets_fruit(known(donor), known(receiver)).verdict == expected


def test_a_poor_donor_is_partly_good() -> None:
    assert sets_fruit(known("crabapple:Prairifire"), known("apple:Honeycrisp")).verdict == "partly"


def test_sports_follow_the_published_word_on_their_parent() -> None:
    reddest = known("apple:Topred")
    assert step(sets_fruit(reddest, known("apple:Honeycrisp")), "genetics") == "passed"


@pytest.mark.parametrize(
    ("name", "needs"),
    [("apple:Liberty", True), ("peach:Redhaven", False), ("hops:Cascade", False), ("fig:Celeste", False),
     ("hardy kiwi:Meader Male", False), ("hardy kiwi:Issai", False), ("hardy kiwi:Geneva", True),
     ("lowbush blueberry:Brunswick", True), ("strawberry:Jewel", False), ("apple:Golden Delicious", True)],
)
def test_who_needs_a_partner(name: str, needs: bool) -> None:
    assert needs_partner(known(name)) is needs


def test_what_crossing_adds_is_told_for_kinds_that_crop_alone() -> None:
    gain = better_crossed(known("northern highbush blueberry:Duke"))
    assert gain is not None
    assert "43 %" in gain.words
    assert better_crossed(known("red raspberry:Boyne")) is None
    assert better_crossed(known("rabbiteye blueberry:Climax")) is None


def test_sexes_are_read_from_sex_and_type() -> None:
    assert sex_of(known("hardy kiwi:Weiki")) == "pair"
    assert sex_of(known("sea buckthorn:Gnom")) == "male"
    assert sex_of(known("apple:Gala")) == ""


@pytest.mark.parametrize(
    ("zone", "chill", "factor"), [(4, None, 0.6), (3, 2000.0, 0.6), (6, 1500.0, 1.0), (9, 300.0, 1.3)]
)
def test_gaps_shrink_in_short_seasons_and_widen_in_mild_winters(
    zone: int, chill: float | None, factor: float
) -> None:
    assert PollenPlace(zone=zone, chill=chill).gap_factor == factor


def test_cold_regions_bring_early_and_late_together() -> None:
    early, late = apple("E", bloom_season="early"), apple("L", bloom_season="mid-late")
    temperate, cold = sets_fruit(early, late), sets_fruit(early, late, place=PollenPlace(zone=3))
    assert temperate.overlap is not None
    assert cold.overlap is not None
    assert cold.overlap.days > temperate.overlap.days


def test_partners_of_unlike_chill_part_in_mild_winters() -> None:
    one, other = apple("A", chill_hours=(400.0, 400.0)), apple("B", chill_hours=(800.0, 800.0))
    assert step(sets_fruit(one, other, place=PollenPlace(chill=450.0, zone=9)), "bloom") == "weak"
    assert step(sets_fruit(one, other, place=PollenPlace(chill=1500.0, zone=6)), "bloom") == "passed"


def test_distance_best_outer_beyond() -> None:
    gala, empire = known("apple:Gala"), known("apple:Empire")
    verdicts = [sets_fruit(gala, empire, distance=d, size="semi-dwarf").verdict for d in (15.0, 30.0, 30.1)]
    assert verdicts == ["yes", "partly", "no"]


def test_a_local_range_replaces_ours() -> None:
    place = PollenPlace(limits=Limits({"pollen-best-apple-semi-dwarf": 40.0}))
    assert sets_fruit(known("apple:Gala"), known("apple:Empire"), distance=35.0, place=place).verdict == "yes"


def test_a_local_figure_outside_its_bounds_is_not_used() -> None:
    place = PollenPlace(limits=Limits({"pollen-days-needed": 300.0}))
    assert sets_fruit(known("apple:Gala"), known("apple:Empire"), place=place).verdict == "yes"


def test_an_own_cultivar_of_a_strange_crop_says_what_is_missing() -> None:
    verdict = sets_fruit(Cultivar(crop="loquat", name="L"), Cultivar(crop="loquat", name="M"))
    assert verdict.verdict == "not proved"
    assert "loquat" in verdict.reasons[0].words


# What must hold for any plants.

ALLELES = st.lists(st.sampled_from([f"S{n}" for n in range(1, 8)]), min_size=2, max_size=2, unique=True)
#: Wild plants are seedlings: no two are alike.
WILD = {
    "Wild American plum", "Wild Canada plum", "unnamed seedling", "Malus floribunda (wild type crab)",
}
SEASONS = st.sampled_from(sorted(CLASSES))


@given(SEASONS, SEASONS)
def test_two_diploids_of_unknown_alleles_see_each_other_alike(one: str, other: str) -> None:
    a, b = apple("A", bloom_season=one), apple("B", bloom_season=other)
    assert sets_fruit(a, b).verdict == sets_fruit(b, a).verdict
    assert sets_fruit(a, b).verdict != "yes"


@given(ALLELES, ALLELES, SEASONS)
def test_shares_of_two_diploids_are_alike_both_ways(one: list[str], other: list[str], season: str) -> None:
    a = apple("A", s_alleles=tuple(one), bloom_season=season)
    b = apple("B", s_alleles=tuple(other), bloom_season=season)
    assert sets_fruit(a, b).share == sets_fruit(b, a).share


def test_no_plant_is_a_partner_of_its_own_clone() -> None:
    for plant in catalogue().cultivars.values():
        if plant.name not in WILD:
            assert sets_fruit(plant, plant).verdict == "no", plant.key
        if plant.sport_of is not None:
            parent = known(f"{plant.crop}:{plant.sport_of}")
            assert sets_fruit(plant, parent).verdict == "no", plant.key
            assert sets_fruit(parent, plant).verdict == "no", plant.key


def test_named_seedlings_are_clones_and_wild_plants_are_not() -> None:
    named = known("european plum:Marjorie's Seedling")
    assert sets_fruit(named, named).verdict == "no"
    wild = known("hybrid plum:Wild American plum")
    assert sets_fruit(wild, wild).verdict == "yes"


@given(
    st.sampled_from(sorted(k for k in catalogue().cultivars if k.crop in {"apple", "sweet cherry"})),
    st.sampled_from(sorted(k for k in catalogue().cultivars if k.crop in {"apple", "sweet cherry"})),
    st.floats(0, 100), st.floats(0, 100),
)
def test_nearer_is_never_worse(one: PlantKey, other: PlantKey, a: float, b: float) -> None:
    near, far = sorted((a, b))
    donor, receiver = known(str(one)), known(str(other))
    levels = [LEVEL[sets_fruit(donor, receiver, distance=d).verdict] for d in (near, far)]
    beyond = LEVEL[sets_fruit(donor, receiver).verdict]
    assert levels[0] >= levels[1]
    assert levels[0] <= beyond


@given(st.floats(-10, 10), st.floats(-10, 10), st.floats(0, 5))
def test_days_together_fall_as_bloom_draws_apart(one: float, other: float, more: float) -> None:
    near = sets_fruit(apple("A", bloom_order=one), apple("B", bloom_order=other)).overlap
    wider = other + more if other >= one else other - more
    far = sets_fruit(apple("A", bloom_order=one), apple("B", bloom_order=wider)).overlap
    assert near is not None
    assert far is not None
    assert far.days <= near.days + 1e-9
    assert far.years <= near.years + 1e-9
