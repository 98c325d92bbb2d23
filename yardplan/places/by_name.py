"""Towns by a typed name: whole names first, then beginnings and likeness, weighed with size and country."""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Iterator
from difflib import SequenceMatcher
from functools import cache
from itertools import chain
from typing import NamedTuple

from attrs import evolve

from yardplan.places.spelling import fold, is_in
from yardplan.places.tables import TOWNS, Place, cells_of, figure, text_of, town


class _Names(NamedTuple):
    """Every spelling of every town, folded: the towns' own names in the order of the lines, then others."""

    lines: list[str]
    spellings: list[str]
    #: The line of a spelling beyond the own names.
    others: list[int]
    #: Spellings in the order of letters, and which of `spellings` each is: beginnings stand together.
    sorted: list[str]
    order: list[int]

    def line_of(self, spelling: int) -> int:
        """The number of the line a spelling belongs to."""
        return spelling if spelling < len(self.lines) else self.others[spelling - len(self.lines)]


class _Found(NamedTuple):
    """A town found; `score` is the power of ten of its people, with likeness and country weighed in."""

    score: float
    whole: bool
    line: int


@cache
def _names() -> _Names:
    lines = text_of(TOWNS).rstrip("\n").split("\n")[1:]
    own: list[str] = []
    others: list[str] = []
    rows: list[int] = []
    regions: set[tuple[str, str]] = set()
    for number, line in enumerate(lines):
        cells = cells_of(line)
        own.append(cells[0])
        more = cells[8].strip().split("|") if cells[8].strip() else []
        if (area := (cells[1], cells[2])) not in regions and cells[2] != "US":
            # The largest town goes by its region's name too: Wien, where the table says Vienna.
            regions.add(area)
            more.append(cells[1].partition(",")[0])
        others += more
        rows += [number] * len(more)
    # Folded in one piece: a call for each would take longer than all the rest.
    spellings = fold("\n".join(own + others)).split("\n")
    order = sorted(range(len(spellings)), key=spellings.__getitem__)
    return _Names(lines, spellings, rows, [spellings[one] for one in order], order)


def towns_called(words: str, limit: int, home: str = "") -> list[Place]:
    """Towns for typed words such as `Ithaca, NY`, best guess first, at most `limit`; none where none is near.

    `home` is the country expected, two letters. A place kept only because its name begins so or is
    spelled much alike is marked `guessed`.
    """
    name, _, where = (part.strip() for part in words.partition(","))
    if not fold(name).strip():
        return []
    best: dict[int, _Found] = {}
    for found in chain(_whole(name, home), _begun(fold(name), home), _alike(fold(name), home)):
        kept = best.get(found.line)
        if kept is None or (found.whole, found.score) > (kept.whole, kept.score):
            best[found.line] = found
    ranked = sorted(_there(best, fold(where)), key=lambda one: (not one.whole, -one.score, one.line))
    return [_place(one, fold(name)) for one in _mixed(ranked, limit)]


def _mixed(ranked: list[_Found], limit: int) -> list[_Found]:
    """The first of them, with some room kept for a large town of another spelling (Sidney, Sydney)."""
    whole = sum(one.whole for one in ranked)
    rest = min(len(ranked) - whole, limit // 4)
    return ranked[:min(whole, limit - rest)] + ranked[whole:][:max(limit - whole, rest)]


def _there(best: dict[int, _Found], where: str) -> list[_Found]:
    """Those in the state or country named after the comma; all of them where none is."""
    found = list(best.values())
    if not where:
        return found
    there = [one for one in found if is_in(*_area(one.line), where)]
    return there or found


def _area(line: int) -> tuple[str, str]:
    """Region and country of a line."""
    cells = cells_of(_names().lines[line])
    return cells[1], cells[2]


def _place(found: _Found, name: str) -> Place:
    cells = cells_of(_names().lines[found.line])
    place = town(cells)
    return evolve(place, guessed=name not in (fold(place.name), *fold(cells[-1]).strip().split("|")))


def _score(line: int, closeness: float, home: str) -> float:
    cells = cells_of(_names().lines[line])
    people = math.log10(max(int(cells[7] or 0), 1))
    at_home = figure("name_home") if home and cells[2] == home else 0.0
    return people + at_home + closeness * figure("name_weight")


def _guess(spelling: int, closeness: float, home: str) -> _Found:
    """A town that may be meant; one of whose spellings in other languages is near is less likely so."""
    names = _names()
    line = names.line_of(spelling)
    foreign = figure("name_foreign") if spelling >= len(names.lines) else 0.0
    return _Found(_score(line, closeness - foreign, home), False, line)


def _same_start(name: str) -> Iterator[tuple[int, bool]]:
    """Spellings that begin with a folded name, and whether they end with it too."""
    names = _names()
    for place in range(bisect_left(names.sorted, name), len(names.sorted)):
        if not names.sorted[place].startswith(name):
            return
        yield names.order[place], names.sorted[place] == name


def _whole(name: str, home: str) -> Iterator[_Found]:
    """Towns of this name: spelled like it, spelled like it but for accents, or in another language."""
    names = _names()
    for spelling, whole in _same_start(fold(name)):
        if whole:
            line, own = names.line_of(spelling), spelling < len(names.lines)
            exact = own and cells_of(names.lines[line])[0].lower() == name.lower()
            yield _Found(_score(line, 1.0 if exact else figure("name_accents"), home), own, line)


def _begun(name: str, home: str) -> Iterator[_Found]:
    for spelling, whole in _same_start(name):
        if not whole:
            yield _guess(spelling, figure("name_begun"), home)


def _alike(name: str, home: str) -> Iterator[_Found]:
    """Towns spelled much alike.

    One slip (a letter too many, too few, wrong, or two changed about) leaves the first or the last letters
    as they are, (length - 1) // 2 of them; a slow comparison is made only of names that keep these.
    """
    half, least = (len(name) - 1) // 2, figure("name_alike")
    if not half:
        return
    names, first, last = _names(), name[:half], name[-half:]
    matcher = SequenceMatcher(None, "", name, autojunk=False)
    for spelling, other in enumerate(names.spellings):
        if (other.startswith(first) or other.endswith(last)) and abs(len(other) - len(name)) <= 2:
            matcher.set_seq1(other)
            if matcher.quick_ratio() >= least and (ratio := matcher.ratio()) >= least:
                yield _guess(spelling, ratio, home)
