"""What the rooms below the window say in German: no text left unsaid, all findings, the whole report."""

from __future__ import annotations

import ast
import csv
import io
import re
from functools import cache

import pytest
from pypdf import PdfReader
from support import texts
from support.seen_texts import english_among
from support.unwrapped import unwrapped

from yardplan.checks import run
from yardplan.checks.finding import Figure, Finding, Measure, Weight
from yardplan.checks.run import CHECKS
from yardplan.checks.survey import survey_of
from yardplan.checks.wording import say
from yardplan.files.reading import read_yard
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.sheets.assembly import ALL, SheetOrder, assemble
from yardplan.sheets.pdf import pdf_bytes
from yardplan.sun.light import light_report
from yardplan.sun.scene import scene_of
from yardplan.window.panels.garden_facts import ornament

ROOMS = (
    "checks", "arrange", "care", "sheets", "drawing", "plants", "sun", "places", "files", "yard", "units",
    "language",
)
#: Readers of shipped tables, whose faults no user meets, and files that write formats of their own.
NOT_FOR_A_PERSON = frozenset({
    "plants/tables.py", "plants/crop_rows.py", "plants/cultivar_rows.py", "plants/growth_tables.py",
    "plants/bloom_tables.py", "plants/pollen_tables.py", "plants/harvest.py", "plants/frost.py",
    "files/schema.py", "sheets/svg.py", "sheets/bookmarks.py",
})
#: Names of figures and files, measures that are the same everywhere, faults of the program's own making.
NOT_SAID = re.compile(
    r"water demand \{\}|\{\}, (?:row|column|unit).*|\{\}: the rule .*"
    r"|there is no (?:rule named|icon called).*"
    r"|no words for a finding.*|-//yardplan.*|.*\b(?:wires|fill|soil|mix|cu ft|sq ft|1 ft|10 ft)"
    r"|(?:1|\{\}) in = \{\} ft|\{\} ft|north east south west|ribes law"
    r"|tasks\.csv.*|model\.csv.*|\{\}: \{\} floor.*|killing frost|no frost|far under|very resistant|100 mm"
    r"|yardplan (?:\{\}|recovery|yard)|Yardplan Sans|the typeface .*|\.0 ft|\{\} km"
    r"|\"(?:format|version)\": .*|the user|largest part"
    r"|month \{\}|latitude .*|longitude .*|'\{\}' stands there twice|The (?:text|document)|Untitled yard"
    r"|(?:plantings|groups|variants) \{\}.*|\{\}: 'members'|is a folder|nothing more could be written"
    r"|what was written could not be read back|crown diameter"
)


@pytest.fixture
def translations(german: None) -> texts.Translations:
    """What is said in German, while German is spoken."""
    return texts.translations("de")


@cache
def words_of_the_program() -> frozenset[str]:
    """Words that stand for themselves in code: cells of the shipped tables, and what a `Literal` may be."""
    found: set[str] = set()
    for path in (texts.ROOT / "resources").rglob("*.csv"):
        with path.open(encoding="utf-8-sig", newline="") as file:
            found.update(cell for row in csv.reader(file) for cell in row)
    for path in (texts.ROOT / "yardplan").rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            match node:
                case ast.Subscript(value=ast.Name(id="Literal"), slice=words):
                    found.update(one.value for one in ast.walk(words) if isinstance(one, ast.Constant))
    return frozenset(found)


@pytest.mark.parametrize("room", ROOMS)
def test_no_text_of_a_room_is_left_unsaid(room: str) -> None:
    package = texts.ROOT / "yardplan"
    files = sorted((package / room).rglob("*.py")) or [package / f"{room}.py"]
    left = [
        f"{path.relative_to(package)}:{line}: {words}"
        for path in files
        if path.relative_to(package).as_posix() not in NOT_FOR_A_PERSON
        for line, words in unwrapped(path)
        if words not in words_of_the_program() and not NOT_SAID.fullmatch(words)
    ]
    assert left == []


def _figure(name: str, measure: Measure = "count") -> Figure:
    return Figure("A1", "thing") if name in ("mover", "nearest") else Figure(2.5, measure)


def test_every_kind_of_finding_has_its_words(translations: texts.Translations) -> None:
    seen: set[str] = set()
    for check in CHECKS:
        assert check.title in translations
        for kind, wording in check.wording.items():
            sentences = (wording.title, wording.message, wording.clears)
            names = {name for text in sentences for name in texts.names_in(text)} - set("ab") - {"things"}
            said = say(
                Finding(
                    check=check.name, kind=kind, weight=Weight.ADVICE, things=("A1", "A2"),
                    figures={name: _figure(name) for name in names}, source="spacing-advice",
                ),
                {"A1": "Liberty (A1)", "A2": "Topaz (A2)"},
            )
            assert not {"{", "["} & set(said.title + said.message + said.clears), (check.name, kind)
            seen |= {said.title, said.message, said.clears, said.stake, said.source_text}
    assert "Liberty (A1) und Topaz (A2) stehen 2,5 auseinander" in " ".join(seen)
    assert not (left := english_among(seen, translations)), "\n".join(left)


def test_the_whole_report_is_in_german(translations: texts.Translations) -> None:
    yard = read_yard(texts.ROOT / "sample_yards" / "first_orchard.yard")
    # Light at live detail: the words are the same, and it takes a moment only.
    light = light_report(scene_of(yard, stand_of(yard, catalogue(), None)), "live")
    survey = survey_of(yard, catalogue(), light=light)
    order = SheetOrder(survey=survey, units="metric", findings=tuple(run.findings(survey)), year=2027)
    pages = PdfReader(io.BytesIO(pdf_bytes(assemble(order, (ALL,))))).pages
    seen = {line.strip() for page in pages for line in page.extract_text().splitlines()}
    seen -= {getattr(thing, "name", "") for thing in yard.things()} | set("CEGOW")
    assert len(seen) > 500
    assert not (left := english_among(seen, translations)), "\n".join(left)
    words = {word for line in seen for word in re.findall(r"\w+", line)}
    assert {"Pflanzplan", "Befruchter", "Abhilfe", "Oktober"} <= words
    assert not words & {"needs", "wants", "days", "plants", "unknown", "years", "Move", "Choose"}


def test_ornament_is_told_in_german(translations: texts.Translations) -> None:
    """Every word of the table of ornament, as the card of a variety shows it."""
    told = [fact for cultivar in catalogue().cultivars.values() for fact in ornament(cultivar)]
    assert len(told) > 100
    shown = {value for _, value, _, _ in told}
    assert shown <= {text for text in translations.values() if isinstance(text, str)}
    crab = next(one for one in catalogue().cultivars.values() if one.name == "Dolgo")
    assert {(name, value) for name, value, _, _ in ornament(crab)} >= {
        ("Blüten", "groß, weiß, sehr reich"), ("Herbstfärbung", "gelb"),
        ("Im Winter", "keine (Früchte fallen)"),
    }
