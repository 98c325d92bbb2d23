"""The season chart: days to places and back, both hemispheres."""

import itertools

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from support.plans import near, picture

from yardplan.drawing.season import (
    Band,
    FrostLine,
    SeasonChart,
    SeasonLayout,
    SeasonRow,
    Together,
    date_words,
    draw_season,
    flag_box,
    frost_words,
    height_for,
    hour_words,
)
from yardplan.drawing.style import PALETTE

BOX = QRectF(0, 0, 900, 160)
ROWS = (
    SeasonRow(thing="A1", name="Enterprise", bloom=Band(122, 136, 128), harvest=Band(290, 305)),
    SeasonRow(thing="A2", name="Liberty", bloom=Band(118, 133), harvest=Band(268, 283), pale=True),
)


@given(st.floats(1, 365.9), st.booleans())
def test_day_and_place_answer_each_other(day, southern):
    layout = SeasonLayout(SeasonChart(southern=southern), BOX)
    assert layout.day(layout.x(day)) == pytest.approx((day - 1) % 365 + 1, abs=1e-6)


def test_the_south_starts_in_july():
    north, south = SeasonLayout(SeasonChart(), BOX), SeasonLayout(SeasonChart(southern=True), BOX)
    assert north.x(1) == north.field.left()
    # 1 July is day 182 of a common year.
    assert south.x(182) == south.field.left()
    assert south.x(355) < south.x(20)
    assert len(south.spans(Band(350, 12))) == 1
    assert len(north.spans(Band(350, 12))) == 2


@pytest.mark.parametrize(("day", "words"), [
    (1, "1 January"), (59, "28 February"), (60, "1 March"), (114, "24 April"), (172, "21 June"),
    (365, "31 December"), (366, "1 January"), (0, "31 December"),
])
def test_dates_in_words(day, words):
    assert date_words(day) == words


def test_hours_in_words():
    assert [hour_words(h) for h in (15.33, 9.0, 23.999, 0.5)] == ["15:20", "9:00", "0:00", "0:30"]


def test_rows_under_the_pointer():
    layout = SeasonLayout(SeasonChart(rows=ROWS), BOX)
    assert layout.row(layout.y(1)) == 1
    assert layout.row(layout.field.top() - 1) is None
    assert layout.row(layout.y(4)) is None
    assert height_for(ROWS) == 76.0


def drawn(chart):
    return picture(lambda p: draw_season(p, SeasonLayout(chart, BOX)), BOX.width(), BOX.height())


def test_everything_shows(qapp):
    bare = drawn(SeasonChart(rows=ROWS))
    layout = SeasonLayout(SeasonChart(rows=ROWS), BOX)
    # A dot at full bloom, green on harvest.
    assert near(bare, PALETTE.ink, 60)[int(layout.y(0)), int(layout.x(128))]
    assert near(bare, PALETTE.leaf, 60)[:, int(layout.x(291)) : int(layout.x(304))].any()
    full = drawn(SeasonChart(
        rows=ROWS, frosts=(FrostLine(126, "last frost, 5 years of 10"), FrostLine(286, "first frost", False)),
        together=(Together("A1", "A2", 122, 133, 9),), day=172, hour=15.33, chosen=frozenset({"A2"}),
    ))
    x = int(layout.x(172))
    line = near(full, PALETTE.ink, 60)[40:140, x - 1 : x + 2].any(axis=1)
    # Only the words on days together, one line high, lie over the day's line.
    assert line[30:].all()
    assert line.sum() >= 80
    assert near(full, PALETTE.caution, 60).sum() > near(bare, PALETTE.caution, 60).sum() + 150
    assert near(full, PALETTE.frost, 6).sum() > 2000
    assert not near(bare, PALETTE.frost, 3).any()


WORDS = {
    "en": ("last frost, 5 years of 10", "first frost, 5 years of 10"),
    "de": ("letzter Frost, 5 Jahre von 10", "erster Frost, 5 Jahre von 10"),
}


def frost_layout(language, unit, wide, day):
    frosts = tuple(FrostLine(*line) for line in zip((115, 294), WORDS[language], (True, False), strict=True))
    chart = SeasonChart(rows=ROWS, frosts=frosts, day=day, hour=12.0)
    gutter = min(150.0, 0.36 * wide / unit)
    return SeasonLayout(chart, QRectF(0, 0, wide, height_for(ROWS, unit)), unit=unit, gutter=gutter)


