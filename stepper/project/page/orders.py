"""Tell whether a sentence of a printed page instructs the knitter. No I/O.

Theory of operation. The code looks for signs, not meaning: the head of a row or round, stitches written as
abbreviations, stars and repeats, a verb of the craft beside a count, a sentence that begins with such a verb,
a count of stitches alone. If in doubt, a sentence is taken for an instruction: it then goes under a mark,
where the knitter sees it, and not among the text that is not knitted.
"""

from __future__ import annotations

import re

from stepper.project.grammar import abbreviations
from stepper.project.rewording.remarks.chart_reading import reads_otherwise
from stepper.regex import regex

LONGEST = 800
"""Most letters of a sentence that are looked at; no sentence of a printed page is longer."""
_COUNT = r"(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|twelve|each|every|all)"
_ORDINAL = r"(?:\d+(?:st|nd|rd|th)|first|second|third|fourth|fifth|sixth|seventh|eighth)"
_ROUND = r"(?:rows?|rnds?|rounds?)"
_ROW_HEAD = regex(
    r"^\W*(?:r|rd|rnd)\.?\s*\d+\s*(?:\([rw]s\)\s*)?[.:)]|"
    rf"^\W*(?:(?:short|dec|inc)[- ]?)?{_ROUND}\b\.?\s*(?:\d|\([rw]s\)|[rw]s\b)|^\W*(?:rnds?|rows)\s+[a-z]"
    rf"|^\W*\d+\.\s*{_ROUND}\b|^\W*{_ORDINAL}(?:\W+(?:and|to|&"
    rf"|alt)?\W*{_ORDINAL})*\W+(?:and\s+(?:(?:all|every|each|foll\w*|alt\w*|other|even|odd|rs|ws"
    rf"|{_ORDINAL})\s+){{1,4}})?{_ROUND}\b"
    rf"|^\W*(?:next|foll\w*|all|every|each|last|rs|ws)\W+(?:[\w()&.]+\W+){{0,4}}?{_ROUND}\b"
    rf"|^\W*(?:[^\W\d][\w'-]*\W+){{1,4}}?{_ROUND}\s*(?:\([^)]*\)\s*)?(?:[:–—]|-\s)",
    re.I,
)
"""The head of a row or round: "Row 1 (RS)", "2nd rnd", "Next row", "Dec rnd:"."""
_STITCH = (
    rf"(?:[kp]\s?\d+(?:\s?tog)?(?:\s?tbl)?|\d+[kp]|{abbreviations()}|skpo|sk2po|s2kp2|psso|p2sso"
    r"|sl\s?\d+|[ct]\d[fblr]{1,2}|c\d\d?|tw\d\w?|cr\d\w?|w&t|\d/\d\s[rl]p?c)"
)
_WORKED = regex(
    rf"(?<![\w.]){_STITCH}(?![\w])|(?<![\w.])(?:pm|sm|rm|bo|co)(?=\s*[,;]|\s+\d)|(?<=[,;]\s)(?:pm|sm|rm"
    rf"|turn)\b",
    re.I,
)
"""Stitches written as abbreviations."""
_FRAGMENT = regex(
    rf"^[\s*(\[]*(?:{_STITCH}|[a-z]{{1,3}}\d{{1,2}}[a-z]{{0,3}})(?:[\s,;]+(?>{_STITCH}))*+[\s*)\]]*[.;]?$",
    re.I,
)
"""A row of nothing but stitches. A stitch once read is not read anew: a long row would take for ever."""
_REPEATED = regex(
    rf"\brep(?:eat)?\b\.?\s[^.]{{0,24}}?(?:\*|\b{_ROUND}\b|\bbetween\b|\bonce\b|\btwice\b|\btimes\b)"
    rf"|\*\s*rep\b",
    re.I,
)
_VERB = (
    r"(?:cast(?:s|ing)?[\s-]+(?:on|off)|(?:bind(?:s|ing)?|bound)[\s-]+off|knit(?:s|ted|ting)?|purl(?:s"
    r"|ed|ing)?"
    r"|work(?:s|ed|ing)?|repeat(?:s|ed|ing)?|rep|inc(?:rease(?:s|d)?|reasing)?|dec(?:rease(?:s|d)?|reasing)?"
    r"|slip(?:s|ped|ping)?|sl|pick(?:s|ed|ing)?(?:\s+and\s+knit)?\s+up|place|put|hold|graft|join|turn"
    r"|leave|skip|drop|wrap"
    r"|k|p|bo|co|rib|cont(?:inue)?|divide|transfer|return|pass|unravel|rip|remove)"
)
_COUNTED = regex(
    rf"(?<![\w'-])(?<!each )(?<!every )(?<!per )"
    rf"{_VERB}\b(?!\s*[:=])[^.!?]*?\b{_COUNT}\b[^.!?]{{0,40}}?\b(?:sts?|stitch(?:es)?"
    rf"|{_ROUND}|times|ridges|"
    rf"markers?)\b",
    re.I,
)
_LASTING = regex(
    rf"(?<![\w'-]){_VERB}\b[^.!?]*\b(?:until|for|to)\s+(?:[a-z' ]{{0,40}}?(?:measures?"
    rf"|is)\s+)?(?:about\s+)?\d[^.!?]*?(?:cms?|mm|in|inches|\"|″)(?!\w)"
    r"|\buntil\b[^.!?]*\b(?:measures?|rem(?:ains?)?|desired|long|length|sts|stitches)\b",
    re.I,
)
_EVERY = regex(
    rf"\b(?:inc|dec)(?:reas(?:e|es|ed|ing))?\b[^.!?]*\b(?:{_COUNT}|alt\w*|other)\b[^.!?]*\b(?:end|side"
    rf"|edge|{_ROUND}|needle)\b",
    re.I,
)
_SAID = regex(
    rf"\b\d+\s+(?:more\s+)?{_ROUND}\b|\b{_ROUND}\s+\d+\b|\b\d+\s+(?:inc(?!h)|dec)\w*\b|\bat\s+the\s+same\s+time\b"
    rf"|\b(?:{_ORDINAL}|every|each|other|alt\w*|next|last|foll\w*)\s+(?:(?:\d+|other|alt\w*|foll\w*"
    rf"|[rw]s)\s+)*{_ROUND}\b"
    r"|\b(?:two|three|four|five|six|\d+)\s+times\b|\btwice\b|\bonce\s+more\b|\brib(?:bing)?\s+\d"
    r"|\b\d\s?x\s?\d\s+rib"
    r"|\brem(?:ain(?:ing|s)?)?\s+(?:[a-z]+\s+)?(?:sts|stitches)\b|\b(?:sts"
    r"|stitches)\s+(?:that\s+)?(?:rem(?:ain)?|are\s+left)\b"
    r"|\b(?:to|before|after|past|until)\s+(?:the\s+)?(?:(?:next|first|second|last|third|end|side"
    r"|beg\w*)\s+)*(?:markers?|m)\b"
    r"|\breversing\b|\bto\s+match\b|\bsame\s+as\b|\bthe\s+same\.?$|:\s*as\s|\bwithout\s+shaping\b"
    r"|\bwork\s+(?:flat|even|straight|back)\b|\bending\s+(?:with|on|after)\b"
    r"|\bshape\s+(?:the|neck|crown|arm|should|top|toe|heel)|^\W*(?:all\s+sizes|.{1,24}\bonly)\s*:"
    r"|\b(?:chart|pattern)\s+\w+,\s*\d",
    re.I,
)
"""Words found only in instructions: rows by number, how often, how far, as another piece."""
_LEAD = (
    r"(?:(?:now|then|next|again|and|also|carefully|loosely|finally|when\s+ready|at\s+the\s+same\s+time)\W+"
    r"|(?:with|using|on|at|for|from|beg(?:inning)?|starting|after|when|once|to|in|leaving|holding"
    r"|before)\s(?:[^,.:]|\.\d){1,70}[,:]\s+)*"
)
_BEGINS = regex(
    rf"^\W*+(?:[^\W\d][^:.]{{0,40}}:\s+\W*+)?{_LEAD}(?:cast\s+(?:on|off)|bind\s+off|co|bo|knit|purl|work"
    rf"|rep(?:eat)?|inc(?:rease)?"
    r"|dec(?:rease)?|slip|sl|pick\s+up|pick\s+and|place|pm|sm|join|turn|break|cut|divide|separate"
    r"|cont(?:inue)?|change\s+to|rejoin|re-?attach"
    r"|hold|remove|wrap|graft|sew|weave|seam|press|block|k|p|put\s+(?:all|the|these|next|first|last|\d)"
    r"|leave\s+(?:all|the|these|rem|\d)"
    r"|make\s+(?:a|an|\d|one|two)\s*(?:buttonhole|bobble|loop|st\b|stitch|slip\s*knot|more\b)"
    r"|make\s+(?:\d|another|(?:a|the)\s+second|two|one\s+more)|thread\s+yarn|fold|slide|wind\s+yarn"
    r"|pass|insert|lay\s+aside|close|carry\s+on"
    r"|keep\s+(?:going|on|to)|go\s+on|take\s+up|do\s+not\s+(?:join|turn|break|cut)|leave|lift|proceed"
    r"|switch\s+to|return|transfer|fasten\s+off"
    r"|beg(?:in)?(?!\s+(?:by|reading|here)\b)|draw\s+(?:yarn|through|up)|complete\s+(?:as|to|in))"
    r"(?=[\s.,;:*(\[\d]|$)(?!\s*[:=])",
    re.I,
)
_DONE = r"(?:worked|knit(?:ted)?|purled|slipped|made|done|kept)"
_STANDING = regex(
    rf"\b(?:edge|selvedge|seam|border|first|last|outer(?:most)?)\s+(?:(?:and\s+)?[a-z]+\s+)?(?:sts?|stitch(?:es)?)\s+(?:is|are)\s+(?:[a-z]+\s+){{0,2}}?{_DONE}\b"
    rf"|\b(?:is|are)\s+(?:always|never)\s+{_DONE}|\b(?:is|are)\s+{_DONE}\s+(?:[a-z]+\s+){{0,4}}?(?:throughout|tbl|through\s+the\s+back|inside\s+out|on\s+(?:[rw]s|(?:right|wrong)[\s-]side)\s+rows)"
    rf"|\b(?:is|are)\s+(?:{_DONE}\s+)?(?:in|with|on|using)\s+(?:(?:the|a|an)\s+)?(?:(?-i:MC|CC\d?|[A-H])\b|colou?r\s+(?-i:[A-H]|\d)|contrast|main\s+colou?r|(?:small|larg)er\s+needles?|\d(?:[.,]\d+)?\s*mm|needles?\s+\d)"
    r"|\bsizes?\b[^.!?]*\b(?:omits?|leave\s+out|skips?)\b|\b(?:for|in)\s+(?:the\s+)?(?:sizes?|larger|smaller|largest|smallest)\b[^.,;!?]{0,24}\bonly\b"
    r"|\bpurl\s+side\s+(?:facing|out(?:side|ward)?|is\s+the\s+right)"
    rf"|\b{_ROUND}\b[^.!?]{{0,30}}?\b(?:not\s+(?:given|shown|written|printed|charted|numbered|drawn)|without\s+(?:a\s+)?numbers?)\b[^.!?]{{0,30}}?\b(?:knit(?:ted)?|purl(?:ed)?|worked)\b",
    re.I,
)
"""A rule for all that follows, told as a fact: "The edge stitches are knitted", "The hem is in A"."""
_CHANGE = (
    r"(?:(?:paired|raglan|neck|armhole|thumb|gusset|waist|single|double)\s+)?"
    r"(?:increas(?:es?|ings?)|decreas(?:es?|ings?))"
)
_TO_BE = r"(?:is|are|(?:should|must|shall)(?:\s+all)?\s+be)\s+(?:all\s+|always\s+)?"
_USES = (
    r"[^.!?]*\b(?:use[sd]?|using|takes?|choose|go|switch|change|prefer|needs?|(?:knit(?:ted)?|worked)\s+(?:on|with))\b)(?![^.!?]*\bif\s+(?:your?|it|the)\b)"
    r"(?![^.!?]*\b(?:get|obtain|reach|match|achieve)\b"
)
_RULED = regex(
    # how every stitch or change of a kind is worked
    rf"\b{_CHANGE}\s+{_TO_BE}(?:{_DONE}\s+)?(?:as|by|with|using|through|into|in\s+the|knitwise|purlwise|twisted|lifted|an?\s+|yarn[\s-]overs?|m1|kfb|make)"
    rf"|\b(?:all|every|each|any)\s+{_CHANGE}\s+{_TO_BE}(?!(?:at|on|in|along|beside|near|given|marked|shown)\b)"
    rf"|\b(?:sts?|stitch(?:es)?)\s+{_TO_BE}(?:slipped|{_DONE})\s+(?:[a-z]+\s+)?(?:purlwise|knitwise|as\s+if|as\s+to|with\s+(?:the\s+)?(?:yarn|wool)|tbl|through)"
    r"|\b(?:knit|purl|edge|slipped)\s+(?:sts?|stitch(?:es)?)\s+(?:is|are)\s+(?:all\s+|always\s+)?(?:twisted|crossed)"
    r"|\b(?:(?:always|never)\s+(?:slip|knit|purl|work|twist|make)|twist\s+(?:all|every|each|the)\s+(?:knit|purl))\b"
    r"|\bkeep(?:ing)?\s+(?:the\s+)?(?:[a-z\d]+\s+){0,5}?(?:sts?|stitch(?:es)?|edges?|selvedges?|borders?)\s+(?:[a-z]+\s+){0,5}?(?:in|knit|garter|throughout)\b"
    r"|\b(?:[rw]s|(?:right|wrong)[\s-]side|even|odd|plain)\s+(?:rows|rounds|rnds)\s+(?:is|are)\s+(?:all\s+|always\s+|simply\s+)?(?:knit|purl|worked\s+(?:in|as|plain))"
    r"|\b(?:use|work|make)\s+(?:[a-z-]+\s+){1,3}(?:increases|decreases)\b|\b(?:increases|decreases)\s+throughout\b|\bwhere(?:ver)?\s+(?:it|the\s+pattern|this\s+pattern)\s+(?:says|tells)\b"
    # how short rows are turned, unless it is as they are read anyway, and what counts
    r"|\bshort[\s-]rows?\s+(?:(?:is|are)\s+(?:turned|worked|made|done)\s+(?:as|by|with|using)\s+|:\s*)(?!(?:an?\s+|the\s+)?german\b)|\buse\s+(?:the\s+)?(?!german\b)(?:[a-z&-]+\s+){1,3}(?:for\s+(?:the\s+|all\s+)?)?short[\s-]rows?\b|\bwraps?\s+(?:is|are)\s+(?:not|never|always|picked|worked|knit)\b"
    r"|\b(?:sts?|stitch(?:es)?|overs?)\s+(?:[a-z]+\s+){0,4}?(?:is|are)\s+not\s+(?:counted|included)\b|\bcounts?\s+as\s+(?:one|two|three|\d)|\badd\s+(?:an?|one|two|three|\d+)\s+(?:[a-z]+\s+)?(?:sts?|stitch(?:es)?)\b"
    # by which cast-on or bind-off
    r"|^\W*(?:please\s+)?use\s+(?:an?|the|your|any)\s+[^.!?]{0,60}\b(?:cast(?:ing)?|bind(?:ing)?|bound)[\s-](?:on|off)\b"
    # on which needle a part is worked
    rf"|^(?={_USES})[^.!?]*\b(?:(?:small|larg|thick|thinn?|fin|bigg)(?:er|est)\s+(?:[a-z-]+\s+){{0,3}}needles?|needles?(?:\s+(?:size|that\s+is|[a-z]+))?\s+(?:[a-z\d]+\s+)?(?:(?:sizes?|mm)\s+)?(?:(?:small|larg|thick|thinn?|fin|bigg)er|down\b|up\b)"
    r"|(?:up|down)\s+(?:by\s+)?(?:an?|one|two|three|\d)?\s*needle)"
    rf"|^(?={_USES})(?=[^.!?]*\b(?:for|when|while)\b)[^!?]*?(?:\d\s*mm\s+(?:[a-z-]+\s+){{0,3}}needles?|needles?\s+(?:size|no\.?|number)\s*\d)",
    re.I,
)
"""A rule for all that follows, as an order or a fact: "Use larger needles for the cast-on"."""
_UNLESS = (
    r"(?:unless|except\s+where)\s+(?:otherwise\s+)?"
    r"(?:stated|told|instructed|noted|indicated|specified|given)(?:\s+otherwise)?"
)
_AS_READ = regex(
    rf"\W*(?:(?:please\s+)?note\s*[:-]\s*|{_UNLESS}\s*,\s*)?(?:(?:always\s+)?(?:work|slip)(?:\s+(?:all|every|each|the))?(?:\s+slipped)?(?:\s+(?:sts|stitch(?:es)?))?"
    r"|(?:all\s+)?(?:the\s+)?(?:slipped\s+)?(?:sts|stitches)\s+(?:are|should\s+be)\s+(?:always\s+)?(?:slipped|worked))"
    rf"\s+(?:purlwise|as\s+if\s+to\s+purl)(?:\s*,?\s*(?:{_UNLESS}|throughout))?\W*",
    re.I,
)
"""A rule that the rows are read by anyway: `sl` is slipped as if to purl."""
_STRANDS = regex(
    r"\b(?:held?|hold(?:ing)?|used?|using|taken?|yarns?|wool|strands?)\s+(?:(?:is|are|the|your|yarns?|wool|strands?|held|used|taken|worked|knitted)\s+)*(?:double(?!\s?-?\s*(?:knit|pointed|moss|seed|rib|dec|inc|crochet|st|wrap|thick|yarn))|doubled|tripled?|threefold|twofold)(?![\w-])"
    r"|\bdouble\s+(?:the|your|all)\s+(?:yarn|wool)\b|\bdoubled\s+(?:yarn|wool|thread)\b|(?-i:\b(?:MC|CC\d?|[A-H]))\s+(?:are\s+)?held\s+together\b|\bstrands?\s+of\b[^.!?]{0,60}\b(?:knit(?:ted)?|worked|used)\s+together\b|\bboth\s+(?:yarns|strands|threads)\s+at\s+once\b"
    r"|\b(?:strands?|yarns?|threads|ends|colou?rs)\s+(?:[^.!?;:]{0,50}?\s)?held\s+together\b|\bhold(?:ing)?\s+(?:[^.!?;:]{0,50}?\b)?(?:strands?|yarns?|threads|ends)\b[^.!?;:]{0,40}\btogether\b"
    r"|\b(?:two|three|2|3|both|double|triple)[\s-]+(?:strands?|threads|ends)\s+(?:of|held|throughout|together|at\s+once)\b|(?<!twist\s)(?<!twist\sthe\s)(?<!cross\sthe\s)(?<!cross\s)\b(?:two|2|both)\s+(?:strands?|yarns?|threads)\s+together\b|\b(?:double|triple)[\s-]stranded\b",
    re.I,
)
"""Words by which several strands are knitted as one."""
_MADE = regex(
    r"^\W*(?:[\w ]{1,30}:\s+)?(?:knit\s+(?:flat|from\s+the|in\s+one\s+piece|seamless\w*|sideways|top"
    r"|bottom|side)"
    r"|join\s+(?:us|the\s+(?:group|club|fun)|our)|work(?:\s+(?:gauge|begins|starts|is)|s?\s+(?:well"
    r"|best)))\b",
    re.I,
)
"""Prose that begins like an instruction: how the garment is made."""
_NUMBERED_ROW = regex(
    r"^\W*\d{1,2}[.)]?\s+(?:\(?(?:[rw]s|(?:right|wrong)\s+side)\)?\s*:?\s*)?(?:k|p|knit|purl)\s*(?:\d|back\b|across\b|all\b|to\b|\W*$)",
    re.I,
)
"""A row told with its bare number: "2 k back"."""
_ALONE = regex(
    r"^\W*\d[\d\s,:;()\[\]–-]*(?:body\s+|sleeve\s+)?(?:sts?|stitches)\b(?:\s+(?:rem\w*|left|on|the"
    r"|needles?|inc\w*|dec\w*|total|in|all|each|for|now|you|have|a|size))*\W*$",
    re.I,
)
"""A count of stitches on its own."""
_STITCHES = regex(
    r"(?<!\bmultiple of )\b\d+(?:\s*[(\[][^)\]]*[)\]])?\s*(?:sts|stitches)\b(?!\s*\+)", re.I
)
"""A number of stitches."""
_CASTS_ON = regex(
    rf"^\W*+(?:[^\W\d][^:.]{{0,40}}:\s+\W*+)?(?:{_LEAD}|(?:with|using|on)\s(?:[^.:]"
    rf"|\.\d){{1,70}}?\s)(?:(?:loosely|provisionally|now|and)\s+)?"
    r"(?:(?:cast\s+on|co|pick\s+up\s+and\s+(?:knit|k))\b(?!\s+(?:a|an|some|any)\s+(?:multiple|few"
    r"|swatch|odd|even|number))[^.]*?\d)",
    re.I,
)
_NEEDLE_FOR = regex(
    r"\b(?:needles?|circulars?|dpns?|mm)\b[^.!?;,]{0,40}(?:,[\d\s,.&and]+(?:cms?|in(?:ches)?|[\"\u2033\u201d]),?\s*)?(?:\bfor|[(\[:=\u2013-])"
    r"\s*(?:the\s+|all\s+|working\s+|knitting\s+)*(?P<part>rib(?:s|bing|bed)?|cuffs?|brims?|hems?|edg(?:es|ings?)|borders?|(?:neck|button|front|head)?-?bands?|collars?|welts?|cast(?:ing)?[\s-]on|bind(?:ing)?[\s-]off)\b",
    re.I,
)
_SIZE_NAME = (
    r"(?:\d?X{0,3}[SML]|\dX|\d(?:st|nd|rd|th)|(?:extra\s+)?(?:small|medium|large)(?:st|r|est)?|\d{1,2})"
)
_FOR_SOME = regex(
    rf"^\W*(?:\d\.\s+)?(?:for|in)\s+(?:the\s+)?(?:(?:larger|smaller|largest|smallest|first|last|other)\s+)?(?:(?:two|three|four|five)\s+)?sizes?\b[^.!?:;]{{0,40}}?[,:]?\s+(?:please\s+|just\s+)?(?:follow|use|take|read|omit|skip|leave\s+out|choose|make|start|begin|stop)\b(?!\s+(?:an?|the|whichever)\s+(?:(?:longer|shorter)\s|needle\s+(?:size\s+)?(?:that|which)\b))"
    rf"|^\W*[(\[]\s*{_SIZE_NAME}(?:\s*(?:,|&|/|and|or)\s*{_SIZE_NAME})*\s*(?:sizes?\s*)?(?:only\s*)?[)\]]\s*(?:please\s+)?(?:read|follow|use|take|omit|skip|work|knit|make|start|begin)\b",
    re.I,
)
"""An order for some sizes, in front of the pattern: "For size L follow the length of M"."""
_FORM_FOR = regex(
    r"\b(?:use|take|change\s+to|switch\s+to|work\s+on|knit\s+on)\s+(?:the\s+|your\s+|a\s+)?(?:(?:short(?:er)?|long(?:er)?|set\s+of)\s+)?(?P<form>dpns?|double[-\s]?point(?:ed|s)?(?:\s+needles?)?|magic\s+loop|straight\s+needles?|circular(?:\s+needle)?s?)"
    r"\s+(?:for|at|when\s+(?:working|knitting))\s+(?:the\s+|all\s+)*(?:crown|sleeves?|cuffs?|thumbs?|toes?|heels?|top|neck(?:band)?|collar|fingers?|tip)\b",
    re.I,
)
"""Needles of another form for a part: "Use DPNs for the crown"."""
_NEEDLE = regex(r"\b(?:needles?|circulars?|dpns?)\b|\d\s?mm\b|\bUS\s?\d", re.I)
_AGAINST = r"smaller|larger|bigger|finer|thicker|rib\w*|edging|band"
"""Words for a needle against another."""
_SIZED = regex(rf"\d\s?mm\b|\b(?:US|UK|no\.?|size)\s*\d|\b(?:{_AGAINST})\b", re.I)
"""A needle by its size, or against another."""
_BY_WORD = regex(rf"\b(?:{_AGAINST}|neckband|other|second|sizes?\s+(?:down|up))\b", re.I)
"""One by a word alone, the other of two as well."""
_SIZES = regex(
    r"(?P<mm>\d+(?:[.,]\d+)?)\s?mm\b|\b(?:US|UK|no\.?|sizes?)\s*(?:US\s*)?#?\s*(?P<number>\d+(?:[.,]\d+)?)",
    re.I,
)
"""The sizes of needles, to compare them."""
SWATCH = regex(r"\b(?:swatch|gauge|tension|square|sample|test)\b", re.I)
"""Words of a piece knitted only to measure, which is no garment."""


