"""What the soil of each plant wants: its pH against the crop's range, and what to add, how much and when."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Literal

import numpy as np
from attrs import evolve, frozen

from yardplan.checks.groups import member
from yardplan.checks.rules import Rules
from yardplan.checks.shapes import area_of, has_area, line_of
from yardplan.checks.soil_tables import LIME_GOAL, SULFUR_FLOOR, TABLE_DEPTH, Spread, lime, sulfur
from yardplan.checks.survey import Survey
from yardplan.plants.crop import Crop
from yardplan.plants.stand import Standing
from yardplan.yard.ground import Outline
from yardplan.yard.planting import Bed
from yardplan.yard.site import Soil

Way = Literal["fits", "acidify", "lime", "bed", "unknown"]


@frozen(kw_only=True)
class Rooting:
    """One plant, row or bed: its crop, the soil it roots in, the ground to treat and where that is.

    `area` m2, `depth` m worked; `home` says whose soil it is: ground, bed or container.
    """

    id: str
    crop: Crop
    soil: Soil
    area: float
    depth: float
    home: Literal["ground", "bed", "container"]
    outline: Outline


@frozen(kw_only=True)
class Dressing:
    """One application: kg of the material, `months` before planting."""

    months: float
    amount: Spread


@frozen(kw_only=True)
class SoilPlan:
    """What to do for one rooting. `amount` kg in all, `per_area` kg a square metre.

    `way`: it fits, acidify with sulfur, lime, build a raised bed or use a container, or pH unknown.
    """

    rooting: Rooting
    way: Way
    gap: float = 0.0
    goal: float | None = None
    per_area: Spread | None = None
    amount: Spread | None = None
    dressings: tuple[Dressing, ...] = ()


def _within(soil: Soil | None, around: Soil) -> Soil:
    """A bed's or container's soil, with what it does not say taken from around it."""
    if soil is None:
        return around
    fields = ("ph", "texture", "drainage")
    known = {name: value for name in fields if (value := getattr(soil, name)) is not None}
    free_lime = soil.lime if soil.lime is not None or soil.ph is not None else around.lime
    return evolve(around, **known, lime=free_lime)


def beds_of(survey: Survey) -> dict[str, Bed]:
    """The bed that each plant stands in, by the plant's id; plants outside beds are left out."""
    layout = survey.layout
    found: dict[str, Bed] = {}
    for column in layout.columns("bed"):
        bed = layout.features[column].thing
        if isinstance(bed, Bed):
            inside = np.nonzero(layout.gaps[:, column] <= 0)[0]
            found |= {layout.plants[i].id: bed for i in inside}
    return found


def plant_rooting(survey: Survey, plant: Standing, crop: Crop, bed: Bed | None) -> Rooting:
    """Where a plant roots if it stands in that bed, or in the open ground, or in its container."""
    ground = survey.yard.site.soil
    share, least = survey.rules.value("root-area-share"), survey.rules.value("root-area-least")
    area = max(share * math.pi * plant.mature.spread**2 / 4, least)
    spot = (plant.place,)
    if plant.container is not None:
        pot = plant.container
        return Rooting(
            id=plant.id, crop=crop, soil=pot.soil or Soil(), area=math.pi * pot.diameter**2 / 4,
            depth=TABLE_DEPTH, home="container", outline=spot,
        )
    if bed is not None:
        return Rooting(
            id=plant.id, crop=crop, soil=_within(bed.soil, ground), area=area, depth=bed.depth, home="bed",
            outline=spot,
        )
    return Rooting(
        id=plant.id, crop=crop, soil=ground, area=area, depth=TABLE_DEPTH, home="ground", outline=spot
    )


def rootings(survey: Survey) -> Iterator[Rooting]:
    """Every planted thing whose crop is known, with its soil."""
    beds = beds_of(survey)
    for plant in survey.stand.plants:
        if plant.planted and plant.crop is not None:
            yield plant_rooting(survey, plant, plant.crop, beds.get(plant.id))
    for row in survey.stand.rows:
        if row.crop is not None:
            line = line_of(row.row.line)
            width = max(row.mature.spread, survey.rules.value("bush-wall-gap"))
            yield Rooting(
                id=row.id, crop=row.crop, soil=survey.yard.site.soil, area=line.length * width,
                depth=TABLE_DEPTH, home="ground", outline=row.row.line,
            )
    for bed in survey.stand.beds:
        if bed.crop is not None and has_area(bed.bed.outline):
            yield Rooting(
                id=bed.id, crop=bed.crop, soil=_within(bed.bed.soil, survey.yard.site.soil),
                area=area_of(bed.bed.outline).area, depth=bed.bed.depth, home="bed",
                outline=bed.bed.outline,
            )


