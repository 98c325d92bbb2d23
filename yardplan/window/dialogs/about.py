"""What the program is, its licence, the licences of what it uses, and whose figures it shows."""

from __future__ import annotations

from PySide6.QtCore import qVersion
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QPlainTextEdit, QTabWidget, QVBoxLayout, QWidget

from yardplan import __version__
from yardplan.language import later, tr
from yardplan.places.facts import credits
from yardplan.plants.sources import bibliography
from yardplan.shipped import resource
from yardplan.window.dialogs.box import press_by_enter, roomy
from yardplan.window.panels.parts import label

_PROGRAM = (
    later(
        "Plans a fruit yard to scale. While you draw it checks room, sun, pollen and access, and says what "
        "would clear what it finds."
    ),
    later(
        "The figures are averages from published tables. They do not know your ground. Before you dig, have "
        "buried services marked; for boundaries, heights and sprays the local code and the label decide; "
        "near power lines and with big trees, ask a licensed practice."
    ),
)
_QT = later(
    "This program uses Qt {version} through PySide6, under the GNU Lesser General Public License, version 3. "
    "Qt is a library of its own that you may replace: it is installed beside this program as the package "
    "PySide6-Essentials, whose folder holds the licence texts; its source code is at https://code.qt.io."
)
_PARTS = (
    later(
        "Type: Yardplan Sans, a modified Inter, under the SIL Open Font License 1.1 (text in the program's "
        "resources, fonts/OFL.txt)."
    ),
    later("NumPy (BSD), Shapely (BSD, with GEOS under LGPL 2.1) and attrs (MIT)."),
)


def _program_text() -> str:
    return "\n\n".join([f"yardplan {__version__}", *(tr(text) for text in _PROGRAM)])


def _parts_text() -> str:
    return "\n\n".join([tr(_QT, version=qVersion()), *(tr(text) for text in _PARTS)])


def _sources_text() -> str:
    """The works whose figures are used, by title."""
    lines = []
    for source in sorted(bibliography().values(), key=lambda s: s.title.casefold()):
        rest = ", ".join(str(part) for part in (source.publisher, source.year, source.where) if part)
        lines.append(f"{source.title}. {rest}" if rest else source.title)
    return "\n\n".join(lines)


class AboutDialog(QDialog):
    """Program, licences, sources and credits on four leaves."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("About yardplan"))
        self.resize(roomy(self, 620, 460))
        tabs = QTabWidget()
        program = label(_program_text(), wrap=True)
        program.setContentsMargins(8, 12, 8, 8)
        leaf = QWidget()
        inner = QVBoxLayout(leaf)
        inner.addWidget(program)
        inner.addStretch()
        tabs.addTab(leaf, tr("Program"))
        tabs.addTab(
            _reading(tr("Licence"), resource("LICENCE.txt").read_text(encoding="utf-8")), tr("Licence")
        )
        tabs.addTab(_reading(tr("Licences of the parts used"), _parts_text()), tr("Parts used"))
        tabs.addTab(_reading(tr("Sources of the figures"), _sources_text()), tr("Sources"))
        tabs.addTab(_reading(tr("Data of places"), "\n\n".join(credits())), tr("Places"))
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.addWidget(tabs)
        box.addWidget(buttons)
        press_by_enter(buttons.button(QDialogButtonBox.StandardButton.Close))


def _reading(name: str, text: str) -> QPlainTextEdit:
    """A text to read and copy from."""
    shown = QPlainTextEdit(text)
    shown.setReadOnly(True)
    shown.setAccessibleName(name)
    shown.setTabChangesFocus(True)
    return shown
