"""What came of a table of plants: how many were read, and every line left out or changed, with why."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QFileDialog,
    QHBoxLayout,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from yardplan.files.exchange.plant_table import PlantList, left_out_csv
from yardplan.language import tr, tr_n
from yardplan.window.dialogs.box import press_by_enter, roomy
from yardplan.window.panels.parts import button, label

_LINE, _WHY, _CELLS = range(3)
_SIZE = (680, 420)


class PlantListBox(QDialog):
    """The report; the plants are added when the person says so."""

    #: The plants are to be added.
    wanted = Signal()

    def __init__(self, found: PlantList, path: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Plants from {file}", file=path.name))
        self._found, self._path = found, path
        self.said = label(self._words(), "plain", wrap=True)
        self.lines = QTableWidget(len(found.report), 3)
        self.keep = button(tr("Save the lines left out…"), tip=tr("A table to mend and read in again"))
        self.add = button(tr_n("Add {n} planting", "Add {n} plantings", len(found.things)), "main")
        self.leave = button(tr("Cancel"))
        self.note = label("", "muted", wrap=True)
        self._fill()
        self._lay_out()
        self.add.clicked.connect(self._take)
        self.leave.clicked.connect(self.reject)
        self.keep.clicked.connect(self._ask_file)

    @property
    def left_out(self) -> int:
        """Lines that gave no plant."""
        return sum(not one.taken for one in self._found.report)

    def _words(self) -> str:
        found = self._found
        plants, rows, waiting = len(found.plantings), len(found.rows), len(found.waiting)
        parts = [tr_n("{n} plant was understood.", "{n} plants were understood.", plants)]
        if rows:
            parts.append(tr_n("{n} row was understood.", "{n} rows were understood.", rows))
        if waiting:
            parts.append(tr_n(
                "{n} plant has no place: it waits in a line below the lot.",
                "{n} plants have no place: they wait in a line below the lot.", waiting,
            ))
        if self.left_out:
            parts.append(tr_n("{n} line was left out.", "{n} lines were left out.", self.left_out))
        return " ".join(parts)

    def _fill(self) -> None:
        table = self.lines
        table.setAccessibleName(tr("Lines left out or changed"))
        table.setHorizontalHeaderLabels([tr("Line"), tr("Why"), tr("As it stands in the table")])
        table.verticalHeader().hide()
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        for row, one in enumerate(self._found.report):
            cells = ", ".join(cell.strip() for cell in one.cells if cell.strip())
            for column, text in ((_LINE, str(one.line)), (_WHY, one.why), (_CELLS, cells)):
                item = QTableWidgetItem(text)
                item.setToolTip(text)
                table.setItem(row, column, item)
        head = table.horizontalHeader()
        head.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        head.setSectionResizeMode(_LINE, QHeaderView.ResizeMode.ResizeToContents)
        head.setSectionResizeMode(_WHY, QHeaderView.ResizeMode.Stretch)
        head.setSectionResizeMode(_CELLS, QHeaderView.ResizeMode.Stretch)
        table.setVisible(bool(self._found.report))
        self.keep.setVisible(self.left_out > 0)
        self.add.setVisible(bool(self._found.things))

    def _lay_out(self) -> None:
        foot = QHBoxLayout()
        foot.addWidget(self.keep)
        foot.addStretch()
        foot.addWidget(self.leave)
        foot.addWidget(self.add)
        box = QVBoxLayout(self)
        box.setSpacing(8)
        box.addWidget(self.said)
        box.addWidget(self.lines, 1)
        box.addWidget(self.note)
        box.addLayout(foot)
        self.resize(roomy(self, *(_SIZE if self._found.report else (_SIZE[0] // 2, 0))))
        press_by_enter(self.add if self._found.things else self.leave)

    def _take(self) -> None:
        self.accept()
        self.wanted.emit()

    def _ask_file(self) -> None:
        name = str(self._path.with_name(tr("{name} left out.csv", name=self._path.stem)))
        path, _ = QFileDialog.getSaveFileName(self, tr("Save the lines left out"), name, "CSV (*.csv)")
        if path:
            self.save_left_out(Path(path))

    def save_left_out(self, path: Path) -> None:
        """Write the lines left out as a table, each with its number and why."""
        try:
            path.write_bytes(left_out_csv(self._found).encode("utf-8-sig"))
        except OSError as error:
            why = error.strerror or error
            self.note.setText(tr("{file} was not written: {why}", file=path.name, why=why))
        else:
            self.note.setText(tr("Written: {file}", file=path.name))
