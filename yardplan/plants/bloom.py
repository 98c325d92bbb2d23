"""When plants bloom at a place, as bands: from monthly means, an observed date, or a station moved here.

Order of trust: an observed date corrects everything else; twelve monthly means give the heat sums; lacking
both, the nearest published date is moved by latitude, longitude and height. Where none of these holds, no
date is given and the order of classes must do.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from functools import cached_property, lru_cache
from itertools import pairwise
from typing import Literal

from attrs import field, frozen

from yardplan.language import later, tr
from yardplan.plants.bloom_tables import (
    CropBloom,
    Station,
    crop_bloom,
    is_low_chill,
    key_of,
    moved_days,
    nearest_station,
    position,
    reference_day,
    share_for,
    station_share,
)
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.heat import (
    HALF_YEAR,
    YEAR,
    HeatSums,
    date_of,
    day_of,
    day_words,
    monthly_means_of,
    normal_share,
    parameter,
)
from yardplan.plants.limits import Limits
from yardplan.yard.planting import PlantKey
from yardplan.yard.site import Site

#: Steps of class from mid-season to early or late: what a cultivar without a class may be off by.
_CLASSES_ASIDE = 2.0

Basis = Literal["monthly means", "observed date", "station", "nothing"]
Often = Literal["usual", "some years", "rarely"]
#: How often days in bloom together suffice, as it is said.
OFTEN_WORDS: Mapping[Often, str] = {
    "usual": later("usual"), "some years": later("some years"), "rarely": later("rarely"),
}


@frozen(kw_only=True)
class BloomBand:
    """Bloom of one cultivar in the average year: days of the year (may exceed 365), with their error.

    `error` days of the average year, `scatter` days of a single year (1 SD each). `classed` False where
    neither order nor class of the cultivar is known: it is dated as a mid-season one, with a wider error.
    """

    first: float
    full: float
    fall: float
    error: float
    scatter: float
    basis: Basis
    classed: bool = True

    @property
    def dates(self) -> tuple[str, str, str]:
        """First flower, full bloom and petal fall as `MM-DD`."""
        return (date_of(self.first), date_of(self.full), date_of(self.fall))

    def in_bloom(self, day: float) -> bool:
        """True when the average year has open flowers on that day of the year."""
        return any(self.first <= turn <= self.fall for turn in (day, day + YEAR))


@frozen(kw_only=True)
class Overlap:
    """Days two cultivars are in bloom together in the average year, and how often they meet long enough.

    `days` may be negative: the days between them. `years` share of years with the days that a set needs.
    `by`: dates at this place, order within the crop, or class.
    """

    days: float
    years: float
    often: Often
    by: str

    @property
    def shared(self) -> float:
        """Shared days, never under 0."""
        return max(0.0, self.days)


@frozen(kw_only=True)
class _Anchor:
    """A date held to be true here: share of the apple's heat sum, day of the year, and the key it was for."""

    share: float
    day: float
    name: str


