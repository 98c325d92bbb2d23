"""Versions of the yard file. An old document is lifted one step at a time to the current version."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from yardplan.files.errors import YardFileError
from yardplan.files.shape import FORMAT
from yardplan.language import tr

#: The version that this program writes.
CURRENT = 1

Document = dict[str, Any]
Lift = Callable[[Document], Document]

#: For each old version the step that makes the next one of it. Version 1 is the first.
LIFTS: Mapping[int, Lift] = {}


def version_of(document: Any, name: str, *, current: int = CURRENT) -> int:
    """The version of a document. Raises YardFileError when it is foreign, newer or no version at all."""
    if not isinstance(document, dict) or document.get("format") != FORMAT:
        raise YardFileError(tr(
            "{name} is not a yard file: it does not say that its format is '{format}'",
            name=name, format=FORMAT,
        ))
    version = document.get("version")
    if isinstance(version, bool) or not isinstance(version, int) or version < 1:
        raise YardFileError(tr(
            "{name} is damaged: its version is missing or not a whole number from 1",
            name=name,
        ))
    if version > current:
        raise YardFileError(
            tr(
                "{name} was written by a newer yardplan (file version {version}; this one reads up to "
                "{current}). Open it with a newer program; it was left as it is",
                name=name, version=version, current=current,
            )
        )
    return version


def lift(
    document: Document, name: str, *, lifts: Mapping[int, Lift] = LIFTS, current: int = CURRENT
) -> Document:
    """The document in the current version. Raises YardFileError as `version_of` does."""
    for version in range(version_of(document, name, current=current), current):
        if version not in lifts:
            raise YardFileError(tr(
                "{name} has file version {version}, which this program cannot read",
                name=name, version=version,
            ))
        document = {**_with_plans(lifts[version](document), lifts[version]), "version": version + 1}
    return document


def _with_plans(document: Document, step: Lift) -> Document:
    """The plans of variants are lifted by the same step as the yard's own; damaged ones stay."""
    variants = document.get("variants")
    if not isinstance(variants, list):
        return document
    lifted = [
        {**one, "plan": step(one["plan"])}
        if isinstance(one, dict) and isinstance(one.get("plan"), dict) else one
        for one in variants
    ]
    return {**document, "variants": lifted}
