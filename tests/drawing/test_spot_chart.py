from __future__ import annotations

from datetime import date

import numpy as np
import pytest
from attrs import evolve
from PySide6.QtCore import QRectF
from support import suns
from support.plans import picture

from yardplan.drawing.spot_chart import SpotChart, blocked_lines, chart_height, draw_spot_chart, spot_lines
from yardplan.drawing.view import bare_view
from yardplan.sun.spot import spot_at
from yardplan.yard.site import Site


def chart(place=(16.0, 15.0), day=None, **site) -> SpotChart:
    scene = suns.scene(
        suns.tree("A", (15, 12), suns.size(4, 5)),
        buildings=(suns.box("H", 20, 5, 5, 20, 6.0),),
        site=evolve(Site(latitude=42.0, longitude=-76.0), **site),
    )
    return SpotChart(
        spot=spot_at(scene, place, day), names={"A": "Liberty (A)", "H": "House (H)"}, site=scene.site
    )


def drawn(one: SpotChart, width: float = 320.0):
    view = bare_view()
    high = chart_height(one, view)
    used = []
    box = QRectF(0, 0, width, high)
    image = picture(lambda painter: used.append(draw_spot_chart(painter, view, box, one)), width, high)
    return image, used[0], high


def test_words_name_hours_and_who_blocks(qapp):
    one = chart()
    assert f"{one.spot.season.hours:.1f} h of direct sun" in spot_lines(one)[0]
    lines = blocked_lines(one)
    assert any("House (H)" in line for line in lines)
    assert any("Liberty (A), 20% through" in line for line in lines)
    assert lines == sorted(lines)


def test_the_chart_fits_its_height_and_shows_shade(qapp):
    image, used, high = drawn(chart())
    assert used <= high
    grey = image.astype(int).sum(axis=2)
    assert np.count_nonzero(grey < 600) > 500


def test_an_open_spot_has_a_clear_bar(qapp):
    assert blocked_lines(chart(place=(2.0, 28.0), latitude=41.0)) in (
        [],
        blocked_lines(chart(place=(2.0, 28.0))),
    )
    image, used, high = drawn(chart(place=(2.0, 2.0)))
    assert used <= high
    assert image.size


@pytest.mark.parametrize("latitude", [84.0, -84.0])
def test_polar_night_and_day_draw_without_fault(qapp, latitude):
    for month in (6, 12):
        one = chart(day=date(2026, month, 21), latitude=latitude)
        image, used, high = drawn(one)
        assert used <= high
        assert image.size
