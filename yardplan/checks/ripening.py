"""Is the season long enough: when fruit begins to ripen against the first frost of autumn."""

from __future__ import annotations

from typing import Literal

from attrs import frozen

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.grouping import grouped
from yardplan.checks.planted import Planted, planted
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.plants.bloom import BloomAt
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.harvest import HarvestBand, harvest_band
from yardplan.plants.heat import date_of, day_of
from yardplan.plants.pollen_place import place_for

NAME = "ripening"
#: The rule that says how long after the first frost a hard freeze comes.
RULE = "ripen-past-frost"

_YEAR = 365


def frost_after(bloom: float, first_frost: str) -> float:
    """Day of the first autumn frost that follows a bloom, counted on over the turn of the year."""
    day = float(day_of(first_frost))
    return day if day > bloom else day + _YEAR


@frozen(kw_only=True)
class Outlook:
    """What speaks against a variety's ripening: `harvest` when it is ripe, `frost` day of the first frost.

    `kind`: `seldom` when even the earliest fruit comes after hard frost, `late_years` when the latest does.
    """

    kind: Literal["seldom", "late_years"]
    harvest: HarvestBand
    frost: float

    @property
    def date(self) -> str:
        """The mean first frost as `MM-DD`."""
        return date_of(self.frost)


def outlook(cultivar: Cultivar, at: BloomAt, first_frost: str, past: float) -> Outlook | None:
    """Whether a variety ripens before the frosts; None when it does, or its bloom or harvest is not known.

    `first_frost` as `MM-DD`; `past` days from it to hard frost.
    """
    band = at.band(cultivar)
    harvest = harvest_band(cultivar, band) if band is not None else None
    if band is None or harvest is None:
        return None
    frost = frost_after(band.full, first_frost)
    limit = frost + past
    if harvest.last <= limit:
        return None
    return Outlook(kind="seldom" if harvest.first > limit else "late_years", harvest=harvest, frost=frost)


def _late(survey: Survey, kind: Planted, at: BloomAt, first_frost: str) -> Finding | None:
    found = outlook(kind.cultivar, at, first_frost, survey.rules.value(RULE))
    return None if found is None else _finding(survey, kind, found)


def _finding(survey: Survey, kind: Planted, found: Outlook) -> Finding:
    first, last = found.harvest.dates
    shown = {
        "first": Figure(first, "date"), "last": Figure(last, "date"), "frost": Figure(found.date, "date"),
        "late": Figure(found.harvest.first - found.frost, "days"),
    }
    weight = Weight.CAUTION if found.kind == "seldom" else Weight.ADVICE
    return survey.finding(
        NAME, found.kind, weight, kind.things, RULE, shown, tuple(Mark((place,)) for place in kind.places),
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
