import datetime as dt

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from support import cares, strategies
from support.builders import plant, yard_of

from yardplan.care.season import Season, bloom_for, whole_months
from yardplan.care.spray_guard import Closed, bloom_closed, not_visited, windows
from yardplan.care.tables import care_rows
from yardplan.care.tasks import care_plan
from yardplan.care.things import flowering
from yardplan.checks.survey import survey_of
from yardplan.plants.cultivar import Cultivar
from yardplan.yard.ground import StandingTree
from yardplan.yard.yard import Yard

DAY = dt.timedelta(days=1)


def bloom_days(yard: Yard, year: int) -> set[dt.date]:
    """Days with open flowers in or beside a yard, told anew from the bloom bands."""
    survey = survey_of(yard)
    bloom = bloom_for(yard, survey.catalogue.cultivars)
    found: set[dt.date] = set()
    for season in (Season(yard.site, year + step, bloom) for step in (-2, -1, 0, 1, 2)):
        for _, cultivar in flowering(survey):
            open_days = season.blooms(cultivar)
            if open_days is None:
                continue
            first, last, by_month = open_days
            first, last = whole_months(first, last) if by_month else (first, last)
            found |= {first + DAY * step for step in range((last - first).days + 1)}
    return found


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(strategies.yards(), st.integers(2020, 2040))
def test_no_spray_in_any_bloom_of_a_random_yard(yard: Yard, year: int) -> None:
    closed = bloom_days(yard, year)
    for task in care_plan(survey_of(yard), year).tasks:
        if not task.spray:
            continue
        days = {task.start + DAY * step for step in range((task.end - task.start).days + 1)}
        assert not days & closed
        before = {task.end + DAY * step for step in (1, 2, 3)}
        assert not before & closed, f"{task.id} ends {task.end} within three days of bloom"


@settings(max_examples=30, deadline=None)
@given(st.lists(st.sampled_from((
    "apple:Idared", "apple:Cox's Orange Pippin", "peach:Redhaven", "sweet cherry:Lapins",
    "european pear:Conference", "red raspberry:Heritage", "red raspberry:Latham", "apricot:Goldcot",
    "northern highbush blueberry:Bluecrop", "grape:Concord", "european plum:Stanley",
)), min_size=1, max_size=6, unique=True), st.booleans())
def test_no_spray_in_any_bloom_where_sprays_are_many(kinds: list[str], southern: bool) -> None:
    where = cares.mirrored() if southern else cares.site()
    yard = yard_of(*(plant(f"T{n}", kind, (3.0 * n, 4)) for n, kind in enumerate(kinds)), site=where)
    closed = bloom_days(yard, 2027)
    sprays = [task for task in care_plan(survey_of(yard), 2027).tasks if task.spray]
    for task in sprays:
        span = range(-3, (task.end - task.start).days + 1)
        assert not {task.start + DAY * step for step in span if step >= 0} & closed
        assert not {task.end + DAY * step for step in (1, 2, 3)} & closed


def test_refusals_name_the_variety_that_blocks() -> None:
    yard = yard_of(
        plant("A1", "apple:Idared", (3, 4), planted=2015),
        plant("B1", "northern highbush blueberry:Bluecrop", (8, 4), planted=2015), site=cares.site(),
    )
    plan = cares.plan(yard)
    refused = [one for one in plan.refusals if one.task.startswith("apple-insect@")]
    assert refused
    assert any("Bluecrop" in name for one in refused for name in one.blockers)
    (spray,) = [task for task in cares.tasks(plan, "apple-insect") if task.season == 2027]
    assert spray.start > max(one.end for one in refused)
    assert spray.notes[0].startswith("Again after petal fall of")
    assert "Bluecrop" in spray.notes[0]


def test_next_doors_trees_count() -> None:
    tree = StandingTree(id="T1", kind="crabapple", place=(20, 4), height=6, spread=5, donor="seedling")
    alone = yard_of(plant("PE1", "peach:Redhaven", (3, 4), planted=2015), site=cares.site())
    beside = yard_of(
        plant("PE1", "peach:Redhaven", (3, 4), planted=2015), site=cares.site(), standing_trees=(tree,)
    )
    assert "crabapple" not in {name for one in cares.plan(alone).refusals for name in one.blockers}
    assert "crabapple" in {name for one in cares.plan(beside).refusals for name in one.blockers}


def test_unknown_bloom_closes_the_calendar() -> None:
    yard = yard_of(
        plant("PE1", "peach:Redhaven", (3, 4), planted=2015), plant("L1", "loquat:Big Jim", (9, 4)),
        site=cares.site(),
    )
    plan = cares.plan(yard)
    assert not [task for task in plan.tasks if task.spray]
    assert any("not known" in name for one in plan.refusals for name in one.blockers)
    assert len(plan.bloom_unknown) == 1
    # Told once for all such kinds, after those that are known to flower.
    said = plan.refusals[0].because
    assert said.count("not known is the bloom here of") == 1
    assert said.endswith("of loquat")


def test_kinds_without_bees_close_nothing() -> None:
    assert "fig" in not_visited()
    season = Season(cares.site(), 2027, bloom_for(cares.orchard(cares.site())))
    assert bloom_closed([("fig", Cultivar(crop="fig", name=""))], [season]) == []


def test_autumn_raspberries_flower_to_frost() -> None:
    season = Season(cares.site(), 2027, bloom_for(cares.orchard(cares.site())))
    kind = Cultivar(crop="red raspberry", name="x", type="primocane", bloom_season="mid")
    (closed,) = bloom_closed([("x", kind)], [season])
    assert closed.last == dt.date(2027, 10, 15)


def test_no_spray_while_picking_and_a_word_on_the_days_before() -> None:
    yard = yard_of(plant("PE1", "peach:Redhaven", (3, 4), planted=2015), site=cares.site())
    plan = cares.plan(yard)
    harvest = next(task for task in cares.tasks(plan, "peach-harvest") if task.season == 2027)
    for task in plan.tasks:
        if task.spray and task.season == 2027:
            assert task.end < harvest.start or task.start > harvest.end
    (late,) = [task for task in cares.tasks(plan, "peach-rot") if task.season == 2027]
    assert any("Picking begins about" in text and "label" in text for text in late.notes)


def test_every_spray_puts_label_law_and_re_entry_first() -> None:
    for row in care_rows():
        if row.kind == "spray":
            assert row.spray in ("oil", "fungicide", "insecticide")
            assert {"label", "bees"} <= set(row.cautions)
            assert row.every is None or row.every[0] >= 7
    spray = next(task for task in cares.plan(cares.orchard(cares.site())).tasks if task.spray)
    words = " ".join(spray.cautions)
    for word in ("label", "law", "re-entry", "days before harvest", "extension"):
        assert word in words


def test_windows_are_cut_and_whole() -> None:
    day = dt.date(2027, 5, 1)
    closed = [Closed(day + 3 * DAY, day + 5 * DAY, "x"), Closed(day + 5 * DAY, day + 6 * DAY, "y")]
    parts = windows(day, day + 9 * DAY, closed)
    assert [(part.first, part.last, part.open) for part in parts] == [
        (day, day + 2 * DAY, True), (day + 3 * DAY, day + 6 * DAY, False),
        (day + 7 * DAY, day + 9 * DAY, True),
    ]
    assert [one.name for one in parts[1].by] == ["x", "y"]
