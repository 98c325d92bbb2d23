"""Plant a row of what is in hand: canes, vines, a hedgerow."""

from __future__ import annotations

from yardplan.language import later, tr, tr_n
from yardplan.units import format_length
from yardplan.window.canvas.geometry import distance, length_of
from yardplan.window.open_yard import InHand
from yardplan.window.tools.corners import CornersTool
from yardplan.window.tools.tool import Disc, Overlay, Words
from yardplan.yard import edits
from yardplan.yard.ground import Outline
from yardplan.yard.planting import Row

#: Used where no table gives a distance in the row, metres: common practice, shown to be changed.
USUAL_STEP = 1.0


class RowTool(CornersTool):
    """A straight row from its first plant to its last, at the distance its form asks for."""

    name, key, icon = later("Row"), "R", later("row")
    about = later("Plant a row of the plant in hand")
    closed, least, most, what = False, 2, 2, later("row")

    def ready(self) -> str | None:
        if self.open_yard.in_hand is None:
            return tr("Pick a plant from the list, then click where its row begins")
        return None

    def step(self, in_hand: InHand) -> float:
        """Metres between plants in the row, from the crop's form."""
        crop = self.open_yard.catalogue.crop(in_hand.plant.crop)
        if crop is None:
            return USUAL_STEP
        wanted = in_hand.form or crop.usual_form
        form = next((form for form in crop.forms if form.form == wanted), None)
        return sum(form.in_row) / 2 if form is not None and form.in_row else USUAL_STEP

    def finish(self, points: Outline) -> None:
        in_hand = self.open_yard.in_hand
        if in_hand is None:
            return
        yard, step = self.open_yard.yard, self.step(in_hand)
        made = Row(
            id=edits.next_key(yard, "R"), plant=in_hand.plant, line=points, spacing=step,
            count=int(length_of(points) / step + 1e-6) + 1, form=in_hand.form, rootstock=in_hand.rootstock,
        )
        text = tr("Plant row of {cultivar}", cultivar=in_hand.plant.cultivar)
        self.open_yard.commit(text, edits.add(yard, made), selection={made.id})

    def overlay(self) -> Overlay:
        shown = super().overlay()
        in_hand = self.open_yard.in_hand
        if not (in_hand and self.corners and self.here):
            return shown
        step, start, end = self.step(in_hand), self.corners[0], self.here
        far = distance(start, end)
        count = int(far / step + 1e-6) + 1
        dots = tuple(
            Disc(centre=_part(start, end, i * step / far if far else 0.0), radius=step / 4)
            for i in range(min(count, 500))
        )
        text = tr_n(
            "{n} plant, {step} apart", "{n} plants, {step} apart", count,
            step=format_length(step, self.open_yard.units),
        )
        return Overlay(strokes=shown.strokes, discs=dots, words=(*shown.words, Words(place=end, text=text)))


def _part(a: tuple[float, float], b: tuple[float, float], share: float) -> tuple[float, float]:
    return (a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share)
