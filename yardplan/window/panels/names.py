"""What sort of thing a thing is, in a grower's word."""

from __future__ import annotations

from yardplan.yard.ground import Barrier, Building, Gate, Note, Paving, Service, StandingTree
from yardplan.yard.planting import Bed, Container, Planting, Row
from yardplan.yard.yard import Thing

KIND_WORDS: dict[type, str] = {
    Building: "building", Barrier: "fence", Paving: "paving", Service: "service",
    StandingTree: "standing tree", Gate: "gate", Note: "note",
    Planting: "plant", Row: "row", Bed: "bed", Container: "pot",
}


def kind_word(thing: Thing) -> str:
    """What the thing is: plant, row, wall, path, tree next door ..."""
    if isinstance(thing, (Barrier, Paving, Service)):
        return thing.kind
    if isinstance(thing, StandingTree) and thing.beyond_lot:
        return "tree next door"
    return KIND_WORDS[type(thing)]