@pytest.mark.parametrize("unit", [1.0, 1.5, 2.0])
@pytest.mark.parametrize("wide", [360, 500, 770, 1400])
def test_words_of_frost_lie_on_nothing_and_within_the_year(qapp, unit, wide):
    for language, day in itertools.product(WORDS, (None, *range(1, 365, 14))):
        layout = frost_layout(language, unit, wide, day)
        said = frost_words(layout)
        # The names stand left of the year, the rows above the foot.
        for words, place in said:
            assert words in (*WORDS[language], "25 April", "21 October")
            assert layout.field.left() <= place.left()
            assert place.right() <= layout.box.right()
            assert place.top() >= layout.field.bottom()
            assert place.bottom() <= layout.box.bottom()
        places = [place for _words, place in said] + ([] if day is None else [flag_box(layout)])
        assert not any(one.intersects(other) for one, other in itertools.combinations(places, 2))
        if day is None and wide >= 500 * unit:
            assert len(said) == 2
        if day is None and wide >= 770 * unit:
            assert [words for words, _place in said] == list(WORDS[language])


def test_days_together_are_told_within_the_chart(qapp):
    two = Together("A1", "A2", 340, 352, 12)
    narrow = QRectF(0, 0, 400, height_for(ROWS))
    free = picture(lambda p: draw_season(p, SeasonLayout(SeasonChart(rows=ROWS), narrow)), 440, 76)
    chart = SeasonChart(rows=ROWS, together=(two,))
    told = picture(lambda p: draw_season(p, SeasonLayout(chart, narrow)), 440, 76)
    changed = (free != told).any(axis=2)
    assert changed[:, :400].any()
    assert not changed[:, 400:].any()


def test_what_does_not_fit_is_left_for_scrolling(qapp):
    many = tuple(SeasonRow(thing=f"A{i}", name="Liberty", bloom=Band(118, 133, 125)) for i in range(40))
    layout = SeasonLayout(SeasonChart(rows=many), BOX, first=5)
    assert layout.seen == range(5, 11)
    assert layout.row(layout.y(5)) == 5
    assert np.isfinite(drawn(SeasonChart(rows=many))).all()


def test_error_of_a_band_shows_as_pale_ends(qapp):
    band = Band(122, 136, 128, error=5.0)
    assert (band.with_error.start, band.with_error.end) == (117, 141)
    over_new_year = Band(363, 3, error=4.0).with_error
    assert (over_new_year.start, over_new_year.end) == (359, 7)
    bare = SeasonChart(rows=(SeasonRow(thing="A1", name="Enterprise", bloom=Band(122, 136, 128)),))
    told = SeasonChart(rows=(SeasonRow(thing="A1", name="Enterprise", bloom=band),))
    layout = SeasonLayout(told, BOX)
    row, column = round(layout.y(0)), round(layout.x(119))
    without, with_error = (drawn(chart)[row, column] for chart in (bare, told))
    assert not np.array_equal(without, with_error)


def test_a_hidden_partner_is_named_beside_the_frame(qapp):
    rows = tuple(SeasonRow(thing=f"A{n}", name="Kin", bloom=Band(122, 136)) for n in range(12))
    pair = Together("A0", "A11", 122, 136, 14)
    layout = SeasonLayout(SeasonChart(rows=rows, together=(pair,)), BOX)
    assert 11 not in layout.seen
    frame = (round(layout.y(0)), round((layout.x(122) + layout.x(136)) / 2))
    plain = drawn(SeasonChart(rows=rows))
    assert not np.array_equal(drawn(layout.chart)[frame[0] - 8:frame[0] + 8, frame[1] + 30:frame[1] + 200],
                              plain[frame[0] - 8:frame[0] + 8, frame[1] + 30:frame[1] + 200])


def test_words_on_partners_have_a_column_of_their_own():
    wide = SeasonLayout(SeasonChart(rows=ROWS), BOX, aside=200.0)
    assert SeasonLayout(SeasonChart(rows=ROWS), BOX).field.right() - wide.field.right() == 200.0


def test_words_of_frost_stand_beside_their_own_line(qapp):
    layout = frost_layout("de", 1.0, 770, 172)
    for line, (_words, place) in zip(layout.chart.frosts, frost_words(layout), strict=True):
        x = layout.x(line.day)
        assert min(abs(place.left() - x), abs(place.right() - x)) < 6