def acid_loving(crop: Crop) -> bool:
    """True for blueberries and their like, which need acid soil."""
    return member("acid-loving", crop.id) is not None


def limy(soil: Soil, rules: Rules) -> bool:
    """True where free lime makes acidifying pointless."""
    return soil.lime is True or (soil.ph is not None and soil.ph >= rules.value("ph-limy"))


def plan_for(rooting: Rooting, rules: Rules) -> SoilPlan:
    """What one rooting needs."""
    wanted, ph = rooting.crop.ph, rooting.soil.ph
    if wanted is None:
        return SoilPlan(rooting=rooting, way="fits")
    if acid_loving(rooting.crop) and limy(rooting.soil, rules):
        gap = max((ph or wanted[1]) - wanted[1], 0.0)
        return SoilPlan(rooting=rooting, way="bed", gap=gap, goal=_middle(wanted))
    if ph is None:
        return SoilPlan(rooting=rooting, way="unknown")
    if ph > wanted[1] + rules.value("ph-margin"):
        return _too_alkaline(rooting, ph, wanted, rules)
    if ph < wanted[0] - rules.value("ph-margin"):
        return _too_acid(rooting, ph, wanted, rules)
    return SoilPlan(rooting=rooting, way="fits")


def _middle(wanted: tuple[float, float]) -> float:
    return sum(wanted) / 2


def _too_alkaline(rooting: Rooting, ph: float, wanted: tuple[float, float], rules: Rules) -> SoilPlan:
    """Sulfur down to the middle of an acid crop's range, or to the upper end of another's."""
    acid = acid_loving(rooting.crop)
    goal = max(_middle(wanted) if acid else wanted[1], SULFUR_FLOOR)
    plan = SoilPlan(rooting=rooting, way="bed", gap=ph - wanted[1], goal=goal)
    if limy(rooting.soil, rules) or (acid and ph >= rules.value("ph-no-acidify")):
        return plan
    per_area = sulfur(rooting.soil.texture, ph, goal, rooting.depth)
    amount = per_area.times(rooting.area)
    return evolve(
        plan, way="acidify", per_area=per_area, amount=amount,
        dressings=_sulfur_dressings(per_area.high * TABLE_DEPTH / rooting.depth, amount, rules),
    )


def _sulfur_dressings(per_area: float, amount: Spread, rules: Rules) -> tuple[Dressing, ...]:
    """One dressing a year before planting, or two thirds, a new test, and the rest."""
    lead, retest = rules.value("sulfur-lead"), rules.value("sulfur-retest")
    if per_area <= rules.value("sulfur-one-dose"):
        return (Dressing(months=lead, amount=amount),)
    first = rules.value("sulfur-first-share")
    return (
        Dressing(months=lead, amount=amount.times(first)),
        Dressing(months=max(lead - retest, 0.0), amount=amount.times(1 - first)),
    )


def _too_acid(rooting: Rooting, ph: float, wanted: tuple[float, float], rules: Rules) -> SoilPlan:
    """Limestone up to the middle of the crop's range, at most to the table's 6.5."""
    goal = min(_middle(wanted), LIME_GOAL)
    per_area = lime(rooting.soil.texture, ph, goal, rooting.depth)
    amount = per_area.times(rooting.area)
    dense = per_area.high * TABLE_DEPTH / rooting.depth
    number = 1 + sum(dense > rules.value(limit) for limit in ("lime-one-dose", "lime-two-doses"))
    lead, between = rules.value("lime-lead"), rules.value("lime-between")
    dressings = tuple(
        Dressing(months=lead + between * (number - 1 - i), amount=amount.times(1 / number))
        for i in range(number)
    )
    return SoilPlan(
        rooting=rooting, way="lime", gap=wanted[0] - ph, goal=goal, per_area=per_area, amount=amount,
        dressings=dressings,
    )


@frozen(kw_only=True)
class Instead:
    """What does where ground is not worth making acid: a raised bed or a container, with its fill.

    `area` m2 and `depth` m of the bed, `fill` litres; `pot` least litres of a container.
    """

    area: float
    depth: float
    fill: float
    pot: float


def instead_of(plan: SoilPlan, rules: Rules) -> Instead | None:
    """The bed or container for a plant that needs acid soil and will not get it from this ground."""
    if plan.way != "bed" or plan.rooting.home == "container" or not acid_loving(plan.rooting.crop):
        return None
    depth = rules.value("raised-bed-depth")
    area = max(plan.rooting.area, rules.value("raised-bed-width") ** 2)
    return Instead(
        area=area, depth=depth, fill=area * depth * 1000.0, pot=rules.value("container-blueberry")
    )


def soil_plans(survey: Survey) -> list[SoilPlan]:
    """What the soil of every planted thing needs, in the yard's order."""
    return [plan_for(rooting, survey.rules) for rooting in rootings(survey)]
