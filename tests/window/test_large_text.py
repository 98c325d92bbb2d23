"""Text at 200 % in the smallest window: what is clicked grows with it, nothing is scrolled sideways."""

import pytest
from PySide6.QtCore import QPointF, QRect, QSettings
from PySide6.QtWidgets import (
    QApplication,
    QScrollArea,
    QStyle,
    QStyleOptionButton,
    QStyleOptionViewItem,
    QToolButton,
)
from support.builders import plant, yard_of

from yardplan.drawing.furniture import bar_length, longest_bar
from yardplan.drawing.lettering import Type, text_size
from yardplan.window.dialogs.shopping_box import ShoppingBox
from yardplan.window.dialogs.variants_box import VariantsBox
from yardplan.window.panels.care_card import tick_box
from yardplan.window.panels.moment import MomentBar
from yardplan.window.panels.parts import Check
from yardplan.window.start_room import furniture_of
from yardplan.window.theme import Theme, set_text_scale

YARD = yard_of(
    plant("A1", "apple:Akane", (5, 5)), plant("A2", "apple:Akane", (6, 5)),
    plant("P1", "european pear:Bartlett", (15, 5)),
)


@pytest.fixture
def sized(qapp, tmp_path, make_window):
    """A window at a size of text; the usual size comes back when the test ends."""

    def make(percent, yard=YARD, size=(1280, 764)):
        theme = Theme(QSettings(str(tmp_path / "sized.ini"), QSettings.Format.IniFormat))
        set_text_scale(percent)
        theme.apply()
        window = make_window(yard, size=size)
        QApplication.processEvents()
        return window

    yield make
    set_text_scale("100")


def indicator(box):
    option = QStyleOptionButton()
    box.initStyleOption(option)
    return box.style().subElementRect(QStyle.SubElement.SE_CheckBoxIndicator, option, box)


@pytest.mark.parametrize(("percent", "side"), [("100", 14), ("200", 28)])
def test_boxes_to_tick_grow_with_the_text(sized, qtbot, percent, side):
    window = sized(percent)
    check = Check("Mark them")
    qtbot.addWidget(check)
    check.show()
    assert indicator(check).width() in range(side, side + 3)
    assert tick_box(QRect(0, 0, 200, 80)).width() == round(16 * side / 14)
    table = window.side.plants.table
    assert table.iconSize().width() == side


def test_the_window_of_german_words_fits_the_smallest_screen_and_keeps_all_menus_and_tabs(german, sized):
    window = sized("200")
    assert window.width() == 1280
    bar = window.menuBar()
    last = bar.actionGeometry(bar.actions()[-1])
    assert 0 < last.right() <= bar.width() - window.year.width()
    assert window.year.geometry().right() <= bar.width()
    for number in range(window.side.tabs.count()):
        window.side.tabs.setCurrentIndex(number)
        QApplication.processEvents()
        tabs = window.side.tabs.tabBar()
        assert not [part for part in tabs.findChildren(QToolButton) if part.isVisible()], number
        assert tabs.tabRect(tabs.count() - 1).right() <= tabs.width()


def test_tabs_say_all_their_words_where_there_is_room(sized):
    window = sized("100")
    tabs = window.side.tabs
    words = [tabs.tabText(number) for number in range(tabs.count())]
    assert words == ["Choose", "Fields", "On the plan", "Partners", "Light"]
    window.year.refresh()
    assert window.year.text.text() == "Growth: full size"


def test_the_chart_of_a_spot_grows_and_breaks_its_lines(sized, qtbot):
    window = sized("200")
    panel = window.light_room.panel
    window.side.tabs.setCurrentWidget(panel)
    window.light_room.spot.look((8.0, 8.0), keep=True)
    qtbot.waitUntil(lambda: panel.spot.chart.chart is not None, timeout=20_000)
    chart = panel.spot.chart
    qtbot.waitUntil(lambda: chart.height() >= chart.sizeHint().height())
    assert chart._view().unit == 2.0
    assert chart.sizeHint().height() > 400
    assert panel.widget().width() <= panel.viewport().width()
    assert panel.spot.point.y() > panel.spot.place.y()


