"""Commands on what is selected: type over the length of an edge; make, name and end groups."""

from __future__ import annotations

from typing import TYPE_CHECKING

from yardplan.language import tr
from yardplan.window.actions import Command
from yardplan.window.pacing import Paced
from yardplan.window.tools import picking
from yardplan.window.tools.edge_figures import sole_edged

if TYPE_CHECKING:
    from PySide6.QtGui import QAction
    from PySide6.QtWidgets import QMenu

    from yardplan.window.main_window import MainWindow


class ShapeCommands:
    """Adds its actions to the menu Arrange and the edge lengths to Edit."""

    def __init__(self, window: MainWindow, arrange: QMenu) -> None:
        self._window = window
        self._yard = window.open_yard
        self.edges = self._add("edge lengths", Command(
            words=tr("T&ype edge lengths"), does=self._edges, keys=("Shift+F2",),
            tip=tr("Type over the lengths of what is selected; a click on a length does it too")))
        self.group = self._add("group", Command(
            words=tr("&Group"), does=self._group, keys=("Ctrl+G",),
            tip=tr("What is selected is picked, moved, turned, copied and deleted together; "
                   "a double click picks one member")))
        self.ungroup = self._add("ungroup", Command(
            words=tr("&Ungroup"), does=self._ungroup, keys=("Ctrl+Shift+G",),
            tip=tr("The things of the group are picked one by one again")))
        self.rename = self._add("rename group", Command(
            words=tr("&Name the group…"), does=self._rename, tip=tr("The name it has in the list")))
        window.menus["Edit"].insertAction(window.actions_["fields"], self.edges)
        before = arrange.actions()[0]
        arrange.insertActions(before, [self.group, self.ungroup, self.rename])
        arrange.insertSeparator(before)
        self._yard.selection_changed.connect(self._refresh)
        self._pace = Paced(self._yard, self._refresh, window)
        self._yard.shown.connect(self._pace.soon)
        self._refresh()

    def _add(self, name: str, command: Command) -> QAction:
        return self._window.actions_.add(name, command)

    def _edges(self) -> None:
        self._window.canvas.edges.begin_first()

    def _group(self) -> None:
        self._window.commands.say(picking.group(self._yard))

    def _ungroup(self) -> None:
        self._window.commands.say(picking.ungroup(self._yard))

    def _rename(self) -> None:
        old = picking.sole_group(self._yard)
        typed = self._window.questions.line(tr("What is this group called?"), old or "")
        if typed is not None:
            self._window.commands.say(picking.rename(self._yard, typed))

    def _refresh(self, *_: object) -> None:
        chosen = self._yard.selection
        name = picking.sole_group(self._yard) if chosen and self._yard.yard.groups else None
        grouped = bool(self._yard.yard.groups) and (name is not None or picking.any_grouped(self._yard))
        self.group.setEnabled(len(chosen - {"lot"}) > 1)
        self.ungroup.setEnabled(grouped)
        self.rename.setEnabled(name is not None)
        self.edges.setEnabled(bool(sole_edged(self._yard)))
