"""Yards with a known climate for tests of care."""

from __future__ import annotations

from typing import Any

from support.builders import plant
from yardplan.care.tasks import CarePlan, CareTask, care_plan
from yardplan.checks.survey import survey_of
from yardplan.yard.planting import PlantKey, Row
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

#: Monthly means of Klein-Altendorf, 1991-2019 (University of Bonn), for which full bloom dates are published.
MEANS = (2.57, 3.24, 6.33, 9.78, 13.57, 16.50, 18.68, 18.14, 14.64, 10.54, 6.32, 3.34)


def site(**fields: Any) -> Site:
    """A site with that climate."""
    given: dict[str, Any] = {
        "name": "Test yard", "latitude": 50.6, "longitude": 7.0, "place": "Klein-Altendorf", "zone": "7b",
        "monthly_means": MEANS, "last_frost": "05-05", "first_frost": "10-15",
    }
    return Site(**(given | fields))


def mirrored() -> Site:
    """The same climate south of the equator: everything half a year later."""
    return site(latitude=-50.6, monthly_means=MEANS[6:] + MEANS[:6], last_frost="11-05", first_frost="04-15")


def bare() -> Site:
    """A site of which nothing is known."""
    return Site()


def orchard(where: Site, **fields: Any) -> Yard:
    """An apple, a peach, a blueberry and a row of raspberries, planted in 2023."""
    return Yard(
        site=where,
        plantings=(
            plant("A1", "apple:Idared", (3, 4), rootstock="M26", planted=2023),
            plant("PE1", "peach:Redhaven", (9, 4), planted=2023),
            plant("B1", "northern highbush blueberry:Bluecrop", (14, 4), planted=2023),
        ),
        rows=(Row(id="R1", plant=PlantKey("red raspberry", "Latham"), line=((1, 1), (6, 1)), count=10,
                  spacing=0.5, planted=2023),),
        **fields,
    )


def plan(yard: Yard, year: int = 2027) -> CarePlan:
    """The yard's care in a year."""
    return care_plan(survey_of(yard), year)


def tasks(found: CarePlan, row: str) -> list[CareTask]:
    """The tasks of one row of the care table."""
    return [task for task in found.tasks if task.row == row]
