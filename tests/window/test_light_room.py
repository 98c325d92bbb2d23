from __future__ import annotations

from collections.abc import Callable
from datetime import date

import numpy as np
import pytest
from attrs import evolve
from PySide6.QtCore import QPoint, QRectF, Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot
from support.builders import plant, yard_of
from support.pdf_lines import reader_of

from yardplan.drawing.light_picture import PALE
from yardplan.sheets.pdf import pdf_bytes
from yardplan.sun import clock
from yardplan.sun.ground_kinds import KINDS, PLANTINGS
from yardplan.sun.light import light_report
from yardplan.sun.scene import scene_of
from yardplan.sun.spot import spot_at
from yardplan.window.light.room import LightRoom
from yardplan.window.light.takers import tenths
from yardplan.window.main_window import MainWindow
from yardplan.window.panels.findings_list import SHADE_STEP
from yardplan.window.sheet_maker import SheetWish, make
from yardplan.window.tools.sun_spot import SunSpotTool
from yardplan.yard import edits
from yardplan.yard.ground import Building
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

SITE = Site(name="Test yard", latitude=42.0, longitude=-76.0, zone="5b", time_zone="America/New_York")
HOUSE = Building(id="H1", footprint=((8.0, 4.0), (16.0, 4.0), (16.0, 9.0), (8.0, 9.0)), eaves=5.0, ridge=7.0)
YARD = yard_of(
    plant("A1", "apple:Liberty", (12, 10.5)), plant("A2", "apple:Enterprise", (24, 12)),
    buildings=(HOUSE,), site=SITE,
)
#: Close to the house's north wall, and far from everything.
DIM, OPEN = (9.5, 9.7), (27.0, 3.0)
Make = Callable[..., MainWindow]


@pytest.fixture
def window(make_window: Make, qtbot: QtBot) -> MainWindow:
    made = make_window(YARD)
    qtbot.waitUntil(lambda: not made.open_yard.checks.busy, timeout=60_000)
    return made


def _room(window: MainWindow) -> LightRoom:
    assert window.light_room is not None
    return window.light_room


def _pixels(window: MainWindow) -> np.ndarray:
    window.canvas.repaint()
    image = window.canvas.grab().toImage().convertToFormat(window.canvas.grab().toImage().Format.Format_RGB32)
    data = np.frombuffer(image.constBits(), dtype=np.uint8).reshape(image.height(), image.width(), 4)
    return data[:, :, :3].astype(int).copy()


def _at(window: MainWindow, place: tuple[float, float]) -> QPoint:
    return window.canvas.view.to_pixels(place).toPoint()


# The overlay


def test_overlay_darkens_the_shade_and_says_so_in_a_legend(window: MainWindow) -> None:
    room, bare = _room(window), _pixels(window)
    window.actions_["light overlay"].trigger()
    assert room.ground.on
    assert room.ground.fresh
    drawn = _pixels(window)
    places = [_at(window, DIM), _at(window, OPEN)]
    dark = [bare[p.y(), p.x()].sum() - drawn[p.y(), p.x()].sum() for p in places]
    assert dark[0] > 50
    assert dark[1] < 10
    shown = window.canvas.scene.plan_view(window.canvas.view, 1.0)
    note = room.layer.note(shown)
    assert "1 April to 30 September" in note
    assert "full size" in note
    assert "clear sky assumed" in note
    window.actions_["light overlay"].trigger()
    assert not room.ground.on
    again = _pixels(window)
    assert all(np.abs(again[p.y(), p.x()] - bare[p.y(), p.x()]).max() < 3 for p in places)


def test_the_legend_can_be_put_away(window: MainWindow) -> None:
    room = _room(window)
    window.actions_["light overlay"].trigger()
    shown = window.canvas.scene.plan_view(window.canvas.view, 1.0)
    field = QRectF(0, 0, window.canvas.width(), window.canvas.height())
    assert room.layer.legend_box(shown, field) is not None
    window.actions_["light legend"].trigger()
    assert room.layer.legend_box(shown, field) is None
    assert not window.actions_["light legend"].isChecked()
    window.actions_["light legend"].trigger()
    assert room.layer.legend_box(shown, field) is not None


