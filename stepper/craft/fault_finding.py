"""Fault finding: which stretch between markers to count next when the total is wrong.

Theory of operation. There is one fault, in one of the sections between markers, each of which has its odds.
Two things can be saved. *Counts*: a count of neighbouring sections says whether the fault is among them;
where to cut so that few counts remain is an optimal search tree over an ordered row, solved exactly from
short rows to long ones. No way of asking can need fewer counts on average than the entropy of the odds, and
the best cuts need fewer than two more. *Stitches*: counting two sections together takes as many stitches as
counting them one after the other, which may stop after the first; so counting section by section takes the
fewest stitches, beginning with the highest odds per stitch. The last is never counted, since the fault must
then be there. Halving needs the fewest questions and counts about twice the stitches. If a question itself
has a cost, a tree weighs both. No I/O.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import accumulate
from typing import Literal

from stepper.records import dataclass

Sparing = Literal["counts", "stitches"]

CHANGE_ODDS = 8.0
"""How much likelier a fault is at an increase or decrease than at a plain stitch. Assumption; no source."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CountedSection:
    """The stitches between two markers."""

    stitches: int
    """How many should be there, and have to be counted. Range: 1 and up."""
    odds: float
    """How likely the fault is here, relative to the other sections. Range: above 0."""

    def __post_init__(self) -> None:
        """Refuse a section without stitches or odds.

        Raises:
            ValueError: A number is out of range.
        """
        if self.stitches < 1 or not (math.isfinite(self.odds) and self.odds > 0):
            raise ValueError(f"a section needs stitches and odds above 0 (got {self.stitches}, {self.odds}).")


@dataclass(frozen=True, slots=True, kw_only=True)
class NextCount:
    """What to count next, and what the answer means."""

    count: tuple[int, int]
    """Sections to count: first and one past the last, 0-based."""
    if_wrong: tuple[int, ...]
    """Sections under suspicion if that count is off, in order."""
    if_right: tuple[int, ...]
    """Sections under suspicion if that count is as it should be."""
    stitches: int
    """Stitches that the count should give."""
    expected_counts: float
    """Counts still needed on average, this one included."""
    expected_stitches: float
    """Stitches still to be counted on average, this count included."""


def plain_odds(stitches: int, changes: int) -> float:
    """Return the odds of a section about which nothing else is known.

    Args:
        stitches: Stitches of the section. Range: 1 and up.
        changes: Increases and decreases among them since the last good count. Range: 0 and up.

    Raises:
        ValueError: A number is out of range.

    Source: one for each stitch, `CHANGE_ODDS` more for each change.
    """
    if stitches < 1 or changes < 0:
        raise ValueError(f"a section has 1 stitch or more and 0 changes or more (got {stitches}, {changes}).")
    return stitches + CHANGE_ODDS * changes


def next_count(
    sections: Sequence[CountedSection],
    suspects: Sequence[int] | None = None,
    *,
    sparing: Sparing = "stitches",
    question: float = 0.0,
    in_order: bool = False,
) -> NextCount | None:
    """Choose the sections to count next.

    Args:
        sections: All sections of the round, in order.
        suspects: Sections under suspicion, in order; at first all of them. To save counts they have to be
            neighbours.
        sparing: Whether to save counts or counted stitches.
        question: What a question costs besides the counting, when saving stitches. Range: 0 and up. Unit:
            stitches counted.
        in_order: Whether sections must be counted from the first suspect on, because a later one can be
            located only by counting those before it.

    Returns:
        The count to make; None if one section is left, which then holds the fault.

    Raises:
        ValueError: There are no suspects, they are outside the sections or out of order, `sparing` is another
            word, or counts are to be saved among sections that are not neighbours.

    Source: few counts: optimal alphabetic tree by dynamic programming (Gilbert and Moore 1959); its mean
        depth lies between the entropy and the entropy plus 2. Few stitches: order of falling odds per cost,
        the classical rule of search theory (D. Blackwell, in Matula 1964, from memory), the last inferred.
    """
    left = tuple(range(len(sections))) if suspects is None else tuple(suspects)
    if not left or list(left) != sorted(set(left)) or not 0 <= left[0] <= left[-1] < len(sections):
        raise ValueError(f"suspects must be some of the {len(sections)} sections (got {left}).")
    if sparing not in ("counts", "stitches"):
        raise ValueError(f'sparing must be "counts" or "stitches" (got "{sparing}").')
    if len(left) == 1:
        return None
    row = [sections[at] for at in left]
    neighbours = left[-1] - left[0] == len(left) - 1
    if sparing == "stitches":
        counted, counts, stitches = _one_by_one(row, in_order=in_order)
        if question and neighbours:
            tree = _halved(row, question=question, in_order=in_order)
            if tree[2] + question * tree[1] < stitches + question * counts - 1e-9:
                counted, counts, stitches = tree
    elif not neighbours:
        raise ValueError("counts are spared among neighbouring sections only.")
    else:
        counted, counts, stitches = _halved(row, question=None, in_order=in_order)
    count = (left[counted[0]], left[counted[-1]] + 1)
    return NextCount(
        count=count,
        if_wrong=tuple(left[at] for at in counted),
        if_right=tuple(each for at, each in enumerate(left) if at not in counted),
        stitches=sum(section.stitches for section in sections[slice(*count)]),
        expected_counts=counts,
        expected_stitches=stitches,
    )


