"""Commands that find a place: move to the nearest clear place, settle, and why the ground is closed here."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject

from yardplan.language import tr, tr_n
from yardplan.units import format_coarse
from yardplan.window.actions import Command
from yardplan.window.clear_ground import IN_HAND
from yardplan.window.tools.moving import moved_words
from yardplan.window.tools.naming import names_of
from yardplan.window.workers import Bench, Ticket
from yardplan.yard import edits
from yardplan.yard.ground import Point
from yardplan.yard.planting import Bed, Container, Planting, Row

if TYPE_CHECKING:
    from yardplan.checks.survey import Survey
    from yardplan.plants.catalogue import Catalogue
    from yardplan.window.main_window import MainWindow
    from yardplan.yard.yard import Yard

#: What a clear place can be looked for.
MOVABLE = (Planting, Row, Bed, Container)
#: Names of the actions, for menus.
NEAREST, SETTLE = "nearest clear place", "settle"


class PlaceCommands(QObject):
    """Adds its actions to the Planting menu; work goes on beside the window."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window, self._yard = window, window.open_yard
        self._bench = Bench(self)
        self._then: Callable[[Any], None] = lambda _answer: None
        self._bench.done.connect(self._take)
        self._bench.broke.connect(_raised)
        self.nearest = window.actions_.add(NEAREST, Command(
            words=tr("&Move to the nearest clear place"), does=self.move_to_nearest, keys=("Ctrl+J",),
            tip=tr("Put what is selected where it raises no conflict, as near as can be")))
        self.settle = window.actions_.add(SETTLE, Command(
            words=tr("&Settle the plants"), does=self.settle_all,
            tip=tr("Move plants by little until no conflict is left that moving can cure; locked ones stay")))
        menu = window.menus["Planting"]
        menu.addSeparator()
        menu.addActions([self.nearest, self.settle])
        self._yard.selection_changed.connect(self._refresh)
        self._yard.shown.connect(self._stale)
        self._yard.closing.connect(self._bench.stop)
        window.canvas.pointed.connect(self._show_why)
        self._yard.clear.changed.connect(self._forget_names)
        # The pointer is told before what it drags has followed.
        self._yard.shown.connect(self._say_again)
        self._yard.clear.changed.connect(self._say_now)
        self._pointed: Point | None = None
        self._names: dict[str, str] = {}
        self._said = ""
        self._refresh()

    @property
    def busy(self) -> bool:
        """True while a place is being looked for."""
        return self._bench.busy

    def _take(self, answer: Any) -> None:
        self._then(answer)

    def _refresh(self) -> None:
        self.nearest.setEnabled(self._chosen() is not None)

    def _stale(self, *_: object) -> None:
        """The yard changed under the work: its answer would not fit any more."""
        self._bench.cancel()

    def _chosen(self) -> frozenset[str] | None:
        """The selected plants, rows, beds and planted pots, which move together; None where one is locked."""
        yard = self._yard.yard
        together = edits.together(yard, self._yard.selection)
        things = yard.named(together)
        if len(things) != len(together) or not any(isinstance(one, Planting | Row | Bed) for one in things):
            return None
        free = all(isinstance(one, MOVABLE) and not one.locked for one in things)
        return together if free else None

    # Move to the nearest clear place

    def move_plant(self, key: str) -> None:
        """The next step of a finding: that plant goes to the nearest clear place."""
        self._yard.select({key})
        self.move_to_nearest()

    def move_to_nearest(self) -> None:
        """Look for the nearest clear place of what is selected and put it there, as one undo step."""
        ids = self._chosen()
        if ids is None:
            self._say(tr("Select plants, rows or beds that are not locked"))
            return
        yard, catalogue, year = self._yard.yard, self._yard.catalogue, self._yard.year
        self._say(tr("Looking for a clear place for {plant}…", plant=names_of(yard, self._yard.selection)))
        self._then = lambda offset: self._put(ids, offset)
        self._bench.ask(lambda ticket: _nearest(ticket, yard, catalogue, year, ids))

    def _put(self, ids: frozenset[str], found: tuple[Point | None]) -> None:
        yard, name = self._yard.yard, names_of(self._yard.yard, self._yard.selection)
        (offset,) = found
        if offset is None:
            self._say(tr("There is no clear place for {name} on this lot", name=name))
            return
        if math.hypot(*offset) < 1e-6:
            self._say(tr("{name} stands on clear ground already", name=name))
            return
        self._yard.commit(
            tr("Move {name} to the nearest clear place", name=name), edits.move(yard, ids, offset)
        )
        self._say(moved_words(self._yard, offset))

    # Settle

    def settle_all(self) -> None:
        """Settle the selected plants, or all when none is selected, as one undo step."""
        yard, catalogue, year = self._yard.yard, self._yard.catalogue, self._yard.year
        chosen = {plant.id for plant in yard.plantings} & self._yard.selection
        self._say(tr("Settling…"))
        self._then = self._settled
        self._bench.ask(lambda ticket: _settle(ticket, yard, catalogue, year, chosen or None))

    def _settled(self, done: Any) -> None:
        left = tr_n("{n} conflict left", "{n} conflicts left", len(done.left)) if done.left else (
            tr("no conflict is left")
        )
        if not done.moves:
            self._say(tr("Nothing moves; {left}", left=left))
            return
        ids = {move.id for move in done.moves}
        far = format_coarse(max(move.far for move in done.moves), self._yard.units)
        self._yard.commit(tr("Settle the plants"), done.yard, selection=ids)
        self._say(tr_n(
            "Settled: {n} plant moved, none farther than {far}; {left}",
            "Settled: {n} plants moved, none farther than {far}; {left}", len(ids), far=far, left=left,
        ))

    # Why the ground is closed

    def _forget_names(self) -> None:
        self._names = {}

    def _show_why(self, place: Point | None) -> None:
        """Say in the status line why the ground under the pointer is closed to the plant in hand."""
        self._pointed = place
        words = self.why_at(place) if place is not None else ""
        if words:
            self._window.status.showMessage(words)
        elif self._said and self._window.status.currentMessage() == self._said:
            self._window.status.clearMessage()
        self._said = words

    def _say_again(self, *_: object) -> None:
        """What is dragged is elsewhere now, or its gesture has ended or is undone: then nothing is said."""
        self._show_why(self._pointed if self._yard.on_trial else None)

    def _say_now(self) -> None:
        """Other clear ground is known."""
        self._show_why(self._pointed)

    def why_at(self, place: Point) -> str:
        """Why a place is closed to the plant in hand or dragged; empty where it is open or nothing is.

        Of what is dragged: why it may not stand where it is now, wherever on it the pointer took it.
        """
        ground = self._yard.clear.ground
        if ground is None or (ground.plant != IN_HAND and not self._yard.on_trial):
            return ""
        if ground.anchor is not None:
            place = self._yard.clear.anchor or ground.anchor
        elif isinstance(dragged := self._yard.shown_yard.find(ground.plant), Planting):
            place = dragged.place
        from yardplan.arrange.closed_words import why
        from yardplan.checks.wording import names_of as all_names

        if not self._names:
            self._names = all_names(self._yard.yard)
        return why(ground, place, self._names, self._yard.units)

    def _say(self, text: str) -> None:
        self._window.commands.say(text)


