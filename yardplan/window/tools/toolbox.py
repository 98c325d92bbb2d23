"""All tools in the order of the toolbar."""

from __future__ import annotations

from yardplan.window.tools.barrier import BarrierTool
from yardplan.window.tools.bed import BedTool
from yardplan.window.tools.building import BuildingTool
from yardplan.window.tools.gate import GateTool
from yardplan.window.tools.lot import LotTool
from yardplan.window.tools.note import NoteTool
from yardplan.window.tools.paving import PavingTool
from yardplan.window.tools.plant import PlantTool
from yardplan.window.tools.pot import PotTool
from yardplan.window.tools.row import RowTool
from yardplan.window.tools.select import SelectTool
from yardplan.window.tools.service import ServiceTool
from yardplan.window.tools.standing_tree import StandingTreeTool
from yardplan.window.tools.tape import TapeTool
from yardplan.window.tools.tool import Tool

TOOLS: tuple[type[Tool], ...] = (
    SelectTool, LotTool, BuildingTool, BarrierTool, PavingTool, BedTool, RowTool, PlantTool, PotTool,
    StandingTreeTool, ServiceTool, GateTool, TapeTool, NoteTool,
)
