"""Pairs whose result is published: each pollinates the other, or not, as the source beside it says.

`not needed`: the receiver sets fruit alone. `not assessed`: the source says nothing of that direction.
"""

import pytest

from yardplan.plants.catalogue import catalogue
from yardplan.plants.cultivar import SelfFruit
from yardplan.plants.pollen import Verdict, sets_fruit
from yardplan.yard.planting import PlantKey

PAIRS = [
    # NC State Extension HIL-302 'Blooming and Ripening Timing of Apple Varieties in North Carolina'
    # (1993, reviewed 1998) www.ces.ncsu.edu/hil/hil-302.html
    (1, "apple:Gala", "apple:Empire", "yes", "yes"),
    # NC State Extension HIL-302 'Blooming and Ripening Timing of Apple Varieties in North Carolina'
    # (1993, reviewed 1998) www.ces.ncsu.edu/hil/hil-302.html
    (2, "apple:Paulared", "apple:Fuji", "no", "no"),
    # NC State Extension HIL-302 'Blooming and Ripening Timing of Apple Varieties in North Carolina'
    # (1993, reviewed 1998) www.ces.ncsu.edu/hil/hil-302.html
    (3, "apple:Golden Delicious", "apple:Jonagold", "no", "no"),
    # NC State Extension HIL-302 'Blooming and Ripening Timing of Apple Varieties in North Carolina'
    # (1993, reviewed 1998) www.ces.ncsu.edu/hil/hil-302.html
    (4, "apple:Golden Delicious", "apple:Mutsu", "no", "no"),
    # NC State Extension HIL-302 'Blooming and Ripening Timing of Apple Varieties in North Carolina'
    # (1993, reviewed 1998) www.ces.ncsu.edu/hil/hil-302.html
    (5, "apple:Golden Delicious", "apple:Stayman", "yes", "no"),
    # NC State Extension HIL-302 'Blooming and Ripening Timing of Apple Varieties in North Carolina'
    # (1993, reviewed 1998) www.ces.ncsu.edu/hil/hil-302.html
    (6, "apple:Golden Delicious", "apple:Winesap", "yes", "no"),
    # NIAB apple guide 'Planting suitable pollinating varieties in sufficient numbers'
    # niab.com/planting-suitable-pollinating-varieties-sufficient-numbers / from memory
    (7, "apple:Fiesta", "apple:Elstar", "no", "no"),
    # NIAB apple guide 'Planting suitable pollinating varieties in sufficient numbers'
    # niab.com/planting-suitable-pollinating-varieties-sufficient-numbers / RHS 'Award of Garden Merit:
    # Fruit (with descriptions)' 2011 / from memory
    (8, "apple:Cox's Orange Pippin", "apple:Bramley's Seedling", "yes", "no"),
    # RHS 'Award of Garden Merit: Fruit (with descriptions)' 2011
    (9, "apple:Bramley's Seedling", "apple:Blenheim Orange", "no", "no"),
    # US produce reference text / from memory
    (10, "apple:Red Delicious", "apple:Starkrimson (red sport)", "no", "no"),
    # from memory
    (11, "apple:Gala", "apple:Tenroy", "no", "no"),
    # University of Maine Cooperative Extension 'Growing Fruit Trees in Maine: Pollination Requirements'
    # umaine.edu/fruit/growing-fruit-trees-in-maine/pollination-requirements/
    (12, "apple:Honeycrisp", "apple:Northern Spy", "yes", "yes"),
    # NC State Extension HIL-302 'Blooming and Ripening Timing of Apple Varieties in North Carolina'
    # (1993, reviewed 1998) www.ces.ncsu.edu/hil/hil-302.html / from memory
    (13, "apple:McIntosh", "apple:Cortland", "yes", "yes"),
    # Washington State University Tree Fruit 'Pollination' treefruit.wsu.edu/orchard-
    # management/pollination/ / Washington orchard trade press 2013-2014 on crabapple pollinizers
    (14, "crabapple:Manchurian", "apple:Red Delicious", "yes", "yes"),
    # NC State Extension HIL-302 'Blooming and Ripening Timing of Apple Varieties in North Carolina'
    # (1993, reviewed 1998) www.ces.ncsu.edu/hil/hil-302.html / Journal of the American Pomological
    # Society, Oct 2018, pp. 217-218: hand-pollination set by pollen source / NIAB apple guide 'Pollen
    # compatibility' niab.com/pollen-compatibility / from memory
    (15, "apple:Golden Delicious", "apple:Gala", "yes", "partly"),
    # Journal of the American Pomological Society, Oct 2018, pp. 217-218: hand-pollination set by pollen
    # source / from memory
    (16, "apple:Red Delicious", "apple:Honeycrisp", "yes", "yes"),
    # Journal of the American Pomological Society, Oct 2018, pp. 217-218: hand-pollination set by pollen
    # source
    (17, "crabapple:Malus floribunda (wild type crab)", "apple:Honeycrisp", "partly", "yes"),
    # UC Cooperative Extension 'Low-Chill Apples' and UF/IFAS figures as quoted in trade articles
    (18, "apple:Anna", "apple:Dorsett Golden", "yes", "yes"),
    # University of Maine Cooperative Extension 'Growing Fruit Trees in Maine: Pollination Requirements'
    # umaine.edu/fruit/growing-fruit-trees-in-maine/pollination-requirements/ / British Columbia
    # Ministry of Agriculture home garden factsheet 'Pollination'
    # www.al.gov.bc.ca/treefrt/homegdn/pollinate.htm / from memory
    (19, "apple:Lodi", "apple:Gravenstein", "yes", "no"),
    # from memory
    (20, "apple:Egremont Russet", "apple:Court Pendu Plat", "no", "no"),
    # NIAB apple guide 'Planting suitable pollinating varieties in sufficient numbers'
    # niab.com/planting-suitable-pollinating-varieties-sufficient-numbers / from memory
    (21, "apple:Queen Cox clone 18", "apple:Cox's Orange Pippin", "no", "no"),
    # Washington State University pear pollinizer and S-allele list ('Fruit set and S-alleles in pear',
    # 2020, treefruit.wsu.edu/article/fruit-set-and-s-alleles-in-pear/), values seen through a trade
    # copy / University of Maine Cooperative Extension 'Growing Fruit Trees in Maine: Pollination
    # Requirements' umaine.edu/fruit/growing-fruit-trees-in-maine/pollination-requirements/
    (22, "european pear:Bartlett", "european pear:Seckel", "no", "no"),
    # Washington State University pear pollinizer and S-allele list ('Fruit set and S-alleles in pear',
    # 2020, treefruit.wsu.edu/article/fruit-set-and-s-alleles-in-pear/), values seen through a trade
    # copy
    (23, "european pear:Bartlett", "european pear:Beurre Bosc", "yes", "yes"),
    # UK nursery trade pear pollination table
    (24, "european pear:Bartlett", "european pear:Louise Bonne of Jersey", "no", "no"),
    # UK nursery trade pear pollination table
    (25, "european pear:Doyenne du Comice", "european pear:Onward", "no", "no"),
    # Washington State University variety page treefruit.wsu.edu/variety/starkrimson/
    (26, "european pear:Clapp's Favorite", "european pear:Starkrimson", "no", "no"),
    # South Dakota State University breeder's reply, Ask Extension 2018
    # ask.extension.org/questions/455439 / University of Minnesota hardy fruit pages
    # mnhardy.umn.edu/varieties/fruit/pears
    (27, "european pear:Parker", "european pear:Luscious", "yes", "no"),
    # Ontario Harrow pear breeding report 1999 (international dwarf tree society compact fruit tree
    # journal)
    (28, "european pear:Harvest Queen", "european pear:Bartlett", "no", "no"),
    # UK nursery trade pear pollination table
    (29, "european pear:Bartlett", "european pear:Merton Pride", "yes", "no"),
    # Ask Extension 2015 'pollination partners in self-fertile hybrid pear varieties'
    # ask.extension.org/questions/292217
    (30, "european pear:Orient", "european pear:Pineapple", "no", "no"),
    # 'Asian Pears', Proc. First National Symposium on New Crops 1990,
    # hort.purdue.edu/newcrop/proceedings1990/V1-304.html
    (31, "asian pear:Ya Li", "asian pear:Tsu Li", "yes", "yes"),
    # 'Asian Pears', Proc. First National Symposium on New Crops 1990,
    # hort.purdue.edu/newcrop/proceedings1990/V1-304.html
    (32, "asian pear:Ya Li", "european pear:Bartlett", "no", "no"),
    # 'Asian Pears', Proc. First National Symposium on New Crops 1990,
    # hort.purdue.edu/newcrop/proceedings1990/V1-304.html
    (33, "asian pear:Kikusui", "asian pear:Nijisseiki", "no", "no"),
    # 'Asian Pears', Proc. First National Symposium on New Crops 1990,
    # hort.purdue.edu/newcrop/proceedings1990/V1-304.html / from memory
    (34, "asian pear:Hosui", "asian pear:Niitaka", "yes", "no"),
    # Washington State University pear pollinizer and S-allele list ('Fruit set and S-alleles in pear',
    # 2020, treefruit.wsu.edu/article/fruit-set-and-s-alleles-in-pear/), values seen through a trade
    # copy
    (35, "asian pear:Hosui", "european pear:Bartlett", "yes", "yes"),
    # Julius Kuehn-Institut 'Self-incompatibility (S) genotypes of cultivated sweet cherries - overview
    # update 2020' www.openagrar.de/receive/openagrar_mods_00064311 (read through a public copy) /
    # British Columbia Ministry of Agriculture home garden factsheet 'Pollination'
    # www.al.gov.bc.ca/treefrt/homegdn/pollinate.htm
    (36, "sweet cherry:Bing", "sweet cherry:Lambert", "no", "no"),
    # Julius Kuehn-Institut 'Self-incompatibility (S) genotypes of cultivated sweet cherries - overview
    # update 2020' www.openagrar.de/receive/openagrar_mods_00064311 (read through a public copy) /
    # European sweet cherry phenology data set 1978-2015, Scientific Data 3:160108 (2016): median full-
    # bloom difference from 'Burlat' at the same site and year, computed here
    (37, "sweet cherry:Bing", "sweet cherry:Van", "yes", "yes"),
    # Julius Kuehn-Institut 'Self-incompatibility (S) genotypes of cultivated sweet cherries - overview
    # update 2020' www.openagrar.de/receive/openagrar_mods_00064311 (read through a public copy) /
    # European sweet cherry phenology data set 1978-2015, Scientific Data 3:160108 (2016): median full-
    # bloom difference from 'Burlat' at the same site and year, computed here
    (38, "sweet cherry:Rainier", "sweet cherry:Bing", "yes", "yes"),
    # Julius Kuehn-Institut 'Self-incompatibility (S) genotypes of cultivated sweet cherries - overview
    # update 2020' www.openagrar.de/receive/openagrar_mods_00064311 (read through a public copy)
    (39, "sweet cherry:Van", "sweet cherry:Regina", "no", "no"),
    # Julius Kuehn-Institut 'Self-incompatibility (S) genotypes of cultivated sweet cherries - overview
    # update 2020' www.openagrar.de/receive/openagrar_mods_00064311 (read through a public copy) /
    # European sweet cherry phenology data set 1978-2015, Scientific Data 3:160108 (2016): median full-
    # bloom difference from 'Burlat' at the same site and year, computed here
    (40, "sweet cherry:Kordia", "sweet cherry:Regina", "yes", "yes"),
    # Julius Kuehn-Institut 'Self-incompatibility (S) genotypes of cultivated sweet cherries - overview
    # update 2020' www.openagrar.de/receive/openagrar_mods_00064311 (read through a public copy)
    (41, "sweet cherry:Burlat", "sweet cherry:Chelan", "no", "no"),
    # European sweet cherry phenology data set 1978-2015, Scientific Data 3:160108 (2016): median full-
    # bloom difference from 'Burlat' at the same site and year, computed here
    (42, "sweet cherry:Cristobalina", "sweet cherry:Burlat", "no", "no"),
    # Julius Kuehn-Institut 'Self-incompatibility (S) genotypes of cultivated sweet cherries - overview
    # update 2020' www.openagrar.de/receive/openagrar_mods_00064311 (read through a public copy) /
    # European sweet cherry phenology data set 1978-2015, Scientific Data 3:160108 (2016): median full-
    # bloom difference from 'Burlat' at the same site and year, computed here
    (43, "sweet cherry:Lapins", "sweet cherry:Regina", "partly", "not needed"),
    # Julius Kuehn-Institut 'Self-incompatibility (S) genotypes of cultivated sweet cherries - overview
    # update 2020' www.openagrar.de/receive/openagrar_mods_00064311 (read through a public copy) /
    # Colorado State University fact sheet text quoted in Ask Extension 231487 (2015)
    (44, "sweet cherry:Stella", "sweet cherry:Bing", "partly", "no"),
    # Julius Kuehn-Institut 'Self-incompatibility (S) genotypes of cultivated sweet cherries - overview
    # update 2020' www.openagrar.de/receive/openagrar_mods_00064311 (read through a public copy)
    (45, "sweet cherry:Sam", "sweet cherry:Vic", "no", "no"),
    # Julius Kuehn-Institut 'Self-incompatibility (S) genotypes of cultivated sweet cherries - overview
    # update 2020' www.openagrar.de/receive/openagrar_mods_00064311 (read through a public copy) / from
    # memory
    (46, "sweet cherry:Regal Lee", "sweet cherry:Minnie Royal", "yes", "yes"),
    # European sweet cherry phenology data set 1978-2015, Scientific Data 3:160108 (2016): median full-
    # bloom difference from 'Burlat' at the same site and year, computed here / MSU archive note on
    # pollen tubes in cherry
    (47, "sour cherry:Montmorency", "sweet cherry:Bing", "partly", "not needed"),
    # Utah State University Extension FAQ 1998/2007 extension.usu.edu/htm/faq/faq_q=1998
    (48, "european plum:Stanley", "japanese plum:Santa Rosa", "no", "no"),
    # Utah State University Extension FAQ 1998/2007 extension.usu.edu/htm/faq/faq_q=1998
    (49, "japanese plum:Santa Rosa", "japanese plum:Satsuma", "yes", "yes"),
    # HortScience 42(1):46-50 (2007) S-genotyping of Japanese plum
    (50, "japanese plum:Black Amber", "japanese plum:TC Sun", "no", "no"),
    # HortScience 42(1):46-50 (2007) S-genotyping of Japanese plum
    (51, "japanese plum:Queen Rosa", "japanese plum:Green Sun", "no", "no"),
    # British Columbia fruit growers' variety pages (plums)
    (52, "japanese plum:Santa Rosa", "japanese plum:Shiro", "yes", "yes"),
    # UK nursery trade plum pollination tables (two tables, which differ in places)
    (53, "european plum:Jefferson", "european plum:Coe's Golden Drop", "no", "no"),
    # Agronomy 2020, 10(2):264 European plum pollen donors in Norway / Horticulturae 2022, 8(1):55
    (54, "european plum:Opal", "european plum:Jubileum", "yes", "yes"),
    # Minnesota Agric. Expt. Station hybrid plum pollination trial 1950 (seen in abstract by a grower) /
    # University of Minnesota hardy fruit pages mnhardy.umn.edu/varieties/fruit/stone-fruit
    (55, "hybrid plum:Toka", "hybrid plum:Alderman", "yes", "partly"),
    # University of Saskatchewan advice reported in a prairie gardening article 2010 / Minnesota Agric.
    # Expt. Station hybrid plum pollination trial 1950 (seen in abstract by a grower)
    (56, "hybrid plum:Pembina", "hybrid plum:Superior", "no", "no"),
    # prairie gardening article 2010 / from memory
    (57, "hybrid plum:Wild American plum", "hybrid plum:La Crescent", "yes", "no"),
    # USDA ARS plum pox page (cross with other Prunus highly unlikely) / from memory
    (58, "hybrid plum:Toka", "european plum:Stanley", "no", "no"),
    # Iowa State University Extension 'Pollination Requirements for Tree Fruits' (2019)
    # hortnews.extension.iastate.edu/2019/05/pollination-requirements-tree-fruits / University of
    # Minnesota Extension Master Gardener column (northern Minnesota)
    (59, "apricot:Moongold", "apricot:Sungold", "yes", "yes"),
    # J. Amer. Soc. Hort. Sci. 121(6):1002-1005 (1996) first apricot incompatibility group
    (60, "apricot:Goldrich", "apricot:Hargrand", "no", "no"),
    # British Columbia Ministry of Agriculture home garden factsheet 'Pollination'
    # www.al.gov.bc.ca/treefrt/homegdn/pollinate.htm / Penn State Extension 'Pollination
    # Characteristics' extension.psu.edu/plants/gardening/fphg/getting-started/pollination-
    # characteristics
    (61, "peach:Redhaven", "peach:J.H. Hale", "yes", "no"),
    # Oregon State hazelnut cultivar lists and HortScience 53(6):904 (2018)
    (62, "hazelnut:Theta", "hazelnut:Jefferson", "yes", "not assessed"),
    # Oregon State hazelnut cultivar lists and HortScience 53(6):904 (2018)
    (63, "hazelnut:Barcelona", "hazelnut:Jefferson", "no", "not assessed"),
    # UK nursery trade fact sheet / from memory
    (64, "apple:Golden Delicious", "european pear:Bartlett", "no", "no"),
    # from memory
    (65, "sweet cherry:Stella", "european plum:Victoria", "no", "no"),
]


