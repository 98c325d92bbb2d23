from attrs import evolve
from support import cares
from support.builders import plant, yard_of

from yardplan.care.together import Work, together


def test_nothing_is_lost_and_days_stay_near() -> None:
    yard = yard_of(
        plant("A1", "apple:Idared", (3, 4), planted=2015), plant("A2", "apple:Liberty", (9, 4), planted=2015),
        plant("P1", "european pear:Conference", (15, 4), planted=2015),
        plant("C1", "sweet cherry:Lapins", (20, 4), planted=2015), site=cares.site(),
    )
    plan = cares.plan(yard)
    works = together(plan.tasks)
    assert sorted(task.id for work in works for task in work.tasks) == sorted(task.id for task in plan.tasks)
    assert len(works) < 0.8 * len(plan.tasks)
    for work in works:
        assert len({task.title for task in work.tasks}) == 1
        for task in work.tasks:
            assert abs((task.start - work.start).days) <= 14
            assert work.start <= task.start
            assert task.end <= work.end
        if work.first.kind in ("spray", "harvest"):
            assert len({(task.start, task.end) for task in work.tasks}) == 1


def test_amounts_say_what_they_are_for() -> None:
    yard = yard_of(
        plant("L1", "european plum:Stanley", (3, 4), planted=2026),
        plant("P1", "european pear:Conference", (15, 4), planted=2025), site=cares.site(),
    )
    works = together(cares.plan(yard).tasks)
    water = next(work for work in works if work.first.row == "water-young" and len(work.tasks) > 1)
    assert set(water.things) == {"L1", "P1"}
    assert len({task.amount for task in water.tasks}) == 2
    assert [amount.split(":")[0] for amount in water.amounts] == [task.what for task in water.tasks]


def test_notes_say_whom_they_are_for_unless_for_all() -> None:
    (given, *_) = cares.plan(cares.orchard(cares.site())).tasks
    one = evolve(given, what="Akane", notes=("Both.", "Only here."))
    other = evolve(given, what="Topaz", notes=("Both.",))
    assert Work((one, other)).notes == ("Both.", "Akane: Only here.")
