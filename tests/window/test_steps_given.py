"""Steps that a widget's base only names are given by every class of it.

Qt's classes cannot be abstract: Python would build one that lacks a step and fail when the step is asked for.
"""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Iterator

import pytest

import yardplan.window
from yardplan.window.canvas.plant_drop import PlantDrops
from yardplan.window.panels.entry import Entry

STEPS = {PlantDrops: ("take_plant", "try_plant", "leave_plant", "put_plant"), Entry: ("show_value",)}


def all_of(base: type) -> Iterator[type]:
    """Every class made of a base, once all modules of the window are loaded."""
    for one in base.__subclasses__():
        yield one
        yield from all_of(one)


@pytest.mark.parametrize("base", list(STEPS))
def test_every_class_gives_the_steps_of_its_base(base: type) -> None:
    for module in pkgutil.walk_packages(yardplan.window.__path__, "yardplan.window."):
        importlib.import_module(module.name)
    made = [one for one in all_of(base) if one.__module__.startswith("yardplan.")]
    assert made
    assert [(one.__name__, step) for one in made for step in STEPS[base]
            if getattr(one, step) is getattr(base, step)] == []
