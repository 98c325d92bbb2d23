"""What a small card says of the thing under a resting pointer: its name, its size, what is found about it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from yardplan.units import format_coarse
from yardplan.window.open_yard import OpenYard

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
    if key not in names:
        return ""
    lines = [names[key].capitalize() if key == "lot" else names[key]]
    lines += _size(open_yard, key)
    found = [finding for finding in open_yard.findings if key in finding.things]
    lines += [f"{f.weight.value}: {say(f, names, open_yard.units).title}" for f in found[:_FINDINGS]]
    if len(found) > _FINDINGS:
        lines.append(f"and {len(found) - _FINDINGS} more in the list")
    return "\n".join(line for line in lines if line)


def _size(open_yard: OpenYard, key: str) -> list[str]:
    """Width and height of a plant or row at the year shown, and when it is grown."""
    stand, units = open_yard.stand, open_yard.units
    everything: tuple[Standing | StandingRow, ...] = (*stand.plants, *stand.rows)
    for grown in everything:
        if grown.id == key:
            size, full = grown.size, grown.mature
            words = f"{format_coarse(size.spread, units)} wide, {format_coarse(size.height, units)} tall"
            if open_yard.year is None or size == full:
                return [f"about {words}"]
            grown_up = f"{format_coarse(full.spread, units)} wide, {format_coarse(full.height, units)} tall"
            return [f"about {words} in year {open_yard.year}; {grown_up} at full size"]
    return []
