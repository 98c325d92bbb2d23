from __future__ import annotations

from collections.abc import Callable

import pytest
from attrs import evolve
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot
from support import builders
from support.widgets import too_small, unnamed

from yardplan.checks.finding import Finding, Weight
from yardplan.window.open_yard import OpenYard
from yardplan.window.panels.finding_counts import count_text
from yardplan.window.panels.findings_list import FindingsList, step_words
from yardplan.yard import edits
from yardplan.yard.planting import PlantKey
from yardplan.yard.yard import Yard

Opened = Callable[[Yard], OpenYard]


def crowded() -> Yard:
    """Two pairs of apples that stand too close."""
    return builders.yard_of(
        builders.plant("A1", "apple:Liberty", (4, 5)), builders.plant("A2", "apple:Egremont Russet", (6, 5)),
        builders.plant("A3", "apple:Enterprise", (18, 5)), builders.plant("A4", "apple:Jonathan", (20, 5)),
        width=40,
    )


@pytest.fixture
def listed(qtbot: QtBot, opened: Opened, theme) -> FindingsList:
    made = FindingsList(opened(crowded()))
    qtbot.addWidget(made)
    made.resize(300, 500)
    made.show()
    qtbot.waitUntil(lambda: made.rows.rowCount() >= 2, timeout=15_000)
    return made


def keys(made: FindingsList) -> list[tuple]:
    return [row.finding.key for row in made.rows.rows()]


def about(row, *things: str) -> bool:
    return row.finding.things == things and row.finding.check == "spacing"


def row_about(made: FindingsList, *things: str):
    return next(row for row in made.rows.rows() if about(row, *things))


def test_model_keeps_qts_rules(listed: FindingsList, qtmodeltester) -> None:
    qtmodeltester.check(listed.rows)


def test_every_card_says_what_how_much_and_the_way_out(listed: FindingsList) -> None:
    row = row_about(listed, "A1", "A2")
    assert row.finding.weight is Weight.CONFLICT
    assert row.spoken.startswith("Conflict, growth. ")
    assert "2.0 m" in row.said.message
    assert f"What clears it: {row.said.clears.rstrip('.')}" in row.spoken
    assert row.said.source_text


def test_counts_tell_the_findings_by_weight(listed: FindingsList) -> None:
    counts = listed.rows.counts()
    assert sum(counts.values()) == listed.rows.rowCount()
    assert counts[Weight.CONFLICT] >= 2
    assert listed.counts.accessibleName().startswith(count_text(Weight.CONFLICT, counts[Weight.CONFLICT]))
    assert [count_text(Weight.CONFLICT, n) for n in (0, 1, 2)] == ["0 conflicts", "1 conflict", "2 conflicts"]
    assert [count_text(Weight.ADVICE, n) for n in (1, 11)] == ["1 piece of advice", "11 pieces of advice"]


def test_rows_keep_their_place_during_a_drag_and_mark_what_changed(
    listed: FindingsList, qtbot: QtBot
) -> None:
    open_yard = listed._open_yard
    before = keys(listed)
    for step in range(1, 4):
        open_yard.show_trial(edits.move(open_yard.yard, {"A2"}, (0.1 * step, 0.0)))
        # No frame waits for the list: it follows some times a second.
        now = next(f for f in open_yard.findings if f.things == ("A1", "A2") and f.check == "spacing")
        qtbot.waitUntil(lambda now=now: row_about(listed, "A1", "A2").finding == now)
        assert keys(listed)[: len(before)] == before
    assert row_about(listed, "A1", "A2").changed
    assert not row_about(listed, "A3", "A4").changed
    assert "changed" in row_about(listed, "A1", "A2").spoken


def test_a_cleared_finding_stays_in_its_place_until_the_gesture_ends(
    listed: FindingsList, qtbot: QtBot
) -> None:
    open_yard = listed._open_yard
    before = keys(listed)
    moved = edits.move(open_yard.yard, {"A2"}, (6.0, 6.0))
    open_yard.show_trial(moved)
    qtbot.waitUntil(lambda: row_about(listed, "A1", "A2").cleared)
    assert keys(listed)[: len(before)] == before
    assert listed.rows.counts()[Weight.CONFLICT] == sum(
        f.weight is Weight.CONFLICT for f in open_yard.findings
    )
    open_yard.commit("Move A2", moved)
    assert not any(about(row, "A1", "A2") for row in listed.rows.rows())


