"""What grew there before: wilt hosts before strawberries and brambles, the same fruit in the same hole."""

from __future__ import annotations

from collections.abc import Iterator

from attrs import frozen

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Weight
from yardplan.checks.groups import member
from yardplan.checks.spots import Spot, spots
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.plants.stand import Standing, StandingRow
from yardplan.yard.ground import StandingTree
from yardplan.yard.planting import Earlier

NAME = "rotation"


@frozen
class _Waiting:
    """A group of plants, what must not have grown before it, and the rule of the years to wait."""

    group: str
    before: str
    rule: str


_WAITING = (
    _Waiting("strawberry", "verticillium host", "rotation-strawberry"),
    _Waiting("bramble", "verticillium host", "rotation-bramble"),
)


def _history(spot: Spot) -> tuple[tuple[Earlier, ...], int | None]:
    """What grew there before and the year of planting."""
    grown = spot.grown
    if isinstance(grown, Standing):
        plant = grown.thing
        return ((), None) if isinstance(plant, StandingTree) else (plant.earlier, plant.planted)
    placed = grown.row if isinstance(grown, StandingRow) else grown.bed
    return placed.earlier, placed.planted


def _years(earlier: Earlier, planted: int | None) -> float | None:
    """Years between, or None where a year is not known."""
    return None if earlier.until is None or planted is None else float(planted - earlier.until)


def _same_fruit(survey: Survey, kind: str, earlier: str) -> bool:
    """True for one genus of fruit after itself: apple after apple, plum after cherry."""
    now, then = survey.catalogue.crop(kind), survey.catalogue.crop(earlier)
    if now is None or then is None:
        return kind.casefold() == earlier.casefold()
    return now.genus == then.genus


def _wilt(survey: Survey, spot: Spot, earlier: Earlier, years: float | None) -> Iterator[Finding]:
    for waiting in _WAITING:
        wait = survey.rules.value(waiting.rule)
        hosts = spot.in_group(waiting.group) and member(waiting.before, earlier.crop) is not None
        if hosts and (years is None or years < wait):
            shown = {"before": Figure(earlier.crop, "text"), "wait": Figure(wait, "count")}
            if years is not None:
                shown["years"] = Figure(years, "count")
            yield survey.finding(NAME, "wilt", Weight.CAUTION, (spot.id,), waiting.rule, shown, (spot.mark,))


def _replant(survey: Survey, spot: Spot, earlier: Earlier) -> Iterator[Finding]:
    if not member("herbaceous", spot.kind) and _same_fruit(survey, spot.kind, earlier.crop):
        shown = {"before": Figure(earlier.crop, "text")}
        yield survey.finding(NAME, "replant", Weight.CAUTION, (spot.id,), "replant", shown, (spot.mark,))


def run(survey: Survey) -> list[Finding]:
    """Findings on what grew on a spot before; one of each kind a plant."""
    found: dict[tuple[str, str], Finding] = {}
    for spot in spots(survey):
        history, planted = _history(spot)
        for earlier in history:
            for finding in (
                *_wilt(survey, spot, earlier, _years(earlier, planted)), *_replant(survey, spot, earlier)
            ):
                found.setdefault((spot.id, finding.kind), finding)
    return list(found.values())


CHECK = Check(
    name=NAME,
    title=later("What grew before"),
    run=run,
    near=False,
    places=False,
    wording={
        "wilt": Wording(
            "{a} comes after {before}[ by {years} years], which can leave wilt (Verticillium) in the ground "
            "for many years; {wait} years are wanted between.",
            "Choose other ground, or a raised bed with clean soil.",
            "wilt from {before}",
        ),
        "replant": Wording(
            "{a} would stand where {before} stood: the same fruit in the same hole often starts poorly.",
            "Shift the hole out of the old roots, or change the soil in it.",
            "same fruit as before",
        ),
    },
)
