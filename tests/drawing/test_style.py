"""Contrast of every text and mark on every ground, by WCAG 2.2 (1.4.3: 4.5:1, 1.4.11: 3:1)."""

import pytest

from yardplan.drawing.furniture import round_step
from yardplan.drawing.light_picture import TONES
from yardplan.drawing.shade import SHADOW_ALPHA
from yardplan.drawing.style import GROUNDS, PALETTE, TEXT_COLOURS, contrast, pen

MARKS = ("ink", "muted", "conflict", "caution", "leaf")


def over(ground: str, ink: str, alpha: float) -> str:
    """A colour with another laid over it."""
    pairs = [(int(ground[i : i + 2], 16), int(ink[i : i + 2], 16)) for i in (1, 3, 5)]
    return "#" + "".join(f"{round(g * (1 - alpha) + i * alpha):02X}" for g, i in pairs)


def test_contrast_of_black_on_white_is_21():
    # WCAG 2.2, definition of contrast ratio: the largest possible value.
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0)
    # Published pair: #767676 is the lightest grey that passes 4.5:1 on white (common practice).
    assert contrast("#767676", "#FFFFFF") > 4.5 > contrast("#787878", "#FFFFFF")


@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("words", TEXT_COLOURS)
def test_words_can_be_read_on_every_ground(words, ground):
    assert contrast(getattr(PALETTE, words), getattr(PALETTE, ground)) >= 4.5


@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("mark", MARKS)
def test_marks_can_be_seen_in_shadow_and_shade(mark, ground):
    shaded = over(getattr(PALETTE, ground), PALETTE.ink, SHADOW_ALPHA)
    shady = over(getattr(PALETTE, ground), PALETTE.ink, max(TONES))
    assert contrast(getattr(PALETTE, mark), shaded) >= 3.0
    assert contrast(getattr(PALETTE, mark), shady) >= 3.0


def test_ink_on_the_deepest_shadow_keeps_text_contrast():
    assert contrast(PALETTE.ink, over(PALETTE.soil, PALETTE.ink, max(TONES) + SHADOW_ALPHA)) >= 4.5


def test_flag_words_on_ink():
    assert contrast(PALETTE.paper, PALETTE.ink) >= 4.5


def test_pen_dashes_keep_their_length_whatever_the_weight():
    for weight in (0.8, 2.0):
        made = pen("ink", weight, 2.0, (6.0, 3.0))
        assert [part * made.widthF() for part in made.dashPattern()] == pytest.approx([12.0, 6.0])


@pytest.mark.parametrize(("least", "step"), [(0.3, 0.5), (1.0, 1.0), (1.2, 2.0), (4.0, 5.0), (6.0, 10.0)])
def test_grid_steps_are_round(least, step):
    assert round_step(least) == pytest.approx(step)
