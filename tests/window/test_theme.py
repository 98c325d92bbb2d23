"""Contrast by WCAG 2.2 (1.4.3 text 4.5:1, 1.4.11 parts and marks 3:1) on every ground, in both schemes."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QLineEdit

from yardplan.drawing.style import PALETTE, contrast
from yardplan.window.panels.finding_card import PALE
from yardplan.window.theme import DARK, LIGHT, SMALL, Colours, Theme, colours_now, font

SCHEMES = {"light": LIGHT, "dark": DARK}
GROUNDS = ("room", "panel", "card", "chosen", "button")
TEXTS = ("ink", "muted", "conflict", "caution", "leaf", "link")


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("text", TEXTS)
def test_words_can_be_read(scheme: str, ground: str, text: str) -> None:
    c = SCHEMES[scheme]
    assert contrast(getattr(c, text), getattr(c, ground)) >= 4.5


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("ground", ["panel", "card", "button"])
@pytest.mark.parametrize("part", ["edge", "focus"])
def test_edges_and_focus_rings_can_be_seen(scheme: str, ground: str, part: str) -> None:
    c = SCHEMES[scheme]
    assert contrast(getattr(c, part), getattr(c, ground)) >= 3.0


@pytest.mark.parametrize("c", [LIGHT, DARK], ids=["light", "dark"])
def test_main_button_words_stand_out_from_its_ground(c: Colours) -> None:
    assert contrast(c.card, c.leaf) >= 4.5


def mixed(front: str, back: str, share: float) -> str:
    one, other = QColor(front), QColor(back)
    parts = zip(one.getRgb()[:3], other.getRgb()[:3], strict=True)
    return QColor(*(round(share * a + (1 - share) * b) for a, b in parts)).name()


@pytest.mark.parametrize("c", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize("text", ["ink", "muted", "link"])
@pytest.mark.parametrize("ground", ["card", "chosen"])
def test_pale_cards_can_still_be_read(c: Colours, text: str, ground: str) -> None:
    under = getattr(c, ground)
    assert contrast(mixed(getattr(c, text), under, PALE), under) >= 4.5


def test_sheet_is_light_in_both_schemes() -> None:
    assert LIGHT.paper == DARK.paper == PALETTE.paper


def test_choice_is_remembered_and_applied(theme: Theme, tmp_path) -> None:
    theme.choose("dark")
    assert colours_now() is DARK
    assert theme.dark
    again = Theme(QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat))
    assert again.choice == "dark"
    again.choose("light")
    assert colours_now() is LIGHT


def test_unknown_stored_scheme_falls_back_to_the_system(tmp_path) -> None:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    settings.setValue("window/scheme", "sepia")
    assert Theme(settings).choice == "system"


def test_palette_covers_what_fusion_draws(theme: Theme, qapp) -> None:
    theme.choose("dark")
    palette = qapp.palette()
    role = QPalette.ColorRole
    pairs = [
        (role.Text, role.Base), (role.ButtonText, role.Button), (role.WindowText, role.Window),
        (role.HighlightedText, role.Highlight), (role.ToolTipText, role.ToolTipBase),
    ]
    for text, ground in pairs:
        assert contrast(palette.color(text).name(), palette.color(ground).name()) >= 4.5


def test_type_never_goes_under_the_floor(qapp) -> None:
    assert font(7).pixelSize() == SMALL


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_what_an_empty_field_stands_for_can_be_read(theme: Theme, qtbot, scheme: str) -> None:
    theme.choose(scheme)
    line = QLineEdit()
    qtbot.addWidget(line)
    line.setPlaceholderText("not known")
    line.show()
    text = line.palette().color(QPalette.ColorRole.PlaceholderText)
    assert text.alpha() == 255
    assert contrast(text.name(), theme.colours.card) >= 4.5
