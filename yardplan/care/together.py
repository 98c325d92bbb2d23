"""The same work at nearly the same time, put together for reading: a list of two hundred lines helps nobody.

Dates of an average year are known to some days only, so work on several kinds that begins and ends within a
week shares a line. Sprays, picking and storing are told by their own days.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable

from attrs import frozen

from yardplan.care.tables import figures
from yardplan.care.tasks import CareTask

#: Kinds of work that share a line only when their days are the same.
_BY_THE_DAY = ("spray", "harvest", "store")
#: Kinds whose figures are those of one kind of fruit.
_BY_CROP = ("frost", "thin", "net")


@frozen
class Work:
    """Tasks that are read as one. `start` the first day of any, `end` the last of any."""

    tasks: tuple[CareTask, ...]

    @property
    def first(self) -> CareTask:
        """The task that speaks for all."""
        return self.tasks[0]

    @property
    def start(self) -> dt.date:
        """The first day on which any begins."""
        return min(task.start for task in self.tasks)

    @property
    def end(self) -> dt.date:
        """The last day on which any ends."""
        return max(task.end for task in self.tasks)

    @property
    def about(self) -> bool:
        """True where the days are estimates."""
        return any(task.about or task.by_month for task in self.tasks)

    @property
    def things(self) -> tuple[str, ...]:
        """Keys of all the plants, each once."""
        return tuple(dict.fromkeys(thing for task in self.tasks for thing in task.things))

    @property
    def amounts(self) -> tuple[str, ...]:
        """The amounts, each with what it is for where there are several."""
        known = dict.fromkeys(task.amount for task in self.tasks if task.amount)
        if len(known) <= 1:
            return tuple(known)
        return tuple(f"{task.what}: {task.amount}" for task in self.tasks if task.amount)

    @property
    def weeks(self) -> tuple[str, ...]:
        """How much water in which month, a line a plant."""
        return tuple(dict.fromkeys(line for task in self.tasks for line in task.weeks))

    @property
    def notes(self) -> tuple[str, ...]:
        """What holds on these dates only, each with what it is for where that is not all of them."""
        of: dict[str, list[str]] = {}
        for task in self.tasks:
            for note in task.notes:
                of.setdefault(note, []).append(task.what)
        every = len(self.tasks)
        return tuple(
            note if len(kinds) == every else f"{', '.join(kinds)}: {note}" for note, kinds in of.items()
        )

    @property
    def cautions(self) -> tuple[str, ...]:
        """All cautions, each once."""
        return tuple(dict.fromkeys(text for task in self.tasks for text in task.cautions))

    @property
    def sources(self) -> tuple[str, ...]:
        """All source ids, each once."""
        return tuple(dict.fromkeys(name for task in self.tasks for name in task.sources))


def together(tasks: Iterable[CareTask]) -> list[Work]:
    """Tasks put together, in the order of their first days."""
    open_: dict[tuple[object, ...], list[list[CareTask]]] = {}
    for task in sorted(tasks, key=lambda task: (task.start, task.end)):
        groups = open_.setdefault(_key(task), [])
        group = next((group for group in groups if _near(group[0], task)), None)
        if group is None:
            groups.append([task])
        else:
            group.append(task)
    made = [Work(tuple(group)) for groups in open_.values() for group in groups]
    return sorted(made, key=lambda work: (work.start, work.end, work.first.id))


def _key(task: CareTask) -> tuple[object, ...]:
    own = task.crop if task.kind in _BY_CROP else ""
    return (task.row, task.season, task.title, task.ages, task.when, task.basis, own)


def _near(one: CareTask, other: CareTask) -> bool:
    """True when both begin and both end within the slack of each other."""
    slack = 0.0 if one.kind in _BY_THE_DAY else figures()["days that share a line"]
    return abs((one.start - other.start).days) <= slack and abs((one.end - other.end).days) <= slack
