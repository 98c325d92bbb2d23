"""Tables of plants: out, back in, and what is said about lines that are not understood."""

from __future__ import annotations

import csv
import io

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from support import builders, strategies

from yardplan.files.exchange.cells import from_csv, harmless, original, to_csv
from yardplan.files.exchange.outline import ExchangeError
from yardplan.files.exchange.plant_table import NotUnderstood, plants_from_csv, plants_to_csv
from yardplan.yard.planting import Bed, Container, PlantKey, Row
from yardplan.yard.yard import Yard

CORNER = ((1.0, 1.0), (2.0, 1.0), (2.0, 2.0))
EMPTY = builders.yard_of(width=20, depth=10)


def known(crop: str, cultivar: str) -> PlantKey | None:
    """A catalogue of apples."""
    return PlantKey("apple", cultivar.title()) if crop.lower() == "apple" else None


def anything(crop: str, cultivar: str) -> PlantKey:
    return PlantKey(crop, cultivar)


def letter(key: PlantKey) -> str:
    return key.crop[0].upper()


def bare(text: str) -> str:
    return " ".join(text.split())


@given(strategies.yards(most=4, kinds=("plantings", "containers"), extras="none"))
@settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck))
def test_plants_go_out_and_come_back_the_same(yard: Yard) -> None:
    from attrs import evolve

    # Spaces around a note and empty texts do not survive a table; nothing else may change.
    plain = tuple(
        evolve(p, note=bare(p.note), group=bare(p.group or "") or None, locked=False) for p in yard.plantings
    )
    yard = evolve(yard, plantings=plain)
    back = plants_from_csv(plants_to_csv(yard), evolve(yard, plantings=()), anything, letter)
    assert back.plantings == yard.plantings
    assert back.report == ()


def test_the_table_has_rows_and_beds_too() -> None:
    yard = builders.yard_of(
        builders.plant("A1", "apple:Liberty", (1.0, 2.0)),
        rows=(
            Row(
                id="R1", plant=PlantKey("red raspberry", "Latham"), line=((0.0, 0.0), (0.0, 5.0)), count=9,
                spacing=0.6,
            ),
        ),
        beds=(
            Bed(id="B1", outline=CORNER, plant=PlantKey("strawberry", "Kent")), Bed(id="B2", outline=CORNER),
        ),
    )
    lines = list(csv.DictReader(io.StringIO(plants_to_csv(yard), newline="")))
    assert [(line["key"], line["list"], line["count"]) for line in lines] == [
        ("A1", "plant", "1"), ("R1", "row", "9"), ("B1", "bed", ""),
    ]
    assert lines[1]["facing_deg"] == "90.0"
    back = plants_from_csv(plants_to_csv(yard), EMPTY, anything, letter)
    assert [p.id for p in back.plantings] == ["A1"]
    assert [note.why for note in back.report] == ["a bed is not read from a table: draw it"]
    (row,) = back.rows
    # Nine canes 0.6 m apart take 4.8 m of the line that was drawn for them.
    assert (row.id, row.plant, row.count, row.spacing) == ("R1", yard.rows[0].plant, 9, 0.6)
    assert row.line[0] == (0.0, 0.0)
    assert row.line[1] == pytest.approx((0.0, 4.8))


@pytest.mark.parametrize("line", [
    "R1,row,apple,Liberty,,1.0,1,1", "R1,row,apple,Liberty,4,,1,1", "R1,row,apple,Liberty,4,1.0,,",
    "R1,row,apple,Liberty,0,1.0,1,1",
])
def test_a_row_needs_all_that_places_it(line: str) -> None:
    heads = "key,list,crop,cultivar,count,spacing_m,x_m,y_m"
    found = plants_from_csv(f"{heads}\n{line}", EMPTY, known, letter)
    assert found.rows == ()
    assert found.report == (NotUnderstood(2, "a row needs x, y, spacing and count"),)


def test_lines_end_and_quotes_double_as_rfc_4180_says() -> None:
    assert to_csv(("a", "b"), [("x, y", 'say "hi"'), ("two\nlines", None)]) == (
        'a,b\r\n"x, y","say ""hi"""\r\n"two\nlines",\r\n'
    )


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", " =1", "＝1", "'=1"])
def test_what_looks_like_a_formula_is_made_harmless(text: str) -> None:
    assert harmless(text).startswith("'")
    assert original(harmless(text)).strip() == text.strip()


@given(st.text(max_size=12).map(str.strip))
def test_any_text_survives_being_made_harmless(text: str) -> None:
    assert original(harmless(text)) == text
    assert not harmless(text).startswith(("=", "+", "-", "@", "\t", "\r"))


def test_numbers_are_numbers() -> None:
    assert harmless(-3.5) == "-3.5"
    assert harmless(1e-07) == "0.0000001"
    assert harmless(7) == "7"
    assert harmless(None) == ""


