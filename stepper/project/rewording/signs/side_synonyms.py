"""Other wordings of the side of a row, of what is told before a shaping, and of needles by word and size. No I/O.

The size of a needle is read; whether the word agrees with it is looked at when the needles are changed.
"""

from __future__ import annotations

from stepper.project.rewording.synonym import ROW, STS, N, Synonym, row

_NTH = r"(?:\d+(?:st|nd|rd|th)|other|alternate|alt|second|third|fourth|fifth|sixth|eighth|tenth|rs|ws|right[-\s]side|wrong[-\s]side)"
_EVERY = rf"(?:on\s+|in\s+)?((?:every|each)\s+(?:foll(?:owing)?\s+)?{_NTH}\s+{ROW})\s*,?\s+"
_OFTEN = rf"((?:{N}\s+(?:more\s+)?times(?:\s+(?:more|in\s+all|in\s+total))?|(?:once|twice)(?:\s+more)?)|until\s+(?:only\s+)?{N}\s+sts\s+rem(?:ain)?)"
_END = r"(?=\s*[.(]|\s*$)"
_TO = r"\b(change\s+to|switch\s+to|with|using)\s+(?:the\s+)?(?:larger|smaller|bigger)(?:[-\s]sized?)?\s+"
_SIZE = r"((?:us\s*)?(?:size\s*)?#?\d+(?:\.\d+)?\s*mm|us\s*(?:size\s*)?#?\d+(?:\.5)?|uk\s*(?:no\.?\s*)?\d+|no\.?\s*\d+)"
_KIND = r"(?:(?:circular|double[-\s]pointed)\s+)?"

