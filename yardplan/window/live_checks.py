"""Findings kept current: near checks at once on every change, light and the rest in a worker.

Findings are matched by key: one not yet recomputed stays, marked `fresh=False`, so that it is drawn pale.
"""

from __future__ import annotations

from collections.abc import Iterable
from importlib import import_module
from typing import TYPE_CHECKING, Any

from attrs import evolve, frozen
from PySide6.QtCore import QObject, Signal

from yardplan.checks.finding import Finding
from yardplan.window.drag_light import DragAnswer, DragLight
from yardplan.window.frame_checks import Found, FrameChecks
from yardplan.window.light.refiner import Refiner
from yardplan.window.workers import Ticket
from yardplan.yard.change import Change, difference
from yardplan.yard.ground import Dimension, Gate, Note, Paving, Picture, Service
from yardplan.yard.planting import Container
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.checks.survey import Survey
    from yardplan.plants.catalogue import Catalogue
    from yardplan.plants.stand import Stand
    from yardplan.sun.ground_kinds import Wanted
    from yardplan.sun.light import GroundField, LightReport
    from yardplan.sun.season import Detail
    from yardplan.window.open_yard import OpenYard


@frozen
class FullAnswer:
    """What the worker hands back: the light and every finding, at live or full detail."""

    light: LightReport | None
    survey: Survey
    findings: tuple[Finding, ...]


#: Modules that only a drag uses.
_FOR_A_DRAG = (
    "yardplan.sun.moving", "yardplan.sun.ground_kinds", "yardplan.arrange.clear_ground",
    "yardplan.arrange.clear_together",
)
#: What only bounds the ground over which light is counted.
_BOUNDS = frozenset({"lot", "lot_curve"})
#: Things that cast no shade and have no light of their own.
_NO_LIGHT = (Note, Gate, Paving, Service, Container, Dimension, Picture)


def concerns_light(change: Change, yard: Yard) -> bool:
    """False when a change to `yard` leaves all light as it was: a note, a gate, a pipe."""
    if change.only_records:
        return False
    if change.removed or change.whole:
        return True
    return any(not isinstance(yard.find(key), _NO_LIGHT) for key in change.touched)


def alike(one: Yard, other: Yard) -> bool:
    """True when two yards differ in nothing that checks or light look at."""
    change = difference(one, other)
    return change.nothing or change.only_records


def full_check(
    ticket: Ticket, yard: Yard, catalogue: Catalogue, year: int | None, detail: Detail = "full"
) -> FullAnswer:
    """Light and all checks from scratch; runs on a worker with an immutable yard."""
    from yardplan.checks.run import findings
    from yardplan.checks.survey import survey_of
    from yardplan.plants.standing import stand_of

    stand = stand_of(yard, catalogue, year)
    light = _light_of(ticket, yard, stand, detail)
    survey = survey_of(yard, catalogue, year, stand=stand, light=light)
    found = tuple(findings(survey))
    ticket.progress(1.0)
    if detail == "full":
        _be_ready()
    return FullAnswer(light, survey, found)


def _be_ready() -> None:
    """Load what the first drag needs, so that its first frames need not wait for it."""
    for name in _FOR_A_DRAG:
        import_module(name)


def _light_of(ticket: Ticket, yard: Yard, stand: Stand, detail: Detail) -> LightReport | None:
    """The light, or None for a place that is not on Earth."""
    from yardplan.sun.light import light_report
    from yardplan.sun.position import LatitudeError
    from yardplan.sun.scene import scene_of

    try:
        scene = scene_of(yard, stand)
    except LatitudeError:
        return None
    return light_report(scene, detail, lambda share: ticket.progress(0.9 * share))


def matched(
    before: Iterable[Finding], found: Found, unmoved: frozenset[str], alive: set[str]
) -> tuple[Finding, ...]:
    """Findings of a frame: those seen before keep their order, gone ones drop out, new ones follow.

    A finding that is the very same object is known by that, which is far quicker than by its key.

    Findings of checks that were not run stay while their things live: as they are where the change cannot
    matter to the check (`unmoved`), else pale.
    """
    before = tuple(before)
    held, again = set(map(id, before)), set(map(id, found.findings))
    current = {finding.key: finding for finding in found.findings if id(finding) not in held}
    kept: list[Finding] = []
    for finding in before:
        if id(finding) in again:
            kept.append(finding)
        elif finding.check in found.checks:
            successor = current.pop(finding.key, None)
            if successor is not None:
                kept.append(successor)
        elif alive.issuperset(finding.things):
            stays = finding.check in unmoved or not finding.fresh
            kept.append(finding if stays else evolve(finding, fresh=False))
    return (*kept, *current.values())


