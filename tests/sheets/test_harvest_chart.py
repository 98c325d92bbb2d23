from __future__ import annotations

import datetime as dt
from pathlib import Path

import pypdf
import pytest
from attrs import evolve
from support import cares

from yardplan.care.harvest import harvest_plan
from yardplan.checks.survey import survey_of
from yardplan.sheets.document import Document
from yardplan.sheets.harvest_chart import harvest_pages, step_of
from yardplan.sheets.paper import PAPERS
from yardplan.sheets.pdf import write_pdf
from yardplan.yard.yard import Yard


def words(plan, tmp_path: Path, units="metric") -> list[str]:
    pages = harvest_pages(plan, PAPERS["A4"].turned(), units, "Test yard")
    path = tmp_path / "harvest.pdf"
    write_pdf(Document(title="Harvest", pages=pages), path)
    return [page.extract_text() for page in pypdf.PdfReader(path).pages]


def test_every_variety_and_year_stands_on_the_charts(qapp, tmp_path: Path) -> None:
    plan = harvest_plan(survey_of(cares.orchard(cares.site())), 2027, persons=2)
    picking, amounts = words(plan, tmp_path)
    for crop in plan.crops:
        assert crop.what in picking
    assert "kg a week, 2027" in amounts
    for year in range(2027, 2037):
        assert str(year) in amounts
    assert "2.8 kg a week for the household" in amounts
    assert "glut" in amounts


def test_pounds_where_feet_are_used(qapp, tmp_path: Path) -> None:
    plan = harvest_plan(survey_of(cares.orchard(cares.site())), 2027)
    assert "lb a year" in words(plan, tmp_path, "imperial")[1]


def test_many_varieties_take_more_pages(qapp, tmp_path: Path) -> None:
    plan = harvest_plan(survey_of(cares.orchard(cares.site())), 2027)
    many = evolve(plan, crops=tuple(evolve(plan.crops[0], what=f"Number {n}") for n in range(80)))
    pages = words(many, tmp_path)
    assert len(pages) == 4
    assert all(any(f"Number {n}" in page for page in pages) for n in range(80))


def test_nothing_to_pick_gives_no_page(qapp) -> None:
    assert harvest_pages(harvest_plan(survey_of(Yard()), 2027), PAPERS["A4"], "metric") == ()


def test_harvest_over_new_year(qapp, tmp_path: Path) -> None:
    plan = harvest_plan(survey_of(cares.orchard(cares.mirrored())), 2027)
    assert plan.crops[-1].last > dt.date(2028, 1, 1)
    assert "Jan" in words(plan, tmp_path)[0]


@pytest.mark.parametrize(("most", "step"), [(0, 1), (5, 1), (6, 2), (10, 2), (23, 5), (100, 20), (0.4, 0.1)])
def test_scales_have_round_steps(most: float, step: float) -> None:
    assert step_of(most) == pytest.approx(step)