def test_every_measure_is_in_the_menu_and_in_the_panel(window: MainWindow, qtbot: QtBot) -> None:
    room = _room(window)
    choice = room.panel.choice
    for number, kind in enumerate(KINDS):
        window.actions_[f"light {kind}"].trigger()
        assert room.ground.kind == kind
        assert choice.kind.currentIndex() == number + 1
        qtbot.waitUntil(lambda: room.ground.fresh and not room.ground.busy, timeout=60_000)
        assert room.ground.field is not None
        assert room.ground.field.measure == room.ground.wanted.measure
    for number, planting in enumerate(PLANTINGS):
        window.actions_[f"light {planting}"].trigger()
        assert choice.planting.currentIndex() == number
        qtbot.waitUntil(lambda: room.ground.fresh and not room.ground.busy, timeout=60_000)
    assert room.ground.field is not None
    assert room.ground.field.measure == "share taken"
    choice.kind.setCurrentIndex(0)
    choice.kind.activated.emit(0)
    assert not room.ground.on
    assert not window.actions_["light overlay"].isChecked()


def test_an_old_overlay_is_pale_and_says_so(window: MainWindow) -> None:
    room = _room(window)
    window.actions_["light overlay"].trigger()
    fresh = _pixels(window)
    place = _at(window, DIM)
    open_yard = window.open_yard
    open_yard.show_trial(edits.move(open_yard.yard, {"A2"}, (0.5, 0.0)))
    assert not room.ground.fresh
    pale = _pixels(window)
    dark, lighter = (768 - shown[place.y(), place.x()].sum() for shown in (fresh, pale))
    assert lighter < dark - 0.5 * (1 - PALE) * (dark - 40)
    assert "pale" in room.layer.note(window.canvas.scene.plan_view(window.canvas.view, 1.0))
    open_yard.drop_trial()


def test_lines_of_the_overlay_say_their_hours(window: MainWindow) -> None:
    room = _room(window)
    window.actions_["light overlay"].trigger()
    _pixels(window)
    field = room.ground.field
    assert field is not None
    labels = room.layer.labels
    assert {label.level for label in labels} >= {6.0, 8.0}
    for label in labels:
        row, col = field.grid.cell_at(label.place) or (0, 0)
        about = field.hours[max(row - 1, 0) : row + 2, max(col - 1, 0) : col + 2]
        assert about.min() <= label.level <= about.max()


def test_working_out_can_be_stopped_and_stays_pale(window: MainWindow, qtbot: QtBot) -> None:
    room, own = _room(window), window.open_yard
    window.actions_["light overlay"].trigger()
    own.commit("Move", edits.move(own.yard, {"A2"}, (1.0, 0.0)))
    assert own.checks.busy
    window.side.tabs.setCurrentWidget(room.panel)  # type: ignore[union-attr]
    assert room.panel.choice.stop.isVisible()
    qtbot.mouseClick(room.panel.choice.stop, Qt.MouseButton.LeftButton)
    assert not own.checks.busy
    assert not room.ground.fresh
    assert "pale: of before" in room.layer.note(window.canvas.scene.plan_view(window.canvas.view, 1.0))
    own.commit("Move", edits.move(own.yard, {"A2"}, (1.0, 0.0)))
    qtbot.waitUntil(lambda: not own.checks.busy and room.ground.fresh, timeout=60_000)


def test_the_growth_year_drives_the_overlay(window: MainWindow, qtbot: QtBot) -> None:
    room = _room(window)
    window.actions_["light taken"].trigger()
    qtbot.waitUntil(lambda: room.ground.fresh and not room.ground.busy, timeout=60_000)
    assert room.ground.field is not None
    grown = float(room.ground.field.hours.sum())
    window.open_yard.set_year(1)
    assert not room.ground.fresh
    qtbot.waitUntil(lambda: room.ground.fresh and not room.ground.busy, timeout=60_000)
    assert float(room.ground.field.hours.sum()) < grown / 2


