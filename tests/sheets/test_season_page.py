"""The season on paper: all rows over its pages, partners in words, the chosen day."""

import pytest
from support.builders import yard_of
from support.orchards import row_of, site

from yardplan.checks.survey import Survey, survey_of
from yardplan.drawing.season_picture import season_chart, shared_words
from yardplan.plants.catalogue import catalogue
from yardplan.plants.pollen_place import place_for
from yardplan.plants.season import overlaps, season_lines
from yardplan.sheets.paper import paper_named
from yardplan.sheets.season_page import season_pages


def survey(*keys: str) -> Survey:
    return survey_of(yard_of(*row_of(*keys), width=400, site=site(name="Orchard")))


def shown(pages: tuple) -> list[str]:
    return [row.thing for page in pages for row in page.draw.chart.rows]


def test_every_variety_stands_on_one_of_the_pages(qapp) -> None:
    keys = [str(key) for key in catalogue().cultivars if key.crop == "apple"][:45]
    pages = season_pages(survey(*keys), paper_named("A4").turned())
    assert len(pages) > 1
    assert sorted(shown(pages)) == sorted(f"P{n}" for n in range(1, 46))
    assert [page.title for page in pages][:2] == ["Season", "Season, page 2"]


def test_the_chosen_day_is_marked(qapp) -> None:
    page = season_pages(survey("apple:Gala"), paper_named("A4").turned(), "04-24")[0]
    assert page.draw.chart.day == 114
    assert season_pages(survey("apple:Gala"), paper_named("A4").turned())[0].draw.chart.day is None


def test_partners_are_named_with_the_days_shared() -> None:
    of = survey("apple:Gala", "apple:Empire", "peach:Redhaven")
    place = place_for(of.yard.site, {}, of.catalogue.cultivars)
    lines = season_lines(of.stand, place, of.yard.site)
    pairs = overlaps(lines, place)
    gala = next(line for line in lines if line.cultivar.name == "Gala")
    peach = next(line for line in lines if line.cultivar.name == "Redhaven")
    days = round(pairs[0][2].shared)
    assert shared_words(gala, pairs) == f"{days} days with P2"
    assert shared_words(peach, pairs) == ""
    row = next(row for row in season_chart(of.yard.site, lines, pairs).rows if row.thing == "P1")
    assert row.shared == f"{days} days with P2"
    assert row.bloom is not None
    assert row.bloom.error == pytest.approx(gala.bloom.error)


def test_a_bare_yard_and_one_without_climate_say_so(qapp) -> None:
    bare = season_pages(survey_of(yard_of()), paper_named("A4").turned())[0]
    assert bare.draw.notes == ("Nothing is planted yet.",)
    undated = season_pages(survey_of(yard_of(*row_of("apple:Gala"))), paper_named("A4").turned())[0]
    assert "moved here from" in undated.draw.notes[-1]
