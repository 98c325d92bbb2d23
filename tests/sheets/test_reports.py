"""Tables of findings, light, pollination, soil, setting-out, shopping, care and harvest."""

import math
import re

import pytest
from support import builders
from support.cares import site
from support.pdf_lines import reader_of
from support.troubled import troubled_yard

from yardplan.arrange.setting_out import pegs
from yardplan.care.harvest import harvest_plan, plenty_words
from yardplan.care.tasks import care_plan
from yardplan.checks.run import findings
from yardplan.checks.survey import survey_of
from yardplan.checks.wording import names_of, severity_of
from yardplan.files.reading import read_yard
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.sheets.assembly import ALL, SHEETS, SheetOrder, assemble
from yardplan.sheets.pdf import pdf_bytes
from yardplan.sheets.reports import findings_table, light_table, pollination_table, soil_table
from yardplan.sheets.setting_out import pins, setting_out_table
from yardplan.sheets.take_home import care_table, harvest_table, refused_table, shopping_table
from yardplan.sheets.watering import water_table
from yardplan.shipped import folder
from yardplan.sun.light import light_report
from yardplan.sun.scene import scene_of
from yardplan.units import parse_length


@pytest.fixture(scope="module")
def survey():
    yard = read_yard(folder("sample_yards") / "first_orchard.yard")
    stand = stand_of(yard, catalogue())
    return survey_of(yard, stand=stand, light=light_report(scene_of(yard, stand)))


def columns(table):
    """Cells by the head of their column, row by row (the last of columns with one head)."""
    heads = [column.head for column in table.columns]
    assert all(len(row) == len(heads) for row in table.rows)
    return [dict(zip(heads, row, strict=True)) for row in table.rows]


def test_every_finding_has_its_line(survey):
    found = findings(survey)
    rows = columns(findings_table(found, names_of(survey), "metric"))
    assert len(rows) == len(found) > 3
    assert [row["Weight"].lower() for row in rows] == [finding.weight.value for finding in found]
    assert all(row["What"] and row["What clears it"] and row["By which rule"] for row in rows)
    assert findings_table((), {}, "metric").notes == ("Nothing was found.",)


def test_what_is_said_of_many_plants_alike_stands_on_one_line():
    pears = [builders.plant(f"P{n}", "european pear:Bartlett", (4 + 6 * n, 5)) for n in range(4)]
    survey = survey_of(builders.yard_of(*pears, width=40))
    found = [finding for finding in findings(survey) if finding.check == "pollination"]
    assert len(found) == 4
    [row] = columns(findings_table(found, names_of(survey), "metric"))
    assert row["What"].endswith("Likewise: Bartlett (P1), Bartlett (P2) and Bartlett (P3).")


def test_findings_on_paper_say_what_is_at_stake():
    """As the list in the window does: in words, and in bold where it is the law or somebody's safety."""
    survey = survey_of(troubled_yard())
    found = findings(survey)
    table = findings_table(found, names_of(survey), "metric")
    said = [row["At stake"] for row in columns(table)]
    assert said == [severity_of(finding) for finding in found]
    assert {"law", "safety", "damage", "care", "growth"} <= set(said)
    column = next(column for column in table.columns if column.head == "At stake")
    assert [word for word in sorted(set(said)) if column.face(word).weight == "bold"] == ["law", "safety"]


def test_light_adds_up(survey):
    rows = columns(light_table(survey, survey.light))
    by_key = {row["Key"]: row for row in rows}
    for plant in survey.yard.plantings:
        row = by_key[plant.id]
        assert row["Sun at the crown"] == f"{survey.light.plants[plant.id].hours:.1f} h"
        taken = sum(float(part.split(" h ")[0]) for part in row["Taken by"].split(", ") if " h " in part)
        given = float(row["Sun at the crown"].split()[0]) + taken
        # Takers under 0.1 h are left out, and each figure is rounded.
        assert given == pytest.approx(float(row["Open ground"].split()[0]), abs=0.8)


def test_pollination_names_partner_or_says_none(survey):
    rows = columns(pollination_table(survey, "metric"))
    assert rows
    for row in rows:
        assert (row["Distance"] == "") == (row["Best partner"] in {"none here", ""})
        assert row["To expect"] != "will set well" or row["Distance"]
        assert row["Best partner"] or row["To expect"] in {"sets by itself", "bears no fruit, gives pollen"}


def test_soil_work_says_when_and_how_much(survey):
    rows = columns(soil_table(survey, "metric"))
    assert rows
    assert all(row["When"] and row["How"] and row["Source"] for row in rows)


def test_limy_ground_is_not_called_suitable():
    limy = survey_of(read_yard(folder("sample_yards") / "prairie_yard.yard"))
    notes = " ".join(soil_table(limy, "metric").notes)
    assert "The ground is limy, and no work changes that, for: apple, " in notes
    assert "suits everything" not in notes
    fits = survey_of(read_yard(folder("sample_yards") / "walled_town_garden.yard"))
    assert "suits everything planted" in soil_table(fits, "metric").notes[0]


def test_tapes_of_the_sheet_find_the_peg_again(survey):
    yard = survey.yard
    places = dict(pins(yard))
    table = setting_out_table(yard, "metric")
    assert [row[0] for row in table.rows] == [peg.key for peg in pegs(yard)]
    for peg, row in zip(pegs(yard), table.rows, strict=True):
        _, first, one, second, other, side, _, _, _, _ = row
        assert math.dist(places[first], peg.place) == pytest.approx(parse_length(one), abs=0.006)
        assert math.dist(places[second], peg.place) == pytest.approx(parse_length(other), abs=0.006)
        (ax, ay), (bx, by), (x, y) = places[first], places[second], peg.place
        left = (bx - ax) * (y - ay) - (by - ay) * (x - ax) > 0
        assert side.startswith("left" if left else "right")
    # Every fixed point that a line names is told in full, before the table begins.
    assert all(f"{name} " in table.lead[0] for name in places)


