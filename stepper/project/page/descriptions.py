"""Tell sentences in front of a pattern that describe the piece, its figures or how it is made. No I/O.

Theory of operation. Before anything is cast on a page tells in prose what its rows will make: "The raglans grow
every right-side row", "A top-down triangle, increasing four stitches every right-side row". The rows say so
again, and they are worked. A sentence describes if its clauses order nothing, what it is about is the piece or a
part of it, and it has no word of a rule that lasts and may stand nowhere else (`_RULES`): an edge stitch,
"always", "unless", a fabric, a needle, a strand. Source: common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.clauses import word_classes as of
from stepper.project.rewording.clauses.clause import Clause, Mood, clauses_of, words_of
from stepper.project.rewording.synonym import word_set
from stepper.regex import regex

_LONGEST: Final = 320
_RULES: Final = word_set(
    "always never must should shall may can unless except throughout until till edge edges selvedge selvedges selvage selvages slip slipped "
    "slips slipping first last instead if when whenever otherwise needle needles mm strand strands double held color colors colour colours mc cc "
    "buttonhole buttonholes turn turned ridge ridges twice thrice once times again only even odd knitwise purlwise loop loops "
    "marker markers work"
)
"""Words of rules that last, which may stand in no row below."""
_ABOUT: Final = of.PARTS - frozenset(["work", "edge", "edges", "beginning", "end", "start", "ends"]) | word_set(
    "garment pattern design construction shape shaping fabric lace repeat motif cable cables raglan raglans increases decreases "
    "bands stripes sections wedges panels triangle crescent stitch-pattern wrap stole poncho dress coat jacket mitts mittens slippers "
    "bonnet beret tam cap blanket cushion bag toy capelet it they this these everything edging raglan-lines fit sample knitter"
)
_ALTERNATE: Final = frozenset(["alternate", "alternates", "alternating", "frame", "frames", "meet", "meets"])
_EACH: Final = frozenset(["every", "each"])
_ROWS: Final = frozenset(["row", "rows", "round", "rounds", "rnd", "rnds"])
_STITCHES: Final = regex(r"[*\[\]=+]|\b[kp]\s?\d|\b(?:k2tog|ssk|yo|m1|kfb|psso|sk2p)\b|\b(?:rows?|rounds?|rnds?)\s+\d|\d\s*(?:sts|stitches)\b")
_FRAGMENT: Final = regex(r"(?:an?|the|this|worked|knit|knitted|made|begun|started|seamless|top-down|bottom-up|bands|stripes)\b")
_FIGURES: Final = regex(
    r"(?:(?:throughout|in)\s+(?:the|this)\s+pattern\s*,\s+)?(?:the\s+)?(?:figures?|numbers?|instructions?|counts?|sizes?)\s+(?:for\s+[a-z' ]{3,40}?\s+|in\s+(?:square\s+|round\s+)?(?:brackets|parentheses)\s+)?(?:comes?|follows?|stands?|is\s+given|are\s+given|refers?|appl(?:y|ies))\b[^*]*"
    r"|(?:(?:please\s+)?(?:work|repeat|knit)\s+)?(?:the\s+)?instructions?\s+(?:given\s+)?(?:in|within|between|inside)\s+(?:the\s+)?(?:square\s+|round\s+)?(?:brackets|parentheses|asterisks|stars)?\s*(?:\[\s*\]|\(\s*\)|\*\s*\*)?\s*(?:are\s+(?:worked|repeated)\s+)?(?:(?:for\s+)?(?:the\s+)?number\s+of\s+times|as\s+(?:many\s+times|often)\s+as)\s+(?:given|indicated|stated|directed|shown|specified|instructed|told)(?:\s+(?:after|behind)\s+(?:them|the\s+brackets?))?"
    r"|(?:techniques?|skills?|stitches)(?:\s+(?:used|needed|required|you\s+need))?\s*:\s*(?:[a-z][a-z0-9 /-]*(?:,\s*(?:and\s+)?|\s+and\s+|$))+"
    r"|price\s*:?\s*[\d./]+\s*(?:p|d|c|cents?|pence|\$|€|£)?|this\s+pattern\s+(?:was|has\s+been)\s+(?:test[-\s]?knit(?:ted)?|edited|checked)\b[^*:]*"
)
"""What a page says of its figures, brackets and techniques."""


def describes(sentence: str) -> bool:
    """Return whether a sentence in front of a pattern only describes it.

    Args:
        sentence: One sentence, as printed.
    """
    plain = " ".join(made_plain(sentence).lower().split()).strip(" .!\"'-\u2022")
    if not plain or len(plain) > _LONGEST:
        return False
    if _FIGURES.fullmatch(plain):
        return True
    if _STITCHES.search(plain):
        return False
    clauses = clauses_of(words_of(plain))
    return all(map(_describes, clauses)) and any(_is_about(each) for each in clauses)


def _is_about(clause: Clause) -> bool:
    """Return whether a clause is about the piece: by its subject, or as a phrase that names it."""
    if clause.mood is Mood.STATES:
        return bool(set(clause.subject) & (_ABOUT | frozenset(["we"]))) or _FRAGMENT.match(" ".join(clause.words)) is not None
    return _FRAGMENT.match(" ".join(clause.words)) is not None and bool(set(clause.words) & _ABOUT)


def _describes(clause: Clause) -> bool:
    words = set(clause.words)
    if clause.mood in (Mood.ORDERS, Mood.FORBIDS, Mood.ASKS, Mood.CONDITION) or words & _RULES:
        return False
    if (words & of.YOU and "can" not in words) or any(word.isdigit() for word in words):
        return False
    if clause.mood is Mood.STATES and set(clause.rest) & of.FABRIC and not words & _ALTERNATE:
        return False
    if clause.mood is Mood.STATES and set(clause.subject) & (of.STITCH_THINGS - _ABOUT):
        return False
    if words & _EACH and words & _ROWS:
        return bool(words & frozenset(["grow", "grows", "increasing", "widens", "widen", "gains", "gain"]))
    return True
