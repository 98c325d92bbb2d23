from __future__ import annotations

from collections.abc import Callable

import pytest
from attrs import evolve
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.checks.beds import plants_in
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.entry import ChoiceEntry, TextEntry
from yardplan.window.panels.field_plans import PLANS, shared_plans, value_at
from yardplan.window.panels.fields import Fields
from yardplan.window.panels.subjects import corner_plans
from yardplan.yard.ground import (
    Barrier,
    Building,
    Dimension,
    Gate,
    Note,
    Paving,
    Picture,
    Service,
    StandingTree,
)
from yardplan.yard.planting import Bed, Container, Earlier, PlantKey, Row
from yardplan.yard.yard import COLLECTIONS, Yard

Opened = Callable[[Yard], OpenYard]

_SQUARE = ((10.0, 10.0), (14.0, 10.0), (14.0, 13.0), (10.0, 13.0))
_KEY = PlantKey("apple", "Liberty")


def full_yard() -> Yard:
    """One thing of every kind."""
    return builders.yard_of(
        builders.plant("A1", "apple:Liberty", (4, 5)), builders.plant("A2", "apple:Enterprise", (20, 5)),
        builders.plant("P1", "european pear:Bartlett", (26, 5)),
        buildings=(Building(id="B1", name="House", footprint=_SQUARE, roof="gable", eaves=3.0, ridge=6.0),),
        barriers=(Barrier(id="F1", line=((0.0, 0.0), (10.0, 0.0))),),
        pavings=(Paving(id="V1", outline=_SQUARE),),
        services=(Service(id="S1", kind="water", points=((1.0, 1.0), (5.0, 1.0))),),
        standing_trees=(StandingTree(id="T1", kind="oak, bur", place=(1.0, 18.0), height=12.0, spread=9.0),),
        gates=(Gate(id="G1", place=(0.0, 5.0)),),
        notes=(Note(id="N1", place=(2.0, 2.0), text="Wet in spring"),),
        rows=(Row(id="R1", plant=PlantKey("red raspberry", "Nova"), line=((2.0, 10.0), (8.0, 10.0)), count=10,
                  spacing=0.6),),
        beds=(Bed(id="D1", outline=((20.0, 12.0), (24.0, 12.0), (24.0, 15.0))),),
        containers=(Container(id="K1", place=(15.0, 3.0), volume=40.0),),
        dimensions=(Dimension(id="DM1", ends=((0.0, 0.0), (30.0, 0.0)), off=1.0),),
        pictures=(Picture(id="PC1", base=((0.0, 0.0), (30.0, 0.0)), pixels=(3, 2), data="AAAA"),),
    )


@pytest.fixture
def fields(qtbot: QtBot, opened: Opened, theme) -> Fields:
    made = Fields(opened(full_yard()))
    qtbot.addWidget(made)
    made.resize(300, 700)
    made.show()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def open_yard_of(fields: Fields) -> OpenYard:
    return fields._open_yard


def type_into(fields: Fields, qtbot: QtBot, path: str, text: str, *, done: bool = True) -> TextEntry:
    entry = fields.grid.entries[path]
    assert isinstance(entry, TextEntry)
    entry.setFocus()
    entry.line.selectAll()
    qtbot.keyClicks(entry.line, text)
    if done:
        qtbot.keyClick(entry.line, Qt.Key.Key_Return)
    return entry


def test_every_kind_of_thing_has_fields_for_facts_it_has() -> None:
    assert set(PLANS) == set(COLLECTIONS.values())
    yard = full_yard()
    for kind, plans in PLANS.items():
        thing = next(t for t in yard.things() if type(t) is kind)
        for plan in plans:
            value_at(thing, plan.path)
        assert len({plan.path for plan in plans}) == len(plans)


@pytest.mark.parametrize(
    "thing_id", ["A1", "B1", "F1", "V1", "S1", "T1", "G1", "N1", "R1", "D1", "K1", "DM1", "PC1", "lot"]
)
def test_each_thing_shows_its_fields_named_and_large_enough(fields: Fields, thing_id: str) -> None:
    open_yard_of(fields).select({thing_id})
    fields.corners.set_open(True)
    assert fields.title.text()
    assert unnamed(fields) == []
    assert too_small(fields) == []


