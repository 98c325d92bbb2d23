"""F1 opens the page for what has the focus; the window of the handbook by mouse and keys."""

import re

import pytest
from PySide6.QtCore import Qt, QTimer, QUrl
from PySide6.QtWidgets import QApplication, QDialog
from support.builders import plant, yard_of
from support.classes import made_of
from support.widgets import too_small, unnamed
from support.window_hands import press_key, trigger

from yardplan.window.handbook.key_table import filled, keys_of
from yardplan.window.handbook.pages import pages, slug
from yardplan.window.handbook.topics import PANEL_PAGES, TOOL_PAGES, topic_of
from yardplan.window.theme import scaled, set_text_scale
from yardplan.window.tools.toolbox import TOOLS

#: Boxes that are never shown themselves: others are made of them.
BASES = {"BesideBox", "TrialBox"}
YARD = yard_of(plant("A1", "apple:Akane", (5, 5)), plant("A2", "apple:Topaz", (15, 5)))


@pytest.fixture
def window(make_window):
    return make_window(YARD)


def exists(address):
    name, _, section = address.partition("#")
    page = pages().get(name)
    return page is not None and (not section or section in {slug(s.heading) for s in page.sections()})


def shown(window):
    return window.help.handbook._shown


def test_every_tool_has_a_page():
    assert {kind.icon for kind in TOOLS} <= set(TOOL_PAGES)
    assert [address for address in TOOL_PAGES.values() if not exists(address)] == []


def test_every_panel_and_box_of_the_program_has_a_page(window):
    boxes = {kind.__name__ for kind in made_of(QDialog)}
    tabs = window.side.tabs
    panels = {type(tabs.widget(number)).__name__ for number in range(tabs.count())}
    assert boxes - BASES | panels <= set(PANEL_PAGES)
    assert [address for address in PANEL_PAGES.values() if not exists(address)] == []


def test_f1_on_the_sheet_is_about_the_chosen_tool(window):
    for kind in TOOLS:
        trigger(window, f"tool {kind.icon}")
        window.canvas.setFocus()
        assert topic_of(QApplication.focusWidget()) == TOOL_PAGES[kind.icon]


def test_f1_by_key_opens_the_page_and_again_another(window, qtbot):
    trigger(window, "tool building")
    window.canvas.setFocus()
    press_key(window.canvas, Qt.Key.Key_F1)
    assert shown(window).isVisible()
    assert shown(window).address == "structures#buildings"
    window.activateWindow()
    qtbot.waitUntil(lambda: QApplication.activeWindow() is window)
    window.show_choice()
    press_key(window.side.choose.search, Qt.Key.Key_F1)
    assert shown(window).address == "plants"


def test_panels_have_their_pages(window):
    for focus, page in [
        (window.side.fields.grid, "plants#fields"),
        (window.side.plants.table, "plants#everything-on-the-plan"),
        (window.side.partners.view, "partners"), (window.side.findings.cards, "findings"),
        (window.light_room.panel, "light"), (window.season_dock.widget().chart, "season"),
        (window.season_dock.widget().moment.hour, "light#shadows"),
        (window.year.slider, "season#growth"),
        (window.start_panel.form.place.line, "place"), (window.start_panel.begin, "start"),
        (window.tools.buttons[0], "drawing"), (None, "index"),
    ]:
        assert topic_of(focus) == page


def test_f1_in_a_box_opens_its_page(window, qtbot):
    for command, page in [
        ("sheets", "printing"), ("shopping", "buying"), ("site card", "place"),
        ("local rules", "findings#local-rules"),
    ]:
        trigger(window, command)
        qtbot.waitUntil(lambda: QApplication.activeWindow() not in (window, None))
        box = QApplication.activeWindow()
        press_key(box.focusWidget() or box, Qt.Key.Key_F1)
        assert shown(window).address == page
        box.close()
        shown(window).close()


def test_a_box_that_blocks_the_others_gets_a_handbook_of_its_own(window, qtbot):
    seen = []

    def ask():
        finder = QApplication.activeModalWidget()
        qtbot.waitUntil(lambda: QApplication.activeWindow() is finder)
        press_key(finder.line, Qt.Key.Key_F1)
        mine = [w for w in finder.findChildren(QDialog) if w.isVisible()]
        seen.extend(w.address for w in mine)
        for each in (*mine, finder):
            each.close()

    QTimer.singleShot(0, ask)
    trigger(window, "find command")
    assert seen == ["keys#find-a-command"]


@pytest.fixture
def book(window):
    return window.help.handbook.show_page("index")


def test_every_page_shows_with_its_pictures_and_no_wider_than_the_window(book):
    for name, page in book.pages.items():
        book.go(name)
        assert book.view.toPlainText().startswith(page.title)
        wide = book.view.document().idealWidth()
        assert wide <= book.view.viewport().width() + 1, name