def test_the_overlay_goes_on_paper_unless_it_is_old(window: MainWindow, qtbot: QtBot) -> None:
    room, own = _room(window), window.open_yard
    assert own.light_on_paper() is None
    room.ground.choose("morning")
    qtbot.waitUntil(lambda: room.ground.fresh and not room.ground.busy, timeout=60_000)
    light = own.light_on_paper()
    assert light is not None
    assert light.field is room.ground.field
    assert "before 10 by the sun" in light.note
    document = make(own, SheetWish(what=("light",), year=2027), lambda _share: None)
    page = reader_of(pdf_bytes(document)).pages[0].extract_text()
    assert "before 10 by the sun, 1 April to 30 September" in page
    own.show_trial(edits.move(own.yard, {"A1"}, (1.0, 0.0)))
    assert own.light_on_paper() is None
    own.drop_trial()


# A spot


def test_pointing_shows_the_light_of_a_spot(window: MainWindow, qtbot: QtBot) -> None:
    room = _room(window)
    window.actions_["tool light"].trigger()
    assert isinstance(window.canvas.tool, SunSpotTool)
    assert window.side is not None
    assert window.side.tabs.currentWidget() is room.panel
    qtbot.mouseMove(window.canvas, _at(window, (12.0, 11.0)))
    qtbot.waitUntil(lambda: room.spot.fresh and not room.spot.busy, timeout=60_000)
    spot = room.spot.spot
    assert spot is not None
    scene = scene_of(window.open_yard.yard, window.open_yard.stand)
    again = spot_at(scene, spot.place, date(2026, 6, 21), detail="full")
    assert spot.season.hours == pytest.approx(again.season.hours)
    assert spot.months == pytest.approx(again.months)
    assert f"{spot.season.hours:.1f} h of sun a day" in room.spot_words()
    chart = room.panel.spot.chart
    assert chart.isVisibleTo(room.panel)
    assert "House" in chart.accessibleDescription() or "H1" in chart.accessibleDescription()
    assert f"{spot.season.hours:.1f} h of direct sun a day" in chart.accessibleDescription()


def test_a_kept_spot_comes_back_when_the_pointer_leaves(window: MainWindow, qtbot: QtBot) -> None:
    room = _room(window)
    window.actions_["tool light"].trigger()
    qtbot.mouseClick(window.canvas, Qt.MouseButton.LeftButton, pos=_at(window, (12.0, 11.0)))
    kept = room.spot.kept
    assert kept is not None
    qtbot.mouseMove(window.canvas, _at(window, (26.0, 4.0)))
    assert room.spot.place != kept
    window.canvas.tool.leave()
    assert room.spot.place == kept
    qtbot.waitUntil(lambda: not room.spot.busy, timeout=60_000)


def test_a_spot_can_be_typed_on_the_sheet_and_in_the_panel(window: MainWindow, qtbot: QtBot) -> None:
    room = _room(window)
    window.actions_["tool light"].trigger()
    window.canvas.setFocus()
    qtbot.keyClicks(window.canvas, "4")
    qtbot.keyClicks(window.canvas.entry.line, "; 2.5")
    qtbot.keyClick(window.canvas.entry.line, Qt.Key.Key_Return)
    assert room.spot.kept == pytest.approx((4.0, 2.5))
    line = room.panel.spot.place
    line.setFocus()
    line.setText("12 m; 11 m")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert room.spot.kept == pytest.approx((12.0, 11.0))
    line.setText("twelve")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert room.panel.spot.fault.isVisibleTo(room.panel)
    assert room.spot.kept == pytest.approx((12.0, 11.0))
    qtbot.waitUntil(lambda: not room.spot.busy, timeout=60_000)


