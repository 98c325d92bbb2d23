import pytest
from attrs import evolve
from support.builders import plant, yard_of

from yardplan.checks import rotation
from yardplan.checks.survey import survey_of
from yardplan.yard.planting import Bed, Earlier, PlantKey, Row

OUTLINE = ((8.0, 8.0), (12.0, 8.0), (12.0, 12.0), (8.0, 12.0))


def strawberries(before: str, until: int | None, planted: int | None = 2027) -> list[str]:
    bed = Bed(
        id="B1", outline=OUTLINE, plant=PlantKey("strawberry", "Honeoye"), planted=planted,
        earlier=(Earlier(crop=before, until=until),),
    )
    return [f.kind for f in rotation.run(survey_of(yard_of(beds=(bed,))))]


@pytest.mark.parametrize(
    ("before", "until", "kinds"),
    [
        ("tomato", 2024, ["wilt"]), ("tomato", 2022, []), ("potato", None, ["wilt"]),
        ("red raspberry", 2025, ["wilt"]), ("maize", 2026, []), ("sweet cherry", 2025, ["wilt"]),
    ],
)
def test_strawberries_wait_five_years(before: str, until: int | None, kinds: list[str]):
    assert strawberries(before, until) == kinds


def test_brambles_wait_three():
    row = Row(
        id="R1", plant=PlantKey("red raspberry", "Latham"), line=((1, 1), (9, 1)), count=9, spacing=1,
        planted=2027, earlier=(Earlier(crop="pepper", until=2025),),
    )
    assert [f.kind for f in rotation.run(survey_of(yard_of(rows=(row,))))] == ["wilt"]
    later = evolve(row, earlier=(Earlier(crop="pepper", until=2024),))
    assert rotation.run(survey_of(yard_of(rows=(later,)))) == []


@pytest.mark.parametrize(
    ("before", "kinds"),
    [("apple", ["replant"]), ("crabapple", ["replant"]), ("sweet cherry", []), ("maize", [])],
)
def test_the_same_fruit_in_the_same_hole(before: str, kinds: list[str]):
    tree = plant("A1", "apple:Liberty", (5, 5), planted=2027, earlier=(Earlier(crop=before, until=2010),))
    assert [f.kind for f in rotation.run(survey_of(yard_of(tree)))] == kinds


def test_a_wait_of_ones_own():
    bed = Bed(
        id="B1", outline=OUTLINE, plant=PlantKey("strawberry", "Honeoye"), planted=2027,
        earlier=(Earlier(crop="tomato", until=2023),),
    )
    yard = yard_of(beds=(bed,), rules={"rotation-strawberry": 3.0})
    assert rotation.run(survey_of(yard)) == []
