"""`yardplan sun FILE`: hours of direct sun at plants, rows and beds, and who takes the rest."""

from __future__ import annotations

import argparse
from datetime import date
from typing import Any

from yardplan.checks.wording import names_of
from yardplan.cli.check import yard_in, year_of
from yardplan.cli.output import CommandError, print_json, print_table
from yardplan.plants.catalogue import catalogue
from yardplan.plants.stand import Stand
from yardplan.plants.standing import stand_of
from yardplan.sun.clock import ZoneError, clock_text, sun_times, zone_of
from yardplan.sun.light import LightReport, PlantLight, day_report, light_report
from yardplan.sun.position import LatitudeError
from yardplan.sun.scene import HORIZON, SLOPE, Scene, scene_of
from yardplan.yard.yard import Yard

_MONTHS = (
    "none", "January", "February", "March", "April", "May", "June", "July", "August", "September", "October",
    "November", "December",
)
_NAMED = 3


def add_parser(subparsers: Any) -> None:
    """Add the command's words and options."""
    parser = subparsers.add_parser(
        "sun", help="hours of direct sun",
        description="Hours of direct sun a day at every plant, row and bed, and what takes the rest.",
    )
    parser.add_argument("file", help="a yard file (.yard)")
    parser.add_argument("--year", default="mature", help="years after planting, or 'mature' (the default)")
    parser.add_argument("--date", help="hours on one date, YYYY-MM-DD, beside the season's")
    parser.add_argument("--json", action="store_true", help="print JSON")
    parser.add_argument("--png", metavar="OUT", help="write the hours over the ground as a picture")


def _date_of(text: str | None) -> date | None:
    if text is None:
        return None
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise CommandError(f"--date {text}: write a date as YYYY-MM-DD, for example 2026-06-21") from None


def _scene(yard: Yard, stand: Stand) -> Scene:
    try:
        zone_of(yard.site)
        return scene_of(yard, stand)
    except (LatitudeError, ZoneError) as error:
        raise CommandError(f"the yard's site: {error}") from None


def _rounded(value: float) -> float:
    return round(value, 6)


def _one(light: PlantLight, on_day: PlantLight | None) -> dict[str, Any]:
    """Figures of one thing as plain values: hours a day, shares 0 to 1."""
    shown: dict[str, Any] = {
        "id": light.id, "hours": _rounded(light.hours), "hours_midsummer": _rounded(light.hours_midsummer),
        "hours_worst_month": _rounded(light.hours_worst_month), "worst_month": light.worst_month,
        "hours_morning": _rounded(light.hours_morning), "open_light": _rounded(light.open_light),
        "hours_open": _rounded(light.open_hours),
        "shaded_by": [{"id": by, "hours": _rounded(hours)} for by, hours in light.shaded_by],
    }
    if on_day is not None:
        shown["hours_on_date"] = _rounded(on_day.hours)
    return shown


def as_json(
    scene: Scene, report: LightReport, on_day: LightReport | None, day: date | None
) -> dict[str, Any]:
    """The whole answer as plain values; see README.md for names and units."""
    times = _day_json(scene, day) if day is not None else {}

    def listed(kind: str) -> list[dict[str, Any]]:
        dated = getattr(on_day, kind) if on_day is not None else {}
        return [_one(light, dated.get(light.id)) for light in getattr(report, kind).values()]

    grid = report.field.grid
    return {
        "yard": scene.site.name, "year": "mature" if report.year is None else report.year,
        "season": list(report.season), "hours_open": _rounded(report.open_hours), **times,
        "plants": listed("plants"), "rows": listed("rows"), "beds": listed("beds"),
        "field": {
            "x0": grid.x0, "y0": grid.y0, "cell": grid.cell, "rows": grid.rows, "columns": grid.cols,
            "hours_mean": _rounded(float(report.field.hours.mean())),
            "hours_least": _rounded(float(report.field.hours.min())),
            "hours_most": _rounded(float(report.field.hours.max())),
        },
    }


def _day_json(scene: Scene, day: date) -> dict[str, Any]:
    times = sun_times(day, scene.site)
    zone = zone_of(scene.site)
    return {
        "date": day.isoformat(), "day": times.day,
        "sunrise": times.rise.astimezone(zone).isoformat(timespec="minutes") if times.rise else None,
        "sunset": times.set.astimezone(zone).isoformat(timespec="minutes") if times.set else None,
    }


def _names(yard: Yard) -> dict[str, str]:
    return names_of(yard) | {HORIZON: "the horizon", SLOPE: "the slope"}


def _table_row(light: PlantLight, on_day: PlantLight | None, names: dict[str, str]) -> list[str]:
    taken = [f"{hours:.1f} h {names.get(by, by)}" for by, hours in light.shaded_by if hours >= 0.05][:_NAMED]
    row = [
        names.get(light.id, light.id), f"{light.hours:.1f}", f"{light.hours_midsummer:.1f}",
        f"{light.hours_worst_month:.1f} {_MONTHS[light.worst_month][:3]}", f"{light.hours_morning:.1f}",
        f"{light.open_light:.0%}",
    ]
    if on_day is not None:
        row.append(f"{on_day.hours:.1f}")
    return [*row, ", ".join(taken) or "nothing"]


def _day_words(date_text: str) -> str:
    """`1 April` from `04-01`."""
    month, day = date_text.split("-")
    return f"{int(day)} {_MONTHS[int(month)]}"


def _print(
    yard: Yard, scene: Scene, report: LightReport, on_day: LightReport | None, day: date | None
) -> None:
    size = "at full size" if report.year is None else f"in year {report.year}"
    print(f"{yard.site.name}, {size}: hours of direct sun a day, {_day_words(report.season[0])} to "
          f"{_day_words(report.season[1])}; "
          f"an open place has {report.open_hours:.1f}")
    if day is not None:
        print(_day_text(scene, day))
    heads = ["", "season", "midsummer", "worst month", "morning", "open light"]
    heads += [day.isoformat()] if day is not None else []
    names = _names(yard)
    rows = [
        _table_row(light, on_day.of(light.id) if on_day is not None else None, names)
        for kind in (report.plants, report.rows, report.beds) for light in kind.values()
    ]
    if rows:
        print_table([*heads, "shaded by"], rows)
    else:
        print("There are no plants, rows or beds.")


def _day_text(scene: Scene, day: date) -> str:
    times = sun_times(day, scene.site)
    if times.rise is None or times.set is None:
        return f"{day.isoformat()}: the sun {times.day}"
    rise, set_ = clock_text(times.rise, scene.site), clock_text(times.set, scene.site)
    return f"{day.isoformat()}: sunrise {rise}, sunset {set_}"


def _write_picture(yard: Yard, stand: Stand, report: LightReport, path: str) -> None:
    try:
        from yardplan.drawing.light_file import write_png
    except ImportError as error:
        raise CommandError(f"--png needs PySide6, which cannot be loaded: {error}") from None
    try:
        write_png(yard, stand, report, path)
    except OSError as error:
        raise CommandError(f"cannot write {path}: {error.strerror or error}") from None


def run(args: argparse.Namespace) -> int:
    """Report the light; always 0. Raises CommandError."""
    yard, day = yard_in(args.file), _date_of(args.date)
    stand = stand_of(yard, catalogue(), year_of(args.year))
    scene = _scene(yard, stand)
    report = light_report(scene)
    on_day = day_report(scene, day) if day is not None else None
    if args.png:
        _write_picture(yard, stand, on_day or report, args.png)
    if args.json:
        print_json(as_json(scene, report, on_day, day))
    else:
        _print(yard, scene, report, on_day, day)
    return 0
