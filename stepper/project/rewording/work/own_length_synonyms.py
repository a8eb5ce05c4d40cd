"""Other wordings for a length that the page leaves to the knitter: "to desired length". No I/O.

They become `until foot measures desired length of foot less 4 cm`. The name behind "of" joins with `_` all words
that say which length it is, `total_foot__to_heel`; `stepper.project.keys.own_lengths` makes one name of them and looks
it up in the file. Where a page prints a length and leaves another open ("30 cm or desired length"), the printed
one is worked, and the words are said.
"""

from __future__ import annotations

from stepper.project.part_names import PIECE
from stepper.project.rewording.said_rows import said_row
from stepper.project.rewording.synonym import LONG, Synonym, row

_PART = rf"(?:{PIECE}|it)"
_ONE = r"(?:the\s+|your\s+|whole\s+)*"
_ABOUT = r"(?:about\s+|approx(?:imately)?\.?\s+)?"
_MEASURES = r"(?:measures|is|reaches|has\s+reached|comes\s+to)"
_WANTED = r"(?:desired|required|wanted|preferred|chosen)"
_WISHED = rf"(?:{_WANTED}|you\s+(?:like|want|wish|prefer|need))"
_WHOLE = r"(?:total|full|finished|overall)"
_ALSO = r"(?:\s*[(\[]\s*\d[^()\[\]]*?(?:cm|in|inch(?:es)?|\")\s*[)\]])?"
_SHORT = rf"{_ABOUT}({LONG}{_ALSO})\s*(?:less|short(?:er)?|shy)\s*(?:than|of)\s+"
_BEFORE = rf"{_ABOUT}({LONG}{_ALSO})\s*before\s+(?:reaching\s+)?"
_LENGTH = r"(?:length|measurement|depth|height)"
_OF_HERS = (
    rf"{_ONE}(?:({_WHOLE})\s+)?(?:{_WANTED}\s+(?:({_WHOLE})\s+)?(?:({_PART})\s+)?(?:({_WHOLE})\s+)?{_LENGTH}|{_LENGTH}\s+{_WISHED})"
    r"(?:\s+to\s+(?:the\s+)?(underarm|armhole|shoulder|hem|toe|crown|heel|wrist)s?)?\b(?:\s+of\s+(?:the\s+|your\s+)?(sleeve|body|foot|leg|cuff|hand|thumb|piece|work)\b)?"
)
"""A length wanted: six groups for the words that say which."""
_NOT_OR = r"(?<!\bor\s)"
_REACHED = r"(?:\s+(?:is|has\s+been)\s+reached)?"
_TIP = r"(tip|top|base|end|beginning|middle)\s+of\s+(?:the\s+|your\s+)*(?:(little|big|middle|index|ring)\s+)?(finger|fingers|thumb|toe|toes|thumbnail|knuckles?|wrist|ankle|calf|knee)"

_WORDS = "desired|required|wanted|preferred|chosen|length you"


def _both(has: str, before: str, behind: str, words: str, example: str, shorter: str) -> tuple[Synonym, ...]:
    """Return a row without and one with a length that it stops short of.

    Args:
        has: As in `row`.
        before: The pattern up to where "4 cm less than" may stand.
        behind: The pattern after it.
        words: The replacement of the row without it; `\\G1` to `\\G6` are the groups of `behind`.
        example: A line that needs the row without it.
        shorter: One that needs the row with it.
    """
    groups = before.count("(") - before.count("(?")
    made = []
    for less, line, more in (("", example, 0), (_SHORT, shorter, 1), (_BEFORE, "", 1)):
        text = words
        for at in range(6, 0, -1):
            text = text.replace(rf"\G{at}", rf"\{groups + more + at}")
        text += rf" less \{groups + 1}" if less else ""
        shown = line or shorter.replace("less than", "before").replace("short of", "before")
        made.append(row(has, before + less + behind, text, shown))
    return tuple(made)


_NAMED = r"\G1_\G2_\G3_\G4_\G6_\G5"

