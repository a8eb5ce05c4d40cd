"""Other wordings of shapings that tell first on which rows, of the needles begun with, and of yarn held. No I/O."""

from __future__ import annotations

from stepper.project.rewording.synonym import N, Synonym, row

_ROW = r"(?:row|rnd|round)"
_NTH = r"(?:\d+(?:st|nd|rd|th)|other|alternate|alt|second|third|fourth|fifth|sixth|eighth|tenth|rs|ws|right[-\s]side|wrong[-\s]side)"
_EVERY = rf"(?:on\s+|in\s+)?((?:every|each)\s+(?:foll(?:owing)?\s+)?{_NTH}\s+{_ROW})\s*,?\s+"
_OFTEN = rf"((?:{N}\s+(?:more\s+)?times(?:\s+(?:more|in\s+all|in\s+total))?|(?:once|twice)(?:\s+more)?)|until\s+(?:only\s+)?{N}\s+sts\s+rem(?:ain)?)"
_END = r"(?=\s*[.(]|\s*$)"

TOLD_FIRST: tuple[Synonym, ...] = (
    # --- the interval in front ---
    row("every|each", rf"^(\s*){_EVERY}(?:work|rep(?:eat)?|knit)\s+(?:the\s+|a\s+)?((?:[a-z]+\s+){{1,2}}{_ROW})\s+{_OFTEN}{_END}", r"\1Work \3 \2 \4", "Every 6th round, work dec rnd 4 times."),
    row("every|each", rf"^(\s*){_EVERY}((?:dec|inc)(?:rease)?\s+(?:1|one)\s+st(?:itch)?\s+(?:at\s+)?(?:each\s+end|both\s+ends|each\s+side))\s*,?\s+{_OFTEN}{_END}", r"\1\3 of \2 \4", "On every RS row, dec 1 st at each end until 14 sts rem."),
    row("every|each", rf"^(\s*){_EVERY}(?:work\s+)?(?=[kp]\s?\d|sl\s?\d|ssk|k2tog)([^.:;]*?)\s*,\s*{_OFTEN}{_END}", r"\1\2 \4: \3", "On every RS row, work k1, ssk, k to end, 3 times."),
    # --- needles and yarn held ---
    row("larger|smaller|bigger", r"((?:^|[.!])\s*)(?:begin|start)\s+(?:working\s+|knitting\s+)?(?:with|using|on)\s+(?:the\s+)?(larger|smaller|bigger)(?:\s+size)?(?:\s+(?:circular|double[-\s]pointed))?\s+needles?(?=\s*[.,]|\s*$)", r"\1Change to \2 needles", "Begin working with the larger needles."),
    row("yarn|wool", r"\b(sl(?:ip)?\s*\d+)\s*,?\s*(?:with\s+)?(?:the\s+)?(?:yarn|wool)\s+(?:held\s+)?(?:at|in|to)\s+(?:the\s+)?back(?:\s+of\s+(?:the\s+)?work)?\b", r"\1 wyib", "K1, sl 1 with yarn at back, k to end."),
    row("yarn|wool", r"\b(sl(?:ip)?\s*\d+)\s*,?\s*(?:with\s+)?(?:the\s+)?(?:yarn|wool)\s+(?:held\s+)?(?:at|in|to)\s+(?:the\s+)?front(?:\s+of\s+(?:the\s+)?work)?\b", r"\1 wyif", "K1, sl 1 with yarn at front, k to end."),
    row("swyi", r"(?<![\w-])sl(?:ip)?\s*(\d+)\s*swyi([fb])\b", r"sl \1 wyi\2", "Sl 1 swyif, k to end."),
    row("swyi", r"(?<![\w-])swyi([fb])\s*(\d+)\b", r"sl \2 wyi\1", "K1, swyif 2, k to end."),
    row("swyi", r"(?<![\w-])(?<!\d\s)swyi([fb])\b(?!\s*\d)", r"sl 1 wyi\1", "Swyif, k to last st, swyif."),
)  # fmt: skip
"""The rows, in the order tried."""
