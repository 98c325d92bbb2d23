"""What comes of a plan, counted: plants, findings, sun, fruit set and what to buy. For comparing plans."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping
from typing import Literal

from attrs import frozen

from yardplan.care.shopping import shopping
from yardplan.care.things import care_things
from yardplan.checks.finding import Finding, Weight
from yardplan.checks.pollination import outlooks_for
from yardplan.checks.run import findings
from yardplan.checks.survey import Survey, survey_of
from yardplan.plants.catalogue import Catalogue
from yardplan.plants.fruit_set import fruit_sets
from yardplan.plants.pollen_outlook import Expected
from yardplan.plants.stand import Stand
from yardplan.plants.standing import stand_of
from yardplan.sun.light import LightReport, light_report
from yardplan.sun.position import LatitudeError
from yardplan.sun.scene import scene_of
from yardplan.yard.yard import Yard

#: How the sun suits plants, best first: as they do best, enough, under their need, far too little.
Sun = Literal["best", "enough", "under", "far under"]
SUNS: tuple[Sun, ...] = ("best", "enough", "under", "far under")
_SUN_OF: Mapping[Weight, Sun] = {
    Weight.ADVICE: "enough", Weight.CAUTION: "under", Weight.CONFLICT: "far under",
}
#: Shares of the whole work after which progress is told: the light takes nearly all.
_LIT, _CHECKED = 0.85, 0.97


@frozen(kw_only=True, eq=False)
class Outcome:
    """What comes of one plan at a year.

    `plants` by the name of their kind, most first; `findings` and what they say counted by weight and check;
    `sun` and `fruit` count plants, rows and beds, each as one; `sun` is empty where no light is known;
    `lines` to buy and their `total` (None without prices) in `currency`.
    """

    yard: Yard
    stand: Stand
    found: tuple[Finding, ...]
    plants: Mapping[str, int]
    findings: Mapping[tuple[Weight, str], int]
    sun: Mapping[Sun, int]
    fruit: Mapping[Expected, int]
    lines: int
    total: float | None
    currency: str


def outcome_of(
    yard: Yard, catalogue: Catalogue, year: int | None,
    progress: Callable[[float], None] = lambda _share: None,
) -> Outcome:
    """Work out a plan from scratch; `progress` hears shares from 0 to 1 and may raise to stop the work."""
    stand = stand_of(yard, catalogue, year)
    light = _light_of(yard, stand, lambda share: progress(_LIT * share))
    survey = survey_of(yard, catalogue, year, stand=stand, light=light)
    found = tuple(findings(survey))
    progress(_CHECKED)
    bill = shopping(survey)
    progress(1.0)
    return Outcome(
        yard=yard, stand=stand, found=found, plants=_plants(survey),
        findings=Counter((finding.weight, finding.check) for finding in found),
        sun=_suns(survey, light, found), fruit=_fruit(survey),
        lines=len(bill.items), total=bill.total, currency=bill.currency,
    )


def _light_of(yard: Yard, stand: Stand, progress: Callable[[float], None]) -> LightReport | None:
    """The light at the detail of a live plan; None for a place that is not on Earth."""
    try:
        scene = scene_of(yard, stand)
    except LatitudeError:
        return None
    return light_report(scene, "live", progress)


def _plants(survey: Survey) -> Mapping[str, int]:
    """Plants by kind, rows and beds by their plants; most first, then by name."""
    tally: Counter[str] = Counter()
    for thing in care_things(survey):
        tally[thing.crop.name] += thing.count
    return dict(sorted(tally.items(), key=lambda pair: (-pair[1], pair[0])))


def _suns(survey: Survey, light: LightReport | None, found: tuple[Finding, ...]) -> Mapping[Sun, int]:
    """How many plants, rows and beds have how much of the sun that their kind needs."""
    if light is None:
        return {}
    judged = {f.things[0]: _SUN_OF[f.weight] for f in found if f.check == "light" and f.things}
    lit = [thing.id for thing in care_things(survey) if light.of(thing.id) is not None]
    tally = Counter(judged.get(key, "best") for key in lit)
    return {sun: tally[sun] for sun in SUNS}


def _fruit(survey: Survey) -> Mapping[Expected, int]:
    """How many plants, rows and beds are expected to set how well; those that bear no fruit are left out."""
    return Counter(one.expected for one in fruit_sets(outlooks_for(survey)) if one.expected is not None)
