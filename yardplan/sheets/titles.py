"""What sheets and the documents that bind them are called."""

from __future__ import annotations

from collections.abc import Sequence

from yardplan.language import later, mid_sentence, tr, tr_n

#: What each sheet is called, in the order in which they are bound.
SHEET_WORDS = {
    "plan": later("Planting plan"),
    "schedule": later("Plant schedule"),
    "key": later("Key to the plan"),
    "setting-out": later("Setting-out sheet"),
    "shopping": later("Shopping list"),
    "findings": later("Conflicts and cautions"),
    "light": later("Light"),
    "pollination": later("Pollination"),
    "season": later("Season of bloom and harvest"),
    "soil": later("Soil work"),
    "care": later("Care calendar"),
    "harvest": later("Harvest"),
}


def sheet_words() -> dict[str, str]:
    """Every sheet there is, by the word that asks for it, with what it is called."""
    return {name: tr(words) for name, words in SHEET_WORDS.items()}


def document_title(yard_name: str, what: Sequence[str]) -> str:
    """The title of a document that binds these sheets: the yard's name, the first sheet, how many more."""
    first = mid_sentence(tr(SHEET_WORDS[what[0]]))
    more = len(what) - 1
    said = first if not more else tr_n(
        "{first} and {n} more sheet", "{first} and {n} more sheets", more, first=first
    )
    return f"{yard_name}: {said}"
