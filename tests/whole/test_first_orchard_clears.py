"""The first orchard can be cleared: what its findings tell a grower to do leaves no conflict."""

from __future__ import annotations

from attrs import evolve

from yardplan.checks.finding import Finding, Weight
from yardplan.checks.run import findings
from yardplan.checks.survey import survey_of
from yardplan.files.reading import read_yard
from yardplan.plants.catalogue import catalogue
from yardplan.plants.standing import stand_of
from yardplan.shipped import folder
from yardplan.sun.light import light_report
from yardplan.sun.scene import scene_of
from yardplan.yard import edits
from yardplan.yard.planting import Container, Planting, PlantKey
from yardplan.yard.yard import Yard


def conflicts(yard: Yard) -> list[tuple[str, tuple[str, ...]]]:
    """Checks and things of the conflicts at full size."""
    stand = stand_of(yard, catalogue(), None)
    found: list[Finding] = findings(survey_of(yard, stand=stand, light=light_report(scene_of(yard, stand))))
    return [(f.check, f.things) for f in found if f.weight is Weight.CONFLICT]


def planted(yard: Yard, key: str, **changes: object) -> Yard:
    """The yard with one plant changed."""
    return evolve(yard, plantings=tuple(
        evolve(plant, **changes) if plant.id == key else plant for plant in yard.plantings
    ))


def test_moves_pots_and_a_partner_clear_the_first_orchard() -> None:
    yard = read_yard(folder("sample_yards") / "first_orchard.yard")
    assert {check for check, _ in conflicts(yard)} == {"spacing", "light", "pollination", "soil"}

    # Topaz goes away from Akane, the peach from behind the garage to open ground as a free tree.
    yard = planted(yard, "A2", place=(5.54, 16.78))
    assert "spacing" not in {check for check, _ in conflicts(yard)}
    yard = planted(yard, "PE1", place=PEACH, form=None)
    assert "light" not in {check for check, _ in conflicts(yard)}

    # Blueberries stand in tubs of acid compost.
    for number, key in enumerate(("B1", "B2")):
        bush = yard.find(key)
        assert isinstance(bush, Planting)
        pot = Container(id=f"PT{number}", place=bush.place, volume=60.0, diameter=0.5)
        yard = planted(evolve(yard, containers=(*yard.containers, pot)), key, container=pot.id)
    assert "soil" not in {check for check, _ in conflicts(yard)}

    # The pear gets a partner.
    pear = Planting(
        id="P2", plant=PlantKey("european pear", "Concorde"), place=PEAR, rootstock="OHxF 87",
    )
    assert conflicts(edits.add(yard, pear)) == []


#: Where there is room and sun for the peach and the second pear.
PEACH, PEAR = (15.8, 9.0), (11.0, 6.0)
