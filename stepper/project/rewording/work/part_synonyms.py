"""Other wordings for a part worked again: the second of a pair, a side that matches the first. No I/O."""

from __future__ import annotations

from stepper.project.rewording.synonym import Synonym, row

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
