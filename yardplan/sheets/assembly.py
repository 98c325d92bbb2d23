"""Which sheets a yard needs, put together from its survey."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from attrs import frozen

from yardplan.care.harvest import harvest_plan
from yardplan.care.tasks import care_plan
from yardplan.checks.finding import Finding
from yardplan.checks.pollination import outlooks_for
from yardplan.checks.run import findings as run_checks
from yardplan.checks.survey import Survey
from yardplan.checks.wording import names_of
from yardplan.drawing.light_legend import report_note
from yardplan.drawing.rows import bed_places
from yardplan.drawing.view import FindingKey
from yardplan.language import tr
from yardplan.plants.pollen_outlook import named
from yardplan.plants.standing import stand_of
from yardplan.sheets.document import Document, Page
from yardplan.sheets.harvest_chart import harvest_pages
from yardplan.sheets.legend import legend_page
from yardplan.sheets.light_plan import PaperLight
from yardplan.sheets.paper import Paper, Scale, SheetError, usual_paper
from yardplan.sheets.planting_plan import PlanRequest, plan_pages
from yardplan.sheets.reports import findings_table, light_table, pollination_table, soil_table
from yardplan.sheets.schedule import schedule, schedule_table
from yardplan.sheets.season_page import season_pages
from yardplan.sheets.setting_out import pins, setting_out_table
from yardplan.sheets.tables import Table, table_pages
from yardplan.sheets.take_home import care_table, harvest_table, refused_table, shopping_table
from yardplan.sheets.titles import document_title
from yardplan.sheets.watering import water_table
from yardplan.sun.light import light_report
from yardplan.sun.scene import scene_of
from yardplan.units import System


@frozen(kw_only=True, eq=False)
class SheetOrder:
    """What is wanted. `date` in words as on the sheets; `year` the calendar year of care and harvest.

    `persons` the household fed from the yard, for gluts and gaps of the harvest.
    `findings` and the words `said` of them are drawn on the plan where `marks` is True; `day` (`MM-DD`) is
    marked in the season. `light` replaces the season's mean on the light plan. `told` hears the share done
    of what takes long, and may raise to stop it.
    """

    survey: Survey
    units: System
    date: str = ""
    year: int
    marks: bool = False
    scale: Scale | None = None
    paper: Paper | None = None
    findings: tuple[Finding, ...] = ()
    said: Mapping[FindingKey, str] | None = None
    day: str = ""
    persons: float | None = None
    light: PaperLight | None = None
    told: Callable[[float], None] | None = None


def _plan(order: SheetOrder) -> Sequence[Page]:
    return plan_pages(PlanRequest(
        yard=order.survey.yard, stand=order.survey.stand, units=order.units, date=order.date,
        scale=order.scale, paper=order.paper, findings=order.findings if order.marks else (),
        said=dict(order.said or {}),
    ))


def _flat(order: SheetOrder) -> Paper:
    """The paper for tables, landscape; never larger than A4 or Letter need."""
    paper = order.paper or usual_paper(order.units)
    return paper if paper.landscape else paper.turned()


def partner_words(survey: Survey) -> dict[str, str]:
    """The best partner of each plant, row and bed in words, by id; "by itself" where none is needed."""
    words: dict[str, str] = {}
    found = outlooks_for(survey)
    for outlook in found.of:
        if outlook is None:
            continue
        thing = found.net.nodes[outlook.receiver].id
        if outlook.donor is not None:
            words[thing] = named(found.net, outlook.donor)
        elif outlook.needed:
            words[thing] = tr("none here")
    for node in found.net.nodes:
        if node.takes and node.id not in words:
            words[node.id] = tr("sets by itself")
    return words


def _schedule(order: SheetOrder) -> Sequence[Page]:
    survey = order.survey
    mature = stand_of(survey.yard, survey.base or survey.catalogue, None)
    young = stand_of(survey.yard, survey.base or survey.catalogue, 0)
    counts = {bed.id: len(bed_places(bed)) for bed in survey.yard.beds}
    rows = schedule(mature, young, partner_words(survey), counts)
    return _tabled(order, schedule_table(rows, order.units))


def _legend(order: SheetOrder) -> Sequence[Page]:
    return (legend_page(order.survey.yard, order.survey.stand, _flat(order)),)


def _tabled(order: SheetOrder, table: Table) -> Sequence[Page]:
    words = "   ".join(word for word in (order.survey.yard.site.name, order.date) if word)
    return table_pages(table, _flat(order), words)


def _setting_out(order: SheetOrder) -> Sequence[Page]:
    """The plan with its fixed points, then the tape lengths."""
    yard = order.survey.yard
    plan = plan_pages(PlanRequest(
        yard=yard, stand=order.survey.stand, units=order.units, date=order.date, scale=order.scale,
        paper=order.paper, pins=pins(yard), title=tr("Setting-out plan"),
    ))
    return (*plan, *_tabled(order, setting_out_table(yard, order.units)))


def _findings(order: SheetOrder) -> Sequence[Page]:
    found = order.findings or tuple(run_checks(order.survey))
    return _tabled(order, findings_table(found, names_of(order.survey), order.units))


def _care(order: SheetOrder) -> Sequence[Page]:
    """The year's work, the sprays that were not placed, then how much water each plant is given."""
    plan = care_plan(order.survey, order.year, order.units)
    water = water_table(order.survey, order.year, order.units)
    tables = (care_table(plan), refused_table(plan), water)
    return tuple(page for table in tables if table is not None for page in _tabled(order, table))


