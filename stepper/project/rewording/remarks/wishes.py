"""Tell advice that only those follow who wish to: "If the yoke feels short, add a few rounds". No I/O.

Theory of operation. The pattern as printed is knitted without it, so it works no stitch, and is told at its place for
her to take up. That holds only where the sentence begins with a wish of hers, with how something turns out, or with
yarn to spare, and says one thing. A size, a version, "otherwise", "then" and a second thing to do may each mean that
the other way is none of the pattern's: such a sentence stays unread. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.regex import regex

_MORE: Final = r"(?:longer|shorter|wider|narrower|deeper|taller|larger|bigger|smaller|roomier|snugger|looser|tighter|slouchier|warmer|fuller|closer)"
_TURNS_OUT: Final = r"(?:short|shallow|tight|loose|wide|narrow|deep|long|small|big|high|low|snug|baggy|floppy|flimsy)"
_PIECE: Final = r"(?:yoke|body|sleeves?|neck|neckband|collar|cuffs?|brim|hat|crown|foot|leg|heel|toe|thumb|hand|band|hem|shawl|scarf|cowl|armholes?|it|this|fit|length|edge)"
_HOLE: Final = r"(?:holes?|gaps?)"
_WISH: Final = (
    r"(?:if\s+(?:you(?:'d|\s+would)?\s+(?:like|want|wish|prefer|fancy)\b[a-z' -]{0,60}|you(?:'ve\s+got|\s+have|\s+still\s+have)\s+(?:lots\s+of|enough|plenty\s+of|some|more|a\s+lot\s+of)\s+(?:yarn|wool)(?:\s+(?:left|over|to\s+spare))*"
    rf"|(?:the|your)?\s*{_PIECE}\s+(?:feels?|seems?|looks?|is|are|turns?\s+out)\s+(?:(?:a\s+bit|a\s+little|too|rather|very)\s+)*{_TURNS_OUT}(?:\s+(?:for\s+you|to\s+you|on\s+you))?|your\s+(?:row\s+)?(?:gauge|tension)\s+is\s+(?:off|different)|you\s+need\s+(?:more|extra)\s+(?:length|depth|width|room|height)"
    rf"|you\s+(?:find|get|see)\s+(?:an?\s+|any\s+)?{_HOLE}\b[a-z' -]{{0,30}}|there\s+(?:is|are)\s+(?:an?\s+|any\s+)?{_HOLE}\b[a-z' -]{{0,30}})\s*,?"
    rf"|for\s+an?\s+(?:{_MORE}|slouchy|folded|unfolded|turned-up|double)\s+[a-z]+\s*,?|alternatively\s*,)\s+"
)
_TAKEN_UP: Final = (
    r"(?:(?:just|simply|you\s+(?:can|may|could|might)|feel\s+free\s+to)\s+)*(?:add|knit|work|make|place|use|try|do|run|go|continue|carry|pick\s+up|cast\s+on|change|adjust|repeat|remove)\b"
)
_SAID: Final = regex(
    rf"(?:tip\s*:\s*|note\s*:\s*)?{_WISH}{_TAKEN_UP}(?P<rest>(?:[^.!?:;*]|(?<=\d)\.(?=\d))*)"
    rf"|(?:tip\s*:\s*(?:you\s+can\s+)?|you\s+can\s+)(?:to\s+(?:avoid|prevent|close)\s+(?:an?\s+|any\s+|the\s+)?{_HOLE}[a-z ]{{0,30}},\s*)?(?:you\s+can\s+)?pick\s+up\s+(?:an|one)\s+extra\s+(?:st|stitch)\b[a-z' ]{{0,50}}\s+and\s+(?:decrease\s+it\s+away|work\s+it\s+together|knit\s+it\s+together|k2tog)(?:\s+(?:in|on)\s+the\s+(?:next|following)\s+(?:rnd|round|row)|\s+with\s+(?:its|the)\s+neighbou?r(?:ing)?(?:\s+(?:st|stitch))?)*|(?:so\s+)?(?:do\s+)?make\s+(?:it|them|the\s+[a-z]+)\s+{_MORE}\s+if\s+you\s+(?:like|want|wish|prefer|feel\s+like\s+it)"
    rf"|(?:you\s+can\s+)?(?:add|knit|work)\s+(?:a\s+few|some)\s+(?:more|extra)\s+(?:plain\s+)?(?:rows|rounds|rnds)\s+(?:here\s+)?if\s+you\s+(?:like|want|wish|prefer)(?:\s+(?:it|an?)\s+{_MORE}(?:\s+[a-z]+)?)?",
    re.I,
)
_TWO: Final = regex(
    r"\b(?:then|otherwise|or\s+else|before|sizes?|versions?|style|instead|here\s+and|only|unless|else|(?:cast|bind)\s+off|skip|go\s+(?:on\s+)?to\s+(?:the\s+)?(?:next|section|part|step|page)|continue\s+(?:with|as|from)|as\s+(?:follows|for|given|before)|follow\w*|row\s+\d|leave\s+out|omit)\b"
    r"|(?:,\s*(?:and\s+)?|\band\s+)(?:knit|work|purl|cast|bind|turn|continue|join|place|slip|repeat|rep|pick|increase|decrease|inc|dec|[kp]\d*)\b(?!\s+it\s+(?:together|tog|away)\b)",
    re.I,
)
"""Words with which the sentence may say that the pattern itself goes one way or the other."""
_UNDONE: Final = regex(r"(?:pick\s+up|make|add)\b[^.]*\bextra\s+(?:st|stitch)\b(?![^.]*\b(?:together|decrease\s+it|k2tog)\b)", re.I)
"""A stitch picked up and not lost again: the counts of the pattern are without it."""


def tells_wish(sentence: str) -> bool:
    """Return whether a sentence says only what she may do if she wishes, and the pattern is knitted without it.

    Args:
        sentence: One sentence, made plain, without its full stop and without brackets around it.
    """
    match = _SAID.fullmatch(sentence)
    if match is None or _UNDONE.search(sentence):
        return False
    if match["rest"] is None:
        return True
    wish, rest = sentence[: match.start("rest")], match["rest"]
    return not _TWO.search(rest) and not re.search(r"\b(?:sizes?|versions?|style)\b", wish, re.I)
