"""The whole plan: layers, what is left out, marks, furniture, light."""

import math
from itertools import pairwise

import numpy as np
import pytest
from attrs import evolve
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QImage
from support.plans import inked, near, picture, plan_picture, standing, view_of

from yardplan.checks.finding import Finding, Mark, Weight
from yardplan.drawing.furniture import (
    bar_length,
    draw_north,
    draw_scale_bar,
    draw_sheet,
    draw_title_block,
    site_facts,
    title_block_size,
)
from yardplan.drawing.light_picture import LEVELS, contour, draw_light, finer
from yardplan.drawing.painter import draw_findings, draw_ground, draw_plants, draw_yard
from yardplan.drawing.painting import painting
from yardplan.drawing.partners import partner_words
from yardplan.drawing.patterns import steady
from yardplan.drawing.shade import draw_shadows
from yardplan.drawing.style import PALETTE
from yardplan.drawing.view import Layers, Partner
from yardplan.sun.grid import Grid
from yardplan.sun.light import GroundField
from yardplan.yard.ground import Barrier, Building, Gate, Paving, Service
from yardplan.yard.planting import Bed, Container
from yardplan.yard.site import Origin, Site, Soil
from yardplan.yard.yard import Yard

SQUARE = ((4.0, 4.0), (8.0, 4.0), (8.0, 8.0), (4.0, 8.0))


def around(pixels, view, point, reach=0.5):
    """The part of a picture round a place in metres."""
    at, r = view.at(point), reach * view.scale
    return pixels[int(at.y() - r) : int(at.y() + r), int(at.x() - r) : int(at.x() + r)]


@pytest.mark.parametrize("thing", [
    Building(id="X", footprint=SQUARE, roof="gable"), Building(id="X", footprint=SQUARE, beyond_lot=True),
    Paving(id="X", kind="terrace", outline=SQUARE), Paving(id="X", kind="path", outline=SQUARE),
    Paving(id="X", kind="drive", outline=SQUARE), Paving(id="X", kind="street", outline=SQUARE),
    Paving(id="X", kind="pool", outline=SQUARE), Paving(id="X", kind="pond", outline=SQUARE),
    Barrier(id="X", kind="wall", line=SQUARE), Barrier(id="X", kind="fence", line=SQUARE),
    Barrier(id="X", kind="hedge", line=SQUARE, thickness=0.6), Bed(id="X", outline=SQUARE),
    Bed(id="X", outline=SQUARE, raised=0.3), Service(id="X", kind="gas", points=SQUARE),
    Service(id="X", kind="septic field", points=SQUARE, area=True),
])
def test_each_thing_leaves_ink_on_its_own_place_only(qapp, thing):
    from yardplan.yard.yard import list_name

    view = view_of(yard=Yard(**{list_name(thing): (thing,)}), layers=Layers(grid=False))
    dark = inked(plan_picture(draw_ground, view))
    assert dark[4 * 40 - 8 : 8 * 40 + 8, 4 * 40 - 8 : 8 * 40 + 8].sum() > 150
    outside = dark.copy()
    outside[4 * 40 - 16 : 8 * 40 + 16, 4 * 40 - 16 : 8 * 40 + 16] = False
    assert not outside.any()
    left_out = evolve(view, without=frozenset({"X"}))
    assert not inked(plan_picture(draw_ground, left_out)).any()


def test_still_and_dragged_make_the_whole(qapp):
    plants = (standing("A1", (5, 5)), standing("A2", (14, 5)))
    view = view_of(*plants, layers=Layers(labels=False, grid=False))
    whole = plan_picture(draw_yard, view)

    def two(painter, _view):
        draw_yard(painter, evolve(view, without=frozenset({"A2"})))
        draw_yard(painter, evolve(view, only=frozenset({"A2"})))

    assert (whole == plan_picture(two, view)).all()
    still = plan_picture(draw_yard, evolve(view, without=frozenset({"A2"})))
    assert inked(around(still, view, (5, 5))).any()
    assert not inked(around(still, view, (14, 5))).any()


