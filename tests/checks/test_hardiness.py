import pytest
from attrs import evolve
from support.builders import plant, yard_of

from yardplan.checks import hardiness
from yardplan.checks.finding import Weight
from yardplan.checks.survey import survey_of
from yardplan.checks.zones import hardy_to, rating_needed, site_zone, warm_to
from yardplan.plants.catalogue import catalogue
from yardplan.yard.planting import Container, PlantKey
from yardplan.yard.site import Origin, Site
from yardplan.yard.yard import Yard


def in_zone(zone: str | None, what: str, **fields: object) -> Yard:
    return yard_of(plant("A1", what, (5, 5)), site=Site(latitude=42.0, zone=zone), **fields)


def kinds(yard: Yard) -> list[tuple[str, Weight]]:
    return [(f.kind, f.weight) for f in hardiness.run(survey_of(yard))]


def tender(zone_min: str) -> str:
    """A cultivar of the catalogue hardy to just this zone, with no upper limit in the way."""
    return next(
        str(c.key) for c in catalogue().cultivars.values() if c.zone_min == zone_min and c.crop == "apple"
    )


@pytest.mark.parametrize(
    ("site", "expected"),
    [("3b", [("too_cold", Weight.CONFLICT)]), ("4a", [("no_margin", Weight.ADVICE)]), ("4b", []), ("5a", [])],
)
def test_zone_of_plant_against_zone_of_site(site: str, expected: list[tuple[str, Weight]]):
    assert kinds(in_zone(site, tender("4"))) == expected


def test_figures_of_a_plant_too_tender():
    (finding,) = hardiness.run(survey_of(in_zone("3b", tender("4"))))
    assert finding.figures["short"].value == 0.5
    assert finding.figures["site_low"].value == pytest.approx((-35 - 32) / 1.8)
    assert finding.figures["plant_low"].value == pytest.approx((-30 - 32) / 1.8)


@pytest.mark.parametrize(("site", "expected"), [("5b", ["pot_cold"]), ("6a", []), ("3b", ["too_cold"])])
def test_containers_count_two_zones_colder(site: str, expected: list[str]):
    yard = in_zone(site, tender("4"), containers=(Container(id="C1", place=(5, 5), volume=60),))
    potted = evolve(yard, plantings=(evolve(yard.plantings[0], container="C1"),))
    assert [kind for kind, _ in kinds(potted)] == expected


def test_local_figure_for_containers_is_named():
    yard = in_zone("5b", tender("4"), containers=(Container(id="C1", place=(5, 5), volume=60),))
    potted = evolve(yard, plantings=(evolve(yard.plantings[0], container="C1"),))
    assert kinds(evolve(potted, rules={"container-zones": 1.0})) == []
    (finding,) = hardiness.run(survey_of(evolve(potted, rules={"container-zones": 3.0})))
    assert finding.figures["local_rule"].value == "container-zones"


def test_unknown_zone_is_asked_for():
    (finding,) = hardiness.run(survey_of(in_zone(None, "apple:Liberty")))
    assert (finding.kind, finding.figures["count"].value) == ("zone_missing", 1)
    (finding,) = hardiness.run(survey_of(in_zone("warm", "apple:Liberty")))
    assert finding.figures["typed"].value == "warm"


def test_too_warm():
    known = next(c for c in catalogue().cultivars.values() if c.zone_max and c.zone_min)
    warm = warm_to(known.zone_max)
    assert warm is not None
    site = type(warm)(warm.step + 2).name
    assert ("too_warm", Weight.CAUTION) in kinds(in_zone(site, str(known.key)))


def test_a_tender_rootstock():
    yard = yard_of(
        plant("A1", tender("3"), (5, 5), rootstock="M9 T337"), site=Site(latitude=45.0, zone="4a")
    )
    assert "roots_cold" in [kind for kind, _ in kinds(yard)]


def test_rows_are_checked_too():
    from yardplan.yard.planting import Row

    row = Row(id="R1", plant=PlantKey("fig", "Brown Turkey"), line=((1, 1), (9, 1)), count=3, spacing=3)
    yard = yard_of(rows=(row,), site=Site(latitude=42.0, zone="5a"))
    assert [f.things for f in hardiness.run(survey_of(yard))] == [("R1",)]


def test_reading_zones():
    assert site_zone("6b") == site_zone(" 6B ")
    assert site_zone("6") == site_zone("6a") == hardy_to("6")
    assert warm_to("6") == site_zone("6b")
    assert site_zone("14a") is site_zone("") is site_zone(None) is None
    assert rating_needed(-18.0) == "H6"
    assert rating_needed(-25.0) == "H7"


@pytest.mark.parametrize(
    ("zone", "origin", "weight"),
    [
        # Estimated from monthly temperatures: one zone off is within what the estimate may err by.
        ("3", "about zone 3, give or take one", Weight.CAUTION),
        ("2", "about zone 2, give or take one", Weight.CONFLICT),
        ("3", "typed in", Weight.CONFLICT), ("3b", "ZIP code 99999, USDA 2023", Weight.CONFLICT),
    ],
)
def test_an_estimated_zone_weighs_less(zone: str, origin: str, weight: Weight):
    yard = in_zone(zone, tender("4"))
    site = evolve(yard.site, origins=(Origin(fact="zone", text=origin),))
    (finding,) = hardiness.run(survey_of(evolve(yard, site=site)))
    assert (finding.kind, finding.weight) == ("too_cold", weight)
    assert finding.figures["site_zone"].value.endswith("(estimated)") is site.zone_estimated


def test_tender_plants_are_told_one_by_one_under_an_estimated_zone():
    yard = in_zone("3", tender("4"))
    site = evolve(yard.site, origins=(Origin(fact="zone", text="about zone 3, give or take one"),))
    two = evolve(yard, site=site, plantings=(*yard.plantings, plant("A2", tender("4"), (15, 5))))
    assert [f.things for f in hardiness.run(survey_of(two))] == [("A1",), ("A2",)]


@pytest.mark.parametrize(("origin", "told"), [("typed in", True), ("about zone 8, give or take one", False)])
def test_a_warm_end_within_the_error_of_an_estimate_is_not_told(origin: str, told: bool):
    # A gooseberry of zones 3 to 7 in an English garden of about zone 8: that may be zone 7.
    known = next(c for c in catalogue().cultivars.values() if c.zone_max == "7" and c.zone_min)
    yard = in_zone("8", str(known.key))
    site = evolve(yard.site, origins=(Origin(fact="zone", text=origin),))
    assert any(f.kind == "too_warm" for f in hardiness.run(survey_of(evolve(yard, site=site)))) is told
