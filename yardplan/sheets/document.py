"""A document to print: pages with their size, each drawn on a surface."""

from __future__ import annotations

from collections.abc import Callable

from attrs import field, frozen

from yardplan.language import spoken
from yardplan.sheets.paper import Paper
from yardplan.sheets.surface import Surface


@frozen(eq=False)
class Page:
    """One page: its paper, what it is called in the list of contents, and what draws it."""

    paper: Paper
    title: str
    draw: Callable[[Surface], None]


@frozen(kw_only=True, eq=False)
class Document:
    """Pages in order. `language` as in `en`: that in which texts are said, unless another is given."""

    title: str
    pages: tuple[Page, ...]
    language: str = field(factory=spoken)
