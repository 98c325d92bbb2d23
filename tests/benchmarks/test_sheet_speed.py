"""How long sheets take on one core. Bars: a one-page plan 1 s, all of a yard of 150 plants 5 s."""


import pytest

from yardplan.checks.run import findings
from yardplan.checks.survey import survey_of
from yardplan.files.reading import read_yard
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.sheets.assembly import SHEETS, SheetOrder, assemble
from yardplan.sheets.paper import PAPERS
from yardplan.sheets.pdf import pdf_bytes
from yardplan.shipped import folder
from yardplan.sun.light import light_report
from yardplan.sun.scene import scene_of


def order_for(name):
    """The order for a sample, its survey, light and findings made beforehand."""
    yard = read_yard(folder("sample_yards") / name)
    stand = stand_of(yard, catalogue())
    survey = survey_of(yard, stand=stand, light=light_report(scene_of(yard, stand), "live"))
    return SheetOrder(
        survey=survey, units=yard.site.units, date="24 April 2027", year=2027, paper=PAPERS["A3"],
        findings=tuple(findings(survey)),
    )


@pytest.mark.parametrize(("name", "what", "bar"), [
    ("first_orchard.yard", ("plan",), 1.0), ("large_orchard.yard", ("plan",), 1.0),
    ("large_orchard.yard", tuple(SHEETS), 5.0),
])
def test_sheets_in_time(qapp, benchmark, name, what, bar):
    order = order_for(name)
    benchmark.extra_info["bar_s"] = bar
    made = benchmark.pedantic(lambda: pdf_bytes(assemble(order, what)), rounds=3, iterations=1)
    assert made.startswith(b"%PDF")
