"""Any yard that can be written down can be drawn: on the screen, far out, close up, and on paper."""

from attrs import evolve
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from support.plans import picture
from support.strategies import yards

from yardplan.drawing.painter import draw_yard
from yardplan.drawing.view import Layers, PlanView, fitted
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.sheets.document import Document
from yardplan.sheets.paper import SheetError
from yardplan.sheets.pdf import pdf_bytes
from yardplan.sheets.planting_plan import PlanRequest, plan_pages, plan_size
from yardplan.yard.yard import Yard

WIDE, HIGH = 300, 200
#: Whole yards shrink slowly: the first that fails is shown as it was found.
PHASES = (Phase.explicit, Phase.reuse, Phase.generate)


def drawn(view):
    return picture(lambda painter: draw_yard(painter, view), WIDE, HIGH)


def seen(yard, year, **fields):
    window = QRectF(0, 0, WIDE, HIGH)
    stand = stand_of(yard, catalogue(), year)
    bare = PlanView(yard=yard, stand=stand, scale=1.0, origin=(0.0, 0.0), **fields)
    return evolve(fitted(bare, window), window=window)


@settings(max_examples=60, deadline=None, phases=PHASES, suppress_health_check=list(HealthCheck))
@given(yards(), st.sampled_from([None, 0, 5]), st.sampled_from([0.2, 1.0, 40.0]), st.booleans())
def test_any_yard_at_any_zoom(qapp, yard, year, zoom, vector):
    view = seen(yard, year, vector=vector, selection=frozenset(yard.ids()) | {"lot"})
    drawn(evolve(view, scale=view.scale * zoom))


@settings(max_examples=15, deadline=None, phases=PHASES, suppress_health_check=list(HealthCheck))
@given(yards())
def test_any_yard_on_paper(qapp, yard):
    request = PlanRequest(yard=yard, stand=stand_of(yard, catalogue()), units=yard.site.units)
    try:
        pages = plan_pages(request)
    except SheetError:
        # Things many kilometres apart fit on no sheet, and a person is told so.
        assert max(plan_size(yard)) > 10_000
        return
    assert pdf_bytes(Document(title="Plan", pages=pages)).startswith(b"%PDF")


def test_an_empty_yard_is_paper_with_dots(qapp):
    pixels = drawn(seen(Yard(), None))
    assert pixels.min() > 150
    assert (drawn(seen(Yard(), None, layers=Layers(grid=False))) == pixels[0, 0]).all()
    assert len(plan_pages(PlanRequest(yard=Yard(), stand=stand_of(Yard(), catalogue()), units="metric"))) == 1
