"""What a page of today tells the knitter beside the work: told at its place, worth no stitches. No I/O.

A sentence is such a comment if its words are of a few kinds that can be listed: how the garment is built ("The yoke
is worked from the top down"), what she sees or checks ("Make sure the right side is facing you"), a technique that
changes no stitch, sewing, praise. A word of shaping, of a pattern, of rows or of how often makes it none: then it may
change what is knitted, and is refused.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row
from stepper.project.rewording.synonym import BEGIN, STOP, N, Synonym, row

_IDLE: Final = (
    r"(?![^.!?]*\b(?:shap\w*|revers\w*|button\s?holes?|stripes?|chart\w*|pattern|patt|selvedge|selvage|edge\s+st\w*|continu\w*|instead|omit\w*|skip\w*|"
    r"start\w*|begin\w*(?!\s+of\s+(?:the\s+|each\s+)?(?:round|rnd))|finish\w*|end(?:s|ing)?|sizes?|cast\w*|bind\w*|bound|garter|stockinette|rib(?:bing)?|moss|seed|flat|decreas\w*|increas\w*|inch(?:es)?|cm)\b)"
)
"""A comment says none of these; "end" and "start" may be where a row ends."""
_WORKLESS: Final = (
    rf"{_IDLE}(?![^.!?]*\b(?:k|p|\d+|knit\w*|purl\w*|slip\w*|turn\w*|pick\w*|join\w*|hold|remove|place|inc|dec|m1|yo|k2tog|ssk|every|each|other|rows?|until|times|twice|again|only|"
    r"not|more|less|except|without|then)\b)"
)
"""A comment whose own words are allowed one by one ("a good time") says none of these besides."""
_PLAIN: Final = r"[a-z' ,()-]+?"
_PARTS: Final = (
    r"(?:jumpers?|sweaters?|pullovers?|cardigans?|garments?|bod(?:y|ies)|sleeves?|yokes?|fronts?|backs?|neck(?:band|line)?s?|collars?|cuffs?|shoulders?|panels?|pieces?|parts?|hems?|"
    r"hats?|brims?|crowns?|socks?|heels?|toes?|legs?|foot|feet|gussets?|thumbs?|hands?|fingers?|mittens?|mitts?|hoods?|pockets?|straps?|bands?|button\s?bands?|edgings?|borders?|armholes?|"
    r"shawls?|cowls?|scar(?:f|ves)|blankets?|skirts?|bodices?|tops?|bottoms?|sides?|hal(?:f|ves)|seams?|raglans?|underarms?|vests?|tanks?|dress(?:es)?)"
)
_BUILT: Final = (
    rf"(?:{_PARTS}|(?:the|these|those|they|it|its|this|a|an|your|all|and|or|of|to|at|on|in|by|for|with|into|onto|from|along|around|under|over|then|now|first|finally|lastly|later|afterwards|"
    r"left|right|upper|lower|both|two|three|main|same|separate(?:ly)?|together|flat|round|rnd|rows|back\s+and\s+forth|down|up|top[-\s]down|bottom[-\s]up|side\s+to\s+side|"
    r"one\s+piece|one|seamless(?:ly)?|seamed|sewn|end|beginning|joined|join(?:ing)?|worked|knitted|knit|made|completed?|finished|picked\s+up|divided|separated|split|begun|started|starting|attached|grafted|"
    r"is|are|will\s+be|were|be|will|sts|stitches|held|provisional|form|until))"
)
"""Words of which a sentence on how the garment is built is made; none says how many stitches, how often or how long."""

COMMENTS: tuple[Synonym, ...] = (
    row(
        "in the round|in rounds",
        rf"{BEGIN}(?:from\s+(?:here|now|this\s+point)(?:\s+on(?:wards?)?)?\s*,?\s+)(?:(?:all\s+rows\s+(?:are|will\s+be)|(?:the\s+)?(?:{_PARTS}|work|knitting)\s+is|everything\s+is|you(?:\s+will|'ll)?)\s+)(?:now\s+)?(?:work(?:ed|ing)?|knit(?:ted|ting)?)\s+in\s+(?:the\s+round|rounds){STOP}",
        "join in the round.",
        "From this point on the yoke is knitted in rounds.",
    ),
    row(
        "in the round|in rounds",
        rf"{BEGIN}(?:the|your)\s+(?:{_PARTS}|work|piece)\s+(?:is|are)\s+(?P<said>now\s+(?:worked|knit|knitted)\s+in\s+(?:the\s+round|rounds)(?:\s*,?\s+from\s+the\s+(?:bottom|top|hem|neck)\s+(?:up|down))?){STOP}",
        "join in the round.",
        "The body is now worked in the round from the bottom up.",
        spelt_out=True,
    ),
    said_row(
        "construction|built|worked|knit|made|joined|sewn|seamed|picked up|separate|divide",
        rf"{BEGIN}(?P<said>(?:the|these|they|this|your|it|all)\s+(?:(?!is\b|are\b|will\b){_BUILT}\s+){{0,5}}(?:is|are|will\s+be)\s+(?:then\s+|first\s+|now\s+|later\s+|finally\s+)?(?:joined|sewn|seamed|worked\s+separately|made\s+separately|knitted\s+separately|knit\s+separately|"
        rf"picked\s+up\s+(?:later|afterwards|at\s+the\s+end)|(?:worked|knit|knitted|made)\s+(?:last|first|later|afterwards|next|seamlessly|from\s+the\s+(?:top|bottom|hem|neck|cuff|yoke|toe|brim)(?:\s+(?:down|up))?|in\s+one\s+piece|from\s+(?:side\s+to\s+side|hem\s+to\s+\w+|cuff\s+to\s+\w+)))(?:\s*,?\s+{_BUILT})*){STOP}",
        "The sleeves are then joined to the body.",
    ),
    row(
        "you will|you'll|you now|we will|we'll|we now|now we|next we|next, we",
        rf"{BEGIN}{_IDLE}(?P<said>(?:(?:now|next|then|lastly|finally|first)\s*,?\s+)?(?:you|we)(?:(?:\s+will|'ll)(?:\s+now|\s+then|\s+next|\s+first|\s+later|\s+also)?|\s+(?:now|then|next))\s+(?:separate|divide|split|seam|sew|shape|form|create|make|finish|return|move|need|see|find|notice|have\s+finished)\s+{_PLAIN}){STOP}",
        "",
        "You will now separate the sleeves from the body.",
    ),
    said_row(
        "seam|sew|stitch",
        rf"{BEGIN}(?![^.!?]*\b(?:knit|purl|pick\w*|bind\w*|cast\w*|row|rows|rnd|rnds|work\w*|graft\w*|live|needle\s*tip|rep(?:eat)?)\b)(?P<said>(?:(?:now|then|lastly|finally|next|first)\s*,?\s+)?(?:(?:at|along|starting\s+(?:at|from)|beginning\s+(?:at|from)|using|with)\s+[^.!?;:]{{1,60}},\s+)?(?:(?:you|we)(?:\s+will|'ll|\s+can|\s+may|\s+should|\s+then)?\s+)?(?:seam|sew|stitch\s+(?=up|down|together))\b[^.!?;:]*){STOP}",
        "Along the shoulders, on both sides, sew a few stitches together.",
    ),
    row(
        "make sure|ensure|be sure|check|remember that|note",
        rf"{BEGIN}{_IDLE}(?P<said>(?:please\s+)?(?:make\s+sure|ensure|be\s+sure|check|remember|double[-\s]check)\s+(?:that\s+|again\s+)?(?:the|your|you|it|they|there|everything|all)\s+{_PLAIN}){STOP}",
        "",
        "Make sure the right side is facing you.",
    ),
    said_row(
        "try |good time|great time|good point|good moment",
        rf"{BEGIN}{_WORKLESS}(?P<said>(?:(?:now|this|here)\s+(?:is|would\s+be)\s+a\s+(?:good|great|perfect)\s+(?:time|point|moment|place)\s+to\s+(?:try|check|count|measure|weigh|block|wash|steam|take|admire|have)\b{_PLAIN}|try\s+(?:it|the\s+[a-z]+|your\s+[a-z]+|them)\s+on\b{_PLAIN})){STOP}",
        "Now is a good time to try it on and see whether the fit is right.",
    ),
    said_row(
        "it helps|helpful|i find|easiest|useful to",
        rf"{BEGIN}{_WORKLESS}(?P<said>(?:it\s+(?:really\s+|also\s+)?helps\s+to\s+(?:use|have|mark|count|keep|lay|pin)|you\s+(?:may|might|will)\s+find\s+it\s+(?:easier|helpful|useful|easiest)\s+to\s+(?:use|have|mark|count|keep|lay|pin))\s+{_PLAIN}(?:\s+for\s+the\s+beginning\s+of\s+the\s+(?:round|rnd))?){STOP}",
        "It helps to use a bright marker for the beginning of the round.",
    ),
    row(
        "use |technique|method|jogless|magic loop",
        rf"{BEGIN}{_IDLE}(?P<said>use\s+(?:the\s+|a\s+|your\s+(?:favou?rite\s+|preferred\s+)?)?(?:jogless\s+(?:join|stripe|stripes)|magic\s+loop|travelling\s+loop|spit[-\s]splice|russian\s+join|two\s+circulars?)(?:\s+(?:technique|method|join|trick))?(?:\s+(?:when|whenever|for|to|from|if|at)\s+{_PLAIN})?){STOP}",
        "",
        "Use a jogless join technique for the colours.",
    ),
    row(
        "if you are|if you're|if using|if working",
        rf"{BEGIN}{_IDLE}(?P<said>if\s+(?:you(?:\s+are|'re)\s+)?(?:using|working\s+with|knitting\s+with)\s+(?:dpns|(?:a\s+)?(?:circular|double[-\s]pointed|straight|long\s+circular)\s+needles?|magic\s+loop|two\s+circulars?)\s*,\s+(?:you\s+(?:can|may|might|will)\s+)?(?:use|need|arrange|want|find|pull|move|try)\s+{_PLAIN}){STOP}",
        "",
        "If you are using circular needles, use the magic loop technique from here.",
    ),
    said_row(
        "too few|no longer|too small|too tight|comfortably|not enough",
        rf"{BEGIN}(?P<said>(?:when|once|as\s+soon\s+as)\s+(?:there\s+are\s+(?:too\s+few|not\s+enough)\s+(?:sts|stitches)|the\s+(?:sts|stitches|circumference|work|hat|crown|sleeve)\s+(?:is|are|get|gets|become|becomes|do|does|no)\b[a-z' -]{{0,40}}?)(?:\s+to\s+(?:go|fit|reach|stretch)\s+[a-z ]{{1,40}})?\s*,\s+(?:change|switch|move)\s+to\s+(?:(?:your\s+|the\s+)?(?:dpns?|double[-\s]pointed\s+needles|magic\s+loop|(?:a\s+)?shorter\s+(?:circular|needle|cable)(?:\s+needle)?)(?:\s+or\s+|\s*,\s*)?)+){STOP}",
        "When there are too few sts to go round the needle, switch to dpns or magic loop.",
    ),
    said_row(
        "done|finished|congrat|well done|complete|halfway",
        rf"{BEGIN}(?P<said>(?:(?:congratulations|hooray|hurray|yay|great|phew|well\s+done|good\s+job)\s*[,!]\s*)?(?:(?:you(?:'ve|\s+have)\s+(?:now\s+)?(?:finished|completed)|you(?:'re|\s+are)\s+(?:now\s+)?(?:done|finished)\s+with)\s+(?:the|your)\s+(?:first\s+|second\s+|left\s+|right\s+)?{_PARTS}"
        rf"|(?:the|your)\s+(?:first\s+|second\s+|left\s+|right\s+)?(?:{_PARTS}|short\s+rows|shaping|hard\s+part)\s+(?:is|are)\s+(?:now\s+)?(?:done|finished|complete|completed))){STOP}",
        "Congratulations, the body is done!",
    ),
    row(
        "i ",
        rf"{BEGIN}(?P<said>I(?:'ve|'d|\s+have|\s+would)?\s+(?:also\s+|always\s+|usually\s+|normally\s+)?(?:use|used|made|chose|choose|worked|went|wanted|find|tried|recommend|suggest|love|like|prefer)\b{_PLAIN}){STOP}",
        "",
        "I used a stretchy method for this edge.",
    ),
    row(
        "watch|read|visit|look",
        rf"{BEGIN}{_IDLE}(?P<said>(?:please\s+)?(?:watch|visit|read|look\s+(?:up|at|closely))\s+(?:through\s+|over\s+)?(?:the|our|my|this|these|it|all|how)\b{_PLAIN}){STOP}",
        "",
        "Watch the video on our page if you are in doubt.",
    ),
    said_row(
        "at this point|by now|now the|now your",
        rf"{BEGIN}(?P<said>(?:at\s+this\s+point|by\s+now|now)\s*,?\s+(?:the|your)\s+(?:first\s+|second\s+|left\s+|right\s+)?(?:{_PARTS})\s+(?:is|are|should\s+be)\s+(?:done|ready|complete|completed|finished)){STOP}",
        "At this point the body is complete.",
    ),
    said_row(
        "we |you ",
        rf"{BEGIN}(?P<said>(?:now|next|then)\s*,?\s+(?:we|you)(?:\s+will|'ll)?\s+(?:work\s+on|make|start|begin|move\s+on\s+to|turn\s+to|continue\s+with)\s+(?:the|your)\s+(?:left\s+|right\s+|first\s+)?{_PARTS}){STOP}",
        "Now we work on the sleeves.",
    ),
    said_row(
        "careful|take care",
        rf"{BEGIN}{_IDLE}(?P<said>(?:be\s+careful|take\s+care)\s+not\s+to\s+(?:pull|twist|stretch|drop|split|tighten|work|knit)\s+(?:the\s+|your\s+|any\s+)?(?:yarn|floats|stitches|sts|edge|work|tension|cast-?on)?\s*(?:too\s+)?(?:tightly|tight|hard|loosely|loose)?(?:\s+(?:at|on|along|behind|across)\s+the\s+(?:back|wrong\s+side|edge|inside)(?:\s+of\s+the\s+work)?)?){STOP}",
        "Be careful not to pull the yarn too tightly at the back.",
    ),
    said_row(
        "is read|are read|divisible",
        rf"{BEGIN}(?P<said>(?:(?:the|this|all|your)\s+charts?\s+(?:is|are)\s+(?:always\s+)?read\s+from\s+(?:right\s+to\s+left|left\s+to\s+right|the\s+bottom(?:\s+up|\s+to\s+the\s+top)?)"
        rf"|(?:the|this|your)\s+(?:number|total)(?:\s+of\s+(?:sts|stitches))?\s+(?:is|should\s+be|must\s+be)\s+(?:divisible\s+by|a\s+multiple\s+of)\s+\d+)){STOP}",
        "The number of stitches is divisible by 8.",
    ),
    said_row(
        "chart",
        rf"{BEGIN}(?P<said>(?:the\s+)?chart\s+(?:repeats|is\s+(?:repeated|worked))\s+(?:twice|{N}\s+times)\s+(?:across|around|in|over|on)\s+(?:each|every|the)\s+(?:rnd|round|row)){STOP}",
        "Chart repeats twice across each rnd.",
    ),
    row(
        "on your|on the",
        rf"{BEGIN}{_IDLE}(?P<said>(?:the|your)\s+{_PLAIN}\s+should\s+(?:now\s+)?be\s+on\s+(?:your|the)\s+(?:left|right|left[-\s]hand|right[-\s]hand|working)\s+needle){STOP}",
        "",
        "The back - joined to its ball - should be on the left needle.",
    ),
    said_row(
        "all sizes",
        rf"{BEGIN}(?P<said>all\s+sizes\s*[:,]?\s+(?:continue|cont|proceed|work)\s+as\s+follows)\s*[:.]?\s*$",
        "All sizes: continue as follows.",
    ),
    said_row(
        "summary",
        r"^\s*(?P<said>summary|overview)\s*[:.]?\s*$",
        "Summary",
    ),
)
"""The rows, in the order tried."""
