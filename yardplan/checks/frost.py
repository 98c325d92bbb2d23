"""Frost at bloom: how often a night that kills flowers comes after full bloom at this place."""

from __future__ import annotations

from attrs import evolve, frozen

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.planted import Planted, planted
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.plants.crop_names import crop_name
from yardplan.plants.frost import FrostRisk, frost_risk
from yardplan.plants.heat import date_of
from yardplan.plants.pollen_place import place_for

NAME = "frost"


@frozen
class _Risk:
    """Cultivars of one crop with a risk of one weight, and the greatest of their risks."""

    kinds: tuple[Planted, ...]
    worst: FrostRisk
    bloom: float
    error: float


def run(survey: Survey) -> list[Finding]:
    """Findings on frost at bloom, one a crop and weight."""
    return [_finding(kind, risk) for (_, kind), risk in _risks(survey).items()]


def _risks(survey: Survey) -> dict[tuple[str, str], _Risk]:
    site = survey.yard.site
    place = place_for(site, survey.rules.local, survey.catalogue.cultivars)
    found: dict[tuple[str, str], _Risk] = {}
    if place.bloom is None or site.last_frost is None:
        return found
    for kind in planted(survey):
        band = place.bloom.band(kind.cultivar)
        risk = None if band is None else frost_risk(kind.cultivar.crop, band, site, place.limits)
        if band is None or risk is None or risk.share < place.limits.value("bloom-frost-advice"):
            continue
        often = risk.share >= place.limits.value("bloom-frost-caution")
        key = (kind.cultivar.crop, "often" if often else "sometimes")
        before = found.get(key)
        worse = before is None or risk.share > before.worst.share
        kinds = (*(before.kinds if before else ()), kind)
        if worse or before is None:
            found[key] = _Risk(kinds, risk, band.full, band.error)
        else:
            found[key] = evolve(before, kinds=kinds)
    return found


def _finding(kind: str, risk: _Risk) -> Finding:
    names = [one.cultivar.name for one in risk.kinds]
    return Finding(
        check=NAME, kind=kind, weight=Weight.CAUTION if kind == "often" else Weight.ADVICE,
        things=tuple(thing for one in risk.kinds for thing in one.things),
        marks=tuple(Mark((at,)) for one in risk.kinds for at in one.places), source=risk.worst.kill.source,
        figures={
            "varieties": Figure(", ".join(names), "text"),
            "crop": Figure(crop_name(risk.kinds[0].cultivar.crop), "text"),
            "share": Figure(round(risk.worst.share, 2), "share"),
            "kills": Figure(risk.worst.kill.celsius, "temperature"),
            "bloom": Figure(date_of(risk.bloom), "date"), "error": Figure(risk.error, "days"),
            "last": Figure(date_of(risk.worst.date), "date"),
        },
    )


_MESSAGE = later(
    "{varieties}: full bloom from about {bloom} (give or take {error}); {kills} kills one open flower in "
    "ten, and such a night comes after that date in about {share} of years. Hollows are colder."
)

CHECK = Check(
    name=NAME,
    title=later("Frost at bloom"),
    run=run,
    places=False,
    wording={
        "often": Wording(
            title="Frost at bloom: {crop}", message=_MESSAGE,
            clears="Choose a later-blooming variety or higher ground, or cover them on clear nights.",
        ),
        "sometimes": Wording(
            title="Some frost at bloom: {crop}", message=_MESSAGE,
            clears="Keep them out of hollows; a cover at hand saves the crop in such years.",
        ),
    },
)
