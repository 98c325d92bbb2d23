"""The commands of the window: words, keys, tips and what they do."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from attrs import evolve
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QDockWidget, QMenu

from yardplan.files.errors import YardFileError
from yardplan.language import percent, tr
from yardplan.window import clipboard
from yardplan.window.actions import Command
from yardplan.window.edges import step_dock
from yardplan.window.menus import FOR_GROUND, FOR_SELECTION, NEED_THINGS
from yardplan.window.tools import commands
from yardplan.window.tools.band import BandTool
from yardplan.window.tools.carry import CarryTool
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.picking import cycle
from yardplan.window.tools.toolbox import TOOLS, ToolKind
from yardplan.yard import edits

if TYPE_CHECKING:
    from yardplan.window.main_window import MainWindow

_Std = QKeySequence.StandardKey
#: One press of the zoom keys.
_ZOOM = 1.25
#: A line about what was done stays so long, milliseconds.
SAID_MS = 4000


class CommandTable:
    """Makes the window's actions."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self._yard, self._canvas = window.open_yard, window.canvas
        self._file()
        self._undo()
        self._edit()
        self._change()
        self._zoom()
        self._layers()
        self._parts()
        window.actions_.add_tools(TOOLS, self._use)
        self._planting()
        self.recent_menu = QMenu(tr("Open &recent"), window)
        self.samples_menu = QMenu(tr("Open a sa&mple"), window)
        self._yard.selection_changed.connect(self._selection_changed)
        self._selection_changed()

    def _add(
        self, name: str, words: str, does: Callable[[], object], *keys: _Std | str, **more: object
    ) -> QAction:
        command = Command(words=words, does=does, keys=keys, **more)  # type: ignore[arg-type]
        return self._window.actions_.add(name, command)

    def _use(self, kind: ToolKind) -> None:
        lost = self._canvas.tool.half_drawn
        self._canvas.use(kind)
        if lost:
            self._canvas.desk.tell(tr("The drawing that was not finished was given up"))
        self._canvas.setFocus()
        if kind.icon in ("plant", "row") and self._yard.in_hand is None:
            self._window.show_choice()

    def _file(self) -> None:
        files, window = self._window.documents, self._window
        self._add("new", tr("&New…"), files.new, _Std.New, tip=tr("Begin another yard"))
        self._add("open", tr("&Open…"), files.open, _Std.Open, tip=tr("Open a yard file"))
        self._add("save", tr("&Save"), files.save, _Std.Save, tip=tr("Write the yard to its file"))
        self._add(
            "save as", tr("Save &as…"), files.save_as, _Std.SaveAs, tip=tr("Write the yard to another file")
        )
        self._add("close", tr("&Close"), window.close, _Std.Close, tip=tr("Close this yard"))
        self._add("quit", tr("&Quit"), window.close, _Std.Quit, role=QAction.MenuRole.QuitRole)

    def _undo(self) -> None:
        stack, window = self._yard.undo_stack, self._window
        undo, redo = stack.createUndoAction(window, tr("&Undo")), stack.createRedoAction(window, tr("&Redo"))
        undo.setShortcuts(QKeySequence.keyBindings(_Std.Undo))
        redo.setShortcuts(QKeySequence.keyBindings(_Std.Redo))
        # Said as a whole: other languages put the word behind, or a mark between.
        stack.undoTextChanged.connect(
            lambda step: undo.setText(tr("&Undo {step}", step=step) if step else tr("&Undo"))
        )
        stack.redoTextChanged.connect(
            lambda step: redo.setText(tr("&Redo {step}", step=step) if step else tr("&Redo"))
        )
        # Qt connects its own slot first: what was undone can be redone next, and the other way round.
        undo.triggered.connect(lambda: self.say(tr("Undone: {step}", step=stack.redoText())))
        redo.triggered.connect(lambda: self.say(tr("Redone: {step}", step=stack.undoText())))
        window.actions_.add_existing("undo", undo)
        window.actions_.add_existing("redo", redo)

    def _edit(self) -> None:
        yard, say = self._yard, self.say
        self._add("cut", tr("Cu&t"), self._cut, _Std.Cut)
        self._add("copy", tr("&Copy"), lambda: say(clipboard.copy(yard)), _Std.Copy)
        self._add("paste", tr("&Paste"), self._paste, _Std.Paste)
        self._add("duplicate", tr("Dupl&icate"), lambda: say(commands.duplicate(yard)), "Ctrl+D",
                  tip=tr("Put copies beside what is selected"))
        self._add("delete", tr("&Delete"), lambda: say(commands.delete(yard)), "Del", on_sheet=True)
        self._add("select all", tr("Select &all"), lambda: commands.select_all(yard), _Std.SelectAll)
        self._add("select within", tr("Select &within…"), self._select_within, "Ctrl+B",
                  tip=tr("What lies in an area, by two clicks or typed corners"))
        self._add("deselect", tr("Select &nothing"), lambda: yard.select(()), _Std.Deselect)
        self._add("next thing", tr("Select ne&xt thing"), lambda: cycle(yard, 1),
                  tip=tr("Tab on the sheet does the same"))

    def _change(self) -> None:
        yard, window = self._yard, self._window
        self._add("carry", tr("&Move by clicks…"), self._carry, "Ctrl+M",
                  tip=tr("What is selected follows the pointer until you click or type a place"))
        self._add("lock", tr("&Lock"), lambda: commands.set_locked(yard, True), "Ctrl+L",
                  tip=tr("Locked things are not moved or deleted"))
        self._add("unlock", tr("Unloc&k"), lambda: commands.set_locked(yard, False), "Ctrl+Shift+L")
        self._add(
            "fields", tr("&Fields"), window.show_fields, "F2", tip=tr("Go to the fields of what is selected")
        )

    def _zoom(self) -> None:
        canvas = self._canvas
        # Held down, the key zooms as the wheel does: the sheet is painted sharp when it rests.
        zoom_in, zoom_out = (partial(canvas.zoom_by, by, settle=True) for by in (_ZOOM, 1 / _ZOOM))
        self._add("zoom in", tr("Zoom &in"), zoom_in, _Std.ZoomIn, "Ctrl+=")
        self._add("zoom out", tr("Zoom &out"), zoom_out, _Std.ZoomOut)
        self._add("fit", tr("&Fit the yard"), canvas.fit, "Ctrl+1", tip=tr("All of the yard in view"))
        self._add("true size", tr("Scale 1:&100"), canvas.zoom_true, "Ctrl+0",
                  tip=tr("One metre is one centimetre on this screen"))
        self._add("wheel zooms", tr("&Wheel zooms"), self._toggle_wheel, check=True,
                  tip=tr("Off: a plain mouse wheel moves the sheet; Ctrl with the wheel always zooms"))

    def _layers(self) -> None:
        self._add("snap", tr("&Snap"), self._toggle_snap, "F9", check=True,
                  tip=tr("Draw places to corners, edges, centres and the grid; Alt suspends it"))
        self._layer("grid", tr("&Grid"), "Shift+F9", tip=tr("The dots of the grid"))
        self._layer(
            "marks", tr("Mar&ks of findings"), "Ctrl+Shift+M", tip=tr("Off: a quiet plan without marks")
        )
        self._layer("mature", tr("Full-size outli&ne"), tip=tr("A thin line at the size of the grown plant"))
        self._layer(
            "partners",
            tr("Partner &lines"),
            "Ctrl+Shift+N",
            tip=tr(
                "Who sets fruit on the plant selected or dragged. Whole: sets; dashed: not proved; "
                "dotted: weak or far; arrow: one way only"
            ),
        )
        self._layer("all_partners", tr("Partner lines of &all plants"), "Ctrl+Alt+N",
                    tip=tr("A thin line from every plant to its best partner"), on=False)
        self._layer(
            "shadows", tr("&Shadows"), "Ctrl+Shift+H", tip=tr("Shadows at the day and hour set below")
        )

    def _layer(self, name: str, words: str, *keys: str, tip: str, on: bool = True) -> None:
        self._add(name, words, lambda: self._toggle_layer(name), *keys, check=on, tip=tip)

    def _parts(self) -> None:
        window = self._window
        self._add("side", tr("Panels &beside the sheet"), lambda: _toggle(window.side_dock), "F7", check=True)
        self._add("season", tr("Season s&trip"), lambda: _toggle(window.season_dock), "F8", check=True)
        for name, words, dock, steps, key in (
            ("wider side", tr("Wider panels beside the sheet"), "side_dock", 1, "Shift+F7"),
            ("narrower side", tr("Narrower panels beside the sheet"), "side_dock", -1, "Ctrl+F7"),
            ("taller season", tr("Taller season strip"), "season_dock", 1, "Shift+F8"),
            ("lower season", tr("Lower season strip"), "season_dock", -1, "Ctrl+F8"),
        ):
            self._add(name, words, partial(self._step_dock, dock, steps), key,
                      tip=tr("As dragging its edge does, one step a press"))
        self._add("full screen", tr("F&ull screen"), self._full_screen, _Std.FullScreen)
        units = QActionGroup(window)
        for name, words, system in (
            ("feet", tr("Feet and inches"), "imperial"), ("metres", tr("Metres"), "metric"),
        ):
            units.addAction(self._add(name, words, partial(self._units, system), check=False))
        self._add("find command", tr("&Find a command…"), window.find_command, "Ctrl+K",
                  tip=tr("Type what you want to do"))

    def _step_dock(self, name: str, steps: int) -> None:
        dock: QDockWidget = getattr(self._window, name)
        share = percent(step_dock(self._window, dock, steps))
        said = tr("{panel}: {share} of the window", panel=dock.windowTitle(), share=share)
        self._window.status.showMessage(said, SAID_MS)

    def _planting(self) -> None:
        window, yard = self._window, self._yard
        self._add("choose", tr("&Choose a plant…"), window.show_choice, _Std.Find,
                  tip=tr("Search the catalogue; what you pick is in hand"))
        self._add("plants list", tr("&Everything on the plan"), window.show_plants, "Ctrl+E",
                  tip=tr("The list of all things, in step with the sheet"))
        self._add("year less", tr("A year &earlier"), lambda: self._year(-1), "Ctrl+[")
        self._add("year more", tr("A year &later"), lambda: self._year(1), "Ctrl+]")
        self._add("mature size", tr("&Full size"), lambda: yard.set_year(None), "Ctrl+\\")

    # What commands do

    def say(self, text: str) -> None:
        """Show and speak what was done."""
        if text:
            self._canvas.desk.say(text)
            self._window.status.showMessage(text, SAID_MS)

    def _cut(self) -> None:
        if clipboard.copy(self._yard):
            self.say(commands.delete(self._yard))

    def _paste(self) -> None:
        try:
            self.say(clipboard.paste(self._yard))
        except YardFileError as error:
            self._window.documents.tell(tr("Nothing was pasted"), error)

    def _carry(self) -> None:
        chosen = self._yard.selection

        def begin(desk: Desk) -> CarryTool:
            # Leaving the pointer lets go of what was selected, and that is what shall be moved.
            self._yard.select(chosen)
            return CarryTool(desk)

        if chosen:
            self._canvas.use(begin)
            self._canvas.setFocus()

    def _select_within(self) -> None:
        self._canvas.use(BandTool)
        self._canvas.setFocus()

    def _toggle_snap(self) -> None:
        self._canvas.desk.snapper.on = self._window.actions_["snap"].isChecked()

    def _toggle_wheel(self) -> None:
        self._canvas.wheel.zooms = self._window.actions_["wheel zooms"].isChecked()

    def show_layer(self, layer: str) -> None:
        """Show or hide a layer of the plan, as its command is ticked."""
        self._toggle_layer(layer)

    def _toggle_layer(self, layer: str) -> None:
        shown = self._window.actions_[layer].isChecked()
        self._canvas.scene.layers = evolve(self._canvas.scene.layers, **{layer: shown})
        self._canvas.scene.forget()
        self._canvas.update()

    def _full_screen(self) -> None:
        if self._window.isFullScreen():
            self._window.showNormal()
        else:
            self._window.showFullScreen()

    def _units(self, system: str) -> None:
        words = tr("Show feet and inches") if system == "imperial" else tr("Show metres")
        self._yard.commit(words, edits.set_site(self._yard.yard, units=system))

    def tick_units(self) -> None:
        """The menu tells which measure is shown."""
        self._window.actions_["feet" if self._yard.units == "imperial" else "metres"].setChecked(True)

    def _year(self, step: int) -> None:
        from yardplan.window.panels.year_control import LAST_YEAR

        year = self._yard.year
        if year is None:
            wanted = LAST_YEAR if step < 0 else None
        else:
            wanted = None if year + step > LAST_YEAR else max(year + step, 0)
        self._yard.set_year(wanted)

    def context_names(self) -> tuple[str, ...]:
        """The commands offered for the selection, or for bare ground."""
        return FOR_SELECTION if self._yard.selection else FOR_GROUND

    def _selection_changed(self) -> None:
        things = bool(self._yard.selection - {"lot"})
        for name in NEED_THINGS:
            self._window.actions_[name].setEnabled(things)


def _toggle(dock: QDockWidget) -> None:
    dock.setVisible(not dock.isVisible())
