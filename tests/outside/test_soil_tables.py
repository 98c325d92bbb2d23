"""Sulfur and lime amounts against the published tables, every cell of them.

Table A: Michigan State University, sulfur in lb an acre to reach pH 4.5 by soil texture, as republished with
credit in a British Columbia growers' article on acidifying soil (the row of pH 7.5 is from memory).
Table B: "Soil pH problems", sulfur in lb per 100 sq ft by step of pH, worked 7 in deep,
oldhouseweb.com/gardening/soil-ph-problems.shtml.
Table L: ground limestone in lb per 100 sq ft to reach pH 6.5,
agroconection.com/raising-ph-with-limestone.html.
"""

import pytest

from yardplan.checks.soil_tables import lime, sulfur, sulfur_a, sulfur_b

LB_PER_100_SQ_FT = 0.45359237 / 9.290304
LB_PER_ACRE = 0.45359237 / 4046.8564224

A = {
    5.0: (175, 530, 800), 5.5: (350, 1030, 1600), 6.0: (530, 1540, 2300), 6.5: (660, 2020, 3030),
    7.0: (840, 2560, 3830), 7.5: (1000, 3000, 4530),
}
B = {
    (7.0, 6.0): (0.7, 1.2, 1.6, 2.5, 3.9), (6.0, 5.0): (1.8, 2.8, 3.2, 3.2, 6.3),
    (5.0, 4.0): (1.8, 2.8, 3.2, 4.1, 10.3),
}
L = {
    4.0: (11.5, 16, 23), 4.5: (9.5, 13.5, 19.5), 5.0: (8, 10.5, 15), 5.5: (6, 8, 10.5), 6.0: (3, 4, 5.5),
}


@pytest.mark.parametrize("ph", A)
@pytest.mark.parametrize(("column", "texture"), list(enumerate(("sand", "loam", "clay"))))
def test_table_a(ph: float, column: int, texture: str):
    assert sulfur_a(texture, ph, 4.5) == pytest.approx(A[ph][column] * LB_PER_ACRE)


@pytest.mark.parametrize("step", B)
@pytest.mark.parametrize(
    ("column", "texture"), list(enumerate(("sand", "sandy loam", "loam", "clay loam", "organic")))
)
def test_table_b(step: tuple[float, float], column: int, texture: str):
    assert sulfur_b(texture, *step) == pytest.approx(B[step][column] * LB_PER_100_SQ_FT)


@pytest.mark.parametrize("ph", L)
@pytest.mark.parametrize(("column", "texture"), list(enumerate(("sandy loam", "loam", "clay loam"))))
def test_table_l(ph: float, column: int, texture: str):
    amount = lime(texture, ph, 6.5)
    assert amount.low == amount.high == pytest.approx(L[ph][column] * LB_PER_100_SQ_FT)


def test_loam_from_7_to_5_by_both_tables():
    """The two tables' own agreement: 4.66 and 4.8 lb per 100 sq ft."""
    amount = sulfur("loam", 7.0, 5.0)
    assert amount.low == pytest.approx(4.66 * LB_PER_100_SQ_FT, rel=1e-3)
    assert amount.high == pytest.approx(4.8 * LB_PER_100_SQ_FT, rel=1e-3)


def test_per_acre_column_turned_to_100_sq_ft():
    """1 acre is 435.6 times 100 sq ft: 530 lb an acre are 1.22 lb per 100 sq ft."""
    amount = sulfur_a("loam", 5.0, 4.5)
    assert amount == pytest.approx(1.217 * LB_PER_100_SQ_FT, rel=1e-3)
