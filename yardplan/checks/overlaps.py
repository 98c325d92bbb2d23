"""What the spacing checks share: classes of overlap, and a form's published distances."""

from __future__ import annotations

from yardplan.checks.finding import Weight
from yardplan.checks.survey import Survey
from yardplan.plants.crop import CropForm
from yardplan.plants.stand import Standing, StandingRow

#: A millimetre: nearer than that to a limit counts as met.
TOUCH = 1e-3
NO_ROOM = 1e-6


def form_of(plant: Standing | StandingRow) -> CropForm | None:
    """The published figures of a plant's form, where the catalogue has them."""
    if plant.crop is None:
        return None
    thing = plant.row if isinstance(plant, StandingRow) else plant.thing
    name = getattr(thing, "form", None) or plant.crop.usual_form
    return next((form for form in plant.crop.forms if form.form == name), None)


def weight_of(survey: Survey, overlap: float) -> tuple[Weight, str]:
    """The class of an overlap and the rule that sets it."""
    if overlap > survey.rules.value("spacing-too-close"):
        return Weight.CONFLICT, "spacing-too-close"
    if overlap > survey.rules.value("spacing-crowded"):
        return Weight.CAUTION, "spacing-crowded"
    return Weight.ADVICE, "spacing-advice"
