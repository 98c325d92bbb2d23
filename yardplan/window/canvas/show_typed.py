"""What was typed is brought into view: a length from a deed easily leaves the part of the sheet in sight."""

from __future__ import annotations

from yardplan.window.canvas.canvas import Canvas


def show_typed(canvas: Canvas) -> None:
    """Show the line being drawn, or what was just made of it, where it leaves the sheet in sight."""
    drawn = tuple(point for stroke in canvas.tool.overlay().strokes for point in stroke.points)
    points = drawn if canvas.tool.busy else canvas.scene.selected_points()
    if not all(canvas.rect().contains(canvas.view.to_pixels(point).toPoint()) for point in points):
        canvas.show_place(points)
