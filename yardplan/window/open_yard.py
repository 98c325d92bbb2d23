"""The yard shown in a window: committed and trial state, selection, year, findings, undo, file."""

from __future__ import annotations

from collections.abc import Callable, Collection
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from attrs import frozen
from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoStack

from yardplan.checks.finding import Finding
from yardplan.language import tr
from yardplan.units import System
from yardplan.window.clear_ground import ClearGroundShown
from yardplan.window.live_checks import LiveChecks
from yardplan.window.undo import YardCommand
from yardplan.yard.change import Change, difference
from yardplan.yard.ground import Outline
from yardplan.yard.identity import begun, named, renewed, untitled
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Yard

if TYPE_CHECKING:
    from yardplan.checks.survey import Survey
    from yardplan.files.writing import Stamp
    from yardplan.plants.catalogue import Catalogue
    from yardplan.plants.stand import Stand
    from yardplan.sheets.light_plan import PaperLight
    from yardplan.sun.light import LightReport

#: Steps kept for undo.
UNDO_STEPS = 500


@frozen(kw_only=True)
class InHand:
    """The plant picked from the list: what the next click plants; `near` the ids it is to be a partner of."""

    plant: PlantKey
    form: str | None = None
    rootstock: str | None = None
    near: tuple[str, ...] = ()


@frozen
class Moment:
    """Day (`MM-DD`) and hour (0 to 24) that drive the shadows on the plan; by the sun or the site's zone."""

    day: str = "06-21"
    hour: float = 12.0
    clock: Literal["solar", "zone"] = "solar"


