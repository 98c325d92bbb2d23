"""Cultivars of the user's own: plain records in the yard file, checked before they are used.

A record has `crop` and `name`; all else is left out where it is not known. Lengths are metres:
{"crop": "apple", "name": "Old Garden", "self_fruitful": "no", "bloom_season": "mid",
 "zone_min": "4", "chill_hours": [800, 1000], "height": [3, 4], "s_alleles": ["S3", "S9"],
 "source": "label of the nursery"}
"""

from __future__ import annotations

import math
from collections.abc import Callable, Container, Iterable, Mapping
from typing import Any

from yardplan.language import later, tr
from yardplan.plants.cultivar import Cited, Cultivar, SelfFruit
from yardplan.plants.cultivar_rows import SEASONS, SELF_FRUIT, is_zone, parse_alleles


class _Unfit(ValueError):
    """A value that does not fit its field."""


def _text(value: Any) -> str:
    if not isinstance(value, str):
        raise _Unfit(tr("must be text"))
    return value.strip()


def _season(value: Any) -> str:
    text = _text(value)
    if text not in SEASONS:
        raise _Unfit(
            tr("'{text}' is not one of: {words}", text=text, words=", ".join(sorted(SEASONS - {""})))
        )
    return text


def _self_fruit(value: Any) -> SelfFruit:
    text = _text(value)
    if text not in SELF_FRUIT:
        raise _Unfit(tr("'{text}' is not yes, partly, no or n/a", text=text))
    return SELF_FRUIT[text]


def _zone(value: Any) -> str:
    text = _text(value)
    if not is_zone(text):
        raise _Unfit(tr("'{text}' is not a hardiness zone such as 4 or 3b", text=text))
    return text


def _number(value: Any) -> float:
    if isinstance(value, bool) or not isinstance(value, (int, float)) or not math.isfinite(value):
        raise _Unfit(tr("must be a number"))
    return float(value)


def _ploidy(value: Any) -> int:
    number = _number(value)
    if number != int(number) or number < 1:
        raise _Unfit(tr("must be a whole number of chromosome sets, such as 2 or 3"))
    return int(number)


def _span(value: Any) -> tuple[float, float]:
    ends = [value, value] if isinstance(value, (int, float)) else value
    if not isinstance(ends, (list, tuple)) or len(ends) != 2:
        raise _Unfit(tr("must be a number or a pair [low, high]"))
    low, high = _number(ends[0]), _number(ends[1])
    if not 0 <= low <= high:
        raise _Unfit(tr("must run from low to high and not be negative"))
    return low, high


def _length(value: Any) -> tuple[float, float]:
    low, high = _span(value)
    if high <= 0:
        raise _Unfit(tr("must be more than nothing"))
    return low, high


def _flag(value: Any) -> bool:
    if not isinstance(value, bool):
        raise _Unfit(tr("must be true or false"))
    return value


def _alleles(value: Any) -> tuple[str, ...]:
    text = "".join(map(_text, value)) if isinstance(value, (list, tuple)) else _text(value)
    try:
        return parse_alleles(text)
    except ValueError as error:
        raise _Unfit(str(error)) from None


#: Fields a record may have, each with what reads it.
FIELDS: Mapping[str, Callable[[Any], Any]] = {
    "crop": _text, "name": _text, "species": _text, "type": _text, "sex": _text,
    "self_fruitful": _self_fruit, "cross_benefit": _text, "bloom_season": _season, "bloom_order": _number,
    "ploidy": _ploidy, "pollen_good": _flag, "s_alleles": _alleles, "incompatibility_group": _text,
    "pollination_group": _text, "sport_of": _text, "zone_min": _zone, "zone_max": _zone,
    "chill_hours": _span, "harvest_season": _text, "height": _length, "spread": _length,
    "container": _text, "thornless": _text, "note": _text, "source": _text,
}


def read_own(
    records: Iterable[Mapping[str, Any]], crops: Container[str]
) -> tuple[list[Cultivar], list[str]]:
    """The cultivars that the records describe, and one line for every fault."""
    found: list[Cultivar] = []
    faults: list[str] = []
    for number, record in enumerate(records, start=1):
        values, wrong = _values(record)
        name = values.get("name", "")
        where = tr("own cultivar {number}", number=number) + (f" ({name})" if name else "")
        if not name or not values.get("crop"):
            wrong.append(tr("crop and name are needed"))
        elif values["crop"] not in crops:
            wrong.append(tr("crop '{crop}' is not known", crop=values["crop"]))
        faults += [f"{where}: {text}" for text in wrong]
        if not wrong:
            source = values.pop("source", "") or later("the user")
            found.append(Cultivar(**values, own=True, cited=(Cited(source),)))
    return found, faults


def _values(record: Mapping[str, Any]) -> tuple[dict[str, Any], list[str]]:
    values: dict[str, Any] = {}
    wrong: list[str] = []
    for name, value in record.items():
        reader = FIELDS.get(name)
        if reader is None:
            wrong.append(tr("'{name}' is not a fact of a cultivar", name=name))
        elif value is not None:
            try:
                values[name] = reader(value)
            except _Unfit as error:
                wrong.append(f"{name}: {error}")
    return values, wrong
