"""Labels keep out of each other's way, always the same."""

from itertools import combinations

from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QPointF, QRectF
from support.plans import old_tree, standing, view_of

from yardplan.drawing.crowd import Crowd, Room
from yardplan.drawing.labels import KEY_FLOOR, arrange, arranged, draw_labels, lately_arranged
from yardplan.yard.ground import Barrier, Building, Note, Paving
from yardplan.yard.planting import Bed
from yardplan.yard.yard import Yard

places = st.lists(
    st.tuples(st.floats(0.5, 19.5), st.floats(0.5, 11.5), st.sampled_from([0.8, 1.2, 2.4, 4.0])),
    min_size=1, max_size=25,
)


def crowd_of(spots):
    return [standing(f"A{i}", (x, y), spread) for i, (x, y, spread) in enumerate(spots)]


@settings(max_examples=60, deadline=None)
@given(places, st.sampled_from([15.0, 40.0, 90.0]))
def test_names_never_overlap_anything_written(qapp, spots, scale):
    labels = arrange(view_of(*crowd_of(spots), scale=scale))
    for one, other in combinations(labels, 2):
        if "name" in (one.kind, other.kind):
            assert not one.box.intersects(other.box), f"{one.text} on {other.text}"


@settings(max_examples=40, deadline=None)
@given(places)
def test_names_stay_off_other_crowns(qapp, spots):
    view = view_of(*crowd_of(spots))
    crowns = {p.id: (p.place[0] * 40, -p.place[1] * 40, p.size.spread * 20) for p in view.stand.plants}
    for label in arrange(view):
        if label.kind != "name":
            continue
        for owner, (x, y, radius) in crowns.items():
            if owner != label.thing:
                dx = x - min(max(x, label.box.left()), label.box.right())
                dy = y - min(max(y, label.box.top()), label.box.bottom())
                assert dx * dx + dy * dy >= radius * radius - 1e-6


@settings(max_examples=30, deadline=None)
@given(places)
def test_every_key_is_kept_and_the_order_of_plants_does_not_matter(qapp, spots):
    plants = crowd_of(spots)
    labels = arrange(view_of(*plants))
    keys = {label.thing for label in labels if label.kind in ("key", "bare key")}
    assert keys == {plant.id for plant in plants}
    again = arrange(view_of(*plants[::-1]))
    assert sorted(map(repr, labels)) == sorted(map(repr, again))


def test_far_out_keys_give_way(qapp):
    view = view_of(*crowd_of([(x, y, 1.0) for x in range(1, 19) for y in range(1, 11)]), scale=6.0)
    assert KEY_FLOOR > 1.0 / 2 * 6.0
    assert not [label for label in arrange(view) if "key" in label.kind]


def test_a_wide_crown_holds_its_words(qapp):
    view = view_of(standing("A1", (10, 6), 5.0))
    crown = QRectF(10 * 40 - 100, -6 * 40 - 100, 200, 200)
    labels = arrange(view)
    assert {label.text for label in labels} == {"A1", "Liberty"}
    assert all(crown.contains(label.box) for label in labels)


def test_names_do_not_cross_walls(qapp):
    wall = Barrier(id="W1", kind="wall", line=((0.0, 6.0), (20.0, 6.0)))
    plant = standing("A1", (10, 6.8), 1.2)
    yard = Yard(lot=((0, 0), (20, 0), (20, 12), (0, 12)), barriers=(wall,), plantings=(plant.thing,))
    for label in arrange(view_of(plant, yard=yard)):
        if label.kind == "name":
            assert not label.box.top() < -6.0 * 40 < label.box.bottom()


