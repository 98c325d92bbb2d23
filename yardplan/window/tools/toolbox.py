"""All tools in the order of the toolbar; each is loaded when it is first taken up."""

from __future__ import annotations

from importlib import import_module

from attrs import frozen

from yardplan.window.tools.desk import Desk
from yardplan.window.tools.tool import Tool


@frozen
class ToolKind:
    """A tool before it is loaded: its picture, word, key, one line, and the module and class that make it."""

    icon: str
    name: str
    key: str
    about: str
    module: str
    made: str

    def __call__(self, desk: Desk, /) -> Tool:
        """The tool itself, for a desk."""
        kind: type[Tool] = getattr(import_module(f"yardplan.window.tools.{self.module}"), self.made)
        return kind(desk)


SELECT = ToolKind("select", "Select", "S", "Select, move, turn and copy things", "select", "SelectTool")
PLANT = ToolKind("plant", "Plant", "P", "Click where the plant shall stand", "plant", "PlantTool")
ROW = ToolKind("row", "Row", "R", "Plant a row of the plant in hand", "row", "RowTool")

TOOLS: tuple[ToolKind, ...] = (
    SELECT,
    ToolKind("lot", "Lot line", "L", "Draw the line round the ground that may be planted", "lot", "LotTool"),
    ToolKind("building", "Building", "B", "Draw a house, garage or shed", "building", "BuildingTool"),
    ToolKind("barrier", "Wall, fence", "F", "Draw a wall, fence or hedge", "barrier", "BarrierTool"),
    ToolKind("paving", "Paving", "V", "Draw a path, drive, terrace or pond", "paving", "PavingTool"),
    ToolKind("bed", "Bed", "D", "Draw a bed with soil of its own", "bed", "BedTool"),
    ROW,
    PLANT,
    ToolKind("pot", "Pot", "O", "Click where the pot shall stand", "pot", "PotTool"),
    ToolKind(
        "tree", "Standing tree", "T", "Mark a tree that is there, in the yard or next door", "standing_tree",
        "StandingTreeTool",
    ),
    ToolKind(
        "service", "Service", "U", "Draw a pipe or cable; have lines marked before you dig", "service",
        "ServiceTool",
    ),
    ToolKind("gate", "Gate", "G", "Mark where one enters the yard", "gate", "GateTool"),
    ToolKind("tape", "Tape", "M", "Measure from place to place", "tape", "TapeTool"),
    ToolKind("light", "Sun at a spot", "H", "Point anywhere to read its sun", "sun_spot", "SunSpotTool"),
    ToolKind("note", "Note", "N", "Write on the plan", "note", "NoteTool"),
)