def test_the_season_shows_rows_and_the_day_has_the_heading_s_room(sized):
    window = sized("200")
    strip = window.season_dock.widget()
    assert len(strip.chart.layout_now().seen) >= 2
    assert not strip.heading.isVisible()
    moment = strip.findChild(MomentBar)
    assert moment.geometry().right() <= strip.width()


@pytest.mark.parametrize("percent", ["100", "200"])
@pytest.mark.parametrize("size", [(1280, 764), (1920, 1044)])
def test_the_start_panel_covers_neither_title_block_nor_scale_bar(german, sized, percent, size):
    window = sized(percent, None, size)
    window.help.first_run()
    QApplication.processEvents()
    panel = window.start_panel
    assert panel.isVisible()
    for _ in range(2):
        QApplication.processEvents()
        field, (north, *foot) = furniture_of(window.canvas)
        lies = panel.geometry().toRectF()
        assert foot
        assert field.contains(lies)
        assert not [box for box in foot if box.intersects(lies)]
        assert lies.contains(north) or not lies.intersects(north) or lies.width() > field.width() - 20
        assert lies.height() >= 120
        inner = panel.findChild(QScrollArea)
        assert inner.widget().minimumSizeHint().width() <= inner.viewport().width()
        window.help.guide.leave()
    assert (window.width(), window.height()) == size


def test_the_season_gives_way_to_the_start_panel_in_a_low_window_and_comes_back(sized):
    window = sized("200", None)
    season = window.actions_["season"]
    assert not window.season_dock.isVisible()
    assert not season.isChecked()
    window.start_panel.put_away()
    assert window.season_dock.isVisible()
    assert season.isChecked()
    window.open_yard.new()
    assert not window.season_dock.isVisible()
    season.trigger()
    window.open_yard.new(YARD)
    assert window.season_dock.isVisible()
    assert season.isChecked()


def test_the_scale_bar_and_its_figures_stay_within_a_narrow_sheet(sized):
    window = sized("200", None)
    field, (_north, bar, *_title) = furniture_of(window.canvas)
    view = window.canvas.scene.plan_view(window.canvas.view, 1.0)
    left = QPointF(field.left() + 22, bar.bottom())
    for system in ("metric", "imperial"):
        length = bar_length(view, system, longest_bar(view, left))
        right = left.x() + length * view.scale
        assert right + text_size("000 ft", Type(11.0), view.unit)[0] / 2 <= field.right()


@pytest.mark.parametrize(("percent", "side"), [("100", 14), ("200", 28)])
def test_boxes_in_lists_and_rows_of_tables_grow_with_the_text(sized, percent, side):
    window = sized(percent)
    made = VariantsBox(window.open_yard, lambda _question, _text: None, window)
    made.show()
    option = QStyleOptionViewItem()
    option.initFrom(made.list)
    option.features |= QStyleOptionViewItem.ViewItemFeature.HasCheckIndicator
    box = made.list.style().subElementRect(
        QStyle.SubElement.SE_ItemViewItemCheckIndicator, option, made.list)
    assert box.width() in range(side, side + 3)
    made.close()
    shopping = ShoppingBox(window.open_yard, window)
    assert shopping.table.verticalHeader().defaultSectionSize() >= 24 * side / 14
    shopping.close()


def test_every_menu_fits_the_smallest_screen_in_one_column(german, sized):
    window = sized("200")
    for menu in window.menus.values():
        menu.aboutToShow.emit()
        menu.ensurePolished()
        shown = [menu.actionGeometry(action) for action in menu.actions() if action.isVisible()]
        assert max(box.right() for box in shown) <= 1280, menu.title()
        assert len({box.left() for box in shown}) == 1, menu.title()
        # What is taller is scrolled up and down.
        assert menu.style().styleHint(QStyle.StyleHint.SH_Menu_Scrollable, None, menu) == 1
        assert min(box.height() for box in shown if box.height() > 10) >= 24
