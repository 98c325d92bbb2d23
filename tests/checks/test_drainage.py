import pytest
from attrs import evolve
from support.builders import plant, yard_of

from yardplan.checks import drainage
from yardplan.checks.finding import Weight
from yardplan.checks.survey import survey_of
from yardplan.yard.planting import Bed
from yardplan.yard.site import Site, Soil
from yardplan.yard.yard import Yard


def on(how: str | None, what: str, **fields: object) -> Yard:
    site = Site(latitude=42.0, soil=Soil(drainage=how))  # type: ignore[arg-type]
    return yard_of(plant("A1", what, (10, 10)), site=site, **fields)


def found(yard: Yard) -> list[tuple[str, Weight]]:
    return [(f.kind, f.weight) for f in drainage.run(survey_of(yard))]


@pytest.mark.parametrize(
    ("how", "what", "expected"),
    [
        ("good", "sweet cherry:Lapins", []), ("poor", "sweet cherry:Lapins", [("wet", Weight.CONFLICT)]),
        ("fair", "sweet cherry:Lapins", [("wet", Weight.ADVICE)]),
        ("poor", "apple:Liberty", [("wet", Weight.CAUTION)]), ("fair", "apple:Liberty", []),
        ("poor", "rhubarb:Victoria", []), (None, "apple:Liberty", [("drainage_missing", Weight.ADVICE)]),
    ],
)
def test_drainage_by_kind(how: str | None, what: str, expected: list[tuple[str, Weight]]):
    assert found(on(how, what)) == expected


def test_a_raised_bed_helps():
    bed = Bed(id="B1", outline=((8.0, 8.0), (12.0, 8.0), (12.0, 12.0), (8.0, 12.0)), raised=0.35)
    assert found(on("poor", "sweet cherry:Lapins", beds=(bed,))) == []
    low = evolve(bed, raised=0.1)
    assert found(on("poor", "sweet cherry:Lapins", beds=(low,))) == [("wet", Weight.CONFLICT)]


@pytest.mark.parametrize(
    ("watered", "what", "kinds"),
    [
        (False, "northern highbush blueberry:Bluecrop", ["dry"]),
        (True, "northern highbush blueberry:Bluecrop", []),
        (None, "northern highbush blueberry:Bluecrop", []), (False, "apple:Liberty", []),
    ],
)
def test_shallow_roots_want_water(watered: bool | None, what: str, kinds: list[str]):
    site = Site(latitude=42.0, soil=Soil(drainage="good"), irrigated=watered)
    findings = drainage.run(survey_of(yard_of(plant("A1", what, (10, 10)), site=site)))
    assert [f.kind for f in findings] == kinds
    assert all(f.figures["week"].value == "1 to 1.5 in (25 to 38 mm)" for f in findings)
