from __future__ import annotations

import csv
import io
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot
from support import cares
from support.builders import plant
from support.widgets import too_small, unnamed

from yardplan.window.dialogs.shopping_box import ShoppingBox
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.shopping_rows import COST, ITEM, PRICE, read_price
from yardplan.yard import edits
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


@pytest.fixture
def yard(opened: Opened) -> OpenYard:
    return opened(cares.orchard(cares.site()))


@pytest.fixture
def box(qtbot: QtBot, yard: OpenYard, theme) -> ShoppingBox:
    made = ShoppingBox(yard)
    qtbot.addWidget(made)
    made.show()
    return made


def row_of(box: ShoppingBox, key: str) -> int:
    return next(n for n, item in enumerate(box.rows.bill.items) if item.key == key)


def cell(box: ShoppingBox, key: str, column: int) -> str:
    return str(box.rows.index(row_of(box, key), column).data())


def test_a_price_is_one_step_and_makes_cost_and_total(box: ShoppingBox, yard: OpenYard) -> None:
    assert box.total.text() == "no prices yet"
    assert box.rows.setData(box.rows.index(row_of(box, "post"), PRICE), "12,50")
    assert yard.yard.prices == {"post": 12.5}
    assert cell(box, "post", COST) == "25.00"
    assert box.total.text().startswith("Total 25.00, ")
    yard.undo_stack.undo()
    assert yard.yard.prices == {}
    assert cell(box, "post", PRICE) == ""
    yard.undo_stack.redo()
    assert box.rows.setData(box.rows.index(row_of(box, "post"), PRICE), "")
    assert yard.yard.prices == {}


def test_what_is_no_price_is_said(box: ShoppingBox, yard: OpenYard) -> None:
    assert not box.rows.setData(box.rows.index(row_of(box, "post"), PRICE), "cheap")
    assert "'cheap' is not a price" in box.fault.text()
    assert yard.yard.prices == {}
    assert not box.rows.setData(box.rows.index(0, ITEM), "9")


def test_currency(box: ShoppingBox, yard: OpenYard, qtbot: QtBot) -> None:
    box.rows.setData(box.rows.index(row_of(box, "post"), PRICE), "10")
    box.currency.line.setFocus()
    qtbot.keyClicks(box.currency.line, "NZ$")
    qtbot.keyClick(box.currency.line, Qt.Key.Key_Return)
    assert yard.yard.currency == "NZ$"
    assert box.total.text().startswith("Total NZ$ 20.00")
    assert box.isVisible()


def test_follows_the_plan(box: ShoppingBox, yard: OpenYard) -> None:
    before = box.rows.rowCount()
    yard.commit("Plant", edits.add(yard.yard, plant("G1", "grape:Concord", (20, 4))))
    assert box.rows.rowCount() > before


def test_hidden_it_waits(box: ShoppingBox, yard: OpenYard) -> None:
    box.hide()
    before = box.rows.rowCount()
    yard.commit("Plant", edits.add(yard.yard, plant("G1", "grape:Concord", (20, 4))))
    assert box.rows.rowCount() == before
    box.show()
    assert box.rows.rowCount() > before


def test_file_for_a_spreadsheet(box: ShoppingBox, tmp_path: Path) -> None:
    box.write_csv(tmp_path / "list.csv")
    text = (tmp_path / "list.csv").read_bytes().decode("utf-8-sig")
    rows = list(csv.reader(io.StringIO(text, newline="")))
    assert len(rows) == box.rows.rowCount() + 1
    assert box.note.text() == "Written: list.csv"
    box.write_csv(tmp_path / "no" / "list.csv")
    assert box.note.text().startswith("The list was not written")


@pytest.mark.parametrize(("typed", "price"), [("12", 12.0), (" 1 200.50", 1200.5), ("3,5", 3.5), ("", None)])
def test_prices_as_people_type_them(typed: str, price: float | None) -> None:
    assert read_price(typed) == price


@pytest.mark.parametrize("typed", ["-1", "nan", "inf", "1e99", "x"])
def test_no_prices(typed: str) -> None:
    with pytest.raises(ValueError, match="is not a price"):
        read_price(typed)


def test_everything_is_named_and_large_enough(box: ShoppingBox) -> None:
    assert not unnamed(box)
    assert not too_small(box)
