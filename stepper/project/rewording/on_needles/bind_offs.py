"""Write how all stitches are bound off in the grammar's words, told in any order. No I/O.

"BO in pattern, loosely", "cast off, not tightly, on the wrong side" and "bind off loosely with k over k and p over p" are made of few
phrases: all or so many stitches, in what, on which side, and how tight, which is only told. One word that belongs to none leaves
the sentence as it is printed. Looked for only in a line that nothing else reads. Source: the wording of patterns in print, US and UK;
common practice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from stepper.craft.needles import SIZE
from stepper.project.rewording.reworded import Reworded
from stepper.project.rewording.synonym import STS, N
from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, Written, prepare_kinds, write_sentences
from stepper.regex import regex

_MUCH: Final = r"(?:(?:but|and|not|too|very|really|rather|quite|fairly|nice\s+and|reasonably|relatively|extra|super|a\s+(?:bit|little)|slightly)\s+)*"
_TAUT: Final = r"(?:loose(?:ly)?|tight(?:ly)?|firm(?:ly)?|neat(?:ly)?|even(?:ly)?|elastic(?:ally)?|stretchily|gently|carefully|snug(?:ly)?|slack(?:ly)?)"
_HOW: Final = rf"{_MUCH}{_TAUT}\b"
_WAY: Final = r"(?:method|technique|way|bind[-\s]?off|cast[-\s]?off|bo)\b"
_NAMED: Final = r"(?:italian|sewn|stretchy|elastic|flexible|tubular|lace|suspended|russian|icelandic)"
"""Ways to bind off by their names that leave no other edge of stitches, as an I-cord or a picot would."""
BIND_OFFS: Final[Kinds] = prepare_kinds(
    ("off", r"(?:(?:now|then)\s+)?(?P<verb>bind\s+off|cast\s+off|bo\b)"),
    ("told", _HOW),
    ("told", r"(?:with|at|in)\s+(?:an?\s+)?(?:medium|even|normal|loose|firm|relaxed)\s+tension\b"),
    ("needle", rf"(?:with|using|on)\s+(?:an?\s+|the\s+)?(?P<size>{SIZE}|smaller|larger)\s+(?:circular\s+)?needles?\b"),
    ("ribbed", r"in\s+(?:the\s+)?(?P<rib>k\s?\d+\s*,\s*p\s?\d+\s+rib)(?:bing)?\b"),
    ("told", r"in\s+the\s+(?:usual|normal)\s+way\b|as\s+usual\b|(?:using|with|by)\s+(?:an?|the|your)\s+(?:[a-z'-]+\s+){0,4}" + _WAY),
    ("told", rf"(?:(?:using|with|by|in)\s+)?(?:(?:an?|the|your|any|some|very|favou?rite)\s+)*{_NAMED}(?:\s+or\s+(?:any\s+other|another|an?)\s+{_NAMED})?(?:\s+{_WAY})?(?!\s*[a-z])"),
    ("rib", r"(?:(?:in|as)\s+(?:the\s+)?)?(?:established\s+)?rib(?:bing|-?wise)?\b(?:\s+(?:pattern|as\s+(?:set|established)))?"),
    ("patt", r"(?:(?:with|in|working|knitting)\s+)?(?:(?:the\s+)?k(?:nit)?s?\s+over\s+(?:the\s+)?k(?:nit)?s?\s+and\s+p(?:url)?s?\s+over\s+(?:the\s+)?p(?:url)?s?|(?:the\s+)?knits?\s+(?:sts\s+)?and\s+purling\s+(?:the\s+)?purls?(?:\s+sts)?)\b|(?:working\s+)?(?:the\s+)?sts?\s+as\s+they\s+(?:appear|present|come|face\s+you)\b"),
    ("patt", r"(?:(?:in|as)\s+(?:the\s+)?)(?:established\s+)?patt(?:ern)?\b"),
    ("purlwise", r"(?:in\s+purl|p(?:url)?-?\s?wise|as\s+if\s+to\s+p(?:url)?)\b"),
    ("knitwise", r"(?:in\s+knit|k(?:nit)?-?\s?wise|as\s+if\s+to\s+k(?:nit)?)\b"),
    ("side", r"(?:on|from)\s+(?:the\s+)?(?:next\s+)?(?P<side>rs|ws|right[\s-]side|wrong[\s-]side)(?:\s+row)?\b"),
    ("all", rf"(?:(?:all|the|your|these|remaining|rem|live|last)\b\.?\s*)*(?:(?P<n>{N})\s*)?{STS}"),
)
"""The phrases of which such a sentence is made."""
_STARTS: Final = regex(
    r"(?:^|[.!]\s|(?<!\d):\s|(?P<joint>\s*,?\s+and\s+(?:then\s+)?|\s*,\s+then\s+))\s*(?=(?:now\s+|then\s+)?(?:bind\s+off|cast\s+off|bo)\b)"
    rf"|(?:^|[.!]\s)\s*(?={_HOW}\s+(?:bind\s+off|cast\s+off|bo)\b)",
    re.IGNORECASE,
)
_FORMS: Final = {"rib": " in rib", "patt": " in pattern", "purlwise": " purlwise", "knitwise": " knitwise"}


def write_bind_offs(line: Reworded) -> Reworded:
    """Write the sentences of a line that bind all stitches off in the grammar's words.

    Returns:
        The line; the same if it has none that is read so.
    """
    return write_sentences(line, _STARTS, BIND_OFFS, _written)


def _written(phrases: Sequence[ToldPhrase], start: re.Match[str]) -> Written | None:
    """Return a binding off in the grammar's order; None if a kind is there twice."""
    kinds = [phrase.kind for phrase in phrases if phrase.kind != "told"]
    if len(set(kinds)) < len(kinds) or kinds[:1] != ["off"] or len(set(kinds) & {*_FORMS, "ribbed"}) > 1:
        return None
    by_kind = {phrase.kind: phrase for phrase in phrases}
    if by_kind.keys() & {"side", "needle"} and start.string[: start.start()].strip():
        return None  # behind other rows it may be the side that does not come next, and the needle of all of them
    many = by_kind["all"].match.span("n") if "all" in by_kind and by_kind["all"].get("n") else None
    verb = by_kind["off"].get("verb")
    made: list[str | tuple[int, int]] = []
    if "needle" in by_kind:
        made += ["Change to ", by_kind["needle"].match.span("size"), " needles. "]
    made += [verb[:1].upper() + verb[1:]]
    made += [" rem ", many, " sts"] if many else [" all sts"] if "all" in by_kind else []
    made += [form for kind, form in _FORMS.items() if kind in by_kind]
    made += [" in ", by_kind["ribbed"].match.span("rib")] if "ribbed" in by_kind else []
    if "side" in by_kind:
        made.append(f" on {by_kind['side'].get('side')[0].upper()}S")
    return made, [phrase.match.group() for phrase in phrases if phrase.kind == "told"]
