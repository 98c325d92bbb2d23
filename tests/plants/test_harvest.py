"""Harvest from full bloom: the published counts of days, by name, season and crop."""

import pytest

from yardplan.plants.bloom import BloomBand
from yardplan.plants.catalogue import catalogue
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.harvest import days_from_bloom, harvest_band
from yardplan.plants.heat import day_of
from yardplan.yard.planting import PlantKey


def _days(text: str) -> tuple[float, float]:
    cultivar = catalogue().cultivar(PlantKey.parse(text))
    assert cultivar is not None
    found = days_from_bloom(cultivar)
    assert found is not None
    return found[:2]


@pytest.mark.parametrize(
    ("text", "low", "high"),
    [
        # Grower column 2009 (110-120) and university horticulturist's column 2012 (110-115).
        ("apple:Gala", 110, 120),
        # Extension Foundation: McIntosh 115-135; the column of 2012 has 110-115.
        ("apple:McIntosh", 110, 135),
        # Grower column 2009.
        ("apple:Fuji", 170, 185),
        ("apple:Lodi", 70, 95),
        # Washington State extension text: Bartlett 110-133, Bosc 130-145.
        ("european pear:Bartlett", 110, 133), ("european pear:Beurre Bosc", 130, 145),
        ("asian pear:Hosui", 122, 150), ("sour cherry:Montmorency", 50, 60),
        ("sweet cherry:Bing", 60, 70),
    ],
)
def test_days_as_published(text: str, low: float, high: float) -> None:
    assert _days(text) == (low, high)


def test_later_seasons_ripen_later() -> None:
    spans = []
    for season in ("early", "mid", "late"):
        found = days_from_bloom(Cultivar(crop="peach", name="any", harvest_season=season))
        assert found is not None
        spans.append(found[:2])
    assert spans == sorted(spans)


def test_a_season_between_two_published_ones_ripens_between_them() -> None:
    # Published are early (50-60) and late (75-90): mid-season is neither as early nor as late as those.
    early, mid, late = (
        _days(f"northern highbush blueberry:{name}") for name in ("Duke", "Bluecrop", "Elliott")
    )
    assert early == (50, 60)
    assert late == (75, 90)
    assert mid == (62.5, 75)


def test_a_band_counts_from_full_bloom() -> None:
    gala = catalogue().cultivar(PlantKey("apple", "Gala"))
    assert gala is not None
    full = float(day_of("05-01"))
    bloom = BloomBand(first=full - 5, full=full, fall=full + 9, error=5, scatter=8, basis="monthly means")
    ripe = harvest_band(gala, bloom)
    assert ripe is not None
    assert ripe.dates == ("08-19", "08-29")
    assert ripe.spread == 7.0


def test_crops_without_counts_have_no_harvest() -> None:
    assert days_from_bloom(Cultivar(crop="hazelnut", name="any")) is None
