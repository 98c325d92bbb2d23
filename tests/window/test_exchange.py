"""Import and export through the file menu: boxes, reports, one undo step, and what cannot be read."""

from __future__ import annotations

import csv
import json
from pathlib import Path

import ezdxf
import icalendar
import numpy as np
import pytest
from attrs import evolve
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from support.builders import plant, yard_of
from support.widgets import too_small, unnamed
from support.window_hands import trigger

from yardplan.files.exchange.geojson import yard_to_geojson
from yardplan.window.dialogs.outline_box import OutlineBox
from yardplan.window.dialogs.plant_list_box import PlantListBox
from yardplan.yard import edits
from yardplan.yard.yard import Yard

YARD = edits.set_site(
    yard_of(plant("A1", "apple:Liberty", (5, 5), planted=2024)), place="Geneva", latitude=42.87,
    longitude=-76.99, name="Home",
)
L_SHAPE = [(100, 100), (140, 100), (140, 130), (120, 130), (120, 120), (100, 120)]
TABLE = """kind,variety,quantity,x,y,notes
apple,liberty,1,8,6,by the gate
Apple,Enterprise,2,,,
apple,No Such Apple,1,3,3,lost?
,Bosc,1,,,"a, b"
apple,Liberty,1,9,,half a place
"""


@pytest.fixture
def window(make_window):
    return make_window(YARD)


def imported(window, name: str, path: Path):
    """Trigger an import as a person does who then picks that file; the box that opens."""
    window.questions.import_path = lambda *_: path
    trigger(window, name)
    return window.exchange.box


def drawing(path: Path, units: int, *outlines) -> Path:
    made = ezdxf.new("R2010")
    made.header["$INSUNITS"] = units
    for outline in outlines:
        made.modelspace().add_lwpolyline(outline, close=True, dxfattribs={"layer": "PLOT"})
    made.saveas(path)
    return path


def test_lot_from_a_map_near_by_lies_where_it_is(window, tmp_path):
    lot = ((-2.0, -1.0), (30.0, -1.0), (30.0, 22.0), (-2.0, 20.0))
    (tmp_path / "lot.geojson").write_text(yard_to_geojson(evolve(YARD, lot=lot)), encoding="utf-8")
    before = window.open_yard.yard
    box = imported(window, "import lot", tmp_path / "lot.geojson")
    assert isinstance(box, OutlineBox)
    assert "4 corners" in box.list.item(0).text()
    assert "takes the place" in box.note.text()
    assert not box.move_place.isVisible()
    assert not unnamed(box)
    assert not too_small(box)
    assert window.open_yard.yard is before
    QTest.keyClick(box, Qt.Key.Key_Return)
    found = window.open_yard.yard
    assert np.array(found.lot) == pytest.approx(np.array(lot), abs=0.002)
    assert found.plantings == before.plantings
    assert window.open_yard.undo_stack.undoText() == "Lot line from lot.geojson"
    window.open_yard.undo_stack.undo()
    assert window.open_yard.yard == before


def test_lot_from_far_away_moves_the_place_only_when_asked(window, tmp_path):
    there = edits.set_site(yard_of(), latitude=-33.5, longitude=151.25)
    (tmp_path / "far.json").write_text(yard_to_geojson(there), encoding="utf-8")
    box = imported(window, "import lot", tmp_path / "far.json")
    assert box.move_place.isVisible()
    assert not box.move_place.isChecked()
    assert "-33.5000" in box.note.text()
    box.use.click()
    assert window.open_yard.yard.site == YARD.site
    box = imported(window, "import lot", tmp_path / "far.json")
    box.move_place.setChecked(True)
    box.use.click()
    site = window.open_yard.yard.site
    assert (site.latitude, site.longitude) == pytest.approx((-33.5, 151.25), abs=0.001)
    assert {origin.text for origin in site.origins} == {"lot line in far.json"}


def test_lot_from_a_drawing_in_the_unit_chosen(window, tmp_path):
    square = [(0, 0), (10, 0), (10, 10), (0, 10)]
    box = imported(window, "import lot", drawing(tmp_path / "plan.dxf", 0, square, L_SHAPE))
    assert box.list.count() == 2
    assert "does not say its unit" in box.note.text()
    assert "40.0 m by 30.0 m" in box.list.item(0).text()
    box.unit.setCurrentText("feet")
    assert "12.2 m by 9.1 m" in box.list.item(0).text()
    box.unit.setCurrentText("millimetres")
    assert not box.use.isEnabled()
    assert "is the unit right?" in box.fault.text()
    box.unit.setCurrentText("feet")
    box.use.click()
    lot = window.open_yard.yard.lot
    assert len(lot) == 6
    assert max(x for x, _ in lot) == pytest.approx(40 * 0.3048)


def test_the_unit_of_the_drawing_is_known_and_can_be_overruled(window, tmp_path):
    box = imported(window, "import lot", drawing(tmp_path / "plan.dxf", 4, [(0, 0), (9000, 0), (9000, 7000)]))
    assert box.unit.currentText() == "millimetres"
    assert "9.0 m by 7.0 m" in box.list.item(0).text()
    box.leave.click()
    assert window.open_yard.yard == YARD or not window.open_yard.unsaved


