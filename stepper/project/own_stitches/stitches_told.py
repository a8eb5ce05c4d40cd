r"""The table of how a stitch is told in words: "k into front and back of st" is `kfb`. No I/O.

The rows are put in from the top down, each wherever its words stand; what is left is read as a row of stitches.

Source of what makes which stitch: Craft Yarn Council, knitting abbreviations and cable abbreviations; a twist
of two stitches and the bobble: common practice.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from stepper.project.reading.elements import WORDS
from stepper.project.rewording.synonym import STS

_NEXT = rf"(?:the\s+)?(?:next|following|same|one|first|a|1)?\s*{STS}"
_BAR = (
    r"(?:(?:make\s+(?:1|a|one)(?:\s+st(?:itch)?)?|m1)\s+by\s+)?(?:from\s+(?:the\s+)?(?:front\s+to\s+(?:the\s+)?back|back\s+to\s+(?:the\s+)?front)\s*,?\s*)?"
    r"(?:pick(?:ing)?\s+up|lift(?:ing)?|raise|insert(?:ing)?\s+(?:the\s+)?(?:left\s+|lh\s+)?needle\s+(?:tip\s+)?under|with\s+(?:the\s+)?left(?:-hand)?\s+needle(?:\s+tip)?\s*,?\s*"
    r"(?:pick\s+up|lift))\s+(?:up\s+)?(?:the\s+)?(?:horizontal\s+)?(?:running\s+)?(?:bar|strand|thread|loop)"
    rf"(?:\s+(?:(?:that\s+)?(?:lies|lying|is)\s+)?(?:before\s+the\s+next\s+{STS}|(?:in\s+)?between\s+(?:the\s+)?(?:two\s+|2\s+)?(?:needles|{STS}|(?:last\s+)?st(?:itch)?\s+"
    r"(?:just\s+worked|worked|and)[^,;]*?(?:next(?:\s+(?:one|st(?:itch)?))?|one))))?"
    r"(?:\s+with\s+(?:the\s+)?(?:tip\s+of\s+(?:the\s+)?)?left(?:-hand)?\s+needle(?:\s+tip)?)?"
)
_ON_LEFT = (
    r"(?:\s*,?\s*(?:and\s+)?(?:(?:place|put|slip)\s+(?:it\s+)?)?(?:on\s+to|on|onto)\s+(?:the\s+)?left(?:-hand)?\s+needle)?"
)
_IT = r"(?:it|this|this\s+(?:loop|bar|strand)|the\s+(?:lifted\s+)?(?:loop|bar|strand)|lifted\s+(?:loop|bar|strand))"
_THROUGH_BACK = r"\s*(?:\(?(?:through|thru|in(?:to)?)\s+(?:the\s+|their\s+)?back(?:s)?(?:\s+(?:loops?|legs?|of\s+(?:it|(?:the\s+)?(?:loops?|st(?:itch)?\b))))?\)?|tbl)"
_THROUGH_FRONT = r"\s*(?:(?:through|in(?:to)?)\s+(?:the\s+|their\s+)?fronts?(?:\s+(?:loops?|legs?|of\s+it))?)"
NUMBERS = {word: str(number) for number, word in enumerate(WORDS[:7]) if number}


def _lifted(match: re.Match[str]) -> str:
    """Return the make one that a bar, lifted and worked so, gives; the words as they are if it makes none."""
    words = match.group().lower()
    front = re.search(r"front\s+to\s+(?:the\s+)?back", words)
    back = re.search(r"back\s+to\s+(?:the\s+)?front", words)
    into_back = match.group("back") is not None
    purled = "p" if match.group("work").lower().startswith("p") else ""
    if not front and not back:
        return f"m1{purled}" if into_back else words
    if bool(front) == into_back:
        return f"m1{'l' if front else 'r'}{purled}"
    return words  # worked so the loop is open: a hole, and none of these


def _grouped(match: re.Match[str]) -> str:
    return f"({match.group('made')}) in next st"


Made = str | Callable[[re.Match[str]], str]
TOLD: tuple[tuple[str, Made], ...] = (
    (r"\b(one|two|three|four|five|six)\b(?=\s+(?:sts?|stitch|next|together|tog)|\s*,)", lambda m: NUMBERS[m.group(1).lower()]),
    (r"\s*;\s*", ", "),
    # What it does to the count, or which way it leans, in brackets behind it.
    (r"\s*\(\s*(?:\d\s*)?(?:sts?\s+)?(?:(?:dec|inc)(?:reased?|'d)?(?:\s+by\s+\d|\s+\d\s+sts?)?|(?:is\s+)?(?:left|right)[- ](?:leaning|slanting)(?:\s+(?:dec|inc)(?:rease)?)?|(?:leans|slants)\s+(?:to\s+the\s+)?(?:left|right))"
     r"(?:\s*[,;]\s*(?:(?:leans|slants)\s+(?:to\s+the\s+)?(?:left|right)|(?:left|right)[- ](?:leaning|slanting)))?\s*\)", ""),
    (r"\bslip(?:ping)?\b|\bs(?=1\b)", "sl"),
    (r"\bknitting\b|\bk(?:nit)?\s+it\s+in(?=to\b)", "knit"),
    (r"\bpurling\b", "purl"),
    (r"\bworking\b", "work"),
    (r"\b([kp])\.(?=\s+(?:in)?to\b)", r"\1"),
    # By one word, as old leaflets explain their signs: "o, over; n, narrow". Source: common practice.
    (r"^(?:(?:wool|yarn|thread|cotton)\s+)?(?:over|a?round\s+(?:the\s+)?needle)$|^(?:wool|yarn)\s+(?:fwd|forward)$", "yo"),
    (r"^narrow(?:ing)?$", "k2tog"),
    (r"^(?:the\s+)?(?:wool|yarn|thread|cotton)\s+(?:before|in\s+front\s+of|over|round)\s+the\s+needle\s+(?:so\s+as\s+)?to\s+make\s+(?:a|one|1)\s+(?:new\s+)?st(?:itch)?$", "yo"),
    (r"\byarn\s*over(?:\s+needle)?\b|\bbring\s+(?:the\s+)?yarn\s+over\s+(?:the\s+)?(?:right\s+)?needle\b", "yo"),
    (r"\b(?:bring\s+(?:the\s+)?)?yarn\s+(?:forward|to\s+(?:the\s+)?front|(?:a?round|over)\s+(?:the\s+)?(?:right\s+)?needle)(?:\s+between\s+(?:the\s+)?needles)?\s+to\s+make\s+(?:a|1|one)(?:\s+(?:new\s+|extra\s+)?st(?:itch)?)?", "yo"),
    (r"\b(?:pass|lift|pull)\s+(?:the\s+)?(?:2|two|both)\s+(?:(?:sl(?:ipped|ped)?\s+)?(?:sts?|stitches)\s+)?over(?:\s+(?:it|the\s+knit(?:ted)?\s+st(?:itch)?))?", "p2sso"),
    (r"\b(?:pass|lift|pull)\s+(?:the\s+)?(?:sl(?:ipped|ped)?\s+)?(?:st|stitch)\s+over(?:\s+(?:it|the\s+knit(?:ted)?\s+st(?:itch)?))?", "psso"),
    # A loop between two stitches, lifted and worked.
    (rf"{_BAR}(?:\s+from\s+(?:the\s+)?(?:front\s+to\s+(?:the\s+)?back|back\s+to\s+(?:the\s+)?front))?{_ON_LEFT}\s*,?\s*(?:and\s+)?(?:then\s+)?"
     rf"(?P<work>k|knit|p|purl|work(?:ing)?)\s*(?:in(?:to)?\s+)?{_IT}?(?:(?P<back>{_THROUGH_BACK})|{_THROUGH_FRONT})(?:\s+of\s+{_IT})?", _lifted),
    # Two or three stitches worked out of one.
    (rf"\bk(?:nit)?(?:\s*1)?\s*(?:(?:in(?:to)?|through)\s+)?(?:the\s+)?front\s*,\s*(?:the\s+)?back\s*,?\s*(?:and|then)\s+(?:the\s+)?front(?:\s+again)?(?:\s+loops?)?\s+of\s+{_NEXT}", "kfbf"),
    (rf"\b(?:k(?:nit)?|work)(?:\s*1)?\s*(?:(?:in(?:to)?|through)\s+)?(?:the\s+)?front\s+(?:loop\s+)?(?:and\s+then|and|then|,)\s+(?:(?:in)?to\s+)?(?:the\s+)?back(?:\s+loops?)?(?:\s+of\s+{_NEXT}|$)", "kfb"),
    (rf"\bp(?:url)?(?:\s*1)?\s*(?:(?:in(?:to)?|through)\s+)?(?:the\s+)?front\s+(?:loop\s+)?(?:and|then|,)\s+(?:(?:in)?to\s+)?(?:the\s+)?back(?:\s+loops?)?(?:\s+of\s+{_NEXT}|$)", "pfb"),
    (r"\bk(?:nit)?\s+(?:the\s+)?(?:next\s+)?st(?:itch)?\s*(?:,|but|and)?\s*(?:(?:leave|leaving|keep)\s+(?:it\s+)?on\s+(?:the\s+)?(?:left\s+)?needle|without\s+(?:removing|slipping|dropping|taking)\s+(?:it|the\s+st(?:itch)?)\s+(?:from|off)\s+(?:the\s+)?(?:left\s+)?needle)\s*,?\s*(?:and\s+)?(?:then\s+)?"
     r"k(?:nit)?\s+(?:(?:it\s+again|(?:the\s+)?same\s+st(?:itch)?(?:\s+again)?)(?:\s+(?:through|in(?:to)?)\s+(?:the\s+)?back(?:\s+loop)?)|(?:through|in(?:to)?)\s+(?:the\s+)?back(?:\s+loop)?\s+of\s+(?:the\s+)?same\s+st(?:itch)?)", "kfb"),
    (r"\bp(?:url)?\s+(?:the\s+)?(?:next\s+)?st(?:itch)?\s*(?:,|but|and)?\s*(?:(?:leave|leaving|keep)\s+(?:it\s+)?on\s+(?:the\s+)?(?:left\s+)?needle|without\s+(?:removing|slipping|dropping|taking)\s+(?:it|the\s+st(?:itch)?)\s+(?:from|off)\s+(?:the\s+)?(?:left\s+)?needle)\s*,?\s*(?:and\s+)?(?:then\s+)?"
     r"p(?:url)?\s+(?:(?:it\s+again|(?:the\s+)?same\s+st(?:itch)?(?:\s+again)?)(?:\s+(?:through|in(?:to)?)\s+(?:the\s+)?back(?:\s+loop)?)|(?:through|in(?:to)?)\s+(?:the\s+)?back(?:\s+loop)?\s+of\s+(?:the\s+)?same\s+st(?:itch)?)", "pfb"),
    # Twice out of one stitch is into its front and its back. Source: common practice.
    (rf"\b(?:k(?:nit)?|work)\s+twice\s+in(?:to)?\s+{_NEXT}", "kfb"),
    (r"\b(?:m1|make\s+(?:1|one))(?:\s+st(?:itch)?)?\s+(?:purl-?wise|pwise)\b", "m1p"),
    # Two slipped one by one and worked together.
    (rf"\bsl\s+(?:the\s+)?(?:next\s+)?2\s+(?:next\s+)?{STS}?\s*(?:one\s+at\s+a\s+time\s+)?(?:(?:knitwise|kwise|as\s+if\s+to\s+knit)\s*,?\s*)?(?:one\s+(?:at\s+a\s+time|by\s+one|after\s+the\s+other)|individually|separately)?\s*"
     rf",?\s*(?:knitwise|kwise|as\s+if\s+to\s+knit)\s*,?\s*(?:one\s+(?:at\s+a\s+time|by\s+one|after\s+the\s+other)|individually|separately)?\s*,?\s*(?:and\s+)?(?:(?:return|sl|place|put)\s+(?:them|both)\s+(?:back\s+)?(?:to|on|onto)\s+(?:the\s+)?left(?:-hand)?\s+needle\s*,?\s*)?(?:and\s+)?(?:then\s+)?"
     rf"k(?:nit)?\s+(?:them|both|these\s+2(?:\s+{STS})?|the\s+2\s+{STS}|2)\s*tog(?:ether)?{_THROUGH_BACK}", "ssk"),
    (rf"\bsl\s+(?:the\s+)?(?:next\s+)?2\s+(?:next\s+)?{STS}?\s*(?:tog(?:ether)?\s+(?:knitwise|kwise|as\s+if\s+to\s+(?:knit|k2tog))|as\s+if\s+to\s+k(?:nit)?\s*2?\s*tog(?:ether)?)", "sl2 kwise"),
    # The loop of a stitch.
    (rf"\b(k|p)(?:nit|url)?\s+in(?:to)?\s+(?:the\s+)?back(?:\s+loop)?\s+of\s+{_NEXT}", r"\g<1>1 tbl"),
    (r"\bk(?:nit)?\s+(?:in(?:to)?\s+)?(?:the\s+)?(?:next\s+)?st(?:itch)?\s+(?:in\s+the\s+row\s+)?below(?:\s+(?:the\s+)?next\s+st(?:itch)?)?", "k1b"),
    (rf"\bk(?:nit)?\s*(?:the\s+|these\s+)?(?:next\s+)?(\d)\s*(?:next\s+)?{STS}?\s*tog(?:ether)?(?:\s+as\s+one(?:\s+st(?:itch)?)?)?{_THROUGH_BACK}", r"k\1tog tbl"),
    (rf"\bp(?:url)?\s*(?:the\s+)?(?:next\s+)?(\d)\s*(?:next\s+)?{STS}?\s*tog(?:ether)?(?:\s+as\s+one(?:\s+st(?:itch)?)?)?{_THROUGH_BACK}", r"p\1tog tbl"),
    (rf"\bk(?:nit)?\s*(?:the\s+|these\s+)?(?:next\s+)?(\d)\s*(?:next\s+)?{STS}?\s*tog(?:ether)?(?:\s+as\s+one(?:\s+st(?:itch)?)?)?\b", r"k\1tog"),
    (rf"\bp(?:url)?\s*(?:the\s+)?(?:next\s+)?(\d)\s*(?:next\s+)?{STS}?\s*tog(?:ether)?(?:\s+as\s+one(?:\s+st(?:itch)?)?)?\b", r"p\1tog"),
    (rf"\b(k|p)(?:nit|url)?\s*(?:the\s+)?(?:next\s+|first\s+)?(?P<n>\d)?\s*{STS}?{_THROUGH_BACK}", lambda m: f"{m.group(1)}{m.group('n') or 1} tbl"),
    # A slipped stitch with the yarn before or behind it.
    (r"\bwith\s+(?:the\s+)?(?:working\s+)?(?:yarn|wool)\s+(?:held\s+)?(?:in|at|to)\s+(?:the\s+)?front(?:\s+of\s+(?:the\s+)?work)?|\b(?:yarn|yf|yarn\s+held)\s+in\s+front\b", "wyif"),
    (r"\bwith\s+(?:the\s+)?(?:working\s+)?(?:yarn|wool)\s+(?:held\s+)?(?:in|at|to)\s+(?:the\s+)?back(?:\s+of\s+(?:the\s+)?work)?|\b(?:yarn|yarn\s+held)\s+in\s+back\b", "wyib"),
    (r"\bpurl-?wise\b|\bas\s+(?:if\s+)?to\s+purl\b", "pwise"),
    (r"\bknit-?wise\b|\bas\s+(?:if\s+)?to\s+knit\b", "kwise"),
    (rf"\b(wyi[fb])\s*,?\s*sl\s*(?:the\s+)?(?:next\s+|first\s+)?(\d)?\s*{STS}?", r"sl \2 \1"),
    (rf"\bsl\s*(?:the\s+)?(?:next\s+|first\s+)?(\d)?\s*{STS}?\s*(pwise|kwise)?\s*,?\s*(wyi[fb])?\s*(?:,?\s*(pwise|kwise))?(?=\s*(?:,|;|\.|\)|$|and\b|then\b))", lambda m: _slipped(m)),
    (rf"\bk(?:nit)?\s+(?:the\s+)?(?:next\s+|first\s+)?(\d)\s*{STS}?(?=\s*(?:,|;|\.|\)|$|and\b|then\b))", r"k\1"),
    (rf"\bp(?:url)?\s+(?:the\s+)?(?:next\s+|first\s+)?(\d)\s*{STS}?(?=\s*(?:,|;|\.|\)|$|and\b|then\b))", r"p\1"),
    (r"\bk(?:nit)?(?:\s+(?:the\s+)?(?:next\s+|first\s+)st(?:itch)?|\s+(?:the\s+)?st(?:itch)?)?(?=\s*(?:,|;|\.|\)|$|and\b|then\b|(?:all\s+)?in(?:to)?\b))", "k1"),
    (r"\bp(?:url)?(?:\s+(?:the\s+)?(?:next\s+|first\s+)st(?:itch)?|\s+(?:the\s+)?st(?:itch)?)?(?=\s*(?:,|;|\.|\)|$|and\b|then\b|(?:all\s+)?in(?:to)?\b))", "p1"),
    (r"\s*;\s*(?:and\s+)?(?:then\s+)?|\s*,\s*(?:and\s+)?(?:then\s+)?|\s+(?:and\s+then|and|then)\s+(?=\(?(?:[kp]\d|yo\b|sl\b|psso|p2sso|m1|k\dtog|p\dtog))|\.\s+(?=\S)", ", "),
    (r"\bsl 1(?: [kp]wise)?, k1, psso\b", "skp"),
    (r"\bsl 1(?: [kp]wise)?, k2tog, psso\b", "sk2p"),
    (r"\b(?:sl 1 kwise, sl 1|sl 2) kwise, k2tog tbl\b", "ssk"),
    (r"\bmake 1\s+(left|right)\b", lambda m: f"m1{m.group(1)[0]}"),
    (rf"\(?(?P<made>(?:[kp]1(?: tbl)?|yo)(?:, (?:[kp]1(?: tbl)?|yo))+)\)?\s*,?\s*(?:all\s+)?in(?:to)?\s+{_NEXT}", _grouped),
)  # fmt: skip


def _slipped(match: re.Match[str]) -> str:
    """Return a slipped stitch by how it is slipped; the words where no such stitch has a name here."""
    number, first, yarn, second = match.groups()
    if first and second:
        return match.group()
    how = first or second
    if how == "kwise":
        return match.group() if yarn == "wyif" else f"sl {number or 1} kwise"
    return f"sl {number or 1}{f' {yarn}' if yarn else ''}{' pwise' if how and not yarn else ''}"
