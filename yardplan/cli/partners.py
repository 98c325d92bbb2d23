"""`yardplan partners FILE`: what to plant so that everything sets fruit."""

from __future__ import annotations

import argparse
from typing import Any

from yardplan.arrange.partner_plan import plan_for
from yardplan.arrange.partner_room import fitting
from yardplan.arrange.partners import Addition, Plan, Suggestion, partners_for
from yardplan.arrange.ripening_beside import Ripening, ripening_beside
from yardplan.checks.pollination import outlooks_for
from yardplan.checks.survey import Survey, survey_of
from yardplan.cli.check import keys_of, yard_in
from yardplan.cli.output import CommandError, print_json, print_table
from yardplan.plants.fruit_set import FruitSet, fruit_set, fruit_sets
from yardplan.units import format_coarse
from yardplan.yard.planting import Bed, Planting, Row

_LISTED = 10


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser = subparsers.add_parser("partners", help="say what to plant so that everything sets fruit")
    parser.add_argument("file", help="a yard file (.yard)")
    parser.add_argument("--for", dest="thing", metavar="ID", help="partners for one plant, row or bed")
    parser.add_argument("--json", action="store_true", help="print JSON")


def run(args: argparse.Namespace) -> int:
    """Print partners for one thing, or what crop to expect and the fewest additions for the yard."""
    survey = survey_of(yard_in(args.file))
    if args.thing is not None:
        return _for_one(survey, args.thing, args.json)
    plan = plan_for(survey, fits=fitting(survey))
    if args.json:
        print_json(_plan_json(survey, plan))
    else:
        _print_expected(survey)
        _print_plan(survey, plan)
    return 0


def _for_one(survey: Survey, thing: str, json: bool) -> int:
    try:
        found = partners_for(survey, thing, limit=_LISTED, fits=fitting(survey, (thing,)))
        roomy = bool(found)
        # Where nothing has room, the finder still says what would serve: room can be made.
        found = found or partners_for(survey, thing, limit=_LISTED)
    except KeyError:
        yard = survey.yard
        known: list[Planting | Row | Bed] = [*yard.plantings, *yard.rows, *yard.beds]
        raise CommandError(f"{thing} is no plant of this yard; {keys_of(known)}") from None
    if json:
        print_json({
            "for": thing, "expected": _expected(survey, thing), "clear_ground": roomy,
            "partners": [
                suggestion_json(one) | _ripening_json(ripening_beside(survey, one.key, thing))
                for one in found
            ],
        })
        return 0
    told = fruit_set(outlooks_for(survey), thing)
    if told is not None:
        print(f"{told.name} ({thing}): {told.words}" + (f"; best here: {told.donor}." if told.donor else "."))
    if not found:
        print(f"No partner found for {thing}: it takes no pollen, or no variety here suits it.")
    else:
        _print_suggestions(survey, found, thing)
        if not roomy:
            print(f"\nNo clear ground near {thing} is left for any of them: make room, or graft a branch on.")
    return 0


def _expected(survey: Survey, thing: str) -> str | None:
    outlook = outlooks_for(survey)[thing]
    return None if outlook is None else outlook.expected


def suggestion_json(one: Suggestion) -> dict[str, Any]:
    """A suggestion as plain values; `within` metres."""
    return {
        "plant": str(one.key), "verdict": one.verdict, "set_in_turn": one.back, "crops_alone": one.alone,
        "set_by": one.set_by, "overlap_days": None if one.overlap is None else round(one.overlap, 1),
        "share": one.share, "within": one.near, "reasons": list(one.reasons),
    }


def _set_json(one: FruitSet) -> dict[str, Any]:
    """The crop to expect of one thing as plain values; `distance` metres."""
    return {
        "id": one.thing, "variety": one.name, "expected": one.expected, "sets_alone": one.alone.value,
        "best_partner": one.donor, "distance": None if one.distance is None else round(one.distance, 2),
        "overlap_days": None if one.overlap is None else round(one.overlap.shared, 1),
        "overlap": None if one.overlap is None else one.overlap.often,
        "share": one.share, "crossing_adds": one.gain or None, "why": one.why or None,
    }


def _print_expected(survey: Survey) -> None:
    """The crop to expect of everything planted that flowers for fruit."""
    found = fruit_sets(outlooks_for(survey))
    if not found:
        return
    units = survey.yard.site.units
    print_table(
        ("plant", "variety", "to expect", "best partner", "distance", "in bloom together", "pollen taken"),
        [(one.thing, one.name, one.words, one.donor or "-",
          "-" if one.distance is None else format_coarse(one.distance, units), one.days or "-",
          one.taken or "-") for one in found],
    )
    print()
    for one in found:
        if one.expected == "alone" and one.gain:
            print(f"{one.thing} {one.name} sets by itself; {one.gain}.")


def _plan_json(survey: Survey, plan: Plan) -> dict[str, Any]:
    return {
        "yard": survey.yard.site.name,
        "plants": [_set_json(one) for one in fruit_sets(outlooks_for(survey))],
        "lacking": list(plan.wanted),
        "additions": [
            suggestion_json(one.suggestion) | {
                "near": one.anchor, "about": [round(each, 2) for each in one.place],
                "serves": list(one.serves),
            }
            for one in plan.additions
        ],
        "unserved": list(plan.left),
    }


def _ripening_json(one: Ripening) -> dict[str, Any]:
    return {"ripens": list(one.dates) if one.dates else None, "ripens_beside": one.beside}


def _print_suggestions(survey: Survey, found: list[Suggestion], thing: str) -> None:
    print_table(
        ("variety", "sets it", "set in turn", "days together", "plant within"),
        [(str(one.key), one.verdict, one.back, "-" if one.overlap is None else f"{one.overlap:.0f}",
          format_coarse(one.near, survey.yard.site.units)) for one in found],
    )
    print()
    for one in found:
        words = (*one.reasons, ripening_beside(survey, one.key, thing).words)
        print(f"{one.key.cultivar}: {'; '.join(words)}.")


def _print_plan(survey: Survey, plan: Plan) -> None:
    if not plan.wanted:
        print("Everything that needs a partner has one.")
        return
    print(f"Without a sure partner: {', '.join(plan.wanted)}.")
    if plan.additions:
        print_table(
            ("add", "near", "within", "of"),
            [_cells(survey, one) for one in plan.additions],
        )
        print()
        for one in plan.additions:
            print(f"{one.suggestion.key.cultivar}: {'; '.join(one.suggestion.reasons)}.")
    if plan.left:
        print(f"No variety that suits this site serves them better than now: {', '.join(plan.left)}.")


def _cells(survey: Survey, one: Addition) -> tuple[str, str, str, str]:
    return (
        str(one.suggestion.key), one.anchor,
        format_coarse(one.suggestion.near, survey.yard.site.units), ", ".join(one.serves),
    )
