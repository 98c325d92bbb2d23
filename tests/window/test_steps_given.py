"""Steps that a widget's base only names are given by every class of it.

Qt's classes cannot be abstract: Python would build one that lacks a step and fail when the step is asked for.
"""

from __future__ import annotations

import pytest
from support.classes import made_of

from yardplan.window.canvas.plant_drop import PlantDrops
from yardplan.window.panels.entry import Entry

STEPS = {PlantDrops: ("take_plant", "try_plant", "leave_plant", "put_plant"), Entry: ("show_value",)}


@pytest.mark.parametrize("base", list(STEPS))
def test_every_class_gives_the_steps_of_its_base(base: type) -> None:
    made = made_of(base)
    assert made
    assert [(one.__name__, step) for one in made for step in STEPS[base]
            if getattr(one, step) is getattr(base, step)] == []