@pytest.mark.parametrize(
    "text",
    [
        "crop,variety,x,y\napple,liberty,1.5,2\n", "\ufeffCrop;Cultivar;X;Y\r\napple;liberty;1,5;2\r\n",
        "kind\tvariety\tx_m\ty_m\rapple\tliberty\t1.5 m\t200 cm\r",
    ],
)
def test_tables_of_other_programs_are_read(text: str) -> None:
    (plant,) = plants_from_csv(text, EMPTY, known, letter).plantings
    assert (plant.id, plant.plant, plant.place) == ("A1", PlantKey("apple", "Liberty"), (1.5, 2.0))


def test_feet_are_read_in_an_imperial_yard_and_metres_in_columns_that_say_so() -> None:
    text = "crop,cultivar,x,y_m,spread\napple,liberty,10,2,12' 6\"\n"
    text = text.replace("12' 6\"", '"12\' 6"""')
    (plant,) = plants_from_csv(text, EMPTY, known, letter, "imperial").plantings
    assert plant.place == pytest.approx((3.048, 2.0))
    assert plant.spread == pytest.approx(3.81)


def test_plants_without_a_place_wait_in_a_line_below_the_lot() -> None:
    got = plants_from_csv("crop,cultivar,count\napple,liberty,3\n", EMPTY, known, letter)
    assert got.waiting == ("A1", "A2", "A3")
    assert [p.place for p in got.plantings] == [(0.0, -2.0), (2.0, -2.0), (4.0, -2.0)]


def test_every_line_that_was_not_understood_is_reported_with_its_number() -> None:
    table = (
        "key,crop,cultivar,count,planted,x,y,container,facing,spread,extra\n"
        "A1,apple,liberty,,2020,1,2,,,,\n"
        ",pear,conference,,,,,,,,\n"
        ",apple,,,,,,,,,\n"
        ",apple,liberty,lots,,,,,,,\n"
        ",apple,liberty,0,,,,,,,\n"
        ",apple,liberty,,20,,,,,,\n"
        ",apple,liberty,,,1,,,,,\n"
        ",apple,liberty,,,east,2,,,,\n"
        ",apple,liberty,2,,1,2,,,,\n"
        ",apple,liberty,,,,,C9,,,\n"
        ",apple,liberty,,,,,,north,,\n"
        ",apple,liberty,,,,,,,900,\n"
        ",apple,liberty,,,,,,nan,,\n"
        "\n"
        "A1,apple,spartan,,,3,4,,,,\n"
    )
    got = plants_from_csv(table, EMPTY, known, letter)
    assert [p.id for p in got.plantings] == ["A1", "A2"]
    assert got.report == (
        NotUnderstood(3, "conference (pear) is not in the plant list"),
        NotUnderstood(4, "crop or cultivar is missing"),
        NotUnderstood(5, "count 'lots' is not a whole number"),
        NotUnderstood(6, "count 0: from 1 to 1000"),
        NotUnderstood(7, "planted 20: from 1500 to 3000"),
        NotUnderstood(8, "a place needs both x and y"),
        NotUnderstood(9, "'east' is not a length: write for example 12' 6\" or 3.8 m"),
        NotUnderstood(10, "a place goes with one plant only: give each plant a line"),
        NotUnderstood(11, "there is no container 'C9'"),
        NotUnderstood(12, "facing 'north' is not a number of degrees"),
        NotUnderstood(13, "spread 900: from 0 to 200"),
        NotUnderstood(14, "facing 'nan' is not a number of degrees"),
        NotUnderstood(16, "the key A1 is taken: called A2"),
    )


def test_keys_of_the_yard_are_not_taken_again_and_pots_are_found() -> None:
    yard = builders.yard_of(
        builders.plant("A1", "apple:Liberty", (1.0, 2.0)),
        containers=(Container(id="C1", place=(5.0, 5.0), volume=50.0),),
    )
    table = "key,crop,cultivar,container,x,y\nC1,apple,liberty,C1,5,5\nlot,apple,liberty,,1,1\n"
    got = plants_from_csv(table, yard, known, letter)
    assert [(p.id, p.container) for p in got.plantings] == [("A2", "C1"), ("A3", None)]
    assert len(got.report) == 2


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("", "is empty"), ("\n \n", "is empty"), ("a,b\n1,2\n", "no column 'crop'"),
        ("crop\napple\n", "no column 'cultivar'"),
        ('crop,cultivar\n"apple,liberty\n', "damaged"),
    ],
)
def test_what_is_no_table_of_plants_is_said(text: str, says: str) -> None:
    with pytest.raises(ExchangeError, match=says):
        plants_from_csv(text, EMPTY, known, letter)


@given(st.text(max_size=80))
def test_any_text_is_a_table_or_a_plain_error(text: str) -> None:
    try:
        got = plants_from_csv("crop,cultivar,x,y,count\n" + text, EMPTY, anything, letter)
    except ExchangeError:
        return
    assert len({p.id for p in got.plantings}) == len(got.plantings)


def test_line_numbers_count_lines_of_the_file() -> None:
    assert from_csv('a,b\n"x\ny",1\nz,2\n') == [(1, ["a", "b"]), (3, ["x\ny", "1"]), (4, ["z", "2"])]
