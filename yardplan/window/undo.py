"""Undo: edits are pure, so one command class suffices: a text, the yard before and the yard after."""

from __future__ import annotations

import time
from collections.abc import Callable

from PySide6.QtGui import QUndoCommand

from yardplan.yard.yard import Yard

#: Puts a yard and a selection in place; what undo and redo call.
Enter = Callable[[Yard, frozenset[str]], None]

#: Commands of this class can be asked to merge (QUndoCommand.id).
_COMMAND_ID = 7
#: Nudges within this many seconds of each other are one step.
MERGE_SECONDS = 1.0


class YardCommand(QUndoCommand):
    """One step: from `before` to `after`. Steps of one `merge` key that follow closely fold into one."""

    def __init__(
        self,
        text: str,
        enter: Enter,
        before: tuple[Yard, frozenset[str]],
        after: tuple[Yard, frozenset[str]],
        merge: str | None = None,
    ) -> None:
        super().__init__(text)
        self._enter = enter
        self.before = before
        self.after = after
        self.merge = merge
        self.when = time.monotonic()

    def id(self) -> int:
        return _COMMAND_ID

    def redo(self) -> None:
        self._enter(*self.after)

    def undo(self) -> None:
        self._enter(*self.before)

    def mergeWith(self, other: QUndoCommand) -> bool:
        """Take up a later step of the same field or the same nudging."""
        if not isinstance(other, YardCommand) or self.merge is None or self.merge != other.merge:
            return False
        if other.when - self.when > MERGE_SECONDS:
            return False
        self.after, self.when = other.after, other.when
        self.setText(other.text())
        if self.before[0] == self.after[0]:
            self.setObsolete(True)
        return True
