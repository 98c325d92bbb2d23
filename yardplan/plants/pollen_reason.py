"""What a step of the pollination test says, and what of the place it reads."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from attrs import field, frozen

from yardplan.language import tr
from yardplan.plants.bloom import BloomAt
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.limits import Limits
from yardplan.plants.pollen_tables import PollenCrop, Published, pollen_crop
from yardplan.units import System as Units
from yardplan.yard.planting import PlantKey

Step = Literal["family", "clone", "pollen", "genetics", "bloom", "distance"]
Result = Literal["passed", "weak", "failed", "unknown"]

def _nothing() -> Mapping[str, float | str]:
    return {}


@frozen(kw_only=True)
class Reason:
    """What one step found. `template` holds `{name}` for the figure of that name."""

    step: Step
    result: Result
    template: str
    source: str
    figures: Mapping[str, float | str] = field(factory=_nothing, hash=False)

    @property
    def words(self) -> str:
        """The reason in words, figures filled in."""
        said = {name: tr(value) if isinstance(value, str) else value for name, value in self.figures.items()}
        return tr(self.template, **said)


@frozen(kw_only=True)
class PollenPlace:
    """What of a place bears on pollen: its bloom, zone and chill, local figures, and the units of the words.

    `zone` the whole USDA zone; `chill` hours at or under 7 C of the average winter.
    """

    bloom: BloomAt | None = None
    zone: int | None = None
    chill: float | None = None
    limits: Limits = field(factory=Limits)
    units: Units = "metric"

    @property
    def gap_factor(self) -> float:
        """By how much days between classes shrink (short seasons) or widen (mild winters) here."""
        if self.chill is not None and self.chill < self.limits.value("pollen-mild-chill"):
            return self.limits.value("pollen-gap-mild")
        if self.zone is not None and self.zone <= _COLD_ZONE:
            return self.limits.value("pollen-gap-cold")
        return 1.0


#: Zones up to this one count as short seasons (tree fruit reference, section 8; from memory).
_COLD_ZONE = 4


def kind_of(cultivar: Cultivar) -> PollenCrop | None:
    """How a cultivar's crop is pollinated."""
    return pollen_crop(cultivar.crop, cultivar.species)


def clone_root(cultivar: Cultivar) -> PlantKey:
    """The cultivar of which this one is a sport, itself if none."""
    return PlantKey(cultivar.crop, cultivar.sport_of or cultivar.name)


def sex_of(cultivar: Cultivar) -> str:
    """`female`, `male`, `pair` (sold together) or an empty word for flowers with both."""
    words = f"{cultivar.sex} {cultivar.type}".lower()
    female, male = "female" in words, " male" in f" {words.replace('female', '')}"
    if female and male:
        return "pair"
    return "female" if female else ("male" if male else "")


_RESULTS: Mapping[str, Result] = {"yes": "passed", "partly": "weak", "no": "failed", "not proved": "unknown"}


def said(step: Step, published: Published) -> Reason:
    """A reason made of a published statement."""
    return Reason(
        step=step, result=_RESULTS[published.verdict], template=published.words, source=published.source
    )


#: Name of plants that are seedlings: no two are one clone.
SEEDLING = "seedling"


def is_seedling(cultivar: Cultivar) -> bool:
    """True for an unnamed or wild plant raised from seed."""
    # Bramley's Seedling and its like are clones: only plants without a name of their own are seedlings.
    name = cultivar.name
    return name in {SEEDLING, f"unnamed {SEEDLING}"} or name.startswith("Wild ") or "wild type" in name
