"""What stands beside the sheet follows a gesture some times a second, and is right at once when it ends."""

from __future__ import annotations

from support.builders import plant, yard_of

from yardplan.window.open_yard import OpenYard
from yardplan.window.pacing import Paced
from yardplan.yard.edits import move


def test_many_frames_make_few_renewals_and_the_end_makes_one_at_once(qtbot) -> None:
    yard = OpenYard(yard_of(plant("A1", "apple:Liberty", (5, 5))))
    seen: list[float] = []
    paced = Paced(yard, lambda: seen.append(yard.shown_yard.find("A1").place[0]), yard)
    yard.shown.connect(paced.soon)
    for step in range(1, 31):
        yard.show_trial(move(yard.yard, {"A1"}, (0.1 * step, 0.0)))
    assert not seen
    qtbot.waitUntil(lambda: bool(seen))
    assert seen == [8.0]
    yard.show_trial(move(yard.yard, {"A1"}, (4.0, 0.0)))
    yard.commit("Move A1", yard.shown_yard)
    assert len(seen) > 1
    assert seen[-1] == 9.0
    # Nothing of the gesture comes later.
    settled = len(seen)
    qtbot.wait(200)
    assert len(seen) == settled
    yard.close()
