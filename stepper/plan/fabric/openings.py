"""Give a buttonhole its columns back: stitches bound off within a row and cast on again in the next. No I/O.

What is cast on over an opening goes on as what was bound off there: a rib runs on above the buttonhole.
Source: common practice.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from stepper.plan.drafts import DraftRound
from stepper.plan.model import flatten
from stepper.plan.state.in_hand import Column, Opening


def openings_of(draft: DraftRound, columns: Sequence[Column]) -> tuple[Opening, ...]:
    """Return where a row bound off between its other stitches.

    Args:
        draft: The row.
        columns: Before it, from the right side.
    """
    if "bo" not in draft.codes or not draft.after or len(columns) != draft.before:
        return ()
    wrong = draft.side == "WS"
    made = []
    for code, used, left, number in _walked(draft):
        if code == "bo" and 0 < left < draft.after:
            first = draft.before - used - number if wrong else used
            at = draft.after - left if wrong else left
            made.append(Opening(at, tuple(columns[first : first + number])))
    return tuple(made)


def with_openings_closed(
    draft: DraftRound, columns: Sequence[Column], openings: Sequence[Opening]
) -> list[Column]:
    """Return the columns after a row, with those that the row before bound off where it casts on as many.

    Args:
        draft: The row.
        columns: After it, from the right side, as they are beside nothing else known.
        openings: Where the row before bound off.
    """
    made = list(columns)
    if not openings or "co" not in draft.codes or len(made) != draft.after:
        return made
    wrong = draft.side == "WS"
    period = max(map(len, made), default=1)
    for code, used, left, number in _walked(draft):
        at = draft.before - used if wrong else used
        first = draft.after - left - number if wrong else left
        found = next((each for each in openings if each.at == at and len(each.columns) == number), None)
        if code == "co" and found is not None and all(period % len(one) == 0 for one in found.columns):
            made[first : first + number] = [one * (period // len(one)) for one in found.columns]
    return made


def _walked(draft: DraftRound) -> Iterator[tuple[str, int, int, int]]:
    """Yield each run of a row: its stitch, what is used and left before it, and how often it is worked."""
    used = left = 0
    for run in flatten(draft.phrase):
        yield run.stitch, used, left, run.times
        used, left = used + run.uses, left + run.leaves
