"""Tell orders that last and change no stitch: how yarns are carried, rows counted, needles changed as they fit. No I/O.

Theory of operation. Designers print these in any order of the same few words, in the imperative, in the passive and with
"when changing colours" before or behind. So a kind is told by its words alone: some of which one must be there (a yarn and
what is done to it; a needle, a change and how the stitches fit) and a closed list of all others. No list holds a verb of the
craft, a stitch by number, "until" or "then": with any of those the sentence is none of these. Numbers stand in the few
phrases of `_MEASURES` alone. "Change to the short needle when there are 60 sts" has a count, "hold the two colours together"
makes one yarn of two, and "take the yarn over" is a stitch; all stay unread. Source: common practice.
"""

from __future__ import annotations

import re
from functools import cache
from typing import Final

from stepper.records import dataclass
from stepper.regex import regex

_FEW: Final = r"(?:\d{1,2}|two|three|four|five|six|seven|eight|nine|ten)"
_MEASURES: Final = regex(
    rf"\b(?:(?:longer|more|over|greater)\s+(?:than\s+)?{_FEW}|{_FEW}\s+or\s+more|over\s+{_FEW}(?:\s+or\s+more)?|every|each|after\s+(?:every|each)|about\s+every|once\s+every|at\s+least\s+every)\s+(?:{_FEW}\s+|few\s+|other\s+|second\s+|third\s+|fourth\s+|\d(?:nd|rd|th)\s+)?(?:sts?|stitch(?:es)?|rows?|rounds?|rnds?|cm|inch(?:es)?|in)\b"
    r"|\b(?:to\s+work\s+and\s+count|from\s+(?:time\s+to\s+time|now\s+on)|as\s+you\s+(?:go(?:\s+along)?|work|knit)|at\s+the\s+same\s+tension|with\s+the\s+(?:wrong|right)\s+side)\b",
    re.I,
)
"""How long, how far apart and when: what may hold a number, or a word that orders elsewhere."""
_WORD: Final = regex(r"[a-z0-9'/-]+", re.I)
_SMALL: Final = (
    "the a an all any your this these that those it its them they their there you of on in at to up by with from for as and or but so also always never not no "
    "do don't does doesn't is are be been being will would should may can could must have has when whenever where if once while please remember sure make take care note tip nb careful "
    "just simply too very enough more most quite rather only one two both each other another here throughout every"
)
_SETS: Final = {
    "yarn": "yarn yarns colour colours color colors strand strands wool wools thread threads float floats shade shades mc cc cc1 cc2 dc lc bc pc contrast contrasting background main dominant dark light darker lighter",
    "handled": "carry carried carrying strand stranded stranding twist twisted twisting catch caught catching trap trapped trapping weave weaving woven cross crossed crossing pull run runs running",
    "cut": "cut break broken",
    "slack": "tight tightly loose loosely relaxed slack even",
    "counted": "count mark tick",
    "counts": "track count counter tally note record tick ticking mark off keep keeping keeps",
    "rows": "row rows round rounds rnds rnd repeat repeats increases decreases shapings shaping number chart pattern stitch place",
    "slipped": "slip sl move slipping moving slipped moved",
    "marker": "marker markers",
    "changed": "divide go over work change switch swap move use transfer changing switching",
    "needle": "needle needles circular circulars circ dpns dpn double-pointed double-points points cable cord loop magic",
    "fitting": "fit fits reach stretch stretches stretching crowded cramped small tight few many enough plenty necessary needed required convenient possible room grows grow increases comfortable comfortably already need",
}
_MORE: Final = {
    "yarn": "let idle get gets become use unused inactive using used loosely loose loosely evenly gently tight tightly along across over behind below above under under back wrong ws inside side edge work piece knitting fabric hand left right around round change changes changing "
    "working knitting stripes stripe striping narrow short long would pass span avoid avoiding prevent preventing stop keep keeping hole holes gap gaps loop loops form forms puckering without new old from them nice pucker puckers snag snagging visible neat tidy show shows through float in end ends between",
    "rows": "go often thread threads safety pin pins easier easy use counting along between sure careful good close where which what how have worked knitted are carefully far help helps helpful row-counter paper list notebook",
    "marker": "come reach reached meet met get pass passed encounter along place unless told stated instructed noted otherwise directed forget leave",
    "needle": "short shorter long longer length set ones stitches sts work knitting piece hat sleeve yoke crown circumference number get gets become becomes feel feels seems comfortably easily any go around round big large done becomes space without strain having onto off 40 60 80 cm size soon",
}


