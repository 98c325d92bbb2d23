"""Near checks of a drag: what keeps its last run is measured by its drag frames, not by its first run."""

from support import builders

from yardplan.checks.survey import moved_survey, survey_of
from yardplan.window.frame_checks import FrameChecks
from yardplan.yard import edits
from yardplan.yard.change import difference


def test_pollination_is_in_the_first_frame_however_long_its_first_run_took(qapp) -> None:
    yard = builders.yard_of(
        builders.plant("A1", "apple:Empire", (4, 5)), builders.plant("A2", "apple:Gala", (10, 5)),
    )
    survey = survey_of(yard)
    checks = FrameChecks()
    assert "pollination" in checks.run(survey, None, all_of_them=True).checks
    moved = edits.move(yard, {"A1"}, (0.0, 1.0))
    change = difference(yard, moved)
    found = checks.run(moved_survey(survey, moved, change), change, all_of_them=False)
    assert "pollination" in found.checks
    checks.stop()
