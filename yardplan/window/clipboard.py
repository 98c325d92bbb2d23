"""Copy and paste of things within and between yards, as text that is read back with the checks of a file."""

from __future__ import annotations

from attrs import evolve
from PySide6.QtCore import QMimeData
from PySide6.QtGui import QGuiApplication

from yardplan.files.errors import YardFileError
from yardplan.language import tr
from yardplan.window.open_yard import OpenYard
from yardplan.window.tools.naming import names_of
from yardplan.yard import edits
from yardplan.yard.ground import Point
from yardplan.yard.groups import whole_groups
from yardplan.yard.yard import Thing, Yard

#: Things on the clipboard: a yard file that holds only them.
MIME = "application/x-yardplan-yard+json"
#: Pasted things are put down so far to the right and below, metres.
BESIDE: Point = (1.0, -1.0)


def _only(yard: Yard, ids: frozenset[str]) -> Yard:
    chosen = edits.together(yard, ids)
    own = Yard(site=yard.site, own_cultivars=yard.own_cultivars)
    own = edits.add(own, *(thing for thing in yard.things() if thing.id in chosen))
    return evolve(own, groups=whole_groups(yard, chosen))


def copy(open_yard: OpenYard) -> str:
    """Put the selection on the clipboard; returns what to say."""
    from yardplan.files.writing import yard_to_json

    yard, ids = open_yard.yard, open_yard.selection & open_yard.yard.ids()
    if not ids:
        return ""
    text = yard_to_json(_only(yard, ids))
    data = QMimeData()
    data.setData(MIME, text.encode("utf-8"))
    data.setText(_as_lines(yard, ids))
    QGuiApplication.clipboard().setMimeData(data)
    return tr("{things} copied", things=names_of(yard, ids))


def _as_lines(yard: Yard, ids: frozenset[str]) -> str:
    """For other programs: one line a thing with its places in metres."""
    return "\n".join(_as_line(thing) for thing in yard.things() if thing.id in ids)


def _as_line(thing: Thing) -> str:
    places = " ".join(f"({x:.2f}; {y:.2f})" for x, y in edits.points_of(thing))
    plant = getattr(thing, "plant", None) or getattr(thing, "name", "") or getattr(thing, "text", "")
    return f"{thing.id}\t{plant}\t{places}"


def can_paste() -> bool:
    """True when the clipboard holds things of a yard."""
    data = QGuiApplication.clipboard().mimeData()
    return data is not None and data.hasFormat(MIME)


def paste(open_yard: OpenYard) -> str:
    """Add what is on the clipboard, beside where it was, selected; returns what to say.

    Own varieties that the plants need come along. Raises YardFileError when the clipboard holds damaged text.
    """
    from yardplan.files.reading import yard_from_json

    if not can_paste():
        return ""
    data = QGuiApplication.clipboard().mimeData().data(MIME).data()
    try:
        held = yard_from_json(bytes(data).decode("utf-8"))
    except UnicodeDecodeError:
        raise YardFileError(tr("the clipboard holds damaged text")) from None
    yard, keys = edits.paste(open_yard.yard, held.things(), BESIDE, held.groups)
    yard = _with_own(yard, held)
    open_yard.commit(tr("Paste {things}", things=names_of(yard, keys)), yard, selection=keys)
    return tr("{things} pasted", things=names_of(yard, keys))


def _with_own(yard: Yard, held: Yard) -> Yard:
    known = {(own.get("crop"), own.get("name")) for own in yard.own_cultivars}
    new = tuple(own for own in held.own_cultivars if (own.get("crop"), own.get("name")) not in known)
    return evolve(yard, own_cultivars=(*yard.own_cultivars, *new)) if new else yard