def _looked_at(sentence: str) -> str:
    """Return the words to look at, with a colon after a label such as "The body.—Cast on"."""
    return re.sub(r"\.\s?[–—]\s?", ": ", sentence[:LONGEST])


def has_row_head(sentence: str) -> bool:
    """Return whether a sentence begins with the head of a row or round."""
    return bool(_ROW_HEAD.match(_looked_at(sentence)))


def casts_on(sentence: str) -> bool:
    """Return whether a sentence begins the knitting by casting on or picking up a number of stitches."""
    return bool(_CASTS_ON.match(_looked_at(sentence)))


def holds_instruction(sentence: str) -> bool:
    """Return whether anything in a sentence is an instruction, or might be one.

    Args:
        sentence: A sentence of the page, or a row that does not end one.
    """
    sentence = _looked_at(sentence)
    if _AS_READ.fullmatch(sentence):
        return False
    if _MADE.match(sentence) and not _COUNTED.search(sentence):
        return False
    begins = has_row_head(sentence) or casts_on(sentence) or _BEGINS.match(sentence)
    signs = (
        *(_ALONE, _WORKED, _SAID, _REPEATED, _COUNTED, _LASTING, _EVERY, _STITCHES),
        *(_STANDING, _RULED, _STRANDS, _NUMBERED_ROW),
    )
    some = is_for_some_sizes(sentence) or reads_otherwise(sentence)
    return some or bool(begins) or any(sign.search(sentence) for sign in signs)


