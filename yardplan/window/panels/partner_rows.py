"""Varieties that would set fruit on a plant, as rows: verdict, days together, what is set in turn."""

from __future__ import annotations

from typing import Any

from attrs import frozen
from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRect,
    QRectF,
    QSize,
    Qt,
)
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from yardplan.arrange.partner_plan import plan_for
from yardplan.arrange.partner_room import fitting
from yardplan.arrange.partners import Suggestion, partners_for
from yardplan.arrange.ripening_beside import ripening_beside
from yardplan.checks.survey import Survey, survey_of
from yardplan.language import later, tr, tr_n
from yardplan.window.panels.parts import Sign, draw_sign
from yardplan.window.theme import BASE, SMALL, TARGET, colours_now, font, scaled
from yardplan.yard import edits
from yardplan.yard.planting import Planting, PlantKey
from yardplan.yard.yard import Yard

ROW_ROLE = int(Qt.ItemDataRole.UserRole) + 1
#: Varieties listed for one plant.
LISTED = 20
_HEIGHT = 61
_Index = QModelIndex | QPersistentModelIndex

_SIGNS: dict[str, Sign] = {"yes": "good", "partly": "caution", "not proved": "unknown", "no": "conflict"}
_SETS = {
    "yes": later("sets it fully"),
    "partly": later("sets it partly"),
    "not proved": later("probably sets it"),
    "no": later("does not set it"),
}
_BACK = {
    "yes": later("is set in turn"),
    "partly": later("is partly set in turn"),
    "not proved": later("is probably set in turn"),
    "no": later("needs a partner of its own"),
}


@frozen
class PartnerRow:
    """A suggestion, the thing beside which it is to be planted, and for whom where several gain.

    `near` the ids it must be in reach of; `room` False where no clear ground is left for it there;
    `ripens` when it ripens, beside the plant it sets.
    """

    suggestion: Suggestion
    anchor: str
    serves: str = ""
    near: tuple[str, ...] = ()
    room: bool = True
    ripens: str = ""

    @property
    def sign(self) -> Sign:
        """The verdict as a sign."""
        return _SIGNS[self.suggestion.verdict]

    @property
    def facts(self) -> str:
        """One line of what decides."""
        told = self.suggestion
        days = "" if told.overlap is None else (
            tr_n("{n} day together", "{n} days together", round(told.overlap))
        )
        back = tr("crops alone") if told.alone else tr(_BACK[told.back])
        return " · ".join(part for part in (self.serves, tr(_SETS[told.verdict]), days, back) if part)

    @property
    def spoken(self) -> str:
        """The row in words, for screen readers."""
        key = self.suggestion.key
        told = ", ".join(part for part in (self.facts.replace(" · ", ", "), self.ripens) if part)
        return f"{key.cultivar}, {tr(key.crop)}: {told}"


def with_plant(yard: Yard, key: PlantKey) -> tuple[Yard, str]:
    """The yard with one plant more in mid-lot: to ask what would set it before it has a place."""
    points = yard.lot or ((0.0, 0.0),)
    middle = (sum(x for x, _ in points) / len(points), sum(y for _, y in points) / len(points))
    plan_key = edits.next_key(yard, "Q")
    return edits.add(yard, Planting(id=plan_key, plant=key, place=middle)), plan_key


def rows_for(survey: Survey, key: PlantKey, thing_id: str | None) -> list[PartnerRow]:
    """Ranked partners for a plant on the plan, or for one that is only in hand."""
    near = () if thing_id is None else (thing_id,)
    if thing_id is None:
        yard, thing_id = with_plant(survey.yard, key)
        survey = survey_of(yard, survey.catalogue, survey.stand.year)
    found = partners_for(survey, thing_id, limit=LISTED, fits=fitting(survey, near))
    room = bool(found)
    found = found or partners_for(survey, thing_id, limit=LISTED)
    return [
        PartnerRow(
            each, thing_id, near=near, room=room, ripens=ripening_beside(survey, each.key, thing_id).words,
        )
        for each in found
    ]


def rows_for_all(survey: Survey) -> tuple[list[PartnerRow], tuple[str, ...]]:
    """The fewest plants to add so that every plant crops, and the ids that nothing known here serves."""
    plan = plan_for(survey, fits=fitting(survey))
    rows = [
        PartnerRow(
            each.suggestion,
            each.anchor,
            tr("for {plants}", plants=", ".join(each.serves)) if each.serves else "",
            # What is added for the sake of another addition stands beside the same plant.
            tuple(one for one in each.serves if survey.yard.find(one) is not None) or (each.anchor,),
            ripens=ripening_beside(survey, each.suggestion.key, each.anchor).words,
        )
        for each in plan.additions
    ]
    return rows, plan.left


class PartnerRows(QAbstractListModel):
    """The suggestions listed."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: list[PartnerRow] = []

    def show_rows(self, rows: list[PartnerRow]) -> None:
        """List these."""
        self.beginResetModel()
        self._rows = rows
        self.endResetModel()

    def row(self, number: int) -> PartnerRow:
        """The suggestion in that row."""
        return self._rows[number]

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own signature
        return 0 if parent.isValid() else len(self._rows)

    def data(self, index: _Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        if not index.isValid():
            return None
        row = self._rows[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return row.spoken
        return row if role == ROW_ROLE else None


class PartnerCard(QStyledItemDelegate):
    """Draws a suggestion on three lines."""

    def __init__(self, view: QListView) -> None:
        super().__init__(view)
        self._view = view

    def sizeHint(self, _option: QStyleOptionViewItem, _index: _Index) -> QSize:
        return QSize(120, scaled(max(_HEIGHT, TARGET)))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        row: PartnerRow = index.data(ROW_ROLE)
        c, box = colours_now(), option.rect
        painter.save()
        if option.state & (QStyle.StateFlag.State_Selected | QStyle.StateFlag.State_MouseOver):
            chosen = bool(option.state & QStyle.StateFlag.State_Selected)
            painter.fillRect(box, QColor(c.chosen if chosen else c.panel))
        painter.setPen(QColor(c.rule))
        painter.drawLine(box.bottomLeft(), box.bottomRight())
        draw_sign(painter, QRectF(box.left() + 8, box.top() + scaled(7), scaled(12), scaled(12)), row.sign, c)
        inner = box.adjusted(14 + scaled(12), 4, -8, -3)
        key = row.suggestion.key
        _words(painter, inner, key.cultivar, QColor(c.ink), BASE, bold=True)
        right = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop)
        painter.setFont(font(SMALL))
        painter.setPen(QColor(c.muted))
        painter.drawText(inner, right, tr(key.crop))
        for down, line in ((19, row.facts), (36, row.ripens)):
            _words(painter, inner.adjusted(0, scaled(down), 0, 0), line, QColor(c.muted), SMALL, bold=False)
        if option.state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(QColor(c.focus), 2))
            painter.drawRect(box.adjusted(1, 1, -1, -1))
        painter.restore()


def _words(painter: QPainter, box: QRect, text: str, colour: QColor, size: int, *, bold: bool) -> None:
    face = font(size, bold=bold)
    painter.setFont(face)
    painter.setPen(colour)
    cut = QFontMetrics(face).elidedText(text, Qt.TextElideMode.ElideRight, box.width())
    painter.drawText(box, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop), cut)
