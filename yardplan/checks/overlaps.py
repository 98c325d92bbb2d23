"""What the spacing checks share: classes of overlap, and a form's published distances."""

from __future__ import annotations

from yardplan.checks.finding import Weight
from yardplan.checks.survey import Survey
from yardplan.plants.crop import CropForm
from yardplan.plants.forms import form_for
from yardplan.plants.stand import Standing, StandingBed, StandingRow

#: A millimetre: nearer than that to a limit counts as met.
TOUCH = 1e-3
NO_ROOM = 1e-6


def form_of(plant: Standing | StandingRow | StandingBed) -> CropForm | None:
    """The published figures of a plant's form, where the catalogue has them."""
    crop = plant.crop
    if crop is None:
        return None
    if isinstance(plant, Standing):
        thing: object = plant.thing
    else:
        thing = plant.row if isinstance(plant, StandingRow) else plant.bed
    name = getattr(thing, "rootstock", None)
    stock = crop.rootstock(name) if name else None
    return form_for(crop, plant.cultivar, getattr(thing, "form", None), stock)


def closed_share(survey: Survey) -> float:
    """Share of a wanted distance below which two crowns are a conflict, see `weight_of`."""
    value = survey.rules.value
    return 1.0 - max(value("spacing-too-close"), value("spacing-advice"))


def weight_of(survey: Survey, overlap: float) -> tuple[Weight, str]:
    """The class of an overlap and the rule that sets it."""
    if overlap > survey.rules.value("spacing-too-close"):
        return Weight.CONFLICT, "spacing-too-close"
    if overlap > survey.rules.value("spacing-crowded"):
        return Weight.CAUTION, "spacing-crowded"
    return Weight.ADVICE, "spacing-advice"
