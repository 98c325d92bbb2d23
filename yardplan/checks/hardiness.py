"""Will it live through the winter: the plant's zone against the site's; roots in pots count colder."""

from __future__ import annotations

from collections.abc import Iterator

from attrs import frozen

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.grouping import grouped
from yardplan.checks.survey import Survey
from yardplan.checks.zones import HalfZone, hardy_to, site_zone, warm_to
from yardplan.language import decimals, later, tr
from yardplan.plants.crop import Crop
from yardplan.plants.cultivar import Cultivar

NAME = "hardiness"


@frozen
class _Grown:
    """A plant of the plan, of whatever kind: what it is and where it roots."""

    id: str
    mark: Mark
    cultivar: Cultivar | None
    crop: Crop | None
    rootstock: str | None
    potted: bool


def _grown(survey: Survey) -> Iterator[_Grown]:
    for plant in survey.stand.plants:
        if plant.planted:
            yield _Grown(
                plant.id, Mark((plant.place,)), plant.cultivar, plant.crop,
                getattr(plant.thing, "rootstock", None), plant.container is not None,
            )
    for row in survey.stand.rows:
        yield _Grown(row.id, Mark(row.row.line, "line"), row.cultivar, row.crop, row.row.rootstock, False)
    for bed in survey.stand.beds:
        if bed.bed.plant is not None:
            yield _Grown(bed.id, Mark(bed.bed.outline, "area"), bed.cultivar, bed.crop, None, False)


def _zones_text(steps: int) -> str:
    """Half zones in words: `half a zone`, `1 zone`, `1.5 zones`."""
    if steps == 1:
        return tr("half a zone")
    return tr("1 zone") if steps == 2 else tr("{n} zones", n=decimals(f"{steps / 2:g}"))


def _site_name(survey: Survey, site: HalfZone) -> str:
    """The site's zone in words: an estimate says so and stays whole."""
    facts = survey.yard.site
    return tr("{zone} (estimated)", zone=facts.zone) if facts.zone_estimated else site.name


def _doubtful(survey: Survey, site: HalfZone, plant: HalfZone) -> bool:
    """True where an estimated zone may be so far off that the plant lives all the same."""
    short = (plant.step - site.step) / 2
    return survey.yard.site.zone_estimated and short <= survey.rules.value("zone-estimate")


def _doubtful_warmth(survey: Survey, site: HalfZone, plant: HalfZone) -> bool:
    """True where an estimated zone may be so far off that the plant is within its range all the same."""
    over = (site.step - plant.step) / 2
    return survey.yard.site.zone_estimated and over <= survey.rules.value("zone-estimate")


def _zones(survey: Survey, site: HalfZone, plant: HalfZone) -> dict[str, Figure]:
    return {
        "site_zone": Figure(_site_name(survey, site), "text"), "plant_zone": Figure(plant.name, "text"),
        "site_low": Figure(site.coldest, "temperature"), "plant_low": Figure(plant.coldest, "temperature"),
        "margin": Figure((site.step - plant.step) / 2, "count"),
        "spare": Figure(_zones_text(site.step - plant.step), "text"),
        "short": Figure(max(plant.step - site.step, 0) / 2, "count"),
        "lack": Figure(_zones_text(plant.step - site.step), "text"),
    }


def _cold(survey: Survey, grown: _Grown, site: HalfZone) -> Iterator[Finding]:
    """The top, or the top and roots in a container, against the winter of the site."""
    plant = hardy_to(grown.cultivar.zone_min) if grown.cultivar else None
    if plant is None:
        return
    margin = (site.step - plant.step) / 2
    shown = _zones(survey, site, plant)
    if margin < 0:
        weight = Weight.CAUTION if _doubtful(survey, site, plant) else Weight.CONFLICT
        yield survey.finding(
            NAME, "too_cold", weight, (grown.id,), "zone-margin", shown, (grown.mark,)
        )
    elif grown.potted and margin < survey.rules.value("container-zones"):
        shown["colder"] = survey.rules.figure("container-zones")
        yield survey.finding(
            NAME, "pot_cold", Weight.CAUTION, (grown.id,), "container-zones", shown, (grown.mark,)
        )
    elif not grown.potted and margin < survey.rules.value("zone-margin"):
        yield survey.finding(
            NAME, "no_margin", Weight.ADVICE, (grown.id,), "zone-margin", shown, (grown.mark,)
        )


def _roots(survey: Survey, grown: _Grown, site: HalfZone) -> Iterator[Finding]:
    """The rootstock against the winter of the site."""
    stocks = grown.crop.rootstocks if grown.crop else ()
    stock = next((s for s in stocks if s.name == grown.rootstock), None)
    plant = hardy_to(stock.zone_min) if stock else None
    if stock is not None and plant is not None and site < plant:
        weight = Weight.CAUTION if _doubtful(survey, site, plant) else Weight.CONFLICT
        shown = _zones(survey, site, plant) | {"rootstock": Figure(stock.name, "text")}
        yield survey.finding(
            NAME, "roots_cold", weight, (grown.id,), "zone-margin", shown, (grown.mark,)
        )


