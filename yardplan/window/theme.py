"""The look of the room around the sheet: colours for light and dark, style sheet, fonts, choice of scheme.

The sheet itself stays light in both. Contrast follows WCAG 2.2: text 4.5:1 (1.4.3), parts of controls and
marks 3:1 (1.4.11); targets are at least 24 px (2.5.8). tests/window/test_theme.py computes
all of them (drawing.style.contrast).
"""

from __future__ import annotations

from functools import cache
from string import Template
from typing import Literal, cast

from attrs import asdict, frozen
from PySide6.QtCore import QObject, QSettings, Qt, Signal
from PySide6.QtGui import QColor, QFont, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

from yardplan.drawing.fonts import load_fonts
from yardplan.shipped import resource

Scheme = Literal["system", "light", "dark"]
SCHEMES: tuple[Scheme, ...] = ("system", "light", "dark")

#: Pixel sizes of type. SMALL is the floor for anything a person must read.
SMALL, BASE, TITLE = 11, 13, 17
#: Smallest side of anything to click, pixels (WCAG 2.2, 2.5.8).
TARGET = 24
_SETTING = "window/scheme"


@frozen(kw_only=True)
class Colours:
    """Named colours of one scheme. `edge` outlines controls; `rule` only parts areas and carries nothing."""

    paper: str
    room: str
    panel: str
    card: str
    chosen: str
    ink: str
    muted: str
    rule: str
    edge: str
    conflict: str
    caution: str
    leaf: str
    link: str
    focus: str
    button: str


LIGHT = Colours(
    paper="#FBFAF5", room="#ECEAE4", panel="#F5F3EE", card="#FDFCF9", chosen="#E2EBE2",
    ink="#22303A", muted="#47555D", rule="#C9C6BC", edge="#79848A",
    conflict="#B93A0B", caution="#0B5C8F", leaf="#3F5E44", link="#0B5C8F", focus="#0B5C8F", button="#FDFCF9",
)
DARK = Colours(
    paper="#FBFAF5", room="#16191B", panel="#1F2427", card="#282E32", chosen="#34433A",
    ink="#ECEAE3", muted="#B3BCC1", rule="#41494E", edge="#8A959B",
    conflict="#FF9A70", caution="#86C5F2", leaf="#A6CDAA", link="#86C5F2", focus="#86C5F2", button="#2E353A",
)


def colours_now() -> Colours:
    """The scheme the program is shown in, read from its palette."""
    return DARK if QGuiApplication.palette().color(QPalette.ColorRole.Window).lightness() < 128 else LIGHT


def font(size: int = BASE, *, bold: bool = False, tabular: bool = False) -> QFont:
    """The bundled family at a pixel size; `tabular` gives figures of one width."""
    made = QFont(load_fonts())
    made.setPixelSize(max(size, SMALL))
    if bold:
        made.setWeight(QFont.Weight.DemiBold)
    if tabular:
        made.setFeature(QFont.Tag("tnum"), 1)
    return made


def palette_of(colours: Colours) -> QPalette:
    """A full palette for the Fusion style."""
    role, palette = QPalette.ColorRole, QPalette()
    pairs = {
        role.Window: colours.panel, role.WindowText: colours.ink, role.Base: colours.card,
        role.AlternateBase: colours.panel, role.Text: colours.ink, role.Button: colours.button,
        role.ButtonText: colours.ink, role.BrightText: colours.conflict, role.ToolTipBase: colours.card,
        role.ToolTipText: colours.ink, role.PlaceholderText: colours.muted, role.Link: colours.link,
        role.LinkVisited: colours.link, role.Highlight: colours.chosen, role.HighlightedText: colours.ink,
        role.Light: colours.card, role.Midlight: colours.rule, role.Mid: colours.rule,
        role.Dark: colours.edge, role.Shadow: colours.room, role.Accent: colours.focus,
    }
    for name, colour in pairs.items():
        palette.setColor(name, QColor(colour))
    for name in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, name, QColor(colours.edge))
    return palette


#: Sizes that the style sheet is filled with, pixels; a ring of 2 instead of 1 takes 1 from each side.
_SIZES = {
    "small": SMALL, "text": SMALL + 1, "title": TITLE, "target": TARGET, "inner": TARGET - 2,
    "inner_focused": TARGET - 4, "tool": TARGET - 6, "tab": TARGET - 8,
}


@cache
def _template() -> Template:
    return Template(resource("window.qss").read_text(encoding="utf-8"))


def style_sheet(colours: Colours) -> str:
    """The style sheet in the colours of a scheme."""
    return _template().substitute(asdict(colours), **_SIZES)


class Theme(QObject):
    """Applies a scheme to the program, follows the system, and remembers the user's choice."""

    changed = Signal()

    def __init__(self, settings: QSettings | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._settings = settings or QSettings()
        stored = str(self._settings.value(_SETTING, "system"))
        self._choice: Scheme = next((scheme for scheme in SCHEMES if scheme == stored), "system")
        QGuiApplication.styleHints().colorSchemeChanged.connect(self._system_changed)

    @property
    def choice(self) -> Scheme:
        """What the user asked for."""
        return self._choice

    @property
    def dark(self) -> bool:
        """True when the room is dark; a system that tells no scheme counts as light."""
        if self._choice != "system":
            return self._choice == "dark"
        return QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark

    @property
    def colours(self) -> Colours:
        """The colours in force."""
        return DARK if self.dark else LIGHT

    def choose(self, scheme: Scheme) -> None:
        """Set and remember the scheme, and show it at once."""
        self._choice = scheme
        self._settings.setValue(_SETTING, scheme)
        self.apply()

    def apply(self) -> None:
        """Dress the whole program."""
        app = cast(QApplication, QApplication.instance())
        # Handing a style to Python loads hundreds of names; the program asks for Fusion as it starts.
        if app.property("style") != "fusion":
            app.setStyle("Fusion")
        app.setFont(font())
        app.setPalette(palette_of(self.colours))
        app.setStyleSheet(style_sheet(self.colours))
        self.changed.emit()

    def _system_changed(self) -> None:
        if self._choice == "system":
            self.apply()
