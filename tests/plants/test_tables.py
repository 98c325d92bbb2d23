import csv
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from yardplan.plants.cultivar import Cited
from yardplan.plants.tables import Table, TableError, parse_cites, parse_range


def write(folder: Path, *lines: str) -> Path:
    path = folder / "stocks.csv"
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return path


def test_all_faults_are_told_at_once_with_file_row_and_column(tmp_path: Path) -> None:
    path = write(tmp_path, "name,height_ft_low,height_ft_high,zone,sources", "M9,six,8,5,memory",
                 "M26,10,8,5,rhs(a) b", ",1,,x,", "M7,1,2")
    table = Table(path, ("name", "zone"))
    for row in table:
        row.needed("name")
        row.pair("height_ft")
        row.one_of("zone", ("5",))
        row.cites()
    with pytest.raises(TableError) as caught, table:
        pass
    said = [(fault.file, fault.row, fault.column) for fault in caught.value.faults]
    assert said == [
        ("stocks.csv", 2, "height_ft_low"), ("stocks.csv", 2, "height_ft_low"),
        ("stocks.csv", 3, "height_ft_high"), ("stocks.csv", 3, "sources"),
        ("stocks.csv", 4, "name"), ("stocks.csv", 4, "height_ft_low"), ("stocks.csv", 4, "zone"),
        ("stocks.csv", 4, "sources"), ("stocks.csv", 5, ""),
    ]
    assert "stocks.csv, row 2, column height_ft_low: 'six' is not a number" in str(caught.value)
    assert "and 1 more" in str(caught.value)


def test_missing_columns_are_told(tmp_path: Path) -> None:
    with pytest.raises(TableError, match=r"row 1, column zone: the column is missing"):
        Table(write(tmp_path, "name", "M9"), ("name", "zone"))


def test_an_empty_file_lacks_its_columns(tmp_path: Path) -> None:
    path = tmp_path / "empty.csv"
    path.write_text("", encoding="utf-8")
    with pytest.raises(TableError, match="column name"):
        Table(path, ("name",))


def test_a_fault_inside_is_not_covered_by_the_faults_noted(tmp_path: Path) -> None:
    table = Table(write(tmp_path, "name", "M9"))
    next(iter(table)).fault("name", "bad")
    with pytest.raises(ZeroDivisionError), table:
        raise ZeroDivisionError


def test_readers_of_good_cells(tmp_path: Path) -> None:
    path = write(tmp_path, "a,b_low,b_high,c,d,sources", "4-6,1,2,yes,x; y,rhs(a b_low); memory")
    with Table(path) as table:
        row = next(iter(table))
        assert row.span("a", 2.0) == (8.0, 12.0)
        assert row.pair("b") == (1.0, 2.0)
        assert row.yes("c") is True
        assert row.words("d") == ("x", "y")
        assert row.text("no such column") == ""
        assert row.cites() == (Cited("rhs", ("a", "b_low")), Cited("memory"))
        assert len(table) == 1


@pytest.mark.parametrize(("text", "span"), [
    ("4-6", (4, 6)), ("5", (5, 5)), ("0.7-1", (0.7, 1)), ("-8", (-8, -8)),
])
def test_ranges(text: str, span: tuple[float, float]) -> None:
    assert parse_range(text) == span


@pytest.mark.parametrize("text", ["", "4-", "a", "4--6", "6-4", "4 - 6", "nan", "inf"])
def test_bad_ranges(text: str) -> None:
    with pytest.raises(ValueError, match=r"range|high to low"):
        parse_range(text)


@pytest.mark.parametrize("text", ["rhs (a)", "rhs(", "a, b", "rhs(a,b)"])
def test_bad_sources(text: str) -> None:
    with pytest.raises(ValueError, match="source id"):
        parse_cites(text)


def test_numbers_that_are_no_numbers_are_faults(tmp_path: Path) -> None:
    path = write(tmp_path, "a,b", "nan,inf", "1e400,2")
    table = Table(path)
    for row in table:
        row.real("a")
        row.real("b")
    with pytest.raises(TableError) as caught, table:
        pass
    assert [(fault.row, fault.column) for fault in caught.value.faults] == [(2, "a"), (2, "b"), (3, "a")]


@pytest.mark.parametrize(("content", "said"), [
    (b"name,zone\nM9,\xe9\n", "stocks.csv, row 2: is not UTF-8 text"),
    (b'name,zone\nM9,"5\n', "stocks.csv: is not a CSV table"),
    (b"name,zone,name\nM9,5,M9\n", "row 1, column name: the column is there twice"),
])
def test_files_that_are_no_tables(tmp_path: Path, content: bytes, said: str) -> None:
    path = tmp_path / "stocks.csv"
    path.write_bytes(content)
    with pytest.raises(TableError) as caught:
        Table(path, ("name", "zone"))
    assert said in str(caught.value)


def test_a_file_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(TableError, match=r"stocks\.csv: cannot be read"):
        Table(tmp_path / "stocks.csv")


def test_what_a_spreadsheet_saves_is_read(tmp_path: Path) -> None:
    path = tmp_path / "stocks.csv"
    path.write_bytes(b"\xef\xbb\xbfname,zone\r\nM9,5\r\n\r\n")
    with Table(path, ("name", "zone")) as table:
        assert [(row.text("name"), row.text("zone")) for row in table] == [("M9", "5")]


CELLS = st.text(st.characters(codec="utf-8", exclude_characters="\0"), max_size=12)


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.lists(st.lists(CELLS, min_size=4, max_size=5), max_size=6))
def test_any_text_is_read_or_refused_as_a_table(tmp_path: Path, lines: list[list[str]]) -> None:
    path = tmp_path / "stocks.csv"
    with path.open("w", encoding="utf-8", newline="") as stream:
        csv.writer(stream).writerows([["a", "b_low", "b_high", "sources"], *lines])
    told = 0
    try:
        with Table(path) as table:
            for row in table:
                assert row.number >= 2
                row.span("a")
                row.pair("b")
                row.cites()
    except TableError as error:
        told = len(error.faults)
    assert told > 0 or all(len(line) == 4 for line in lines)