def test_the_spot_follows_the_yard_and_the_day(window: MainWindow, qtbot: QtBot) -> None:
    room, own = _room(window), window.open_yard
    room.spot.look((12.0, 11.0), keep=True)
    qtbot.waitUntil(lambda: room.spot.fresh and not room.spot.busy, timeout=60_000)
    assert room.spot.spot is not None
    shaded = room.spot.spot.season.hours
    own.commit("Away with the house", edits.remove(own.yard, {"H1"}))
    assert not room.spot.fresh
    assert not room.spot.busy, "what nobody sees is not worked out"
    window.side.tabs.setCurrentWidget(room.panel)  # type: ignore[union-attr]
    qtbot.waitUntil(lambda: room.spot.fresh and not room.spot.busy, timeout=60_000)
    assert room.spot.spot.season.hours > shaded + 1
    own.set_moment(evolve(own.moment, day="12-21"))
    qtbot.waitUntil(lambda: room.spot.fresh and not room.spot.busy, timeout=60_000)
    assert room.spot.spot.day.day == date(2026, 12, 21)


# Who takes the light


def test_who_takes_the_light_adds_up_to_what_is_missing(window: MainWindow) -> None:
    room = _room(window)
    window.open_yard.select({"A1"})
    window.actions_["light takers"].trigger()
    view = room.panel.takers
    assert view.taken is not None
    table = view.table
    rows = [table.topLevelItem(n) for n in range(table.topLevelItemCount())]
    hours = [float(row.text(1)) for row in rows if row is not None]
    assert sum(hours[:-1]) == pytest.approx(hours[-1])
    light = window.open_yard.light
    assert light is not None
    assert hours[-1] == pytest.approx(light.open_hours - light.plants["A1"].hours, abs=0.051)
    assert rows[0] is not None
    assert "H1" in rows[0].text(0)


def test_the_casters_are_marked_on_the_sheet(window: MainWindow) -> None:
    room = _room(window)
    window.open_yard.select({"A1"})
    before = _pixels(window)
    window.actions_["light takers"].trigger()
    marks = room.marks()
    assert any("H1" in words.text for words in marks.words)
    outline = [stroke for stroke in marks.strokes if stroke.closed]
    assert outline[0].points == HOUSE.footprint
    assert (np.abs(_pixels(window) - before).max(axis=2) > 40).sum() > 200
    room.panel.takers.mark.setChecked(False)
    assert room.marks().strokes == ()


def test_a_light_finding_offers_to_show_the_shade(window: MainWindow, qtbot: QtBot) -> None:
    assert window.side is not None
    findings = window.side.findings
    number = next(n for n in range(findings.rows.rowCount()) if findings.rows.row(n).finding.check == "light")
    findings.cards.setCurrentIndex(findings.rows.index(number))
    step: QPushButton = findings.step_button
    assert step.text() == SHADE_STEP
    qtbot.mouseClick(step, Qt.MouseButton.LeftButton)
    room = _room(window)
    assert window.side.tabs.currentWidget() is room.panel
    assert window.open_yard.selection == {findings.rows.row(number).finding.things[0]}
    assert room.panel.takers.marked


@pytest.mark.parametrize(("hours", "total"), [
    ([2.21, 0.14, 0.14, 0.14, 0.03], 2.66), ([0.04], 0.04), ([], 0.0), ([1.06, 1.06, 1.06], 3.18),
])
def test_tenths_add_up(hours: list[float], total: float) -> None:
    shown = tenths(hours, total)
    assert sum(shown) == pytest.approx(round(total, 1))
    assert all(abs(a - b) < 0.1 + 1e-9 for a, b in zip(shown, hours, strict=True))


# The day and its clock


def test_a_day_is_played_from_sunrise_to_sunset_and_back(window: MainWindow) -> None:
    own, play = window.open_yard, _room(window).play
    before = own.moment
    heard: list[bool] = []
    play.turned.connect(heard.append)
    window.actions_["play day"].trigger()
    assert play.playing
    assert window.actions_["play day"].isChecked()
    hours = [own.moment.hour]
    while play.playing:
        play.step()
        hours.append(own.moment.hour)
    times = clock.sun_times(date(2026, 6, 21), SITE)
    assert times.rise is not None
    assert times.set is not None
    rise, set_ = (clock.shown(at, SITE, "solar")[1] for at in (times.rise, times.set))
    assert hours[0] == pytest.approx(rise)
    assert max(hours) == pytest.approx(set_, abs=0.11)
    assert own.moment == before
    assert heard == [True, False]
    assert not window.actions_["play day"].isChecked()