def _raised(fault: BaseException) -> None:
    """A fault of ours must be seen, not swallowed by the worker."""
    raise fault


def _lit(ticket: Ticket, yard: Yard, catalogue: Catalogue, year: int | None) -> Survey:
    """A survey with its light, on the worker."""
    from yardplan.checks.survey import survey_of
    from yardplan.plants.standing import stand_of
    from yardplan.sun.light import light_report
    from yardplan.sun.scene import scene_of

    stand = stand_of(yard, catalogue, year)
    light = light_report(scene_of(yard, stand), progress=lambda share: ticket.progress(0.2 * share))
    return survey_of(yard, catalogue, year, stand=stand, light=light)


def _nearest(
    ticket: Ticket, yard: Yard, catalogue: Catalogue, year: int | None, ids: frozenset[str]
) -> tuple[Point | None]:
    """The shift to the nearest clear place, light at full detail; in a tuple, as None is an answer too."""
    from yardplan.arrange.clear_together import clear_ground_together
    from yardplan.checks.survey import survey_of

    survey = survey_of(yard, catalogue, year)
    ground = clear_ground_together(survey, ids, light="full", progress=ticket.progress)
    plant = yard.find(ground.plant) if ground is not None else None
    if ground is None or plant is None:
        return (None,)
    start = ground.anchor if ground.anchor is not None else edits.points_of(plant)[0]
    end = ground.nearest(start)
    return (None if end is None else (end[0] - start[0], end[1] - start[1]),)


def _settle(
    ticket: Ticket, yard: Yard, catalogue: Catalogue, year: int | None, chosen: set[str] | None
) -> Any:
    from yardplan.arrange.settle import settle

    survey = _lit(ticket, yard, catalogue, year)
    return settle(survey, chosen, lambda _left: ticket.progress(0.5))