def _one_by_one(row: Sequence[CountedSection], *, in_order: bool) -> tuple[tuple[int, ...], float, float]:
    """Count section by section: return which first, and the counts and stitches expected."""
    places = range(len(row))
    if in_order:
        orders = [list(places)]
    else:
        dense = sorted(places, key=lambda at: (-row[at].odds / row[at].stitches, at))
        # The last is never counted, so try each in that place: a long or unlikely one is worth leaving out.
        orders = [[at for at in dense if at != last] + [last] for last in places]
    stitches, counts, order = min((*_walked(row, order), order) for order in orders)
    return (order[0],), counts, stitches


def _walked(row: Sequence[CountedSection], order: Sequence[int]) -> tuple[float, float]:
    """Return the stitches and counts expected when sections are counted in an order, all but the last."""
    total = math.fsum(section.odds for section in row)
    left, stitches, counts = total, 0.0, 0.0
    for at in order[:-1]:
        stitches += left * row[at].stitches
        counts += left
        left -= row[at].odds
    return _without_last_bit(stitches / total), _without_last_bit(counts / total)


def _without_last_bit(cost: float) -> float:
    """Round a cost, so that the last bit does not choose between equal orders or trees."""
    return round(cost, 9)


def _halved(
    row: Sequence[CountedSection], *, question: float | None, in_order: bool
) -> tuple[tuple[int, ...], float, float]:
    """Cut the row into two parts and count the one with fewer stitches; the other follows from the total."""
    tree = _Tree(row, question, in_order=in_order)
    cut, end = tree.cut(0, len(row)), len(row)
    left = in_order or tree.stitches(0, cut) <= tree.stitches(cut, end)
    return (tuple(range(cut) if left else range(cut, end)), *tree.expected())


class _Tree:
    """The best way to cut every run of neighbouring sections, worked out from short runs to long.

    If a question costs nothing, counts are saved and stitches decide between equals; otherwise both are
    weighed.
    """

    def __init__(self, row: Sequence[CountedSection], question: float | None, *, in_order: bool) -> None:
        self._odds = [*accumulate((section.odds for section in row), initial=0.0)]
        self._stitches = [*accumulate((section.stitches for section in row), initial=0.0)]
        self._question, self._in_order = question, in_order
        # For each run: cut, then odds-weighted counts and stitches below it.
        self._best: dict[tuple[int, int], tuple[int, float, float]] = {}
        for start in range(len(row)):
            self._best[start, start + 1] = (start, 0.0, 0.0)
        for length in range(2, len(row) + 1):
            for start in range(len(row) - length + 1):
                run = (start, start + length)
                options = [self._weigh(*run, cut) for cut in range(start + 1, start + length)]
                # Between equals the other cost decides, then the earlier cut.
                self._best[run] = min(options, key=self._rank)

    def _weigh(self, start: int, end: int, cut: int) -> tuple[int, float, float]:
        odds = self._odds[end] - self._odds[start]
        left = self.stitches(start, cut)
        fewer = left if self._in_order else min(left, self.stitches(cut, end))
        _, left_counts, left_stitches = self._best[start, cut]
        _, right_counts, right_stitches = self._best[cut, end]
        return cut, odds + left_counts + right_counts, odds * fewer + left_stitches + right_stitches

    def _rank(self, option: tuple[int, float, float]) -> tuple[float, float]:
        _, counts, stitches = option
        price = counts if self._question is None else stitches + self._question * counts
        return _without_last_bit(price), _without_last_bit(stitches)

    def stitches(self, start: int, end: int) -> float:
        return self._stitches[end] - self._stitches[start]

    def cut(self, start: int, end: int) -> int:
        return self._best[start, end][0]

    def expected(self) -> tuple[float, float]:
        """Return the counts and the stitches expected for the whole row."""
        _, counts, stitches = self._best[0, len(self._odds) - 1]
        return counts / self._odds[-1], stitches / self._odds[-1]