def _harvest(order: SheetOrder) -> Sequence[Page]:
    """The table of what ripens when, then its charts."""
    words = "   ".join(word for word in (order.survey.yard.site.name, order.date) if word)
    plan = harvest_plan(order.survey, order.year, order.persons)
    charts = harvest_pages(plan, _flat(order), order.units, words)
    return (*_tabled(order, harvest_table(order.survey, plan, order.units)), *charts)


def _light(order: SheetOrder) -> Sequence[Page]:
    """The hours over the ground with their legend, then those of every plant."""
    survey = order.survey
    report = survey.light or light_report(scene_of(survey.yard, survey.stand), progress=order.told)
    plan = plan_pages(PlanRequest(
        yard=order.survey.yard, stand=order.survey.stand, units=order.units, date=order.date,
        scale=order.scale, paper=order.paper, title=tr("Light plan"),
        light=order.light or PaperLight(field=report.field, note=report_note(report)),
    ))
    return (*plan, *_tabled(order, light_table(order.survey, report)))


#: Sheets by the word that asks for them, in the order in which they are bound.
SHEETS: dict[str, Callable[[SheetOrder], Sequence[Page]]] = {
    "plan": _plan,
    "schedule": _schedule,
    "key": _legend,
    "setting-out": _setting_out,
    "shopping": lambda order: _tabled(order, shopping_table(order.survey, order.units)),
    "findings": _findings,
    "light": _light,
    "pollination": lambda order: _tabled(order, pollination_table(order.survey, order.units)),
    "season": lambda order: season_pages(order.survey, _flat(order), order.day),
    "soil": lambda order: _tabled(order, soil_table(order.survey, order.units)),
    "care": _care,
    "harvest": _harvest,
}
#: What is bound when nothing else is asked for, and the word that asks for every sheet.
USUAL = ("plan", "schedule", "key")
ALL = "all"


def assemble(order: SheetOrder, what: Sequence[str] = USUAL) -> Document:
    """The sheets asked for, as one document. Raises SheetError for a sheet there is not."""
    wanted = tuple(SHEETS) if ALL in what else tuple(what)
    for word in wanted:
        if word not in SHEETS:
            names = ", ".join((*SHEETS, ALL))
            raise SheetError(
                tr("there is no sheet called '{word}': choose among {names}", word=word, names=names)
            )
    bound = [name for name in SHEETS if name in wanted]
    pages = tuple(page for name in bound for page in SHEETS[name](order))
    if not pages:
        raise SheetError(tr("no sheet was asked for"))
    return Document(title=document_title(order.survey.yard.site.name, bound), pages=pages)
