"""DXF out and lots in, read back by ezdxf and its audit."""

from __future__ import annotations

import math
from pathlib import Path

import ezdxf
import pytest
from hypothesis import HealthCheck, given, settings
from support import builders, strategies

from yardplan.files.exchange import dxf
from yardplan.files.exchange.dxf import lots_from_dxf, yard_to_dxf
from yardplan.files.exchange.outline import ExchangeError
from yardplan.yard.ground import Building, Note
from yardplan.yard.yard import Yard

YARD = builders.yard_of(
    builders.plant("A1", "apple:Liberty", (3.0, 4.0)), builders.plant("A2", "apple:Liberty", (8.0, 4.0)),
    buildings=(Building(id="H1", name="House", footprint=((5.0, 5.0), (9.0, 5.0), (9.0, 9.0), (5.0, 9.0))),),
    notes=(Note(id="X1", place=(1.0, 1.0), text="two\nlines %%c"),),
)


def written(yard: Yard, folder: Path, spreads: dict[str, float] | None = None) -> Path:
    path = folder / "yard.dxf"
    path.write_text(yard_to_dxf(yard, spreads), encoding="utf-8")
    return path


def test_layers_units_and_sizes(tmp_path: Path) -> None:
    drawing = ezdxf.readfile(written(YARD, tmp_path, {"A1": 4.0}))
    assert drawing.header["$INSUNITS"] == 6
    space = drawing.modelspace()
    assert [c.dxf.radius for c in space.query('CIRCLE[layer=="PLANTS"]')] == [2.0, 0.25]
    (house,) = space.query('LWPOLYLINE[layer=="BUILDINGS"]')
    assert house.closed
    assert [tuple(p[:2]) for p in house.get_points()] == list(YARD.buildings[0].footprint)
    assert [t.dxf.text for t in space.query('TEXT[layer=="PLANTS"]')] == ["A1 Liberty", "A2 Liberty"]
    assert [t.dxf.text for t in space.query('TEXT[layer=="NOTES"]')] == ["two lines %%c"]


@given(strategies.yards(most=2, extras="none"))
@settings(max_examples=10, deadline=None, suppress_health_check=list(HealthCheck))
def test_any_yard_passes_the_library_s_audit(tmp_path_factory: pytest.TempPathFactory, yard: Yard) -> None:
    drawing = ezdxf.readfile(written(yard, tmp_path_factory.mktemp("dxf")))
    assert not drawing.audit().has_errors


def test_the_lot_comes_back(tmp_path: Path) -> None:
    lots = lots_from_dxf(written(YARD, tmp_path))
    assert [lot.name for lot in lots] == ["LOT", "BUILDINGS"]
    for corner, was in zip(lots[0].corners, YARD.lot, strict=True):
        assert corner == pytest.approx(was)


@pytest.mark.parametrize(("units", "metres"), [(1, 0.0254), (2, 0.3048), (4, 0.001), (6, 1.0), (0, 1.0)])
def test_units_of_the_header_are_kept(tmp_path: Path, units: int, metres: float) -> None:
    drawing = ezdxf.new()
    drawing.header["$INSUNITS"] = units
    drawing.modelspace().add_lwpolyline([(100, 100), (140, 100), (140, 130), (100, 130)], close=True)
    path = tmp_path / "lot.dxf"
    drawing.saveas(path)
    (lot,) = lots_from_dxf(path)
    assert lot.size == pytest.approx(1200 * metres**2)
    assert min(lot.corners) == pytest.approx((0.0, 0.0))
    assert lots_from_dxf(path, metres=2.0)[0].size == pytest.approx(4800)


def test_older_polylines_and_round_corners_are_read(tmp_path: Path) -> None:
    drawing = ezdxf.new("R12")
    drawing.modelspace().add_polyline2d([(0, 0), (10, 0), (10, 10), (0, 10), (0, 0)])
    path = tmp_path / "old.dxf"
    drawing.saveas(path)
    assert lots_from_dxf(path)[0].size == pytest.approx(100)
    half_round = ezdxf.new()
    half_round.modelspace().add_lwpolyline(
        [(0, 0, 0), (4, 0, 1), (4, 4, 0), (0, 4, 0)], format="xyb", close=True
    )
    half_round.saveas(path)
    # A square with a half circle of 2 m radius set on one side; bulge 1 is a half circle to the right.
    assert lots_from_dxf(path)[0].size == pytest.approx(16 + 2 * math.pi, rel=0.02)


@pytest.mark.parametrize(
    ("data", "says"),
    [
        (b"", "not a DXF file|damaged"), (b"nonsense", "not a DXF file|damaged"),
        (b"0\nSECTION\n2\nENTITIES\n", "damaged|no closed"),
    ],
)
def test_what_is_no_drawing_is_said(tmp_path: Path, data: bytes, says: str) -> None:
    path = tmp_path / "bad.dxf"
    path.write_bytes(data)
    with pytest.raises(ExchangeError, match=says):
        lots_from_dxf(path)
    with pytest.raises(ExchangeError, match="not a DXF file or cannot be opened"):
        lots_from_dxf(tmp_path / "none.dxf")


def test_without_a_closed_line_it_is_said(tmp_path: Path) -> None:
    with pytest.raises(ExchangeError, match="no closed line"):
        lots_from_dxf(written(Yard(), tmp_path))


def test_without_the_library_it_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    import sys

    monkeypatch.setitem(sys.modules, "ezdxf", None)
    with pytest.raises(ExchangeError, match="pip install ezdxf"):
        dxf.yard_to_dxf(YARD)
