"""A lot line from a deed: what is read, how far it misses its beginning, and how that is shared out."""

from __future__ import annotations

import math

import pytest

from yardplan.units import FOOT
from yardplan.yard.deed import DeedError, lot_of, read_calls, shared_out, walk

_RECTANGLE = """
thence North 45°30'15" East a distance of 100.50 feet to a point;
S 44-29-45 E 60.25 ft
S 45°30′15″ W, 100.50'
60.25 ft < N 44°29'45" W
"""


def _area(corners: tuple[tuple[float, float], ...]) -> float:
    pairs = zip(corners, (*corners[1:], corners[0]), strict=True)
    return abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in pairs)) / 2


def test_a_rectangle_by_its_deed() -> None:
    calls = read_calls(_RECTANGLE, "metric")
    assert [call.line for call in calls] == [2, 3, 4, 5]
    assert [round(call.length / FOOT, 9) for call in calls] == [100.5, 60.25, 100.5, 60.25]
    assert calls[0].clockwise == pytest.approx(45 + 30 / 60 + 15 / 3600, abs=1e-12)
    walked, corners = lot_of(calls, (3.0, 4.0), 0.0)
    assert walked.error < 1e-9
    assert walked.one_in == math.inf
    assert corners[0] == (3.0, 4.0)
    assert _area(corners) == pytest.approx(100.5 * 60.25 * FOOT**2, rel=1e-9)
    east, north = corners[1][0] - 3.0, corners[1][1] - 4.0
    assert math.degrees(math.atan2(east, north)) == pytest.approx(45.5041666667, abs=1e-9)


def test_azimuths_from_north_that_is_not_up() -> None:
    calls = read_calls("90 36,58 m\nN 180° 20\n270° 36.58\nAz 0 20 m", "metric")
    _, corners = lot_of(calls, (0.0, 0.0), 30.0)
    turn = math.radians(120)
    assert corners[1] == pytest.approx((36.58 * math.sin(turn), 36.58 * math.cos(turn)), abs=1e-9)


def test_the_closing_error_is_shared_out_by_the_way_walked() -> None:
    calls = read_calls("E 40.00\nN 30.00\nW 40.06\nS 30.02", "metric")
    walked = walk(calls, (0.0, 0.0), 0.0)
    assert walked.gap == pytest.approx((-0.06, -0.02), abs=1e-9)
    assert walked.one_in == pytest.approx(140.08 / math.hypot(0.06, 0.02))
    corners = shared_out(calls, walked)
    # The compass rule by hand: 40/140.08, 70/140.08 and 110.06/140.08 of the gap, taken back.
    shares = (40 / 140.08, 70 / 140.08, 110.06 / 140.08)
    by_hand = [
        (x + 0.06 * share, y + 0.02 * share)
        for (x, y), share in zip(((40, 0), (40, 30), (-0.06, 30)), shares, strict=True)
    ]
    assert corners[0] == (0.0, 0.0)
    for corner, wanted in zip(corners[1:], by_hand, strict=True):
        assert corner == pytest.approx(wanted, abs=1e-9)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("E 40\nN 30\nW 45\nS 30", "line 1 or 3, or a call left out"),
        ("E 40\nN 30\nW 40\nS 36 E 30", "a wrong figure or letter, or a call left out"),
        ("E 40\nN 30", "three calls"),
        ("E 40\nN 30\nN 95 W 40\nS 30", "Line 3: 'N 95 W' is no bearing"),
        ("E 40\nhello\nW 40", "Line 2: 'hello'"),
        ("E 40\nN 40 75 15 W 30\nW 40", "Line 2"),
        ("N 45 E 40\nS 45 W 40\nN 20", "too far"),
        ("E 10\nS 45 E 14.142\nN 10\nS 45 W 0\nW 5", "Line 4"),
    ],
)
def test_what_cannot_be_is_told_with_its_line(text: str, said: str) -> None:
    with pytest.raises(DeedError) as refused:
        lot_of(read_calls(text, "metric"), (0.0, 0.0), 0.0)
    assert said in str(refused.value)


def test_a_line_that_crosses_itself_is_refused() -> None:
    calls = read_calls("N 45 E 10\nW 7.0710678\nS 45 E 10\nW 7.0710678", "metric")
    with pytest.raises(DeedError, match="crosses itself"):
        lot_of(calls, (0.0, 0.0), 0.0)
