"""Tell what kind of front matter a sentence is: sizes, gauge, yarn, abbreviations. No I/O.

Theory of operation. A row under a heading is of the heading's kind; under "Materials", and under no heading,
the words and the form of the sentence decide. A sentence that holds an instruction is never front matter,
except forms that say what something means: an abbreviation and its words, a gauge. What is neither prose nor
one of these forms has no kind, so that the knitter is sent to it.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.grammar import abbreviations
from stepper.project.page.abbreviation_lists import explains_short_form, lists_abbreviations
from stepper.project.page.front_values import YARN_WORDS
from stepper.project.page.headings import Heading, is_clutter
from stepper.project.page.orders import (
    LONGEST,
    casts_on,
    has_row_head,
    holds_instruction,
    holds_strands_together,
    is_for_some_sizes,
    is_order,
)
from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.remarks.idle import leaves_nothing_to_do
from stepper.regex import regex

KINDS = (
    "title",
    "sizes",
    "finished measurements",
    "gauge",
    "needles",
    "notions",
    "yarn",
    "materials",
    "abbreviations",
    "stitch patterns",
    "notes of the designer",
    "comments",
    "chart",
    "page",
    "copyright",
    "heading",
)
"""Every kind of text that is not knitted. `page`: page numbers, running heads, addresses, rules. `heading`:
the name of a part, which becomes the name of its section. `comments`: what readers wrote below the page."""

_HEADED = (
    (r"finished\s+size|(?:finished|knitted|actual)?\s*(?:measurements?|dimensions?)|finished|ease"
        r"|schematic", "finished measurements"),
    (r"sizes?|sizing|to\s+fit", "sizes"),
    (r"gauge|tension", "gauge"),
    (r"needles?|hooks?", "needles"),
    (r"notions|equipment|tools|haberdashery|extras", "notions"),
    (r"yarns?|colou?rs?|shades?|wool", "yarn"),
    (r"materials?|you(?:\s+will|.ll)?\s+need|what\s+you|supplies|requirements", "materials"),
    (r"(?:special\s+)?abbreviations?|terms|glossary|stitch\s+(?:key|explan|definit|abbrev|glossary)[a-z]*"
        r"|(?:explanations?|key|list)\s+(?:of|to|for)\s+(?:the\s+)?(?:stitches|abbrev[a-z]*|terms)",
        "abbreviations"),
    (r"special|techniques?|stitch\s+(?:guide|patterns?)|pattern\s+stitch|stitches", "stitch patterns"),
    (r"charts?|chart\s+key|key|legend|symbols?", "chart"),
    (r"copyright", "copyright"),
    (r"comments", "comments"),
)  # fmt: skip
_SOFT = frozenset(
    ("", "title", "sizes", "finished measurements", "needles", "notions", "yarn", "materials", "chart")
)
_KNOWN = (
    rf"{abbreviations()}|k|p|sts?|st\s+st|g\s+st|gst|rs|ws|rep|beg|beginning|inc|dec|tog|pm|sm|rm|sl|sl\s+st"
    r"|m1[lrp]?|psso|p2sso|tbl|rnds?|cont|foll|rem|alt|patt|cn|mc|cc\d?|bor|co|bo|dpns?|approx|wy[ib]f?|w&t"
    r"|[ct]\d[fb]|m|ds|st\(s\)|rnd\(s\)|lh|rh|eor|nor|mk|kwise|pwise|meas|tw\d\w?|lp|rev\s+st\s+st"
)
_DEFINED = regex(rf"^\W*(?:{_KNOWN})\s*(?:[=:–—]|-(?=\s)|\s-\s)\s*\S", re.I)
"""An abbreviation and what it means, anywhere."""
_LISTED = regex(
    r"^\W*(?!(?:row|rnd|round|rows|rnds|rounds)s?\b\W*\d)(?P<key>[A-Za-z0-9]{1,6}\s?/\s?[A-Za-z0-9]{1,6}(?=\s*[=:\u2013\u2014])|[^\s=:]{1,12}(?:\s(?:st|sts|st\s+st))?"
    r"|[A-Za-z]{1,4}\s?&\s?[A-Za-z]{1,3})"
    r"\s*(?:[=:–—]|-\s|\s)\s*(?P<words>\S.*)$",
    re.I,
)
"""An abbreviation and its meaning in a list; the sign between them may have been lost in copying."""
_SPELT_OUT = regex(
    r"(?:knit|purl|bind|cast|repeat|increas|decreas|slip|place|contin|begin|make|making|remove|yarn|wrap)",
    re.I,
)
"""How the meanings of the common abbreviations begin."""
_SPELT = regex(r"^[(\[][A-Za-z0-9' /-]{3,40}[)\]]\s*")
"""The name in full between a short form and what it means: "C4B (Cable 4 Back) Slip 2 sts ..."."""
_NO_KEY = regex(
    r"(?:rows?|rnds?|rounds?|next|cast|bind|join|work|knit|purl|repeat|continue|place|change|break"
    r"|using|with|body|sleeves?|"
    r"back|fronts?|brim|crown|cuff|hem|neck|neckband|collar|heel|foot|toe|leg|hand|thumb|band|yoke|rib"
    r"|ribbing|border|edging|"
    r"tip|note|nb|hint|important|all|every|slip|turn|make|pick|increase|decrease|then|begin|cont|hold"
    r"|graft|divide"
    r"|the|an?|first|last|kept|keep(?:ing)?|th(?:is|ese|at|ose)|it|they|you|we|when|if|while|each|both|other|on|in|at|for|from"
    r"|to|of|and|or|as|is|are|worked|knitted|purled|slipped|held|left|used)\.?$",
    re.I,
)
_PAIRS = regex(
    r"^(?:\s*[A-Za-z0-9]{1,6}(?:\(s\))?(?:\.[A-Za-z0-9]{1,6})?\.?\s*[,=:–-]\s*"
    r"(?:[^\d;*]|\b[12](?=\s+(?:sts?|stitch|stitches|loops?)\b))+(?:;|\.?$))+\.?$"
)
"""Abbreviations in a row of pairs: "K., knit; st.st., stocking stitch; dec., work 2 sts. together"."""
_GAUGE = regex(
    r"\d[\d.,/½¼¾ ]*(?:sts?|stitches)\b[^!?]*(?:\b(?:to|per|over|in|on|x|by|and|measure)\b|[=/x&×:,])[^!?]*\d"
    r"|\d[\d./½¼¾ ]*(?:rows?|rnds?|rounds?)\b[^!?]*(?:=|\bto\b|\bper\b|\bover\b|/)[^!?]*\d"
    r"|^\W*[\d.½¼¾]+\s*(?:cm|in|inch(?:es)?|\"|″)\s*(?:=|is|are|measures?)\s*(?:about\s+)?[\d.½¼¾]+\s*(?:sts?|stitches)\b"
    r"|\b(?:gauge|tension|swatch)\b",
    re.I,
)
_GAUGE_PART = regex(
    r"^\W*(?:(?:sts|rows?|rnds)\W+)?[\d.½¼¾]+\s*(?:sts?|stitches|rows?|rnds?|rounds?)\b(?:\W+(?:and|&"
    r"|by|x|=|per|to|over|in)\b.*)?\W*$"
    r"|^\W*(?:=|over|to|per)?\s*[\d.½¼¾/]+\s*(?:cm|mm|in|inch(?:es)?|\"|″)\W",
    re.I,
)
_HOW_KNITTED = regex(r"\b(?:knit(?:ted)?|work(?:ed)?)\s+(?:in|on|over|with|flat|using)\b", re.I)
_NOT_IN_A_GAUGE = regex(
    r"\*|\b[kp]\d|\b(?:cast|bind)\s+o|\buntil\b|\brep\b|k2tog|\bssk\b|\byo\b|\b(?:inc|dec)(?:reas\w+)?\b"
    r"|\b(?:knit|purl|work|slip)\s+(?:\d|each|every|all)",
    re.I,
)
_UNIT = r"(?:cms?|mm|in|ins|inch|inches|\"|″|”|')"
_MEASURE = (
    r"\b(?:chest|bust|waist|hips?|length|width|wide|long|circumference|diameter|depth|ease|around"
    r"|height|high|tall|wingspan|armholes?|"
    r"sleeve\s+(?:seam|length)|upper\s+arm|wrist|neck\s+(?:opening|width)|foot|head|measurements?"
    r"|measures?|shoulder\s+width|arm|hand|"
    r"across|deep)\b"
)
_MEASURED = regex(
    rf"{_MEASURE}[^!?]{{0,400}}\d|\d[^!?]{{0,200}}{_UNIT}[^!?]{{0,200}}{_MEASURE}|^\W*(?:actual|finished)\b[^!?]*\d"
    rf"|^[\d\s.,½¼¾/()\[\]:;–-]+{_UNIT}\W*$",
    re.I,
)
_TABLE = regex(
    rf"^(?:[^\W\d]+\W+){{0,5}}[\d\s.,½¼¾/()\[\]:;–-]*\d(?:\s*{_UNIT})?[\d\s.,½¼¾/()\[\]:;–-]*(?:{_UNIT})?\W*$"
)
_COLUMN = regex(rf"^\W*(?:[\w/]+\W+){{0,3}}{_MEASURE}\W*$", re.I)
"""A measurement whose numbers are in the next row."""
_SIZES = regex(
    r"^\W*(?:(?:shoe|foot|garment|dress|child(?:ren)?'?s?|adult|women'?s|men'?s)\s+)?(?:sizes?"
    r"|sizing)\b|\bto\s+fit\b|^\W*one\s+size\b|^(?:[\s,/(\[]*+\b(?:\d?X{0,3}[SML]|\dX|small|medium|large"
    r"|one\s+size)\b[\s,/)\]]*+){2,}$"
    r"|^(?:(?:\d?X{0,3}[SML]|\dX)\s*[/,]\s*){1,9}(?:\d?X{0,3}[SML]|\dX)\.?$"
    r"|^[\s(]*(?:\d?X{0,3}[SML]|\dX)\s*[{\[(](?:\s*(?:\d?X{0,3}[SML]|\dX)\s*[-,:/]?){1,9}[}\])]\s*$"
    r"|^\W*\d{1,2}(?:\s*[-/\u2013]\s*\d{1,2})?(?:[\s|,:]+\d{1,2}(?:\s*[-/\u2013]\s*\d{1,2})?){1,9}[\s|]*(?:years?|yrs?|months?|mths?)\.?$",
    re.I,
)
_LETTERED = regex(
    r"^\W*(?:MC|CC\d?|[A-F])\s*(?:[:=]|\s[–—-]\s)\s*(?!main\b"
    r"|contrast)[A-Za-z][^\d]*(?:\(?\d+\s+(?:skein|ball|hank).*)?$"
    r"|^\W*(?:MC|CC\d?|[A-F]|(?:main|contrast)(?:\s+(?:colou?r|shade|yarn))?(?:\s+[A-F\d])?)\s*\([A-Za-z][^()\d]{2,30}\)\s*(?:[:=]|[–—-]\s)\s*\d[\d\s,:()\[\]/–-]*\d?[)\]]?(?:\s+(?:in|for)\s+all\s+sizes)?\.?$"
)
"""A yarn by its letter or what it does, with its colour or its balls: "CC1 (peach): 1 (1) 1 (2) 2"."""
_RUN = r"[\d\s.,:;/()\[\]{}\u00bc\u00bd\u00be\u2013-]+"
_IN_UNITS = rf"{_RUN}(?:mm|cm|m|metres|meters|yds?|yards|g|grams|oz|skeins?|balls?|hanks?)\b\.?"
_AMOUNT = regex(
    r"\W*(?:[A-Z][\w'&-]*(?:\s*\([^()]{1,40}\))?(?:\s*[,&]\s*)?){1,8}\s*[:=\u2013\u2014-]\s*"
    rf"(?:{_IN_UNITS})+[)\]]?(?:\s*\([^()]*\)|\s+(?:of\s+)?each|,[^.;*]{{0,40}})?\.?"
)
"""A name and how much or how large: "CC1 (Rowan), CC2 (Cream): 90 (95) m of each."."""
_NEEDLES = regex(
    r"\b(?:needles?|circulars?|dpns?|double[- ]pointed|crochet\s+hook|hook)\b|^\W*(?:US|UK)\s*\d+\b"
    r"|^\W*[A-Za-z][A-Za-z' -]{1,24}\s*[:=\u2013\u2014-]\s*(?:US|UK|no\.?|size)\s*\d+(?:\.\d+)?"
    r"\s*[/(,]\s*\d(?:[.,]\d+)?\s*mm\b[^.;*]{0,30}$",
    re.I,
)
_TOOL = regex(r"\W*(?:\d+\s*prs?|\d+\s*pairs?|US|size)\b", re.I)
_NOTIONS = regex(
    r"\b(?:markers?|holders?|tapestry|darning|scrap\s+yarn|waste\s+yarn|scissors|buttons?"
    r"|cable\s+needle|row\s+counter|pins?|"
    r"zip(?:per)?|ribbon|elastic|beads?|tape\s+measure|pom[- ]?pom)\b",
    re.I,
)
_COPYRIGHT = regex(
    r"©|\(c\)\s*(?:\d{4}|by)|\bcopyright\b|all\s+rights\s+reserved|\b(?:personal|private)\s+use\b"
    r"|may\s+(?:only\s+|not\s+)?be\s+(?:sold|copied|reproduced|used\s+(?:for|commercially|only))|\b(?:personal|private|charity|commercial)\s+(?:use|knitting|purposes?)\b"
    r"|\b(?:do\s+not|don't|never)\s+(?:sell|copy|share|distribute|repost|reproduce)\b|\b(?:publishers?|company)\b[^.]*\b(?:responsib|liab)\w+|\bnot\s+responsible\s+for\b|\berrata\b",
    re.I,
)
_ADDRESS = regex(r"^\W*#[a-z]\w{3,40}\W*$|https?://|\bwww\.|\S{1,64}@\S{1,64}\.\S", re.I)
_STITCH_PATTERN = regex(
    r"\bmultiple\s+of\s+\d+|\b(?:pattern|stitch|rib)\s*\((?:worked|multiple|over)\b", re.I
)
_CHART = regex(r"^\W*(?:charts?|key|legend|schematics?|symbols?)\b|\bsee\s+(?:the\s+)?chart\b", re.I)
_SPEAKER = regex(
    r"^\W*[^\W\d][\w.' -]{0,30}?(?:\s+(?:says|said|writes|wrote|asks|asked|replies|replied))?\s*:\s*|^\W+",
    re.I,
)
"""Who wrote a comment: "Anja says: "."""
_GROWS = regex(
    r"(?:it|(?:the|this|your)\s+(?:shawl|scarf|cowl|wrap|blanket|crescent|triangle|piece|border|lace|body|design|pattern|stitch\s+pattern)"
    r"|[A-Z]\w+(?:\s+[A-Z]\w+){0,2})\s+(?:then\s+|also\s+|simply\s+)?(?:starts|begins|grows|gains|features|comes|gets)\b"
    r"(?!.*(?:[;*]|\b(?:you|then|repeat|rep|work|knit|purl|slip|until|but|except|if|cast|co|bind|bo|pick)\b))[^.!?]*[.!?]?$"
)
"""What a page tells of a shawl before it casts on: "It grows by 4 sts on every RS row"."""
_BULLET = regex(r"^[•·*-]\s+")
_PROSE = regex(r"[^\W\d_]{3,}(?:['’][a-z]+)?")


def kind_under(heading: Heading) -> str:
    """Return the kind of the text under a heading of front matter."""
    if "abbreviation" in heading.name:
        return "abbreviations"
    for words, kind in _HEADED:
        if re.match(rf"(?:{words})\b", heading.name, re.I):
            return kind
    return "notes of the designer"


def is_soft(context: str) -> bool:
    """Return whether knitting may begin under a heading of this kind, without another heading."""
    return context in _SOFT


_RAISED = regex(
    r"\binc(?:rease)?\b\.?(?:\s*[,:=\u2013\u2014-])+\s*(?:(?:increase|make|inc)\b\.?\s+)?(?:(?:1|one|a)\s+(?:st|stitch)\b\.?\s+)?"
    r"by\s+(?:picking|lifting|raising|knitting\s+(?:up|the))\b",
    re.I,
)
"""An increase between two stitches, where rows say "inc", which is worked into one as they are read.

