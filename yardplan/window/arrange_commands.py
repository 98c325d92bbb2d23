"""Commands that put several things in order, the layers of the plan, and the list of steps."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtGui import QAction
from PySide6.QtWidgets import QDialog, QMenu

from yardplan.language import later, tr
from yardplan.units import UnitError, format_length
from yardplan.window.actions import Command
from yardplan.window.tools.naming import names_of
from yardplan.yard.ground import Point
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from collections.abc import Callable

    from yardplan.window.main_window import MainWindow
    from yardplan.window.tools.arranging import Line, Way

_LINES: dict[Line, str] = {
    "left": later("In line at the &left"),
    "right": later("In line at the &right"),
    "top": later("In line at the &top"),
    "bottom": later("In line at the &bottom"),
    "middle across": later("In line up and &down"),
    "middle up": later("In line a&cross"),
}
_LAYERS = {
    "pictures": later("P&ictures under the plan"),
    "structures": later("&Buildings, walls and paving"),
    "services": later("&Services"),
    "plants": later("&Plants"),
    "notes": later("&Notes"),
    "dimensions": later("&Dimension lines"),
    "labels": later("Names and si&zes"),
}


class ArrangeCommands:
    """Adds the menus Arrange and Layers and the list of steps."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self._yard = window.open_yard
        self._history: QDialog | None = None
        self.arrange = QMenu(tr("Arran&ge"), window)
        self._lines()
        self._turns()
        window.menus["Edit"].addSeparator()
        window.menus["Edit"].addMenu(self.arrange)
        steps = self._add(
            "history", tr("&Steps…"), self.show_history, tip=tr("Every step so far, to go back to")
        )
        window.menus["Edit"].addAction(steps)
        self.layers = QMenu(tr("La&yers"), window)
        for layer, words in _LAYERS.items():
            self.layers.addAction(self._add(layer, tr(words), partial(self._layer, layer), check=True))
        window.menus["View"].insertMenu(window.actions_["side"], self.layers)
        self._yard.selection_changed.connect(self._refresh)
        self._refresh()

    def _add(
        self, name: str, words: str, does: Callable[[], object], *, tip: str = "", check: bool | None = None
    ) -> QAction:
        return self._window.actions_.add(name, Command(words=words, does=does, tip=tip, check=check))

    def _lines(self) -> None:
        for line, words in _LINES.items():
            self.arrange.addAction(self._add(f"align {line}", tr(words), partial(self._align, line)))
        self.arrange.addSeparator()
        ways: dict[Way, str] = {"across": tr("Space evenly &across"), "up": tr("Space evenl&y up")}
        for way, words in ways.items():
            self.arrange.addAction(self._add(f"space {way}", words, partial(self._space, way)))
        self.arrange.addSeparator()

    def _turns(self) -> None:
        ways: dict[Way, str] = {"across": tr("Swap left and right"), "up": tr("Swap top and bottom")}
        for way, words in ways.items():
            self.arrange.addAction(self._add(f"mirror {way}", words, partial(self._mirror, way)))
        self.arrange.addAction(self._add(
            "mirror at", tr("Mirror at a line…"), self._mirror_at,
            tip=tr("Through a typed point, in a typed direction"),
        ))
        for degrees, words in ((90.0, tr("Turn a quarter left")), (-90.0, tr("Turn a quarter right"))):
            self.arrange.addAction(self._add(f"turn {degrees:.0f}", words, partial(self._turn, degrees)))
        tip = tr("By typed degrees, about a typed point")
        self.arrange.addAction(self._add("turn by", tr("Turn by…"), self._turn_by, tip=tip))
        self.arrange.addSeparator()
        tip = tr("So many, so far apart: 5 x 2.5 m < 90")
        self.arrange.addAction(self._add("repeat", tr("Re&peat in a row…"), self._repeat, tip=tip))

    # What commands do

    def _commit(self, verb: str, yard: Yard) -> None:
        before = self._yard.yard
        if yard == before:
            return
        text = tr(verb, things=names_of(before, self._movable()))
        self._yard.commit(text, yard)
        self._window.commands.say(text)

    def _movable(self) -> frozenset[str]:
        from yardplan.window.tools.moving import movable

        return movable(self._yard.yard, self._yard.selection)

    def _align(self, line: Line) -> None:
        from yardplan.window.tools.arranging import align

        self._commit(later("Bring {things} into line"), align(self._yard.yard, self._movable(), line))

    def _space(self, way: Way) -> None:
        from yardplan.window.tools.arranging import space_evenly

        self._commit(later("Space {things}"), space_evenly(self._yard.yard, self._movable(), way))

    def _mirror(self, way: Way) -> None:
        from yardplan.window.tools.arranging import mirror

        self._commit(later("Swap {things}"), mirror(self._yard.yard, self._movable(), way))

    def _mirror_at(self) -> None:
        from yardplan.window.tools.arranging import middle_of_all, mirror_at, parse_mirror

        middle = middle_of_all(self._yard.yard, self._movable()) if self._movable() else (0.0, 0.0)
        typed = self._window.questions.line(
            tr("Mirror at the line through which point, in which direction?"), f"{self._place(middle)} < 90"
        )
        if typed is None:
            return
        try:
            line = parse_mirror(typed, self._yard.units, north=self._yard.yard.site.north)
        except UnitError as error:
            self._window.questions.tell_fault(tr("Nothing was mirrored"), str(error))
            return
        self._commit(later("Swap {things}"), mirror_at(self._yard.yard, self._movable(), *line))

    def _place(self, point: Point) -> str:
        return "; ".join(format_length(part, self._yard.units) for part in point)

    def _turn(self, degrees: float, about: Point | None = None) -> None:
        from yardplan.window.tools.arranging import turn

        self._commit(later("Turn {things}"), turn(self._yard.yard, self._movable(), degrees, about))

    def _turn_by(self) -> None:
        from yardplan.window.tools.arranging import parse_turn

        typed = self._window.questions.line(
            tr("Turn by how many degrees, to the left? About a point: 45 @ 4; 2.5"), "45"
        )
        if typed is None:
            return
        try:
            degrees, about = parse_turn(typed, self._yard.units)
        except UnitError as error:
            self._window.questions.tell_fault(tr("Nothing was turned"), str(error))
            return
        self._turn(degrees, about)

    def _repeat(self) -> None:
        from yardplan.window.tools.arranging import parse_repeat, repeat

        typed = self._window.questions.line(tr("How many in all, and how far apart?"), "5 x 2.5 m")
        if typed is None:
            return
        try:
            count, step = parse_repeat(typed, self._yard.units, north=self._yard.yard.site.north)
        except UnitError as error:
            self._window.questions.tell_fault(tr("Nothing was repeated"), str(error))
            return
        ids = self._yard.selection & self._yard.yard.ids()
        yard, every = repeat(self._yard.yard, ids, count, step)
        self._yard.commit(tr("Repeat {things}", things=names_of(self._yard.yard, ids)), yard, selection=every)

    def _layer(self, layer: str) -> None:
        self._window.commands.show_layer(layer)

    def show_history(self) -> None:
        """The list of steps; choosing one goes back or forward to it."""
        from PySide6.QtWidgets import QUndoView, QVBoxLayout

        from yardplan.window.dialogs.box import BesideBox, closing_line

        if self._history is None:
            box = BesideBox(self._window)
            box.setWindowTitle(tr("Steps"))
            view = QUndoView(self._yard.undo_stack)
            view.setEmptyLabel(tr("As it was opened"))
            view.setAccessibleName(tr("Steps so far"))
            lines = QVBoxLayout(box)
            lines.addWidget(view)
            lines.addLayout(closing_line(box))
            box.resize(320, 420)
            self._history = box
        self._history.show()
        self._history.raise_()
        # Laid out before the style gave its lines their height, each would cover half of the one above.
        for steps in self._history.findChildren(QUndoView):
            steps.doItemsLayout()

    def _refresh(self) -> None:
        many = len(self._yard.selection - {"lot"})
        for action in self.arrange.actions():
            name = action.objectName()
            least = 3 if name.startswith("space") else 2 if name.startswith("align") else 1
            if name:
                action.setEnabled(many >= least)
