"""Words made of findings, at the edge: figures in the reader's units, keys turned into names.

A wording's text holds `{name}` for the figure of that name, `{a}`, `{b}` for the first and second thing,
`{things}` for all of them. A part in square brackets is left out when a figure in it is missing, so that
`[, {hours_2} from {by_2}]` appears only where there is a second one.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Mapping
from functools import cache

from attrs import frozen

from yardplan import units as measures
from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Severity
from yardplan.checks.rules import RuleError, shipped_figures, shipped_rules
from yardplan.checks.survey import Survey
from yardplan.language import all_of, day_month, decimals, later, tr, tr_n
from yardplan.plants.cultivar import MEMORY
from yardplan.plants.sources import written_out
from yardplan.units import System
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Thing, Yard

_HOLE = re.compile(r"\{(\w+)\}")
_PART = re.compile(r"\[([^\[\]]*)\]")


@frozen
class Said:
    """A finding in words: a short title, what is wrong with its figure, what clears it, by which rule.

    `stake` names its severity: law, safety, damage, care or growth.
    """

    title: str
    message: str
    clears: str
    source_text: str
    stake: str = ""


def _count(value: float) -> str:
    return f"{value:.0f}" if abs(value - round(value)) < 1e-9 else decimals(f"{value:.1f}")


def _date(value: float | str) -> str:
    """A date as `24 April` from `MM-DD`."""
    month, day = map(int, str(value).split("-")[-2:])
    return day_month(month, day)


_PLAIN: dict[str, Callable[[float], str]] = {
    "hours": lambda value: tr("{hours} h", hours=decimals(f"{value:.1f}")),
    "share": lambda value: f"{value * 100:.0f} %",
    "count": _count,
    "days": lambda value: tr_n("{n} day", "{n} days", round(value)),
    "ph": lambda value: decimals(f"{value:.1f}"),
    "year": lambda value: f"{value:.0f}",
}
_BY_SYSTEM: dict[str, Callable[[float, System], str]] = {
    "length": measures.format_coarse,
    "area": measures.format_area,
    "temperature": measures.format_temperature,
    "temperature difference": measures.format_temperature_difference,
    "weight": measures.format_weight,
    "volume": measures.format_volume,
}


def figure_text(figure: Figure, names: Mapping[str, str], units: System) -> str:
    """One figure in words."""
    value, measure = figure.value, figure.measure
    if measure == "thing":
        return names.get(str(value), str(value))
    if measure == "date":
        return _date(value)
    if measure == "text" or isinstance(value, str):
        return tr(str(value))
    if measure in _BY_SYSTEM:
        return _BY_SYSTEM[measure](value, units)
    return _PLAIN[measure](value)


def _filled(text: str, holes: Mapping[str, str]) -> str:
    """The text with its holes filled, parts in brackets dropped where a figure is missing."""

    def part(match: re.Match[str]) -> str:
        return match[1] if all(name in holes for name in _HOLE.findall(match[1])) else ""

    words = _HOLE.sub(lambda match: holes.get(match[1], match[0]), _PART.sub(part, text))
    return words[:1].upper() + words[1:]


def _holes(
    finding: Finding, names: Mapping[str, str], units: System, wanted: Collection[str] | None = None
) -> dict[str, str]:
    """What stands in the holes; `wanted`: only in those of these names."""
    things = [names.get(thing, thing) for thing in finding.things]
    holes = dict(zip("abcdef", things, strict=False))
    if wanted is None or "things" in wanted:
        holes["things"] = all_of(things)
    holes |= {
        name: figure_text(figure, names, units) for name, figure in finding.figures.items()
        if wanted is None or name in wanted
    }
    return holes


@cache
def checks_by_name() -> Mapping[str, Check]:
    """The checks of the house by name."""
    from yardplan.checks.run import CHECKS

    return {check.name: check for check in CHECKS}


def wording_of(finding: Finding) -> Wording:
    """The wording of a finding's kind. Raises KeyError for a kind that its check does not word."""
    return checks_by_name()[finding.check].wording[finding.kind]


def source_text(finding: Finding) -> str:
    """The rule behind a finding and where it comes from, with a word where the yard's own figure is used."""
    try:
        rule = shipped_rules()[finding.source]
    except KeyError:
        return cited(finding.source)
    text = f"{tr(rule.note)}: {cited(rule.source)}" if rule.note else cited(rule.source)
    if "local_rule" in finding.figures:
        text = tr(
            "Local figure of this yard for {rule} (ours: {value} {unit}). {source}", rule=rule.name,
            value=decimals(f"{rule.value:g}"), unit=tr(rule.unit), source=text,
        )
    return text


def cited(source_id: str) -> str:
    """A source of the bibliography in words, or the id itself when it is not listed."""
    if source_id == MEMORY:
        return tr("from memory, not confirmed by a source")
    return written_out((source_id,))[0]


#: The severities as they are shown.
STAKE_WORDS: Mapping[Severity, str] = {
    "law": later("law"), "safety": later("safety"), "damage": later("damage"), "care": later("care"),
    "growth": later("growth"),
}


def severity_of(finding: Finding) -> Severity:
    """What is at stake: by the rule behind the finding, else as its check says."""
    rule = shipped_figures().get(finding.source)
    if rule is not None:
        return rule.severity
    check = checks_by_name()[finding.check]
    return check.severities.get(finding.kind, check.severity)


def _worded(finding: Finding) -> Wording:
    """As `wording_of`, with an error that names the kind."""
    try:
        return wording_of(finding)
    except KeyError:
        raise RuleError(f"no words for a finding {finding.check}/{finding.kind}") from None


def say(finding: Finding, names: Mapping[str, str], units: System = "metric") -> Said:
    """Put a finding into words. `names`: see `names_of`. Raises RuleError when the kind has no wording."""
    wording = _worded(finding)
    holes = _holes(finding, names, units)
    return Said(
        _filled(tr(wording.title) or finding.kind, holes), _filled(tr(wording.message), holes),
        _filled(tr(wording.clears), holes), source_text(finding), tr(STAKE_WORDS[severity_of(finding)]),
    )


def title_of(finding: Finding, names: Mapping[str, str], units: System = "metric") -> str:
    """The title alone, as `say` gives it: what stands on the plan while a thing is dragged."""
    text = tr(_worded(finding).title) or finding.kind
    return _filled(text, _holes(finding, names, units, _HOLE.findall(text)))


def _name(thing: Thing) -> str:
    """What a thing is called: `Enterprise (A1)`, `Garage`, `black walnut (T1)`."""
    key = getattr(thing, "plant", None)
    if isinstance(key, PlantKey):
        return f"{key.cultivar} ({thing.id})"
    own = getattr(thing, "name", "") or getattr(thing, "cultivar", None)
    name = own or tr(getattr(thing, "kind", ""))
    return f"{name} ({thing.id})" if name else thing.id


def names_of(survey: Survey | Yard) -> dict[str, str]:
    """Names of all things of a yard by id; the lot line is `lot`."""
    yard = survey.yard if isinstance(survey, Survey) else survey
    names = {thing.id: _name(thing) for thing in yard.things()}
    names["lot"] = tr("lot line")
    return names
