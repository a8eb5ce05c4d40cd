"""Other wordings that refer to another part, or to the other side of this one. No I/O.

What is worked again is named by what it is: an edge that another part shaped, the rest of a front from the row
it has come to, the rib of a part, rows of its pattern. Words that only say at which ends a mirrored front is
shaped are said with the line, where they are as its mirror image has it.
Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.synonym import LONG, ROUND, STS, N, Synonym, row

_E: Final = r"(?=\s*[.;]|\s+-+\s+\d|\s*$)"
_START: Final = r"((?:^|[.!:])\s*)"
_AS: Final = r"(?:exactly\s+)?(?:(?:the\s+)?same\s+as(?:\s+(?:given\s+)?(?:for|on))?|as\s+(?:(?:given|worked|directed|described|set)\s+)?(?:for|on)|as\s+given(?=\s+for)|like)\s+(?:the\s+)?"
_PART: Final = r"((?:(?:left|right|first|second)\s+)?(?:back|front|body|sleeves?|neckband|collar|hem|cuffs?))\b"
_DO: Final = r"(?:work|complete|finish|knit|make|cont(?:inue)?)"
_MATCH: Final = r"(?:to\s+(?:match|correspond(?:\s+(?:with|to))?)|as\s+(?:given\s+)?for|(?:the\s+)?same\s+as|like)"
_FIRST: Final = r"(?:the\s+)?(?:(?:first|1st|other|opposite)(?:\s+(?:side|half|shoulder))?|(?:left|right)\s+(?:side|half|shoulder))(?:\s+of\s+(?:the\s+)?neck)?"
_REVERSED: Final = r"(\s*,?\s*(?:but\s+)?revers(?:e|ing)\s+(?:all\s+)?(?:the\s+)?shapings?)?"
_JOINED: Final = r"(?:re-?)?(?:join|attach)\s+(?:the\s+|in\s+)?(?:yarn|wool)"
_SET: Final = rf"(?:to|for)\s+(?:the\s+)?(?:other|rem(?:aining)?|second|held)\s+(?:set\s+of\s+|group\s+of\s+)?{STS}(?:\s+(?:for|of)\s+(?:the\s+)?(?:right|left|second|other)\s+(?:shoulder|side|front|half))?"
_EDGE: Final = r"(?:(?:with\s+)?(?:the\s+)?(?:rs|ws|right\s+side|wrong\s+side)\s+facing)"
_DECS: Final = r"(?:decs?\.?|decreases?|shapings?)"
_BEG: Final = r"(?:at\s+(?:the\s+)?(?:beg(?:inning)?|start)s?)"
_FIN: Final = r"(?:at\s+(?:the\s+)?ends?)"
_ROWS: Final = r"(?:\s+of\s+(?:the\s+)?(?:(?:rs|right[-\s]side)\s+)?rows?)?"
_INNER, _OUTER = r"(?:the\s+)?(?:neck|front)(?:\s+edge)?", r"(?:the\s+)?(?:armhole|raglan|side)(?:\s+edge)?"
_TO_LEFT, _TO_RIGHT = r"(?:\s*\((?:k1,\s*)?(?:ssk|skpo?)\))?", r"(?:\s*\(k2tog(?:,\s*k1)?\))?"


def _ends(inner: str, outer: str, lean: str, other: str) -> str:
    """Return an expression for words that tell at which ends of right-side rows a front is shaped."""
    first = rf"{_INNER}\s+{_DECS}{lean}\s+{inner}{_ROWS}"
    second = rf"{_OUTER}\s+{_DECS}{other}\s+{outer}{_ROWS}"
    return rf"(?:{first}(?:\s*,?\s+and\s+{second})?|{second}(?:\s*,?\s+and\s+{first})?)"


REFERENCES: tuple[Synonym, ...] = (
    # --- a front as the other, told by its edges ---
    *(
        row("work", rf"{_START}(?:{_DO}\s+)?({{how}})\s*(?:{_AS}|to\s+(?:match|correspond\s+with)\s+(?:the\s+)?)({side}\s+front)\s*,?\s*(?P<said>(?:but\s+)?work(?:ing)?\s+{ends}){_E}".replace("{how}", how), words, example, spelt_out=True)
        for side, ends in (("left", _ends(_BEG, _FIN, _TO_LEFT, _TO_RIGHT)), ("right", _ends(_FIN, _BEG, _TO_RIGHT, _TO_LEFT)))
        for how, words, example in (
            (r"(?<=complete )|(?<=finish )", r"\1complete alike \3, reversing shaping", f"Complete same as {side.title()} Front, working armhole decs at {'end' if side == 'left' else 'beginning'} of right side rows."),
            ("", r"\1work as for \3, reversing shaping", f"Work as for {side} front, but work neck decs at the {'beginning' if side == 'left' else 'end'} of RS rows."),
        )
    ),
    *(
        row(f"{one} front", rf"{_START}(?:(?:work|knit|make)\s+)?(?:the\s+)?{one}\s+front\s+(?:is\s+)?(?:(?:worked|knitted|made)\s+)?(?:exactly\s+)?(?:like|as(?:\s+for)?|the\s+same\s+as|to\s+match|to\s+correspond\s+(?:with|to))\s+(?:the\s+)?{other}(?:\s+front)?\s*,?\s+(?:but\s+)?(?:mirrored|reversed|in\s+mirror\s+image|(?:with\s+)?(?:all\s+)?(?:the\s+)?shapings?\s+(?:is\s+|are\s+)?(?:reversed|mirrored)|revers(?:e|ing)\s+(?:all\s+)?(?:the\s+)?shapings?){_E}", rf"\1work as for {other} front, reversing shaping", f"Knit the {one} front like the {other}, but with all shapings reversed.")
        for one, other in (("right", "left"), ("left", "right"))
    ),
    # --- the other side of a neck ---
    row("match|correspond", rf"{_START}(?:{_DO}\s+)?(?:the\s+)?(?:(?:second|other|2nd|right|left)(?:\s+(?:side|half|shoulder)(?:\s+of\s+(?:the\s+)?neck)?)?\s+)?to\s+(?:match|correspond)(?:\s+(?:with\s+|to\s+)?(?:{_FIRST}|(?:the\s+)?(?:left|right)(?:\s+(?:side|shoulder|half))?))?{_REVERSED}{_E}", r"\1complete like other side\2", "Finish right side to correspond with left side, reversing shaping."),
    row("then complete|then finish|then work", rf"\s*,\s*(?:and\s+)?then\s+((?:complete|finish|work)\s+to\s+(?:match|correspond)\b)([^.;]*?)(?:\s+of\s+(?:the\s+)?neck)?{_E}", r". \1\2", "With RS facing, rejoin yarn to rem sts, patt to end, then complete to match first side of neck."),
    # --- a shaping of another part ---
    row("shap|armhole|raglan", rf"{_START}(?:shape\s+(?:the\s+)?(armhole|raglan)s?|(?:work|rep(?:eat)?)\s+(?:the\s+)?(armhole|raglan)(?:s|(?:\s+edge)?\s+(?:shapings?|(?:dec|inc)\w*(?:\s+rows?)?)))\s+{_AS}{_PART}", r"\1shape \2\3 as for \4", "Work armhole shaping as for back. 66 sts."),
    row("raglan", rf"(\buntil\s+{N}\s+{STS}\s+rem(?:ain)?)\s+in\s+(?:the\s+)?raglans?(?:\s+shapings?)?", r"\1", "Work as given for Back until 35 sts rem in raglan shaping, ending with a WS row."),
    row("completed", rf"\buntil\s+(?:the\s+)?(armhole|raglan)\s+shapings?\s+(?:have|has|is|are)\s+(?:been\s+)?(?:completed?|worked|finished|done)\s*,?\s*(?:and\s+)(?:there\s+are\s+)?({N}\s+{STS})(?:\s+rem(?:ain)?)?{_E}", r"to end of \1 shaping. \2", "Work exactly as for the front until the armhole shapings have been completed and 105 sts remain."),
    # --- rows of another part by their names ---
    row("then", rf"{_START}(work\s+(?:the\s+)?(?:[a-z]+\s+)?(?:dec|inc)\w*\s+(?:row|rnd|round))\s*,?\s*(?:and\s+)?then\s+((?:knit|purl|k|p|work)\s+(?:1|one)\s+(?:row|rnd|round))\s*,?\s*(?:{_AS}{_PART}\s*,?\s*)?({N}\s+times)(?:\s+(?:in\s+all|altogether|in\s+total))?{_E}", r"\1\2. \3. rep last 2 rows \5 in all", "Work Dec Row, then purl 1 row, 17 times in all."),
    row("rib", rf"{_START}(?:work|cont(?:inue)?|rep(?:eat)?)\s+(?:in\s+)?(?:the\s+)?rib(?:bing)?(?:\s+(?:rnd|round|row)s?)?\s*\(?\s*{_AS}{_PART}\s*\)?\s*,?\s*(?:for|until\s+(?:the\s+)?rib(?:bing)?\s+measures)\s+({LONG}|{N}\s+{ROUND})", r"\1work in rib as given for \2 for \3", "Work the Rib Rnd (as for collar) for 5 cm."),
)  # fmt: skip
"""The rows, in the order tried."""
