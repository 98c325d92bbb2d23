"""Days of the year as people write them: `24 April`, `Apr 24`, `4/24`; `MM-DD` inside."""

from __future__ import annotations

import calendar
import re

from yardplan.language import later, tr

MONTHS = (
    later("January"),
    later("February"),
    later("March"),
    later("April"),
    later("May"),
    later("June"),
    later("July"),
    later("August"),
    later("September"),
    later("October"),
    later("November"),
    later("December"),
)
SHORT_MONTHS = (
    later("Jan"), later("Feb"), later("Mar"), later("Apr"), later("May"), later("Jun"), later("Jul"),
    later("Aug"), later("Sep"), later("Oct"), later("Nov"), later("Dec"),
)
#: Any year of 365 days: the year behind a day of no year.
_YEAR = 2023
_NUMBERS = re.compile(r"(\d{1,2})\s*[-/.]\s*(\d{1,2})\.?")
_WORDS = re.compile(r"(?:(\d{1,2})\.?\s+)?([^\W\d_]{3,})\.?(?:\s+(\d{1,2})\.?)?")


class DayError(ValueError):
    """A day that could not be read, said in words for a person."""


def say_day(day: str) -> str:
    """`04-24` as `24 April`."""
    month, number = day.split("-")
    return tr("{day} {month}", day=int(number), month=tr(MONTHS[int(month) - 1]))


def _pair(text: str) -> tuple[int, int] | None:
    """Month and day from the text, not yet checked."""
    numbers = _NUMBERS.fullmatch(text)
    if numbers:
        return int(numbers[1]), int(numbers[2])
    words = _WORDS.fullmatch(text)
    if not words or bool(words[1]) == bool(words[3]):
        return None
    found = [n for n, month in enumerate(MONTHS, 1) if _begins(month, words[2])]
    return (found[0], int(words[1] or words[3])) if found else None


def _begins(month: str, typed: str) -> bool:
    """Whether a month's name begins so, in the language shown or in English."""
    return any(name.lower().startswith(typed) for name in (month, tr(month)))


def read_day(typed: str) -> str:
    """`MM-DD` from what a person typed; numbers alone are month first. Raises DayError."""
    pair = _pair(typed.strip().lower().replace(",", " "))
    if pair is None:
        raise DayError(tr("'{typed}' is not a day: write for example 24 April or 4-24", typed=typed))
    month, day = pair
    if not 1 <= month <= 12 or not 1 <= day <= calendar.monthrange(_YEAR, month)[1]:
        raise DayError(tr("'{typed}': there is no such day", typed=typed))
    return f"{month:02d}-{day:02d}"


def day_number(day: str) -> int:
    """1 to 365 for `MM-DD`."""
    month, number = (int(part) for part in day.split("-"))
    return sum(calendar.monthrange(_YEAR, m)[1] for m in range(1, month)) + number


def day_of_number(number: int) -> str:
    """`MM-DD` for 1 to 365; numbers beyond run on into the next or the last year."""
    left = (number - 1) % 365
    for month in range(1, 13):
        length = calendar.monthrange(_YEAR, month)[1]
        if left < length:
            return f"{month:02d}-{left + 1:02d}"
        left -= length
    raise AssertionError("a year has twelve months")
