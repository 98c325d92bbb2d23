"""Commands for pictures under the plan: put one there, set it to scale, take hold of one that is locked."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from yardplan.language import tr
from yardplan.window.tools.picture_scale import PictureScaleTool
from yardplan.yard import edits
from yardplan.yard.ground import Outline, Picture

if TYPE_CHECKING:
    from yardplan.drawing.picture_file import ReadPicture
    from yardplan.window.main_window import MainWindow

#: Endings of files that are taken for pictures when they are dropped on the window.
ENDINGS = frozenset({".png", ".jpg", ".jpeg", ".pdf"})
#: A new picture fills this share of what is looked at.
_SHARE = 0.8


class PictureCommands:
    """What the menu Draw does with pictures."""

    def __init__(self, window: MainWindow) -> None:
        self._window, self._yard = window, window.open_yard

    def choose(self) -> None:
        """Ask for a file and put its picture under the plan."""
        path = self._yard.path
        folder = path.parent if path is not None else Path.home()
        kinds = f"{tr('Pictures')} (*.png *.jpg *.jpeg *.pdf)"
        chosen = self._window.questions.import_path(tr("Picture under the plan"), folder, kinds)
        if chosen is not None:
            self.put(chosen)

    def put(self, path: Path) -> None:
        """Put the picture in a file under the plan, selected, ready to be set to scale; one undo step."""
        from yardplan.drawing.picture_file import PictureError, pages_in, read_picture

        try:
            page = self._page(pages_in(path))
            if page is None:
                return
            self._add(read_picture(path, page))
        except PictureError as error:
            self._window.questions.tell_fault(tr("The picture was not put under the plan"), str(error))

    def _page(self, pages: int) -> int | None:
        """Which page of several, None for none; the reader tells of one that is not there or is no number."""
        if pages == 1:
            return 1
        question = tr("Which page of {pages} holds the picture?", pages=pages)
        typed = self._window.questions.line(question, "1")
        if typed is None:
            return None
        return int(typed) if typed.strip().isdecimal() else 0

    def _add(self, read: ReadPicture) -> None:
        yard = self._yard.yard
        made = Picture(
            id=edits.next_key(yard, "PC"), name=read.name, base=self._base(read.pixels), pixels=read.pixels,
            data=read.data,
        )
        text = tr("Put {name} under the plan", name=read.name)
        self._yard.commit(text, edits.add(yard, made), selection={made.id})
        layer = self._window.actions_["pictures"]
        if not layer.isChecked():
            layer.setChecked(True)
            self._window.commands.show_layer("pictures")
        self.to_scale()

    def _base(self, pixels: tuple[int, int]) -> Outline:
        """The lower edge of a new picture: in the middle of what is looked at, upright."""
        left, bottom, right, top = self._window.canvas.view.bounds
        wide = _SHARE * min(right - left, (top - bottom) * pixels[0] / pixels[1])
        high = wide * pixels[1] / pixels[0]
        x, y = (left + right - wide) / 2, (bottom + top - high) / 2
        return ((x, y), (x + wide, y))

    def to_scale(self) -> None:
        """Take up the tool that sets the picture to scale."""
        self._window.canvas.use(PictureScaleTool)
        self._window.canvas.setFocus()

    def choose_next(self) -> None:
        """Select a picture, the next one with each use, and show its fields: clicks pass locked ones by."""
        keys = [picture.id for picture in self._yard.yard.pictures]
        if not keys:
            self._window.commands.say(tr("There is no picture under the plan yet"))
            return
        chosen = [keys.index(key) for key in self._yard.selection if key in keys]
        self._yard.select({keys[(chosen[0] + 1) % len(keys)] if chosen else keys[0]})
        self._window.show_fields()
