"""Tell what is done off the needles below a heading of finishing, in whatever words. No I/O.

Theory of operation. Once the knitting is over and the page says so ("FINISHING", "Sewing up", "LAST THINGS"), what it
orders is seams, ends, buttons, washing. No list has all the words for that, but there is one for everything that
takes live stitches, yarn or a needle in hand: a sentence without any of these is told at its place and works nothing.
What may be knitting after all, another piece or a part made again among it, stays unread. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.regex import regex

_FINISHING: Final = regex(
    r"(?:(?:[a-z&'\u2019]+[\s-]+){0,4}?)(?:finish(?:ing|ed)?(?:\s+off)?|making[\s-]up|make[\s-]up|mak(?:e|ing)\s+(?:it|them)\s+up|assembl(?:y|e|ing)|(?:sew|stitch|seam)(?:ing)?\s+up"
    r"|putting\s+(?:it|them|everything)\s+(?:all\s+)?together|mount(?:ing)?|complet(?:e|ion|ing)|(?:the\s+)?ends|seams?|blocking|washing|care|after-?care"
    r"|last\s+(?:things|bits|touches|steps)|final\s+(?:things|touches|steps|details))"
    r"(?:\s+(?:touches|details|instructions|and|&|the|of|your|off|up|care|blocking|seaming|washing|drying|edges|ends|seams|making)){0,4}",
    re.I,
)
_OF_PIECES: Final = regex(
    r"(?:side|shoulder|sleeve|underarm|back|front|raglan)\s+seams?|buttons?|pompoms?|ribbons?", re.I
)
"""What may stand before a colon for the same: "Side seams: Sew from hem to underarm."."""
_HEADING: Final = regex(r"[^\W\d_][^\d.;*]{1,47}")
_LABEL: Final = regex(
    r"\s*(?P<name>[^\W\d_][^\d:.;*()]{1,40}?)\s*(?::|\.\s*[\u2013\u2014-]|\.(?=\s+[A-Z])|\s[\u2013\u2014-])\s+(?=\S)"
)
_MEASURE: Final = regex(
    r"(?<![\w.])[\d.,\u00bc\u00bd\u00be]+(?:\s*(?:[-\u2013]|to)\s*[\d.,\u00bc\u00bd\u00be]+)?\s*(?:cm|mm|in|inch(?:es)?|\"|''|\u00b0\s*[cf]?|degrees|%|minutes?|hours?|days?)(?![\w])",
    re.I,
)
_SMALL: Final = regex(
    r"\b(?:small|few|tiny|invisible|neat|running|back|whip|mattress|overcast|blanket|couple\s+of(?:\s+small)?|sewing|slip)\s+stitch(?:es)?\b"
    r"|\bstitch\s+(?:down|in|on|together|them|it|the|to)\b|\bstitch\s+to\s+stitch\b|\brow\s+(?:by|for)\s+row\b|\b(?:tapestry|darning|yarn|sewing|wool|blunt|large-eyed)\s+needle\b"
    r"|\b(?:cast|bound|bind)[-\s]?(?:on|off)\s+edges?\b|\b(?:right|wrong)\s+sides?\s+(?:together|out|inwards|facing\s+(?:out|in|each\s+other))\b"
    r"|\b(?:omitting|avoiding|excluding|leaving\s+out|except(?:ing)?(?:\s+for)?|not|but\s+not)\s+(?:the\s+|any\s+|all\s+)?(?:rib(?:bed|bing|s)?|garter(?:\s+st(?:itch)?)?|cables?|textured|stocking|borders?|moss(?:\s+st(?:itch)?)?|lace)(?:\s+(?:sections?|parts?|edges?|bands?|borders?|panels?))?\b"
    r"|\b(?:flatten|crush|stretch|scorch|spoil)(?:ing)?\s+(?:the\s+)?(?:patt(?:ern)?|rib(?:bing)?|cables?|texture|garter|lace)\b|\brows?\s+of\s+(?:eyelets|holes|stitching|backstitch)\b|\bturn\s+(?:through|inside\s+out|right\s+side\s+out|to\s+the\s+right\s+side)\b"
    r"|\b(?:right|wrong)\s+sides?\s+facing(?:\s+each\s+other)?\b|\bstitch\s+the\s+[a-z]+\b|\bmade\s+mine\b"
    r"|\b(?:on|to|from)\s+the\s+(?:RS|WS)\b|\bjoin\b(?=[^.]*\b(?:mattress|sewing|sewn|backstitch|overcast|seams?)\b)"
    r"|\b(?:\d+|one|two|three|four|five|six|seven|eight)\s+(?:small\s+|big\s+)?(?:buttons|snaps|pompoms|pom-poms|ribbons|tassels)\b",
    re.I,
)
"""Words of sewing in which one of knitting stands."""
_IN_HAND: Final = regex(
    r"[*\[\]=\d]|(?<![\w'])(?:k|p|[kp]\d\w*|sts?|stitch(?:es)?|rows?|rounds?|rnds?|knit\w*|purl\w*|work\w*|cast\w*|bind\w*|bound|pick\w*|inc|increas\w*|dec|decreas\w*|"
    r"repeat\w*|rep|graft\w*|kitchener|crochet\w*|chains?|needles?|circulars?|dpns?|hold|held|holders?|holding|loops?|live|until|till|unless|every|each\s+(?:other|second)|instead|again|times|twice|"
    r"once|thrice|other|another|second|same|alike|likewise|i-?cords?|markers?|marked|continu\w*|cont|pass\w*|carry|slip\w*|skip\w*|omit\w*|unravel\w*|undo\w*|rip\w*|turn(?:ed|ing)?|rejoin\w*|"
    r"reattach\w*|attach\s+(?:the\s+)?(?:yarn|wool)|join\w*|begin\w*|start\w*|add\w*|make|makes|making|made|sizes?|versions?|complet(?!ely)\w*|mirror\w*|revers\w*|as\s+(?:for|on|before|given|with)|"
    r"garter|stock\w*|moss|seed|rib|ribs|ribbing|pattern\w*|patt|plain|charts?|colou?rs?|yarn\s+\w|facing|rs|ws|across|three-needle|3-needle|"
    r"thread\s+(?:it|the\s+yarn|the\s+tail|yarn|tail)|draw\w*|pull\w*|gather\w*|clos(?:e|ing)\s+(?:up\s+)?the\s+(?:top|toe|tip|crown|crotch)|shap(?:e|ing)\s+(?!(?:it|them|and|while|to|gently)\b)\w+|measure\w*|"
    r"more|less|fewer|longer|shorter|one|two|three|four|five|six|seven|eight|nine|ten|if|when\s+(?!(?:it|they|everything|dry|dried|damp|wet)\b)\w+|(?-i:MC|CC\d?|[A-H]))(?![\w'])",
    re.I,
)
"""Words with which live stitches, yarn or needles may be in hand, or a piece may be made once more."""
_LONGEST: Final = 300


def goes_on_finishing(finishing: bool, heading: str) -> bool:
    """Return whether the knitting is over below a heading.

    Args:
        finishing: Whether it was above it.
        heading: A row that is not worked. One that is no heading, being long or a sentence, changes nothing.
    """
    plain = " ".join(heading.split()).strip("*_#~=|<>\u2013\u2014-: ")
    if _FINISHING.fullmatch(plain):
        return True
    return finishing and _HEADING.fullmatch(plain) is None


def is_off_the_needles(line: str, *, finishing: bool) -> bool:
    """Return whether all of a line is done off the needles.

    Args:
        line: The line, made plain. Its own label may say that it is of finishing: "Seams: …".
        finishing: Whether it stands below a heading of finishing.
    """
    label = _LABEL.match(line)
    named = label is not None and bool(
        _FINISHING.fullmatch(label["name"]) or _OF_PIECES.fullmatch(label["name"])
    )
    if not (finishing or named) or len(line) > _LONGEST:
        return False
    rest = line[label.end() :] if label is not None and named else line
    words = _SMALL.sub(" ", _MEASURE.sub(" ", rest))
    return bool(re.search(r"[a-z]{3}", words, re.I)) and _IN_HAND.search(words) is None
