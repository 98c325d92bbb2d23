"""Where facts of the site came from: kept in English in the file, said in the language shown."""

import re

from support.builders import yard_of

from yardplan.files.reading import read_yard
from yardplan.places.facts import facts_at, facts_for, to_site_fields
from yardplan.places.lookup import find_places
from yardplan.shipped import folder
from yardplan.window.dialogs.site_card import origin_words
from yardplan.window.languages import speak
from yardplan.yard import edits
from yardplan.yard.origin_words import origin_said
from yardplan.yard.site import Site

PLACES = ("14850", "Lucca", "Springfield, MO", "99501", "Singapore", "51.5, 7.1", "42.4, -76.5")
#: English words that no German line says: of every piece that a text may be made of.
ENGLISH = re.compile(
    r"\b(away|above|below|height|difference|known|normals|model|match|freeze|dates|estimated|from|that|of|the"
    r"|guide|rare|possible|place|about|zone|near|town|looked|code|line|typed)\b"
)


def sites() -> list[Site]:
    """Sites of files as they were shipped, and of look-ups of every sort."""
    looked_up = [edits.set_site(yard_of(), **to_site_fields(facts_for(words))).site for words in PLACES]
    typed = facts_at(find_places("14850", 1)[0], 350.0)
    shipped = [read_yard(path).site for path in sorted(folder("sample_yards").glob("*.yard"))]
    return [*looked_up, edits.set_site(yard_of(), **to_site_fields(typed)).site, *shipped]


def test_files_keep_english_whatever_is_spoken(german: None) -> None:
    spoken = [site.origins for site in sites()]
    speak("en")
    assert spoken == [site.origins for site in sites()]


def test_every_origin_is_said_in_german(german: None) -> None:
    lines = [line for site in sites() for line in origin_words(site)]
    assert len(lines) > 50
    left = [line for line in lines if ENGLISH.search(line)]
    assert not left, "\n".join(left)


def test_names_and_what_a_person_wrote_stay_as_they_are(german: None) -> None:
    assert origin_said("my own thermometer; see the note") == "my own thermometer; see the note"
    said = origin_said("that of Red, 3 km away; GeoNames")
    assert "Red, 3 km" in said
    assert origin_said("lot line in clay.json") == "Grundstücksgrenze in clay.json"


def test_in_english_they_are_said_as_they_stand() -> None:
    for site in sites()[: len(PLACES) + 1]:
        assert [origin_said(origin.text) for origin in site.origins] == [one.text for one in site.origins]
