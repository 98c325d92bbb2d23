"""Finds the folders shipped with the program, in a checkout and in an installed wheel alike."""

from __future__ import annotations

from pathlib import Path
from typing import Literal

_PACKAGE = Path(__file__).resolve().parent


def folder(name: Literal["resources", "sample_yards"]) -> Path:
    """The shipped folder of that name. Raises FileNotFoundError saying where it looked."""
    inside, beside = _PACKAGE / name, _PACKAGE.parent / name
    if inside.is_dir():
        return inside
    if (_PACKAGE.parent / "pyproject.toml").is_file() and beside.is_dir():
        return beside
    raise FileNotFoundError(f"{name}: looked in {inside} and {beside}")


def resource(*parts: str) -> Path:
    """A file under resources/, e.g. resource("plants", "crops.csv")."""
    return folder("resources").joinpath(*parts)
