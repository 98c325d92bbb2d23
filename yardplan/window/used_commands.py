"""Which commands were used last, kept from start to start: the command finder lists them first."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSettings

_SETTING = "window/commands"
#: Commands remembered.
_MOST = 6
#: The commonest commands of the main job, in the order in which a yard is planned.
COMMON: tuple[str, ...] = (
    "tool lot", "tool building", "choose", "tool plant", "next finding", "nearest clear place",
    "find partner", "site card", "care", "sheets", "shopping",
)
#: What is done all the time by its keys, or ends the work: nobody looks for it here.
_NOT_KEPT = frozenset({"find command", "undo", "redo", "zoom in", "zoom out", "close", "quit", "next thing"})


class UsedCommands:
    """The names of the commands used last, the newest first."""

    def __init__(self, settings: QSettings) -> None:
        self._settings = settings
        kept = settings.value(_SETTING, "")
        self.names: tuple[str, ...] = tuple(name for name in str(kept or "").split("\n") if name)[:_MOST]

    def note(self, name: str) -> None:
        """A command was used."""
        if name in _NOT_KEPT or self.names[:1] == (name,):
            return
        self.names = (name, *(other for other in self.names if other != name))[:_MOST]
        self._settings.setValue(_SETTING, "\n".join(self.names))

    def first(self) -> Sequence[str]:
        """The names to list before all others: those used last, then the commonest of the main job."""
        return (*self.names, *(name for name in COMMON if name not in self.names))
