import pytest
from support.builders import plant, yard_of

from yardplan.checks import ripening
from yardplan.checks.finding import Weight
from yardplan.checks.survey import survey_of
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

#: Klein-Altendorf 1991-2019, degrees C: apple in full bloom about 27 April by these means.
MEANS = (2.57, 3.24, 6.33, 9.78, 13.57, 16.50, 18.68, 18.14, 14.64, 10.54, 6.32, 3.34)


def yard(what: str, first_frost: str | None) -> Yard:
    site = Site(
        latitude=50.6, longitude=7.0, monthly_means=MEANS, last_frost="05-01", first_frost=first_frost
    )
    return yard_of(plant("A1", what, (5, 5)), site=site)


@pytest.mark.parametrize(
    ("what", "first_frost", "kinds"),
    [
        ("apple:Granny Smith", "10-25", []), ("apple:Granny Smith", "09-05", ["seldom"]),
        ("apple:Gravenstein", "09-05", []), ("apple:Granny Smith", None, []),
    ],
)
def test_harvest_against_the_first_frost(what: str, first_frost: str | None, kinds: list[str]):
    assert [f.kind for f in ripening.run(survey_of(yard(what, first_frost)))] == kinds


def test_frost_of_the_next_year_in_the_south():
    assert ripening.frost_after(280.0, "05-10") == 130 + 365
    assert ripening.frost_after(117.0, "10-10") == 283


def test_an_earlier_frost_never_helps():
    order = {None: 0, Weight.ADVICE: 1, Weight.CAUTION: 2}

    def weight(frost: str) -> int:
        found = ripening.run(survey_of(yard("apple:Granny Smith", frost)))
        return order[found[0].weight if found else None]

    weights = [weight(day) for day in ("08-20", "09-05", "09-20", "10-05", "10-20", "11-10")]
    assert weights == sorted(weights, reverse=True)
