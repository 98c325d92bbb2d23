"""Hypothesis strategies that make random valid yards with all kinds of things."""

from __future__ import annotations

from typing import Any, Literal, get_args

from hypothesis import strategies as st

from yardplan.yard import ground, planting, site
from yardplan.yard.edits import with_curve
from yardplan.yard.ground import Barrier, Building, Gate, Note, Paving, Service, StandingTree
from yardplan.yard.planting import Bed, Container, Planting, PlantKey, Row
from yardplan.yard.site import Origin, Site, Soil
from yardplan.yard.yard import COLLECTIONS, PLAN_FIELDS, Group, Variant, Yard

#: Real names of the catalogue mixed with names it does not know.
PLANTS = (
    "apple:Egremont Russet", "apple:Liberty", "european pear:Conference", "sweet cherry:Lapins",
    "european plum:Stanley", "northern highbush blueberry:Patriot", "red raspberry:Latham",
    "fig:Nobody Knows",
)


def lengths(low: float = 0.0, high: float = 60.0) -> st.SearchStrategy[float]:
    return st.floats(low, high, allow_nan=False, width=64)


def points(low: float = -200.0, high: float = 200.0) -> st.SearchStrategy[tuple[float, float]]:
    return st.tuples(lengths(low, high), lengths(low, high))


def lines(least: int = 2, most: int = 6) -> st.SearchStrategy[tuple[tuple[float, float], ...]]:
    return st.lists(points(), min_size=least, max_size=most).map(tuple)


@st.composite
def rectangles(draw: st.DrawFn, least: float = 0.5, most: float = 15.0) -> ground.Outline:
    """A rectangle with corners in order: sensible for buildings and beds."""
    x, y = draw(points(-100, 100))
    w, d = draw(lengths(least, most)), draw(lengths(least, most))
    return ((x, y), (x + w, y), (x + w, y + d), (x, y + d))


def texts(most: int = 30) -> st.SearchStrategy[str]:
    """Any text that can be written as UTF-8."""
    return st.text(st.characters(exclude_categories=("Cs",)), max_size=most)


def words(alias: Any) -> st.SearchStrategy[str]:
    """One of the words of a Literal type."""
    return st.sampled_from(get_args(alias))


def keys() -> st.SearchStrategy[PlantKey]:
    return st.sampled_from(PLANTS).map(PlantKey.parse)


def dates() -> st.SearchStrategy[str]:
    return st.dates().map(lambda day: day.strftime("%m-%d"))


def maybe(strategy: st.SearchStrategy[Any]) -> st.SearchStrategy[Any]:
    return st.none() | strategy


def months() -> st.SearchStrategy[tuple[float, ...]]:
    return st.lists(st.floats(-40, 45), min_size=12, max_size=12).map(tuple)


def soils() -> st.SearchStrategy[Soil]:
    return st.builds(
        Soil, ph=maybe(st.floats(3, 10)), texture=maybe(words(site.Texture)), lime=maybe(st.booleans()),
        drainage=maybe(words(site.Drainage)),
    )


def sites() -> st.SearchStrategy[Site]:
    return st.builds(
        Site, name=texts(), place=texts(), latitude=st.floats(-70, 70), longitude=st.floats(-180, 180),
        elevation=maybe(st.floats(-400, 4000)), north=st.floats(-180, 180), time_zone=maybe(texts()),
        region=maybe(texts()), zone=maybe(st.sampled_from(("3a", "5b", "6", "9a", "10b"))),
        last_frost=maybe(dates()), last_frost_10=maybe(dates()), first_frost=maybe(dates()),
        first_frost_10=maybe(dates()), monthly_means=maybe(months()), monthly_lows=maybe(months()),
        monthly_highs=maybe(months()), chill_hours=maybe(st.floats(0, 5000)),
        soil=soils(), units=words(site.Units),
        season=maybe(st.tuples(dates(), dates())), slope=st.floats(0, 1), slope_aspect=st.floats(0, 360),
        horizon=st.lists(st.tuples(st.floats(0, 360), st.floats(0, 80)), max_size=4).map(tuple),
        irrigated=maybe(st.booleans()),
        observed_bloom=st.lists(st.tuples(texts(), dates()), max_size=2).map(tuple),
        origins=st.lists(st.builds(Origin, fact=texts(), text=texts()), max_size=3).map(tuple),
    )


