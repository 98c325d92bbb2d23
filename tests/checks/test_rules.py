from pathlib import Path

import pytest

from yardplan.checks.finding import Figure
from yardplan.checks.rules import RuleError, Rules, read_rules, shipped_rules
from yardplan.plants.sources import bibliography


def test_every_rule_has_a_source_of_the_bibliography():
    assert {rule.name for rule in shipped_rules().values() if rule.source not in bibliography()} == set()


def test_every_rule_says_what_it_is_for():
    assert all(len(rule.note) > 10 for rule in shipped_rules().values())


def test_values_come_in_base_units():
    rules = Rules()
    assert rules.value("structure-low") == pytest.approx(3.048)
    assert rules.value("trained-wall-near") == pytest.approx(0.1524)
    assert rules.value("container-tree") == pytest.approx(15 * 3.785411784)
    assert rules.figure("structure-low") == Figure(10 * 0.3048, "length")


def test_the_yards_own_figure_wins_in_the_rules_unit():
    rules = Rules({"structure-low": 20.0})
    assert rules.value("structure-low") == pytest.approx(6.096)
    assert rules.is_local("structure-low")
    assert rules.refused() == ()


def test_a_figure_outside_the_range_is_not_used_and_named():
    rules = Rules({"structure-low": -1.0, "no-such-rule": 3.0})
    assert rules.value("structure-low") == pytest.approx(3.048)
    assert rules.refused() == ("no-such-rule", "structure-low")


def test_a_figure_typed_outside_the_range_is_refused_with_the_range():
    with pytest.raises(RuleError, match="outside 0 to 60 ft"):
        shipped_rules()["structure-low"].checked(61)


def test_an_unknown_rule_is_named():
    with pytest.raises(RuleError, match="no rule named nothing"):
        Rules().value("nothing")


@pytest.mark.parametrize(
    ("row", "said"),
    [
        ("a,x,ft,0,5,care,memory,n", "row 2, column value: 'x' is not a number"),
        ("a,1,cubit,0,5,care,memory,n", "column unit: 'cubit'"),
        ("a,1,ft,0,5,fate,memory,n", "column severity: 'fate'"),
        ("a,9,ft,0,5,care,memory,n", "9 is outside 0 to 5 ft"),
        ("a,1,ft,0,5,care,memory,n\na,1,ft,0,5,care,memory,n", "row 3: the rule a stands there twice"),
    ],
)
def test_bad_tables_are_refused_with_file_row_and_column(tmp_path: Path, row: str, said: str):
    path = tmp_path / "rules.csv"
    path.write_text(f"rule,value,unit,low,high,severity,source,note\n{row}\n", encoding="utf-8")
    with pytest.raises(RuleError, match=said):
        read_rules(path)
