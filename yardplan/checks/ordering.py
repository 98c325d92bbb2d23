"""The steady order of keys, so that findings do not depend on the order in which things were drawn."""

from __future__ import annotations

import re
from functools import cache
from typing import Protocol, TypeVar

_DIGITS = re.compile(r"(\d+)")


class _HasId(Protocol):
    @property
    def id(self) -> str: ...


T = TypeVar("T", bound=_HasId)


@cache
def natural(key: str) -> tuple[tuple[int, int, str], ...]:
    """A sort key that puts A2 before A10."""
    return tuple(
        (0, int(part), "") if part.isdigit() else (1, 0, part) for part in _DIGITS.split(key) if part
    )


@cache
def natural_all(keys: tuple[str, ...]) -> tuple[tuple[tuple[int, int, str], ...], ...]:
    """A sort key for several keys together."""
    return tuple(natural(key) for key in keys)


def pair_of(a: T, b: T) -> tuple[T, T]:
    """Two things in the order of their keys."""
    return (a, b) if natural(a.id) <= natural(b.id) else (b, a)
