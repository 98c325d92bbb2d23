"""Beds that have a crop of their own: no other plant stands in them, few crowns over them (bed-cover)."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely

from yardplan.checks.check import Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.groups import is_member
from yardplan.checks.overlaps import NO_ROOM, TOUCH
from yardplan.checks.shapes import area_of
from yardplan.checks.survey import Survey
from yardplan.plants.stand import Standing, StandingBed

NAME = "spacing"


def holds_own(bed: StandingBed | None, plant: Standing) -> bool:
    """True for a bed planted with another kind than this plant, whose ground is therefore taken.

    Strawberries bear the shade of a tree beside them, but not its hole among them.
    """
    if bed is None or bed.bed.plant is None:
        return False
    return plant.key is None or plant.key.crop.casefold() != bed.bed.plant.crop.casefold()


def _in_beds(survey: Survey) -> Iterator[Finding]:
    """Plants in the ground of a bed that is planted with something else."""
    layout = survey.layout
    for column in layout.columns("bed"):
        feature = layout.features[column]
        bed = survey.beds.get(feature.id)
        stems = np.nonzero(layout.planted & ~layout.potted & (layout.gaps[:, column] <= 0))[0]
        for i in stems:
            plant = layout.plants[i]
            if bed is None or not holds_own(bed, plant):
                continue
            near = layout.nearest(int(i), column)
            shown = {
                "short": Figure(max(-float(layout.gaps[i, column]), TOUCH), "length"),
                "direction": Figure(survey.direction(plant.place, near), "text"),
                "crop": Figure(crop_words(bed), "text"), "mover": Figure(plant.id, "thing"),
            }
            yield survey.finding(
                NAME, "in_bed", Weight.CONFLICT, (plant.id, bed.id), "bed-cover", shown,
                (Mark((plant.place, near), "line"),),
            )


def crop_words(bed: StandingBed) -> str:
    """What a bed is planted with, in words."""
    return bed.crop.name if bed.crop is not None else bed.bed.plant.crop if bed.bed.plant else ""


def _over_beds(survey: Survey) -> Iterator[Finding]:
    """Crowns at full size over beds with a crop of their own."""
    layout = survey.layout
    for column in layout.columns("bed"):
        bed = survey.beds.get(layout.features[column].id)
        if bed is None or bed.bed.plant is None or is_member("grows under trees", bed):
            continue
        outline = area_of(bed.bed.outline)
        for plant in np.nonzero(layout.planted & (layout.gaps[:, column] < layout.reach - TOUCH))[0]:
            crown = shapely.Point(layout.xy[plant]).buffer(layout.reach[plant])
            share = outline.intersection(crown).area / max(outline.area, NO_ROOM)
            if layout.gaps[plant, column] <= 0 and not layout.potted[plant] and holds_own(
                bed, layout.plants[plant]
            ):
                continue
            if share > survey.rules.value("bed-cover"):
                figures = {"share": Figure(share, "share")}
                yield survey.finding(
                    NAME, "over_bed", Weight.CAUTION, (layout.plants[plant].id, bed.id), "bed-cover",
                    figures, (Mark((layout.plants[plant].place,)),),
                )


def run(survey: Survey) -> list[Finding]:
    """Findings on plants in beds of another kind, and on beds under crowns."""
    return [*_in_beds(survey), *_over_beds(survey)]


WORDING = {
    "in_bed": Wording(
        "{a} stands in the bed {b}, which is planted with {crop}.",
        "Move {a} {short} to the {direction}, out of the bed, or plant the bed with something else.",
        "in a bed of {crop}",
    ),
    "over_bed": Wording(
        "At full size {a} covers {share} of the bed {b}.",
        "Move the bed or the tree apart, or plant something there that bears shade.",
        "{share} of the bed under the crown",
    ),
}
