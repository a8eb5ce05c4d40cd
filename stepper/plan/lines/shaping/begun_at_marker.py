"""Work what stands at every marker at the one where the round begins, too. No I/O.

"Cast off 6 sts at each side for armholes (3 sts on each side of both markers)" and "k2tog before and ssk
after both markers" are one group for each marker. Where the rounds begin at one of them only the others
hang within the round: what comes behind the marker comes first then, and what comes before it last. Whether
the beginning is one of them is told by "both", and by how many stitches the page says that change. Source:
sweaters knitted in the round from the hem, common practice.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.stitches import stitch
from stepper.plan.drafts import Template
from stepper.plan.state.needles import Needles
from stepper.project.stitchwork import Element, Mark, Several, Until, Work


def from_the_beginning(template: Template, needles: Needles) -> Template:
    """Return a round with a group for each marker so that one of them is the beginning of the round.

    Returns:
        The round; the same unless the page counts one marker more than hang within it, and the group works as
        many stitches before a marker as it leaves there.
    """
    if needles.flat or not needles.markers or len(template.elements) != 2:
        return template
    group, rest = template.elements
    if not (isinstance(group, Several) and isinstance(rest, Until) and rest.goal == "end"):
        return template
    far, *inner = group.elements
    at = next((at for at, one in enumerate(inner) if isinstance(one, Mark)), None)
    if at is None or not (isinstance(far, Until) and far.goal == "marker" and far.short is not None):
        return template
    before, behind = _works(inner[:at]), _works(inner[at + 1 :])
    if not before or not behind:
        return template
    if not _one_more(group, (*before, *behind), template, needles):
        _tell(group, template, needles)
        return template
    uses = sum(stitch(one.stitch).uses * one.times.of(needles.size) for one in before)
    if far.short.of(needles.size) != uses:
        return template
    last: Element = replace(rest, goal="last", short=far.short)
    within: tuple[Element, ...] = (group,) if len(needles.markers) > 1 else group.elements
    return replace(template, elements=(*behind, *within, last, *before))


def _tell(group: Several, template: Template, needles: Needles) -> None:
    """Tell once of a round at every marker that its beginning is none, where no count of it shows that."""
    if group.goal != "markers" or group.name or template.counts or id(template) in needles.caches.fits:
        return
    many = f"{len(needles.markers)} markers" if len(needles.markers) > 1 else "one marker"
    needles.warn(template.place, f"worked at the {many} within the round, and not where the round begins.")


def _works(elements: list[Element]) -> list[Work] | None:
    """Return elements that are stitches with their numbers; None if one is anything else."""
    works = [one for one in elements if isinstance(one, Work)]
    return works if len(works) == len(elements) else None


def _one_more(group: Several, works: tuple[Work, ...], template: Template, needles: Needles) -> bool:
    """Return whether the page tells one marker more than hang within the round."""
    if group.goal != "markers":
        return False
    if group.name == "both":
        return len(needles.markers) == 1
    told = [count.change * count.number.of(needles.size) for count in template.counts if count.change]
    change = sum(stitch(one.stitch).change * one.times.of(needles.size) for one in works)
    return bool(change) and told == [change * (len(needles.markers) + 1)]
