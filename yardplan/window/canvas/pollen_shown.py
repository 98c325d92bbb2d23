"""What the canvas shows of pollen: lines of one plant or of all, and how near the one in hand must be."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from attrs import evolve
from PySide6.QtGui import QPainter

from yardplan.drawing.view import Partner, PlanView, Reach
from yardplan.window.canvas.pictures import StillPicture
from yardplan.window.canvas.view import View
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.checks.survey import Survey

#: Among more plants than this, lines are drawn when the hand rests: they take longer than a frame.
_MANY = 1000

MakeView = Callable[[View], PlanView]


class PollenShown:
    """Keeps a picture of the lines of all plants; the lines of one plant are made afresh each frame."""

    def __init__(self, open_yard: OpenYard) -> None:
        self._open_yard = open_yard
        self.picture = StillPicture()
        self._key: object = None
        self._reach_of: tuple[Yard | None, InHand | None] = (None, None)
        self._reaches: tuple[Reach, ...] = ()
        #: The lines asked for last: of which survey, of what.
        self._lines: tuple[Survey | None, frozenset[str], tuple[Partner, ...]] = (None, frozenset(), ())

    def forget(self) -> None:
        """Everything changed."""
        self.picture.forget()
        self._reach_of = (None, None)

    def lines_of(self, chosen: frozenset[str]) -> tuple[Partner, ...]:
        """Lines to and from the one plant that is dragged or selected."""
        crowded = len(self._open_yard.shown_yard.plantings) > _MANY
        if len(chosen) != 1 or (crowded and self._open_yard.on_trial):
            return ()
        survey = self._open_yard.survey
        if self._lines[0] is survey and self._lines[1] == chosen:
            return self._lines[2]
        # Catalogue and pollen tables are not needed before something is chosen.
        from yardplan.checks.pollination import outlooks_for
        from yardplan.drawing.partner_lines import partners_of

        # The check that ran a moment ago has found the best givers.
        found = outlooks_for(survey)
        self._lines = (survey, chosen, partners_of(found.net, next(iter(chosen)), found.best))
        return self._lines[2]

    def bring_up(
        self, view: View, ratio: float, apart: frozenset[str], stamp: int | None, make: MakeView
    ) -> None:
        """Paint the lines of all plants but those of the things `apart`, which move or have their own.

        `stamp` tells when words beside the lines changed, None where that does not matter.
        """
        from yardplan.checks.pollination import net_for
        from yardplan.drawing.partner_lines import best_pairs

        # While something is dragged, the lines of the things that stay do not change.
        yard = self._open_yard.yard if self._open_yard.on_trial else self._open_yard.shown_yard
        key = (yard, self._open_yard.year, apart, stamp)
        if self.picture.fits(view) and self._key is not None and _same(key, self._key):
            return
        self._key = key
        lines = best_pairs(net_for(self._open_yard.survey), apart)
        self.picture.renew(view, ratio, lambda painter, wide: _paint(painter, make(wide), lines))

    def reaches(self) -> tuple[Reach, ...]:
        """How near the plant in hand should stand to those it was chosen for, or to all its partners."""
        in_hand, yard = self._open_yard.in_hand, self._open_yard.yard
        if in_hand is None:
            return ()
        if self._reach_of[0] is not yard or self._reach_of[1] != in_hand:
            self._reach_of = (yard, in_hand)
            self._reaches = self._found(in_hand, yard)
        return self._reaches

    @property
    def reach_all(self) -> bool:
        """True where the plant in hand was chosen for certain plants: it should be near all of them."""
        in_hand = self._open_yard.in_hand
        return in_hand is not None and bool(in_hand.near)

    def _found(self, in_hand: InHand, yard: Yard) -> tuple[Reach, ...]:
        from yardplan.checks.pollination import net_for
        from yardplan.plants.growth import mature_size
        from yardplan.plants.pollen_range import size_class
        from yardplan.plants.pollen_reach import partner_reaches
        from yardplan.yard.planting import Planting

        known = self._open_yard.catalogue
        cultivar = known.cultivar(in_hand.plant)
        if cultivar is None:
            return ()
        net = net_for(self._open_yard.survey)
        planted = Planting(id="", plant=in_hand.plant, place=(0.0, 0.0), form=in_hand.form,
                           rootstock=in_hand.rootstock)
        size = size_class(mature_size(known, planted).height, net.place.limits)
        here = {thing.id for thing in yard.things()}
        return tuple(
            Reach(name=f"{one.node.cultivar.name} ({one.node.id})", points=one.node.points, best=one.best,
                  outer=one.outer)
            for one in partner_reaches(net, cultivar, size, in_hand.near) if one.node.id in here
        )


def _same(one: tuple[object, ...], other: object) -> bool:
    """True for the same yard (the very same, which is quick to tell), and all else alike."""
    return isinstance(other, tuple) and one[0] is other[0] and one[1:] == other[1:]


def _paint(painter: QPainter, shown: PlanView, lines: tuple[Partner, ...]) -> None:
    bare = evolve(shown, partners=lines, findings=(), selection=frozenset(), reaches=())
    from yardplan.drawing import painter as plan

    plan.draw_findings(painter, bare)
