"""The planned cultivars of a survey, each once, with the things that are of it."""

from __future__ import annotations

from attrs import frozen

from yardplan.checks.ordering import natural
from yardplan.checks.survey import Survey
from yardplan.plants.cultivar import Cultivar
from yardplan.yard.ground import Point


@frozen(kw_only=True)
class Planted:
    """One cultivar of the plan: ids of its plants, rows and beds, and where they stand."""

    cultivar: Cultivar
    things: tuple[str, ...]
    places: tuple[Point, ...]


def planted(survey: Survey) -> list[Planted]:
    """The planned cultivars in the order of their things' keys, so that drawing order does not matter."""
    found: dict[str, tuple[Cultivar, list[str], list[Point]]] = {}
    things = [(p.id, p.cultivar, p.place) for p in survey.stand.plants if p.planted]
    things += [(r.id, r.cultivar, r.row.line[0]) for r in survey.stand.rows if r.row.line]
    things += [(b.id, b.cultivar, b.bed.outline[0]) for b in survey.stand.beds if b.bed.outline]
    for thing, cultivar, place in sorted(things, key=lambda one: natural(one[0])):
        if cultivar is not None:
            entry = found.setdefault(str(cultivar.key), (cultivar, [], []))
            entry[1].append(thing)
            entry[2].append(place)
    return [
        Planted(cultivar=cultivar, things=tuple(ids), places=tuple(places))
        for cultivar, ids, places in found.values()
    ]
