"""Go on with shaping that the page shows and does not name: "decreasing in this manner". No I/O.

A round that shapes at places (edges, markers, half the round) is worked again as it stands. One that spreads
its decreases evenly, "*K8, k2tog*", has a stitch less between them each time; a page says so, or shows two
such rounds. Where it does neither, nobody can tell, and the round is refused. Source: common practice.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from stepper.craft.rows import row_word
from stepper.craft.stitches import TURNS, stitch
from stepper.plan.drafts import Template, without_places
from stepper.plan.lines.own_words import refuse_own_words
from stepper.plan.lines.rounds import work_template
from stepper.plan.lines.shaping.schedule import refuse_worked_sides
from stepper.plan.state.needles import Needles
from stepper.project.duration import UntilCount
from stepper.project.instructions import AtIntervals, Leg, Repeated
from stepper.project.problems import Span
from stepper.project.stitchwork import Element, Mark, Numbers, Several, Work, every_element
from stepper.records import dataclass
from stepper.regex import regex

ALIKE = "alike "
"""Begins the name of a round worked "in this manner", "as before"."""
CLOSER = "closer "
"""Begins the name of a round with a stitch less between its changes each time, at given intervals."""
ONWARDS = "onwards "
"""The same, at the intervals there were."""
WIDER = "wider "
"""Begins the name of a round with a stitch more between its changes each time, at given intervals."""
WIDENING = "widening "
"""The same, at the intervals there were."""
BESIDE = "beside "
"""Begins the name of a round that changes a stitch on each side of markers, as the page showed before."""

_ELSE = TURNS | {"bo", "co", "pu", "hold", "return", "rest"}


def _last(label: str, needles: Needles, *, before: int) -> tuple[int, Template] | None:
    """Return the last round that changes the count, with its index, if it does so as a label says."""
    for at in range(before - 1, needles.section.start - 1, -1):
        draft = needles.drafts[at]
        if draft.before == draft.after:
            continue
        grows = (draft.after > draft.before) == ("inc" in label)
        shapes_alone = not (draft.evenly or draft.chart or _ELSE & draft.codes)
        return (at, draft.template) if draft.template is not None and grows and shapes_alone else None
    return None


@dataclass(frozen=True, slots=True)
class Shown:
    """A shaping that the page shows, as it goes on."""

    shaped: Template
    closer: bool
    """Whether each such round has a stitch less between its changes than the one before it."""
    between: tuple[Template, ...]
    """The rounds between two such rounds."""
    since: int
    """How many of those are worked since the last such round."""
    until: Numbers
    place: Span


def shown_before(repeated: Repeated, needles: Needles) -> Shown | None:
    """Return the shaping that "continue in this manner until 8 sts rem" goes on with; None if it is none.

    It is where the line does not say which rounds it means, and the last two rounds that shape show what lies
    between them, or what follows the only one does. Numbered rounds just written out are repeated, unless
    they bring each such round with a stitch less between its changes.
    """
    if repeated.last is not None or repeated.numbers or repeated.label or repeated.pattern or repeated.line:
        return None
    lasts, drafts = repeated.duration, needles.drafts
    if not isinstance(lasts, UntilCount) or needles.counting.lost:
        return None
    label = "inc" if lasts.number.of(needles.size) > needles.count else "dec"
    last = _last(label, needles, before=len(drafts))
    if last is None or last[1].own is not None:
        return None
    at, template = last
    earlier = _last(label, needles, before=at)
    closer = earlier is not None and _alike(earlier[1], template)
    written, end = needles.last.written
    if written and end == len(drafts) and not closer:
        return None
    same = earlier is not None and without_places(earlier[1].elements) == without_places(template.elements)
    if not closer and (_spread(template) is not None or not (same or at < len(drafts) - 1)):
        return None
    first = earlier[0] if earlier is not None and (closer or same) else at
    rounds = [draft.template for draft in (drafts[first + 1 : at] if first < at else drafts[at + 1 :])]
    between = tuple(one for one in rounds if one is not None)
    since = [without_places(draft.template) for draft in drafts[at + 1 :]]
    if len(between) < len(rounds) or since != [without_places(one) for one in between[: len(since)]]:
        return None
    return Shown(template, closer, between, len(since), lasts.number, repeated.place)


def work_as_shown(shown: Shown, needles: Needles) -> None:
    """Work a shaping and the rounds between as the page shows them, until so many stitches are left."""
    often, word = len(shown.between) + 1, row_word(needles.flat)
    every = f"one such {word} in every {often} is taken" if often > 1 else f"every {word} is such a {word}"
    needles.warn(shown.place, f"{every}, as before.")
    wanted, template, since = shown.until.of(needles.size), shown.shaped, shown.since
    before, findings = needles.count, len(needles.findings)
    while before != wanted:
        following = come_closer(template, needles) if shown.closer else template
        if following is None:
            return
        template = following
        for one in (*shown.between[since:], template):
            work_template(one, needles)
        since, after = 0, needles.count
        if needles.counting.lost or len(needles.findings) > findings:
            return
        if abs(after - wanted) >= abs(before - wanted) or (before - wanted) * (after - wanted) < 0:
            told = f"the shaping never leaves {wanted} stitches: it goes from {before} to {after} stitches."
            needles.report(shown.until.place, told)
            return
        before = after


def carry_on_shaping(
    instruction: AtIntervals, needles: Needles
) -> tuple[Template, tuple[Leg, ...], bool] | None:
    """Find the round that is worked on in the manner shown, at which intervals, and whether it comes closer.

    Returns:
        The round as it comes next, its intervals, and whether each has a stitch less between its changes than
        the one before; None if nobody can tell, which is reported.
    """
    label, place = instruction.label, instruction.place
    if refuse_worked_sides(instruction.legs, needles):
        return None
    last = _last(label, needles, before=len(needles.drafts))
    if last is None:
        what = "increases" if "inc" in label else "decreases"
        told = f"no round before this {what} stitches in a manner that could go on."
        needles.miss(place, told, 'Write the round out with a name, as "Dec round: k1, k2tog, …".')
        return None
    at, template = last
    if template.own is not None:
        refuse_own_words(template, place, needles)
        return None
    if _shows_otherwise(at, template, instruction, needles):
        return None
    earlier = _last(label, needles, before=at)
    if label.startswith(BESIDE):
        return (template, instruction.legs, False) if _is_beside(at, template, instruction, needles) else None
    step = 1 if label.startswith((WIDER, WIDENING)) else -1
    closer = _next_closer(template, needles.size, step) if label.startswith((*_STEPS,)) else None
    if label.startswith(ALIKE):
        if _spread(template) is None:
            return template, instruction.legs, False
        if earlier is None or not _alike(earlier[1], template):
            told = "whether the next such round has a stitch less between its changes is not said."
            hint = 'Write "working 1 st less between decreases each time", or write the rounds out.'
            needles.miss(place, told, hint)
            return None
        closer = _next_closer(template, needles.size)
    if closer is None:
        how = "more" if step > 0 else "fewer"
        told = f"the last such round has no stitches between its changes that could become {how}."
        needles.miss(place, told, "Write the rounds out.")
        return None
    legs = instruction.legs
    if label.startswith((ONWARDS, WIDENING)):
        shown = at - earlier[0] if earlier is not None and _alike(earlier[1], template, step) else 0
        gap = shown or len(needles.drafts) - at
        if gap == 1 and not shown:
            told = "how many rounds lie between two such rounds is not shown before this."
            needles.miss(place, told, 'Write it: "every 2nd round".')
            return None
        legs = tuple(replace(leg, every=Numbers((gap,), place)) for leg in legs)
        needles.warn(place, f"one such round in every {gap} is taken, as before.")
    return closer, legs, True


def _is_beside(at: int, template: Template, instruction: AtIntervals, needles: Needles) -> bool:
    """Return whether a round changed one stitch on each side of the markers there are; report it if not.

    The marker at the beginning of the round may be one of them, and the page does not say which it means.
    """
    draft, markers = needles.drafts[at], len(needles.markers)
    changed = abs(draft.after - draft.before)
    meant = {2 * markers, 2 * (markers + (0 if needles.flat else 1))} - {0}
    if _at_marks(template.elements) and changed in meant:
        return True
    needles.miss(
        instruction.place,
        f"the last such round changed {changed} stitches, and {markers} markers are there: "
        "it does not show how the stitches beside them are worked.",
        'Write the round out with a name, as "Dec round: *K to 3 sts before marker, k2tog, …".',
    )
    return False


def as_shown_beside(written: Template, needles: Needles) -> Template | None:
    """Return the round that changes a stitch on each side of the one marker, as the section shows it.

    Returns:
        The last such round of the section, or the one written if there is none; None, and reported, if what
        it shows is worked elsewhere.
    """
    grows = any(isinstance(one, Work) and one.stitch == "inc" for one in written.elements)
    last = _last("inc" if grows else "dec", needles, before=len(needles.drafts))
    if last is None and not needles.section.named:
        return written
    if last is not None:
        draft = needles.drafts[last[0]]
        if abs(draft.after - draft.before) == 2 and (not needles.flat or _at_marks(last[1].elements)):
            return last[1]
    told = "a round that shapes is written out before this, and is not worked beside the marker."
    needles.report(written.place, told, 'Name that round: "rep dec round every 4th round".')
    return None


def _at_marks(elements: tuple[Element, ...], *, around: bool = False) -> bool:
    """Return whether every change of a round stands beside a marker, or one plain stretch from it.

    In a group that is repeated, its end stands beside its beginning; `around` says so of the whole round too.
    """
    laid = [inner for one in elements for inner in (one.elements if isinstance(one, Several) else (one,))]
    marks = {at for at, one in enumerate(laid) if isinstance(one, Mark)}
    first = 0
    for one in elements:
        length = len(one.elements) if isinstance(one, Several) else 1
        marks |= {at + turn * length for at in marks if first <= at < first + length for turn in (-1, 1)}
        first += length
    marks |= {-1, len(laid)} if around else set()
    changes = [
        at
        for at, one in enumerate(laid)
        if isinstance(one, Work) and one.stitch != "pattern" and stitch(one.stitch).change
    ]
    return all(any(abs(at - mark) <= 2 for mark in marks) for at in changes)


_STEPS: Final = (CLOSER, ONWARDS, WIDER, WIDENING)
_SAID: Final = regex(r"\b(?:inc|dec)\s+\w+\s+(\d+)$")
"""How many stitches such a round changes, where the line says it."""
_AT_MARKERS: Final = regex(r"\b(?:raglan|gusset)\b")


def _places_markers(elements: tuple[Element, ...]) -> bool:
    return any(isinstance(one, Mark) and one.stitch == "pm" for one in every_element(elements))


def _shows_otherwise(at: int, template: Template, instruction: AtIntervals, needles: Needles) -> bool:
    """Report a round that changes another number of stitches than the line says, or lies elsewhere."""
    draft, label = needles.drafts[at], instruction.label
    changed, said = abs(draft.after - draft.before), _SAID.search(label)
    hint = "Write the round out with a name, and repeat it by that."
    if said is not None and changed != int(said.group(1)):
        told = f"the last such round changed {changed} stitches, and this line says {said.group(1)}."
        needles.miss(instruction.place, told, hint)
        return True
    if _places_markers(template.elements):
        told = "the last such round places markers, which are there now: nobody can tell how it goes on."
        needles.miss(instruction.place, told, hint)
        return True
    where = _AT_MARKERS.search(label)
    if where is None:
        return False
    around = not needles.flat and where.group() == "raglan"
    if _at_marks(template.elements, around=around) and (changed == 2) == (where.group() == "gusset"):
        return False
    told = (
        f"the last such round changed {changed} stitches, and does not show how the {where.group()} goes on."
    )
    needles.miss(instruction.place, told, hint)
    return True


def come_closer(template: Template, needles: Needles, step: int = -1) -> Template | None:
    """Return a round with one stitch less between its changes; None, and reported, if there are none left.

    `step` is 1 for one stitch more.
    """
    closer = _next_closer(template, needles.size, step)
    if closer is None:
        needles.miss(template.place, "no stitches are left between the changes, and the shaping goes on.")
    return closer


def _alike(earlier: Template, template: Template, step: int = -1) -> bool:
    """Return whether an earlier round is the same with one stitch more between its changes.

    `step` is 1 where it had one less.
    """
    shown = _next_closer(earlier, 0, step)
    return shown is not None and without_places(shown.elements) == without_places(template.elements)


def _spread(template: Template) -> tuple[Several, Work | None] | None:
    """Return the group of a round that spreads changes, with its plain stitches; None if it spreads none."""
    over = ("end", "rest", "around", "times")
    found = [one for one in template.elements if isinstance(one, Several) and one.goal in over]
    groups = [(one, _plain_of(one)) for one in found if _is_spread(one)]
    return groups.pop() if len(groups) == 1 else None


def _is_spread(group: Several) -> bool:
    """Return whether a group is one change, with plain stitches before or behind it or none."""
    changes = [one for one in group.elements if one is not _plain_of(group)]
    if len(changes) != 1 or not isinstance(changes[0], Work) or changes[0].stitch == "pattern":
        return False
    return stitch(changes[0].stitch).change != 0


def _plain_of(group: Several) -> Work | None:
    """Return the first plain stitches of a group."""
    return next((one for one in group.elements if isinstance(one, Work) and one.stitch in ("k", "p")), None)


def _next_closer(template: Template, size: int = 0, step: int = -1) -> Template | None:
    """Return a round with one stitch less between its changes; None if it has no such stitches in a size.

    The other sizes have fewer or more of them, and are worked by themselves. `step` is 1 for one stitch more.
    """
    group, plain = _spread(template) or (None, None)
    if group is None or plain is None or plain.times.of(size) < 1:
        return None
    times = Numbers(tuple(max(0, value + step) for value in plain.times.values), plain.times.place)
    fewer = (replace(plain, times=times),) if times.of(size) else ()
    inside = tuple(other for one in group.elements for other in (fewer if one is plain else (one,)))
    elements = tuple(replace(group, elements=inside) if one is group else one for one in template.elements)
    return replace(template, elements=elements, counts=())
