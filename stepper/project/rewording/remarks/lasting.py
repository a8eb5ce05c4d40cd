"""Tell orders that last and change no stitch: how yarns are carried, rows counted, needles changed as they fit. No I/O.

Theory of operation. Designers print these in any order of the same few words, so each kind is a way to begin and the
closed list of words that it may go on with. No such list holds a verb of the craft, a number of stitches to work, a
side of the work on which something is done to stitches, or "until": with any of those the sentence is none of these.
"Change to the short needle when there are 60 sts" has a count, and "hold the two colours together" makes one yarn of
two; both stay unread. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.regex import regex

_FEW: Final = r"(?:\d{1,2}|two|three|four|five|six|seven|eight|nine|ten)"
_COLOUR: Final = r"(?:(?:yarns?|colou?rs?|strands?|wools?|threads?|floats?|shades?|contrasting|contrast|background|main|dominant)|(?-i:MC|CC\d?)|colou?r\s+(?-i:[A-H]))"


def _words(*words: str) -> str:
    """Return a sentence's rest made of the words given, with commas and brackets between them."""
    return rf"(?:[\s,;()-]+(?:{'|'.join(words)})(?![\w-]))*"


_CARRYING: Final = _words(
    _COLOUR,
    rf"(?:every|each|after)\s+(?:{_FEW}\s+(?:sts|stitches)|(?:other|second|third|fourth|few|\d(?:nd|rd|th))\s+(?:st|stitch|row|round|rnd)|(?:few|two|2)\s+(?:sts|stitches|rows|rounds|rnds))",
    rf"(?:longer|more|over\s+more)\s+than\s+{_FEW}\s+(?:sts|stitches)|(?:over|across|of)\s+{_FEW}\s+(?:or\s+more\s+)?(?:sts|stitches)",
    r"not\s+in\s+use|you\s+are\s+not\s+using|not\s+being\s+used|unused|inactive|not\s+too\s+tight(?:ly)?|not\s+(?:so\s+)?tight(?:ly)?|loose(?:ly)?|evenly|gently|up|along|across|over|behind|at|on|of|in|to|by|with|from|as|the|a|an|this|these|any|all|your|it|them|"
    r"one|two|both|each\s+other|one\s+another|around|round|back|inside|side|edge|wrong\s+side|ws|work|piece|knitting|fabric|hand|left|right|colou?r\s+changes?|(?:each|every)\s+(?:colou?r\s+)?change(?:\s+of\s+colou?r)?|"
    r"where|when|whenever|a\s+float\s+would\s+(?:pass\s+behind|be|span)|is|are|would\s+be|they\s+(?:are|would\s+be)|and|or|but|so|that|avoid(?:ing)?|prevent(?:ing)?|stop|keep(?:ing)?|long|holes?|gaps?|loops?|puckering|snagging|form|no|"
    r"carry(?:ing)?|strand(?:ing)?|twist(?:ing)?|catch(?:ing)?|trap(?:ping)?|weav(?:e|ing)(?:\s+in)?|cross(?:ing)?(?=\s+the\s+yarns)|does\s+not|do\s+not|don't|pull(?:ing)?|tight|pucker|visible|dominant|throughout|always|"
    r"as\s+you\s+go|when\s+(?:changing|striping|working\s+stripes)|for\s+(?:narrow|short)\s+stripes|sts|stitches",
)
_CARRIED: Final = (
    rf"(?:(?:(?:carry|strand|twist|catch|trap)\s+(?:(?:up|in)\s+)?|(?:take|bring|run)\s+(?=[^.]*\b(?:up\s+the\s+side|not\s+in\s+use|unused)))(?=[^.]*\b{_COLOUR})|(?:keep|leave)\s+(?=(?:the\s+|your\s+|all\s+)?(?:floats?|strands)\b)|weave\s+in\s+(?=(?:the\s+|any\s+|all\s+)*(?:floats?|unused|long\s+floats|yarn\s+not|colou?r\s+not))"
    rf"|(?:do\s+not|don't|never)\s+(?:pull|draw|strand|carry)\s+(?=[^.]*\b{_COLOUR}))(?:the|all|any|your|an?|both|it|{_COLOUR}){_CARRYING}"
    rf"|(?:do\s+not|don't)\s+(?:cut|break)(?:\s+off)?\s+(?:the\s+|your\s+)?{_COLOUR}\s+(?:between|after\s+each|at\s+each|when\s+changing)(?:\s+(?:the|stripes?|colou?rs?|colou?r\s+changes?))+{_CARRYING}"
)
_HELD: Final = (
    rf"(?:always\s+)?(?:hold|keep|use)\s+(?:the\s+)?{_COLOUR}(?:\s+(?:colou?r|yarn|strand))?\s+(?:(?:as\s+(?:the\s+)?)?dominant(?:\s+(?:colou?r|yarn|one))?|in\s+(?:your|the)\s+(?:left|right)\s+hand(?:\s+and\s+(?:the\s+)?{_COLOUR}(?:\s+(?:colou?r|yarn))?\s+in\s+(?:your|the)\s+(?:left|right)(?:\s+hand)?)?)"
    rf"(?:\s+(?:to\s+keep\s+(?:the\s+)?{_COLOUR}(?:\s+(?:colou?r|yarn))?\s+dominant|throughout|at\s+all\s+times|for\s+the\s+whole\s+(?:yoke|garment|chart|mitten|hat)))*"
)
_TRACKED: Final = (
    r"keep\s+(?:careful\s+|good\s+|close\s+|a\s+)?(?:track|count|note|record)\s+of(?:\s+(?:the|your|how|many|number|where|which|what|you|are|have|are\s+on|rows?|rounds?|rnds?|repeats?|increases|decreases|shapings?|chart|pattern|stitch|worked|knitted|been|in|on|of|and|so\s+far|here|from\s+here\s+on|as\s+you\s+go|carefully))+"
)
_MARKED: Final = (
    r"(?:slip|sl|move)\s+(?:all\s+)?(?:the\s+|your\s+)?(?:stitch\s+)?markers?(?:\s+(?:on|in)\s+(?:every|each)\s+(?:row|round|rnd)|\s+(?:as|when|whenever)\s+you\s+(?:come\s+to|reach|pass|meet|get\s+to|encounter)\s+(?:them|it|one)|\s+throughout|\s+along)+(?:\s*,?\s+unless\s+(?:told|stated|instructed|directed|noted)\s+otherwise)?"
    r"|leave\s+(?:the\s+|all\s+)*markers\s+(?:in\s+place|where\s+they\s+are)(?:\s+(?:throughout|as\s+you\s+go))?"
)
_OTHER_NEEDLE: Final = (
    r"(?:(?:an?|the|your)\s+)?(?:(?:set\s+of\s+)?(?:dpns?|double[-\s]point(?:ed\s+needle)?s?|magic\s+loop|two\s+circulars)|(?:(?:short(?:er)?|long(?:er)?|circular|16\s?(?:in\.?|\"|inch)|40\s?cm|60\s?cm|24\s?(?:in\.?|\"|inch))\s+)+(?:needles?|circulars?|circs?|cables?|cord|ones?)(?:\s+needle)?)(?:\s+or\s+(?:dpns?|magic\s+loop))?"
)
_FITTING: Final = _words(
    r"the|your|stitches|sts|work|knitting|piece|hat|sleeve|yoke|crown|circumference|rounds?|rnds?|needles?|circular|dpns|it|they|there|you|have|has|get|gets|become|becomes|is|are|feel|feels|to|too|for|on|onto|comfortabl[ey]|easily|any\s+more|any\s+longer|longer|no|not|don't|doesn't|do\s+not|does\s+not|"
    r"fit|reach|stretch|go|around|round|few|many|enough|plenty|crowded|cramped|small|tight|short|big|large|already|done|so|if|when|whenever|necessary|needed|required|convenient|possible|"
    r"and|room|will|can|of|in|between|without|stretching|strain"
)
_FITTED: Final = rf"(?:(?:you\s+(?:can|may|will\s+need\s+to|might\s+need\s+to)\s+)?(?:change|switch|swap|move|transfer\s+(?:the\s+)?(?:sts|stitches|work))\s+(?:on)?to|use)\s+{_OTHER_NEEDLE}\s*,?\s+(?:when|whenever|if|once|as\s+soon\s+as|as)(?![\w-])(?=[^.]*\b(?:fit|reach|stretch|crowded|cramped|small|tight|short|big|large|few|many|enough|plenty|already|necessary|needed|required|convenient|possible|room)\b){_FITTING}"
_FIGURES: Final = _words(
    r"(?:round|square|curly|round\s+or\s+square)?\s*(?:brackets?|parenthes[ei]s|braces)|figures?|numbers?|instructions?|directions|changes|sizes?|the|in|for|to|refer|refers|apply|applies|it|they|this|these|are|is|given|stated|shown|larger|largest|smaller|other|all|only|one|where|there|if|and|as|many|times|work(?:ed)?|after|behind|indicated|of|set|separate|stand|stands|first|brackets"
)
_CONVENTIONS: Final = (
    rf"(?:work|repeat|knit)\s+(?:the\s+)?(?:instructions?|directions|stitches|sts|figures)?\s*(?:inside|within|in|between)\s+(?:the\s+)?(?:round\s+|square\s+)?(?:brackets|parentheses|\(\s*\)|\[\s*\])\s+(?:the\s+number\s+of\s+times|as\s+many\s+times\s+as|as\s+often\s+as)\s+(?:is\s+)?(?:stated|indicated|given|shown|they\s+say)(?:\s+(?:after|behind)\s+(?:the\s+)?(?:(?:last|second|closing)\s+)?(?:brackets?|parenthes[ei]s|them))?"
    rf"|(?:figures|numbers|instructions|directions|changes)\s+(?:given\s+)?in\s+(?:the\s+)?(?:round\s+|square\s+)?(?:brackets|parentheses)\s+(?:refer|apply|are)(?=\s+(?:to|for)\b){_FIGURES.replace(',;()', ',;:()')}"
    rf"|(?:where|if|when)\s+(?:only\s+)?(?:one|a\s+single)\s+(?:figure|number|instruction|set\s+of\s+figures)\s+(?:only\s+)?(?:is|are)\s+(?:given|shown|stated|printed)\s*,\s*(?:it|this|they)\s+(?:applies|apply|refers?|is|are)\s+(?:to|for)\s+(?:all|every|each)\s+sizes?"
)
_LASTING: Final = regex(
    rf"(?:(?:please\s+)?(?:remember|be\s+sure|make\s+sure|take\s+care)\s+to\s+|(?:note|tip|nb)\s*[:,-]\s*|please\s+|from\s+here\s+on\s*,?\s+)?(?:{_CARRIED}|{_HELD}|{_TRACKED}|{_MARKED}|{_FITTED})(?:\s*[,;]?\s+(?:and\s+)?(?:{_CARRIED}|{_TRACKED}|{_MARKED}))*|{_CONVENTIONS}",
    re.I,
)
_ONE_OF_TWO: Final = regex(r"\btogether\b|\bdouble\b", re.I)


def tells_lasting(sentence: str) -> bool:
    """Return whether a sentence is an order that lasts and changes no stitch.

    Args:
        sentence: One sentence, made plain, without its full stop and without brackets around it.
    """
    return _LASTING.fullmatch(sentence) is not None and not _ONE_OF_TWO.search(sentence)
