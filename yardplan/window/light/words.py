"""What the light's measures, plantings, days and clocks are called."""

from __future__ import annotations

from datetime import date

from yardplan.sun.ground_kinds import Kind, Planting, Wanted

#: A year of 365 days: a day of no year is meant.
YEAR = 2026
_MONTHS = (
    "January", "February", "March", "April", "May", "June", "July", "August", "September", "October",
    "November", "December",
)

#: As they stand in the menu, with their access keys.
KIND_WORDS: dict[Kind, str] = {
    "season": "Growing season, &mean",
    "midsummer": "Mid&summer day",
    "worst month": "&Darkest month of the season",
    "morning": "Mo&rning sun of the season",
    "date": "&Day of the shadows",
    "open light": "Share of &open light",
}
PLANTING_WORDS: dict[Planting, str] = {
    "planted": "A&fter planting",
    "bare": "&Before planting",
    "taken": "What planting &takes",
}
KIND_TIPS: dict[Kind, str] = {
    "season": "Hours of direct sun a day, mean of the growing season",
    "midsummer": "Hours of direct sun on the longest day",
    "worst month": "At each place its darkest month of the growing season",
    "morning": "Hours before ten by the sun, mean of the season: they dry the leaves",
    "date": "Hours of direct sun on the day chosen for the shadows",
    "open light": "Sun and sky together, as a share of what an open place gets over the season",
}
PLANTING_TIPS: dict[Planting, str] = {
    "planted": "With everything on the plan, at the growth year chosen",
    "bare": "With only what stands there already: houses, fences, trees that were there",
    "taken": "How much of the light the planting takes from the ground",
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
    return f"{day.day} {_MONTHS[day.month - 1]}"


def month_name(month: int) -> str:
    """`June` for 6."""
    return _MONTHS[month - 1]


def season_words(season: tuple[str, str]) -> str:
    """`1 April to 30 September`."""
    first, last = (say_date(date_of(day)) for day in season)
    return f"{first} to {last}"


def title_of(wanted: Wanted) -> str:
    """The head of the legend: what the figures are."""
    if wanted.kind == "open light":
        return "Share of open light" if wanted.planting != "taken" else "Open light that planting takes"
    what = "Direct sun, hours a day"
    if wanted.planting == "taken":
        return "Hours a day that planting takes"
    return what


def when_of(wanted: Wanted, season: tuple[str, str]) -> str:
    """Of which days the figures are."""
    return {
        "season": f"mean, {season_words(season)}",
        "midsummer": "on the longest day",
        "worst month": "in the darkest month at each place",
        "morning": f"before 10 by the sun, {season_words(season)}",
        "date": f"on {say_date(wanted.day)}" if wanted.day else "on the longest day",
        "open light": f"sun and sky, {season_words(season)}",
    }[wanted.kind]


def grown_words(year: int | None, planting: Planting) -> str:
    """`full size` or `year 5`, or that nothing is planted."""
    if planting == "bare":
        return "before planting"
    return "full size" if year is None else "at planting" if year == 0 else f"year {year}"


def names_in(scene_names: dict[str, str]) -> dict[str, str]:
    """Names of things that take light, with the far ones."""
    from yardplan.sun.scene import HORIZON, SLOPE

    return scene_names | {HORIZON: "the sky line", SLOPE: "the slope of the ground"}

