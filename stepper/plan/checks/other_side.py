"""See to it that a front worked as the other one is no second copy of it, its neck at the wrong edge. No I/O.

"Work as for left front" means the other side of a garment, and so does "Make 2" below a front; rows that
shape one edge more than the other have to be mirrored for it. Where the page does not say so, the line is
refused. Of other parts two may be alike, which is told. Source: common practice ("reversing shaping").
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Final

from stepper.plan.drafts import DraftRound
from stepper.plan.model import flatten
from stepper.plan.state.needles import Needles
from stepper.project.problems import Span
from stepper.regex import regex

_SIDED: Final = regex(r"\b(?:fronts?|shoulders?|half|side)\b", re.I)
"""Parts of a garment of which there is one for each side of the body."""
_FRONT: Final = regex(r"\b(?:left|right)\s+(?:front|edge)\b", re.I)
_PAIRS: Final = (("left", "right"), ("first", "second"), ("1st", "2nd"), ("one", "other"))


def check_other_side(here: str, source: str, begin: int, place: Span, needles: Needles) -> None:
    """Report a part that was worked as the one across from it, though its rows shape one edge alone.

    Args:
        here: Name of the section in hand.
        source: Name of the section worked again.
        begin: Index of the first draft worked of it.
        place: Where the line says so.
        needles: The knitting in hand.
    """
    drafts = needles.drafts[begin:]
    _tell_edge_of_band(here, source, drafts, place, needles)
    copied = _words(here) == _words(source) | {"second"}
    if needles.counting.lost or not (copied or faces(here, source)) or not is_one_sided(drafts):
        return
    if not faces(here, source):
        told = f"{source} is shaped more at one edge than the other, and the second is worked just the same"
        needles.warn(place, told + ". Write its rows out if it is to be the other way round.")
        return
    needles.report(
        place,
        f"{source} is shaped more at one edge than at the other; worked as it stands, {here} would be no "
        "other side but the same one again.",
        'Write "reversing shaping" if it is mirrored, or write its rows out.',
    )


def _tell_edge_of_band(
    here: str, source: str, drafts: Iterable[DraftRound], place: Span, needles: Needles
) -> None:
    """Tell of a band with buttonholes worked as the one with buttons, or this as that, that it lies across.

    "Pick up down left front edge" is said with its rows as they are printed for the other.
    """
    ours, theirs = _words(here), _words(source)
    if "band" not in ours & theirs or ("buttonhole" in ours) == ("buttonhole" in theirs):
        return
    if any(_FRONT.search(remark) for draft in drafts for remark in draft.remarks):
        told = f"the front that its rows name is that of the {source}: the {here} lies at the other."
        needles.warn(place, told)


def faces(here: str, source: str) -> bool:
    """Return whether two sections are the two sides of a garment, by their names: left front, right front."""
    if not _SIDED.search(here) or not _SIDED.search(source):
        return False
    ours, theirs = _words(here), _words(source)
    across = any(
        (one in ours and other in theirs) or (other in ours and one in theirs) for one, other in _PAIRS
    )
    return across or ("second" in ours and ours - {"second"} == theirs)


def _words(name: str) -> set[str]:
    return set(name.lower().replace(",", " ").split())


def is_one_sided(drafts: Iterable[DraftRound]) -> bool:
    """Return whether rows take or make more stitches in one half, as seen from the right side.

    Not told of a piece that takes stitches back from hold: it has two sides, and binds off between them.
    """
    drafts = tuple(drafts)
    if any("return" in draft.codes for draft in drafts):
        return False
    more = 0
    for draft in drafts:
        if not draft.before or not draft.after or draft.evenly:
            continue
        at = halves = 0
        for run in flatten(draft.phrase):
            middle, change = 2 * at + run.uses, run.leaves - run.uses
            halves += change if middle < draft.before else -change if middle > draft.before else 0
            at += run.uses
        more += halves if draft.side == "RS" else -halves
    return more != 0
