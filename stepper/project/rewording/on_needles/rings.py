"""Write how a ring is closed and where its rounds begin in the grammar's words, told in any order. No I/O.

"Mark beg of rnd, join", "Taking care that the edge is not twisted, join into a ring and mark the beginning of the round with a
loop of wool" and "Join without twisting; the marker is at the centre back" are made of the same few phrases: that it is joined,
that nothing is twisted, how the beginning is marked, where it lies. Joined and marked is ordered, how is said. A sentence has to be
made of such phrases up to its end, as "place a marker after 30 sts" and "join MC" are something else. Looked for only in a line
that nothing else reads. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from stepper.project.rewording.reworded import Reworded
from stepper.project.rewording.synonym import STS
from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, Written, prepare_kinds, write_sentences
from stepper.regex import regex

_RND: Final = r"(?:rounds?|rnds?|ring|circle|tube)\b"
_IT: Final = (
    rf"(?:it|them|(?:(?:the|your|all|any|of|cast-?on|lower|first|last)\s+)*(?:{STS}\.?|work|edge|cast-?on|row|round|rnd|ring|ends|needles?|knitting))"
)
_BEG: Final = r"(?:(?:the|your|this\s+as|this)\s+)?(?:(?:beg\b\.?|beginning|start|first\s+st(?:itch)?)(?:\s+of\s+(?:(?:the|your|each|every)\s+)?(?:rounds?|rnds?)\b)?|bor\b|join(?:ing)?(?:\s+point)?\b)"
_SPOT: Final = r"(?:(?:the|a|at|in|on|of|to|for|now|left|right|cent(?:re|er)|mid|middle|back|front|side|seam|underarm|under|arm|inner|inside|leg|sleeve|neck|shoulder|raglan|hip|body|waist|heel|sole|beg(?:inning)?|start|end|rnds?|rounds?|bor|hem)\b[\s/-]*)+(?<![\s/-])"
_A: Final = (
    r"(?:(?:an?|the|your|one|1)\s+)?(?:(?:stitch|st|special|odd|different|unique|contrast(?:ing)?|colou?red|removable|locking|new|bright|safety|"
    r"first|main|bor|small|spare|scrap|short|other|loop|piece|length|bit|of|in|colou?r(?:ed)?|waste)\s+)*"
)
_MARKER: Final = r"(?:markers?|ms?\b|pins?|yarn|wool|thread|cotton)\b"
_SHOWS: Final = (
    rf"(?:\s+(?:(?:to\s+(?:mark|show|indicate|denote)|for|at|as|before|after|marking|showing)\s+(?:{_BEG}|(?:the\s+)?(?:first|last)\s+st(?:itch)?\b)|here|(?:on|onto)\s+(?:the\s+|your\s+)?(?:(?:right|left)(?:[\s-]hand)?\s+)?needle|on|in\s+place"
    rf"|between\s+(?:the\s+)?(?:last\s+and\s+(?:the\s+)?first|first\s+and\s+(?:the\s+)?last)\s+{STS}"
    r"|of\s+(?:the\s+)?(?:rnd|round)))*"
)
RINGS: Final[Kinds] = prepare_kinds(
    (
        "care",
        rf"\(?(?:(?:being|be|take|taking|making|make|with)\s+)?(?:very\s+)?(?:careful|care|sure|certain)\s+(?:that\s+)?(?:nothing\s+(?:is|gets|has\s+been)\s+twisted|(?:you\s+)?(?:do\s+)?not\s+to\s+(?:twist|get\s+twisted)|not\s+(?:to\s+)?twist(?:ing)?|to\s+avoid\s+twisting|{_IT}\s+(?:is|are|isn't|aren't|has|have|does|do)\s*(?:not\s+|n't\s+)?(?:been\s+)?twist(?:ed)?)(?:\s+{_IT})?!?\)?",
    ),
    ("care", rf"\(?(?:without\s+twisting|(?:and\s+)?(?:do\s+not|don't)\s+twist|not\s+twisting|avoid(?:ing)?\s+twisting|no\s+twist(?:s|ing))(?:\s+{_IT})?!?\)?"),
    ("join", rf"(?:(?:now|then)\s+)?(?:join(?:ing)?|connect|close)(?:\s+{_IT})?(?:\s+together)?(?:\s+(?:to|for)\s+(?:work(?:ing)?|knit(?:ting)?))?\s+(?:in|into|to\s+form)\s+(?:(?:the|an?)\s+)?{_RND}(?:\s+knitting)?(?!\s+\d)"),
    ("join", rf"(?:form|make|close)\s+(?:{_IT}\s+)?(?:in|into)?\s*(?:an?|the)\s+(?:ring|circle|round|rnd)\b"),
    ("join", rf"join(?:\s+(?:the\s+)?(?:rnd|round|ring|{STS}))?(?=\s*(?:[,;.(]|$|without\b|being\b|taking\b|and\s+(?:mark|place|put|pm)\b))"),
    ("bor", rf"mark(?:ing)?\s+{_BEG}(?:\s+(?:with|using)\s+{_A}{_MARKER}(?!\s*[A-Z]\b))?{_SHOWS}"),
    ("mark", rf"(?:pm\b|(?:(?:place|put|hang|slip|set|insert|slide|add|use|attach|placing|putting)(?:\s+and\s+keep)?|with)\s+{_A}{_MARKER}){_SHOWS}"),
    ("said", rf"\(?(?:(?:(?:this|the|your|it)\s+)?(?:(?:marker|{_BEG}|round|rnd)\s+)?(?:(?:will\s+be|is|marks|shows|indicates|sits|lies|begins?|starts?)\b\s*)+)?(?:now\s+)?(?:{_SPOT})\)?"),
)
"""The phrases of which such a sentence is made."""
_STARTS: Final = regex(r"(?:^|[.!]\s|(?<!\d):\s|(?P<joint>[,;]\s+(?:and\s+)?(?:then\s+)?|\s+and\s+(?:then\s+)?))\s*(?=[A-Za-z])", re.IGNORECASE)
_BEGUN: Final = regex(r"(?:cast\s+on|co|pick\s+up|arrange|divide|distribute|place|slip|with|using|on)\b", re.IGNORECASE)
_TELLS: Final = regex(r"\b(?:join|ring|circle|mark|twist)", re.IGNORECASE)


def write_rings(line: Reworded) -> Reworded:
    """Write the sentences of a line that close a ring or mark its beginning in the grammar's words.

    Returns:
        The line; the same if it has none that is read so.
    """
    if not _TELLS.search(line.text):
        return line
    return write_sentences(line, _STARTS, RINGS, _written)


def _written(phrases: Sequence[ToldPhrase], start: re.Match[str]) -> Written | None:
    """Return a ring that is closed, or its beginning that is marked; None if the phrases say neither."""
    kinds = [phrase.kind for phrase in phrases]
    if kinds.count("join") > 1 or kinds.count("bor") + kinds.count("mark") > 1:
        return None
    if start["joint"] and not _goes_on(phrases, start.string[: start.start()]):
        return None
    marked = "bor" in kinds or "mark" in kinds
    said = [one.match.group().strip(" ()") for one in phrases if one.kind != "join"]
    if "join" in kinds:
        return ["Join in the round" + (". Pm for BOR" if marked else "")], said
    told = next((one.match.group().lower() for one in phrases if one.kind in ("bor", "mark")), "")
    names_round = any(word in told for word in ("round", "rnd", "bor"))
    return (["Pm for BOR"], said) if marked and names_round else None


def _goes_on(phrases: Sequence[ToldPhrase], before: str) -> bool:
    """Return whether a ring is closed behind an order that begins one, and more is said of it than that."""
    told = len(phrases) > 1
    begun = _BEGUN.match(before.rpartition(". ")[2].lstrip()) is not None and not before.rstrip().endswith(")")
    return begun and told and any(one.kind == "join" for one in phrases)
