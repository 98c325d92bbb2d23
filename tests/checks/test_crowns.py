import numpy as np
import pytest
from attrs import evolve
from support.builders import plant, yard_of
from support.stands import Nursery, size

from yardplan.checks.finding import Finding, Weight
from yardplan.checks.room import crowns
from yardplan.units import FOOT
from yardplan.yard.ground import Barrier, Building, Paving
from yardplan.yard.planting import PlantKey, Row
from yardplan.yard.yard import Yard

HOUSE = Building(id="H1", name="House", footprint=((20.0, 5.0), (28.0, 5.0), (28.0, 13.0), (20.0, 13.0)))


def found(yard: Yard, **sizes: object) -> list[Finding]:
    return crowns.run(Nursery(dict(sizes)).survey(yard))


def at(distance: float, **fields: object) -> Yard:
    yard = yard_of(plant("A1", "apple:X", (20 - distance, 9)), width=40, depth=40, buildings=(HOUSE,))
    return evolve(yard, plantings=(evolve(yard.plantings[0], **fields),))


@pytest.mark.parametrize(
    ("distance", "weight"),
    [(3.0, Weight.ADVICE), (1.9, Weight.ADVICE), (1.7, Weight.CAUTION), (1.2, Weight.CONFLICT)],
)
def test_crown_and_working_gap_at_a_wall(distance: float, weight: Weight):
    findings = found(at(distance), A1=size(4, 4))
    wanted = 2.0 + 3 * FOOT
    if distance >= wanted:
        assert findings == []
        return
    assert [(f.kind, f.weight) for f in findings] == [("crown_wall", weight)]
    assert findings[0].figures["wanted"].value == pytest.approx(wanted)


def test_eaves_are_added_for_what_grows_above_them():
    yard = evolve(at(3.2), buildings=(evolve(HOUSE, overhang=0.5, eaves=2.5),))
    assert [f.kind for f in found(yard, A1=size(4, 4))] == ["crown_wall"]
    assert found(yard, A1=size(4, 2.4)) == []


def test_a_plant_trained_on_the_wall():
    flat = size(4, 2, "flat-trained", depth=0.4)
    assert found(at(0.25, facing=90.0), A1=flat) == []
    assert [f.kind for f in found(at(0.03, facing=90.0), A1=flat)] == ["trained_wall"]
    assert [f.kind for f in found(at(0.5, facing=90.0), A1=flat)] == ["trained_far"]
    assert [f.kind for f in found(at(0.25, facing=0.0), A1=flat)] == ["crown_wall"]


def test_over_the_lot_line():
    yard = yard_of(plant("A1", "apple:X", (1.0, 10)))
    (finding,) = found(yard, A1=size(4))
    assert (finding.kind, finding.figures["short"].value) == ("crown_lot", pytest.approx(1.0))
    assert finding.figures["direction"].value == "east"
    assert found(yard_of(plant("A1", "apple:X", (2.0, 10))), A1=size(4)) == []


def test_a_fence_on_the_lot_line_is_said_once():
    def kinds(x: float) -> list[str]:
        fence = Barrier(id="F1", line=((x, 0.0), (x, 20.0)))
        yard = yard_of(plant("A1", "apple:X", (x + 1.0, 10)), barriers=(fence,))
        return [f.kind for f in found(yard, A1=size(4))]

    assert kinds(0.0) == ["crown_lot"]
    assert kinds(5.0) == ["crown_fence"]


def test_over_a_terrace():
    terrace = Paving(id="P1", kind="terrace", outline=((10, 5), (14, 5), (14, 9), (10, 9)))
    (finding,) = found(yard_of(plant("A1", "apple:X", (9.0, 7)), pavings=(terrace,)), A1=size(4))
    assert (finding.kind, finding.figures["over"].value) == ("over_paving", pytest.approx(1.0))
    (close,) = found(yard_of(plant("A1", "apple:X", (7.85, 7)), pavings=(terrace,)), A1=size(4))
    assert (close.kind, close.weight) == ("crown_paving", Weight.ADVICE)


def test_rows_at_walls_and_lot_line():
    def row(y: float) -> Row:
        return Row(id="R1", line=((20.0, y), (28.0, y)), count=8, spacing=1, plant=PlantKey("raspberry", "Z"))

    into = found(yard_of(width=40, depth=40, buildings=(HOUSE,), rows=(row(4.7),)), R1=size(1))
    assert [(f.kind, f.weight) for f in into] == [("row_wall", Weight.CAUTION)]
    (lot,) = found(yard_of(rows=(row(0.3),)), R1=size(1))
    assert (lot.kind, lot.weight, lot.figures["wanted"].value) == (
        "row_lot", Weight.CAUTION, pytest.approx(2 * FOOT),
    )


def test_a_plant_just_sixty_degrees_aside_of_a_wall_is_so_all_along_it() -> None:
    """Steps of thirty degrees are usual; rounding must not decide from place to place."""
    way = np.arctan2(np.full(50, 0.25), np.linspace(-1e-15, 1e-15, 50))
    assert not crowns.faces(way, np.radians(30.0)).any()
    assert crowns.faces(way, np.radians(29.9)).all()
