"""The figures that the checks measure against: ours, and this yard's own where a local rule wins."""

from __future__ import annotations

from typing import Any

from attrs import evolve
from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSortFilterProxyModel,
    Qt,
)
from PySide6.QtGui import QFont
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialogButtonBox,
    QHeaderView,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from yardplan.checks.rules import Rule, RuleError, shipped_figures
from yardplan.checks.wording import cited
from yardplan.language import decimals, later, tr
from yardplan.plants.pollen_range import SIZES
from yardplan.window.dialogs.box import BesideBox, press_by_enter, roomy
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.parts import Check, SearchLine, button, label
from yardplan.window.theme import font, scaled

COLUMNS = (later("Rule"), later("Ours"), later("Here"), later("Unit"))
RULE, OURS, HERE, UNIT = range(4)
#: How the units of the table are said, and how many shown ones make one of the table's.
_UNITS = {
    "share": "%", "C": "°C", "C difference": later("°C apart"), "kg/m2": later("kg per m²"), "litres": "L",
    "times height": later("× height"),
}
_FACTORS = {"share": 100.0}
#: How the names of pollen ranges begin.
_RANGES = ("pollen-best-", "pollen-outer-")
#: Two lines of a rule's words; the whole of it shows under the table.
_ROW_HEIGHT = 38
_Index = QModelIndex | QPersistentModelIndex


def rule_words(rule: Rule) -> str:
    """What a rule says; its name where it has no note. A pollen range begins with its kind of plant."""
    words = tr(rule.note) or rule.name.replace("-", " ").capitalize()
    for start in _RANGES:
        if rule.name.startswith(start):
            return tr("Pollen of {kind}: {rule}", kind=_kind_words(rule.name.removeprefix(start)), rule=words)
    return words


def _kind_words(tail: str) -> str:
    """`apple-semi-dwarf` as people say it: `apple, semi-dwarf`."""
    for size in sorted(SIZES, key=len, reverse=True):
        if tail.endswith(f"-{size}"):
            return f"{tr(tail.removesuffix(f'-{size}').replace('-', ' '))}, {tr(size)}"
    return tr("other kinds") if tail == "other" else tr(tail.replace("-", " "))


def unit_words(rule: Rule) -> str:
    """The unit as people say it: shares are shown in percent."""
    return tr(_UNITS.get(rule.unit, rule.unit))


def figure_words(rule: Rule, value: float) -> str:
    """A figure of a rule as shown, without its unit."""
    return decimals(f"{value * _FACTORS.get(rule.unit, 1.0):g}")


def range_words(rule: Rule) -> str:
    """What a figure may be: `0 to 80 %`."""
    return tr(
        "{low} to {high} {unit}",
        low=figure_words(rule, rule.low), high=figure_words(rule, rule.high), unit=unit_words(rule),
    )


def read_figure(rule: Rule, typed: str) -> float | None:
    """A local figure as typed, None to go back to ours. Raises RuleError with the allowed range."""
    text = typed.strip().replace(",", ".").replace("−", "-").removesuffix(unit_words(rule)).strip()
    if not text:
        return None
    try:
        value = float(text) / _FACTORS.get(rule.unit, 1.0)
    except ValueError:
        raise RuleError(tr("'{typed}' is not a number", typed=typed)) from None
    if not rule.low <= value <= rule.high:
        raise RuleError(tr("{figure} is outside {range}", figure=text, range=range_words(rule)))
    return value


class RuleRows(QAbstractTableModel):
    """All rules; the column `Here` is typed in."""

    def __init__(self, open_yard: OpenYard, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.rules = tuple(shipped_figures().values())
        #: What was wrong with the last figure typed.
        self.fault = ""

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self.rules)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(COLUMNS)

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = 0) -> Any:
        if orientation == Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return tr(COLUMNS[section])
        return None

    def flags(self, index: _Index) -> Qt.ItemFlag:
        plain = super().flags(index)
        return plain | Qt.ItemFlag.ItemIsEditable if index.column() == HERE else plain

    def local(self, row: int) -> float | None:
        """This yard's own figure for a rule, or None."""
        return self._open_yard.shown_yard.rules.get(self.rules[row].name)

    def data(self, index: _Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        if not index.isValid():
            return None
        rule, local = self.rules[index.row()], self.local(index.row())
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole):
            here = "" if local is None else figure_words(rule, local)
            return (rule_words(rule), figure_words(rule, rule.value), here, unit_words(rule))[index.column()]
        if role == Qt.ItemDataRole.ToolTipRole:
            return f"{rule_words(rule)}\n{cited(rule.source)}"
        if role == Qt.ItemDataRole.FontRole and local is not None:
            return QFont(font(bold=True))
        return None

    def setData(self, index: _Index, value: Any, role: int = int(Qt.ItemDataRole.EditRole)) -> bool:
        """Take a typed figure as one undo step; a figure out of range is refused."""
        rule = self.rules[index.row()]
        try:
            figure = read_figure(rule, str(value))
        except RuleError as error:
            self.fault = f"{rule_words(rule)}: {error}"
            return False
        self.fault = ""
        yard = self._open_yard.yard
        kept = {name: held for name, held in yard.rules.items() if name != rule.name}
        if figure is not None and figure != rule.value:
            kept[rule.name] = figure
        if kept != dict(yard.rules):
            self._open_yard.commit(tr("Change a local rule"), evolve(yard, rules=kept))
        return True

    def refresh(self) -> None:
        """Show what the yard holds now."""
        self.dataChanged.emit(self.index(0, HERE), self.index(len(self.rules) - 1, HERE))


