"""Names, targets, contrast and large text of every window, panel and box; by WCAG 2.2 AA.

Names: 4.1.2; targets of 24 px: 2.5.8; text 4.5:1: 1.4.3; text at 200 %: 1.4.4.
"""

import json
import re

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, QSettings, QSize, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QInputDialog, QMessageBox, QPushButton, QWidget
from support.builders import plant, yard_of
from support.widgets import cut_text, focusable, small_pieces, spoken_name, too_small, unnamed
from support.window_hands import trigger

from yardplan.drawing.style import contrast
from yardplan.shipped import resource
from yardplan.window.dialogs.alongside_box import AlongsideBox
from yardplan.window.dialogs.command_finder import CommandFinder
from yardplan.window.dialogs.deed_box import DeedBox
from yardplan.window.edges import DockEdge, Splitter
from yardplan.window.open_yard import InHand
from yardplan.window.questions import Questions
from yardplan.window.theme import DARK, LIGHT, TEXT_SIZES, Theme, scaled, set_text_scale, text_scale
from yardplan.window.tools.select import HIT_PIXELS
from yardplan.yard.ground import Barrier
from yardplan.yard.planting import PlantKey

YARD = yard_of(
    plant("A1", "apple:Akane", (5, 5)), plant("A2", "apple:Akane", (6, 5)),
    plant("P1", "european pear:Bartlett", (15, 5)),
)
FENCED = yard_of(
    plant("A1", "apple:Akane", (5, 5)),
    barriers=(Barrier(id="WF1", name="Fence", line=((2.0, 2.0), (12.0, 2.0))),),
)
BOXES = ("sheets", "shopping", "care", "site card", "local rules", "own varieties", "variety card", "about",
         "history", "handbook", "variants", "harvest")
STATES = ("choose", "in hand", "fields", "list", "partners", "light", "finding", "start", "guide")


@pytest.fixture
def window(make_window, qtbot):
    return ready(make_window(YARD), qtbot)


def ready(window, qtbot):
    qtbot.waitUntil(lambda: not window.open_yard.checks.busy, timeout=20_000)
    return window


def show(window, state, qtbot):
    """Bring the window into a state of its panels."""
    yard, side = window.open_yard, window.side
    if state in ("start", "guide"):
        yard.new()
        if state == "guide":
            window.help.show_guide()
            window.help.guide.look()
    elif state == "in hand":
        window.show_choice()
        yard.take_in_hand(InHand(plant=PlantKey("apple", "Liberty")))
    elif state == "fields":
        yard.select({"A1"})
        window.show_fields()
    elif state == "list":
        window.show_plants()
    elif state == "partners":
        trigger(window, "yard partners")
    elif state == "light":
        side.tabs.setCurrentWidget(window.light_room.panel)
    elif state == "finding":
        side.findings.step(1)
    qtbot.wait(20)
    QApplication.processEvents()


def box_of(window, command, qtbot):
    """Open a box by its command and give it."""
    window.open_yard.select({"A1"})
    before = set(QApplication.topLevelWidgets())
    trigger(window, command)
    opened = [w for w in set(QApplication.topLevelWidgets()) - before if w.isVisible() and w.isWindow()]
    made = next(w for w in opened if w.windowTitle())
    qtbot.waitUntil(made.isVisible)
    qtbot.wait(20)
    return made


def hard_to_use(root: QWidget):
    """What has no name, no name in words, or is too small to hit."""
    names = [(type(widget).__name__, spoken_name(widget)) for widget in focusable(root)]
    glyphs = [f"{kind} is called {name}" for kind, name in names if not re.search(r"\w\w", name)]
    return unnamed(root) + glyphs + too_small(root) + small_pieces(root)


def test_everything_in_the_window_has_a_name_and_can_be_hit(window, qtbot):
    for state in STATES:
        show(window, state, qtbot)
        assert hard_to_use(window) == [], state


def test_everything_in_a_box_has_a_name_and_can_be_hit(window, qtbot):
    for command in BOXES:
        box = box_of(window, command, qtbot)
        assert box.windowTitle(), command
        assert hard_to_use(box) == [], command
        box.close()


