"""The pointer's shape tells what a press would do."""

from __future__ import annotations

from PySide6.QtCore import Qt

from yardplan.window.tools.select import SelectTool
from yardplan.window.tools.tool import Tool


def cursor_for(tool: Tool, *, panning: bool, space: bool, over: bool) -> Qt.CursorShape:
    """The shape for a tool in use; `space`: the space bar is held, `over`: the pointer is on a thing."""
    if panning:
        return Qt.CursorShape.ClosedHandCursor
    if space:
        return Qt.CursorShape.OpenHandCursor
    if not isinstance(tool, SelectTool):
        return Qt.CursorShape.CrossCursor
    if tool.over_length:
        return Qt.CursorShape.IBeamCursor
    return Qt.CursorShape.PointingHandCursor if over and not tool.busy else Qt.CursorShape.ArrowCursor
