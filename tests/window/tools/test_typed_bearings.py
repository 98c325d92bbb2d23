"""Bearings as they are typed: in letters of the language or in English ones, decimals with a comma."""

import math

import pytest

from yardplan.units import UnitError
from yardplan.window.tools.arranging import parse_repeat
from yardplan.window.tools.typed import parse_typed


def turn(text: str) -> float:
    return parse_typed(f"10 m < {text}", "metric").second


@pytest.mark.parametrize(
    ("text", "degrees"),
    [
        ("N 30 O", 60), ("s 30 o", 300), ("S 30 W", 240), ("N 30 E", 60), ("N 30° 30' O", 59.5),
        ("N 30,5 O", 59.5),
    ],
)
def test_german_letters_are_read_beside_the_english_ones(german: None, text: str, degrees: float) -> None:
    assert turn(text) == pytest.approx(degrees)


def test_an_example_is_told_in_the_letters_of_the_language(german: None) -> None:
    with pytest.raises(UnitError, match="N 45 O"):
        turn("N 45 X")


@pytest.mark.parametrize(
    ("text", "degrees"),
    [
        ("N 45°30’15” E", 90 - 45.5041666667), ("N 45°30′15″ E", 90 - 45.5041666667),
        ("N45-30-15E", 90 - 45.5041666667), ("N 45 30 E", 44.5), ("North 45° 30' East", 44.5),
        ("N 45 deg 30 min E", 44.5), ("S 0 E", 270), ("N", 90), ("due east", 0), ("N 123.5", 326.5),
        ("Az 123°30'", 326.5), ("N 360", 90), ("45°30'", 45.5), ("-45°30'36\"", -45.51), ("−30", -30),
        ("50 gon", 45), ("45,5°", 45.5),
    ],
)
def test_angles_as_deeds_and_instruments_write_them(text: str, degrees: float) -> None:
    assert turn(text) == pytest.approx(degrees, abs=1e-9)


@pytest.mark.parametrize(
    "text", ["nan", "inf", "N 100 E", "N 45 75' E", "45°61'", "45.5°30'", "N 361", "1e3"]
)
def test_what_can_be_no_angle_is_refused(text: str) -> None:
    """`nan` was once taken for an angle and put corners nowhere."""
    with pytest.raises(UnitError):
        turn(text)


def test_a_call_is_typed_without_a_sign_between() -> None:
    for text in ("N 45°30' E 100.5 ft", "100.5 ft N 45°30' E", "100.5 ft < N 45-30 E"):
        entry = parse_typed(text, "metric")
        assert (entry.form, entry.first) == ("angle", pytest.approx(30.6324))
        assert entry.second == pytest.approx(44.5)


def test_a_row_along_a_bearing_knows_where_north_lies() -> None:
    _, step = parse_repeat("3 x 10 m < N 90 E", "metric", north=30.0)
    assert step == pytest.approx((10 * math.cos(math.radians(30)), -5.0))


@pytest.mark.parametrize("text", ["N 45 O", "E 45 N", "N 45 S", "Ä 4 E"])
def test_in_english_only_a_quadrant_in_english_letters_is_a_bearing(text: str) -> None:
    assert turn("N 30,5 e") == pytest.approx(59.5)
    with pytest.raises(UnitError, match="N 45 E"):
        turn(text)