def test_the_command_finder_has_names_and_can_be_hit(window, qtbot):
    finder = CommandFinder(window.actions_.all(), window)
    finder.show()
    assert hard_to_use(finder) == []


def asked(window, monkeypatch):
    """Each box that asks something, shown without waiting for an answer."""
    made = []
    monkeypatch.setattr(QMessageBox, "exec", lambda box: made.append(box) or 0)
    monkeypatch.setattr(QInputDialog, "exec", lambda box: made.append(box) or 0)
    questions = Questions(window)
    questions.save_changes("Yard")
    questions.restore("Yard", "14:20")
    questions.text("Words of the note", "Compost")
    questions.line("Name of the variant", "Variant 1")
    questions.tell_fault("The yard was not opened", "It is damaged.", "plants: no list")
    for box in made:
        box.show()
    return made


def modal_boxes(window, tmp_path):
    """The boxes that the window waits for: imports and strips alongside, each as it is opened."""
    table, outline = tmp_path / "plants.csv", tmp_path / "lot.geojson"
    table.write_text("kind,variety,x,y\napple,Liberty,3,4\napple,Nonesuch,5,4\n", encoding="utf-8")
    ring = [[10.0, 50.0], [10.0004, 50.0], [10.0004, 50.0003], [10.0, 50.0003], [10.0, 50.0]]
    outline.write_text(json.dumps({"type": "Polygon", "coordinates": [ring]}), encoding="utf-8")
    window.exchange.read_plants(table)
    yield window.exchange.box
    window.exchange.box.close()
    window.exchange.read_lot(outline)
    yield window.exchange.box
    window.exchange.box.close()
    for box in (AlongsideBox(window.open_yard, "WF1", window), DeedBox(window.open_yard, window)):
        box.show()
        yield box
        box.close()


def all_modal(window, monkeypatch, tmp_path):
    """Every box that the window waits for."""
    boxes = asked(window, monkeypatch)
    assert len(boxes) == 5
    yield from boxes
    yield from modal_boxes(window, tmp_path)


def test_boxes_that_the_window_waits_for_have_names_and_can_be_hit(
    make_window, qtbot, monkeypatch, tmp_path
):
    window = ready(make_window(FENCED), qtbot)
    seen = 0
    for box in all_modal(window, monkeypatch, tmp_path):
        QApplication.processEvents()
        assert box.windowTitle(), type(box)
        assert hard_to_use(box) == [], box.windowTitle()
        assert cut_text(box) == [], box.windowTitle()
        seen += 1
    assert seen == 9


#: What is written on a button that closes its box and changes nothing.
CLOSING = ("Close", "Cancel", "Leave it for now", "OK")


def buttons(box):
    """The push buttons that are seen, by their words."""
    return {part.text().replace("&", ""): part for part in box.findChildren(QPushButton) if part.isVisible()}


def hard_to_leave(box):
    """What keeps hands without a mouse from closing a box or doing what it is for; closes it twice."""
    faults = []
    main = [part for part in buttons(box).values() if part.isDefault()]
    if len(main) != 1:
        faults.append(f"{len(main)} buttons for Enter among {list(buttons(box))}")
    QTest.keyClick(box, Qt.Key.Key_Escape)
    if box.isVisible():
        faults.append("Esc does not close it")
    box.show()
    seen = buttons(box)
    closing = next((seen[words] for words in CLOSING if words in seen), None)
    if closing is None:
        return [*faults, f"no button closes it among {list(buttons(box))}"]
    closing.click()
    return [*faults, "its button does not close it"] if box.isVisible() else faults


def test_every_box_closes_by_esc_and_by_a_button_and_has_one_for_enter(window, qtbot):
    for command in BOXES:
        assert hard_to_leave(box_of(window, command, qtbot)) == [], command
    finder = CommandFinder(window.actions_.all(), window)
    finder.show()
    assert hard_to_leave(finder) == []


def test_every_box_that_the_window_waits_for_closes_too(make_window, qtbot, monkeypatch, tmp_path):
    window = ready(make_window(FENCED), qtbot)
    for box in all_modal(window, monkeypatch, tmp_path):
        assert hard_to_leave(box) == [], box.windowTitle()


