"""The pages of the handbook as they are shipped: titles, sections, links, and the search through them.

A page is a Markdown file in resources/handbook; `index.md` is the list of contents and sets the order. A link
is `page.md` or `page.md#section-in-small-letters`; a picture is `pictures/name.png`. A folder by the code of
a language holds pages of the same names with the same sections in the same order; links name the sections as
in English, so that an address holds in every language, and its pictures are `CODE/pictures/name.png`.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from functools import cache
from pathlib import Path

from attrs import evolve, frozen

from yardplan.shipped import resource

#: The page that lists all others.
CONTENTS = "index"
_LINK = re.compile(r"(?<!!)\[([^\]]+)\]\(([^)]+)\)")
_PICTURE = re.compile(r"!\[([^\]]*)\]\(([^)]+)\)")
_HEADING = re.compile(r"^(#+) +(.+)$")
_NOT_IN_SLUG = re.compile(r"[^a-z0-9]+")
#: Characters of text shown around what was found.
_AROUND = 60
#: What a find in a title, in a heading and in the text weighs, for the order of what is found.
_TITLE, _HEADED, _TEXT = 8, 4, 1


def slug(heading: str) -> str:
    """A heading as the end of a link: `Wall, fence` is `wall-fence`."""
    return _NOT_IN_SLUG.sub("-", heading.lower()).strip("-")


@frozen
class Section:
    """One heading of a page with the plain text under it."""

    page: str
    title: str
    heading: str
    text: str
    anchor: str

    @property
    def address(self) -> str:
        """The link that leads here."""
        return self.page if self.heading == self.title else f"{self.page}#{self.anchor}"


@frozen
class Page:
    """One page: its name, its title, its Markdown, and the ends of links to its headings, in their order."""

    name: str
    title: str
    text: str
    anchors: tuple[str, ...] = ()

    def sections(self) -> list[Section]:
        """The page in parts, each under its heading."""
        found: list[tuple[str, list[str]]] = []
        for line in self.text.splitlines():
            heading = _HEADING.match(line)
            if heading:
                found.append((heading.group(2).strip(), []))
            elif found:
                found[-1][1].append(line)
        return [
            Section(self.name, self.title, heading, plain("\n".join(lines)), self.anchor(number, heading))
            for number, (heading, lines) in enumerate(found)
        ]

    def anchor(self, number: int, heading: str) -> str:
        """The end of a link to a heading, by its number on the page from 0."""
        return self.anchors[number] if number < len(self.anchors) else slug(heading)

    def links(self) -> list[str]:
        """Where its links lead, pictures left out."""
        return [target for _words, target in _LINK.findall(self.text)]

    def pictures(self) -> list[tuple[str, str]]:
        """Its pictures: what each shows, and its file."""
        return _PICTURE.findall(self.text)


@frozen
class Found:
    """A section in which all the words stand, with a piece of its text."""

    section: Section
    piece: str


def plain(markdown: str) -> str:
    """Text without the marks of Markdown, on one line."""
    text = _PICTURE.sub(r"\1", markdown)
    text = _LINK.sub(r"\1", text)
    return " ".join(re.sub(r"[*`|]|^-+$|^\s*[-\d]+[.]? ", " ", text, flags=re.MULTILINE).split())


def folder() -> Path:
    """Where the pages lie."""
    return resource("handbook")


@cache
def _shipped() -> Mapping[str, Page]:
    contents = _page(folder() / f"{CONTENTS}.md")
    names = [target.partition("#")[0].removesuffix(".md") for target in contents.links()]
    order = [CONTENTS, *dict.fromkeys(name for name in names if name != CONTENTS)]
    return {name: _page(folder() / f"{name}.md") for name in order}


def _page(path: Path) -> Page:
    text = path.read_text(encoding="utf-8")
    heading = _HEADING.match(text.partition("\n")[0])
    return Page(path.stem, heading.group(2).strip() if heading else path.stem, text)


def pages(fill: Callable[[str], str] | None = None, language: str = "en") -> dict[str, Page]:
    """All pages by name, in the order of the contents; in English where they are not in the language.

    `fill` puts in what the program itself knows.
    """
    shown = {name: _spoken(page, language) for name, page in _shipped().items()}
    if fill is None:
        return shown
    return {name: evolve(page, text=fill(page.text)) for name, page in shown.items()}


def _spoken(page: Page, language: str) -> Page:
    """The page in a language, its headings reached by the links of the English page."""
    anchors = tuple(section.anchor for section in page.sections())
    path = folder() / language / f"{page.name}.md"
    return evolve(_page(path) if path.is_file() else page, anchors=anchors)


def find(words: str, among: Mapping[str, Page]) -> list[Found]:
    """The sections in which every word stands, those with the words in their title first."""
    wanted = words.lower().split()
    if not wanted:
        return []
    ranked: list[tuple[int, Found]] = []
    for page in among.values():
        for section in page.sections() if page.name != CONTENTS else []:
            weight = _weight(wanted, section)
            if weight:
                ranked.append((weight, Found(section, _piece(wanted, section.text))))
    return [found for _weight_, found in sorted(ranked, key=lambda each: -each[0])]


def _weight(wanted: Sequence[str], section: Section) -> int:
    title, heading, text = section.title.lower(), section.heading.lower(), section.text.lower()
    if not all(word in title or word in heading or word in text for word in wanted):
        return 0
    in_text = min(sum(text.count(word) for word in wanted), _HEADED - 1)
    return in_text * _TEXT + sum(_TITLE * (word in title) + _HEADED * (word in heading) for word in wanted)


def _piece(wanted: Sequence[str], text: str) -> str:
    """Some words around the first one found."""
    at = min((place for place in (text.lower().find(word) for word in wanted) if place >= 0), default=0)
    start = text.rfind(" ", 0, max(at - _AROUND // 2, 0)) + 1
    end = text.find(" ", at + _AROUND)
    piece = text[start : end if end > 0 else len(text)]
    return f"{'… ' if start else ''}{piece}{' …' if end > 0 else ''}"
