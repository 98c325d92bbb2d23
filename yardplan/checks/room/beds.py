"""Crowns over beds that have a crop of their own (rule bed-cover)."""

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

NAME = "spacing"


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
            if share > survey.rules.value("bed-cover"):
                figures = {"share": Figure(share, "share")}
                yield survey.finding(
                    NAME, "over_bed", Weight.CAUTION, (layout.plants[plant].id, bed.id), "bed-cover",
                    figures, (Mark((layout.plants[plant].place,)),),
                )


def run(survey: Survey) -> list[Finding]:
    """Findings on beds under crowns."""
    return list(_over_beds(survey))


WORDING = {
    "over_bed": Wording(
        "At full size {a} covers {share} of the bed {b}.",
        "Move the bed or the tree apart, or plant something there that bears shade.",
        "{share} of the bed under the crown",
    ),
}
