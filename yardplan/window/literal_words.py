"""The document's own words that a person sees: marked here, said by `tr(value)` where they show."""

from __future__ import annotations

from yardplan.language import later

#: Kinds, patterns and soils of `yard/`, weights of findings, sizes of plants.
LITERALS: tuple[str, ...] = (
    # Roofs
    later("flat"), later("gable"), later("hip"), later("lean-to"),
    # Barriers
    later("wall"), later("fence"), later("hedge"),
    # Paving
    later("path"), later("drive"), later("terrace"), later("pool"), later("pond"), later("street"),
    # Services
    later("power"), later("gas"), later("water"), later("sewer"), later("drain"), later("communications"),
    later("irrigation"), later("overhead line"), later("septic tank"), later("septic field"), later("well"),
    later("other"),
    # Patterns of a bed
    later("square"), later("triangular"), later("rows"),
    # Soil
    later("sand"), later("loamy sand"), later("sandy loam"), later("loam"), later("silt loam"),
    later("clay loam"), later("clay"), later("organic"),
    later("good"), later("fair"), later("poor"),
    # Curves
    later("smooth"), later("circle"), later("rounded"),
    # Weights of findings
    later("conflict"), later("caution"), later("advice"),
    # Seasons of bloom and harvest
    later("very early"), later("early"), later("early-mid"), later("mid"), later("mid-late"), later("late"),
    later("very late"),
    # Yes and no in the plant tables
    later("yes"), later("no"), later("partly"), later("not known"),
)
