"""Which commands stand in which menu, by name; an empty name is a line between groups."""

from __future__ import annotations

from yardplan.language import later
from yardplan.window.tools.toolbox import TOOLS

MENUS: dict[str, tuple[str, ...]] = {
    later("&File"): ("new", "open", "", "save", "save as", "", "close", "quit"),
    later("&Edit"): (
        "undo", "redo", "", "cut", "copy", "paste", "duplicate", "delete", "", "select all", "select within",
        "deselect", "next thing", "", "carry", "lock", "unlock", "", "fields",
    ),
    later("&View"): (
        "zoom in", "zoom out", "fit", "true size", "", "snap", "grid", "marks", "mature", "partners",
        "all_partners", "",
        "side", "wider side", "narrower side", "season", "taller season", "lower season", "full screen",
        "", "feet", "metres", "", "wheel zooms",
    ),
    later("&Draw"): tuple(f"tool {kind.icon}" for kind in TOOLS),
    later("&Planting"): ("choose", "plants list", ""),
    later("&Light"): ("tool light", "", "shadows"),
    later("&Season"): ("year less", "year more", "mature size"),
    later("Shee&ts"): (),
    later("&Help"): ("find command",),
}
#: What the context menu offers for a selection and for bare ground.
FOR_SELECTION: tuple[str, ...] = (
    "fields", "nearest clear place", "", "cut", "copy", "paste", "duplicate", "delete", "", "carry", "lock",
    "unlock", "edge lengths", "group", "ungroup", "", "find partner", "light takers",
)
FOR_GROUND: tuple[str, ...] = ("paste", "select all", "select within", "", "fit", "snap", "grid", "marks")
#: Commands that need something selected besides the lot line.
NEED_THINGS: tuple[str, ...] = ("cut", "copy", "duplicate", "delete", "carry", "lock", "unlock")
