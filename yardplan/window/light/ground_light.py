"""The light over the ground as the overlay shows it: by which measure, before or after planting, how fresh.

The season's mean comes with the light report; every other measure is worked out here on a worker, coarse
first. While things are dragged both come frame by frame from the drag.
"""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from attrs import evolve, frozen
from PySide6.QtCore import QObject, Signal

from yardplan.sun.ground_kinds import Kind, Planting, Wanted, ground_of
from yardplan.sun.position import LatitudeError
from yardplan.sun.scene import scene_of
from yardplan.window.light.refiner import Refiner
from yardplan.window.light.words import date_of
from yardplan.window.live_checks import concerns_light
from yardplan.window.workers import Ticket
from yardplan.yard.change import Change
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.plants.stand import Stand
    from yardplan.sun.light import GroundField
    from yardplan.sun.season import Detail
    from yardplan.window.open_yard import OpenYard


@frozen(eq=False)
class _Answer:
    """A ground and what it was asked for; `field` None where the site is not on Earth."""

    yard: Yard
    year: int | None
    wanted: Wanted
    field: GroundField | None


def _ground(ticket: Ticket, yard: Yard, stand: Stand, wanted: Wanted, detail: Detail) -> _Answer:
    """Runs on a worker with frozen values."""
    from yardplan.drawing.light_picture import prepare

    try:
        field = ground_of(scene_of(yard, stand), wanted, detail, ticket.progress)
    except LatitudeError:
        return _Answer(yard, stand.year, wanted, None)
    prepare(field)
    return _Answer(yard, stand.year, wanted, field)


class GroundLight(QObject):
    """What the overlay shows. `field` None: not known (yet); `fresh` False: of another state of the yard."""

    #: What is shown, or how fresh it is.
    changed = Signal()
    #: What is wanted: on or off, measure, planting.
    chosen = Signal()
    progress = Signal(float)

    def __init__(self, open_yard: OpenYard, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._yard = open_yard
        self._checks = open_yard.checks
        self.on = False
        self.kind: Kind = "season"
        self.planting: Planting = "planted"
        self.field: GroundField | None = None
        self.fresh = True
        self.share = 1.0
        self._dragging = False
        self._last: _Answer | None = None
        self._refiner = Refiner(self)
        self._refiner.done.connect(self._arrived)
        self._refiner.broke.connect(self._broke)
        self._refiner.progress.connect(self._told)
        open_yard.light_changed.connect(self._light_changed)
        open_yard.shown.connect(self._shown)
        open_yard.loaded.connect(self._renew)
        open_yard.moment_changed.connect(self._moment_changed)
        open_yard.progress.connect(self._checks_told)

    @property
    def wanted(self) -> Wanted:
        """What is asked for now; the date is the day of the shadows."""
        day = self._day() if self.kind == "date" else None
        return Wanted(self.kind, self.planting, day)

    def _day(self) -> date:
        return date_of(self._yard.moment.day)

    @property
    def own(self) -> bool:
        """True where the light report does not hold what is wanted."""
        return (self.kind, self.planting) != ("season", "planted")

    # What is chosen

    def show(self, on: bool) -> None:
        """Turn the overlay on or off."""
        if on != self.on:
            self.on = on
            self._chose()

    def choose(self, kind: Kind) -> None:
        """Show this measure; turns the overlay on."""
        self.kind, self.on = kind, True
        self._chose()

    def choose_planting(self, planting: Planting) -> None:
        """Show the ground with the planting, without it, or what it takes; turns the overlay on."""
        self.planting, self.on = planting, True
        self._chose()

    def _chose(self) -> None:
        self._tell_drag()
        self.chosen.emit()
        self._renew()

    def _tell_drag(self) -> None:
        self._checks.show_ground(self.wanted if self.on else None)

    # What comes

    def _renew(self) -> None:
        """Show what is wanted from the beginning."""
        self._refiner.cancel()
        if self.on and self.own:
            if self.field is not None and self.field.measure != self.wanted.measure:
                self.field = None
            self._ask()
        else:
            self._take_report()
        self.changed.emit()

    def _take_report(self) -> None:
        light = self._yard.light
        self.field = light.field if light is not None else None
        self.fresh = self._checks.light_fresh

    def _ask(self, *, coarse: bool = True) -> None:
        yard, stand, wanted = self._yard.shown_yard, self._yard.stand, self.wanted
        self.fresh, self.share = not coarse, 0.0
        self._refiner.ask(
            lambda ticket, detail: _ground(ticket, yard, stand, wanted, detail), coarse=coarse
        )

    def _arrived(self, answer: _Answer) -> None:
        wanted = self.wanted
        if not self.on or evolve(answer.wanted, day=wanted.day) != wanted:
            return
        self.field = answer.field
        same = answer.yard is self._yard.shown_yard and answer.year == self._yard.year
        self.fresh = same and answer.wanted == wanted
        if not self._refiner.busy:
            self.share, self._last = 1.0, answer
        self.changed.emit()

    def _told(self, share: float) -> None:
        self.share = share
        self.progress.emit(share)
        self.changed.emit()

    def _checks_told(self, share: float) -> None:
        if self.on and not self.own:
            self.share = share
            self.changed.emit()

    def _light_changed(self) -> None:
        if not self.on:
            return
        dragged = self._checks.dragged_ground
        if self._yard.on_trial:
            if dragged is not None and dragged.measure == self.wanted.measure:
                self.field = dragged
            self.fresh = self._checks.light_fresh
            self.changed.emit()
        elif not self.own:
            self._take_report()
            self.changed.emit()

    def _shown(self, change: Change) -> None:
        """A frame of a drag, a step, another year."""
        if not self.on:
            return
        if self._yard.on_trial:
            self._dragging = True
            self._refiner.cancel()
            self.fresh = self._checks.light_fresh
            return
        dragged, self._dragging = self._dragging, False
        if not self.own:
            self.fresh = self._checks.light_fresh
        elif (dragged or concerns_light(change, self._yard.shown_yard)) and not self._recall():
            self._ask(coarse=not (dragged and self.fresh and self._checks.light_fresh))
        self.changed.emit()

    def _recall(self) -> bool:
        """True when the ground of this very yard was worked out last: a gesture was dropped."""
        last = self._last
        if last is None or last.yard is not self._yard.shown_yard:
            return False
        if (last.year, last.wanted) != (self._yard.year, self.wanted):
            return False
        self.field, self.fresh, self.share = last.field, True, 1.0
        return True

    def _moment_changed(self) -> None:
        if self.on and self.kind == "date" and self.wanted.day is not None:
            self._tell_drag()
            self._ask()
            self.changed.emit()

    def _broke(self, fault: BaseException) -> None:
        raise fault

    def cancel(self) -> None:
        """Drop what is being worked out: what was known stays, pale."""
        self._refiner.cancel()
        if not self.own:
            self._checks.cancel()
        self.share = 1.0
        self.changed.emit()

    @property
    def busy(self) -> bool:
        """True while an answer of its own is awaited."""
        return self._refiner.busy

    def stop(self) -> None:
        """Cancel and wait; before the window goes."""
        self._refiner.stop()
