import pytest
from attrs import evolve
from hypothesis import given
from hypothesis import strategies as st
from support.builders import plant, yard_of
from support.stands import Nursery, size

from yardplan.checks import clearance
from yardplan.checks.finding import Finding, Weight
from yardplan.units import FOOT
from yardplan.yard.ground import Building, Paving, Service
from yardplan.yard.planting import Bed, PlantKey
from yardplan.yard.site import Site, Soil
from yardplan.yard.yard import Yard

HOUSE = Building(id="H1", name="House", footprint=((20.0, 0.0), (28.0, 0.0), (28.0, 8.0), (20.0, 8.0)))


def found(yard: Yard, kind: str | None = None, **sizes: object) -> list[Finding]:
    findings = clearance.run(Nursery(dict(sizes)).survey(yard))
    return [f for f in findings if (kind is None or f.kind == kind) and f.kind != "ask_first"]


def at(distance: float, what: str = "apple:X", **fields: object) -> Yard:
    """A plant west of the house, `distance` metres from its wall."""
    return yard_of(plant("A1", what, (20 - distance, 4)), width=40, depth=40, buildings=(HOUSE,), **fields)


@pytest.mark.parametrize(("height", "feet"), [(9.0, 10), (9.2, 15), (15.2, 15), (15.3, 20)])
def test_distance_from_a_building_grows_with_height(height: float, feet: float):
    tree = size(1.0, height)
    (finding,) = found(at(feet * FOOT - 0.2), "building", A1=tree)
    assert finding.figures["wanted"].value == pytest.approx(feet * FOOT)
    assert finding.figures["short"].value == pytest.approx(0.2)
    assert finding.figures["direction"].value == "west"
    assert found(at(feet * FOOT), "building", A1=tree) == []


def test_bushes_pots_and_flat_plants_may_stand_by_the_wall():
    assert found(at(1.0), "building", A1=size(1, 2.0)) == []
    assert found(at(0.3), "building", A1=size(4, 3.0, "flat-trained", depth=0.3)) == []


@pytest.mark.parametrize(("what", "share"), [("apple:X", 0.75), ("fig:X", 0.5)])
def test_on_clay_the_distance_is_a_share_of_height(what: str, share: float):
    clay = Site(latitude=42.0, soil=Soil(texture="clay"))
    (finding,) = found(at(2.0, what, site=clay), "clay", A1=size(3, 8))
    assert finding.figures["wanted"].value == pytest.approx(share * 8)
    assert found(at(share * 8, what, site=clay), "clay", A1=size(3, 8)) == []
    assert found(at(2.0, what), "clay", A1=size(3, 8)) == []


def test_climbers_on_clay():
    clay = Site(latitude=42.0, soil=Soil(texture="clay"))
    (finding,) = found(at(0.5, "grape:X", site=clay), "clay_climber", A1=size(2, 2, "vine"))
    assert finding.figures["wanted"].value == 3.0


def test_under_the_roofs_edge():
    yard = evolve(at(0.5), buildings=(evolve(HOUSE, overhang=0.5),))
    assert [f.kind for f in found(yard, A1=size(1, 1))] == ["eaves_drip"]
    dry = evolve(at(0.15), buildings=(evolve(HOUSE, overhang=0.5),))
    assert [f.kind for f in found(dry, A1=size(1, 1))] == ["eaves_dry"]


def test_outside_the_lot_and_inside_a_house():
    (outside,) = found(yard_of(plant("A1", "apple:X", (-0.5, 5))), A1=size(1, 1))
    assert (outside.kind, outside.figures["short"].value) == ("outside", pytest.approx(0.5))
    assert outside.figures["direction"].value == "east"
    inside = [f.kind for f in found(at(-2.0), A1=size(1, 1))]
    assert inside == ["inside"]


@pytest.mark.parametrize(
    ("region", "height", "metres"),
    [("FR", 3.0, 2.0), ("FR", 1.5, 0.5), ("DE-BY", 3.0, 2.0), ("Italy", 4.0, 1.5), ("Italy", 2.4, 0.5)],
)
def test_country_presets_of_the_lot_line(region: str, height: float, metres: float):
    yard = yard_of(plant("A1", "apple:X", (metres - 0.2, 10)), site=Site(latitude=45.0, region=region))
    (finding,) = found(yard, "law", A1=size(0.5, height))
    assert finding.figures["wanted"].value == metres
    assert finding.weight is Weight.CONFLICT
    kept = yard_of(plant("A1", "apple:X", (metres, 10)), site=Site(latitude=45.0, region=region))
    assert found(kept, "law", A1=size(0.5, height)) == []


