"""Name the kinds of work that cannot be read, and what to write instead. No I/O."""

from __future__ import annotations

import re

from stepper.records import dataclass


@dataclass(frozen=True, slots=True)
class Unsupported:
    """Words of a line that ask for work that cannot be read, and what to do about it."""

    offset: int
    length: int
    message: str
    hint: str


_SAY_STITCHES = 'Keep each row in its words, with the stitches after it: "Own words: … 40 sts."'
_KINDS: tuple[tuple[str, str, str], ...] = (
    (
        r"(?:pick(?:ing)?|take|knit|k)\s+up\b[^.;]*?\b(?:an?\s+(?:odd|even)\s+number(?:\s+of\s+(?:sts|stitches))?"
        r"|(?:at\s+)?(?:a|the)\s+rate\s+of|a\s+multiple\s+of\s+\d+)",
        "a number of stitches that is left to you",
        'Pick up, count, and write how many there are: "Pick up and knit 101 sts around neck."',
    ),
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
        r"(?:place|put|slip|sl|slide)\s+(?:(?:these|those|them|the)\s+)?(?:\d[\d\s(),:;\[\]]*)?(?:sts?\s+|stitches\s+)?just\s+(?:worked|knit(?:ted)?)"
        r"|(?:k|p|knit|purl)\s?\d[\d\s(),:;\[\]]*(?:sts?\s*|stitches\s*)?(?:,|and|then)?\s*(?:place|put|slip|sl|slide)\s+(?:these|those|them)(?:\s+sts)?",
        "stitches to be held that this row has just worked",
        'Hold them at the end of the next row: "Next row (WS): P11, hold 11 for right shoulder."',
    ),
    (
        r"(?:second|another|2nd|new|separate)\s+balls?(?:\s+of\s+(?:yarn|wool))?",
        "two pieces at once",
        'Leave one side on hold ("K20, turn, leave rem 20 sts on a holder"), and write each by itself.',
    ),
    (
        r"(?:(?:worked\s+)?back\s+and\s+forth\s+)?(?:on|over)\s+(?:the\s+)?(?:first|next|last)\s+\d[^.;,:]*?sts\s+only"
        r"|worked\s+(?:on|over)\s+(?:the\s+)?(?:first|next|last)\s+\d[^.;,:]*?sts",
        "rows over a part of the stitches",
        'Put the others on hold: "K16, turn, leave rem 16 sts on a holder."',
    ),
    (
        r"\d+\s*[(\[]\s*(?:[,;:]|\d[\d\s,;:]*?[,;:]\s*[,;:)\]])(?:[\d\s,;:]*[)\]])?",
        "a list of sizes with an empty place",
        'Write a number for each size, 0 where it is not worked: "2 (1, 0, 0)".',
    ),
    (
        r"\d+\s+(?:st\s+|sts\s+)?(?:less|more|fewer)\s+(?:sts?\s+)?between",
        "shaping told by the stitches between",
        'Write the rounds out ("Rnd 7: *K4, k2tog; rep from * around."), with "Knit 1 round." between.',
    ),
    (
        r"(?:in\s+)?(?:this|that|the\s+same|same)\s+(?:manner|fashion)",
        "rows that the line does not name",
        'Name the round ("Work dec round every 4th round 6 times."), or write the rows out.',
    ),
    (
        r"(?:to\s+|until\s+|reached\s+|reaching\s+)?(?:the\s+|your\s+)?desired\s+[a-z]+|happy\s+with(?:\s+the\s+length)?|(?:just\s+)?enough\s+yarn(?:\s+left)?",
        "a length that is left to you",
        'Write the length that you want: "Work even until piece measures 30 cm."',
    ),
    (
        r"\d[\d\s./¼½¾]*\s+to\s+\d[\d\s./¼½¾]*(?:cm|in|inches|\")",
        "one length of two",
        "Write the one that you knit.",
    ),
    (
        r"ending\s+(?:last\s+row\s+|the\s+last\s+row\s+)?at\s+(?:the\s+)?[a-z]+\s+edge",
        "a row that ends at an edge",
        'Write its side: "ending with a RS row" or "ending with a WS row".',
    ),
    (
        r"\Arep(?:eat)?\s+from\s+\*(?!\*)(?=\s+(?:\d+|once|twice|two|three|four|to)\b)",
        "the star of another line",
        'Write the star and its repeat in one line; rows are repeated so: "Rep last 18 rows 3 times more."',
    ),
    (
        r"add(?:ing)?\s+(?:\d+|one|two|three|four)\s*(?:sts?|stitch(?:es)?)",
        "more stitches without saying how they are made",
        'Write "Increase 4 sts evenly.", or where they stand: "K18, m1, k2, m1, k to end."',
    ),
    (
        r"to\s+correspond(?:\s+(?:to|with))?",
        "a part that is like another",
        'Write "Left front: As right front, reversing shaping."',
    ),
    (r"or\s+use", "one of two ways", "Write the one that you knit."),
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
        r"(?:making\s+|make\s+|with\s+|work(?:ing)?\s+)?(?:button\s?)?holes?\s+(?:to\s+match|opposite|to\s+correspond|where\s+marked|at\s+(?:the\s+)?mark(?:er|ed)?s?)\b[^.;:]*",
        "buttonholes at places that you mark",
        'Say in which rows they lie: "Rib 50 rows, working a buttonhole on the 5th, 25th and 45th rows thus: '
        'rib 5, cast off 3, rib to end."',
    ),
    (
        r"(?:work|make|repeat|placing|making|remembering)\s+(?:\w+\s+)?button\s?holes?|button\s?holes?\s+(?:as\s+before|evenly|every)",
        "buttonholes",
        'Say how many, in which row, how far from the ends and how each is made: "Rib 7 rows, making 5 '
        'buttonholes in row 4 thus: yo, k2tog, first and last 4 sts from ends, spaced evenly."',
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
    (
        r"rev(?:erse)?\.?\s+(?:st\.?[\s-]?st\.?|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?)\s*\(\s*(?:k|knit)\s[^()]*\)"
        r"|garter(?:\s+st(?:itch)?)?\s*\([^()]*(?:,|and)\s*(?:p|purl)\b[^()]*\)",
        "a fabric, and in brackets for the rows of another",
        'Write the one that is meant: "Work 4 rows in st st." or its rows, "Row 1 (RS): Purl."',
    ),
    (
        r"(?:yarn[\s-]?overs?|yo)[\s-]+(?:short[\s-]+rows?|turns?|method)|turn\s*,?\s*(?:and\s+)?(?:yarn[\s-]?over|yo)(?=\s*(?:[,.;]|$))"
        r"|(?:k|p|knit(?:ting)?|purl(?:ing)?|work(?:ing)?)\s+(?:the\s+|each\s+|every\s+)?(?:yarn[\s-]?overs?|yos?)\s+(?:together|tog)(?:\s+with)?",
        "turns with a yarn over",
        'Write the turns alone, with "short_rows: german" in the section: a double stitch stands for a loop.',
    ),
    (
        r"(?:undo|undoing|unzip|unpick|unravel|remove|release|unfasten|pull\s+out)\s+(?:the\s+|your\s+)?(?:provisional|crochet(?:ed)?)[\s-](?:cast[\s-]?on|chain|edge)"
        r"|(?:sts|stitches|loops)\s+(?:of|from)\s+(?:the\s+|your\s+)?provisional[\s-]cast[\s-]?on|(?:to|with)\s+(?:the\s+)?provisional[\s-]cast[\s-]?on|provisional(?:ly)?[\s-](?:cast[\s-]on\s+)?(?:sts|stitches|loops)|use\s+an?\s+provisional[\s-]cast[\s-]?on",
        "a provisional cast-on, whose stitches come back",
        'Say it where they are cast on ("Using a provisional cast-on, cast on 20 sts."), and where they come '
        'back: "Undo the provisional cast-on and knit 20 sts from it."',
    ),
    (
        r"[(\[]\s*(?:k|p|knit|purl)\s?\d+(?:\s+sts|\s+stitches)?\s+(?:at|along|on)\s+(?:the\s+|each\s+|both\s+|either\s+)?(?:[a-z]+\s+){0,2}(?:edges?|ends?|sides?)\s*[)\]]"
        r"|(?:k|p|knit|purl)\s?\d+(?:\s+sts|\s+stitches)?\s+at\s+(?:the\s+)?(?:armhole|neck|side|front|centre|center|outer)\s+edge",
        "stitches at an edge, by its name",
        'Write the rows with them: "Row 1 (WS): K3, p to end."',
    ),
    (
        r"(?:keep(?:ing)?\s+|work(?:ing)?\s+|knit(?:ting)?\s+)?(?:(?:the|your|all)\s+)?(?:first|last|outer(?:most)?|edge|border|end)\s+(?:(?:and\s+(?:the\s+)?last|\d+|one|two|three|four|five|six)\s+)*(?:sts?|stitch(?:es)?)\b[^.;:]*?\b(?:from\s+(?:here|now|this\s+point)(?:\s+on(?:wards?)?)?|throughout|at\s+all\s+times|always|of\s+(?:every|each)\s+row)",
        "an edge in all rows that follow",
        'Say it with each line: "Work 20 rows in st st, keeping first and last 3 sts in garter."',
    ),
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