@frozen(kw_only=True, slots=False, eq=False)
class BloomAt:
    """Bloom at one site. Make it with `bloom_at`; bands and overlaps are kept once computed."""

    site: Site
    limits: Limits
    sums: HeatSums | None
    anchors: tuple[_Anchor, ...] = ()
    station: Station | None = None
    faults: tuple[str, ...] = ()
    _bands: dict[object, BloomBand | None] = field(factory=dict, init=False, repr=False)

    @property
    def basis(self) -> Basis:
        """What the dates rest on."""
        if self.anchors:
            return "observed date"
        if self.sums is not None:
            return "monthly means" if not self.too_mild else "nothing"
        return "station" if self.station is not None else "nothing"

    @property
    def too_mild(self) -> bool:
        """True where winters are too warm for heat sums to hold: only observed dates help."""
        return self.sums is not None and self.sums.coldest > parameter("coldest_month")

    @cached_property
    def heat_sum(self) -> float:
        """Heat sum of a mid-season apple's full bloom here, corrected by what was observed."""
        if self.sums is None or not self.anchors:
            return parameter("heat_sum")
        found = [self.sums.sum_on(a.day) / a.share for a in self.anchors if a.share > 0]
        return sum(found) / len(found) if found else parameter("heat_sum")

    @cached_property
    def _shift(self) -> float | None:
        """Without heat sums: days by which this place is later than the reference place."""
        if self.anchors:
            return sum(a.day - reference_day(a.share) for a in self.anchors) / len(self.anchors) - self._turn
        if self.station is None or self.station.full is None:
            return None
        share = station_share(self.station)
        if share is None:
            return None
        later = moved_days(self.station, self.site.latitude, self.site.longitude, self.site.elevation)
        return self.station.full + later - reference_day(share)

    @property
    def _turn(self) -> int:
        return HALF_YEAR if self.site.southern else 0

    @property
    def error(self) -> float:
        """Error of the average year, days."""
        names = {
            "observed date": "error_observed", "monthly means": "error_mean", "station": "error_station",
            "nothing": "error_station",
        }
        return parameter(names[self.basis])

    def full_bloom(self, share: float) -> float | None:
        """Day of full bloom for a share of the apple's heat sum; None when it cannot be told."""
        if self.sums is not None:
            return None if self.basis == "nothing" else self.sums.day_when(self.heat_sum * share)
        return None if self._shift is None else reference_day(share) + self._shift + self._turn

    def band(self, cultivar: Cultivar) -> BloomBand | None:
        """Bloom of a cultivar here, or None when no date can be had."""
        what = (cultivar.crop, position(cultivar), is_low_chill(cultivar))
        if what not in self._bands:
            self._bands[what] = self._band_of(cultivar)
        return self._bands[what]

    def crop_band(self, crop: str) -> BloomBand | None:
        """Bloom of a mid-season cultivar of a crop here."""
        return self.band(Cultivar(crop=crop, name="", bloom_season="mid"))

    def _band_of(self, cultivar: Cultivar) -> BloomBand | None:
        bloom, share = crop_bloom(cultivar.crop), share_for(cultivar)
        if bloom is None or share is None or (is_low_chill(cultivar) and not self._seen(cultivar)):
            return None
        full = self.full_bloom(share)
        return None if full is None else self._around(full, bloom, position(cultivar) is not None)

    def _seen(self, cultivar: Cultivar) -> bool:
        """True when the crop's own bloom was observed here: then low chill is in the date already."""
        return any(anchor.name.partition(":")[0] == cultivar.crop for anchor in self.anchors)

    def _around(self, full: float, bloom: CropBloom, classed: bool) -> BloomBand:
        # Early and late kinds bloom two steps of class from the middle; unlike errors add as squares.
        unsure = 0.0 if classed else _CLASSES_ASIDE * bloom.class_step
        return BloomBand(
            first=full - bloom.before, full=full, fall=full + bloom.after,
            error=math.hypot(self.error, unsure),
            scatter=math.hypot(max(parameter("error_year"), self.error), unsure), basis=self.basis,
            classed=classed,
        )

    def overlap(self, one: Cultivar, other: Cultivar) -> Overlap | None:
        """Days two cultivars share; None when bloom of one is not known at all."""
        return overlap_of(one, other, bloom=self, limits=self.limits, gap_factor=1.0)


def often(years: float, limits: Limits) -> Often:
    """The word for a share of years."""
    if years >= limits.value("pollen-usual-years"):
        return "usual"
    return "rarely" if years < limits.value("pollen-rare-years") else "some years"


def gap_between(
    one: Cultivar, other: Cultivar, bloom: BloomAt | None, gap_factor: float
) -> tuple[float, str] | None:
    """Days between two full blooms and what tells them; None when not known."""
    # Dates moved from elsewhere know nothing of this climate: the order of bloom tells more then.
    if bloom is not None and bloom.sums is not None:
        bands = (bloom.band(one), bloom.band(other))
        if bands[0] is not None and bands[1] is not None and position(one) and position(other):
            return (abs(bands[0].full - bands[1].full), "dates")
    crops, places = (crop_bloom(one.crop), crop_bloom(other.crop)), (position(one), position(other))
    if crops[0] is None or crops[1] is None or places[0] is None or places[1] is None:
        return None
    here = crops[0].family_days + places[0].days
    there = crops[1].family_days + places[1].days
    by = "order" if places[0].by == places[1].by == "order" else "class"
    return (abs(here - there) * gap_factor, by)