def _named(kind_: type, /, **fields: st.SearchStrategy[Any]) -> st.SearchStrategy[Any]:
    """A thing with a key that `yards` replaces by a free one."""
    return st.builds(kind_, id=st.just("?"), locked=st.booleans(), **fields)


def buildings() -> st.SearchStrategy[Building]:
    return _named(
        Building, name=texts(), footprint=rectangles(2, 15) | lines(3), eaves=lengths(2, 8),
        ridge=lengths(2, 12), roof=words(ground.Roof), ridge_angle=maybe(lengths(0, 359)),
        overhang=lengths(0, 2), beyond_lot=st.booleans(),
    )


def barriers() -> st.SearchStrategy[Barrier]:
    return _named(
        Barrier, name=texts(), kind=words(ground.BarrierKind), line=lines(2), height=lengths(0.2, 5),
        thickness=lengths(0.05, 2), light_share=lengths(0, 1), evergreen=st.booleans(),
        beyond_lot=st.booleans(),
    )


def pavings() -> st.SearchStrategy[Paving]:
    return _named(
        Paving, name=texts(), kind=words(ground.PavingKind), outline=rectangles(), beyond_lot=st.booleans()
    )


def services() -> st.SearchStrategy[Service]:
    line = _named(
        Service, name=texts(), kind=words(ground.ServiceKind), points=lines(1), depth=maybe(lengths(0, 3))
    )
    area = _named(
        Service, name=texts(), kind=words(ground.ServiceKind), points=rectangles(), area=st.just(True)
    )
    return line | area


def standing_trees() -> st.SearchStrategy[StandingTree]:
    return _named(
        StandingTree, name=texts(), kind=st.sampled_from(("crabapple", "black walnut", "oak, northern red")),
        cultivar=maybe(st.sampled_from(("Dolgo", "Nobody Knows"))), place=points(),
        height=lengths(1, 30), spread=lengths(0.5, 20),
        crown_base=lengths(0, 3), light_share=maybe(lengths(0, 1)), evergreen=st.booleans(),
        donor=words(ground.DonorKind), beyond_lot=st.booleans(),
    )


def gates() -> st.SearchStrategy[Gate]:
    return _named(Gate, name=texts(), place=points(), width=lengths(0.5, 5))


def plantings() -> st.SearchStrategy[Planting]:
    return _named(
        Planting, plant=keys(), place=points(), rootstock=maybe(st.sampled_from(("M26", "Gisela 5"))),
        form=maybe(st.sampled_from(("espalier", "cordon", "bush"))), planted=maybe(st.integers(1990, 2040)),
        facing=lengths(0, 359), spread=maybe(lengths(0.3, 12)), height=maybe(lengths(0.3, 15)),
        group=maybe(texts(5)), note=texts(),
    )


def rows() -> st.SearchStrategy[Row]:
    return _named(
        Row, plant=keys(), line=lines(2, 3), count=st.integers(0, 40), spacing=lengths(0.2, 5),
        rootstock=maybe(texts(5)), form=maybe(texts(5)), planted=maybe(st.integers(1990, 2040)),
        width=maybe(lengths(0.3, 3)), height=maybe(lengths(0.3, 4)), supported=st.booleans(), note=texts(),
    )


def beds() -> st.SearchStrategy[Bed]:
    return _named(
        Bed, name=texts(), outline=rectangles(), soil=maybe(soils()), depth=lengths(0.05, 1),
        raised=lengths(0, 1), plant=maybe(keys()), pattern=words(planting.Pattern),
        spacing=maybe(lengths(0.1, 2)), planted=maybe(st.integers(1990, 2040)), note=texts(),
    )


def containers() -> st.SearchStrategy[Container]:
    return _named(
        Container, name=texts(), place=points(), volume=lengths(1, 500), diameter=lengths(0.1, 2),
        soil=maybe(soils()), note=texts(),
    )


def notes() -> st.SearchStrategy[Note]:
    return _named(Note, place=points(), text=texts(100))


def curves() -> st.SearchStrategy[ground.Curve]:
    """A curve of any kind: its outline is what yardplan.yard.curves makes of it."""
    circle = st.builds(
        ground.Curve, kind=st.just("circle"), points=points().map(lambda p: (p,)), radius=lengths(0.2, 8)
    )
    others = st.builds(
        ground.Curve, kind=st.sampled_from(("smooth", "rounded")), points=rectangles(), radius=lengths(0, 4)
    )
    return circle | others