def holds_strands_together(sentence: str) -> bool:
    """Return whether a sentence tells that several strands of yarn are knitted as one: "held double"."""
    return bool(_STRANDS.search(sentence[:LONGEST]))


def gives_needle_for_part(sentence: str) -> bool:
    """Return whether an entry of a list gives a needle to a part: "3 mm needles for the ribbing"."""
    return bool(_NEEDLE_FOR.search(sentence[:LONGEST]))


def part_given_needle(sentence: str) -> str:
    """Return the part that a needle of a list is for, in its singular: `edge` of "3 mm for the edges"."""
    found = _NEEDLE_FOR.search(sentence[:LONGEST])
    return found["part"].lower().removesuffix("s").removesuffix("ing") if found is not None else ""


def takes_sized_needle(sentence: str) -> bool:
    """Return whether a sentence names a needle by its size, or against another: "with smaller needles"."""
    return bool(_SIZED.search(sentence[:LONGEST])) and bool(_NEEDLE.search(sentence[:LONGEST]))


def takes_given_needle(sentence: str, given: str) -> bool:
    """Return whether a sentence names the needle that a list gives to a part: by a size of it, or by a word.

    Args:
        sentence: A sentence of the pattern: "With 3 mm needles, cast on 80 sts".
        given: The entry of the list: "US 2.5 / 3 mm needles for the ribbing". Any needle, if without size.
    """
    if not _NEEDLE.search(sentence[:LONGEST]):
        return False
    sizes = _sizes_in(given)
    return not sizes or bool(_BY_WORD.search(sentence[:LONGEST])) or not sizes.isdisjoint(_sizes_in(sentence))


