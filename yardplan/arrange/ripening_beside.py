"""When a suggested partner ripens, beside the plant it is to set: for a harvest spread over the weeks."""

from __future__ import annotations

from typing import Literal

from attrs import frozen

from yardplan.checks.pollination import net_for
from yardplan.checks.survey import Survey
from yardplan.language import day_month, later, tr
from yardplan.plants.bloom import BloomAt
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.harvest import HarvestBand, harvest_band
from yardplan.plants.pollen_reason import sex_of
from yardplan.yard.planting import PlantKey

Beside = Literal["before", "with", "after"]

_WORDS: dict[Beside | None, str] = {
    "before": later("ripens {first} to {last}, before {plant}"),
    "with": later("ripens {first} to {last}, with {plant}"),
    "after": later("ripens {first} to {last}, after {plant}"),
    None: later("ripens {first} to {last}"),
}


@frozen(kw_only=True)
class Ripening:
    """First and last day (`MM-DD`) on which a variety's harvest begins; None where it is not known.

    `beside`: all before or after that of the plant it sets (`plant`, its name), or with it in part; None
    where the other's is not known. `fruit` False for males, which bear none.
    """

    dates: tuple[str, str] | None
    beside: Beside | None
    plant: str
    fruit: bool = True

    @property
    def words(self) -> str:
        """One line for a person: `ripens 5 September to 20 September, after Empire`."""
        if not self.fruit:
            return tr("bears no fruit itself")
        if self.dates is None:
            return tr("when it ripens is not known here")
        first, last = (day_month(*map(int, day.split("-"))) for day in self.dates)
        return tr(_WORDS[self.beside], first=first, last=last, plant=self.plant)


def ripening_beside(survey: Survey, key: PlantKey, plant_id: str) -> Ripening:
    """When a variety ripens here, beside one plant, row or bed that takes pollen."""
    net = net_for(survey)
    receiver = net.nodes[net.number[plant_id]].cultivar
    candidate = survey.catalogue.cultivar(key)
    one, other = _band(net.place.bloom, candidate), _band(net.place.bloom, receiver)
    return Ripening(
        dates=None if one is None else one.dates, beside=_beside(one, other), plant=receiver.name,
        fruit=candidate is None or sex_of(candidate) != "male",
    )


def _band(bloom: BloomAt | None, cultivar: Cultivar | None) -> HarvestBand | None:
    if bloom is None or cultivar is None or sex_of(cultivar) == "male":
        return None
    band = bloom.band(cultivar)
    return None if band is None else harvest_band(cultivar, band)


def _beside(one: HarvestBand | None, other: HarvestBand | None) -> Beside | None:
    if one is None or other is None:
        return None
    if one.last < other.first:
        return "before"
    return "after" if one.first > other.last else "with"
