"""Other wordings that refer to another part, or to the other side of this one. No I/O.

What is worked again is named by what it is: an edge that another part shaped, the rest of a front from the row
it has come to, the rib of a part, rows of its pattern. Words that only say at which ends a mirrored front is
shaped are said with the line, where they are as its mirror image has it.
Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.pairs import WHOLES
from stepper.project.part_names import EDGING, PART, STRIP, WHICH
from stepper.project.rewording.synonym import LONG, ROUND, STS, N, Synonym, row

_E: Final = r"(?=\s*[.;]|\s+-+\s+\d|\s*$)"
_START: Final = r"((?:^|[.!:])\s*)"
_AS: Final = r"(?:exactly\s+)?(?:(?:the\s+)?same\s+as(?:\s+(?:given\s+)?(?:for|on))?|as\s+(?:(?:given|worked|directed|described|set)\s+)?(?:for|on)|as\s+given(?=\s+for)|like)\s+(?:the\s+)?"
_PART: Final = rf"({WHICH}(?:{PART}|{EDGING})s?)\b"
_DO: Final = r"(?:work|complete|finish|knit|make|cont(?:inue)?)"
_FIRST: Final = r"(?:the\s+)?(?:(?:first|1st|other|opposite)(?:\s+(?:side|half|shoulder))?|(?:left|right)\s+(?:side|half|shoulder))(?:\s+of\s+(?:the\s+)?neck)?"
_REVERSED: Final = r"(\s*,?\s*(?:but\s+)?revers(?:e|ing)\s+(?:all\s+)?(?:the\s+)?shapings?)?"
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


# --- any part, in any words ---
_LIKE: Final = (
    r"(?:(?:exactly|just|again)\s+)?(?:(?:in\s+)?the\s+same(?:\s+(?:way|manner))?\s+as(?:\s+(?:you\s+did\s+)?(?:for|on))?|as\s+(?:(?:you\s+(?:did|worked|knit)|given|worked|directed|described|written|set\s+out)\s+)?(?:for|on)"
    r"|as(?=\s+(?:the\s+)?(?:left|right|first|section|part|back|front)\b)|like|identical(?:ly)?\s+(?:to|with))\s+(?:the\s+)?"
)
_ITEM: Final = rf"(?:{WHOLES}|{PART}|{STRIP}|cuff)"
_OTHER: Final = rf"(?:(?:(?:left|right|first|1st|other)\s+)(?:{_ITEM})|back|front|body|(?:section|part|step|block|stage|tier|square|chapter)\s+\d{{1,2}}|(?:little|ring|middle|index)\s+finger)"
_MIRRORED: Final = (
    r"(?:(?:with\s+|work(?:ing)?\s+)?(?:(?:all|the|its)\s+)*(?:shapings?|decreases?|decs?|increases?|everything|sides?)\s+(?:(?:is|are)\s+)?(?:reversed|mirrored|in\s+reverse|the\s+other\s+way\s+(?:a?round))"
    r"|(?:mirrored|reversed|in\s+(?:mirror\s+image|reverse)|as\s+(?:a|its)\s+mirror\s+image|the\s+other\s+way\s+a?round|mirror-?wise)"
    r"|(?:mirror(?:ing)?|revers(?:e|ing))(?:\s+(?:all|the|both|its))*\s+(?:shapings?|decreases?|decs?|increases?|everything))"
)
_GO: Final = r"(?:(?:now\s+|then\s+)?(?:work|knit|make|complete|finish|cont(?:inue)?))"
_SELF: Final = rf"(?:(?:the|this|your|a|one)\s+)*(?:(?:left|right|second|2nd|other)\s+)?(?:front|sleeve|{WHOLES})"

REFERENCES: tuple[Synonym, ...] = (
    # --- in whatever words ---
    row("mirror|revers|the other way", rf"(\b(?:{_LIKE}|(?:to\s+)?(?:match|correspond(?:\s+(?:to|with))?)\s+(?:the\s+)?)(?:{_OTHER}|(?:left|right|first|other)(?:\s+one)?)(?:\s+(?:to|until|up\s+to|as\s+far\s+as)\s+[^.;,]*?)?)\s*[,;]?\s+(?:but\s+|and\s+|only\s+)?(?!revers(?:ing|e)\s+(?:all\s+)?(?:the\s+)?shapings?\b)(?:{_MIRRORED}){_E}", r"\1, reversing shaping", "Work second mitten as for right mitten up to the thumb, mirrored."),
    *(
        row("mirror", rf"{_START}(?:(?:work|knit|make)\s+)?(?:the\s+)?{one}\s+({_ITEM})\s+(?:is\s+|as\s+)?(?:(?:worked|knit(?:ted)?|made)\s+)?(?:as\s+)?(?:a|the)?\s*mirror\s+image\s+(?:of|to)\s+(?:the\s+)?{other}(?:\s+\2)?{_E}", rf"\1work as for {other} \2, reversing shaping", f"The {one} front is a mirror image of the {other}.")
        for one, other in (("right", "left"), ("left", "right"))
    ),
    *(
        row("shoulder|side|half", rf"{_START}(?:{_GO}\s+)?(?:the\s+)?{one}\s+(side|half|shoulder)(?:\s+of\s+(?:the\s+)?neck)?\s+(?:(?:is|are)\s+)?(?:(?:worked|knit(?:ted)?|made)\s+)?(?:{_LIKE}|to\s+(?:match|correspond\s+(?:to|with))\s+(?:the\s+)?){other}(?:\s+(?:\2|one))?\s*(,\s*revers(?:ing|e)\s+(?:all\s+)?(?:the\s+)?shapings?)?{_E}", r"\1complete like other side\3", f"Work the {one} shoulder as the {other}, reversing shaping.")
        for one, other in (("left", "right"), ("right", "left"))
    ),
    row("follow", rf"{_START}(?:now\s+)?follow\s+(?:all\s+)?(?:the\s+)?(?:instructions|directions|steps|pattern)\s+(?:given\s+)?(?:for|of)\s+(?:the\s+)?(?={_OTHER}\b)", r"\1work as for ", "Follow the directions of the first sleeve."),
    row("sections|parts|steps", rf"{_START}(?:now\s+)?(?:work|knit|do|rep(?:eat)?)\s+(section|part|step|block|stage)s\s+(\d{{1,2}})\s+(?:and|&)\s+(\d{{1,2}})(?:\s+(?:again|once(?:\s+(?:more|again))?|one\s+more\s+time))?{_E}", r"\1work as for \2 \3. Work as for \2 \4", "Repeat sections 2 and 3 once more."),
    row("as|like|same|identical", rf"{_START}(?:{_GO}\s+(?:{_SELF}\s+)?(?<!complete\s)(?<!finish\s)){_LIKE}(?={_OTHER}\b)", r"\1work as for ", "Work exactly like the left mitten up to the thumb."),
    row("match|correspond", rf"{_START}(?:now\s+)?(?:complete|finish)\s+(?:(?:this|it|the\s+(?:left|right|second)\s+{_ITEM})\s+)?to\s+(?:match|correspond\s+(?:with|to))\s+(?:the\s+)?(?=(?:left|right|first)\s+(?:sleeve|{WHOLES})\b)", r"\1complete as for ", "Complete to match the right mitt."),
    row("as far as", r"(\bwork\s+as\s+for\s+(?:the\s+)?[a-z]+(?:\s+[a-z]+|\s+\d+)?)\s+as\s+far\s+as\s+", r"\1 up to ", "Knit as for the first sleeve as far as the cap shaping."),
    row("including|incl", rf"(\b{_LIKE}{_OTHER})\s*,\s*(?P<said>incl(?:uding|\.)?\s+(?:(?:all|the|both)\s+)*(?:markers?|marker\s+threads|armhole\s+markers))\s*,\s*", r"\1 ", "Work like the back, including the markers, until piece measures 50 cm.", spelt_out=True),
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
        row(f"{one} front", rf"{_START}(?:(?:work|knit|make)\s+)?(?:the\s+)?{one}\s+front\s+(?:is\s+)?(?:(?:worked|knitted|made)\s+)?(?:exactly\s+)?(?:like|as(?:\s+for)?|the\s+same\s+as|to\s+match|to\s+correspond\s+(?:with|to))\s+(?:the\s+)?{other}(?:\s+front)?\s*,?\s+(?:but\s+)?(?:mirrored|reversed|in\s+mirror\s+image|(?:with\s+)?(?:all\s+)?(?:the\s+)?shapings?\s+(?:is\s+|are\s+)?(?:reversed|mirrored)|revers(?:e|ing)\s+(?:all\s+)?(?:the\s+)?shapings?){_E}", rf"\1work as for {other} front, reversing shaping", f"The {one} front to match {other} front, reversing shaping.")
        for one, other in (("right", "left"), ("left", "right"))
    ),
    # --- the other side of a neck ---
    row("match|correspond", rf"{_START}(?:{_DO}\s+)?(?:the\s+)?(?:(?:second|other|2nd|right|left)(?:\s+(?:side|half|shoulder)(?:\s+of\s+(?:the\s+)?neck)?)?\s+)?to\s+(?:match|correspond)(?:\s+(?:with\s+|to\s+)?(?:{_FIRST}|(?:the\s+)?(?:left|right)(?:\s+(?:side|shoulder|half))?))?{_REVERSED}{_E}", r"\1complete like other side\2", "To match first side."),
    row("then complete|then finish|then work", rf"\s*,\s*(?:and\s+)?then\s+((?:complete|finish|work)\s+to\s+(?:match|correspond)\b)([^.;]*?)(?:\s+of\s+(?:the\s+)?neck)?{_E}", r". \1\2", "Knit to end, then work to match first side."),
    # --- a shaping of another part ---
    row("shap|armhole|raglan", rf"{_START}(?:shape\s+(?:the\s+)?(armhole|raglan)s?|(?:work|rep(?:eat)?)\s+(?:the\s+)?(armhole|raglan)(?:s|(?:\s+edge)?\s+(?:shapings?|(?:dec|inc)\w*(?:\s+rows?)?)))\s+{_AS}{_PART}", r"\1shape \2\3 as for \4", "Work the armholes as for the back. 66 sts."),
    row("raglan", rf"(\buntil\s+{N}\s+{STS}\s+rem(?:ain)?)\s+in\s+(?:the\s+)?raglans?(?:\s+shapings?)?", r"\1", "Work as given for Back until 35 sts rem in raglan shaping, ending with a WS row."),
    row("completed", rf"\buntil\s+(?:the\s+)?(armhole|raglan)\s+shapings?\s+(?:have|has|is|are)\s+(?:been\s+)?(?:completed?|worked|finished|done)\s*,?\s*(?:and\s+)(?:there\s+are\s+)?({N}\s+{STS})(?:\s+rem(?:ain)?)?{_E}", r"to end of \1 shaping. \2", "Work exactly as for the front until the armhole shapings have been completed and 105 sts remain."),
    # --- rows of another part by their names ---
    row("then", rf"{_START}(work\s+(?:the\s+)?(?:[a-z]+\s+)?(?:dec|inc)\w*\s+(?:row|rnd|round))\s*,?\s*(?:and\s+)?then\s+((?:knit|purl|k|p|work)\s+(?:1|one)\s+(?:row|rnd|round))\s*,?\s*(?:{_AS}{_PART}\s*,?\s*)?({N}\s+times)(?:\s+(?:in\s+all|altogether|in\s+total))?{_E}", r"\1\2. \3. rep last 2 rows \5 in all", "Work Dec Row, then purl 1 row, 17 times in all."),
    row("rib", rf"{_START}(?:work|cont(?:inue)?|rep(?:eat)?)\s+(?:in\s+)?(?:the\s+)?rib(?:bing)?(?:\s+(?:rnd|round|row)s?)?\s*\(?\s*{_AS}{_PART}\s*\)?\s*,?\s*(?:for|until\s+(?:the\s+)?rib(?:bing)?\s+measures)\s+({LONG}|{N}\s+{ROUND})", r"\1work in rib as given for \2 for \3", "Work the Rib Rnd (as for collar) for 5 cm."),
)  # fmt: skip
"""The rows, in the order tried."""
