"""Other formats in and out of the window: the menus Import and Export of the file menu."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QDialog, QMenu

from yardplan.language import later, tr, tr_n
from yardplan.window.actions import Command
from yardplan.yard import edits
from yardplan.yard.planting import PlantKey

if TYPE_CHECKING:
    from yardplan.files.exchange.outline import LotOutline
    from yardplan.files.exchange.plant_table import PlantList
    from yardplan.window.main_window import MainWindow

#: What goes out, by ending: words of the command, kind of file, tip.
_EXPORTS = (
    (".geojson", later("&GeoJSON…"), later("GeoJSON"), later("For maps, by longitude and latitude")),
    (".dxf", later("&DXF…"), later("DXF"), later("For drawing programs, a layer for each kind of thing")),
    (".csv", later("&Plants as CSV…"), later("Table of plants"), later("A table for a spreadsheet")),
    (".ics", later("&Care calendar (iCalendar)…"), later("Calendar"),
     later("The work of this year and the next for any calendar program")),
)
_LOT_FILES = "*.geojson *.json *.dxf"
_TABLE_FILES = "*.csv *.tsv *.txt"


class Exchange:
    """Adds its menus; what is read is shown in a box before it enters the yard, as one undo step."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self._yard = window.open_yard
        #: The box that is open, if any.
        self.box: QDialog | None = None
        file = window.menus["File"]
        before = window.actions_["site card"]
        for menu in (self._imports(), self._exports()):
            menu.setToolTipsVisible(True)
            file.insertMenu(before, menu)
        file.insertSeparator(before)

    def _imports(self) -> QMenu:
        menu = QMenu(tr("&Import"), self._window)
        self._add(menu, "import lot", tr("&Lot line from GeoJSON or DXF…"), self.ask_lot,
                  tr("A closed line of a map or drawing becomes the lot line"))
        self._add(menu, "import plants", tr("&Plants from a table (CSV)…"), self.ask_plants,
                  tr("A list with columns for kind and variety; lines not understood are shown"))
        return menu

    def _exports(self) -> QMenu:
        menu = QMenu(tr("&Export"), self._window)
        for ending, words, _, tip in _EXPORTS:
            self._add(menu, f"export {ending[1:]}", tr(words), self._asker(ending), tr(tip))
        return menu

    def _add(self, menu: QMenu, name: str, words: str, does: Callable[[], object], tip: str) -> None:
        menu.addAction(self._window.actions_.add(name, Command(words=words, does=does, tip=tip)))

    def _asker(self, ending: str) -> Callable[[], object]:
        return lambda: self.ask_export(ending)

    # In

    def ask_lot(self) -> None:
        """Which file holds the lot line."""
        kinds = tr("Maps and drawings ({endings})", endings=_LOT_FILES)
        path = self._window.questions.import_path(tr("Lot line from a file"), self._folder(), kinds)
        if path is not None:
            self.read_lot(path)

    def read_lot(self, path: Path) -> None:
        """Show the closed lines of a file; the one chosen becomes the lot line."""
        from yardplan.files.exchange.formats import lots_from_file
        from yardplan.files.exchange.outline import ExchangeError
        from yardplan.window.dialogs.outline_box import OutlineBox

        site = self._yard.yard.site
        try:
            found = lots_from_file(path, site)
        except ExchangeError as error:
            self._window.questions.tell_fault(tr("No lot line was read"), str(error))
            return
        box = OutlineBox(
            found, self._yard.units, path.name, self._window, drawn=path.suffix.lower() == ".dxf",
            replaces=bool(self._yard.yard.lot), place_known=bool(site.place),
        )
        box.chosen.connect(lambda outline, moves: self._take_lot(outline, path, moves))
        self._open(box)

    def _take_lot(self, outline: LotOutline, path: Path, moves: bool) -> None:
        from yardplan.files.exchange.outline import with_lot

        yard = with_lot(self._yard.yard, outline, path.name, move_site=moves)
        self._yard.commit(tr("Lot line from {file}", file=path.name), yard)
        self._window.canvas.fit()
        self._window.commands.say(tr("The lot line is that of {file}", file=path.name))

    def ask_plants(self) -> None:
        """Which table to read."""
        kinds = tr("Tables ({endings})", endings=_TABLE_FILES)
        path = self._window.questions.import_path(tr("Plants from a table"), self._folder(), kinds)
        if path is not None:
            self.read_plants(path)

    def read_plants(self, path: Path) -> None:
        """Show what came of a table; its plants are added when the person says so."""
        from yardplan.files.exchange.formats import text_of_file
        from yardplan.files.exchange.outline import ExchangeError
        from yardplan.files.exchange.plant_table import plants_from_csv
        from yardplan.window.dialogs.plant_list_box import PlantListBox

        try:
            text = text_of_file(path)
            found = plants_from_csv(text, self._yard.yard, self._known, self._letter, self._yard.units)
        except ExchangeError as error:
            self._window.questions.tell_fault(tr("No plants were read"), f"{path.name}: {error}")
            return
        box = PlantListBox(found, path, self._window)
        box.wanted.connect(lambda: self._take_plants(found, path))
        self._open(box)

    def _known(self, crop: str, cultivar: str) -> PlantKey | None:
        """The plant of the catalogue, by any name and case that it understands."""
        catalogue = self._yard.catalogue
        kind = catalogue.crop(crop)
        found = catalogue.cultivar(PlantKey(kind.id if kind is not None else crop, cultivar))
        return found.key if found is not None else None

    def _letter(self, plant: PlantKey) -> str:
        crop = self._yard.catalogue.crop(plant.crop)
        return crop.letter if crop is not None else plant.crop[:1].upper()

    def _take_plants(self, found: PlantList, path: Path) -> None:
        keys = [thing.id for thing in found.things]
        yard = edits.add(self._yard.yard, *found.things)
        self._yard.commit(tr("Plants from {file}", file=path.name), yard, selection=keys)
        self._window.canvas.fit()
        self._window.commands.say(tr_n("{n} planting added", "{n} plantings added", len(keys)))

    def _open(self, box: QDialog) -> None:
        """The window waits for the box, and no loop of events of its own is begun."""
        if self.box is not None:
            self.box.deleteLater()
        self.box = box
        box.open()

    # Out

    def ask_export(self, ending: str) -> None:
        """Where to write the yard in that format."""
        words = next(kind for end, _, kind, _ in _EXPORTS if end == ending)
        suggested = self._window.documents.suggested(ending)
        path = self._window.questions.export_path(
            tr("Export as {kind}", kind=tr(words)), suggested, f"{tr(words)} (*{ending})"
        )
        if path is not None:
            self.export(path if path.suffix else path.with_suffix(ending), ending)

    def export(self, path: Path, ending: str) -> None:
        """Write the yard; says so, or why it cannot be done."""
        from yardplan.care.calendar_file import CalendarError
        from yardplan.files.errors import reason
        from yardplan.files.exchange.outline import ExchangeError
        from yardplan.files.writing import write_whole

        try:
            write_whole(path.resolve(), self._calendar() if ending == ".ics" else self._text(ending))
        except (ExchangeError, CalendarError) as error:
            self._window.questions.tell_fault(tr("Nothing was exported"), str(error))
        except OSError as error:
            said = tr("{file} was not written: {why}", file=path.name, why=reason(error))
            self._window.questions.tell_fault(tr("Nothing was exported"), said)
        else:
            self._window.commands.say(self._written(path, ending))

    def _text(self, ending: str) -> bytes:
        from yardplan.files.exchange.formats import FORMATS
        from yardplan.plants.standing import stand_of

        yard = self._yard.yard
        stand = stand_of(yard, self._yard.catalogue, None)
        spreads = {plant.id: plant.size.spread for plant in stand.plants if plant.planted}
        # Spreadsheets take a table for UTF-8 by its mark; other formats must not have one.
        return FORMATS[ending](yard, spreads).encode("utf-8-sig" if ending == ".csv" else "utf-8")

    def _calendar(self) -> bytes:
        """The care of this year and the next: in autumn the next one is what matters."""
        from yardplan.care.calendar_file import calendar_file
        from yardplan.care.tasks import care_plan

        yard, year = self._yard, dt.date.today().year
        plans = [care_plan(yard.checks.committed_survey, each, yard.units) for each in (year, year + 1)]
        return calendar_file(plans, yard.yard)

    def _written(self, path: Path, ending: str) -> str:
        site = self._yard.yard.site
        if ending == ".geojson" and not site.place and (site.latitude, site.longitude) == (45.0, 0.0):
            return tr(
                "Written: {file}. The yard has no place yet, so the map shows it at 45 degrees north, 0 "
                "degrees east: give its place on the site card.", file=path.name,
            )
        return tr("Written: {file}", file=path.name)

    def _folder(self) -> Path:
        return self._window.documents.folder()
