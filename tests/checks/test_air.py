import pytest
from attrs import evolve
from support.builders import plant, yard_of
from support.stands import Nursery, size

from yardplan.checks import air
from yardplan.yard.ground import Barrier
from yardplan.yard.planting import PlantKey, Row
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

FENCE = Barrier(id="F1", line=((5.0, 8.0), (25.0, 8.0)))


def sloping(
    y: float, aspect: float = 180.0, slope: float = 0.05, north: float = 0.0, **fields: object
) -> Yard:
    site = Site(latitude=42.0, slope=slope, slope_aspect=aspect, north=north)
    return yard_of(plant("A1", "apple:X", (15, y)), site=site, barriers=(FENCE,), **fields)


def kinds(yard: Yard) -> list[str]:
    return [f.kind for f in air.run(Nursery({"A1": size(2)}).survey(yard)) if f.kind != "slope_foot"]


@pytest.mark.parametrize(
    ("y", "aspect", "slope", "expected"),
    [
        (9.5, 180.0, 0.05, ["cold_pocket"]), (9.5, 0.0, 0.05, []), (6.5, 180.0, 0.05, []),
        (6.5, 0.0, 0.05, ["cold_pocket"]), (12.0, 180.0, 0.05, []), (9.5, 180.0, 0.01, []),
        (9.5, 90.0, 0.05, []), (9.5, 180.0, 0.2, ["cold_pocket", "steep"]),
    ],
)
def test_cold_air_dams_uphill_of_a_solid_fence(y: float, aspect: float, slope: float, expected: list[str]):
    assert kinds(sloping(y, aspect, slope)) == expected


def test_north_of_the_drawing_counts():
    assert kinds(sloping(9.5, aspect=90.0, north=90.0)) == ["cold_pocket"]


def test_an_open_fence_drains():
    yard = sloping(9.5)
    assert kinds(evolve(yard, barriers=(evolve(FENCE, light_share=0.6),))) == []


def test_foot_of_the_slope():
    survey = Nursery({"A1": size(2)}).survey(sloping(1.5))
    assert [f.things for f in air.run(survey) if f.kind == "slope_foot"] == [("A1",)]


def test_rows_across_the_slope():
    row = Row(id="R1", plant=PlantKey("grape", "X"), line=((3, 15), (13, 15)), count=5, spacing=2.5)
    assert "row_across" in kinds(sloping(18.0, rows=(row,)))
    down = evolve(row, line=((3.0, 12.0), (3.0, 19.0)))
    assert "row_across" not in kinds(sloping(18.0, rows=(down,)))


@pytest.mark.parametrize(("what", "y", "expected"), [
    ("hardy kiwi:X", 9.5, []), ("hardy kiwi:X", 60.0, ["windswept"]), ("apple:X", 60.0, []),
])
def test_kiwis_want_shelter(what: str, y: float, expected: list[str]):
    yard = yard_of(
        plant("A1", what, (15, y)), site=Site(latitude=42.0), barriers=(FENCE,), width=30, depth=80
    )
    assert kinds(yard) == expected
