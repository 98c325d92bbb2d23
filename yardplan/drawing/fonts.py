"""The one family of type, bundled so that screen, tests and paper agree."""

from __future__ import annotations

from functools import cache, lru_cache

from PySide6.QtGui import QFont, QFontDatabase, QFontMetricsF

from yardplan.shipped import resource

FAMILY = "Yardplan Sans"
#: The smallest type, in style units, that a person is asked to read.
FLOOR = 11.0
_FILES = tuple(f"YardplanSans-{face}.otf" for face in ("Regular", "Medium", "SemiBold", "Italic"))
_WEIGHTS = {"regular": QFont.Weight.Normal, "medium": QFont.Weight.Medium, "bold": QFont.Weight.DemiBold}


@cache
def load_fonts() -> str:
    """Load the bundled faces once and return the family's name. Needs a QGuiApplication.

    Raises FileNotFoundError when a face cannot be loaded.
    """
    for name in _FILES:
        path = resource("fonts", name)
        if QFontDatabase.addApplicationFont(str(path)) < 0:
            raise FileNotFoundError(f"the typeface {path.name} could not be loaded from {path.parent}")
    return FAMILY


@lru_cache(maxsize=256)
def font(size: float, weight: str = "regular", unit: float = 1.0, italic: bool = False) -> QFont:
    """The face at `size` style units; its figures have one width. `weight` regular, medium or bold."""
    made = QFont(load_fonts())
    made.setPixelSize(max(1, round(size * unit)))
    made.setWeight(_WEIGHTS[weight])
    made.setItalic(italic)
    made.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return made


@lru_cache(maxsize=256)
def metrics(size: float, weight: str = "regular", unit: float = 1.0, italic: bool = False) -> QFontMetricsF:
    """Measures of the face at that size, in device pixels."""
    return QFontMetricsF(font(size, weight, unit, italic))


@lru_cache(maxsize=16384)
def width(text: str, size: float, weight: str = "regular", unit: float = 1.0, italic: bool = False) -> float:
    """How wide the words are, in device pixels."""
    return metrics(size, weight, unit, italic).horizontalAdvance(text)
