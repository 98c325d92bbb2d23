"""Like findings said once: the same thing said of twenty plants is one line with twenty names."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from attrs import evolve

from yardplan.checks.finding import Figure, Finding, Weight
from yardplan.checks.ordering import natural


def grouped(
    findings: Iterable[Finding], alike: Sequence[str] = (), summed: Sequence[str] = (),
    weights: Sequence[Weight] = (Weight.CAUTION, Weight.ADVICE),
) -> list[Finding]:
    """Findings of one kind and weight that share the figures `alike`, made one; others stay as they are.

    The one holds all things in the order of their keys, the figures that are the same in all, the sums of
    those named in `summed`, and `count`.
    """
    groups: dict[tuple[object, ...], list[Finding]] = {}
    for number, finding in enumerate(findings):
        key: tuple[object, ...] = (finding.check, finding.kind, finding.weight, finding.source)
        key += tuple(finding.figures.get(name) for name in alike)
        groups.setdefault(key if finding.weight in weights else (number,), []).append(finding)
    return [_one_of(group, summed) for group in groups.values()]


def _one_of(group: list[Finding], summed: Sequence[str]) -> Finding:
    group = sorted(group, key=lambda finding: [natural(thing) for thing in finding.things])
    first = group[0]
    figures = {
        name: figure for name, figure in first.figures.items()
        if name not in summed and all(other.figures.get(name) == figure for other in group)
    }
    for name in summed:
        parts = [finding.figures[name] for finding in group if name in finding.figures]
        if parts:
            total = sum(part.value for part in parts if not isinstance(part.value, str))
            figures[name] = Figure(total, parts[0].measure)
    figures["count"] = Figure(len(group), "count")
    return evolve(
        first, figures=figures, things=tuple(dict.fromkeys(t for f in group for t in f.things)),
        marks=tuple(mark for finding in group for mark in finding.marks),
    )