def _warm(survey: Survey, grown: _Grown, site: HalfZone) -> Iterator[Finding]:
    plant = warm_to(grown.cultivar.zone_max) if grown.cultivar else None
    # An estimate may be so far off; a warm end told from it alone would often be untrue.
    if plant is not None and site > plant and not _doubtful_warmth(survey, site, plant):
        shown = {
            "site_zone": Figure(_site_name(survey, site), "text"),
            "plant_zone": Figure(plant.name, "text"),
            "over": Figure(_zones_text(site.step - plant.step), "text"),
        }
        far = (site.step - plant.step) / 2 >= survey.rules.value("zone-warm")
        yield survey.finding(
            NAME, "too_warm", Weight.CAUTION if far else Weight.ADVICE, (grown.id,), "zone-warm", shown,
            (grown.mark,),
        )


def run(survey: Survey) -> list[Finding]:
    """Findings on winter cold and on zones too warm; an advice to enter the zone where it is unknown."""
    grown = list(_grown(survey))
    site = site_zone(survey.yard.site.zone)
    if site is None:
        return _zone_missing(survey, grown)
    each: list[Finding] = []
    for plant in grown:
        each.extend(_cold(survey, plant, site))
        each.extend(_roots(survey, plant, site))
        each.extend(_warm(survey, plant, site))
    # A plant too tender is told by itself, also where the zone is only an estimate.
    found = [finding for finding in each if finding.kind == "too_cold"]
    found += grouped((f for f in each if f.kind != "too_cold"), ("plant_zone", "rootstock"))
    unknown = tuple(p.id for p in grown if p.cultivar is not None and hardy_to(p.cultivar.zone_min) is None)
    if unknown:
        shown = {"count": Figure(len(unknown), "count")}
        found.append(survey.finding(NAME, "zone_unknown", Weight.ADVICE, unknown, "zone-margin", shown))
    return found


def _zone_missing(survey: Survey, grown: list[_Grown]) -> list[Finding]:
    if not grown:
        return []
    shown = {"count": Figure(len(grown), "count")}
    if survey.yard.site.zone:
        shown["typed"] = Figure(survey.yard.site.zone, "text")
    return [survey.finding(NAME, "zone_missing", Weight.ADVICE, (), "zone-margin", shown)]


CHECK = Check(
    name=NAME,
    title=later("Winter cold"),
    run=run,
    places=False,
    wording={
        "too_cold": Wording(
            "{a} is hardy to zone {plant_zone} (about {plant_low}); this yard is zone {site_zone}, where "
            "the coldest night of a mean year is about {site_low}. It is {lack} short.",
            "Choose a variety hardy to zone {site_zone} or colder, or grow it where it can be sheltered.",
            "{lack} too tender",
        ),
        "pot_cold": Wording(
            "Roots in a pot freeze through from all sides and count {colder} zones colder. Hardy to zone "
            "{plant_zone}, with only {spare} to spare in zone {site_zone}: {things}.",
            "Plan winter quarters (an unheated shed, or the pot sunk and mulched), or plant in the ground.",
            "pot roots may freeze",
        ),
        "no_margin": Wording(
            "Hardy to zone {plant_zone}, just what zone {site_zone} has: {things}. A zone is a mean: about "
            "every second winter is colder than {site_low}.",
            "Give them the warmest, best drained places, or choose hardier ones.",
            "no zone to spare",
        ),
        "roots_cold": Wording(
            "The rootstock {rootstock} of {things} is hardy to zone {plant_zone}; this yard is zone "
            "{site_zone}.",
            "Choose a rootstock hardy to zone {site_zone}, and mulch the roots before winter.",
            "rootstock {lack} too tender",
        ),
        "too_warm": Wording(
            "Suited to zones up to {plant_zone}, while this yard is zone {site_zone}, {over} warmer: "
            "{things}.",
            "Choose varieties for warmer places; see also whether their winter chill is met.",
            "{over} too warm",
        ),
        "zone_unknown": Wording(
            "No hardiness zone is known: {things}.",
            "Ask a nursery near you, and enter the zone with the variety.",
            "zone not known",
        ),
        "zone_missing": Wording(
            "The hardiness zone of this yard is not entered[ ('{typed}' is not a zone)], so nothing is said "
            "of winter cold (plants: {count}).",
            "Look your place up in the site card (town, US ZIP code or position), which fills in zone, "
            "frosts, months and the height of the sun, or enter the zone there, for example 6b.",
            "enter the zone",
        ),
    },
)
