"""Sweet cherry incompatibility groups: within a group no pair sets fruit, between groups every pair may.

Source: Julius Kuehn-Institut, Self-incompatibility (S) genotypes of cultivated sweet cherries, overview 2020.
"""

from itertools import combinations

import pytest

from yardplan.plants.catalogue import catalogue
from yardplan.plants.cultivar import Cultivar
from yardplan.plants.pollen_genetics import accepted_share, genetics_step
from yardplan.yard.planting import PlantKey

#: Group, its two alleles, cultivars of it that the overview names.
GROUPS = [
    ("I", "S1S2", ["Black Tartarian", "Early Rivers", "Summit", "Tulare"]),
    ("II", "S1S3", ["Van", "Regina", "Windsor", "Regal Lee", "Sumnue", "Sumste"]),
    ("III", "S3S4",
     ["Bing", "Lambert", "Napoleon", "Emperor Francis", "Ulster", "Kristin", "Somerset"]),
    ("IV", "S2S3", ["Vega", "Viva", "Victor"]),
    ("V", "S4S5", []),
    ("VI", "S3S6", ["Kordia", "Gold"]),
    ("VII", "S3S5", ["Hedelfingen"]),
    ("VIII", "S2S5", ["Vista"]),
    ("IX", "S1S4", ["Rainier", "Sylvia", "Hudson", "Black Republican"]),
    ("X", "S6S9", ["Penny"]),
    ("XIII", "S2S4", ["Sam", "Vic", "Schmidt"]),
    ("XIV", "S1S5", ["Valera"]),
    ("XVI", "S3S9", ["Burlat", "Chelan"]),
    ("XVII", "S4S6", ["Merton Glory", "Minnie Royal"]),
    ("XVIII", "S1S9", ["Brooks"]),
    ("XX", "S1S6", ["Vanda"]),
    ("XXI", "S4S9", ["Merchant", "Summer Sun"]),
    ("XXII", "S3S12", ["Schneiders"]),
    ("LI", "S1S13", []),
    ("LXIII", "S2S13", []),
]


def _alleles(text: str) -> tuple[str, ...]:
    return tuple(f"S{number}" for number in text.split("S")[1:])


def _cherry(name: str, alleles: str) -> Cultivar:
    """The catalogue's cherry, or one with the group's alleles where the catalogue lacks it."""
    found = catalogue().cultivar(PlantKey("sweet cherry", name))
    if found is not None:
        return found
    return Cultivar(
        crop="sweet cherry", name=name, s_alleles=_alleles(alleles), ploidy=2, pollen_good=True
    )


@pytest.mark.parametrize(("group", "alleles", "names"), GROUPS)
def test_the_catalogue_has_the_group_alleles(group: str, alleles: str, names: list[str]) -> None:
    for name in names:
        assert _cherry(name, alleles).s_alleles == _alleles(alleles), (group, name)


@pytest.mark.parametrize(("group", "alleles", "names"), GROUPS)
def test_no_two_of_a_group_set_each_other(group: str, alleles: str, names: list[str]) -> None:
    plants = [_cherry(name, alleles) for name in names]
    plants += [_cherry(f"{group} one", alleles), _cherry(f"{group} other", alleles)]
    for one, other in combinations(plants, 2):
        for donor, receiver in ((one, other), (other, one)):
            reason, share = genetics_step(donor, receiver)
            assert share == 0.0, (donor.name, receiver.name)
            assert reason.result == "failed", (donor.name, receiver.name)


def test_any_two_groups_set_each_other_fully_or_half() -> None:
    for (_, one, _), (_, other, _) in combinations(GROUPS, 2):
        share = accepted_share(_alleles(one), _alleles(other))
        shared = len(set(_alleles(one)) & set(_alleles(other)))
        assert share == {0: 1.0, 1: 0.5}[shared], (one, other)
        assert share == accepted_share(_alleles(other), _alleles(one))


def test_self_compatible_clones_set_every_group() -> None:
    # S4' pollen is taken by every style; the style of such a clone still refuses ordinary S4.
    for _, alleles, _ in GROUPS:
        assert accepted_share(("S3", "S4'"), _alleles(alleles)) >= 0.5
    assert accepted_share(("S3", "S4"), ("S3", "S4'")) == 0.0
