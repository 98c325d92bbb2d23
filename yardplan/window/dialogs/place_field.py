"""A place typed as town, US ZIP code or position; what is known of it fills itself in, with its source."""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from yardplan.language import decimals, tr
from yardplan.window.panels.days import say_day
from yardplan.window.panels.parts import Combo, button, label

if TYPE_CHECKING:
    from yardplan.places.facts import PlaceFacts
    from yardplan.places.tables import Place

#: Places offered for one name.
_OFFERED = 8


def position_words(latitude: float, longitude: float) -> str:
    """`42.44° N, 76.50° W`."""
    north, east = tr("N") if latitude >= 0 else tr("S"), tr("E") if longitude >= 0 else tr("W")
    return f"{decimals(f'{abs(latitude):.2f}')}° {north}, {decimals(f'{abs(longitude):.2f}')}° {east}"


def home_country(region: str | None = None) -> str:
    """The country in which a place is expected: that of a site's region, else that of the user's system.

    Two letters, or empty where neither says one.
    """
    if region:
        return region.partition("-")[0].upper()
    return QLocale.territoryToCode(QLocale.system().territory())


def offered_words(places: list[Place]) -> list[str]:
    """Each place with its state and country in full, and with its position where two would read alike."""
    from yardplan.places.spelling import spelled

    words = [spelled(place) for place in places]
    counts = Counter(words)
    return [
        said if said and counts[said] == 1 else
        ", ".join(part for part in (said, position_words(place.latitude, place.longitude)) if part)
        for said, place in zip(words, places, strict=True)
    ]


def facts_words(facts: PlaceFacts) -> str:
    """What was found of a place in one or two lines."""
    place, frost = facts.place, facts.climate.frost
    parts = [position_words(place.latitude, place.longitude)]
    if facts.zone:
        words = tr("about zone {zone}", zone=facts.zone) if facts.zone_estimated else (
            tr("zone {zone}", zone=facts.zone)
        )
        parts.append(words)
    if frost.last and frost.first:
        parts.append(
            tr(
                "last frost about {last}, first about {first}",
                last=say_day(frost.last),
                first=say_day(frost.first),
            )
        )
    elif frost.kind == "rare":
        parts.append(tr("frost is rare"))
    parts.append(
        tr("monthly temperatures found")
        if facts.climate.means
        else tr("no climate station near: type what you know")
    )
    return "; ".join(parts)


class PlaceField(QWidget):
    """A line to type in; Enter or the button looks it up. Several places of one name are offered."""

    #: PlaceFacts of the place chosen, or None where nothing was found.
    found = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        #: The country whose towns come first, two letters.
        self.home = home_country()
        self.facts: PlaceFacts | None = None
        self._looked_up = ""
        self._places: list[Place] = []
        self.line = QLineEdit()
        self.line.setPlaceholderText(tr("town or ZIP code"))
        self.line.setAccessibleName(tr("Place: town, US ZIP code, or latitude and longitude"))
        self.line.setToolTip(tr("A town, a US ZIP code, or latitude and longitude such as 42.44, -76.50"))
        self.look_up_button = button(
            tr("Look up"), tip=tr("Fill in zone, frost dates and temperatures; works offline")
        )
        self.choice = Combo()
        self.choice.setAccessibleName(tr("Places found"))
        self.choice.hide()
        self.summary = label("", "muted", wrap=True)
        self.summary.hide()
        self.look_up_button.setAutoDefault(False)
        self.setFocusProxy(self.line)
        top = QHBoxLayout()
        top.setSpacing(6)
        top.addWidget(self.line, 1)
        top.addWidget(self.look_up_button)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(4)
        box.addLayout(top)
        box.addWidget(self.choice)
        box.addWidget(self.summary)
        self.line.editingFinished.connect(self._finished)
        self.look_up_button.clicked.connect(self.look_up)
        self.choice.activated.connect(lambda number: self._take(self._places[number]))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter looks the place up (the line does that); it goes no further, to a box's main button."""
        if event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            super().keyPressEvent(event)

    def _finished(self) -> None:
        if self.line.text().strip() != self._looked_up:
            self.look_up()

    def look_up(self) -> None:
        """Look up what is typed."""
        words = self.line.text().strip()
        self._looked_up = words
        if not words:
            self._nothing("")
            return
        from yardplan.places.lookup import PlaceError, find_places

        try:
            self._places = find_places(words, _OFFERED, self.home)
        except PlaceError as error:
            self._nothing(str(error))
            return
        self.choice.clear()
        self.choice.addItems(offered_words(self._places))
        self.choice.setVisible(len(self._places) > 1)
        self._take(self._places[0], guessed=self._places[0].guessed)

    def _nothing(self, fault: str) -> None:
        self.facts = None
        self.choice.hide()
        self._say(fault[:1].upper() + fault[1:], "fault")
        self.found.emit(None)

    def _take(self, place: Place, *, guessed: bool = False) -> None:
        from yardplan.places.facts import facts_at
        from yardplan.places.spelling import spelled

        self.facts = facts_at(place)
        name = spelled(place) or tr("This position")
        if guessed:
            name = tr("Taken for {place}", place=name)
        self._say(f"{name}: {facts_words(self.facts)}", "muted")
        self.found.emit(self.facts)

    def _say(self, text: str, look: str) -> None:
        self.summary.setText(text)
        self.summary.setVisible(bool(text))
        if self.summary.property("look") != look:
            self.summary.setProperty("look", look)
            self.summary.style().unpolish(self.summary)
            self.summary.style().polish(self.summary)
        self.line.setAccessibleDescription(text)
        self._make_room()

    def _make_room(self) -> None:
        """Forms do not ask a wrapped text for its height: give it what it needs."""
        height = self.summary.heightForWidth(self.width()) if self.summary.text() else 0
        self.summary.setMinimumHeight(max(height, 0))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._make_room()

    def set_words(self, words: str) -> None:
        """Put words into the line without looking them up."""
        self.line.setText(words)
        self._looked_up = words.strip()

    def wants_look_up(self) -> bool:
        """True when something was typed that has not been looked up yet."""
        return self.line.text().strip() != self._looked_up
