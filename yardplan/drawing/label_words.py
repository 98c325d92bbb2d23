"""What the labels say."""

from __future__ import annotations

from yardplan.drawing.patterns import area
from yardplan.drawing.rows import bed_places
from yardplan.language import decimals, tr
from yardplan.plants.stand import Standing
from yardplan.units import System, format_area, format_coarse, format_length
from yardplan.yard.ground import Barrier, Building, StandingTree
from yardplan.yard.planting import Bed, Row


def plant_name(plant: Standing) -> str:
    """The cultivar of a plant, or the name or kind of a tree that stands there already."""
    thing = plant.thing
    if isinstance(thing, StandingTree):
        return thing.name or thing.cultivar or tr(thing.kind)
    return thing.plant.cultivar


def building_facts(building: Building, units: System) -> str:
    """Eaves and ridge heights; one height for a flat roof."""
    if building.roof == "flat" or building.ridge <= building.eaves:
        return tr("height {height}", height=format_coarse(building.eaves, units))
    return tr("eaves {eaves}  ridge {ridge}", eaves=format_coarse(building.eaves, units),
              ridge=format_coarse(building.ridge, units))


def barrier_words(barrier: Barrier, units: System) -> str:
    """Name or kind, and height."""
    return f"{barrier.name or tr(barrier.kind)} {format_coarse(barrier.height, units)}"


def row_words(row: Row, units: System) -> str:
    """Cultivar, how many and how far apart."""
    return tr("{cultivar} × {count}  {spacing} apart", cultivar=row.plant.cultivar, count=row.count,
              spacing=format_length(row.spacing, units))


def bed_words(bed: Bed, units: System) -> str:
    """Name, what grows there, size, and the soil's pH where it has its own."""
    words = [bed.name, format_area(area(bed.outline).area, units)]
    if bed.soil is not None and bed.soil.ph is not None:
        words.append(decimals(f"pH {bed.soil.ph:.1f}"))
    if bed.plant is not None:
        words.insert(1, bed_count_words(bed))
    return "  ".join(words)


def bed_count_words(bed: Bed) -> str:
    """The cultivar of a planted bed and how many of it: `Honeoye × 48`; no count where it is not known."""
    if bed.plant is None:
        return ""
    count = len(bed_places(bed))
    return f"{bed.plant.cultivar} × {count}" if count else bed.plant.cultivar
