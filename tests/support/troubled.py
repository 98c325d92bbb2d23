"""A yard in which every check of the house finds something, each trouble on ground of its own."""

from __future__ import annotations

from support.builders import plant, yard_of
from yardplan.yard.ground import Barrier, Building, Gate, Paving, Service, StandingTree
from yardplan.yard.planting import Bed, Container, Earlier, PlantKey, Row
from yardplan.yard.site import Site, Soil
from yardplan.yard.yard import Yard

#: A northern place with warm summers, monthly means in degrees C.
_MEANS = (-4.0, -3.0, 2.0, 8.5, 14.5, 19.5, 22.0, 21.0, 17.0, 11.0, 5.0, -1.5)
SITE = Site(
    name="Troubled yard", latitude=42.4, longitude=-72.5, elevation=60.0, region="US-MA", zone="5b",
    last_frost="05-20", last_frost_10="06-02", first_frost="10-02", first_frost_10="09-20",
    monthly_means=_MEANS, irrigated=True, slope=0.2, slope_aspect=180.0,
    soil=Soil(ph=7.1, texture="loam", drainage="poor", lime=False),
    # The apricot cannot bloom after the apple: one of the two days is wrong.
    observed_bloom=(("apricot:Katy", "05-14"), ("apple:Liberty", "05-04")),
)


def box(x: float, y: float, wide: float, deep: float) -> tuple[tuple[float, float], ...]:
    """The corners of an oblong from its lower left one."""
    return ((x, y), (x + wide, y), (x + wide, y + deep), (x, y + deep))


def troubled_yard() -> Yard:
    """One trouble for every check."""
    return yard_of(
        plant("A1", "apple:Liberty", (8, 8), rootstock="M26"),
        plant("A2", "apple:Enterprise", (10, 8), rootstock="M26"),
        plant("A3", "apple:Jonathan", (8, 24), rootstock="M26"),
        plant("P1", "european pear:Bartlett", (24, 8), rootstock="OHxF 87"),
        plant("K1", "european plum:Stanley", (41, 8)),
        plant("PE1", "peach:Redhaven", (62, 43.8)),
        plant("F1", "fig:Brown Turkey", (52, 8)),
        plant("AP1", "apricot:Katy", (24, 24)),
        plant("B1", "northern highbush blueberry:Patriot", (36, 24)),
        plant("C1", "black currant:Titania", (60, 8)),
        plant("A4", "apple:Egremont Russet", (30, 40), container="PT1"),
        plant("A5", "apple:Nobody's Pippin", (40, 40)),
        plant("A6", "apple:Granny Smith", (50, 24), rootstock="M26"),
        site=SITE, width=75, depth=60,
        buildings=(
            Building(id="BL1", name="Barn", footprint=box(55, 30, 14, 12), eaves=11.0, ridge=13.0),
            Building(id="BL2", name="Coop", footprint=box(43, 48, 2, 2), eaves=1.5, ridge=1.5),
        ),
        barriers=(Barrier(id="FE1", line=((68, 1), (78, 1)), height=1.0),),
        pavings=(
            Paving(id="PV1", kind="pond", outline=box(49, 48, 3, 3)),
            Paving(id="PV2", kind="terrace", outline=box(56, 48, 4, 3)),
        ),
        services=(Service(id="S1", kind="gas", points=((42, 0), (42, 14))),),
        standing_trees=(
            StandingTree(id="T1", kind="walnut, black", place=(8, 40), height=16.0, spread=12.0),
        ),
        gates=(Gate(id="G1", place=(0, 16), width=0.5),),
        rows=(
            Row(id="R1", plant=PlantKey("red raspberry", "Latham"), line=((30, 50), (30, 56)), count=25,
                spacing=0.6, planted=2028, earlier=(Earlier(crop="tomato", until=2027),)),
            Row(id="R2", plant=PlantKey("red raspberry", "Latham"), line=((12, 54), (23, 54)), count=3,
                spacing=3.0),
        ),
        beds=(
            Bed(id="BD1", outline=box(14, 52, 6, 4), plant=PlantKey("strawberry", "Honeoye")),
            Bed(id="BD2", outline=box(40, 48, 4, 2)),
            Bed(id="BD3", outline=box(47, 50, 4, 2)),
            Bed(id="BD4", outline=box(57, 49, 2, 1)),
            Bed(id="BD5", outline=box(63, 48, 3, 2)),
            Bed(id="BD6", outline=box(65, 49, 3, 2)),
            Bed(id="BD7", outline=box(72, 54, 5, 2)),
        ),
        containers=(
            Container(id="PT1", place=(30, 40), volume=25.0, soil=Soil(ph=6.5)),
            Container(id="PT2", place=(37.5, 24), volume=60.0, diameter=0.6, soil=Soil(ph=5.0)),
        ),
    )
