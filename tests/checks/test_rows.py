import pytest
from support.builders import plant, yard_of
from support.stands import Nursery, crop, size

from yardplan.checks.room import rows
from yardplan.plants.crop import CropForm
from yardplan.yard.planting import PlantKey, Row
from yardplan.yard.yard import Yard


def found(yard: Yard, **sizes: object):
    return rows.run(Nursery(dict(sizes)).survey(yard))


def _row(key: str, y: float, **fields: object) -> Row:
    given = {"count": 8, "spacing": 0.6, "plant": PlantKey("red raspberry", "Z")} | fields
    return Row(id=key, line=((2.0, y), (8.0, y)), **given)  # type: ignore[arg-type]


def test_rows_against_plants_and_rows():
    yard = yard_of(plant("A1", "apple:X", (5, 6)), rows=(_row("R1", 4), _row("R2", 9)))
    findings = found(yard, A1=size(4), R1=size(1), R2=size(1))
    assert [(f.kind, f.things) for f in findings] == [("row_plant", ("R1", "A1"))]
    assert findings[0].figures["wanted"].value == pytest.approx(2.5)
    (between,) = found(yard_of(rows=(_row("R1", 4), _row("R2", 6))), R1=size(1), R2=size(1))
    assert between.kind == "row_row"
    assert between.figures["wanted"].value == pytest.approx(1 + 6 * 0.3048)


def test_rows_end_to_end_need_no_alley():
    ahead = Row(id="R2", line=((9.2, 4.0), (14.0, 4.0)), count=8, spacing=0.6,
                plant=PlantKey("red raspberry", "Z"))
    assert found(yard_of(rows=(_row("R1", 4), ahead)), R1=size(1), R2=size(1)) == []


def test_a_dense_row():
    form = CropForm(
        crop="red raspberry", form="tree", habit="cane", height=(1.5, 2), spread=(0.6, 0.9),
        in_row=(0.45, 0.9),
    )
    nursery = Nursery(crops={"red raspberry": crop("red raspberry", forms=(form,))})
    (finding,) = rows.run(nursery.survey(yard_of(rows=(_row("R1", 4, spacing=0.3),))))
    assert (finding.kind, finding.figures["wanted"].value) == ("row_dense", pytest.approx(0.75 * 0.45))
