"""The findings as rows of a list: words, order, and what changed or cleared during a gesture."""

from __future__ import annotations

from typing import Any

from attrs import evolve, frozen
from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from yardplan.checks.finding import Finding, Weight
from yardplan.checks.said_once import said_alike
from yardplan.checks.wording import Said, names_of, say
from yardplan.language import all_of, later, tr, tr_n
from yardplan.window.open_yard import OpenYard
from yardplan.window.pacing import Paced
from yardplan.yard.change import Change

#: Role under which a row hands out its Row.
ROW_ROLE = int(Qt.ItemDataRole.UserRole) + 1

WEIGHT_WORDS = {
    Weight.CONFLICT: later("Conflict"), Weight.CAUTION: later("Caution"), Weight.ADVICE: later("Advice"),
}


#: So many of the others of a card are named.
_NAMED = 4


@frozen(kw_only=True)
class Row:
    """One finding as shown. `changed`: other words than at the gesture's start; `cleared`: gone since.

    `more` findings that say the same of other things, `likewise` their names in words.
    """

    finding: Finding
    said: Said
    changed: bool = False
    cleared: bool = False
    more: tuple[Finding, ...] = ()
    likewise: str = ""

    @property
    def all(self) -> tuple[Finding, ...]:
        """The findings of the card."""
        return (self.finding, *self.more)

    @property
    def stale(self) -> bool:
        """True where a finding has not been computed again since something moved."""
        return not all(finding.fresh for finding in self.all)

    @property
    def told(self) -> str:
        """How much it matters and what is at stake: `Conflict, safety`."""
        return tr("{weight}, {stake}", weight=tr(WEIGHT_WORDS[self.finding.weight]), stake=self.said.stake)

    @property
    def spoken(self) -> str:
        """Everything in one sentence run, for screen readers."""
        parts = [self.told, self.said.title, self.said.message, self.likewise]
        if self.cleared:
            parts.append(tr("cleared"))
        elif self.changed:
            parts.append(tr("changed"))
        if self.stale:
            parts.append(tr("being computed again"))
        if self.said.clears:
            parts.append(tr("What clears it: {clears}", clears=self.said.clears))
        return ". ".join(part.rstrip(".") for part in parts if part) + "."


def _some_of(names: list[str]) -> str:
    """The first few of many names, and how many more."""
    left = len(names) - _NAMED
    if left <= 0:
        return all_of(names)
    return tr_n("{things} and {n} more", "{things} and {n} more", left, things=", ".join(names[:_NAMED]))


_Index = QModelIndex | QPersistentModelIndex