Source: common practice.
"""


def kind_of(sentence: str, context: str = "", *, apart: bool = False) -> str:
    """Return what kind of front matter a sentence is.

    Args:
        sentence: The sentence, or a row that does not end one.
        context: Kind of the heading above it; empty if there is none.
        apart: Whether an empty row separates it from the text of the heading.

    Returns:
        One of `KINDS`; empty if it holds an instruction, or nothing that can be named.
    """
    if len(sentence) > LONGEST:
        return ""
    if is_clutter(sentence) and not (context == "finished measurements" and re.fullmatch(r"\d+", sentence)):
        return "copyright" if _COPYRIGHT.search(sentence) else "page"
    if context == "comments":
        return "" if is_order(_SPEAKER.sub("", sentence)) else context
    if holds_strands_together(sentence) or _RAISED.search(sentence):
        return ""
    if means_something(sentence, context):
        return "abbreviations" if context != "chart" else "chart"
    if _CHANGES_LATER.search(sentence) or is_for_some_sizes(sentence):
        return ""
    if _is_gauge(sentence, context):
        return "gauge" if context not in ("notes of the designer", "finished measurements") else context
    if leaves_nothing_to_do(made_plain(_BULLET.sub("", sentence))):
        return "notes of the designer" if is_soft(context) else context
    if _GROWS.match(sentence) and is_soft(context):
        return "notes of the designer"
    if holds_instruction(sentence):
        return ""
    shown = _shown(sentence)
    if context in ("yarn", "materials", "needles") and _AMOUNT.fullmatch(sentence):
        return "yarn" if context == "materials" else context
    if context == "materials":
        named = ("yarn", "needles", "notions", "sizes")
        return shown if shown in named else "" if _is_unnamed(sentence) else context
    sized = context in ("sizes", "finished measurements")
    if sized and not _SIZES.match(sentence) and (_TABLE.match(sentence) or _COLUMN.match(sentence)):
        return "finished measurements"
    if context and not (apart and shown):
        if context == "sizes" and shown == "finished measurements":
            return shown
        idle = context == "gauge" and not re.search(r"\d", sentence)
        if apart and (idle or (is_soft(context) and _is_sentence(sentence))):
            return "notes of the designer"
        return context if shown or sized or not _is_unnamed(sentence) else ""
    return shown or ("" if _is_unnamed(sentence) else "notes of the designer")


def means_something(sentence: str, context: str) -> bool:
    """Return whether a sentence is an abbreviation and its meaning."""
    if has_row_head(sentence) or casts_on(sentence):
        return False
    if context != "chart" and lists_abbreviations(sentence):
        return True
    if context == "abbreviations" and explains_short_form(sentence) and not _counts(sentence):
        return True
    if context == "yarn" or (context != "abbreviations" and _LETTERED.match(sentence)):
        return False
    if context != "abbreviations":
        match = _DEFINED.match(sentence)
        words = sentence[match.end() - 1 :] if match else ""
        return bool(_PROSE.search(words)) and not _counts(sentence)
    sentence = re.sub(r"^\W*(?:[a-z]+\s+)?abbreviations?\W+", "", sentence, flags=re.I)
    if ";" in sentence and _PAIRS.match(sentence):
        return True
    match = _LISTED.match(sentence)
    if match is None or _NO_KEY.match(match.group("key")) or match.group("key").endswith((",", ";", ".")):
        return False
    key, words = match.group("key"), _SPELT.sub("", match.group("words"))
    if not _PROSE.search(words) or _counts(words):
        return False
    signed = bool(re.match(r"\s*(?:[=:–—]|-\s)", sentence[match.end("key") :]))
    named = all(re.fullmatch(_KNOWN, one, re.I) for one in re.split(r"\s?/\s?", key))
    if not holds_instruction(sentence):
        return True
    return (signed and (named or key.upper() == key)) or (named and bool(_SPELT_OUT.match(words)))


def _counts(words: str) -> bool:
    """Return whether words count rows, stitches or repeats, as no meaning of an abbreviation does."""
    return bool(
        re.search(
            r"\d+\s*(?:more\s+)?(?:rows?|rnds?|rounds?|times)\b|\brep(?:eat)?\s+(?:from|rows?|rnds?"
            r"|rounds?)\b|\bto\s+(?:end|last|marker)\b"
            r"|\b(?:cast|bind)\s+o\w+\s+\d|\d{2,}\s*(?:\([^)]*\)\s*)?(?:sts|stitches)\b",
            words,
            re.I,
        )
    )


_PARTS: Final = (
    r"\b(?:rounds?|rnds?|rows?|ribs?|ribbing|yoke|body|sleeves?|divi(?:de|ding|sion)|underarms?|colou?rwork|stranded|patterned"
    r"|sections?|parts?|borders?|bands?|cuffs?|neck\w*|collar|hem|brim|crown|charts?|heel|foot|leg|gusset|toe|thumb|flat"
    r"|whole|throughout|ws|rs|wrong\s+side|right\s+side|(?:cast|bind)(?:ing)?[-\s](?:on|off))\b"
)
_OTHER: Final = (
    r"\b(?:smaller|larger|bigger|finer|thicker|(?:an?|one|two|half\s+a)\s+(?:needle\s+)?sizes?"
    r"|needles?\s+sizes?|strands?|doubled?)\b"
)
_USE: Final = r"\b(?:use|take|knit|work|go(?:ing)?|chang(?:e|ing)|switch(?:ing)?|swap(?:ping)?|drop|move)\b"
_CHANGES_LATER = regex(
    rf"{_USE}[^.;]*?{_OTHER}[^.;]*?{_PARTS}|{_USE}[^.;]*?{_PARTS}[^.;]*?{_OTHER}"
    rf"|\b(?:chang(?:e|ing)|switch(?:ing)?)\s+(?:the\s+|your\s+)?needles?\b[^.;]*?{_PARTS}"
    rf"|{_PARTS}[^.;]*?\b(?:is|are)\s+(?:\w+\s+)?(?:worked|knit(?:ted)?|cast|bound)\b[^.;]*?{_OTHER}"
    r"|\b(?:yarns?|wool|strands?)\b[^.;]*?\b(?:is|are)\s+(?:used|held|knit(?:ted)?|worked|carried)"
    r"\s+(?:doubled?|together|along)\b"
    rf"|\b(?:carry|hold)\b[^.;]*?\b(?:together|along|doubled?)\b[^.;]*?{_PARTS}"
    r"|\b(?:start|begin)(?:s|ning|ing)?\b[^.;]*?\b(?:smaller|larger|bigger)\b[^.;]*?\bneedles?\b",
    re.I,
)
"""Another needle or another yarn for a part of the work: "go up a size for the patterned rounds", "yarn is
used double". A needle in a list ("3.5 mm for ribs") and one that gives the gauge are none."""
_COUNT_FIRST = regex(r"\W*\d{3}\s*(?:sts|stitches)\b", re.I)
"""A count that stands in front of a gauge: no gauge has a hundred stitches."""


