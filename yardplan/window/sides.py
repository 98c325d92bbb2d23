"""The right side: tabs to choose, edit and list, each with its plant's card, and what the checks found."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from yardplan.language import tr
from yardplan.window.edges import Splitter
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.fitted_tabs import FittedTabs
from yardplan.window.theme import scaled
from yardplan.yard.planting import PlantKey

#: Width of the right side in pixels: at 1280 the sheet keeps more than 60 %.
WIDTH = 320
#: How the panels and the findings share the height; the panels never get less than they need.
_SHARES = (3, 2)
#: Any height to share out at first, pixels.
_TALL = 1000


class Side(QWidget):
    """Built after the window shows, since it loads the catalogue."""

    site_wanted = Signal()
    card_wanted = Signal(object)

    def __init__(self, open_yard: OpenYard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        from yardplan.window.panels.catalogue_list import CatalogueList
        from yardplan.window.panels.fields import Fields
        from yardplan.window.panels.findings_list import FindingsList
        from yardplan.window.panels.partner_list import PartnerList
        from yardplan.window.panels.plant_list import PlantList

        self.open_yard = open_yard
        self.choose = CatalogueList(open_yard)
        self.fields = Fields(open_yard)
        self.plants = PlantList(open_yard)
        self.partners = PartnerList(open_yard)
        self.findings = FindingsList(open_yard)
        self.tabs = FittedTabs()
        self.tabs.add(self.choose, tr("Choose"))
        self.tabs.add(self.fields, tr("Fields"))
        self.tabs.add(self.plants, tr("On the plan"), tr("Plan"))
        self.tabs.add(self.partners, tr("Partners"))
        self._lay_out()
        self.fields.site_wanted.connect(self.site_wanted)
        for card in (self.choose.in_hand, self.fields.plant_card):
            card.card_wanted.connect(self.card_wanted)
            card.partners_wanted.connect(self.show_partners)
        self.plants.edit_wanted.connect(self.show_fields)
        self.findings.partners_wanted.connect(self.show_partners)
        self.findings.site_wanted.connect(self.site_wanted)
        self.findings.fields_wanted.connect(self.show_fields)
        self.findings.yard_field_wanted.connect(self.show_yard_field)
        open_yard.selection_changed.connect(self._selection_changed)

    def _lay_out(self) -> None:
        split = Splitter()
        split.addWidget(self.tabs)
        split.addWidget(self.findings)
        for place, share in enumerate(_SHARES):
            split.setStretchFactor(place, share)
        split.setSizes([share * _TALL for share in _SHARES])
        scroll = QScrollArea()
        scroll.setWidget(split)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        box = QVBoxLayout(self)
        box.setContentsMargins(8, 4, 8, 4)
        box.addWidget(scroll, 1)
        self.setMinimumWidth(scaled(260))

    def _selection_changed(self) -> None:
        """The fields follow the selection, unless a plant is being chosen or the list is in use."""
        idle = self.open_yard.in_hand is None and self.tabs.currentWidget() is self.choose
        if idle and self.open_yard.selection:
            self.tabs.setCurrentWidget(self.fields)

    def show_fields(self) -> None:
        """Bring the fields to the front and begin in the first one."""
        self.tabs.setCurrentWidget(self.fields)
        self.fields.focus_first()

    def show_yard_field(self, path: str) -> None:
        """Bring one field of the yard itself to the front."""
        self.open_yard.select(())
        self.tabs.setCurrentWidget(self.fields)
        self.fields.focus_on(path)

    def show_choice(self) -> None:
        """Bring the catalogue to the front with the cursor in its search."""
        self.tabs.setCurrentWidget(self.choose)
        self.choose.search.setFocus(Qt.FocusReason.OtherFocusReason)
        self.choose.search.selectAll()

    def show_partners(self, key: PlantKey, thing: str | None) -> None:
        """List what would set fruit on a plant."""
        self.tabs.setCurrentWidget(self.partners)
        self.partners.show_for(key, thing)

    def show_plants(self) -> None:
        """Bring the list of everything on the plan to the front."""
        self.tabs.setCurrentWidget(self.plants)
        self.plants.table.setFocus(Qt.FocusReason.OtherFocusReason)