def test_no_statutory_distance_no_finding():
    for region in ("AT", "US-NY", "GB", None):
        yard = yard_of(plant("A1", "apple:X", (0.2, 10)), site=Site(latitude=45.0, region=region))
        assert found(yard, "law", A1=size(0.3, 3)) == []


def test_your_own_figure_of_the_lot_line():
    yard = yard_of(plant("A1", "apple:X", (2.5, 10)), rules={"lot-line-tall": 3.0})
    (finding,) = found(yard, "law_own", A1=size(1, 3))
    assert finding.figures["wanted"].value == 3.0
    assert finding.figures["local_rule"].value == "lot-line-tall"


FIELD = Service(id="S1", kind="septic field", area=True, points=((20, 0), (28, 0), (28, 8), (20, 8)))


def _by_service(distance: float, service: Service, what: str = "apple:X", **fields: object) -> Yard:
    return yard_of(plant("A1", what, (20 - distance, 4)), width=60, depth=60, services=(service,), **fields)


@pytest.mark.parametrize(("height", "metres"), [(5.0, 5.0), (2.6, 10 * FOOT), (1.5, 10 * FOOT)])
def test_septic_field_by_height_and_floor(height: float, metres: float):
    (finding,) = found(_by_service(metres - 0.3, FIELD), "septic_field", A1=size(1, height))
    assert finding.figures["wanted"].value == pytest.approx(metres)
    assert found(_by_service(metres, FIELD), "septic_field", A1=size(1, height)) == []


def test_inside_the_septic_floor_it_is_a_conflict():
    assert found(_by_service(2.0, FIELD), "septic_field", A1=size(1, 6))[0].weight is Weight.CONFLICT
    assert found(_by_service(4.0, FIELD), "septic_field", A1=size(1, 6))[0].weight is Weight.CAUTION


def test_no_bed_on_a_septic_field():
    bed = Bed(id="B1", outline=((19, 1), (21, 1), (21, 3), (19, 3)), plant=PlantKey("strawberry", "X"))
    assert [f.things for f in found(yard_of(services=(FIELD,), beds=(bed,)))] == [("B1", "S1")]


@pytest.mark.parametrize(("height", "feet"), [(4.0, 5), (8.0, 10)])
def test_buried_lines(height: float, feet: float):
    gas = Service(id="S1", kind="gas", points=((20.0, -5.0), (20.0, 20.0)))
    (finding,) = found(_by_service(feet * FOOT - 0.2, gas), "buried", A1=size(1, height))
    assert finding.figures["wanted"].value == pytest.approx(feet * FOOT)
    assert found(_by_service(feet * FOOT, gas), "buried", A1=size(1, height)) == []
    (close,) = found(_by_service(0.3, gas), "buried", A1=size(1, height))
    assert close.weight is Weight.CONFLICT


def test_ask_before_you_dig_is_said_once_a_yard():
    asked = [f for f in clearance.run(Nursery().survey(at(10.0))) if f.kind == "ask_first"]
    assert len(asked) == 1
    american = evolve(at(10.0), site=Site(latitude=42.0, region="US-NY"))
    (finding,) = [f for f in clearance.run(Nursery().survey(american)) if f.kind == "ask_first"]
    assert "811" in str(finding.figures["ask"].value)


@pytest.mark.parametrize(
    ("height", "distance", "kinds"),
    [
        (7.0, 10.0, []), (8.0, 5.0, ["overhead"]), (8.0, 6.2, []), (13.0, 12.0, ["overhead"]),
        (13.0, 15.3, []), (5.0, 2.0, ["overhead_tools"]), (2.5, 0.5, []),
    ],
)
def test_overhead_lines_by_height_zone(height: float, distance: float, kinds: list[str]):
    line = Service(id="S1", kind="overhead line", points=((20.0, -5.0), (20.0, 20.0)))
    assert [f.kind for f in found(_by_service(distance, line), A1=size(1, height))] == kinds


