"""Any yard that a file can hold gets its findings: no exception, no figure that is not a number."""

import math
import re

from hypothesis import HealthCheck, Phase, given, settings
from support.strategies import yards

from yardplan.checks.run import CHECKS, findings
from yardplan.checks.survey import survey_of
from yardplan.checks.wording import names_of, say
from yardplan.yard.yard import Yard

#: A figure's place that was not filled.
HOLE = re.compile(r"\{[a-z]\w+\}")


@settings(
    max_examples=100, deadline=None, suppress_health_check=list(HealthCheck),
    phases=[Phase.explicit, Phase.reuse, Phase.generate],
)
@given(yards())
def test_any_yard_gets_its_findings_in_words(yard: Yard):
    survey = survey_of(yard)
    names = {key: name.replace("{", "(") for key, name in names_of(survey).items()}
    known = yard.ids() | {"lot"}
    for finding in findings(survey):
        assert finding.check in {check.name for check in CHECKS}
        assert set(finding.things) <= known
        for figure in finding.figures.values():
            assert isinstance(figure.value, str) or math.isfinite(figure.value)
        for system in ("metric", "imperial"):
            said = say(finding, names, system)
            assert said.message
            assert said.clears
            typed = any("{" in str(figure.value) for figure in finding.figures.values())
            assert typed or not HOLE.search(said.message + said.clears + said.title)
