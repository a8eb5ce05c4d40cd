"""Take talk out of a line: sentences, reasons and brackets that work no stitch. No I/O.

Theory of operation. Knitters who write for each other chat between the orders: "OK, are you there? This
is the boring bit." Which sentences do nothing is told by their clauses (`clauses.telling`) and by the forms
of `remarks.idle`. A reason ("so you know where your round begins") stands behind the order it
explains; it may name the stitches, but nothing that is done to them. What is talk is said at its place.
Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.clauses.telling import works_nothing
from stepper.project.rewording.remarks.idle import is_idle
from stepper.project.rewording.reworded import Reworded, cut_out
from stepper.regex import regex

_GO_ON: Final = regex(
    r"(?:[,;-]|\b(?:and|then|so|now|but|or)\b)\s*(?:(?:then|just|now|please|simply)\s+)*"
    r"(?:do|go|keep|carry|continue|stop|finish|put|take|move|make|add|lift|pull|draw|pass|cut|break|change|switch|place|remove|use|close|open|swap|return|fold|count|measure)\b",
    re.IGNORECASE,
)
"""A clause that orders something though its sentence began as talk: "It's pretty, now go on."."""
_HABIT: Final = regex(
    r"i\s+(?:(?:also|really|do|still|personally)\s+)*(?:always|usually|often|normally|sometimes|never|mostly|like|love|prefer|hate|enjoy)\b"
    r"(?![^.!?]*(?:[\d*:=]|\b(?:until|every|each|both|rows?|rounds?|rnds?|here|first|last|next|more|ends?|sides?|edges?|inc\w*|dec\w*|add\w*|slip\w*|purl\w*|knit(?!ting)\w*)\b))[^.!?]*$",
    re.IGNORECASE,
)
"""What the writer does or likes: it may name a way to do it, but no row and nothing that is shaped."""
_REASON: Final = regex(
    r"(?:\s*,\s*|\s+(?:-\s+)?)(?P<said>(?:(?:so(?:\s+that)?|because|since|otherwise|or\s+else)\s+(?:you|it|it's|they|they're|there|there's|your|the|that|that's|this|i|we|everything|nobody|nothing|it'll|you'll|they'll)|or\s+(?:it|you|your|the|they|there)(?:\s+[a-z]+){0,2}(?:'ll|\s+will|\s+won't|\s+might|\s+may|\s+gets?)|as\s+you\s+(?:come|go|get|reach))\b[^.!?:;()*\d]*?)(?=\s*[.!?)]|\s*$)",
    re.IGNORECASE,
)
_NO_REASON: Final = regex(
    r"(?<![\w'-])(?:until|till|times?|twice|thrice|again|every|each|both|only|more|less|fewer|instead|ends?|ending|remain\w*|left|over|"
    r"between|from|before|after|turn\w*|number|even|odd|multiple|divisible|count\w*|have|has|same|match\w*|meet\w*|line\s+up|cent(?:er|re)\w*|middle|"
    r"continu\w*|repeat\w*|increas\w*|decreas\w*|knit\w*|purl\w*|work\w*|slip\w*|pick\w*|cast\w*|bind\w*|place\w*|hold\w*|join\w*|move\w*|"
    r"first|last|next|other|another|one|long(?:er)?|short(?:er)?|measures?|reach\w*|as\s+wide|front|back|rs|ws|(?<!know\swhere\s)(?<!see\swhere\s)(?<!where\syour\s)round\s+(?:now\s+)?(?:begins|starts))(?![\w-])",
    re.IGNORECASE,
)
"""Words with which a reason says how many stitches there are to be, or what else is done."""
_BRACKET: Final = regex(r"\s*\((?P<said>[^()\d*]{2,160}?)\)")
_ASKED: Final = regex(
    r"(?:(?<=^)|(?<=[.!?]\s)|(?<=^-\s)|(?<=^\*\s))\s*"
    r"(?P<said>(?:(?:(?:do|would)\s+you\s+)?[a-z][a-z' -]{2,50})[?!]\s+[^.!?*]{3,160}[.!]?)(?=\s|$)",
    re.IGNORECASE,
)
"""A question of what she would like or is troubled by, with what she may then do."""
_BULLET: Final = regex(r"\s*[-*\u2022]\s+|\s*all\s+sizes\s*:\s*", re.IGNORECASE)
"""What may stand before talk at the head of a line: the sign of a list, whom it is for."""
_WHOLE_BRACKET: Final = regex(r"(?:(?<=^)|(?<=[.!?]\s))\s*\((?P<said>[^()*]{2,300})\)[.!]?\s*")
"""A bracket that is a sentence of its own, or several."""
_LOST: Final = regex(
    r"(?<=[a-z])\.\s+(?:just\s+|simply\s+|then\s+)?((?:get\s+rid\s+of|decrease|lose)\s+(?:it|them)\b)",
    re.IGNORECASE,
)
"""What becomes of an extra stitch, told in a sentence of its own."""
_CRIES: Final = regex(
    r"(?:,\s*|\s+-\s+)(?P<said>sorry|hurray|hooray|yay|phew|promise|honest(?:ly)?|alas|sadly|i\s+promise|trust\s+me|believe\s+me|really|ta-?da|easy|please|poor\s+you|lucky\s+you)(?=\s*[.,!?)]|\s*$)",
    re.IGNORECASE,
)
SENTENCE: Final = regex(
    r"(?:[^.!?]|(?<=\d)\.(?=\d)|(?<=\bapprox)\.|(?<=[\s\d\u00bd\u00bc\u00be]ins)\.(?=\s[a-z(])"
    r"|(?<=[\s\d\u00bd\u00bc\u00be]in)\.(?=\s[a-z(]))*(?:[.!?]+(?=\s|$|[)])\s*|$|[.!?])"
)
"""A sentence: the full stop of a number, of "approx." and of inches within it is none of its end."""


def is_talk(sentence: str) -> bool:
    """Return whether a sentence, or what stands in brackets, is only talk.

    Args:
        sentence: The sentence, made plain.
    """
    words = sentence.strip(" .!-,\"'")
    return works_nothing(sentence) or (_HABIT.match(words) is not None and not _GO_ON.search(words))


def take_talk_out(line: Reworded) -> Reworded:
    """Take the talk out of a line, to be said with it.

    Returns:
        The line without sentences, brackets and reasons that are talk; the same if it has none.
    """
    cuts: list[tuple[int, int, str]] = []
    brackets = [match.span() for match in _WHOLE_BRACKET.finditer(line.text) if _is_all_talk(match["said"])]
    brackets += [match.span("said") for match in _ASKED.finditer(line.text) if is_idle(match["said"])]
    cuts += [(start, end, line.text[start:end].strip(" ()")) for start, end in brackets]
    lead = _BULLET.match(line.text)
    for match in SENTENCE.finditer(line.text, lead.end() if lead is not None else 0):
        inside = any(start < match.end() and match.start() < end for start, end in brackets)
        if match.end() > match.start() and not inside:
            cuts += _cuts_in(line.text, match.start(), match.end())
    cuts.sort()
    if not cuts:
        return line
    bullet = _BULLET.match(line.text)
    if bullet is not None and cuts[0][0] <= bullet.end():
        cuts[0] = (0, *cuts[0][1:])
    return cut_out(line, cuts)


def _is_all_talk(words: str) -> bool:
    """Return whether each sentence of a bracket is talk or works no stitch."""
    words = _LOST.sub(r" and \1", words)
    said = [match.group().strip() for match in SENTENCE.finditer(words) if match.group().strip(" .!?")]
    return bool(said) and all(is_idle(one) or is_talk(one) for one in said)


def _cuts_in(text: str, start: int, end: int) -> list[tuple[int, int, str]]:
    """Return what is talk, or works no stitch, between two places of a line: where it stands, its words."""
    sentence = text[start:end]
    if is_idle(sentence) or is_talk(sentence):
        return [(start, end, sentence)]
    found = [
        (start + match.start(), start + match.end(), match.group("said"))
        for match in _BRACKET.finditer(sentence)
        if is_talk(match.group("said")) or _CRIES.fullmatch(f", {match.group('said').strip(' !.')}")
    ]
    found += [
        (start + match.start(), start + match.end(), match.group("said"))
        for match in _CRIES.finditer(sentence)
    ]
    reason = _REASON.search(sentence)
    if reason is not None and reason.start() and not _NO_REASON.search(reason.group("said")):
        found.append((start + reason.start(), start + reason.end(), reason.group("said")))
    found.sort()
    return [cut for at, cut in enumerate(found) if at == 0 or cut[0] >= found[at - 1][1]]