def test_plants_out_of_the_window_are_not_drawn_but_those_on_its_edge_are(qapp):
    view = view_of(standing("A1", (-1.0, 6)), standing("A2", (60, 6)))
    dark = inked(plan_picture(draw_plants, view))
    assert dark[:, :25].any()
    assert not dark[:, 60:].any()


def test_symbols_stand_where_their_plants_do_on_screen_and_paper(qapp):
    for vector in (False, True):
        view = view_of(standing("A1", (7.3, 4.1), 2.0), vector=vector)
        ys, xs = np.nonzero(inked(plan_picture(draw_plants, view)))
        # Half a line's weight and the rounding of a stamp to whole pixels.
        assert (xs.min() + xs.max()) / 2 == pytest.approx(7.3 * 40, abs=2.0)
        assert (ys.min() + ys.max()) / 2 == pytest.approx((12 - 4.1) * 40, abs=2.0)
        assert xs.max() - xs.min() == pytest.approx(80, abs=4)


def test_empty_pots_and_gates_are_drawn(qapp):
    yard = Yard(
        lot=((0, 0), (20, 0), (20, 12), (0, 12)), containers=(Container(id="T1", place=(5, 5), volume=40),),
        gates=(Gate(id="Y1", place=(10, 0.0), width=1.0),),
    )
    view = view_of(yard=yard, layers=Layers(grid=False))
    assert inked(around(plan_picture(draw_plants, view), view, (5, 5))).sum() > 30
    with_gate = plan_picture(draw_ground, view)
    without = plan_picture(draw_ground, evolve(view, without=frozenset({"Y1"})))
    assert (with_gate != without).any()


def finding(weight, *things, **fields):
    return Finding(check="spacing", kind="overlap", weight=weight, things=things, **fields)


def test_a_conflict_is_heavy_hatched_and_said(qapp):
    wrong = Mark(((5.6, 4.5), (6.4, 4.5), (6.4, 5.5), (5.6, 5.5)), "area")
    found = finding(Weight.CONFLICT, "A1", "A2", marks=(wrong,))
    plain = view_of(standing("A1", (5, 5)), standing("A2", (7, 5)), findings=(found,))
    red = near(plan_picture(draw_findings, plain), PALETTE.conflict, 60)
    assert around(red, plain, (6, 5), 0.35).sum() > 40
    assert red.sum() > 600
    said = evolve(plain, said={found.key: "0.9 m too close"})
    assert near(plan_picture(draw_findings, said), PALETTE.conflict, 60).sum() > red.sum() + 200


def test_a_caution_is_a_broken_ring_and_advice_a_tick(qapp):
    view = view_of(standing("A1", (5, 5)), findings=(finding(Weight.CAUTION, "A1"),))
    blue = near(plan_picture(draw_findings, view), PALETTE.caution, 60)
    assert 150 < blue.sum() < 0.8 * 2 * np.pi * 64 * 2
    tick = evolve(view, findings=(finding(Weight.ADVICE, "A1"),))
    assert 5 < inked(plan_picture(draw_findings, tick)).sum() < 80


def test_what_is_stale_is_pale(qapp):
    fresh = view_of(standing("A1", (5, 5)), findings=(finding(Weight.CONFLICT, "A1"),))
    stale = evolve(fresh, findings=(finding(Weight.CONFLICT, "A1", fresh=False),))
    assert plan_picture(draw_findings, fresh).min() < plan_picture(draw_findings, stale).min() - 40


def test_words_of_marks_avoid_labels_and_each_other(qapp):
    from yardplan.drawing.labels import lately_arranged
    from yardplan.drawing.marks import _room, place_words
    from yardplan.drawing.outlines import Outlines

    found = tuple(
        Finding(check="light", kind=str(i), weight=Weight.CONFLICT, things=(f"A{i}",)) for i in range(4)
    )
    plants = [standing(f"A{i}", (4 + 2.0 * i, 6), 1.5) for i in range(4)]
    view = view_of(*plants, findings=found, said={f.key: "4.1 h of sun, needs 6" for f in found})
    boxes = [box for _, box, _ in place_words(view, Outlines(view), _room(view))]
    assert len(boxes) == 4
    taken = boxes + [label.box.translated(*view.origin) for label in lately_arranged(view)]
    for i, box in enumerate(boxes):
        assert not any(box.intersects(other) for j, other in enumerate(taken) if i != j)
        assert view.window.contains(box)


