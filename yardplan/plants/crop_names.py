"""Crops by the name people say: European pear, muscadine grape."""

from __future__ import annotations

from functools import cache

from yardplan.plants.catalogue import catalogue


@cache
def crop_name(crop_id: str) -> str:
    """The name of a crop as the catalogue has it; an unknown id stands for itself."""
    found = catalogue().crop(crop_id)
    return crop_id if found is None else found.name
