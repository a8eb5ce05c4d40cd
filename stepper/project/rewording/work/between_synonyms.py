"""Other wordings of several shapings in one sentence, with the count after each printed between them. No I/O.

"Dec 1 st at each end of next 3 rows (51 sts), then on every alternate row 4 times (43 sts)" is written out as two
shapings, each with its count behind it; so each count is checked where it holds.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.synonym import OFF, ROUND, STS, N, Synonym, row

_WHERE: Final = r"(?:(?:at\s+)?(?:each|both)\s+(?:ends?|sides?)|at\s+(?:the\s+)?(?:neck|armhole|front|side)\s+edges?)"
_CHANGE: Final = rf"(?:inc|dec)(?:rease)?\.?\s+{N}\s+{STS}\.?\s+{_WHERE}"
_LONG: Final = rf"(?:(?!\b(?:sts|stitches|until|while|same\s+time|then)\b)[^.;:*])*?(?:{ROUND}|\btimes|\btwice|\bonce)"
_COUNT: Final = rf"\s*[,(:-]+\s*({N}\s+{STS}(?:\s+(?:rem(?:ain(?:ing)?)?|in\s+all))?)\.?\s*[)]?\s*-*\s*,?\s*"
_THEN: Final = r"(?:(?:and|then)\s+)+"
_AT_BEG: Final = rf"at\s+(?:the\s+)?beg(?:inning)?\.?\s+of\s+(?:each\s+of\s+)?(?:the\s+)?(?:next|foll(?:owing)?)\s+{N}\s+rows"
_WORK: Final = r"(?=(?:dec|inc|work|cont|cast|bind|bo|k|p|knit|purl|rep|change)(?:rease|tinue|eat)?\b)"

BETWEEN: tuple[Synonym, ...] = (
    row(
        "sts|stitches",
        rf"\b({_CHANGE})(\s+{_LONG}){_COUNT}{_THEN}(?:{_WHERE}\s+)?((?:of|on|in)\s+)?(?=(?:the\s+)?(?:next|every|each|foll|{N}\s+foll))",
        r"\1\2. \3. \1 \4",
        "Dec 1 st at each end of next 3 rows (51 sts), then on every alternate row 4 times.",
    ),
    row(
        "sts|stitches",
        rf"\b({OFF}|bo)(\s+{N}\s+{STS}\.?\s+{_AT_BEG}){_COUNT}(?:{_THEN})?(?={N}\s+{STS}\.?\s+{_AT_BEG})",
        r"\1\2. \3. \1 ",
        "Cast off 6 sts at beg of next 2 rows (62 sts), then 4 sts at beg of next 2 rows.",
        again=True,
    ),
    row(
        "and ",
        rf"\b({OFF}|bo)(\s+{N}\s+{STS}\.?\s+{_AT_BEG})\s*,?\s+and\s+(?:then\s+)?(?={N}\s+{STS}\.?\s+{_AT_BEG})",
        r"\1\2. \1 ",
        "Bind off 5 sts at beg of next 2 rows, and 4 sts at beg of next 4 rows.",
        again=True,
    ),
    row(
        "then",
        rf"\b((?:{_CHANGE}|(?:{OFF}|bo)\s+{N}\s+{STS})\b{_LONG}){_COUNT}(?:and\s+)?then\s+{_WORK}",
        r"\1. \2. ",
        "Cast off 6 sts at beg of next 2 rows (62 sts), then dec 1 st at each end of next 4 rows.",
    ),
    row(
        "sts|stitches",
        rf"\b((?:{_CHANGE}|(?:{OFF}|bo)\s+{N}\s+{STS}\.?\s+{_AT_BEG})(?:[^.;:*]*?(?:{ROUND}|\btimes|\btwice|\bonce))?)\s*[(-]+\s*({N}\s+{STS}(?:\s+(?:rem(?:ain(?:ing)?)?|in\s+all))?)\.?\s*\)?(?=\s*-?\s*\.?\s*$)",
        r"\1. \2",
        "Inc 1 st at each end of every 4th row 5 times (60 sts).",
    ),
)
"""The rows, in the order tried."""
