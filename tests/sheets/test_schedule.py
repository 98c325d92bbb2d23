"""The schedule: like plants together, every plant counted once."""

import pytest
from support import builders
from support.pdf_lines import reader_of

from yardplan.checks.survey import survey_of
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.sheets.assembly import SHEETS, SheetOrder, assemble, partner_words
from yardplan.sheets.cautions import cautions, dig_words
from yardplan.sheets.document import Document
from yardplan.sheets.legend import entries, legend_page
from yardplan.sheets.paper import PAPERS, SheetError
from yardplan.sheets.pdf import pdf_bytes
from yardplan.sheets.schedule import schedule, schedule_table, size_words
from yardplan.sheets.tables import Column, Table, table_pages
from yardplan.yard.planting import Bed, Container, PlantKey, Row
from yardplan.yard.site import Site


@pytest.fixture
def yard():
    return builders.yard_of(
        builders.plant("A10", "apple:Liberty", (3, 3), rootstock="M26"),
        builders.plant("A2", "apple:Liberty", (9, 3), rootstock="M26"),
        builders.plant("A3", "apple:Liberty", (15, 3), rootstock="M9"),
        builders.plant("B1", "northern highbush blueberry:Patriot", (20, 3), container="T1"),
        rows=(Row(id="R1", plant=PlantKey("red raspberry", "Nova"), line=((2, 10), (12, 10)), count=12,
                  spacing=0.6),),
        beds=(Bed(id="K1", outline=((20, 10), (24, 10), (24, 12), (20, 12)),
                  plant=PlantKey("strawberry", "Honeoye"), spacing=0.4),),
        containers=(Container(id="T1", place=(20, 3), volume=60),),
    )


@pytest.fixture
def rows(yard):
    young, mature = (stand_of(yard, catalogue(), year) for year in (0, None))
    return schedule(mature, young, {"A2": "Enterprise (A4)", "A10": "Enterprise (A4)"}, {"K1": 40})


def test_like_plants_share_a_line_in_order_of_number(rows):
    assert [row.keys for row in rows] == [("A2", "A10"), ("A3",), ("B1",), ("R1",), ("K1",)]
    assert [row.quantity for row in rows] == [2, 1, 1, 12, 40]
    assert rows[0].partner == "Enterprise (A4)"


def test_facts_of_a_line(rows):
    apple, row = rows[0], rows[3]
    assert apple.botanical.startswith("Malus")
    assert apple.kind == "Apple ‘Liberty’"
    assert apple.form == "M26"
    assert apple.mature is not None
    assert apple.young is not None
    assert apple.young.spread < apple.mature.spread
    assert "in a pot" in rows[2].form
    assert row.spacing == 0.6


def test_table_words(rows):
    table = schedule_table(rows, "metric")
    line = dict(zip((column.head for column in table.columns), table.rows[3], strict=True))
    assert line["Key"] == "R1"
    assert line["Qty"] == "12"
    assert line["Spacing"] == "0.60 m"
    assert table.notes[0] == "56 plants."
    assert size_words(rows[0].mature, "metric").endswith(" m")
    assert size_words(None, "metric") == ""


def test_a_long_table_repeats_its_head_and_loses_nothing(qapp):
    lines = tuple((f"K{i}", "a fairly long text that has to be broken " * (1 + i % 3)) for i in range(120))
    table = Table(title="Long", columns=(Column("Key", 1), Column("Words", 5)), rows=lines)
    pages = table_pages(table, PAPERS["A4"])
    assert len(pages) > 2
    from yardplan.sheets.document import Document

    document = reader_of(pdf_bytes(Document(title="Long", pages=pages)))
    texts = [page.extract_text() for page in document.pages]
    assert all("Words" in text for text in texts)
    words = " ".join(texts).split()
    assert all(f"K{i}" in words for i in range(120))
    assert f"page 2 of {len(pages)}" in texts[1]


def test_partners_come_from_the_pollen_net(yard):
    words = partner_words(survey_of(yard))
    # Three trees of one clone: none is a partner of another.
    assert words["A2"] == "none here"
    assert words["R1"] == "sets by itself"


def test_assembly_binds_what_is_asked_for(qapp, yard):
    order = SheetOrder(survey=survey_of(yard), units="metric", date="24 April 2027", year=2027)
    document = assemble(order)
    assert [page.title for page in document.pages] == ["Planting plan", "Plant schedule", "Key to the plan"]
    only = assemble(order, ["schedule"])
    assert [page.title for page in only.pages] == ["Plant schedule"]
    texts = [page.extract_text() for page in reader_of(pdf_bytes(document)).pages]
    assert "Malus" in texts[1]
    assert "row of canes" in texts[2]
    with pytest.raises(SheetError, match="no sheet called 'poem'"):
        assemble(order, ["poem"])
    with pytest.raises(SheetError, match="no sheet was asked for"):
        assemble(order, [])
    assert set(SHEETS) >= {"plan", "schedule", "key"}


def test_the_key_shows_what_the_plan_shows_and_no_more(yard):
    words = [entry.words for entry in entries(yard, stand_of(yard, catalogue()))]
    assert "row of canes" in words
    assert "in a pot" in words
    assert "fence" not in words
    assert len(words) == len(set(words))


def test_the_key_carries_every_caution(qapp, yard):
    page = legend_page(yard, stand_of(yard, catalogue()), PAPERS["A4"].turned())
    made = reader_of(pdf_bytes(Document(title="Key", pages=(page,))))
    text = " ".join(made.pages[0].extract_text().split())
    for sentence in cautions(yard):
        assert sentence in text


@pytest.mark.parametrize(("place", "words"), [
    ((42.8, -77.0), "811"), ((53.9, -1.1), "HSG47"), ((-33.9, 151.0), "national plan service"),
    ((-41.3, 174.8), "Ask every utility"), ((33.4, -112.0), "811"),
])
def test_whom_to_ask_before_digging(place, words):
    assert words in dig_words(Site(latitude=place[0], longitude=place[1]))


def test_digging_comes_first_and_sizes_are_called_estimates(yard):
    said = cautions(yard)
    assert said[0] == dig_words(yard.site)
    assert any("estimates" in sentence for sentence in said)
    assert any("no survey" in sentence for sentence in said)


def test_plants_whose_partners_are_one_variety_share_a_line(yard):
    young, mature = (stand_of(yard, catalogue(), year) for year in (0, None))
    said = {"A2": "Enterprise (A11)", "A10": "Enterprise (A4)"}
    (first, *_) = schedule(mature, young, said)
    assert first.keys == ("A2", "A10")
    assert first.partner == "Enterprise (A4, A11)"
