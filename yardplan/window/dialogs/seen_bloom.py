"""Bloom days seen in this yard: one seen date is worth more than all reckoning."""

from __future__ import annotations

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from yardplan.language import tr
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.days import say_day
from yardplan.window.panels.entry import TextEntry, day_reading
from yardplan.window.panels.field_entries import PlantEntry
from yardplan.window.panels.parts import button, label
from yardplan.yard import edits


class SeenBloom(QWidget):
    """The seen dates, each with a button to take it away, and two fields to add one."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._shown: tuple[tuple[str, str], ...] = ()
        self.list = QVBoxLayout()
        self.list.setSpacing(2)
        self.plant = PlantEntry(tr("Variety seen in bloom"), open_yard.catalogue, optional=True)
        self.plant.set_placeholder(tr("variety"))
        self.day = TextEntry(tr("Day of full bloom"), day_reading())
        self.day.set_placeholder(tr("full bloom, e.g. 2 May"))
        self.add_button = button(tr("Add"), name=tr("Add the bloom day"))
        line = QHBoxLayout()
        line.setSpacing(6)
        line.addWidget(self.plant, 3)
        line.addWidget(self.day, 2)
        line.addWidget(self.add_button)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(4)
        box.addWidget(
            label(
                tr("A day on which you saw most flowers open corrects all other bloom dates."),
                "muted",
                wrap=True,
            )
        )
        box.addLayout(self.list)
        box.addLayout(line)
        self.add_button.clicked.connect(self.add)
        self.refresh()

    def refresh(self) -> None:
        """Show what the site holds."""
        seen = self._open_yard.shown_yard.site.observed_bloom
        if seen == self._shown:
            return
        self._shown = seen
        while (item := self.list.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for number, (name, day) in enumerate(seen):
            self.list.addWidget(self._line(number, name, day))

    def _line(self, number: int, name: str, day: str) -> QWidget:
        holder = QWidget()
        line = QHBoxLayout(holder)
        line.setContentsMargins(0, 0, 0, 0)
        crop, _, cultivar = name.partition(":")
        variety = cultivar or tr(crop)
        line.addWidget(label(f"{variety}: {say_day(day)}"), 1)
        away = button(tr("Remove"), "link", name=tr("Remove the bloom day of {variety}", variety=variety))
        away.clicked.connect(lambda: self._remove(number))
        line.addWidget(away)
        return holder

    def add(self) -> None:
        """Keep the variety and day that are typed in."""
        self.plant.finish()
        self.day.finish()
        key, day = self.plant.value, self.day.value
        if key is None or day is None:
            missing = self.plant if key is None else self.day
            missing.show_fault(tr("a variety is needed") if key is None else tr("a day is needed"))
            return
        kept = tuple(pair for pair in self._open_yard.yard.site.observed_bloom if pair[0] != str(key))
        self._commit(tr("Add bloom day of {variety}", variety=key.cultivar), (*kept, (str(key), day)))
        self.plant.show_value(None)
        self.day.show_value(None)

    def _remove(self, number: int) -> None:
        seen = self._open_yard.yard.site.observed_bloom
        self._commit(tr("Remove a bloom day"), seen[:number] + seen[number + 1 :])

    def _commit(self, text: str, seen: tuple[tuple[str, str], ...]) -> None:
        self._open_yard.commit(text, edits.set_site(self._open_yard.yard, observed_bloom=seen))
        self.refresh()