def test_a_dimension_is_said_by_the_length_between_its_ends(fields: Fields) -> None:
    fields._open_yard.select({"DM1"})
    fields.refresh()
    assert "corner" not in fields.note.text()
    assert [path for path in corner_paths(fields) if path.startswith("@x")] == ["@x.0", "@x.1"]


def corner_paths(fields: Fields) -> list[str]:
    yard = fields._open_yard
    return [plan.path for plan in corner_plans(yard.shown_yard, yard.selection)]


def test_nothing_selected_shows_the_yard(fields: Fields, qtbot: QtBot) -> None:
    type_into(fields, qtbot, "zone", "Zone 6B")
    type_into(fields, qtbot, "last_frost", "10 may")
    type_into(fields, qtbot, "soil.ph", "7.2")
    site = open_yard_of(fields).yard.site
    assert (site.zone, site.last_frost, site.soil.ph) == ("6b", "05-10", 7.2)


def test_impossible_soil_is_refused_with_the_range(fields: Fields, qtbot: QtBot) -> None:
    entry = type_into(fields, qtbot, "soil.ph", "15")
    assert entry.fault == "15 is outside 3 to 10"
    assert open_yard_of(fields).yard.site.soil.ph is None
    assert not open_yard_of(fields).undo_stack.canUndo()


def test_typing_shows_on_the_plan_at_once_and_esc_takes_it_back(fields: Fields, qtbot: QtBot) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"F1"})
    entry = type_into(fields, qtbot, "height", "2.4 m", done=False)
    assert open_yard.on_trial
    assert open_yard.shown_yard.barriers[0].height == pytest.approx(2.4)
    assert open_yard.yard.barriers[0].height == pytest.approx(1.8)
    qtbot.keyClick(entry.line, Qt.Key.Key_Escape)
    assert not open_yard.on_trial
    assert open_yard.undo_stack.count() == 0


def test_one_field_is_one_undo_step_with_its_name(fields: Fields, qtbot: QtBot) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"B1"})
    type_into(fields, qtbot, "eaves", "10'")
    assert open_yard.yard.buildings[0].eaves == pytest.approx(3.048)
    assert open_yard.undo_stack.count() == 1
    assert "eaves" in open_yard.undo_stack.undoText()
    open_yard.undo_stack.undo()
    entry = fields.grid.entries["eaves"]
    assert isinstance(entry, TextEntry)
    assert open_yard.yard.buildings[0].eaves == 3.0
    assert entry.line.text() == "3.00 m"


def test_eaves_do_not_rise_over_the_ridge(fields: Fields, qtbot: QtBot) -> None:
    open_yard_of(fields).select({"B1"})
    entry = type_into(fields, qtbot, "eaves", "7")
    assert "not higher than the ridge" in entry.fault
    assert open_yard_of(fields).yard.buildings[0].eaves == 3.0
    assert not open_yard_of(fields).on_trial


def test_x_and_y_move_the_whole_thing(fields: Fields, qtbot: QtBot) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"B1"})
    type_into(fields, qtbot, "@x", "12")
    moved = open_yard.yard.buildings[0].footprint
    assert moved == tuple((x + 2.0, y) for x, y in _SQUARE)


def test_corners_move_one_by_one(fields: Fields) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"lot"})
    fields.corners.set_open(True)
    entry = fields.corner_grid.entries["@y.2"]
    entry.entered.emit(22.0)
    assert open_yard.yard.lot[2] == (30.0, 22.0)
    assert open_yard.yard.lot[3] == (0.0, 20.0)


def test_an_edge_takes_its_length_and_the_house_stays_square(fields: Fields) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"B1"})
    fields.corners.set_open(True)
    fields.corner_grid.entries["@edge.0"].entered.emit(9.5)
    (x, y), *_ = _SQUARE
    deep = _SQUARE[2][1] - y
    assert open_yard.yard.buildings[0].footprint == ((x, y), (x + 9.5, y), (x + 9.5, y + deep), (x, y + deep))
    assert fields.corner_grid.entries["@edge.2"].value == 9.5


def test_a_fence_is_made_longer_along_itself(fields: Fields, qtbot: QtBot) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"F1"})
    type_into(fields, qtbot, "@length", "12.5")
    assert open_yard.yard.barriers[0].line == ((0.0, 0.0), (12.5, 0.0))


