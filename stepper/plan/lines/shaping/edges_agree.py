"""Refuse a row shaped for the neck at the edge where the armhole is, or the other way round. No I/O.

Theory of operation. In a piece with one armhole, the neck is at the other edge: who binds off for one where
right-side rows begin binds off for the other where wrong-side rows begin. Pages say "bind off 12 sts for
neck" and trust the knitter to see which row begins there; the row that happens to come next may be the wrong
one. Source: common practice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache

from stepper.plan.drafts import DraftRound
from stepper.plan.lines.shaping.edge_sides import said_of_shaping, shaped_at_one_end
from stepper.plan.model import other_side
from stepper.plan.state.needles import Needles
from stepper.project.instructions import Line
from stepper.regex import regex

_FOR: re.Pattern[str] = regex(
    r"\b(?:for|at)\s+(?:the\s+)?(?:(?:back|front|left|right)\s+)?"
    r"(?:(?P<inner>v?-?neck)|(?P<outer>arm-?hole|underarm|shoulder|raglan))(?:\s+(?:edge|shaping))?\b",
    re.I,
)
"""What a row is shaped for; a row that names both is left alone."""
_ACROSS = {"inner": "the neck", "outer": "the armhole"}


def check_edges(lines: Sequence[Line], needles: Needles, since: int) -> None:
    """Compare the rows since a draft with those of the same piece that were shaped for the other edge.

    Args:
        lines: The lines these rows come from.
        needles: What was worked so far.
        since: Index of the first draft to compare.
    """
    if needles.counting.lost or not any(_edge(line.text) for line in lines):
        return
    new = {line.place.line: line for line in lines}
    named = {line.place.line: _edge(line.text) for line in needles.project.lines}
    found: dict[str, list[tuple[str, DraftRound]]] = {"inner": [], "outer": []}
    for begins, draft in shaped_at_one_end(needles):
        edge = named.get(draft.line, "")
        if not edge:
            continue
        own, other = found[edge], found["outer" if edge == "inner" else "inner"]
        here = draft.line in new and any(draft is one for one in needles.drafts[since:])
        apart = begins not in {side for side, _ in own}
        if here and apart and {side for side, _ in other} == {begins}:
            _refuse(new[draft.line], edge, other[-1][1], draft, needles)
            return
        own.append((begins, draft))


def _refuse(line: Line, edge: str, other: DraftRound, draft: DraftRound, needles: Needles) -> None:
    across = f"the edge where line {other.line} shapes {_ACROSS['outer' if edge == 'inner' else 'inner']}"
    needles.report(
        line.place,
        f"this shapes {_ACROSS[edge]} in a {_SIDE[draft.side]}, at {across}.",
        f"Work one row more or fewer before it, so that it comes in a {_SIDE[other_side(draft.side)]}.",
    )
    needles.lose()


_SIDE = {"RS": "right-side row", "WS": "wrong-side row"}


@lru_cache(maxsize=4096)  # every line is asked for each that is worked, in every size
def _edge(text: str) -> str:
    """Return `inner` or `outer` if a line names one edge; empty if it names none, or both."""
    shaped = _FOR.finditer(said_of_shaping(text))
    named = {kind for match in shaped for kind, words in match.groupdict().items() if words}
    return named.pop() if len(named) == 1 else ""
