"""Words about what is dragged keep clear of those of the tool, which lie on top."""

from PySide6.QtCore import QPoint, Qt
from support.builders import plant, yard_of

from yardplan.drawing import painter as plan
from yardplan.window.canvas.canvas import Canvas
from yardplan.window.canvas.overlay_paint import words_boxes
from yardplan.window.open_yard import OpenYard


def test_the_drawing_is_told_where_the_words_of_the_tool_stand(qtbot, monkeypatch):
    """The drawing keeps clear of them: tests/drawing/test_partner_lines.py."""
    told = []
    draw = plan.draw_findings

    def note(painter, view):
        told.append(view.taken)
        draw(painter, view)

    monkeypatch.setattr(plan, "draw_findings", note)
    pair = plant("A1", "apple:Liberty", (6, 10)), plant("A2", "apple:Empire", (12, 10))
    open_yard = OpenYard(yard_of(*pair))
    canvas = Canvas(open_yard)
    qtbot.addWidget(canvas)
    canvas.resize(1000, 700)
    with qtbot.waitExposed(canvas):
        canvas.show()
    canvas.fit()
    start = canvas.view.to_pixels((12.0, 10.0)).toPoint()
    qtbot.mousePress(canvas, Qt.MouseButton.LeftButton, pos=start)
    for pixels in (40, 80, 120):
        qtbot.mouseMove(canvas, start + QPoint(pixels, pixels // 2))
        told.clear()
        canvas.repaint()
        tags = words_boxes(canvas.view, canvas.tool.overlay(), canvas.desk.snapped)
        assert tags
        assert tags in told
    qtbot.mouseRelease(canvas, Qt.MouseButton.LeftButton, pos=start)
    open_yard.close()
