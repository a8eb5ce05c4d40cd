"""Name the kinds of work that cannot be read, and what to write instead. No I/O."""

from __future__ import annotations

import re
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Unsupported:
    """Words of a line that ask for work that cannot be read, and what to do about it."""

    offset: int
    length: int
    message: str
    hint: str


_SAY_STITCHES = 'Write what becomes of the stitches ("K to end. 40 sts."), and the rest as "Note: …".'
_KINDS: tuple[tuple[str, str, str], ...] = (
    (r"brk\d*|brp\d*|bark|brioche|sl1yo|sl1yof", "brioche", _SAY_STITCHES),
    (r"i-?cord(?:s)?", "an I-cord", 'Write "Bind off." or "Cast on 3 sts." with the rest as "Note: …".'),
    (r"intarsia", "intarsia", "Draw the colours as a chart, and name its yarns in the key."),
    (r"double[-\s]knit(?:ting|ted)?", "double knitting", _SAY_STITCHES),
    (r"entrelac|modular\s+squares?", "entrelac", "Write each piece as a section of its own."),
    (r"steek(?:s|ed)?", "a steek", "Cast on or bind off its stitches as other stitches."),
    (
        r"(?:single|double|treble)\s+crochet|crochet|slip\s+st\s+crochet|sc\s+in",
        "crochet",
        'Write it as "Note: …".',
    ),
    (r"beads?|bead(?:ed|ing)", "beads", 'Write the round without them, and the beads as "Note: …".'),
    (
        r"(?:both|two)\s+(?:sides|sleeves|fronts|socks)\s+at\s+(?:once|the\s+same\s+time)",
        "two pieces at once",
        "Write each piece as a section of its own.",
    ),
    (
        r"(?:less|shorter)\s+than\s+(?:the\s+|your\s+)?(?:total|full|finished|desired|actual)?\s*(?:foot|hand|arm|body|leg)\s+length",
        "a length of the wearer",
        'Write the length that is left: "Work even until piece measures 17 cm from cast-on."',
    ),
    (
        r"until\s+all\s+(?:of\s+)?(?:the\s+)?(?!the\b|of\b)[a-z]+\s+(?:sts|stitches)\s+(?:have\s+been|are)\s+(?:worked|used|decreased|dec'd)",
        "stitches that the page does not count",
        'Write how many are left then: "Rep rows 1 and 2 until 56 sts rem."',
    ),
    (
        r"(?:the\s+)?marked\s+st(?:itch(?:es)?)?|mark\s+(?:the\s+)?cent(?:er|re)\s+st(?:itch)?",
        "a marked stitch",
        'Place a marker on each side of it ("pm, k1, pm"), and work to that marker.',
    ),
    (
        r"(?:work|make)\s+(?:\w+\s+)?buttonholes?|buttonholes?\s+(?:as\s+before|evenly)",
        "buttonholes",
        'Write the row out, as "K4, *yo, k2tog, k8; rep from * 3 times more, k to end."',
    ),
    (
        r"drop(?:ped|ping)?\s+(?:(?:\d+|the|extra|next)\s+)*(?:sts?|stitch(?:es)?|wraps?)|wrap(?:ping)?\s+(?:the\s+)?yarn\s+(?:twice|\w+\s+times)",
        "dropped stitches",
        'Write the round without them, and what is dropped as "Note: …".',
    ),
    (
        r"held\s+(?:double|together)|(?:two|2|double)\s+strands?",
        "a yarn held double",
        "Give the strands together a name of their own under `yarn`.",
    ),
    (
        r"inside\s+out|life\s?lines?",
        "work beside the needles",
        'Write it as "Note: …", and what is knitted then as a line of its own.',
    ),
    (
        r"(?:in\s+)?(?:two|2)\s+halves|each\s+side\s+separately",
        "two pieces at once",
        'Leave one on hold ("K20, turn, leave rem 20 sts on a holder"), and write each by itself.',
    ),
    (
        r"long\s+enough\s+to(?:\s+\w+)?|(?:the\s+)?yarn\s+runs\s+out",
        "a length that is seen on the needles",
        'Write the length: "Knit until piece measures 30 cm."',
    ),
    (r"this\s+sequence", "rows that the line does not name", 'Name them: "Rep rows 1-4 4 times more."'),
    (r"thrum(?:s|med)?", "thrums", 'Write the round without them, and the thrums as "Note: …".'),
)
"""Words, what they ask for, and what to write instead."""


def find_unsupported(plain: str) -> Unsupported | None:
    """Find words that ask for work that cannot be read; None if there are none."""
    for words, kind, hint in _KINDS:
        found = re.search(rf"(?<![\w-])(?:{words})(?![\w-])", plain, re.I)
        if found is not None:
            message = f'"{found.group()}" asks for {kind}, which is not read from words.'
            return Unsupported(found.start(), len(found.group()), message, hint)
    return None
