"""The Light menu: the overlay's measures, before and after planting, the spot, the day played, the clock."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtGui import QAction, QActionGroup

from yardplan.language import later, tr
from yardplan.sun.clock import Clock
from yardplan.sun.ground_kinds import KINDS, PLANTINGS, Kind, Planting
from yardplan.window.actions import Command
from yardplan.window.light.clocks import on_clock, zone_fault
from yardplan.window.light.words import KIND_TIPS, KIND_WORDS, PLANTING_TIPS, PLANTING_WORDS
from yardplan.window.pacing import Paced

if TYPE_CHECKING:
    from yardplan.window.light.room import LightRoom
    from yardplan.window.main_window import MainWindow

_CLOCKS: dict[Clock, tuple[str, str]] = {
    "solar": (later("Su&n time"), later("12:00 is when the sun stands highest")),
    "zone": (
        later("&Local time"),
        later("The clock of the yard's time zone, with summer time where it is kept"),
    ),
}


class LightCommands:
    """Adds its actions to the window's Light menu and keeps their ticks true."""

    def __init__(self, window: MainWindow, room: LightRoom) -> None:
        self._window, self._room = window, room
        self._yard = window.open_yard
        self._menu = window.menus["Light"]
        self._overlay()
        self._menu.addSeparator()
        self._plants()
        self._moment()
        room.ground.chosen.connect(self.refresh)
        room.play.turned.connect(self.refresh)
        self._yard.moment_changed.connect(self.refresh)
        self._yard.selection_changed.connect(self.refresh)
        self._pace = Paced(self._yard, self.refresh, window)
        self._yard.light_changed.connect(self._pace.soon)
        self._yard.loaded.connect(self.refresh)
        self.refresh()

    def _add(self, name: str, command: Command, group: QActionGroup | None = None) -> QAction:
        action = self._window.actions_.add(name, command)
        if group is not None:
            group.addAction(action)
        self._menu.addAction(action)
        return action

    def _overlay(self) -> None:
        ground = self._room.ground
        self.shown = self._add("light overlay", Command(
            words=tr("&Hours of sun on the ground"), does=lambda: ground.show(not ground.on),
            keys=("Ctrl+Shift+O",), check=False,
            tip=tr("Tones and lines of equal hours over the whole lot, with a legend")))
        self.legend = self._add("light legend", Command(
            words=tr("Le&gend on the sheet"), does=self._room.toggle_legend, check=True,
            tip=tr("Classes, days and state of the light in the corner that hides least")))
        self._menu.addSeparator()
        kinds = QActionGroup(self._menu)
        self.kinds = {kind: self._add(f"light {kind}", Command(
            words=tr(KIND_WORDS[kind]), does=self._kind(kind), check=False, tip=tr(KIND_TIPS[kind])), kinds)
            for kind in KINDS}
        self._menu.addSeparator()
        plantings = QActionGroup(self._menu)
        self.plantings = {planting: self._add(f"light {planting}", Command(
            words=tr(PLANTING_WORDS[planting]), does=self._planting(planting), check=False,
            tip=tr(PLANTING_TIPS[planting])), plantings) for planting in PLANTINGS}

    def _kind(self, kind: Kind) -> Callable[[], None]:
        return lambda: self._room.ground.choose(kind)

    def _planting(self, planting: Planting) -> Callable[[], None]:
        return lambda: self._room.ground.choose_planting(planting)

    def _plants(self) -> None:
        self.takers = self._add("light takers", Command(
            words=tr("&Who takes its light"), does=self._room.show_shade, keys=("Ctrl+Shift+W",),
            tip=tr("The hours that each thing takes from the plant selected, marked on the sheet")))

    def _moment(self) -> None:
        self._menu.addSeparator()
        self.play = self._add("play day", Command(
            words=tr("&Play the day"), does=lambda: self._room.play.turn(not self._room.play.playing),
            keys=("Ctrl+Shift+Space",), check=False,
            tip=tr("Shadows from sunrise to sunset; again stops it and goes back to the hour set")))
        clocks = QActionGroup(self._menu)
        self.clocks = {kind: self._add(f"clock {kind}", Command(
            words=tr(words), does=self._clock(kind), check=False, tip=tr(tip)), clocks)
            for kind, (words, tip) in _CLOCKS.items()}

    def _clock(self, kind: Clock) -> Callable[[], None]:
        yard = self._yard
        return lambda: yard.set_moment(on_clock(yard.moment, yard.shown_yard.site, kind))

    def refresh(self, *_: object) -> None:
        """Tick what holds; grey what cannot be."""
        ground = self._room.ground
        self.shown.setChecked(ground.on)
        self.legend.setEnabled(ground.on)
        self.legend.setChecked(self._room.layer.legend)
        self.kinds[ground.kind].setChecked(True)
        self.plantings[ground.planting].setChecked(True)
        self.play.setChecked(self._room.play.playing)
        self.clocks[self._yard.moment.clock].setChecked(True)
        fault = zone_fault(self._yard.shown_yard.site)
        self.clocks["zone"].setEnabled(not fault)
        self.clocks["zone"].setStatusTip(fault or tr(_CLOCKS["zone"][1]))
        self.takers.setEnabled(self._room.has_subject())
