"""Dropping things by one click: shared by plant, pot, standing tree, gate and note."""

from __future__ import annotations

from abc import ABC, abstractmethod

from yardplan.language import tr
from yardplan.units import UnitError
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.tool import Tool
from yardplan.window.tools.typed import parse_typed
from yardplan.yard.ground import Point


class DropTool(Tool, ABC):
    """One click puts one thing down; a typed place `4; 2.5` does the same."""

    takes_lengths = True
    here: Point | None = None

    @abstractmethod
    def drop(self, place: Point) -> None:
        """Put the thing down and commit it."""

    def follow(self, place: Point) -> None:
        """The pointer is at a place: show what a click would do."""

    def ready(self) -> str | None:
        """Why nothing can be dropped now, or None."""
        return None

    def hint(self) -> str:
        return self.ready() or tr("{about}; or type a place like 4; 2.5", about=tr(self.about))

    def move(self, event: Pointer) -> None:
        if self.ready() is None:
            self.here = self.desk.snap(event)
            self.follow(self.here)

    def press(self, event: Pointer) -> None:
        if self.ready() is None:
            self.here = self.desk.snap(event)
            self.drop(self.here)

    def typed(self, text: str) -> None:
        problem = self.ready()
        if problem:
            raise UnitError(problem)
        entry = parse_typed(text, self.open_yard.units)
        if entry.form != "place":
            raise UnitError(tr("'{text}' is not a place: write right and up like 4; 2.5", text=text))
        self.drop((entry.first, entry.second))

    def leave(self) -> None:
        self.cancel()

    def cancel(self) -> bool:
        self.here = None
        self.open_yard.drop_trial()
        self.desk.forget_snap()
        return False
