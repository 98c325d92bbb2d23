"""Who sets whom among small fruit and nuts, and how many one giver serves; source beside each."""

import pytest

from yardplan.plants.catalogue import catalogue
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.limits import Limits
from yardplan.plants.pollen import better_crossed, needs_partner, sets_fruit
from yardplan.plants.pollen_range import pollen_range
from yardplan.plants.pollen_tables import donor_ratio
from yardplan.yard.planting import PlantKey


def known(text: str) -> Cultivar:
    found = catalogue().cultivar(PlantKey.parse(text))
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("donor", "receiver", "expected"),
    [
        # Georgia muscadine production guide: female vines need perfect-flowered ones.
        ("grape (muscadine):Carlos", "grape (muscadine):Scuppernong", "yes"),
        ("grape (muscadine):Noble", "grape (muscadine):Supreme", "yes"),
        ("grape (muscadine):Scuppernong", "grape (muscadine):Supreme", "no"),
        # Bunch grapes and muscadines do not cross: from memory.
        ("grape:Concord", "grape (muscadine):Fry", "no"),
        # Oregon State University PNW 507: male and female vines; hardy and arctic kiwi bloom apart.
        ("hardy kiwi:Meader Male", "hardy kiwi:Geneva", "yes"),
        ("hardy kiwi:Ananasnaya", "hardy kiwi:Geneva", "no"),
        ("arctic kiwi:Pasha", "arctic kiwi:September Sun", "yes"),
        ("arctic kiwi:Pasha", "hardy kiwi:Geneva", "no"),
        # Sea buckthorn growing notes: male and female plants.
        ("sea buckthorn:Gnom", "sea buckthorn:Hergo", "yes"),
        ("sea buckthorn:Hergo", "sea buckthorn:Leikora", "no"),
        # Haskap bloom chart: Indigo Gem, Tundra and Borealis are one kin group; the Boreal series is listed.
        ("honeyberry/haskap:Indigo Gem", "honeyberry/haskap:Tundra", "no"),
        ("honeyberry/haskap:Borealis", "honeyberry/haskap:Indigo Gem", "no"),
        ("honeyberry/haskap:Honeybee", "honeyberry/haskap:Borealis", "yes"),
        ("honeyberry/haskap:Boreal Beast", "honeyberry/haskap:Boreal Blizzard", "yes"),
        # HortScience 47:1837: rabbiteye needs another rabbiteye.
        ("rabbiteye blueberry:Tifblue", "rabbiteye blueberry:Brightwell", "yes"),
        # HortScience 29:324: southern highbush pollen on rabbiteye lowers set and weight.
        ("southern highbush blueberry:O'Neal", "rabbiteye blueberry:Premier", "partly"),
        # Chromosome counts differ between rabbiteye (6x) and highbush (4x): from memory.
        ("rabbiteye blueberry:Tifblue", "northern highbush blueberry:Bluecrop", "no"),
        # Oregon State University hazelnut lists: Barcelona sheds S1, which Jefferson (S1 S3) refuses.
        ("hazelnut:Theta", "hazelnut:Jefferson", "yes"),
        ("hazelnut:Barcelona", "hazelnut:Jefferson", "no"),
        # University of Debrecen: Pandy types are self-sterile and not set by the Ujfehertoi group.
        ("sour cherry:Ujfehertoi Furtos", "sour cherry:Pandy 7", "no"),
    ],
)
def test_pairs_of_small_fruit(donor: str, receiver: str, expected: str) -> None:
    assert sets_fruit(known(donor), known(receiver)).verdict == expected


def test_every_muscadine_is_perfect_or_female_and_only_females_need_a_partner() -> None:
    # Georgia muscadine production guide, table of cultivars.
    vines = [one for key, one in catalogue().cultivars.items() if key.crop == "grape (muscadine)"]
    assert {one.name for one in vines if needs_partner(one)} == {
        "Scuppernong", "Fry", "Supreme", "Summit", "Darlene",
    }


@pytest.mark.parametrize(
    ("crop", "least", "most"),
    [
        ("hardy kiwi", 6, 8),  # Oregon State University PNW 507: one male to six to eight females
        ("sea buckthorn", 5, 8),  # growing notes: one male to five to eight females
        ("honeyberry/haskap", 8, 8),  # propagator's notes: one pollen giver to eight
        ("grape (muscadine)", 3, 7),  # Georgia guide: an eighth to a quarter of the vines perfect-flowered
        ("apple", 4, 9),  # NIAB: one to nine, up to one to four
    ],
)
def test_how_many_one_giver_serves(crop: str, least: int, most: int) -> None:
    ratio = donor_ratio(crop)
    assert ratio is not None
    assert least <= ratio.receivers <= most
    assert ratio.layout


@pytest.mark.parametrize(
    ("crop", "outer"),
    [
        ("hardy kiwi", 30.48),  # midwest fruit page: male within 50 to 100 ft
        ("elderberry", 30.0),  # best within 60 ft (18 m), Washington garden text; outer figure: from memory
    ],
)
def test_outer_range_of_small_fruit(crop: str, outer: float) -> None:
    assert pollen_range(crop, "dwarf", Limits()).outer == pytest.approx(outer, abs=0.5)


def test_sea_buckthorn_is_best_within_ten_metres() -> None:
    # Sea buckthorn growing notes: within about 10 m (33 ft).
    assert pollen_range("sea buckthorn", "dwarf", Limits()).best == pytest.approx(10.0, abs=0.1)


def test_what_a_partner_adds_to_highbush_blueberries() -> None:
    # HortScience, cross fertility of recent highbush cultivars: set +43 %, weight +27 %; Bluecrop set less.
    average = better_crossed(known("northern highbush blueberry:Duke"))
    bluecrop = better_crossed(known("northern highbush blueberry:Bluecrop"))
    assert average is not None
    assert bluecrop is not None
    assert "43 %" in average.words
    assert "27 %" in average.words
    assert "not fruit set" in bluecrop.words
    # HortScience 29:324: Sharpblue berries +14 %, seeds +27 %, small fruit -66 %.
    sharp = better_crossed(known("southern highbush blueberry:Sharpblue"))
    assert sharp is not None
    assert all(figure in sharp.words for figure in ("14 %", "27 %", "66 %"))
