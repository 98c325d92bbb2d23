import pytest
from hypothesis import given
from hypothesis import strategies as st
from support.builders import plant, yard_of
from support.stands import Nursery, crop, size

from yardplan.checks import spacing
from yardplan.checks.finding import Weight
from yardplan.plants.crop import CropForm
from yardplan.yard.ground import StandingTree
from yardplan.yard.planting import Bed, Container, PlantKey
from yardplan.yard.yard import Yard


def found(yard: Yard, **sizes: object):
    return spacing.run(Nursery(dict(sizes)).survey(yard))


@pytest.mark.parametrize(
    ("distance", "weight", "overlap"),
    [
        (4.0, None, 0.0),
        (3.7, Weight.ADVICE, 0.075),
        (3.3, Weight.CAUTION, 0.175),
        (2.9, Weight.CONFLICT, 0.275),
    ],
)
def test_overlap_class(distance: float, weight: Weight | None, overlap: float):
    findings = found(yard_of(plant("A1", "apple:X", (5, 5)), plant("A2", "apple:Y", (5 + distance, 5))))
    assert [f.weight for f in findings] == ([] if weight is None else [weight])
    for finding in findings:
        assert finding.things == ("A1", "A2")
        assert finding.figures["overlap"].value == pytest.approx(overlap)
        assert finding.figures["short"].value == pytest.approx(4.0 - distance)
        assert finding.figures["direction"].value == "east"


def test_unlike_plants_need_half_the_sum_of_their_spreads():
    yard = yard_of(plant("A1", "apple:X", (5, 5)), plant("B1", "blueberry:Y", (5, 7)))
    (finding,) = found(yard, A1=size(4), B1=size(1.5))
    assert finding.figures["wanted"].value == pytest.approx(2.75)
    assert finding.figures["direction"].value == "north"


def test_direction_honours_north():
    from attrs import evolve

    yard = yard_of(plant("A1", "apple:X", (5, 5)), plant("A2", "apple:Y", (7, 5)))
    turned = evolve(yard, site=evolve(yard.site, north=90.0))
    (finding,) = found(turned)
    assert finding.figures["direction"].value == "north"


def test_standing_trees_are_no_fault_among_themselves():
    trees = tuple(
        StandingTree(id=f"T{i}", kind="oak", place=(10 + i, 10), height=15, spread=10) for i in (1, 2)
    )
    assert found(yard_of(standing_trees=trees)) == []
    (finding,) = found(yard_of(plant("A1", "apple:X", (15, 10)), standing_trees=trees[:1]))
    assert finding.things == ("A1", "T1")
    assert finding.figures["mover"].value == "A1"


def test_a_group_may_touch_but_not_share_a_hole():
    pair = (plant("A1", "apple:X", (5, 5), group="g"), plant("A2", "apple:Y", (5.5, 5), group="g"))
    assert found(yard_of(*pair)) == []
    (finding,) = found(yard_of(pair[0], plant("A2", "apple:Y", (5.3, 5), group="g")))
    assert finding.kind == "group"
    assert finding.figures["wanted"].value == pytest.approx(18 * 0.0254)


def test_currants_may_stand_under_an_open_tree():
    yard = yard_of(plant("A1", "apple:X", (5, 5)), plant("C1", "red currant:Y", (6.5, 5)))
    sizes = {"A1": size(5, 5), "C1": size(1.4, 1.2)}
    assert found(yard, **sizes) == []
    other = yard_of(plant("A1", "apple:X", (5, 5)), plant("C1", "blueberry:Y", (6.5, 5)))
    assert [f.kind for f in found(other, **sizes)] == ["overlap"]


