import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from support.builders import yard_of
from support.stands import Nursery

from yardplan.checks import beds
from yardplan.checks.beds import most_in_row, per_area, places_in, plants_in, posts
from yardplan.yard.planting import Bed, PlantKey, Row


def oblong(width: float, depth: float, turn: float = 0.0) -> tuple[tuple[float, float], ...]:
    c, s = math.cos(turn), math.sin(turn)
    corners = ((0.0, 0.0), (width, 0.0), (width, depth), (0.0, depth))
    return tuple((c * x - s * y, s * x + c * y) for x, y in corners)


@pytest.mark.parametrize("turn", [0.0, 0.4, 1.9])
@pytest.mark.parametrize(
    ("width", "depth", "spacing", "number"),
    [(6.0, 4.0, 1.0, 24), (2.0, 1.0, 0.5, 8), (1.0, 1.0, 1.0, 1), (0.4, 0.4, 1.0, 0)],
)
def test_square_planting(turn: float, width: float, depth: float, spacing: float, number: int):
    assert len(places_in(oblong(width, depth, turn), spacing)) == number


def test_staggered_rows_take_more():
    square, staggered = (len(places_in(oblong(60, 60), 1.0, way)) for way in ("square", "triangular"))
    assert square == 3600
    assert staggered / square == pytest.approx(1.1547, abs=0.02)
    assert per_area(1.0, pattern="triangular") / per_area(1.0) == pytest.approx(1.1547, abs=1e-4)


@given(st.floats(1, 12), st.floats(1, 12), st.floats(0.2, 2.0), st.sampled_from(["square", "triangular"]))
def test_places_keep_their_spacing_and_stay_inside(width, depth, spacing, pattern):
    places = places_in(oblong(width, depth), spacing, pattern)
    for x, y in places:
        assert -1e-6 <= x <= width + 1e-6
        assert -1e-6 <= y <= depth + 1e-6
    gaps = [math.dist(p, q) for i, p in enumerate(places[:60]) for q in places[i + 1 : 60]]
    assert min(gaps, default=spacing) >= spacing - 1e-6


def test_places_refuse_no_spacing():
    with pytest.raises(ValueError, match="greater than 0"):
        places_in(oblong(3, 3), 0.0)


def test_an_odd_outline():
    corner = ((0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (2.0, 2.0), (2.0, 4.0), (0.0, 4.0))
    assert plants_in(Bed(id="B1", outline=corner), 1.0) == 12


def row(count: int, spacing: float = 1.0, line=((0.0, 0.0), (0.0, 9.0))) -> Row:
    return Row(id="R1", plant=PlantKey("red raspberry", "X"), line=line, count=count, spacing=spacing)


@pytest.mark.parametrize(("count", "kinds"), [(10, []), (11, ["row_full"])])
def test_more_plants_than_a_row_takes(count: int, kinds: list[str]):
    assert most_in_row(row(count)) == 10
    assert [f.kind for f in beds.run(Nursery().survey(yard_of(rows=(row(count),))))] == kinds


@pytest.mark.parametrize(
    ("degrees", "kinds"), [(0, []), (29, []), (31, ["row_direction"]), (90, ["row_direction"])]
)
def test_row_direction(degrees: float, kinds: list[str]):
    end = (9 * math.sin(math.radians(degrees)), 9 * math.cos(math.radians(degrees)))
    turned = row(5, line=((0.0, 0.0), end))
    assert [f.kind for f in beds.run(Nursery().survey(yard_of(rows=(turned,))))] == kinds


@pytest.mark.parametrize(
    ("length", "apart", "number"), [(6.0, 6.0, 2), (6.1, 6.0, 3), (18.0, 6.0, 4), (0.0, 6.0, 1)]
)
def test_posts(length: float, apart: float, number: int):
    assert posts(length, apart) == number


def test_a_bed_that_takes_nothing():
    bed = Bed(id="B1", outline=oblong(0.3, 0.3), plant=PlantKey("asparagus", "X"), spacing=1.0)
    assert [f.kind for f in beds.run(Nursery().survey(yard_of(beds=(bed,))))] == ["bed_too_small"]
