"""Which page of the handbook tells of a tool, a panel or a box. A new one gets a line here."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from yardplan.window.canvas.canvas import Canvas
from yardplan.window.handbook.pages import CONTENTS

#: By the icon of a tool.
TOOL_PAGES: dict[str, str] = {
    "select": "drawing#select-and-move",
    "carry": "drawing#select-and-move",
    "band": "drawing#select-and-move",
    "lot": "lot",
    "building": "structures#buildings",
    "barrier": "structures#walls-fences-and-hedges",
    "paving": "structures#paving",
    "bed": "plants#beds",
    "row": "plants#rows",
    "plant": "plants",
    "pot": "plants#pots",
    "tree": "structures#standing-trees",
    "service": "structures#pipes-and-cables",
    "gate": "structures#gates",
    "tape": "drawing#measure",
    "dimension": "drawing#measure",
    "light": "light#sun-at-a-spot",
    "note": "drawing#notes",
}
#: By the class of a panel or box; the innermost one around the focus counts.
PANEL_PAGES: dict[str, str] = {
    "StartPanel": "start",
    "GuideStrip": "start#the-guided-start",
    "PlaceField": "place",
    "SiteCard": "place",
    "SeenBloom": "place#bloom-seen-in-your-yard",
    "MonthFields": "place",
    "CatalogueList": "plants",
    "InHandCard": "plants#in-hand",
    "FilterBox": "plants#choose",
    "OwnVariety": "plants#varieties-of-your-own",
    "CultivarCard": "plants#all-facts",
    "Fields": "plants#fields",
    "PlantList": "plants#everything-on-the-plan",
    "PartnerList": "partners",
    "LightPanel": "light",
    "TakersView": "light#who-takes-its-light",
    "SpotView": "light#sun-at-a-spot",
    "FindingsList": "findings",
    "AlongsideBox": "drawing#curves-and-circles",
    "DeedBox": "lot#from-a-deed",
    "VariantsBox": "drawing#variants",
    "LocalRules": "findings#local-rules",
    "SeasonStrip": "season",
    "MomentBar": "light#shadows",
    "YearControl": "season#growth",
    "CareBox": "care",
    "CarePanel": "care",
    "HarvestBox": "care#harvest",
    "ShoppingBox": "buying",
    "SheetBox": "printing",
    "OutlineBox": "exchange#in-from-elsewhere",
    "PlantListBox": "exchange#in-from-elsewhere",
    "CommandFinder": "keys#find-a-command",
    "QUndoView": "drawing#undo",
    "AboutDialog": "words",
    "HandbookWindow": CONTENTS,
    "ToolColumn": "drawing",
}


def topic_of(focus: QWidget | None) -> str:
    """The page for what has the focus: on the sheet the chosen tool's, else that of the panel around it."""
    part = focus
    while part is not None:
        if isinstance(part, Canvas):
            return TOOL_PAGES.get(part.tool.icon, "drawing")
        names = [kind.__name__ for kind in type(part).__mro__]
        found = next((PANEL_PAGES[name] for name in names if name in PANEL_PAGES), None)
        if found is not None:
            return found
        part = part.parentWidget()
    return CONTENTS
