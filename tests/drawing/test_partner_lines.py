"""Partner lines: form by strength, direction, words that do not cover each other, rings of reach."""

from itertools import combinations

import pytest
from attrs import evolve
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter
from support import builders
from support.orchards import site

from yardplan.checks.pollination import net_for
from yardplan.checks.survey import Survey, survey_of
from yardplan.drawing import partners as drawn
from yardplan.drawing import reach as reach_drawn
from yardplan.drawing.painter import draw_findings
from yardplan.drawing.partner_lines import best_pairs, partners_of
from yardplan.drawing.reach import reach_words
from yardplan.drawing.spots import WAIT, Spots
from yardplan.drawing.view import PlanView, Reach
from yardplan.plants.pollen_net import PollenNet


def survey(*keys: str, apart: float = 4.0) -> Survey:
    plants = [builders.plant(f"T{n}", key, (3 + n * apart, 8.0)) for n, key in enumerate(keys)]
    return survey_of(builders.yard_of(*plants, width=60, site=site()))


def net(*keys: str, apart: float = 4.0) -> PollenNet:
    return net_for(survey(*keys, apart=apart))


def view(of: Survey, **more: object) -> PlanView:
    made = PlanView(yard=of.yard, stand=of.stand, scale=20.0, origin=(20.0, 380.0),
                    window=QRectF(0, 0, 1200, 400))
    return evolve(made, **more)


@pytest.fixture
def painted(qapp, monkeypatch):
    """Draws a view and gives back the boxes of words that were drawn on partner lines."""
    boxes: list[QRectF] = []

    def note(painter, view, box, *rest):
        boxes.append(box)

    monkeypatch.setattr(drawn, "draw_boxed", note)

    def draw(shown: PlanView) -> tuple[QImage, list[QRectF]]:
        boxes.clear()
        image = QImage(1200, 400, QImage.Format.Format_RGB32)
        image.fill(0xFFFFFF)
        painter = QPainter(image)
        draw_findings(painter, shown)
        painter.end()
        return image, list(boxes)

    return draw


def test_two_that_set_each_other_have_one_line_without_arrow() -> None:
    lines = partners_of(net("apple:Empire", "apple:Gala"), "T0")
    assert [(line.donor, line.receiver, line.both, line.remark) for line in lines] == [("T1", "T0", True, "")]
    assert lines[0].distance == pytest.approx(4.0)
    assert lines[0].days is not None
    assert lines[0].days > 3


def test_a_triploid_takes_but_gives_nothing_so_the_line_has_a_direction() -> None:
    one = net("apple:Bramley's Seedling", "apple:Empire", "apple:Gala")
    to_triploid = [line for line in partners_of(one, "T0")]
    assert {line.donor for line in to_triploid} == {"T1", "T2"}
    assert all(line.receiver == "T0" and not line.both for line in to_triploid)


def test_unproved_and_far_partners_have_weaker_lines_and_say_so() -> None:
    near = partners_of(net("apple:Empire", "apple:Gala"), "T0")[0]
    unproved = partners_of(net("apple:Liberty", "apple:Enterprise"), "T0")[0]
    far = partners_of(net("apple:Empire", "apple:Gala", apart=20.0), "T0")[0]
    assert near.strength > unproved.strength > far.strength > 0
    assert (near.remark, unproved.remark, far.remark) == ("", "not proved", "weak")


def test_days_known_by_class_only_are_about() -> None:
    dated = partners_of(net("apple:Empire", "apple:Gala"), "T0")[0]
    plants = [builders.plant("T0", "apple:Empire", (3, 8)), builders.plant("T1", "apple:Gala", (7, 8))]
    by_class = survey_of(builders.yard_of(*plants, site=site(monthly_means=())))
    guessed = partners_of(net_for(by_class), "T0")[0]
    assert (dated.dated, guessed.dated) == (True, False)
    assert drawn.partner_words(dated, view(by_class)) == f"4.0 m · {dated.days} days together"
    assert drawn.partner_words(guessed, view(by_class)) == f"4.0 m · about {guessed.days} days together"


def test_a_plant_without_any_partner_has_no_line() -> None:
    assert partners_of(net("apple:Gala", "peach:Redhaven"), "T0") == ()
    assert partners_of(net("apple:Gala"), "no such thing") == ()


def test_all_lines_join_every_plant_to_its_best_giver_once() -> None:
    one = net("apple:Empire", "apple:Gala", "apple:Akane", "peach:Redhaven")
    lines = best_pairs(one)
    pairs = [frozenset((line.donor, line.receiver)) for line in lines]
    assert len(pairs) == len(set(pairs))
    assert set().union(*pairs) == {"T0", "T1", "T2"}
    assert all(line.quiet for line in lines)
    assert not any("T1" in (line.donor, line.receiver) for line in best_pairs(one, {"T1"}))


