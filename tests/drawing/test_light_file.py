from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPointF
from support import suns
from support.builders import plant, yard_of
from support.plans import picture

from yardplan.cli import main
from yardplan.drawing.light_file import light_image
from yardplan.drawing.light_legend import TITLE, draw_light_legend, legend_size
from yardplan.drawing.light_picture import TONES
from yardplan.drawing.view import bare_view
from yardplan.files.writing import save
from yardplan.sun.classes import classes
from yardplan.sun.light import light_report
from yardplan.sun.scene import scene_of


def test_the_legend_shows_every_class_and_fits_its_box(qapp):
    view = bare_view()
    wide, high = legend_size(view, "04-01 to 09-30")
    shown = picture(
        lambda painter: draw_light_legend(painter, view, QPointF(0, 0), "04-01 to 09-30"), wide, high
    )
    assert TITLE
    assert len(TONES) == len(classes())
    # The swatches are as many levels of darkness as there are classes, beside the paper.
    column = shown[:, 12].astype(int).sum(axis=1)
    levels = {value for value in column.tolist() if np.count_nonzero(column == value) >= 6}
    assert len(levels) >= len(classes())


def test_the_picture_holds_plan_and_legend_for_any_lot(qapp):
    for lot, latitude in ((8.0, 42.0), (30.0, 42.0), (30.0, 84.0)):
        yard, stand = suns.yard_and_stand(
            suns.tree("A", (lot / 2, lot / 2), suns.size(3, 4)),
            lot=lot,
            site=suns.Site(latitude=latitude, season=("12-01", "12-31")),
        )
        report = light_report(scene_of(yard, stand), "live", cell=0.5)
        image = light_image(yard, stand, report)
        assert image.width() >= 1400
        assert image.height() > 1400
        assert not image.isNull()


def test_the_command_writes_the_picture(qapp, tmp_path: Path, capsys: pytest.CaptureFixture[str]):
    save(tmp_path / "a.yard", yard_of(plant("A1", "apple:Liberty", (8, 8))))
    out = tmp_path / "light.png"
    assert main(["sun", str(tmp_path / "a.yard"), "--png", str(out)]) == 0
    assert out.read_bytes().startswith(b"\x89PNG")
    assert out.stat().st_size > 10_000
    assert main(["sun", str(tmp_path / "a.yard"), "--png", str(tmp_path / "no" / "such.png")]) == 2
    assert "cannot write" in capsys.readouterr().err
