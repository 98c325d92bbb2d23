"""The bundled type: loads, figures of one width, licence beside it."""

from PySide6.QtGui import QFontInfo

from yardplan.drawing.fonts import FLOOR, font, load_fonts, width
from yardplan.drawing.lettering import FACT, GROUND, KEY, NAME, NOTE, SAID, STANDING_NAME, TITLE
from yardplan.shipped import resource


def test_family_loads_and_is_used(qapp):
    assert load_fonts() == "Yardplan Sans"
    for weight in ("regular", "medium", "bold"):
        assert QFontInfo(font(12, weight)).family().startswith("Yardplan Sans")
    assert QFontInfo(font(12, italic=True)).italic()


def test_figures_have_one_width(qapp):
    for weight in ("regular", "medium", "bold"):
        widths = [width(figure * 4, 12, weight) for figure in "0123456789"]
        # Figures of their own widths would differ by several pixels over four places; 1/16 px is rounding.
        assert max(widths) - min(widths) < 0.1


def test_small_enough_and_licence_kept(qapp):
    files = list(resource("fonts").iterdir())
    assert sum(f.stat().st_size for f in files) <= 1_500_000
    assert "SIL OPEN FONT LICENSE Version 1.1" in resource("fonts", "OFL.txt").read_text()


def test_no_face_is_below_the_floor():
    faces = (FACT, GROUND, KEY, NAME, NOTE, SAID, STANDING_NAME, TITLE)
    assert min(face.size for face in faces) >= FLOOR == 11.0
