"""What a tool hears of the pointer: plain values in metres, so that tools are tested without a window."""

from __future__ import annotations

from typing import Literal

from attrs import frozen

from yardplan.yard.ground import Point

Kind = Literal["press", "move", "release", "double"]


@frozen(kw_only=True)
class Pointer:
    """One pointer event: `place` in metres, unsnapped; `pixel` metres per pixel; `dragging`: button down.

    `shift`, `ctrl`, `alt`: keys held; `alt` suspends snapping.
    """

    kind: Kind
    place: Point
    pixel: float = 0.05
    dragging: bool = False
    shift: bool = False
    ctrl: bool = False
    alt: bool = False
