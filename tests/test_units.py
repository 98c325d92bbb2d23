"""Lengths as people type them, and figures as a tape can set them."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator

import pytest
from hypothesis import given
from hypothesis import strategies as st

from yardplan import language
from yardplan.units import (
    INCH,
    LONGEST,
    System,
    UnitError,
    format_area,
    format_coarse,
    format_length,
    format_temperature,
    format_temperature_difference,
    format_volume,
    format_weight,
    parse_length,
)


@pytest.mark.parametrize(
    ("typed", "inches"),
    [
        ("12' 6\"", 150), ("12'6", 150), ("12'-6 1/2\"", 150.5), ("12 ft 6 in", 150), ('150"', 150),
        ('6 1/2"', 6.5), ('1/2"', 0.5), ("5'½\"", 60.5), ("5′ 3″", 63), ("5’ 3”", 63), ("-2'", -24),
        ("-1' 1/2\"", -12.5), ("−1' 6\"", -18), ("12'6.5", 150.5), ("12' 6''", 150), ("6''", 6), ("3 ft", 36),
        ("3 feet 4 inches", 40), ("3 foot", 36), ("3ft. 4in.", 40), ("1.5'", 18), ("2 yd", 72), ("0'", 0),
        ("+2'", 24), ("12 FT 6 IN", 150), ("7½\"", 7.5), ("¾ in", 0.75), ("3 1/8 in", 3.125), ("1/2'", 6),
    ],
)
def test_feet_and_inches(typed: str, inches: float) -> None:
    assert parse_length(typed, "imperial") == pytest.approx(inches * 0.0254, abs=1e-12)
    # A length with its unit is read alike whatever the yard shows.
    assert parse_length(typed, "metric") == parse_length(typed, "imperial")


@pytest.mark.parametrize(
    ("typed", "metres"),
    [
        ("3.81 m", 3.81), ("381cm", 3.81), ("3,81", 3.81), ("3.8", 3.8), ("3,8 m", 3.8), ("500 mm", 0.5),
        ("3.", 3.0), (".5", 0.5), (",5 m", 0.5), ("0", 0.0), ("-0,5", -0.5), ("2 metres", 2.0), ("1 dm", 0.1),
        ("0.1 km", 100.0), ("3.8\u00a0m", 3.8), ("3.8 M", 3.8), ("1 meter", 1.0), ("10 km", 10_000.0),
    ],
)
def test_metric(typed: str, metres: float) -> None:
    assert parse_length(typed, "metric") == pytest.approx(metres, abs=1e-12)


def test_a_bare_number_is_in_the_shown_unit() -> None:
    assert parse_length("12", "imperial") == pytest.approx(12 * 0.3048)
    assert parse_length("12", "metric") == 12.0
    assert parse_length("1 1/2", "imperial") == pytest.approx(1.5 * 0.3048)


@pytest.mark.parametrize(
    "typed",
    [
        "", " ", "-", "abc", "12 apples", "1/0\"", "3 1/0'", "1 250", "1,25.5", "12'6\"7", "--2", "m", "'",
        "1e3", "nan", "inf", "12;6", "3 m 4", "½½", "1//2", "12' -6\"x",
    ],
)
def test_what_is_no_length_is_said(typed: str) -> None:
    says = f"'{typed}' is not a length: write for example 12' 6\" or 3.8 m"
    with pytest.raises(UnitError, match=re.escape(says)):
        parse_length(typed)


@pytest.mark.parametrize(
    ("typed", "metres"),
    [
        ("1,250.5 m", 1250.5), ("1.250,5 m", 1250.5), ("1,250.5 ft", 1250.5 * 0.3048), ("0,375 m", 0.375),
        ("2 m 35 cm", 2.35), ("2m35cm", 2.35), ("1.250 m", 1.25), ("10 chains", 201.168), ("2 rods", 10.0584),
        ("50 links", 10.0584), ("12 Fuß 6 Zoll", 3.81), ("12ft6in", 3.81),
    ],
)
def test_groups_of_three_and_the_measures_of_deeds(typed: str, metres: float) -> None:
    # Chain, rod and link: NIST Handbook 44, appendix C.
    assert parse_length(typed) == pytest.approx(metres, abs=1e-12)


@pytest.fixture
def decimal_comma() -> Iterator[None]:
    language.install(lambda text, n=-1: text, decimal_point=",", code="de")
    yield
    language.install(None)


@pytest.mark.parametrize("typed", ["1,250 ft", "12,500", "10 m 1,250"])
def test_a_comma_that_may_stand_for_thousands_is_asked_about(typed: str) -> None:
    """Read as decimals it would be a length wrong by a thousand, without a word."""
    with pytest.raises(UnitError, match="write one of these"):
        parse_length(typed, "imperial")


def test_where_the_comma_stands_before_decimals_the_point_is_asked_about(decimal_comma: None) -> None:
    assert parse_length("1,250 m") == 1.25
    with pytest.raises(UnitError, match="may be 1250 or 1,250"):
        parse_length("1.250 m")
    assert parse_length("1.250 m", from_file=True) == 1.25


@pytest.mark.parametrize("typed", ["10.1 km", "40000 ft", "9" * 400])
def test_lengths_beyond_any_yard_are_refused(typed: str) -> None:
    with pytest.raises(UnitError, match="longer than 10 km"):
        parse_length(typed)


@pytest.mark.parametrize(
    ("inches", "shown"),
    [
        (35.9999, "3'"), (36.0, "3'"), (35.6, "2' 11 1/2\""), (150, "12' 6\""), (150.5, "12' 6 1/2\""),
        (9, '9"'), (9.5, '9 1/2"'), (0.5, '1/2"'), (0, '0"'), (0.1, '0"'), (-0.1, '0"'), (-18, "-1' 6\""),
        (60.5, "5' 1/2\""), (11.99, "1'"), (23.76, "2'"), (-35.9999, "-3'"),
    ],
)
def test_feet_are_split_after_rounding(inches: float, shown: str) -> None:
    assert format_length(inches * INCH, "imperial") == shown


def test_finer_ticks() -> None:
    assert format_length(6.0625 * INCH, "imperial", ticks=16) == '6 1/16"'
    assert format_length(6.5 * INCH, "imperial", ticks=16) == '6 1/2"'


@pytest.mark.parametrize(
    ("metres", "shown"),
    [(3.8, "3.80 m"), (-0.001, "0.00 m"), (0.005, "0.01 m"), (-2.5, "-2.50 m"), (1.005, "1.00 m")],
)
def test_metres_to_the_centimetre(metres: float, shown: str) -> None:
    # 0.005 and 1.005 are the nearest binary numbers, a hair above and below the half.
    assert format_length(metres, "metric") == shown


@pytest.mark.parametrize("bad", [math.nan, math.inf, -math.inf])
def test_no_figure_that_is_none_reaches_the_screen(bad: float) -> None:
    systems: tuple[System, ...] = ("metric", "imperial")
    for system in systems:
        for show in (
            format_length, format_coarse, format_area, format_temperature, format_temperature_difference,
            format_weight, format_volume,
        ):
            assert show(bad, system) == "unknown"


@given(st.floats(-9000, 9000), st.sampled_from(("metric", "imperial")))
def test_what_is_shown_reads_back_to_what_a_tape_can_do(metres: float, system: System) -> None:
    shown = format_length(metres, system)
    tick = 0.01 if system == "metric" else INCH / 2
    assert abs(parse_length(shown, system) - metres) <= tick / 2 + 1e-9
    # Shown again it is the same text: rounding does not creep.
    assert format_length(parse_length(shown, system), system) == shown


@given(st.text(max_size=20))
def test_any_text_is_a_length_or_a_plain_error(typed: str) -> None:
    try:
        metres = parse_length(typed)
    except UnitError:
        return
    assert abs(metres) <= LONGEST


@pytest.mark.parametrize(
    ("metres", "system", "shown"),
    [
        (2.44, "metric", "2.4 m"), (0.5, "imperial", "20 in"), (0.6095, "imperial", "2 ft"),
        (0.61, "imperial", "2 ft"),
        (3.0, "imperial", "9.8 ft"), (3.048, "imperial", "10 ft"), (-0.01, "metric", "0.0 m"),
        (-0.001, "imperial", "0 in"), (-0.5, "imperial", "-20 in"),
    ],
)
def test_coarse_lengths(metres: float, system: System, shown: str) -> None:
    assert format_coarse(metres, system) == shown


def test_other_measures() -> None:
    assert format_area(9.290304, "imperial") == "100 sq ft"
    assert format_area(9.29, "metric") == "9.3 m²"
    assert format_temperature(-40, "imperial") == "-40 °F"
    assert format_temperature(-40, "metric") == "-40 °C"
    assert format_temperature(-0.2, "metric") == "0 °C"
    assert format_temperature_difference(5, "imperial") == "9 °F"
    assert format_temperature_difference(2.55, "metric") == "2.5 °C"
    assert format_weight(0.45359237, "imperial") == "1.0 lb"
    assert format_weight(12.3, "metric") == "12 kg"
    assert format_weight(9.97, "metric") == "10 kg"
    assert format_volume(3.785411784, "imperial") == "1.0 gal"
    assert format_volume(40, "metric") == "40 L"


def test_large_areas_stand_in_groups_of_three_and_lengths_read_back_as_they_are_shown() -> None:
    assert format_area(1161.288, "imperial") == "12,500 sq ft"
    assert [format_area(area) for area in (1161.288, 999.96, 999.94, -0.01)] == [
        "1,161.3 m²", "1,000.0 m²", "999.9 m²", "0.0 m²",
    ]
    assert parse_length(format_length(1250.5)) == 1250.5
    assert parse_length(format_coarse(1250 * 0.3048, "imperial")) == pytest.approx(381.0)


def test_groups_of_an_area_are_those_of_the_language_shown(decimal_comma: None) -> None:
    assert format_area(1161.288) == "1.161,3 m²"
    assert format_area(1161.288, "imperial") == "12.500 sq ft"
