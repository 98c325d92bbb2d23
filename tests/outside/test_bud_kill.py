"""Every row of the bud-kill table against the published tables, degrees F as printed.

Apple, peach, pear, sweet cherry: Penn State Extension, Orchard Frost - Critical Temperatures for Various
Fruits (after Washington State University EB0419), extension.psu.edu. Apricot, European plum: Michigan State
University Extension, Critical Spring Temperatures for Tree Fruit Bud Development Stages. Tart cherry: Utah
State University, intermountainfruit.org/cold-effects/cherry-stages; its stages of side green and open
cluster from memory. Grape: Rutgers University (10 and 90 percent) and Washington State University (50
percent) figures compiled by Michigan State University Extension. Highbush blueberry: Michigan State
University Extension, Critical Spring Temperatures (what a stage tolerates, from the milder to the colder
end). Strawberry: Purdue Vegetable Crops Hotline 8096 (tight bud, popcorn, open) and University of Delaware
Weekly Crop Update 1673 (inactive bud, green fruit). Saskatoon: Manitoba Agriculture, Frost Damage and
Protection in Strawberry and Saskatoon Orchards (-2.2 C).
"""

from __future__ import annotations

import csv

import pytest

from yardplan.shipped import resource

#: Stages in their order with the temperatures that kill 10 and 90 percent of the buds.
PRINTED: dict[str, list[tuple[str, float | None, float | None]]] = {
    "apple": [
        ("silver tip", 15, 2), ("green tip", 18, 10), ("half-inch green", 23, 15), ("tight cluster", 27, 21),
        ("first pink", 28, 24), ("full pink", 28, 25), ("first bloom", 28, 25), ("full bloom", 28, 25),
        ("post bloom", 28, 25),
    ],
    "peach": [
        ("first swelling", 18, 1), ("calyx green", 21, 5), ("calyx red", 23, 9), ("first pink", 25, 15),
        ("first bloom", 26, 21), ("full bloom", 27, 24), ("post bloom", 28, 25),
    ],
    "pear": [
        ("scales separating", 15, 0), ("blossom buds exposed", 20, 6), ("tight cluster", 24, 15),
        ("first white", 25, 19), ("full white", 26, 22), ("first bloom", 27, 23), ("full bloom", 28, 24),
        ("post bloom", 28, 24),
    ],
    "sweet cherry": [
        ("first swelling", 17, 5), ("side green", 22, 9), ("green tip", 25, 14), ("tight cluster", 26, 17),
        ("open cluster", 27, 21), ("first white", 27, 24), ("first bloom", 28, 25), ("full bloom", 28, 25),
        ("post bloom", 28, 25),
    ],
    "apricot": [
        ("first swelling", 15, None), ("tip separates", 20, 0), ("calyx red", 22, 9), ("first white", 24, 14),
        ("first bloom", 25, 19), ("full bloom", 27, 22), ("in the shuck", 27, 24), ("green fruit", 28, 25),
    ],
    "European plum": [
        ("first swelling", 14, 0), ("side white", 17, 3), ("tip green", 20, 7), ("tight cluster", 24, 16),
        ("first white", 26, 22), ("first bloom", 27, 23), ("full bloom", 28, 23), ("post bloom", 28, 23),
    ],
    "tart cherry": [
        ("first swelling", 15, 0), ("side green", 24, 10), ("green tip", 26, 22), ("tight cluster", 26, 24),
        ("open cluster", 28, 24), ("first white", 28, 24), ("first bloom", 28, 24), ("full bloom", 28, 25),
        ("post bloom", 28, 25),
    ],
    "grape": [
        ("first swell", 13, -3), ("full swell", 26, 10), ("bud burst", 28, 16), ("first leaf", 28.5, 21),
        ("second leaf", 29, 22), ("third leaf", None, 26), ("fourth leaf", None, 27),
    ],
    "highbush blueberry": [
        ("bud swell", 15, 10), ("tight cluster", 23, 20), ("early pink bud", 25, 23),
        ("late pink bud", 27, 24), ("full bloom", 28, 28), ("petal fall / green fruit", 32, 32),
    ],
    "strawberry": [
        ("dormant / inactive bud", 10, None), ("tight bud", 22, None), ("popcorn", 26, None),
        ("open blossom", 30, None), ("green fruit", 28, None),
    ],
    "saskatoon": [("full flower and new fruit", 28, None)],
}
#: Half of the buds: Washington State University's figures for Concord, by the stages of the grape.
GRAPE_HALF = [7, 21, 25, 27, 28, 28, 28]


def shipped() -> list[dict[str, str]]:
    with resource("plants", "bud-kill.csv").open(encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file))


def degrees(text: str) -> float | None:
    return float(text) if text else None


@pytest.mark.parametrize("crop", PRINTED)
def test_every_stage_is_as_printed(crop: str) -> None:
    rows = sorted((row for row in shipped() if row["crop"] == crop), key=lambda row: int(row["stage_order"]))
    found = [(row["stage"], degrees(row["t10_F"]), degrees(row["t90_F"])) for row in rows]
    assert found == PRINTED[crop]
    halves = [degrees(row["t50_F"]) for row in rows]
    assert halves == (GRAPE_HALF if crop == "grape" else [None] * len(rows))


def test_no_row_is_left_out_and_celsius_agrees() -> None:
    rows = shipped()
    assert len(rows) == sum(len(stages) for stages in PRINTED.values()) == 77
    for row in rows:
        for share in ("t10", "t50", "t90"):
            fahrenheit, celsius = degrees(row[f"{share}_F"]), degrees(row[f"{share}_C"])
            assert (fahrenheit is None) == (celsius is None)
            if fahrenheit is not None:
                assert celsius == pytest.approx((fahrenheit - 32) / 1.8, abs=0.06), row


def test_buds_grow_more_tender_until_bloom() -> None:
    """What the tables have in common: no stage up to full bloom stands more cold than the one before it."""
    for crop, stages in PRINTED.items():
        until = next((n for n, (name, *_) in enumerate(stages) if "full" in name and "bloom" in name), None)
        tens = [ten for _, ten, _ in stages[: None if until is None else until + 1] if ten is not None]
        if crop != "strawberry":
            assert tens == sorted(tens), crop