def test_another_variety_by_name_keeps_the_place(fields: Fields, qtbot: QtBot) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"A1"})
    type_into(fields, qtbot, "plant", "Jonathan")
    assert open_yard.yard.plantings[0].plant == PlantKey("apple", "Jonathan")
    assert open_yard.yard.plantings[0].place == (4, 5)


def test_a_variety_looked_at_in_the_list_is_tried_before_it_is_taken(fields: Fields, qtbot: QtBot) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"A1"})
    entry = fields.grid.entries["plant"]
    assert isinstance(entry, TextEntry)
    entry.setFocus()
    entry.line.completer().highlighted.emit("Jonathan, apple")
    qtbot.waitUntil(lambda: open_yard.shown_yard.plantings[0].plant == PlantKey("apple", "Jonathan"))
    assert open_yard.yard.plantings[0].plant == _KEY
    qtbot.keyClick(entry.line, Qt.Key.Key_Escape)
    assert open_yard.shown_yard.plantings[0].plant == _KEY
    assert open_yard.undo_stack.count() == 0


def test_kinds_of_standing_trees_are_offered(fields: Fields) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"T1"})
    entry = fields.grid.entries["kind"]
    assert isinstance(entry, TextEntry)
    completer = entry.line.completer()
    completer.setCompletionPrefix("walnut")
    assert completer.completionCount() >= 2
    completer.activated.emit("walnut, black")
    assert open_yard.yard.standing_trees[0].kind == "walnut, black"
    assert open_yard.undo_stack.count() == 1


def test_a_variety_that_is_not_known_is_refused(fields: Fields, qtbot: QtBot) -> None:
    open_yard_of(fields).select({"A1"})
    entry = type_into(fields, qtbot, "plant", "Quatsch")
    assert entry.fault == "the catalogue has no 'Quatsch'"


def test_rootstock_that_the_new_kind_lacks_is_dropped(fields: Fields, qtbot: QtBot) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"A1"})
    stock = fields.grid.entries["rootstock"]
    assert isinstance(stock, ChoiceEntry)
    stock.entered.emit("M26")
    assert open_yard.yard.plantings[0].rootstock == "M26"
    type_into(fields, qtbot, "plant", "Jonathan")
    assert open_yard.yard.plantings[0].rootstock == "M26"
    type_into(fields, qtbot, "plant", "Bartlett, european pear")
    assert open_yard.yard.plantings[0].plant.crop == "european pear"
    assert open_yard.yard.plantings[0].rootstock is None


def test_several_plants_change_together(fields: Fields, qtbot: QtBot) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"A1", "A2"})
    variety = fields.grid.entries["plant"]
    assert isinstance(variety, TextEntry)
    assert variety.line.placeholderText() == "several values"
    type_into(fields, qtbot, "spread", "3 m")
    assert [p.spread for p in open_yard.yard.plantings] == [3.0, 3.0, None]
    assert open_yard.undo_stack.count() == 1


def test_an_empty_size_says_what_the_catalogue_gives(fields: Fields) -> None:
    open_yard_of(fields).select({"A1"})
    entry = fields.grid.entries["spread"]
    assert isinstance(entry, TextEntry)
    assert entry.line.text() == ""
    assert entry.line.placeholderText().endswith("by the catalogue")


def test_a_drag_renews_the_values_without_building_anew(fields: Fields, qtbot: QtBot) -> None:
    from yardplan.yard import edits

    open_yard = open_yard_of(fields)
    open_yard.select({"A1"})
    entry = fields.grid.entries["@x"]
    assert isinstance(entry, TextEntry)
    open_yard.show_trial(edits.move(open_yard.yard, {"A1"}, (1.0, 0.0)))
    qtbot.waitUntil(lambda: entry.line.text() == "5.00 m")
    assert fields.grid.entries["@x"] is entry


def test_a_field_being_typed_in_is_not_written_over(fields: Fields, qtbot: QtBot) -> None:
    from yardplan.yard import edits

    open_yard = open_yard_of(fields)
    open_yard.select({"A1"})
    entry = type_into(fields, qtbot, "spread", "3.1", done=False)
    open_yard.show_trial(edits.move(open_yard.shown_yard, {"A2"}, (1.0, 0.0)))
    assert entry.line.text() == "3.1"