@pytest.mark.parametrize(("name", "text", "says"), [
    ("a.geojson", "{", "not GeoJSON"), ("a.geojson", '{"type": "FeatureCollection"}', "no closed outline"),
    ("a.dxf", "nothing", "not a DXF file"), ("a.svg", "<svg/>", "ending must be"),
    ("missing.json", None, "cannot be read"),
])
def test_files_without_a_lot_are_told_in_one_line(window, tmp_path, name, text, says):
    told = []
    window.questions.tell_fault = lambda title, words, details="": told.append((title, words))
    if text is not None:
        (tmp_path / name).write_text(text, encoding="utf-8")
    assert imported(window, "import lot", tmp_path / name) is None
    assert [title for title, _ in told] == ["No lot line was read"]
    assert says in told[0][1]
    assert "\n" not in told[0][1]
    assert not window.open_yard.unsaved


def test_plants_from_a_table_lose_no_line(window, tmp_path):
    (tmp_path / "list.csv").write_text(TABLE, encoding="utf-8")
    before = window.open_yard.yard
    box = imported(window, "import plants", tmp_path / "list.csv")
    assert isinstance(box, PlantListBox)
    assert box.said.text() == (
        "3 plants were understood. 2 plants have no place: they wait in a line below the lot. "
        "3 lines were left out."
    )
    shown = [[box.lines.item(row, column).text() for column in range(3)] for row in range(3)]
    assert [line for line, _, _ in shown] == ["4", "5", "6"]
    assert shown[0][1] == "No Such Apple (apple) is not in the plant list"
    assert "lost?" in shown[0][2]
    assert not unnamed(box)
    assert not too_small(box)
    box.save_left_out(tmp_path / "left.csv")
    with (tmp_path / "left.csv").open(encoding="utf-8-sig", newline="") as file:
        kept = list(csv.DictReader(file))
    assert [row["variety"] for row in kept] == ["No Such Apple", "Bosc", "Liberty"]
    assert kept[1]["notes"] == "a, b"
    assert kept[2]["why"] == "a place needs both x and y"
    assert window.open_yard.yard is before
    box.add.click()
    added = window.open_yard.yard.plantings[len(before.plantings):]
    assert [(p.plant.cultivar, p.note) for p in added] == [
        ("Liberty", "by the gate"), ("Enterprise", ""), ("Enterprise", "")
    ]
    assert window.open_yard.selection == {p.id for p in added}
    window.open_yard.undo_stack.undo()
    assert window.open_yard.yard == before


def test_a_table_of_an_older_spreadsheet_and_one_that_is_none(window, tmp_path):
    text = "crop;cultivar;note\r\napple;Liberty;am Gew\xe4chshaus"
    (tmp_path / "old.csv").write_bytes(text.encode("cp1252"))
    box = imported(window, "import plants", tmp_path / "old.csv")
    assert box.said.text().startswith("1 plant was understood.")
    box.add.click()
    assert window.open_yard.yard.plantings[-1].note == "am Gew\xe4chshaus"
    told = []
    window.questions.tell_fault = lambda title, words, details="": told.append(words)
    (tmp_path / "none.csv").write_text("a,b\n1,2\n", encoding="utf-8")
    imported(window, "import plants", tmp_path / "none.csv")
    assert told == ["none.csv: the table has no column 'crop': the first line must name the columns"]


def test_cancel_leaves_everything(window, tmp_path):
    (tmp_path / "list.csv").write_text(TABLE, encoding="utf-8")
    imported(window, "import plants", tmp_path / "list.csv").leave.click()
    window.questions.import_path = lambda *_: None
    for name in ("import lot", "import plants"):
        trigger(window, name)
    assert not window.open_yard.unsaved


def test_every_export_reads_back(window, tmp_path):
    def ask(title: str, suggested: Path, kinds: str) -> Path:
        assert suggested.suffix in kinds
        return tmp_path / f"out{suggested.suffix}"

    window.questions.export_path = ask
    for ending in ("geojson", "dxf", "csv", "ics"):
        trigger(window, f"export {ending}")
        assert window.status.currentMessage() == f"Written: out.{ending}"
    document = json.loads((tmp_path / "out.geojson").read_text(encoding="utf-8"))
    assert {feature["id"] for feature in document["features"]} == {"lot", "A1"}
    circles = ezdxf.readfile(tmp_path / "out.dxf").modelspace().query('CIRCLE[layer=="PLANTS"]')
    assert len(circles) == 1
    assert circles[0].dxf.radius > 1
    with (tmp_path / "out.csv").open(encoding="utf-8-sig", newline="") as file:
        assert [row["cultivar"] for row in csv.DictReader(file)] == ["Liberty"]
    events = icalendar.Calendar.from_ical((tmp_path / "out.ics").read_bytes()).walk("VEVENT")
    assert len({event["DTSTART"].dt.year for event in events}) >= 2
    assert not window.open_yard.unsaved


def test_what_cannot_be_written_is_told_and_a_yard_without_a_place_warned_of(window, make_window, tmp_path):
    told = []
    window.questions.tell_fault = lambda title, words, details="": told.append(words)
    window.questions.export_path = lambda *_: tmp_path / "no" / "out.csv"
    trigger(window, "export csv")
    assert len(told) == 1
    assert told[0].startswith("out.csv was not written")
    bare = make_window(Yard(lot=YARD.lot))
    bare.questions.export_path = lambda *_: tmp_path / "out.geojson"
    trigger(bare, "export geojson")
    assert "has no place yet" in bare.status.currentMessage()
