"""Tell whether words beside an instruction - a name, a place, a label - are instructions too. No I/O.

The name of a part, the edge along which stitches are picked up, a label and a remark are free text, and free
text may hide an instruction: "bind off 4 sts for underarm every other row". Words that say what to do, how
often or in which rows are therefore never accepted as part of it: the line is refused instead.
"""

from __future__ import annotations

import re

from stepper.project.grammar import abbreviations
from stepper.project.rewording.clauses import word_classes as of
from stepper.regex import regex

_STITCHES = (
    rf"[kp]\s?\d+|sl\s?\d+|[kp]\d?tog|[kp]\s?[23]\s?tog|m1\w*|{abbreviations()}|"
    r"psso|p2sso|w&t|mds|pm|slm|rm|bo|co|pu"
)
_VERBS = (
    r"knit|purl|knitting|purling|inc|dec|incr|increas(?:e|ing|es|ed)|decreas(?:e|ing|es|ed)|turn|turning|repeat|rep|"
    r"work(?:ing)?(?=\s+(?:to|in|until|for|across|even|straight|flat|back|\d|as\b|all\b|rows?\b|rnds?\b|rounds?\b))|"
    r"join(?:ing)?(?=\s+(?:in|for|to|and)\b)|(?:bind(?:ing)?|cast(?:ing)?)\s+(?:on|off)(?!\s+(?:edge|edges|row|sts|stitches|"
    r"method|technique)\b)|pick(?:ing)?\s+up|place|hold|slip|remove|change|switch|break|cut|continue|cont"
)
_OFTEN = (
    r"twice|thrice|times?|again|repeatedly|alternately|alt|alternate|every|each|both|rows?|rnds?|rounds?|until|while|unless|"
    r"except|without|not|n't|only|more|less|fewer|then|\d+|one|two|three|four|five|six|seven|eight|nine|ten|"
    r"to\s+(?:the\s+)?(?:last|end|marker)"
)
_TOOLS = r"smaller|larger|(?:with|using|in)\s+(?:(?-i:MC|CC\d?|[A-Z])\b|yarn\s+[a-z]\b)"
_PLACES = (
    r"(?:at\s+)?(?:the\s+)?(?:end|beg(?:inning|in)?|start)\s+of\s+(?:the\s+|this\s+)?(?:rows?|rnds?|rounds?)\b|"
    r"(?:cast|bound|bind)[-\s]?(?:on|off)(?:\s+edges?)?\b(?!\s+(?:the\s+)?\d)"
    r"(?!\s+(?:the\s+)?(?:next|foll(?:owing)?|first|last|cent(?:er|re)|rem(?:aining)?|all|these|those)\s+(?:\d|sts?\b|stitch))|"
    r"row(?:s|-)?\s*(?:ends?|edges?)\b"
)
"""Places named with such words but not instructions: the end of the row, the cast-on edge, row ends."""

_INSTRUCTING = regex(
    rf"(?P<place>{_PLACES})|(?<![\w-])(?:{_STITCHES}|{_VERBS}|{_OFTEN}|{_TOOLS})(?![\w-])", re.I
)
_NAMES = "|".join(
    sorted(
        of.PREPOSITIONS
        | of.ADVERBS
        | of.DETERMINERS
        | of.JOINING
        | of.SUBORDINATING
        | of.NUMBERS
        | of.FABRIC
    )
)
_JOINED = regex(
    rf"(?:(?<=\band\s)|(?<=\bthen\s)|(?<=[,;]\s))(?!(?:{_NAMES})(?![\w-]))(?!\w+(?:ing|ly)\b)"
    rf"(?:[a-z]+(?=\s+(?:the(?!\s+same)|an?|it|them|these|those|its|your)(?![\w-]))"
    rf"|(?!(?:{'|'.join(sorted(of.PARTS))})(?![\w-]))[a-z]+(?=\s+(?:all|in|off|up|down|together|aside)(?![\w-])))",
    re.I,
)
"""A verb of any kind behind the name, "gusset and tie the ends": a word of no class before an object."""
_ROWS = regex(
    rf"(?P<place>{_PLACES})|(?<![\w-])(?:{_STITCHES}|{_VERBS}|twice|thrice|times|again|until|"
    r"(?:\d+|next|foll(?:owing)?|every|each|last|alt(?:ernate)?|other)\s+(?:\w+\s+)?(?:rows?|rnds?|rounds?))(?![\w-])",
    re.I,
)


