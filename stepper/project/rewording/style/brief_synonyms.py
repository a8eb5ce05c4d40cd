"""Other wordings that say a row or a side in few words: "k2tog x 6", "Rows 3-6: St st", "work other side to correspond".

No I/O.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, OFF, ROUND, STS, N, Synonym, row

_END = r"(?=\s*[.;]|\s*$)"
_FIRST = r"(^\s*|(?<=[.!;])\s*|^[^.:]*:\s*)"
"""Where an instruction begins: the line, a sentence of it, or what stands behind its name."""
_TOG = r"k(?:nit)?\.?\s*(?:2|two)\s*(?:(?:sts|stitches)\s+)?tog(?:ether)?\b\.?"
_ENDS = r"(?:(?:each|both)\s+(?:sides?|ends?)|(?:the\s+)?beg(?:inning)?\s+and\s+(?:the\s+)?end)"
_FABRIC = r"(?:garter\s+st(?:itch)?|st\s+st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?|moss\s+st(?:itch)?|seed\s+st(?:itch)?)"
_SIDE = r"(?:side|shoulder|front)"
_SHAPED = r"(?:crown|toe|thumb|top|tip|gusset|raglan|yoke|armholes?|neck|shoulders?|waist|heel)"

BRIEF_WORDS: tuple[Synonym, ...] = (
    row("on next|on the next|on foll|on the foll", r"(^\s*|(?<=[.!])\s+)on\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+(rnd|round|row)\s*,\s*(?=increase\b)", r"\1next \2: ", "On next round, increase 8 sts evenly."),
    row("correspond|to match first|to match the first", rf"{_FIRST}(?:(?:work|knit)(?=[^.;]*\scorrespond)|complete|finish)\s+(?:(?:the\s+)?(?:other|second|2nd|left|right|opposite)\s+{_SIDE}\s+)?to\s+(?:correspond\s+(?:with|to)|match)\s+(?:the\s+)?(?:first|other)\s+{_SIDE}((?:\s*,\s*(?:but\s+)?revers(?:e|ing)\s+(?:all\s+|the\s+)*shapings?)?){_END}", r"\1Complete to match first side\2", "Work to correspond with first side, reversing shaping."),
    row("to correspond", rf"{_FIRST}(?:work|complete|finish|knit)\s+(?:the\s+)?(?:other|second|2nd|opposite)\s+{_SIDE}\s+to\s+correspond{_END}", r"\1Complete to match first side, reversing shaping", "Work other side to correspond."),
    row("for patt|for the patt", rf"(\brep(?:eat)?\s+(?:these|the\s+last|last|{ROUND})\s+[^.;:]*?)\s+for\s+(?:the\s+)?patt(?:ern)?\s+(?=(?:until|for)\b)", r"\1 ", "Rep these 2 rows for patt until work measures 20 cm."),
    row("of k", rf"\bwork\s+({LONG})\s+of\s+(k\s?\d+\s*,?\s*p\s?\d+\s+rib(?:bing)?)", r"work in \2 for \1", "Work 5 cm of k2, p2 rib."),
    row("back and forth", rf"(\bwork\s+back\s+and\s+forth\s+(?:in\s+rows\s+)?(?:on|over)\s+(?:(?:these|the|next)\s+)*{N}\s+{STS})(?:\s+only)?\s+as\s+foll(?:ow)?s\s*:?\s*$", r"\1", "Work back and forth on these 32 sts as follows:"),
    row("for ", rf"(\b{N}\s+{ROUND})\s+(?P<said>for\s+(?:the\s+)?(?:border|edging|hem|band|brim|cuff))\s+(?=and\b)", r"\1 ", "Knit 4 rows for border and bind off loosely.", spelt_out=True),
    row("evenly:", rf"\b(evenly(?:\s+(?:spaced|across|around))?)\s*:\s*({N}\s+{STS})(?=\s*\.?\s*$)", r"\1. \2", "Next round: Knit, increasing 8 sts evenly: 68 sts."),
    row("(right|(wrong|(rs|(ws", r"^(\s*(?:row|rnd|round)\s+\d+)\s*:\s*(\(\s*(?:rs|ws|right\s+side|wrong\s+side)\s*\))\s*:\s*", r"\1 \2: ", "Row 1: (Right side): Knit."),
    row("&", r"^(\s*\d+(?:st|nd|rd|th))\s*&\s*(?=every\b|all\b|\d)", r"\1 and ", "2nd & every alt row: Purl."),
    row(" x", r"\*\s*([^*]+?)\s*\*\s*x\s*(\d+)\b", r"(\1) \2 times", "Row 2: *K1, k2tog* x 6."),
    row(" x", r"(^|[:,]\s*)((?:k|p)\s?\d\s?tog|ssk|skpo|kfb|pfb)\s+x\s*(\d+)\b", r"\1(\2) \3 times", "Row 3: K2tog x 6."),
    row("across to last", r"\b((?:k|p)\s?\d\s?tog|ssk)\s+across\s+to\s+last\s+", r"*\1; rep from * to last ", "Next row: K2tog across to last st, k1."),
    row("all along", r"\ball\s+along(?:\s+the)?(?:\s+(?:row|rnd|round))?(?=\s*[.(]|\s*$)", "to end", "Next row: K2tog all along the row."),
    row("break|cut", r"\b(to\s+(?:the\s+)?end|around|across)\s*,\s*(?:and\s+|then\s+)?(?=(?:break|cut)\s+(?:off\s+)?(?:the\s+)?(?:yarn|wool)\b)", r"\1. ", "Row 4: K2tog to end, break yarn and thread through rem sts."),
    row("knitting", r"\b(?:continue|cont|keep)\s+knitting\s+(?:(?:in\s+(?:the\s+)?rounds?|around|even|straight)\s+)+(?=(?:until|for)\b)", "knit ", "Continue knitting in the round until hat measures 15 cm."),
)  # fmt: skip
"""The rows that come before all others, in the order tried."""

BRIEF: tuple[Synonym, ...] = (
    row("dec r|inc r", r"([.]\s+)(dec|inc)\s+(rnd|round|row)\s+(?=(?:on\s+)?every\b)", r"\1Work \2 \3 ", "Knit 2 rnds, then dec rnd every 8th rnd 6 times."),
    row("twice into|twice in|front and back|once in", r"(^\s*|[:.]\s*)(?:(?:k|knit)\s+(?:twice\s+in(?:to)?|in(?:to)?\s+(?:the\s+)?front\s+and\s+(?:the\s+)?back\s+of)|inc(?:rease)?\s+once\s+in(?:to)?)\s+(?:every|each)\s+st(?:itch)?\b(?:\s+(?:to\s+(?:the\s+)?end|across|around))?", r"\1*kfb; rep from * to end", "Next row: K twice into every st."),
    row("all st|all ro", rf"\b(knit|purl)\s+all\s+(?:sts|stitches|rows|rounds|rnds)\s+(?=(?:until|for\s+(?:{LONG}|{N}\s+{ROUND}))\b)", r"\1 ", "Knit all sts until hat measures 15 cm."),
    row("only until", r"\b((?:rnd|round|row)\s+\d+)\s+only\s+(?=until\b)", r"\1 ", "Work rnd 1 only until 16 sts remain."),
    said_row_behind("twist", r"(\bjoin\s+in\s+the\s+(?:round|rnd))\s*,\s*(?P<said>(?:be\s+)?careful\s+not\s+to\s+twist(?:\s+(?:the\s+)?(?:sts|stitches))?|making\s+sure\s+(?:that\s+)?(?:the\s+)?(?:sts|stitches)\s+are\s+not\s+twisted)", "Join in the round, careful not to twist."),
    # --- how long ---
    row("a further", rf"\b(work|knit|k|purl|p|rib|patt)\s+a\s+further\s+(?={N}\s+{ROUND})", r"\1 ", "Work a further 6 rows straight."),
    said_row("dpns|double|magic", r"\s*,?\s*(?P<said>(?:switching|changing|change|switch)\s+to\s+(?:the\s+)?(?:dpns|double[-\s]pointed\s+needles|magic\s+loop)\s+(?:when|as|if)\s+(?:necessary|needed|required))(?=\s*[.]|\s*$)", "Work dec rnd every other rnd until 16 sts remain, switching to dpns when necessary."),
    # --- which rows and stitches ---
    row("of the|on the", r"\b(of|on)\s+the\s+(?=(?:\d{1,2}(?:st|nd|rd|th)|third|fourth|fifth|sixth|seventh|eighth|tenth)\s+(?:and|&)\s+(?:every|foll))", r"\1 ", "Inc 1 st at each end of the 3rd and every 8th row 4 times."),
    row("tog", rf"{_FIRST}{_TOG}\s+at\s+{_ENDS}\s+of\s+(?:the\s+)?(next\s+(?:row{_END}|(?:and|row)\b[^.;:,]*)|every\b[^.;:,]*){_END}", r"\1Dec 1 st at each end of \2, working decreases 0 sts in from edge", "K2tog at each end of the next and every alternate row until 30 sts remain."),
    row("tog", rf"(:\s*){_TOG}\s+at\s+{_ENDS}(?:\s+of\s+(?:the\s+)?row)?{_END}", r"\1k2tog, work in pattern to last 2 sts, k2tog", "Next row: K2tog at each end of row."),
    row("on these|on the|over these|on rem", rf"{_FIRST}(?:cont(?:inue)?|go\s+on)\s+(?:on|over|with)\s+(?:these|those|the|rem(?:aining)?)\s+({N}\s+{STS})(?:\s+only)?{_END}", r"\1\2", "Cont on these 20 sts only."),
    row("working on|working over", rf"{_FIRST}working\s+(?:on|over)\s+(?:these|those|the|rem(?:aining)?)\s+({N}\s+{STS})(?:\s+only)?\s*,\s*(?=(?:dec|inc|work|k|p|cont|{OFF})\b)", r"\1\2. ", "Working on these 20 sts only, work 4 rows in st st."),
    said_row_behind("work in|as foll", r"^(\s*)(?P<said>work\s+in\s+(?:\d\s?x\s?\d|k\d,?\s*p\d)\s+rib(?:bing)?\s+as\s+foll(?:ow)?s)\s*:\s*(?=\*|\(|\[|[kp]\s?\d)", "Work in 2x2 rib as follows: *K2, p2; rep from * to end."),
    # --- ends, and what only heads the rows below ---
    row("ribwise", rf"\b({OFF}(?:\s+(?:all|loosely|sts|stitches|evenly))*)\s+rib-?wise\b", r"\1 in rib", "Cast off loosely ribwise."),
    said_row_behind("gather", r"(\bthrough\s+(?:the\s+|all\s+|rem(?:aining)?\s+)*(?:sts|stitches|loops))\s*,?\s*(?:and\s+)?(?P<said>gather(?:\s+(?:up|tight|tightly|firmly))*(?:\s*,?\s*(?:and\s+)?(?:secure|fasten(?:\s+off)?)(?:\s+(?:tightly|firmly|securely))?)?)(?=\s*\.|\s*$)", "Thread yarn through rem sts, gather and secure."),
    said_row("begin|start|for ", rf"^\s*(?P<said>(?:(?:begin|start)\s+(?:the\s+)?(?:{_SHAPED}\s+)?(?:decreas(?:es|ing)|increas(?:es|ing)|shaping)|(?:decrease|increase|shape)\s+for\s+(?:the\s+)?{_SHAPED})(?:\s+as\s+foll(?:ow)?s)?)\s*[:.]?\s*$", "Begin crown decreases:"),
)  # fmt: skip
"""The rows that come late, in the order tried."""
