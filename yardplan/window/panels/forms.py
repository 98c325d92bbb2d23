"""Rootstock and form of the plant in hand, with the size they give at full size."""

from __future__ import annotations

from attrs import evolve
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QWidget

from yardplan.language import tr
from yardplan.plants.catalogue import Catalogue
from yardplan.plants.crop import Size
from yardplan.plants.growth import mature_size
from yardplan.units import System, format_coarse
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.panels.parts import Combo
from yardplan.yard.planting import Planting


def size_in_hand(catalogue: Catalogue, in_hand: InHand) -> Size:
    """The full size of a plant before it is put down."""
    planting = Planting(
        id="in hand", plant=in_hand.plant, place=(0.0, 0.0), form=in_hand.form, rootstock=in_hand.rootstock
    )
    return mature_size(catalogue, planting)


def size_words(size: Size, units: System) -> str:
    """`4.2 m wide, 4.0 m tall`; with `about` where a curve, not a table, gave it."""
    wide, tall = format_coarse(size.spread, units), format_coarse(size.height, units)
    if size.estimate:
        return tr("about {wide} wide, {tall} tall", wide=wide, tall=tall)
    return tr("{wide} wide, {tall} tall", wide=wide, tall=tall)


class FormChoice(QWidget):
    """Two choices; shown while a plant is in hand. The size that follows is on its card."""

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._open_yard = open_yard
        self.rootstock, self.form = Combo(), Combo()
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 2, 0, 0)
        line.setSpacing(4)
        for words, combo in (
            (tr("Rootstock of the plant in hand"), self.rootstock),
            (tr("Form of the plant in hand"), self.form),
        ):
            combo.setAccessibleName(words)
            combo.setToolTip(words)
            combo.activated.connect(self._chosen)
            line.addWidget(combo, 1)
        open_yard.in_hand_changed.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Show the choices of what is in hand."""
        in_hand = self._open_yard.in_hand
        self.setVisible(in_hand is not None)
        if in_hand is None:
            return
        crop = self._open_yard.catalogue.crop(in_hand.plant.crop)
        stocks = [stock.name for stock in crop.rootstocks] if crop else []
        forms = [form.form for form in crop.forms] if crop else []
        usual = tr("usual form: {form}", form=tr(crop.usual_form)) if crop else tr("usual form")
        _offer(self.rootstock, tr("usual rootstock"), stocks, in_hand.rootstock)
        _offer(self.form, usual, forms, in_hand.form)

    def _chosen(self) -> None:
        in_hand = self._open_yard.in_hand
        if in_hand is not None:
            stock, form = self.rootstock.currentData(), self.form.currentData()
            self._open_yard.take_in_hand(evolve(in_hand, rootstock=stock, form=form))


def _offer(combo: QComboBox, usual: str, names: list[str], chosen: str | None) -> None:
    """Fill a choice; it goes away where there is nothing to choose."""
    combo.clear()
    combo.addItem(usual, None)
    for name in names:
        combo.addItem(tr(name), name)
    combo.setCurrentIndex(max(combo.findData(chosen), 0) if chosen else 0)
    combo.setVisible(bool(names))
