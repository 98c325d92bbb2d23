"""Named variants: the plan at an earlier or another turn, kept in the yard. Yard in, yard out.

A variant keeps what is drawn and planted. Site, own varieties, local rules, prices and marks of care are the
yard's own and the same for all its variants, so that variants are compared by the same facts.
"""

from __future__ import annotations

from typing import Any

from attrs import evolve

from yardplan.language import tr
from yardplan.yard import groups
from yardplan.yard.edits import EditError
from yardplan.yard.yard import PLAN_FIELDS, Variant, Yard


def plan_of(yard: Yard) -> Yard:
    """What is drawn and planted, with nothing of the site."""
    kept: dict[str, Any] = {name: getattr(yard, name) for name in PLAN_FIELDS}
    # Pictures under the plan are the yard's own: no group of a plan can hold them.
    kept["groups"] = groups.pruned(yard.groups, {picture.id for picture in yard.pictures})
    extra = {owner: fields for owner, fields in yard.extra.items() if owner.startswith("#")}
    return Yard(**kept, extra=extra)


def with_plan(yard: Yard, plan: Yard) -> Yard:
    """The yard with another plan drawn and planted in it; its variants stay."""
    drawn: dict[str, Any] = {name: getattr(plan, name) for name in PLAN_FIELDS}
    own = {owner: fields for owner, fields in yard.extra.items() if not owner.startswith("#")}
    things = {owner: fields for owner, fields in plan.extra.items() if owner.startswith("#")}
    return evolve(yard, **drawn, extra={**own, **things})


def find(yard: Yard, name: str) -> Variant | None:
    """The variant with that name, or None."""
    return next((variant for variant in yard.variants if variant.name == name), None)


def free_name(yard: Yard) -> str:
    """The first name not taken yet: Variant 1, Variant 2, ..."""
    taken = {variant.name for variant in yard.variants}
    number = 1
    while (name := tr("Variant {number}", number=number)) in taken:
        number += 1
    return name


def _fitting(yard: Yard, name: str) -> str:
    name = " ".join(name.split())
    if not name:
        raise EditError(tr("A variant needs a name"))
    if find(yard, name) is not None:
        raise EditError(tr("There is a variant called {name} already: choose another name", name=name))
    return name


def keep(yard: Yard, name: str, day: str) -> Yard:
    """Keep the plan as it is under a name, with the day (`YYYY-MM-DD`). Raises EditError."""
    variant = Variant(name=_fitting(yard, name), kept=day, plan=plan_of(yard))
    return evolve(yard, variants=(*yard.variants, variant))


def rename(yard: Yard, old: str, new: str) -> Yard:
    """Give a variant another name. Raises EditError when it is taken or empty."""
    if new.strip() == old:
        return yard
    name = _fitting(yard, new)
    return evolve(
        yard, variants=tuple(evolve(v, name=name) if v.name == old else v for v in yard.variants)
    )


def remove(yard: Yard, name: str) -> Yard:
    """Forget a variant."""
    return evolve(yard, variants=tuple(v for v in yard.variants if v.name != name))


def opened(yard: Yard, name: str) -> Yard:
    """The yard with the variant's plan in place of the present one. Raises EditError when there is none."""
    variant = find(yard, name)
    if variant is None:
        raise EditError(tr("There is no variant called {name}", name=name))
    return with_plan(yard, variant.plan)
