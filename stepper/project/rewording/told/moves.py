"""The phrases of which a clause about stitches that are moved is made: who, whose, onto what, where from. No I/O.

"Let these 28 rest on a thread", "the other 28 wait on the cable" and "place the 28 instep sts, without working them,
on hold" are one clause: stitches told by their place or by the part they are of, that they wait, and on what. "Put
the sts of one sleeve back on the larger ndl" and "take up the sleeve sts from the thread" are the same the other way.
A clause is taken apart into phrases of closed kinds, in any order; a word that belongs to none leaves it as printed.
What the clauses of a sentence mean together is for `moving`. Source: the wording of patterns in print, US and UK;
common practice.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Final

from stepper.craft.needles import SIZE
from stepper.project.part_names import PART, STRIP, WHICH
from stepper.project.rewording.on_needles.waiting_synonyms import ON_HOLDER
from stepper.project.rewording.synonym import JOIN_ANY_YARN, SIDE, STS, N
from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, prepare_kinds
from stepper.records import dataclass
from stepper.regex import regex

_STS: Final = rf"(?:{STS}\.?)"
_NUM: Final = rf"(?P<n>{N})"
_SIDE: Final = rf"(?:{SIDE}s?)"
_YARN: Final = r"(?:yarn|wool|cotton|thread|string)"
_HELD: Final = r"(?:held|waiting|reserved|resting)"
_PARTS: Final = rf"{WHICH}(?:{PART}|gusset|panel)(?:'s|s)?"
_OF: Final = rf"(?:\s+(?:of|for|from)\s+(?:(?:the|one|your|a|each|first|either)\s+)*(?P<of>{_PARTS})(?:\s+{_STS})?)?"
_MY: Final = rf"(?:{_HELD}\s+)?(?:(?P<part>{_PARTS})\s+)?(?:{_HELD}\s+)?"
_ART: Final = r"(?:(?:the|your|all|these|those|now|of)\s+)*"
_HOLDER: Final = rf"(?:(?:an?|the|another|its|their|your|first|second|third|st|stitch|waste|scrap|spare|safety|contrast(?:ing)?|{_PARTS}|neck|pieces?\s+of|lengths?\s+of)[\s-]+)*(?:(?:st(?:itch)?[\s-]?)?holders?|{_YARN}|pins?|hold|(?:spare|holding)\s+(?:needles?|ndls?)|cables?)"
_NEEDLE: Final = rf"(?:(?:(?:the|a|an|your|main|working|knitting|set\s+of|short|long|same|{SIZE}|\d+(?:\.\d)?\s*(?:cm|in\.?|inch(?:es)?|\")|circular|double[-\s]pointed|dp|two|three|four|five|[2-5])\s*,?\s*)*(?:needles?|ndls?|dpns?|circulars?|circ)\b\.?(?:\s+(?:size\s+)?\d+(?:\.\d+)?\s?mm)?)(?!\s*[1-5](?![\d.]))"
_BIGGER: Final = r"(?P<size>larger|smaller)"
_SPOT: Final = (
    r"(?:(?:at|to|in|by|from)\s+(?:the\s+)?(?:(?:neck|neckline|armhole|front|back|side|inner|outer|left|right|underarm|thumb|palm|hand|cent(?:er|re)|middle|beginning|beg|start|"
    r"base|edge|edges|end|tip|of|the|gap|inside|row|rnd|round|opening|shoulder|sleeve|body|first)\b\.?[\s-]*)+(?<!\s))"
)
_USE: Final = rf"(?P<use>(?:one\s+)?{WHICH}(?:side\s+of\s+(?:the\s+)?neck|{PART}|gusset|{STRIP}))(?:s\b|\s+{_STS}|\b)"
_WAIT: Final = r"(?:rest|wait|stay|remain|sit|hang|sleep)"

MOVES: Final[Kinds] = prepare_kinds(
    # --- the verbs ---
    (
        "back",
        r"(?:return(?:\s+to)?|replace(?=[^.;]*\b(?:needles?|ndls?|dpns?)\b)|go\s+back\s+to|take\s+up(?:\s+again)?|pick\s+up(?=\s+(?:the\s+)?(?:\d[\d\s(),]*)?held\b|\s+the\s+(?:sts|stitches|[a-z]+\s+(?:sts|stitches)\s+(?:from|off|again))))\b",
    ),
    (
        "put",
        r"(?:place|put|slip|slide|sl|leave|transfer|move|thread|lay|park|keep|hold|store|set(?=\s+(?!in\b|up\b))|let|take)\b",
    ),
    (
        "putting",
        r"(?:placing|putting|slipping|sliding|leaving|transferring|moving|threading|keeping|holding|letting)\b",
    ),
    (
        "stay",
        rf"(?:(?:they|and|these|which)\s+)?(?:(?:to|can|will|may|should|now|all|just|then)\s+)*(?:{_WAIT}s?\b|(?:have|take)\s+a\s+(?:rest|break|nap)\b|be\s+(?:held|kept|left|put|placed|slipped)\b|(?:are|is)\s+(?:now\s+|then\s+)?(?:left|kept|held|put|placed|slipped|transferred|moved|set)\b)",
    ),
    # --- which stitches ---
    (
        "these",
        rf"(?:(?:these|those)(?:\s+(?:(?:last|first)\s+)?{_NUM})?(?:\s+{_MY}{_STS})?{_OF}|them\b|(?:the\s+)?(?P<n2>{N})\s+{_STS}\s+(?:you(?:'ve|\s+have)\s+)?just\s+(?:worked|knit(?:ted)?|purled)|(?:the\s+)?{_STS}\s+(?:you(?:'ve|\s+have)\s+)?just\s+(?:worked|knit(?:ted)?|purled))",
    ),
    ("next", rf"{_ART}(?:next|first|foll(?:owing)?\.?)\s+{_NUM}(?:\s+{_MY}{_STS}{_OF}|(?=\s+on\b))"),
    ("last", rf"{_ART}last\s+{_NUM}(?:\s+{_MY}{_STS}{_OF}|(?=\s+on\b))"),
    ("middle", rf"{_ART}(?:cent(?:er|re)|middle)\s+{_NUM}(?:\s+{_MY}{_STS}{_OF}|(?=\s+on\b))"),
    (
        "rem",
        rf"{_ART}(?:(?:other|remaining|rem\.?|unworked)(?:\s+{_NUM})?(?:\s+{_MY}{_STS}{_OF})|(?:other|remaining|rem\.?)\s+(?P<n2>{N})\b|(?:rest|remainder|others)\b(?:\s+of\s+(?:the|your)\s+{_STS})?|{_STS}\s+(?:that\s+(?:are|were)\s+)?(?:left|remaining)\b(?=\s*[,.;]|\s*$|\s+and\b))",
    ),
    ("named", rf"{_ART}{_NUM}\s+(?:{_HELD}\s+)?(?P<part>{_PARTS})\s+(?:{_HELD}\s+)?{_STS}"),
    ("named", rf"{_ART}(?:{_HELD}\s+)?(?:{_NUM}\s+)?(?:{_HELD}\s+)?{_STS}\s+(?:of|for|from)\s+(?:(?:the|one|your|a|each|first|either)\s+)*(?P<part>{_PARTS})(?:\s+{_STS})?"),
    ("named", rf"{_ART}(?:{_HELD}\s+)?(?P<part>(?:(?:other|second|first)\s+)?{_PARTS})\s+(?:{_HELD}\s+)?{_STS}"),
    ("held", rf"{_ART}(?:{_HELD}\s+(?:{_NUM}\s+)?|(?P<n2>{N})\s+{_HELD}\s+)(?:(?P<part>{_PARTS})\s+)?{_STS}"),
    ("between", rf"{_ART}{_STS}\s+(?:lying\s+)?(?:in\s+)?between\s+(?:the\s+)?(?:two\s+|next\s+two\s+)?(?:raglan\s+|sleeve\s+|gusset\s+|thumb\s+)?(?:markers|ms)\b"),
    ("some", rf"{_ART}{_NUM}(?:\s+{_STS}|(?=\s+on\b))"),
    ("one", rf"{_ART}(?:next|first|cent(?:er|re)|middle)\s+st(?:itch)?\b\.?"),
    ("all", rf"{_ART}(?:stitches|sts)\b\.?|(?:the|your|this)\s+(?:work|piece|knitting)\b"),
    # --- where from, where to ---
    ("from", rf"(?:from|off)\s+(?:the\s+)?(?!(?:neck|armhole)\b)(?P<part>{_PARTS})\s+{_HOLDER}"),
    ("from", rf"(?:from|off)\s+(?!(?:the\s+)?(?:neck|armhole)\b){_HOLDER}"),
    ("lying", rf"(?:on|left\s+on|waiting\s+on)\s+(?:the\s+)(?:[a-z]+\s+)?(?:(?:st(?:itch)?[\s-]?)?holders?|(?:spare|holding)\s+(?:needles?|ndls?)|(?:waste|scrap)\s+{_YARN}|thread|pin)\b|(?:left\s+)?on\s+hold\b(?:\s+for\s+(?:the\s+)?(?P<part>{_PARTS})(?:\s+{_STS})?)?|left\s+unworked\b"),
    ("holder", ON_HOLDER),
    (
        "holder",
        r"(?:on\s+to|onto|on|to)\s+(?:an?\s+|the\s+)?(?:another|(?:second|2nd|third|3rd|fourth|4th|separate|different)(?:\s+one)?)(?:\s+(?:one|holder|thread|length|piece|pin|spare\s+(?:needle|ndl)))?\b",
    ),
    ("holder", r"(?:on\s+to|onto|on|to)\s+(?:an?\s+|the\s+)?spare\s+ndls?\b\.?|aside\b|(?:on|to)\s+one\s+side\b"),
    ("needle", rf"(?:back\s+)?(?:on\s+to|onto|on|to)\s+(?:(?:the|your|a)\s+)?{_BIGGER}\s+{_NEEDLE}"),
    ("needle", rf"(?:back\s+)?(?:on\s+to|onto|on|to)\s+(?:(?:the|your|a|set\s+of)\s+)*(?P<size>{SIZE})\s+{_NEEDLE}"),
    ("needle", rf"(?:back\s+)?(?:on\s+to|onto|on|to)\s+{_NEEDLE}"),
    ("needle", r"back\s+(?:in)?to\s+work\b"),
    # --- what for, how, how long ---
    ("later", r"for\s+(?:now|later|the\s+(?:moment|present))\b|(?:un)?till?\s+(?:they\s+are\s+|you\s+|it\s+is\s+)?(?:needed|wanted|required|later|need(?:\s+them)?|want(?:\s+them)?|come\s+(?:back\s+)?to\s+them)(?:\s+(?:again|later))?\b|to\s+be\s+(?:worked|knitted|picked\s+up|used)\s+later(?:\s+on)?\b|in\s+the\s+meantime\b"),
    ("for", rf"for\s+(?:(?:the|your|a)\s+)?{_USE}"),
    (
        "said",
        r"without\s+(?:knitting|working)(?:\s+(?:them|these|it))?\b|as\s+well\b|too\b|also\b|(?:in\s+)?the\s+same\s+way\b|as\s+before\b|unworked\b",
    ),
    (
        "while",
        rf"while\s+(?:you\s+(?:work|knit|finish|make)|(?:working|knitting))\s+(?:on\s+)?(?:the\s+)?(?:{_PARTS}|other\s+(?:side|half|one))(?:\s+{_STS})?",
    ),
    ("facing", rf"(?:with\s+)?(?:the\s+)?(?P<side>{_SIDE})(?:\s+of\s+(?:the\s+)?work)?\s+facing(?:\s+you)?\b"),
    ("facing", rf"(?:and\s+)?(?:for|ready\s+(?:for|to\s+(?:work|begin(?:\s+with)?|start(?:\s+with)?)))\s+an?\s+(?P<side>{_SIDE})\s+row\b"),
    ("join", JOIN_ANY_YARN),
    ("named", r"(?:to|at)\s+(?:the\s+)?(?P<part>(?:left\s+|right\s+)?(?:front|back|sleeve|thumb))\b(?=\s*(?:[,.;]|$)|\s+(?:with|and)\b)"),
    ("to", rf"(?:to|with)(?=\s+(?:the\s+)?(?:rem|held|live|other|second|sts|stitches|{N}|{_PARTS}\s+(?:{_HELD}\s+)?{_STS}))"),
    ("is", rf"(?:are|is|form|make|become|belongs?\s+to)\s+(?:now\s+)?(?:(?:the|your)\s+)?{_USE}"),
    ("set", rf"(?:the\s+)?(?:other|second|2nd|remaining)\s+(?:set|group|lot|half|side)(?:\s+of\s+(?:the\s+)?{_STS})?\b"),
    ("at", _SPOT),
    ("adverb", r"(?:now|then|carefully|simply|again(?!\s+(?:place|put|slip|sl|transfer|move|leave|hold|keep|set)\b))\b"),
)
"""The kinds of phrases about stitches that are moved, in the order tried."""
_CLAUSE: Final = regex(r"\s*(?:$|[.;:,!(]|-+\s|\band\b|\bthen\b)", re.IGNORECASE)
"""What a clause ends before."""
_WITHIN: Final = regex(r"\s*,\s*(?:and\s+)?|\s+", re.IGNORECASE)
_TAIL: Final = ("facing", "at", "said", "later", "for", "needle", "holder")
"""Kinds that may stand behind a comma within a clause."""
_MOST: Final = 12
"""Most phrases of a clause."""


@dataclass(frozen=True, slots=True)
class Clause:
    """One clause about stitches that are moved."""

    start: int
    """Offset in the line."""
    end: int
    phrases: tuple[ToldPhrase, ...]

    def first(self, *kinds: str) -> ToldPhrase | None:
        """Return the first phrase of one of some kinds; None if there is none."""
        return next((phrase for phrase in self.phrases if phrase.kind in kinds), None)

    def has(self, *kinds: str) -> bool:
        """Return whether a phrase of one of some kinds is in it."""
        return self.first(*kinds) is not None

    def only(self, *kinds: str) -> bool:
        """Return whether all its phrases are of some kinds."""
        return {phrase.kind for phrase in self.phrases} <= {*kinds}


def split_clause(text: str, start: int, stop: int, kinds: Kinds = MOVES) -> Clause | None:
    """Take the clause that begins at a place apart.

    Args:
        text: The line, made plain.
        start: Where the clause begins.
        stop: Where its sentence ends.
        kinds: The kinds of phrases it may have.

    Returns:
        The clause; None if one of its words belongs to no phrase.
    """
    found = _rest(text, start, stop, kinds, ())
    return None if found is None else Clause(start, found[-1].match.end(), found)


def _rest(
    text: str, at: int, stop: int, kinds: Kinds, before: tuple[ToldPhrase, ...]
) -> tuple[ToldPhrase, ...] | None:
    """Return the phrases of a clause from a place on, behind those before; None if they do not fill it."""
    if len(before) >= _MOST:
        return None
    for phrase in _phrases(text, at, stop, kinds):
        if before and "," in text[before[-1].match.end() : at] and phrase.kind not in _TAIL:
            continue
        end = phrase.match.end()
        within = _WITHIN.match(text, end, stop)
        if within is not None and within.end() < stop:
            longer = _rest(text, within.end(), stop, kinds, (*before, phrase))
            if longer is not None:
                return longer
        if end >= stop or _CLAUSE.match(text, end, stop) is not None:
            return (*before, phrase)
    return None


def _phrases(text: str, at: int, stop: int, kinds: Kinds) -> Iterable[ToldPhrase]:
    """Yield the phrases that may begin at a place."""
    for kind, expression in kinds.at(text, at):
        match = expression.match(text, at, stop)
        if match is None or match.end() <= at:
            continue
        end = match.end()
        if end < len(text) and text[end - 1].isalnum() and text[end].isalnum():
            continue
        yield ToldPhrase(kind, match)
