"""What the light's measures, plantings, days and clocks are called."""

from __future__ import annotations

from datetime import date

from yardplan.language import later, tr
from yardplan.sun.ground_kinds import Kind, Planting, Wanted
from yardplan.window.panels.days import MONTHS

#: A year of 365 days: a day of no year is meant.
YEAR = 2026

#: As they stand in the menu, with their access keys.
KIND_WORDS: dict[Kind, str] = {
    "season": later("Growing season, &mean"),
    "midsummer": later("Mids&ummer day"),
    "worst month": later("&Darkest month of the season"),
    "morning": later("Mo&rning sun of the season"),
    "date": later("Da&y of the shadows"),
    "open light": later("Share of &open light"),
}
PLANTING_WORDS: dict[Planting, str] = {
    "planted": later("A&fter planting"),
    "bare": later("&Before planting"),
    "taken": later("What planting &takes"),
}
KIND_TIPS: dict[Kind, str] = {
    "season": later("Hours of direct sun a day, mean of the growing season"),
    "midsummer": later("Hours of direct sun on the longest day"),
    "worst month": later("At each place its darkest month of the growing season"),
    "morning": later("Hours before ten by the sun, mean of the season: they dry the leaves"),
    "date": later("Hours of direct sun on the day chosen for the shadows"),
    "open light": later("Sun and sky together, as a share of what an open place gets over the season"),
}
PLANTING_TIPS: dict[Planting, str] = {
    "planted": later("With everything on the plan, at the growth year chosen"),
    "bare": later("With only what stands there already: houses, fences, trees that were there"),
    "taken": later("How much of the light the planting takes from the ground"),
}


def plain(words: str) -> str:
    """Menu words without the mark of the access key."""
    return words.replace("&", "")


def date_of(day: str) -> date:
    """`MM-DD` as a date of the year meant; the 29th of February as the 28th."""
    month, number = (int(part) for part in day.split("-"))
    return date(YEAR, month, min(number, 28) if month == 2 else number)


def say_date(day: date) -> str:
    """`21 June`."""
    return tr("{day} {month}", day=day.day, month=month_name(day.month))


def month_name(month: int) -> str:
    """`June` for 6."""
    return tr(MONTHS[month - 1])


def season_words(season: tuple[str, str]) -> str:
    """`1 April to 30 September`."""
    first, last = (say_date(date_of(day)) for day in season)
    return tr("{first} to {last}", first=first, last=last)


def title_of(wanted: Wanted) -> str:
    """The head of the legend: what the figures are."""
    if wanted.kind == "open light":
        return (
            tr("Share of open light") if wanted.planting != "taken" else tr("Open light that planting takes")
        )
    what = tr("Direct sun, hours a day")
    if wanted.planting == "taken":
        return tr("Hours a day that planting takes")
    return what


def when_of(wanted: Wanted, season: tuple[str, str]) -> str:
    """Of which days the figures are."""
    return {
        "season": tr("mean, {season}", season=season_words(season)),
        "midsummer": tr("on the longest day"),
        "worst month": tr("in the darkest month at each place"),
        "morning": tr("before 10 by the sun, {season}", season=season_words(season)),
        "date": tr("on {day}", day=say_date(wanted.day)) if wanted.day else tr("on the longest day"),
        "open light": tr("sun and sky, {season}", season=season_words(season)),
    }[wanted.kind]


def grown_words(year: int | None, planting: Planting) -> str:
    """`full size` or `year 5`, or that nothing is planted."""
    if planting == "bare":
        return tr("before planting")
    return (
        tr("full size") if year is None else tr("at planting") if year == 0 else tr("year {year}", year=year)
    )
