import pytest

from yardplan.care.conditions import applies
from yardplan.care.measures import said
from yardplan.care.tables import care_rows, cautions, crops_of, figures, groups, rows_for, rows_of
from yardplan.plants.catalogue import catalogue
from yardplan.plants.sources import bibliography


def test_rows_name_crops_cautions_and_sources_that_there_are() -> None:
    crops, sources, codes = set(catalogue().crops), bibliography(), cautions()
    seen: set[str] = set()
    for row in care_rows():
        assert row.id not in seen
        seen.add(row.id)
        assert row.crops <= crops, row.id
        assert set(row.sources) <= set(sources), row.id
        assert set(row.cautions) <= set(codes), row.id
        assert row.start <= row.end, row.id
    assert all(source in sources for _, source in codes.values())


@pytest.mark.parametrize("name", ["figures.csv", "anchors.csv", "no-bees.csv", "yield-rows.csv", "hangs.csv"])
def test_every_figure_has_its_source(name: str) -> None:
    assert all(row["source"] in bibliography() for row in rows_of(name))


def test_every_crop_has_work() -> None:
    assert all(rows_for(crop) for crop in catalogue().crops)
    assert all(crops <= set(catalogue().crops) for crops in groups().values())
    assert crops_of("bush currants; apple") == {"red currant", "white currant", "gooseberry", "apple"}
    assert figures()["spray lead before bloom"] == 3


def test_conditions_are_known_ones() -> None:
    from support import cares

    from yardplan.care.things import care_things
    from yardplan.checks.survey import survey_of

    thing = care_things(survey_of(cares.orchard(cares.site())))[0]
    for row in care_rows():
        assert applies(row, thing, cares.site()) in (True, False)


@pytest.mark.parametrize(("text", "metric", "imperial"), [
    ("[6-8 in] apart", "15-20 cm apart", "6-8 in apart"),
    ("[32 F]", "0 °C", "32 °F"),
    ("[2-3 ft]", "0.6-0.9 m", "2-3 ft"),
    ("[1 in] of rain", "2.5 cm of rain", "1 in of rain"),
    ("[0.25 in] mesh", "6 mm mesh", "0.25 in mesh"),
    ("[5-10 gal]", "19-38 L", "5-10 gal"),
    ("[0.1 lb]", "50 g", "0.1 lb"),
    ("[100 ft]", "30 m", "100 ft"),
    ("[20-25 F]", "-7 to -4 °C", "20-25 °F"),
    ("plain [words]", "plain [words]", "plain [words]"),
])
def test_measures_in_the_readers_units(text: str, metric: str, imperial: str) -> None:
    assert said(text, "metric") == metric
    assert said(text, "imperial") == imperial
