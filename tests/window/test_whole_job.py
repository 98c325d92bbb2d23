"""The main job on the real window, by mouse and keys: draw, plant, clear the conflicts, save, reopen."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from support.window_hands import click, drag, hover, press_key, trigger, type_length

from yardplan.checks.finding import Weight
from yardplan.yard.planting import PlantKey


def conflicts(window):
    return [f for f in window.open_yard.findings if f.weight is Weight.CONFLICT and f.fresh]


def settled(qtbot, window):
    """Wait until the worker has answered: every finding is fresh."""
    qtbot.waitUntil(lambda: not window.open_yard.checks.busy, timeout=20_000)


def pick(window, words, key):
    """Search the catalogue and take a plant in hand with the keyboard."""
    trigger(window, "choose")
    search = window.side.choose.search
    search.clear()
    QTest.keyClicks(search, words)
    rows = window.side.choose.rows
    row = next(i for i in range(rows.rowCount()) if rows.cultivar(i).key == key)
    view = window.side.choose.view
    view.setCurrentIndex(rows.index(row))
    view.setFocus()
    press_key(view, Qt.Key.Key_Return)
    assert window.open_yard.in_hand.plant == key


def test_the_whole_job(make_window, qtbot, tmp_path):
    window = make_window()
    canvas, yard = window.canvas, window.open_yard
    trigger(window, "new")

    # The lot and a house by typed lengths.
    trigger(window, "tool lot")
    click(canvas, (0, 0))
    hover(canvas, (10, 0))
    for text in ("30 m < 0", "20 m < 90", "30 m < 180"):
        type_length(canvas, text)
    press_key(canvas, Qt.Key.Key_Return)
    assert [(round(x, 6), round(y, 6)) for x, y in yard.yard.lot] == [(0, 0), (30, 0), (30, 20), (0, 20)]
    trigger(window, "fit")
    trigger(window, "tool building")
    click(canvas, (2, 12))
    hover(canvas, (6, 15))
    type_length(canvas, "10 m x 6 m")
    (house,) = yard.yard.buildings
    assert house.footprint[2] == (12, 18)

    # Two apples of one variety, too close.
    pick(window, "akane", PlantKey("apple", "Akane"))
    click(canvas, (12, 6))
    click(canvas, (14, 6))
    press_key(canvas, Qt.Key.Key_Escape)
    assert [p.plant.cultivar for p in yard.yard.plantings] == ["Akane"] * 2
    settled(qtbot, window)
    found = {(f.check, f.things) for f in conflicts(window)}
    assert ("spacing", ("A1", "A2")) in found
    assert any(check == "pollination" for check, _ in found)
    assert any("Akane" in row_text(window, i) for i in range(window.side.findings.rows.rowCount()))

    # Another variety for one of them, by its field.
    click(canvas, (14.2, 6))
    assert yard.selection == {"A2"}
    change_variety(window, "Fiesta")
    assert yard.yard.find("A2").plant == PlantKey("apple", "Fiesta")

    # Drag until no conflict is left.
    x = 14.0
    while conflicts(window) and x < 27:
        x += 1
        drag(canvas, yard.yard.find("A2").place, (x - 0.5, 6), (x, 6))
        settled(qtbot, window)
    assert conflicts(window) == []
    assert yard.yard.find("A2").place[0] > 15

    # Save, reopen in a fresh window, compare.
    path = tmp_path / "job.yard"
    window.questions.save_path = lambda suggested: path
    trigger(window, "save")
    assert not window.isWindowModified()
    kept, found = yard.yard, yard.findings
    window.close()
    other = make_window()
    assert other.documents.load(path)
    assert other.open_yard.yard == kept
    settled(qtbot, other)
    assert [f.key for f in other.open_yard.findings] == [f.key for f in found]


def row_text(window, row):
    rows = window.side.findings.rows
    return str(rows.data(rows.index(row)))


def change_variety(window, name):
    """Type another variety into the field of the selected plant."""
    trigger(window, "fields")
    entry = window.side.fields.grid.entries["plant"]
    entry.line.setFocus()
    entry.line.selectAll()
    QTest.keyClicks(entry.line, name + ", apple")
    QTest.keyClick(entry.line, Qt.Key.Key_Return)
