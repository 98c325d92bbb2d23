"""`yardplan soil FILE`: what each plant's soil wants, how much to add and when, as a table or as JSON."""

from __future__ import annotations

import argparse
import textwrap
from collections.abc import Callable, Mapping
from typing import Any

from yardplan.care.soil_work import SoilStep, soil_work
from yardplan.checks.rules import Rules
from yardplan.checks.soil_plan import Dressing, SoilPlan, instead_of, soil_plans
from yardplan.checks.soil_tables import Spread, acidifiers
from yardplan.checks.survey import Survey, survey_of
from yardplan.checks.wording import cited, names_of
from yardplan.cli.check import yard_in
from yardplan.cli.output import print_json
from yardplan.units import FOOT, POUND, System, format_area, format_length, format_volume, format_weight

_WIDTH = 100
_MATERIAL = {"acidify": "elemental sulfur", "lime": "ground limestone"}
_WORDS = {"fits": "the soil suits", "unknown": "the pH of the soil is not known: test it"}
_LIMY = "free lime that sulfur cannot change; choose a rootstock or kind that bears it"
_SOURCES = {"acidify": ("sulfur-table-a", "sulfur-table-b"), "lime": ("lime-table-l",)}
_FILL = "half peat, half composted pine bark or acid potting mix"


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser = subparsers.add_parser(
        "soil", help="amounts of sulfur and lime, by plant",
        description="Amounts of sulfur and lime by plant, split over time with tests between, and the bed or "
        "container that does where the ground cannot be mended.",
    )
    parser.add_argument("file", help="a yard file (.yard)")
    parser.add_argument("--json", action="store_true", help="print JSON")
    parser.add_argument("--units", choices=("imperial", "metric"), help="units (default: the yard's)")


def _spread(amount: Spread | None) -> dict[str, float] | None:
    return None if amount is None else {"low": amount.low, "high": amount.high}


def _pounds(amount: Spread | None) -> dict[str, float] | None:
    return None if amount is None else _spread(amount.times(1 / POUND))


def _dressing(dressing: Dressing) -> dict[str, Any]:
    return {
        "months_before_planting": dressing.months, "kg": _spread(dressing.amount),
        "lb": _pounds(dressing.amount),
    }


def _instead(plan: SoilPlan, rules: Rules) -> dict[str, Any] | None:
    bed = instead_of(plan, rules)
    if bed is None:
        return None
    return {
        "bed_area_m2": bed.area, "bed_depth_m": bed.depth, "fill_litres": bed.fill,
        "container_litres": bed.pot, "fill": _FILL,
    }


def as_json(plan: SoilPlan, name: str, survey: Survey) -> dict[str, Any]:
    """One plan as plain values: areas in m2, depths in m, weights in kg and lb, volumes in litres."""
    rooting = plan.rooting
    wanted, in_pot = rooting.crop.ph, rooting.home == "container"
    amount = None if in_pot else plan.amount
    way = _way(plan)
    return {
        "thing": rooting.id, "name": name, "crop": rooting.crop.id, "soil_of": rooting.home,
        "ph": rooting.soil.ph, "texture": rooting.soil.texture, "lime": rooting.soil.lime,
        "ph_wanted": None if wanted is None else {"low": wanted[0], "high": wanted[1]},
        "what": way, "material": _MATERIAL.get(way), "ph_goal": plan.goal,
        "area_m2": rooting.area, "depth_m": rooting.depth, "kg": _spread(amount), "lb": _pounds(amount),
        "kg_per_m2": None if in_pot else _spread(plan.per_area),
        "dressings": [] if in_pot else [_dressing(d) for d in plan.dressings],
        "instead": _instead(plan, survey.rules),
        "refill_litres": _pot_volume(plan, survey) if way == "refill" else None,
        "sources": list(_SOURCES.get(way, ())),
    }


def step_json(step: SoilStep) -> dict[str, Any]:
    """One step of the work in its order; `date` where the planting year is set."""
    kilograms = None if step.kilograms is None else Spread(*step.kilograms)
    return {
        "step": step.step, "things": list(step.things), "months_before_planting": step.months,
        "date": None if step.day is None else step.day.isoformat(), "kg": _spread(kilograms),
        "lb": _pounds(kilograms), "litres": step.litres, "source": step.source,
    }


def _way(plan: SoilPlan) -> str:
    """What is to be done: a container whose mix does not suit is filled anew."""
    return "refill" if plan.rooting.home == "container" and plan.way not in ("fits", "unknown") else plan.way


def _pot_volume(plan: SoilPlan, survey: Survey) -> float | None:
    plant = survey.plants.get(plan.rooting.id)
    return None if plant is None or plant.container is None else plant.container.volume


def _both(say: Callable[[float, System], str], value: float, system: System) -> str:
    """A measure in the reader's units with the other ones behind: `1.2 lb (0.54 kg)`."""
    other: System = "metric" if system == "imperial" else "imperial"
    return f"{say(value, system)} ({say(value, other)})"


