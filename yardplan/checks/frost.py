"""Frost at bloom: how often a night that kills flowers comes after full bloom at this place."""

from __future__ import annotations

from collections.abc import Iterator

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.planted import planted
from yardplan.checks.survey import Survey
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.frost import FrostRisk, frost_risk
from yardplan.plants.heat import date_of
from yardplan.plants.pollen_place import place_for

NAME = "frost"


def run(survey: Survey) -> list[Finding]:
    """Findings on frost at bloom, one a cultivar."""
    return list(_findings(survey))


def _findings(survey: Survey) -> Iterator[Finding]:
    site = survey.yard.site
    place = place_for(site, survey.rules.local, survey.catalogue.cultivars)
    if place.bloom is None or site.last_frost is None:
        return
    for kind in planted(survey):
        band = place.bloom.band(kind.cultivar)
        risk = None if band is None else frost_risk(kind.cultivar.crop, band, site, place.limits)
        if band is None or risk is None or risk.share < place.limits.value("bloom-frost-advice"):
            continue
        high = risk.share >= place.limits.value("bloom-frost-caution")
        yield Finding(
            check=NAME, kind="often" if high else "sometimes",
            weight=Weight.CAUTION if high else Weight.ADVICE, things=kind.things,
            figures=_figures(kind.cultivar, risk, band.full, band.error), source=risk.kill.source,
            marks=tuple(Mark((at,)) for at in kind.places),
        )


def _figures(cultivar: Cultivar, risk: FrostRisk, bloom: float, error: float) -> dict[str, Figure]:
    return {
        "variety": Figure(cultivar.name, "text"), "share": Figure(round(risk.share, 2), "share"),
        "kills": Figure(risk.kill.celsius, "temperature"), "bloom": Figure(date_of(bloom), "date"),
        "error": Figure(error, "days"), "last": Figure(date_of(risk.date), "date"),
    }


_MESSAGE = (
    "{variety} is in full bloom about {bloom} (give or take {error}); {kills} kills one open flower in ten, "
    "and such a night comes after that date in about {share} of years. Hollows and low flowers are colder."
)

CHECK = Check(
    name=NAME,
    title="Frost at bloom",
    run=run,
    places=False,
    wording={
        "often": Wording(
            title="Frost at bloom: {variety}", message=_MESSAGE,
            clears="Choose a later-blooming variety or higher ground, or cover it on clear nights.",
        ),
        "sometimes": Wording(
            title="Some frost at bloom: {variety}", message=_MESSAGE,
            clears="Keep it out of hollows; a cover at hand saves the crop in such years.",
        ),
    },
)
