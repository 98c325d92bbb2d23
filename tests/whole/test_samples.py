"""The sample yards: each opens, fits the schema, knows its plants, and makes sense on the ground."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

import jsonschema
import pytest
from shapely import Point, Polygon

from yardplan.checks.finding import Finding, Weight
from yardplan.checks.run import findings
from yardplan.checks.survey import survey_of
from yardplan.files.layout import yard_to_json
from yardplan.files.reading import read_yard
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.shipped import folder, resource
from yardplan.sun.light import light_report
from yardplan.sun.scene import scene_of
from yardplan.yard.edits import points_of
from yardplan.yard.planting import Planting, Row

SAMPLES = sorted(folder("sample_yards").glob("*.yard"))
FIRST = folder("sample_yards") / "first_orchard.yard"
LARGE = folder("sample_yards") / "large_orchard.yard"
#: Names that every list of the trade starts with; the samples show the breadth beyond them.
COMMONPLACE = {
    "Gala", "Fuji", "Honeycrisp", "Red Delicious", "Golden Delicious", "Granny Smith", "McIntosh", "Bartlett",
    "Bing", "Montmorency", "Redhaven", "Stanley", "Bluecrop", "Heritage", "Concord", "Santa Rosa",
}

each = pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)


@cache
def found_in(path: Path) -> list[Finding]:
    yard = read_yard(path)
    stand = stand_of(yard, catalogue(), None)
    return findings(survey_of(yard, stand=stand, light=light_report(scene_of(yard, stand))))


def test_there_are_at_least_six() -> None:
    assert len(SAMPLES) >= 6
    assert {FIRST, LARGE} <= set(SAMPLES)


@each
def test_it_opens_fits_the_schema_and_is_laid_out_as_the_program_writes(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    schema = json.loads(resource("yard.schema.json").read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator(schema).validate(json.loads(text))
    assert yard_to_json(read_yard(path)) == text


@each
def test_every_plant_form_and_rootstock_is_known_and_none_is_commonplace(path: Path) -> None:
    yard, known = read_yard(path), catalogue()
    for thing in (*yard.plantings, *yard.rows, *yard.beds):
        if thing.plant is None:
            continue
        assert known.cultivar(thing.plant) is not None, thing.plant
        assert thing.plant.cultivar not in COMMONPLACE
        crop = known.crop(thing.plant.crop)
        assert crop is not None
        if isinstance(thing, Planting | Row) and thing.rootstock:
            assert crop.rootstock(thing.rootstock) is not None, thing.rootstock
    assert not [f for f in found_in(path) if f.check == "known"]


@each
def test_the_site_is_real_and_every_figure_has_an_origin(path: Path) -> None:
    site = read_yard(path).site
    assert site.name
    assert site.place
    assert site.zone
    assert site.monthly_means is not None
    assert len(site.monthly_means) == 12
    assert site.soil.ph is not None
    facts = {origin.fact for origin in site.origins}
    assert {"place", "zone", "monthly_means"} <= facts
    assert ("frost" in facts) == (site.last_frost is not None)


@each
def test_geometry_is_sensible(path: Path) -> None:
    """The lot is simple; nothing is planted in a house, on paving, or beyond the lot; houses have sense."""
    yard = read_yard(path)
    lot = Polygon(yard.lot)
    assert lot.is_valid
    assert lot.exterior.is_ccw
    solid = [Polygon(b.footprint) for b in yard.buildings]
    paved = [Polygon(p.outline) for p in yard.pavings]
    for house in yard.buildings:
        assert Polygon(house.footprint).is_valid
        assert house.beyond_lot or lot.covers(Polygon(house.footprint))
        assert house.ridge >= house.eaves >= 1.5
        if house.name == "House":
            assert 50 <= Polygon(house.footprint).area <= 220
    for plant in yard.plantings:
        assert lot.contains(Point(plant.place)), plant.id
        assert not any(house.contains(Point(plant.place)) for house in solid), plant.id
        assert plant.container or not any(ground.contains(Point(plant.place)) for ground in paved), plant.id
    for row in (*yard.rows, *yard.beds):
        assert all(lot.contains(Point(p)) for p in points_of(row)), row.id
        assert not any(house.contains(Point(p)) for house in solid for p in points_of(row)), row.id
    assert yard.gates
    assert yard.services
    assert yard.notes


@each
def test_a_row_is_as_long_as_its_plants_need(path: Path) -> None:
    for row in read_yard(path).rows:
        (x0, y0), (x1, y1) = row.line[0], row.line[-1]
        length = ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5
        assert (row.count - 1) * row.spacing <= length + row.spacing / 2, row.id


def test_the_scenarios_differ_as_promised() -> None:
    yards = {path.stem: read_yard(path) for path in SAMPLES}
    assert any(yard.site.southern for yard in yards.values())
    assert any((yard.site.zone or "").startswith("3") for yard in yards.values())
    assert any((yard.site.zone or "").startswith("9") for yard in yards.values())
    assert {yard.site.units for yard in yards.values()} == {"metric", "imperial"}
    assert len(yards["large_orchard"].plantings) == 150
    walled = yards["walled_town_garden"]
    assert sum("cordon" in (p.form or "") for p in walled.plantings) >= 5
    assert sum("espalier" in (p.form or "") for p in walled.plantings) >= 2
    assert len(walled.containers) >= 3


def test_the_first_orchard_has_conflicts_of_several_kinds_to_clear() -> None:
    yard = read_yard(FIRST)
    assert 9 <= len(yard.plantings) <= 12
    assert any(tree.kind == "crabapple" and tree.beyond_lot for tree in yard.standing_trees)
    found = found_in(FIRST)
    conflicts = {(f.check, f.things[0]) for f in found if f.weight is Weight.CONFLICT}
    assert {check for check, _ in conflicts} >= {"spacing", "pollination", "light", "soil"}
    shaded = next(f for f in found if f.check == "light" and f.weight is Weight.CONFLICT)
    garage = next(b.id for b in yard.buildings if b.name == "Garage")
    assert garage in {figure.value for figure in shaded.figures.values()}
    assert any(f.check == "soil" and f.things[0].startswith("B") for f in found)


@pytest.mark.parametrize("path", [p for p in SAMPLES if p != FIRST], ids=lambda path: path.stem)
def test_the_other_samples_are_worked_out(path: Path) -> None:
    """Their spacing, light and pollination hold: a sample is something to learn from."""
    conflicts = [f for f in found_in(path) if f.weight is Weight.CONFLICT]
    assert [f for f in conflicts if f.check in ("spacing", "light", "pollination", "hardiness")] == []
