"""What is said to a person, in the language the window is shown in.

Texts are written in English where they are said: `tr("{plant} needs {room}", plant=..., room=...)`.
The window installs a lookup (Qt's translations, resources/languages); without one, English is said.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Protocol

#: The translation context all texts share.
CONTEXT = "yardplan"


class Lookup(Protocol):
    """Finds a text in another language; the text itself where it is not known. `n` chooses the plural."""

    def __call__(self, text: str, n: int = -1) -> str: ...


def _english(text: str, n: int = -1) -> str:
    return text


class _Spoken:
    """The language of this process."""

    lookup: Lookup = staticmethod(_english)
    point = "."
    code = "en"


def install(lookup: Lookup | None, *, decimal_point: str = ".", code: str = "en") -> None:
    """Say texts by this lookup from now on, and write decimals with this point; None is English again.

    `code` is the language's own, as documents are marked with (BCP 47).
    """
    _Spoken.lookup = staticmethod(lookup or _english)
    _Spoken.point = decimal_point
    _Spoken.code = code if lookup is not None else "en"


def spoken() -> str:
    """The code of the language in which texts are said: `en`, `de`."""
    return _Spoken.code


def tr(text: str, /, **values: object) -> str:
    """The text in the language shown, its `{names}` filled in."""
    said = _Spoken.lookup(text) if text else text
    return said.format(**values) if values else said


def tr_n(one: str, many: str, n: int, /, **values: object) -> str:
    """The text for a count: `tr_n("{n} plant", "{n} plants", n)`. `many` is the key of its translations."""
    said = _Spoken.lookup(many, n)
    if said == many and n == 1:
        said = one
    return said.format(n=n, **values)


def later(text: str) -> str:
    """Mark a text that is said later by `tr`: for tables that are made before a language is chosen."""
    return text


def decimals(text: str) -> str:
    """A number written by Python, with the decimal point of the language shown."""
    return text if _Spoken.point == "." else text.replace(".", _Spoken.point)


def decimal_point() -> str:
    """The sign before the decimals in the language shown."""
    return _Spoken.point


def all_of(words: Sequence[str]) -> str:
    """`a`, `a and b`, `a, b and c`."""
    if len(words) < 2:
        return "".join(words)
    return tr("{first} and {last}", first=", ".join(words[:-1]), last=words[-1])


def any_of(words: Sequence[str]) -> str:
    """`a`, `a or b`, `a or b or c`."""
    return tr(" or ").join(words)


#: The months as they are said.
MONTHS = (
    later("January"), later("February"), later("March"), later("April"), later("May"), later("June"),
    later("July"), later("August"), later("September"), later("October"), later("November"),
    later("December"),
)


def month_name(month: int) -> str:
    """The name of a month, 1 to 12."""
    return tr(MONTHS[month - 1])


def day_month(month: int, day: int) -> str:
    """A day of the year: `24 April`."""
    return tr("{day} {month}", day=day, month=month_name(month))


def whole_date(day: date) -> str:
    """A date: `24 April 2027`."""
    return tr("{day} {month} {year}", day=day.day, month=month_name(day.month), year=day.year)


def mid_sentence(text: str) -> str:
    """A text as it stands within a sentence: English begins it small; elsewhere it is written as it is."""
    return text[:1].lower() + text[1:] if _Spoken.lookup is _english else text


def percent(share: float) -> str:
    """A share from 0 to 1 in whole percent: `85%`."""
    return tr("{n}%", n=f"{share:.0%}"[:-1])


def thousands(value: float, digits: int = 0) -> str:
    """A large number in groups of three: `1,250` or `1.250`, as the language shown writes it."""
    text = f"{value:,.{digits}f}"
    return text if _Spoken.point == "." else text.translate(str.maketrans(",.", f".{_Spoken.point}"))
