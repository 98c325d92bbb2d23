"""`yardplan soil FILE`: what each plant's soil wants, how much to add and when, as a table or as JSON."""

from __future__ import annotations

import argparse
import textwrap
from typing import Any

from yardplan.checks.rules import Rules
from yardplan.checks.soil_plan import Dressing, SoilPlan, acid_loving, soil_plans
from yardplan.checks.soil_tables import Spread, acidifiers
from yardplan.checks.survey import survey_of
from yardplan.checks.wording import cited, names_of
from yardplan.cli.check import yard_in
from yardplan.cli.output import print_json
from yardplan.units import FOOT, System, format_area, format_length, format_weight

_WIDTH = 100
_MATERIAL = {"acidify": "elemental sulfur", "lime": "ground limestone"}
_WORDS = {
    "fits": "the soil suits", "bed": "a raised bed or a container with acid soil; this ground cannot be "
    "mended",
    "unknown": "the pH of the soil is not known: test it",
}
_LIMY = "free lime that sulfur cannot change; choose a rootstock or kind that bears it"
_SOURCES = {"acidify": ("sulfur-table-a", "sulfur-table-b"), "lime": ("lime-table-l",)}


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser = subparsers.add_parser("soil", help="amounts of sulfur and lime, by plant")
    parser.add_argument("file", help="a yard file (.yard)")
    parser.add_argument("--json", action="store_true", help="print JSON")
    parser.add_argument("--units", choices=("imperial", "metric"), help="units (default: the yard's)")


def _spread(amount: Spread | None) -> dict[str, float] | None:
    return None if amount is None else {"low": amount.low, "high": amount.high}


def _dressing(dressing: Dressing) -> dict[str, Any]:
    return {"months_before_planting": dressing.months, "kg": _spread(dressing.amount)}


def as_json(plan: SoilPlan, name: str) -> dict[str, Any]:
    """One plan as plain values: areas in m2, depths in m, weights in kg."""
    rooting = plan.rooting
    wanted = rooting.crop.ph
    return {
        "thing": rooting.id, "name": name, "crop": rooting.crop.id, "soil_of": rooting.home,
        "ph": rooting.soil.ph, "texture": rooting.soil.texture, "lime": rooting.soil.lime,
        "ph_wanted": None if wanted is None else {"low": wanted[0], "high": wanted[1]},
        "what": plan.way, "material": _MATERIAL.get(plan.way), "ph_goal": plan.goal,
        "area_m2": rooting.area, "depth_m": rooting.depth, "kg": _spread(plan.amount),
        "kg_per_m2": _spread(plan.per_area), "dressings": [_dressing(d) for d in plan.dressings],
        "sources": list(_SOURCES.get(plan.way, ())),
    }


def _range(amount: Spread, system: System) -> str:
    low, high = format_weight(amount.low, system), format_weight(amount.high, system)
    return low if low == high else f"{low} to {high}"


def _line(plan: SoilPlan, name: str, system: System) -> str:
    rooting = plan.rooting
    wanted = rooting.crop.ph
    ph = "pH not known" if rooting.soil.ph is None else f"pH {rooting.soil.ph:.1f}"
    range_text = f", wants {wanted[0]:.1f} to {wanted[1]:.1f}" if wanted else ", no pH range known"
    head = f"{name}: {ph}{range_text}: "
    if plan.amount is None or plan.goal is None:
        mild = plan.way == "bed" and not acid_loving(rooting.crop)
        return head + (_LIMY if mild else _WORDS[plan.way])
    steps = "; ".join(
        f"{_range(d.amount, system)} {d.months:g} months before planting" for d in plan.dressings
    )
    treated = f"{format_area(rooting.area, system)}, worked {format_length(rooting.depth, system)} deep"
    return (
        f"{head}{_range(plan.amount, system)} of {_MATERIAL[plan.way]} on {treated}, "
        f"to reach pH {plan.goal:.1f} ({steps})"
    )


def _per_area(kg_per_m2: float, system: System) -> str:
    """An amount by area as gardeners give it."""
    if system == "imperial":
        return f"{format_weight(kg_per_m2 * 100 * FOOT**2, system)} per 100 sq ft"
    return f"{kg_per_m2 * 1000:.0f} g per m²"


def _notes(plans: list[SoilPlan], rules: Rules, system: System) -> list[str]:
    """What holds for every amount shown."""
    ways = {plan.way for plan in plans}
    notes = []
    if "acidify" in ways:
        others = ", ".join(
            f"{a.material} {a.times_sulfur:g} times" for a in acidifiers()[1:] if a.food_crops
        )
        notes.append(
            "Sulfur needs warm, moist soil and months. Test again before each further dressing and every "
            "year. "
            f"In its place, by weight: {others}. Aluminum sulfate is not for fruit."
        )
        most = _per_area(rules.value("sulfur-standing"), system)
        notes.append(f"Around plants that stand already: at most {most} of sulfur a year, on the surface.")
    if "lime" in ways:
        notes.append("Limestone: divide by its calcium carbonate equivalent where that is under 100 percent.")
    sources = dict.fromkeys(source for plan in plans for source in _SOURCES.get(plan.way, ()))
    notes += [f"Source: {cited(source)}" for source in sources]
    return notes


def run(args: argparse.Namespace) -> int:
    """Print what the soil wants; 0 when done. Raises CommandError for a file that cannot be read."""
    yard = yard_in(args.file)
    survey = survey_of(yard)
    plans, names = soil_plans(survey), names_of(survey)
    system: System = args.units or yard.site.units
    if args.json:
        print_json({"yard": yard.site.name, "soil": [as_json(p, names[p.rooting.id]) for p in plans]})
        return 0
    print(f"{yard.site.name}: soil")
    lines = [_line(plan, names[plan.rooting.id], system) for plan in plans]
    for line in (*lines, *_notes(plans, survey.rules, system)):
        print(textwrap.fill(line, _WIDTH, subsequent_indent="  "))
    return 0
