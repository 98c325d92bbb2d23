import pytest
from support.builders import yard_of
from support.stands import Nursery, size

from yardplan.checks import clearance
from yardplan.checks.finding import Weight
from yardplan.units import FOOT
from yardplan.yard.ground import Paving, Service
from yardplan.yard.planting import PlantKey, Row
from yardplan.yard.yard import Yard


def row(y: float) -> Row:
    return Row(id="R1", plant=PlantKey("hops", "Cascade"), line=((5.0, y), (15.0, y)), count=9, spacing=1)


def found(yard: Yard, height: float = 1.8) -> list[tuple[str, Weight]]:
    findings = clearance.run(Nursery({"R1": size(1.0, height, "vine")}).survey(yard))
    return [(f.kind, f.weight) for f in findings if f.kind != "ask_first"]


@pytest.mark.parametrize(
    ("gap", "expected"),
    [(0.3, [("row_buried", Weight.CONFLICT)]), (1.0, [("row_buried", Weight.CAUTION)]), (5 * FOOT, [])],
)
def test_rows_beside_buried_lines(gap: float, expected: list[tuple[str, Weight]]):
    gas = Service(id="S1", kind="gas", points=((0.0, 10.0), (30.0, 10.0)))
    assert found(yard_of(rows=(row(10.0 - gap),), services=(gas,))) == expected


@pytest.mark.parametrize(
    ("height", "gap", "conflict"), [(7.0, 1.0, False), (8.0, 1.0, True), (8.0, 6.2, False)]
)
def test_tall_trellises_under_overhead_lines(height: float, gap: float, conflict: bool):
    line = Service(id="S1", kind="overhead line", points=((0.0, 10.0), (30.0, 10.0)))
    expected = [("row_overhead", Weight.CONFLICT)] if conflict else []
    assert found(yard_of(rows=(row(10.0 - gap),), services=(line,)), height) == expected


@pytest.mark.parametrize("kind", ["path", "drive", "pool", "terrace"])
def test_rows_across_paving_and_water(kind: str):
    paved = Paving(id="P1", kind=kind, outline=((9.0, 5.0), (11.0, 5.0), (11.0, 15.0), (9.0, 15.0)))  # type: ignore[arg-type]
    assert found(yard_of(rows=(row(10.0),), pavings=(paved,))) == [("row_across", Weight.CONFLICT)]
    assert found(yard_of(rows=(row(3.0),), pavings=(paved,))) == []