def test_words_of_many_lines_never_cover_each_other(painted) -> None:
    of = survey(*["apple:Empire", "apple:Gala", "apple:Akane", "apple:Topaz"] * 4, apart=2.5)
    _, boxes = painted(view(of, partners=best_pairs(net_for(of))))
    assert len(boxes) >= 4
    assert not [1 for one, other in combinations(boxes, 2) if one.intersects(other)]


def test_words_hold_still_on_their_line_while_their_place_is_free(painted) -> None:
    of, spots = survey("apple:Empire", "apple:Gala", apart=20.0), Spots()
    lines = partners_of(net_for(of), "T0")
    middle = QRectF(view(of).at((13.0, 8.0)).x() - 5, 0, 10, 400)
    _, (aside,) = painted(view(of, partners=lines, keep_clear=(middle,), spots=spots))
    assert not aside.intersects(middle)
    _, (still,) = painted(view(of, partners=lines, spots=spots))
    assert still == aside
    _, (best,) = painted(view(of, partners=lines))
    assert best.center().x() == pytest.approx(middle.center().x())
    # Where other words have come to stand they give way.
    _, (moved,) = painted(view(of, partners=lines, keep_clear=(aside,), spots=spots))
    assert not moved.intersects(aside)
    # Those of a tool, which lie on top of all in this frame, are kept clear of too.
    _, (clear,) = painted(view(of, partners=lines, taken=(moved,), spots=spots))
    assert not clear.intersects(moved)


def test_words_that_found_no_room_come_back_when_there_is_some(painted) -> None:
    of, spots = survey("apple:Empire", "apple:Gala", apart=20.0), Spots()
    lines = partners_of(net_for(of), "T0")
    _, boxes = painted(view(of, partners=lines, keep_clear=(QRectF(0, 0, 1200, 400),), spots=spots))
    assert not boxes
    # Looked for again while the gesture goes on, not each time the same state is painted.
    tries = [len(painted(view(of, partners=lines, spots=spots))[1]) for _ in range(12)]
    assert not any(tries)
    for _ in range(WAIT):
        spots.step()
    assert len(painted(view(of, partners=lines, spots=spots))[1]) == 1


def test_rings_tint_the_ground_that_is_near_enough(painted) -> None:
    of = survey("apple:Gala")
    reach = Reach(name="Gala (T0)", points=((20.0, 8.0),), best=6.0, outer=12.0)
    bare, _ = painted(view(of))
    ringed, _ = painted(view(of, reaches=(reach,)))
    inside, beyond = view(of).at((21.0, 9.0)).toPoint(), view(of).at((45.0, 9.0)).toPoint()
    assert ringed.pixel(inside) != bare.pixel(inside)
    assert ringed.pixel(beyond) == bare.pixel(beyond)
    assert reach_words(view(of, reaches=(reach,))) == (
        "within 6.0 m of Gala (T0): near enough", "beyond 12.0 m: too far",
    )


def test_rings_of_a_plant_meant_for_two_cross(painted) -> None:
    of = survey("apple:Gala")
    places = (("T0", 16.0), ("T1", 24.0))
    two = tuple(Reach(name=name, points=((x, 8.0),), best=6.0, outer=12.0) for name, x in places)
    beside_one = view(of).at((12.0, 9.0)).toPoint()
    between = view(of).at((20.0, 9.0)).toPoint()
    bare, _ = painted(view(of))
    either, _ = painted(view(of, reaches=two))
    both, _ = painted(view(of, reaches=two, reach_all=True))
    assert either.pixel(beside_one) != bare.pixel(beside_one)
    assert both.pixel(beside_one) == bare.pixel(beside_one)
    assert both.pixel(between) != bare.pixel(between)
    assert reach_words(view(of, reaches=two, reach_all=True))[0] == "within 6.0 m of T0 and T1: near enough"


def test_long_words_of_a_ring_are_not_cut_by_the_window(painted, monkeypatch) -> None:
    """Names of two plants make words wider than the room kept on either side of their place."""
    boxes: list[QRectF] = []
    monkeypatch.setattr(reach_drawn, "draw_boxed", lambda _painter, _view, box, *_more: boxes.append(box))
    names = ("Northern Red Hardy Seedling (T10)", "Yellow Transparent of York (T11)")
    reaches = tuple(Reach(name=name, points=((24.0, 8.0),), best=3.0, outer=40.0) for name in names)
    window = QRectF(0, 0, 600, 400)
    painted(evolve(view(survey("apple:Gala"), reaches=reaches), window=window))
    assert boxes
    assert max(box.width() for box in boxes) > 280
    for box in boxes:
        assert window.left() <= box.left() < box.right() <= window.right()
