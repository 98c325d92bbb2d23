"""Makes the pictures of the handbook from the running program. In the folder of the checkout:

    QT_QPA_PLATFORM=offscreen PYTHONPATH=.:tests python -m support.handbook_pictures

Run it when the window changes its looks. Each picture is one function; names given make only those, `en`
or `de` only those of that language: English ones in resources/handbook/pictures, others in the language's
folder there.
"""

from __future__ import annotations

import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from attrs import evolve
from PySide6.QtCore import QRect, QSettings, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from support.window_hands import click, hover, trigger
from yardplan.language import tr
from yardplan.window.canvas.view import bounds_of
from yardplan.window.languages import LANGUAGES, speak
from yardplan.window.main_window import MainWindow
from yardplan.window.open_yard import InHand, OpenYard
from yardplan.window.theme import Theme
from yardplan.yard.planting import PlantKey

ROOT = Path(__file__).resolve().parents[2]
HANDBOOK = ROOT / "resources" / "handbook"
#: Widest picture, pixels.
WIDEST = 640
#: Colours of a picture.
COLOURS = 64
SIZE = (1240, 764)


class Studio:
    """A window dressed light, with a folder of its own for what it writes."""

    def __init__(self, app: QApplication, folder: Path, language: str) -> None:
        self.app, self.folder = app, folder
        self.pictures = (HANDBOOK if language == "en" else HANDBOOK / language) / "pictures"
        self.pictures.mkdir(exist_ok=True)
        speak(language)
        settings = QSettings(str(folder / "settings.ini"), QSettings.Format.IniFormat)
        self.theme = Theme(settings)
        self.theme.choose("light")
        self.window = MainWindow(OpenYard(), settings=settings, recovery=folder / "recovery")
        self.window.theme = self.theme
        self.window.resize(*SIZE)
        self.window.show()
        self.window.build_side()
        self.rest()

    def rest(self, seconds: float = 0.4) -> None:
        """Let the window paint and its workers answer."""
        end = time.monotonic() + seconds
        while time.monotonic() < end or self.window.open_yard.checks.busy:
            self.app.processEvents()
            time.sleep(0.01)

    def sample(self, name: str = "first_orchard") -> MainWindow:
        """A fresh copy of a sample yard, all of it in view, the tools and panels at rest."""
        window = self.window
        window.actions_["tool select"].trigger()
        window.open_yard.take_in_hand(None)
        window.documents.load(ROOT / "sample_yards" / f"{name}.yard", as_copy=True)
        window.open_yard.select(())
        window.canvas.fit()
        window.side.tabs.setCurrentWidget(window.side.choose)
        window.side.choose.search.clear()
        self.rest(1.0)
        return window

    def keep(self, name: str, widget: QWidget, part: QRect | None = None, *, width: int = WIDEST) -> None:
        """Grab a widget, or a part of it, and write it small."""
        self.rest()
        picture = widget.grab(part or widget.rect()).toImage()
        self.write(name, picture, width)

    def write(self, name: str, picture: QImage, width: int = WIDEST) -> None:
        """Write a picture no wider than `width`, in few colours."""
        if picture.width() > width:
            picture = picture.scaledToWidth(width, Qt.TransformationMode.SmoothTransformation)
        small = in_few_colours(picture)
        path = self.pictures / f"{name}.png"
        if not small.save(str(path), quality=0):
            raise OSError(f"{path} could not be written")
        size = f"{small.width()} x {small.height()}, {path.stat().st_size // 1024} kB"
        print(f"{path.relative_to(HANDBOOK)}: {size}")


