"""Does every plant get the sun its crop needs, and if not, what takes it (rules light-*)."""

from __future__ import annotations

from collections.abc import Iterator

import shapely
from attrs import frozen

from yardplan.checks.check import Check, Wording
from yardplan.checks.compass import SIDES, compass
from yardplan.checks.finding import Figure, Finding, Mark, Weight
from yardplan.checks.rules import Rules
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.plants.crop import Crop
from yardplan.sun.light import LightReport, PlantLight
from yardplan.sun.scene import FAR_WORDS
from yardplan.yard.edits import points_of
from yardplan.yard.ground import Outline, Point

NAME = "light"
#: How many takers of light are named, and the least hours worth naming.
_NAMED = 3
_WORTH_NAMING = 0.1


@frozen
class Grown:
    """Something planted, its crop and where it stands."""

    id: str
    crop: Crop
    place: Point
    mark: Mark


def grown_in(survey: Survey) -> Iterator[Grown]:
    """Every planted thing whose crop is known."""
    for plant in survey.stand.plants:
        if plant.planted and plant.crop is not None:
            yield Grown(plant.id, plant.crop, plant.place, Mark((plant.place,)))
    for row in survey.stand.rows:
        if row.crop is not None and row.row.line:
            yield Grown(row.id, row.crop, _middle(row.row.line), Mark(row.row.line, "line"))
    for bed in survey.stand.beds:
        if bed.crop is not None and bed.bed.outline:
            yield Grown(bed.id, bed.crop, _middle(bed.bed.outline), Mark(bed.bed.outline, "area"))


def _middle(points: Outline) -> Point:
    return (sum(p[0] for p in points) / len(points), sum(p[1] for p in points) / len(points))


def _nearest(survey: Survey, taker: str, place: Point) -> Point | None:
    """The point of a thing that lies nearest to a place."""
    thing = survey.yard.find(taker)
    if thing is None:
        return None
    points = points_of(thing)
    if len(points) == 1:
        return points[0]
    line = shapely.LineString(points)
    on_line = line.interpolate(line.project(shapely.Point(place)))
    return (float(on_line.x), float(on_line.y))


def _takers(survey: Survey, grown: Grown, light: PlantLight) -> dict[str, Figure]:
    """The things that take most light, with hours and the side on which they stand."""
    shown: dict[str, Figure] = {}
    worth = [(taker, hours) for taker, hours in light.shaded_by if hours >= _WORTH_NAMING]
    for number, (taker, hours) in enumerate(worth[:_NAMED], start=1):
        shown[f"hours_{number}"] = Figure(hours, "hours")
        far = FAR_WORDS.get(taker)
        shown[f"by_{number}"] = Figure(far, "text") if far else Figure(taker, "thing")
        at = _nearest(survey, taker, grown.place)
        if at is not None:
            side = compass(grown.place, at, survey.yard.site.north)
            if side in SIDES:
                shown[f"side_{number}"] = Figure(SIDES[side], "text")
    return shown


def conflict_hours(rules: Rules, crop: Crop) -> float:
    """Hours of sun a day below which a crop's place is a conflict."""
    needed = rules.value("light-needed") * crop.sun_needed
    return max(rules.value("light-shade"), rules.value("light-conflict") * needed)


def _judged(survey: Survey, grown: Grown, light: PlantLight) -> tuple[str, Weight, str] | None:
    """Kind, weight and rule of a finding, or None where the sun suffices."""
    rules, hours = survey.rules, light.hours
    needed = rules.value("light-needed") * grown.crop.sun_needed
    if hours < rules.value("light-shade"):
        return "shade", Weight.CONFLICT, "light-shade"
    if hours < conflict_hours(rules, grown.crop):
        return "too_dark", Weight.CONFLICT, "light-conflict"
    if hours < needed:
        return "dim", Weight.CAUTION, "light-needed"
    if hours < rules.value("light-good") * grown.crop.sun_good:
        return "could_be_better", Weight.ADVICE, "light-good"
    return None


def _finding(survey: Survey, grown: Grown, light: PlantLight) -> Finding | None:
    judged = _judged(survey, grown, light)
    if judged is None:
        return None
    kind, weight, rule = judged
    shown = {
        "hours": Figure(light.hours, "hours"),
        "needed": Figure(survey.rules.value("light-needed") * grown.crop.sun_needed, "hours"),
        "good": Figure(survey.rules.value("light-good") * grown.crop.sun_good, "hours"),
        "open": Figure(light.open_hours, "hours"),
        "crop": Figure(grown.crop.name, "text"),
        "midsummer": Figure(light.hours_midsummer, "hours"),
        "open_light": Figure(light.open_light, "share"),
    }
    return survey.finding(NAME, kind, weight, (grown.id,), rule, shown | _takers(survey, grown, light),
                          (grown.mark,))


def run(survey: Survey) -> list[Finding]:
    """Findings on light at the year of the survey; none while the light is not known."""
    report = survey.light
    if not isinstance(report, LightReport):
        return []
    found: list[Finding] = []
    for grown in grown_in(survey):
        light = report.of(grown.id)
        finding = _finding(survey, grown, light) if light is not None else None
        if finding is not None:
            found.append(finding)
    return found


_CLEARS = later("Move it to where the sun reaches for at least {needed}[, or clear or lower {by_1}].")

CHECK = Check(
    name=NAME,
    title=later("Sun"),
    run=run,
    near=False,
    light=True,
    wording={
        "shade": Wording(
            "{a} gets {hours} of direct sun a day over the season; that is shade, and {crop} needs {needed}"
            "[: shade of {hours_1} from {by_1}][ to {side_1}][, {hours_2} from {by_2}][ to {side_2}]"
            "[, {hours_3} from {by_3}][ to {side_3}].",
            _CLEARS, "only {hours} of sun",
        ),
        "too_dark": Wording(
            "{a} gets {hours} of direct sun a day over the season; {crop} needs {needed}"
            "[: shade of {hours_1} from {by_1}][ to {side_1}][, {hours_2} from {by_2}][ to {side_2}]"
            "[, {hours_3} from {by_3}][ to {side_3}].",
            _CLEARS, "{hours} of sun, needs {needed}",
        ),
        "dim": Wording(
            "{a} gets {hours} of direct sun a day over the season, somewhat under the {needed} that {crop} "
            "needs[: shade of {hours_1} from {by_1}][ to {side_1}][, {hours_2} from {by_2}][ to {side_2}]"
            "[, {hours_3} from {by_3}][ to {side_3}].",
            _CLEARS, "{hours} of sun, needs {needed}",
        ),
        "could_be_better": Wording(
            "{a} gets {hours} of direct sun a day over the season: enough, but {crop} does best with {good}"
            "[: shade of {hours_1} from {by_1}][ to {side_1}][, {hours_2} from {by_2}][ to {side_2}]"
            "[, {hours_3} from {by_3}][ to {side_3}].",
            "A place with {good} of sun would ripen more and better fruit.",
            "{hours} of sun, best with {good}",
        ),
    },
)
