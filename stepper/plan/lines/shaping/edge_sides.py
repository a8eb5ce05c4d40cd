"""Find at which end of the rows an edge is: neck, armhole, front or side. No I/O.

Which end of the row the neck is at follows from what was shaped before: the rows since
the piece began, or since it was divided, that changed stitches at one end only. A row that names this edge,
or the opposite one, settles it; a row that names neither is taken to mean this edge, and the knitter is told.
If rows point both ways, it cannot be known and the line is refused.
"""

from __future__ import annotations

import re

from stepper.craft.stitches import stitch
from stepper.plan.drafts import DraftRound
from stepper.plan.model import flatten, other_side
from stepper.plan.state.measuring_places import is_rib
from stepper.plan.state.needles import Needles
from stepper.project.problems import Span
from stepper.regex import regex

_NEAR = 6
"""A change within this many stitches of an end of the row is one at that end."""
_INNER = regex(r"\b(?:neck\w*|front\s+edges?|v-?neck)\b", re.I)
_A_FRONT = regex(r"\b(left|right)\s+front\b", re.I)
_OUTER = regex(
    r"\b(?:arm-?holes?|underarms?|side\s+(?:edges?|seams?)|sleeves?|shoulders?|raglans?)\b", re.I
)

_ONLY_REACHED = regex(
    r"\b(?:end(?:ing|ed)?|finish(?:ing|ed)?)\s+(?:off\s+)?(?:at|on)\s+(?:the\s+)?(?:arm-?hole|neck|front|side)\s+edges?\b"
    r"|\b(?:arm-?holes?|sleeves?)\s+(?:edges?\s+)?(?:measures?|is|are)\b",
    re.I,
)
"""An edge at which rows only end, or along which a length is measured."""


def said_of_shaping(text: str) -> str:
    """Return a line without the edges that it names but does not shape: "ending at front edge"."""
    return _ONLY_REACHED.sub("", text)


def side_beginning_at(edge: str, place: Span, needles: Needles) -> str:
    """Return the side of the rows that begin at an edge; empty, and reported, if that cannot be known."""
    own, across = (_INNER, _OUTER) if edge in ("neck", "front") else (_OUTER, _INNER)
    texts = needles.project.line_texts

    def words(draft: DraftRound) -> str:
        if _beyond_gaps(draft):
            return "underarm"  # two gaps part three pieces, and each lies at an armhole
        return "neck" if draft.divide else said_of_shaping(texts.get(draft.line, ""))

    shaped = shaped_at_one_end(needles)
    named = [(begins, draft) for begins, draft in shaped if own.search(words(draft))]
    # A line that shapes both edges side by side does not tell which of its rows is at which.
    named = [each for each in named if not across.search(words(each[1]))] or named
    opposite = [
        (other_side(begins), draft)
        for begins, draft in shaped
        if across.search(words(draft)) and not own.search(words(draft))
    ]
    for found in (named, opposite, shaped):
        sides = {begins for begins, _ in found}
        if len(sides) == 1 and needles.flat:
            side = sides.pop()
            where = "begin" if side == "RS" else "end"
            if found is not named:
                needles.warn(
                    place,
                    f"the {edge} edge is taken as the one where right-side rows {where}, "
                    f"by the shaping of line {found[-1][1].line}.",
                )
            return side
        if sides:
            break
    side = _of_a_front(edge, needles)
    if side:
        where = "begin" if side == "RS" else "end"
        front = needles.section.name
        told = f"the {edge} edge is taken as the one where right-side rows {where}"
        needles.warn(place, f"{told}, as on a {front} worked from its lower edge up.")
        return side
    needles.report(
        place,
        f'"at {edge} edge" does not say at which end of the row, and nothing before it shows which.',
        "Write at the beginning or at the end of RS rows.",
    )
    needles.lose()
    return ""


def _of_a_front(edge: str, needles: Needles) -> str:
    """Return the side of the rows that begin at an edge of a left or right front that nothing has shaped yet.

    Worked upwards, a left front has its side seam where right-side rows begin, a right front its opening: as
    it is worn (common practice). A rib it begins with shows that it is worked upwards.
    """
    front = _A_FRONT.search(needles.section.name)
    begun = max((at for at, draft in enumerate(needles.drafts) if not draft.before), default=0)
    piece = needles.drafts[begun + 1 :]
    if front is None or not needles.flat or not piece or not is_rib(piece[0]):
        return ""
    inner = edge in ("neck", "front")
    return "RS" if (front.group(1).lower() == "right") == inner else "WS"


def side_ending_at(edge: str, place: Span, needles: Needles) -> str:
    """Return the side of the rows that end at an edge; empty, and reported, if that cannot be known."""
    begins = side_beginning_at(edge, place, needles)
    return other_side(begins) if begins else ""


def shaped_at_one_end(needles: Needles) -> list[tuple[str, DraftRound]]:
    """Return the rows that changed the piece in hand at one end, with the side of rows beginning there."""
    found: list[tuple[str, DraftRound]] = []
    for draft in needles.drafts:
        if not draft.before:
            found = []
            continue
        where = _end_of(draft)
        if draft.divide and draft.flat:
            found = []  # the dividing edge is the inner one, whatever was shaped before
        if where and draft.after:
            begins = draft.side if where == "start" else other_side(draft.side)
            found.append((begins, draft))
    return found


def _end_of(draft: DraftRound) -> str:
    """Return at which end of its row a round changes stitches, `start` or `end`; empty for both.

    A row that binds off at one end and divides the piece at the other has the dividing edge there.
    """
    if _beyond_gaps(draft):
        return "end"
    places: set[str] = set()
    parted: set[str] = set()
    at = 0
    for run in flatten(draft.phrase):
        if stitch(run.stitch).shapes or run.stitch in ("bo", "co", "hold"):
            start = at <= _NEAR
            end = at + run.uses >= draft.before - _NEAR
            place = "start" if start and not end else "end" if end and not start else "both"
            (parted if draft.divide and run.stitch == "hold" else places).add(place)
        at += run.uses
    places = parted or places
    return places.pop() if len(places) == 1 and "both" not in places else ""


def _beyond_gaps(draft: DraftRound) -> bool:
    """Return whether a round only puts two or more pieces on hold that lie behind the one to work on."""
    codes = [run.stitch for run in flatten(draft.phrase)]
    return len(codes) > 2 and codes[0] == "rest" and set(codes[1:]) == {"hold"}
