"""Write on the plan."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.window.tools.dropped import DropTool
from yardplan.yard import edits
from yardplan.yard.ground import Note, Point


class NoteTool(DropTool):
    """Words on the plan: click, then write."""

    name, key, icon = later("Note"), "N", "note"
    about = later("Click where the note shall stand, then write it")

    def drop(self, place: Point) -> None:
        text = self.desk.ask_text(tr("Words on the plan"), "")
        if not text or not text.strip():
            return
        yard = self.open_yard.yard
        made = Note(id=edits.next_key(yard, "NT"), place=place, text=text.strip())
        self.open_yard.commit(tr("Write note"), edits.add(yard, made), selection={made.id})
