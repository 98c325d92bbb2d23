"""Which sheets a yard needs, put together from its survey."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from attrs import frozen

from yardplan.checks.finding import Finding
from yardplan.checks.pollination import outlooks_for
from yardplan.checks.survey import Survey
from yardplan.drawing.rows import bed_places
from yardplan.drawing.view import FindingKey
from yardplan.plants.pollen_outlook import named
from yardplan.plants.standing import stand_of
from yardplan.sheets.document import Document, Page
from yardplan.sheets.legend import legend_page
from yardplan.sheets.paper import Paper, Scale, SheetError, usual_paper
from yardplan.sheets.planting_plan import PlanRequest, plan_pages
from yardplan.sheets.schedule import schedule, schedule_table
from yardplan.sheets.tables import table_pages
from yardplan.units import System


@frozen(kw_only=True, eq=False)
class SheetOrder:
    """What is wanted. `date` in words as it stands on the sheets; `marks` True draws findings on the plan."""

    survey: Survey
    units: System
    date: str = ""
    scale: Scale | None = None
    paper: Paper | None = None
    findings: tuple[Finding, ...] = ()
    said: Mapping[FindingKey, str] | None = None


def _plan(order: SheetOrder) -> Sequence[Page]:
    return plan_pages(PlanRequest(
        yard=order.survey.yard, stand=order.survey.stand, units=order.units, date=order.date,
        scale=order.scale, paper=order.paper, findings=order.findings, said=dict(order.said or {}),
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
            words[thing] = "none here"
    for node in found.net.nodes:
        if node.takes and node.id not in words:
            words[node.id] = "sets by itself"
    return words


def _schedule(order: SheetOrder) -> Sequence[Page]:
    survey = order.survey
    mature = stand_of(survey.yard, survey.base or survey.catalogue, None)
    young = stand_of(survey.yard, survey.base or survey.catalogue, 0)
    counts = {bed.id: len(bed_places(bed)) for bed in survey.yard.beds}
    rows = schedule(mature, young, partner_words(survey), counts)
    words = "   ".join(word for word in (survey.yard.site.name, order.date) if word)
    return table_pages(schedule_table(rows, order.units), _flat(order), words)


def _legend(order: SheetOrder) -> Sequence[Page]:
    return (legend_page(order.survey.yard, order.survey.stand, _flat(order)),)


#: Sheets by the word that asks for them, in the order in which they are bound.
SHEETS: dict[str, Callable[[SheetOrder], Sequence[Page]]] = {
    "plan": _plan, "schedule": _schedule, "key": _legend,
}


def assemble(order: SheetOrder, what: Sequence[str] = ("plan", "schedule", "key")) -> Document:
    """The sheets asked for, as one document. Raises SheetError for a sheet there is not."""
    for word in what:
        if word not in SHEETS:
            raise SheetError(f"there is no sheet called '{word}': choose among {', '.join(SHEETS)}")
    pages = [page for name in SHEETS if name in what for page in SHEETS[name](order)]
    if not pages:
        raise SheetError("no sheet was asked for")
    return Document(title=f"{order.survey.yard.site.name}: {pages[0].title.lower()}", pages=tuple(pages))
