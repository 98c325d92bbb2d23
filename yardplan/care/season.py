"""Dates that care hangs on: frosts, stages of bloom, harvest and months of one growing season at a place.

A season carries the year of its spring. In the southern hemisphere it runs from July of that year to June
of the next and everything is turned by half a year.
"""

from __future__ import annotations

import calendar
import datetime as dt
from collections.abc import Mapping
from functools import cached_property

from attrs import frozen

from yardplan.care.tables import anchor_offset, figures, usual_months
from yardplan.plants.bloom import BloomAt, BloomBand, bloom_at
from yardplan.plants.bloom_tables import crop_bloom, is_low_chill, reference_day, share_for
from yardplan.plants.cultivar import MEMORY, Cultivar
from yardplan.plants.harvest import days_from_bloom, harvest_band
from yardplan.plants.heat import HALF_YEAR, YEAR, date_of, day_of
from yardplan.plants.limits import Limits
from yardplan.yard.planting import PlantKey
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

#: Cultivar types that flower on until frost (from memory).
LONG_BLOOM = ("primocane", "day-neutral", "everbearing", "alpine")
#: First full month of a half year turned to the south: January becomes July.
_HALF = 6


def on_day(year: int, day: float) -> dt.date:
    """The date of a day of the year; days beyond 365 fall into the next year, part days count whole."""
    whole = -(-(day - 1e-9) // 1)
    turns = int((whole - 1) // YEAR)
    month, number = date_of(day).split("-")
    return dt.date(year + turns, int(month), int(number))


@frozen
class Anchored:
    """A span of dates a task is counted from. `by_month` True when no climate of the place stands behind it.

    `about` days of error of the average year, 0 for calendar dates; `whole` True where the span is a whole
    time of picking, not the days on which it may begin.
    """

    first: dt.date
    last: dt.date
    by_month: bool = False
    about: float = 0.0
    source: str = ""
    whole: bool = False


@frozen(slots=False, eq=False)
class Season:
    """One growing season at a site."""

    site: Site
    year: int
    bloom: BloomAt

    def _turned(self, day: float) -> float:
        """A northern day of the year as it falls here."""
        return day + HALF_YEAR if self.site.southern else day

    @cached_property
    def last_frost(self) -> Anchored:
        """The last spring frost with even odds."""
        known = self.site.last_frost
        day = _day(known)
        if day is None:
            usual = self._turned(day_of(usual_months()["last frost"][0]))
            return _one(on_day(self.year, usual), by_month=True)
        if self.site.southern:
            return _one(on_day(self.year + (day < YEAR // 6), day))
        return _one(on_day(self.year - (day > 2 * YEAR // 3), day))

    @cached_property
    def first_frost(self) -> Anchored:
        """The first autumn frost with even odds: the first such date after the last spring frost."""
        day = _day(self.site.first_frost)
        if day is None:
            usual = self._turned(day_of(usual_months()["first frost"][0]))
            return _one(on_day(self.year, usual), by_month=True)
        found = on_day(self.year, day)
        while found <= self.last_frost.first:
            found = on_day(found.year + 1, day)
        return _one(found)

    @property
    def leaf_fall(self) -> Anchored:
        """Leaves are down."""
        return self._later(self.first_frost, figures()["leaf fall after first frost"])

    def _later(self, anchor: Anchored, days: float) -> Anchored:
        step = dt.timedelta(days=days)
        return Anchored(anchor.first + step, anchor.last + step, anchor.by_month, anchor.about, MEMORY)

    @property
    def dormant(self) -> dt.date:
        """The first day of the year, or of July in the south."""
        return dt.date(self.year, 1 + _HALF * self.site.southern, 1)

    def month(self, number: int) -> dt.date:
        """The first day of a northern month, turned by half a year in the south."""
        if not self.site.southern:
            return dt.date(self.year, number, 1)
        later = number + _HALF
        return dt.date(self.year + (later > 12), later - 12 if later > 12 else later, 1)

    def band(self, cultivar: Cultivar) -> tuple[BloomBand | None, bool]:
        """Bloom of a cultivar, and True when it is only the usual month of its kind.

        Usual months are those of a cool place: none are given where winters are mild or for kinds bred for
        them, as a wrong bloom would open days to sprays.
        """
        known = self.bloom.band(cultivar)
        if known is not None:
            return known, False
        rows, share = crop_bloom(cultivar.crop), share_for(cultivar)
        if rows is None or share is None or self.bloom.too_mild or is_low_chill(cultivar):
            return None, True
        full = self._turned(reference_day(share))
        return BloomBand(
            first=full - rows.before, full=full, fall=full + rows.after, error=0.0, scatter=0.0,
            basis="nothing",
        ), True

    def harvest(self, cultivar: Cultivar) -> Anchored | None:
        """First and last day on which harvest of a cultivar begins; None when it is not known.

        Of kinds known only by usual months the first and last day of all picking (`whole`).
        """
        if _long_strawberry(cultivar) or days_from_bloom(cultivar) is None:
            usual = usual_months().get(_harvest_name(cultivar))
            return None if usual is None else self._usual_harvest(usual)
        band, by_month = self.band(cultivar)
        ripe = harvest_band(cultivar, band) if band is not None else None
        if band is None or ripe is None:
            return None
        return Anchored(
            on_day(self.year, ripe.first), on_day(self.year, ripe.last), by_month,
            max(band.error, ripe.spread), ", ".join(ripe.sources),
        )

    def _usual_harvest(self, usual: tuple[str, str]) -> Anchored:
        low, high = day_of(usual[0]), day_of(usual[1])
        high += YEAR * (high < low)
        return Anchored(
            on_day(self.year, self._turned(low)), on_day(self.year, self._turned(high)), True, 0.0, MEMORY,
            whole=True,
        )

    def find(self, anchor: str, cultivar: Cultivar) -> Anchored | None:
        """The dates of an anchor for a cultivar; None when they are not known."""
        if anchor.startswith("month "):
            return _one(self.month(int(anchor.removeprefix("month "))))
        plain = {"dormant": lambda: _one(self.dormant), "last frost": lambda: self.last_frost,
                 "first frost": lambda: self.first_frost, "leaf fall": lambda: self.leaf_fall}
        if anchor in plain:
            return plain[anchor]()
        if anchor == "fall harvest":
            return self._later(self.first_frost, -figures()["fall crop before first frost"])
        return self.harvest(cultivar) if anchor == "harvest" else self._stage(anchor, cultivar)

    def _stage(self, anchor: str, cultivar: Cultivar) -> Anchored | None:
        """A stage of bloom: first flower and petal fall by the band, others by days from full bloom."""
        band, by_month = self.band(cultivar)
        if band is None:
            return None
        cover = figures()["first cover after petal fall"]
        by_band = {"first flower": band.first, "petal fall": band.fall, "first cover": band.fall + cover}
        found = anchor_offset(anchor, cultivar.crop)
        if anchor not in by_band and found is None:
            return None
        day = by_band[anchor] if anchor in by_band else band.full + (found[0] if found else 0)
        return _one(on_day(self.year, day), by_month=by_month, about=band.error)

    def blooms(self, cultivar: Cultivar) -> tuple[dt.date, dt.date, bool] | None:
        """First and last day with open flowers, and whether only usual months tell; None: not known.

        Kinds that flower again run on to the first frost.
        """
        band, by_month = self.band(cultivar)
        if band is None:
            return None
        last = on_day(self.year, band.fall)
        if flowers_long(cultivar):
            last = max(last, self.first_frost.last)
        return on_day(self.year, band.first), last, by_month


def flowers_long(cultivar: Cultivar) -> bool:
    """True for kinds that flower from spring to frost: everbearing strawberries, autumn raspberries."""
    return any(word in cultivar.type for word in LONG_BLOOM)


def _harvest_name(cultivar: Cultivar) -> str:
    return "strawberry (day-neutral)" if _long_strawberry(cultivar) else cultivar.crop


def _long_strawberry(cultivar: Cultivar) -> bool:
    return cultivar.crop == "strawberry" and flowers_long(cultivar)


def _day(text: str | None) -> int | None:
    """Day of the year of a frost date; None when there is none or it is no date."""
    if text is None:
        return None
    try:
        return day_of(text)
    except ValueError:
        return None


def _one(day: dt.date, *, by_month: bool = False, about: float = 0.0) -> Anchored:
    return Anchored(day, day, by_month, about)


def whole_months(first: dt.date, last: dt.date) -> tuple[dt.date, dt.date]:
    """The span widened to whole months: all that can be said without a climate."""
    return first.replace(day=1), last.replace(day=calendar.monthrange(last.year, last.month)[1])


def bloom_for(yard: Yard, cultivars: Mapping[PlantKey, Cultivar] | None = None) -> BloomAt:
    """Bloom at a yard's site under its own rules; `cultivars` those that observed dates may name."""
    return bloom_at(yard.site, cultivars, Limits(yard.rules))
