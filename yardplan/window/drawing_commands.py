"""Commands of the menu Draw besides the tools: forms of areas, rounding, strips alongside, pictures."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint
from PySide6.QtGui import QAction

from yardplan.language import tr
from yardplan.units import UnitError, format_length, parse_length
from yardplan.window.actions import Command
from yardplan.window.icons import icon
from yardplan.window.picture_commands import PictureCommands
from yardplan.window.theme import colours_now
from yardplan.window.tools.areas import AreaTool, Form
from yardplan.window.tools.naming import names_of
from yardplan.window.tools.toolbox import TOOLS
from yardplan.yard import curves, edits, handles
from yardplan.yard.edges import outline_of

if TYPE_CHECKING:
    from yardplan.window.main_window import MainWindow

#: What is offered as a radius where corners were not rounded before, metres.
_RADIUS = 0.5


class DrawingCommands:
    """Adds its commands to the menu Draw."""

    def __init__(self, window: MainWindow) -> None:
        self._window, self._yard, self._canvas = window, window.open_yard, window.canvas
        self.pictures = PictureCommands(window)
        self._drawn: list[tuple[QAction, str]] = []
        menu = window.menus["Draw"]
        for group in (self._forms(), self._shapes(), self._pictures()):
            menu.addSeparator()
            menu.addActions(group)
        self.dress()
        if window.theme is not None:
            window.theme.changed.connect(self.dress)

    def dress(self, *_: object) -> None:
        """Draw the pictures in the ink of the present scheme."""
        for action, picture in self._drawn:
            action.setIcon(icon(picture, colours_now().ink))

    def _add(
        self, name: str, picture: str, words: str, does: Callable[[], object], *keys: str, tip: str
    ) -> QAction:
        command = Command(words=words, does=does, keys=keys, tip=tip, on_sheet=bool(keys))
        action = self._window.actions_.add(name, command)
        if picture:
            self._drawn.append((action, picture))
        return action

    def _forms(self) -> list[QAction]:
        tip = tr("For the lot line, paving and beds: the tool in use, or a bed")
        return [
            self._add("draw corners", "corners", tr("Draw from &corner to corner"),
                      lambda: self.draw("corners"), tip=tip),
            self._add("draw curve", "curve", tr("Draw a smooth c&urve"), lambda: self.draw("smooth"),
                      tip=tip),
            self._add("draw circle", "circle", tr("Draw a ci&rcle"), lambda: self.draw("circle"), tip=tip),
            self._add("next form", "", tr("&Next form: corners, curve, circle"), lambda: self.draw(None), "C",
                      tip=tr("From corners to a curve to a circle, also in the middle of drawing")),
        ]

    def _shapes(self) -> list[QAction]:
        # Never off: with nothing fit selected they say what to select.
        rounding = self._add(
            "round corners", "rounded", tr("R&ound the corners…"), self.round_corners,
            tip=tr("Of the selected bed, paving or lot line, by a typed radius"))
        alongside = self._add(
            "alongside", "alongside", tr("Path or bed &alongside…"), self.open_alongside, "A",
            tip=tr("Along the selected fence, building, bed or lot line, at a typed distance and width"))
        deed = self._add(
            "deed", "", tr("Lot line from a &deed…"), self.open_deed,
            tip=tr("By its bearings and distances; the closing error is told and shared out"))
        return [rounding, alongside, deed]

    def _pictures(self) -> list[QAction]:
        return [
            self._add("picture", "picture", tr("&Picture under the plan…"), self.pictures.choose,
                      tip=tr("A scan, survey or aerial photograph to draw over: PNG, JPEG or a PDF page")),
            self._add("picture scale", "", tr("Set the picture to &scale"), self.pictures.to_scale,
                      tip=tr("Click two places in it and type how far apart they are")),
            self._add("picture select", "", tr("Select the p&icture"), self.pictures.choose_next,
                      tip=tr("Also one that is locked: turn, fade, lock and unlock it in its fields")),
        ]

    def draw(self, form: Form | None) -> None:
        """Draw in a form, or the next one, with the tool in use; with a bed where it draws no areas."""
        if not isinstance(self._canvas.tool, AreaTool):
            self._canvas.use(next(kind for kind in TOOLS if kind.icon == "bed"))
            form = form or "smooth"
        tool = self._canvas.tool
        if isinstance(tool, AreaTool):
            tool.take_form(form)
        self._canvas.refresh_tool()
        self._canvas.setFocus()

    def _one(self) -> str:
        """The one thing selected, or the lot line; empty for none or several."""
        chosen = self._yard.selection
        return next(iter(chosen)) if len(chosen) == 1 else ""

    def round_corners(self) -> None:
        """Ask for a radius and round the corners of what is selected; nothing makes them sharp again."""
        key, yard, units = self._one(), self._yard.yard, self._yard.units
        if not handles.can_bend(yard, key):
            self._window.commands.say(tr("Select a bed, paving or the lot line first"))
            return
        curve = edits.curve_of(yard, key)
        before = curve.radius if curve is not None and curve.kind == "rounded" else _RADIUS
        typed = self._window.questions.line(
            tr("Round the corners by which radius? 0 makes them sharp."), format_length(before, units))
        if typed is None:
            return
        try:
            radius = parse_length(typed, units)
        except UnitError as error:
            self._window.questions.tell_fault(tr("No corner was rounded"), str(error))
            return
        self._round(key, radius)

    def _round(self, key: str, radius: float) -> None:
        yard = self._yard.yard
        name = names_of(yard, {key})
        most = curves.largest_radius(handles.handles_of(yard, key))
        form = "rounded" if radius > 0 else "corners"
        self._yard.commit(tr("Round corners of {name}", name=name), handles.bent(yard, key, form, radius))
        if radius > most:
            said = format_length(most, self._yard.units)
            self._window.commands.say(tr("Rounded as far as the edges allow, by at most {most}", most=said))

    def open_alongside(self) -> None:
        """Choose a path or bed along what is selected, seen on the plan before it is drawn."""
        from yardplan.window.dialogs.alongside_box import AlongsideBox

        key = self._one()
        if not self._has_sides(key):
            self._window.commands.say(tr("Select a fence, a building, a bed or the lot line first"))
            return
        box = AlongsideBox(self._yard, key, self._window)
        box.open()
        # At the upper left of the sheet, so that most of the plan stays in sight.
        box.move(self._canvas.mapToGlobal(self._canvas.rect().topLeft()) + _corner())

    def open_deed(self) -> None:
        """Type or paste the calls of a deed, seen on the plan before the lot line is drawn."""
        from yardplan.window.dialogs.deed_box import DeedBox

        box = DeedBox(self._yard, self._window)
        box.open()
        box.move(self._canvas.mapToGlobal(self._canvas.rect().topLeft()) + _corner())

    def _has_sides(self, key: str) -> bool:
        return len(outline_of(self._yard.yard, key)) > 1 if key else False


def _corner() -> QPoint:
    return QPoint(24, 24)