class FindingRows(QAbstractListModel):
    """Follows the open yard. During a gesture rows keep their place: changed ones marked, gone ones pale."""

    def __init__(self, open_yard: OpenYard, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._rows: list[Row] = []
        self._at_start: dict[tuple[Any, ...], Said] | None = None
        self._names: dict[str, str] | None = None
        self._said: dict[tuple[Any, ...], tuple[Finding, Said]] = {}
        self._units = open_yard.units
        self._pace = Paced(open_yard, self.refresh, self)
        open_yard.findings_changed.connect(self._pace.soon)
        open_yard.shown.connect(self._shown)
        self.refresh()

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self._rows)

    def data(self, index: _Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        if not index.isValid() or not 0 <= index.row() < len(self._rows):
            return None
        row = self._rows[index.row()]
        if role == ROW_ROLE:
            return row
        if role in (int(Qt.ItemDataRole.DisplayRole), int(Qt.ItemDataRole.AccessibleTextRole)):
            return row.spoken
        return None

    def row(self, number: int) -> Row:
        """The row of that number."""
        return self._rows[number]

    def rows(self) -> tuple[Row, ...]:
        """All rows in the order shown."""
        return tuple(self._rows)

    def counts(self) -> dict[Weight, int]:
        """How many findings of each weight stand, cleared ones left out."""
        standing = [finding.weight for row in self._rows if not row.cleared for finding in row.all]
        return {weight: standing.count(weight) for weight in Weight}

    def _shown(self, change: Change) -> None:
        """A gesture's end puts the rows back into their order; moves leave all names as they were."""
        if not change.only_moves:
            self._names = None
        if self._at_start is not None and not self._open_yard.on_trial:
            self.refresh()

    def refresh(self) -> None:
        """Take up the yard's findings."""
        open_yard = self._open_yard
        fresh = self._in_words(open_yard.findings)
        if open_yard.on_trial:
            if self._at_start is None:
                self._at_start = {row.finding.key: row.said for row in self._rows}
            self._put(self._held(fresh))
        else:
            self._at_start = None
            self._put(fresh)

    def _in_words(self, findings: tuple[Finding, ...]) -> list[Row]:
        """The findings put into words; words of findings that are as before are taken over."""
        units = self._open_yard.units
        if self._names is None or units != self._units:
            self._names, self._units, self._said = names_of(self._open_yard.shown_yard), units, {}
        said: dict[tuple[Any, ...], tuple[Finding, Said]] = {}
        for finding in findings:
            before = self._said.get(finding.key)
            as_before = before is not None and before[0].figures == finding.figures
            words = before[1] if before is not None and as_before else say(finding, self._names, units)
            said[finding.key] = (finding, words)
        self._said = said
        return self._folded([Row(finding=finding, said=said[finding.key][1]) for finding in findings])

    def _folded(self, rows: list[Row]) -> list[Row]:
        """The rows with what is said of many plants alike on the card of the first."""
        groups = said_alike((row.finding, row.said.title) for row in rows)
        return [self._card_of([rows[number] for number in group]) for group in groups]

    def _card_of(self, group: list[Row]) -> Row:
        if len(group) == 1:
            return group[0]
        names, more = self._names or {}, tuple(row.finding for row in group[1:])
        things = [names.get(one.things[0], one.things[0]) for one in more]
        return evolve(group[0], more=more, likewise=tr("Likewise: {things}", things=_some_of(things)))

    def _held(self, fresh: list[Row]) -> list[Row]:
        """The rows of a running gesture: those shown keep their places, new ones come last."""
        start = self._at_start or {}
        found = {row.finding.key: row for row in fresh}
        kept: list[Row] = []
        for row in self._rows:
            now = found.pop(row.finding.key, None)
            if now is not None:
                kept.append(evolve(now, changed=now.said != start.get(row.finding.key)))
            elif row.finding.key in start:
                kept.append(evolve(row, cleared=True, changed=True))
        return kept + [evolve(row, changed=True) for row in found.values()]

    def _put(self, rows: list[Row]) -> None:
        """Show these rows with as few signals as do: what stays in place is only repainted."""
        old = [row.finding.key for row in self._rows]
        new = [row.finding.key for row in rows]
        if old == new:
            self._repaint(rows)
            return
        shared = 0
        while shared < min(len(old), len(new)) and old[shared] == new[shared]:
            shared += 1
        if shared == len(old):
            self._repaint(rows[:shared])
            self.beginInsertRows(QModelIndex(), shared, len(new) - 1)
            self._rows = rows
            self.endInsertRows()
            return
        self._reorder(rows)

    def _repaint(self, rows: list[Row]) -> None:
        changed = [n for n, (was, now) in enumerate(zip(self._rows, rows, strict=False)) if was != now]
        self._rows[: len(rows)] = rows
        for n in changed:
            self.dataChanged.emit(self.index(n), self.index(n))

    def _reorder(self, rows: list[Row]) -> None:
        """Put the rows into another order; the current row and the selection follow their finding."""
        self.layoutAboutToBeChanged.emit()
        before = self.persistentIndexList()
        keys = [self._rows[index.row()].finding.key for index in before]
        self._rows = rows
        place = {row.finding.key: n for n, row in enumerate(rows)}
        after = [self.index(place[key]) if key in place else QModelIndex() for key in keys]
        self.changePersistentIndexList(before, after)
        self.layoutChanged.emit()
