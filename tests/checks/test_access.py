import pytest
from attrs import evolve
from support.builders import plant, yard_of
from support.stands import Nursery, size

from yardplan.checks import access
from yardplan.checks.finding import Finding
from yardplan.checks.ways import ways_of
from yardplan.units import FOOT
from yardplan.yard.ground import Barrier, Building, Gate, Paving
from yardplan.yard.planting import Bed, PlantKey, Row
from yardplan.yard.yard import Yard

GATE = Gate(id="G1", place=(0.0, 10.0), width=1.2)


def found(yard: Yard, *kinds: str, **sizes: object) -> list[Finding]:
    return [f for f in access.run(Nursery(dict(sizes)).survey(yard)) if not kinds or f.kind in kinds]


def ring_of(gap: float) -> Yard:
    """A tree at (15, 10) ringed by eight others whose crowns (2 m wide) leave gaps between them."""
    import math

    radius = (2.0 + gap) / (2 * math.sin(math.pi / 8))
    others = [
        plant(f"A{i + 2}", "apple:X", (15 + radius * math.cos(turn), 10 + radius * math.sin(turn)))
        for i, turn in enumerate(k * math.pi / 4 for k in range(8))
    ]
    return yard_of(plant("A1", "apple:X", (15, 10)), *others, gates=(GATE,))


@pytest.mark.parametrize(("gap", "shut"), [(0.3, True), (0.5, True), (0.75, False)])
def test_a_ring_of_crowns_shuts_a_plant_off(gap: float, shut: bool):
    small = {f"A{i}": size(2.0) for i in range(2, 10)} | {"A1": size(0.4)}
    assert [f.things for f in found(ring_of(gap), "shut_off", **small)] == ([("A1",)] if shut else [])


def test_the_width_can_be_chosen():
    small = {f"A{i}": size(2.0) for i in range(2, 10)} | {"A1": size(0.4)}
    barrow = evolve(ring_of(0.75), rules={"access-way": 36.0})
    assert [f.things for f in found(barrow, "shut_off", **small)] == [("A1",)]


def test_a_high_crown_is_walked_under():
    small = {f"A{i}": evolve(size(2.0), crown_base=2.5) for i in range(2, 10)} | {"A1": size(0.4)}
    assert found(ring_of(0.3), "shut_off", **small) == []


def fenced(gate: Gate | None) -> Yard:
    fence = Barrier(id="F1", line=((12.0, 6.0), (20.0, 6.0), (20.0, 14.0), (12.0, 14.0), (12.0, 6.0)))
    gates = (GATE,) if gate is None else (GATE, gate)
    return yard_of(plant("A1", "apple:X", (16, 10)), barriers=(fence,), gates=gates)


def test_a_fence_needs_a_gate_wide_enough():
    assert [f.kind for f in found(fenced(None), A1=size(2))] == ["shut_off"]
    wide = Gate(id="G2", place=(12.0, 10.0), width=0.8)
    assert found(fenced(wide), A1=size(2)) == []
    narrow = evolve(wide, width=0.5)
    assert {f.kind for f in found(fenced(narrow), A1=size(2))} == {"shut_off", "narrow_gate"}


def test_a_gate_of_just_the_way_passes():
    exact = Gate(id="G2", place=(12.0, 10.0), width=24 * 0.0254)
    assert found(fenced(exact), A1=size(2)) == []


def test_a_house_between():
    house = Building(id="H1", footprint=((10.0, 0.0), (14.0, 0.0), (14.0, 20.0), (10.0, 20.0)))
    yard = yard_of(plant("A1", "apple:X", (20, 10)), buildings=(house,), gates=(GATE,))
    assert [f.things for f in found(yard, "shut_off", A1=size(2))] == [("A1",)]
    shorter = evolve(house, footprint=((10.0, 2.0), (14.0, 2.0), (14.0, 20.0), (10.0, 20.0)))
    open_side = evolve(yard, buildings=(shorter,))
    assert found(open_side, "shut_off", A1=size(2)) == []


