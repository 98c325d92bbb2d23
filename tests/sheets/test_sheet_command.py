"""`yardplan sheet` as a process."""

import subprocess
import sys
from datetime import date

import pytest
from support.pdf_lines import reader_of

from yardplan.shipped import folder

SAMPLE = folder("sample_yards") / "first_orchard.yard"


def run(*words, cwd):
    """The command's exit code, output and error text, without any screen."""
    made = subprocess.run(
        [sys.executable, "-m", "yardplan", "sheet", *map(str, words)],
        capture_output=True, text=True, timeout=120, cwd=cwd, check=False,
        env={"PATH": "", "PYTHONPATH": str(folder("resources").parent), "HOME": str(cwd)},
    )
    return made.returncode, made.stdout, made.stderr


def test_pdf_with_all_sheets(tmp_path):
    code, out, err = run(SAMPLE, "-o", "plan.pdf", "--scale", "1:100", "--paper", "A3", cwd=tmp_path)
    assert (code, err) == (0, "")
    assert out.strip() == "plan.pdf"
    document = reader_of((tmp_path / "plan.pdf").read_bytes())
    assert len(document.pages) >= 3
    assert document.metadata.title == "Millrace back yard: planting plan and 2 more sheets"
    assert document.trailer["/Root"]["/Lang"] == "en"
    assert document.outline[0].title == "Planting plan, sheet A1"
    assert "1:100 on A3" in document.pages[0].extract_text()
    assert "Plant schedule" in document.pages[-2].extract_text()


def test_only_the_plan_as_svg_and_picture(tmp_path):
    for name in ("plan.svg", "plan.png"):
        code, out, err = run(SAMPLE, "-o", name, "--what", "plan", cwd=tmp_path)
        assert (code, out.strip(), err) == (0, name, "")
        assert (tmp_path / name).stat().st_size > 10_000


@pytest.mark.parametrize(("words", "message"), [
    (("-o", "plan.doc"), "must end in .pdf, .svg or .png"),
    (("-o", "plan.pdf", "--scale", "huge"), "is not a scale"),
    (("-o", "plan.pdf", "--paper", "B5"), "is not a paper size"),
    (("-o", "plan.pdf", "--what", "poem"), "no sheet called 'poem'"),
])
def test_errors_are_one_line(tmp_path, words, message):
    code, out, err = run(SAMPLE, *words, cwd=tmp_path)
    assert code == 2
    assert out == ""
    assert message in err
    assert len(err.strip().splitlines()) == 1
    assert not list(tmp_path.glob("plan*"))


def test_season_on_paper_with_the_chosen_day(tmp_path):
    out = tmp_path / "season.svg"
    code, _, error = run(SAMPLE, "--what", "season", "--day", "04-24", "-o", out, cwd=tmp_path)
    assert (code, error) == (0, "")
    text = out.read_text(encoding="utf-8")
    assert "24 April" in text
    assert "last frost" in text
    assert "days with A2" in text
    code, _, error = run(SAMPLE, "--what", "season", "--day", "24-04", "-o", out, cwd=tmp_path)
    assert code == 2
    assert "write MM-DD" in error


def test_care_on_paper_is_titled_after_the_yard_and_year(tmp_path):
    code, _, error = run(SAMPLE, "--what", "care", "-o", "care.pdf", cwd=tmp_path)
    assert (code, error) == (0, "")
    document = reader_of((tmp_path / "care.pdf").read_bytes())
    year = date.today().year
    assert document.metadata.title == "Millrace back yard: care calendar"
    words = document.pages[0].extract_text()
    assert f"Care in {year}" in words
    assert "Millrace back yard" in words
