"""Other wordings for a part worked again, and where a piece is divided: the other part, its yarn, what was left. No I/O."""

from __future__ import annotations

from stepper.project.part_names import EDGING, PART, WHICH
from stepper.project.rewording.synonym import HELD_BY, JOIN_YARN, LONG, ROUND, STS, N, Synonym, row

_PIECE = (
    r"(?:sleeve|sock|stocking|mitten|mitt|glove|cuff|pocket|earflap|flap|slipper|bootee|legwarmer|leg|strap|panel|piece|band|thumb|"
    r"gauntlet|handwarmer|wristwarmer|front|one)"
)
_OTHER = r"(?:second|2nd|other|another|a\s+second)"
_SAME = (
    r"(?:(?:in\s+)?(?:exactly\s+)?(?:the\s+)?same(?:\s+(?:way|manner))?(?:\s+as\s+(?:the\s+)?(?:first|1st|other)(?:\s+" + _PIECE + r")?)?|(?:as|like)\s+(?:the\s+)?first(?:\s+"
    + _PIECE + r")?|to\s+match(?:\s+(?:the\s+)?(?:first|1st|other)(?:\s+" + _PIECE + r")?)?|alike|identically)"
)
_SIDE = r"(?:(?:the\s+)?(?:first|1st|other|opposite|left|right)\s+(?:side|half|edge|front|shoulder))"
_START = r"((?:^|[.!:])\s*)"
_STOP = r"(?=\s*\.?\s*$|\s*[.!])"
_DIVIDED = rf"({WHICH}(?:{PART}|side|half))"
_PUT = r"(?:place|put|slip|sl|leave|transfer|move)"
_JOIN = rf"(?:{JOIN_YARN}|join\s+a\s+new\s+ball\s+of\s+yarn)"
_ON = rf"(?:\s+(?:on|from)\s+(?:the\s+)?{HELD_BY})?"
_THEN = r"(?:\s*[,;]\s*(?:and\s+|then\s+)*|\s+and\s+(?:then\s+)?|\s*(?=\.)|\s*$)"
_SIDE_OF = r"(?:(?:the|left|right|first|second|one|this)\s+)*(?:side|half|front|back|shoulder)(?:\s+of\s+(?:the\s+)?(?:neck|front|back|work|opening))?"
_PIECES = (
    r"(?:left|right|upper|lower|front|back|side|and|the|sleeve|cuff|mitten|mitt|sock|bootee|bootie|leg|strap|pocket|thumb|"
    r"ear|flap|band|border|panel|square|half|slipper|warmer|wrist)"
)
_ANY_PIECE = (
    r"(?!(?:knit|purl|rep|repeat|work|cast|bind|rows?|rounds?|rnds?|inc|dec|increase|decrease|button\w*|bobbles?|cables?|patt|pattern|chart)\b)"
    r"[a-z][a-z'-]+(?:\s+(?!(?:rows?|rounds?|rnds?|sts?|stitch|pattern|chart)\b)[a-z][a-z'-]+){0,2}"
)
"""What a page may call a piece that is made twice: "Earflaps (make 2)"."""
_RIBBED = rf"({WHICH}(?:{PART}|{EDGING})s?)"
_AS_GIVEN = rf"(?:(?:the\s+)?same\s+)?as\s+(?:(?:given|worked|set|directed|described)\s+)?(?:(?:for|on|at)\s+)?(?:the\s+)?{_RIBBED}\b"
_LIKE_PART = (
    r"(?:(?:on|for|that\s+of)\s+)?(?:the\s+)?(back|(?:(?:left|right)\s+)?front)\s+(?:up\s+)?to\s+(?:the\s+)?(?:(?:beg(?:inning)?|start)\s+of\s+)?"
    r"(?:the\s+)?(shoulder|armhole|neck|underarm)s?(?:\s+shapings?)?"
)
"""Another part and a place in it, behind "than"."""