def bed(depth: float, y: float = 8.0, **fields: object) -> Bed:
    return Bed(id="B1", outline=((8.0, y), (14.0, y), (14.0, y + depth), (8.0, y + depth)), **fields)


@pytest.mark.parametrize(("depth", "kinds"), [(4 * FOOT, []), (5 * FOOT, []), (7 * FOOT, ["deep_bed"])])
def test_beds_one_can_reach_into_from_two_sides(depth: float, kinds: list[str]):
    assert [f.kind for f in found(yard_of(beds=(bed(depth),), gates=(GATE,)))] == kinds


@pytest.mark.parametrize(("depth", "kinds"), [(2.4 * FOOT, []), (4 * FOOT, ["deep_bed"])])
def test_a_bed_against_a_wall_is_reached_from_one_side(depth: float, kinds: list[str]):
    wall = Barrier(id="W1", kind="wall", line=((0.0, 8.0), (30.0, 8.0)), thickness=0.02)
    yard = yard_of(beds=(bed(depth, 8.01),), barriers=(wall,), gates=(GATE,))
    assert [f.kind for f in found(yard)] == kinds


def test_rows_stand_in_the_way():
    rows = tuple(
        Row(id=f"R{i}", plant=PlantKey("grape", "X"), line=line, count=9, spacing=1)
        for i, line in enumerate(
            (
                ((12.0, 6.0), (20.0, 6.0)), ((20.0, 6.0), (20.0, 14.0)), ((20.0, 14.0), (12.0, 14.0)),
                ((12.0, 14.0), (12.0, 6.0)),
            ), 1,
        )
    )
    yard = yard_of(plant("A1", "apple:X", (16, 10)), rows=rows, gates=(GATE,))
    sizes = {f"R{i}": size(1.0) for i in range(1, 5)}
    assert [f.things for f in found(yard, "shut_off", A1=size(1.0), **sizes)] == [("A1",)]


def test_ladder_room_for_tall_trees():
    places = ((14.2, 10), (5.8, 10), (10, 14.2), (10, 5.8))
    others = [plant(f"A{i}", "apple:X", place) for i, place in enumerate(places, 2)]
    hemmed = yard_of(plant("A1", "apple:X", (10, 10)), *others, gates=(GATE,))
    tall = {f"A{i}": size(4.0, 2.0) for i in range(2, 6)} | {"A1": size(4.0, 5.0)}
    assert [f.things for f in found(hemmed, "ladder", **tall)] == [("A1",)]
    assert found(yard_of(plant("A1", "apple:X", (10, 10)), gates=(GATE,)), A1=size(4.0, 5.0)) == []


def test_without_a_gate_the_ways_start_from_the_paving():
    path = Paving(id="P1", kind="path", outline=((0.0, 9.0), (5.0, 9.0), (5.0, 10.0), (0.0, 10.0)))
    yard = yard_of(plant("A1", "apple:X", (20, 10)), pavings=(path,))
    (asked,) = found(yard, A1=size(2))
    assert (asked.kind, asked.figures["start"].value) == ("no_gate", "paving")


def test_wider_ways_are_within_narrower_ones():
    survey = Nursery({f"A{i}": size(2.0) for i in range(1, 10)}).survey(ring_of(0.5))
    narrow, wide = ways_of(survey, 0.4), ways_of(survey, 0.9)
    assert narrow is not None
    assert wide is not None
    assert wide.free.difference(narrow.free.buffer(0.02)).area == pytest.approx(0.0, abs=1e-6)


def test_choices_of_ways():
    from yardplan.checks.rules import Rules
    from yardplan.checks.ways import choices

    widths = dict(choices(Rules()))
    assert widths["on foot"] == pytest.approx(24 * 0.0254)
    assert list(widths.values()) == sorted(widths.values())
