"""Drawing speed. The bound in each test is the bar; the measured time is printed by pytest-benchmark."""

import random

import pytest
from attrs import evolve
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter
from support.plans import standing, view_of

from yardplan.drawing.painter import draw_findings, draw_ground, draw_plants, draw_words
from yardplan.drawing.view import fitted


def plants(count):
    rng = random.Random(7)
    wide = (count * 16 * 1.6) ** 0.5
    return [
        standing(
            f"A{i}", (rng.uniform(0, wide), rng.uniform(0, wide / 1.6)),
            rng.choice([1.2, 2.4, 3.0, 3.6, 4.2, 6.0]),
            rng.choice(["central leader", "open centre", "bush", "flat-trained"]),
        )
        for i in range(count)
    ], wide


@pytest.fixture(params=[500, 5000])
def filled(qapp, request):
    """A view of that many plants filling 1600 x 1000, and a painter."""
    several, wide = plants(request.param)
    image = QImage(1600, 1000, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    window = QRectF(0, 0, 1600, 1000)
    view = fitted(view_of(*several, width=wide, depth=wide / 1.6), window, beyond=0.0)
    yield evolve(view, window=window), painter, request.param
    painter.end()


def test_all_plants_of_a_pan(filled, benchmark):
    view, painter, count = filled

    def pan():
        draw_plants(painter, evolve(view, origin=(view.origin[0] + random.random(), view.origin[1])))

    benchmark.extra_info["bar_ms"] = {500: 4.0, 5000: 12.0}[count]
    benchmark(pan)


def test_one_plant_dragged(filled, benchmark):
    view, painter, count = filled
    draw_words(painter, view)

    def frame():
        live = evolve(view, only=frozenset({"A7"}), yard=evolve(view.yard), stand=evolve(view.stand))
        draw_ground(painter, live)
        draw_plants(painter, live)
        draw_words(painter, live)
        draw_findings(painter, evolve(live, only=None))

    benchmark.extra_info["bar_ms"] = {500: 2.0, 5000: 5.0}[count]
    benchmark(frame)