@dataclass(frozen=True, slots=True)
class _Kind:
    """One kind of such orders, told by its words."""

    one_of: tuple[str, ...]
    """Names of the sets of which each has a word in it."""
    others: str
    """Every other word it may have."""
    starts: str
    """How it may not begin, or what it may not hold, as a regular expression."""

    def has(self, words: list[str]) -> bool:
        """Return whether words are of this kind and no other words are among them."""
        sets, known = _sets_of(self)
        return all(not each.isdisjoint(words) for each in sets) and known.issuperset(words)


@cache
def _sets_of(kind: _Kind) -> tuple[tuple[frozenset[str], ...], frozenset[str]]:
    """Return the sets of which a kind has a word each, and all words that it may have."""
    sets = tuple(frozenset(_SETS[name].split()) for name in kind.one_of)
    return sets, frozenset(f"{_SMALL} {kind.others}".split()).union(*sets)


_KINDS: Final = (
    _Kind(("yarn", "handled"), _MORE["yarn"], r"\b(?:take|bring|put)\b|\bover\s*$|\btogether\b|\bdouble\b|^(?:cross|draw|pull)\b|\band\s+change\b|\b(?:is|are)\s+(?:caught|trapped|twisted|woven)\b.*\bevery\b"),
    _Kind(("yarn", "slack"), _MORE["yarn"], r"^(?!(?:please\s+)?(?:take\s+care|make\s+sure|be\s+(?:careful|sure)|keep|let|the\s+(?:floats|strands)|floats|strands|leave)\b)|\btogether\b|\bdouble\b|\bcast\b"),
    _Kind(("counted", "rows"), _MORE["rows"], r"^(?!(?:please\s+)?(?:count\s+(?:the\s+|your\s+)?(?:rows|rounds|rnds|repeats)|(?:mark|tick)\s+(?:off\s+)?(?:each|every|the)\b))|\b(?:and|so)\s+(?!so\s+far|you)|\b(?:stitch|place|chart|increases|decreases|shapings|shaping|keep)\b"),
    _Kind(("yarn", "cut"), _MORE["yarn"], r"^(?!(?:do\s+not|don't|never|there\s+is\s+no\s+need)\b)"),
    _Kind(("counts", "rows"), _MORE["rows"], r"^(?!(?:please\s+)?(?:keep\s+(?:\w+\s+)?(?:track|count|tally|note|record)|(?:use|a)\b.*\bcounter|mark\s+off|tick|it\s+helps))|\b(?:and|so)\s+(?!so\s+far)(?:keep\s+in|stay|repeat|increases|decreases|place|mark)|\bmake\b|\btake\b"),
    _Kind(("slipped", "marker"), _MORE["marker"], r"\b(?:place|stitch)(?!\s+markers?)\b.*\bmarker|\bremove|\bone\b|\btwo\b|\bto\s+the\s+(?:left|right)"),
    _Kind(("changed", "needle", "fitting"), _MORE["needle"], r"^(?:\w+\s+)?work\s+(?!on\b)|^(?:\w+\s+)?go\s+(?!over\s+to\b)|\bdivide\s+(?!(?:the\s+(?:sts|stitches|work)\s+|it\s+|them\s+)?(?:over|onto|on)\b)|\b\d\s+(?:needles|dpns)\b|\bwork\s+(?:the|a)\b|\b(?:of|to)\s+(?:larger|smaller)\b|\bone\s+size\b|\d(?!0\s?cm)(?:\d|\s)*(?:sts|stitches)"),
)  # fmt: skip
_UNTAKEN: Final = regex(r"\b(?:not\s+in\s+use|not\s+being\s+used|(?:you\s+are\s+)?not\s+using|unused)\b", re.I)
_UP: Final = regex(r"(?:carry|take|bring|run|strand)\s+(?:[a-z0-9']+\s+){1,6}?(?:loosely\s+)?up\s+(?:(?:along|at|by)\s+)?the\s+(?:side|edge|marker|(?:start|beginning)\s+of\s+the\s+(?:round|rnd))(?:\s+of\s+the\s+(?:work|piece|knitting))?(?:\s+when\s+striping)?", re.I)
_HELD: Final = regex(
    r"(?:always\s+)?(?:hold|keep|use)\s+(?:the\s+)?(?:[a-z0-9]+\s+){1,3}(?:(?:as\s+(?:the\s+)?)?dominant(?:\s+(?:colou?r|yarn|one))?|in\s+(?:your|the)\s+(?:left|right)\s+hand(?:\s+and\s+(?:the\s+)?(?:[a-z0-9]+\s+){1,3}in\s+(?:your|the)\s+(?:left|right)(?:\s+hand)?)?)"
    r"(?:\s+(?:to\s+keep\s+(?:the\s+)?(?:[a-z0-9]+\s+){1,2}dominant|throughout|at\s+all\s+times|for\s+the\s+whole\s+(?:yoke|garment|chart|mitten|hat)))*",
    re.I,
)
_TENSION: Final = regex(r"(?:(?:please\s+)?(?:remember|try|be\s+sure|take\s+care)\s+to\s+)?(?:keep|maintain|watch|mind)\s+(?:an?\s+|your\s+|the\s+)?(?:even\s+|loose\s+|steady\s+|relaxed\s+)?(?:tension|gauge|floats?)(?:\s+(?:even|loose|steady|relaxed|consistent|throughout|in\s+(?:the\s+)?(?:colou?r(?:work)?|stranded)\s*(?:section|part|pattern)?|on\s+the\s+(?:purl|wrong[-\s]side)\s+rows))*", re.I)
_CONVENTIONS: Final = regex(
    r"(?:work|repeat|knit)\s+(?:the\s+)?(?:instructions?|directions|stitches|sts|figures|those|what\s+stands)?\s*(?:inside|within|in|between)\s+(?:the\s+)?(?:round\s+|square\s+)?(?:brackets|parentheses|\(\s*\)|\[\s*\])\s+(?:the\s+number\s+of\s+times|as\s+many\s+times\s+as|as\s+often\s+as)\s+(?:is\s+)?(?:stated|indicated|given|shown|they\s+say)(?:\s+(?:after|behind)\s+(?:the\s+)?(?:(?:last|second|closing)\s+)?(?:brackets?|parenthes[ei]s|them))?"
    r"|(?:figures|numbers|instructions|directions|changes|sizes)\s+(?:given\s+)?in\s+(?:the\s+)?(?:round\s+|square\s+)?(?:brackets|parentheses)\s+(?:refer\s+to|apply\s+to|are\s+for)\s+(?:the\s+)?(?:larger|other|bigger|remaining)\s+sizes?(?:\s*[;,.]\s*(?:and\s+)?(?:where|if|when)\s+(?:there\s+is\s+)?(?:only\s+)?(?:one|a\s+single)\s+(?:figure|number|set\s+of\s+figures)\s*(?:only\s*)?(?:(?:is|are)\s+(?:given|shown|stated|printed)\s*)?,?\s*(?:it|this|they)\s+(?:applies|apply|refers?|is|are)\s+(?:to|for)\s+(?:all|every|each)\s+sizes?)?"
    r"|(?:where|if|when)\s+(?:only\s+)?(?:one|a\s+single)\s+(?:figure|number|instruction|set\s+of\s+figures)\s+(?:only\s+)?(?:is|are)\s+(?:given|shown|stated|printed)\s*,\s*(?:it|this|they)\s+(?:applies|apply|refers?|is|are)\s+(?:to|for)\s+(?:all|every|each)\s+sizes?",
    re.I,
)
_STITCH_MARKERS: Final = regex(r"\bstitch\s+markers\b", re.I)
_OTHER_SIGNS: Final = regex(r"[*\[\]:=;!?/]|\.(?!$)")


def tells_lasting(sentence: str) -> bool:
    """Return whether a sentence is an order that lasts and changes no stitch.

    Args:
        sentence: One sentence, made plain, without its full stop and without brackets around it.
    """
    if any(form.fullmatch(sentence) for form in (_UP, _HELD, _TENSION, _CONVENTIONS)):
        return True
    bare = _MEASURES.sub(" every ", _UNTAKEN.sub(" unused ", sentence))
    if _OTHER_SIGNS.search(bare):
        return False
    bare = _STITCH_MARKERS.sub("markers", bare)
    words = [word.lower() for word in _WORD.findall(bare)]
    return any(kind.has(words) and not re.search(kind.starts, bare.strip(), re.I) for kind in _KINDS)
