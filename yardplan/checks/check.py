"""What a check is: a name, a pure function from a survey to findings, and its wording."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from attrs import field, frozen

from yardplan.checks.finding import Finding, Severity

if TYPE_CHECKING:
    from yardplan.checks.survey import Survey


@frozen
class Wording:
    """Sentences for one kind of finding; `{name}` stands for the figure of that name.

    `message` says what, where and how much; `clears` says what would end the finding;
    `title` is the short form for a card and the plan (a few words).
    """

    message: str
    clears: str
    title: str = ""


@frozen(kw_only=True)
class Check:
    """One rule of the house.

    `near` True: quick, run whole on every drag frame. `places` False: its findings do not depend on
    where things stand, so it is skipped while things only move. `light` True: it reads the light report.
    `keeps` True: it takes over what it found of the stand before, so its first run tells nothing of the next.
    `severities` what is at stake in findings whose source is no rule of the table, by kind; `severity` in the
    others of them.
    """

    name: str
    title: str
    run: Callable[[Survey], list[Finding]]
    wording: Mapping[str, Wording] = field(factory=dict)
    near: bool = True
    places: bool = True
    light: bool = False
    keeps: bool = False
    severity: Severity = "growth"
    severities: Mapping[str, Severity] = field(factory=dict)
