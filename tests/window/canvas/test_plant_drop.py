"""A variety dragged from the catalogue: Qt cannot be driven through a real drag, so its events are sent."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDragLeaveEvent, QDragMoveEvent, QDropEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot
from support import builders

from yardplan.window.canvas.canvas import Canvas
from yardplan.window.canvas.plant_drop import PLANT_MIME, plant_in
from yardplan.window.open_yard import OpenYard
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]
_COPY, _LEFT, _NONE = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.AltModifier


def carried(text: bytes) -> QMimeData:
    data = QMimeData()
    data.setData(PLANT_MIME, text)
    return data


@pytest.fixture
def canvas(qtbot: QtBot, opened: Opened, theme) -> Canvas:
    made = Canvas(opened(builders.yard_of()))
    qtbot.addWidget(made)
    made.resize(800, 600)
    made.show()
    made.fit()
    return made


def test_a_plant_is_tried_while_dragged_and_planted_at_the_drop(canvas: Canvas) -> None:
    open_yard, data = canvas.open_yard, carried(b"apple:Liberty")
    at = canvas.view.to_pixels((12.0, 8.0))
    enter = QDragEnterEvent(QPoint(10, 10), _COPY, data, _LEFT, _NONE)
    QApplication.sendEvent(canvas, enter)
    assert enter.isAccepted()
    QApplication.sendEvent(canvas, QDragMoveEvent(at.toPoint(), _COPY, data, _LEFT, _NONE))
    assert open_yard.on_trial
    assert open_yard.yard.plantings == ()
    QApplication.sendEvent(canvas, QDropEvent(QPointF(at), _COPY, data, _LEFT, _NONE))
    planted = open_yard.yard.plantings[0]
    assert planted.plant == PlantKey("apple", "Liberty")
    assert planted.place == pytest.approx((12.0, 8.0), abs=0.05)
    assert open_yard.undo_stack.count() == 1


def test_leaving_the_sheet_takes_the_tried_plant_away(canvas: Canvas) -> None:
    data = carried(b"apple:Liberty")
    QApplication.sendEvent(canvas, QDragEnterEvent(QPoint(300, 300), _COPY, data, _LEFT, _NONE))
    QApplication.sendEvent(canvas, QDragMoveEvent(QPoint(300, 300), _COPY, data, _LEFT, _NONE))
    QApplication.sendEvent(canvas, QDragLeaveEvent())
    assert not canvas.open_yard.on_trial
    assert canvas.open_yard.yard.plantings == ()


def test_files_and_foreign_data_are_left_to_others(canvas: Canvas) -> None:
    files = QMimeData()
    files.setUrls([QUrl.fromLocalFile("/somewhere/a.yard")])
    for data in (files, carried(b"nonsense"), carried(b"\xff\xfe")):
        assert plant_in(data) is None
        enter = QDragEnterEvent(QPoint(10, 10), _COPY, data, _LEFT, _NONE)
        QApplication.sendEvent(canvas, enter)
        assert not enter.isAccepted()
    assert canvas.open_yard.in_hand is None
