"""What this machine lacks for the window, asked before Qt can abort. Qt itself is not imported here.

A missing system library makes Qt's window plug-in abort the whole process without a Python error,
so each library is tried by itself first. Modules that only the report needs are loaded by it: this runs
before every start of the window.
"""

from __future__ import annotations

import ctypes
import importlib.util
import os
import re
import sys
from collections.abc import Iterable, Mapping
from pathlib import Path

from attrs import frozen

#: Platforms of Qt that need no screen, chosen by the environment (tests, remote use).
_SCREENLESS = ("offscreen", "minimal", "vnc", "linuxfb", "eglfs")


@frozen
class Library:
    """A system library and the packages that bring it: Debian or Ubuntu, and Fedora."""

    name: str
    debian: str
    fedora: str


#: Needed to load Qt's drawing at all.
DRAWING = (
    Library("libEGL.so.1", "libegl1", "mesa-libEGL"),
    Library("libGL.so.1", "libgl1", "mesa-libGL"),
    Library("libfontconfig.so.1", "libfontconfig1", "fontconfig"),
    Library("libfreetype.so.6", "libfreetype6", "freetype"),
    Library("libxkbcommon.so.0", "libxkbcommon0", "libxkbcommon"),
    Library("libdbus-1.so.3", "libdbus-1-3", "dbus-libs"),
    Library("libglib-2.0.so.0", "libglib2.0-0", "glib2"),
    Library("libX11.so.6", "libx11-6", "libX11"),
)
#: Needed besides for a window on an X11 screen.
X11 = (
    Library("libxcb-cursor.so.0", "libxcb-cursor0", "xcb-util-cursor"),
    Library("libxcb-icccm.so.4", "libxcb-icccm4", "xcb-util-wm"),
    Library("libxcb-image.so.0", "libxcb-image0", "xcb-util-image"),
    Library("libxcb-keysyms.so.1", "libxcb-keysyms1", "xcb-util-keysyms"),
    Library("libxcb-randr.so.0", "libxcb-randr0", "libxcb"),
    Library("libxcb-render-util.so.0", "libxcb-render-util0", "xcb-util-renderutil"),
    Library("libxcb-shape.so.0", "libxcb-shape0", "libxcb"),
    Library("libxcb-xkb.so.1", "libxcb-xkb1", "libxcb"),
    Library("libxkbcommon-x11.so.0", "libxkbcommon-x11-0", "libxkbcommon-x11"),
    Library("libX11-xcb.so.1", "libx11-xcb1", "libX11-xcb"),
)
#: Needed besides for a window on a Wayland screen.
WAYLAND = (
    Library("libwayland-client.so.0", "libwayland-client0", "libwayland-client"),
    Library("libwayland-cursor.so.0", "libwayland-cursor0", "libwayland-cursor"),
)


def _loads(name: str) -> bool:
    try:
        ctypes.CDLL(name)
    except OSError:
        return False
    return True


def _x11_answers(display: str) -> bool:
    """True when an X11 screen of that name takes connections. Without libxcb nobody can tell: True."""
    try:
        xcb = ctypes.CDLL("libxcb.so.1")
    except OSError:
        return True
    xcb.xcb_connect.restype = ctypes.c_void_p
    xcb.xcb_connect.argtypes = [ctypes.c_char_p, ctypes.c_void_p]
    xcb.xcb_connection_has_error.argtypes = [ctypes.c_void_p]
    xcb.xcb_disconnect.argtypes = [ctypes.c_void_p]
    connection = xcb.xcb_connect(display.encode(), None)
    refused = xcb.xcb_connection_has_error(connection) != 0
    xcb.xcb_disconnect(connection)
    return not refused


def chosen_platform(environment: Mapping[str, str] = os.environ) -> str:
    """`offscreen`, `x11`, `wayland`, `native` (not Linux) or `none` (no screen found)."""
    wanted = environment.get("QT_QPA_PLATFORM", "").split(";")[0].split(":")[0]
    if wanted in _SCREENLESS:
        return "offscreen"
    if not sys.platform.startswith("linux"):
        return "native"
    if environment.get("WAYLAND_DISPLAY") and wanted != "xcb":
        return "wayland"
    display = environment.get("DISPLAY", "")
    return "x11" if display and _x11_answers(display) else "none"


def has_display(environment: Mapping[str, str] = os.environ) -> bool:
    """True when a window can be shown (or Qt was told to do without a screen)."""
    return chosen_platform(environment) != "none"


def missing_for_window(environment: Mapping[str, str] = os.environ) -> list[Library]:
    """The system libraries that a window on this machine's screen needs and does not find."""
    needed = {
        "offscreen": DRAWING, "none": DRAWING + X11, "x11": DRAWING + X11,
        "wayland": DRAWING + WAYLAND, "native": (),
    }[chosen_platform(environment)]
    return [library for library in needed if not _loads(library.name)]


def install_line(missing: Iterable[Library]) -> str:
    """The command that installs the missing libraries, for the package tool found here."""
    import shutil

    libraries = tuple(missing)
    if shutil.which("apt-get"):
        return "sudo apt-get install " + " ".join(sorted({library.debian for library in libraries}))
    if shutil.which("dnf"):
        return "sudo dnf install " + " ".join(sorted({library.fedora for library in libraries}))
    return "install the packages that hold " + ", ".join(library.name for library in libraries)


def none_is_kept() -> bool:
    """False on the pairing of Python and Qt that loses references to None and would abort."""
    if sys.version_info >= (3, 12):
        return True
    number = _installed_qt()
    return number is None or number < (6, 12)


def _installed_qt() -> tuple[int, int] | None:
    """The installed Qt package's version by the name of its folder: quicker than asking for all packages."""
    spec = importlib.util.find_spec("PySide6")
    if spec is None or spec.origin is None:
        return None
    folders = (name.lower() for name in os.listdir(Path(spec.origin).parent.parent))
    found = [re.match(r"pyside6_essentials-(\d+)\.(\d+).*\.dist-info", name) for name in folders]
    return next(((int(match[1]), int(match[2])) for match in found if match), None)


@frozen
class Line:
    """One line of the doctor's report."""

    what: str
    fine: bool
    detail: str


def _package(name: str) -> Line:
    from importlib import metadata

    try:
        return Line(name, True, metadata.version(name))
    except metadata.PackageNotFoundError:
        return Line(name, False, f"not installed: python -m pip install {name}")


def report(environment: Mapping[str, str] = os.environ) -> list[Line]:
    """What the machine has and lacks, line by line."""
    import platform

    lines = [Line("Python", sys.version_info >= (3, 11), platform.python_version())]
    lines += [_package(name) for name in ("PySide6-Essentials", "shapely", "numpy", "attrs")]
    if not none_is_kept():
        lines.append(Line("Qt on this Python", False, 'python -m pip install "PySide6-Essentials<6.12"'))
    screen = chosen_platform(environment)
    lines.append(Line("screen", screen != "none", "none found" if screen == "none" else screen))
    missing = missing_for_window(environment)
    detail = install_line(missing) if missing else "all found"
    lines.append(Line("system libraries", not missing, detail))
    return lines