def test_pegs_out_of_reach_of_fixed_points_start_from_pegs():
    yard = read_yard(folder("sample_yards") / "large_orchard.yard")
    table = setting_out_table(yard, "metric")
    assert all(row[1] and row[3] for row in table.rows)
    started = [row for row in table.rows if not row[1].startswith("F") or not row[3].startswith("F")]
    assert started
    assert any("peg set before" in note for note in table.lead)
    before = []
    for row in table.rows:
        assert all(start.startswith("F") or start in before for start in (row[1], row[3]))
        # The check is another measure than the tapes.
        assert row[-1] == "" or row[-1].split(" to ")[1] not in (row[1], row[3])
        before.append(row[0])


def test_sprays_not_placed_are_told_with_what_forbids_them(survey):
    plan = care_plan(survey, 2027, "metric")
    table = refused_table(plan)
    for one in plan.refusals:
        assert any(
            row[2] == one.title and one.what in row[3] and row[4] == one.because
            for row in table.rows
        )
    assert "3 days before" in table.lead[0]


def test_shopping_counts_what_is_planted(survey):
    rows = columns(shopping_table(survey, "metric"))
    akane = next(row for row in rows if "Akane" in row["Item"])
    assert akane["Quantity"] == str(sum(p.plant.cultivar == "Akane" for p in survey.yard.plantings))


def test_care_loses_no_task_and_no_caution(survey):
    plan = care_plan(survey, 2027, "metric")
    table = care_table(plan)
    rows = columns(table)
    for task in plan.tasks:
        assert any(row["Work"].startswith(task.title) and task.what in row["Plants"] for row in rows)
        assert all(any(words in note for note in table.notes) for words in task.cautions)
        for note in task.notes:
            assert any(note.rstrip(".") in row["How much, why"] for row in rows)
    numbers = {int(n) for row in rows for n in row["Take care"].split(", ") if n}
    assert all(any(note.startswith(f"{n}. ") for note in table.notes) for n in numbers)
    assert any("Label, law" in note for note in table.notes)


def test_care_and_harvest_say_for_which_years_and_what_seldom_ripens(qapp):
    cold = site(last_frost="05-15", first_frost="09-10")
    survey = survey_of(builders.yard_of(builders.plant("A1", "apple:Granny Smith", (3, 4)), site=cold))
    plan, picked = care_plan(survey, 2027, "metric"), harvest_plan(survey, 2027)
    rows = {row["Work"]: row for row in columns(care_table(plan))}
    assert "Water young trees (years 1 to 3; every 7 days)" in rows
    assert "Plant bare-root plants (planting year)" in rows
    assert "seldom ripens here" in rows["Pick (from year 2; every 3 days)"]["How much, why"]
    assert any("year 1 is the planting year" in note for note in care_table(plan).notes)
    (apple,) = columns(harvest_table(survey, picked, "metric"))
    assert apple["Last, about"] == "24 Sept"
    assert apple["Note"].startswith("seldom ripens here; full crop: no planting year")
    order = SheetOrder(survey=survey, units="metric", date="24 April 2027", year=2027, findings=())
    read = reader_of(pdf_bytes(assemble(order, ["care", "harvest"])))
    (chart,) = [page for page in (one.extract_text() for one in read.pages)
                if "Picking through the season" in page]
    assert "seldom ripens here" in chart


def test_water_of_every_plant_in_both_units(survey):
    rows = columns(water_table(survey, 2027, "metric"))
    planted = {p.id for p in (*survey.yard.plantings, *survey.yard.rows)}
    assert planted <= {key for row in rows for key in re.findall(r"[A-Z]+[0-9]+", row["Plants"])}
    for row in rows:
        litres, gallons = re.fullmatch(r"([0-9.]+) L \(([0-9.]+) gal\)", row["July"]).groups()
        assert float(litres) / 3.785 == pytest.approx(float(gallons), rel=0.06)
    imperial = columns(water_table(survey, 2027, "imperial"))
    assert re.fullmatch(r"[0-9.]+ gal \([0-9.]+ L\)", imperial[0]["July"])
    assert imperial[0]["Ground"].endswith("sq ft")


def test_harvest_is_an_estimate(survey):
    plan = harvest_plan(survey, 2027, persons=2.0)
    table = harvest_table(survey, plan, "imperial")
    assert len(table.rows) == len(plan.crops)
    for words in plenty_words(plan, "imperial"):
        assert words in table.notes
    assert any("estimates" in note for note in table.notes)


def test_all_sheets_in_one_document_with_every_note(qapp, survey):
    order = SheetOrder(
        survey=survey, units="metric", date="24 April 2027", year=2027, findings=tuple(findings(survey))
    )
    document = assemble(order, [ALL])
    read = reader_of(pdf_bytes(document))
    titles = [entry.title for entry in read.outline]
    for wanted in ("Planting plan", "Plant schedule", "Key to the plan", "Setting-out plan", "Setting out",
                   "Shopping list", "Conflicts, cautions and advice", "Light", "Pollination", "Season",
                   "Soil work", "Care in 2027", "Sprays not placed in 2027",
                   "Water, season from spring 2027", "Harvest from spring 2027"):
        assert wanted in titles
    assert len(SHEETS) == 12
    words = " ".join(" ".join(page.extract_text() for page in read.pages).split())
    for note in care_table(care_plan(survey, 2027, "metric")).notes:
        assert " ".join(note.split())[:60] in words
