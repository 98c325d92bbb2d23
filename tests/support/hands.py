"""Hands for tests: a desk without a window, and plain pointer events in metres."""

from __future__ import annotations

from typing import Any

from yardplan.window.tools.desk import Desk
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.tool import Tool
from yardplan.yard.ground import Point


def press(tool: Tool, place: Point, **keys: Any) -> None:
    """Button down at a place in metres."""
    tool.press(Pointer(kind="press", place=place, dragging=True, **keys))


def move(tool: Tool, place: Point, *, down: bool = True, **keys: Any) -> None:
    """Pointer to a place, button down or up."""
    tool.move(Pointer(kind="move", place=place, dragging=down, **keys))


def release(tool: Tool, place: Point, **keys: Any) -> None:
    """Button up at a place."""
    tool.release(Pointer(kind="release", place=place, **keys))


def click(tool: Tool, place: Point, **keys: Any) -> None:
    """A click: hover, press, release."""
    move(tool, place, down=False, **keys)
    press(tool, place, **keys)
    release(tool, place, **keys)


def drag(tool: Tool, start: Point, *way: Point, **keys: Any) -> None:
    """Press at a place, go through others, let go at the last."""
    press(tool, start, **keys)
    for place in way:
        move(tool, place, **keys)
    release(tool, way[-1], **keys)


def said(desk: Desk) -> list[str]:
    """A list that takes up everything the desk says from now on."""
    heard: list[str] = []
    desk.say = heard.append
    return heard
