"""Write a count that is told in words behind what is worked as the grammar has it: "= 45 sts". No I/O.

"45 remain.", "around: 45.", ", which leaves you with 45 on the needle" and "You should now have 45 in all" are made of three
parts: what leads in, the number, what it counts. Every word of it has to be one of these, up to the end of its sentence; without
a word of leading in, a bare number is a count only behind a colon, a dash or "=" that follows work, or where it says "remain".
Stitches that are left at a turn are no count of all. The plan holds each against what is on the needles. Looked for only in a line
that nothing else reads. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS
from stepper.regex import regex

_NUMBER: Final = r"(?P<n>\d+(?:\s*[(\[]\s*\d+(?:\s*[,;:/]\s*\d+)*\s*[)\]])?)"
_HAVE: Final = r"(?:(?:have|had|count|got|end\s+up\s+with)\b(?:\s+got\b)?)"
_NOW: Final = r"(?:(?:now|again|then|still|only|just|exactly|about)\s+)*"
_LEAD: Final = (
    r"(?:(?:(?:this|that|it|which)\s+)?(?:will\s+|should\s+)?(?:leav(?:es?|ing)|(?<!this\s)(?<!it\s)(?:giv(?:es?|ing)|mak(?:es?|ing))|brings?|bringing|reduc(?:es?|ing)|takes)\s+(?:you\s+|us\s+|the\s+count\s+)?(?:back\s+)?(?:up\s+|down\s+)?(?:(?:with|to)\s+)?"
    rf"|(?:(?:check|make\s+sure|see)\s+(?:that\s+)?)?(?:you|there|we)(?:\s+|(?='))(?:(?:should|will|must|ought\s+to|'ll)\s+)?{_NOW}(?:be\s+(?:{_NOW}(?:left\s+with|(?:back\s+)?(?:at|to)\s+))?|(?:'re|are)\s+{_NOW}(?:(?:left\s+with|(?:back\s+)?(?:(?:down|up)\s+)?(?:at|to))\s+)?|(?:'ve\s+)?{_HAVE}\s+|'ve\s+got\s+|'ve\s+)"
    r"|(?:st(?:itch)?\s+count|count(?:\s+again)?|sts|stitches|remaining|remain|left|total|now|in\s+all|altogether)\s*(?:is\s+|[:=]\s*)"
    r"|(?:you(?:\s+are|'re)\s+)?left\s+with\s+|back\s+(?:up\s+|down\s+)?to\s+)"
)
_OF: Final = (
    rf"(?:\s*{STS}(?:\.(?=\s*[.,;)a-z]))?)?(?:\s+(?:rem(?:ain(?:s|ing)?)?\b|(?:are\s+|is\s+)?(?:left|remaining)|in\s+(?:all|total|the\s+(?:round|rnd|row|work))|altogether|total|all\s+told|now|again|(?:now\s+)?on\s+(?:the\s+|your\s+|all\s+)?needles?))*"
)
_CHANGED: Final = rf"(?:(?P<changed>\d+(?:\s*[(\[][\d\s,;:/]+[)\]])?\s*(?:{STS}\s*)?(?:dec(?:reas(?:ed|es))?s?|inc(?:reas(?:ed|es))?s?)\b\.?)\s*[,;:=-]+\s*)?"
_COUNT: Final = regex(
    rf"(?P<joint>^|(?<=[.!])\s+|(?<=[*)\]])\s+(?=\d[\d\s(),;:/\[\]]*(?:sts|stitches)\b)|\s*(?:[,;:]|=|-+|\u2192|>)\s*|\s*(?P<open>[(\[])\s*|\s+and\s+(?:then\s+)?)\(?(?:and\s+|so\s+|then\s+)*{_NOW}{_CHANGED}(?P<lead>{_LEAD})?(?:(?:a\s+total\s+of|the\s+full)\s+|{_NOW})(?<![\d.])(?=\d){_NUMBER}(?P<of>{_OF})(?P<each>\s+on\s+each\s+needle)?(?:\s*\.?\s*[)\]])*(?=\s*[.!;](?:\s|$|[)\]])|\s*$)",
    re.IGNORECASE,
)
_GOAL: Final = regex(
    rf"\b(?:until|till)\s+(?:(?:only|just)\s+)?(?:{_LEAD})?(?:(?:only|just|a\s+total\s+of)\s+)?{_NUMBER}"
    r"(?:\s+(?P<left>(?:rem(?:ain(?:s|ing)?)?|(?:are\s+|is\s+)?left)\b(?=\s*[,;:.)]|\s+(?:on|and)\b|\s*$))|(?=\s*(?:[,;:.)](?!\d)|$|and\s+then\b)))",
    re.IGNORECASE,
)
"""How far something goes, told by a number of stitches that are not named: "until 28 remain", "until you have 50"."""
_WORK: Final = regex(
    r"\b(?:knit|purl|[kp]\s?\d+|k|p|rep(?:eat)?|inc|dec|(?:in|de)creas(?:e|ing)|work|cast|bind|bo|co|pick|pu|times|more|tog|ssk|around|across|evenly|end|slip|place|rounds?|rnds?|rows?)\b",
    re.IGNORECASE,
)
_LEAVES: Final = regex(r"\b(?:turn(?:ing)?|w&t|wrap|until|till|short|holders?|on\s+hold|rests?\s+on|wait)\b", re.IGNORECASE)
"""Words by which some stitches are left: a count behind them may be of the others."""
_MAKES: Final = regex(r"(?:\w+\s+)?(?:giv|mak)", re.IGNORECASE)
_REMAINS: Final = regex(r"rem|left|all|total|told|on\s", re.IGNORECASE)
_READ: Final = regex(r"\s*\d[\d\s(),:;/\[\]]*(?:sts|stitches)\b(?:\s+(?:rem(?:ain)?|left))?\s*", re.IGNORECASE)


def write_counts(line: Reworded) -> Reworded:
    """Write the counts of a line that are told in words as counts of the grammar.

    Returns:
        The line; the same if it has none that is read so.
    """
    for goal in reversed(list(_GOAL.finditer(line.text))):
        line = laid_anew(line, *goal.span(), ["until ", goal.span("n"), " sts remain" if goal["left"] else " sts"])
    for match in reversed(list(_COUNT.finditer(line.text))):
        before = line.text[: match.start()]
        sentence = before[before.rfind(". ") + 1 :]
        joint, told = match["joint"].strip(), match["lead"] or match["changed"]
        remains = _REMAINS.search(match["of"]) is not None
        bare = not joint and before.rstrip()[-1:] in ("*", ")", "]")
        if (joint or bare) and before.strip():
            behind = told or remains or bare or (joint in _BARE and not before.rstrip()[-1:].isdigit())
            counts = behind and _WORK.search(sentence.split(":", 1)[-1] or sentence) is not None
        else:
            counts = (told is not None or remains) and not _READ.fullmatch(match.group())
        if (match["each"] and not match["lead"]) or (bare and _LISTED.search(before)):
            continue  # "42 (44) 46 (48) sts" is one list of sizes
        if _MAKES.match(match["lead"] or "") and not remains and not re.search(STS, match["of"]):
            continue  # "which makes 6" may be rounds
        if not counts or _LEAVES.search(sentence) or (joint in "([" and joint and before.rstrip()[-1:].isdigit()):
            continue
        lead = " = " if (joint or bare) and before.strip() else match["joint"]
        line = laid_anew(line, match.start(), match.end(), [lead, match.span("n"), " sts on each needle" if match["each"] else " sts"])
        if match["changed"]:
            line = replace(line, kept=(*line.kept, match["changed"].strip()))
    return line


_LISTED: Final = regex(r"\d\s*[(\[][\d\s,;:/]*[)\]]\s*$")
_BARE: Final = (":", "=", "-", "--", "\u2192", "(", "[")
"""Signs behind which a number alone is a count."""
