"""The year of each planned cultivar at a place: bloom, harvest and frost risk, with who blooms beside it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from attrs import frozen

from yardplan.plants.bloom import BloomBand, Overlap, overlap_of
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.frost import FrostRisk, frost_risk
from yardplan.plants.harvest import HarvestBand, harvest_band
from yardplan.plants.pollen_net import related
from yardplan.plants.pollen_reason import PollenPlace
from yardplan.plants.stand import Stand, StandingBed, StandingRow
from yardplan.yard.site import Site


@frozen(kw_only=True)
class SeasonLine:
    """One cultivar of the plan; `things` the ids of its plants, rows and beds. None where not known."""

    cultivar: Cultivar
    things: tuple[str, ...]
    bloom: BloomBand | None
    harvest: HarvestBand | None
    frost: FrostRisk | None


def season_lines(stand: Stand, place: PollenPlace, site: Site) -> list[SeasonLine]:
    """The lines of all planned cultivars, earliest bloom first, undated ones last."""
    found: dict[str, tuple[Cultivar, list[str]]] = {}
    for thing, cultivar in _planned(stand):
        found.setdefault(str(cultivar.key), (cultivar, []))[1].append(thing)
    lines = [_line(cultivar, tuple(things), place, site) for cultivar, things in found.values()]
    return sorted(lines, key=lambda line: (line.bloom is None, line.bloom.full if line.bloom else 0.0))


def _planned(stand: Stand) -> Iterator[tuple[str, Cultivar]]:
    for plant in stand.plants:
        if plant.planted and plant.cultivar is not None:
            yield plant.id, plant.cultivar
    others: list[StandingRow | StandingBed] = [*stand.rows, *stand.beds]
    for thing in others:
        if thing.cultivar is not None:
            yield thing.id, thing.cultivar


def _line(cultivar: Cultivar, things: tuple[str, ...], place: PollenPlace, site: Site) -> SeasonLine:
    band = place.bloom.band(cultivar) if place.bloom is not None else None
    return SeasonLine(
        cultivar=cultivar, things=things, bloom=band,
        harvest=None if band is None else harvest_band(cultivar, band),
        frost=None if band is None else frost_risk(cultivar.crop, band, site, place.limits),
    )


def overlaps(lines: Sequence[SeasonLine], place: PollenPlace) -> list[tuple[SeasonLine, SeasonLine, Overlap]]:
    """The pairs of lines whose kinds cross, with the days they share."""
    found = []
    for at, one in enumerate(lines):
        for other in lines[at + 1:]:
            if not related(one.cultivar, other.cultivar):
                continue
            shared = overlap_of(
                one.cultivar, other.cultivar, bloom=place.bloom, limits=place.limits,
                gap_factor=place.gap_factor,
            )
            if shared is not None:
                found.append((one, other, shared))
    return found
