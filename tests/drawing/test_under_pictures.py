"""Pictures read from files, made small, refused in one line; drawn beneath the plan."""

import base64

import pytest
from attrs import evolve
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPdfWriter

from yardplan.drawing import picture_file, under_pictures
from yardplan.drawing.painter import draw_yard
from yardplan.drawing.picture_file import LONGEST_SIDE, MOST_BYTES, PictureError, pages_in, read_picture
from yardplan.drawing.under_pictures import decoded
from yardplan.drawing.view import bare_view
from yardplan.yard.ground import Dimension, Picture
from yardplan.yard.yard import Yard

pytestmark = pytest.mark.usefixtures("qapp")


def _image(wide: int, high: int) -> QImage:
    """White, with its left half red."""
    image = QImage(wide, high, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.fillRect(0, 0, wide // 2, high, QColor("#FF0000"))
    painter.end()
    return image


@pytest.mark.parametrize("name", ["scan.png", "scan.jpg"])
def test_a_large_picture_is_made_small_enough_to_travel(tmp_path, name):
    path = tmp_path / name
    assert _image(4800, 1200).save(str(path))
    read = read_picture(path)
    assert (read.name, read.pixels) == (name, (LONGEST_SIDE, LONGEST_SIDE // 4))
    assert len(base64.b64decode(read.data)) < MOST_BYTES
    image = decoded(read.data)
    assert image.pixelColor(100, 100).red() > 245
    assert image.pixelColor(100, 100).green() < 20
    assert image.pixelColor(2000, 100).green() > 245


def test_a_page_of_a_pdf(tmp_path):
    path = tmp_path / "survey.pdf"
    writer = QPdfWriter(str(path))
    writer.setResolution(100)
    painter = QPainter(writer)
    writer.newPage()
    painter.fillRect(QRectF(0, 0, writer.width() / 2, writer.height()), QColor("#0000FF"))
    painter.end()
    assert pages_in(path) == 2
    read = read_picture(path, 2)
    assert max(read.pixels) == LONGEST_SIDE
    image = decoded(read.data)
    wide, high = read.pixels
    assert image.pixelColor(wide // 3, high // 2).blue() > 245
    assert image.pixelColor(wide // 3, high // 2).red() < 20
    assert image.pixelColor(wide * 4 // 5, high // 2).red() > 245
    with pytest.raises(PictureError, match="no page 3"):
        read_picture(path, 3)


@pytest.mark.parametrize(("name", "held", "word"), [
    ("scan.png", b"no picture at all", "damaged"), ("scan.pdf", b"%PDF-1.4 but no more", "damaged"),
    ("scan.jpg", b"", "damaged"), ("scan.txt", b"words", "PNG, JPEG or PDF"),
])
def test_what_cannot_be_read_is_told_in_one_line(tmp_path, name, held, word):
    path = tmp_path / name
    path.write_bytes(held)
    with pytest.raises(PictureError, match=word) as caught:
        read_picture(path)
    assert "\n" not in str(caught.value)
    with pytest.raises(PictureError, match="cannot be opened"):
        read_picture(tmp_path / "missing.png")


def test_a_cut_off_picture_is_refused(tmp_path):
    whole, cut = tmp_path / "whole.png", tmp_path / "cut.png"
    assert _image(400, 300).save(str(whole))
    cut.write_bytes(whole.read_bytes()[:60])
    with pytest.raises(PictureError, match="damaged"):
        read_picture(cut)


def _drawn(yard: Yard, **layers: bool) -> QImage:
    """The yard on a sheet of 400 x 400 pixels, 10 a metre, its (0, 0) at the lower left."""
    paper = QImage(400, 400, QImage.Format.Format_RGB32)
    paper.fill(QColor("white"))
    view = evolve(bare_view(), yard=yard, scale=10.0, origin=(0.0, 400.0))
    view = evolve(view, layers=evolve(view.layers, grid=False, **layers))
    painter = QPainter(paper)
    draw_yard(painter, view)
    painter.end()
    return paper


def _picture(tmp_path, **fields) -> Picture:
    path = tmp_path / "scan.png"
    _image(400, 200).save(str(path))
    read = read_picture(path)
    base = fields.pop("base", ((10.0, 10.0), (30.0, 10.0)))
    return Picture(id="PC1", base=base, pixels=read.pixels, data=read.data, **fields)


def test_it_lies_where_its_corners_say_faded_and_can_be_hidden(tmp_path):
    picture = _picture(tmp_path, opacity=0.5)
    paper = _drawn(Yard(pictures=(picture,)))
    # 20 m wide and 10 m high: its left half from (10, 10) to (20, 20), half faded.
    assert paper.pixelColor(150, 250).green() == pytest.approx(127, abs=3)
    assert paper.pixelColor(250, 250).green() == 255
    assert paper.pixelColor(150, 350).green() == 255
    assert paper.pixelColor(150, 190).green() == 255
    assert _drawn(Yard(pictures=(picture,)), pictures=False).pixelColor(150, 250).green() == 255


def test_turned_by_a_quarter_its_left_half_lies_below(tmp_path):
    paper = _drawn(Yard(pictures=(_picture(tmp_path, base=((30.0, 10.0), (30.0, 30.0)), opacity=1.0),)))
    assert paper.pixelColor(250, 250).green() < 20
    assert paper.pixelColor(250, 150).green() > 245


def test_a_damaged_picture_shows_a_crossed_frame_and_nothing_breaks():
    picture = Picture(id="PC1", base=((5.0, 5.0), (35.0, 5.0)), pixels=(300, 200), data="AAAA")
    paper = _drawn(Yard(pictures=(picture,)))
    assert paper.pixelColor(200, 250) != QColor("white")


def test_a_dimension_line_stands_aside_and_is_hidden_with_its_layer():
    yard = Yard(dimensions=(Dimension(id="DM1", ends=((5.0, 5.0), (35.0, 5.0)), off=3.0),))
    paper = _drawn(yard)
    # Its line runs at 8 m, 80 pixels above the lower edge.
    assert paper.pixelColor(100, 320).lightness() < 200
    assert paper.pixelColor(100, 350).lightness() == 255
    assert _drawn(yard, dimensions=False).pixelColor(100, 320).lightness() == 255


def test_what_is_too_large_is_refused_before_it_fills_the_memory(tmp_path, monkeypatch):
    path = tmp_path / "scan.png"
    assert _image(400, 300).save(str(path))
    data = read_picture(path).data
    monkeypatch.setattr(picture_file, "MOST_PIXELS", 399 * 300)
    with pytest.raises(PictureError, match="400 x 300 pixels"):
        read_picture(path)
    monkeypatch.setattr(picture_file, "LARGEST_FILE", 100)
    with pytest.raises(PictureError, match="too large"):
        read_picture(path)
    # Small as text, huge as a picture: shown as damaged.
    monkeypatch.setattr(under_pictures, "MOST_PIXELS", 399 * 300)
    decoded.cache_clear()
    assert decoded(data) is None
    decoded.cache_clear()
