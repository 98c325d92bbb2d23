"""Plants that stand nearer to something than wanted: finding them and putting figures to it."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from yardplan.checks.finding import Figure, Mark
from yardplan.checks.layout import Feature
from yardplan.checks.lines import Array
from yardplan.checks.survey import Survey
from yardplan.plants.stand import Standing

Mask = NDArray[np.bool_]


@frozen
class Short:
    """A plant nearer to a feature than wanted; `gap` is negative inside an area. Metres."""

    index: int
    column: int
    plant: Standing
    feature: Feature
    gap: float
    wanted: float

    @property
    def things(self) -> tuple[str, str]:
        """The plant and what it is too near to."""
        return self.plant.id, self.feature.id


NEVER = -np.inf


@frozen(eq=False)
class Limit:
    """Where one rule about one feature makes conflicts.

    A stem nearer to the feature than `under` is one (signed: negative inside an area; `NEVER` for plants the
    rule does not speak of). `wanted` the distance asked for. One figure a plant of the layout, metres.
    """

    kind: str
    under: Array
    wanted: Array


def limit(survey: Survey, kind: str, under: Array | float, wanted: Array | float, mask: Mask) -> Limit:
    """The limit of the plants of a mask; within what a tape can tell the distance wanted counts as kept."""
    asked = np.broadcast_to(np.asarray(wanted, dtype=float), mask.shape)
    kept = asked - survey.rules.value("clearance-tolerance")
    return Limit(kind, np.where(mask, np.minimum(under, kept), NEVER), asked)


def nearer(survey: Survey, column: int, wanted: Array | float, mask: Mask) -> Iterator[Short]:
    """Plants of the mask that stand nearer to a feature than wanted (one figure, or one a plant).

    Within what a tape can tell (rule clearance-tolerance) the distance counts as kept.
    """
    layout = survey.layout
    limits = np.broadcast_to(np.asarray(wanted, dtype=float), layout.reach.shape)
    slack = survey.rules.value("clearance-tolerance")
    for i in np.nonzero(mask & (layout.gaps[:, column] < limits - slack))[0]:
        yield Short(
            int(i), column, layout.plants[i], layout.features[column],
            float(layout.gaps[i, column]), float(limits[i]),
        )


def figures(survey: Survey, short: Short) -> dict[str, Figure]:
    """Distance, wanted, what is missing and the way to move."""
    near = survey.layout.nearest(short.index, short.column)
    place = short.plant.place
    ends = (place, near) if short.gap < 0 else (near, place)
    return {
        "distance": Figure(max(short.gap, 0.0), "length"), "wanted": Figure(short.wanted, "length"),
        "short": Figure(short.wanted - short.gap, "length"),
        "direction": Figure(survey.direction(*ends), "text"),
    }


def marks(survey: Survey, short: Short) -> tuple[Mark, ...]:
    """The line from the stem to the nearest point of the feature."""
    return (Mark((short.plant.place, survey.layout.nearest(short.index, short.column)), "line"),)


def in_ground(survey: Survey) -> Mask:
    """Planted plants that stand in the ground, not in containers."""
    mask: Mask = survey.layout.planted & ~survey.layout.potted
    return mask


def outside(survey: Survey, column: int) -> Mask:
    """Plants whose stems stand outside a feature; one inside has a finding of its own (`inside`).

    A stem on the edge, within what a tape can tell, counts as outside.
    """
    edge = limit(survey, "inside", 0.0, 0.0, in_ground(survey)).under
    return np.asarray(survey.layout.gaps[:, column] >= edge, dtype=bool)


def trees(survey: Survey) -> Mask:
    """Planted plants in the ground that grow to a tree: taller than a bush, not trained flat."""
    layout = survey.layout
    mask: Mask = in_ground(survey) & ~layout.flat & (layout.height >= survey.rules.value("bush-height"))
    return mask
