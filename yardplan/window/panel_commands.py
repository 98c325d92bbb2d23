"""The commands of the panels and boxes: site card, partners, variety card, rules, appearance."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import QDialog, QMenu

from yardplan.language import later, mid_sentence, tr
from yardplan.window.actions import Command
from yardplan.window.languages import LANGUAGES, choose, chosen
from yardplan.window.text_size_menu import text_size_menu
from yardplan.window.theme import SCHEMES, Scheme, Theme

if TYPE_CHECKING:
    from yardplan.window.main_window import MainWindow
    from yardplan.window.panels.facts import Subject
    from yardplan.window.sides import Side
    from yardplan.yard.planting import PlantKey

_SCHEME_WORDS: dict[Scheme, str] = {
    "system": later("As the &system"),
    "light": later("L&ight"),
    "dark": later("&Dark"),
}


#: A message of the status line stays so long, milliseconds.
_STAYS_MS = 8000


class PanelCommands:
    """Adds its actions to the window's menus; boxes are built when asked for and kept to one of a kind."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self._boxes: dict[str, QDialog] = {}
        self._file()
        self._planting()
        self._findings()
        self._help()
        self.appearance = self._appearance()
        self.text_sizes = text_size_menu(window.actions_, self._theme, self._say)
        window.menus["View"].addMenu(self.text_sizes)
        self.languages = self._languages()
        window.open_yard.selection_changed.connect(self._refresh)
        window.open_yard.in_hand_changed.connect(self._refresh)
        self._refresh()

    def _add(self, menu: str, name: str, command: Command, *, before: str | None = None) -> QAction:
        action = self._window.actions_.add(name, command)
        place = self._window.actions_[before] if before else None
        if place is None:
            self._window.menus[menu].addAction(action)
        else:
            self._window.menus[menu].insertAction(place, action)
        return action

    def _file(self) -> None:
        site = Command(words=tr("Si&te card…"), does=self.show_site, keys=("Ctrl+I",),
                       tip=tr("Place, climate and soil of the yard, with the source of each fact"))
        self._add("File", "site card", site, before="close")
        rules = Command(words=tr("Local ru&les…"), does=self.show_rules,
                        tip=tr("Figures of your adviser or the law in place of ours"))
        self._add("File", "local rules", rules, before="close")
        self._window.menus["File"].insertSeparator(self._window.actions_["close"])

    def _planting(self) -> None:
        self.partners = self._add("Planting", "find partner", Command(
            words=tr("Find a &partner…"), does=self.show_partners, keys=("Ctrl+Shift+P",),
            tip=tr("Varieties that would set fruit on the plant selected or in hand")))
        self._add("Planting", "yard partners", Command(
            words=tr("What the &whole yard lacks"), does=self.show_lacking,
            tip=tr("The fewest plants to add so that every plant crops")))
        self.card = self._add("Planting", "variety card", Command(
            words=tr("All &facts of the variety…"), does=self.show_card, keys=("Ctrl+Shift+F",),
            tip=tr("Every fact with its source, beside another variety if you like")))
        self._add("Planting", "own varieties", Command(
            words=tr("&Own varieties…"), does=self.show_own,
            tip=tr("Add a variety that the catalogue does not hold")))

    def _findings(self) -> None:
        menu = self._window.menus["Edit"]
        menu.addSeparator()
        self._add("Edit", "next finding", Command(
            words=tr("N&ext conflict or caution"), does=lambda: self._step(1), keys=("F4",),
            tip=tr("Show the place of the next finding of the list")))
        self._add("Edit", "previous finding", Command(
            words=tr("Previ&ous conflict or caution"), does=lambda: self._step(-1), keys=("Shift+F4",),
            tip=tr("Show the place of the finding before")))

    def _help(self) -> None:
        about = Command(words=tr("&About yardplan"), does=self.show_about, role=QAction.MenuRole.AboutRole,
                        tip=tr("Licence, parts used, sources of the figures"))
        self._add("Help", "about", about)

    def _appearance(self) -> QMenu:
        """Light, dark or as the system; the sheet stays light."""
        menu = QMenu(tr("A&ppearance"), self._window)
        group = QActionGroup(menu)
        for scheme in SCHEMES:
            words = tr(_SCHEME_WORDS[scheme])
            action = self._window.actions_.add(f"scheme {scheme}", Command(
                words=words, does=self._chooser(scheme), check=False,
                tip=tr("Appearance: {scheme}; the sheet stays light",
                       scheme=mid_sentence(words.replace("&", "")))))
            group.addAction(action)
            menu.addAction(action)
        menu.aboutToShow.connect(self._tick_scheme)
        self._window.menus["View"].addMenu(menu)
        return menu

    def _say(self, words: str, milliseconds: int) -> None:
        self._window.status.showMessage(words, milliseconds)

    def _theme(self) -> Theme:
        if self._window.theme is None:
            self._window.theme = Theme(self._window.settings, self._window)
        return self._window.theme

    def _tick_scheme(self) -> None:
        self._window.actions_[f"scheme {self._theme().choice}"].setChecked(True)

    def _chooser(self, scheme: Scheme) -> Callable[[], object]:
        return lambda: self._theme().choose(scheme)

    def _languages(self) -> QMenu:
        """The language of the window, by its own name; spoken from the next start on."""
        menu = QMenu(tr("Languag&e"), self._window)
        group = QActionGroup(menu)
        for code, name in {"system": tr("As the system"), **LANGUAGES}.items():
            action = self._window.actions_.add(f"language {code}", Command(
                words=name, does=self._speaker(code), check=False,
                tip=tr("Language of the window: {name}, from the next start on", name=name)))
            group.addAction(action)
            menu.addAction(action)
        self._window.actions_[f"language {chosen(self._window.settings)}"].setChecked(True)
        self._window.menus["View"].addMenu(menu)
        return menu

    def _speaker(self, code: str) -> Callable[[], object]:
        def speak() -> None:
            choose(self._window.settings, code)
            said = tr("The language changes when yardplan is started again.")
            self._window.status.showMessage(said, _STAYS_MS)
        return speak

    def _refresh(self) -> None:
        """Commands about a plant need one, selected or in hand."""
        yard = self._window.open_yard
        known = yard.in_hand is not None or (bool(yard.selection) and self._plant() is not None)
        for action in (self.partners, self.card):
            action.setEnabled(known)

    def _plant(self) -> Subject | None:
        from yardplan.window.panels.facts import plant_in_hand, selected_plant

        yard = self._window.open_yard
        return selected_plant(yard) or plant_in_hand(yard)

    def _show(self, name: str, make: Callable[[], QDialog]) -> None:
        """Show a box, the one already there if it is still open."""
        box = self._boxes.get(name)
        if box is None or not box.isVisible():
            if box is not None:
                box.deleteLater()
            box = self._boxes[name] = make()
        box.show()
        box.raise_()
        box.activateWindow()

    def show_site(self) -> None:
        """Every fact of the site."""
        from yardplan.window.dialogs.site_card import SiteCard

        self._show("site", lambda: SiteCard(self._window.open_yard, self._window))

    def show_rules(self) -> None:
        """The rules and the yard's own figures."""
        from yardplan.window.dialogs.local_rules import LocalRules

        self._show("rules", lambda: LocalRules(self._window.open_yard, self._window))

    def show_own(self) -> None:
        """Varieties of one's own."""
        from yardplan.window.dialogs.own_variety import OwnVariety

        self._show("own", lambda: OwnVariety(self._window.open_yard, self._window))

    def show_about(self) -> None:
        """Licence, parts and sources."""
        from yardplan.window.dialogs.about import AboutDialog

        self._show("about", lambda: AboutDialog(self._window))

    def show_card(self) -> None:
        """The card of the plant selected or in hand."""
        subject = self._plant()
        if subject is not None:
            self.show_card_of(subject.key)

    def show_card_of(self, key: PlantKey) -> None:
        """The card of a variety."""
        from yardplan.window.dialogs.cultivar_card import CultivarCard

        self._show(f"card {key}", lambda: CultivarCard(self._window.open_yard, key, self._window))

    def show_partners(self) -> None:
        """Partners for the plant selected or in hand."""
        subject = self._plant()
        if subject is not None:
            on_plan = self._window.open_yard.yard.find(subject.id) if subject.id else None
            self._side().show_partners(subject.key, subject.id if on_plan else None)

    def show_lacking(self) -> None:
        """What the whole yard lacks."""
        side = self._side()
        side.tabs.setCurrentWidget(side.partners)
        side.partners.show_for_all()

    def _step(self, by: int) -> None:
        self._side().findings.step(by)

    def _side(self) -> Side:
        self._window.build_side()
        self._window.side_dock.show()
        side = self._window.side
        if side is None:
            raise RuntimeError("the side is built before a command uses it")
        return side
