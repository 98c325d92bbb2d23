"""Bearings as they are typed: in letters of the language or in English ones, decimals with a comma."""


import pytest

from yardplan.units import UnitError
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


@pytest.mark.parametrize("text", ["N 45 O", "E 45 N", "N 45 S", "Ä 4 E"])
def test_in_english_only_a_quadrant_in_english_letters_is_a_bearing(text: str) -> None:
    assert turn("N 30,5 e") == pytest.approx(59.5)
    with pytest.raises(UnitError, match="N 45 E"):
        turn(text)