def test_ground_is_named_with_its_figures(qapp):
    house = Building(
        id="B1", name="House", footprint=((1, 1), (9, 1), (9, 6), (1, 6)), eaves=5.2, ridge=7.8, roof="gable"
    )
    bed = Bed(id="K1", name="berry bed", outline=((11, 1), (17, 1), (17, 3), (11, 3)))
    patio = Paving(id="P1", name="terrace", kind="terrace", outline=((11, 6), (16, 6), (16, 9), (11, 9)))
    note = Note(id="N1", place=(2, 9), text="tap here")
    yard = Yard(buildings=(house,), beds=(bed,), pavings=(patio,), notes=(note,))
    texts = {label.text for label in arrange(view_of(yard=yard))}
    assert texts == {"House", "eaves 5.2 m  ridge 7.8 m", "berry bed  12.0 m²", "terrace", "tap here"}
    feet = {label.text for label in arrange(view_of(yard=yard, units="imperial"))}
    assert "eaves 17.1 ft  ridge 25.6 ft" in feet


def test_standing_trees_have_a_name_and_no_key(qapp):
    labels = arrange(view_of(old_tree("N1", (10, 6))))
    assert [(label.kind, label.text) for label in labels] == [("name", "oak, northern red")]


def test_a_pan_does_not_arrange_again_but_an_edit_does(qapp):
    view = view_of(standing("A1", (10, 6)))
    assert arranged(view) is arranged(view)
    other = view_of(standing("A1", (11, 6)))
    assert arranged(other) is not arranged(view)
    assert lately_arranged(view_of(standing("A1", (12, 6)))) in (arranged(view), arranged(other))


def test_a_dragged_plant_keeps_its_first_places(qapp):
    plants = [standing("A1", (10, 6), 1.0), standing("A2", (10.6, 6), 1.0)]
    alone = arrange(view_of(plants[0], only=frozenset({"A1"})))
    among = arrange(view_of(*plants, only=frozenset({"A1"})))
    assert alone == among


def test_labels_are_drawn_where_arranged(qapp):
    from support.plans import inked, plan_picture

    view = view_of(standing("A1", (10, 6), 1.0))
    dark = inked(plan_picture(draw_labels, view))
    for label in arrange(view):
        box = label.box.translated(*view.origin)
        patch = dark[int(box.top()) : int(box.bottom()) + 1, int(box.left()) : int(box.right()) + 1]
        assert patch.sum() > 20
    assert dark.sum() > 0


def test_room_over_a_crowd_is_shifted():
    crowd = Crowd()
    crowd.take(QRectF(0, 0, 10, 10))
    room = Room(crowd, (100.0, 50.0))
    assert not room.free(QRectF(105, 55, 3, 3))
    assert room.free(QRectF(5, 5, 3, 3))
    room.take(QRectF(5, 5, 3, 3))
    assert not room.free(QRectF(6, 6, 3, 3))


def test_in_a_crowd_every_key_stands_on_its_stem_without_a_frame(qapp):
    plants = [standing(f"A{i}", (1 + 1.5 * (i % 12), 1 + 1.5 * (i // 12)), 1.4) for i in range(72)]
    labels = [label for label in arrange(view_of(*plants, scale=20.0)) if "key" in label.kind]
    assert {label.kind for label in labels} == {"bare key"}
    assert len(labels) == 72
    for label in labels:
        x, y = plants[int(label.thing[1:])].place
        assert label.box.contains(x * 20, -y * 20)
    chosen = arrange(view_of(*plants, scale=20.0, selection=frozenset({"A30"})))
    assert any("key" in label.kind and label.thing == "A30" for label in chosen)


def test_a_line_is_broken_where_words_stand():
    crowd = Crowd()
    crowd.take(QRectF(40, -5, 20, 10))
    crowd.take(QRectF(80, 50, 20, 10))
    room = Room(crowd, (0.0, 0.0))
    pieces = room.gaps(QPointF(0, 0), QPointF(100, 0), margin=0.0)
    assert [(a.x(), b.x()) for a, b in pieces] == [(0, 40), (60, 100)]
    assert room.gaps(QPointF(42, -2), QPointF(58, 2)) == []
    ((a, b),) = room.gaps(QPointF(0, 20), QPointF(100, 20))
    assert (a.x(), b.x()) == (0, 100)