def test_the_button_for_enter_is_the_one_the_box_is_for(window, qtbot):
    main = {"sheets": "Save…", "shopping": "Save as CSV…", "own varieties": "Keep",
            "variants": "Keep this plan…", "site card": "Close", "handbook": "Close"}
    found = {command: box_of(window, command, qtbot) for command in main}
    assert {name: [words for words, part in buttons(box).items() if part.isDefault()]
            for name, box in found.items()} == {name: [words] for name, words in main.items()}


def test_enter_presses_what_has_the_focus_or_the_main_button_but_never_out_of_a_field(window, qtbot):
    box = box_of(window, "sheets", qtbot)
    pressed = []
    for part in (box.save, box.printing):
        part.clicked.disconnect()
        part.clicked.connect(lambda _on=False, part=part: pressed.append(part))
    for focus in (box.marks, box.printing, box.persons.line, box.paper):
        focus.setFocus()
        QTest.keyClick(focus, Qt.Key.Key_Return)
    assert pressed == [box.save, box.printing]


def test_the_strip_of_the_guide_has_names_and_can_be_hit_at_every_step(window, qtbot):
    window.open_yard.new()
    guide = window.help.show_guide()
    while True:
        QApplication.processEvents()
        assert hard_to_use(guide.strip) == [], guide.number
        assert cut_text(guide.strip) == [], guide.number
        if guide.over:
            break
        guide.next_step()


def test_edges_between_panels_can_be_grabbed_and_dragged(window, qtbot):
    edges = window.findChildren(DockEdge)
    assert len(edges) == 2
    handle = window.side.findChild(Splitter).handle(1)
    for edge in (*edges, handle):
        assert min(edge.width(), edge.height()) >= 24
    before = (window.side_dock.width(), window.season_dock.height())
    for edge, way in zip(edges, (QPoint(-40, 0), QPoint(0, -30)), strict=True):
        middle = edge.rect().center()
        assert window.childAt(edge.mapTo(window, middle)) is edge
        QTest.mousePress(edge, Qt.MouseButton.LeftButton, pos=middle)
        move_pressed(edge, middle + way)
        QTest.mouseRelease(edge, Qt.MouseButton.LeftButton, pos=middle + way)
        QApplication.processEvents()
    assert window.side_dock.width() == before[0] + 40
    assert window.season_dock.height() == before[1] + 30


def test_edges_between_panels_are_moved_by_keyboard_too(window):
    side, season = window.side_dock, window.season_dock
    sizes = [(side.width(), season.height())]
    for command in ("wider side", "narrower side", "taller season", "lower season"):
        action = window.actions_[command]
        assert action.shortcut().toString()
        assert action in window.menus["View"].actions()
        action.trigger()
        QApplication.processEvents()
        sizes.append((side.width(), season.height()))
    (wide, high), *after = sizes
    assert after == [(wide + 32, high), (wide, high), (wide, high + 32), (wide, high)]
    assert window.status.currentMessage() == f"Season: {round(100 * high / window.height())}% of the window"
    assert {edge.accessibleName() for edge in window.findChildren(DockEdge)} == {
        "Edge of Beside the sheet", "Edge of Season"}


def test_sizes_of_panels_are_kept_for_the_next_session(window, make_window, tmp_path):
    for command in ("wider side", "wider side", "taller season"):
        window.actions_[command].trigger()
        QApplication.processEvents()
    sizes = (window.side_dock.width(), window.season_dock.height())
    window.questions.save_changes = lambda name: "discard"
    window.close()
    window.settings.sync()
    (tmp_path / "window1.ini").write_bytes((tmp_path / "window0.ini").read_bytes())
    again = make_window(YARD)
    QApplication.processEvents()
    assert (again.side_dock.width(), again.season_dock.height()) == sizes


