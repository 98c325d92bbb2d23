"""Paper sizes and scales. Millimetres of paper."""

from __future__ import annotations

import re
from collections.abc import Iterable
from fractions import Fraction

from attrs import evolve, frozen

from yardplan.language import tr
from yardplan.units import System


class SheetError(ValueError):
    """A sheet that cannot be made, said in words for a person."""


@frozen
class Paper:
    """A sheet of paper, `wide` and `high` in millimetres."""

    name: str
    wide: float
    high: float

    def turned(self) -> Paper:
        """The same sheet on its other side."""
        return evolve(self, wide=self.high, high=self.wide)

    @property
    def landscape(self) -> bool:
        """True when it is wider than high."""
        return self.wide > self.high


#: A series by ISO 216; Letter and Tabloid (ANSI A and B) by ANSI Y14.1: 8.5 x 11 in and 11 x 17 in.
PAPERS: dict[str, Paper] = {
    paper.name: paper
    for paper in (
        Paper("A4", 210.0, 297.0), Paper("A3", 297.0, 420.0),
        Paper("Letter", 215.9, 279.4), Paper("Tabloid", 279.4, 431.8),
    )
}


@frozen
class Scale:
    """One unit of paper stands for `denominator` on the ground; `words` as a person writes it."""

    denominator: float
    words: str

    def mm(self, metres: float) -> float:
        """Millimetres of paper for metres of ground."""
        return metres * 1000.0 / self.denominator


#: Scales tried for the best fit, largest first. Inches to the foot: 1/4 in is 1:48, 1 in to 20 ft is 1:240.
METRIC_SCALES = tuple(
    Scale(d, f"1:{d}")
    for d in (10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 350, 400, 500, 600, 750, 1000, 2000, 5000,
              10_000, 20_000, 50_000, 100_000)
)
IMPERIAL_SCALES = (
    Scale(12, "1 in = 1 ft"), Scale(24, "1/2 in = 1 ft"), Scale(48, "1/4 in = 1 ft"),
    Scale(64, "3/16 in = 1 ft"), Scale(96, "1/8 in = 1 ft"), Scale(128, "3/32 in = 1 ft"),
    Scale(192, "1/16 in = 1 ft"),
    *(Scale(12 * feet, f"1 in = {feet} ft")
      for feet in (20, 30, 40, 50, 60, 100, 200, 400, 1000, 2000, 5000)),
)
_INCHES = re.compile(
    r"(?:(\d+)\s+)?(\d+)(?:/(\d+))?\s*(?:\"|in|inch|inches)?\s*(?:(?:=|to)\s*(\d{1,5})\s*(?:'|ft|foot|feet)\.?)?"
)


def paper_named(name: str) -> Paper:
    """The paper of that name, whatever the case. Raises SheetError naming those there are."""
    found = {known.casefold(): paper for known, paper in PAPERS.items()}.get(name.strip().casefold())
    if found is None:
        raise SheetError(tr(
            "'{name}' is not a paper size: choose {papers}",
            name=name, papers=', '.join(PAPERS),
        ))
    return found


def usual_paper(system: System) -> Paper:
    """Letter where feet are used, A4 elsewhere."""
    return PAPERS["Letter" if system == "imperial" else "A4"]


def parse_scale(text: str) -> Scale | None:
    """A scale like `1:100`, `1/8 in`, `1/4" = 1'`, `1 in to 10 ft`; None for `fit`. Raises SheetError."""
    typed = text.strip().lower().replace("″", '"').replace("′", "'")
    if typed in ("fit", "best fit", ""):
        return None
    if typed.startswith("1:"):
        return _ratio(text, typed[2:])
    match = _INCHES.fullmatch(typed)
    if match is None or (match[3] and int(match[3]) == 0):
        raise _no_scale(text)
    inches = Fraction(int(match[2]), int(match[3] or 1)) + int(match[1] or 0)
    feet = int(match[4] or 1)
    if not inches or not feet:
        raise _no_scale(text)
    return Scale(float(12 * feet / inches), f"{_mixed(inches)} in = {feet} ft")


def _no_scale(text: str) -> SheetError:
    return SheetError(tr(
        "'{text}' is not a scale: write for example 1:100, 1/8 in (to the foot) or fit",
        text=text,
    ))


def _ratio(text: str, number: str) -> Scale:
    if not re.fullmatch(r"\d+(\.\d+)?", number.strip()) or not 1 <= float(number) <= 100_000:
        raise _no_scale(text)
    return Scale(float(number), f"1:{float(number):g}")


def _mixed(inches: Fraction) -> str:
    whole, rest = divmod(inches, 1)
    return " ".join(part for part in (str(whole) if whole else "", str(rest) if rest else "") if part)


def scales_for(system: System) -> tuple[Scale, ...]:
    """Scales tried for the best fit, largest first."""
    return IMPERIAL_SCALES if system == "imperial" else METRIC_SCALES


def best_fit(wide: float, high: float, fields: Iterable[tuple[float, float]], system: System) -> Scale:
    """The largest usual scale at which metres `wide` x `high` go into one of some fields in millimetres.

    Raises SheetError where even the smallest is too large.
    """
    rooms = list(fields)
    for scale in scales_for(system):
        if any(scale.mm(wide) <= w and scale.mm(high) <= h for w, h in rooms):
            return scale
    raise SheetError(tr(
        "a yard of {wide} m by {high} m does not fit on one sheet: choose a scale",
        wide=f"{wide:.0f}", high=f"{high:.0f}",
    ))