OWN_LENGTHS: tuple[Synonym, ...] = (
    said_row(
        _WORDS,
        rf"\s*\(\s*(?P<said>or\s+(?:until\s+)?(?:{_SHORT}|{_BEFORE})?{_OF_HERS}{_REACHED}(?:\s+(?:minus|less)\s+{LONG})?)\s*\)",
        "Work even until body measures desired length (or 2 in short of desired total length).",
    ),
    *_both(
        _WORDS,
        rf"{_NOT_OR}\buntil\s+{_ONE}({_PART})s?\s+{_MEASURES}\s+",
        _OF_HERS,
        rf"until \1 measures desired length of \1__{_NAMED}",
        "Work even until body measures desired length.",
        "Knit until sock measures 4 cm less than desired foot length.",
    ),
    *_both(
        _WORDS,
        rf"{_NOT_OR}\b(?:until|to)\s+",
        _OF_HERS + _REACHED,
        rf"until piece measures desired length of piece__{_NAMED}",
        "Work in rib to required length.",
        "Work even until 2 in short of desired total length.",
    ),
    row(
        _WORDS,
        rf"{_NOT_OR}\bfor\s+{_OF_HERS}",
        rf"for desired length of piece__{_NAMED}".replace(r"\G", "\\"),
        "Work in garter st for desired length.",
    ),
    row(
        "as long as",
        rf"{_NOT_OR}(?<!until\s)(?<!is\s)\b(?:for\s+)?as\s+long\s+as\s+{_WISHED}(?=\s*[.,;]|\s*$)",
        r"for desired length of piece",
        "Work even for as long as you like.",
    ),
    row(
        _WORDS,
        rf"{_NOT_OR}\buntil\s+{_ONE}({_PART})s?\s+{_MEASURES}\s+{_SHORT}{_WANTED}(?=\s*[.,;]|\s*$)",
        r"until \1 measures desired length of \1 less \2",
        "Knit until leg measures 3 cm less than desired.",
    ),
    row(
        "as long as|long enough",
        rf"{_NOT_OR}\buntil\s+{_ONE}({_PART})s?\s+(?:is|are)\s+(?:as\s+long\s+as\s+{_WISHED}|(?<!\bit\sis\s)long\s+enough(?!\s+to\b))",
        r"until \1 measures desired length of \1",
        "Work even until sleeve is as long as you like.",
    ),
    row(
        "length",
        rf"{_NOT_OR}\buntil\s+{_ONE}({_PART})\s+{_MEASURES}\s+{_SHORT}(?:the\s+|your\s+)*(?:({_WHOLE}|actual)\s+)?(foot|hand|arm|leg|body|sleeve)\s+length\b",
        r"until \1 measures desired length of \1__\3_\4 less \2",
        "Knit until sock measures 5 cm less than total foot length.",
    ),
    row(
        "reaches|comes",
        rf"{_NOT_OR}\buntil\s+{_ONE}({_PART})\s+(?:reaches|comes\s+(?:up\s+)?to)\s+(?:the\s+|your\s+)*{_TIP}\b(?!\s*[,(\[]+\s*(?:about\s+|approx(?:imately|\.)?\s+)?\d)",
        r"until \1 measures desired length of \1__to_\2_of_\3_\4",
        "Knit until hand reaches the tip of your little finger.",
    ),
    row(
        "covered",
        rf"{_NOT_OR}\buntil\s+(?:the\s+|your\s+)*{_TIP}\s+(?:is|are)\s+(?:just\s+)?covered\b",
        r"until piece measures desired length of piece__to_\1_of_\2_\3",
        "Knit until the tip of the little finger is covered.",
    ),
    row(
        "cover|level with|even with|meets",
        rf"{_NOT_OR}\buntil\s+{_ONE}({_PART})\s+(?:just\s+)?(?:covers|is\s+(?:level|even)\s+with|meets)\s+(?:the\s+|your\s+)*{_TIP}\b",
        r"until \1 measures desired length of \1__to_\2_of_\3_\4",
        "Knit until hand just covers the tip of the little finger.",
    ),
    row(
        "your ",
        rf"{_NOT_OR}\buntil\s+{_ONE}({_PART})\s*,?\s*(?P<said>(?:(?:(?:slightly\s+)?stretched|laid\s+flat)(?:\s+and\s+not\s+(?:pulled|stretched))?)?)\s*,?\s*{_MEASURES}\s+{_SHORT}(?:the\s+length\s+of\s+)?(?:the\s+|your\s+)+(foot|hand|arm|leg)\b(?!\s+(?:length|measure))",
        r"until \1 measures desired length of \1__\4 less \3",
        "Knit every round until foot is 5 cm shorter than your foot.",
        spelt_out=True,
    ),
    row(
        "than you",
        rf"{_NOT_OR}\buntil\s+{_ONE}({_PART})\s+{_MEASURES}\s+{_SHORT}you(?:'d|\s+would)?\s+(?:like|want|wish|need|prefer)(?:\s+(?:it|them))?(?:\s+to\s+be)?(?=\s*[.,;]|\s*$)",
        r"until \1 measures desired length of \1 less \2",
        "Work in pattern until sleeve is 5 cm less than you want it to be.",
    ),
    row(
        "fits",
        r"\buntil\s+(?:the\s+)?(?:button\s?|buttonhole\s+|front\s+|neck\s+)?(band|border|strip|edging)\s*,?\s+"
        r"(?P<said>(?:(?:when\s+)?(?:very\s+)?slightly\s+stretched\s*,?\s+)?fits\s+(?:up|along|a?round|down)\s+(?:the\s+)?(?:left\s+|right\s+|whole\s+|outer\s+)?(?:fronts?|edge)(?:\s+edges?)?"
        r"(?:\s+to\s+(?:the\s+)?(?:(?:beg(?:inning)?|start|top|end)\s+of\s+(?:the\s+)?)?(?:neck(?:band|\s+shapings?|\s+edge)?|v-neck|hem|shoulder))?(?:\s*,?\s*when\s+(?:very\s+)?slightly\s+stretched)?)(?=\s*,\s*end|\s*[.]|\s*$)",
        r"until \1 measures desired length of \1",
        "Work in k1, p1 rib until band, when slightly stretched, fits up left front to neck shaping.",
        spelt_out=True,
    ),
    row(
        "reach",
        r"\buntil\s+(?:the\s+)?(?:button\s?|buttonhole\s+|front\s+|neck\s+)?(band|border|strip|edging|collar)\s*,?\s+"
        r"(?P<said>(?:(?:when\s+)?(?:very\s+)?slightly\s+stretched\s*,?\s+)?(?:reaches|is\s+long\s+enough\s+to\s+reach)\s+(?:(?:up|along|a?round|down)\s+)?(?:to\s+)?(?:the\s+)?"
        r"(?:(?:beg(?:inning)?|start|top|end|cent(?:er|re))\s+of\s+(?:the\s+)?)?(?:back\s+(?:of\s+)?)?(?:neck(?:band|line|\s+shapings?|\s+edge)?|v-neck|shoulder)(?:\s*,?\s*when\s+(?:very\s+)?slightly\s+stretched)?)(?=\s*,\s*end|\s*[.]|\s*$)",
        r"until \1 measures desired length of \1",
        "Work in k1, p1 rib until strip, slightly stretched, reaches to neck.",
        spelt_out=True,
    ),
)
"""The rows, in the order tried."""
