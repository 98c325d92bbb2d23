"""Curves, dimension lines and pictures in the yard file."""

import json

from yardplan.files.errors import YardFileError
from yardplan.files.reading import yard_from_json
from yardplan.files.writing import yard_to_json
from yardplan.yard import edits
from yardplan.yard.curves import outline_of
from yardplan.yard.ground import Curve, Dimension, Picture
from yardplan.yard.planting import Bed
from yardplan.yard.yard import Yard

CURVE = Curve(kind="circle", points=((2.0, 3.0),), radius=1.5)


def _yard() -> Yard:
    yard = Yard(
        beds=(Bed(id="BD1", curve=CURVE, outline=outline_of(CURVE)),),
        dimensions=(Dimension(id="DM1", ends=((0.0, 0.0), (3.0, 4.0)), off=0.5),),
        pictures=(
            Picture(id="PC1", name="scan", base=((0.0, 0.0), (30.0, 0.0)), pixels=(300, 200), data="AAAA"),
        ),
    )
    return edits.set_curve(yard, "lot", Curve(kind="rounded", points=((0, 0), (9, 0), (9, 9)), radius=1.0))


def test_all_comes_back_as_it_was():
    yard = _yard()
    assert yard_from_json(yard_to_json(yard)) == yard


def test_the_outline_counts_where_a_curve_does_not_fit_it():
    document = json.loads(yard_to_json(_yard()))
    document["beds"][0]["curve"]["radius"] = 4.0
    document["lot_curve"]["points"][0] = [-5.0, -5.0]
    yard = yard_from_json(json.dumps(document))
    assert yard.beds[0].curve is None
    assert yard.beds[0].outline == _yard().beds[0].outline
    assert (yard.lot_curve, yard.lot) == (None, _yard().lot)


def test_a_picture_that_is_no_base64_is_told_in_one_short_line():
    document = json.loads(yard_to_json(_yard()))
    document["pictures"][0]["data"] = "?" * 500
    try:
        yard_from_json(json.dumps(document))
    except YardFileError as error:
        (fault,) = error.faults
        assert "base64" in str(fault)
        assert len(str(fault)) < 200
    else:
        raise AssertionError("a damaged picture was read")
