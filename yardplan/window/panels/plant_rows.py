"""Everything on the plan as rows of a table: key, name with kind, and the findings about it."""

from __future__ import annotations

from collections import Counter
from typing import Any

from attrs import frozen
from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRectF,
    QSortFilterProxyModel,
    Qt,
)
from PySide6.QtGui import QIcon, QPainter, QPixmap

from yardplan.checks.finding import Finding, Weight
from yardplan.checks.ordering import natural
from yardplan.language import later, tr, tr_n
from yardplan.window.open_yard import OpenYard
from yardplan.window.pacing import Paced
from yardplan.window.panels.finding_counts import count_text
from yardplan.window.panels.names import kind_word
from yardplan.window.panels.parts import SIGN_OF, draw_sign
from yardplan.window.theme import Colours, scaled
from yardplan.yard.change import Change
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Thing

COLUMNS = (later("Key"), later("Name"), later("Findings"))
KEY, NAME, FINDINGS = range(3)
#: Role under which each cell hands out what it is sorted by.
SORT_ROLE = int(Qt.ItemDataRole.UserRole) + 1
_ALL = tuple(Weight)
#: Side of a sign before a count, pixels.
SIGN = 14


@frozen
class Line:
    """One thing or group as listed; `group` the name of the group a thing is in, `members` of a group."""

    id: str
    name: str
    kind: str
    group: str = ""
    members: tuple[str, ...] = ()

    @property
    def key(self) -> str:
        """What stands in the column of keys: groups have none."""
        return "" if self.members else self.id

    @property
    def words(self) -> str:
        """Name and kind, the kind only where the name does not tell it; then the group."""
        own = self._own_words
        return tr("{thing} \N{MIDDLE DOT} {group}", thing=own, group=self.group) if self.group else own

    @property
    def _own_words(self) -> str:
        if self.members:
            return tr("{group}: {members}", group=self.name, members=", ".join(self.members))
        return self.name if self.kind.casefold() in self.name.casefold() else f"{self.name}, {self.kind}"


def line_of(thing: Thing, group: str = "") -> Line:
    """A thing as listed: a plant by its variety and kind, the rest by name; with the group it is in."""
    key = getattr(thing, "plant", None)
    if isinstance(key, PlantKey) and not hasattr(thing, "outline"):
        return Line(thing.id, key.cultivar, tr(key.crop), group)
    kind = kind_word(thing)
    name = getattr(thing, "name", "") or getattr(thing, "cultivar", None) or getattr(thing, "text", "")
    return Line(thing.id, name or kind[:1].upper() + kind[1:], kind, group)


def sign_icon(weight: Weight, colours: Colours) -> QIcon:
    """The sign of a weight as an icon."""
    picture = QPixmap(2 * scaled(SIGN), 2 * scaled(SIGN))
    picture.setDevicePixelRatio(2.0)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    draw_sign(painter, QRectF(1, 1, scaled(SIGN) - 2, scaled(SIGN) - 2), SIGN_OF[weight], colours)
    painter.end()
    icon = QIcon(picture)
    icon.addPixmap(picture, QIcon.Mode.Selected)
    return icon


_Index = QModelIndex | QPersistentModelIndex


