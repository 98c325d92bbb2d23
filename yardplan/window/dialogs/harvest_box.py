"""The harvest beside the plan: what is picked when and how much, gluts and gaps, the first ten years."""

from __future__ import annotations

import datetime as dt

from PySide6.QtCore import Qt
from PySide6.QtGui import QHideEvent, QPainter, QPaintEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from yardplan.care.harvest import HarvestPlan, harvest_plan, plenty_words
from yardplan.drawing.style import on_white_paper
from yardplan.language import tr
from yardplan.sheets.document import Page
from yardplan.sheets.harvest_chart import harvest_pages
from yardplan.sheets.paper import Paper
from yardplan.sheets.surface import Surface
from yardplan.window.dialogs.box import BesideBox, closing_line, roomy
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.entry import TextEntry, number_reading
from yardplan.window.panels.parts import button, label
from yardplan.yard.change import Change

_SIZE = (960, 720)
_MOST_PERSONS = 1000.0
#: The sheet drawn: its width, its height without varieties and for each of them, millimetres.
_WIDE, _HEAD, _LINE, _MOST_LINES = 185.0, 62.0, 5.0, 40


class PageView(QWidget):
    """One sheet of paper as wide as there is room, drawn by the code that prints it."""

    def __init__(self, page: Page, words: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._page = page
        self.setAccessibleName(page.title)
        self.setAccessibleDescription(words)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.setFixedHeight(round(self.width() * self._page.paper.high / self._page.paper.wide))

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        with on_white_paper():
            painter.fillRect(self.rect(), "white")
            self._page.draw(Surface(painter, self.width() / self._page.paper.wide))
        painter.end()


class HarvestBox(BesideBox):
    """A year's harvest, for a household if one is given; follows the plan while it is seen."""

    def __init__(
        self, open_yard: OpenYard, parent: QWidget | None = None, *, today: dt.date | None = None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Harvest"))
        self._open_yard = open_yard
        self._year = (today or dt.date.today()).year
        self.plan: HarvestPlan | None = None
        self.year = label("", "heading")
        self.earlier = button("‹", name=tr("A year earlier"))
        self.later = button("›", name=tr("A year later"))
        reading = number_reading(0.5, _MOST_PERSONS, optional=True)
        self.persons = TextEntry(tr("People fed from the yard"), reading)
        self.persons.set_placeholder(tr("not given"))
        self.said = label("", "plain", wrap=True)
        self.pages: list[PageView] = []
        self._sheets = QVBoxLayout()
        self._lay_out()
        self.earlier.clicked.connect(lambda: self._go(-1))
        self.later.clicked.connect(lambda: self._go(1))
        self.persons.entered.connect(lambda *_: self.refresh())
        open_yard.shown.connect(self._shown)
        open_yard.loaded.connect(self._forget)

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        for part in (self.earlier, self.year, self.later):
            head.addWidget(part)
        head.addSpacing(18)
        head.addWidget(label(tr("People fed from the yard"), "muted"))
        head.addWidget(self.persons)
        head.addStretch()
        inside, area = QWidget(), QScrollArea()
        inside.setLayout(self._sheets)
        self._sheets.setContentsMargins(0, 0, 0, 0)
        area.setWidget(inside)
        area.setWidgetResizable(True)
        # The charts are as high as the width asks: a bar that comes and goes would change it each time.
        area.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        area.setAccessibleName(tr("Charts of the harvest"))
        box = QVBoxLayout(self)
        box.setSpacing(8)
        box.addLayout(head)
        box.addWidget(self.said)
        box.addWidget(area, 1)
        box.addLayout(closing_line(self))
        self.resize(roomy(self, *_SIZE))

    def _go(self, years: int) -> None:
        self._year += years
        self.refresh()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self.plan is None:
            self.refresh()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self.plan = None

    def _forget(self) -> None:
        self.plan = None
        if self.isVisible():
            self.refresh()

    def _shown(self, change: Change) -> None:
        if not (self._open_yard.on_trial or change.only_records or change.only_moves):
            self._forget()

    def refresh(self) -> None:
        """Reckon the harvest anew and draw it."""
        open_yard = self._open_yard
        self.plan = plan = harvest_plan(open_yard.survey, self._year, self.persons.value)
        self.year.setText(str(self._year))
        if plan.crops:
            self.said.setText(" ".join((*plenty_words(plan, open_yard.units), tr("Amounts are estimates."))))
        else:
            self.said.setText(tr("Nothing that is planted has a harvest that is known here."))
        for old in self.pages:
            self._sheets.removeWidget(old)
            old.deleteLater()
        name = open_yard.shown_yard.site.name
        # A sheet of the screen's own: small, so that words are large, and as high as its varieties need.
        paper = Paper("", _WIDE, _HEAD + _LINE * min(len(plan.crops), _MOST_LINES))
        pages = harvest_pages(plan, paper, open_yard.units, name)
        self.pages = [PageView(page, self.said.text()) for page in pages]
        for view in self.pages:
            self._sheets.addWidget(view)
