"""Part a cast-on at the marker that stands amid it: "CO 8 (10) sts, placing a marker at the center". No I/O.

Where body and sleeves part, the round or a side seam begins in the middle of what is cast on under the arm. The
grammar reads what is cast on before the marker and behind it, so the number is parted here: in halves, or behind as
many as the page says. Stitches that have no middle in one of the sizes are left as they are printed, and refused.
Source: the print of sweaters knitted in the round from the neck; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS, N
from stepper.regex import regex

_HOW: Final = (
    r"(?:\s*,?\s+\(?(?:for|at|along|from|edge|sts|on|under|over|across|using|with|by|the|an?|your|backwards?|e-loop|loops?|cable|knitted|knit|thumb|twisted|method|"
    r"technique|cast[-\s]?on|co|(?:under)?arms?|underarm|left|right|first|second|other|side|body|gap|new|preferred)\b\)?)*?"
)
"""How and where they are cast on: words that stand in no order to knit."""
_ROUND_BEGINS: Final = (
    r"(?:(?:new\s+)?bor|(?:the\s+)?(?:new\s+)?(?:beg(?:inning)?|start)\.?(?:[\s-]+of[\s-]+(?:the[\s-]+)?(?:rnd|round))?)"
)
_PUTS: Final = (
    rf"(?:pm|(?:plac(?:e|ing)|put(?:ting)?)\s+(?:(?:an?|the|your|new|removable|{_ROUND_BEGINS}|side|underarm)\s+)*(?:markers?|m)\b"
    r"|(?<=with\s)an?\s+(?:markers?|m)\b)"
    rf"(?:\s+(?:for|as|to\s+(?:mark|indicate|show))\s+(?P<as>{_ROUND_BEGINS}|(?:the\s+)?(?:left\s+|right\s+)?side(?:\s+seam)?))?"
)
_MIDDLE: Final = (
    r"(?:(?:at|in)\s+(?:the\s+)?(?:exact\s+|very\s+)?(?:cent(?:er|re)|middle|mid-?point)|half-?way(?:\s+(?:across|through))?)"
    rf"(?:\s+(?:of\s+)?(?:(?:these|those|the|them|new|cast[-\s]?on|co|underarm|\d+)\s*)+(?:{STS}|cast[-\s]?on)?)?"
)
_AMID: Final = regex(
    rf"\b(?P<cast>cast\s+on|co|pick\s+up\s+and\s+k(?:nit)?)\s+(?P<many>{N})(?P<sts>(?:\s+(?:(?:new|more|additional|extra|underarm)\s+)*{STS})?){_HOW}"
    rf"\s*[,;]?\s*\(?(?:and\s+|then\s+|with\s+)?(?P<put>{_PUTS})\s+"
    rf"(?:(?P<middle>{_MIDDLE})|after\s+(?:the\s+)?(?:first\s+)?(?P<first>{N})(?:\s+(?:of\s+these\s+)?{STS})?)"
    rf"(?:\s+(?:for|as|to\s+(?:mark|indicate|show))\s+(?:the\s+)?(?P<for>{_ROUND_BEGINS}|(?:left\s+|right\s+)?side(?:\s+seam)?))?\)?"
    r"(?=\s*[,.;:=*]|\s+(?:and|then|[kp]\b|knit)|\s*$)",
    re.I,
)
_BEGINS: Final = regex(rf"\b{_ROUND_BEGINS}\b", re.I)
_FIGURE: Final = regex(r"\d+")


def write_parted_cast_ons(line: Reworded) -> Reworded:
    """Write each cast-on with a marker amid it as two, with the marker between them.

    Returns:
        The line; the same if it has none, or one that cannot be parted in every size.
    """
    if not re.search(r"\b(?:pm|m|markers?)\b", line.text, re.I):
        return line
    for match in reversed(list(_AMID.finditer(line.text))):
        many, first = match["many"], match["first"]
        parted = _halves(many) if first is None else _rest(many, first)
        if parted is None:
            continue
        before, behind = parted
        begins = _BEGINS.search(" ".join(filter(None, (match["put"], match["for"]))))
        sts_at, put_at = match.span("sts"), match.start("put")
        how = (sts_at[0], len(line.text[:put_at].rstrip(" ,;(")))
        cast = match.span("cast")
        sts = "" if match["sts"] else " sts"
        pieces: list[str | tuple[int, int]] = [cast, f" {before}{sts}", _without_and(line.text, how), ", pm"]
        pieces += [" for BOR"] if begins else []
        pieces += [", ", cast, f" {behind} sts"]
        line = laid_anew(line, *match.span(), pieces)
    return line


def _without_and(text: str, span: tuple[int, int]) -> tuple[int, int]:
    """Return a stretch without the word that joined it to the marker."""
    start, end = span
    joined = re.search(r"[\s,;]*\(?\s*\b(?:and|then|with)$", text[start:end], re.I)
    return start, start + joined.start() if joined else end


def _halves(many: str) -> tuple[str, str] | None:
    """Return the halves of a number for each size; None if one has none."""
    numbers = [int(each) for each in _FIGURE.findall(many)]
    if not numbers or any(number % 2 for number in numbers):
        return None
    half = _FIGURE.sub(lambda each: str(int(each.group()) // 2), many)
    return half, half


def _rest(many: str, first: str) -> tuple[str, str] | None:
    """Return what stands before the marker and behind it, in each size; None if the lists do not match."""
    numbers, before = _FIGURE.findall(many), [int(each) for each in _FIGURE.findall(first)]
    if len(before) == 1:
        before *= len(numbers)
    rest = [int(number) - taken for number, taken in zip(numbers, before, strict=False)]
    if not rest or len(before) != len(numbers) or any(number < 0 for number in rest):
        return None
    left = iter(rest)
    return first, _FIGURE.sub(lambda _: str(next(left)), many)
