"""Draw a pipe, cable or other service."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.tools.corners import CornersTool
from yardplan.yard import edits
from yardplan.yard.ground import Outline, Service


class ServiceTool(CornersTool):
    """A service line: drawn as a water pipe, its kind and depth are set in its fields."""

    name, key, icon = later("Service"), "U", "service"
    about = later("Draw a pipe or cable; call to have lines marked before you dig")
    closed, least, what = False, 2, later("pipe or cable")

    def finish(self, points: Outline) -> None:
        yard = self.open_yard.yard
        made = Service(id=edits.next_key(yard, "SV"), kind="water", points=points)
        self.open_yard.commit(tr("Draw service line"), edits.add(yard, made), selection={made.id})
