"""What a variety must meet to be listed: ticks, ripening, and how wide it may grow."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QWidget

from yardplan.language import later, tr
from yardplan.plants.chill import site_chill
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.catalogue_filter import Asked
from yardplan.window.panels.entry import TextEntry, length_reading
from yardplan.window.panels.parts import Check, Combo

#: Filters that are ticked: field of Asked, words, hint.
TICKS = (
    (
        "hardy",
        later("Hardy here"),
        later("Varieties that live through the site's winters; needs the site's zone"),
    ),
    ("alone", later("Needs no partner"), later("Varieties that set fruit by themselves")),
    (
        "chilled",
        later("Chill is met here"),
        later("Varieties whose winter chill the site gives; needs its monthly means"),
    ),
    ("sunny", later("Sun at a plant"), later("Kinds content with the sun at the selected plant")),
    ("container", later("For pots"), later("Varieties that can live in a container")),
    ("thornless", later("Thornless"), later("Canes without thorns")),
)
_RIPENS = (
    ("", later("any ripening")),
    ("early", later("early ripening")),
    ("mid", later("mid ripening")),
    ("late", later("late ripening")),
)
#: Widths that can be asked for, metres.
_WIDTHS = (0.3, 30.0)


class FilterBox(QWidget):
    """The filters under the search line."""

    changed = Signal()

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.ticks: dict[str, Check] = {}
        self.ripens = Combo()
        self.ripens.setAccessibleName(tr("When it ripens"))
        for value, words in _RIPENS:
            self.ripens.addItem(tr(words), value)
        self._units = open_yard.units
        self.widest = TextEntry(tr("No wider than"), length_reading(*_WIDTHS, self._units, optional=True))
        self.widest.set_placeholder(tr("no wider than…"))
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(4)
        grid.setVerticalSpacing(0)
        for n, (name, words, tip) in enumerate(TICKS):
            tick = self.ticks[name] = Check(tr(words))
            tick.setToolTip(tr(tip))
            tick.setAccessibleName(tr(words))
            tick.toggled.connect(self.changed)
            grid.addWidget(tick, n // 2, n % 2)
        grid.addWidget(self.ripens, len(TICKS) // 2, 0)
        grid.addWidget(self.widest, len(TICKS) // 2, 1)
        self.ripens.activated.connect(self.changed)
        self.widest.entered.connect(lambda _value: self.changed.emit())
        self.widest.tried.connect(lambda _value: self.changed.emit())

    def spot_hours(self) -> float | None:
        """Sun hours a day at the one plant selected, or None."""
        light, chosen = self._open_yard.light, self._open_yard.selection
        if light is None or len(chosen) != 1:
            return None
        found = light.plants.get(next(iter(chosen)))
        return None if found is None else found.hours

    def refresh(self) -> None:
        """Offer only what can be judged: a filter whose fact is missing is off."""
        site = self._open_yard.shown_yard.site
        if site.units != self._units:
            self._units = site.units
            self.widest.set_reading(length_reading(*_WIDTHS, site.units, optional=True))
        hours = self.spot_hours()
        possible = {
            "hardy": site.zone is not None,
            "chilled": site_chill(site) is not None,
            "sunny": hours is not None,
        }
        words = tr("Sun at a plant") if hours is None else tr("For {hours} h of sun", hours=f"{hours:.1f}")
        self.ticks["sunny"].setText(words)
        self.ticks["sunny"].setAccessibleName(words)
        for name, can in possible.items():
            tick = self.ticks[name]
            tick.setEnabled(can)
            if not can and tick.isChecked():
                tick.blockSignals(True)
                tick.setChecked(False)
                tick.blockSignals(False)

    def asked(self, words: str, crop: str) -> Asked:
        """What all fields ask for now."""
        on = {name: tick.isChecked() for name, tick in self.ticks.items()}
        return Asked(
            words=words, crop=crop, hardy=on["hardy"], alone=on["alone"], chilled=on["chilled"],
            hours=self.spot_hours() if on["sunny"] else None, container=on["container"],
            thornless=on["thornless"], ripening=self.ripens.currentData(), widest=self._widest(),
        )

    def _widest(self) -> float | None:
        typed = self.widest.value if not self.widest.line.isModified() else self.widest.typed()
        return typed if isinstance(typed, float) else None

    def number(self) -> int:
        """How many filters are in force."""
        ticked = sum(tick.isChecked() for tick in self.ticks.values())
        return ticked + bool(self.ripens.currentData()) + (self._widest() is not None)