@pytest.mark.parametrize(("percent", "wide"), [("100", 1240), ("100", 700), ("200", 1240)])
def test_there_is_no_gap_under_a_picture(book, percent, wide):
    set_text_scale(percent)
    try:
        book.resize(wide, 720)
        seen = 0
        for name in book.pages:
            book.go(name)
            gaps = list(gaps_under_pictures(book.view.document()))
            seen += len(gaps)
            assert all(0 <= gap <= scaled(18) for gap in gaps), (name, gaps)
        assert seen > 3
    finally:
        set_text_scale("100")


def gaps_under_pictures(document):
    """How far below each picture the next paragraph begins, pixels."""
    block, layout = document.begin(), document.documentLayout()
    while block.isValid():
        walk = block.begin()
        while not walk.atEnd():
            look = walk.fragment().charFormat()
            if look.isImageFormat():
                lower = layout.blockBoundingRect(block).top() + look.toImageFormat().height()
                yield layout.blockBoundingRect(block.next()).top() - lower
            walk += 1
        block = block.next()


def test_headings_stand_out_by_their_size(book):
    book.go("drawing")
    sizes: dict[int, set[int]] = {}
    block = book.view.document().begin()
    while block.isValid():
        if block.text().strip():
            level = block.blockFormat().headingLevel()
            sizes.setdefault(level, set()).add(block.begin().fragment().charFormat().font().pixelSize())
        block = block.next()
    assert max(sizes[0]) < min(sizes[2]) < min(sizes[1])


def test_links_back_and_forward(book):
    book._follow(QUrl("spacing.md#clear-ground"))
    assert book.address == "spacing#clear-ground"
    assert book.view.verticalScrollBar().value() > 0
    book._follow(QUrl("partners.md"))
    book.back.click()
    assert book.address == "spacing#clear-ground"
    book.back.click()
    assert book.address == "index"
    assert not book.back.isEnabled()
    book.forward.click()
    assert book.address == "spacing#clear-ground"
    book.contents.click()
    assert book.address == "index"


def test_search_lists_places_marks_the_words_and_enter_opens_the_first(book, qtbot):
    press_key(book, Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
    assert book.search.hasFocus()
    qtbot.keyClicks(book.search, "chill")
    assert book.list.count() > 1
    assert "place" in book.said.text()
    press_key(book.search, Qt.Key.Key_Return)
    assert book.address == book.list.item(0).data(Qt.ItemDataRole.UserRole)
    assert book.view.extraSelections()
    book.search.setText("xyzzy")
    assert book.list.count() == 0
    assert "Nothing found" in book.said.text()
    book.search.clear()
    assert book.list.count() == len(book.pages)


def test_the_page_of_keys_tells_every_command_with_its_keys(window, book):
    book.go("keys")
    text = book.view.toPlainText()
    for action in window.actions_.all():
        if action.objectName() not in ("undo", "redo"):
            assert action.text().replace("&", "").rstrip("…") in text, action.objectName()
    assert "Ctrl+Shift+G" in text
    assert "{every command}" not in text


def test_keys_in_the_pages_are_those_of_the_program(window, book):
    """Pages name commands, never keys that a command may lose: `**{key save}**`."""
    raw = {name: page.text for name, page in pages().items()}
    named = {key for text in raw.values() for key in re.findall(r"\{key ([^}]+)\}", text)}
    assert {"save", "undo", "tool lot", "light overlay"} <= named
    assert [name for name in named if not keys_of(window.actions_[name])] == []
    assert [name for name, page in book.pages.items() if "{" in page.text] == []
    assert "Ctrl+S" in book.pages["start"].text
    # What has no command of its own: held keys, gestures, the keys of the sheet.
    by_hand = {"Ctrl+drag", "Ctrl+Enter", "Ctrl+wheel", "Shift+click", "Shift+Tab", "Shift+F10"}
    combination = re.compile(r"\*\*((?:Ctrl|Shift|Alt)\+[^*]+|F\d+)\*\*")
    assert {keys for text in raw.values() for keys in combination.findall(text)} <= by_hand


def test_it_can_be_read_spoken_and_hit_and_closed_by_esc(book):
    assert unnamed(book) == []
    assert too_small(book) == []
    press_key(book, Qt.Key.Key_Escape)
    assert not book.isVisible()


def test_german_pages_name_commands_that_are_there(window):
    for page in pages(language="de").values():
        assert "{" not in filled(page.text, window.actions_, window.menus), page.name


def test_the_handbook_speaks_the_language_of_the_window(window):
    window.settings.setValue("language", "de")
    book = window.help.handbook.show_page("structures#gates")
    assert book.view.toPlainText().startswith("Gebäude")
    assert book.view.textCursor().block().text() == "Tore"