class OpenYard(QObject):
    """The yard shown. Every change enters by `show_trial` or `commit`; undo, redo and open end there too."""

    #: What is shown changed: a Change from what was shown before.
    shown = Signal(object)
    #: The window goes: long work ends.
    closing = Signal()
    #: Another document was opened or begun.
    loaded = Signal()
    #: The document was written to its file.
    saved = Signal()
    findings_changed = Signal()
    selection_changed = Signal()
    year_changed = Signal()
    in_hand_changed = Signal()
    title_changed = Signal()
    light_changed = Signal()
    moment_changed = Signal()
    #: Points (an Outline, metres) that the canvas is asked to bring into view.
    place_wanted = Signal(object)
    #: How far the light is computed, 0 to 1; 1.0 when nothing is being computed.
    progress = Signal(float)

    def __init__(self, yard: Yard | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._yard = yard if yard is not None else untitled()
        self._trial: Yard | None = None
        self._selection: frozenset[str] = frozenset()
        self._year: int | None = None
        self._in_hand: InHand | None = None
        self._moment = Moment()
        #: The light that lies over the sheet, for paper; None where there is none.
        self.light_on_paper: Callable[[], PaperLight | None] = lambda: None
        self._path: Path | None = None
        #: What the file was when it was opened or saved last; None: nothing to compare with.
        self._stamp: Stamp | None = None
        #: Lasting names the document bore before it was saved as a copy: steps undone still hold them.
        self._former_uids: set[str] = set()
        self.undo_stack = QUndoStack(self)
        self.undo_stack.setUndoLimit(UNDO_STEPS)
        self.undo_stack.cleanChanged.connect(self._on_clean)
        self.checks = LiveChecks(self)
        self.checks.findings_changed.connect(self.findings_changed)
        self.checks.light_changed.connect(self.light_changed)
        self.checks.progress.connect(self.progress)
        #: Clear ground of the plant in hand or dragged.
        self.clear = ClearGroundShown(self, self)
        self.checks.restart()

    def _on_clean(self, _clean: bool) -> None:
        self.title_changed.emit()

    # What is shown

    @property
    def yard(self) -> Yard:
        """The committed yard: what a save would write."""
        return self._yard

    @property
    def shown_yard(self) -> Yard:
        """The trial yard during a gesture, else the committed one."""
        return self._yard if self._trial is None else self._trial

    @property
    def on_trial(self) -> bool:
        """True while a gesture shows a yard that is not committed."""
        return self._trial is not None

    @property
    def stand(self) -> Stand:
        """The shown yard's plants with their sizes at the chosen year."""
        return self.checks.stand

    @property
    def survey(self) -> Survey:
        """The shown yard joined with plant facts and the light, as checks see it."""
        return self.checks.survey

    @property
    def findings(self) -> tuple[Finding, ...]:
        """What the checks found, weightiest first; `fresh` False where not yet recomputed."""
        return self.checks.findings

    @property
    def light(self) -> LightReport | None:
        """The light report of the shown yard, or None while it is not known."""
        return self.checks.light

    @property
    def catalogue(self) -> Catalogue:
        """All plants known, with the yard's own cultivars."""
        return self.checks.catalogue

    @property
    def units(self) -> System:
        """The units the yard is shown in."""
        return self.shown_yard.site.units

    # The one path in

    def show_trial(self, yard: Yard) -> None:
        """Show a yard during a gesture without committing it; dimension lines go with what they measure."""
        self._show(_followed(self._yard, yard), trial=True)

    def drop_trial(self) -> None:
        """Go back to the committed yard: Esc in a gesture."""
        if self._trial is not None:
            self._show(self._yard, trial=False)

    def commit(
        self,
        text: str,
        yard: Yard,
        *,
        merge: str | None = None,
        selection: Collection[str] | None = None,
        other_plan: bool = False,
    ) -> None:
        """Make a yard the document as one undo step named `text`.

        Steps with the same `merge` key within a second of each other fold into one (a field being typed
        in, a nudge repeated). `selection`: what is selected after the step; None: what is now.
        Dimension lines go with what they measure, except into another plan (`other_plan`), which has its own.
        """
        yard = yard if other_plan else _followed(self._yard, yard)
        chosen = self._selection if selection is None else frozenset(selection)
        if yard == self._yard:
            self.drop_trial()
            self.select(chosen)
            return
        before = (self._yard, self._selection)
        self.undo_stack.push(YardCommand(text, self._enter, before, (yard, chosen), merge))

    def _enter(self, yard: Yard, selection: frozenset[str]) -> None:
        """Undo, redo and commit end here. A copy keeps its own lasting name through steps from before it."""
        if yard.uid in self._former_uids:
            yard = renewed(yard, self._yard.uid)
        self._show(yard, trial=False)
        self.select(selection)

    def _show(self, yard: Yard, *, trial: bool) -> None:
        before, was_trial = self.shown_yard, self.on_trial
        if trial:
            self._trial = yard
        else:
            self._yard, self._trial = yard, None
        change = difference(before, yard)
        if change.nothing and trial == was_trial:
            return
        self.checks.follow(change)
        self.shown.emit(change)
        self.checks.announce()
        if not change.only_moves:
            self._keep_selection()

    # Selection, year, in hand, moment

    @property
    def selection(self) -> frozenset[str]:
        """Ids of the selected things; the lot line is `lot`."""
        return self._selection

    def select(self, ids: Collection[str]) -> None:
        """Select these things and nothing else."""
        chosen = frozenset(ids) & self._selectable()
        if chosen != self._selection:
            self._selection = chosen
            self.selection_changed.emit()

    def _selectable(self) -> set[str]:
        return self.shown_yard.ids() | ({"lot"} if self.shown_yard.lot else set())

    def _keep_selection(self) -> None:
        """Forget selected things that are gone."""
        if self._selection and not self._selection <= self._selectable():
            self.select(self._selection)

    @property
    def year(self) -> int | None:
        """Years after planting at which the yard is shown; None: mature."""
        return self._year

    def set_year(self, year: int | None) -> None:
        """Show the yard that many years after planting; None: mature."""
        if year != self._year:
            self._year = year
            self.checks.regrow()
            self.year_changed.emit()
            self.shown.emit(Change(whole=frozenset({"year"})))

    @property
    def in_hand(self) -> InHand | None:
        """The plant picked from the list, or None."""
        return self._in_hand

    def take_in_hand(self, in_hand: InHand | None) -> None:
        """Pick a plant from the list, or put it away with None."""
        if in_hand != self._in_hand:
            self._in_hand = in_hand
            self.in_hand_changed.emit()

    @property
    def moment(self) -> Moment:
        """Day and hour that drive the shadows on the plan."""
        return self._moment

    def set_moment(self, moment: Moment) -> None:
        """Show the shadows of another day and hour."""
        if moment != self._moment:
            self._moment = moment
            self.moment_changed.emit()

    def show_place(self, points: Outline, ids: Collection[str] = ()) -> None:
        """Bring a place into view and select things there: what a finding's row does when clicked."""
        if ids:
            self.select(ids)
        self.place_wanted.emit(tuple(points))

    # The file

    @property
    def path(self) -> Path | None:
        """Where the yard was opened from or saved to last."""
        return self._path

    @property
    def unsaved(self) -> bool:
        """True when the document differs from its file."""
        return not self.undo_stack.isClean()

    @property
    def title(self) -> str:
        """File name and yard name for the window's title, with Qt's `[*]` for unsaved work."""
        file_name = self._path.name if self._path else tr("not saved yet")
        return f"{self._yard.site.name} \N{EN DASH} {file_name}[*]"

    def new(self, yard: Yard | None = None) -> None:
        """Begin another document that has no file yet."""
        self._load(begun(yard) if yard is not None else untitled(), None)

    def open(self, path: Path | str) -> None:
        """Open a yard file. Raises files.errors.YardFileError, with nothing changed."""
        from yardplan.files import writing
        from yardplan.files.reading import read_yard

        stamp = writing.stamp_of(path)
        self._load(named(read_yard(Path(path))), Path(path))
        self._stamp = stamp

    def save(self, path: Path | str | None = None) -> None:
        """Write the yard to its file, or to another. Raises OSError or YardFileError, still unsaved then.

        Beside its own file, which stays, a copy is written that gets a lasting name of its own.
        Where another program has changed the file since, the first try is refused and a second replaces it.
        """
        from yardplan.files import writing

        target = Path(path) if path is not None else self._path
        if target is None:
            raise ValueError("the yard has no file yet: choose one with save as")
        yard = begun(self._yard) if self._leaves_a_plan(target) else self._yard
        try:
            writing.save(target, yard, self._stamp if target == self._path else None)
        except writing.ChangedOnDisk:
            self._stamp = None
            raise
        self._path, self._stamp = target, writing.stamp_of(target)
        if yard is not self._yard:
            self._former_uids.add(self._yard.uid)
            self._show(yard, trial=False)
        self.undo_stack.setClean()
        self.saved.emit()
        self.title_changed.emit()

    def _leaves_a_plan(self, target: Path) -> bool:
        """True where the file that the yard was in stays beside the one it is written to.

        A file that was moved or renamed on the disk meanwhile is the same plan still.
        """
        old = self._path
        if old is None or not old.exists():
            return False
        return not (target.exists() and target.samefile(old))

    def restore(self, yard: Yard, path: Path | None) -> None:
        """Take up recovered work: shown as unsaved, with the file it belongs to."""
        self._load(yard, path)
        self.undo_stack.resetClean()
        self.title_changed.emit()

    def _load(self, yard: Yard, path: Path | None) -> None:
        change = difference(self.shown_yard, yard)
        self._selection = frozenset()
        self._yard, self._trial, self._path, self._stamp = yard, None, path, None
        self._former_uids.clear()
        self.undo_stack.clear()
        self.checks.restart()
        self.shown.emit(change)
        self.selection_changed.emit()
        self.title_changed.emit()
        self.loaded.emit()

    def close(self) -> None:
        """Stop long work; call before the window goes."""
        # A stack that is taken down still tells of its steps, to listeners that are gone by then.
        self.undo_stack.blockSignals(True)
        self.closing.emit()
        self.checks.stop()


def _followed(before: Yard, after: Yard) -> Yard:
    """The yard after an edit with its dimension lines gone along; most yards have none."""
    if not before.dimensions:
        return after
    from yardplan.yard.dimensions import followed

    return followed(before, after)
