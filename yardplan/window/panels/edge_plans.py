"""Fields for the lengths of edges: what the sheet shows beside them, typed in the panel."""

from __future__ import annotations

import math

from yardplan.language import tr
from yardplan.window.panels.entry import EntryError
from yardplan.window.panels.field_plans import FieldPlan
from yardplan.yard.edges import SHORTEST, set_length, straight_edges
from yardplan.yard.edits import EditError
from yardplan.yard.yard import Yard

#: Paths of the fields: `@edge.0` for the first edge.
EDGE = "@edge."
#: No edge is longer, metres.
_LONGEST = 2000.0
#: An outline of more edges is a curve: its edges are not typed.
_MOST = 12


def edge_plans(yard: Yard, key: str) -> tuple[FieldPlan, ...]:
    """A field for each edge of a thing or the lot; none where there is but one, which is its length."""
    count = len(straight_edges(yard, key))
    if not 1 < count <= _MOST:
        return ()
    return tuple(
        FieldPlan(
            name=tr("Edge {number}", number=number + 1), path=f"{EDGE}{number}", sort="length", low=SHORTEST,
            high=_LONGEST, tip=tr("The far end of the edge moves; what is squared stays square"),
        )
        for number in range(count)
    )


def edge_value(yard: Yard, key: str, path: str) -> float | None:
    """The length that a field shows, metres."""
    edges, number = straight_edges(yard, key), int(path.removeprefix(EDGE))
    return math.dist(*edges[number]) if number < len(edges) else None


def with_edge(yard: Yard, key: str, path: str, length: float) -> Yard:
    """The yard with the edge at a length, metres. Raises EntryError where the outline would cross itself."""
    try:
        return set_length(yard, key, int(path.removeprefix(EDGE)), length)
    except EditError as error:
        raise EntryError(str(error)) from None
