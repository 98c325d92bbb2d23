"""Long work gives way to frames where the system lets it."""

from __future__ import annotations

import os
import sys
from threading import get_native_id

import pytest
from pytestqt.qtbot import QtBot

from yardplan.window.workers import Bench, Ticket


def rank(_: Ticket) -> int:
    return os.getpriority(os.PRIO_PROCESS, get_native_id())


@pytest.mark.parametrize("urgent", [True, False])
def test_long_work_ranks_behind_frames_but_for_what_the_hand_waits_for(qtbot: QtBot, urgent: bool) -> None:
    bench = Bench(urgent=urgent)
    with qtbot.waitSignal(bench.done) as answered:
        bench.ask(rank if sys.platform == "linux" else lambda _: None)
    bench.stop()
    [found] = answered.args
    if sys.platform == "linux":
        own = os.getpriority(os.PRIO_PROCESS, 0)
        assert found == own if urgent else found > own or own == 19
    else:
        assert found is None
