"""Everything about light in one window, put together: overlay, spot, the day played, panel, menu."""

from __future__ import annotations

from typing import TYPE_CHECKING

from attrs import evolve
from PySide6.QtCore import QObject

from yardplan.language import decimals, tr
from yardplan.window.light.commands import LightCommands
from yardplan.window.light.ground_light import GroundLight
from yardplan.window.light.layer import LightLayer
from yardplan.window.light.panel import LightPanel
from yardplan.window.light.play import DayPlay
from yardplan.window.light.spot import SunSpot
from yardplan.window.light.takers import marks_of, subject_of
from yardplan.window.tools.sun_spot import SunSpotTool
from yardplan.window.tools.tool import Overlay
from yardplan.yard.ground import Point

if TYPE_CHECKING:
    from yardplan.sheets.light_plan import PaperLight
    from yardplan.window.main_window import MainWindow
    from yardplan.window.panels.moment import MomentBar
    from yardplan.window.panels.season_strip import SeasonStrip
    from yardplan.window.sides import Side

_JUNE, _DECEMBER = "06-21", "12-21"


class LightRoom(QObject):
    """Built once the window shows, since it needs the sun."""

    def __init__(self, window: MainWindow, side: Side, strip: SeasonStrip) -> None:
        super().__init__(window)
        self._window, self._side = window, side
        self._yard, self._canvas = window.open_yard, window.canvas
        self.ground = GroundLight(self._yard, self)
        self.spot = SunSpot(self._yard, self)
        self.play = DayPlay(self._yard, self)
        self.layer = LightLayer(self.ground)
        self.panel = LightPanel(self._yard, self.ground, self.spot)
        side.tabs.add(self.panel, tr("Light"))
        self.spot.watched = lambda: self.panel.spot.isVisible() or isinstance(self._canvas.tool, SunSpotTool)
        self._hook_canvas()
        self.commands = LightCommands(window, self)
        self.panel.tool_wanted.connect(self.point)
        side.findings.shade_wanted.connect(self.show_shade_of)
        self._hook_moment(strip.moment)
        self._yard.light_on_paper = self._on_paper
        self._yard.loaded.connect(self._to_midsummer)
        self._to_midsummer()
        self._yard.closing.connect(self.stop)

    def _hook_canvas(self) -> None:
        canvas, desk = self._canvas, self._canvas.desk
        canvas.scene.light = self.layer
        canvas.scene.shade_marks = self.marks
        desk.look_at, desk.leave_spot, desk.spot_words = self._look, self.spot.leave, self.spot_words
        self.ground.changed.connect(canvas.update)
        self.spot.changed.connect(canvas.update)
        self.panel.takers.marks_changed.connect(canvas.update)
        canvas.tool_changed.connect(self._tool_changed)

    def _hook_moment(self, bar: MomentBar) -> None:
        bar.play_clicked.connect(lambda: self.play.turn(not self.play.playing))
        self.play.turned.connect(bar.show_playing)

    def toggle_legend(self) -> None:
        """Show the legend on the sheet or leave the ground free."""
        self.layer.legend = not self.layer.legend
        self._canvas.scene.words.forget()
        self._canvas.update()

    def _on_paper(self) -> PaperLight | None:
        return self.layer.on_paper(self._yard.year, self._yard.shown_yard.site)

    def _to_midsummer(self) -> None:
        """A day that nobody has set yet is the longest day, in the south in December."""
        moment = self._yard.moment
        if moment.day in (_JUNE, _DECEMBER):
            day = _DECEMBER if self._yard.shown_yard.site.southern else _JUNE
            self._yard.set_moment(evolve(moment, day=day))

    # The spot

    def point(self) -> None:
        """Take the tool that points at spots."""
        self._canvas.use(SunSpotTool)
        self._canvas.setFocus()

    def _tool_changed(self) -> None:
        if isinstance(self._canvas.tool, SunSpotTool):
            self._bring_up()
            self.panel.show_spot()

    def _look(self, place: Point, keep: bool) -> None:
        self.spot.look(place, keep=keep)

    def spot_words(self) -> str:
        """`6.4 h of sun`."""
        hours = self.spot.hours()
        return "" if hours is None else tr("{hours} h of sun a day", hours=decimals(f"{hours:.1f}"))

    # Who takes the light

    def has_subject(self) -> bool:
        """True when the one thing selected has light of its own."""
        return subject_of(self._yard) is not None

    def show_shade(self) -> None:
        """Who takes the light of what is selected, in the panel and on the sheet."""
        self._bring_up()
        self.panel.show_takers()

    def show_shade_of(self, thing: str) -> None:
        """The same for a plant by id."""
        self._yard.select({thing})
        self.show_shade()

    def marks(self) -> Overlay:
        """What is marked on the sheet."""
        view = self.panel.takers
        if not view.marked or view.taken is None:
            return Overlay()
        return marks_of(self._yard, view.taken)

    def _bring_up(self) -> None:
        self._window.side_dock.show()
        self._side.tabs.setCurrentWidget(self.panel)

    def stop(self) -> None:
        """Stop long work; before the window goes."""
        self.play.stop()
        self.ground.stop()
        self.spot.stop()
