"""Bad neighbours: walnut, rust hosts, virus among brambles, roots of big trees and windbreaks."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from attrs import frozen

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Weight
from yardplan.checks.ordering import natural
from yardplan.checks.spots import Spot, gaps, spots
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.plants.stand import Standing

NAME = "neighbours"


def _near(place: Spot, others: list[Spot], within: float) -> list[tuple[float, Spot]]:
    """Others within a distance, nearest first."""
    found = [(float(g), o) for g, o in zip(gaps(place, others), others, strict=True) if g < within]
    return sorted(found, key=lambda pair: (pair[0], natural(pair[1].id)))


def _height(place: Spot) -> float:
    return place.grown.mature.height if isinstance(place.grown, Standing) else 0.0


def injured(walnut: Spot, spot: Spot) -> bool:
    """True for a planned thing that juglone of this walnut surely harms near by."""
    harmed = spot.planned and spot.in_group("juglone injured") and not spot.in_group("juglone tolerant")
    return harmed and walnut.in_group("walnut") and not spot.in_group("walnut")


def toxic_reach(survey: Survey, walnut: Spot) -> tuple[float, float]:
    """Where juglone harms surely and where it may, metres from the trunk."""
    value = survey.rules.value
    height = _height(walnut)
    if height < value("juglone-mature-height"):
        reach = value("juglone-young") * height
        return reach, reach
    return value("juglone-near"), value("juglone-far")


def _juglone(survey: Survey, everything: list[Spot]) -> Iterator[Finding]:
    planted = [spot for spot in everything if spot.planned and not spot.in_group("walnut")]
    for walnut in (spot for spot in everything if spot.in_group("walnut")):
        near, far = toxic_reach(survey, walnut)
        for gap, spot in _near(walnut, planted, far):
            hurt = injured(walnut, spot)
            if spot.in_group("juglone tolerant"):
                continue
            kind = "juglone" if hurt else "juglone_unknown"
            weight = Weight.ADVICE if not hurt else Weight.CONFLICT if gap < near else Weight.CAUTION
            shown = {
                "distance": Figure(gap, "length"), "wanted": Figure(far, "length"),
                "short": Figure(far - gap, "length"),
            }
            rule = "juglone-near" if gap < near else "juglone-far"
            yield survey.finding(
                NAME, kind, weight, (spot.id, walnut.id), rule, shown, (spot.mark, walnut.mark)
            )


@frozen
class _Disease:
    """A source of disease, the plants it passes to, the rule of their distance and how much it matters."""

    kind: str
    source: str
    hosts: str
    rule: str
    weight: Weight


_DISEASES = (
    _Disease("juniper_rust", "juniper", "juniper rust host", "rust-juniper", Weight.ADVICE),
    _Disease("pine_rust", "five-needle pine", "ribes black", "ribes-pine-black", Weight.CAUTION),
    _Disease("pine_rust", "five-needle pine", "ribes red", "ribes-pine-red", Weight.CAUTION),
    _Disease("wild_brambles", "wild bramble", "bramble", "bramble-wild", Weight.CAUTION),
)


def _hosts(survey: Survey, everything: list[Spot], disease: _Disease) -> Iterator[Finding]:
    """One finding for each source of a disease that names every host within its distance."""
    within = survey.rules.value(disease.rule)
    targets = [spot for spot in everything if spot.planned and spot.in_group(disease.hosts)]
    for source in (spot for spot in everything if spot.in_group(disease.source)):
        close = _near(source, targets, within)
        if not close:
            continue
        shown = {
            "distance": Figure(close[0][0], "length"), "wanted": Figure(within, "length"),
            "count": Figure(len(close), "count"), "nearest": Figure(close[0][1].id, "thing"),
        }
        ids = sorted((spot.id for _, spot in close), key=natural)
        yield survey.finding(
            NAME, disease.kind, disease.weight, (source.id, *ids), disease.rule, shown, (source.mark,)
        )


def _brambles(survey: Survey, everything: list[Spot]) -> Iterator[Finding]:
    """Black and purple raspberries against red ones."""
    reds = [spot for spot in everything if spot.in_group("red bramble")]
    warn, advise = survey.rules.value("bramble-warn"), survey.rules.value("bramble-advise")
    for black in (s for s in everything if s.in_group("black bramble") and s.planned):
        close = _near(black, reds, advise)
        if not close:
            continue
        gap, red = close[0]
        near = gap < warn
        wanted = warn if near else advise
        shown = {
            "distance": Figure(gap, "length"), "wanted": Figure(wanted, "length"),
            "advised": Figure(advise, "length"),
        }
        yield survey.finding(
            NAME, "brambles", Weight.CAUTION if near else Weight.ADVICE, (black.id, red.id),
            "bramble-warn" if near else "bramble-advise", shown, (black.mark, red.mark),
        )


def _big_trees(survey: Survey) -> Iterator[Finding]:
    """Roots of big standing trees reach past their crowns; overlapping crowns are the spacing check's."""
    layout, value = survey.layout, survey.rules.value
    big = np.nonzero(~layout.planted & (layout.height >= value("big-tree-height")))[0]
    rooted = layout.planted & ~layout.potted
    for tree in big:
        gap = np.hypot(*(layout.xy - layout.xy[tree]).T)
        roots = value("tree-roots") * layout.reach[tree]
        for i in np.nonzero(rooted & (gap < roots) & (gap >= layout.reach[tree] + layout.reach))[0]:
            shown = {"distance": Figure(float(gap[i]), "length"), "wanted": Figure(float(roots), "length")}
            yield survey.finding(
                NAME, "tree_roots", Weight.ADVICE, (layout.plants[i].id, layout.plants[tree].id),
                "tree-roots", shown,
            )


