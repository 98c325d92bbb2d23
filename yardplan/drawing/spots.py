"""Where words stood in the frame before: while a thing is dragged they hold still beside it.

Words that hop from side to side at every step cannot be read, and looking for the best place takes the
longest of all that is drawn in a frame.
"""

from __future__ import annotations

from collections.abc import Hashable

#: Words that found no room are not placed again for so many steps of the gesture: a third of a second.
WAIT = 20


class Spots:
    """Numbers of the candidate places taken last, by what the words are said of; kept for one gesture."""

    def __init__(self) -> None:
        """Start with nothing said."""
        self._taken: dict[Hashable, int] = {}
        self._again: dict[Hashable, int] = {}
        self._step = 0

    def step(self) -> None:
        """The gesture went on."""
        self._step += 1

    def of(self, key: Hashable) -> int | None:
        """The number of the place that the words had when last drawn."""
        return self._taken.get(key)

    def keep(self, key: Hashable, number: int) -> None:
        """The words stand at the candidate of that number."""
        self._taken[key] = number

    def refuse(self, key: Hashable) -> None:
        """There was no room for the words: looked for again some steps later."""
        self._taken.pop(key, None)
        self._again[key] = self._step + WAIT

    def waits(self, key: Hashable) -> bool:
        """True while words without room are not looked at again."""
        return self._step < self._again.get(key, 0)
