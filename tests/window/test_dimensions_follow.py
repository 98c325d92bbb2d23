"""A dimension line tells the new distance while a thing is dragged, after it, and after undo."""

import datetime
import math

from support.builders import plant, yard_of
from support.window_hands import click, drag, trigger, type_length

from yardplan.window.variants_kept import keep, open_variant
from yardplan.yard.ground import Dimension

DAY = datetime.date(2027, 5, 1)
YARD = yard_of(
    plant("A1", "apple:Liberty", (5.0, 8.0)), plant("A2", "apple:Liberty", (12.0, 8.0)),
    dimensions=(Dimension(id="DM1", ends=((5.0, 8.0), (12.0, 8.0)), off=1.0),),
)


def long(yard):
    return math.dist(*yard.dimensions[0].ends)


def test_it_follows_a_drag_a_typed_place_and_undo(make_window):
    window = make_window(YARD)
    seen = []
    window.open_yard.shown.connect(lambda change: seen.append((change, long(window.open_yard.shown_yard))))
    drag(window.canvas, (12.0, 8.0), (13.0, 8.0), (15.0, 8.0))
    yard = window.open_yard.yard
    assert yard.dimensions[0].ends == (yard.plantings[0].place, yard.plantings[1].place)
    assert long(yard) > 9.5
    # While it was dragged, too.
    assert len({round(length, 6) for _, length in seen}) > 1
    assert seen[0][0].moved == {"A2", "DM1"}
    window.open_yard.select({"A2"})
    trigger(window, "carry")
    type_length(window.canvas, "5; 18")
    assert window.open_yard.yard.plantings[1].place == (5.0, 18.0)
    assert long(window.open_yard.yard) == 10.0
    window.open_yard.undo_stack.undo()
    window.open_yard.undo_stack.undo()
    assert window.open_yard.yard == YARD


def test_a_variant_keeps_its_own_lines(make_window):
    window = make_window(YARD)
    keep(window.open_yard, "First", DAY)
    drag(window.canvas, (12.0, 8.0), (13.0, 8.0), (15.0, 8.0))
    moved = window.open_yard.yard
    keep(window.open_yard, "Second", DAY)
    open_variant(window.open_yard, "First")
    assert window.open_yard.yard.dimensions == YARD.dimensions
    open_variant(window.open_yard, "Second")
    assert window.open_yard.yard.dimensions == moved.dimensions
    click(window.canvas, (25.0, 1.0))
