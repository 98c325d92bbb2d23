"""What is done with variants in the window: each one undo step with a name, and words to say."""

from __future__ import annotations

import datetime

from yardplan.language import tr
from yardplan.window.open_yard import OpenYard
from yardplan.yard import variants


def question() -> str:
    """What is asked when a plan is kept."""
    return tr("Keep this plan under which name?")


def suggested(open_yard: OpenYard) -> str:
    """A name that is not taken."""
    return variants.free_name(open_yard.yard)


def keep(open_yard: OpenYard, name: str, day: datetime.date) -> str:
    """Keep the plan as it is. Raises EditError."""
    yard = variants.keep(open_yard.yard, name, day.isoformat())
    kept = yard.variants[-1].name
    open_yard.commit(tr("Keep variant {name}", name=kept), yard)
    return tr("This plan is kept as {name}", name=kept)


def open_variant(open_yard: OpenYard, name: str) -> str:
    """Put a variant on the sheet. Raises EditError."""
    yard = variants.opened(open_yard.yard, name)
    open_yard.commit(tr("Open variant {name}", name=name), yard, other_plan=True)
    return tr("{name} is on the sheet; undo brings the plan before back", name=name)


def rename(open_yard: OpenYard, old: str, new: str) -> str:
    """Give a variant another name. Raises EditError."""
    yard = variants.rename(open_yard.yard, old, new)
    open_yard.commit(tr("Rename variant {name}", name=old), yard)
    return tr("{old} is called {name} now", old=old, name=new.strip())


def forget(open_yard: OpenYard, name: str) -> str:
    """Take a variant out of the yard; undo brings it back."""
    open_yard.commit(tr("Delete variant {name}", name=name), variants.remove(open_yard.yard, name))
    return tr("{name} deleted", name=name)
