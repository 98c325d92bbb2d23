"""What sort of thing a thing is, in a grower's word."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.yard.ground import (
    Barrier,
    Building,
    Dimension,
    Gate,
    Note,
    Paving,
    Picture,
    Service,
    StandingTree,
)
from yardplan.yard.planting import Bed, Container, Planting, Row
from yardplan.yard.yard import Thing

KIND_WORDS: dict[type, str] = {
    Building: later("building"), Barrier: later("fence"), Paving: later("paving"), Service: later("service"),
    StandingTree: later("standing tree"), Gate: later("gate"), Note: later("note"),
    Planting: later("plant"), Row: later("row"), Bed: later("bed"), Container: later("pot"),
    Dimension: later("dimension"), Picture: later("picture"),
}


def kind_word(thing: Thing) -> str:
    """What the thing is: plant, row, wall, path, tree next door ..."""
    return tr(kind_key(thing))


def kind_key(thing: Thing) -> str:
    """The same as English words, by which kinds are told apart."""
    if isinstance(thing, (Barrier, Paving, Service)):
        return thing.kind
    if isinstance(thing, StandingTree) and thing.beyond_lot:
        return later("tree next door")
    return KIND_WORDS[type(thing)]