def test_units_change_the_fields(fields: Fields) -> None:
    units = fields.grid.entries["units"]
    units.entered.emit("imperial")
    open_yard_of(fields).select({"F1"})
    entry = fields.grid.entries["height"]
    assert isinstance(entry, TextEntry)
    assert entry.line.text() == "5' 11\""


def test_f2_puts_the_cursor_into_the_first_field(fields: Fields) -> None:
    open_yard_of(fields).select({"G1"})
    fields.focus_first()
    assert fields.grid.entries["name"].focusProxy().hasFocus()


@pytest.mark.parametrize(
    ("thing_id", "path", "typed", "fault"),
    [
        ("D1", "depth", "-0.1 m", "-0.10 m is outside 0.05 m to 2.00 m"),
        ("S1", "depth", "-1", "-1.00 m is outside 0.00 m to 20.00 m"),
        ("K1", "soil.ph", "0", "0 is outside 3 to 10"), ("D1", "soil.ph", "nan", "nan is outside 3 to 10"),
        ("A1", "@x", "5000", "5000.00 m is outside -2000.00 m to 2000.00 m"),
        ("A1", "@y", "-5", "-5.00 m is outside the lot: 0.00 m to 20.00 m here"),
        ("R1", "@x", "27", "27.00 m is outside the lot: 0.00 m to 24.00 m here"),
        ("F1", "@length", "31", "31.00 m leaves the lot: 30.00 m at most"),
        ("R1", "planted", "1066", "1066 is outside 1800 to 2200"),
        ("R1", "count", "0", "0 is outside 1 to 2000"),
        ("A1", "earlier", "2024", "'2024' names no kind: write for example tomato 2024; apple"),
        ("A1", "earlier", "apple 15", "15 is outside 1800 to 2200"),
    ],
)
def test_what_cannot_be_is_refused_at_the_field(
    fields: Fields, qtbot: QtBot, thing_id: str, path: str, typed: str, fault: str
) -> None:
    open_yard = open_yard_of(fields)
    before = open_yard.yard
    open_yard.select({thing_id})
    assert type_into(fields, qtbot, path, typed).fault == fault
    assert open_yard.yard is before
    assert not open_yard.on_trial


def test_a_corner_is_not_typed_out_of_the_lot(fields: Fields) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"D1"})
    fields.corners.set_open(True)
    entry = fields.corner_grid.entries["@x.1"]
    entry.entered.emit(30.5)
    assert entry.fault == "30.50 m is outside the lot: 0.00 m to 30.00 m here"
    entry.entered.emit(30.0)
    assert open_yard.yard.beds[0].outline[1] == (30.0, 12.0)


def test_what_stands_outside_may_be_typed_back_step_by_step(fields: Fields, qtbot: QtBot) -> None:
    from yardplan.yard import edits

    open_yard = open_yard_of(fields)
    open_yard.commit("Drag", edits.move(open_yard.yard, {"A1"}, (30.0, 30.0)))
    open_yard.select({"A1"})
    type_into(fields, qtbot, "@x", "10")
    type_into(fields, qtbot, "@y", "10")
    assert open_yard.yard.plantings[0].place == (10.0, 10.0)


def test_what_grew_before_is_typed_and_decides(fields: Fields, qtbot: QtBot) -> None:
    open_yard = open_yard_of(fields)

    def told() -> set[str]:
        return {f.kind for f in open_yard.findings if f.check == "rotation"}

    open_yard.select({"R1"})
    entry = type_into(fields, qtbot, "earlier", "potato until 2024;  red raspberry", done=False)
    assert entry.echo_label.text() == "= potato until 2024; red raspberry, year not known"
    qtbot.keyClick(entry.line, Qt.Key.Key_Return)
    assert entry.line.text() == "potato 2024; red raspberry"
    grown = (Earlier(crop="potato", until=2024), Earlier(crop="red raspberry"))
    assert open_yard.yard.rows[0].earlier == grown
    assert open_yard.undo_stack.count() == 1
    qtbot.waitUntil(lambda: told() == {"wilt", "replant"})
    type_into(fields, qtbot, "earlier", "maize 2025")
    qtbot.waitUntil(lambda: told() == set())


def first_line(note: str) -> str:
    """What is known at once; the hours of sun stand under it as soon as they are worked out."""
    return note.partition("\n")[0]