def _windbreaks(survey: Survey) -> Iterator[Finding]:
    layout, value = survey.layout, survey.rules.value
    tall = {b.id for b in survey.yard.barriers if b.kind == "hedge" and b.height >= value("hedge-tall")}
    for column in layout.columns("barrier"):
        hedge = layout.features[column].id
        if hedge not in tall:
            continue
        wanted = value("windbreak-near") * 2 * layout.reach
        near = layout.planted & ~layout.potted & (np.abs(layout.gaps[:, column]) < wanted)
        for i in np.nonzero(near)[0]:
            shown = {
                "distance": Figure(float(layout.gaps[i, column]), "length"),
                "wanted": Figure(float(wanted[i]), "length"),
            }
            yield survey.finding(
                NAME, "windbreak", Weight.ADVICE, (layout.plants[i].id, hedge), "windbreak-near", shown
            )


def run(survey: Survey) -> list[Finding]:
    """Findings on neighbours that harm."""
    everything = spots(survey)
    found = [*_juglone(survey, everything), *_brambles(survey, everything)]
    for disease in _DISEASES:
        found.extend(_hosts(survey, everything, disease))
    return [*found, *_big_trees(survey), *_windbreaks(survey)]


CHECK = Check(
    name=NAME,
    title=later("Neighbours"),
    run=run,
    near=False,
    wording={
        "juglone": Wording(
            "{a} stands {distance} from {b}, which leaks juglone from its roots; {a} is of a kind it harms, "
            "up to {wanted} from the trunk.",
            "Move {a} at least {short} farther off, or grow it in a container or lined bed above the "
            "ground. Roots go on leaking after the tree is gone.",
            "{distance} from a walnut",
        ),
        "juglone_unknown": Wording(
            "{a} stands {distance} from {b}, whose roots leak juglone up to {wanted}; how this kind bears "
            "it is not known.",
            "Move it {short} farther off to be safe.",
            "{distance} from a walnut",
        ),
        "juniper_rust": Wording(
            "{a} can give rust to {count} of your plants; the nearest, {nearest}, stands {distance} from it.",
            "Choose kinds that resist rust, or take the juniper out where it is yours.",
            "rust from a juniper",
        ),
        "pine_rust": Wording(
            "Currants and gooseberries can give blister rust to {a}; the nearest, {nearest}, stands "
            "{distance} from it ({count} within {wanted}).",
            "Choose rust-resistant kinds and ask your state's forest service: some states bar currants.",
            "blister rust of white pine",
        ),
        "wild_brambles": Wording(
            "{a} may carry virus to {count} of your brambles; the nearest, {nearest}, stands {distance} "
            "from it.",
            "Clear wild brambles within {wanted} before you plant.",
            "wild brambles near",
        ),
        "brambles": Wording(
            "{a} stands {distance} from {b}, which can carry virus without showing it; {wanted} is wanted "
            "between them.",
            "Put them as far apart as the lot allows (best {advised}), the black ones upwind, and buy "
            "plants certified free of virus.",
            "{distance} from red raspberries",
        ),
        "tree_roots": Wording(
            "The roots of {b} likely reach {wanted} from its trunk; {a} stands {distance} from it and must "
            "share water and food.",
            "Water and feed {a} more, or move it beyond {wanted}.",
            "among a big tree's roots",
        ),
        "windbreak": Wording(
            "{a} stands {distance} from {b}, a tall hedge; one plant's width, {wanted}, keeps it clear of "
            "the hedge's roots and shade.",
            "Move it out to {wanted}, or cut the hedge's roots with a trench every three to four years.",
            "close to a windbreak",
        ),
    },
)
