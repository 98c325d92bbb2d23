"""Formats a yard goes out in, and files a lot line or a table of plants comes from, by their endings."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

from yardplan.files.errors import reason
from yardplan.files.exchange.dxf import lots_from_dxf, yard_to_dxf
from yardplan.files.exchange.geojson import lots_from_geojson, yard_to_geojson
from yardplan.files.exchange.outline import ExchangeError, LotOutline
from yardplan.files.exchange.plant_table import plants_to_csv
from yardplan.files.shape import LARGEST
from yardplan.language import tr
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

#: Crown diameters in metres by id.
Spreads = Mapping[str, float]

#: What writes each ending, from the yard and the crowns' diameters at full size.
FORMATS: Mapping[str, Callable[[Yard, Spreads], str]] = {
    ".geojson": yard_to_geojson,
    ".csv": lambda yard, _: plants_to_csv(yard),
    ".dxf": yard_to_dxf,
}
#: Endings of files that may hold a lot line.
LOT_ENDINGS = (".geojson", ".json", ".dxf")


def lots_from_file(path: Path, site: Site) -> tuple[LotOutline, ...]:
    """Closed outlines of a GeoJSON or DXF file, largest first. Raises ExchangeError in one line."""
    ending = path.suffix.lower()
    if ending == ".dxf":
        return lots_from_dxf(path)
    if ending in LOT_ENDINGS:
        return lots_from_geojson(text_of_file(path), site)
    raise ExchangeError(tr(
        "{name}: the ending must be one of {endings}",
        name=path.name, endings=', '.join(LOT_ENDINGS),
    ))


def text_of_file(path: Path) -> str:
    """The text of a file in UTF-8, UTF-16 with its mark, or what older spreadsheets write (Windows-1252).

    Raises ExchangeError in one line.
    """
    try:
        if path.stat().st_size > LARGEST:
            raise ExchangeError(tr(
                "{name} is too large: at most {most} MiB are read",
                name=path.name, most=LARGEST // 2 ** 20,
            ))
        data = path.read_bytes()
    except OSError as error:
        raise ExchangeError(tr(
            "{name} cannot be read: {reason}",
            name=path.name, reason=reason(error),
        )) from None
    marked = data.startswith((b"\xff\xfe", b"\xfe\xff"))
    for encoding in ("utf-16",) if marked else ("utf-8-sig", "cp1252"):
        try:
            return data.decode(encoding)
        except UnicodeDecodeError:
            continue
    raise ExchangeError(tr("{name} is not a text that can be read: save it as UTF-8", name=path.name))
