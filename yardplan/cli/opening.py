"""`yardplan [FILE]`: the window, or without a display that yard's check as a table."""

from __future__ import annotations

import gc
import sys
from collections.abc import Sequence
from importlib import import_module
from pathlib import Path

from yardplan import machine
from yardplan.cli.output import CommandError

#: Loaded before Qt: afterwards Qt for Python reads the source of every module, which takes its time.
BEFORE_QT = (
    "numpy", "numpy.typing", "shapely", "heapq", "uuid", "queue", "hashlib", "tempfile", "zipfile",
    "yardplan.checks.finding", "yardplan.yard.change", "yardplan.yard.pictures", "yardplan.yard.edges",
    "yardplan.yard.handles", "yardplan.yard.identity", "yardplan.files.errors", "yardplan.language",
    "yardplan.units", "yardplan.shipped",
)


def run(words: Sequence[str]) -> int:
    """Open the window on at most one yard. Says what is missing before Qt can abort."""
    path = _path(words)
    if not machine.has_display():
        return _without_display(path)
    missing = machine.missing_for_window()
    if missing:
        names = ", ".join(library.name for library in missing)
        raise CommandError(f"the window needs {names}; run: {machine.install_line(missing)}")
    # Nothing that is loaded while starting is garbage; the window switches the collector on again.
    gc.disable()
    try:
        for name in BEFORE_QT:
            import_module(name)
        if not machine.none_is_kept():
            raise CommandError('Qt fails on this Python: python -m pip install "PySide6-Essentials<6.12"')
        app = import_module("yardplan.window.app")
    except ImportError as error:
        raise CommandError(f"the window cannot start: {error}; see: yardplan doctor") from error
    return int(app.run(path))


def _path(words: Sequence[str]) -> Path | None:
    if len(words) > 1:
        raise CommandError(f"one yard at a time, not {len(words)}; try: yardplan --help")
    if not words:
        return None
    path = Path(words[0])
    if words[0].startswith("-"):
        raise CommandError(f"{words[0]} is not known here; try: yardplan --help")
    if not path.exists():
        raise CommandError(f"there is no file {path}")
    return path


def _without_display(path: Path | None) -> int:
    """No screen: one line says so, then the yard's check as a table."""
    if path is None:
        raise CommandError("no display was found, so no window can open; try: yardplan check FILE")
    import argparse

    check = import_module("yardplan.cli.check")
    # A file that cannot be read is the one thing to say.
    yard = check.yard_in(str(path))
    print("No display was found, so no window can open; here is this yard's check.", file=sys.stderr)
    parser = argparse.ArgumentParser(prog="yardplan")
    check.add_parser(parser.add_subparsers(dest="command"))
    return int(check.report(yard, parser.parse_args(["check", str(path)])))