def overlap_of(
    one: Cultivar, other: Cultivar, *, bloom: BloomAt | None, limits: Limits, gap_factor: float = 1.0,
) -> Overlap | None:
    """Expected shared bloom = mean bloom length minus the days between full blooms, at most the shorter.

    The share of years with enough shared days takes the overlap as normally scattered.
    Source: cherry-phenology-2016 (rule checked there against observed medians).
    """
    gap = gap_between(one, other, bloom, gap_factor)
    crops = (crop_bloom(one.crop), crop_bloom(other.crop))
    if gap is None or crops[0] is None or crops[1] is None:
        return None
    lengths = (crops[0].usable, crops[1].usable)
    days = min(sum(lengths) / 2 - gap[0], *lengths)
    z = (days - limits.value("pollen-days-needed")) / limits.value("pollen-overlap-scatter")
    years = normal_share(z)
    return Overlap(days=days, years=years, often=often(years, limits), by=gap[1])


def _anchors(site: Site, known: Mapping[PlantKey, Cultivar]) -> tuple[list[_Anchor], list[str]]:
    """Observed dates that can be used, and one line for each that cannot."""
    found: list[_Anchor] = []
    faults: list[str] = []
    for name, date in site.observed_bloom:
        key = key_of(name)
        crop = key if isinstance(key, str) else key.crop
        cultivar = known.get(key) if isinstance(key, PlantKey) else None
        share = share_for(cultivar or Cultivar(crop=crop, name="", bloom_season="mid"))
        try:
            day = day_of(date)
        except ValueError:
            faults.append(
                tr("observed bloom of {name}: '{date}' is no date; write MM-DD, for example 04-24",
                   name=_called(name), date=date)
            )
            continue
        if share is None:
            faults.append(
                tr("observed bloom of {name}: bloom of {crop} is not known, so it decides nothing",
                   name=_called(name), crop=tr(crop))
            )
        else:
            start = day_of("02-15") + (HALF_YEAR if site.southern else 0)
            found.append(_Anchor(share=share, day=day if day >= start else day + YEAR, name=name))
    return found, faults


def _called(name: str) -> str:
    """A variety or kind as people say it: `Liberty` for `apple:Liberty`."""
    crop, _, cultivar = name.partition(":")
    return cultivar or tr(crop)


def _out_of_order(anchors: list[_Anchor]) -> list[str]:
    """A line for each two observed dates whose order is the other way round than bloom goes."""
    by_share = sorted(anchors, key=lambda anchor: anchor.share)
    return [
        tr("observed bloom: {late} on {late_day} before {early} on {early_day}, though it blooms after it: "
           "check both dates", late=_called(late.name), late_day=day_words(late.day),
           early=_called(early.name), early_day=day_words(early.day))
        for early, late in pairwise(by_share)
        if late.day < early.day and late.share > early.share + 0.05
    ]


def bloom_at(
    site: Site, cultivars: Mapping[PlantKey, Cultivar] | None = None, limits: Limits | None = None
) -> BloomAt:
    """Bloom at a site. `cultivars`: those an observed date may name, so that their own order counts."""
    anchors, faults = _anchors(site, cultivars or {})
    sums = None
    means = monthly_means_of(site)
    if means is not None:
        try:
            sums = HeatSums(means, site.southern)
        except ValueError:
            faults.append(tr("site: twelve monthly mean temperatures are needed to date bloom"))
    known_place = bool(site.place or site.longitude) or site.latitude != Site().latitude
    station = nearest_station(site.latitude, site.longitude) if sums is None and known_place else None
    return BloomAt(
        site=site, limits=limits or Limits(), sums=sums, anchors=tuple(anchors), station=station,
        faults=(*faults, *_out_of_order(anchors)),
    )


@lru_cache(maxsize=8)
def bloom_of(site: Site, limits: Limits | None = None) -> BloomAt:
    """Bloom at a site, kept for the sites last asked for."""
    return bloom_at(site, limits=limits)