def test_playing_stops_when_asked_or_when_the_hour_is_set(window: MainWindow) -> None:
    own, play = window.open_yard, _room(window).play
    before = own.moment
    play.turn(True)
    play.turn(False)
    assert not play.playing
    assert own.moment == before
    play.turn(True)
    own.set_moment(evolve(own.moment, hour=15.0))
    assert not play.playing
    assert own.moment.hour == 15.0


def test_shadows_played_do_not_repaint_the_still_picture(window: MainWindow) -> None:
    own, scene = window.open_yard, window.canvas.scene
    own.set_moment(evolve(own.moment, hour=9.0))
    morning = _pixels(window)
    painted = scene.ground.picture.painted
    own.set_moment(evolve(own.moment, hour=15.0))
    evening = _pixels(window)
    assert scene.ground.picture.painted == painted
    assert (np.abs(morning - evening).max(axis=2) > 8).sum() > 500


def test_the_same_instant_by_either_clock(window: MainWindow) -> None:
    own, bar = window.open_yard, window.season_dock.widget().moment  # type: ignore[attr-defined]
    assert bar.clock.currentText() == "sun time"
    # cos H = (sin -0.833 - sin 42 sin 23.44) / (cos 42 cos 23.44): H = 114.3 degrees, 7 h 37 min.
    assert bar.sun.text() == "sun 4:23 to 19:37"
    window.actions_["clock zone"].trigger()
    assert own.moment.clock == "zone"
    # 76 W is 1 degree west of the Eastern meridian: 4 minutes; summer time 1 h; equation of time 2 minutes.
    assert own.moment.hour == pytest.approx(13.0 + 6 / 60, abs=0.02)
    assert bar.clock.currentText() == "local, EDT"
    assert bar.sun.text() == "sun 5:29 to 20:43"
    own.set_moment(evolve(own.moment, day="01-15"))
    assert bar.clock.currentText() == "local, EST"
    window.actions_["clock solar"].trigger()
    assert own.moment.clock == "solar"


def test_the_day_begins_at_midsummer_of_the_hemisphere(make_window: Make) -> None:
    south = make_window(evolve(YARD, site=evolve(SITE, latitude=-43.0)))
    assert south.open_yard.moment.day == "12-21"
    south.open_yard.new(YARD)
    assert south.open_yard.moment.day == "06-21"
    south.open_yard.set_moment(evolve(south.open_yard.moment, day="03-05"))
    south.open_yard.new(YARD)
    assert south.open_yard.moment.day == "03-05"


def test_a_zone_that_is_not_known_leaves_the_sun_s_clock(make_window: Make, qtbot: QtBot) -> None:
    made = make_window(evolve(YARD, site=evolve(SITE, time_zone="Mars/Phobos")))
    qtbot.waitUntil(lambda: not made.open_yard.checks.busy, timeout=60_000)
    assert not made.actions_["clock zone"].isEnabled()
    made.open_yard.set_moment(evolve(made.open_yard.moment, clock="zone"))
    assert made.season_dock.widget().moment.sun.text() == "sun 4:23 to 19:37"  # type: ignore[attr-defined]


# Bad input


def _shown_words(window: MainWindow) -> str:
    room = _room(window)
    parts = [room.layer.note(window.canvas.scene.plan_view(window.canvas.view, 1.0)), room.spot_words()]
    parts += [room.panel.takers.facts.text(), room.panel.takers.title.text()]
    table = room.panel.takers.table
    parts += [item.text(1) for n in range(table.topLevelItemCount()) if (item := table.topLevelItem(n))]
    parts += [room.panel.spot.chart.accessibleDescription()]
    parts += [window.season_dock.widget().moment.sun.text()]  # type: ignore[attr-defined]
    return "\n".join(parts)


