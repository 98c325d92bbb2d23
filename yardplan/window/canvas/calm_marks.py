"""Marks of what is not being dragged, kept in a picture and painted again only where they changed.

A yard of some hundred plants holds a thousand marks: painting them all takes far longer than a frame.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Mapping

from attrs import evolve
from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QRegion

from yardplan.checks.finding import Finding, Weight
from yardplan.drawing.view import FindingKey, PlanView
from yardplan.window.canvas.boxes import Boxes
from yardplan.window.canvas.pictures import StillPicture
from yardplan.window.canvas.view import Bounds, View, bounds_of

#: Ink of a mark reaches so far beyond its thing, that of a selection too, pixels.
_BEYOND = 18.0
#: Above so many changed places everything is painted again.
_MANY = 240
#: So many findings at most are asked for their words; far fewer find room on the plan.
_SPOKEN = 60
#: A mark that reaches so far beyond its things is looked at wherever something changes, metres.
_AWAY = 1.0

MakeView = Callable[[View], PlanView]
Words = Callable[[Collection[Finding]], Mapping[FindingKey, str]]


class CalmMarks:
    """The picture of marks; `bring_up` makes it right for the findings of this frame."""

    def __init__(self, words_near: Callable[[PlanView, QRectF], list[QRectF]]) -> None:
        """`words_near`: boxes of the labels in an area, that small marks keep clear of."""
        self._words_near = words_near
        self.picture = StillPicture()
        self._held: dict[FindingKey, Finding] = {}
        self._by_thing: dict[str, set[FindingKey]] = {}
        self._away: dict[FindingKey, list[Bounds]] = {}
        self._selection: frozenset[str] = frozenset()
        self._boxes = Boxes()
        self._dirty: list[Bounds] = []
        #: The findings that the picture shows.
        self._shown: tuple[Finding, ...] | None = None
        self._waiting: dict[FindingKey, Finding] = {}

    def forget(self) -> None:
        """Too much changed: paint all of it again."""
        self.picture.forget()

    def touch(self, ids: Collection[str]) -> None:
        """Things moved or changed: clear where their marks stood; their boxes are read again."""
        for thing in ids:
            self._dirty += self._boxes.of((thing,))
            for key in tuple(self._by_thing.get(thing, ())):
                self._drop(key)

    def bring_up(
        self, view: View, ratio: float, findings: tuple[Finding, ...], selection: frozenset[str],
        make: MakeView,
    ) -> None:
        """Paint what changed since the last frame."""
        if not (findings or self._held or selection or self._selection):
            return
        if self.picture.fits(view):
            if findings is self._shown and selection == self._selection and not self._dirty:
                return
            self._shown = findings
            shown = make(self.picture.view)
            self._boxes.follow(shown)
            self._take(findings, selection)
            if not self._dirty:
                return
            if len(self._dirty) <= _MANY:
                self._patch(shown)
                return
        self._shown = findings
        self._start({finding.key: finding for finding in findings}, selection)
        self.picture.renew(view, ratio, lambda painter, wide: self._paint_all(painter, make(wide)))

    def reveal(self, place: Bounds, make: MakeView) -> None:
        """Paint a place of the picture that a pan brought into view, metres."""
        kept, self._dirty = self._dirty, [place]
        self._patch(make(self.picture.view))
        self._dirty = kept

    def boxes_of(self, ids: Collection[str], shown: PlanView) -> list[Bounds]:
        """The boxes round some things with their crowns, metres."""
        self._boxes.follow(shown)
        return self._boxes.of(ids)

    def places_of(self, findings: Iterable[Finding], shown: PlanView) -> list[Bounds]:
        """Where findings leave ink, metres."""
        self._boxes.follow(shown)
        return [place for finding in findings for place in self._places(finding)]

    # What is held

    def _start(self, now: dict[FindingKey, Finding], selection: frozenset[str]) -> None:
        self._held, self._by_thing, self._away, self._selection = {}, {}, {}, selection
        self._waiting = now

    def _paint_all(self, painter: QPainter, shown: PlanView) -> None:
        self._boxes = Boxes()
        self._boxes.follow(shown)
        for finding in self._waiting.values():
            self._hold(finding)
        self._dirty = []
        held = tuple(self._held.values())
        self._draw(painter, evolve(shown, findings=held, selection=self._selection))

    def _take(self, findings: tuple[Finding, ...], selection: frozenset[str]) -> None:
        """Hold the findings of this frame; places where the picture is no longer right become dirty.

        Most are the very same objects as before: only the others are looked at.
        """
        now, before = set(map(id, findings)), set(map(id, self._held.values()))
        new = {finding.key: finding for finding in findings if id(finding) not in before}
        gone = [key for key, finding in self._held.items() if id(finding) not in now]
        for key in self._as_painted(gone, new):
            self._held[key] = new.pop(key)
        for key in gone:
            if id(self._held[key]) not in now:
                self._drop(key)
        for finding in new.values():
            self._hold(finding)
            self._dirty += self._places(finding)
        if selection != self._selection:
            self._dirty += self._boxes.of(selection ^ self._selection)
            self._selection = selection

    def _as_painted(self, gone: list[FindingKey], new: Mapping[FindingKey, Finding]) -> list[FindingKey]:
        """Those of the findings held that new ones replace without a change in the picture.

        Where more turn pale at once than a frame can paint, or come back, they stay as painted: among
        thousands of plants that is as long as a slow check takes to answer. The list shows them pale.
        """
        same = [key for key in gone if key in new and _marked_alike(self._held[key], new[key])]
        alike = [key for key in same if self._held[key].fresh == new[key].fresh]
        turned = [key for key in same if self._held[key].fresh != new[key].fresh]
        return [*alike, *turned] if len(turned) > _MANY else alike

    def _hold(self, finding: Finding) -> None:
        key = finding.key
        self._held[key] = finding
        for thing in finding.things:
            self._by_thing.setdefault(thing, set()).add(key)
        away = self._away_from_things(finding)
        if away:
            self._away[key] = away

    def _drop(self, key: FindingKey) -> None:
        finding = self._held.pop(key, None)
        if finding is None:
            return
        self._dirty += self._places(finding)
        for thing in finding.things:
            self._by_thing[thing].discard(key)
        self._away.pop(key, None)

    def _places(self, finding: Finding) -> list[Bounds]:
        """Where a finding leaves ink, metres."""
        marks = (bounds_of(mark.points) for mark in finding.marks)
        return [*self._boxes.of(finding.things), *(box for box in marks if box is not None)]

    def _away_from_things(self, finding: Finding) -> list[Bounds]:
        """The marks that reach beyond the finding's own things: found by their own place."""
        own = _round_all(self._boxes.of(finding.things))
        marks = (bounds_of(mark.points) for mark in finding.marks)
        return [box for box in marks if box is not None and (own is None or not _within(box, own))]

    # Painting a part

    def _draw(self, painter: QPainter, shown: PlanView) -> None:
        """The marks of a view; labels are taken as they stand: arranging them takes long."""
        from yardplan.drawing.painter import draw_findings

        words = self._words_near(shown, shown.window or QRectF())
        plain = evolve(shown.layers, labels=False)
        draw_findings(painter, evolve(shown, keep_clear=(*shown.keep_clear, *words), layers=plain))

    def _patch(self, shown: PlanView) -> None:
        pixels = [_pixels(shown, box) for box in self._dirty]
        region = QRegion()
        for rect in pixels:
            region = region.united(rect.toAlignedRect())
        reach = _BEYOND / shown.scale
        keys = {key for key, boxes in self._away.items() if _meet(boxes, self._dirty, reach)}
        for thing in self._boxes.meeting(self._dirty, 2 * reach):
            keys |= self._by_thing.get(thing, set())
        touched = tuple(self._held[key] for key in self._held if key in keys)
        around = QRectF(region.boundingRect())
        part = evolve(shown, findings=touched, selection=self._selection, window=around)
        self.picture.patch(region, lambda painter: self._draw(painter, part))
        self._dirty = []


