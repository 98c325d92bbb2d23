"""Named variants: kept, opened, named and forgotten; the file reads well and is refused where it is wrong."""

from __future__ import annotations

import json
import re

import pytest
from attrs import evolve
from support.builders import plant, yard_of

from yardplan.files.errors import YardFileError
from yardplan.files.reading import yard_from_json
from yardplan.files.versions import lift
from yardplan.files.writing import yard_to_json
from yardplan.yard import edits, groups, variants
from yardplan.yard.edits import EditError

ONE = yard_of(plant("A1", "apple:Liberty", (5, 5)), plant("A2", "apple:Enterprise", (10, 5)))
KEPT = variants.keep(ONE, "Two apples", "2026-11-25")
PEARS = edits.add(edits.remove(KEPT, {"A2"}), plant("P1", "european pear:Conference", (12, 8)))
BOTH = variants.keep(PEARS, "With a pear", "2026-11-26")


def test_a_variant_is_opened_as_it_was_kept_and_the_others_stay() -> None:
    opened = variants.opened(BOTH, "Two apples")
    assert opened.plantings == ONE.plantings
    assert opened.variants == BOTH.variants
    assert variants.plan_of(variants.opened(opened, "With a pear")) == variants.plan_of(PEARS)


def test_site_rules_prices_and_marks_are_the_yards_own() -> None:
    moved = edits.set_site(evolve(BOTH, rules={"x": 1.0}, prices={"y": 2.0}), latitude=50.0)
    opened = variants.opened(moved, "Two apples")
    assert (opened.site.latitude, opened.rules, opened.prices) == (50.0, {"x": 1.0}, {"y": 2.0})


def test_names_are_needed_and_different() -> None:
    with pytest.raises(EditError, match="Two apples already"):
        variants.keep(BOTH, " Two  apples ", "2026-11-27")
    with pytest.raises(EditError, match="needs a name"):
        variants.rename(BOTH, "Two apples", "  ")
    named = variants.rename(BOTH, "Two apples", "Plain")
    assert [v.name for v in named.variants] == ["Plain", "With a pear"]
    assert variants.remove(named, "Plain").variants == BOTH.variants[1:]
    assert variants.free_name(ONE) == "Variant 1"


def test_a_plant_moved_in_a_variant_is_one_changed_line_of_the_file() -> None:
    before = yard_to_json(BOTH).splitlines()
    plan = BOTH.variants[1].plan
    moved = edits.move(plan, {"P1"}, (0.5, 0.0))
    after = yard_to_json(evolve(BOTH, variants=(BOTH.variants[0], evolve(BOTH.variants[1], plan=moved))))
    (line,) = [a for a, b in zip(after.splitlines(), before, strict=True) if a != b]
    assert json.loads(line.strip().rstrip(","))["place"] == [12.5, 8.0]


def test_a_variant_keeps_groups_and_fields_of_newer_programs() -> None:
    document = json.loads(yard_to_json(groups.group(BOTH, {"A1", "P1"})))
    document["variants"][0]["plan"]["groups"] = [{"name": "Old", "members": ["A1", "A2"]}]
    document["variants"][0]["plan"]["ponds"] = [1]
    document["variants"][0]["plan"]["plantings"][0]["colour"] = "red"
    document["variants"][0]["author"] = "me"
    yard = yard_from_json(json.dumps(document))
    assert json.loads(yard_to_json(yard)) == document
    opened = variants.opened(yard, "Two apples")
    assert opened.groups[0].name == "Old"
    assert '"colour": "red"' in yard_to_json(opened)


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda d: d["variants"][0]["plan"]["plantings"][1].update(id="A1"),
         r"variants 1: 'plan': plantings 2 \(A1\): the key is taken already"),
        (lambda d: d["variants"][1].update(name="Two apples"), "variants 2: the name 'Two apples' is taken"),
        (lambda d: d["variants"][0].pop("plan"), "variants 1: 'plan' is missing"),
        (lambda d: d["variants"][0].update(plan=7), "variants 1: 'plan': is a whole number, needs an object"),
        (lambda d: d.update(groups=[{"name": "G", "members": ["A1", "Z9"]}]), "nothing with the key 'Z9'"),
        (lambda d: d.update(groups=[{"name": "G", "members": ["A1"]}]), "has one entry, needs two"),
        (lambda d: d.update(groups=[{"name": "G", "members": ["A1", "P1"]}] * 2), "the name 'G' is taken"),
    ],
)
def test_what_is_wrong_is_told_with_its_place(change, said) -> None:
    document = json.loads(yard_to_json(BOTH))
    change(document)
    with pytest.raises(YardFileError) as caught:
        yard_from_json(json.dumps(document))
    assert any(re.search(said, f"{fault.place}: {fault.what}") for fault in caught.value.faults), (
        caught.value.faults
    )


def test_plans_of_variants_are_lifted_with_the_yard() -> None:
    document = json.loads(yard_to_json(BOTH))

    def step(one):
        return {**one, "shrubs": one.get("plantings", [])}

    lifted = lift(document, "it", lifts={1: step}, current=2)
    assert lifted["shrubs"]
    assert lifted["variants"][0]["plan"]["shrubs"]
