"""Plans side by side as rows of a table: a small drawing, then counts; what differs is set in bold."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from attrs import frozen
from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, QSize, Qt
from PySide6.QtGui import QFont, QPixmap

from yardplan.care.outcome import SUNS, Outcome, Sun
from yardplan.checks.finding import Weight
from yardplan.checks.run import CHECKS
from yardplan.language import later, thousands, tr
from yardplan.plants.fruit_set import EXPECTED_WORDS

_Index = QModelIndex | QPersistentModelIndex
#: The drawing of each plan, pixels.
PICTURE = QSize(236, 168)

_WEIGHTS: dict[Weight, str] = {
    Weight.CONFLICT: later("Conflicts"), Weight.CAUTION: later("Cautions"), Weight.ADVICE: later("Advice"),
}
_SUNS: dict[Sun, str] = {
    "best": later("as they do best"), "enough": later("enough"), "under": later("under their need"),
    "far under": later("far too little"),
}


@frozen
class Line:
    """One row: its words, a value for each plan, whether it heads a part, and whether the plans differ."""

    words: str
    values: tuple[str, ...]
    head: bool = False

    @property
    def differs(self) -> bool:
        """True when not all plans have the same."""
        return len(set(self.values)) > 1


def lines_of(outcomes: Sequence[Outcome]) -> list[Line]:
    """The rows for some plans, what decides first; what none of them has is left out."""
    lines: list[Line] = []
    for weight, words in _WEIGHTS.items():
        lines += _findings(outcomes, weight, tr(words))
    lines += _sun(outcomes)
    lines += _fruit(outcomes)
    return [*lines, *_plants(outcomes), *_shopping(outcomes)]


def _row(words: str, values: Iterable[int], *, head: bool = False) -> Line:
    return Line(words, tuple(str(value) for value in values), head)


def _plants(outcomes: Sequence[Outcome]) -> Iterable[Line]:
    yield _row(tr("Plants"), (sum(one.plants.values()) for one in outcomes), head=True)
    for kind in dict.fromkeys(kind for one in outcomes for kind in one.plants):
        yield _row(tr(kind), (one.plants.get(kind, 0) for one in outcomes))


def _findings(outcomes: Sequence[Outcome], weight: Weight, words: str) -> Iterable[Line]:
    yield _row(
        words, (sum(n for key, n in one.findings.items() if key[0] is weight) for one in outcomes), head=True
    )
    for check in CHECKS:
        counts = [one.findings.get((weight, check.name), 0) for one in outcomes]
        if any(counts):
            yield _row(tr(check.title), counts)


def _sun(outcomes: Sequence[Outcome]) -> Iterable[Line]:
    if not any(one.sun for one in outcomes):
        return
    yield Line(tr("Sun on plants, rows and beds"), tuple("" for _ in outcomes), head=True)
    for sun in SUNS:
        counts = [one.sun.get(sun, 0) for one in outcomes]
        if any(counts):
            yield _row(tr(_SUNS[sun]), counts)


def _fruit(outcomes: Sequence[Outcome]) -> Iterable[Line]:
    if not any(one.fruit for one in outcomes):
        return
    yield Line(tr("Fruit set"), tuple("" for _ in outcomes), head=True)
    for expected, words in EXPECTED_WORDS.items():
        counts = [one.fruit.get(expected, 0) for one in outcomes]
        if any(counts):
            yield _row(tr(words), counts)


def _shopping(outcomes: Sequence[Outcome]) -> Iterable[Line]:
    yield _row(tr("Lines to buy"), (one.lines for one in outcomes), head=True)
    if any(one.total is not None for one in outcomes):
        costs = (
            "" if one.total is None else f"{one.currency} {thousands(one.total, 2)}".strip()
            for one in outcomes
        )
        yield Line(tr("cost of those with a price"), tuple(costs))


class VariantRows(QAbstractTableModel):
    """A column of words, then one for each plan compared; the first row holds their drawings."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.names: tuple[str, ...] = ()
        self.lines: list[Line] = []
        self._all: list[Line] = []
        self._pictures: tuple[QPixmap, ...] = ()
        self._only_differing = False

    def show_plans(
        self, names: Sequence[str], outcomes: Sequence[Outcome], pictures: Sequence[QPixmap]
    ) -> None:
        """Show these plans side by side."""
        self.beginResetModel()
        self.names, self._pictures = tuple(names), tuple(pictures)
        self._all = lines_of(outcomes) if outcomes else []
        self.lines = self._chosen()
        self.endResetModel()

    def show_differing(self, only: bool) -> None:
        """Leave out rows in which all plans have the same, or show all."""
        self.beginResetModel()
        self._only_differing = only
        self.lines = self._chosen()
        self.endResetModel()

    def _chosen(self) -> list[Line]:
        """The rows to show: heads of parts stay where anything beneath them does."""
        if not self._only_differing:
            return self._all
        kept: list[Line] = []
        head: Line | None = None
        for line in self._all:
            head = line if line.head else head
            if not line.differs:
                continue
            if head is not None and head is not line and head not in kept:
                kept.append(head)
            kept.append(line)
        return kept

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() or not self.names else len(self.lines) + 1

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self.names) + 1

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = int(Qt.ItemDataRole.DisplayRole)
    ) -> Any:
        if orientation != Qt.Orientation.Horizontal or role != Qt.ItemDataRole.DisplayRole:
            return None
        return self.names[section - 1] if section else ""

    def data(self, index: _Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        if not index.isValid():
            return None
        row, plan = index.row(), index.column() - 1
        if row == 0:
            return self._pictured(plan, role)
        line = self.lines[row - 1]
        return self._words(line, role) if plan < 0 else self._value(line, plan, role)

    def _words(self, line: Line, role: int) -> Any:
        if role == Qt.ItemDataRole.DisplayRole:
            return line.words if line.head else f"    {line.words}"
        if role in (Qt.ItemDataRole.AccessibleTextRole, Qt.ItemDataRole.ToolTipRole):
            return line.words
        return _font(bold=line.head) if role == Qt.ItemDataRole.FontRole else None

    def _value(self, line: Line, plan: int, role: int) -> Any:
        if role == Qt.ItemDataRole.DisplayRole:
            return line.values[plan]
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{self.names[plan]}, {line.words}: {line.values[plan]}"
        if role == Qt.ItemDataRole.FontRole:
            return _font(bold=line.differs)
        return int(Qt.AlignmentFlag.AlignCenter) if role == Qt.ItemDataRole.TextAlignmentRole else None

    def _pictured(self, plan: int, role: int) -> Any:
        if plan < 0:
            return None
        if role == Qt.ItemDataRole.DecorationRole:
            return self._pictures[plan]
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return tr("Drawing of {name}", name=self.names[plan])
        return None


def _font(*, bold: bool) -> QFont:
    font = QFont()
    font.setBold(bold)
    return font
