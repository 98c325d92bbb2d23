"""Twelve monthly means to type or correct; they count once all twelve are there."""

from __future__ import annotations

from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget

from yardplan.language import decimals, later, tr, tr_n
from yardplan.units import System
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.days import MONTHS, SHORT_MONTHS
from yardplan.window.panels.entry import EntryError, Reading, TextEntry, within
from yardplan.window.panels.parts import label
from yardplan.yard import edits
from yardplan.yard.site import Origin, Site

#: Monthly means that any place on earth stays within, degrees C.
_LOW, _HIGH = -50.0, 45.0


def degrees_reading(units: System) -> Reading:
    """Temperatures in the yard's units, degrees C inside; empty is None."""
    imperial = units == "imperial"

    def say(celsius: float) -> str:
        shown = f"{celsius * 1.8 + 32 if imperial else celsius:.1f}".removesuffix(".0")
        return f"{'0' if shown == '-0' else decimals(shown)} {'°F' if imperial else '°C'}"

    def read(typed: str) -> float | None:
        text = typed.strip().lower().rstrip("cf").rstrip("° ").replace(",", ".").replace("−", "-")
        if not text:
            return None
        try:
            value = float(text)
        except ValueError:
            raise EntryError(tr("'{typed}' is not a temperature", typed=typed)) from None
        return within((value - 32) / 1.8 if imperial else value, _LOW, _HIGH, say)

    return Reading(read, lambda value: "" if value is None else say(value))


def _moved_along(
    site: Site, means: tuple[float, ...] | None, old: tuple[float, ...] | None
) -> tuple[float, ...] | None:
    """Lows or highs that keep their distance from the means, so that days stay as wide as they were."""
    before = site.monthly_means
    if means is None or old is None or before is None or len(old) != len(before):
        return None
    return tuple(
        round(value + mean - was, 1) for value, mean, was in zip(old, means, before, strict=True)
    )


class MonthFields(QWidget):
    """A field a month. Leaving the last of the twelve makes one undo step; clearing all forgets them."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self._units = open_yard.units
        self.entries = [
            TextEntry(tr("Mean of {month}", month=tr(month)), degrees_reading(self._units))
            for month in MONTHS
        ]
        self.note = label("", "muted", wrap=True)
        grid = QGridLayout()
        grid.setHorizontalSpacing(6)
        grid.setVerticalSpacing(2)
        for number, entry in enumerate(self.entries):
            row, column = divmod(number, 6)
            caption = label(tr(SHORT_MONTHS[number]), "muted")
            caption.setBuddy(entry)
            grid.addWidget(caption, 2 * row, column)
            grid.addWidget(entry, 2 * row + 1, column)
            entry.entered.connect(self._entered)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.addLayout(grid)
        box.addWidget(self.note)
        self._means: tuple[float, ...] | None = ()
        self.refresh()

    def refresh(self) -> None:
        """Show the means of the site, leaving alone what is half typed."""
        site = self._open_yard.shown_yard.site
        if site.units != self._units:
            self._units = site.units
            for entry in self.entries:
                entry.set_reading(degrees_reading(site.units))
        if site.monthly_means != self._means:
            self._means = site.monthly_means
            for number, entry in enumerate(self.entries):
                if not entry.busy:
                    entry.show_value(None if self._means is None else self._means[number])
        self._tell()

    def _tell(self) -> None:
        held = sum(entry.value is not None for entry in self.entries)
        words = "" if held in (0, 12) else tr_n(
            "{n} more to go: they count once all twelve are there.",
            "{n} more to go: they count once all twelve are there.", 12 - held,
        )
        self.note.setText(words or tr("They decide bloom, winter chill and whether fruit ripens."))

    def _entered(self, _value: object) -> None:
        values = tuple(entry.value for entry in self.entries)
        site = self._open_yard.yard.site
        if all(value is None for value in values):
            means = None
        elif any(value is None for value in values):
            self._tell()
            return
        else:
            means = tuple(float(value) for value in values)
        self._means = means
        if means != site.monthly_means:
            kept = tuple(o for o in site.origins if o.fact != "monthly_means")
            told = (Origin(fact="monthly_means", text=later("typed in")),) if means else ()
            lows, highs = (_moved_along(site, means, old) for old in (site.monthly_lows, site.monthly_highs))
            yard = edits.set_site(
                self._open_yard.yard, monthly_means=means, monthly_lows=lows, monthly_highs=highs,
                origins=kept + told,
            )
            self._open_yard.commit(tr("Change monthly means"), yard, merge="monthly means")
        self._tell()
