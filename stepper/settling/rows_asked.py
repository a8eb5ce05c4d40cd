"""What is known of an open row before she answers: the stitches before it, what its words say of it."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.plan.so_far import SoFar, find_so_far
from stepper.project.page.unread.doubts import is_doubtful_note
from stepper.project.page.unread.kept_rows import split_sentences
from stepper.project.page.unread.left_open import LeftKind, LeftOpen, find_left_open
from stepper.project.page.unread.mends import Mend, MendKind, find_mends
from stepper.project.page.unread.proposals import Kept, Proposal, propose
from stepper.project.page.unread.same_lines import SamePart, find_same
from stepper.project.reading.own_words import (
    BINDS_OFF,
    find_depended_on,
    find_own_row,
    is_own_row,
    printed_words,
    turns_last,
    words_refused,
)
from stepper.records import dataclass
from stepper.regex import regex

_IN_FRONT: Final = "stands in front of the pattern"
"""What the mark says of text between a stitch pattern and the first part: mostly remarks."""
_STRANGE: Final = "what it means is not read"
"""What is told of an abbreviation of the page that nobody can count by."""
ROW_BY_ROW: Final = {"go", "at once"}
"""What rows may say that are kept one by one, each with its count."""


_OFF: Final = regex(rf"{BINDS_OFF}(?:sts?\.|[^.;])*", re.I)
_AT_EDGE: Final = regex(
    r"\bat\s+(?:the\s+)?(?:beg|start\b|(?:each|both|either)\s+(?:end|side)|(?:[a-z]+\s+)?edges?\b)", re.I
)


_SIDE: Final = regex(
    r"^[^:]{0,30}\(\s*(?:(?P<wrong>W\.?\s?S\.?|wrong\s+side)|(?P<right>R\.?\s?S\.?|right\s+side))\s*\)", re.I
)
"""The side of the work that is printed with the head of a row."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RowAsked:
    """What is known of a row before she answers."""

    left: LeftOpen
    so_far: SoFar
    proposal: Proposal
    refused: str = ""
    """Why its words cannot be kept as rows, as a sentence; empty if they can."""
    mends: tuple[Mend, ...] = ()
    """The changes with which it is read, the smallest first."""
    same: SamePart | None = None
    """The part that it works once more; None if its words refer to none."""
    own: bool = False
    """Whether it is a line in own words already that does not fit: to keep it so again mends nothing."""

    @property
    def sentence_kinds(self) -> tuple[Kept, ...]:
        """What each of its sentences may be; none if one of them is doubtful."""
        empty = self.so_far.stitches == 0
        each = [propose(sentence, empty=empty) for sentence in split_sentences(self.left.text)]
        return tuple(one.kept for one in each) if not any(one.doubtful for one in each) else ()

    @property
    def on_other_side(self) -> bool:
        """Whether it is printed for the side of the work that does not face the knitter there."""
        side = _SIDE.search(self.left.text)
        known = bool(self.so_far.stitches) and self.so_far.flat is True
        return known and side is not None and (side["wrong"] is not None) != self.so_far.wrong

    @property
    def turns_ring(self) -> bool:
        """Whether its words turn a round at its end: rows may begin there, which no count tells."""
        return self.so_far.flat is False and turns_last(self.left.text)

    @property
    def defines(self) -> bool:
        """Whether it is a numbered row where nothing is on the needles: one of a stitch pattern."""
        return self.so_far.stitches == 0 and self.proposal.numbered


def look_at(
    left: LeftOpen, text: str, *, empty: bool = False, held: tuple[tuple[str, int], ...] = ()
) -> RowAsked:
    """Find what can be proposed for a row.

    Args:
        left: The row.
        text: The whole file.
        empty: Whether it is known that nothing is on the needles there.
        held: What then waits on hold, name and stitches, the last first.
    """
    own = left.kind is LeftKind.LINE and is_own_row(left.text)
    left = replace(left, text=printed_words(left.text)) if own else left
    rows = text.split("\n")
    above = any(
        each.kind is LeftKind.ROW and each.part == left.part and each.first < left.first
        for each in find_left_open(text)
    )
    so_far = (
        SoFar(stitches=0, flat=None, held=held) if empty else find_so_far(text, left.first, left.last)
    )
    if above and not empty:  # what is still open above it may change the number
        so_far = SoFar(stitches=None, flat=so_far.flat)
    behind = rows[left.last].strip() if left.last < len(rows) else ""
    proposal = propose(left.text, empty=so_far.stitches == 0, behind=behind)
    proposal = replace(proposal, strange=_STRANGE in left.why)
    if is_remark(left) or _is_in_front(left, proposal):
        proposal = replace(proposal, kept=Kept.NOTE, doubtful=is_doubtful_note(left.text))
    refused = _why_refused(left.text) if proposal.kept is Kept.ROWS else ""
    if refused:
        proposal = replace(proposal, kept=Kept.ANEW)
    open_row = left.kind is LeftKind.ROW and not is_remark(left)
    mends = find_mends(left.text) if open_row else ()
    same = find_same(left.text, text, left.first) if open_row else None
    return RowAsked(
        left=left, so_far=so_far, proposal=proposal, refused=refused, mends=mends, same=same, own=own
    )


def bound_off_at_edge(words: str) -> bool:
    """Return whether all stitches that some words bind off are at an edge, so that whole rows are left."""
    return all(_AT_EDGE.search(found) for found in _OFF.findall(words))


def is_remark(left: LeftOpen) -> bool:
    """Return whether an open row is likely only said, wherever it stands."""
    if left.kind is not LeftKind.ROW:
        return False
    proposal = propose(left.text)
    remark = proposal.kept is Kept.NOTE or _is_in_front(left, proposal)
    if is_doubtful_note(left.text):
        return False
    return remark and not any(each.kind is MendKind.SPELT for each in find_mends(left.text))


def _is_in_front(left: LeftOpen, proposal: Proposal) -> bool:
    return _IN_FRONT in left.why and not proposal.numbered


def _why_refused(words: str) -> str:
    """Return why words cannot be kept as rows, whatever their count; empty if they can, together or one by
    one."""
    depended = find_depended_on(words)
    if depended and depended.keys() <= ROW_BY_ROW:
        return ""
    own = find_own_row(f"Own words: {words} 1 sts.")
    refused = words_refused(own) if own is not None else None
    return f"As it stands it cannot be kept: {refused[2]}" if refused is not None else ""
