"""The phrases of which a sentence about shaping is made: what, where, on which rows, how often, how long. No I/O.

Theory of operation. "Continue to increase like this on every 3rd rnd until there are 17 sts between the
markers" and "On every 3rd rnd, work the increase again, until ..." are one sentence in two orders. Each of
their phrases is of one of a few kinds (`SHAPING`), told by how it begins; a sentence is taken apart from left
to right, and one word that belongs to no phrase leaves all of it as it is printed. What the phrases mean
together is for `shaping`. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Final

from stepper.project.rewording.beginnings import ByLetter
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import CUT_YARN, LONG, ROUND, SIDE, STS, N
from stepper.records import dataclass
from stepper.regex import regex

_NTH: Final = (
    r"(?:\d+(?:st|nd|rd|th)(?:\s*[(\[](?:\s*\d+(?!\d)(?:st|nd|rd|th)?\s*[,;:]?)+[)\]])?"
    r"|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)"
)
_ON: Final = r"(?:(?:on|in|of|at|for|across)\s+)?(?:the\s+)?"
ALL: Final = r"(?:in\s+(?:all|total)|altogether|total|all\s+told|overall)"
_CHANGE: Final = r"(?P<dir>inc|dec)(?:reas(?:e|es|ed|ing|ings))?s?\b\.?"
DONE: Final = r"(?:worked|made|done|repeated|knitted|knit|completed|increased|decreased)"
_HAS_DONE: Final = (
    rf"(?:you(?:\s+have|'ve)\s+{DONE}|(?:it|this|they|these)\s+(?:has|have)\s+been\s+{DONE}|you\s+have)"
)
_WHAT_DONE: Final = r"(?:it|this|that|them|these|the\s+(?:inc|dec)(?:rease)?(?:\s+(?:row|rnd|round))?)"
_MARKERS: Final = r"(?:(?:raglan|side|gusset|thumb|st(?:itch)?)\s+)?(?:markers?|ms?)\b"
_FIRST_LAST: Final = (
    r"(?:(?:in|into)\s+(?:the\s+)?first\s+and\s+(?:in\s+)?(?:the\s+)?last|after\s+(?:the\s+)?first(?:\s+st(?:itch)?)?\s+and\s+before\s+(?:the\s+)?last)\s+(?:sts?|stitch(?:es)?)\b"
    r"(?:\s+of\s+(?:the\s+)?(?:row|rnd|round)\b|(?=\s+of\b))?"
)
"""The stitches at both ends of a row, or at both sides of where rounds begin."""
_KIND: Final = r"(?:raglan|gusset|thumb|crown|sleeve|body|waist|hip|leg|calf|toe|yoke|side)"
_ADVERB: Final = (
    r"(?:now|then|from\s+(?:here|now)(?:\s+on(?:wards)?)?|simply|just|also|always|meanwhile\s+plain)"
)

TIMES_IN_ALL: Final = rf"(?:for\s+)?(?:a\s+total\s+of|{ALL})\s+(?P<n>{N})\s+times\b|(?P<n2>{N})\s+times?\s*,?\s+{ALL}"
MORE_TIMES: Final = (
    rf"(?:for\s+)?(?:another|a\s+further)\s+(?P<n>{N})\s+times|(?:for\s+)?(?P<n2>{N})\s+(?:(?:more|further|additional)\s+times|times\s+(?:more|again|further))"
)
TIMES: Final = rf"(?:for\s+)?(?P<n>{N})\s+times?\b|once\b|twice\b"
"""How often: with the times before, on top of them, or so many times without saying which."""
SECTIONED: Final = rf"(?:-+\s*)?(?:there\s+are\s+)?(?P<n>{N})(?:\s+{STS})?\s+(?:(?:in\s+)?between\s+each\s+(?:pair\s+of\s+)?markers?|in\s+(?:each|every)(?:\s+(?:one\s+)?of\s+the(?:\s+\w+)?)?\s+(?:wedges?|sections?|segments?))\b"
"""Stitches counted in each section between two markers."""
BETWEEN_MARKERS: Final = rf"(?:[:=(]\s*)?(?:-+\s*)?(?:there\s+are\s+)?(?P<n>{N})\s+{STS}\s+(?P<two>between\s+(?:the\s+)?(?:two\s+)?(?:(?:gusset|thumb)\s+)?markers)\b\s*\)?"
"""Stitches counted between the two markers of a gusset."""
_EACH_TIME: Final = rf"(?:\s+(?:(?:every|each)\s+time|(?:(?:on|in|at)\s+)?(?:each|every|the|all)(?:\s+(?:foll(?:owing)?|subsequent|succeeding|successive|next))?\s+(?:dec|inc)(?:reas(?:e|ing))?\.?\s+{ROUND}))?"
"""How often a number of stitches becomes another: each time, or in each such round."""
Kinds = ByLetter[tuple[str, re.Pattern[str]]]
"""Kinds of phrases and how each looks, in the order tried."""


def prepare_kinds(*kinds: tuple[str, str]) -> Kinds:
    """Return kinds of phrases, each with an expression that finds it in any case of letters."""
    return ByLetter((expression, (kind, regex(expression, re.IGNORECASE))) for kind, expression in kinds)


SHAPING: Final[Kinds] = prepare_kinds(
    # --- what is only said, or counted apart ---
    (
        "said",
        r"changing\s+to\s+[^.,;:()]*?(?:needles?|dpns?|circulars?|loop)(?:\s+(?:when|as|if)\s+(?:there\s+are\s+enough\s+(?:sts|stitches)|(?:it\s+(?:is|becomes)\s+)?(?:needed|necessary|required|possible)|you\s+(?:need|can)|the\s+(?:sts|stitches)\s+(?:fit|allow)))",
    ),
    ("said", rf"(?:\(\s*|=\s*)?(?:that\s+is|which\s+(?:is|makes)|i\.?e\.?|so)\s+(?:a\s+total\s+of\s+)?{N}\s+(?:inc|dec)(?:rease)?(?:s|\s+{ROUND})(?:\s+{ALL})?\s*\)?"),
    ("said", r"(?:with\s+)?no\s+plain\s+(?:rounds|rnds|rows)(?:\s+in)?\s+between"),
    ("each", SECTIONED),
    # --- how often: with the times before, or on top ---
    (
        "all",
        rf"(?:until|till)\s+{_HAS_DONE}\s+(?:{_WHAT_DONE}\s+)?(?:(?:a\s+total\s+of|in\s+(?:all|total))\s+)?(?P<n>{N})\s+(?:times?|of\s+(?:them|these|those))\b(?:\s+{ALL})?",
    ),
    (
        "all",
        rf"(?:(?:until|till)\s+(?:{_HAS_DONE}|there\s+are)\s+|for\s+)?(?:a\s+total\s+of\s+)?(?P<n>{N})\s+(?:{_KIND}\s+)?(?:inc|dec)(?:rease)?(?:s|\s+{ROUND})(?:\s+(?:have\s+been|are|were)\s+{DONE})?(?:\s+{ALL})?(?<=\w)(?=\s*[.,;:=(]|\s+[-=]|\s*$)",
    ),
    ("all", TIMES_IN_ALL),
    ("all", rf"(?:for\s+)?(?:a\s+total\s+of|{ALL})\s+(?P<n>{N})\b(?!\s+(?:{STS}|{ROUND}))"),
    ("more", MORE_TIMES),
    ("more", r"(?:once|twice)\s+(?:more|again)"),
    ("times", TIMES),
    # --- how long ---
    (
        "until",
        rf"(?:until|till|up\s+to|down\s+to|to)\s+(?:(?:there\s+are|you(?:\s+have|'ve)(?:\s+got)?|you\s+(?:get|come|are)\s+(?:(?:back|down|up)\s+)*to|you're\s+(?:(?:back|down|up)\s+)*(?:to|at)|only|just|again|a\s+total\s+of|the\s+(?:shawl|work|piece)\s+has|(?P<gusset>the\s+(?:gusset|thumb)\s+has))\s+)*(?P<n>{N})(?:\s+{STS}|(?=\s+(?:rem(?:ain(?:ing)?)?|(?:are\s+)?left)\b))"
        rf"(?:\s+(?:(?P<between>(?:in\s+)?between\s+(?:them\b|(?:the\s+)?(?:two\s+)?{_MARKERS}))|rem(?:ain(?:ing)?)?|(?:are\s+)?left|on\s+(?:the|your)\s+needles?|again|{ALL}))*",
    ),
    # --- on which rows ---
    ("every", rf"(?:(?:for|on)\s+)?(?:every|each)\s+(?P<length>{LONG})"),
    (
        "every",
        rf"{_ON}(?:every|each)\s+(?:(?:foll(?:owing)?|subsequent|successive|succeeding)\.?\s+)?(?P<other>(?:other|2nd|second|alt(?:ernate)?\.?)\s+)?(?:(?P<side>{SIDE})\s+)?(?P<row>{ROUND})\b(?!\s*:)",
    ),
    (
        "every",
        rf"{_ON}(?:every|each)\s+(?:(?:foll(?:owing)?|subsequent|successive|succeeding)\.?\s+)?(?:(?P<nth>{_NTH})|(?P<number>{N}))\s+(?:(?P<side>{SIDE})\s+)?(?P<row>{ROUND})\b(?:\s+(?:after(?:\s+that|wards)?|thereafter|from\s+(?:then|there|here)\s+on)\b)?",
    ),
    ("every", rf"(?:on\s+)?(?:every|each)\s+(?P<nth>{_NTH})(?=\s+{N}\s+times)"),
    (
        "apart",
        rf"(?:with|working|knitting|leaving)\s+(?P<n>{N})\s+(?:(?:plain|even|straight)\s+)?(?P<row>{ROUND})\s+(?:(?:worked\s+)?(?:in\s+)?between(?:\s+(?:each(?:\s+(?:one|dec(?:rease)?|inc(?:rease)?))?|them|every\s+(?:dec|inc)(?:rease)?|(?:the\s+)?(?:dec|inc)(?:rease)?s?))?|(?P<distance>from\s+(?:one|each)\s+to\s+the\s+next))",
    ),
    (
        "every",
        rf"(?:with|working|knitting|leaving|at)\s+(?P<length>{LONG})(?:\s+(?:in\s+)?between(?:\s+(?:each(?:\s+(?:one|dec(?:rease)?|inc(?:rease)?))?|them|every\s+(?:dec|inc)(?:rease)?|(?:the\s+)?(?:dec|inc)(?:rease)?s))?|\s+apart|\s+intervals)",
    ),
    ("next", rf"{_ON}(?:next|following|foll)\s+(?:(?P<side>{SIDE})\s+)?(?P<row>{ROUND})\b(?!\s*:)"),
    ("next", r"(?:right\s+)?now\b(?=\s*,?\s+(?:and|then)\s+(?:then\s+)?(?:on\s+|in\s+)?(?:the\s+)?(?:every|each)\b)"),
    ("next", rf"{_ON}next\b(?=\s*,?\s+(?:and|then)\s+(?:on\s+|in\s+)?(?:the\s+)?(?:every|each)\b)"),
    # --- in which manner ---
    (
        "manner",
        r"(?:exactly\s+)?(?:(?:in\s+)?(?:this|the\s+same|that|like|a\s+similar)\s+(?:manner|way|fashion)|like\s+(?:this|that|so)|as\s+(?:before|set|established|described|above|shown|you\s+did)|thus|likewise|accordingly)\b",
    ),
    (
        "closer",
        rf"(?:(?:but\s+)?(?:always\s+)?(?:with|working|having|knitting|leaving)\s+(?:always\s+)?)?(?:1|one)\s+(?:(?:less|fewer)\s+(?:knit\s+|plain\s+)?{STS}|(?:knit\s+|plain\s+)?{STS}\s+(?:less|fewer))\s+(?:in\s+)?(?:between|before)\s+(?:(?:each|every|the)\s+)?(?:dec(?:reas(?:e|es|ing|ings))?s?\b\.?|k2togs?){_EACH_TIME}",
    ),
    (
        "wider",
        rf"(?:(?:but\s+)?(?:always\s+)?(?:with|working|having|knitting|leaving)\s+(?:always\s+)?)?(?:1|one)\s+(?:(?:more|extra|additional)\s+(?:knit\s+|plain\s+)?{STS}|(?:knit\s+|plain\s+)?{STS}\s+more)\s+(?:in\s+)?(?:between|before)\s+(?:(?:each|every|the)\s+)?(?:inc(?:reas(?:e|es|ing|ings))?s?\b\.?|m1s?|yos?|kfbs?){_EACH_TIME}",
    ),
    (
        "first",
        r"(?:the\s+(?:row|rnd|round|one)\s+(?:you\s+have\s+|you've\s+)?just\s+worked\s+counts\s+as\s+(?:the\s+)?first(?:\s+(?:one|of\s+(?:the|these)\s+(?:inc|dec)(?:rease)?s))?|(?:counting|including)\s+(?:the\s+(?:one|row|rnd|round|(?:inc|dec)(?:rease)?)\s+(?:you(?:'ve|\s+have)\s+)?just\s+(?:worked|made|done)|the\s+first(?:\s+one)?|this\s+(?:one|row|rnd|round)))\b",
    ),
    # --- where ---
    (
        "ends",
        rf"{_FIRST_LAST}|at\s+(?:the\s+)?(?:beg\b\.?|beginning|start)\s+and\s+(?:the\s+|at\s+the\s+)?end(?:(?=\s+of\s+(?:every|each|the\s+next|next)\b)|\s+of\s+(?:the\s+)?(?:row|rnd|round)\b(?=\s*,?\s+(?:on\s+)?(?:every|each|next|the\s+next|now|until|{N})\b))|(?:at\s+|on\s+|(?<=sts\s)|(?<=st\s))(?:each|both|either)\s+(?:ends?|sides?|edges?)(?:\s+of\s+(?:the\s+)?(?:row|rnd|round|work|piece|needle))?\b(?!\s+of\s+(?:(?:the|each|every|all|both)\s+(?:of\s+the\s+)?)?(?:[a-z]+\s+)?(?:m|markers?|sts?|stitch(?:es)?)\b)",
    ),
    ("arm", r"(?:at\s+|in\s+)?(?:(?:the\s+)?(?:mid(?:dle)?|cent(?:er|re))\s+(?:of\s+(?:the\s+)?)?)?(?:under\s+(?:the\s+)?(?:arm|sleeve)|under-?arm|sleeve\s+seam)\b"),
    ("edge", r"at\s+(?:the\s+|each\s+)?(?:neck|armhole|front|side)\s+edges?\b"),
    (
        "marker",
        r"(?:at|on)?\s*(?:each|both|either)\s+sides?\s+of\s+(?:(?:the|a|your)\s+)?(?:raglan\s+|side\s+|gusset\s+|marking\s+|bor\s+)?(?:marker|m|thread)\b(?:\s+(?:at|for)\s+(?:the\s+)?(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?(?:rnd|round))?|before\s+and\s+after\s+(?:(?:the|a|your)\s+)?(?:marker|m)\b",
    ),
    (
        "markers",
        rf"(?:(?:at|on)?\s*(?:each|both|either)\s+sides?\s+of|before\s+and\s+after)\s+(?:(?:each|every|all|both|the)\s+(?:of\s+the\s+)?)?(?:four\s+|two\s+)?{_MARKERS}",
    ),
    (
        "gusset",
        rf"(?:for\s+(?:the\s+)?(?:thumb\s+)?(?:gusset|thumb)|(?:inside|between|within)\s+(?:the\s+)?(?:two\s+)?(?:gusset\s+|thumb\s+)?{_MARKERS})",
    ),
    (
        "raglan",
        r"(?:for\s+(?:the\s+)?raglans?|at\s+(?:the\s+|each\s+|all\s+)?(?:four\s+)?raglans?(?:\s+(?:lines?|seams?))?)\b",
    ),
    # --- what ---
    (
        "noun",
        rf"(?:(?P<this>this|that|these|those|the\s+last|the\s+same)\s+|the\s+|your\s+|an?\s+|all\s+(?:the\s+)?)?(?:(?P<kind>{_KIND})\s+)?(?:shaping\s+)?{_CHANGE}(?:\s+(?P<row>row|rnd|round)s?)?(?:\s+again)?(?!\s*(?:{N}\s+)?{STS}|\s+{N}\s+(?:at\s+)?(?:each|both|either)\b)(?=\s|[.,;:]|$)",
    ),
    (
        "again",
        r"(?:this|that|it|another(?:\s+one)?|one\s+more|the\s+(?:last|above)|the\s+same)(?:\s+(?P<row>row|rnd|round))?(?:\s+again)?(?=\s|[.,;]|$)(?!\s+(?:\d|end|other|side|manner|way|fashion))",
    ),
    ("change", rf"(?:to\s+)?{_CHANGE}(?:\s+(?P<n>{N})(?:\s*{STS}\.?|(?=\s+(?:at\s+)?(?:each|both|either)\s+(?:ends?|sides?)\b)))?"),
    # --- and the verbs ---
    (
        "go",
        r"(?:cont(?:inu(?:e|ing))?\.?|keep(?:\s+on)?|go(?:ing)?\s+on|carry(?:ing)?\s+on|proceed)(?:\s+(?:to|with))?(?:\s+(?:work|mak|do|repeat)(?:e|ing)?)?\b",
    ),
    ("only", r"only\b"),
    ("rep", r"(?:rep(?:eat)?(?:ing|ed)?\b\.?|(?:do|work)(?=\s+(?:this|that|it|another(?!\s+(?:inc|dec|\d))|one\s+more(?!\s+(?:inc|dec))|the\s+same)\b))"),
    ("work", r"(?:work(?:ing)?|do|make|knit)\b"),
    ("are", rf"(?:is|are|happens?|falls?|comes?|occurs?)(?:\s+(?:then\s+)?{DONE})?\b"),
    ("adverb", rf"{_ADVERB}\b"),
)
"""The kinds of phrases about shaping over many rows."""
_COUNT: Final = regex(
    rf"\s*(?:[:=,;(\[-]|-+)*\s*(?:(?:and\s+)?(?P<lead>you(?:\s+now|'ll|\s+will)?(?:\s+then)?\s+have|you(?:'ve|\s+have)(?:\s+now)?\s+got|there\s+(?:are|will\s+be)(?:\s+now)?|(?:you(?:'re|\s+are)|are)\s+(?:(?:now|back|down|up)\s+)*(?:to|at|with)|(?:which|this|that)\s+(?:leaves|gives|makes|brings\s+you\s+to)(?:\s+you(?:\s+with)?)?|leaving(?:\s+you)?(?:\s+with)?|giving)\s+|and\s+|or\s+|=\s*)?"
    rf"(?P<n>{N})(?:\s+{STS}|(?=\s+(?:rem(?:ain(?:ing)?)?|(?:are\s+)?left)\b)|(?(lead)(?=\s*[.;)]|\s*$)|(?!)))(?:\s+(?:rem(?:ain(?:ing)?)?|(?:are\s+)?left|on\s+(?:the|your)\s+needles?|{ALL}))*\s*[)\]]?(?=\s*[.;]|\s*$|\s*,?\s+(?:and\s+)?then\b)",
    re.IGNORECASE,
)
_GLUE: Final = regex(
    r"(?:\s*[,;]\s*|\s+)(?:(?:and|then|but|thereafter|after\s+that|afterwards)\b\s*,?\s*)*|\s*(?=$)",
    re.IGNORECASE,
)
_END: Final = regex(r"\s*(?:[.!]|$)")
_GOES_ON: Final = regex(
    r"\.(?=\s+(?:carry|keep|go|cont(?:inue)?\b\.?)(?:\s+(?:on|going))?\s+(?:like|in)\s+(?:this|that|the\s+same)\b(?:\s+(?:way|manner|fashion))?\s+until\b)",
    re.IGNORECASE,
)
"""A full stop behind which the same shaping is told on: "every other round. Carry on like that until ..."."""
ORDERED_NEXT: Final = regex(
    r"\s*[,;]?\s*(?:and\s+(?:then\s+)?|then\s+)(?=(?:(?:place|put|slip|leave|transfer)\s+(?:(?:all|these|the|rem(?:aining)?|last)\s+)*(?:\d[\d\s,()]*)?(?:sts|stitches)\b"
    rf"|{CUT_YARN}|(?:bind|cast)\s+off\s*(?:(?:all|loosely|rem(?:aining)?|in)\b|[.;]|$)))"
    r"|\s*[,;]?\s*(?:and\s+)?then\s+(?=(?:knit|purl|work|rib|rep(?:eat)?|cont(?:inue)?|change|dec(?:rease)?|inc(?:rease)?)\b|[kp]\s?\d|[kp]\s)",
    re.IGNORECASE,
)
"""What joins an order for all stitches, or behind "then" any, to a sentence that ends before it."""
_APART: Final = regex(r"\s*\([^()]*\)\s*(?:[.!]|$)")
"""A bracket behind a sentence, which stays as it is printed: what reads it is looked for afterwards."""
_MOST: Final = 24
"""Most phrases of a sentence."""


@dataclass(frozen=True, slots=True)
class ToldPhrase:
    """One phrase of a sentence."""

    kind: str
    match: re.Match[str]

    def get(self, name: str) -> str:
        """Return what a group of the phrase matched; empty if it has none."""
        return self.match.groupdict().get(name) or ""


def split_phrases(
    text: str, start: int, kinds: Kinds = SHAPING, *, most: int = _MOST
) -> tuple[tuple[ToldPhrase, ...], int] | None:
    """Take a sentence apart.

    Args:
        text: The line, made plain.
        start: Where the sentence begins.
        kinds: The kinds of phrases it may have.
        most: Most phrases it may have.

    Returns:
        Its phrases in their order, the count behind them last as the kind `count`, and the offset of its
        full stop or of the end; None if a word belongs to none.
    """
    found: list[ToldPhrase] = []
    at, clause = start, None
    while len(found) < most:
        if found and found[-1].kind == "every" and (stop := _GOES_ON.match(text, at)) is not None:
            at = stop.end()
        if _END.match(text, at) is not None:
            return tuple(found), at
        count = _COUNT.match(text, at) if len(found) > 1 else None
        if count is not None:
            found.append(ToldPhrase("count", count))
            at = count.end()
            continue
        glue = _GLUE.match(text, at) if found else None
        if glue is not None and ";" in glue.group():
            clause = tuple(found), at
        phrase = _phrase(text, glue.end() if glue is not None else at, kinds)
        if phrase is None:
            if len(found) > 1 and ORDERED_NEXT.match(text, at) is not None:
                return tuple(found), at
            counted = bool(found) and found[-1].kind == "count" and text[at : at + 1] == ":"
            apart = bool(found) and (counted or _APART.match(text, at) is not None)
            return (tuple(found), at) if apart else clause
        found.append(phrase)
        at = phrase.match.start() + len(phrase.match.group().rstrip())
    return None


Written = tuple[Sequence[str | tuple[int, int]], Sequence[str]]
"""A sentence in the grammar's words, each put in or from a place in the line, and what is only said of it."""


