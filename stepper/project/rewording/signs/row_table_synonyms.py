"""Other wordings of rows set in prose or in a table: "second row, knit", "(Row 1) K4", "R3-8: rep R1 and R2". No I/O.

`stepper.project.reading.clauses` cuts a sentence at the heads of its rows; each then reads by itself.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row
from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_ORDINALS: Final = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")
_STITCH: Final = r"(?=\*|\(|\[|[kp]\b|[kp]\s?\d|knit\b|purl\b|sl\b|slip\b|ssk\b|k2tog\b|p2tog\b|yo\b|m1|inc\b|kfb\b|rib\b|as\b|like\b)"
_YARN: Final = r"(?-i:MC|CC\d?|[A-H])"
_FABRIC: Final = r"(?:(?:reverse\s+|rev\.?\s+)?(?:st\.?[\s-]?st\b\.?|stockinette|stocking)(?:\s+st(?:itch)?)?|garter(?:\s+st(?:itch)?)?|rib(?:bing)?|patt(?:ern)?|moss\s+st(?:itch)?|seed\s+st(?:itch)?)"
_NUMBERED: Final = r"^(\s*(?:rows?|rnds?|rounds?)\s+\d{1,3}(?:\s*(?:-|to|and|&)\s*\d{1,3})?)"

ROW_TABLES: tuple[Synonym, ...] = (
    # --- heads ---
    *(
        row(
            f"{ordinal} r",
            rf"^(\s*)(?:the\s+)?{ordinal}\s+(row|rnd|round)\s*[,:]\s*{_STITCH}",
            rf"\1\2 {number}: ",
            f"{ordinal.capitalize()} row, knit 2, purl to the end.",
        )
        for number, ordinal in enumerate(_ORDINALS, 1)
    ),
    row("row|rnd|round", rf"^(\s*(?:row|rnd|round)\s+\d{{1,3}})\s*,\s*{_STITCH}", r"\1: ", "Round 5, purl."),
    row("(row|(rnd|(round", r"^(\s*)\(\s*((?:row|rnd|round)\s+\d{1,3})\s*\)\s*:?\s*", r"\1\2: ", "(Row 1) K3, purl to end."),
    row("rep", r"^(\s*(?-i:R)\s?\d.*?\brep(?:eat)?)\s+(?-i:R)\s?(\d{1,3})\s*(and|-|to|&)\s*(?-i:R)?\s?(\d{1,3})\b", r"\1 rows \2 \3 \4", "R3-4: rep R1 and R2."),
    row("r", r"^(\s*)(?-i:R)\s?(\d{1,3})\s*(?:-|to)\s*(?-i:R)?\s?(\d{1,3})\s*:", r"\1Rows \2-\3:", "R3-R4: rep rows 1 and 2."),
    row("first r", r"^(\s*)(knit|purl)\s+the\s+first\s+(row|rnd|round)(?:\s+plain)?(?=\s*[.]?\s*$)", r"\1\3 1: \2", "Knit the first row plain."),
    row("next r", r"^(\s*)(knit|purl)\s+the\s+next\s+(row|rnd|round)(?:\s+plain)?(?=\s*[.]?\s*$)", r"\1Next \3: \2", "Purl the next round."),
    # --- what stands behind a head ---
    row("using|with|in ", rf"{_NUMBERED}\s*:?\s*(?:using|with|in)\s+(?:yarn\s+|colou?r\s+)?({_YARN})(?=\s*[.]?\s*$)", r"\1: with \2, work in pattern", "Rows 5 and 6 Using B."),
    row("using|with", rf"{_NUMBERED}\s+(?=(?:using|with)\s+(?:yarn\s+|colou?r\s+)?{_YARN}\b)", r"\1: ", "Row 7 Using yarn B, knit."),
    row("beg", rf"{_NUMBERED}\s*:\s*(?:beg(?:inning)?|start(?:ing)?)\s+with\s+an?\s+(?:p|purl)\s+row\s*,?\s*(?:work\s+)?in\s+(st\.?\s?st\b\.?|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?)", r"\1 (WS): work in \2", "Rows 3-9: Beg with a p row, work in st st."),
    row("beg", rf"{_NUMBERED}\s*:\s*(?:beg(?:inning)?|start(?:ing)?)\s+with\s+an?\s+(?:k|knit)\s+row\s*,?\s*(?:work\s+)?in\s+(st\.?\s?st\b\.?|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?)", r"\1 (RS): work in \2", "Rows 3-8: Beg with a k row, work in st st."),
    row("twice|times", r"^([^:]*\b(?:rows|rnds|rounds)\s+\d{1,3}\s*(?:-|to|and)\s*\d{1,3})\s*,\s*(?=(?:twice|\d{1,2}\s+times)\s*\.?\s*$)", r"\1 ", "Rows 9 to 20 As rows 3 to 8, twice."),
    # --- what stands above rows ---
    row("thus|like this|in this way", r"^(\s*(?:now\s+)?(?:work|cont(?:inue)?|proceed|begin|commence)\b[^.:*\d]*?)\s+(?:thus|like\s+this|in\s+this\s+way)\s*:\s*$", r"\1 as follows:", "Work in pattern thus:"),
    said_row("as foll", r"^\s*(?P<said>(?:now\s+)?work\s+(?:the\s+|next\s+)*(?:\d{1,2}|two|three|four|five|six|eight|ten)\s+(?:pattern\s+|patt\.?\s+)?(?:rows|rnds|rounds)(?:\s+as\s+foll(?:ow)?s)?)\s*:\s*$", "Now work next 4 rows as follows:"),
    # --- between rows and shapings ---
    row("of the next|of the foll", r"(?<!\bat\s)(\b(?:each|both)\s+(?:end|side|edge)s?\s+of)\s+the\s+(?=(?:next|foll(?:owing)?)\b)", r"\1 ", "Inc 1 st each end of the next row."),
    row("row|rnd|round", rf"(^\s*|[.;,]\s+)(work|cont(?:inue)?)\s+((?:even\s+)?in\s+{_FABRIC})\s+(?:for\s+)?({N}\s+(?:more\s+)?{ROUND})(?=\s*[.,;]|\s*$)", r"\1work \4 \3", "Work in pattern 10 rows."),
    row("on the rem|on these|on rem", rf"^(\s*)(?:and\s+)?on\s+(?:the\s+|these\s+)?(?:rem(?:aining)?\.?\s+)?({N}\s+{STS})\s*,?\s+(?=(?:knit|purl|k|p|work|rib)\s+(?:{N}\s+{ROUND}|even\b|in\b|until\b|for\b))", r"\1\2. ", "On the remaining 22 stitches knit 6 rows."),
    row("needle", r"\b(?:off\s+)?on(?:to)?\s+an?(?:other)?\s+(?:extra|separate|third|(?<=another\s))\s*needle\b", "on a spare needle", "K5, slip next 6 sts on an extra needle, k to end."),
    row("underarm|armhole", r"\bwork(?:\s+even|\s+straight)?\s+to\s+(?:the\s+)?(?:underarms?|armholes?)\s*,?\s+(?=\d[\d\s./¼½¾]*(?:in\b|inch|cm|\"))", "work even until piece measures ", "Work to underarm 7 inches."),
)  # fmt: skip
"""The rows, in the order tried."""
