from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from yardplan.window.panels.days import DayError, day_number, day_of_number, read_day, say_day


@pytest.mark.parametrize(
    ("typed", "day"),
    [
        ("24 April", "04-24"), ("apr 24", "04-24"), ("April 24", "04-24"), ("24. apr.", "04-24"),
        ("4-24", "04-24"), ("4/24", "04-24"), ("04-24", "04-24"), ("  1  jan ", "01-01"), ("12/31", "12-31"),
    ],
)
def test_days_as_people_write_them(typed: str, day: str) -> None:
    assert read_day(typed) == day


@pytest.mark.parametrize(
    "typed", ["", "April", "24", "31 June", "2-30", "13-1", "0-5", "24 Foo", "24 April 24"]
)
def test_what_is_no_day_is_refused_in_words(typed: str) -> None:
    with pytest.raises(DayError, match=r"not a day|no such day"):
        read_day(typed)


@given(st.integers(1, 365))
def test_numbers_and_words_come_back_the_same(number: int) -> None:
    day = day_of_number(number)
    assert day_number(day) == number
    assert read_day(say_day(day)) == day


@given(st.integers(1, 365), st.integers(-3, 3))
def test_whole_years_on_is_the_same_day(number: int, years: int) -> None:
    assert day_of_number(number + 365 * years) == day_of_number(number)