_LABEL = regex(
    rf"\b(?:rnds?|rounds?|rows?)\b.*\d|(?<![\w-])(?:{_STITCHES}|once\s+more|more\s+times|turn(?!\s+(?:the\s+)?heel)|to\s+(?:the\s+)?end|"
    r"(?:and|,)\s*(?:work|knit|purl|inc|dec)|(?:with|in|using)\s+(?-i:MC|CC\d?|[A-Z])(?=\W|$)|(?:\d+|two|three|four|five|six|seven|eight|nine|ten|next|last|these)\s+(?:more\s+|alt\w*\s+)?"
    r"(?:rows?|rnds?|rounds?)|(?<!short\s)(?<!short-)(?:rows|rnds|rounds)|foll(?:owing)?|every|each|both|all(?!\s+sizes$)|alt|"
    r"alternate(?:ly)?|alternating|twice|thrice|times?|rep|repeat(?:ing|ed)?|until|while|only|not|optional(?:ly)?|then|also|again|rs|ws|"
    r"needles?\s*\d*|n\d|doubled?\s+(?:yarn|wool|thread|strand)|smaller|larger|right\s+side(?=\s+facing)|(?<=from\sthe\s)right\s+side|(?<=on\sthe\s)right\s+side|wrong\s+side|except|but\s+one|inside\s+out|purl\s+side|from\s+here|previous|same)(?![\w-])",
    re.I,
)
"""Words in a label that say how often, in which rows, on which needle or for whom: they name no line."""
_LABEL_PLACE = regex(
    r"\d[\d\s.,/()\[\]¼½¾]*(?:cms?|in|inch(?:es)?|[\"″”])(?![\w-])|"
    r"(?:\d|\bst|\bsts|\bstitch|\bstitches)[)\]]?\s+(?:before|after|past|beyond|from|of)\b|"
    r"\b(?:before|after|past|beyond|between|above|below|from|until|to|beside|along(?:side)?|near|by|against|inside|outside|around|(?:left|right|sides?)\s+of|(?:next|close)\s+to)\s+(?:the\s+)?(?:[a-z]+\s+|\d\w+\s+)?(?:markers?|m|(?:stitch\s+)?(?:pins?|rings?)|threads?|(?:raglan|seam)\s+lines?|seams?(?:\s+st(?:itch)?)?|gap|cent(?:er|re)|middle|bor)\b|"
    r"\b(?:first|next|last|cent(?:er|re)|cent(?:er|re)most|middle|outer(?:most)?|other|rem(?:aining)?|^over|^across)\s+(?:the\s+)?\d[\d\s,()\[\]]*(?:sts?|stitch(?:es)?)\b|"
    r"\b\d+(?:st|nd|rd|th)\s+st(?:itch)?\b|\bend\s+of\s+(?:the\s+|this\s+)?(?:row|rnd|round)\b|\bhalf\s?way\b|\bhalf\s+(?:of\s+)?the\s+st",
    re.I,
)
"""Words in a label that say where in the round, or how far: "After 4 cm", "Centre 10 sts"."""
_LABEL_MORE = regex(
    r"^(?:either|or|instead|later|alternativ(?:e|ely)|variation|option(?:\s+\w+)?|errat(?:um|a)|corrections?|example|version\s+\w+|(?:for\s+)?(?:(?:an?|the)\s+)?(?:[a-z-]+\s+){1,3}(?:versions?|options?|variations?))$|"
    r"^(?:hold(?!\s+(?:in|at)\b)|put|leave|add|skip|unpick|move|reverse|drop)\b(?!\s+(?:st(?:itch)?\s+)?(?:row|rnd|round|pattern)\b)|"
    r"^(?:bo|co|(?:bind|cast)[\s-]+(?:off|on)|pick\s+up|slip)\s+\d|^(?:inc|dec)\w*\s+\d+\s*st|^[^(),]*\d\s*(?:sts?|stitch(?:es)?)\b|"
    r"\b(?:main|new|first|second|third|other|next)\s+colou?r\b(?!\s+(?:band|section|block|chart|pattern|stripe)s?\b)|\bcontrast(?:ing)?\b|\bcolou?r\s+change\b|"
    r"(?-i:\bU[SK])\s*\d|\b(?:worked\s+|knit(?:ted)?\s+)?flat\b|\bback\s+and\s+forth\b",
    re.I,
)
"""Labels that are orders, or offer another way, or say in which colour, on which needle, whether in rows."""
_AS_ANOTHER = regex(
    r"(?:work(?:ed)?\s+)?(?:exactly\s+)?(?:as|same\s+as|like)\s+[^,;]+[,;]?\s+(?:but|except|only)?\s*(?:mak(?:e|ing)|work(?:ing)?|with)\s+[^:]*?\bholes?\b",
    re.I,
)
"""A part worked as another one, with holes in it: the words before the colon are all there is of it."""
_LABEL_VERBS = regex(
    r"(?:(?:if|unless|when)\b|over|across|between|within|(?:(?:for|first|last|left|remaining)\s+(?:the\s+|these\s+)?(?:[a-z]+\s+)?)?\d+\s+(?:sts|stitches)|(?:for|from)\s+(?:the\s+)?next|for\s+an?\s+(?:long|short|deep|wid|narrow|tight|loos|larg|small|bigg|high|thick|slouchi|roomi|warm)er\b|"
    r"to\s+(?:lengthen|shorten|widen|enlarge|adjust|alter|adapt)\b|at\s+the\s+same\s+time|(?:work(?:ing|ed)?|continu(?:e|ing)|cont|change|chang(?:e|ing)|"
    r"switch|with|using|knit|purl|(?:inc|dec)(?:rease)?\s+\d+(?=\s+st)|break|cut|turn|on|in|at|join(?:ing)?\s+(?:in|for|to|and|with)|rejoin|"
    r"(?:bo|(?:bind|cast)\s+off)(?=\s+(?:in|with|using|as|all|rem\w*|loosely)\b)|"
    r"place\s+(?!(?:a\s+)?markers?\b)|remove|slip|return|"
    r"(?:beg|begin|start)(?:ning|ing)?\s+(?:with|on|at|in|work|working|from)|drop)\s)",
    re.I,
)
"""Words that begin an instruction."""
_BY_THE_WAY = regex(
    r"^(?:(?:and|now|next|so|first|here|finally|from\s+(?:here|now|this\s+point)(?:\s+on)?)\s*,?\s+)+", re.I
)
"""Words before an instruction that only say it is its turn."""
_NAMED = regex(
    r"\b(?:round|rnd|row|ridge|heel|edge|edging|band|section|part|shaping|hem|cuff|rib|ribbing)$", re.I
)
_NO_VERB = regex(
    r"^(?:if|unless|when)\b|\b(?:with|using|on|in|at|for|from|to)\b|(?-i:\b(?:MC|CC\d?)\b)", re.I
)
"""Words with which a verb before "round" is no name of it: "If needed round", "Start at side round"."""
_SLIP_STITCH = regex(
    r"slip[\s-]+st(?:itch)?\s+(?:[a-z]+\s+)?"
    r"(?:pattern|patt|rib|ribbing|mosaic|mesh|lace|motif|panel|chart|check)\b",
    re.I,
)
"""The name of a fabric that begins as an order does."""
_NUMBERED = regex(r"^(?P<name>[^\d()\[\],]*?[a-z]\s+(?:round|rnd|row))\s+\d{1,3}$", re.I)
"""A name with a number, as pages call the successive rounds of a shaping: "Dec rnd 2"."""
_NO_NAME = regex(
    r"\b(?:after|before|since|from|for|through|to|till|than|as|of|off|like|if|when|where|in|on|at|with|by|and|or|the|an?|"
    r"work\w*|continu\w*|cont|change|switch|using|knit|purl|cast|bind|turn|join\w*|rejoin|begin\w*|start\w*|end\w*|"
    r"see|follow\w*|skip|omit)\b",
    re.I,
)
"""Words that make "rnd 2" a round of the pattern, not the end of a name: "Work rnd 2", "After row 3"."""
_ROWS_OF_PATTERN = regex(
    r"(?<=[a-z\d])\s*[;,]\s*(?:over\s+)?\d{1,3}[\s-]*(?:rows?|rnds?|rounds?)"
    r"(?:\s+(?:rep(?:eat)?|patt(?:ern)?))?\s*\)\s*$",
    re.I,
)
"""How many rows a stitch pattern has, behind the stitches it needs: "Ridge (any number of sts; 4 rnds)"."""
_WORK_TIMES = regex(
    r"(?:\s*[(\[]?\s*\bwork(?:ed)?\s+|\s*[(\[]\s*|\s*,\s*)(?:(\d{1,3})\s*(?:times|x)|x\s*(\d{1,3})|(twice))\s*[)\]]?$",
    re.I,
)


