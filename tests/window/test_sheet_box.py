from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pypdf
import pytest
from PySide6.QtCore import Qt
from PySide6.QtPrintSupport import QPrinter
from pytestqt.qtbot import QtBot
from support import cares
from support.widgets import too_small, unnamed

from yardplan.sheets.assembly import SHEETS
from yardplan.window.dialogs.sheet_box import SheetBox
from yardplan.window.open_yard import OpenYard
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


@pytest.fixture
def box(qtbot: QtBot, opened: Opened, theme) -> SheetBox:
    lot = ((0.0, 0.0), (20.0, 0.0), (20.0, 10.0), (0.0, 10.0))
    made = SheetBox(opened(cares.orchard(cares.site(), lot=lot)))
    qtbot.addWidget(made)
    made.show()
    return made


def tick(box: SheetBox, *names: str) -> None:
    for name, choice in box.choices.items():
        choice.setChecked(name in names)


def test_every_sheet_can_be_ticked(box: SheetBox) -> None:
    assert list(box.choices) == list(SHEETS)
    assert len({choice.text() for choice in box.choices.values()}) == len(SHEETS)
    assert box.wish.what == ("plan", "schedule", "key")
    box.every.click()
    assert set(box.wish.what) == set(SHEETS)
    box.none.click()
    assert box.wish.what == ()


def test_pdf_with_what_was_ticked(box: SheetBox, tmp_path: Path) -> None:
    tick(box, "shopping", "harvest")
    box.save_to(tmp_path / "out.pdf")
    assert box.said.text() == "Written: out.pdf"
    reader = pypdf.PdfReader(tmp_path / "out.pdf")
    assert reader.metadata.title == "Test yard: shopping list and 1 more sheet"
    text = "".join(page.extract_text() for page in reader.pages)
    assert "Shopping list" in text
    assert "Picking through the season" in text
    assert "Plant schedule" not in text


def test_household_stands_in_the_harvest(box: SheetBox, tmp_path: Path, qtbot: QtBot) -> None:
    box.persons.line.setFocus()
    qtbot.keyClicks(box.persons.line, "2")
    qtbot.keyClick(box.persons.line, Qt.Key.Key_Return)
    assert box.wish.persons == 2
    tick(box, "harvest")
    box.save_to(tmp_path / "out.pdf")
    text = "".join(page.extract_text() for page in pypdf.PdfReader(tmp_path / "out.pdf").pages)
    assert "2.8 kg a week for the household" in text


def test_one_picture_a_page(box: SheetBox, tmp_path: Path) -> None:
    tick(box, "plan", "key")
    box.save_to(tmp_path / "out.svg")
    assert sorted(path.name for path in tmp_path.glob("out*")) == ["out-1.svg", "out-2.svg"]
    assert box.said.text() == "Written: out-1.svg and 1 more"
    tick(box, "plan")
    box.save_to(tmp_path / "out.png")
    assert (tmp_path / "out.png").read_bytes().startswith(b"\x89PNG")


def test_printing(box: SheetBox, tmp_path: Path) -> None:
    printer = QPrinter()
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    tick(box, "plan")
    box.print_on(printer)
    assert box.said.text().startswith("Sent to the printer: 1 page")
    assert len(pypdf.PdfReader(tmp_path / "printed.pdf").pages) == 1


def test_stopping_writes_nothing(box: SheetBox, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    tick(box, "plan", "schedule", "key")
    told: list[float] = []
    went_on = box._told

    def told_and_stopped(share: float) -> None:
        told.append(share)
        if len(told) == 2:
            box.cancel.click()
        went_on(share)

    monkeypatch.setattr(box, "_told", told_and_stopped)
    box.save_to(tmp_path / "out.pdf")
    assert box.said.text().startswith("Stopped")
    assert list(tmp_path.glob("out*")) == []
    assert box.save.isEnabled()
    assert told == sorted(told)


def test_light_tells_how_far_it_is_and_stops(
    box: SheetBox, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where the light is not known yet it takes longest: the bar moves and Stop is heard meanwhile."""
    box._open_yard.checks.stop()
    box._open_yard.checks.light_fresh = False
    tick(box, "light")
    told: list[float] = []
    went_on = box._told

    def stopped_early(share: float) -> None:
        told.append(share)
        if len(told) == 5:
            box.cancel.click()
        went_on(share)

    monkeypatch.setattr(box, "_told", stopped_early)
    box.save_to(tmp_path / "out.pdf")
    assert box.said.text().startswith("Stopped")
    assert len(told) == 5
    assert told == sorted(told)
    assert told[-1] < 0.4
    assert list(tmp_path.glob("out*")) == []


@pytest.mark.parametrize(("names", "name", "said"), [
    ((), "out.pdf", "tick at least one sheet"), (("plan",), "out.doc", "must end in .pdf"),
    (("plan",), "no/such/out.pdf", "could not be written"),
])
def test_faults_in_one_line(
    box: SheetBox, tmp_path: Path, names: tuple[str, ...], name: str, said: str
) -> None:
    tick(box, *names)
    box.save_to(tmp_path / name)
    assert box.said.text().startswith("No sheets were made: ")
    assert said in box.said.text()


def test_everything_is_named_and_large_enough(box: SheetBox) -> None:
    assert not unnamed(box)
    assert not too_small(box)


def test_the_window_opens_its_boxes(make_window) -> None:
    window = make_window(cares.orchard(cares.site()))
    for name in ("sheets", "shopping"):
        window.actions_[name].trigger()
        assert window.take_home.boxes[name].isVisible()
        window.take_home.boxes[name].close()
