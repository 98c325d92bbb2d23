from __future__ import annotations

from collections.abc import Callable

import pytest
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.checks.rules import RuleError, shipped_figures
from yardplan.plants.limits import shipped_limits
from yardplan.window.dialogs.local_rules import HERE, LocalRules, figure_words, read_figure
from yardplan.window.open_yard import OpenYard
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


@pytest.fixture
def rules(qtbot: QtBot, opened: Opened, theme) -> LocalRules:
    made = LocalRules(opened(builders.yard_of(
        builders.plant("A1", "apple:Liberty", (4, 5)), builders.plant("A2", "apple:Enterprise", (8.0, 5)),
    )))
    qtbot.addWidget(made)
    made.show()
    return made


def row_of(rules: LocalRules, name: str) -> int:
    return next(n for n, rule in enumerate(rules.rows.rules) if rule.name == name)


def weights(open_yard: OpenYard) -> set[str]:
    return {finding.weight.value for finding in open_yard.findings if finding.check == "spacing"}


def test_model_keeps_qts_rules(rules: LocalRules, qtmodeltester) -> None:
    qtmodeltester.check(rules.rows)


def test_all_rules_are_listed_and_found_by_words(rules: LocalRules) -> None:
    assert rules.found.rowCount() == len(shipped_figures())
    assert shipped_limits().keys() <= shipped_figures().keys()
    rules.search.setText("septic")
    assert 0 < rules.found.rowCount() < len(shipped_figures())
    rules.search.setText("pollen of apple, semi-dwarf")
    assert rules.found.rowCount() == 2


def test_pollen_range_of_this_yard_decides_which_partner_is_near(
    qtbot: QtBot, opened: Opened, theme
) -> None:
    open_yard = opened(builders.yard_of(
        builders.plant("A1", "apple:Empire", (4, 5)), builders.plant("A2", "apple:Gala", (10.0, 5)),
    ))
    rules = LocalRules(open_yard)
    qtbot.addWidget(rules)
    far = {(f.kind, f.things) for f in open_yard.findings if f.check == "pollination"}
    assert far == set()
    for rule in (f"pollen-best-apple-{size}" for size in ("dwarf", "semi-dwarf", "standard")):
        row = row_of(rules, rule)
        assert rules.rows.setData(rules.rows.index(row, HERE), "2")
    far = {(f.kind, f.things) for f in open_yard.findings if f.check == "pollination"}
    assert far == {("far", ("A1",)), ("far", ("A2",))}


def test_a_local_figure_wins_in_the_checks_and_can_be_undone(rules: LocalRules) -> None:
    open_yard = rules.rows._open_yard
    assert "conflict" not in weights(open_yard)
    row = row_of(rules, "spacing-too-close")
    assert rules.rows.setData(rules.rows.index(row, HERE), "1")
    assert open_yard.yard.rules == {"spacing-too-close": 0.01}
    assert open_yard.survey.rules.is_local("spacing-too-close")
    assert weights(open_yard) == {"conflict"}
    open_yard.undo_stack.undo()
    assert open_yard.yard.rules == {}


def test_a_figure_out_of_range_is_refused_with_the_range(rules: LocalRules) -> None:
    row = row_of(rules, "spacing-too-close")
    assert not rules.rows.setData(rules.rows.index(row, HERE), "700 %")
    assert "outside 0 to 80 %" in rules.rows.fault
    assert rules.rows._open_yard.yard.rules == {}


def test_back_to_ours_and_only_local(rules: LocalRules) -> None:
    row = row_of(rules, "spacing-too-close")
    rules.rows.setData(rules.rows.index(row, HERE), "30")
    rules.only_local.setChecked(True)
    assert rules.found.rowCount() == 1
    rules.table.setCurrentIndex(rules.found.index(0, HERE))
    assert "Allowed here: 0 to 80 %" in rules.source.text()
    rules.reset.click()
    assert rules.rows._open_yard.yard.rules == {}
    assert rules.found.rowCount() == 0


def test_every_rule_takes_its_own_figure_and_refuses_one_beyond() -> None:
    for rule in shipped_figures().values():
        assert read_figure(rule, figure_words(rule, rule.value)) == pytest.approx(rule.value, rel=1e-5)
        assert read_figure(rule, "") is None
        with pytest.raises(RuleError):
            read_figure(rule, f"{100 * rule.high + 1}")
        with pytest.raises(RuleError):
            read_figure(rule, "nan")


def test_everything_has_a_name_and_is_large_enough(rules: LocalRules) -> None:
    assert unnamed(rules) == []
    assert too_small(rules) == []
