"""The look of the room around the sheet: colours for light and dark, style sheet, fonts, choice of scheme.

The sheet itself stays light in both. Contrast follows WCAG 2.2: text 4.5:1 (1.4.3), parts of controls and
marks 3:1 (1.4.11); targets are at least 24 px (2.5.8). tests/window/test_theme.py computes
all of them (drawing.style.contrast).
"""

from __future__ import annotations

from typing import Literal, cast

from attrs import frozen
from PySide6.QtCore import QObject, QSettings, Qt, Signal
from PySide6.QtGui import QColor, QFont, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

from yardplan.drawing.fonts import load_fonts

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


def style_sheet(c: Colours) -> str:
    """The few rules that the palette cannot say: edges, focus rings, targets and type sizes."""
    return f"""
    QToolTip {{ background: {c.card}; color: {c.ink}; border: 1px solid {c.edge}; padding: 3px; }}
    QMainWindow, QWidget#room {{ background: {c.room}; }}
    QMainWindow::separator {{ background: {c.rule}; width: 4px; height: 4px; }}
    QFrame#start {{ background: {c.panel}; border: 1px solid {c.edge}; border-radius: 6px; }}
    QLabel[look="title"] {{ font-size: {TITLE}px; font-weight: 600; }}
    QLabel[look="heading"] {{ font-weight: 600; }}
    QLabel[look="muted"] {{ color: {c.muted}; font-size: {SMALL + 1}px; }}
    QLabel[look="small"] {{ color: {c.muted}; font-size: {SMALL}px; }}
    QLabel[look="fault"] {{ color: {c.conflict}; font-size: {SMALL + 1}px; }}
    QLineEdit, QComboBox, QSpinBox, QDoubleSpinBox, QPlainTextEdit, QDateEdit, QTimeEdit {{
        background: {c.card}; color: {c.ink}; border: 1px solid {c.edge}; border-radius: 3px;
        min-height: {TARGET - 2}px; padding: 0 5px; selection-background-color: {c.focus};
        selection-color: {c.card}; }}
    QLineEdit:focus, QComboBox:focus, QSpinBox:focus, QDoubleSpinBox:focus, QPlainTextEdit:focus,
    QDateEdit:focus, QTimeEdit:focus {{
        border: 2px solid {c.focus}; padding: 0 4px; min-height: {TARGET - 4}px; }}
    QLineEdit[fault="true"] {{ border: 2px solid {c.conflict}; }}
    QComboBox::drop-down {{ border: 0; width: {TARGET}px; }}
    QComboBox QAbstractItemView {{ background: {c.card}; color: {c.ink}; border: 1px solid {c.edge}; }}
    QPushButton {{
        background: {c.button}; color: {c.ink}; border: 1px solid {c.edge}; border-radius: 3px;
        min-height: {TARGET}px; min-width: {TARGET}px; padding: 1px 10px; }}
    QPushButton:hover {{ border-color: {c.ink}; }}
    QPushButton:pressed, QPushButton:checked {{ background: {c.chosen}; border-color: {c.leaf}; }}
    QPushButton:focus {{ border: 2px solid {c.focus}; padding: 0 9px; }}
    QPushButton:disabled {{ color: {c.edge}; border-color: {c.rule}; }}
    QPushButton[look="link"] {{
        background: transparent; border: 0; color: {c.link}; text-align: left; padding: 0 2px;
        font-weight: 600; }}
    QPushButton[look="link"]:hover {{ text-decoration: underline; }}
    QPushButton[look="link"]:focus {{ border: 2px solid {c.focus}; padding: 0; }}
    QPushButton[look="main"] {{
        background: {c.leaf}; color: {c.card}; border-color: {c.leaf}; font-weight: 600; }}
    QPushButton[look="main"]:focus {{ border: 2px solid {c.ink}; }}
    QPushButton[look="step"] {{ padding: 0; }}
    QPushButton[look="fold"] {{
        background: transparent; border: 0; border-bottom: 1px solid {c.rule}; border-radius: 0;
        text-align: left; padding: 2px 2px 2px 20px; font-weight: 600; }}
    QPushButton[look="fold"]:checked {{ background: transparent; border-color: {c.rule}; }}
    QPushButton[look="fold"]:focus {{ border: 2px solid {c.focus}; padding: 1px 0 1px 18px; }}
    QToolButton {{
        color: {c.ink}; border: 1px solid transparent; border-radius: 4px; padding: 3px;
        min-height: {TARGET - 6}px; min-width: {TARGET - 6}px; }}
    QToolButton:hover {{ background: {c.card}; border-color: {c.rule}; }}
    QToolButton:checked {{ background: {c.chosen}; border-color: {c.leaf}; }}
    QToolButton:focus {{ border: 2px solid {c.focus}; padding: 2px; }}
    QCheckBox, QRadioButton {{
        min-height: {TARGET}px; spacing: 6px; border: 2px solid transparent; border-radius: 3px; }}
    QCheckBox:focus, QRadioButton:focus {{ border: 2px solid {c.focus}; }}
    QCheckBox::indicator {{ width: 14px; height: 14px; border: 1px solid {c.edge}; border-radius: 3px;
        background: {c.card}; }}
    QCheckBox::indicator:checked, QCheckBox::indicator:indeterminate {{
        background: {c.leaf}; border-color: {c.leaf}; }}
    QCheckBox::indicator:disabled {{ border-color: {c.rule}; background: {c.panel}; }}
    QCheckBox:disabled {{ color: {c.edge}; }}
    QListView, QTableView, QTreeView {{ background: {c.card}; border: 1px solid {c.rule}; outline: 0; }}
    QListView:focus, QTableView:focus, QTreeView:focus {{ border: 1px solid {c.focus}; }}
    QListView#cards {{ background: transparent; border: 1px solid transparent; }}
    QListView#cards:focus {{ border: 1px solid {c.focus}; }}
    QHeaderView::section {{
        background: {c.panel}; color: {c.muted}; border: 0; border-bottom: 1px solid {c.edge};
        padding: 2px 4px; min-height: {TARGET - 4}px; font-size: {SMALL + 1}px; }}
    QSlider {{ min-height: {TARGET}px; border: 2px solid transparent; border-radius: 3px; }}
    QSlider:focus {{ border: 2px solid {c.focus}; }}
    QDialogButtonBox {{ dialogbuttonbox-buttons-have-icons: 0; }}
    QScrollArea, QScrollArea > QWidget > QWidget {{ background: transparent; border: 0; }}
    QScrollBar:vertical {{ background: transparent; width: 12px; margin: 0; }}
    QScrollBar:horizontal {{ background: transparent; height: 12px; margin: 0; }}
    QScrollBar::handle {{ background: {c.edge}; border-radius: 3px; margin: 3px; min-height: {TARGET}px;
        min-width: {TARGET}px; }}
    QScrollBar::handle:hover {{ background: {c.ink}; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
    QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
    QTabBar::tab {{
        color: {c.muted}; padding: 4px 9px; min-height: {TARGET - 8}px; border: 0;
        border-bottom: 2px solid transparent; }}
    QTabBar::tab:selected {{ color: {c.ink}; border-bottom: 2px solid {c.leaf}; font-weight: 600; }}
    QTabBar::tab:focus {{ border: 2px solid {c.focus}; padding: 2px 7px 4px 7px; }}
    QTabWidget::pane {{ border: 0; border-top: 1px solid {c.rule}; }}
    QMenu {{ background: {c.card}; color: {c.ink}; border: 1px solid {c.edge}; }}
    QMenu::item {{ padding: 4px 24px; }}
    QMenu::item:selected {{ background: {c.chosen}; }}
    QMenu::item:disabled {{ color: {c.edge}; }}
    QMenu::separator {{ height: 1px; background: {c.rule}; margin: 3px 8px; }}
    QMenuBar {{ background: {c.panel}; border-bottom: 1px solid {c.rule}; }}
    QMenuBar::item {{ padding: 5px 9px; background: transparent; }}
    QMenuBar::item:selected {{ background: {c.chosen}; }}
    QStatusBar {{ background: {c.panel}; color: {c.muted}; border-top: 1px solid {c.rule}; }}
    QDockWidget > QWidget {{ background: {c.panel}; }}
    QDockWidget {{ titlebar-close-icon: none; font-weight: 600; }}
    QDockWidget::title {{ background: {c.panel}; padding: 5px 8px; text-align: left; }}
    """


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
        app.setStyle("Fusion")
        app.setFont(font())
        app.setPalette(palette_of(self.colours))
        app.setStyleSheet(style_sheet(self.colours))
        self.changed.emit()

    def _system_changed(self) -> None:
        if self._choice == "system":
            self.apply()
