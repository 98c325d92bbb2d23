"""Ticking off work and typing prices: the checks and the light are left alone."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from attrs import evolve
from pytestqt.qtbot import QtBot
from support.builders import plant, yard_of

from yardplan.window import live_checks
from yardplan.window.open_yard import OpenYard
from yardplan.yard import edits
from yardplan.yard.yard import Yard

YARD = yard_of(plant("A1", "apple:Liberty", (5, 6)), plant("A2", "apple:Enterprise", (6, 6)))


@pytest.fixture
def rested(opened: Callable[[Yard], OpenYard], qtbot: QtBot) -> OpenYard:
    made = opened(YARD)
    qtbot.waitUntil(lambda: not made.checks.busy, timeout=60_000)
    return made


def forbidden(*_: object, **__: object) -> object:
    raise AssertionError("the checks were run again")


def test_marks_and_prices_run_no_check_and_no_light(
    rested: OpenYard, monkeypatch: pytest.MonkeyPatch
) -> None:
    found, light, stand = rested.findings, rested.light, rested.stand
    monkeypatch.setattr(live_checks, "full_check", forbidden)
    monkeypatch.setattr(rested.checks, "_check_near", forbidden)
    marked = evolve(rested.yard, done={"x": "2027-05-01"})
    rested.commit("Mark done", marked)
    rested.commit("Price", evolve(marked, prices={"stake": 4.5}, currency="EUR"))
    rested.undo_stack.undo()
    assert not rested.checks.busy
    assert rested.checks.light_fresh
    assert (rested.findings, rested.light, rested.stand) == (found, light, stand)
    # What reads marks and prices from the survey sees those of now.
    assert rested.survey.yard is rested.yard
    assert rested.survey.yard.done == {"x": "2027-05-01"}


def test_work_under_way_goes_on_and_counts(rested: OpenYard, qtbot: QtBot) -> None:
    moved = edits.move(rested.yard, {"A2"}, (8.0, 0.0))
    before = rested.findings
    rested.commit("Move", moved)
    assert rested.checks.busy
    rested.commit("Mark done", evolve(moved, done={"x": "2027-05-01"}))
    assert rested.checks.busy
    qtbot.waitUntil(lambda: not rested.checks.busy, timeout=60_000)
    assert rested.checks.light_fresh
    assert rested.survey.yard is rested.yard
    assert {finding.key for finding in rested.findings} != {finding.key for finding in before}
    assert all(finding.fresh for finding in rested.findings)
