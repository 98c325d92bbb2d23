"""When crowns are in leaf, and how much light they let through in each month of the year."""

from __future__ import annotations

from functools import cache

import numpy as np

from yardplan.sun.parameters import figure
from yardplan.sun.position import Floats

_MONTH_ENDS = np.cumsum([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])


def leaf_dates(latitude: float, elevation: float | None) -> tuple[float, float]:
    """Days of the year of leaf-out and of the end of leaf fall; turned by half a year in the south."""
    away = max(abs(latitude), figure("leaf_lowest_latitude")) - figure("leaf_latitude")
    later = away * figure("leaf_days_per_degree") + (elevation or 0.0) / 100.0 * figure("leaf_days_per_100_m")
    fall = figure("leaf_fall_day")
    # Leaf-out so late that no summer is left would turn the year round: at least the two ramps must fit.
    out = min(figure("leaf_out_day") + later, fall - 14.0 * figure("leaf_weeks"))
    shift = 182.5 if latitude < 0 else 0.0
    return (out + shift) % 365.0, (fall + shift) % 365.0


@cache
def leaf_share(latitude: float, elevation: float | None) -> tuple[float, ...]:
    """How full of leaf a crown is, 0 to 1, as the mean of each month, January first.

    It fills evenly over the weeks after leaf-out and empties over the same time before the end of leaf fall.
    """
    out, fall = leaf_dates(latitude, elevation)
    days = np.arange(365.0) + 0.5
    ramp = 7.0 * figure("leaf_weeks")
    length = (fall - out) % 365.0
    since = (days - out) % 365.0
    full = np.clip(np.minimum(since / ramp, (length - since) / ramp), 0.0, 1.0)
    return tuple(float(part.mean()) for part in np.split(full, _MONTH_ENDS[:-1]))


def monthly_light(leaf: float, bare: float, latitude: float, elevation: float | None) -> tuple[float, ...]:
    """Share of the beam let through in each month, January first. Shares outside 0 to 1 are cut to it."""
    leaf, bare = min(max(leaf, 0.0), 1.0), min(max(bare, 0.0), 1.0)
    if leaf == bare:
        return (leaf,) * 12
    return tuple(leaf * share + bare * (1.0 - share) for share in leaf_share(latitude, elevation))


#: Depths are whole numbers so that adding and taking away a caster leaves nothing behind: -4096 ln(light).
DEPTH_UNIT = 4096
#: The depth of something opaque: exp(-128) is nothing, and 4000 of them on one ray still fit 32 bits.
OPAQUE = 1 << 19


@cache
def depths(light: tuple[float, ...]) -> np.ndarray[tuple[int], np.dtype[np.int32]]:
    """Whole-number optical depth of each month, int32; the array is shared and must not be written to."""
    share = np.asarray(light, dtype=np.float64)
    deep = -DEPTH_UNIT * np.log(np.maximum(share, 1e-300))
    return np.where(share <= 0.0, OPAQUE, np.minimum(np.rint(deep), OPAQUE)).astype(np.int32)


def through(depth: Floats | np.ndarray[tuple[int, ...], np.dtype[np.int32]]) -> Floats:
    """Share of the beam left after a whole-number depth; nothing behind something opaque."""
    deep = np.asarray(depth, dtype=np.float64)
    return np.where(deep >= OPAQUE, 0.0, np.exp(deep * (-1.0 / DEPTH_UNIT)))
