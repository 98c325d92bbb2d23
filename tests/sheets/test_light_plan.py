from __future__ import annotations

from attrs import evolve
from PySide6.QtCore import QRectF
from support.builders import plant, yard_of
from support.pdf_lines import reader_of

from yardplan.checks.survey import survey_of
from yardplan.drawing.light_labels import light_labels
from yardplan.drawing.light_legend import report_note
from yardplan.drawing.view import PlanView, fitted
from yardplan.sheets.assembly import SheetOrder, assemble
from yardplan.sheets.light_plan import PaperLight, legend_box, lit_view
from yardplan.sheets.pdf import pdf_bytes
from yardplan.sun.ground_kinds import Wanted, ground_of
from yardplan.sun.light import LightReport, light_report
from yardplan.sun.scene import scene_of
from yardplan.yard.ground import Building

YARD = yard_of(
    plant("A1", "apple:Liberty", (12, 10.5)), plant("A2", "apple:Enterprise", (24, 12)),
    buildings=(
        Building(id="H1", footprint=((2.0, 4.0), (10.0, 4.0), (10.0, 9.0), (2.0, 9.0)), eaves=5.0, ridge=7.0),
    ),
)
FIELD = QRectF(0, 0, 1500, 900)


def _lit(qapp) -> tuple[PlanView, LightReport]:
    survey = survey_of(YARD)
    report = light_report(scene_of(YARD, survey.stand), "live")
    bare = PlanView(yard=YARD, stand=survey.stand, scale=1.0, origin=(0.0, 0.0), window=FIELD, vector=True)
    return lit_view(fitted(bare, FIELD), FIELD, _paper(report)), report


def _paper(report: LightReport) -> PaperLight:
    return PaperLight(field=report.field, note=report_note(report))


def test_the_light_sheet_is_a_plan_and_a_table(qapp):
    survey = survey_of(YARD)
    lit = evolve(survey, light=light_report(scene_of(YARD, survey.stand), "live"))
    document = assemble(SheetOrder(survey=lit, units="metric", year=2027), ("light",))
    assert [page.title for page in document.pages] == ["Light plan", "Light"]


def test_another_measure_takes_the_place_of_the_season_s_mean(qapp):
    survey = survey_of(YARD)
    scene = scene_of(YARD, survey.stand)
    share = PaperLight(field=ground_of(scene, Wanted("open light"), "live"), title="Share of open light")
    order = SheetOrder(
        survey=evolve(survey, light=light_report(scene, "live")), units="metric", year=2027, light=share,
    )
    usual, other = (
        reader_of(pdf_bytes(assemble(each, ("light",)))).pages[0].extract_text()
        for each in (evolve(order, light=None), order)
    )
    assert "8 h and more: full sun for fruit" in usual
    assert "75 % and more: nearly open" in other
    assert "Share of open light" in other


def test_the_legend_hides_nothing_where_there_is_room(qapp):
    view, report = _lit(qapp)
    box = legend_box(view, FIELD, _paper(report))
    assert FIELD.contains(box)
    # The free corner of this lot is away from house and trees.
    house = view.polygon(YARD.buildings[0].footprint).boundingRect()
    assert not house.intersects(box)
    assert all(not box.contains(view.at(planting.place)) for planting in YARD.plantings)
    assert box in view.keep_clear


def test_figures_on_paper_keep_off_the_legend(qapp):
    view, report = _lit(qapp)
    labels = light_labels(view)
    assert {label.text for label in labels} >= {"6 h", "8 h"}
    box = legend_box(view, FIELD, _paper(report))
    assert not any(box.contains(view.at(label.place)) for label in labels)


def test_no_light_leaves_the_plan_alone(qapp):
    view, _ = _lit(qapp)
    bare = evolve(view, light=None, layers=evolve(view.layers, light=False))
    assert lit_view(bare, FIELD, None) is bare


def test_the_note_says_days_size_and_open_ground(qapp):
    _, report = _lit(qapp)
    assert report_note(report).split("\n")[0] == "mean, 1 April to 30 September"
    assert f"open ground {report.open_hours:.1f} h" in report_note(report)
    assert "year 4" in report_note(evolve(report, year=4))
    assert "on 1 May" in report_note(evolve(report, season=("05-01", "05-01")))
    assert "does not rise" in report_note(evolve(report, open_hours=0.0))
