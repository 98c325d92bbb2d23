"""The steps of the pollination test, but for genetics and distance: family, clone, donor pollen, bloom."""

from __future__ import annotations

from collections.abc import Mapping

from yardplan.language import later
from yardplan.plants.bloom import Overlap, overlap_of
from yardplan.plants.bloom_tables import is_low_chill
from yardplan.plants.crop_names import crop_name
from yardplan.plants.cultivar import MEMORY, Cultivar
from yardplan.plants.pollen_reason import (
    PollenPlace,
    Reason,
    Result,
    clone_root,
    is_seedling,
    kind_of,
    said,
    sex_of,
)
from yardplan.plants.pollen_tables import PollenCrop, published_cross

_TRIPLOID = 3
#: Systems in whose crops triploids and kinds without pollen are common enough to ask.
_STERILE_KINDS = frozenset({"alleles", "dominance", "pairs"})


def family_step(donor: Cultivar, receiver: Cultivar) -> Reason:
    """Step 1: do the two kinds cross at all?"""
    kinds = (kind_of(donor), kind_of(receiver))
    if kinds[0] is None or kinds[1] is None:
        missing = donor.crop if kinds[0] is None else receiver.crop
        return Reason(step="family", result="unknown", source=MEMORY,
                      template=later("no pollination rule is known for {crop}"), figures={"crop": missing})
    cross = published_cross(donor.crop, receiver.crop) if donor.crop != receiver.crop else None
    if cross is not None:
        return said("family", cross)
    if kinds[0].family != kinds[1].family:
        return Reason(step="family", result="failed", source=kinds[1].source,
                      template=later("{donor} pollen sets no fruit on {receiver}"),
                      figures={"donor": crop_name(donor.crop), "receiver": crop_name(receiver.crop)})
    return _one_family(donor, receiver, kinds[1])


def _one_family(donor: Cultivar, receiver: Cultivar, kind: PollenCrop) -> Reason:
    if donor.crop == receiver.crop:
        return Reason(step="family", result="passed", source=kind.source,
                      template=later("both are of the {family} family"), figures={"family": kind.family})
    return Reason(step="family", result="passed", source=kind.source,
                  template=later("{donor} and {receiver} are of one family and cross"),
                  figures={"donor": crop_name(donor.crop), "receiver": crop_name(receiver.crop)})


def clone_step(donor: Cultivar, receiver: Cultivar) -> Reason:
    """Step 2: two plants of one cultivar, or a cultivar and its sport, are one tree for pollination."""
    roots = (clone_root(donor), clone_root(receiver))
    if roots[0] != roots[1] or is_seedling(donor):
        return Reason(step="clone", result="passed", source="common-practice",
                      template=later("different cultivars"))
    if donor.key == receiver.key:
        return Reason(step="clone", result="failed", source="cornell-apple-short-course",
                      template=later("two plants of {name} are one clone"), figures={"name": receiver.name})
    child, parent = (donor, receiver) if donor.sport_of else (receiver, donor)
    words = later("{child} is a sport of {root}: one clone")
    if parent.sport_of:
        words = later("{donor} and {receiver} are both sports of {root}: one clone")
    names = {"child": child.name, "root": roots[0].cultivar, "donor": donor.name, "receiver": receiver.name}
    return Reason(step="clone", result="failed", template=words, figures=names,
                  source=(child.sources_of("sport_of") or (MEMORY,))[0])


def pollen_step(donor: Cultivar, receiver: Cultivar) -> Reason:
    """Step 3: has the donor pollen to give, and has the receiver flowers that bear fruit?"""
    if sex_of(receiver) == "male":
        return Reason(step="pollen", result="failed", source="common-practice",
                      template=later("{name} is male and bears no fruit"), figures={"name": receiver.name})
    if sex_of(donor) == "female":
        return Reason(step="pollen", result="failed", source="common-practice",
                      template=later("{name} is female and has no pollen that works"),
                      figures={"name": donor.name})
    return _pollen_quality(donor)


def _pollen_quality(donor: Cultivar) -> Reason:
    name = {"name": donor.name}
    source = (donor.sources_of("pollen_good") or donor.sources_of("ploidy") or (MEMORY,))[0]
    if donor.ploidy == _TRIPLOID:
        return Reason(step="pollen", result="failed", source=source, figures=name,
                      template=later("{name} is triploid: its pollen does not work"))
    if donor.pollen_good is False:
        return Reason(step="pollen", result="failed", source=source, figures=name,
                      template=later("{name} has no pollen that works or is a proven poor donor"))
    kind = kind_of(donor)
    if donor.own and donor.pollen_good is None and kind is not None and kind.system in _STERILE_KINDS:
        return Reason(step="pollen", result="unknown", source=MEMORY, figures=name,
                      template=later("it is not known whether the pollen of {name} is good"))
    return Reason(step="pollen", result="passed", source=source, figures=name,
                  template=later("the pollen of {name} is good"))


def bloom_step(donor: Cultivar, receiver: Cultivar, place: PollenPlace) -> tuple[Reason, Overlap | None]:
    """Step 5: are both in bloom together long enough, in most years?"""
    overlap = overlap_of(donor, receiver, bloom=place.bloom, limits=place.limits, gap_factor=place.gap_factor)
    if overlap is None:
        lacking = later("bloom of one of them is not known")
        return Reason(step="bloom", result="unknown", template=lacking, source=MEMORY), None
    mismatch = chill_mismatch(donor, receiver, place)
    if mismatch is not None and overlap.often == "usual":
        return mismatch, overlap
    results: Mapping[str, Result] = {"usual": "passed", "some years": "weak", "rarely": "failed"}
    return Reason(
        step="bloom", result=results[overlap.often], source=_BLOOM_SOURCES[overlap.by],
        template=_BLOOM_WORDS[overlap.often],
        figures={"days": overlap.days, "shown": round(overlap.shared), "years": overlap.years,
                 "by": _BY[overlap.by]},
    ), overlap


_BLOOM_WORDS: Mapping[str, str] = {
    "usual": later("about {shown} days in bloom together ({by}): usual"),
    "some years": later("about {shown} days in bloom together ({by}): long enough in some years only"),
    "rarely": later("about {shown} days in bloom together ({by}): rarely long enough"),
}
_BLOOM_SOURCES: Mapping[str, str] = {
    "dates": "computed-bloom-model", "order": "cherry-phenology-2016",
    "class": "iowa-state-univ-ext-pollination-requirements",
}
_BY: Mapping[str, str] = {
    "dates": later("dates at this place"), "order": later("by order of bloom"),
    "class": later("by bloom class"),
}


def chill_mismatch(donor: Cultivar, receiver: Cultivar, place: PollenPlace) -> Reason | None:
    """A reason when two partners need unlike chill: then they seldom open together."""
    if is_low_chill(donor) != is_low_chill(receiver):
        low = donor if is_low_chill(donor) else receiver
        return Reason(step="bloom", result="weak", source="uc-coop-ext-low-chill-apples",
                      template=later("{name} is a low-chill kind: it opens weeks before the others"),
                      figures={"name": low.name})
    if place.chill is None or place.chill >= place.limits.value("pollen-chill-match-site"):
        return None
    if donor.chill_hours is None or receiver.chill_hours is None:
        return None
    apart = abs(sum(donor.chill_hours) - sum(receiver.chill_hours)) / 2
    if apart <= place.limits.value("pollen-chill-match"):
        return None
    return Reason(step="bloom", result="weak", source=place.limits.source("pollen-chill-match"),
                  figures={"hours": apart},
                  template=later("chill needs differ by about {hours:.0f} h: in mild winters they open "
                                 "apart"))
