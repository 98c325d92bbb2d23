"""Pollination of whole yards: who is set, who is not, and what is said of it."""

import re

import pytest
from attrs import evolve
from hypothesis import given, settings
from hypothesis import strategies as st
from support.builders import plant, yard_of
from support.orchards import kinds, orchard, row_of, site, tree

from yardplan.checks import pollination
from yardplan.checks.finding import Weight
from yardplan.checks.pollination import net_for, outlooks_for, run
from yardplan.checks.survey import Survey, moved_survey, survey_of
from yardplan.checks.wording import names_of, say
from yardplan.plants.catalogue import catalogue
from yardplan.plants.pollen_net import build_net
from yardplan.yard import edits
from yardplan.yard.change import difference
from yardplan.yard.planting import Bed, Planting, PlantKey, Row


def test_two_that_suit_each_other_are_well() -> None:
    assert run(orchard("apple:Gala", "apple:Empire")) == []


def test_one_clone_twice_sets_nothing() -> None:
    found = run(orchard("apple:Gala", "apple:Tenroy"))
    assert kinds(found) == {"P1": "light_alone", "P2": "light_alone"}
    found = run(orchard("apple:Empire", "apple:Empire"))
    assert kinds(found) == {"P1": "unset", "P2": "unset"}
    assert {finding.weight for finding in found} == {Weight.CONFLICT}
    assert "one clone" in str(found[0].figures["others"].value)


def test_a_triploid_and_one_diploid_leave_the_diploid_unset() -> None:
    found = run(orchard("apple:Bramley's Seedling", "apple:Empire"))
    assert kinds(found)["P2"] == "triploids_only"
    # A triploid with two diploids that suit each other: all crop, though no trial of the triploid is known.
    three = run(orchard("apple:Belle de Boskoop", "apple:Empire", "apple:Gala"))
    assert three == []


def test_sure_partners_are_named_for_example() -> None:
    found = run(orchard("european pear:Beurre Bosc"))
    assert "Doyenne du Comice" in str(found[0].figures["examples"].value)
    cold = run(orchard("european pear:Beurre Bosc", site=site(zone="3b")))
    assert "Doyenne du Comice" not in str(cold[0].figures.get("examples"))


def test_two_triploids_and_a_diploid() -> None:
    found = kinds(run(orchard("apple:Jonagold", "apple:Mutsu", "apple:Empire")))
    assert found == {"P3": "triploids_only"}


def test_too_far_is_named_with_its_distance() -> None:
    far = run(orchard("apple:Empire", "apple:McIntosh", apart=45.0))
    assert kinds(far) == {"P1": "unset", "P2": "unset"}
    assert "45.0 m apart" in str(far[0].figures["others"].value)
    weak = orchard("apple:Empire", "apple:McIntosh", apart=20.0)
    assert kinds(run(weak)) == {"P1": "far", "P2": "far"}


def test_the_yard_s_own_range_wins() -> None:
    near = orchard("apple:Empire", "apple:Gala", apart=20.0)
    size = net_for(near).nodes[0].size
    local = orchard("apple:Empire", "apple:Gala", apart=20.0, rules={f"pollen-best-apple-{size}": 25.0})
    assert run(local) == []


def test_unproved_partners_are_a_caution_with_the_reason() -> None:
    found = run(orchard("apple:Liberty", "apple:Macoun"))
    assert {finding.weight for finding in found} == {Weight.CAUTION}
    assert kinds(found) == {"P1": "not_proved", "P2": "not_proved"}
    assert "alleles of" in str(found[0].figures["why"].value)
    assert found[0].figures["overlap"].measure == "days"


def test_half_the_pollen_is_an_advice_until_a_full_partner_stands_there() -> None:
    pair = ("sweet cherry:Rainier", "sweet cherry:Bing")
    assert {f.kind: f.weight for f in run(orchard(*pair))} == {"half": Weight.ADVICE}
    assert "P2" not in kinds(run(orchard(*pair, "sweet cherry:Vista")))


