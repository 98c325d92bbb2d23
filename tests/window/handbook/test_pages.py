"""Every page is linked, every picture exists, and a search finds what is told."""

import re

import pytest
from PySide6.QtGui import QImage

from yardplan.window.handbook.pages import CONTENTS, Page, find, folder, pages, plain, slug

ALL = pages()


def test_every_file_is_a_page_of_the_contents_and_the_other_way_round():
    assert {path.stem for path in folder().glob("*.md")} == set(ALL)


@pytest.mark.parametrize("page", ALL.values(), ids=lambda page: page.name)
def test_links_lead_to_pages_and_sections_that_exist(page: Page):
    for target in page.links():
        name, _, section = target.partition("#")
        assert name.removesuffix(".md") in ALL, target
        there = ALL[name.removesuffix(".md")]
        assert not section or section in {slug(part.heading) for part in there.sections()}, target


def test_pages_are_linked_from_other_pages_too():
    """The contents are not the only way: each subject is met where it matters."""
    targets = [target for page in ALL.values() if page.name != CONTENTS for target in page.links()]
    linked = {target.partition("#")[0].removesuffix(".md") for target in targets}
    assert set(ALL) - linked <= {CONTENTS, "start", "keys", "words", "season"}


def test_every_picture_exists_is_told_in_words_and_is_small():
    shown = [(words, file) for page in ALL.values() for words, file in page.pictures()]
    shipped = {f"pictures/{path.name}" for path in (folder() / "pictures").iterdir()}
    assert {file for _words, file in shown} == shipped
    for words, file in shown:
        path = folder() / file
        assert len(words.split()) >= 2, file
        assert 200 <= QImage(str(path)).width() <= 900, file
        assert path.stat().st_size < 120_000, file


def test_a_page_begins_with_its_title_and_each_section_holds_words():
    for page in ALL.values():
        assert page.text.startswith(f"# {page.title}\n")
        assert all(part.text or part.heading == page.title for part in page.sections()), page.name


@pytest.mark.parametrize(
    ("words", "address"),
    [
        ("clear ground", "spacing#clear-ground"), ("ladder", "care#ladders-limbs-and-lines"),
        ("lot line bearing", "lot#three-ways-to-draw-it"), ("calendar", "care"),
        ("lines marked", "structures#pipes-and-cables"), ("chill", "words"),
    ],
)
def test_search(words, address):
    found = [each.section.address for each in find(words, ALL)]
    assert address in found[:8], found
    assert find(f"{words} umbrella", ALL) == []


def test_search_puts_a_page_named_so_first():
    assert find("printing", ALL)[0].section.page == "printing"
    assert find("soil", ALL)[0].section.page == "soil"


def test_plain_words_carry_no_marks():
    marked = "![a house](p.png) See **[Room](spacing.md)** and\n\n- one\n- two"
    assert plain(marked) == "a house See Room and one two"


def test_the_usual_cautions_are_told():
    """Before digging, label first, ladders, overhead lines: told where the work is told."""
    told = {name: plain(page.text).lower() for name, page in ALL.items()}
    for page in ("start", "structures", "setting-out", "soil", "printing"):
        assert "lines marked" in told[page], page
    assert "label is the law" in told["care"]
    for page in ("care", "spacing"):
        assert "three points of contact" in told[page]
        assert "overhead lines" in told[page]
    assert "poisonous" in told["plants"]
    assert "no legal advice" in told["lot"]


GERMAN = pages(language="de")


@pytest.mark.parametrize("name", ALL)
def test_the_german_page_has_the_same_sections_pictures_and_commands(name: str):
    """Addresses, F1 and links hold in both languages; no page is left in English."""
    english, german = ALL[name], GERMAN[name]
    assert (folder() / "de" / f"{name}.md").is_file()
    assert [s.address for s in german.sections()] == [s.address for s in english.sections()]
    # The pictures are those of the German window.
    files = [f"de/{file}" for _words, file in english.pictures()]
    assert [file for _words, file in german.pictures()] == files
    assert all((folder() / file).is_file() for file in files)
    assert german.title != english.title
    for target in german.links():
        page, _, section = target.partition("#")
        assert page.removesuffix(".md") in ALL, target
        assert not section or section in ALL[page.removesuffix(".md")].anchors, target


def test_the_cautions_are_told_in_german_too():
    told = {name: plain(page.text) for name, page in GERMAN.items()}
    for name in ("start", "structures", "setting-out", "soil", "printing"):
        assert re.search(r"Leitungen anzeigen", told[name]), name
    assert "Etikett ist Gesetz" in told["care"]
    assert "Freileitungen" in told["care"]
    assert "giftige Teile" in told["plants"]
    assert "keine Rechtsberatung" in told["lot"]
