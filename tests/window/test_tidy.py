"""The collector runs on the window's thread only, and not in a gesture."""

import gc

from yardplan.window.tidy import Tidy


class Ring:
    def __init__(self) -> None:
        self.own = self


def test_it_collects_at_rest_and_waits_in_a_gesture(qapp):
    state = {"busy": True}
    tidy = Tidy(lambda: state["busy"])
    tidy.start()
    try:
        assert not gc.isenabled()
        rings = [Ring() for _ in range(5000)]
        gone = len(rings)
        before = gc.get_count()[0]
        assert before > gc.get_threshold()[0]
        rings.clear()
        tidy.collect_if_due()
        assert sum(isinstance(o, Ring) for o in gc.get_objects()) == gone
        state["busy"] = False
        tidy.collect_if_due()
        assert not any(isinstance(o, Ring) for o in gc.get_objects())
    finally:
        tidy.stop()
    assert gc.isenabled()
    gc.disable()
