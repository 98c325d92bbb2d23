"""What a small card says of the thing under a resting pointer: its name, its size, what is found about it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from yardplan.language import tr, tr_n
from yardplan.units import format_coarse
from yardplan.window.open_yard import OpenYard
from yardplan.yard.ground import Picture

if TYPE_CHECKING:
    from PySide6.QtGui import QHelpEvent
    from PySide6.QtWidgets import QWidget

    from yardplan.plants.stand import Standing, StandingRow

#: So many findings are named; the list beside the sheet holds them all.
_FINDINGS = 3


def show_card(sheet: QWidget, open_yard: OpenYard, event: QHelpEvent, key: str | None) -> None:
    """Show the card of a thing where the pointer rests; with None take away the one that shows."""
    from PySide6.QtWidgets import QToolTip

    QToolTip.showText(event.globalPos(), "" if key is None else hover_text(open_yard, key), sheet)


def hover_text(open_yard: OpenYard, key: str) -> str:
    """The lines of the card; empty for what is not there."""
    from yardplan.checks.wording import names_of, say

    yard = open_yard.shown_yard
    names = names_of(yard)
    if key not in names or isinstance(yard.find(key), Picture):
        # A picture lies under everything: a card on every bare spot of it would be in the way.
        return ""
    lines = [names[key][:1].upper() + names[key][1:] if key == "lot" else names[key]]
    lines += _size(open_yard, key)
    found = [finding for finding in open_yard.findings if key in finding.things]
    lines += [f"{tr(f.weight.value)}: {say(f, names, open_yard.units).title}" for f in found[:_FINDINGS]]
    if len(found) > _FINDINGS:
        more = len(found) - _FINDINGS
        lines.append(tr_n("and {n} more in the list", "and {n} more in the list", more))
    return "\n".join(line for line in lines if line)


def _size(open_yard: OpenYard, key: str) -> list[str]:
    """Width and height of a plant or row at the year shown, and when it is grown."""
    stand, units = open_yard.stand, open_yard.units
    everything: tuple[Standing | StandingRow, ...] = (*stand.plants, *stand.rows)
    for grown in everything:
        if grown.id == key:
            size, full = grown.size, grown.mature
            wide, tall = format_coarse(size.spread, units), format_coarse(size.height, units)
            if open_yard.year is None or size == full:
                return [tr("about {wide} wide, {tall} tall", wide=wide, tall=tall)]
            return [
                tr(
                    "about {wide} wide, {tall} tall in year {year}; "
                "{full_wide} wide, {full_tall} tall at full size",
                    wide=wide,
                    tall=tall,
                    year=open_yard.year,
                    full_wide=format_coarse(full.spread, units),
                    full_tall=format_coarse(full.height, units),
                )
            ]
    return []