def test_a_kind_that_crops_alone_but_better_crossed_is_an_advice() -> None:
    found = run(orchard("northern highbush blueberry:Duke"))
    assert [(finding.kind, finding.weight) for finding in found] == [("better_crossed", Weight.ADVICE)]
    assert run(orchard("northern highbush blueberry:Duke", "northern highbush blueberry:Spartan")) == []
    assert run(orchard("peach:Redhaven")) == []


def test_dioecious_kinds_need_the_other_sex() -> None:
    assert kinds(run(orchard("hardy kiwi:Geneva", "hardy kiwi:Ananasnaya"))) == {"P1": "unset", "P2": "unset"}
    assert run(orchard("hardy kiwi:Geneva", "hardy kiwi:Meader Male")) == []


def test_one_male_for_too_many_females_is_told() -> None:
    keys = ["hardy kiwi:Meader Male"] + ["hardy kiwi:Geneva"] * 9
    found = run(orchard(*keys, apart=1.5))
    assert [finding.kind for finding in found] == ["few_donors"]
    assert found[0].figures["takers"].value == 9.0


def test_one_donor_for_ten_of_a_clone_is_told() -> None:
    nine = run(orchard("apple:Empire", *["apple:Gala"] * 9, apart=1.2))
    assert nine == []
    ten = run(orchard("apple:Empire", *["apple:Gala"] * 10, apart=1.2))
    assert [(finding.kind, finding.things) for finding in ten] == [("few_donors", ("P1",))]


def long_row(*givers: Planting) -> Survey:
    """A yard with a row of 16 apples, 30 m long from (3, 5), and these givers of pollen."""
    row = Row(id="R1", plant=PlantKey("apple", "Gala"), line=((3.0, 5.0), (33.0, 5.0)), count=16, spacing=2.0,
              rootstock="M9")
    return survey_of(yard_of(*givers, site=site(), width=60, rows=(row,)))


def test_a_row_that_runs_out_of_reach_of_its_giver_is_told() -> None:
    giver = plant("A1", "apple:Empire", (1.0, 5.0), rootstock="M9")
    finding = next(f for f in run(long_row(giver)) if f.kind == "row_beyond")
    best = finding.figures["best"].value
    assert isinstance(best, float)
    assert finding.figures["near"].value == sum(2.0 + 2.0 * n <= best for n in range(16))
    assert (finding.things, finding.figures["count"].value) == (("R1",), 16.0)
    givers = tuple(evolve(giver, id=f"A{n}", place=(3.0 + 2 * n, 4.0)) for n in range(1, 16))
    assert [f for f in run(long_row(*givers)) if f.kind == "row_beyond"] == []


def test_givers_are_asked_for_by_number_and_place() -> None:
    found = run(orchard("apple:Empire", *["apple:Gala"] * 10, apart=1.2))
    said = say(found[0], {"P1": "Empire (P1)"}, "metric")
    assert "one for every 9: one in every row, since bees work along rows" in said.clears


def test_plants_that_want_no_pollen_are_left_alone() -> None:
    assert run(orchard("hops:Cascade", "rhubarb:Victoria", "fig:Celeste")) == []


def test_rows_and_beds_give_and_take() -> None:
    rows = (
        Row(id="R1", plant=PlantKey("rabbiteye blueberry", "Climax"), line=((5.0, 5.0), (15.0, 5.0)), count=6,
            spacing=2.0),
    )
    alone = survey_of(yard_of(site=site(), rows=rows))
    assert kinds(run(alone)) == {"R1": "unset"}
    beds = (
        Bed(id="B1", outline=((5.0, 8.0), (9.0, 8.0), (9.0, 10.0), (5.0, 10.0)),
            plant=PlantKey("rabbiteye blueberry", "Premier")),
    )
    both = survey_of(yard_of(site=site(), rows=rows, beds=beds))
    assert run(both) == []
    net = net_for(both)
    assert net.distance(net.number["R1"], net.number["B1"]) == pytest.approx(3.0, abs=0.01)


