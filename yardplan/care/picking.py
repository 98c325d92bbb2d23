"""When a plant is picked in one season: from its ripening or the usual months to the end, or to hard frost.

Fruit does not hang through a hard freeze, so picking ends with it where the first frost is known. Whether a
variety ripens before it is told by the check of ripening, so that calendar and check never disagree.
"""

from __future__ import annotations

import datetime as dt

from attrs import evolve, frozen

from yardplan.care.conditions import harvest_row
from yardplan.care.season import Anchored, Season, whole_months
from yardplan.care.tables import figures, hanging
from yardplan.care.things import CareThing
from yardplan.checks.ripening import RULE, Outlook, outlook
from yardplan.checks.rules import Rules
from yardplan.language import day_month, tr


@frozen(kw_only=True)
class Picking:
    """Picking of one plant in one season.

    `begins` first and last day it may begin, `end` the last day of picking; `outlook` what the check says of
    ripening here, None when it says nothing; `frost` the day about which hard frost ends it, None when it
    does not.
    """

    begins: Anchored
    end: dt.date
    outlook: Outlook | None = None
    frost: dt.date | None = None

    @property
    def days(self) -> tuple[dt.date, dt.date]:
        """First and last day of picking, whole months where only usual months are known."""
        found = (self.begins.first, self.end)
        return whole_months(*found) if self.begins.by_month else found

    @property
    def notes(self) -> tuple[str, ...]:
        """What to say of ripening and frost, a sentence each."""
        said = [] if self.outlook is None else [_ripens(self.outlook)]
        if self.frost is not None:
            said.append(tr(
                "Hard frost ends the picking, about {date}: have everything in by then.",
                date=day_month(self.frost.month, self.frost.day),
            ))
        return tuple(said)


def picking(thing: CareThing, season: Season, rules: Rules) -> Picking | None:
    """When a plant is picked in a season; None where its time is not known."""
    row = harvest_row(thing, season.site)
    begins = season.find(row.anchor if row is not None else "harvest", thing.cultivar)
    if begins is None:
        return None
    lasts = row.end if row is not None else int(figures()["picking days"])
    end = begins.last + dt.timedelta(days=0 if begins.whole else lasts)
    found = Picking(begins=begins, end=end)
    if season.first_frost.by_month or begins.whole or (row is not None and row.anchor != "harvest"):
        return found
    past = rules.value(RULE)
    found = evolve(found, outlook=outlook(thing.cultivar, season.bloom, season.site.first_frost or "", past))
    return found if thing.crop.id in hanging() else _cut(found, season, past)


def _cut(found: Picking, season: Season, past: float) -> Picking:
    """Picking that ends with hard frost; what is not ripe by then is taken between the first frost and it."""
    frost = season.first_frost.last
    hard = frost + dt.timedelta(days=past)
    if found.end <= hard:
        return found
    begins = found.begins
    if begins.first > hard:
        if found.outlook is None:  # only the usual month of a cool place: it proves nothing
            return found
        return evolve(found, begins=evolve(begins, first=frost, last=frost), end=hard, frost=hard)
    return evolve(found, begins=evolve(begins, last=min(begins.last, hard)), end=hard, frost=hard)


def _ripens(outlook: Outlook) -> str:
    """The check's judgement as a sentence."""
    days = (*outlook.harvest.dates, outlook.date)
    first, last, frost = (day_month(*map(int, day.split("-"))) for day in days)
    if outlook.kind == "seldom":
        return tr("Ripe only from about {first}, well after the mean first frost of {frost}: it seldom "
                  "ripens here.", first=first, frost=frost)
    return tr("Ripe from about {first} to {last}, in late years after the mean first frost of {frost}.",
              first=first, last=last, frost=frost)
