"""All tools in the order of the toolbar; each is loaded when it is first taken up."""

from __future__ import annotations

from importlib import import_module

from attrs import frozen

from yardplan.language import later
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


SELECT = ToolKind(
    "select", later("Select"), "S", later("Select, move, turn and copy things"), "select", "SelectTool"
)
PLANT = ToolKind(
    "plant", later("Plant"), "P", later("Click where the plant shall stand"), "plant", "PlantTool"
)
ROW = ToolKind("row", later("Row"), "R", later("Plant a row of the plant in hand"), "row", "RowTool")

TOOLS: tuple[ToolKind, ...] = (
    SELECT,
    ToolKind(
        "lot",
        later("Lot line"),
        "L",
        later("Draw the line round the ground that may be planted"),
        "lot",
        "LotTool",
    ),
    ToolKind(
        "building", later("Building"), "B", later("Draw a house, garage or shed"), "building", "BuildingTool"
    ),
    ToolKind(
        "barrier", later("Wall, fence"), "F", later("Draw a wall, fence or hedge"), "barrier", "BarrierTool"
    ),
    ToolKind(
        "paving", later("Paving"), "V", later("Draw a path, drive, terrace or pond"), "paving", "PavingTool"
    ),
    ToolKind("bed", later("Bed"), "D", later("Draw a bed with soil of its own"), "bed", "BedTool"),
    ROW,
    PLANT,
    ToolKind("pot", later("Pot"), "O", later("Click where the pot shall stand"), "pot", "PotTool"),
    ToolKind(
        "tree",
        later("Standing tree"),
        "T",
        later("Mark a tree that is there, in the yard or next door"),
        "standing_tree",
        "StandingTreeTool",
    ),
    ToolKind(
        "service",
        later("Service"),
        "U",
        later("Draw a pipe or cable; have lines marked before you dig"),
        "service",
        "ServiceTool",
    ),
    ToolKind("gate", later("Gate"), "G", later("Mark where one enters the yard"), "gate", "GateTool"),
    ToolKind("tape", later("Tape"), "M", later("Measure from place to place"), "tape", "TapeTool"),
    ToolKind(
        "dimension",
        later("Dimension"),
        "I",
        later("Draw a length that stays on the plan"),
        "dimension",
        "DimensionTool",
    ),
    ToolKind(
        "light",
        later("Sun at a spot"),
        "H",
        later("Point anywhere to read its sun"),
        "sun_spot",
        "SunSpotTool",
    ),
    ToolKind("note", later("Note"), "N", later("Write on the plan"), "note", "NoteTool"),
)
