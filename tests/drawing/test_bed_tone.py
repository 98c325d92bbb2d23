"""Beds of many small plants: symbols where they can be told apart, else a light tone with the count."""

import numpy as np
import pytest
from support.plans import near, plan_picture, view_of

from yardplan.drawing.labels import arranged
from yardplan.drawing.painter import draw_yard
from yardplan.drawing.style import PALETTE, SYMBOL_FLOOR
from yardplan.drawing.view import Layers
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.yard.planting import Bed, PlantKey, Row
from yardplan.yard.yard import Yard

BED = Bed(
    id="K1", name="Bed", outline=((2.0, 2.0), (10.0, 2.0), (10.0, 8.0), (2.0, 8.0)),
    plant=PlantKey("strawberry", "Sparkle"), spacing=0.4,
)
#: Inside the bed, away from its edge and its words, metres: left, bottom, right, top.
INSIDE = (3.0, 3.0, 9.0, 7.0)


def seen(scale):
    """The view at that many pixels a metre, and what is painted of the bed's inside."""
    yard = Yard(beds=(BED,))
    view = view_of(yard=yard, scale=scale, stand=stand_of(yard, catalogue()), layers=Layers(grid=False))
    pixels = plan_picture(draw_yard, view)
    left, bottom, right, top = INSIDE
    low, high = view.at((left, bottom)), view.at((right, top))
    return view, pixels[int(high.y()):int(low.y()), int(low.x()):int(high.x())]


@pytest.mark.parametrize("scale", [5.0, 9.0, 12.6, 18.0, 27.0])
def test_a_bed_of_small_plants_stays_light_at_small_scales(qapp, scale):
    """12.6 units a metre is 1:360, 1 in = 30 ft."""
    assert BED.spacing * scale < SYMBOL_FLOOR
    view, inside = seen(scale)
    # No lines of symbols, and nothing like a black field: paper is what is mostly seen.
    assert near(inside, PALETTE.ink, 60).mean() < 0.005
    assert 1 - inside.mean() / 255 < 0.2
    if scale >= 9.0:
        assert any("Sparkle × 300" in label.text for label in arranged(view))


def test_symbols_are_drawn_where_they_can_be_told_apart(qapp):
    scale = 1.05 * SYMBOL_FLOOR / BED.spacing
    _, inside = seen(scale)
    ink = np.abs(inside.astype(int) - 255).max(axis=2) > 120
    assert 0.1 < ink.mean() < 0.75


@pytest.mark.parametrize("scale", [5.0, 12.6, 20.0])
def test_a_matted_row_stays_light_at_small_scales(qapp, scale):
    row = Row(id="R1", plant=PlantKey("strawberry", "Sparkle"), line=((2.0, 4.0), (14.0, 4.0)), count=27,
              spacing=0.45)
    yard = Yard(rows=(row,))
    layers = Layers(grid=False, labels=False)
    view = view_of(yard=yard, scale=scale, stand=stand_of(yard, catalogue()), layers=layers)
    pixels = plan_picture(draw_yard, view)
    low, high = view.at((3.0, 3.85)), view.at((13.0, 4.15))
    inside = pixels[int(high.y()):int(low.y()) + 1, int(low.x()):int(high.x())]
    assert near(inside, PALETTE.ink, 60).mean() < 0.02
    drawn = np.abs(inside.astype(int) - 255).max(axis=2) > 20
    assert drawn.any(), "the row itself is still seen"
