"""The sheet on the screen: paints the yard, turns pointer and keys into plain events for the tool in use."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt, QTimer, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QDropEvent,
    QFocusEvent,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from yardplan.language import tr
from yardplan.units import UnitError
from yardplan.window.canvas import voice
from yardplan.window.canvas.edge_lengths import EdgeLengths
from yardplan.window.canvas.entry import LengthEntry
from yardplan.window.canvas.hover import show_card
from yardplan.window.canvas.motion import Motion
from yardplan.window.canvas.plant_drop import PlantDrops
from yardplan.window.canvas.pointing import BY_TAB, begins_entry, cursor_for, pinch_of, pointer_of
from yardplan.window.canvas.scene import Scene
from yardplan.window.canvas.view import View, bounds_of
from yardplan.window.canvas.wheel import Wheel
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.tools import commands
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.event import Kind, Pointer
from yardplan.window.tools.naming import names_of
from yardplan.window.tools.picking import cycle, picked
from yardplan.window.tools.select import SelectTool
from yardplan.window.tools.tool import Key, Tool
from yardplan.window.tools.toolbox import PLANT, ROW
from yardplan.yard.change import Change
from yardplan.yard.ground import Outline

#: The picture is painted afresh so long after the last turn of the wheel, milliseconds.
SETTLE_MS = 150
#: Labels find their best places again so long after something was put down, milliseconds.
ARRANGE_MS = 500
#: Shadows that moved become part of the still picture again so long after the last step, milliseconds.
MOMENT_MS = 1500
#: One press of an arrow key pans so many pixels when nothing is selected.
PAN_PIXELS = 60

_ARROWS: dict[int, tuple[int, int]] = {
    Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Up: (0, 1), Qt.Key.Key_Down: (0, -1),
}
_TOOL_KEYS: dict[int, Key] = {
    Qt.Key.Key_Return: "enter", Qt.Key.Key_Enter: "enter", Qt.Key.Key_Backspace: "backspace",
}


class Canvas(PlantDrops):
    """Shows an OpenYard and works on it with one tool at a time."""

    #: What the next click does.
    hint_changed = Signal(str)
    #: Where the pointer is, metres, or None.
    pointed = Signal(object)
    tool_changed = Signal()
    view_changed = Signal()
    #: The sheet was on the screen for the first time.
    painted_first = Signal()
    #: The context menu is wanted at a place of the screen.
    menu_wanted = Signal(QPoint)
    #: Fields of the selection are wanted: F2, Enter, double click.
    fields_wanted = Signal()

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.open_yard = open_yard
        self.desk = Desk(open_yard)
        self.view = View()
        self.scene = Scene(open_yard, self.desk)
        self.motion = Motion(self.scene)
        self.wheel = Wheel()
        self.tool: Tool = SelectTool(self.desk)
        self.hovered: str | None = None
        self._panning: QPointF | None = None
        self._space = self._came_by_tab = False
        self._painted = self._mid_move = False
        self._fit_wanted = True
        self._settle = QTimer(self, singleShot=True, interval=SETTLE_MS)
        self._settle.timeout.connect(self._settled)
        self._arrange = QTimer(self, singleShot=True, interval=ARRANGE_MS)
        self._arrange.timeout.connect(self._settled)
        self._moment_rests = QTimer(self, singleShot=True, interval=MOMENT_MS)
        self._moment_rests.timeout.connect(self._moment_rested)
        self.entry = LengthEntry(self)
        self.entry.sent.connect(self._typed)
        self.entry.closed.connect(self._close_entry)
        self.edges = EdgeLengths(self)
        self.desk.edit_edge = self.edges.begin
        self.desk.shows_lengths = lambda: self.scene.layers.labels
        self.desk.open_entry = self.open_entry
        self.desk.say = lambda text: voice.say(self, text)
        self._set_up()
        self._listen()

    def _set_up(self) -> None:
        self.setObjectName("canvas")
        self.setAccessibleName(tr("Plan of the yard"))
        self.setAccessibleDescription(tr(
            "Tab goes from thing to thing, arrow keys move, Enter or F2 opens the fields, Escape backs out"
        ))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(320, 240)
        self.setAcceptDrops(True)
        self.grabGesture(Qt.GestureType.PinchGesture)

    def _listen(self) -> None:
        yard = self.open_yard
        yard.shown.connect(self._on_shown)
        yard.loaded.connect(self._on_loaded)
        yard.findings_changed.connect(self._paint_changes)
        yard.clear.changed.connect(self.update)
        yard.light_changed.connect(self._on_light)
        yard.moment_changed.connect(self._on_moment)
        yard.selection_changed.connect(self._on_selection)
        yard.in_hand_changed.connect(self._on_in_hand)
        yard.place_wanted.connect(self.show_place)

    # What changed

    def _on_shown(self, change: Change) -> None:
        self.scene.follow(change, self.tool.live)
        self._paint_changes()

    def _on_light(self) -> None:
        """Light that is not shown changes no more than the findings on it."""
        if self.scene.shows_light:
            self.update()
        else:
            self._paint_changes()

    def _on_moment(self) -> None:
        """Shadows move: they are painted apart from the rest until the hour rests."""
        if self.scene.layers.shadows:
            self.scene.shade_moves = True
            self._moment_rests.start()
            self.update()

    def _moment_rested(self) -> None:
        self.scene.shade_moves = False
        self.update()

    def _on_loaded(self) -> None:
        self.use(SelectTool)
        self.scene.forget()
        self.fit()

    def _on_selection(self) -> None:
        self._tell_hint()
        self.update()

    def _on_in_hand(self) -> None:
        if self.open_yard.in_hand is not None and self.tool.icon not in (PLANT.icon, ROW.icon):
            self.use(PLANT)
        self._tell_hint()

    # Tools

    def use(self, kind: Callable[[Desk], Tool]) -> None:
        """Take up a tool; what the one before was doing is dropped."""
        self.tool.cancel()
        self.tool = kind(self.desk)
        self._close_entry()
        self.desk.forget_snap()
        self.tool_changed.emit()
        self._after_gesture()

    def refresh_tool(self) -> None:
        """The tool in use was told something by a command: show what it shows now."""
        self._after_gesture()

    def _after_gesture(self) -> None:
        """After anything the tool did: keep live things apart, tell the hint, paint."""
        if self.tool.done:
            self.use(SelectTool)
            return
        self.scene.set_live(self.tool.live)
        if self.scene.ground.unsettled and not self.tool.live:
            self._arrange.start()
        self._tell_hint()
        self._set_cursor()
        self._paint_changes()

    def _move_tool(self, pointer: Pointer) -> None:
        """The tool follows the pointer; what it changes is painted as one frame."""
        self._mid_move = True
        try:
            self.tool.move(pointer)
        finally:
            self._mid_move = False

    def _paint_changes(self) -> None:
        """Ask for a frame: while something is dragged, only where it left ink and leaves it now."""
        if self._mid_move:
            return
        region = self.scene.changed(self.view, self.devicePixelRatioF(), self.tool) if self._resting else None
        if region is None:
            self.update()
        else:
            self.update(region)

    @property
    def _resting(self) -> bool:
        """True while no pan or zoom is under way."""
        return not self._settle.isActive() and self._panning is None

    def _tell_hint(self) -> None:
        self.hint_changed.emit(self.tool.hint())

    def _set_cursor(self) -> None:
        over = self.hovered is not None
        wanted = cursor_for(self.tool, panning=self._panning is not None, space=self._space, over=over)
        if self.cursor().shape() is not wanted:
            self.setCursor(wanted)

    def _typed(self, text: str) -> None:
        if not text.strip():
            self._close_entry()
            return
        try:
            self.tool.typed(text)
        except UnitError as error:
            self.entry.show_fault(error)
            return
        self._close_entry()
        self._after_gesture()

    def open_entry(self, text: str = "") -> None:
        """Open the field for typed lengths and places."""
        self.entry.adjustSize()
        self.entry.move(28, self.height() - 120)
        self.entry.begin(text)

    def _close_entry(self) -> None:
        if self.entry.isVisible():
            # Before it hides: a hidden field hands the keyboard on as Tab does, which picks another thing.
            self.setFocus(Qt.FocusReason.OtherFocusReason)
            self.entry.hide()

    # View

    def set_view(self, view: View, *, settle: bool = False) -> None:
        """Look from elsewhere; `settle`: a gesture is under way, repaint in full when it rests."""
        if view == self.view:
            return
        self.view = view
        if settle:
            self._settle.start()
        self.view_changed.emit()
        self.update()

    def _settled(self) -> None:
        if not self.tool.live:
            self.scene.settle()
        self.update()

    def fit(self) -> None:
        """All of the yard in view."""
        self._fit_wanted = not self.isVisible()
        self.set_view(self.view.fitted(self.scene.extent(), margin=self.scene.fit_margin))

    def zoom_by(self, factor: float, at: QPointF | None = None, *, settle: bool = False) -> None:
        """Zoom about a pixel, or the middle."""
        about = at if at is not None else QPointF(self.width() / 2, self.height() / 2)
        self.set_view(self.view.zoomed(factor, about.x(), about.y()), settle=settle)

    def zoom_true(self) -> None:
        """To scale 1:100 on this screen: one metre is one centimetre."""
        self.set_view(self.view.at_scale(self.logicalDpiX() / 2.54))

    def show_place(self, points: Outline) -> None:
        """Bring a place into view."""
        box = bounds_of(points)
        if box is not None:
            self.set_view(self.view.showing(box))

    # Painting

    def paintEvent(self, event: QPaintEvent) -> None:
        ratio, pans = self.devicePixelRatioF(), self.motion.pans(self.view)
        resting = self._resting or pans
        bare = not resting and self.motion.step(self.view, ratio)
        painter = QPainter(self)
        self.scene.paint(
            painter, self.view, ratio=ratio, resting=resting, tool=self.tool, focused=self.hasFocus()
        )
        painter.end()
        if bare:
            self.update()
        if not self._painted:
            self._painted = True
            self.painted_first.emit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        self.view = self.view.sized(self.width(), self.height())
        if self._fit_wanted:
            self.set_view(self.view.fitted(self.scene.extent(), margin=self.scene.fit_margin))
        self.view_changed.emit()
        super().resizeEvent(event)

    # Pointer

    def _pointer(self, event: QMouseEvent | QDropEvent, kind: Kind) -> Pointer:
        return pointer_of(self.view, event, kind)

    def take_plant(self, in_hand: InHand) -> None:
        self.open_yard.take_in_hand(in_hand)
        self.use(PLANT)

    def try_plant(self, event: QDropEvent) -> None:
        self._move_tool(self._pointer(event, "move"))
        self._after_gesture()

    def leave_plant(self) -> None:
        self.tool.cancel()
        self._after_gesture()

    def put_plant(self, event: QDropEvent) -> None:
        self.tool.press(self._pointer(event, "press"))
        self._after_gesture()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._fit_wanted = False
        middle = event.button() == Qt.MouseButton.MiddleButton
        if middle or (self._space and event.button() == Qt.MouseButton.LeftButton):
            self._panning = event.position()
            self._set_cursor()
        elif event.button() == Qt.MouseButton.LeftButton:
            self.tool.press(self._pointer(event, "press"))
            self._after_gesture()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        place = event.position()
        self.pointed.emit(self.view.to_metres(place.x(), place.y()))
        if self._panning is not None:
            shift = place - self._panning
            self._panning = place
            self.set_view(self.view.panned(shift.x(), shift.y()))
            return
        pointer = self._pointer(event, "move")
        self._move_tool(pointer)
        if not pointer.dragging and not self.tool.busy:
            self.hovered = self.desk.under(pointer)
        self._after_gesture()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._panning is not None:
            self._panning = None
            self._set_cursor()
            self.update()
        elif event.button() == Qt.MouseButton.LeftButton:
            self.tool.release(self._pointer(event, "release"))
            self._after_gesture()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self.tool.double(self._pointer(event, "double"))
            self._after_gesture()

    def leaveEvent(self, event: QEvent) -> None:
        self.hovered = None
        self.pointed.emit(None)
        self.tool.leave()
        self._after_gesture()
        super().leaveEvent(event)

    def _under(self, event: QContextMenuEvent | QHelpEvent) -> str | None:
        place = self.view.to_metres(event.pos().x(), event.pos().y())
        return self.desk.under(Pointer(kind="press", place=place, pixel=1 / self.view.scale))

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if event.reason() == QContextMenuEvent.Reason.Mouse:
            key = self._under(event)
            if key is not None and key not in self.open_yard.selection:
                self.open_yard.select(picked(self.open_yard, key))
            self.menu_wanted.emit(event.globalPos())
        else:
            self.menu_wanted.emit(self.mapToGlobal(self._selection_corner()))

    def _selection_corner(self) -> QPoint:
        box = bounds_of(self.scene.selected_points())
        if box is None:
            return QPoint(self.width() // 2, self.height() // 2)
        return self.view.to_pixels((box[2], box[3])).toPoint()

    def wheelEvent(self, event: QWheelEvent) -> None:
        self._fit_wanted = False
        turn = self.wheel.read(event)
        if turn.zoom:
            self.zoom_by(turn.zoom, event.position(), settle=True)
        else:
            self.set_view(self.view.panned(turn.pan.x(), turn.pan.y()), settle=True)
        event.accept()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            # The room round the sheet turns dark or light; the sheet stays as it is.
            self.scene.forget()
            self.update()

    def event(self, event: QEvent) -> bool:
        pinch = pinch_of(event)
        if pinch is not None:
            self.zoom_by(*pinch, settle=True)
            return True
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip:
            quiet = self.tool.busy or self.open_yard.on_trial
            show_card(self, self.open_yard, event, None if quiet else self._under(event))
            return True
        return super().event(event)

    # Keys

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if not self._key(event):
            super().keyPressEvent(event)

    def _key(self, event: QKeyEvent) -> bool:
        key = event.key()
        if key == Qt.Key.Key_Escape:
            self.back_out()
        elif key == Qt.Key.Key_Space and not event.isAutoRepeat():
            self._space = True
            self._set_cursor()
        elif key in _TOOL_KEYS and self.tool.on_key(_TOOL_KEYS[key]):
            self._after_gesture()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_F2):
            self.fields_wanted.emit()
        elif key in _ARROWS:
            self._arrow(_ARROWS[key], far=bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier))
        elif self.tool.takes_lengths and begins_entry(event):
            self.open_entry(event.text().strip("+"))
        else:
            return False
        return True

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Space and not event.isAutoRepeat():
            self._space = False
            self._set_cursor()
        super().keyReleaseEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        self._came_by_tab = event.reason() in BY_TAB
        self.update()
        super().focusInEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self._space = False
        self.update()
        super().focusOutEvent(event)

    def _arrow(self, way: tuple[int, int], *, far: bool) -> None:
        if self.open_yard.selection - {"lot"} and not self.tool.busy:
            said = commands.nudge(self.open_yard, way, far=far)
            if said:
                self.desk.say(said)
        else:
            self.set_view(self.view.panned(-way[0] * PAN_PIXELS, way[1] * PAN_PIXELS), settle=True)

    def back_out(self) -> None:
        """Esc: out of the gesture, then of the tool, then of the selection."""
        if self.tool.cancel():
            self._after_gesture()
        elif not isinstance(self.tool, SelectTool):
            self.open_yard.take_in_hand(None)
            self.use(SelectTool)

    def focusNextPrevChild(self, next_: bool) -> bool:
        """Tab goes from thing to thing and, after the last, on to the next part of the window."""
        if self.tool.busy or self.entry.isVisible() or self.edges.open:
            return False
        # Who comes in by Tab begins at the first thing again, whatever is still selected.
        key = cycle(self.open_yard, 1 if next_ else -1, round_=self._came_by_tab)
        self._came_by_tab = False
        if key is None:
            return super().focusNextPrevChild(next_)
        self.desk.say(names_of(self.open_yard.shown_yard, self.open_yard.selection))
        self.show_place(self.scene.selected_points())
        return True