@pytest.mark.parametrize("latitude", [90.0, -90.0, 78.0, 66.6])
@pytest.mark.parametrize("day", ["12-21", "06-21"])
def test_polar_day_and_night_have_words(
    make_window: Make, qtbot: QtBot, latitude: float, day: str
) -> None:
    site = evolve(SITE, latitude=latitude, season=("11-20", "01-20"), time_zone=None)
    made = make_window(evolve(YARD, site=site))
    own, room = made.open_yard, _room(made)
    qtbot.waitUntil(lambda: not own.checks.busy, timeout=60_000)
    own.set_moment(evolve(own.moment, day=day))
    own.select({"A1"})
    room.show_shade()
    room.spot.look((12.0, 11.0), keep=True)
    for kind in KINDS:
        room.ground.choose(kind)
        qtbot.waitUntil(lambda: room.ground.fresh and not room.ground.busy, timeout=60_000)
        _pixels(made)
    qtbot.waitUntil(lambda: room.spot.fresh and not room.spot.busy, timeout=60_000)
    assert "nan" not in _shown_words(made).lower()
    assert "inf" not in _shown_words(made).lower()
    room.play.turn(True)
    assert room.play.playing == ("never rises" not in _shown_words(made))
    room.play.turn(False)


def test_a_place_that_is_not_on_earth_is_said_in_words(make_window: Make, qtbot: QtBot) -> None:
    made = make_window(evolve(YARD, site=evolve(SITE, latitude=123.0)))
    own, room = made.open_yard, _room(made)
    qtbot.waitUntil(lambda: not own.checks.busy, timeout=60_000)
    assert own.light is None
    made.actions_["light overlay"].trigger()
    room.ground.choose("morning")
    room.spot.look((12.0, 11.0), keep=True)
    qtbot.waitUntil(lambda: not room.ground.busy and not room.spot.busy, timeout=60_000)
    _pixels(made)
    words = _shown_words(made)
    assert "not on Earth" in words
    assert "nan" not in words.lower()
    own.show_trial(edits.move(own.yard, {"A1"}, (1.0, 0.0)))
    own.commit("Move", own.shown_yard)
    qtbot.waitUntil(lambda: not own.checks.busy, timeout=60_000)


@pytest.mark.parametrize("yard", [
    evolve(YARD, buildings=(evolve(HOUSE, eaves=0.0, ridge=0.0),)),
    evolve(YARD, buildings=(evolve(HOUSE, eaves=500.0, ridge=500.0),)),
    evolve(YARD, buildings=(evolve(HOUSE, footprint=((8.0, 4.0), (16.0, 9.0), (16.0, 4.0), (8.0, 9.0))),)),
    evolve(YARD, plantings=(plant("A1", "apple:Liberty", (12, 6)),)),
    Yard(site=SITE),
], ids=["no height", "very high", "crossing itself", "a plant in a building", "empty"])
def test_odd_yards_have_defined_light(make_window: Make, qtbot: QtBot, yard: Yard) -> None:
    made = make_window(yard)
    own, room = made.open_yard, _room(made)
    qtbot.waitUntil(lambda: not own.checks.busy, timeout=60_000)
    made.actions_["light overlay"].trigger()
    own.select({"A1"})
    room.show_shade()
    room.spot.look((12.0, 6.0), keep=True)
    qtbot.waitUntil(lambda: room.spot.fresh and not room.spot.busy, timeout=60_000)
    _pixels(made)
    assert "nan" not in _shown_words(made).lower()
    assert room.spot.spot is not None
    assert np.isfinite(room.spot.spot.season.hours)


def test_the_window_s_light_is_the_report_s(window: MainWindow) -> None:
    own = window.open_yard
    report = light_report(scene_of(own.yard, own.stand))
    assert own.light is not None
    assert own.light.plants["A1"].hours == pytest.approx(report.plants["A1"].hours)