@pytest.mark.parametrize(("wide", "placed"), [(600.0, 1), (150.0, 0)])
def test_words_without_room_lie_over_others_on_a_large_sheet_only(qapp, wide, placed):
    """On a sheet hardly wider than they are they would hide it: the list says them."""
    from yardplan.drawing.marks import _room, place_words
    from yardplan.drawing.outlines import Outlines

    found = finding(Weight.CONFLICT, "A1")
    window = QRectF(0, 0, wide, 300)
    view = evolve(
        view_of(standing("A1", (2, 5)), findings=(found,), said={found.key: "4.1 h of sun, needs 6"}),
        window=window, keep_clear=(window,),
    )
    assert len(place_words(view, Outlines(view), _room(view))) == placed


def test_partner_words_and_lines(qapp):
    pair = Partner(
        donor="A1", receiver="A2", start=(3, 3), end=(15, 3), strength=0.9, both=True, distance=12.0, days=9
    )
    view = view_of(standing("A1", (3, 3)), standing("A2", (15, 3)), partners=(pair,))
    assert partner_words(pair, view) == "12.0 m · 9 days together"
    assert partner_words(evolve(pair, days=1), view) == "12.0 m · 1 day together"
    assert partner_words(evolve(pair, days=None), evolve(view, units="imperial")) == "39.4 ft"

    def line_ink(strength):
        drawn = plan_picture(draw_findings, evolve(view, partners=(evolve(pair, strength=strength),)))
        return near(drawn, PALETTE.caution, 60)[9 * 40 - 1 : 9 * 40 + 1, 4 * 40 : 6 * 40].mean()

    assert line_ink(0.9) > line_ink(0.5) > line_ink(0.1) > 0.0


def test_clear_ground_is_hatched_green(qapp):
    view = view_of(clear_ground=((SQUARE,),))
    green = near(plan_picture(draw_findings, view), PALETTE.leaf, 70)
    assert green.sum() > 800