def _verdict(donor: str, receiver: str) -> Verdict:
    plants = [catalogue().cultivar(PlantKey.parse(name)) for name in (donor, receiver)]
    assert plants[0] is not None, donor
    assert plants[1] is not None, receiver
    return sets_fruit(plants[0], plants[1])


def _agrees(verdict: Verdict, published: str) -> bool:
    if published == "not needed":
        return not verdict.needed and verdict.alone is SelfFruit.YES
    if published == "not assessed":
        return verdict.verdict in {"yes", "partly", "no", "not proved"}
    return verdict.verdict == published


@pytest.mark.parametrize(("number", "a", "b", "a_to_b", "b_to_a"), PAIRS)
def test_pair_comes_out_as_published(number: int, a: str, b: str, a_to_b: str, b_to_a: str) -> None:
    for donor, receiver, published in ((a, b, a_to_b), (b, a, b_to_a)):
        verdict = _verdict(donor, receiver)
        assert _agrees(verdict, published), (number, donor, receiver, verdict.verdict, verdict.reasons)


@pytest.mark.parametrize(("number", "a", "b", "a_to_b", "b_to_a"), PAIRS)
def test_every_refusal_names_its_step_and_a_source(
    number: int, a: str, b: str, a_to_b: str, b_to_a: str
) -> None:
    for donor, receiver in ((a, b), (b, a)):
        verdict = _verdict(donor, receiver)
        assert all(reason.words and reason.source for reason in verdict.reasons), number
        assert (verdict.failed is not None) == (verdict.verdict == "no")


def test_the_list_is_whole() -> None:
    assert [pair[0] for pair in PAIRS] == list(range(1, 66))