def move_pressed(widget, place):
    spot, button = QPointF(place), Qt.MouseButton
    event = QMouseEvent(
        QEvent.Type.MouseMove, spot, QPointF(widget.mapToGlobal(place)), button.NoButton, button.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    QApplication.sendEvent(widget, event)


def test_menu_lines_can_be_hit(window):
    for menu in window.menus.values():
        menu.ensurePolished()
        for action in menu.actions():
            assert action.isSeparator() or menu.actionGeometry(action).height() >= 24, action.text()


def test_grips_on_the_sheet_answer_within_the_target():
    assert 2 * HIT_PIXELS >= 24


# Contrast of the style sheet, read from the sheet itself

RULE = re.compile(r"([^{}]+)\{([^{}]*)\}")
GROUNDS = ("room", "panel", "card", "button")


def inks_on_grounds():
    """Each rule's ink with the ground it names, or with every ground it may lie on."""
    text = re.sub(r"/\*.*?\*/", "", resource("window.qss").read_text(encoding="utf-8"), flags=re.DOTALL)
    for selector, body in RULE.findall(re.sub(r"\$\{(\w+)\}", r"\1", text)):
        ink = re.search(r"(?:^|[\s;])color: \$(\w+)", body)
        ground = re.search(r"background: \$(\w+)", body)
        if ink and ":disabled" not in selector:
            for under in [ground.group(1)] if ground else GROUNDS:
                yield selector.strip(), ink.group(1), under


@pytest.mark.parametrize("scheme", [LIGHT, DARK], ids=["light", "dark"])
def test_every_ink_of_the_style_sheet_can_be_read_on_its_ground(scheme):
    pairs = list(inks_on_grounds())
    assert len(pairs) > 20
    faint = [p for p in pairs if contrast(getattr(scheme, p[1]), getattr(scheme, p[2])) < 4.5]
    assert faint == []


# Large text

@pytest.fixture
def large(qapp, tmp_path, make_window, qtbot, monkeypatch):
    """Windows with larger text, as the system or the choice in the menu asks for it."""

    def make(percent, size=(1280, 764)):
        theme = Theme(QSettings(str(tmp_path / "large.ini"), QSettings.Format.IniFormat))
        theme.choose_text_size(percent)
        set_text_scale(theme.text_size)
        theme.apply()
        window = make_window(YARD, size=size)
        return ready(window, qtbot)

    yield make
    set_text_scale("100")


@pytest.mark.parametrize("percent", ["150", "200"])
def test_nothing_is_cut_in_the_window_with_large_text(large, qtbot, percent):
    window = large(percent)
    assert window.font().pixelSize() == scaled(13)
    assert scaled(100) == int(percent)
    for state in STATES:
        show(window, state, qtbot)
        assert cut_text(window) == [], state
    assert window.canvas.height() >= 240


@pytest.mark.parametrize("percent", ["150", "200"])
def test_nothing_is_cut_in_the_boxes_with_large_text(large, qtbot, percent):
    window = large(percent)
    for command in BOXES:
        box = box_of(window, command, qtbot)
        assert cut_text(box) == [], command
        assert too_small(box) == [], command
        box.close()


def test_nothing_is_cut_at_the_usual_size(window, qtbot):
    for state in STATES:
        show(window, state, qtbot)
        assert cut_text(window) == [], state


def test_text_follows_the_system_font_and_the_choice_wins(qapp, tmp_path, monkeypatch):
    settings = QSettings(str(tmp_path / "text.ini"), QSettings.Format.IniFormat)
    face = qapp.font()
    face.setPixelSize(30)
    monkeypatch.setattr("yardplan.window.theme.QFontDatabase.systemFont", lambda _which: face)
    try:
        Theme(settings)
        assert text_scale() == 2.0
        assert scaled(13) == 26
        Theme(settings).choose_text_size("125")
        assert Theme(settings).text_size == "125"
        assert text_scale() == 1.25
        settings.setValue("window/text", "huge")
        assert Theme(settings).text_size == "system"
        assert TEXT_SIZES[0] == "system"
    finally:
        set_text_scale("100")


def test_text_on_the_sheet_grows_too(large):
    window = large("150")
    assert window.canvas.scene.plan_view(window.canvas.view, 1.0).unit == 1.5
    assert window.minimumSizeHint().width() <= QSize(1280, 764).width()


def test_the_size_of_text_is_chosen_in_the_menu(window):
    trigger(window, "text 150")
    assert window.theme.text_size == "150"
    assert "started again" in window.status.currentMessage()
    window.panel_commands.text_sizes.aboutToShow.emit()
    assert window.actions_["text 150"].isChecked()