def _is_gauge(sentence: str, context: str) -> bool:
    if has_row_head(sentence) or casts_on(sentence):
        return False
    if context == "gauge":
        rest = re.sub(r"^\W*(?:gauge|tension)\W*", "", sentence, flags=re.I)
        part = _GAUGE_PART.match(rest) and not re.match(r"\W*\d{3}", rest)
        return bool((part or _GAUGE.search(sentence)) and not _orders(rest))
    return bool(
        _GAUGE.search(sentence)
        and not _COUNT_FIRST.match(sentence)
        and not _orders(sentence)
        and re.search(rf"\d\s*{_UNIT}(?!\w)|\b(?:gauge|tension)\b", sentence, re.I)
    )


def _orders(sentence: str) -> bool:
    """Return whether a sentence with a gauge in it also tells the knitter to do something."""
    bare = _HOW_KNITTED.sub(" ", sentence)
    return is_order(bare) or bool(_NOT_IN_A_GAUGE.search(bare))


def _shown(sentence: str) -> str:
    """Return the kind that the words of a sentence show by themselves; empty if none."""
    for sign, kind in (
        (_COPYRIGHT, "copyright"),
        (_ADDRESS, "page"),
        (_SIZES, "sizes"),
        (_NOTIONS, "notions"),
        (_STITCH_PATTERN, "stitch patterns"),
        (_LETTERED, "yarn"),
    ):
        if sign.search(sentence):
            return kind
    if _is_sentence(sentence) and not re.search(r"\d", sentence):
        return ""
    if YARN_WORDS.search(sentence) and not _TOOL.match(sentence):
        return "yarn"
    for sign, kind in ((_NEEDLES, "needles"), (_MEASURED, "finished measurements"), (_CHART, "chart")):
        if sign.search(sentence):
            return kind
    return ""


def _is_sentence(text: str) -> bool:
    """Return whether a text is a sentence of prose rather than an entry of a list."""
    return len(_PROSE.findall(text)) >= 5 and text.rstrip().endswith((".", "!", "?", ","))


def _is_unnamed(text: str) -> bool:
    """Return whether a text is not prose: signs and numbers that no kind of front matter explains."""
    words = _PROSE.findall(text)
    letters = sum(len(word) for word in words)
    starred = re.search(r"(?!^\*(?:or|see|note)\b)[*]\S|\d[kp]\b", text, re.I)
    return not words or letters * 2 < len("".join(text.split())) or starred is not None
