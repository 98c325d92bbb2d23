"""`yardplan bloom FILE --png OUT`: the season as a picture, which needs Qt."""

from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot
from support.builders import yard_of
from support.orchards import row_of, site

from yardplan.cli import main
from yardplan.files.writing import save


def test_bloom_draws_a_picture(qtbot: QtBot, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    yard = tmp_path / "orchard.yard"
    save(yard, yard_of(*row_of("sweet cherry:Bing", "apple:Gala"), site=site(), width=60))
    picture = tmp_path / "season.png"
    assert main(["bloom", str(yard), "--png", str(picture)]) == 0
    assert picture.read_bytes().startswith(b"\x89PNG")
    assert main(["bloom", str(yard), "--png", str(tmp_path / "season.txt")]) == 2
    assert "could not be written" in capsys.readouterr().err
