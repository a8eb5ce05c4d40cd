"""The pattern that the page calls just "the pattern", where only rib was worked in the piece so far. No I/O.

"These 4 rows form the pattern" on the back, and behind the rib of the sleeve "Cont in patt": the rows of
the back are meant there; behind the rib of a band the rib is. Nobody can tell, so the line is refused.
"""

from __future__ import annotations

import re
from functools import lru_cache

from stepper.plan.drafts import DraftRound
from stepper.plan.state.measuring_places import is_rib
from stepper.plan.state.needles import Needles
from stepper.project.instructions import Line
from stepper.project.problems import Span
from stepper.regex import regex

THE_PATTERN = "the pattern"
"""The key of its rows among the patterns of the page."""
def pattern_of(part: str) -> str:
    """Return the key of the rows that the page calls the pattern of one part, by the name of its section."""
    return f"{THE_PATTERN} of {part.lower()}"


_FORMS = regex(r"\b(?:form|make|set(?:\s+up)?|establish)\s+(?:the\s+)?patt(?:ern)?\b\.?(?!\s+st)", re.I)


@lru_cache(maxsize=4096)  # every line is asked in every size
def _forms_pattern(text: str) -> bool:
    """Return whether a line calls the rows in hand the pattern."""
    return _FORMS.search(text) is not None


def _is_border(draft: DraftRound) -> bool:
    """Return whether a row is ribbed, or knitted or purled throughout."""
    return is_rib(draft) or draft.codes in ({"k"}, {"p"})


def keep_page_pattern(lines: list[Line], needles: Needles) -> None:
    """Keep the rows in hand where a line calls them the pattern, and gives them no other name."""
    if needles.counting.lost or not any(_forms_pattern(line.text) for line in lines):
        return
    cycle = needles.patterns.get(needles.section.defined) or needles.established.cycle
    if len(cycle) > 1:
        needles.patterns[THE_PATTERN] = cycle
        needles.patterns[pattern_of(needles.section.name)] = cycle


def may_mean_page_pattern(place: Span, needles: Needles) -> bool:
    """Return whether "in pattern" may mean rows of another part and not the rib in hand; it is reported."""
    rows = needles.patterns.get(THE_PATTERN)
    if not rows or needles.counting.lost:
        return False
    begun = max((at for at, draft in enumerate(needles.drafts) if not draft.before), default=0)
    if needles.drafts and "return" in needles.drafts[begun].codes:
        return False  # stitches that were on hold have a fabric of their own
    piece = needles.drafts[begun + 1 :]
    plain = [draft for draft in piece if draft.before == draft.after]
    if not plain or not all(map(_is_border, plain)) or any(draft.template in rows for draft in piece):
        return False
    shown = [draft for draft in needles.drafts[:begun] if draft.template in rows]
    if not shown or all(map(is_rib, shown)):
        return False
    line = min(draft.line for draft in shown)
    needles.miss(
        place,
        f"the pattern of the page stands in line {line}, and only a border was worked in this piece, so "
        "nobody can tell which goes on here.",
        'Write "in rib" or "even". Or give the rows a name where they stand, in a line of its own ("These 4 '
        'rows form leaf pattern."), and write "in leaf pattern" here.',
    )
    return True
