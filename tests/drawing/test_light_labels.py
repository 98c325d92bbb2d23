from __future__ import annotations

import numpy as np
import pytest
from attrs import evolve
from PySide6.QtCore import QPointF, QRectF
from support import suns
from support.plans import picture

from yardplan.drawing.corners import freest, hidden
from yardplan.drawing.lettering import Type, text_size
from yardplan.drawing.light_labels import (
    LightLabel,
    draw_light_labels,
    level_text,
    light_labels,
    still_true,
)
from yardplan.drawing.light_legend import draw_light_legend, legend_size, legend_words
from yardplan.drawing.light_picture import DEEPEST, PALE, draw_light, tones
from yardplan.drawing.view import PlanView, bare_view
from yardplan.sun.classes import Measure, classes, limits
from yardplan.sun.grid import Grid
from yardplan.sun.light import GroundField

MEASURES: tuple[Measure, ...] = ("hours", "share", "taken", "share taken")
SCALE = 30.0


def _field(top: float = 10.0, measure: Measure = "hours") -> GroundField:
    """Rises from 0 at the left to `top` at the right of 20 m."""
    hours = np.repeat(np.linspace(0, top, 40, dtype=np.float32)[None, :], 24, axis=0)
    return GroundField(grid=Grid(0.0, 0.0, 0.5, 24, 40), hours=hours, open_hours=top, measure=measure)


def _view(field: GroundField, **fields) -> PlanView:
    yard, stand = suns.yard_and_stand(suns.tree("A", (12.0, 6.0), suns.size(3, 3)), lot=20.0)
    return PlanView(
        yard=yard, stand=stand, scale=SCALE, origin=(0.0, 12 * SCALE), light=field,
        window=QRectF(0, 0, 20 * SCALE, 12 * SCALE), **fields,
    )


@pytest.mark.parametrize("measure", MEASURES)
def test_labels_say_what_the_field_has_at_their_place(qapp, measure):
    top = 10.0 if "share" not in measure else 100.0
    field = _field(top, measure)
    labels = light_labels(_view(field))
    assert {label.level for label in labels} == set(limits(measure))
    for label in labels:
        assert field.at(label.place) == pytest.approx(label.level, abs=top / 40)
        assert label.text == level_text(label.level, field)
        assert label.text.endswith("%" if "share" in measure else "h")


def test_labels_keep_off_crowns_each_other_and_what_is_kept_clear(qapp):
    keep = QRectF(0, 0, 20 * SCALE, 4 * SCALE)
    view = _view(_field(), keep_clear=(keep,))
    labels = light_labels(view)
    assert labels
    boxes = []
    for label in labels:
        at = view.at(label.place)
        assert not keep.contains(at)
        assert np.hypot(label.place[0] - 12.0, label.place[1] - 6.0) > 1.5
        boxes.append(QRectF(at.x() - 10, at.y() - 7, 20, 14))
    assert not any(a.intersects(b) for i, a in enumerate(boxes) for b in boxes[:i])


@pytest.mark.parametrize("scale", [4.5, 4.75, 5.0, 6.0])
def test_two_figures_of_crowded_lines_never_read_as_one(qapp, scale):
    view = evolve(_view(_field()), scale=scale, origin=(0.0, 12 * scale))
    # One row of figures has room, the lines lie hardly further apart than a figure is wide.
    labels = light_labels(evolve(view, window=QRectF(0, 0, 20 * scale, 17)))
    assert labels
    boxes = []
    for label in labels:
        at, (wide, high) = view.at(label.place), text_size(label.text, Type(11.0, "medium"), 1.0)
        boxes.append(QRectF(at.x() - wide / 2, at.y() - high / 2, wide, high))
    grown = [box.adjusted(-3.9, -3.9, 3.9, 3.9) for box in boxes]
    assert not any(a.intersects(b) for i, a in enumerate(grown) for b in boxes[:i])


def test_labels_that_are_no_longer_true_go(qapp):
    field = _field()
    labels = light_labels(_view(field))
    assert still_true(field, labels) == labels
    lower = evolve(field, hours=field.hours * np.float32(0.5))
    kept = still_true(lower, labels)
    assert len(kept) < len(labels)
    assert all(abs((lower.at(label.place) or 0) - label.level) < 0.5 for label in kept)
    far = LightLabel("2 h", 2.0, (99.0, 99.0))
    assert still_true(field, (far,)) == ()


def test_labels_are_written_in_the_window_only(qapp):
    view = bare_view()
    inside, outside = LightLabel("4 h", 4.0, (100.0, -100.0)), LightLabel("4 h", 4.0, (400.0, -100.0))
    seen = evolve(view, window=QRectF(0, 0, 200, 200))
    drawn = picture(lambda p: draw_light_labels(p, seen, (inside, outside)), 500, 200)
    assert (drawn[80:120, 80:120] < 200).any()
    assert (drawn[:, 300:] > 240).all()


def test_old_light_is_pale(qapp):
    fresh, old = (picture(lambda p, v=v: draw_light(p, v), 600, 360).astype(int) for v in
                  (_view(_field()), _view(_field(), light_pale=True)))
    paper = 255
    dark, pale = (paper - shown[180, 20].mean() for shown in (fresh, old))
    assert pale == pytest.approx(dark * PALE, rel=0.25)


@pytest.mark.parametrize("measure", MEASURES)
def test_tones_and_legend_go_with_the_classes(qapp, measure):
    steps = tones(measure)
    assert len(steps) == len(classes(measure)) == len(legend_words(measure))
    assert {min(steps), max(steps)} == {0.0, DEEPEST}
    # Dark is little light, or much of it taken.
    assert (steps[0] == DEEPEST) != measure.endswith("taken")
    view = bare_view()
    wide, high = legend_size(view, "a note", measure=measure)
    assert all(text_size(line, Type(11.0), 1.0)[0] < wide for line in legend_words(measure))
    drawn = picture(
        lambda p: draw_light_legend(p, view, QPointF(0, 0), "a note", measure=measure), wide, high
    )
    assert (drawn < 120).sum() > 300


def test_the_freest_corner_hides_least(qapp):
    view = _view(_field())
    tree = view.at((12.0, 6.0))
    on_tree = QRectF(tree.x() - 40, tree.y() - 40, 80, 80)
    beside = QRectF(20 * SCALE + 50, 0, 80, 80)
    assert hidden(view, on_tree) > hidden(view, beside) == 0.0
    assert freest(view, {"tree": on_tree, "beside": beside}) == "beside"