def _marked_alike(one: Finding, other: Finding) -> bool:
    """True when two findings of one key leave the same marks but for paleness, whatever their figures."""
    return one.weight is other.weight and one.marks == other.marks


def _round_all(boxes: list[Bounds]) -> Bounds | None:
    """The box round some boxes."""
    if not boxes:
        return None
    left, bottom, right, top = zip(*boxes, strict=True)
    return (min(left), min(bottom), max(right), max(top))


def _meet(boxes: list[Bounds], places: list[Bounds], reach: float) -> bool:
    return any(
        a[0] <= b[2] + reach and a[2] >= b[0] - reach and a[1] <= b[3] + reach and a[3] >= b[1] - reach
        for a in boxes for b in places
    )


def _within(box: Bounds, other: Bounds) -> bool:
    return (
        box[0] >= other[0] - _AWAY and box[1] >= other[1] - _AWAY
        and box[2] <= other[2] + _AWAY and box[3] <= other[3] + _AWAY
    )


def _pixels(shown: PlanView, box: Bounds) -> QRectF:
    left, bottom, right, top = box
    corner, far = shown.at((left, top)), shown.at((right, bottom))
    return QRectF(corner, far).adjusted(-_BEYOND, -_BEYOND, _BEYOND, _BEYOND)


def speakers(findings: Iterable[Finding], selection: frozenset[str]) -> tuple[Finding, ...]:
    """The findings whose words come first: conflicts, then cautions, what is selected before the rest."""
    grave = [finding for finding in findings if finding.weight is Weight.CONFLICT]
    less = [finding for finding in findings if finding.weight is Weight.CAUTION]
    heard = [*_chosen_first(grave, selection), *_chosen_first(less, selection)]
    return tuple(heard[:_SPOKEN])


def _chosen_first(findings: list[Finding], selection: frozenset[str]) -> list[Finding]:
    if not selection:
        return findings
    return sorted(findings, key=lambda finding: selection.isdisjoint(finding.things))


def paint_words(
    painter: QPainter, shown: PlanView, findings: tuple[Finding, ...], selection: frozenset[str], words: Words
) -> list[QRectF]:
    """Only the words of marks; returns where ink was left."""
    few = speakers(findings, selection)
    from yardplan.drawing.marks import draw_said

    return draw_said(painter, evolve(shown, findings=few, said=words(few), selection=selection))