class _Found(QSortFilterProxyModel):
    """Rules in which the words are found; only local ones where asked for."""

    only_local = False

    def filterAcceptsRow(self, row: int, parent: _Index) -> bool:
        rows = self.sourceModel()
        assert isinstance(rows, RuleRows)
        if self.only_local and rows.local(row) is None:
            return False
        return bool(super().filterAcceptsRow(row, parent))

    def show_only_local(self, only: bool) -> None:
        self.only_local = only
        self.invalidate()


class LocalRules(BesideBox):
    """Type a figure under `Here` and the checks use it at once; empty it to go back to ours."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Local rules"))
        self.resize(roomy(self, 680, 520))
        self.rows = RuleRows(open_yard, self)
        self.found = _Found(self)
        self.found.setSourceModel(self.rows)
        self.found.setFilterCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.found.setFilterKeyColumn(RULE)
        self.search = SearchLine(tr("Find a rule: spacing, septic, sun, pollen…"))
        self.search.setAccessibleName(tr("Find a rule"))
        self.only_local = Check(tr("Only this yard's own"))
        self.table = self._made_table()
        self.fault = label("", "fault", wrap=True)
        self.source = label("", "small", wrap=True)
        self.reset = button(tr("Back to ours"), tip=tr("Forget this yard's figure for the chosen rule"))
        self._lay_out()
        self.search.textChanged.connect(self.found.setFilterFixedString)
        self.only_local.toggled.connect(self.found.show_only_local)
        self.table.selectionModel().currentRowChanged.connect(self._show_source)
        self.table.itemDelegate().closeEditor.connect(self._show_fault)
        self.reset.clicked.connect(self._reset)
        open_yard.shown.connect(self._yard_changed)

    def _made_table(self) -> QTableView:
        table = QTableView()
        table.setAccessibleName(tr("Rules and this yard's own figures"))
        table.setModel(self.found)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setTabKeyNavigation(False)
        table.setShowGrid(False)
        table.setWordWrap(True)
        table.verticalHeader().hide()
        table.verticalHeader().setDefaultSectionSize(scaled(_ROW_HEIGHT))
        header = table.horizontalHeader()
        header.setHighlightSections(False)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(RULE, QHeaderView.ResizeMode.Stretch)
        for column, width in ((OURS, 64), (HERE, 74), (UNIT, 84)):
            header.resizeSection(column, max(scaled(width), header.sectionSizeHint(column)))
        return table

    def _lay_out(self) -> None:
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.addButton(self.reset, QDialogButtonBox.ButtonRole.ResetRole)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(14, 12, 14, 12)
        box.addWidget(
            label(
                tr("Where your adviser or the law gives another figure, type it under Here: it wins."),
                "muted",
            )
        )
        for part in (self.search, self.only_local, self.table, self.fault, self.source, buttons):
            box.addWidget(part)
        box.setStretch(3, 1)
        press_by_enter(buttons.button(QDialogButtonBox.StandardButton.Close))

    def _show_source(self, index: QModelIndex, *_: object) -> None:
        rule = self.rows.rules[self.found.mapToSource(index).row()] if index.isValid() else None
        self.source.setText("" if rule is None else (
            tr(
                "{rule}. Allowed here: {range}. Source of ours: {source}",
                rule=rule_words(rule), range=range_words(rule), source=cited(rule.source),
            )
        ))

    def _show_fault(self, *_: object) -> None:
        self.fault.setText(self.rows.fault)

    def _reset(self) -> None:
        index = self.table.currentIndex()
        if index.isValid():
            row = self.found.mapToSource(index).row()
            self.rows.setData(self.rows.index(row, HERE), "")

    def _yard_changed(self, change: Any) -> None:
        if "rules" in change.whole:
            self.rows.refresh()
            if self.found.only_local:
                self.found.invalidate()
