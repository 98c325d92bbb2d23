"""The partner finder: what it names sets fruit, stands the winter, and the fewest plants make all crop."""

from itertools import combinations

import pytest
from support.builders import plant, yard_of
from support.orchards import orchard, site, tree

from yardplan.arrange.partner_plan import plan_for
from yardplan.arrange.partner_spots import spots_for
from yardplan.arrange.partners import grounds_of, partners_for
from yardplan.checks.pollination import net_for, outlooks_for
from yardplan.checks.survey import Survey, survey_of
from yardplan.plants.catalogue import catalogue
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.pollen import needs_partner, sets_fruit
from yardplan.plants.pollen_net import LEVEL
from yardplan.yard import edits
from yardplan.yard.planting import PlantKey


def known(text: str) -> Cultivar:
    found = catalogue().cultivar(PlantKey.parse(text))
    assert found is not None
    return found


def with_plan(survey: Survey) -> Survey:
    """The survey with all that the plan adds planted where it says."""
    yard = survey.yard
    for number, addition in enumerate(plan_for(survey).additions):
        yard = edits.add(yard, plant(f"N{number}", str(addition.suggestion.key), addition.place))
    return survey_of(yard)


def test_suggestions_set_fruit_and_are_ranked() -> None:
    survey = orchard("sweet cherry:Bing")
    found = partners_for(survey, "P1")
    assert found
    assert {one.verdict for one in found[:5]} == {"yes"}
    levels = [LEVEL[one.verdict] for one in found]
    assert levels == sorted(levels, reverse=True)
    for one in found:
        place = net_for(survey).place
        assert sets_fruit(known(str(one.key)), known("sweet cherry:Bing"), place=place).verdict == one.verdict
        assert one.reasons


def test_no_clone_of_the_plant_is_suggested() -> None:
    names = {one.key.cultivar for one in partners_for(orchard("apple:Gala"), "P1", limit=200)}
    assert not names & {"Gala", "Tenroy", "Galaxy", "Baigent"}


def test_suggestions_stand_the_winter_here() -> None:
    cold = orchard("apple:Honeycrisp", site=site(zone="3b"))
    grounds = grounds_of(cold)
    found = partners_for(cold, "P1", limit=100)
    assert found
    for one in found:
        assert grounds.suits(known(str(one.key)))
        assert known(str(one.key)).zone_min in {"2", "2b", "3", "3a", "3b"}


def test_kinds_that_lack_chill_are_left_out() -> None:
    warm = site(latitude=28.4, zone="9b",
                monthly_means=(15.9, 17.6, 19.6, 22.3, 25.2, 27.3, 28.1, 28.1, 27.2, 24.2, 20.1, 17.4))
    keys = {str(one.key) for one in partners_for(orchard("apple:Anna", site=warm), "P1", limit=100)}
    assert "apple:Red Delicious" not in keys
    assert "apple:McIntosh" not in keys


def test_the_caller_may_say_what_fits() -> None:
    survey = orchard("apple:Empire")
    found = partners_for(survey, "P1", fits=lambda key: key.cultivar.startswith("G"), limit=50)
    assert found
    assert all(one.key.cultivar.startswith("G") for one in found)


def test_unknown_things_and_plants_that_take_no_pollen() -> None:
    survey = orchard("hops:Cascade", standing_trees=(tree("T1", "crabapple", (3.0, 3.0)),))
    with pytest.raises(KeyError):
        partners_for(survey, "P9")
    assert partners_for(survey, "T1") == []


def test_one_partner_serves_two_that_stand_together() -> None:
    survey = orchard("sweet cherry:Bing", "sweet cherry:Lambert")
    plan = plan_for(survey)
    assert len(plan.additions) == 1
    assert set(plan.additions[0].serves) == {"P1", "P2"}
    assert plan.left == ()


def test_two_that_stand_far_apart_need_one_each() -> None:
    assert len(plan_for(orchard("sweet cherry:Bing", "sweet cherry:Lambert", apart=45.0)).additions) == 2