AGAIN: tuple[Synonym, ...] = (
    row(
        "make",
        rf"{_START}\(?\s*make\s+(?:a\s+)?(?:pair|two|2)(?:\s+(?:alike|the\s+same|{_PIECE}s?))?\s*\)?{_STOP}",
        r"\1make again 1",
        "Make 2.",
    ),
    row("make", rf"{_START}\(?\s*make\s+(?:three|3)(?:\s+(?:alike|the\s+same|{_PIECE}s?))?\s*\)?{_STOP}", r"\1make again 2", "Make 3 alike."),
    row("make", rf"{_START}\(?\s*make\s+(?:four|4)(?:\s+(?:alike|the\s+same|{_PIECE}s?))?\s*\)?{_STOP}", r"\1make again 3", "Make 4."),
    row(
        "second|2nd|other|another",
        rf"{_START}(?:(?:make|work|knit)\s+)?(?:the\s+|a\s+)?{_OTHER}\s+({_PIECE})\s*,?\s+(?:is\s+)?(?:(?:worked|made|knit|knitted)\s+)?{_SAME}{_STOP}",
        r"\1make again 1 \2",
        "Make second sleeve same as first.",
    ),
    row(
        "another|second",
        rf"{_START}(?:make|work|knit)\s+(?:another|a\s+second)\s+({_PIECE}){_STOP}",
        r"\1make again 1 \2",
        "Make another sock.",
    ),
    row(
        "need two|need a pair|need 2|knit two of|make two of|knit 2 of|make 2 of",
        rf"{_START}(?:(?:you(?:'ll|\s+will)?\s+need|knit|make|work)\s+(?:two|2|a\s+pair)\s+of\s+(?:these|them|those)|you(?:'ll|\s+will)?\s+need\s+a\s+pair){_STOP}",
        r"\1make again 1",
        "You need two of these.",
    ),
    row(
        "same|alike|ditto",
        rf"{_START}(?:(?:now\s+)?(?:work|make|knit|do)\s+)?(?:the\s+)?(?:second|other)(?:\s+one)?\s+(?:is\s+)?(?:(?:worked|made|knit|knitted|done)\s+)?(?:(?:just|exactly)\s+)?(?:the\s+same|alike|ditto|in\s+the\s+same\s+way){_STOP}",
        r"\1make again 1",
        "The other one is just the same.",
    ),
    row(
        "second side|other side",
        rf"{_START}(?:now\s+)?make\s+(?:the\s+)?(?:second|other)\s+side\s+(?:(?:just|exactly)\s+)?(?:the\s+same|alike|in\s+(?:exactly\s+)?the\s+same\s+way){_STOP}",
        r"\1make again 1 side",
        "Make the second side the same.",
    ),
    row(
        "from here",
        rf"{_START}(?:work|cont(?:inue)?)\s+as\s+(?:(?:given\s+)?for\s+)?(?:the\s+)?((?:left|right|first|second)\s+(?:front|side|mitten|mitt|glove|sock|shoulder))\s+from\s+here(?:\s+on)?\b",
        r"\1complete as for \2",
        "Work as Left Front from here, reversing all shapings.",
    ),
    row(
        "to match",
        rf"{_START}cont(?:inue)?\s+to\s+(?:match|correspond\s+(?:with|to))\s+(?:the\s+)?(?=(?:left|right|first)\s+(?:front|side|sleeve|shoulder)\b)",
        r"\1complete to match ",
        "Continue to match left front, reversing all shapings.",
    ),
    row(
        "complete|finish",
        rf"{_START}(?:complete|finish)(?:\s+(?:right|left)\s+front)?\s+(?:exactly\s+)?(?:to\s+(?:match|correspond\s+(?:with|to))|as\s+(?:given\s+)?for|(?:the\s+)?same\s+as|like|as)\s+(?:the\s+)?((?:left|right)\s+front)\b",
        r"\1complete alike \2",
        "Complete to match left front, reversing shapings.",
    ),
    row(
        "complete|finish|work",
        rf"{_START}(?:complete|finish)\s+(?:(?:this|second|other)\s+(?:side\s+)?)?(?:to\s+(?:match|correspond\s+(?:with|to))|as\s+(?:given\s+)?for|(?:the\s+)?same\s+as|like|as)\s+{_SIDE}",
        r"\1complete like other side",
        "Complete to match first side.",
    ),
    row(
        "side|shoulder|half",
        rf"{_START}(?:work\s+)?(?:the\s+)?(?:second|other|left|right)\s+(?:side|half|shoulder)\s+(?:to\s+match|as\s+(?:given\s+)?for|(?:the\s+)?same\s+as|like|as)\s+{_SIDE}",
        r"\1complete like other side",
        "Work second side to match first side, reversing shaping.",
    ),
    row(
        "as|same|like|match",
        rf"{_START}(?:work\s+|knit\s+|make\s+)?(?:like|(?:in\s+)?the\s+same\s+(?:way|manner)\s+as|identical\s+to|to\s+match)\s+(?:the\s+)?(?=(?:left|right|first|back|front)\b)(?!first\s+side)",
        r"\1work as for ",
        "Work in the same way as left sleeve.",
    ),
)
"""The rows, in the order tried."""

