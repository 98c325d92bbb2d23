"""Paper, scales and tiles."""

import itertools

import pytest
from hypothesis import given
from hypothesis import strategies as st

from yardplan.sheets.paper import (
    IMPERIAL_SCALES,
    METRIC_SCALES,
    PAPERS,
    SheetError,
    best_fit,
    paper_named,
    parse_scale,
    usual_paper,
)
from yardplan.sheets.tiling import OVERLAP, tile


@pytest.mark.parametrize(("typed", "denominator"), [
    ("1:100", 100), ("1:50", 50), ("1:62.5", 62.5), ("1/8 in", 96), ('1/8"', 96), ("1/4 in", 48),
    ("1/4\" = 1'", 48), ("1/8 in = 1 ft", 96), ("1 in", 12), ("1 1/2 in", 8), ("3/32in", 128),
    ("1 in to 10 ft", 120), ("1\" = 20'", 240), ("1 in = 30 feet", 360), ("1in=10ft", 120),
])
def test_scales_as_people_write_them(typed, denominator):
    scale = parse_scale(typed)
    assert scale is not None
    assert scale.denominator == pytest.approx(denominator)


def test_fit_is_no_scale_and_nonsense_is_refused_in_words():
    assert parse_scale("fit") is None
    for wrong in ("big", "1:0", "1:", "0/8 in", "1/0 in", "1:-5", "2:100", "1 in to 0 ft"):
        with pytest.raises(SheetError, match="is not a scale"):
            parse_scale(wrong)


@pytest.mark.parametrize("scale", [*METRIC_SCALES, *IMPERIAL_SCALES])
def test_words_of_a_scale_read_back_as_the_scale(scale):
    assert parse_scale(scale.words) == scale


def test_papers():
    # ISO 216 A4 and A3; ANSI Y14.1 A (8.5 x 11 in) and B (11 x 17 in).
    assert (PAPERS["A4"].wide, PAPERS["A4"].high) == (210, 297)
    assert (PAPERS["A3"].wide, PAPERS["A3"].high) == (297, 420)
    assert (PAPERS["Letter"].wide, PAPERS["Letter"].high) == pytest.approx((8.5 * 25.4, 11 * 25.4))
    assert PAPERS["Tabloid"].high == pytest.approx(17 * 25.4)
    assert paper_named("a4").turned().landscape
    assert usual_paper("imperial").name == "Letter"
    with pytest.raises(SheetError, match="choose A4, A3, Letter, Tabloid"):
        paper_named("B5")


@given(st.floats(1, 900), st.floats(1, 900), st.sampled_from(["metric", "imperial"]))
def test_best_fit_fits_and_the_next_larger_does_not(wide, high, system):
    fields = [(277.0, 161.0), (190.0, 232.0)]
    scale = best_fit(wide, high, fields, system)
    assert any(scale.mm(wide) <= w and scale.mm(high) <= h for w, h in fields)
    scales = METRIC_SCALES if system == "metric" else IMPERIAL_SCALES
    before = scales.index(scale) - 1
    if before >= 0:
        larger = scales[before]
        assert not any(larger.mm(wide) <= w and larger.mm(high) <= h for w, h in fields)


def test_too_large_for_any_sheet_is_said():
    with pytest.raises(SheetError, match="does not fit on one sheet"):
        best_fit(90_000, 10, [(277, 161)], "metric")


@given(st.floats(1, 3000), st.floats(1, 3000), st.floats(80, 400), st.floats(80, 400))
def test_tiles_cover_the_plan_and_overlap(wide, high, field_wide, field_high):
    tiling = tile(wide, high, field_wide, field_high)
    assert len(tiling.tiles) == tiling.columns * tiling.rows
    lefts = sorted({part.left for part in tiling.tiles})
    tops = sorted({part.top for part in tiling.tiles})
    assert lefts[0] <= 1e-6
    assert lefts[-1] + field_wide >= wide - 1e-6
    assert tops[0] <= 1e-6
    assert tops[-1] + field_high >= high - 1e-6
    for one, other in itertools.pairwise(lefts):
        assert one + field_wide - other == pytest.approx(OVERLAP)
    # One column fewer would not do.
    if tiling.columns > 1:
        assert (tiling.columns - 1) * (field_wide - OVERLAP) + OVERLAP < wide


def test_tiles_are_named_and_found():
    tiling = tile(500, 300, 200, 160)
    assert [part.name for part in tiling.tiles[:4]] == ["A1", "A2", "A3", "B1"]
    assert tiling.at(2, 1) is tiling.tiles[5]
    assert tiling.at(3, 0) is None
    assert tiling.at(-1, 0) is None
    with pytest.raises(ValueError, match="smaller than the overlap"):
        tile(100, 100, 8, 100)
