"""Other wordings for finishing and explanations: they work no stitches and are said in place. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import Synonym, row

_FOLDED = r"(?:hem|facing|neckband|collar|cuff|waistband|band|edging|border|casing|brim|picot\s+edge)s?"
_PART = (
    r"(?:left|right|front|back|body|sleeves?|yoke|collar|cuffs?|hem|neckband|button|bands?|hood|pocket|flap|hat|brim|crown|hand|"
    r"thumb|foot|leg|sock|mitten|cowl|piece)"
)

REMARKS: tuple[Synonym, ...] = (
    row(
        "note|nb|n.b.|tip|hint",
        r"^\s*(?:note|n\.?b\.?|tip|hint)\s*[:-]+\s*(?=(?:slip|sl)\s+(?:all\s+)?(?:the\s+)?markers|try\b|the\b|this\b|these\b|your\b|do\s+not\b|don't\b)",
        "",
        "NOTE - Slip all markers as you come to them.",
    ),
    said_row(
        "marker",
        r"(?:(?<=^)|(?<=[.!]))\s*(?P<said>(?:slip|sl)\s+(?:all\s+)?(?:the\s+)?markers?\s+(?:as\s+you\s+(?:come|get|go)(?:\s+to\s+them)?|as\s+you\s+(?:reach|encounter|pass)\s+them|throughout|when\s+you\s+(?:come|get)\s+to\s+(?:them|it)))\s*\.?\s*$",
        "Slip all markers as you come to them.",
    ),
    said_row(
        "try",
        r"(?:(?<=^)|(?<=[.!]))\s*(?P<said>try\s+(?:it|on|the\s+[a-z]+|your\s+[a-z]+)(?:\s+on)?(?:\s+(?:as\s+you\s+go|now|often|from\s+time\s+to\s+time|for\s+fit|to\s+check\s+the\s+fit))?)\s*\.?\s*$",
        "Try it on as you go.",
    ),
    said_row(
        "(",
        r"^\s*\((?P<said>(?:this|these|the)\s+(?:[a-z]+\s+){1,3}?(?:is|are|will|should)\s+(?:worked\s+on\s+the\s+(?:wrong|right)\s+side\s+of\s+the\s+[a-z]+|[a-z ]*?(?:curl|roll|visible|hidden|folded|seen|outside|inside|loose|tight|snug|bulky|shorter|longer)[a-z ]*))\.?\s*\)\s*\.?\s*$",
        "(This round is worked on the wrong side of the collar.)",
    ),
    row(
        "worked in the r",
        rf"^\s*(?:the|this|your)\s+(?:{_PART}\s+){{1,2}}(?:is|are)\s+(?:now\s+)?(?:worked|knitted|knit)\s+in\s+(?:the\s+)?(?:rnd|round)s?\s*[;.:]\s*(?=[a-z*(])",
        "join in the round. ",
        "The yoke is worked in the round; k2tog, k to end.",
    ),
    said_row_behind(
        "needle",
        r"((?:^|[.])\s*)(?=(?P<said>using\s+an?\s+(?:tapestry|yarn|sewing|darning|blunt)\s+needle\b))using\s+an?\s+[a-z]+\s+needle\s*,?\s*",
        "Using a tapestry needle, weave in ends.",
    ),
    row(
        "fasten",
        r"\b((?:break|cut)\s+(?:off\s+)?(?:the\s+)?yarn)\s*,?\s*and\s+(?=fasten\s+off\s*(?:\.|$))",
        r"\1. ",
        "Break yarn and fasten off.",
    ),
    row(
        "worked flat|worked back",
        rf"^\s*(?:the\s+)?(?:{_PART}\s+){{1,3}}(?:is|are)\s+(?:now\s+)?worked\s+(?:flat|back\s+and\s+forth(?:\s+in\s+rows)?)\s*(?:\.|$)",
        "work flat.",
        "The sleeves are worked flat.",
    ),
    said_row(
        "for a",
        r"^\s*(?P<said>for\s+an?\s+(?:closer|looser|snugger|neater|tidier|better|firmer|tighter|softer|cleaner|stretchier)\s+(?:fit|edge|finish|corner|join|look|line|neckline|cuff))\s*,\s*",
        "For a closer fit, k2tog, k to end.",
    ),
    said_row(
        "m1",
        r"^\s*(?P<said>m1[lr]?\s*[:=]\s*(?:with\s+(?:the\s+)?(?:left|right)(?:-hand)?\s+needle\s*,?\s*)?(?:lift|pick\s+up|insert)\s+[a-z ,-]*?(?:bar|strand|loop|thread|yarn)\b[a-z ,-]*?(?:knit|k)\s+(?:it\s+)?(?:into|through|it)\b[a-z ]*)\.?\s*$",
        "M1: Lift the bar between the needles and knit into the back of it.",
    ),
    said_row(
        "ssk",
        r"^\s*(?P<said>ssk\s*[:=]\s*(?:slip|sl)\s+(?:the\s+)?(?:next\s+)?(?:2|two)\s+(?:sts|stitches)\b[a-z ,-]*?(?:knit|k)\s+(?:them\s+|these\s+|both\s+)?(?:(?:2|two)\s+)?(?:sts\s+|stitches\s+)?tog(?:ether)?\b[a-z ]*)\.?\s*$",
        "Ssk: Slip 2 sts knitwise, then knit them together through the back loops.",
    ),
    said_row(
        "kfb",
        r"^\s*(?P<said>kfb\s*[:=]\s*(?:knit|k)\s+in(?:to)?\s+(?:the\s+)?front\s+and\s+(?:then\s+)?(?:the\s+)?back\s+of\s+(?:the\s+)?(?:next\s+|same\s+)?st(?:itch)?)\.?\s*$",
        "Kfb: Knit into front and back of next st.",
    ),
    said_row(
        "turn|fold",
        rf"(?:(?<=^)|(?<=[.!]))\s*(?P<said>(?:turn|fold)\s+(?:the\s+)?{_FOLDED}(?:\s+in\s+half)?(?:\s+(?:to|towards?)\s+(?:the\s+)?(?:inside|wrong\s+side|ws))?(?:\s+(?:along|at|on)\s+(?:the\s+)?[a-z]+(?:\s+(?:ridge|line|row|rnd|round))?)?"
        r"\s*,?\s*and\s+(?:sew|slip-?\s?st(?:itch)?|catch|stitch|hem|oversew)(?:\s+(?:it|in(?:to)?\s+(?:place|position)|down|loosely|neatly|to\s+(?:the\s+)?(?:inside|wrong\s+side|cast-on\s+edge)))*)\s*(?:\.|$)",
        "Turn hem to inside and slip stitch in place.",
    ),
)
"""The rows, in the order tried."""
