"""Classes of the program that are made of some base."""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Iterator

import yardplan.window


def made_of(base: type) -> list[type]:
    """Every class of the program made of a base, once all modules of the window are loaded."""
    for module in pkgutil.walk_packages(yardplan.window.__path__, "yardplan.window."):
        importlib.import_module(module.name)
    return [kind for kind in _below(base) if kind.__module__.startswith("yardplan.")]


def _below(base: type) -> Iterator[type]:
    for one in base.__subclasses__():
        yield one
        yield from _below(one)
