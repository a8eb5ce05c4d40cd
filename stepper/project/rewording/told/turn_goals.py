"""Write how far short rows go on in the grammar's words: told by the stitches between their turns, or beyond them. No I/O.

"Until there are 9 DS on each side and 10 plain sts in the middle", "until 10 sts remain between the wraps", "until 9 sts are
wrapped at each side and 10 sts rem unwrapped in the center": the phrases come in any order, and those between the turns say
it; how many turns there are is said with the line. "Until one st remains beyond the gap at each side" counts those that
no row has taken in yet. Source: the wording of heels in print; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded, cut_out, laid_anew
from stepper.project.rewording.synonym import STS, N
from stepper.project.rewording.told.numbers import digits_of
from stepper.regex import regex

_TURNED: Final = rf"(?:ds|double\s+{STS}|wrapped\s+{STS}|wraps|turned\s+{STS}|turns)(?!\w)"
_SIDE: Final = r"(?:on|at)\s+(?:each|either|both)\s+(?:sides?|ends?)(?:\s+of\s+(?:the\s+)?(?:heel|needle|row))?"
_THERE: Final = r"(?:(?:there\s+are|there\s+is|you\s+have|only)\s+)*"
_REM: Final = r"(?:rem(?:ains?|aining)?|(?:are|is)\s+(?:left|remaining)|left)"
_MIDDLE: Final = r"(?:in|at)\s+(?:the\s+)?(?:cent(?:er|re)|middle)(?:\s+of\s+(?:the\s+)?(?:heel|needle|row))?"
_BETWEEN: Final = rf"(?:in\s+)?between\s+(?:them|(?:the\s+)?(?:two\s+|outer\s+|last\s+)?(?:{_TURNED}))"
_WRAPS: Final = rf"(?:in\s+)?between\s+(?:the\s+)?(?:two\s+|outer\s+|last\s+)?(?:wrapped\s+{STS}|wraps)(?!\w)"
_STATE: Final = r"(?:unwrapped|plain|unworked|untouched|undoubled|single)"
_SIDES: Final = rf"(?:{N}\s+{_TURNED}\s+{_SIDE}|{N}\s+{STS}\s+(?:are|have\s+been)\s+(?:wrapped|doubled|turned)\s+{_SIDE})"
_INNER: Final = rf"(?P<n>{N})\s+(?:{_STATE}\s+)?(?:{STS}\s+)?(?:(?:{_REM}|{_STATE})\s+)*(?:{_MIDDLE}|{_BETWEEN})"
_E: Final = r"(?=\s*[.,;(=]|\s+-|\s*$)"
_GOALS: Final = tuple(
    regex(rf"\b(?:until|till)\s+{_THERE}{expression}{_E}", re.IGNORECASE)
    for expression in (
        rf"(?P<said>{_SIDES})\s*,?\s*(?:(?:and|with)\s+)?{_THERE}{_INNER}",
        rf"{_INNER}\s*,?\s*(?:and|with)\s+{_THERE}(?P<said>{_SIDES})",
        _INNER.replace(_BETWEEN, _WRAPS),  # between double stitches, the one that the next row makes may count
    )
)
_BEYOND: Final = regex(
    rf"\b(?:until|till)\s+{_THERE}(?P<n>{N})\s+{STS}\s+{_REM}\s+(?:(?:unworked\s+)?(?:beyond|outside|past|after)\s+(?:the\s+|each\s+)?(?:gaps?|turns?)\s+{_SIDE}|{_SIDE}\s+(?:beyond|outside|past|after)\s+(?:the\s+)?(?:gaps?|turns?)){_E}",
    re.IGNORECASE,
)


_ROWS_TOLD: Final = regex(
    rf"(\b(?:until|till)\b[^.;:]*?(?:\bneedle\s?[1-5]|\bN[1-5]|\b{STS}(?:\s+rem(?:ain)?)?))\s*(?:-+|[,;(])\s*(?P<said>(?:that(?:'s|\s+is)\s+)?{N}\s+(?:dec|inc)(?:rease)?\s+(?:rounds?|rnds?|rows?)(?:\s+(?:worked|in\s+all|altogether))?)\s*\)?(?=\s*(?:\.|$))",
    re.IGNORECASE,
)
"""How many rows a repeat comes to, behind what it is worked until."""


def write_turn_goals(line: Reworded) -> Reworded:
    """Write how far short rows of a line go on; the same line if it tells none by their turns."""
    line = _write_goal(line)
    each = _EACH.search(line.text)
    if each is not None:
        line = laid_anew(line, each.start("gap"), each.end(), [". ", each.span("n"), " sts on each needle"])
    ending = _ENDING.search(line.text)
    return line if ending is None else laid_anew(line, *ending.span(), [". Ends with row ", ending.span("n")])


_EACH: Final = regex(rf"\b(?:until|till)\s[^.;:]*?{STS}(?:\s+(?:rem(?:ain)?|(?:are\s+)?left))?(?P<gap>\s*[,;:(-]+\s*)(?:(?:with|that\s+is|i\.e\.)\s+)?(?P<n>{N})(?:\s+{STS})?\s+on\s+each\s+(?:needle|half)\s*\)?(?=\s*(?:\.|$))", re.IGNORECASE)
"""How many lie on each needle then, which is a count of its own."""
_ENDING: Final = regex(r"(?:(?<=at each side are worked)|(?<=unwrapped in the center))\s*,?\s*(?:and\s+)?(?:ending|finishing)\s+(?:with|on|after)\s+(?:an?\s+)?row\s+(?P<n>\d+)(?=\s*(?:\.|$))", re.IGNORECASE)


def _write_goal(line: Reworded) -> Reworded:
    """Write what a repeat of a line goes on to."""
    rows = _ROWS_TOLD.search(line.text)
    if rows is not None:
        line = cut_out(line, [(rows.end(1), rows.end(), rows["said"])])
    beyond = _BEYOND.search(line.text)
    if beyond is not None:
        return laid_anew(line, *beyond.span(), ["until all but ", _number(beyond), " sts at each side are worked"])
    for goal in _GOALS:
        found = goal.search(line.text)
        if found is not None:
            made = laid_anew(line, *found.span(), ["until ", _number(found), " sts rem unwrapped in the center"])
            said = found.groupdict().get("said")
            return replace(made, kept=(*made.kept, said)) if said else made
    return line


def _number(found: re.Match[str]) -> str | tuple[int, int]:
    """Return a number as the grammar has it: in figures."""
    digits = digits_of(found["n"])
    return found.span("n") if digits == found["n"] else digits
