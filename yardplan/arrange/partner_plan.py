"""The smallest set of plants to add so that everything in a yard crops.

Each lacking plant must be served as well as any candidate could serve it. A plant added beside one of them or
between some serves all within its best range. Families are solved apart: fewest plants first, then the rank.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import combinations

from attrs import frozen

from yardplan.arrange.partner_spots import Spot, spots_for
from yardplan.arrange.partners import Addition, Fits, Plan, Suggestion, candidates, lacking, suggestion_for
from yardplan.checks.pollination import net_for
from yardplan.checks.survey import Survey
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.pollen import Verdict, needs_partner
from yardplan.plants.pollen_net import LEVEL, NO, NOT_PROVED, PollenNet, related
from yardplan.plants.pollen_tables import Answer
from yardplan.yard.ground import Outline

#: Sets of up to this many plants are tried out one by one; larger ones are built up greedily.
_TRIED = 3


@frozen
class _Option:
    """A candidate at one spot: which of the lacking it serves (a bit each), and its rank."""

    mask: int
    candidate: Cultivar
    spot: Spot
    rank: tuple[float, ...]


def plan_for(survey: Survey, ids: Iterable[str] | None = None, *, fits: Fits | None = None) -> Plan:
    """The fewest additions that make every plant crop, or those named in `ids`.

    With `fits` other kinds are looked for where one of them would find no room.
    """
    net = net_for(survey)
    wanted = lacking(net) if ids is None else [net.number[i] for i in ids if i in net.number]
    additions: list[Addition] = []
    left: list[int] = []
    for group in _families(net, wanted):
        pool = candidates(survey, [net.nodes[n].cultivar for n in group])
        added, unserved = _group_plan(net, group, pool, survey.yard.lot)
        if fits is not None and not all(fits(one.suggestion.key) for one in added):
            added, unserved = _group_plan(
                net, group, [one for one in pool if fits(one.key)], survey.yard.lot
            )
        additions += added
        left += unserved
    return Plan(
        additions=tuple(additions), wanted=tuple(net.nodes[n].id for n in wanted),
        left=tuple(net.nodes[n].id for n in sorted(left)),
    )


def _group_plan(
    net: PollenNet, group: list[int], pool: list[Cultivar], lot: Outline
) -> tuple[list[Addition], list[int]]:
    """What to add for one family, with partners for what is added; and those that none can serve."""
    chosen, unserved = _solve(net, group, pool, lot)
    return [*chosen, *_for_the_added(net, chosen, pool)], unserved


def _families(net: PollenNet, wanted: Sequence[int]) -> list[list[int]]:
    """The lacking plants in groups that one cultivar could serve."""
    groups: list[list[int]] = []
    for number in wanted:
        cultivar = net.nodes[number].cultivar
        for group in groups:
            if related(net.nodes[group[0]].cultivar, cultivar):
                group.append(number)
                break
        else:
            groups.append([number])
    return groups


def _solve(
    net: PollenNet, group: list[int], pool: list[Cultivar], lot: Outline
) -> tuple[list[Addition], list[int]]:
    levels = _levels(net, group, pool)
    asked = {n: max((levels[c, n] for c in range(len(pool)) if (c, n) in levels), default=NO) for n in group}
    already = {n: net.level(int(net.scores[:, n].argmax()), n) for n in group}
    served = [n for n in group if asked[n] > already[n]]
    left = [n for n in group if n not in served]
    options = _options(net, served, pool, levels, asked, spots_for(net, served, lot))
    chosen = _fewest(options, (1 << len(served)) - 1)
    return [_addition(net, served, option) for option in chosen], left


def _for_the_added(net: PollenNet, chosen: Sequence[Addition], pool: list[Cultivar]) -> list[Addition]:
    """Partners for added plants that nothing sets: one of the other additions, or one plant more."""
    by_key = {candidate.key: candidate for candidate in pool}
    added = [by_key[addition.suggestion.key] for addition in chosen]
    more: list[Addition] = []
    for addition, cultivar in zip(chosen, added, strict=True):
        if addition.suggestion.back != "no" or any(
            net.judgements.verdict(other, cultivar).verdict in {"yes", "not proved"}
            for other in added if other is not cultivar and related(other, cultivar)
        ):
            continue
        partner = _partner_of(net, addition, cultivar, pool)
        if partner is not None:
            more.append(partner)
    return more


def _partner_of(
    net: PollenNet, addition: Addition, cultivar: Cultivar, pool: list[Cultivar]
) -> Addition | None:
    """The best plant to set an added one; best of all one that it sets in turn, or that crops alone."""
    found: list[tuple[tuple[float, ...], Cultivar, Verdict, Answer]] = []
    for candidate in pool:
        if not related(candidate, cultivar):
            continue
        verdict = net.judgements.verdict(candidate, cultivar)
        back = "yes" if not needs_partner(candidate) else net.judgements.verdict(cultivar, candidate).verdict
        if verdict.verdict != "no" and back != "no":
            overlap = verdict.overlap.shared if verdict.overlap is not None else 0.0
            rank = (-min(LEVEL[verdict.verdict], LEVEL[back]), -LEVEL[verdict.verdict], -overlap)
            found.append((rank, candidate, verdict, back))
    if not found:
        return None
    _, candidate, verdict, back = min(found, key=lambda one: one[0])
    words = tuple(reason.words for reason in verdict.reasons if reason.step in {"genetics", "bloom"})
    return Addition(
        suggestion=Suggestion(
            key=candidate.key, verdict=verdict.verdict, back=back, alone=not needs_partner(candidate),
            set_by=None, overlap=None if verdict.overlap is None else verdict.overlap.shared,
            share=verdict.share, near=addition.suggestion.near, reasons=words,
        ),
        anchor=addition.anchor, place=addition.place, serves=(str(cultivar.key),),
    )


def _levels(net: PollenNet, group: list[int], pool: list[Cultivar]) -> dict[tuple[int, int], int]:
    """Level of each candidate on each lacking plant that it could cross with."""
    return {
        (at, number): LEVEL[net.judgements.verdict(candidate, net.nodes[number].cultivar).verdict]
        for number in group for at, candidate in enumerate(pool)
        if related(candidate, net.nodes[number].cultivar)
    }


def _options(
    net: PollenNet, served: list[int], pool: list[Cultivar], levels: dict[tuple[int, int], int],
    asked: dict[int, int], spots: Sequence[Spot],
) -> list[_Option]:
    """The best candidate for each set of plants that one addition could serve; sets within others dropped."""
    best: dict[int, _Option] = {}
    for at, candidate in enumerate(pool):
        helps = sum(
            1 << bit for bit, number in enumerate(served) if levels.get((at, number), NO) >= asked[number]
        )
        for spot in spots if helps else ():
            mask = spot.mask & helps
            suggestion = suggestion_for(net, candidate, _served_near(served, spot, mask)) if mask else None
            if suggestion is None:
                continue
            rank = (-min(LEVEL[suggestion.back], NOT_PROVED), *_finer(suggestion))
            if mask not in best or rank < best[mask].rank:
                best[mask] = _Option(mask, candidate, spot, rank)
    return [
        option for mask, option in best.items()
        if not any(mask != more and mask & more == mask and best[more].rank <= option.rank for more in best)
    ]


def _finer(suggestion: Suggestion) -> tuple[float, ...]:
    overlap = suggestion.overlap if suggestion.overlap is not None else 0.0
    share = suggestion.share if suggestion.share is not None else 0.5
    return (-LEVEL[suggestion.verdict], -LEVEL[suggestion.back], -share, -overlap)


def _served_near(served: list[int], spot: Spot, mask: int) -> int:
    """The plant a spot is named by: its nearest one where that is served there, else the first one served."""
    if mask >> served.index(spot.anchor) & 1:
        return spot.anchor
    return served[(mask & -mask).bit_length() - 1]


def _fewest(options: list[_Option], whole: int) -> list[_Option]:
    """The fewest options that together serve all; among those the best ranked."""
    if not whole or not options:
        return []
    for size in range(1, _TRIED + 1):
        fits = [
            chosen for chosen in combinations(options, size) if _joined(chosen) & whole == whole
        ] if len(options) ** size <= 200_000 else []
        if fits:
            return list(min(fits, key=lambda chosen: sorted(option.rank for option in chosen)))
    return _greedy(options, whole)


def _joined(chosen: Iterable[_Option]) -> int:
    mask = 0
    for option in chosen:
        mask |= option.mask
    return mask


def _greedy(options: list[_Option], whole: int) -> list[_Option]:
    """Option after option that serves the most of what is left."""
    chosen: list[_Option] = []
    left = whole
    while left:
        best = max(options, key=lambda option: ((option.mask & left).bit_count(), [-r for r in option.rank]))
        if not best.mask & left:
            return chosen
        chosen.append(best)
        left &= ~best.mask
    return chosen


def _addition(net: PollenNet, served: list[int], option: _Option) -> Addition:
    anchor = _served_near(served, option.spot, option.mask)
    suggestion = suggestion_for(net, option.candidate, anchor)
    assert suggestion is not None  # options are made of suggestions
    return Addition(
        suggestion=suggestion, anchor=net.nodes[anchor].id, place=option.spot.place,
        serves=tuple(net.nodes[number].id for bit, number in enumerate(served) if option.mask >> bit & 1),
    )
