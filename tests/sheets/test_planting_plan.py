"""The plan measured in the PDF itself, read back with pypdf."""

import re
import xml.etree.ElementTree as ET

import numpy as np
import pytest
from attrs import evolve
from support.pdf_lines import lengths_mm, lines_mm, reader_of
from support.plans import old_tree, standing

from yardplan.checks.finding import Finding, Weight
from yardplan.plants.stand import Stand
from yardplan.sheets.document import Document
from yardplan.sheets.paper import PAPERS, SheetError, parse_scale
from yardplan.sheets.pdf import pdf_bytes, write_pdf
from yardplan.sheets.planting_plan import MARGIN, PlanRequest, layout, plan_pages, told_edges
from yardplan.sheets.png import page_image
from yardplan.sheets.svg import svg_text, write_svg
from yardplan.yard.ground import Barrier, Building, Service
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard


def request(**fields):
    """A plan of a 10 m by 8 m yard with a wall of exactly 10 m."""
    plants = (standing("A1", (3, 3), 3.0), standing("A2", (7, 5), 2.0), old_tree("N1", (11, 4)))
    yard = Yard(
        site=Site(name="Ten by eight", latitude=42.8, longitude=-77.0),
        lot=((0, 0), (10, 0), (10, 8), (0, 8)),
        barriers=(Barrier(id="W1", kind="wall", line=((0.0, 1.0), (10.0, 1.0)), thickness=0.1),),
        buildings=(Building(id="B1", name="House", footprint=((1, 5), (5, 5), (5, 7.5), (1, 7.5))),),
        plantings=tuple(p.thing for p in plants if p.planted),
    )
    stand = Stand(year=None, plants=plants)
    given = {"yard": yard, "stand": stand, "units": "metric", "date": "24 April 2027"}
    return PlanRequest(**(given | fields))


def pdf(wanted):
    return pdf_bytes(Document(title="Plan", pages=plan_pages(wanted)))


def has_length(lengths, wanted):
    """True when some line is that long to a hundredth of a millimetre."""
    return any(abs(length - wanted) < 0.005 for length in lengths)


@pytest.mark.parametrize(("scale", "paper", "wanted"), [
    ("1:100", "A4", 100.0), ("1:50", "A3", 200.0), ("1:100", "Letter", 100.0),
    ("1/8 in", "Tabloid", 10_000 / 96), ("1/4 in", "Tabloid", 10_000 / 48),
])
def test_ten_metres_of_wall_are_true_on_paper(qapp, scale, paper, wanted):
    made = pdf(request(scale=parse_scale(scale), paper=PAPERS[paper]))
    # A wall without ends beyond its line would also match the bar: leave the bar out by its place.
    walls = [
        abs(a[0] - b[0]) for a, b in lines_mm(made)
        if abs(a[1] - b[1]) < 1e-6 and a[1] > MARGIN + 30
    ]
    assert has_length(walls, wanted)


@pytest.mark.parametrize(("units", "paper", "wanted"), [
    ("metric", "A4", 100.0), ("imperial", "Letter", 101.6),
])
def test_the_bar_to_measure_is_exact(qapp, units, paper, wanted):
    made = pdf(request(units=units, paper=PAPERS[paper], scale=parse_scale("1:75")))
    assert has_length(lengths_mm(made), wanted)
    words = reader_of(made).pages[0].extract_text()
    assert ("100 mm" if units == "metric" else "4 inches") in words


@pytest.mark.parametrize("paper", PAPERS)
def test_page_size(qapp, paper):
    page = reader_of(pdf(request(paper=PAPERS[paper]))).pages[0]
    sides = sorted((float(page.mediabox.width), float(page.mediabox.height)))
    wanted = sorted((PAPERS[paper].wide, PAPERS[paper].high))
    # Qt rounds the media box to whole points.
    assert sides == pytest.approx([side / 25.4 * 72 for side in wanted], abs=0.51)


def test_words_on_the_plan(qapp):
    made = pdf(request(scale=parse_scale("1:100")))
    words = " ".join(reader_of(made).pages[0].extract_text().split())
    for wanted in ("A1", "A2", "House", "Ten by eight", "1:100 on A4", "24 April 2027", "811", "10.00 m"):
        assert wanted in words, wanted
    assert reader_of(made).metadata.title == "Plan"


def test_overhead_lines_bring_their_caution(qapp):
    plain = request()
    line = Service(id="S1", kind="overhead line", points=((0, 7), (10, 7)))
    under = evolve(plain, yard=evolve(plain.yard, services=(line,)))
    assert "Overhead lines" not in reader_of(pdf(plain)).pages[0].extract_text()
    assert "Overhead lines" in reader_of(pdf(under)).pages[0].extract_text()


