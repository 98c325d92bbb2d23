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
from PySide6.QtGui import QColor, QFont, QFontDatabase, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

from yardplan.drawing.fonts import load_fonts
from yardplan.shipped import resource

Scheme = Literal["system", "light", "dark"]
SCHEMES: tuple[Scheme, ...] = ("system", "light", "dark")

#: Pixel sizes of type. SMALL is the floor for anything a person must read.
SMALL, BASE, TITLE = 11, 13, 17
#: Smallest side of anything to click, pixels (WCAG 2.2, 2.5.8).
TARGET = 24
_SETTING, _TEXT_SETTING = "window/scheme", "window/text"
#: Sizes of text to choose from, percent. "system" follows the font that the system is set to.
TEXT_SIZES: tuple[str, ...] = ("system", "100", "125", "150", "200")
#: The largest usual system font, pixels; what is set larger is meant to be larger.
_USUAL_FONT = 14.7
#: Points of type in an inch.
_POINTS = 72.0


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


class _Text:
    """How much larger than usual all text is, in this process."""

    scale = 1.0


def text_scale() -> float:
    """How much larger than usual text is shown: 1 to 2."""
    return _Text.scale


def scaled(pixels: float) -> int:
    """A size in pixels that holds text, grown with the text."""
    return round(pixels * _Text.scale)


def set_text_scale(choice: str) -> None:
    """Show text at a size of TEXT_SIZES from now on. Boxes that are open keep the size they were made for."""
    _Text.scale = _system_scale() if choice == "system" else int(choice) / 100


def _system_scale() -> float:
    """The largest of our sizes that the system's own font reaches."""
    system = QFontDatabase.systemFont(QFontDatabase.SystemFont.GeneralFont)
    # Reckoned, not asked of the font that would be drawn: to look for that takes longer than all other texts.
    dots = QGuiApplication.primaryScreen().logicalDotsPerInch()
    pixels = system.pixelSize() if system.pixelSize() > 0 else system.pointSizeF() * dots / _POINTS
    grown = pixels / _USUAL_FONT
    return max([int(size) / 100 for size in TEXT_SIZES[1:] if int(size) / 100 <= grown], default=1.0)


def colours_now() -> Colours:
    """The scheme the program is shown in, read from its palette."""
    return DARK if QGuiApplication.palette().color(QPalette.ColorRole.Window).lightness() < 128 else LIGHT


def font(size: int = BASE, *, bold: bool = False, tabular: bool = False) -> QFont:
    """The bundled family at a pixel size; `tabular` gives figures of one width."""
    made = QFont(load_fonts())
    made.setPixelSize(scaled(max(size, SMALL)))
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


#: Sizes that the style sheet is filled with, pixels.
_SIZES = {
    "small": SMALL, "text": SMALL + 1, "title": TITLE, "target": TARGET, "inner": TARGET - 2,
    "tool": TARGET - 6, "tab": TARGET - 8, "tick": 14, "icon": 16, "fold": 20, "knob": 12,
    "knob_out": 6,
}
#: Pixels of a scroll bar at the usual size; it grows half as fast as the text, which needs the room more.
_BAR = 12
#: Pixels above and below a line of a menu at the usual size; less with large text: menus must fit the screen.
_MENU = 4


@cache
def _template() -> Template:
    return Template(resource("window.qss").read_text(encoding="utf-8"))


def style_sheet(colours: Colours) -> str:
    """The style sheet in the colours of a scheme."""
    sizes = {name: scaled(size) for name, size in _SIZES.items()}
    bar = round(_BAR * (1 + text_scale()) / 2)
    # A ring of 2 instead of 1 takes 1 from each side.
    return _template().substitute(
        asdict(colours), **sizes, bar=bar, menu=round(_MENU / text_scale()),
        inner_focused=sizes["inner"] - 2, fold_focused=sizes["fold"] - 2,
    )


class Theme(QObject):
    """Applies a scheme to the program, follows the system, and remembers the user's choice."""

    changed = Signal()

    def __init__(self, settings: QSettings | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._settings = settings or QSettings()
        stored = str(self._settings.value(_SETTING, "system"))
        self._choice: Scheme = next((scheme for scheme in SCHEMES if scheme == stored), "system")
        set_text_scale(self.text_size)
        QGuiApplication.styleHints().colorSchemeChanged.connect(self._system_changed)

    @property
    def text_size(self) -> str:
        """The size of text asked for, one of TEXT_SIZES; in force from the next start on."""
        stored = str(self._settings.value(_TEXT_SETTING, "system"))
        return stored if stored in TEXT_SIZES else "system"

    def choose_text_size(self, size: str) -> None:
        """Remember a size of text for the next start."""
        self._settings.setValue(_TEXT_SETTING, size)

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