def in_few_colours(picture: QImage) -> QImage:
    """The picture in its most used colours, each pixel in the nearest one: a third of the bytes."""
    import numpy as np

    full = picture.convertToFormat(QImage.Format.Format_RGB32)
    lines = np.frombuffer(full.constBits(), np.uint32).reshape(full.height(), full.bytesPerLine() // 4)
    pixels = lines[:, : full.width()] | 0xFF000000
    # Neighbouring shades count as one, so that edges of letters keep their steps.
    coarse, counts = np.unique(pixels & 0xFFF8F8F8, return_counts=True)
    used = coarse[np.argsort(-counts)[: COLOURS]]
    exact = [int(pixels[(pixels & 0xFFF8F8F8) == colour].max()) for colour in used[:8]]
    table = list(dict.fromkeys([*exact, *(int(colour) | 0xFF000000 for colour in used)]))[:COLOURS]
    threshold = Qt.ImageConversionFlag.ThresholdDither
    return full.convertToFormat(QImage.Format.Format_Indexed8, table, threshold)


def start(studio: Studio) -> None:
    """The panel on the empty sheet."""
    studio.window.open_yard.new()
    studio.rest()
    assert studio.window.start_panel is not None
    studio.keep("start", studio.window.start_panel)


def guide(studio: Studio) -> None:
    """The guide's strip and ring."""
    studio.window.open_yard.new()
    studio.window.help.show_guide()
    studio.rest(0.6)
    studio.keep("guide", studio.window, QRect(0, 0, 880, 420))
    studio.window.help.guide.leave()


def window(studio: Studio) -> None:
    """The whole window."""
    studio.sample("southern_yard")
    studio.keep("window", studio.window, width=720)


def lot(studio: Studio) -> None:
    """A lot line being drawn."""
    studio.window.open_yard.new()
    studio.window.start_panel.put_away()
    trigger(studio.window, "tool lot")
    canvas = studio.window.canvas
    for place in ((3, 4), (24, 4), (27, 12)):
        click(canvas, place)
    hover(canvas, (15, 16))
    studio.keep("lot", canvas)
    QTest.keyClick(canvas, Qt.Key.Key_Escape)


def _near(studio: Studio, ids: set[str], factor: float) -> QWidget:
    """The canvas, nearer by a factor, with some things in its middle."""
    from yardplan.yard.edits import points_of

    canvas = studio.window.canvas
    box = bounds_of(tuple(p for thing in studio.window.open_yard.yard.named(ids) for p in points_of(thing)))
    assert box is not None
    middle = ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
    canvas.set_view(evolve(canvas.view, centre=middle).at_scale(canvas.view.scale * factor), settle=True)
    studio.rest(0.8)
    return canvas


def structures(studio: Studio) -> None:
    """House, terrace, fence, pipe and a tree next door, without marks."""
    studio.sample()
    trigger(studio.window, "marks")
    canvas = _near(studio, {"BL1", "BL2"}, 1.5)
    studio.keep("structures", canvas, QRect(0, 20, canvas.width(), 400))
    trigger(studio.window, "marks")


def choose(studio: Studio) -> None:
    """A search, and the card of what is in hand."""
    window_ = studio.sample()
    window_.side.choose.search.setText("pear")
    window_.open_yard.take_in_hand(InHand(plant=PlantKey("european pear", "Bartlett")))
    studio.rest(1.0)
    studio.keep("choose", window_.side.tabs)
    window_.open_yard.take_in_hand(None)


def fields(studio: Studio) -> None:
    """The fields of a plant."""
    window_ = studio.sample()
    window_.open_yard.select({"A1"})
    window_.side.show_fields()
    studio.rest(1.0)
    studio.keep("fields", window_.side.tabs)


def spacing(studio: Studio) -> None:
    """Two crowns that meet, and clear ground for the plant in hand."""
    window_ = studio.sample()
    window_.open_yard.take_in_hand(InHand(plant=PlantKey("apple", "Topaz")))
    canvas = _near(studio, {"A1", "A2", "L1"}, 2.2)
    hover(window_.canvas, (12.0, 6.0))
    studio.rest(1.5)
    studio.keep("spacing", canvas, QRect(0, 20, canvas.width(), 440))
    window_.open_yard.take_in_hand(None)


def light(studio: Studio) -> None:
    """Hours of sun over the lot."""
    window_ = studio.sample()
    trigger(window_, "light overlay")
    studio.rest(3.0)
    studio.keep("light", window_.canvas)
    trigger(window_, "light overlay")


def partners(studio: Studio) -> None:
    """Partner lines of a selected plant."""
    window_ = studio.sample()
    window_.open_yard.select({"A1"})
    canvas = _near(studio, {"A1", "A3", "P1"}, 2.0)
    studio.keep("partners", canvas, QRect(0, 60, canvas.width(), 380))


def season(studio: Studio) -> None:
    """The season strip."""
    window_ = studio.sample()
    window_.open_yard.select({"A1"})
    studio.keep("season", window_.season_dock.widget(), width=760)


def findings(studio: Studio) -> None:
    """The list of findings, one chosen."""
    window_ = studio.sample()
    window_.side.findings.step(1)
    studio.keep("findings", window_.side.findings)


def _card(studio: Studio, name: str, words: str) -> None:
    """The site card with a heading in view, named as in English."""
    from PySide6.QtWidgets import QLabel, QScrollArea

    window_ = studio.sample()
    trigger(window_, "site card")
    studio.rest()
    card = window_.panel_commands._boxes["site"]
    for area in card.findChildren(QScrollArea):
        heads = [w for w in area.findChildren(QLabel) if w.text() == tr(words)]
        heads += [w for w in area.findChildren(QWidget) if getattr(w, "_title", "") == tr(words)]
        if heads:
            bar = area.verticalScrollBar()
            bar.setValue(heads[0].mapTo(area.widget(), heads[0].rect().topLeft()).y())
    studio.keep(name, card, QRect(0, 0, card.width(), min(card.height(), 520)))
    card.close()


def place(studio: Studio) -> None:
    """The head of the site card."""
    _card(studio, "place", "")


def soil(studio: Studio) -> None:
    """Soil on the site card."""
    _card(studio, "soil", "Soil and lie of the land")


def _box(studio: Studio, name: str, command: str, height: int) -> None:
    window_ = studio.sample()
    trigger(window_, command)
    studio.rest(1.0)
    box = window_.take_home.boxes[command]
    studio.keep(name, box, QRect(0, 0, box.width(), min(box.height(), height)))
    box.close()


def care(studio: Studio) -> None:
    """The care of a month."""
    _box(studio, "care", "care", 560)


def buying(studio: Studio) -> None:
    """The shopping list."""
    _box(studio, "buying", "shopping", 460)


def printing(studio: Studio) -> None:
    """The box of sheets."""
    _box(studio, "printing", "sheets", 460)


def setting_out(studio: Studio) -> None:
    """The head of the setting-out sheet, as it prints."""
    window_ = studio.sample()
    trigger(window_, "sheets")
    box = window_.take_home.boxes["sheets"]
    for name, choice in box.choices.items():
        choice.setChecked(name == "setting-out")
    box.save_to(studio.folder / "out.png")
    box.close()
    made = sorted(studio.folder.glob("out*.png"))
    page = QImage(str(made[0]))
    page = page.scaledToWidth(820, Qt.TransformationMode.SmoothTransformation)
    studio.write("setting-out", page.copy(0, 0, 820, 460), 760)


SHOTS: tuple[Callable[[Studio], None], ...] = (
    start, guide, window, lot, structures, choose, fields, spacing, light, partners, season, findings, place,
    soil, care, buying, printing, setting_out,
)


def main(names: list[str]) -> None:
    """Make the named pictures, or all, in the named languages, or all."""
    app = QApplication(["yardplan", "-style", "fusion"])
    app.setProperty("style", "fusion")
    wanted = [name for name in names if name not in LANGUAGES]
    for language in [name for name in names if name in LANGUAGES] or LANGUAGES:
        with tempfile.TemporaryDirectory() as folder:
            studio = Studio(app, Path(folder), language)
            for shot in SHOTS:
                if not wanted or shot.__name__ in wanted:
                    shot(studio)
            studio.window.questions.save_changes = lambda _name: "discard"
            studio.window.close()


if __name__ == "__main__":
    main(sys.argv[1:])
