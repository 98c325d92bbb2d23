"""The steps of the guided start: what to do, at which control, and when it is done."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from attrs import frozen
from PySide6.QtCore import QPoint, QRect
from PySide6.QtWidgets import QTabWidget, QWidget

from yardplan.checks.finding import Weight
from yardplan.language import later

if TYPE_CHECKING:
    from yardplan.window.dialogs.start_panel import StartPanel
    from yardplan.window.main_window import MainWindow

#: Plants that the third step asks for: with one alone, nothing can be said of partners and room.
PLANTS = 2


@frozen
class Aim:
    """A control: the part of the window that is pointed at, and what takes the keyboard there."""

    part: QWidget
    focus: Callable[[], None]
    #: A piece of the part, in its own pixels; None: all of it.
    piece: QRect | None = None

    def area(self, window: QWidget) -> QRect | None:
        """Where what shows of it lies in the window, pixels; None while it is hidden or scrolled away."""
        piece = (self.piece or self.part.rect()) & self.part.visibleRegion().boundingRect()
        if piece.isEmpty():
            return None
        return QRect(self.part.mapTo(window, QPoint(0, 0)) + piece.topLeft(), piece.size())


@frozen(kw_only=True)
class Step:
    """One step. `aim` finds its control as the window stands now; `done` tells when it was really done."""

    title: str
    words: str
    #: Said in place of `words` once the panel for a new yard is gone.
    words_on_sheet: str = ""
    aim: Callable[[MainWindow], Aim | None]
    done: Callable[[MainWindow], bool]


def words_of(step: Step, window: MainWindow) -> str:
    """What a step says as the window stands now, not yet translated."""
    return step.words_on_sheet if step.words_on_sheet and start_panel(window) is None else step.words


def start_panel(window: MainWindow) -> StartPanel | None:
    """The panel for a new yard while it shows."""
    from yardplan.window.dialogs.start_panel import StartPanel

    panel = window.start_panel
    return panel if isinstance(panel, StartPanel) and panel.isVisible() else None


def _place_aim(window: MainWindow) -> Aim | None:
    panel = start_panel(window)
    if panel is not None:
        return Aim(panel.form.place, panel.form.place.line.setFocus)
    side = window.side
    if side is None:
        return None
    site = side.fields.site_button

    def focus() -> None:
        window.open_yard.select(())
        side.tabs.setCurrentWidget(side.fields)
        site.setFocus()

    return Aim(site, focus) if site.isVisible() else _tab_aim(side.tabs, side.fields, focus)


def _tab_aim(tabs: QTabWidget, panel: QWidget, focus: Callable[[], None]) -> Aim:
    """The tab that brings a panel up."""
    return Aim(tabs.tabBar(), focus, tabs.tabBar().tabRect(tabs.indexOf(panel)))


def _place_done(window: MainWindow) -> bool:
    panel = start_panel(window)
    if panel is not None:
        return panel.form.place.facts is not None
    return bool(window.open_yard.yard.site.place)


def _lot_aim(window: MainWindow) -> Aim | None:
    panel = start_panel(window)
    if panel is not None:
        sides = (panel.form.width_entry, panel.form.depth_entry)
        return Aim(panel.form, sides[0].line.setFocus, sides[0].geometry().united(sides[1].geometry()))
    return _tool_aim(window, "lot")


def _lot_done(window: MainWindow) -> bool:
    return bool(window.open_yard.yard.lot)


def _tool_aim(window: MainWindow, icon: str) -> Aim | None:
    action = window.actions_[f"tool {icon}"]
    button = next((b for b in window.tools.buttons if b.accessibleName() == action.text()), None)
    return Aim(button, button.setFocus) if button is not None else None


def _plants_aim(window: MainWindow) -> Aim | None:
    if window.open_yard.in_hand is not None:
        return Aim(window.canvas, window.canvas.setFocus)
    side = window.side
    if side is None:
        return None
    search = side.choose.search
    if search.isVisible():
        return Aim(search, window.show_choice)
    return _tab_aim(side.tabs, side.choose, window.show_choice)


def _findings_aim(window: MainWindow) -> Aim | None:
    if window.side is None:
        return None
    findings = window.side.findings
    # Where nothing is listed there is nothing to go to: the sheet takes the keyboard.
    goal = findings.cards if findings.cards.isVisible() else window.canvas
    return Aim(findings, goal.setFocus)


def _clear(window: MainWindow) -> bool:
    """No conflict and no caution that still holds, and nothing being worked out."""
    yard = window.open_yard
    warned = [f for f in yard.findings if f.weight is not Weight.ADVICE]
    return yard.light is not None and not yard.checks.busy and not yard.on_trial and not warned


def _sheets_aim(window: MainWindow) -> Aim | None:
    bar, menu = window.menuBar(), window.menus["Sheets"]

    def focus() -> None:
        bar.setActiveAction(menu.menuAction())

    return Aim(bar, focus, bar.actionGeometry(menu.menuAction()))


def _printed(window: MainWindow) -> bool:
    return any(getattr(box, "made", False) for box in window.take_home.boxes.values())


STEPS: tuple[Step, ...] = (
    Step(
        title=later("Where is the yard?"),
        words=later("Type the town, a US ZIP code, or latitude and longitude, then press Enter. Winter cold, "
                    "frost days and the height of the sun follow from it."),
        aim=_place_aim, done=_place_done,
    ),
    Step(
        title=later("Draw the lot"),
        words=later("Type its width and depth and press Begin. Another outline can be drawn later with "
                    "the tool Lot line: click the corners, or type each length."),
        words_on_sheet=later("Take the tool Lot line and click the corners on the sheet, or type each length "
                             "and press Enter. A click on the first corner closes the lot."),
        aim=_lot_aim, done=_lot_done,
    ),
    Step(
        title=later("Pick plants"),
        words=later("Type a kind or a variety and press Enter: it is in hand. Click on the sheet where it "
                    "shall stand; green hatch is clear ground. Plant two or more."),
        aim=_plants_aim, done=lambda window: _count(window) >= PLANTS,
    ),
    Step(
        title=later("Clear the warnings"),
        words=later("Each card says what is wrong and what would clear it; a click shows the place. Drag "
                    "plants apart, change a variety, or let the program find a clear place. What you can "
                    "live with may stay: Next step goes on."),
        aim=_findings_aim, done=_clear,
    ),
    Step(
        title=later("Print the plan"),
        words=later("Open Sheets in the menu, choose what you want on paper, and save or print it. The plan "
                    "is true to scale."),
        aim=_sheets_aim, done=_printed,
    ),
)


def _count(window: MainWindow) -> int:
    yard = window.open_yard.yard
    return len(yard.plantings) + len(yard.rows)