def test_giving_up_a_gesture_restores_the_list(listed: FindingsList, qtbot: QtBot) -> None:
    open_yard = listed._open_yard
    qtbot.waitUntil(lambda: not open_yard.checks.busy, timeout=60_000)
    before = {row.finding.key: row.said for row in listed.rows.rows()}
    open_yard.show_trial(edits.move(open_yard.yard, {"A2"}, (6.0, 6.0)))
    open_yard.drop_trial()
    qtbot.waitUntil(lambda: not open_yard.checks.busy, timeout=60_000)
    after = listed.rows.rows()
    assert {row.finding.key: row.said for row in after} == before
    assert not any(row.changed or row.cleared for row in after)


def test_the_chosen_card_follows_its_finding_when_the_order_changes(listed: FindingsList) -> None:
    open_yard = listed._open_yard
    number = keys(listed).index(row_about(listed, "A3", "A4").finding.key)
    listed.cards.setCurrentIndex(listed.rows.index(number))
    open_yard.commit("Move A2", edits.move(open_yard.yard, {"A2"}, (6.0, 6.0)))
    here = listed.cards.currentIndex().row()
    assert listed.rows.row(here).finding.things == ("A3", "A4")


def test_click_shows_the_place_and_selects_what_it_is_about(listed: FindingsList, qtbot: QtBot) -> None:
    number = keys(listed).index(row_about(listed, "A3", "A4").finding.key)
    box = listed.cards.visualRect(listed.rows.index(number))
    open_yard = listed._open_yard
    with qtbot.waitSignals([listed.go_to, open_yard.place_wanted]):
        qtbot.mouseClick(listed.cards.viewport(), Qt.MouseButton.LeftButton, pos=box.center())
    assert open_yard.selection == {"A3", "A4"}


def test_enter_does_what_a_click_does(listed: FindingsList, qtbot: QtBot) -> None:
    listed.cards.setCurrentIndex(listed.rows.index(0))
    with qtbot.waitSignal(listed.go_to) as seen:
        qtbot.keyClick(listed.cards, Qt.Key.Key_Return)
    assert seen.args[0] == listed.rows.row(0).finding.things


def test_step_goes_round_all_findings(listed: FindingsList) -> None:
    listed.cards.selectionModel().clearCurrentIndex()
    seen = []
    for _ in range(listed.rows.rowCount() + 1):
        listed.step(1)
        seen.append(listed.cards.currentIndex().row())
    assert seen == [*range(listed.rows.rowCount()), 0]
    listed.step(-1)
    assert listed.cards.currentIndex().row() == listed.rows.rowCount() - 1


def test_rule_shows_for_the_chosen_card_only(listed: FindingsList) -> None:
    assert "Choose a line" in listed.rule.text()
    listed.cards.setCurrentIndex(listed.rows.index(0))
    assert listed.rows.row(0).said.source_text in listed.rule.text()
    listed.cards.clearSelection()
    assert "Choose a line" in listed.rule.text()


def test_the_next_step_is_offered_where_the_program_can_take_it(
    qtbot: QtBot, opened: Opened, theme
) -> None:
    made = FindingsList(opened(builders.yard_of(builders.plant("A1", "apple:Liberty", (10, 10)))))
    qtbot.addWidget(made)
    made.show()
    number = next(n for n, row in enumerate(made.rows.rows()) if row.finding.check == "pollination")
    assert not made.step_button.isVisible()
    made.cards.setCurrentIndex(made.rows.index(number))
    assert made.step_button.text() == "Find a partner…"
    with qtbot.waitSignal(made.partners_wanted) as seen:
        made.step_button.click()
    assert seen.args == [PlantKey("apple", "Liberty"), "A1"]