def test_a_plan_too_large_is_laid_over_sheets(qapp):
    wanted = request(scale=parse_scale("1:25"))
    _, scale, tiling = layout(wanted)
    assert scale.denominator == 25
    assert len(tiling.tiles) > 1
    made = pdf(wanted)
    document = reader_of(made)
    assert len(document.pages) == len(tiling.tiles)
    assert "sheet A1 of" in document.pages[0].extract_text()
    assert "joins sheet A2" in document.pages[0].extract_text()
    # Each sheet carries its own bar to measure.
    assert all(has_length(lengths_mm(made, n), 100.0) for n in range(len(tiling.tiles)))


def test_best_fit_goes_on_one_sheet(qapp):
    paper, scale, tiling = layout(request())
    assert len(tiling.tiles) == 1
    assert paper.landscape
    # 13 m by 11 m of ground: 220 mm high at 1:50, more than the field of 161 mm.
    assert scale.words == "1:75"


def test_marks_only_where_asked(qapp):
    plain = request()
    found = Finding(check="spacing", kind="overlap", weight=Weight.CONFLICT, things=("A1", "A2"))
    marked = evolve(plain, findings=(found,), said={found.key: "0.9 m too close"})
    assert "0.9 m too close" in reader_of(pdf(marked)).pages[0].extract_text()
    assert "too close" not in reader_of(pdf(plain)).pages[0].extract_text()


def test_svg_is_in_true_millimetres_and_cut_at_the_field(qapp):
    (page,) = plan_pages(request(scale=parse_scale("1:100")))
    text = svg_text(page)
    root = ET.fromstring(text)
    assert (root.get("width"), root.get("height")) == ("297mm", "210mm")
    assert root.get("viewBox") == "0 0 29700 21000"
    space = "{http://www.w3.org/2000/svg}"
    nested = root.find(f"{space}svg")
    assert nested is not None
    assert nested.get("overflow") == "hidden"
    assert float(nested.get("x")) == pytest.approx(MARGIN * 100)
    # A wall of 10 m at 1:100 in hundredths of a millimetre.
    runs = [
        abs(float(a) - float(c))
        for a, b, c, d in re.findall(r'points="([\d.]+),([\d.]+) ([\d.]+),([\d.]+) "', text) if b == d
    ]
    paths = re.findall(r'd="M([\d.]+),([\d.]+) L([\d.]+),([\d.]+)"', text)
    runs += [abs(float(a) - float(c)) for a, b, c, d in paths if b == d]
    assert any(abs(run - 10_000) <= 1.0 for run in runs)
    assert "Ten by eight" in text
    assert "sans-serif" in text
    # Every word has its length, so that no other typeface runs it into its neighbour.
    words = [node for node in root.iter(f"{space}text") if (node.text or "").strip()]
    assert len(words) > 20
    assert all(float(node.get("textLength")) > 0 for node in words)


def test_png_knows_its_size_and_is_inked(qapp):
    (page,) = plan_pages(request())
    image = page_image(page, 100)
    assert image.width() / image.dotsPerMeterX() * 1000 == pytest.approx(297, abs=0.3)
    grey = image.convertToFormat(image.Format.Format_Grayscale8)
    shape = (grey.height(), grey.bytesPerLine())
    dark = np.frombuffer(grey.constBits(), np.uint8).reshape(shape)[:, : grey.width()] < 128
    assert 0.01 < dark.mean() < 0.3
    # Margins stay free.
    reach = int((MARGIN - 1) / 25.4 * 100)
    assert not dark[:reach].any()
    assert not dark[:, :reach].any()


def test_a_file_that_cannot_be_written_is_said(qapp, tmp_path):
    pages = plan_pages(request())
    with pytest.raises(SheetError, match=r"gone\.pdf could not be written"):
        write_pdf(Document(title="Plan", pages=pages), tmp_path / "nowhere" / "gone.pdf")
    write_svg(pages[0], tmp_path / "plan.svg")
    assert (tmp_path / "plan.svg").read_text(encoding="utf-8").startswith("<?xml")


def test_progress_is_told_and_can_stop(qapp):
    document = Document(title="Plan", pages=plan_pages(request(scale=parse_scale("1:25"))))
    told = []
    pdf_bytes(document, told.append)
    assert told[-1] == 1.0
    assert told == sorted(told)


def test_of_matching_walls_one_is_told(qapp):
    square = ((0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0))
    assert told_edges(square) == [(square[0], square[1]), (square[1], square[2])]
    # The other way round the same walls are told, with the building to their left.
    assert {frozenset(edge) for edge in told_edges(square[::-1])} <= {
        frozenset((a, b)) for a, b in zip(square, (*square[1:], square[0]), strict=True)
    }
    assert len(told_edges(square[::-1])) == 2
    l_shape = ((0.0, 0.0), (6.0, 0.0), (6.0, 3.0), (4.0, 3.0), (4.0, 5.0), (0.0, 5.0))
    assert len(told_edges(l_shape)) == 6
