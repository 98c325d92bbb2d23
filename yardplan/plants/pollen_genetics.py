"""Step 4 of the pollination test: does the receiver's style take the donor's pollen, and how much of it?"""

from __future__ import annotations

from yardplan.language import later
from yardplan.plants.cultivar import MEMORY, Cultivar, SelfFruit
from yardplan.plants.pollen_reason import Reason, clone_root, kind_of, said
from yardplan.plants.pollen_tables import expressed_alleles, kin_groups, published_pair
from yardplan.yard.planting import PlantKey


def accepted_share(donor: tuple[str, ...], receiver: tuple[str, ...]) -> float:
    """Share of pollen accepted: donor alleles the receiver lacks; broken (primed) ones always count.

    A style still refuses the unbroken form of its own broken allele. Sources: niab-pollen-compatibility,
    jki-cherry-s-2020.
    """
    refused = {allele.rstrip("'") for allele in receiver}
    accepted = [is_broken(allele) or allele not in refused for allele in donor]
    return sum(accepted) / len(accepted)


def is_broken(allele: str) -> bool:
    """True for an allele whose pollen every style accepts: a primed one, or the apricot's SC."""
    return allele.endswith("'") or allele == "SC"


def sets_itself_otherwise(cultivar: Cultivar) -> bool:
    """True for a self-fruitful kind with ordinary alleles: another locus is at work."""
    return cultivar.self_fruitful is SelfFruit.YES and not any(map(is_broken, cultivar.s_alleles))


def genetics_step(donor: Cultivar, receiver: Cultivar) -> tuple[Reason, float | None]:
    """Step 4: does the receiver's style take the donor's pollen? With the share accepted if known."""
    named = published_pair(_published_key(donor), _published_key(receiver))
    share = _share(donor, receiver)
    if named is not None and not (share == 0.0 and named.verdict in {"yes", "partly"}):
        return said("genetics", named), share
    return _by_system(donor, receiver, share), share


def _published_key(cultivar: Cultivar) -> PlantKey:
    """The key under which tables name a cultivar: sports under their parent unless named themselves."""
    return clone_root(cultivar)


def _share(donor: Cultivar, receiver: Cultivar) -> float | None:
    kinds = (kind_of(donor), kind_of(receiver))
    if kinds[0] is None or kinds[1] is None or not donor.s_alleles or not receiver.s_alleles:
        return None
    if kinds[0].series != kinds[1].series or not kinds[0].series:
        return None
    if kinds[0].system == "alleles":
        share = accepted_share(donor.s_alleles, receiver.s_alleles)
        return None if share == 0 and sets_itself_otherwise(donor) else share
    return _dominance_share(donor, receiver) if kinds[0].system == "dominance" else None


def _dominance_share(donor: Cultivar, receiver: Cultivar) -> float | None:
    """Hazelnut: pollen shows its dominant allele or both, all grains alike; any match refuses it."""
    shown = expressed_alleles().get(donor.name)
    matches = [allele in receiver.s_alleles for allele in shown or donor.s_alleles]
    if any(matches) and shown is None and not all(matches):
        return None
    return 0.0 if any(matches) else 1.0


def _by_system(donor: Cultivar, receiver: Cultivar, share: float | None) -> Reason:
    kind = kind_of(receiver)
    system = kind.system if kind else "pairs"
    source = kind.source if kind else MEMORY
    if system in {"alleles", "dominance"}:
        return _allele_reason(donor, receiver, share, source)
    if system == "kin":
        return _kin_reason(donor, receiver, source)
    if system == "pairs":
        return Reason(step="genetics", result="unknown", source=source,
                      figures=_names(donor, receiver),
                      template=later("no trial of {donor} on {receiver} was found: not proved"))
    words = {
        "sexes": later("a male plant serves the females of its kind"),
        "open": later("any other {family} serves"),
    }
    return Reason(step="genetics", result="passed", template=words[system], source=source,
                  figures={"family": kind.family if kind else ""})


def _names(donor: Cultivar, receiver: Cultivar) -> dict[str, float | str]:
    return {"donor": donor.name, "receiver": receiver.name}


def _kin_reason(donor: Cultivar, receiver: Cultivar, source: str) -> Reason:
    groups = (kin_groups().get(donor.key), kin_groups().get(receiver.key))
    if groups[0] and groups[1] and groups[0][0] == groups[1][0]:
        return Reason(step="genetics", result="failed", source=groups[0][1],
                      figures=_names(donor, receiver) | {"group": groups[0][0]},
                      template=later("{donor} and {receiver} are too near of kin (group {group})"))
    if groups[0] or groups[1]:
        return Reason(step="genetics", result="passed", source=source, template=later("not near of kin"))
    return Reason(step="genetics", result="unknown", source=source, figures=_names(donor, receiver),
                  template=later("kinship of {donor} and {receiver} is not known: not proved"))


def _allele_reason(donor: Cultivar, receiver: Cultivar, share: float | None, source: str) -> Reason:
    if share is None:
        lacking, names = _unknown_words(donor, receiver)
        return Reason(step="genetics", result="unknown", source=source, template=lacking, figures=names)
    given, own = "".join(donor.s_alleles), "".join(receiver.s_alleles)
    source = (receiver.sources_of("s_alleles") or (source,))[0]
    if share == 0:
        words = later("{receiver} ({own}) refuses all pollen of {donor} ({given})")
    elif share < 1:
        words = later("{receiver} ({own}) takes about {share:.0%} of the pollen of {donor} ({given})")
    else:
        words = later("{receiver} ({own}) takes all pollen of {donor} ({given})")
    return Reason(step="genetics", result="passed" if share else "failed", source=source, template=words,
                  figures=_names(donor, receiver) | {"share": share, "given": given, "own": own})


def _unknown_words(donor: Cultivar, receiver: Cultivar) -> tuple[str, dict[str, float | str]]:
    both = (kind_of(donor), kind_of(receiver))
    if both[0] and both[1] and both[0].series != both[1].series:
        crops: dict[str, float | str] = {"donor": donor.crop, "receiver": receiver.crop}
        return later("alleles of {donor} and {receiver} cannot be compared: not proved"), crops
    lacking = [plant.name for plant in (donor, receiver) if not plant.s_alleles]
    if not lacking and sets_itself_otherwise(donor):
        words = later("{donor} has the alleles of {receiver} but sets itself by another locus: not proved")
        return words, _names(donor, receiver)
    if not lacking:
        words = later("which allele the pollen of {donor} shows is not known: not proved")
        return words, {"donor": donor.name}
    if len(lacking) == 1:
        return later("alleles of {name} unknown: not proved"), {"name": lacking[0]}
    return later("alleles of {donor} and {receiver} unknown: not proved"), _names(donor, receiver)
