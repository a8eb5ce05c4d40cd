"""Fault finding: which stretch between markers to count next when the total is wrong.

Theory of operation. One fault sits in one of the sections between markers, each with its odds. A count of
neighbouring sections says whether the fault is among them. Where to cut so that few counts (or few counted
stitches) remain is an optimal search tree over an ordered row, solved exactly from short rows to long ones.
No way of asking can need fewer counts on average than the entropy of the odds, and the best cuts need fewer
than two more. No I/O.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

Sparing = Literal["counts", "stitches"]

CHANGE_ODDS = 8.0
"""How much likelier a fault is at an increase or decrease than at a plain stitch. Assumption; no source."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """The stitches between two markers."""

    stitches: int
    """How many should be there, and have to be counted. Range: 1 and up."""
    odds: float
    """How likely the fault is here, against the other sections. Range: above 0."""

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
    if_wrong: tuple[int, int]
    """Sections left under suspicion when that count is off: the same."""
    if_right: tuple[int, int]
    """Sections left under suspicion when that count is as it should be."""
    stitches: int
    """Stitches that should be found."""
    expected_counts: float
    """Counts still needed on average, this one included."""
    expected_stitches: float
    """Stitches still to be counted on average, this count included."""
    least_counts: float
    """Entropy of the odds: no way of asking needs fewer counts on average. Unit: bits."""


def plain_odds(stitches: int, changes: int) -> float:
    """Give the odds of a section in which nothing else is known.

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


def entropy_bits(odds: Sequence[float]) -> float:
    """Give how much is unknown about where the fault is.

    Args:
        odds: One for each section. Range: above 0 each. Shape: (sections,), one at least.

    Returns:
        Unit: bits. Range: 0 to log2 of the number of sections.

    Raises:
        ValueError: There are no odds or one is not above 0.

    Source: C. E. Shannon, "A Mathematical Theory of Communication", 1948.
    """
    if not odds or not all(math.isfinite(chance) and chance > 0 for chance in odds):
        raise ValueError("odds must be above 0, one for each section.")
    total = math.fsum(odds)
    return math.fsum(chance / total * math.log2(total / chance) for chance in odds)


def next_count(
    sections: Sequence[Section], suspects: tuple[int, int] | None = None, *, sparing: Sparing = "counts"
) -> NextCount | None:
    """Choose the sections to count next.

    The cut splits the suspects into two neighbouring parts; the part with fewer stitches is counted, since
    the other follows from the wrong total.

    Args:
        sections: All sections of the round, in order.
        suspects: First section under suspicion and one past the last; all of them at first.
        sparing: Whether few counts or few counted stitches are wanted.

    Returns:
        The count to make; None when one section is left, which then holds the fault.

    Raises:
        ValueError: There are no suspects, they lie outside the sections, or `sparing` is another word.

    Source: optimal alphabetic tree by dynamic programming (Gilbert and Moore 1959); its mean depth lies
        between the entropy and the entropy plus 2.
    """
    first, end = suspects or (0, len(sections))
    if not 0 <= first < end <= len(sections):
        raise ValueError(f"suspects must be some of the {len(sections)} sections (got {first} to {end}).")
    if sparing not in ("counts", "stitches"):
        raise ValueError(f'sparing must be "counts" or "stitches" (got "{sparing}").')
    if end - first == 1:
        return None
    row = sections[first:end]
    tree = _Tree(row, sparing)
    cut = tree.cut(0, len(row))
    left, right = (first, first + cut), (first + cut, end)
    counted, other = (left, right) if tree.stitches(0, cut) <= tree.stitches(cut, len(row)) else (right, left)
    counts, stitches = tree.expected(0, len(row))
    return NextCount(
        count=counted,
        if_wrong=counted,
        if_right=other,
        stitches=sum(section.stitches for section in sections[slice(*counted)]),
        expected_counts=counts,
        expected_stitches=stitches,
        least_counts=entropy_bits([section.odds for section in row]),
    )


class _Tree:
    """The best way to cut every run of neighbouring sections, worked out from short runs to long."""

    def __init__(self, row: Sequence[Section], sparing: Sparing) -> None:
        self._odds = _running([section.odds for section in row])
        self._stitches = _running([float(section.stitches) for section in row])
        # For each run: cut, then odds-weighted counts and stitches below it.
        self._best: dict[tuple[int, int], tuple[int, float, float]] = {}
        for start in range(len(row)):
            self._best[start, start + 1] = (start, 0.0, 0.0)
        for length in range(2, len(row) + 1):
            for start in range(len(row) - length + 1):
                run = (start, start + length)
                options = [self._weigh(*run, cut) for cut in range(start + 1, start + length)]
                # The other cost decides between equals, then the earlier cut.
                self._best[run] = min(options, key=lambda option: self._rank(option, sparing))

    def _weigh(self, start: int, end: int, cut: int) -> tuple[int, float, float]:
        odds = self._odds[end] - self._odds[start]
        fewer = min(self.stitches(start, cut), self.stitches(cut, end))
        _, left_counts, left_stitches = self._best[start, cut]
        _, right_counts, right_stitches = self._best[cut, end]
        return cut, odds + left_counts + right_counts, odds * fewer + left_stitches + right_stitches

    @staticmethod
    def _rank(option: tuple[int, float, float], sparing: Sparing) -> tuple[float, float]:
        _, counts, stitches = option
        # Rounding keeps the last binary digit from choosing between equal trees.
        pair = (round(counts, 9), round(stitches, 9))
        return pair if sparing == "counts" else pair[::-1]

    def stitches(self, start: int, end: int) -> float:
        return self._stitches[end] - self._stitches[start]

    def cut(self, start: int, end: int) -> int:
        return self._best[start, end][0]

    def expected(self, start: int, end: int) -> tuple[float, float]:
        odds = self._odds[end] - self._odds[start]
        _, counts, stitches = self._best[start, end]
        return counts / odds, stitches / odds


def _running(values: list[float]) -> list[float]:
    sums = [0.0]
    for value in values:
        sums.append(sums[-1] + value)
    return sums
