"""The box that makes sheets: which, on what paper and scale; save as PDF, SVG or PNG, or print."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable
from pathlib import Path

from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QFileDialog,
    QGridLayout,
    QHBoxLayout,
    QProgressBar,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from yardplan.language import later, tr, tr_n
from yardplan.sheets.document import Document
from yardplan.sheets.paper import PAPERS, SheetError, usual_paper
from yardplan.sheets.titles import sheet_words
from yardplan.window.beside_yard import beside
from yardplan.window.dialogs.box import BesideBox, close_button, press_by_enter, roomy
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.entry import TextEntry, number_reading
from yardplan.window.panels.parts import Check, Combo, button, label
from yardplan.window.sheet_maker import SheetWish, Stopped, make, write

_SCALES = (
    ("fit", later("best fit")), ("1:50", "1:50"), ("1:100", "1:100"), ("1:200", "1:200"),
    ("1/4 in", later("1/4 in to the foot")), ("1/8 in", later("1/8 in to the foot")),
    ("1in=10ft", later("1 in to 10 ft")), ("1in=20ft", later("1 in to 20 ft")),
)
_FILES = later("PDF (*.pdf);;SVG, one file a page (*.svg);;PNG, one file a page (*.png)")
_USUAL = ("plan", "schedule", "key")
_YEARS_AHEAD = 5
_MOST_PERSONS = 1000.0


class SheetBox(BesideBox):
    """Sheets to choose, and what is done with them."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Sheets"))
        self._open_yard = open_yard
        self._stop = False
        #: True once sheets were written or printed.
        self.made = False
        self.choices = {name: Check(words) for name, words in sheet_words().items()}
        self.paper, self.scale, self.year = Combo(), Combo(), Combo()
        eaters = number_reading(0.5, _MOST_PERSONS, optional=True)
        self.persons = TextEntry(tr("People fed from the yard"), eaters)
        self.persons.set_placeholder(tr("not given"))
        self.marks = Check(tr("Conflicts and cautions on the plan"))
        self.every, self.none = button(tr("All"), "link"), button(tr("None"), "link")
        self.save = button(tr("Save…"), "main", tip=tr("PDF, SVG or PNG, true to scale"))
        self.printing = button(
            tr("Print…"), tip=tr("Print at 100 percent: the bar on the plan must measure 100 mm")
        )
        self.cancel = button(tr("Stop"), name=tr("Stop making sheets"))
        self.bar = QProgressBar()
        self.said = label("", "muted", wrap=True)
        self._fill()
        self._lay_out()
        self._listen()
        self._busy(False)

    def _fill(self) -> None:
        for name in _USUAL:
            self.choices[name].setChecked(True)
        for name in PAPERS:
            self.paper.addItem(name, name)
        self.paper.setCurrentText(usual_paper(self._open_yard.units).name)
        for typed, words in _SCALES:
            self.scale.addItem(tr(words), typed)
        this = dt.date.today().year
        for year in range(this, this + _YEARS_AHEAD):
            self.year.addItem(str(year), year)
        names = (
            (self.paper, tr("Paper")),
            (self.scale, tr("Scale")),
            (self.year, tr("Year of care and harvest")),
        )
        for part, name in names:
            part.setAccessibleName(name)
        self.bar.setRange(0, 100)
        self.bar.setAccessibleName(tr("How far the sheets are"))

    def _lay_out(self) -> None:
        grid, foot, links = QGridLayout(), QHBoxLayout(), QHBoxLayout()
        for number, choice in enumerate(self.choices.values()):
            grid.addWidget(choice, number // 2, number % 2)
        links.addWidget(self.every)
        links.addWidget(self.none)
        links.addStretch()
        fields = QGridLayout()
        rows: tuple[tuple[str, QWidget], ...] = (
            (tr("Paper"), self.paper),
            (tr("Scale of the plan"), self.scale),
            (tr("Care and harvest of"), self.year),
            (tr("People fed from the yard"), self.persons),
        )
        for number, (words, part) in enumerate(rows):
            fields.addWidget(label(words, "muted"), number, 0)
            fields.addWidget(part, number, 1)
        fields.setColumnStretch(1, 1)
        foot.addWidget(self.save)
        foot.addWidget(self.printing)
        foot.addStretch()
        foot.addWidget(self.cancel)
        foot.addWidget(close_button(self))
        box = QVBoxLayout(self)
        box.setSpacing(8)
        box.addLayout(grid)
        box.addLayout(links)
        box.addLayout(fields)
        box.addWidget(self.marks)
        box.addLayout(foot)
        box.addWidget(self.bar)
        box.addWidget(self.said)
        box.addStretch()
        self.resize(roomy(self, 430, 400))
        press_by_enter(self.save)

    def _listen(self) -> None:
        self.every.clicked.connect(lambda: self._tick(True))
        self.none.clicked.connect(lambda: self._tick(False))
        self.save.clicked.connect(self._ask_file)
        self.printing.clicked.connect(self._ask_printer)
        self.cancel.clicked.connect(self._stop_now)

    def _tick(self, on: bool) -> None:
        for choice in self.choices.values():
            choice.setChecked(on)

    def _busy(self, busy: bool) -> None:
        parts: tuple[QPushButton, ...] = (self.save, self.printing)
        for part in parts:
            part.setEnabled(not busy)
        self.cancel.setVisible(busy)
        self.bar.setVisible(busy)

    def _stop_now(self) -> None:
        self._stop = True

    @property
    def wish(self) -> SheetWish:
        """What is ticked and chosen."""
        return SheetWish(
            what=tuple(name for name, choice in self.choices.items() if choice.isChecked()),
            paper=self.paper.currentData(), scale=self.scale.currentData(), year=self.year.currentData(),
            marks=self.marks.isChecked(), persons=self.persons.value,
        )

    def _ask_file(self) -> None:
        name = beside(self._open_yard, f"{self._open_yard.shown_yard.site.name}.pdf")
        path, kind = QFileDialog.getSaveFileName(self, tr("Save sheets"), name, tr(_FILES))
        if path:
            ending = "." + kind.rpartition("*.")[2].rstrip(")") if kind else ".pdf"
            self.save_to(Path(path) if Path(path).suffix else Path(path).with_suffix(ending))

    def save_to(self, path: Path) -> None:
        """Make the sheets and write them; what happened is said below the buttons."""

        def finish(document: Document) -> str:
            paths = write(document, path, self._told)
            if len(paths) == 1:
                return tr("Written: {name}", name=paths[0].name)
            return tr_n(
                "Written: {name} and {n} more", "Written: {name} and {n} more", len(paths) - 1,
                name=paths[0].name,
            )

        self._run(finish)

    def _ask_printer(self) -> None:
        from PySide6.QtPrintSupport import QPrintDialog, QPrinter

        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        if QPrintDialog(printer, self).exec() == QDialog.DialogCode.Accepted:
            self.print_on(printer)

    def print_on(self, printer: object) -> None:
        """Make the sheets and print them on a QPrinter."""
        from PySide6.QtPrintSupport import QPrinter

        from yardplan.sheets.printing import print_document

        assert isinstance(printer, QPrinter)

        def finish(document: Document) -> str:
            print_document(document, printer, self._told)
            return tr_n(
                "Sent to the printer: {n} page. Print at 100 percent, not to fit.",
                "Sent to the printer: {n} pages. Print at 100 percent, not to fit.", len(document.pages),
            )

        self._run(finish)

    def _run(self, finish: Callable[[Document], str]) -> None:
        """Make the sheets, then write or print them; stoppable between any two steps."""
        self._stop = False
        self._busy(True)
        self.said.setText("")
        try:
            said = finish(make(self._open_yard, self.wish, self._told))
            self.made = True
        except Stopped:
            said = tr("Stopped: nothing more was written.")
        except SheetError as error:
            said = tr("No sheets were made: {fault}", fault=error)
        finally:
            self._busy(False)
        self.said.setText(said)

    def _told(self, share: float) -> None:
        """Show how far it is and keep the window alive; raises Stopped when Stop was pressed."""
        self.bar.setValue(round(share * 100))
        QApplication.processEvents()
        if self._stop:
            raise Stopped

    def reject(self) -> None:
        """Esc or the closing cross: work that runs is stopped first."""
        self._stop = True
        super().reject()
