"""How wide the ways through the yard are to be: chosen by what goes on them, kept as a local figure."""

from __future__ import annotations

from collections.abc import Mapping

from yardplan.checks.rules import Rules, shipped_rules
from yardplan.checks.ways import choices
from yardplan.language import later, tr
from yardplan.units import System, format_length
from yardplan.window.panels.field_plans import Choices, FieldPlan
from yardplan.yard.yard import Yard

RULE = "access-way"
WAY = FieldPlan(
    name=later("Way width"), path=f"rule:{RULE}", sort="way",
    tip=later("A way this wide is to lead from the gate to every plant and bed; what it does not reach is "
              "listed below"),
)
#: Widths that a tape cannot tell apart, metres.
_SAME = 0.005


def way_choices(rules: Rules, units: System) -> Choices:
    """Widths in metres with what goes on them; a figure of one's own as it stands."""
    found = [(round(width, 4), tr("{what}, {width}", width=format_length(width, units), what=tr(what)))
             for what, width in choices(rules)]
    now = way_of(rules)
    if now not in [width for width, _ in found]:
        found.append((now, tr("your own figure, {width}", width=format_length(now, units))))
    return tuple(sorted(found))


def way_of(rules: Rules) -> float:
    """The width in force, metres; that of a choice where it is the same to a tape."""
    now = rules.value(RULE)
    near = [width for _, width in choices(rules) if abs(width - now) < _SAME]
    return round(near[0] if near else now, 4)


def with_way(rules: Mapping[str, float], width: float) -> dict[str, float]:
    """The yard's own figures with ways of this width, metres; ours needs no figure of its own."""
    rule = shipped_rules()[RULE]
    kept = {name: value for name, value in rules.items() if name != RULE}
    figure = round(width / rule.in_base(1.0), 3)
    return kept if figure == rule.value else {**kept, RULE: rule.checked(figure)}


def way_shape(yard: Yard) -> tuple[tuple[str, float], ...]:
    """What the choices hang on: the yard's own figures of ways."""
    return tuple(sorted((name, value) for name, value in yard.rules.items() if name.startswith("access-")))
