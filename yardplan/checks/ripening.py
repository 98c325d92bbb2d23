"""Is the season long enough: when fruit begins to ripen against the first frost of autumn."""

from __future__ import annotations

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.grouping import grouped
from yardplan.checks.planted import Planted, planted
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.plants.bloom import BloomAt
from yardplan.plants.harvest import HarvestBand, harvest_band
from yardplan.plants.heat import date_of, day_of
from yardplan.plants.pollen_place import place_for

NAME = "ripening"

_YEAR = 365


def frost_after(bloom: float, first_frost: str) -> float:
    """Day of the first autumn frost that follows a bloom, counted on over the turn of the year."""
    day = float(day_of(first_frost))
    return day if day > bloom else day + _YEAR


def _late(survey: Survey, kind: Planted, at: BloomAt, first_frost: str) -> Finding | None:
    band = at.band(kind.cultivar)
    harvest = harvest_band(kind.cultivar, band) if band is not None else None
    if band is None or harvest is None:
        return None
    frost = frost_after(band.full, first_frost)
    limit = frost + survey.rules.value("ripen-past-frost")
    if harvest.last <= limit:
        return None
    return _finding(survey, kind, harvest, frost, seldom=harvest.first > limit)


def _finding(survey: Survey, kind: Planted, harvest: HarvestBand, frost: float, *, seldom: bool) -> Finding:
    first, last = harvest.dates
    shown = {
        "first": Figure(first, "date"), "last": Figure(last, "date"), "frost": Figure(date_of(frost), "date"),
        "late": Figure(harvest.first - frost, "days"),
    }
    return survey.finding(
        NAME, "seldom" if seldom else "late_years", Weight.CAUTION if seldom else Weight.ADVICE, kind.things,
        "ripen-past-frost", shown, tuple(Mark((place,)) for place in kind.places),
    )


def run(survey: Survey) -> list[Finding]:
    """Findings on fruit that ripens after the first frost; none where bloom or frost is not known."""
    site = survey.yard.site
    place = place_for(site, survey.rules.local, survey.catalogue.cultivars)
    if place.bloom is None or site.first_frost is None:
        return []
    each = [_late(survey, kind, place.bloom, site.first_frost) for kind in planted(survey)]
    return grouped((found for found in each if found is not None), ("first", "last"))


CHECK = Check(
    name=NAME,
    title=later("Long enough to ripen"),
    run=run,
    near=False,
    places=False,
    wording={
        "seldom": Wording(
            "Ripe only from about {first}, well after the mean first frost of {frost}: {things}.",
            "Choose an earlier variety, or the warmest wall there is.",
            "seldom ripens here",
        ),
        "late_years": Wording(
            "Ripe from about {first} to {last}, in late years after the mean first frost of {frost}: "
            "{things}.",
            "Choose an earlier variety, or pick before hard frost and ripen indoors where the kind allows "
            "it.",
            "late in some years",
        ),
    },
)