@pytest.mark.parametrize(
    ("kind", "fields", "expected"),
    [
        ("crabapple", {}, "possible"),
        ("crabapple", {"donor": "none"}, "unset"),
        ("crabapple", {"donor": "named", "cultivar": "Dolgo"}, None),
        ("crabapple", {"donor": "named", "cultivar": "Nobody's Crab"}, "possible"),
        ("black walnut", {}, "unset"),
    ],
)
def test_trees_next_door_count_as_far_as_they_are_known(
    kind: str, fields: dict[str, str], expected: str | None
) -> None:
    survey = orchard("apple:Paulared", standing_trees=(tree("T1", kind, (9.0, 5.0), **fields),))
    assert kinds(run(survey)).get("P1") == expected


def test_a_town_crabapple_may_help_from_afar_but_is_never_sure() -> None:
    near = orchard("apple:Empire", standing_trees=(tree("T1", "crabapple", (83.0, 5.0)),))
    assert kinds(run(near)) == {"P1": "possible"}
    away = orchard("apple:Empire", standing_trees=(tree("T1", "crabapple", (95.0, 5.0)),))
    assert kinds(run(away)) == {"P1": "unset"}


def test_wild_plums_serve_hybrid_but_not_european_plums() -> None:
    trees = (tree("T1", "wild plum", (9.0, 9.0), donor="wild thicket"),)
    found = kinds(run(orchard("hybrid plum:Pembina", "european plum:Jubileum", standing_trees=trees)))
    assert found["P1"] == "possible"
    assert found["P2"] == "unset"


def test_an_own_cultivar_with_half_its_facts_is_judged_by_what_is_known() -> None:
    own = ({"crop": "apple", "name": "Grandmother's", "self_fruitful": "no"},)
    found = run(orchard("apple:Grandmother's", "apple:Empire", own_cultivars=own))
    assert kinds(found)["P1"] == "not_proved"
    assert "not known" in str(next(f for f in found if f.things == ("P1",)).figures["why"].value)


def test_an_apple_nobody_knows_may_help_and_is_judged_by_nobody() -> None:
    found = run(orchard("apple:Nowhere Pippin", "apple:Empire"))
    assert kinds(found) == {"P2": "possible"}
    assert found[0].weight is Weight.CAUTION, "an old apple of unknown name most likely gives pollen"


@pytest.mark.parametrize("sort", ["row", "bed"])
def test_a_row_or_bed_of_unknown_variety_may_help_but_proves_nothing(sort: str) -> None:
    unknown = PlantKey("rabbiteye blueberry", "Nobody's Blue")
    yard = yard_of(plant("P1", "rabbiteye blueberry:Tifblue", (10.0, 10.0)))
    assert kinds(run(survey_of(yard)))["P1"] == "unset"
    if sort == "row":
        yard = evolve(yard, rows=(Row(
            id="R1", plant=unknown, line=((12.0, 10.0), (18.0, 10.0)), count=5, spacing=1.5,
        ),))
    else:
        outline = ((12.0, 9.0), (16.0, 9.0), (16.0, 12.0), (12.0, 12.0))
        yard = evolve(yard, beds=(Bed(id="B1", plant=unknown, outline=outline),))
    found = run(survey_of(yard))
    assert kinds(found) == {"P1": "possible"}
    assert "nothing is known of Nobody's Blue" in str(found[0].figures["why"].value)
    # No kin of it is helped by it, and a sure partner goes before it.
    assert kinds(run(orchard("apple:Nowhere Pippin", "european pear:Beurre Bosc"))) == {"P2": "unset"}
    assert run(orchard("apple:Nowhere Pippin", "apple:Empire", "apple:Gala")) == []


