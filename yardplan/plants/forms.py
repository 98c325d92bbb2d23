"""Finds the form a plant is grown in from what was named, its species or type, or what is usual."""

from __future__ import annotations

from collections.abc import Mapping

from yardplan.plants.crop import Crop, CropForm, Rootstock
from yardplan.plants.crop_rows import Training
from yardplan.plants.cultivar import Cultivar


def form_named(crop: Crop, name: str) -> CropForm | None:
    """The crop's form of that name; `espalier` finds the first whose name or training starts so."""
    wanted = name.strip().casefold()
    tests = (
        lambda form: form.form.casefold() == wanted,
        lambda form: form.crop.casefold() == wanted,
        lambda form: form.training.casefold() == wanted,
        lambda form: form.form.casefold().startswith(wanted),
        lambda form: wanted in form.form.casefold(),
    )
    return next((form for test in tests for form in crop.forms if test(form)), None) if wanted else None


def form_for(
    crop: Crop, cultivar: Cultivar | None, named: str | None, stock: Rootstock | None = None
) -> CropForm | None:
    """The form of a plant: the one named, else that of its stock's vigour, species, type or crop."""
    found = form_named(crop, named) if named else None
    if found is not None:
        return found
    if stock is not None:
        fits = [form for form in crop.forms if form.vigour == stock.vigour and not form.touching]
        if fits:
            return fits[0]
    if cultivar is not None:
        facts = f"{cultivar.species}; {cultivar.type}".casefold()
        for word, form in crop.usual_form_for:
            if word.casefold() in facts:
                return form_named(crop, form)
    return form_named(crop, crop.usual_form)


def training_for(
    training: Mapping[str, Training], form: CropForm | None, named: str | None
) -> Training | None:
    """The training that a named form asks for where it is not that of the size table's form.

    So `central leader` or `spindle` shapes a tree whose size its rootstock gives. None: leave as it is.
    """
    wanted = (named or "").strip().casefold()
    if not wanted or (form is not None and wanted in (form.form.casefold(), form.training.casefold())):
        return None
    if form is not None and (form.form.casefold().startswith(wanted) or wanted in form.form.casefold()):
        return None
    return next(
        (way for way in training.values() if wanted == way.name.casefold() or wanted in way.aliases), None
    )
