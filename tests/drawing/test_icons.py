"""Icons take the ink they are given and fill their grid."""

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor
from support.plans import inked, near, picture

from yardplan.drawing.icons import icon, icon_names, paint_icon, program_icon

TOOLS = (
    "select", "lot", "building", "barrier", "paving", "bed", "row", "plant", "pot", "tree", "service", "gate",
    "tape", "note", "light", "undo", "redo", "fit",
)


def test_every_tool_has_one():
    assert set(TOOLS) <= set(icon_names())


@pytest.mark.parametrize("name", TOOLS)
def test_drawn_in_the_ink_within_the_grid(qapp, name):
    for ink in ("#22303A", "#B93A0B"):
        drawn = picture(lambda p, ink=ink: paint_icon(p, name, QRectF(8, 8, 48, 48), QColor(ink)), 64, 64)
        dark = inked(drawn)
        assert dark.sum() > 100
        assert not dark[:8].any()
        assert not dark[:, 57:].any()
        assert near(drawn, ink, 30).any()


def test_disabled_is_paler(qapp):
    made = icon("plant", QColor("#22303A"))

    def ink(mode):
        image = made.pixmap(24, mode).toImage().convertToFormat(QImage.Format.Format_RGBA8888)
        return np.frombuffer(image.constBits(), np.uint8).reshape(-1, 4)[:, 3].astype(int).sum()

    from PySide6.QtGui import QIcon, QImage

    assert ink(QIcon.Mode.Disabled) < 0.6 * ink(QIcon.Mode.Normal)


def test_unknown_icons_are_refused():
    with pytest.raises(KeyError, match="no icon called"):
        icon("dragon", QColor("#000000"))


def test_the_program_has_an_icon_at_every_size(qapp):
    assert {size.width() for size in program_icon().availableSizes()} >= {16, 32, 256}
