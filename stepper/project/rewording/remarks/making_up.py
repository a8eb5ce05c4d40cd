"""Tell an order for what is off the needles: seams, ends, buttons, washing. No I/O.

Theory of operation. Such a sentence begins with a verb of making up and the thing it is done to, and holds no word
with which anything may be on the needles after all (`_NOT_SEWN`): stitches that are live, a needle, a yarn that is
joined in, rows by number. What is marked on a finished piece ("Mark the positions for 6 buttons") is told with the
numbers it has. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.clauses.making import is_made_up
from stepper.regex import regex

_DONE: Final = r"(?:(?:when|once|after)\s+(?:completely\s+|quite\s+|thoroughly\s+)?(?:dry|dried|washed|washing|blocked|blocking|pressed|pressing|(?:it|they|everything|the\s+pieces?)\s+(?:is|are)\s+(?:completely\s+|quite\s+)?dry|all\s+(?:the\s+)?(?:knitting|seams)\s+(?:is|are)\s+done)\s*,\s*)?"
_ENDS: Final = r"(?:all\s+|any\s+|the\s+|loose\s+|yarn\s+|remaining\s+)*(?:ends?|tails?|threads?)"
TRIM: Final = r"(?:ribbons?|elastic|lining|zip(?:per)?|buttons?|cords?|tapes?|lace\s+edging|fabric|felt|cotton|thread|patch(?:es)?|press-?\s?studs?|snaps?|hooks?|beads?|pompoms?|pom-poms?|tassels?|fringes?|label|strap|handles?|pockets?)"
_SEAM: Final = r"(?:(?:the|both|all|left|right|first|second|side|shoulder|sleeve|back|front|underarm|raglans?|cent(?:er|re)|inner|outer|and|&|of|neckband|collar|button|bands?|row|ends?|edges?|seams?)(?:\s+|\s*,\s*|(?=\s*[.,]|\s*$)))+"
_MADE_UP: Final = (
    rf"trim\s+{_ENDS}|(?:fasten\s+off|fasten|weave(?:\s+in)?|darn(?:\s+in)?|run\s+in|sew\s+in|neaten|secure|knot)\s+(?:in\s+)?{_ENDS}|cut\s+(?:the\s+|a\s+)?(?:ribbon|elastic|cord|tape|lining|felt|fabric)|thread\s+(?:the\s+)?(?:ribbon|elastic|cord|tape|one\s+half|a\s+ribbon)|"
    rf"(?:attach|oversew|tack|baste|pin|glue|cover|stitch|catch\s+down)\s+(?:on\s+|down\s+)?(?:the\s+|an?\s+)?(?:[a-z]+\s+)?{TRIM}|line\s+the\s+[a-z]+\s+with|(?:re-?shape|steam|pat|pin\s+out|felt)\s+(?:the\s+|it\b|each\s+|gently\b|lightly\b|while\b|to\b)|"
    r"(?:dry|store)\s+(?:flat|away|in\s+the\s+shade|folded)|(?:block|press|wash|steam)\s+(?:the\s+|all\s+)?(?:pieces?|work|parts|garment)|(?:do\s+not|don't|never)\s+(?:press|iron|wring|tumble|bleach|steam|hang)|leave\s+(?:it\s+|them\s+)?(?:until|till)\s+(?:completely\s+|quite\s+)?dry|"
    rf"join\s+(?=[^.]*\b(?:raglans?|seams?|shoulder\s+and\s+(?:the\s+)?(?:neckband|collar))\b)(?!{_SEAM}in\b){_SEAM}(?=\s*(?:[.,]|$))|set\s+(?:the\s+)?sleeves\s+(?:in\b|into\b)|catch\s+down\s+the|using\s+an?\s+(?:flat|invisible|mattress|overcast|backstitch|narrow)\s+(?:seam|stitch)\s*,\s*(?:join|sew)\s+the\s+(?:pieces|edges|parts)|wind\s+the\s+remaining\s+(?:wool|yarn)|overlap\s+the\s+ends|slip-?\s?stitch\s+(?:the\s+|it\s+)|run\s+a\s+thread\s+through\s+the\s+(?:top|edge)(?!\s+(?:sts|stitches))|"
    r"match\s+(?:the\s+)?(?:stripes|patterns?|checks)\s+and\s+(?:sew|backstitch|seam|stitch)|backstitch\s+(?:the\s+|all\s+)|make\s+a\s+(?:small\s+|large\s+|big\s+)?(?:pompom|pom-pom|tassel)|"
    r"(?:wash|launder)\s+(?:by\s+hand|as|in|with|separately|warm|cool)|lay\s+the\s+[a-z]+\s+flat|keep\s+(?:a\s+little|some)\s+(?:of\s+the\s+)?(?:yarn|wool)\s+for\s+(?:mending|repairs)"
)
_L: Final = r"(?:[\d\u00bd\u00bc\u00be][\d\s()\[\]{},:/.\u00bd\u00bc\u00be-]*|two|three|four|five|six|seven|eight|nine|ten)"
_LONG: Final = r"(?:cms?\.?|mm|ins?\.?|inch(?:es)?|\"|'')"
_OPENINGS: Final = r"(?:small\s+|remaining\s+)?(?:openings?|holes?|gaps?)\s+(?:under|at|in)\s+(?:the\s+|each\s+)?(?:arms?|underarms?|armpits?)"
_ALSO: Final = (
    r"leave\s+an?\s+(?:long\s+)?(?:(?:yarn\s+)?tail|end|length\s+of\s+(?:yarn|wool))\s+(?:of\s+|about\s+)*[\d\u00bd\u00bc\u00be.,-]+\s*(?:cms?|mm|ins?|inch(?:es)?|\")(?:\s+long)?(?:\s+(?:for|to)\s+(?:sewing(?:\s+up)?|seaming|sew(?:\s+up)?|weave\s+in))?(?=\s*$)|"
    r"unpin\s+(?:it|them|the\s+[a-z]+)(?=\s*$)|finish\s+by\s+(?:sewing|weaving|pressing|blocking)\s+(?:on|in|down)?\s*(?:the\s+|all\s+|both\s+)?(?:buttons?|ends|seams?|ribbons?|pieces)(?=\s*$)|(?:roll|turn|fold)\s+the\s+(?:brim|cuffs?|collar|hem)\s+(?:up|back|over|down)\s+and\s+(?:tack|sew|stitch|catch|pin)|crochet\s+(?:an?\s+)?(?:chain|cord|edging)\s+(?:of\s+\d+\s*cm\s+)?for\s+(?:the|a)\s+(?:drawstring|tie|ties|loop|cord|hanger)(?=\s*$)|(?:dampen|moisten|wet|spray|mist)\s+(?:it|them|the\s+[a-z]+|all\s+pieces)(?![a-z])|turn\s+(?:the\s+)?(?:work|piece|garment|[a-z]+)\s+(?:inside|right\s+side)\s+out(?=\s+and\s+(?:weave|sew|press|darn|steam|fasten|stitch)\b)|close\s+(?:up\s+)?(?:the|any)\s+(?:small\s+|little\s+)?(?:gaps?|holes?)\s+(?:at|under|in)\s+(?:the\s+|each\s+)?(?:under)?arms?(?=\s*$)"
    r"|give\s+(?:it|them|(?:all\s+)?(?:the\s+)?(?:seams?|pieces?|work))?\s*(?:an?\s+)?(?:final|last|light|good|gentle|thorough)\s+(?:press(?:ing)?|steam(?:ing)?|soak|wash|blocking)|join\s+(?:the\s+)?(?:cast|bound)[-\s]off\s+(?:sts|stitches|edges)\s+(?:together\s+)?(?:at|under)\s+(?:the\s+|each\s+)?(?:under)?arms?(?=\s*$)|run\s+(?:an?\s+)?blocking\s+wires?\s+through|"
    rf"leave\s+(?:(?:it|them|everything)\s+)?(?:until|till|to)\s+(?:(?:it\s+is|it's|they\s+are|they're|everything\s+is)\s+)?(?:(?:bone|completely|quite|thoroughly)\s+)*dry|let\s+(?:it\s+|them\s+|everything\s+)?dry|(?:slip-?\s?)?stitch\s+(?:the\s+|both\s+|all\s+)?(?:button\s?)?(?:bands?|collar|hem|facings?|edging|pockets?|lining|flaps?)\s+(?:neatly\s+)?(?:in(?:to)?|to|down|round|around|on)\b"
    r"|join\s+(?:the\s+)?cast-?\s?on\s+and\s+(?:cast|bound|bind)-?\s?off\s+edges|cover\s+with\s+(?:an?\s+)?(?:clean\s*,?\s+)?(?:damp|wet)\s+(?:tea\s+)?(?:cloths?|towels?)|(?:lay|place|put)\s+(?:it|them|the\s+[a-z]+)\s+(?:between|under|on)\s+(?:two\s+|a\s+|some\s+)?(?:(?:damp|wet|dry|clean)\s+)+(?:tea\s+)?(?:towels?|cloths?)"
    r"|use\s+the\s+(?:(?:cast-on|beginning|yarn|long|first)\s+)?(?:tails?|ends?)(?:\s+at\s+the\s+base\s+of\s+the\s+thumb)?\s+to\s+(?:close|sew|mend|darn|neaten)\s+(?:up\s+)?(?:any\s+|the\s+)?(?:holes?|gaps?)|fold\s+(?:the\s+)?(?:collar|neckband|hem|brim|cuffs?)\s+(?:in\s+half\s+)?(?:to\s+the\s+(?:inside|wrong\s+side)|inwards)\s+and\s+(?:whip-?\s?stitch|slip-?\s?stitch|sew|catch)|(?:turn|fold)\s+(?:it|the\s+(?:collar|neckband|hem|band|brim|facing))\s+(?:over\s+)?(?:in\s+half\s+)?(?:to\s+the\s+(?:inside|wrong\s+side|ws)|inwards)\s+and\s+(?:whip-?\s?stitch|slip-?\s?stitch|sew|catch)"
    r"|(?:turn|fold)\s+(?:the\s+)?(?:brim|cuffs?|collar|hem)\s+(?:up|back|over|down)(?:\s+twice|\s+once)?(?=\s*$)|(?:take|bring|pull|thread|draw)\s+the\s+(?:tail|end)\s+(?:through\s+)?to\s+the\s+(?:inside|wrong\s+side|ws|back)(?:\s+and\s+(?:fasten\s+off|weave\s+(?:it\s+)?in|secure(?:\s+it)?|darn\s+(?:it\s+)?in))?(?=\s*$)|tie\s+it\s+on\s+(?:through|to|at)\s+the\s+(?:cent(?:er|re)\s+of\s+the\s+)?(?:crown|top)"
    rf"|make\s+an?\s+(?:small\s+|large\s+|big\s+)?(?:{_L}\s*-?\s*{_LONG}\s+)?(?:pompom|pom-pom|tassel)|cut\s+{_L}\s+(?:threads|strands|lengths)(?:\s+of\s+(?:yarn|wool))?\s+(?:of\s+|each\s+)?(?:about\s+)?{_L}\s*{_LONG}(?:\s+(?:each|long))?|pull\s+{_L}\s+(?:threads|strands|lengths)\s+(?:half-?\s?way\s+)?through|tie\s+an?\s+(?:knot|bow|double\s+knot)\b|gather\s+(?:up\s+)?the\s+top\s+of\s+(?:the\s+|each\s+)?sleeves?"
    rf"|stretch\s+(?:it|(?:the\s+)?(?:beret|tam|hat|scarf|shawl|piece|blanket|stole))\s+(?:over|on|out|according\s+to|to)\b|graft\s+(?:together\s+)?the\s+{_OPENINGS}|close\s+(?:up\s+)?(?:the\s+|any\s+){_OPENINGS}|mark\s+{_L}\s*{_LONG}\s+down\s+from\s+(?:the\s+)?shoulders?(?:\s+seams?)?(?:\s+on\s+(?:the\s+)?front\s+and\s+back)?\s*,?\s+(?:and|then)\s+(?:sew|set|stitch)"
    r"|pin\s+(?:it|them|the\s+[a-z]+)\s+out|squeeze\s+(?:out\s+(?:the\s+)?(?:water|moisture)|the\s+water\s+out)|roll\s+(?:it\s+|them\s+|the\s+[a-z]+\s+)?(?:up\s+)?in\s+an?\s+towel|thread\s+blocking\s+wires|see\s+(?:the\s+)?ball\s+bands?\s+for\s+(?:washing|care|pressing)|turn\s+the\s+(?:vest|jumper|sweater|cardigan|pullover|garment|tee|dress)\s+inside\s+out"
    rf"|the\s+[a-z]+\s+seams?\s+(?:may|can)\s+be\s+left\s+open|an?\s+(?:gentle|light|good)\s+(?:steam|press|soak|wash|blocking|steaming)\s+(?:will\s+)?(?:helps?|evens?|opens?|makes?|brings?)|line\s+the\s+[a-z]+\s+with\s+(?:cotton|felt|fabric|silk)"
)
"""More of it, each with the thing it is done to."""
_TOKEN: Final = (
    rf"(?:(?<!\d)(?:\d+(?:st|nd|rd|th)(?![a-z])|\d+(?:\.\d+)?(?:\s?[\u00bd\u00bc\u00be])?(?!\d)|[\u00bd\u00bc\u00be])|(?<![a-z])(?:{_LONG}|the|an?|at|on|in|of|from|to|be|is|come|comes|will|with|and|first|last|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|coming|one|others?|rem(?:ain(?:ing|der))?|evenly|spaced|apart|equally|between|these|this|that|same|"
    r"lower|upper|top|bottom|front|left|right|neck|neckband|hem|cast-?\s?on|edges?|edging|border|up|down|above|below|safety|pin|pins|start|beginning|centre|center|shaping|buttons?|buttonholes?|bands?|button|side|along|for|girl|boy|just)(?![a-z]))"
)
_MARKED: Final = (
    rf"(?:with\s+pins\s*,?\s*)?(?:mark|place\s+(?:markers?|pins))\s+(?:(?:the\s+|out\s+)?(?:positions?|places?)\s+)?(?:of|for)\s+(?:the\s+)?(?:{_L}\s*)?buttons?\b(?:[\s,;:()\[\]/-]*{_TOKEN})*[\s)\]]*"
)
"""Where buttons will sit, marked on a finished band."""
_LABEL: Final = (
    r"(?:(?:(?:front|button|buttonhole|left|right)\s+)?(?:neck)?(?:bands?|edgings?)|collar|sleeves?|pompom|cords?|ties|finishing|to\s+(?:finish|complete|make\s+up)|making\s+up|assembly|blocking|body|hood|pockets?|seams)\s*[:.]\s*"
)
_MAKING_UP: Final = regex(
    rf"(?:{_LABEL})?(?:(?:then|now|finally|lastly|gently|carefully|neatly)\s*,?\s+)?{_DONE}(?:(?:for\s+(?:an?|the)\s+(?:folded|doubled?|turned(?:-\s?(?:up|down|over))?)\s+(?:collar|neckband|hem|brim|cuff|band)|if\s+you(?:'re|\s+are)\s+(?:using|adding|making|having)\s+an?\s+(?:pompom|pom-pom|tassel|ribbon|lining))\s*,\s+)?(?:(?:with|using)\s+(?:the|an?|your|matching|some)\s+(?:[a-z-]+\s+){{0,3}}(?:tails?|ends?|thread|yarn|wool|needle|stitch|seam)\s*,\s+|for\s+(?:extra\s+)?[a-z]+\s*,\s+)?(?:gently\s+|carefully\s+|neatly\s+)?(?:(?P<marked>{_MARKED})|(?:{_MADE_UP}|{_ALSO})(?:(?<=\s)|(?![\w-]))(?P<sewn>.*))",
    re.IGNORECASE,
)
"""An order for what is off the needles."""
_TREATED: Final = regex(
    r"(?:the\s+|your\s+)?(?:(?:finished|knitted|whole|completed)\s+)?(?:garment|piece|pieces|work|jumper|sweater|pullover|cardigan|gansey|jacket|shawl|scarf|hat|mittens|gloves|socks|wool|lace|it|they)"
    r"\s+(?:should|must|may|can|is\s+to|are\s+to|needs?\s+to)\s+(?:then\s+|first\s+|always\s+|only\s+|never\s+|not\s+|best\s+)?be\s+(?=[^.]*\b(?:washed|dressed|blocked|pressed|ironed|steamed|soaked|dried|tumble)\b)"
    r"(?:(?:washed|dressed|blocked|pressed|ironed|steamed|stretched|pinned(?:\s+out)?|dried|soaked|rinsed|wrung|aired|tumble-?\s?dried|dry-?\s?cleaned|laid(?:\s+out)?|left|and|or|but|then|must|should|may|never|not|be|by|hand|on|a|an|the|to|its|in|into|with|under|over|while|when|still|wet|damp|dry|flat|board|frame|towels?|cloth|shape|size|measurements?|cool|cold|lukewarm|warm|hot|water|soap|suds|gently|lightly|carefully|only|very|out|away|from|sun|before|wearing|it|is|worn|sewing|up|making|given|schematic)(?:\s*,\s*|\s+|$))+",
    re.IGNORECASE,
)
"""What may or must be done to the finished piece, told of the piece."""
_HARMLESS: Final = regex(
    r"(?:at|along|on)\s+(?:the\s+)?(?:picot|purl|fold(?:ing)?|turning|eyelet|garter|marked)\s+(?:round|row|rnd|ridge|line)\b|(?:loosely\s+)?to\s+(?:the\s+)?first\s+(?:row|rnd|round)\s+of\s+(?:the\s+)?[a-z]+|\b(?:co|cast-on|cast\s+on)\s+edge|\bpurl\s+(?:ridges?|bumps?)|\b(?:until|till)\s+(?:(?:it(?:'s|\s+is)|they(?:'re|\s+are))\s+)?(?:(?:completely|quite|bone)\s+)?dry(?:\s+before\s+unpinning)?|\bbetween\s+(?:the\s+)?markers|\bcut\s+to\s+the\s+size\s+of\s+the\s+[a-z]+|\bto\s+size\b|\bso\s+you\s+can\s+take\s+it\s+off\s+(?:again\s+)?for\s+washing|\bthen\s+wear\s+(?:it|them)(?:\s+(?:until\s+the\s+(?:elbows|toes|heels)\s+go|often|proudly|a\s+lot))?",
    re.IGNORECASE,
)
"""Words of making up in which one that works a stitch stands for a place or a time."""
_OF_CLOTH: Final = regex(
    r"\b(?:omitting|avoiding|excluding|but\s+not|not)\s+(?:the\s+|any\s+|all\s+)?(?:rib(?:bed|bing|s)?|garter(?:\s+st(?:itch)?)?|cables?|borders?|moss(?:\s+st(?:itch)?)?|lace)(?:\s+(?:sections?|parts?|edges?|bands?))?\b"
    r"|\b(?:flatten|crush|stretch|scorch|spoil)(?:ing)?\s+(?:the\s+)?(?:patt(?:ern)?|rib(?:bing)?|cables?|texture|garter|lace)\b|\brows?\s+of\s+(?:eyelets|holes|stitching)\b|\b(?:all\s+(?:the\s+way\s+)?)round\b|\bround\s+(?=(?:the|each|all|your)\b)|\bturn\s+(?:through|inside\s+out|right\s+side\s+out)\b"
    r"|\b(?:until|till)\s+(?:it\s+is\s+|they\s+are\s+)?(?:really\s+|nearly\s+|almost\s+|only\s+just\s+)?(?:dry|damp|clean|cool|flat|smooth)\b|\bif\s+you\s+(?:like|wish|prefer)\b|\bback-?\s?stitch\b|\b(?:mattress|running|slip|whip|overcast|blanket|sewing|ladder)\s+stitch\b|\b(?:tapestry|darning|sewing|wool|blunt|yarn)\s+needle\b",
    re.IGNORECASE,
)
"""Words of the cloth in which one of the knitting stands."""
_NOT_SEWN: Final = regex(
    r"[*\[\]=]|(?<![\w'-])(?:[kp]\d*|sts?|\d+\s+(?:sts?|stitches|rows|rounds|rnds)|(?:rows?|rounds?|rnds?)(?!\s+ends?\b)|knit\w*|purl\w*|work(?:ed|ing|s)?|work(?=\s+(?:a|an|the|in|\d))|cast(?!-on)|bind|bound(?!-off)|pick\w*|inc(?!h)\w*|dec\w*|"
    r"repeat\w*|rep|graft\w*|crochet\w*|chains?|chain|needles?|held|holders?|loops?|stitches\s+(?:on|from|left|of)|(?:live|remaining|open|held|top|edge|last)\s+stitches|until|unless|every|instead|again|times|twice|other|same|i-?cord|second\s+piece|yarn\s+\w\b|hold\w*|"
    r"slip(?!-?\s?st|per)\w*|slipping|markers?|casting|continu\w*|cont|pass\w*|go|goes|going|begin\w*|start\w*|add\w*|mak(?:e|es|ing)|made|sizes?|versions?|as\s+(?:for|on|before|given|with)|(?:of|in)\s+(?:garter|stock\w*|moss|seed|rib\w*|pattern|plain)|plain|"
    r"colou?rs?|(?:an?|the|one|each|first|last|next|extra)\s+stitch|(?:on|to|over)\s+(?:the\s+)?(?:right\s+side\s+rows?|heel|toe|sleeve|body|front)(?=\s*$)|skip\w*|omit(?!ting\s+(?:the\s+)?rib)\w*|unravel\w*|undo\w*|rip\w*|"
    r"turn(?!\s+(?:to|right|inside|back|up|down)\b)|join(?:ing)?\s+(?:in|to|yarn|wool)|(?-i:MC|CC|[A-H]))(?![\w-])",
    re.IGNORECASE,
)
"""Words with which what is made up may be on the needles after all."""


def begins_making_up(words: str) -> bool:
    """Return whether a sentence begins as one of making up, whatever it goes on with.

    Args:
        words: One sentence, made plain, without its full stop.
    """
    if _TREATED.fullmatch(words):
        return True
    return _MAKING_UP.fullmatch(words) is not None or _is_all_of_cloth(words)


def makes_up(words: str) -> bool:
    """Return whether a sentence is of making up, and all of it is done off the needles.

    Args:
        words: One sentence, made plain, without its full stop.
    """
    if _TREATED.fullmatch(words):
        return True
    match = _MAKING_UP.fullmatch(words)
    if match is not None and (match["sewn"] is None or _NOT_SEWN.search(_HARMLESS.sub(" ", match["sewn"])) is None):
        return True
    return _is_all_of_cloth(words)


def _is_all_of_cloth(words: str) -> bool:
    """Return whether every clause is of making up, and none names what may be on the needles."""
    return is_made_up(words) and _NOT_SEWN.search(_OF_CLOTH.sub(" ", _HARMLESS.sub(" ", words))) is None
