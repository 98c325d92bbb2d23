"""Winter chill: are winters cold enough for what is planted, and do low-chill kinds wake too early?

From monthly temperatures chill is only a rough estimate, so figures are rounded and said with "about".
"""

from __future__ import annotations

from collections.abc import Iterator

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.planted import Planted, planted
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.plants.bloom_tables import is_low_chill
from yardplan.plants.chill import SiteChill, site_chill
from yardplan.plants.frost import kill_point
from yardplan.plants.limits import Limits

NAME = "chill"


def run(survey: Survey) -> list[Finding]:
    """Findings on chill, one a cultivar; none where the site has no monthly temperatures."""
    site = site_chill(survey.yard.site)
    return [] if site is None else list(_findings(survey, site, Limits(dict(survey.rules.local))))


def _findings(survey: Survey, site: SiteChill, limits: Limits) -> Iterator[Finding]:
    for kind in planted(survey):
        need = kind.cultivar.chill_hours
        if need is None:
            continue
        sort = _sort(kind, need, site, limits)
        if sort is not None:
            yield _finding(kind, need, site, *sort)


def _sort(
    kind: Planted, need: tuple[float, float], site: SiteChill, limits: Limits
) -> tuple[str, Weight] | None:
    if site.coldest > limits.value("chill-warm-winter"):
        given = site.hours + limits.value("chill-estimate-error")
        if given < need[0] * limits.value("chill-fail-share"):
            return "fails", Weight.CONFLICT
        if given < need[0] * limits.value("chill-short-share"):
            return "short", Weight.CAUTION
        return None
    early = is_low_chill(kind.cultivar) and site.hours >= limits.value("chill-plenty")
    # Only kinds whose flowers a spring frost can take are worth a word.
    return ("wakes_early", Weight.ADVICE) if early and kill_point(kind.cultivar.crop) else None


def _finding(
    kind: Planted, need: tuple[float, float], site: SiteChill, sort: str, weight: Weight
) -> Finding:
    sources = kind.cultivar.sources_of("chill_hours")
    return Finding(
        check=NAME, kind=sort, weight=weight, things=kind.things, source=(sources or ("memory",))[0],
        marks=tuple(Mark((at,)) for at in kind.places),
        figures={
            "variety": Figure(kind.cultivar.name, "text"), "need": Figure(need[0], "count"),
            "most": Figure(need[1], "count"), "here": Figure(site.hours, "count"),
            "coldest": Figure(site.coldest, "temperature"),
        },
    )


CHECK = Check(
    name=NAME,
    title=later("Winter chill"),
    run=run,
    places=False,
    wording={
        "fails": Wording(
            title="Winters too warm: {variety}",
            message="{variety} needs about {need} hours at or under 7 °C (45 °F); an average winter here "
                    "gives about {here} (coldest month {coldest}). It would leaf out and flower poorly.",
            clears="Choose a low-chill variety: one that needs about {here} hours or fewer.",
        ),
        "short": Wording(
            title="Chill may fall short: {variety}",
            message="{variety} needs about {need} hours at or under 7 °C (45 °F); an average winter here "
                    "gives about {here} (coldest month {coldest}). "
                    "After warm winters bloom is late, long and thin.",
            clears="Choose a variety that needs less chill.",
        ),
        "wakes_early": Wording(
            title="Wakes early: {variety}",
            message="{variety} needs at most about {most} hours of chill; winters here give about {here}, "
                    "so it opens in the first warm spell and frost takes the flowers.",
            clears="Choose a variety that needs more chill.",
        ),
    },
)