def _sizes_in(sentence: str) -> set[tuple[bool, float]]:
    """Return the sizes of needles in a sentence, each with whether it is in mm."""
    found = _SIZES.finditer(sentence[:LONGEST])
    return {(bool(one["mm"]), float((one["mm"] or one["number"]).replace(",", "."))) for one in found}


def is_for_some_sizes(sentence: str) -> bool:
    """Return whether a sentence orders something for some sizes: "For size L follow the length of M"."""
    return bool(_FOR_SOME.search(sentence[:LONGEST]))


def needles_for_part(sentence: str) -> str:
    """Return the first letter of the form of needles given to a part: `d` of "Use dpns for the crown"."""
    found = _FORM_FOR.search(sentence[:LONGEST])
    return found["form"][0].lower() if found is not None else ""


def takes_needle(sentence: str) -> bool:
    """Return whether a sentence orders something and names a needle: "With 3 mm needles cast on 80 sts"."""
    return bool(_NEEDLE.search(sentence[:LONGEST])) and is_order(sentence)


def is_order(sentence: str) -> bool:
    """Return whether a sentence begins like an instruction: with a head, or a verb of the craft."""
    sentence = _looked_at(sentence)
    if _MADE.match(sentence):
        return False
    return has_row_head(sentence) or casts_on(sentence) or bool(_BEGINS.match(sentence))


def is_fragment(sentence: str) -> bool:
    """Return whether a sentence, without its head, is only stitches: "P3.", "1st rnd: *C4B."."""
    bare = sentence
    if has_row_head(sentence):
        bare = re.split(r"[:–—]\s*|\)\s+|\brnd\.?\s+|\brow\.?\s+|\bround\.?\s+", sentence, maxsplit=1)[-1]
        bare = re.sub(r"^[:\s]+", "", bare)
    return bool(_FRAGMENT.match(bare))
