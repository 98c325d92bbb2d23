"""The lasting name of a yard: calendars know its events by it, so that a second import doubles nothing."""

from __future__ import annotations

import uuid

from attrs import evolve

from yardplan.language import tr
from yardplan.yard.site import Site
from yardplan.yard.yard import Yard

#: Names are made within this space, so that two programs never make the same one.
_SPACE = uuid.uuid5(uuid.NAMESPACE_URL, "urn:yardplan:yard")


def lasting_name(yard: Yard) -> str:
    """The yard's own name for good; for a file from before there was one, made from its name and place.

    From the next save on the file keeps it, and the yard may be called otherwise or move on the disk.
    """
    if yard.uid:
        return yard.uid
    site = yard.site
    return uuid.uuid5(_SPACE, f"{site.name}/{site.latitude:.4f}/{site.longitude:.4f}").hex


def named(yard: Yard) -> Yard:
    """The yard with its lasting name written into it."""
    return yard if yard.uid else evolve(yard, uid=lasting_name(yard))


def untitled() -> Yard:
    """An empty yard that is begun, with a name in the language shown until it is given one."""
    return begun(Yard(site=Site(name=tr("Untitled yard"))))


def begun(yard: Yard) -> Yard:
    """The yard as the beginning of another one, under a lasting name of its own."""
    return evolve(yard, uid=uuid.uuid4().hex)


def renewed(yard: Yard, uid: str) -> Yard:
    """The yard under the lasting name `uid`."""
    return evolve(yard, uid=uid)