def _espaliers(gap: float, facing: float):
    yard = yard_of(
        plant("A1", "apple:X", (5, 5), form="espalier", facing=facing),
        plant("A2", "apple:Y", (5 + gap, 5), form="espalier", facing=facing),
    )
    form = CropForm(
        crop="apple", form="espalier", habit="flat-trained", height=(2, 2), spread=(4, 4), in_row=(3.6, 4.5),
        touching=True,
    )
    flat = size(4, 2, "flat-trained", depth=0.4)
    return spacing.run(Nursery({"apple": flat}, {"apple": crop("apple", forms=(form,))}).survey(yard))


def test_espaliers_meet_along_the_wire_by_their_published_distance():
    assert _espaliers(3.7, facing=0.0) == []
    (finding,) = _espaliers(3.0, facing=0.0)
    assert finding.kind == "form"
    assert finding.figures["wanted"].value == pytest.approx(3.6)


def test_espaliers_behind_one_another_need_only_their_depth():
    assert _espaliers(1.0, facing=90.0) == []
    assert len(_espaliers(0.3, facing=90.0)) == 1


def test_a_tree_in_front_of_a_panel_is_measured_to_the_panel():
    yard = yard_of(plant("A1", "apple:X", (5, 5)), plant("P1", "plum:Y", (6.9, 6.0)))
    (finding,) = found(yard, A1=size(4, 2, "flat-trained", depth=0.3), P1=size(4))
    assert finding.figures["distance"].value == pytest.approx(1.0, abs=0.01)
    assert finding.weight is Weight.CONFLICT


def test_a_crown_over_a_bed():
    bed = Bed(id="B1", outline=((5, 5), (7, 5), (7, 7), (5, 7)), plant=PlantKey("asparagus", "Z"))
    (finding,) = found(yard_of(plant("A1", "apple:X", (6, 4.5)), beds=(bed,)))
    assert finding.kind == "over_bed"
    assert 0.1 < finding.figures["share"].value < 1.0


@pytest.mark.parametrize(
    ("kind", "planted", "fields", "kinds"),
    [
        ("apple:X", "asparagus:Z", {}, ["in_bed"]), ("asparagus:Y", "asparagus:Z", {}, ["over_bed"]),
        # Strawberries bear shade, but nothing else among them; a pot stands on a bed, not in it.
        ("apple:X", "strawberry:Z", {}, ["in_bed"]), ("apple:X", None, {}, []),
        ("apple:X", "strawberry:Z", {"container": "K1"}, []),
        ("apple:X", "asparagus:Z", {"container": "K1"}, ["over_bed"]),
    ],
)
def test_a_plant_in_a_planted_bed(kind: str, planted: str | None, fields: dict[str, str], kinds: list[str]):
    bed = Bed(
        id="B1", outline=((5, 5), (7, 5), (7, 7), (5, 7)), plant=PlantKey.parse(planted) if planted else None
    )
    pots = (Container(id="K1", place=(6, 5.4), volume=60.0),) if fields else ()
    findings = found(yard_of(plant("A1", kind, (6, 5.4), **fields), beds=(bed,), containers=pots))
    assert [f.kind for f in findings] == kinds
    if kinds == ["in_bed"]:
        assert findings[0].weight is Weight.CONFLICT
        assert findings[0].figures["short"].value == pytest.approx(0.4)
        assert findings[0].figures["direction"].value == "south"


@given(st.floats(0.3, 6.0), st.floats(0.0, 6.28), st.floats(1.0, 6.0), st.floats(1.0, 6.0))
def test_more_distance_never_weighs_more(distance: float, angle: float, one: float, other: float):
    import math

    order = {Weight.CONFLICT: 3, Weight.CAUTION: 2, Weight.ADVICE: 1}

    def heaviest(gap: float) -> int:
        place = (15 + gap * math.cos(angle), 10 + gap * math.sin(angle))
        findings = found(
            yard_of(plant("A1", "apple:X", (15, 10)), plant("A2", "apple:Y", place)),
            A1=size(one), A2=size(other),
        )
        return max((order[f.weight] for f in findings), default=0)

    assert heaviest(distance + 0.2) <= heaviest(distance)