def test_words_of_every_kind_are_whole() -> None:
    surveys = [
        orchard("apple:Empire", "apple:Empire"), orchard("apple:Gala"),
        orchard("apple:Jonagold", "apple:Empire"),
        orchard("apple:Empire", "apple:McIntosh", apart=20.0), orchard("apple:Liberty", "apple:Macoun"),
        orchard("apple:Honeycrisp", "crabapple:Prairifire"),
        orchard("sweet cherry:Rainier", "sweet cherry:Bing"), orchard("northern highbush blueberry:Duke"),
        orchard("apple:Paulared", standing_trees=(tree("T1", "crabapple", (9.0, 5.0)),)),
        orchard(*["hardy kiwi:Meader Male"] + ["hardy kiwi:Geneva"] * 9, apart=1.5),
        orchard("apple:Own", own_cultivars=({"crop": "apple", "name": "Own"},)),
        long_row(plant("A1", "apple:Empire", (1.0, 5.0), rootstock="M9")),
    ]
    seen = set()
    for survey in surveys:
        for finding in run(survey):
            said = say(finding, names_of(survey), "imperial")
            seen.add(finding.kind)
            for text in (said.title, said.message, said.clears, said.source_text):
                assert text
                assert not re.search(r"[{}\[\]]|nan|None", text), text
    assert seen == set(pollination.CHECK.wording)


# What must hold for any yard.

KEYS = sorted(
    str(key) for key in catalogue().cultivars
    if key.crop in {"apple", "crabapple", "sweet cherry", "hardy kiwi", "japanese plum", "hybrid plum"}
)
PLACES = st.tuples(st.floats(0, 60), st.floats(0, 60))
PLANTS = st.lists(st.tuples(st.sampled_from(KEYS), PLACES), min_size=1, max_size=8)
ORDER = {"none": 0, "light alone": 1, "light": 2, "not proved": 3, "well": 4, "alone": 5}


@settings(max_examples=40, deadline=None)
@given(PLANTS, st.tuples(st.sampled_from(KEYS), PLACES))
def test_one_plant_more_never_worsens_what_another_may_expect(
    plants: list[tuple[str, tuple[float, float]]], more: tuple[str, tuple[float, float]]
) -> None:
    planted = [plant(f"P{i}", key, at) for i, (key, at) in enumerate(plants)]
    before = outlooks_for(survey_of(yard_of(*planted, site=site())))
    after = outlooks_for(survey_of(yard_of(*planted, plant("X", *more), site=site())))
    for one in planted:
        was, now = before[one.id], after[one.id]
        if was is not None:
            assert now is not None
            assert ORDER[now.expected] >= ORDER[was.expected]


@settings(max_examples=40, deadline=None)
@given(PLANTS, st.data())
def test_a_drag_finds_what_a_fresh_look_finds(
    plants: list[tuple[str, tuple[float, float]]], data: st.DataObject
) -> None:
    yard = yard_of(*[plant(f"P{i}", key, at) for i, (key, at) in enumerate(plants)], site=site())
    survey = survey_of(yard)
    run(survey)
    for _ in range(4):
        thing = data.draw(st.sampled_from([p.id for p in yard.plantings]))
        moved = edits.move(yard, {thing}, data.draw(st.tuples(st.floats(-30, 30), st.floats(-30, 30))))
        survey, yard = moved_survey(survey, moved, difference(yard, moved)), moved
        live = run(survey)
        net = net_for(survey)
        fresh = build_net(survey.stand, net.place, net.cultivars)
        assert (net.scores == fresh.scores).all()
        pollination._last.__dict__.clear()
        assert live == run(survey)


def test_a_sure_giver_dragged_out_of_reach_leaves_half_the_pollen() -> None:
    spots = {"P0": ("Queen Cox", 3.0), "P1": ("Ace", 0.0), "P2": ("Ace", 0.0)}
    planted = [plant(key, f"apple:{name}", (0.0, y)) for key, (name, y) in spots.items()]
    yard = yard_of(*planted, plant("P5", "crabapple:Centennial", (0.0, 18.0)), site=site())
    survey = survey_of(yard)
    assert not [one for one in run(survey) if one.kind == "half" and "P0" in one.things]
    moved = edits.move(yard, {"P5"}, (0.0, 1.0))
    live = run(moved_survey(survey, moved, difference(yard, moved)))
    assert [one for one in live if one.kind == "half" and "P0" in one.things]


