"""One cultivar: its facts and where each came from."""

from __future__ import annotations

from enum import Enum

from attrs import frozen

from yardplan.yard.planting import PlantKey

#: Source id of a value that no look-up has confirmed; the program shows it as such.
MEMORY = "memory"


class SelfFruit(Enum):
    """Whether a plant sets fruit with its own pollen."""

    YES = "yes"
    PARTLY = "partly"
    NO = "no"
    NOT_APPLICABLE = "n/a"
    UNKNOWN = "unknown"


@frozen
class Cited:
    """A source id and the columns it vouches for; no columns: all that no other source names."""

    source: str
    columns: tuple[str, ...] = ()


def sources_of(cited: tuple[Cited, ...], column: str) -> tuple[str, ...]:
    """Source ids that name a column; where none does, those that vouch for the rest of the row."""
    named = tuple(c.source for c in cited if column in c.columns)
    return named or tuple(c.source for c in cited if not c.columns)


@frozen(kw_only=True)
class Cultivar:
    """A named cultivar with its facts. Unknown facts are None or empty.

    `bloom_order` days from the crop's own reference (never compare between crops);
    `ploidy` sets of chromosomes; `s_alleles` like ("S3", "S4'"), a prime marks a broken pollen part;
    `zone_min`, `zone_max` USDA zones as printed ("4", "3b"); `chill_hours` (low, high) hours at or under 7 C;
    `height`, `spread` (low, high) in metres where the cultivar's own size is published.
    `sex`: "female", "male" or "" for both; `sport_of`: the cultivar it is a mutation of.
    """

    crop: str
    name: str
    species: str = ""
    type: str = ""
    sex: str = ""
    self_fruitful: SelfFruit = SelfFruit.UNKNOWN
    cross_benefit: str = ""
    bloom_season: str = ""
    bloom_order: float | None = None
    ploidy: int | None = None
    pollen_good: bool | None = None
    s_alleles: tuple[str, ...] = ()
    incompatibility_group: str = ""
    pollination_group: str = ""
    sport_of: str | None = None
    zone_min: str | None = None
    zone_max: str | None = None
    chill_hours: tuple[float, float] | None = None
    harvest_season: str = ""
    height: tuple[float, float] | None = None
    spread: tuple[float, float] | None = None
    container: str = ""
    thornless: str = ""
    note: str = ""
    cited: tuple[Cited, ...] = ()
    own: bool = False

    @property
    def key(self) -> PlantKey:
        """The key under which plantings name this cultivar."""
        return PlantKey(self.crop, self.name)

    def sources_of(self, column: str) -> tuple[str, ...]:
        """Source ids that vouch for one column; (`memory`,) when no look-up confirmed it."""
        return sources_of(self.cited, column)

    def from_memory(self, column: str) -> bool:
        """True when the column's value was written down from memory."""
        return self.sources_of(column) == (MEMORY,)