@pytest.mark.parametrize(("height", "feet"), [(5.0, 10), (10.0, 20), (16.0, 30)])
def test_pools(height: float, feet: float):
    pool = Paving(id="P1", kind="pool", outline=((20, 0), (28, 0), (28, 8), (20, 8)))
    yard = yard_of(plant("A1", "apple:X", (20 - feet * FOOT + 0.2, 4)), width=40, pavings=(pool,))
    (finding,) = found(yard, "pool", A1=size(1, height))
    assert finding.figures["wanted"].value == pytest.approx(feet * FOOT)


def test_paving_and_thirsty_roots():
    path = Paving(id="P1", kind="path", outline=((20, 0), (28, 0), (28, 8), (20, 8)))
    for what, feet in (("apple:X", 4), ("mulberry:X", 10)):
        yard = yard_of(plant("A1", what, (20 - feet * FOOT + 0.2, 4)), width=40, pavings=(path,))
        (finding,) = found(yard, "paving", A1=size(1, 5))
        assert finding.figures["wanted"].value == pytest.approx(feet * FOOT)


def test_view_triangle_where_a_drive_meets_the_street():
    street = Paving(id="P1", kind="street", outline=((0, -6), (30, -6), (30, 0), (0, 0)), beyond_lot=True)
    drive = Paving(id="P2", kind="drive", outline=((12, 0), (15, 0), (15, 10), (12, 10)))

    def kinds(place: tuple[float, float], height: float) -> list[str]:
        yard = yard_of(plant("A1", "apple:X", place), pavings=(street, drive))
        return [f.kind for f in found(yard, "sight", A1=size(0.6, height))]

    assert kinds((16.0, 1.0), 1.5) == ["sight"]
    assert kinds((11.0, 1.0), 1.5) == ["sight"]
    assert kinds((16.0, 1.0), 0.7) == []
    assert kinds((20.0, 1.0), 1.5) == []
    assert kinds((16.0, 6.0), 1.5) == []


def test_a_well():
    well = Service(id="S1", kind="well", points=((20.0, 4.0),))
    assert [f.kind for f in found(_by_service(2.0, well), A1=size(1, 3))] == ["well", "well_spray"]
    assert [f.kind for f in found(_by_service(5.0, well), A1=size(1, 3))] == ["well_spray"]


NEAR_BY = st.sampled_from(["building", "gas", "overhead line", "septic field", "septic tank", "pool", "path"])
OBLONG = ((100.0, 90.0), (108.0, 90.0), (108.0, 110.0), (100.0, 110.0))


def _with(kind: str, place: tuple[float, float], soil: Soil) -> Yard:
    things: dict[str, object] = {}
    if kind == "building":
        things["buildings"] = (Building(id="X1", footprint=OBLONG, overhang=0.4),)
    elif kind in ("pool", "path"):
        things["pavings"] = (Paving(id="X1", kind=kind, outline=OBLONG),)  # type: ignore[arg-type]
    else:
        things["services"] = (Service(id="X1", kind=kind, points=OBLONG, area=kind == "septic field"),)  # type: ignore[arg-type]
    site = Site(latitude=42.0, soil=soil)
    return yard_of(plant("A1", "apple:X", place), width=200, depth=200, site=site, **things)


@given(
    NEAR_BY, st.floats(0.3, 30), st.floats(0.05, 20), st.floats(0.5, 20), st.floats(0.5, 9),
    st.sampled_from(["loam", "clay"]),
)
def test_more_distance_never_adds_a_clearance_finding(kind, distance, farther, height, spread, texture):
    soil = Soil(texture=texture)

    def weighed(gap: float) -> dict[str, int]:
        order = {Weight.CONFLICT: 3, Weight.CAUTION: 2, Weight.ADVICE: 1}
        findings = found(_with(kind, (100.0 - gap, 100.0), soil), A1=size(spread, height))
        return {f.kind: order[f.weight] for f in findings}

    near, far = weighed(distance), weighed(distance + farther)
    # A stem in the dry strip under the eaves moves through the drip line on its way out.
    passing = {"eaves_drip", "eaves_dry"}
    assert set(far) - passing <= set(near) - passing
    assert all(far[name] <= near[name] for name in far.keys() - passing)
