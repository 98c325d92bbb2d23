"""Set a picture under the plan to scale: two places in it, and how far apart they are."""

from __future__ import annotations

from yardplan.language import later, tr
from yardplan.units import UnitError
from yardplan.window.canvas.geometry import distance, halfway
from yardplan.window.tools.desk import Desk
from yardplan.window.tools.event import Pointer
from yardplan.window.tools.tool import Key, Overlay, Stroke, Tool, Words
from yardplan.window.tools.typed import parse_typed
from yardplan.yard import edits, pictures
from yardplan.yard.edits import EditError
from yardplan.yard.ground import Outline, Picture, Point


class PictureScaleTool(Tool):
    """Two clicks on the picture of the selection, or the last one; then the distance is typed."""

    name, icon = later("Picture to scale"), "picture"
    about = later("Click two places in the picture whose distance you know, then type it")
    takes_lengths = True

    _here: Point | None = None

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._ends: Outline = ()

    def _picture(self) -> Picture | None:
        yard = self.open_yard.yard
        chosen = [picture for picture in yard.pictures if picture.id in self.open_yard.selection]
        return next(iter((*chosen, *reversed(yard.pictures))), None)

    def _problem(self) -> str:
        picture = self._picture()
        if picture is None:
            return tr("There is no picture under the plan yet")
        if picture.locked:
            return tr("This picture is locked: unlock it in its fields to set it to scale")
        return ""

    def hint(self) -> str:
        problem = self._problem()
        if problem:
            return problem
        if not self._ends:
            return tr("Click one end of something in the picture whose length you know")
        if len(self._ends) == 1:
            return tr("Click its other end")
        return tr("Type how far apart the two places are, for example 12.5 m; click to begin anew")

    def press(self, event: Pointer) -> None:
        if self._problem():
            return
        # What the picture shows is meant, not what is drawn on it: nothing is snapped to.
        self.desk.forget_snap()
        self._ends = (*self._ends, event.place) if len(self._ends) < 2 else (event.place,)
        if len(self._ends) == 2 and distance(*self._ends) < 2 * event.pixel:
            self._ends = self._ends[:1]
        if len(self._ends) == 2:
            self.desk.open_entry()

    def move(self, event: Pointer) -> None:
        self._here = event.place

    def on_key(self, key: Key) -> bool:
        if key == "backspace" and self._ends:
            self._ends = self._ends[:-1]
            return True
        return False

    def typed(self, text: str) -> None:
        problem, picture = self._problem(), self._picture()
        if problem or picture is None:
            raise UnitError(problem)
        entry = parse_typed(text, self.open_yard.units)
        if entry.form == "place" and len(self._ends) < 2:
            self._ends = (*self._ends, (entry.first, entry.second))
            return
        if len(self._ends) < 2:
            raise UnitError(tr("First click the two places in the picture, or type them like 4; 2.5"))
        if entry.form != "length":
            raise UnitError(tr("'{text}' is not one distance: type for example 12.5 m", text=text))
        try:
            a, b = self._ends
            scaled = pictures.to_scale(picture, a, b, entry.first)
        except EditError as error:
            raise UnitError(str(error)) from None
        self._ends, self.done = (), True
        self.open_yard.commit(
            tr("Set {name} to scale", name=picture.name), edits.replace(self.open_yard.yard, scaled),
            selection={picture.id},
        )
        wide = self.desk.length(pictures.size(scaled)[0])
        self.desk.say(tr("The picture is {width} wide; lock it before you draw over it", width=wide))

    def cancel(self) -> bool:
        was = bool(self._ends)
        self._ends, self._here = (), None
        return was

    @property
    def busy(self) -> bool:
        return bool(self._ends)

    def overlay(self) -> Overlay:
        ends = self._ends
        if len(ends) == 1 and self._here is not None and self._here != ends[0]:
            ends = (*ends, self._here)
        if len(ends) < 2:
            return Overlay(strokes=(Stroke(points=ends),) if ends else ())
        words = (Words(place=halfway(*ends), text=tr("how far?")),) if len(self._ends) == 2 else ()
        return Overlay(strokes=(Stroke(points=ends),), words=words)