SIDES: tuple[Synonym, ...] = (
    # --- the side of a row, stitches with their number in front ---
    row("right side|from rs|from the rs", rf"^(\s*(?:next\s+{ROW}|{ROW}\s+\d{{1,3}}))\s*,?\s*(?:as\s+)?(?:seen\s+)?from\s+(?:the\s+)?(?:right\s+side|rs)\s*([:.]|-(?=\s))", r"\1 (RS):", "Row 1 from right side: Knit."),
    row("wrong side|from ws|from the ws", rf"^(\s*(?:next\s+{ROW}|{ROW}\s+\d{{1,3}}))\s*,?\s*(?:as\s+)?(?:seen\s+)?from\s+(?:the\s+)?(?:wrong\s+side|ws)\s*([:.]|-(?=\s))", r"\1 (WS):", "Row 2 from wrong side: Purl."),
    row("right-side rows|right side rows", r"^(\s*)(?:all\s+|on\s+(?:all\s+)?)?right[-\s]side\s+rows\s*:", r"\1RS rows:", "Right-side rows: Knit."),
    row("wrong-side rows|wrong side rows", r"^(\s*)(?:all\s+|on\s+(?:all\s+)?)?wrong[-\s]side\s+rows\s*:", r"\1WS rows:", "Wrong-side rows: Purl."),
    row("right side row|right-side row|rs row", r"^(\s*)on\s+(?:the|a)\s+(?:next\s+|foll(?:owing)?\s+)?(?:right[-\s]side|rs)\s+row\s*[,:]\s*(?:work\s+)?", r"\1Next row (RS): ", "On the right side row, k2, ssk, k to end."),
    row("wrong side row|wrong-side row|ws row", r"^(\s*)on\s+(?:the|a)\s+(?:next\s+|foll(?:owing)?\s+)?(?:wrong[-\s]side|ws)\s+row\s*[,:]\s*(?:work\s+)?", r"\1Next row (WS): ", "On the next wrong side row, p2, k to end."),
    row("side", r"^(\s*)the\s+(?:first|next|foll(?:owing)?)\s+row\s+is\s+(?:worked\s+|knit(?:ted)?\s+)?(?:from|on)\s+(?:the\s+)?(right|wrong)\s+side\s*:", r"\1Next row (\2 side):", "The first row is from the wrong side: P2, k to end."),
    # --- the number in front, where no stitch of the row has it behind ---
    row("tog", r"^((?!.*\b(?:[kp]|knit|purl)\s?\d(?!\s?tog)).*?(?<![\w./-]))([23])\s?([kp])\s?tog(?:ether)?\b", r"\1\3\2tog", "Row 1: 1 k, 2 k tog, k to end.", again=True),
    row("k.|p.", rf"(?<![\w./-])(\d+)\s?([kp])\.(?=\s+{N}\s+{STS})", r"\2\1.", "Row 1: 1k, 2k tog, k to last 3 sts, 2k tog, 1k. 18 sts."),
    # --- shapings that tell first on which rows, needles begun with, yarn held ---
    # --- the interval in front ---
    row("every|each", rf"^(\s*){_EVERY}(?:work|rep(?:eat)?|knit)\s+(?:the\s+|a\s+)?((?:[a-z]+\s+){{1,2}}{ROW})\s+{_OFTEN}{_END}", r"\1Work \3 \2 \4", "Every 6th round, work dec rnd 4 times."),
    row("every|each", rf"^(\s*){_EVERY}((?:dec|inc)(?:rease)?\s+(?:1|one)\s+st(?:itch)?\s+(?:at\s+)?(?:each\s+end|both\s+ends|each\s+side))\s*,?\s+{_OFTEN}{_END}", r"\1\3 of \2 \4", "On every RS row, dec 1 st at each end until 14 sts rem."),
    row("every|each", rf"^(\s*){_EVERY}(?:work\s+)?(?=[kp]\s?\d|sl\s?\d|ssk|k2tog)([^.:;]*?)\s*,\s*{_OFTEN}{_END}", r"\1\2 \4: \3", "On every RS row, work k1, ssk, k to end, 3 times."),
    # --- needles and yarn held ---
    row("larger|smaller|bigger", r"((?:^|[.!])\s*)(?:begin|start)\s+(?:working\s+|knitting\s+)?(?:with|using|on)\s+(?:the\s+)?(larger|smaller|bigger)(?:\s+size)?(?:\s+(?:circular|double[-\s]pointed))?\s+needles?(?=\s*[.,]|\s*$)", r"\1Change to \2 needles", "Begin working with the larger needles."),
    row("yarn|wool", r"\b(sl(?:ip)?\s*\d+)\s*,?\s*(?:with\s+)?(?:the\s+)?(?:yarn|wool)\s+(?:held\s+)?(?:at|in|to)\s+(?:the\s+)?back(?:\s+of\s+(?:the\s+)?work)?\b", r"\1 wyib", "K1, sl 1 with yarn at back, k to end."),
    row("yarn|wool", r"\b(sl(?:ip)?\s*\d+)\s*,?\s*(?:with\s+)?(?:the\s+)?(?:yarn|wool)\s+(?:held\s+)?(?:at|in|to)\s+(?:the\s+)?front(?:\s+of\s+(?:the\s+)?work)?\b", r"\1 wyif", "K1, sl 1 with yarn at front, k to end."),
    row("swyi", r"(?<![\w-])sl(?:ip)?\s*(\d+)\s*swyi([fb])\b", r"sl \1 wyi\2", "Sl 1 swyif, k to end."),
    row("swyi", r"(?<![\w-])swyi([fb])\s*(\d+)\b", r"sl \2 wyi\1", "K1, swyif 2, k to end."),
    row("swyi", r"(?<![\w-])(?<!\d\s)swyi([fb])\b(?!\s*\d)", r"sl 1 wyi\1", "Swyif, k to last st, swyif."),
    # --- needles told by a word and by their size at once: "larger needles (4 mm)" ---
    row("larger|smaller|bigger", rf"{_TO}{_KIND}(?:needles?|circulars?|dpns?)\s*,?\s*(?:[(\[]\s*(?=[^()\[\]]*[)\]]))?(?:size\s+)?{_SIZE}(?:\s*[)\]]|(?=\s*[.,;]|\s*$|\s+and\b))", r"\1 \2 needles", "Change to larger needles (4 mm)."),
    row("larger|smaller|bigger", rf"{_TO}{_SIZE}\s+{_KIND}(?=needles?\b)", r"\1 \2 ", "Change to the larger No. 10 needles."),
)  # fmt: skip
"""The rows, in the order tried."""