DIVIDED: tuple[Synonym, ...] = (
    row(
        "rib as|ribbing as|rib rnd as|rib round as|rib row as|rib same|ribbing same|row same|rnd same|round same",
        rf"((?:^|[.:]|\band)\s*)(?:(?:work|cont(?:inue)?|knit)\s+)?(?:in\s+)?(?:the\s+)?rib(?:bing)?(?:\s+(?:rnd|round|row))?\s+{_AS_GIVEN}\s+(for\s+(?:{LONG}|{N}\s+{ROUND})|until\b)",
        r"\1work in as-\2 rib \3",
        "Rib as for the back for 6 cm.",
    ),
    row(
        "rib as|ribbing as",
        rf"\b(work|cont(?:inue)?)\s+({LONG}|{N}\s+{ROUND})\s+in\s+rib(?:bing)?\s+{_AS_GIVEN}",
        r"\1 in as-\3 rib for \2",
        "Work 6 cm in rib as given for back.",
    ),
    row(
        ", make|- make|alike|the same",
        rf"^\s*(?P<said>(?:(?:{_PIECES}s?\b\s*)+))(?:,|-)\s+(?:make\s+(?:2|two|both|a\s+pair)(?:\s+(?:alike|the\s+same))?|(?:both|2|two)\s+(?:alike|the\s+same))\s*[.:]?\s*$",
        "make 2.",
        "Sleeves, both alike",
        spelt_out=True,
    ),
    row(
        "(make|(work|(knit|alike|(2|(two|(both|(a pair|[2|[two|[both|[a pair",
        rf"^\s*(?P<said>(?:(?:{_PIECES}s?\b[\s,]*)+|{_ANY_PIECE}\s*))[(\[]\s*(?:(?:(?:make|work|knit)\s+)?(?:both|(?:2|two|a\s+pair)(?:\s+of\s+(?:these|them|those|['\u2019]em))?)(?:\s+(?:alike|the\s+same))?|(?:worked|knit(?:ted)?|made)\s+alike)\s*[)\]]\s*:?\s*$",
        "make 2.",
        "SLEEVES (make 2)",
        spelt_out=True,
    ),
    row(
        "(make|[make|(knit|[knit",
        rf"^\s*(?P<said>(?:(?:{_PIECES}s?\b[\s,]*)+|{_ANY_PIECE}\s*)[(\[]\s*(?:make|knit)\s+(two|three|four|2|3|4)(?:\s+(?:alike|the\s+same|of\s+(?:these|them)))?(?:\s*,?\s*or\s+(?:more|\d+|[a-z]+)\s+if\s+[^()\[\]\d]*)?\s*[)\]])\s*:?\s*$",
        r"make \2.",
        "LEAVES (make three, or five if you have the patience)",
        spelt_out=True,
    ),
    row(
        "holder|hold|yarn|needle",
        rf"\b{_PUT}\s+(?:the\s+)?{_DIVIDED}\s+({N})\s+{STS}\s+(?:on|onto|to)\s+{HELD_BY}",
        r"hold \2 sts for \1",
        "Place the front 56 sts on a stitch holder.",
    ),
    row(
        "edge",
        rf"\b({_JOIN})\s+(?P<said>at\s+(?:the\s+)?(?:armhole|neck|side|inner|outer|cent(?:re|er)|front)\s+edge)\s+(?=to\b|of\s+(?:the\s+)?rem)",
        r"\1 ",
        "Rejoin yarn at neck edge to remaining 20 sts, k to end.",
        spelt_out=True,
    ),
    row(
        "held for",
        rf"\b{_JOIN}\s+to\s+(?:the\s+)?({N})\s+{STS}\s+held\s+for\s+(?:the\s+)?{_DIVIDED}{_THEN}",
        r"take up \1 \2 sts. ",
        "With RS facing, rejoin yarn to 52 sts held for back. Knit 10 rows.",
    ),
    row(
        "yarn",
        rf"\b{_JOIN}\s+(?:to|at)\s+(?:the\s+)?({N}\s+)?{_DIVIDED}\s+{STS}{_ON}{_THEN}",
        r"take up \1\2 sts. ",
        "With RS facing, rejoin yarn to back sts.",
    ),
    row(
        "return to|go back to|back to",
        rf"^(\s*)(?:(?:now\s+)?(?:return|go\s+back|going\s+back|returning))\s+to\s+(?:the\s+)?(?:held\s+)?({N}\s+)?(?:held\s+)?{_DIVIDED}\s+{STS}{_ON}{_THEN}",
        r"\1take up \2\3 sts. ",
        "Return to the front sts and work as for back until armhole measures 9 cm.",
    ),
    row(
        "on these",
        rf"(?:(?<=^)|(?<=[.!]))\s*(?P<said>(?:work|cont(?:inue)?|working|continuing)\s+(?:on\s+)?(?:only\s+)?on\s+these\s+{STS}(?:\s+only)?(?:\s+for\s+{_SIDE_OF})?)\s*,?(?:\s*(?:and\s+)?(?:(?:proceed|work|cont(?:inue)?)\s+)?as\s+foll(?:ow)?s)?\s*(?:[.:]\s*|\s*$|(?<=,)\s*(?=(?:dec|inc|work|knit|purl|[kp]\b|bind|cast|shape)\b))",
        " ",
        "Work on these sts only for left side.",
        spelt_out=True,
    ),
    row(
        "less|fewer",
        rf"\buntil\s+(?:there\s+(?:are|have\s+been)\s+)?({N})\s+rows?\s+(?:less|fewer)\s+(?:(?:are|have\s+been)\s+worked\s+)?than\s+{_LIKE_PART}",
        r"until piece measures same as \2 to \3 less \1 rows",
        "Cont straight until 12 rows fewer have been worked than on back to start of shoulder shaping.",
    ),
    row(
        "ending|finishing|ends",
        rf"(\buntil\s+[^.;,]*?\b(?:measures\s+same\s+as|matches|is\s+(?:the\s+)?same(?:\s+length)?\s+as)\b[^.;,]*?(?:\bless\s+{N}\s+rows)?)\s*,?\s*(?:and\s+)?(?:ending|finishing)\s+(?:with|on|after)\s+(?:an?\s+)?(rs|ws|right\s+side|wrong\s+side|knit|purl|k|p)\s+{ROUND}",
        r"\1. ends with a \2 row",
        "Work straight until front matches back to shoulder, ending with a WS row.",
    ),
)
"""The rows, in the order tried."""