class PlantRows(QAbstractTableModel):
    """Follows the open yard; moves change nothing here, so a drag costs nothing."""

    def __init__(self, open_yard: OpenYard, colours: Colours, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._lines: list[Line] = []
        self._tally: dict[str, Counter[Weight]] = {}
        self.set_colours(colours)
        open_yard.shown.connect(self._shown)
        self._pace = Paced(open_yard, self._count, self)
        open_yard.findings_changed.connect(self._pace.soon)
        self._fill()

    def set_colours(self, colours: Colours) -> None:
        """Draw the signs for another scheme."""
        self._icons = {weight: sign_icon(weight, colours) for weight in Weight}

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self._lines)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(COLUMNS)

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = 0) -> Any:
        if orientation == Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return tr(COLUMNS[section])
        return None

    def data(self, index: _Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        if not index.isValid():
            return None
        line, column = self._lines[index.row()], index.column()
        tally = self._tally.get(line.id, Counter())
        if role == Qt.ItemDataRole.DisplayRole:
            return self._text(line, column, tally)
        if role == SORT_ROLE:
            return (line.key, line.name, [tally[w] for w in _ALL])[column]
        if role == Qt.ItemDataRole.DecorationRole and column == FINDINGS:
            return next((self._icons[w] for w in _ALL if tally[w]), None)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return self.spoken(line) if column == KEY else self._text(line, column, tally)
        if role == Qt.ItemDataRole.ToolTipRole:
            return self.spoken(line)
        return None

    def _text(self, line: Line, column: int, tally: Counter[Weight]) -> str:
        if column == FINDINGS:
            return next((str(tally[w]) for w in _ALL if tally[w]), "")
        return line.key if column == KEY else line.words

    def spoken(self, line: Line) -> str:
        """A whole row in words."""
        if line.members:
            many = len(line.members)
            return tr_n(
                "{group}, a group of {n} thing: {members}", "{group}, a group of {n} things: {members}",
                many, group=line.name, members=", ".join(line.members),
            )
        tally = self._tally.get(line.id, Counter())
        told = ", ".join(count_text(w, tally[w]) for w in _ALL if tally[w]) or tr("nothing against it")
        return f"{line.id}, {line.name}, {line.kind}: {told}"

    def ids_of(self, row: int) -> tuple[str, ...]:
        """The id of the thing in that row, or of all members of the group."""
        line = self._lines[row]
        return line.members or (line.id,)

    def rows_of(self, ids: frozenset[str]) -> list[int]:
        """The rows of things, and of the groups that are whole among them."""
        return [number for number, _ in enumerate(self._lines) if ids.issuperset(self.ids_of(number))]

    def _shown(self, change: Change) -> None:
        if not change.only_moves:
            self._fill()

    def _fill(self) -> None:
        yard = self._open_yard.shown_yard
        lines = [Line("lot", tr("Lot line"), tr("lot"))] if yard.lot else []
        lines += [Line(f"group {g.name}", g.name, tr("group"), members=g.members) for g in yard.groups]
        homes = {key: group.name for group in yard.groups for key in group.members}
        lines += [line_of(thing, homes.get(thing.id, "")) for thing in yard.things()]
        if lines == self._lines:
            return
        if [line.id for line in lines] == [line.id for line in self._lines]:
            self._lines = lines
            self.dataChanged.emit(self.index(0, 0), self.index(len(lines) - 1, FINDINGS))
            return
        self.beginResetModel()
        self._lines = lines
        self._tally = tallied(self._open_yard.findings)
        self.endResetModel()

    def _count(self) -> None:
        tally = tallied(self._open_yard.findings)
        changed = [n for n, line in enumerate(self._lines) if tally.get(line.id) != self._tally.get(line.id)]
        self._tally = tally
        for row in changed:
            self.dataChanged.emit(self.index(row, FINDINGS), self.index(row, FINDINGS))


def tallied(findings: tuple[Finding, ...]) -> dict[str, Counter[Weight]]:
    """How many findings of each weight concern each thing."""
    tally: dict[str, Counter[Weight]] = {}
    for finding in findings:
        for thing in finding.things:
            tally.setdefault(thing, Counter())[finding.weight] += 1
    return tally


class SortedRows(QSortFilterProxyModel):
    """The rows in the order asked for: keys with A2 before A10, names by letter, most findings first."""

    def lessThan(self, left: _Index, right: _Index) -> bool:
        one, other = left.data(SORT_ROLE), right.data(SORT_ROLE)
        if left.column() == FINDINGS:
            return bool(one > other)
        if left.column() == KEY:
            return natural(one) < natural(other)
        return bool(one.casefold() < other.casefold())