def _along(things: st.SearchStrategy[Any]) -> st.SearchStrategy[Any]:
    """The things as drawn, or along a curve."""
    curved = st.tuples(things, curves()).map(lambda pair: with_curve(*pair))
    return st.one_of(things, things, curved)


def dimensions() -> st.SearchStrategy[ground.Dimension]:
    return _named(ground.Dimension, ends=lines(2, 2), off=lengths(-5, 5))


def pictures() -> st.SearchStrategy[ground.Picture]:
    return _named(
        ground.Picture, name=texts(), base=lines(2, 2),
        pixels=st.tuples(st.integers(1, 3000), st.integers(1, 3000)),
        data=st.sampled_from(("AAAA", "iVBORw0KGgo=")), opacity=lengths(0, 1), printed=st.booleans(),
    )


THINGS: dict[str, st.SearchStrategy[Any]] = {
    "buildings": buildings(), "barriers": barriers(), "pavings": _along(pavings()), "services": services(),
    "standing_trees": standing_trees(), "gates": gates(), "plantings": plantings(), "rows": rows(),
    "beds": _along(beds()), "containers": containers(), "notes": notes(),
    "dimensions": dimensions(), "pictures": pictures(),
}
assert set(THINGS) == set(COLLECTIONS)

#: Any value that JSON can hold and gives back as it was.
PLAIN: st.SearchStrategy[Any] = st.recursive(
    st.none() | st.booleans() | st.integers(-10**12, 10**12) | texts()
    | st.floats(allow_nan=False, allow_infinity=False),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(texts(8), inner, max_size=3),
    max_leaves=6,
)


def _groups(draw: st.DrawFn, ids: list[str]) -> tuple[Group, ...]:
    """Some of the things in up to two groups."""
    chosen = draw(st.permutations(ids))[: draw(st.integers(0, 6))]
    parts = [chosen[: len(chosen) // 2], chosen[len(chosen) // 2 :]]
    return tuple(
        Group(name=f"Group {n}", members=tuple(part)) for n, part in enumerate(parts, 1) if len(part) > 1
    )


@st.composite
def yards(
    draw: st.DrawFn, most: int = 3, kinds: tuple[str, ...] = tuple(COLLECTIONS),
    extras: Literal["none", "some"] = "some",
) -> Yard:
    """A valid yard with up to `most` things of each kind named."""
    from attrs import evolve

    lists: dict[str, tuple[Any, ...]] = {}
    number = 0
    for name in kinds:
        made = draw(st.lists(THINGS[name], max_size=most))
        lists[name] = tuple(evolve(thing, id=f"K{number + i}") for i, thing in enumerate(made, 1))
        number += len(made)
    vessels = [vessel.id for vessel in lists.get("containers", ())]
    if vessels and "plantings" in lists:
        lists["plantings"] = tuple(
            evolve(p, container=draw(maybe(st.sampled_from(vessels)))) for p in lists["plantings"]
        )
    if draw(st.booleans()):
        lists["groups"] = _groups(draw, [f"K{n + 1}" for n in range(number)])
    lot = draw(st.just(()) | rectangles(10, 60) | lines(3, 8))
    figures = st.dictionaries(texts(10), st.floats(-1e6, 1e6), max_size=3)
    more: dict[str, Any] = {}
    if extras == "some":
        more = {
            "own_cultivars": tuple(draw(st.lists(st.dictionaries(texts(8), PLAIN, max_size=3), max_size=2))),
            "rules": draw(figures), "prices": draw(figures), "currency": draw(texts(3)),
            "done": draw(st.dictionaries(texts(8), texts(8), max_size=2)),
        }
        if draw(st.booleans()):
            dropped = draw(st.sampled_from(("buildings", "plantings", "beds", "none of them")))
            plan = Yard(lot=lot, **{
                name: lists[name] for name in kinds if name in PLAN_FIELDS and name != dropped
            })
            more["variants"] = (Variant(name=draw(texts(8)), kept="2026-11-25", plan=plan),)
    return Yard(site=draw(sites()), lot=lot, **lists, **more)
