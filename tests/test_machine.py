"""What the machine lacks is named before Qt can abort."""

import pytest

from yardplan import machine


def test_no_screen_is_found_without_a_display():
    assert machine.chosen_platform({}) in ("none", "native")


def test_qt_told_to_do_without_a_screen_needs_none():
    assert machine.has_display({"QT_QPA_PLATFORM": "offscreen"})


def test_a_display_that_does_not_answer_is_no_screen():
    if machine.chosen_platform({"DISPLAY": ":0"}) == "native":
        return
    assert not machine.has_display({"DISPLAY": ":7391"})


def test_missing_libraries_are_named_with_the_line_that_installs_them(monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(machine, "_loads", lambda name: name not in ("libEGL.so.1", "libxcb-cursor.so.0"))
    missing = machine.missing_for_window({"QT_QPA_PLATFORM": "xcb"})
    names = [library.name for library in missing]
    if machine.chosen_platform({}) == "none":
        assert names == ["libEGL.so.1", "libxcb-cursor.so.0"]
    monkeypatch.setattr("shutil.which", lambda tool: "/usr/bin/apt-get" if tool == "apt-get" else None)
    lacking = (machine.DRAWING[0], machine.X11[0])
    assert machine.install_line(lacking) == "sudo apt-get install libegl1 libxcb-cursor0"
    monkeypatch.setattr("shutil.which", lambda tool: "/usr/bin/dnf" if tool == "dnf" else None)
    assert machine.install_line(lacking) == "sudo dnf install mesa-libEGL xcb-util-cursor"
    monkeypatch.setattr("shutil.which", lambda tool: None)
    assert "libEGL.so.1" in machine.install_line(lacking)


@pytest.mark.parametrize(
    ("python", "qt", "kept"),
    [
        ((3, 11, 7), (6, 12), False),
        ((3, 11, 7), (6, 11), True),
        ((3, 12, 1), (6, 12), True),
        ((3, 11), None, True),
    ],
)
def test_the_pairing_that_loses_none_is_refused(monkeypatch: pytest.MonkeyPatch, python, qt, kept):
    monkeypatch.setattr("sys.version_info", python)
    monkeypatch.setattr(machine, "_installed_qt", lambda: qt)
    assert machine.none_is_kept() is kept


def test_the_report_names_every_line_once():
    names = [line.what for line in machine.report({"QT_QPA_PLATFORM": "offscreen"})]
    assert len(names) == len(set(names))
    assert {"Python", "numpy", "shapely", "screen", "system libraries"} <= set(names)
