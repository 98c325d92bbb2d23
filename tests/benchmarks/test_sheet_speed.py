"""How long sheets take on one core. Bars: a one-page plan 1 s, all of a yard of 150 plants 5 s.

From nothing means with the light worked out for it; from the window means with progress, every sheet ticked.
"""

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
from yardplan.window.dialogs.sheet_box import SheetBox
from yardplan.window.open_yard import OpenYard


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


def test_whole_report_from_nothing_in_time(qapp, benchmark):
    yard = read_yard(folder("sample_yards") / "large_orchard.yard")
    assert len(yard.plantings) >= 150

    def made():
        stand = stand_of(yard, catalogue())
        survey = survey_of(yard, stand=stand, light=light_report(scene_of(yard, stand)))
        order = SheetOrder(
            survey=survey, units="metric", date="24 April 2027", year=2027, paper=PAPERS["A4"],
            findings=tuple(findings(survey)),
        )
        return pdf_bytes(assemble(order, tuple(SHEETS)))

    benchmark.extra_info["bar_s"] = 5.0
    assert benchmark.pedantic(made, rounds=2, iterations=1).startswith(b"%PDF")


def test_whole_report_from_the_window_in_time(qapp, qtbot, benchmark, tmp_path):
    own = OpenYard(read_yard(folder("sample_yards") / "large_orchard.yard"))
    qtbot.waitUntil(lambda: not own.checks.busy, timeout=120_000)
    box = SheetBox(own)
    qtbot.addWidget(box)
    box.every.click()
    benchmark.extra_info["bar_s"] = 5.0
    benchmark.pedantic(lambda: box.save_to(tmp_path / "report.pdf"), rounds=2, iterations=1)
    own.close()
    assert box.said.text() == "Written: report.pdf"
