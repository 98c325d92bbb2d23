import pytest
from attrs import evolve
from support.builders import plant, yard_of
from support.stands import Nursery, size

from yardplan.checks import neighbours, ribes_law
from yardplan.checks.finding import Finding, Weight
from yardplan.units import FOOT
from yardplan.yard.ground import Barrier, StandingTree
from yardplan.yard.planting import Bed, PlantKey, Row
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard


def found(yard: Yard, **sizes: object) -> list[Finding]:
    return neighbours.run(Nursery(dict(sizes)).survey(yard))


def tree(kind: str, x: float = 10.0, height: float = 16.0, spread: float = 10.0) -> StandingTree:
    return StandingTree(id="T1", kind=kind, place=(x, 10.0), height=height, spread=spread)


def beside(kind: str, what: str, distance: float, height: float = 16.0) -> Yard:
    return yard_of(
        plant("A1", what, (10 + distance, 10)), width=200, standing_trees=(tree(kind, height=height),)
    )


@pytest.mark.parametrize(
    ("feet", "weight"), [(55, Weight.CONFLICT), (70, Weight.CAUTION), (85, None)]
)
@pytest.mark.parametrize("kind", ["black walnut", "walnut, black", "butternut"])
def test_walnut_zone(kind: str, feet: float, weight: Weight | None):
    findings = found(beside(kind, "apple:X", feet * FOOT), A1=size(2))
    assert [f.weight for f in findings if f.kind == "juglone"] == ([weight] if weight else [])


def test_a_young_walnut_reaches_its_height():
    within, beyond = (beside("black walnut", "apple:X", d, height=5) for d in (4.5, 5.5))
    assert [f.kind for f in found(within, A1=size(2))] == ["juglone"]
    assert found(beyond, A1=size(2)) == []


@pytest.mark.parametrize(
    ("what", "kind"),
    [
        ("black raspberry:X", None), ("grape:X", None), ("red currant:X", "juglone_unknown"),
        ("rhubarb:X", "juglone"),
    ],
)
def test_kinds_bear_walnut_differently(what: str, kind: str | None):
    kinds = {f.kind for f in found(beside("black walnut", what, 16.0), A1=size(1))} - {"tree_roots"}
    assert kinds == ({kind} if kind else set())


def test_rows_and_beds_near_a_walnut():
    key = PlantKey("blackberry (erect)", "X")
    row = Row(id="R1", plant=key, line=((20, 10), (26, 10)), count=4, spacing=1.5)
    bed = Bed(id="B1", outline=((18, 12), (20, 12), (20, 14), (18, 14)), plant=PlantKey("potato", "X"))
    yard = yard_of(standing_trees=(tree("black walnut"),), rows=(row,), beds=(bed,))
    assert [f.things[0] for f in found(yard) if f.kind == "juglone"] == ["B1", "R1"]


def test_one_finding_names_all_hosts_of_a_juniper():
    yard = yard_of(
        plant("A1", "apple:X", (20, 10)), plant("P1", "european pear:Y", (30, 10)),
        plant("C1", "sweet cherry:Z", (25, 10)), width=60, standing_trees=(tree("juniper", height=4),),
    )
    (finding,) = found(yard)
    assert (finding.kind, finding.things) == ("juniper_rust", ("T1", "A1", "P1"))
    assert finding.figures["distance"].value == pytest.approx(10.0)
    assert finding.figures["nearest"].value == "A1"


def test_white_pine_and_currants():
    yard = beside("pine, eastern white", "black currant:X", 100.0)
    assert [f.kind for f in found(yard, A1=size(1))] == ["pine_rust"]
    assert found(beside("pine, Scots", "black currant:X", 100.0), A1=size(1)) == []


@pytest.mark.parametrize(
    ("feet", "weight"), [(90, Weight.CAUTION), (200, Weight.ADVICE), (710, None)]
)
def test_black_from_red_raspberries(feet: float, weight: Weight | None):
    rows = tuple(
        Row(id=key, plant=PlantKey(crop, "X"), line=((x, 0), (x, 9)), count=9, spacing=1)
        for key, crop, x in (("R1", "red raspberry", 0.0), ("R2", "black raspberry", feet * FOOT))
    )
    findings = found(yard_of(rows=rows, width=300))
    assert [(f.things, f.weight) for f in findings] == ([(("R2", "R1"), weight)] if weight else [])


def test_wild_brambles():
    yard = beside("wild raspberry thicket", "red raspberry:X", 100.0)
    assert [f.kind for f in found(yard, A1=size(1))] == ["wild_brambles"]


def test_roots_of_a_big_tree():
    assert [f.kind for f in found(beside("oak, northern red", "apple:X", 7.0), A1=size(3))] == ["tree_roots"]
    assert found(beside("oak, northern red", "apple:X", 10.5), A1=size(3)) == []
    assert found(beside("oak, northern red", "apple:X", 7.0, height=8), A1=size(3)) == []


def test_a_tall_hedge():
    hedge = Barrier(id="W1", kind="hedge", line=((0, 0), (0, 20)), height=3.0)
    yard = yard_of(plant("A1", "apple:X", (3, 10)), barriers=(hedge,))
    assert [f.kind for f in found(yard, A1=size(4))] == ["windbreak"]
    assert found(evolve(yard, barriers=(evolve(hedge, height=2.0),)), A1=size(4)) == []


@pytest.mark.parametrize(
    ("region", "what", "kind", "weight"),
    [
        ("US-MA", "black currant:X", "barred", Weight.CONFLICT),
        ("US-MA", "red currant:X", "limited", Weight.CAUTION),
        ("US-NY", "black currant:X", "limited", Weight.CAUTION),
        ("US-ID", "gooseberry:X", "ask", Weight.ADVICE), ("US", "red currant:X", "ask", Weight.ADVICE),
        ("FR", "black currant:X", None, None), ("US-MA", "apple:X", None, None),
    ],
)
def test_state_rules_on_currants(region: str, what: str, kind: str | None, weight: Weight | None):
    yard = yard_of(plant("A1", what, (5, 5)), site=Site(latitude=42.0, region=region))
    findings = ribes_law.run(Nursery().survey(yard))
    assert [(f.kind, f.weight) for f in findings] == ([(kind, weight)] if kind else [])


def test_more_distance_never_adds_a_finding():
    for what in ("apple:X", "red currant:X"):
        for kind in ("black walnut", "juniper", "pine, eastern white", "oak, northern red"):
            counts = [
                len([f for f in found(beside(kind, what, d), A1=size(1))]) for d in (6, 12, 20, 30, 400, 2000)
            ]
            assert counts == sorted(counts, reverse=True)
