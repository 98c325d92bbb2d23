"""What the plan names but the program does not know, and local figures that cannot be used."""

from __future__ import annotations

from collections.abc import Iterator

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.plants.crop import Crop
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.forms import form_named
from yardplan.plants.limits import shipped_limits
from yardplan.yard.planting import PlantKey

NAME = "known"
_SOURCE = "common-practice"


def _finding(kind: str, thing: str, mark: Mark, figures: dict[str, Figure]) -> Finding:
    return Finding(
        check=NAME, kind=kind, weight=Weight.CAUTION, things=(thing,), figures=figures, marks=(mark,),
        source=_SOURCE,
    )


def _plant(
    thing: str, mark: Mark, key: PlantKey, cultivar: Cultivar | None, crop: Crop | None
) -> Iterator[Finding]:
    named = {"kind": Figure(key.crop, "text"), "variety": Figure(key.cultivar, "text")}
    if crop is None:
        yield _finding("unknown_kind", thing, mark, named)
    elif cultivar is None:
        yield _finding("unknown_variety", thing, mark, named)


def _form_known(survey: Survey, crop: Crop, name: str) -> bool:
    wanted = name.strip().casefold()
    ways = survey.catalogue.training.values()
    return form_named(crop, name) is not None or any(
        wanted == way.name.casefold() or wanted in way.aliases for way in ways
    )


def _stock_and_form(
    survey: Survey, thing: str, mark: Mark, crop: Crop | None, stock: str | None, form: str | None
) -> Iterator[Finding]:
    if crop is None:
        return
    if stock and crop.rootstocks and crop.rootstock(stock) is None:
        yield _finding("unknown_rootstock", thing, mark, {"rootstock": Figure(stock, "text")})
    if form and crop.forms and not _form_known(survey, crop, form):
        yield _finding("unknown_form", thing, mark, {"form": Figure(form, "text")})


def _refused(survey: Survey) -> tuple[str, ...]:
    """Names of local figures that no rule takes: not known, or outside the range allowed."""
    limits, local = shipped_limits(), survey.rules.local
    return tuple(
        name for name in survey.rules.refused()
        if name not in limits or not limits[name].low <= local[name] <= limits[name].high
    )


def run(survey: Survey) -> list[Finding]:
    """Findings on plants, rootstocks and forms that the catalogue does not have, and on refused figures."""
    found: list[Finding] = []
    for plant in survey.stand.plants:
        if plant.planted and plant.key is not None:
            mark = Mark((plant.place,))
            found.extend(_plant(plant.id, mark, plant.key, plant.cultivar, plant.crop))
            stock, form = getattr(plant.thing, "rootstock", None), getattr(plant.thing, "form", None)
            found.extend(_stock_and_form(survey, plant.id, mark, plant.crop, stock, form))
    for row in survey.stand.rows:
        mark = Mark(row.row.line, "line")
        found.extend(_plant(row.id, mark, row.row.plant, row.cultivar, row.crop))
        found.extend(_stock_and_form(survey, row.id, mark, row.crop, row.row.rootstock, row.row.form))
    for bed in survey.stand.beds:
        if bed.bed.plant is not None:
            found.extend(_plant(bed.id, Mark(bed.bed.outline, "area"), bed.bed.plant, bed.cultivar, bed.crop))
    found += [
        Finding(check=NAME, kind="own_fault", weight=Weight.CAUTION, things=(), source=_SOURCE,
                figures={"fault": Figure(fault, "text")})
        for fault in survey.catalogue.own_faults
    ]
    refused = _refused(survey)
    if refused:
        figures = {"rules": Figure(", ".join(refused), "text")}
        found.append(
            Finding(
                check=NAME, kind="refused_rule", weight=Weight.CAUTION, things=(), figures=figures,
                source=_SOURCE,
            )
        )
    return found


CHECK = Check(
    name=NAME,
    title=later("Names not known"),
    run=run,
    places=False,
    wording={
        "unknown_kind": Wording(
            "{a}: the catalogue has no kind '{kind}', so its size and needs are guessed.",
            "Choose another plant, or add this one with its facts as a variety of your own.",
            "kind not known",
        ),
        "unknown_variety": Wording(
            "{a}: the catalogue has no {kind} named '{variety}'; its pollen, bloom and hardiness are not "
            "known.",
            "Choose a variety of the catalogue, or add this one with its facts as your own.",
            "variety not known",
        ),
        "unknown_rootstock": Wording(
            "{a}: no rootstock '{rootstock}' is known for it, so the usual size of the kind is used.",
            "Choose a rootstock of the list, or enter the size by hand.",
            "rootstock not known",
        ),
        "unknown_form": Wording(
            "{a}: no form '{form}' is known for it, so the usual size of the kind is used.",
            "Choose a form of the list, or enter the size by hand.",
            "form not known",
        ),
        "own_fault": Wording(
            "A variety of your own is not used: {fault}.",
            "Correct that fact under Own varieties, or leave it out where it is not known.",
            "own variety not used",
        ),
        "refused_rule": Wording(
            "Local figures that are not used, because no such rule exists or they lie outside its range: "
            "{rules}.",
            "Correct or remove them in the list of local rules.",
            "local figure not used",
        ),
    },
)
