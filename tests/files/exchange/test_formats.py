"""Files of other formats by their ending, and what makes an outline a lot line."""

from __future__ import annotations

from pathlib import Path

import pytest
from attrs import evolve
from support.builders import yard_of

from yardplan.files.exchange.formats import lots_from_file, text_of_file
from yardplan.files.exchange.geojson import yard_to_geojson
from yardplan.files.exchange.outline import ExchangeError, LotOutline, fault_of, scaled, with_lot
from yardplan.yard.site import Site

SQUARE = LotOutline(name="lot", corners=((0.0, 0.0), (9.0, 0.0), (9.0, 7.0), (0.0, 7.0)))


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_texts_in_the_encodings_of_spreadsheets(tmp_path: Path, encoding: str) -> None:
    (tmp_path / "a.csv").write_bytes("Gew\xe4chs, 4\u20ac".encode(encoding))
    assert text_of_file(tmp_path / "a.csv") == "Gew\xe4chs, 4\u20ac"


def test_what_is_no_text_is_one_line(tmp_path: Path) -> None:
    (tmp_path / "a.csv").write_bytes(b"\x81\x8d\x8f")
    with pytest.raises(ExchangeError, match=r"a\.csv is not a text"):
        text_of_file(tmp_path / "a.csv")
    with pytest.raises(ExchangeError, match=r"none\.csv cannot be read"):
        text_of_file(tmp_path / "none.csv")
    with pytest.raises(ExchangeError, match="ending must be one of"):
        lots_from_file(tmp_path / "a.png", Site())


def test_a_lot_from_a_map_of_this_place(tmp_path: Path) -> None:
    yard = yard_of()
    (tmp_path / "lot.geojson").write_text(yard_to_geojson(yard), encoding="utf-8")
    found = lots_from_file(tmp_path / "lot.geojson", yard.site)
    assert len(found) == 1
    assert found[0].latitude is None
    assert with_lot(yard, found[0], "lot.geojson", move_site=True).site == yard.site


def test_the_place_moves_only_where_asked_and_says_so() -> None:
    far, yard = evolve(SQUARE, latitude=10.0, longitude=20.0), yard_of()
    assert with_lot(yard, far, "x.json").site == yard.site
    site = with_lot(with_lot(yard, far, "x.json", move_site=True), far, "y.json", move_site=True).site
    assert (site.latitude, site.longitude) == (10.0, 20.0)
    assert [(one.fact, one.text) for one in site.origins] == [
        ("latitude", "lot line in y.json"), ("longitude", "lot line in y.json")
    ]


def test_a_unit_and_what_cannot_be_a_lot() -> None:
    assert scaled(SQUARE, 2.0).extent == (18.0, 14.0)
    assert fault_of(SQUARE) == ""
    assert "less than 0.5 m across" in fault_of(scaled(SQUARE, 0.001))
    assert "beyond 100 km" in fault_of(scaled(SQUARE, 100_000.0))
    many = tuple((float(i), float(i % 2)) for i in range(1001))
    assert "1001 corners" in fault_of(LotOutline(name="", corners=many))
