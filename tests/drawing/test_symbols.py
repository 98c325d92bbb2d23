"""Each habit by its own form, true to size."""

from itertools import combinations

import numpy as np
import pytest
from PySide6.QtCore import QPointF
from support.plans import inked, picture

from yardplan.drawing.habits import FORMS
from yardplan.drawing.sprites import SpriteBook
from yardplan.drawing.symbols import Look, draw_symbol, edge

RADIUS = 40.0
SIDE = 140


def drawn(look):
    """The symbol in the middle of a square picture: where there is ink."""

    def draw(painter):
        painter.translate(QPointF(SIDE / 2, SIDE / 2))
        draw_symbol(painter, look)

    return inked(picture(draw, SIDE, SIDE))


@pytest.fixture(scope="module")
def forms(qapp_cls, request):
    return {habit: drawn(Look(habit, RADIUS)) for habit in FORMS}


@pytest.fixture(scope="module")
def qapp_cls():
    from PySide6.QtWidgets import QApplication

    return QApplication.instance() or QApplication([])


def distances():
    y, x = np.mgrid[:SIDE, :SIDE]
    return np.hypot(x + 0.5 - SIDE / 2, y + 0.5 - SIDE / 2)


def test_forms_differ_without_colour(forms):
    for one, other in combinations(forms, 2):
        either = (forms[one] | forms[other]).sum()
        both = (forms[one] & forms[other]).sum()
        assert both / either < 0.6, f"{one} and {other} look alike"


@pytest.mark.parametrize("habit", FORMS)
def test_ink_keeps_to_the_spread(forms, habit):
    far = distances() > RADIUS + 4
    assert not (forms[habit] & far).any()


@pytest.mark.parametrize("habit", [h for h, form in FORMS.items() if not form.turns])
def test_ink_reaches_the_spread(forms, habit):
    rim = (distances() > RADIUS - 7) & (distances() < RADIUS + 3)
    assert (forms[habit] & rim).sum() > 8


@pytest.mark.parametrize("habit", FORMS)
def test_the_stem_is_marked(forms, habit):
    middle = slice(SIDE // 2 - 1, SIDE // 2 + 1)
    assert forms[habit][middle, middle].all()


@pytest.mark.parametrize("habit", FORMS)
def test_edge_is_as_wide_as_the_plant(habit):
    box = edge(Look(habit, RADIUS)).boundingRect()
    assert box.width() == pytest.approx(2 * RADIUS, rel=0.06)


def test_flat_trained_turns_with_its_wall(qapp_cls):
    level = edge(Look("flat-trained", RADIUS)).boundingRect()
    upright = edge(Look("flat-trained", RADIUS, facing=90)).boundingRect()
    assert level.width() == pytest.approx(upright.height())
    assert level.height() < level.width() / 3


def test_mature_size_is_a_thin_ring(qapp_cls):
    grown = drawn(Look("bush", 25.0, mature=50.0))
    ring = (distances() > 48) & (distances() < 52)
    assert (grown & ring).sum() > 0.5 * 2 * np.pi * 50
    assert not (drawn(Look("bush", 25.0)) & ring).any()


def test_standing_trees_are_paler_and_broken(qapp_cls):
    assert drawn(Look("conifer", RADIUS, standing=True)).sum() < 0.7 * drawn(Look("conifer", RADIUS)).sum()


def test_a_pot_puts_a_square_round_the_stem(qapp_cls):
    potted, bare = drawn(Look("bush", RADIUS, pot=30)), drawn(Look("bush", RADIUS))
    edge_line = (slice(SIDE // 2 - 16, SIDE // 2 - 13), slice(SIDE // 2 - 15, SIDE // 2 + 15))
    assert potted[edge_line].any(axis=0).all()
    assert bare[edge_line].any(axis=0).mean() < 0.3


def test_marks_alone_leave_the_plant_out(qapp_cls):
    mark = drawn(Look("central leader", RADIUS, dress="conflict"))
    assert not (mark & (distances() < RADIUS * 0.7)).any()
    assert mark.any()


def test_sprites_are_painted_once_and_look_as_painted(qapp_cls):
    book = SpriteBook()
    look = Look("central leader", 30.2, mature=36.1)
    first = book.sprite(look)
    assert first is not None
    assert book.sprite(Look("central leader", 30.1, mature=36.0)) is first
    assert len(book) == 1
    stamped = inked(picture(lambda p: p.drawPixmap(
        round(SIDE / 2 - first.width() / 2), round(SIDE / 2 - first.height() / 2), first
    ), SIDE, SIDE))
    painted = drawn(Look("central leader", 30.0, mature=36.0))
    assert (stamped == painted).mean() > 0.995


def test_sprites_forget_the_oldest_first(qapp_cls):
    book = SpriteBook(most_pixels=40_000)
    for radius in range(20, 60, 4):
        book.sprite(Look("bush", float(radius)))
    assert len(book) < 10
    newest = book.sprite(Look("bush", 56.0))
    assert book.sprite(Look("bush", 56.0)) is newest


def test_huge_symbols_are_not_kept(qapp_cls):
    assert SpriteBook().sprite(Look("shade tree", 900.0)) is None


def test_dense_screens_get_dense_sprites(qapp_cls):
    one, two = SpriteBook().sprite(Look("bush", 20.0)), SpriteBook().sprite(Look("bush", 20.0), 2.0)
    assert one is not None
    assert two is not None
    assert two.width() == 2 * one.width()
    assert two.deviceIndependentSize() == one.deviceIndependentSize()
