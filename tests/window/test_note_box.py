"""Words for a note are taken by the keyboard, and the box says by which key."""

from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPlainTextEdit

from yardplan.window.questions import Questions


def test_a_note_typed_is_taken_by_ctrl_enter(make_window, qtbot):
    """Enter begins a line; who then pressed Esc lost the words."""
    window = make_window()
    seen = []

    def write():
        box = QApplication.activeModalWidget()
        seen.append(box.labelText())
        field = box.findChild(QPlainTextEdit)
        field.setFocus()
        QTest.keyClicks(field, "Compost")
        QTest.keyClick(field, Qt.Key.Key_Return)
        QTest.keyClicks(field, "goes here")
        QTest.keyClick(field, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
        QTimer.singleShot(500, box, box.reject)

    QTimer.singleShot(100, window, write)
    assert Questions(window).text("Words on the plan", "") == "Compost\ngoes here"
    assert "Ctrl+Enter" in seen[0]
