"""Pieces printed once and worked twice: a sleeve for both arms, a sock for the pair. No I/O.

The plan has such a piece once, since the knitter is led through it once and told of the other. The yarn
needed covers both.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from itertools import groupby

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Plan, Round
from stepper.plan.same_plan import SamePlan
from stepper.plan.yarn.yarn_use import Amount, total
from stepper.project.pairs import COPIES, OF_TWO, WHOLES, pair_alike, piece_in
from stepper.regex import regex

_MAKE_TWO = regex(r"\b(?:make|work|knit)\s+(?:2|two)\b(?!\s*(?:rows?|rnds?|rounds?|tog|st))", re.I)
_PLURAL = regex(rf"^(?:(?:both|two|2|the)\s+)*{OF_TWO}s\b(?!\s+(?:and|&))|\bboth\s+alike\b", re.I)
"""A section of such a name is written once and meant for two."""
_THE_OTHER = regex(
    rf"\b(?:second|other|left|right)\s+({OF_TWO})\b.*\b(?:same|alike|likewise|identical|match(?:es)?|as\s+(?:the\s+|for\s+)*"
    rf"(?:first|left|right|this))|\b(?:make|work|knit)\s+(?:a\s+second|another)\s+({OF_TWO})\b",
    re.I,
)
_WHOLE = regex(WHOLES)


def second_pieces(plan: Plan) -> tuple[range, ...]:
    """Return the rounds that are worked once more, by their indices; the second time follows the first.

    They are known by the name of a section ("sleeves", "sleeve (make 2)") or by a note ("The second sock is
    the same", "Both mittens are alike"), if the plan has no section of that name itself. A section that the
    plan works again itself ("Sleeves (make 2)" over its lines) is there twice already.
    """
    return _second_pieces(SamePlan(plan))


def goes_on_unread(plan: Plan, piece: range) -> bool:
    """Return whether a piece goes on with a row that is not read, in its last section or another part."""
    last = piece_in(plan.rounds[piece[-1]].section)
    return plan.open is not None and piece_in(plan.open.section) == last


@lru_cache(maxsize=4)
def _second_pieces(same: SamePlan) -> tuple[range, ...]:
    plan = same.plan
    found: list[range] = []
    copied = _copied(plan.sections)
    # "mitts, cuff" and "mitts, hand" are one piece: its second is begun when both are done.
    for _, names in groupby(plan.sections, key=piece_in):
        piece = [name for name in names if name not in copied]
        if piece and (_MAKE_TWO.search(piece[0]) or _PLURAL.search(piece[0])):
            own = [each.index for each in plan.rounds if each.section in piece]
            found.append(range(own[0], own[-1] + 1))
    for round_ in plan.rounds:
        whole = _told_of(round_, plan) if round_.section not in copied else None
        if whole is not None:
            first = _beginning(plan.rounds, round_.index, whole=whole)
            again = range(first, _end(plan.rounds, round_.index) + 1)
            if not any(set(again) & set(other) for other in found):
                found.append(again)
    return tuple(found)


def _copied(sections: Sequence[str]) -> frozenset[str]:
    """Return the sections that the plan works more than once, with their copies ("sleeves, second")."""
    copies = {f"{name}, {nth}": name for name in sections for nth in COPIES}
    made = [name for name in sections if name in copies]
    return frozenset({*made, *(copies[name] for name in made)})


def with_second_pieces(plan: Plan, uses: Sequence[dict[str, Amount]]) -> tuple[dict[str, Amount], ...]:
    """Add what the second piece takes to the last round of the first.

    Args:
        plan: The plan.
        uses: What `yarn_use` returned: for each round what it takes of each yarn.
    """
    made = list(uses)
    for piece in second_pieces(plan):
        last = dict(made[piece[-1]])
        for yarn in dict.fromkeys(key for index in piece for key in uses[index]):
            again = total(uses[index][yarn] for index in piece if yarn in uses[index])
            last[yarn] = total((last.get(yarn, Amount()), again))
        made[piece[-1]] = last
    return tuple(made)


def _told_of(round_: Round, plan: Plan) -> bool | None:
    """Return whether a remark asks for a second whole garment rather than a piece; None if it asks for
    neither."""
    for remark in round_.remarks:
        noun = pair_alike(remark)
        if noun:
            printed = sum(noun in name.lower() for name in plan.sections)
            if printed < 2:  # else each is printed, left and right
                return _WHOLE.fullmatch(noun) is not None
        other = _THE_OTHER.search(remark)
        if other is not None:
            noun = (other.group(1) or other.group(2)).lower()
            given = re.match(r"\w+\s+\w+", other.group(0).lower())
            if given is None or given.group(0) not in {name.lower() for name in plan.sections}:
                return _WHOLE.fullmatch(noun) is not None
    return None


def _beginning(rounds: Sequence[Round], index: int, *, whole: bool) -> int:
    """Return where the current piece was begun: on empty needles, and for a whole garment with nothing on
    hold."""
    for at in range(index, -1, -1):
        if rounds[at].before:
            continue
        first = next((run for run in rounds[at].runs if stitch(run.stitch).kind is not Kind.SHIFT), None)
        on_hold = at > 0 and bool(rounds[at - 1].held)
        if not whole or (first is not None and first.stitch == "co" and not on_hold):
            return at
    return 0


def _end(rounds: Sequence[Round], index: int) -> int:
    """Return the last round of the piece in hand."""
    return next((at for at in range(index, len(rounds)) if not rounds[at].after), len(rounds) - 1)