class _Pale:
    """Findings as no longer sure of their place: of one and the same finding always the same pale one."""

    def __init__(self) -> None:
        self._kept: dict[int, tuple[Finding, Finding]] = {}

    def of(self, findings: Iterable[Finding]) -> tuple[Finding, ...]:
        """The pale ones, in order; those of findings not asked for again are forgotten."""
        kept: dict[int, tuple[Finding, Finding]] = {}
        for finding in findings:
            known = self._kept.get(id(finding))
            pale = known[1] if known is not None else evolve(finding, fresh=False)
            kept[id(finding)] = (finding, pale)
        self._kept = kept
        return tuple(pale for _, pale in kept.values())


def _placeless() -> frozenset[str]:
    """Checks that moves cannot matter to."""
    from yardplan.checks.run import CHECKS

    return frozenset(check.name for check in CHECKS if not check.places)


def _light_checks() -> frozenset[str]:
    from yardplan.checks.run import CHECKS

    return frozenset(check.name for check in CHECKS if check.light)


class LiveChecks(QObject):
    """Keeps stand, survey, findings and light of the yard shown in step with it."""

    findings_changed = Signal()
    light_changed = Signal()
    progress = Signal(float)

    def __init__(self, owner: OpenYard) -> None:
        super().__init__(owner)
        self._owner = owner
        self._survey: Survey | None = None
        self._catalogue: Catalogue | None = None
        self._own: Any = None
        self.findings: tuple[Finding, ...] = ()
        self.light: LightReport | None = None
        #: False while the light is that of another state of the yard: it is shown pale then.
        self.light_fresh = False
        #: The ground of the last frame of a drag by what the overlay shows; None at rest.
        self.dragged_ground: GroundField | None = None
        self._refiner = Refiner(self)
        self._refiner.done.connect(self._take_full)
        self._refiner.broke.connect(self._broke)
        self._refiner.progress.connect(self.progress)
        self._drag_light = DragLight(self)
        self._drag_light.answered.connect(self._take_light)
        self._drag_light.broke.connect(self._broke)
        self._before: Survey | None = None
        self._pale = _Pale()
        #: Ids of all things of the yard shown, as a finding may name them; moves leave them as they are.
        self._alive: set[str] = set()
        #: The last refined answer.
        self._last: FullAnswer | None = None
        self._frame = FrameChecks(self)
        self._frame.answered.connect(self._take_slow)
        self._frame.broke.connect(self._broke)

    @property
    def catalogue(self) -> Catalogue:
        """All plants known, with the yard's own cultivars; loaded on first use."""
        own = self._owner.shown_yard.own_cultivars
        if self._catalogue is None or own is not self._own:
            from yardplan.plants.catalogue import catalogue

            self._catalogue = catalogue().with_own(own) if own else catalogue()
            self._own = own
        return self._catalogue

    @property
    def survey(self) -> Survey:
        """The survey of the yard shown."""
        if self._survey is None:
            from yardplan.checks.survey import survey_of

            owner = self._owner
            self._survey = survey_of(owner.shown_yard, self.catalogue, owner.year, light=self.light)
        return self._survey

    @property
    def committed_survey(self) -> Survey:
        """The survey of the committed yard: while a gesture lasts that of its beginning."""
        begun = self._before
        return begun if self._owner.on_trial and begun is not None else self.survey

    @property
    def stand(self) -> Stand:
        """The stand of the yard shown."""
        if self._survey is None and not self._anything_there():
            from yardplan.plants.stand import Stand

            return Stand(year=self._owner.year)
        return self.survey.stand

    def _anything_there(self) -> bool:
        """False for an empty yard: nothing to check, and no need to load the catalogue."""
        yard = self._owner.shown_yard
        return bool(yard.lot) or next(iter(yard.things()), None) is not None

    def show_ground(self, wanted: Wanted | None) -> None:
        """Keep the ground by this measure in step while things are dragged; None: no overlay."""
        self._drag_light.wanted = wanted

    def restart(self) -> None:
        """Another document: everything from scratch."""
        self._refiner.cancel()
        self.light, self.findings, self._last = None, (), None
        self.regrow()

    def regrow(self) -> None:
        """Another year: what was found before stays, pale, until its coarse successor comes."""
        self._drag_light.end()
        self._frame.end()
        self._before, self._survey, self.dragged_ground, self.light_fresh = None, None, None, False
        if self._anything_there():
            self._check_near()
            self._ask_full()
        self.announce()
        self.light_changed.emit()

    def follow(self, change: Change) -> None:
        """Take up a change of the shown yard; `announce` tells of it once the change itself is known."""
        if change.only_records and not self._owner.on_trial:
            self._carry_over(change)
            return
        self._refiner.cancel()
        if not self._anything_there():
            self._survey, self.findings, self.light = None, (), None
            return
        if concerns_light(change, self._owner.shown_yard):
            self.light_fresh = False
        if not self._owner.on_trial:
            self._before = None
            self._drag_light.end()
            self._frame.end()
        elif self._before is None:
            self._before = self._survey
        if self._survey is not None and not change.whole:
            from yardplan.checks.survey import moved_survey

            self._survey = moved_survey(self._survey, self._owner.shown_yard, change)
        else:
            self._survey = None
        if not self._owner.on_trial and self._recall():
            return
        self._check_near(change)
        if not self._owner.on_trial:
            self._ask_full()
        else:
            self._follow_light(change)

    def _carry_over(self, change: Change) -> None:
        """Work ticked off, or a price: all that was worked out holds, and what is under way goes on."""
        from yardplan.checks.survey import moved_survey

        yard = self._owner.shown_yard
        if self._survey is not None:
            self._survey = moved_survey(self._survey, yard, change)
        last = self._last
        if last is not None and alike(last.survey.yard, yard):
            self._last = evolve(last, survey=evolve(last.survey, yard=yard))

    def _recall(self) -> bool:
        """True when this very yard was worked out last: a gesture was dropped, nothing is to be done."""
        answer, owner = self._last, self._owner
        if answer is None or answer.survey.yard is not owner.shown_yard:
            return False
        if answer.survey.stand.year != owner.year:
            return False
        self._take_full(answer)
        return True

    def _follow_light(self, change: Change) -> None:
        """Light of a frame, for things that move or change; work goes on beside the drag."""
        start = self._before
        if start is None or self._survey is None or self.light is None or change.whole - _BOUNDS:
            return
        moved = difference(start.yard, self._owner.shown_yard)
        if (moved.touched or moved.removed or moved.whole) and not moved.whole - _BOUNDS:
            self._drag_light.follow(start, self._survey, moved.touched | moved.removed)

    def _take_light(self, answer: DragAnswer) -> None:
        """Light of a frame came: shown at once, pale when the thing is elsewhere by now."""
        owner = self._owner
        if not owner.on_trial:
            return
        now = answer.yard is owner.shown_yard
        lit = {finding.key: finding if now else evolve(finding, fresh=False) for finding in answer.findings}
        kinds = _light_checks()
        kept = []
        for finding in self.findings:
            if finding.check not in kinds:
                kept.append(finding)
            elif finding.key in lit:
                kept.append(lit.pop(finding.key))
        self.findings = (*kept, *lit.values())
        self.light, self.light_fresh, self.dragged_ground = answer.light, now, answer.ground
        self.findings_changed.emit()
        self.light_changed.emit()

    def announce(self) -> None:
        """Tell listeners of the findings; after `shown`, so that they know the things named."""
        self.findings_changed.emit()

    def _check_near(self, change: Change | None = None) -> None:
        """The near checks: all at once for a new document, what fits into a frame when something changed."""
        found = self._frame.run(self.survey, change, all_of_them=change is None)
        unmoved = _placeless() if change is not None and change.only_moves else frozenset[str]()
        if change is None or not change.only_moves:
            self._alive = self._owner.shown_yard.ids() | {"lot"}
        self.findings = matched(self.findings, found, unmoved, self._alive)
        if change is not None and self._owner.on_trial:
            self._frame.follow_slow(self.survey, change, found.checks)

    def _take_slow(self, found: Found) -> None:
        """Slow checks of a frame answered; pale when the thing is elsewhere by now."""
        owner = self._owner
        if not owner.on_trial:
            return
        if found.yard is not owner.shown_yard:
            found = evolve(found, findings=self._pale.of(found.findings))
        others = frozenset(finding.check for finding in self.findings) - found.checks
        self.findings = matched(self.findings, found, others, self._alive)
        self.findings_changed.emit()

    def _ask_full(self) -> None:
        """Coarse first, unless the light shown is true already."""
        owner = self._owner
        yard, known, year = owner.shown_yard, self.catalogue, owner.year
        self._refiner.ask(
            lambda ticket, detail: full_check(ticket, yard, known, year, detail), coarse=not self.light_fresh
        )
        self.progress.emit(0.0)

    def _take_full(self, answer: FullAnswer) -> None:
        """Coarse answers of a year left behind meanwhile are shown too, pale: the slider is followed."""
        owner = self._owner
        if answer.survey.yard is not owner.shown_yard and alike(answer.survey.yard, owner.shown_yard):
            answer = evolve(answer, survey=evolve(answer.survey, yard=owner.shown_yard))
        now = answer.survey.yard is owner.shown_yard and answer.survey.stand.year == owner.year
        self.light, self.light_fresh, self.dragged_ground = answer.light, now, None
        if now:
            self._survey, self.findings = answer.survey, answer.findings
        if answer.light is not None and answer.light.detail == "full":
            self._last = answer
        self.progress.emit(1.0 if not self.busy else 0.2)
        self.findings_changed.emit()
        self.light_changed.emit()

    def _broke(self, fault: BaseException) -> None:
        """A fault of ours must be seen, not swallowed by the worker."""
        raise fault

    @property
    def busy(self) -> bool:
        """True while the light and the full check are being computed."""
        return self._refiner.busy

    def cancel(self) -> None:
        """Drop what is being worked out; light and findings stay as they are, pale, until the next change."""
        self._refiner.cancel()
        self.progress.emit(1.0)

    def stop(self) -> None:
        """Cancel and wait for the workers."""
        self._drag_light.stop()
        self._frame.stop()
        self._refiner.stop()