def test_missing_facts_of_the_site_lead_to_its_card() -> None:
    lacking = Finding(check="hardiness", kind="zone_unknown", weight=Weight.CAUTION, things=())
    assert step_words(lacking, crowded()) == "Open the site card…"
    gone = Finding(check="spacing", kind="overlap", weight=Weight.CONFLICT, things=("X9",))
    assert step_words(gone, crowded()) == ""


def test_cards_grow_taller_when_the_list_gets_narrow(listed: FindingsList, qtbot: QtBot) -> None:
    listed.resize(700, 500)
    wide = listed.cards.sizeHintForIndex(listed.rows.index(0)).height()
    listed.resize(300, 500)
    qtbot.waitUntil(lambda: listed.cards.sizeHintForIndex(listed.rows.index(0)).height() > wide)


def test_what_is_said_of_many_plants_alike_is_one_card(qtbot: QtBot, opened: Opened, theme) -> None:
    """Six pears of one variety lack a proved partner: one card, six cautions, all six shown and selected."""
    pears = [builders.plant(f"P{n}", "european pear:Bartlett", (4 + 6 * n, 5)) for n in range(7)]
    made = FindingsList(opened(builders.yard_of(*pears, width=60)))
    qtbot.addWidget(made)
    qtbot.waitUntil(lambda: not made._open_yard.checks.busy, timeout=15_000)
    found = [finding for finding in made._open_yard.findings if finding.check == "pollination"]
    rows = [row for row in made.rows.rows() if row.finding.check == "pollination"]
    assert len(found) == 7
    assert len({(finding.kind, finding.weight) for finding in found}) == 1
    assert found[0].weight is not Weight.CONFLICT
    [row] = rows
    assert row.likewise == (
        "Likewise: Bartlett (P1), Bartlett (P2), Bartlett (P3), Bartlett (P4) and 2 more"
    )
    assert row.likewise in row.spoken
    assert made.rows.counts()[row.finding.weight] >= 7
    made.show_place(made.rows.rows().index(row))
    assert made._open_yard.selection == {pear.id for pear in pears}


def test_conflicts_keep_a_card_each(qtbot: QtBot, opened: Opened, theme) -> None:
    cherries = [builders.plant(f"C{n}", "sweet cherry:Bing", (4 + 12 * n, 5)) for n in range(3)]
    made = FindingsList(opened(builders.yard_of(*cherries, width=60)))
    qtbot.addWidget(made)
    rows = [row for row in made.rows.rows() if row.finding.kind == "unset"]
    assert [row.finding.things for row in rows] == [("C0",), ("C1",), ("C2",)]
    assert not any(row.more for row in rows)


def test_an_empty_yard_says_so_and_a_clear_one_too(qtbot: QtBot, opened: Opened, theme) -> None:
    empty = FindingsList(opened(Yard()))
    qtbot.addWidget(empty)
    empty.show()
    assert empty.quiet.isVisible()
    assert "Nothing is drawn yet" in empty.quiet.text()


def test_feet_are_used_where_the_yard_wants_them(qtbot: QtBot, opened: Opened, theme) -> None:
    yard = crowded()
    made = FindingsList(opened(evolve(yard, site=evolve(yard.site, units="imperial"))))
    qtbot.addWidget(made)
    qtbot.waitUntil(lambda: made.rows.rowCount() >= 2, timeout=15_000)
    assert "6.6 ft" in row_about(made, "A1", "A2").said.message


def test_everything_has_a_name_and_is_large_enough(listed: FindingsList) -> None:
    assert unnamed(listed) == []
    assert too_small(listed) == []


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_cards_are_painted_in_both_schemes(listed: FindingsList, theme, scheme: str) -> None:
    theme.choose(scheme)
    listed.cards.setCurrentIndex(listed.rows.index(0))
    picture = listed.grab().toImage()
    colours = {picture.pixelColor(x, y).name() for x in range(0, 300, 3) for y in range(40, 200, 3)}
    assert theme.colours.conflict.lower() in colours
    assert theme.colours.chosen.lower() in colours