@settings(max_examples=30, deadline=None)
@given(PLANTS, st.floats(-3, 3), st.floats(-50, 50), st.floats(-50, 50), st.randoms())
def test_order_and_rigid_motion_do_not_change_findings(
    plants: list[tuple[str, tuple[float, float]]], turn: float, dx: float, dy: float, random: object
) -> None:
    planted = [plant(f"P{i}", key, at) for i, (key, at) in enumerate(plants)]
    yard = yard_of(*planted, site=site())
    ids = {p.id for p in planted}
    moved = edits.rotate(edits.move(yard, ids, (dx, dy)), ids, (0.0, 0.0), turn * 57.3)
    shuffled = yard_of(*reversed(planted), site=site())

    def seen(one: object) -> dict[str, tuple[str, str]]:
        found = outlooks_for(survey_of(one))  # type: ignore[arg-type]
        return {p.id: out.expected for p in planted if (out := found[p.id]) is not None}  # type: ignore[misc]

    # Distances at the very edge of a range may fall on either side after turning: keep clear of the edges.
    spots = [p.place for p in planted]
    gaps = [((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2) ** 0.5 for a in spots for b in spots]
    if all(abs(gap - edge) > 1e-3 for gap in gaps for edge in (6, 10, 15, 30, 60)):
        assert seen(yard) == seen(moved)
    assert seen(yard) == seen(shuffled)


def test_links_tell_strength_distance_and_direction() -> None:
    survey = orchard("apple:Jonagold", "apple:Empire", "apple:Gala")
    net = net_for(survey)
    links = {(link.donor, link.receiver): link for link in net.links()}
    assert links["P2", "P1"].one_way
    assert not links["P2", "P3"].one_way
    assert links["P2", "P3"].distance == pytest.approx(6.0)
    assert ("P1", "P2") not in links
    assert all("P3" in (link.receiver, link.donor) for link in net.links(["P3"]))


def test_row_of_builder_spaces_plants() -> None:
    assert [p.place for p in row_of("apple:Gala", "apple:Fuji", apart=4.0)] == [(3.0, 5.0), (7.0, 5.0)]


def test_a_partner_just_too_far_is_told_the_range_of_the_pair_not_of_the_larger_kind() -> None:
    """A dwarf apple and a large crabapple: the dwarf's shorter range counts, and the words must say it."""
    yard = yard_of(
        plant("CA1", "crabapple:Dolgo", (6.2, 5.0)), plant("A4", "apple:Hazen", (0.1, 5.0), rootstock="B.9"),
        width=40,
    )
    found = [finding for finding in run(survey_of(yard)) if finding.kind == "far"]
    assert found
    for finding in found:
        assert float(finding.figures["best"].value) < float(finding.figures["distance"].value)


def test_who_stands_where_he_stood_has_not_moved_though_worked_out_anew() -> None:
    """After an undo the stand holds other objects; only the plant that moved is told, and all scores hold."""
    yard = yard_of(*(plant(f"A{n}", kind, (4.0 * n + 2, 5)) for n, kind in enumerate((
        "apple:Liberty", "apple:Topaz", "apple:Akane", "sweet cherry:Bing", "sweet cherry:Van",
    ))))
    before = net_for(survey_of(yard))
    again = net_for(survey_of(yard))
    assert again.changed == frozenset()
    assert (again.scores == before.scores).all()
    elsewhere = survey_of(edits.move(yard, {"A4"}, (60.0, 0.0)))
    moved = net_for(elsewhere)
    assert moved.changed == {moved.number["A4"]}
    anew = build_net(elsewhere.stand, moved.place, moved.cultivars)
    assert moved.scores == pytest.approx(anew.scores)
