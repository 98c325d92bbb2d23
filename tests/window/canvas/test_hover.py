"""The card under a resting pointer."""

from PySide6.QtCore import QEvent, QPoint
from PySide6.QtGui import QHelpEvent
from PySide6.QtWidgets import QApplication, QToolTip
from support.builders import plant, yard_of

from yardplan.window.canvas.canvas import Canvas
from yardplan.window.canvas.hover import hover_text


def test_a_plant_tells_its_size_and_what_is_found(opened):
    yard = opened(yard_of(plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Liberty", (6, 5))))
    text = hover_text(yard, "A1").splitlines()
    assert text[0] == "Liberty (A1)"
    assert text[1].startswith("about ")
    assert any(line.startswith("conflict: ") and "too close" in line for line in text)


def test_in_a_young_year_both_sizes_are_told(opened):
    yard = opened(yard_of(plant("A1", "apple:Liberty", (5, 5))))
    yard.set_year(3)
    assert "in year 3" in hover_text(yard, "A1")
    assert "at full size" in hover_text(yard, "A1")


def test_the_lot_line_and_what_is_not_there(opened):
    yard = opened(yard_of())
    assert hover_text(yard, "lot").startswith("Lot line")
    assert hover_text(yard, "Z9") == ""


def test_resting_over_a_plant_shows_the_card(opened, theme, qtbot):
    canvas = Canvas(opened(yard_of(plant("A1", "apple:Liberty", (5, 5)))))
    qtbot.addWidget(canvas)
    canvas.resize(600, 400)
    with qtbot.waitExposed(canvas):
        canvas.show()
    canvas.fit()
    at = canvas.view.to_pixels((5, 5)).toPoint()
    QApplication.sendEvent(canvas, QHelpEvent(QEvent.Type.ToolTip, at, canvas.mapToGlobal(at)))
    assert QToolTip.text().startswith("Liberty (A1)")
    QToolTip.hideText()
    bare = QPoint(2, 2)
    QApplication.sendEvent(canvas, QHelpEvent(QEvent.Type.ToolTip, bare, canvas.mapToGlobal(bare)))
