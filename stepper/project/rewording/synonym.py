"""Define one other wording of what the grammar reads: a pattern and its replacement. No I/O."""

from __future__ import annotations

import re
from functools import cache

from stepper.records import dataclass
from stepper.regex import WORDINGS

KEPT = "\0"
"""Instead of words: the match is taken out of the line and said with it."""

N = r"(?:\d+(?:\s*[(\[]\s*[\d\s,;:]+[)\]])?|(?:one|two|three|four|five|six|seven|eight|nine|ten)\b)"
ROUND = r"(?:rounds?|rnds?|rows?)\b"
STS = r"(?:(?:stitches|stitch|sts?)\b)"
SIDE = r"(?:rs|ws|(?:right|wrong)[-\s]?side)"
"""A side of the work."""
END = r"(?=\s*[,.;)\]]|\s*$)"
LONG = (
    r'(?:\d|[¼½¾⅛⅜⅝⅞])[\d\s./¼½¾⅛⅜⅝⅞]*(?:\s*[(\[][^)\]]*[)\]])?\s*(?:cm|mm|inch(?:es)?|in|")'
    r"(?:\s*\[[\d\s.,()¼½¾⅛⅜⅝⅞/]*(?:cm|mm|in)\])?"  # the same in the other unit
)
_TO_NEEDLE = (
    r"(?:for\s+[a-z\s]+?\s(?:back\s+)?(?:on\s?to|on|to)|(?:back\s+)?(?:on\s?)?to)\s+"
    r"(?:(?:the|your|larger|smaller|main|working|circular|\d(?:\.\d+)?\s?mm)\s+)*(?:needles?|dpns?)\b"
)
"""Where stitches go that were on hold: "the sts on hold for the sleeve to the needle" wait no longer."""
HELD_BY = (
    rf"(?:hold(?!\s+{_TO_NEEDLE})|(?:a\s+)?(?:st(?:itch)?\s+)?holder|(?:waste|scrap)\s+yarn"
    r"|(?:a\s+)?spare\s+needle)\b"
)
OFF = r"(?:bind|cast)\s+off"
ROW = r"(?:row|rnd|round)"
YARN = r"(?-i:MC|CC\d?|[A-Z])"
"""A yarn by its sign."""
YARN_A_H = r"(?-i:MC|CC\d?|[A-H])"
"""A yarn by its sign, where any other letter may be a stitch or a size."""
_JOIN = r"(?:re-?)?(?:join|attach)(?:ing)?(?:\s+in)?\s+"
_WOOL = r"(?:yarn|wool|thread)\b"
CUT_YARN = rf"(?:break|cut)(?:\s+off)?\s+(?:the\s+|your\s+)?(?:working\s+)?{_WOOL}"
JOIN_YARN = rf"{_JOIN}(?:the\s+|your\s+)?(?:(?:main|working)\s+)?{_WOOL}"
"""That the yarn is joined; no second ball, from which two sides may be worked at once."""
JOIN_ANY_YARN = (
    rf"{_JOIN}(?:(?:the|your|an?|new|main|working|second|2nd)\s+)*(?:(?:ball|strand|end|length)\s+of\s+)?{_WOOL}"
)
STOCKINETTE = r"(?:st\.?[\s-]?st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?)"
CHANGE = r"(?:inc|dec)(?:reas(?:e|ing))?\.?"
BEGIN = r"(?:(?<=^)|(?<=[.!?]))\s*"
"""Where a sentence begins."""
STOP = r"\s*(?:[.!]+|$)"
"""What ends a sentence."""
CLOSED = r"(?=\s*[.;]|\s*$)"
"""That a sentence or its half ends here."""
PAUSE = r"(?=\s*[.,;]|\s*$)"
"""That a sentence or a part of it ends here."""


@dataclass(frozen=True, slots=True)
class Synonym:
    """One other wording."""

    expression: str
    """Regular expression of the words as printed."""
    words: str
    example: str
    has: tuple[str, ...]
    """Pieces of words, in lower case; one must be in the line for the pattern to be tried."""
    again: bool = False
    """Whether it is tried again on its own result, for lists."""
    said: str = ""
    """Name of the pattern's group whose words are only said with the line: they work no stitches."""
    exact: bool = False
    """Whether case matters."""
    spelt_out: bool = False
    """Whether the pattern spells out every word that is said, so that no instruction can hide among them."""

    @property
    def pattern(self) -> re.Pattern[str]:
        """The expression, compiled when a line first needs it: compiling all would slow the start."""
        return _compiled(self.expression, self.exact)


@cache
def _compiled(expression: str, exact: bool) -> re.Pattern[str]:
    return WORDINGS.compiled(expression, 0 if exact else re.I)


def word_set(words: str) -> frozenset[str]:
    """Return the words of a text, as a table of single words is written."""
    return frozenset(words.split())


def row(
    has: str,
    pattern: str,
    words: str,
    example: str,
    *,
    again: bool = False,
    exact: bool = False,
    spelt_out: bool = False,
) -> Synonym:
    """Return one row of the table.

    Args:
        has: Pieces of words in lower case, separated by `|`; one must be in the line.
        pattern: Regular expression; the group called `said`, if any, holds words to be said with the line.
        words: The replacement; `\\1` is what group 1 matched.
        example: A line that needs the row.
        again: Whether it is tried again on its own result.
        exact: Whether case matters.
        spelt_out: Whether the pattern spells out every word that is said.
    """
    said = "said" if "(?P<said>" in pattern else ""
    return Synonym(pattern, words, example, tuple(has.split("|")), again, said, exact, spelt_out)
