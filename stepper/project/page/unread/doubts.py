"""Find in the words of an unread row what keeps anything from being proposed for it. No I/O.

Theory of operation. What is proposed is taken by one key, so it has to be right or absent. A row is proposed
to be knitted only where its first sentence orders that, and to be a remark only where nothing in it may be an
order; stitches are proposed to stay as many only where the words change none, or take in each stretch as
many as they add. Everything else is asked without a proposal.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.page.stops import sentences_of
from stepper.project.rewording.synonym import STS
from stepper.regex import regex

_ROW: Final = r"(?:rows?|rnds?|rounds?|rds?)"
_MANY: Final = r"(?:\d+|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty)"
_MEASURED: Final = regex(
    r"(?<![\w.])[\d½¼¾][\d.½¼¾⅓⅔⅛⅜⅝⅞]*+(?:\s?[(\[][\d\s,:;/.–½¼¾⅓⅔⅛⅜⅝⅞-]{1,60}[)\]]|\s?[/:–-]\s?\d[\d.½¼¾⅛⅜⅝⅞]*+)*+\s*"
    r"(?:cms?\b|mm\b|ins\b|inch(?:es)?\b|[\"”″]|in\b(?=\W*$|\s*[.,;:)(]|\s+(?:from|above|below|tall|long|wide|deep|high|or|less|more|in)\b))",
    re.I,
)
"""A length."""
SHORTHAND: Final = regex(
    r"(?<![\w.'])(?:[kp]\s?\d+|[kp]\d?tog|k\d?t|ssk|ssp|sk2p|s2kp2?|skpo|psso|cdd|yo|yrn|m1[lrp]?|kfb|pfb|sl\s?\d+|puk"
    r"|n\d(?=\s*(?:[:,]|in\b|patt)))(?![\w'])",
    re.I,
)
"""Stitches written short, or the needle on which they are."""
_ORDERED: Final = regex(
    r"\b(?:knit(?:s|ted|ting)?(?!\s+(?:needles?|cast))|purl(?:s|ed|ing)?|work(?:s|ed|ing)?(?!\s+(?:out|well|best)\b)|rib(?:s|bed|bing)?|patt"
    r"|(?:cast|bind|bound)(?:s|ing)?[\s-]+(?:on|off|up)|(?:pick|take|taken|picked)\s+(?:\w+\s+)?up|rep(?:eat(?:s|ed|ing)?)?"
    r"|(?:inc|dec)(?:'d|reas(?:es?|ed|ings?))?|narrow(?:s|ed|ings?)?|make\s+(?:one|a|an|another|two|both|\d)|turn(?:s|ed|ing)?|slip(?:ped|ping)?"
    r"|cont(?:inu\w+)?|proceed|go(?:ing)?\s+on|carry\s+on|keep(?:ing)?\s+(?:on|going|doing|to|in)|leave|lay\s+aside|lift|place|put|hold|held"
    r"|chang\w+\s+to|join(?:ing)?\s+(?:in\b|to\b|on\b|(?:the\s+)?(?:wool|yarn|new)\b|[A-H]\b|.{0,30}\b(?:round|rnd)\b)|divid\w+|separat\w+|transfer|wrap"
    r"|crochet|graft\w*|set\s+(?:lace|up|(?:the\s+)?(?:patt\w*|panel))|begin\s+again|start\s+again"
    r"|(?:end|finish)(?:ing)?\s+(?:with|on|after|in)|measur\w+|straight|even(?=\s+(?:until|for|to))"
    r"|same|alike|again|another|the\s+other|like\s+(?:the\s+)?(?:first|\d|before|other)|as\s+(?:for|before|above|given|the|first|second|left|right)\b|loosely|firmly"
    r"|\d+\s+more|times|twice|until|till|every|each|alt(?:\.|ernat\w+)?|between\s+each|increases|decreases"
    r"|stockinette|stocking|garter|moss|seed|st\.?\s?st|flat\s+from|to\s+and\s+fro|back\s+and\s+forth|in\s+the\s+round)(?!\w)",
    re.I,
)
"""Words by which a sentence may order something, whatever it begins with."""
_OF_ROWS: Final = regex(
    rf"(?:\b[a-z]+\s+\d+\s*,\s*){{2}}|\b{_ROW}\.?\s*\d|\b(?:R|Rd)\.?\s?\d|\d(?:st|nd|rd|th|d)\b[^.:;]{{0,30}}?\b{_ROW}\b|\b{_MANY}\s+(?:\w+\s+)?{_ROW}\b"
    rf"|\b(?:next|first|last|each|plain)\s+{_ROW}\b",
    re.I,
)
"""Rows by their number, a number of them, or panels with their widths."""
_FEW: Final = 3
"""Letters of the shortest remark."""
_LABEL: Final = regex(r"^\W*(?:[^\W\d][\w'’ -]{0,34}(?:\([^)]{0,40}\)\s*)?(?::|\.\s?[–—-]+|\.--)\s*)", re.I)
"""A label in front of a sentence: "Back:", "To Shape Neck.—"."""
_TALK: Final = regex(
    r"^\W*(?:if|when(?:ever)?|where(?:ver)?|whether|there(?:by)?|it|it['’]s|you|you['’]\w+|we|i|they|he|she|this|that|that['’]s|these|those|the|a|an|some"
    r"|many|most|both|nb|n\.b|note|yes|no|still|better|don['’]t|do\s+not|always|never|only|well|as|because|since|in\s+(?:this|case)|in\s+the\s+last"
    r"|for\s+(?:an?|the)|so|every\s+\w+\s+is|each|all|here|corrections?|even\s+rounds"
    r"|\d[\d\s/,:()\[\]–-]*+(?:[a-z]+\s+)?(?:sts?|stitches))\b",
    re.I,
)
"""How a sentence begins that tells something, or hangs on another."""
_BEGINS: Final = (
    r"(?:knit|purl|work|rib|patt|k|p|rep(?:eat)?|inc(?:rease)?|dec(?:rease)?|narrow|cont(?:inue)?|proceed|straight"
    r"|(?:go|carry|keep)\s+(?:on|going|doing|to\s+and)(?=\s+(?:in|as|like|thus|until|till|straight|knitting|narrowing|even|from|for|with|this|to|so)\b))"
)
_ORDERS: Final = regex(
    rf"(?:^[\W_]*|[,:;–—]\s*|--\s*|\b(?:and|then|now|next)\s+){_BEGINS}(?=[\s.,;:*(\[\d]|$)", re.I
)
"""A verb of the needles where an order begins: at the front, or behind a comma or "and"."""
_HEADED: Final = regex(
    rf"^\W*(?:(?!(?:as|from|of|in|on|until|to|cont\w*|rep\w*|work|is|are)\b)[\w'-]+\W{{1,4}}){{0,3}}?(?:{_ROW}|rd)\b\.?\s*\d[\d\s,&–—-]*(?:and\s+\d+)?\s*(?:\([^)]{{1,20}}\))?\s*[:.–—-]"
    rf"|^\W*\d+(?:st|nd|rd|th|d)\s+{_ROW}\b(?!\s+(?:until|till|of|to)\b)|^\W*(?:(?!(?:of|in|is|are)\b)[\w'-]+\s+){{1,3}}?{_ROW}\b\s*(?:\([^)]{{1,30}}\))?\s*[:,=–—]",
    re.I,
)
"""The head of a row, or a row by what it is: "Set-up rnd:", "Next row,"."""
_NO_ROW: Final = regex(
    r"\b(?:on|in)\s+the\s+(?:last|previous)\s+(?:row|rnd|round)\b"
    rf"|\bw\s*&\s*t\b|(?<!\bend, )(?<!\bend )(?<!\bend; )\bturn\b(?!\s+up\b)"
    rf"|\bn\d\b|\b(?:instep|sole|needles?\s+\d)\s*:|\b(?:knit|weave|work)\s+(?:them|it|ends?|tails?)\s+in\b"
    rf"|\b(?:on|over)\s+(?:the\s+)?(?:(?:these|this|first|last|rem\w*|other|set\s+of)\s+)+\d+(?:\s?[(\[][^)\]]*[)\]])?\s*(?:\w+\s+)?{STS}"
    rf"|^\W*(?!(?:knit|purl|work|rib|k|p)\b)(?:[a-z'-]+\s+){{0,2}}{_ROW}\W*$|\bbegin\s+again\b|\b(?:the\s+same|alike)\W*$|\bfrom\s+row\b|\bfrom\s*\*+\s*to\s*\*+",
    re.I,
)
"""Words that turn a row before its end, or are of a part of it, of a part of the stitches, or of no row."""
_HEAD_ONLY: Final = regex(
    rf"^\W*(?:\d+(?:st|nd|rd|th|d)\s+{_ROW}|{_ROW}\s*\d[\d\s,&–—-]*(?:and\s+\d+)?)\W*(?:(?:the\s+)?(?:right|wrong)\s+side|[RW]\.?S\.?)?\W*$",
    re.I,
)
"""The head of a row whose stitches stand in another."""
_COMES: Final = regex(
    r"\b(?:(?<!the )(?<!from )(?<!your )cast(?:ing)?[\s-]+(?:on|up)(?!\s+edge)|CO"
    r"|(?:pick|take|lift)(?:ing)?\s+(?:[\w\s]{0,16}\b)?up|PUK"
    r"|lift(?:ing)?\s+\d+|from\s+(?:the\s+)?(?:hold(?:er)?|string|threads?|waste|spare|pin)|put\s+(?:all|both))\b",
    re.I,
)
"""Words by which stitches come onto the needles: how many stand there before is another question."""
_BACK: Final = regex(
    r"\b(?:from|off)\s+(?:the\s+|a\s+|an\s+)?(?:hold(?:er)?s?|strings?|threads?|waste|spare|pins?|safety)\b|\bheld\b",
    re.I,
)
_OFF_IN_PART: Final = regex(
    r"\b(?:cast|bind)\s+off\s+(?:all\s+)?(?:the\s+)?(?!(?:all|these|the|rem\w*|sts?|stitches|in|with|loosely|them|everything)\b)"
    rf"(?:[a-z]+\s+){{1,2}}{STS}|\bshoulders?\b|\b(?:on|onto)\s+(?:an?\s+|the\s+)?(?:threads?|hold(?:er)?s?|pins?|string)\b",
    re.I,
)
"""Words by which not all stitches are bound off, or others wait."""
_NUMBERED_AGAIN: Final = regex(
    rf"\b\d+\s+as\s+(?:rnd\s+|row\s+)?\d|\d(?:st|nd|rd|th|d)\s+{_ROW}\b.*\d(?:st|nd|rd|th|d)\s+{_ROW}\b|\b{_ROW}\s*\d+\s*[:.].*\b{_ROW}\s*\d+\s*[:.]"
    rf"|\b(?:and|&)\s+(?:all|every|each)\b[^.:]{{0,30}}(?:{_ROW}|[RW]\.?S)\b|\b(?:next|foll\w*)\s+(?:and|&)\s|[.;]\s+(?:next|foll\w*)\s+{_ROW}\b"
    rf"|:.*\b{_MANY}\s+(?:rows|rnds|rounds)\b",
    re.I,
)
"""More rows than one, each by its own number or word."""

_IN_FRONT: Final = regex(
    rf"\bcast(?:ing)?[\s-]+(?:on|up)\s+[^.;]{{0,40}}?\d|\b(?:knit|purl|work)\s+(?:all|each|every)\b"
    rf"|\d(?:st|nd|rd|th)\s+{_ROW}\b|\b{_ROW}\s*\d|\b{_MANY}\s+(?:\w+\s+)?(?:{_ROW}|times)\b"
    r"|\b(?:is|are)\s+(?:to\s+be\s+)?(?:worked|knitted)\b",
    re.I,
)
"""Words of the work in front of the pattern, where abbreviations and needles are told too."""

_CHANGES: Final = regex(
    r"\b(?:(?:inc|dec)(?:s|'d|\.|reas(?:e|es|ed|ing|ings))?|(?:bind|cast)(?:ing)?[\s-]+off|cast(?:ing)?[\s-]+(?:on|up)|CO|BO|PUK"
    r"|narrow(?:s|ed|ings?)?"
    r"|(?:pick|take|taking|lift)(?:ing)?\s+(?:[\w\s]{0,16}\b)?up|lift\s+\d+"
    r"|(?<!without )(?<!any )shap(?:e|ing)"
    r"|button[\s-]?holes?"
    r"|(?:remov|add|los|gain)(?:e|es|ed|ing)?\s+\d+|(?:vanish|disappear)\w*|(?:used|eaten)\s+up|(?:one|\d+)\s+st(?:itche?s?)?\s+(?:less|more|fewer)"
    r"|leaving|leaves|narrower|raise|gone|until\s+(?:there\s+are\s+|you\s+have\s+)?(?:\w+\s+)?\d+[^.;]{0,40}?\b(?:sts?|stitches|rem\w*|left)"
    r"|(?:remain|rem)\b|left(?!\s+(?:front|back|needle|hand|side|sleeve|leg|mitten)\b)"
    r"|(?:as|like)\s+(?:the\s+)?(?:\d|first|second|third|rows?\b|rnds?\b|rounds?\b)|make\s+(?:one|two|three|\d)|drop(?:ping)?\s+\w+\s+of|(?:yo|yrn|o|over)\s+(?:twice|\d+))(?!\w)"
    r"|\(\s*[+–-]\s?\d",
    re.I,
)
"""Words by which the number of stitches is likely another after a row."""
_LESS: Final = regex(
    r"(?<![\w.])(?:[kp]\.?\s?2\s?tog|k2t|ssk|ssp|skpo|s\.\s?k\.\s?p\.\s?o|psso|(?:k(?:nit)?|p(?:url)?|work)?\.?\s?(?:2|two)\s?tog(?:ether)?"
    r"|pass(?:ing)?\s+(?:the\s+)?(?:slipped\s+)?(?:st(?:itch|s?\.)?\s+)?over|(?-i:n)(?=\s*[,;.*)]|\s*$)|sl\s+and\s+b)(?!\w)",
    re.I,
)
"""One stitch less each."""
_TWO_LESS: Final = regex(r"(?<![\w.])(?:[kp]\.?\s?3\s?tog|sk2po?|s2kp2?|sk2p|cdd|d\.?\s?d|sssk)(?!\w)", re.I)
_MORE: Final = regex(
    r"(?<![\w.])(?:yo|yrn|y?fwd|w\.?\s?f(?:wd)?|yarn\s+over|(?-i:o)(?=\s*[,;.*)])|m1[lrp]?|m\.1|kfb|pfb)(?!\w)",
    re.I,
)
"""One stitch more each."""
_MORE_LESS: Final = regex(r"(?<![\w.])(?:[kp]?\s?\d*\s?tog(?:ether)?)(?!\w)", re.I)
"""Any that are worked together, however many: those that are not counted are not known."""
_BARE: Final = regex(
    r"(?:(?<!\b[kp])\.|[:;→=]|--|[–—])\s*[(\[]?\d+(?:\s?[(\[:/,–-][\d\s,:/–-]+[)\]]?)?\s*[)\]]?\W*$"
    r"|[.:;]\s*(?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:-\w+)?|eleven|twelve|\w+teen)\b[^.]{0,30}\W*$",
    re.I,
)
"""A number alone behind a row, which is most likely its count."""


_ALONG: Final = regex(
    rf"\d[)\]]?\s*(?:more\s+)?{STS}\s+"
    r"(?:(?:evenly\s+)?(?:up|down|across|along|around|round|from|over)|at|in)\b",
    re.I,
)
"""So many stitches along an edge or at a place: the rest of an order to pick them up."""


def is_doubtful_note(said: str) -> bool:
    """Return whether words that look like a remark may order something: then it is not proposed to be one.

    Args:
        said: The words as printed.
    """
    if sum(map(str.isalpha, said)) < _FEW:
        return True  # a star, or the letter of a yarn
    signs = (_ORDERED, _OF_ROWS, _MEASURED, SHORTHAND, _BACK, _ALONG)
    return any(sign.search(said) is not None for sign in signs)


def may_be_worked(said: str) -> bool:
    """Return whether text in front of the pattern may be knitted: a cast-on, rows, or an order to knit."""
    return _IN_FRONT.search(said) is not None or any(map(_begins_order, sentences_of(said)))


def _begins_order(sentence: str) -> bool:
    plain = _LABEL.sub("", sentence, count=1)
    explained = SHORTHAND.match(plain) is not None  # "k2tog knit 2 together"
    ordered = _ORDERS.match(plain) is not None and _TALK.match(plain) is None
    return is_headed(sentence) or (ordered and not explained)


def is_doubtful_end(said: str) -> bool:
    """Return whether words that bind off may do so in part, or have stitches wait.

    Args:
        said: The words as printed.
    """
    return _OFF_IN_PART.search(said) is not None


def is_doubtful_pick_up(said: str) -> bool:
    """Return whether words that pick up stitches may take others back from hold, which are no new ones."""
    return _BACK.search(said) is not None


def is_headed(sentence: str) -> bool:
    """Return whether a sentence begins with the head of a row and goes on behind it."""
    return _HEADED.match(sentence) is not None and _HEAD_ONLY.match(sentence) is None


def orders_row(sentence: str, *, counted: bool = False) -> bool:
    """Return whether a sentence surely orders a row or more to be knitted.

    Args:
        sentence: Its words as printed.
        counted: Whether a count of stitches is printed behind it.
    """
    if _NO_ROW.search(sentence) or _HEAD_ONLY.match(sentence):
        return False
    if is_headed(sentence):
        return True
    said = _LABEL.sub("", sentence, count=1)
    if _TALK.match(said) or _TALK.match(sentence) or _COMES.search(sentence):
        return False
    worked = SHORTHAND.search(said) is not None or (counted and len(re.findall(r"[a-z]{2,}", said, re.I)) > 1)
    return worked or _ORDERS.search(said) is not None


def is_measured(said: str) -> bool:
    """Return whether a length stands in some words."""
    return _MEASURED.search(said) is not None


def names_several(said: str) -> bool:
    """Return whether words are of several rows, each by its own number or word."""
    return _NUMBERED_AGAIN.search(said) is not None


def may_change(words: str) -> bool:
    """Return whether the number of stitches may be another after a row, or cannot be told from its words.

    Args:
        words: The words of the page.
    """
    said = " ".join(words.replace("’", "'").split())
    if _CHANGES.search(said) or _BARE.search(said):
        return True
    return not all(map(_is_even, re.split(r"[*()\[\]]", said)))


def _is_even(stretch: str) -> bool:
    """Return whether as many stitches are added in a stretch of a row as are taken in it."""
    twos, ones = len(_TWO_LESS.findall(stretch)), len(_LESS.findall(stretch))
    rest = _LESS.sub("", _TWO_LESS.sub("", stretch))
    return _MORE_LESS.search(rest) is None and len(_MORE.findall(rest)) == 2 * twos + ones