def _range(amount: Spread, system: System) -> str:
    """An amount in both weights: `1.2 to 1.4 lb (0.54 to 0.64 kg)`."""
    other: System = "metric" if system == "imperial" else "imperial"

    def one(units: System) -> str:
        low, high = format_weight(amount.low, units), format_weight(amount.high, units)
        if low == high:
            return low
        number, unit = low.rsplit(" ", 1)
        return f"{number if high.endswith(f' {unit}') else low} to {high}"

    return f"{one(system)} ({one(other)})"


def _head(plan: SoilPlan, name: str) -> str:
    wanted, ph = plan.rooting.crop.ph, plan.rooting.soil.ph
    ph_text = "pH not known" if ph is None else f"pH {ph:.1f}"
    range_text = f", wants {wanted[0]:.1f} to {wanted[1]:.1f}" if wanted else ", no pH range known"
    return f"{name}: {ph_text}{range_text}: "


def _line(plan: SoilPlan, name: str, survey: Survey, system: System) -> str:
    head, rooting, way = _head(plan, name), plan.rooting, _way(plan)
    if way == "refill":
        volume = _pot_volume(plan, survey)
        fill = "" if volume is None else f" with {_both(format_volume, volume, system)}"
        low, high = rooting.crop.ph or (0.0, 14.0)
        return f"{head}fill the container anew{fill} of a mix of pH {low:.1f} to {high:.1f}"
    bed = instead_of(plan, survey.rules)
    if bed is not None:
        return (
            f"{head}this ground cannot be made acid. Build a raised bed of "
            f"{_both(format_area, bed.area, system)}, {_both(format_length, bed.depth, system)} deep: "
            f"{_both(format_volume, bed.fill, system)} of fill, {_FILL}; or use a container from "
            f"{_both(format_volume, bed.pot, system)} up with the same mix. Water with rain"
        )
    if plan.amount is None or plan.goal is None:
        return head + (_LIMY if way == "bed" else _WORDS[way])
    area, deep = _both(format_area, rooting.area, system), _both(format_length, rooting.depth, system)
    return (
        f"{head}{_range(plan.amount, system)} of {_MATERIAL[way]} on {area}, worked {deep} deep, "
        f"to reach pH {plan.goal:.1f}"
    )


def _when(step: SoilStep) -> str:
    months = "at planting" if not step.months else f"{step.months:g} months before planting"
    return months if step.day is None else f"by {step.day.day} {step.day:%B %Y} ({months})"


def _step_line(step: SoilStep, names: Mapping[str, str], system: System) -> str:
    parts = [step.title]
    if step.kilograms is not None:
        parts.append(_range(Spread(*step.kilograms), system))
    if step.litres is not None:
        parts.append(f"{_both(format_volume, step.litres, system)} of fill")
    things = ", ".join(names.get(thing, thing) for thing in step.things)
    return f"{_when(step)}: {': '.join(parts)} for {things}. {step.how(system)}."


def _steps(survey: Survey, names: Mapping[str, str], system: System) -> list[str]:
    """The work in its order, each further dressing after a new test."""
    steps = soil_work(survey)
    return ["", "In this order:", *(_step_line(step, names, system) for step in steps)] if steps else []


def _per_area(kg_per_m2: float, system: System) -> str:
    """An amount by area as gardeners give it, in both systems."""
    pounds = f"{format_weight(kg_per_m2 * 100 * FOOT**2, 'imperial')} per 100 sq ft"
    grams = f"{kg_per_m2 * 1000:.0f} g per m²"
    return f"{pounds} ({grams})" if system == "imperial" else f"{grams} ({pounds})"


def _notes(plans: list[SoilPlan], rules: Rules, system: System) -> list[str]:
    """What holds for every amount shown."""
    ways = {_way(plan) for plan in plans}
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
    sources = dict.fromkeys(source for plan in plans for source in _SOURCES.get(_way(plan), ()))
    notes += [f"Source: {cited(source)}" for source in sources]
    return notes


def run(args: argparse.Namespace) -> int:
    """Print what the soil wants; 0 when done. Raises CommandError for a file that cannot be read."""
    yard = yard_in(args.file)
    survey = survey_of(yard)
    plans, names = soil_plans(survey), names_of(survey)
    system: System = args.units or yard.site.units
    if args.json:
        print_json({
            "yard": yard.site.name, "soil": [as_json(p, names[p.rooting.id], survey) for p in plans],
            "steps": [step_json(step) for step in soil_work(survey)],
        })
        return 0
    print(f"{yard.site.name}: soil")
    lines = [_line(plan, names[plan.rooting.id], survey, system) for plan in plans]
    notes = _notes(plans, survey.rules, system)
    for line in (*lines, *_steps(survey, names, system), *([""] if notes else []), *notes):
        print(textwrap.fill(line, _WIDTH, subsequent_indent="  "))
    return 0
