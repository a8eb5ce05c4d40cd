"""The yarn that rows are worked in, wherever a page prints it: in the head, behind the rows, by turns. No I/O.

Two yarns in one row are two instructions; held together they are no yarn of the file, and have no row here.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import STOCKINETTE, N, Synonym, row

_Y = r"(?-i:MC|CC\d?|C\d|[A-H]|[YZ])(?![\w'&/-])"
_NUMBERED = r"(?:rows?|rnds?|rounds?)\s+\d+(?:\s*(?:-+|,|and|&|to|through)\s*\d+)*"
_HEAD = rf"^(\s*(?:{_NUMBERED}|(?:next|set-?\s?up|foundation)\s+(?:row|rnd|round)))"
_SIDE = r"(\s*[(\[](?:rs|ws)[)\]])?"
_NEEDLES = r"(?:smaller|larger)\s+(?:circular\s+|double-pointed\s+)?(?:needles?|dpns?)"
_FABRIC = rf"(?:{STOCKINETTE}|garter(?:\s+st(?:itch)?)?|rib(?:bing)?)"
_IN = r"(?:in|with|using|of)\s+(?:yarn\s+|colou?r\s+)?"
_JOINT = r"(?:\s*,\s*(?:and\s+)?(?:then\s+)?|\s+and\s+(?:then\s+)?|\s+then\s+)"
_COUNTED = rf"({N}\s+(?:rows|rnds|rounds|row|rnd|round))"
_BEGIN = r"(?:beg(?:in(?:ning)?)?|start(?:ing)?|commencing)\s+(?:with|on)\s+an?\s+"

YARNS: tuple[Synonym, ...] = (
    # --- what it is called ---
    row("main|contrast", r"\b(?:main|contrast(?:ing)?)\s+(?:colou?r|shade|yarn)\s*[(\[]\s*((?-i:M|C|MC|CC\d?|C\d|[A-H]))\s*[)\]]", r"\1", "With main colour (MC), cast on 96 sts."),
    row("using c", r"\busing\s+(?=(?-i:C\d)\b)", "with ", "Using C1, k4, p2."),
    row("mm", rf"^(\s*(?:with|using)\s+\d(?:\.\d+)?\s*mm)\s+(and\s+{_Y})\s+(?=(?:cast\s+on|co)\b)", r"\1 needles \2, ", "With 2.75 mm and A cast on 252 sts."),
    row("inc|dec", rf"{_HEAD}\s+in\s+({_Y})\s*,\s*(?=(?:inc|dec)(?:reas(?:e|ing))?\b)", r"\1: with \2, ", "Next rnd in A, inc 6 sts evenly. 46 sts."),
    row("*", rf"^(\s*(?:\d{{1,3}}(?:st|nd|rd|th)\s+(?:row|rnd|round)|{_NUMBERED}))\s*:\s*({_Y})\s*,\s*(?:(?:dec|inc)reas(?:e|ing)\s*:\s*)?(?=\*)", r"\1: with \2, ", "9th rnd: A, decrease: *k6, k2tog*. 35 sts."),
    # --- in the head of a row ---
    row("(|[", rf"{_HEAD}{_SIDE}\s*[(\[]\s*(?:with\s+|in\s+|using\s+)?(?:yarn\s+|colou?r\s+)?({_Y})\s*[)\]]{_SIDE}\s*:\s*", r"\1\2\4: with \3, ", "Row 5 (CC): Knit."),
    row("(|[", rf"{_HEAD}\s*[(\[]\s*([rw]s)\s*[,;/-]\s*(?:with\s+|in\s+|using\s+)?(?:yarn\s+|colou?r\s+)?({_Y})\s*[)\]]\s*:\s*", r"\1 (\2): with \3, ", "Row 5 (RS, CC): Knit."),
    row("(|[", rf"{_HEAD}\s*[(\[]\s*(?:with\s+|in\s+|using\s+)?(?:yarn\s+|colou?r\s+)?({_Y})\s*[,;/-]\s*([rw]s)\s*[)\]]\s*:\s*", r"\1 (\3): with \2, ", "Row 5 (CC, RS): Knit."),
    row("row|rnd|round", rf"{_HEAD}{_SIDE}\s*(?:,|-+|in)\s*(?:with\s+|in\s+|using\s+)?(?:yarn\s+|colou?r\s+)?({_Y})\s*:\s*", r"\1\2: with \3, ", "Row 5, MC: Knit."),
    row("(|[", rf"{_HEAD}{_SIDE}\s*:\s*[(\[]\s*({_Y})\s*[)\]]\s*:?\s*(?=(?:k|p|knit|purl)(?:\s+(?:to\s+end|across|around))?\s*\.?\s*$)", r"\1\2: with \3, ", "Row 5 (RS): (MC) K to end."),
    row(":", rf"(:\s*)(?:using|in)\s+({_Y})\s*[:,]\s*", r"\1with \2, ", "Rows 5-8: Using CC: rep rows 1 and 2 twice."),
    # --- one yarn after the other ---
    said_row_behind("drop", rf"(^\s*|[.;]\s*)(?P<said>drop\s+{_Y}(?:\s+to\s+(?:the\s+)?back)?)\s*[,;.]\s*(?:and\s+)?(?=(?:join|pick\s+up|with|change)\b)", "Drop MC, join CC."),
    row("break|cut", rf"\b((?:break|cut)\s+(?:off\s+)?{_Y})\s*[,;]\s*(?:and\s+)?join\s+(?=(?:in\s+)?{_Y}\s+and\s)", r"\1. Join ", "Break MC, join CC1 and knit 2 rnds."),
    row("swap|carry|pick", rf"(^\s*|[.;]\s*)(?:swap\s+(?:back\s+)?to|carry\s+on\s+(?:with|in)|pick\s+(?:back\s+)?up)\s+({_Y})(?:\s+only)?\s*,?\s*(?:and\s+)?(?=(?:knit|purl|work|k|p)\b)", r"\1with \2, ", "Swap to CC and knit 3 rounds."),
    row("change|switch", rf"\b(?:change|switch)\s+to\s+({_NEEDLES})\s+and\s+({_Y})\s*,?\s*(?:and\s+)?(?=[a-z])", r"change to \1. With \2, ", "Change to larger needles and MC and knit 2 rnds."),
    # --- by turns ---
    row(
        "row",
        rf"^(\s*){_BEGIN}(?:knit|k)\s+row\s*,?\s*(?:work|knit)\s+{_COUNTED}(?:\s+{_IN}({_Y}))?{_JOINT}{_COUNTED}\s+{_IN}({_Y})(?=\s*\.?\s*$)",
        r"\1next row (rs): with \3, work \2 in stockinette. With \5, work \4 in stockinette",
        "Beginning with a knit row, work 4 rows in A and 6 rows in B.",
    ),
    row("row", rf"^(\s*){_BEGIN}(?:knit|k)\s+row\s*,?\s*work\s+{_COUNTED}\s+{_IN}({_Y})(?=\s*\.?\s*$)", r"\1next row (rs): with \3, work \2 in stockinette", "Starting with a knit row, work 2 rows in CC."),
    row("row", rf"^(\s*){_BEGIN}(?:knit|k)\s+row\s*,?\s*work\s+({N}\s+rows)(?=\s*\.?\s*$)", r"\1next row (rs): work \2 in stockinette", "Beginning with a knit row, work 4 rows."),
    row("row", rf"^(\s*){_BEGIN}(?:purl|p)\s+row\s*,?\s*work\s+{_COUNTED}\s+{_IN}({_Y})(?=\s*\.?\s*$)", r"\1next row (ws): with \3, work \2 in stockinette", "Starting with a purl row, work 5 rows in CC."),
    row("row", rf"^(\s*){_BEGIN}(?:purl|p)\s+row\s*,?\s*work\s+({N}\s+rows)(?=\s*\.?\s*$)", r"\1next row (ws): work \2 in stockinette", "Beginning with a purl row, work 4 rows."),
    row(
        "row|rnd|round",
        rf"(^\s*|[.;:]\s*)(work|knit|purl|k|p)\s+{_COUNTED}\s+((?:in|of)\s+{_FABRIC})\s+{_IN}({_Y}){_JOINT}(?:\2\s+)?{_COUNTED}(?:\s+\4)?\s+(?:{_IN})?({_Y})(?=\s*\.?\s*$)",
        r"\1with \5, \2 \3 \4. With \7, \2 \6 \4",
        "Work 6 rows of St st with MC and 4 rows with CC.",
    ),
    row(
        "row|rnd|round",
        rf"(^\s*|[.;:]\s*)(work|knit|purl|k|p)\s+{_COUNTED}\s+(?:{_IN})?({_Y})(?:\s*,?\s*(?:and\s+)?then\s+|\s*,?\s+and\s+)(?:\2\s+)?{_COUNTED}\s+(?:{_IN})?({_Y})(?=\s*\.?\s*$)",
        r"\1with \4, \2 \3. With \6, \2 \5",
        "Work 4 rows in MC, then 2 rows in CC.",
    ),
    row(
        "alternat",
        rf"\b(?:work\s+in\s+stripe(?:s|\s+patt(?:ern)?)\s*,\s*alternating|alternate|alternating)\s+(?:between\s+)?{_COUNTED}\s+(?:{_IN})?({_Y})\s*(?:,|and|with)\s*{_COUNTED}\s+(?:{_IN})?({_Y})(?=\s+(?:until|for)\b)",
        r"work in stripes of \1 \2, \3 \4",
        "Alternate 2 rows MC and 2 rows CC until piece measures 10 in.",
    ),
)
"""The rows, in the order tried."""