def label_times(label: str) -> tuple[str, int]:
    """Split off the number of times from a label: `Inc round (work 3 times)`.

    Returns:
        The label, and the number of times; 0 if it does not say.
    """
    match = _WORK_TIMES.search(label)
    name = label[: match.start()].strip(" ,") if match else label
    if match is None or not re.search(r"\b(?:round|rnd|row)$", name, re.I):
        return label, 0
    return name, int(match.group(1) or match.group(2) or 2)


def label_instructs(label: str) -> str:
    """Return the words of a label that instruct (`Dec round, every 4th round`); empty if there are none."""
    name, _ = label_times(_ROWS_OF_PATTERN.sub(")", label))
    numbered = _NUMBERED.match(name)
    if numbered is not None and not _NO_NAME.search(numbered.group("name")):
        name = numbered.group("name")
    if re.match(r"(?:for\s+)?(?:sizes?\b|[\w ,'-]{1,40}?\ssizes?(?:\s*\([\w ,]+\))?\s+only$)", name, re.I):
        return ""  # a line for some sizes: the size names set it apart from a label
    found = _LABEL.search(name) or _LABEL_PLACE.search(name) or _LABEL_MORE.search(name)
    found = found or _AS_ANOTHER.match(name)
    if found is not None:
        return found.group()
    name = _BY_THE_WAY.sub("", name)
    begun = _LABEL_VERBS.match(f"{name} ")
    if begun is None or _SLIP_STITCH.match(name):
        return ""
    if _NAMED.search(name) and len(name.split()) <= 4 and not _NO_VERB.search(name):
        return ""  # "Knit round", "Joining round"
    return begun.group().strip()


def instructs(words: str) -> re.Match[str] | None:
    """Find the first word of a name or a place that says what to do, how often or in which rows.

    Args:
        words: The words, without those that introduce them.

    Returns:
        The match, with offsets into `words`; None if the words only name or locate something.
    """
    return _first(_INSTRUCTING, words)


def joins_order(name: str) -> re.Match[str] | None:
    """Find the verb of an order joined to a name: "gusset and tie the ends"; None if nothing is joined.

    Args:
        name: The name of a part, as for `instructs`; no remark, which may tell several things.
    """
    return _JOINED.search(name)


def commands(words: str) -> re.Match[str] | None:
    """Find the first word of a remark that works stitches or rows; a bare number does not count as one."""
    return _first(_ROWS, words)


def _first(pattern: re.Pattern[str], words: str) -> re.Match[str] | None:
    return next((match for match in pattern.finditer(words) if match.group("place") is None), None)


def hides(word: str, words: str) -> str:
    """Say that a word may be an instruction of its own."""
    return f'"{word}" in "{" ".join(words.split())}" may say what to do or how often, and is not passed over.'
