"""Files made of a yard are suggested beside it, not in the folder the program was started from."""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QFileDialog
from support import cares

from yardplan.window.beside_yard import beside
from yardplan.window.dialogs.sheet_box import SheetBox
from yardplan.window.dialogs.shopping_box import ShoppingBox
from yardplan.window.panels.care_panel import CarePanel
from yardplan.yard import edits


@pytest.fixture
def yard(opened, tmp_path, monkeypatch):
    """A yard saved in a folder of its own, with a name that no file may have."""
    started = tmp_path / "started here"
    started.mkdir()
    monkeypatch.chdir(started)
    made = opened(edits.set_site(cares.orchard(cares.site()), name="Front/back"))
    (tmp_path / "yards").mkdir()
    made.save(tmp_path / "yards" / "mine.yard")
    return made


@pytest.mark.parametrize("kind", [SheetBox, ShoppingBox, CarePanel])
def test_what_is_made_of_a_yard_is_put_beside_it(kind, yard, qtbot, monkeypatch, tmp_path, theme):
    asked = []

    def ask(_parent, _title, suggested, _kinds):
        asked.append(Path(suggested))
        return "", ""

    monkeypatch.setattr(QFileDialog, "getSaveFileName", ask)
    box = kind(yard)
    qtbot.addWidget(box)
    box._ask_file()
    assert [path.parent for path in asked] == [tmp_path / "yards"]
    assert asked[0].name.startswith("Front-back")


def test_a_yard_not_saved_yet_goes_to_no_relative_place(opened):
    assert Path(beside(opened(cares.orchard(cares.site())), "plan.pdf")).is_absolute()
