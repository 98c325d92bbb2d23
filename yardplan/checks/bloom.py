"""What of the site's facts keeps bloom from being dated, and observed dates that cannot be right."""

from __future__ import annotations

from yardplan.checks.check import Check, Wording
from yardplan.checks.finding import Figure, Finding, Weight
from yardplan.checks.planted import planted
from yardplan.checks.survey import Survey
from yardplan.language import later
from yardplan.plants.bloom import BloomAt
from yardplan.plants.bloom_tables import crop_bloom, position
from yardplan.plants.pollen_place import place_for

NAME = "bloom"
_SOURCE = "computed-bloom-model"


def run(survey: Survey) -> list[Finding]:
    """Findings on missing climate, mild winters, observed dates, and own cultivars without a bloom class."""
    kinds = [kind for kind in planted(survey) if crop_bloom(kind.cultivar.crop) is not None]
    place = place_for(survey.yard.site, survey.rules.local, survey.catalogue.cultivars)
    if not kinds or place.bloom is None:
        return []
    faults = "; ".join(place.bloom.faults)
    found = [_plain("observed", Weight.CAUTION, faults)] if faults else []
    found += _lacking(place.bloom)
    found += [
        Finding(check=NAME, kind="no_class", weight=Weight.ADVICE, things=kind.things, source=_SOURCE,
                figures={"variety": Figure(kind.cultivar.name, "text")})
        for kind in kinds if kind.cultivar.own and position(kind.cultivar) is None
    ]
    return found


def _plain(kind: str, weight: Weight, text: str = "") -> Finding:
    figures = {"text": Figure(text, "text")} if text else {}
    return Finding(check=NAME, kind=kind, weight=weight, things=(), figures=figures, source=_SOURCE)


def _lacking(bloom: BloomAt) -> list[Finding]:
    if bloom.too_mild and not bloom.anchors:
        return [_plain("too_mild", Weight.ADVICE)]
    if bloom.sums is None and not bloom.anchors:
        kind = "from_afar" if bloom.station is not None else "no_climate"
        return [_plain(kind, Weight.ADVICE, bloom.station.name if bloom.station else "")]
    return []


_ENTER = later(
    "Look your place up in the site card, or enter its twelve monthly mean temperatures or one bloom date "
    "seen there."
)

CHECK = Check(
    name=NAME,
    title=later("Bloom dates"),
    run=run,
    places=False,
    wording={
        "observed": Wording(
            title="Observed bloom date", message="{text}.", clears="Correct the date in the site's facts.",
        ),
        "too_mild": Wording(
            title="Bloom not dated: mild winters",
            message="Winters here are too mild to date bloom from temperatures: bloom classes must do.",
            clears="Enter one bloom date seen on the spot.",
        ),
        "from_afar": Wording(
            title="Bloom dated from afar",
            message="The site has no monthly temperatures: bloom dates are moved here from {text} "
                    "and may be wrong by ten days; partners are judged by bloom class.",
            clears=_ENTER,
        ),
        "no_climate": Wording(
            title="Bloom not dated",
            message="The site has no monthly temperatures: bloom has no dates, partners are judged "
                    "by bloom class and frost at bloom not at all.",
            clears=_ENTER,
        ),
        "no_class": Wording(
            title="Bloom class missing: {variety}",
            message="The bloom class of your {variety} is not entered: what blooms with it is not known.",
            clears="Enter early, mid or late: it decides which plants can be its partners.",
        ),
    },
)