@pytest.mark.parametrize(
    "keys",
    [
        ("sweet cherry:Bing", "sweet cherry:Lambert", "apple:Empire", "hardy kiwi:Geneva"),
        ("apple:Jonagold", "apple:Mutsu", "apple:Golden Delicious"),
        ("european pear:Luscious", "apricot:Moongold"),
        ("honeyberry/haskap:Tundra", "honeyberry/haskap:Borealis", "rabbiteye blueberry:Climax"),
        ("hybrid plum:Pembina", "japanese plum:Black Amber", "hazelnut:Jefferson"),
    ],
)
def test_after_the_plan_everything_crops(keys: tuple[str, ...]) -> None:
    survey = orchard(*keys)
    before, after = outlooks_for(survey), outlooks_for(with_plan(survey))
    for number in range(1, len(keys) + 1):
        outlook = after[f"P{number}"]
        assert outlook is not None
        assert outlook.expected in {"well", "not proved"}, (keys[number - 1], before[f"P{number}"])
    for planting in with_plan(survey).yard.plantings:
        outlook = after[planting.id] if planting.id in after.net.number else None
        assert outlook is None or outlook.expected not in {"none", "light alone"}, planting.plant


def test_no_single_plant_could_do_what_two_were_named_for() -> None:
    survey = orchard("sweet cherry:Bing", "sweet cherry:Van", "sweet cherry:Lambert", apart=5.0)
    assert plan_for(survey).additions == ()
    lone = orchard("european pear:Bartlett", "apple:Empire", apart=5.0)
    plan = plan_for(lone)
    assert len(plan.additions) == 2
    pool = [known(str(addition.suggestion.key)) for addition in plan.additions]
    for one, _ in combinations(pool, 2):
        takers = [known(key) for key in ("european pear:Bartlett", "apple:Empire")]
        assert sum(sets_fruit(one, taker).verdict != "no" for taker in takers) == 1


def test_a_yard_that_wants_nothing_gets_nothing() -> None:
    plan = plan_for(orchard("apple:Gala", "apple:Empire", "peach:Redhaven"))
    assert (plan.additions, plan.wanted, plan.left) == ((), (), ())


def test_what_no_variety_here_serves_is_said() -> None:
    plan = plan_for(orchard("fig:Sari Lop"))
    assert plan.wanted == ("P1",)
    assert plan.left == ("P1",)


def test_additions_crop_themselves() -> None:
    plan = plan_for(orchard("sweet cherry:Bing", "apple:Empire", "hybrid plum:Superior"))
    served = {name for addition in plan.additions for name in addition.serves}
    for addition in plan.additions:
        suggested = known(str(addition.suggestion.key))
        crops = not needs_partner(suggested) or addition.suggestion.back != "no"
        assert crops or str(suggested.key) in served


def test_one_plant_between_serves_what_none_beside_could() -> None:
    # Four of one clone 3.5 m apart, 10.5 m from end to end: the middle is within 6 m of all, no stem is.
    line = [plant(f"P{n}", "apple:Empire", (3.0 + 3.5 * n, 5.0)) for n in range(4)]
    local = {f"pollen-best-apple-{size}": 6.0 for size in ("dwarf", "semi-dwarf", "standard")} | {
        f"pollen-best-crabapple-{size}": 6.0 for size in ("dwarf", "semi-dwarf", "standard")
    }
    survey = survey_of(yard_of(*line, site=site(), width=30, rules=local))
    plan = plan_for(survey)
    assert [set(one.serves) for one in plan.additions] == [{"P0", "P1", "P2", "P3"}]
    x, y = plan.additions[0].place
    assert all(((x - p.place[0]) ** 2 + (y - p.place[1]) ** 2) ** 0.5 <= 6.0 for p in line)
    after = with_plan(survey)
    assert all(outlooks_for(after)[p.id].expected == "well" for p in line)


def test_spots_stay_on_the_lot() -> None:
    line = [plant(f"P{n}", "apple:Empire", (1.0 + 5.0 * n, 0.5), rootstock="M9") for n in range(3)]
    survey = survey_of(yard_of(*line, site=site(), width=20, depth=3))
    net = net_for(survey)
    for spot in spots_for(net, range(len(net)), survey.yard.lot):
        assert 0 <= spot.place[0] <= 20
        assert 0 <= spot.place[1] <= 3
