"""Other wordings of British patterns: proceeding, increases in every so many stitches, centre stitches held. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import HELD_BY, LONG, OFF, ROUND, STS, N, Synonym, row

_ORDINALS = ("2nd", "3rd", "4th", "5th", "6th", "7th", "8th", "9th", "10th", "11th", "12th")
_CENTRE = rf"(?:slip|place|put|leave)\s+(?:the\s+)?(?:next\s+)?cent(?:re|er)\s+({N})\s+{STS}\s+(?:on(?:to)?|to)\s+{HELD_BY}"
_REJOIN = r"(?:re-?)?join\s+(?:the\s+)?yarn(?:\s+to\s+(?:the\s+)?rem(?:aining)?\.?\s+(?:\d[\d\s,()\[\]:]*)?(?:sts|stitches))?"
_RS = r"(?:with\s+(?:rs|right\s+side)\s+facing\s*,?\s*)?"
_STOCKING = r"(?:st\.?\s?st\.?|stocking\s+st(?:itch)?|stockinette(?:\s+st(?:itch)?)?)"

BRITISH: tuple[Synonym, ...] = (
    row("placing|leaving|slipping", rf"\b(turn)\s*,?\s+(?:and\s+)?(?:placing|leaving|slipping)\s+(?:the\s+)?rem(?:aining)?\.?\s+{STS}\s+(?:on(?:to)?|to)\s+{HELD_BY}", r"\1 and hold all sts", "Next row (RS): K12, turn, placing rem sts on a holder."),
    said_row_behind("straight", rf"({LONG}\.?)\s+(?P<said>(?:measured\s+)?on\s+the\s+straight)(?=\s*[,.;]|\s*$)", "Work straight until armhole measures 20 cm on the straight, ending with a WS row."),
    row("proceed", r"\bproceed(?:ing)?\s+(?=in\b|even\b|straight\b|without\b|until\b)", "cont ", "Proceed in st st until work measures 30 cm."),
    row("y fwd|y rn|y on", r"\by\s(fwd|rn|on)\b", r"y\1", "K2, *y fwd, k2tog; rep from * to end."),
    row("rib", rf"(\brib(?:bing)?)\s+(?={LONG}\s*(?:[.,]|$))", r"\1 for ", "K1, P1 rib 3 in."),
    *(
        row(
            f"every {ordinal}",
            rf"((?:^|:)\s*)inc(?:rease)?\.?(?:\s+(?:1|one)(?:\s+{STS})?)?\s+in\s+every\s+{ordinal}\s+st(?:itch)?(?:\s+(?:to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?{ROUND})?|across(?:\s+(?:the\s+)?{ROUND})?))?(?=\s*[.]|\s*$)",
            rf"\1(k{before}, inc in next st) to end",
            f"Next row: Inc in every {ordinal} st to end.",
        )
        for before, ordinal in enumerate(_ORDINALS, 1)
    ),
    row(
        "on these",
        rf"^(\s*)(?:work|cont(?:inue)?)\s+on\s+these\s+({N}\s+{STS})(?:\s+only)?\s+for\s+(?:the\s+)?(?:first|second|left|right)\s+(?:side|front|shoulder)(?:\s+of\s+(?:the\s+)?neck)?(?=\s*[.]?\s*$)",
        r"\1\2",
        "Work on these 24 sts for first side.",
    ),
    row(
        "matches|same as",
        r"\buntil\s+(?:the\s+)?(?:armholes?|work|piece)\s+(?:matches|measures\s+(?:the\s+)?same\s+as)\s+(?:the\s+)?back(?:\s+to\s+(?:the\s+)?(?:start\s+of\s+)?shoulders?(?:\s+shaping)?)?(?=\s*[.,]|\s*$)",
        "until front measures same as back to shoulder",
        "Cont straight until armhole matches back.",
    ),
    row("cent", rf"{_RS}{_CENTRE}\s*,\s*{_RS}{_REJOIN}\s*(?:,|\band\b)\s*", r"with RS facing, rejoin yarn to rem sts. Hold \1, ", "Slip centre 20 sts onto a holder, rejoin yarn to rem sts, k to end."),
    row("and k", rf"(\bpick\s+up\s[^.;]*?)(?<!\bup)\s*,?\s+and\s+(?:k|knit)\s*(?={N}\s+{STS}\s+from\b)", r"\1, k ", "Pick up and knit 6 sts down left front, 8 sts from front holder and k 10 sts from back holder."),
    row("with a knit|with a k|with a rs|with an rs", rf"^(\s*)(?:cont(?:inue)?|work)\s+in\s+({_STOCKING})\s*,\s*(?:beg(?:inning)?|start(?:ing)?|commencing)\s+with\s+an?\s+(?:k|knit|rs)\s+row\s*,\s*(?=until\b)", r"\1next row (rs): work in \2 ", "Cont in stocking st, starting with a knit row, until work measures 30 cm."),
    row("with|using", rf"^(\s*)({OFF}|bo)((?:\s+(?:all|rem(?:aining)?|the|{STS}|loosely|very|in|pattern|patt|rib|knitwise|purlwise))*)\s+(?:with|using)\s+(?:an?\s+|the\s+)?((?:larger|bigger|smaller)|\d(?:\.\d+)?\s?mm)\s+needles?(?=\s*[.]?\s*$)", r"\1change to \4 needles. \2\3", "Bind off loosely with larger needle."),
    row("last row|last rnd|last round", rf"(\bfor\s+(?:{N}\s+{ROUND}|{LONG}))\.\s+((?:inc|dec)(?:rease)?\.?\s+{N}(?:\s+{STS})?\s+evenly(?:\s+spaced)?\s+(?:on|in|across|over)\s+(?:the\s+)?last\s+{ROUND})", r"\1, \2", "Work in k1, p1 rib for 6 rows. Inc 8 sts evenly across the last row."),
    row("all around|all across", r"(?<=[a-z0-9)\]*])\s+all\s+(around|across)\b", r" \1", "K2tog all around."),
)
"""The rows, in the order tried."""