@pytest.mark.parametrize("ratio", [1.0, 2.0])
def test_many_pieces_are_hatched_as_far_apart_on_a_dense_screen(qapp, ratio):
    """Counted along a level line through a piece: lines rising by 45 degrees cross it at gap x root 2."""
    squares = tuple(
        (tuple((x + a, y + b) for a, b in ((0, 0), (2.9, 0), (2.9, 2.9), (0, 2.9))),)
        for x in range(0, 39, 3) for y in range(0, 24, 3)
    )
    image = QImage(round(1600 * ratio), round(960 * ratio), QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(ratio)
    image.fill(0xFFFFFF)
    shown = view_of(clear_ground=squares, ratio=ratio, width=40.0, depth=24.0)
    with painting(image) as painter:
        draw_findings(painter, shown)
    row = round(shown.at((0.0, 4.45)).y() * ratio)
    start, end = (round(shown.at((x, 0.0)).x() * ratio) for x in (3.05, 5.85))
    greens = [image.pixelColor(x, row).green() for x in range(start, end)]
    middle = (max(greens) + min(greens)) / 2
    lines = sum(before > middle >= now for before, now in pairwise(greens))
    wanted = 2.8 / (steady(shown.length(6.0)) * math.sqrt(2.0))
    assert lines == pytest.approx(wanted, abs=1.6)


def test_shadows_do_not_add_up(qapp):
    shadow = ((2.0, 2.0), (8.0, 2.0), (8.0, 8.0), (2.0, 8.0))
    one = plan_picture(draw_shadows, view_of(shadows=(shadow,)))
    two = plan_picture(draw_shadows, view_of(shadows=(shadow, shadow)))
    assert (one == two).all()
    assert one[200, 200, 0] < one[10, 10, 0] - 10


def field_of(rows=12, cols=20):
    hours = np.repeat(np.linspace(0, 10, cols, dtype=np.float32)[None, :], rows, axis=0)
    return GroundField(grid=Grid(0.0, 0.0, 1.0, rows, cols), hours=hours, open_hours=10.0)


def test_contours_lie_where_the_field_has_that_many_hours():
    field = field_of()
    for level in LEVELS:
        lines = contour(field, level)
        # Hours rise by 10 over 19 cells from the first centre at 0.5 m.
        assert lines[..., 0] == pytest.approx(0.5 + level * 19 / 10, abs=1e-4)
        assert lines[..., 1].min() == pytest.approx(0.5)
        assert lines[..., 1].max() == pytest.approx(11.5)
    assert contour(field, 99.0).shape == (0, 2, 2)


def test_finer_field_keeps_its_values_between():
    fine = finer(field_of().hours)
    assert fine.shape == (48, 80)
    assert fine.min() == pytest.approx(0.0)
    assert fine.max() == pytest.approx(10.0)
    assert (np.diff(fine, axis=1) >= -1e-9).all()


def test_light_is_darker_where_there_is_less(qapp):
    drawn = plan_picture(draw_light, view_of(light=field_of()))
    tones = [int(drawn[237, int(x * 40), 0]) for x in (1.5, 6.0, 10.0, 14.0, 18.0)]
    assert tones == sorted(tones)
    assert len(set(tones)) == 5


def test_scale_bar_is_true(qapp):
    view = view_of(scale=37.795)
    assert bar_length(view, "metric") == pytest.approx(4.0)
    dark = inked(picture(lambda p: draw_scale_bar(p, view, QPointF(50, 80)), 400, 160), 120)
    columns = np.nonzero(dark[76:80].any(axis=0))[0]
    assert columns.max() - columns.min() == pytest.approx(4.0 * 37.795, abs=2.5)
    assert bar_length(view, "imperial") == pytest.approx(10 * 0.3048, rel=0.5)


def test_north_arrow_follows_the_site(qapp):
    def tip(north):
        view = view_of(yard=Yard(site=Site(north=north)))
        return inked(picture(lambda p: draw_north(p, view, QPointF(60, 60)), 120, 120), 100)

    up, right = tip(0.0), tip(90.0)
    assert up[:30].sum() > up[90:].sum()
    assert right[:, 90:].sum() > right[:, :30].sum()


def test_title_block_calls_an_estimated_zone_about():
    site = Site(latitude=43.8, zone="8", origins=(Origin(fact="zone", text="about zone 8: estimated"),))
    assert site_facts(view_of(yard=Yard(site=site))) == ["43.8° N   about zone 8"]


def test_title_block_says_that_no_place_was_entered():
    assert site_facts(view_of(yard=Yard())) == ["place not entered: sun as at 45.0° N"]
    assert site_facts(view_of(yard=Yard(site=Site(zone="6b")))) == [
        "place not entered: sun as at 45.0° N", "zone 6b",
    ]
    assert site_facts(view_of(yard=Yard(site=Site(place="Ithaca, US", latitude=42.4)))) == [
        "Ithaca, US", "42.4° N",
    ]


def test_sheet_and_title_block(qapp):
    site = Site(name="Quarry Lane", latitude=-38.1, zone="9b", soil=Soil(ph=6.4, texture="loam"))
    view = view_of(yard=Yard(site=site))
    assert site_facts(view) == ["38.1° S   zone 9b   loam, pH 6.4"]
    wide, high = title_block_size(view, site_facts(view))
    box = QRectF(10, 10, wide, high)
    drawn = inked(picture(lambda p: draw_title_block(p, view, box, site_facts(view)), wide + 20, high + 20))
    assert drawn[14 : int(high), 14 : int(wide)].sum() > 200
    assert not drawn[: 8].any()
    field = QRectF()

    def sheet(painter):
        nonlocal field
        field = draw_sheet(painter, QRectF(0, 0, 300, 200), 1.0)

    picture(sheet, 300, 200)
    assert field == QRectF(10, 10, 280, 180)