def test_rows_and_beds_say_what_fits_and_pots_what_they_need(fields: Fields, qtbot: QtBot) -> None:
    open_yard = open_yard_of(fields)
    open_yard.select({"R1"})
    assert first_line(fields.note.text()) == (
        "Room for 11 plants, 0.60 m apart. 2 posts for its wires, at most 6.10 m apart. "
        "Runs 90° off north and south."
    )
    open_yard.select({"D1"})
    assert first_line(fields.note.text()) == "6.0 m², 3 corners"
    type_into(fields, qtbot, "plant", "Honeoye")
    type_into(fields, qtbot, "spacing", "0.5 m")
    qtbot.waitUntil(lambda: "h of sun a day" in fields.note.text(), timeout=10_000)
    number = plants_in(open_yard.yard.beds[0], 0.5)
    assert fields.note.text().startswith(f"6.0 m², 3 corners\nRoom for {number} plants, 0.50 m apart. ")
    open_yard.select({"K1"})
    assert fields.note.text() == ""
    open_yard.select({"A1"})
    pot = fields.grid.entries["container"]
    assert isinstance(pot, ChoiceEntry)
    pot.entered.emit("K1")
    open_yard.select({"K1"})
    assert fields.note.text() == (
        "The plant in it needs 57 L or more. Its roots die from about -7 °C: an unheated shed in winter, and "
        "a little water once a month. Re-pot or trim the roots every 2.5 years or so."
    )


def test_another_variety_says_what_it_would_bring_before_it_is_taken(fields: Fields, qtbot: QtBot) -> None:
    """A second Enterprise in place of Liberty leaves both without a partner."""
    open_yard = open_yard_of(fields)
    qtbot.waitUntil(lambda: not open_yard.checks.busy, timeout=10_000)
    open_yard.select({"A1"})
    entry = fields.grid.entries["plant"]
    assert isinstance(entry, TextEntry)
    entry.setFocus()
    entry.line.completer().highlighted.emit("Enterprise, apple")
    qtbot.waitUntil(lambda: entry.echo_label.text().startswith("New: "))
    assert entry.echo_label.isVisible()
    assert entry.echo_label.text().endswith("Enter takes it, Esc leaves it.")
    assert open_yard.yard.plantings[0].plant == _KEY
    qtbot.keyClick(entry.line, Qt.Key.Key_Escape)
    assert not entry.echo_label.isVisible()
    assert open_yard.undo_stack.count() == 0


def test_only_what_spreads_along_a_line_faces_somewhere() -> None:
    plant = builders.plant
    round_tree = plant("A1", "apple:Liberty", (5, 5))
    cordon = evolve(plant("A2", "apple:Liberty", (9, 5)), form="cordon (vertical)")
    turned = evolve(plant("A3", "apple:Liberty", (13, 5)), facing=30.0)
    yard = builders.yard_of(round_tree, cordon, turned)
    shown = {
        key: "facing" in {p.path for p in shared_plans(yard, frozenset({key}))} for key in ("A1", "A2", "A3")
    }
    assert shown == {"A1": False, "A2": True, "A3": True}


def test_a_name_that_only_told_the_kind_follows_it(fields: Fields) -> None:
    """A terrace made a pond is not labelled Terrace on the plan; a name given by hand stays."""
    open_yard = open_yard_of(fields)
    edge = ((0.0, 0.0), (5.0, 0.0))
    open_yard.new(builders.yard_of(
        pavings=(Paving(id="PV1", name="Terrace", kind="terrace", outline=_SQUARE),),
        barriers=(Barrier(id="WF1", name="Fence", line=edge), Barrier(id="WF2", name="Grandpa's", line=edge)),
    ))
    for key, kind in (("PV1", "pond"), ("WF1", "hedge"), ("WF2", "wall")):
        open_yard.select({key})
        entry = fields.grid.entries["kind"]
        assert isinstance(entry, ChoiceEntry)
        entry.entered.emit(kind)
    yard = open_yard.yard
    assert [thing.kind for thing in (*yard.pavings, *yard.barriers)] == ["pond", "hedge", "wall"]
    assert [thing.name for thing in (*yard.pavings, *yard.barriers)] == ["Pond", "Hedge", "Grandpa's"]