def write_sentences(
    line: Reworded,
    starts: re.Pattern[str],
    kinds: Kinds,
    write: Callable[[Sequence[ToldPhrase], re.Match[str]], Written | None],
) -> Reworded:
    """Write each sentence of a line that is made of some kinds of phrases in the grammar's words.

    Args:
        line: The line.
        starts: Where such a sentence may begin; its group `joint`, if any, is what joins it to the one before.
        kinds: The kinds of phrases it may have.
        write: Makes the words of its phrases and of what `starts` found; None if they mean nothing together.

    Returns:
        The line; the same if it has none that is read so.
    """
    for start in reversed(list(starts.finditer(line.text))):
        found = split_phrases(line.text, start.end(), kinds)
        written = write(found[0], start) if found is not None else None
        if found is None or written is None:
            continue
        words, said = written
        cut, joint = (start.start(), ". ") if start.groupdict().get("joint") else (start.end(), "")
        line = laid_anew(line, cut, found[1], [joint, *words])
        line = replace(line, kept=(*line.kept, *said))
    return line


def leading_phrases(text: str, start: int, end: int, kinds: Kinds) -> tuple[tuple[ToldPhrase, ...], int]:
    """Take a sentence apart as far as its words belong to phrases.

    Args:
        text: The line, made plain.
        start: Where the sentence begins.
        end: Where the line ends for it.
        kinds: The kinds of phrases it may have.

    Returns:
        Its phrases in their order, and the offset behind the last of them.
    """
    found: list[ToldPhrase] = []
    at = start
    while len(found) < _MOST and at < end:
        glue = _GLUE.match(text, at) if found else None
        if found and glue is None:
            break
        phrase = _phrase(text, glue.end() if glue is not None else at, kinds)
        if phrase is None or phrase.match.end() > end:
            break
        found.append(phrase)
        at = phrase.match.start() + len(phrase.match.group().rstrip())
    return tuple(found), at


def _phrase(text: str, at: int, kinds: Kinds) -> ToldPhrase | None:
    """Return the phrase that begins at a place; None if there is none."""
    for kind, expression in kinds.at(text, at):
        match = expression.match(text, at)
        if match is not None and match.end() > at and not _within_word(text, match.end()):
            return ToldPhrase(kind, match)
    return None


def _within_word(text: str, end: int) -> bool:
    """Return whether a phrase would end in the middle of a word or a number."""
    return 0 < end < len(text) and text[end - 1].isalnum() and text[end].isalnum()
