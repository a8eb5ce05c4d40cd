"""Sentences of making up and of explaining, whatever they are about: said at their place, worth no stitches. No I/O.

A sentence is one of these only if its first words show it and none of its words could work a stitch, move one
or say how often: a seam is sewn on finished pieces, and what "this" forms or what "you will notice" was worked
before. What says how the knitting goes on ("the first stitch of every row is slipped", "this is the wrong
side", "if you have worked row 4, knit 2 rounds") is none of them and stays unread.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row
from stepper.project.rewording.synonym import BEGIN, Synonym

_E: Final = r"(?=[.!]|$)\s*(?:[.!]+|$)"
_WORKS: Final = (
    r"knit|knitting|purl|purling|k|p|[kp]\d\w*|yo|yon|yfwd|ssk|skp|sk2p|psso|m1\w*|kfb|pfb|sl|inc|incs?|dec|decs?|co|bo|pm|sm|rm|cn|"
    r"increas(?:e|ing)|decreas(?:e|ing)|repeat(?:ing|ed)?|rep|rnds?|rounds?|patt|cont(?:inu(?:e|ing))?|until|till|unless|"
    r"pick(?:ing|ed)?\s+up|markers?|change|changing|rejoin|rejoining|times|twice|thrice|once\s+more|again|as\s+for|same|"
    r"reversing|reversed|graft(?:ing)?|unravel\w*|undo|rip|transfer|return|holders?|hold|instead|"
    r"(?:bind|cast)(?:ing)?\s+(?:on|off)(?!\s+(?:edges?|sts|stitches|row)\b)|bound\s+off(?!\s+(?:edges?|sts|stitches)\b)"
)
"""Words that work stitches or say how the knitting goes on."""
_SEWN: Final = (
    rf"(?:(?!(?<![\w-])(?:{_WORKS}|rows?(?!\s+(?:ends?|edges?)\b)|(?:sts|stitches)\s+(?:on|onto|to)\b|\d+\s+(?:sts|stitches)|"
    r"work(?:ing)?(?!\s+(?:an?|in|through|from|loose)\b)|slip(?!-?\s?st)|place(?!\b(?:\s*[.,]|\s+(?:with|using|at|on)\b))|"
    r"needles?(?<!tapestry\sneedle)(?<!yarn\sneedle)(?<!sewing\sneedle)(?<!darning\sneedle)(?<!wool\sneedle)|join(?:ing)?\s+(?:in|for|yarn|wool|[A-Z]\b)"
    r"|(?:is|are)\s+(?:(?:then|now)\s+)?(?:worked|knit(?:ted)?|purled)|in\s+(?:garter|rib(?:bing)?|moss|seed|stockinette|stocking)"
    r"|other\s+(?:side|half|front|sleeve|sock|leg|piece)\s+(?:in|to)\b)(?![\w-]))[^.!?*:])*?"
)
"""Words of a sentence of making up, none of which works a stitch."""
_EDGES: Final = r"(?:(?:the|all|both|side|shoulder|sleeve|leg|back|front|underarm|crotch|toe|sole|heel|hood|collar|raglan|cent(?:er|re)|inner|inside|outer|and|&|,|cast-on|row|ends?|edges?)\s*)*"
_THINGS: Final = r"(?:cuffs?|brims?|hems?|collar|facings?|neckband|waistband|bands?|borders?|edge|edges|flaps?|lapels?|peak|earflaps?|top)"
_PIECES: Final = r"(?:buttons?|snaps?|hooks?|zips?|zippers?|eyes?|ears?|noses?|heads?|arms?|legs?|feet|tails?|wings?|pom-?\s?poms?|tassels?|fringes?|flowers?|bows?|straps?|handles?|ribbons?|cords?|ties|pockets?|elastic|lining|beads?|patches|hood|collar|sleeves?)\b"
_DECORATION: Final = r"(?:pom-?\s?poms?|tassels?|fringes?|twisted\s+cords?|braids?|plaits?|cords?|bows?)"
_HEADED: Final = (
    r"work|make|shape|rearrange|re-?arrange|divide|separate|decrease|increase|proceed|begin|start|form|place|set\s+up|"
    r"distribute|split|cont(?:inue)?|complete|finish|create|knit"
)
_QUIET: Final = (
    rf"(?:(?!(?<![\w-])(?:{_WORKS}|slip\w*|work\w*|turn\w*|join\w*|plac(?:e|ed|ing)|leave|leaving|remove\w*|break|cut|(?<!to\s)use|using|"
    r"rows?(?!\s+of\s+(?:holes|eyelets|bumps|loops|ridges|squares|chains)\b)|every|each|both|all|other|alternate|first|second|third|last|next|sizes?|not|never|only|half|double|"
    r"rs|ws|(?:right|wrong)[-\s]sides?|needles?|needle|yarns?|colou?rs?|charts?|in\s+the\s+round|flat|back\s+and\s+forth|sts|stitches|"
    r"one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|so|then|and\s+(?:then\s+)?(?:knit|purl|work))(?![\w-]))[a-z' ,;()-])*?"
)
"""Words that explain: none says what to do, how often, where or with what."""
_THIS: Final = (
    r"(?:this|that|it|(?:this|that|these|those|the|your)\s+(?:(?!(?:first|second|last|next|other|remaining|right|wrong|rs|ws)\b)[a-z'-]+\s+){0,3}?"
    r"(?:rows?|rounds?|rnds?|decreases?|increases?|edges?|stitch(?:es)?|sts|section|part|ridges?|loops?|holes?|eyelets?|yarn\s?overs?|flap|band|border|piece|shaping|turn|gap|cables?|ribbing|rib))"
)
_SHOWS: Final = (
    r"(?:(?:forms?|makes?|creates?|shapes?|completes?|finishes|gives?|produces?|results\s+in|helps?|prevents?|avoids?|ensures?|allows?|lets?|leans?|looks?|appears?|becomes?)(?![\w-])|"
    r"(?:is|are|be)\s+(?:(?:called|known\s+as|optional|important|normal|intentional|hidden|visible|decorative|neat|tidy|stretchy|loose|snug|tricky|easy|fiddly)(?![\w-])|"
    r"(?:now\s+|what\s+(?:will\s+)?(?:forms?|makes?|becomes?)\s+)?(?:the\s+|a\s+|an\s+|your\s+)(?=[a-z' -]*(?:neck|face|heel|toe|thumb|palm|hand|foot|instep|sole|brim|crown|cuff|hem|edging|border|band|tail|ear|ears|nose|head|body|tummy|arm|leg|gusset|flap|top|bottom|front|back|center|centre|fold\s?line|turning\s+ridge|waist|collar|pocket|hood|handle|strap|base)\b\s*(?:[.!]|$))))"
)
_ADVISED: Final = (
    r"(?:you\s+(?:would\s+|'d\s+)?(?:are\s+(?:not\s+sure|unsure|new\s+to|having|finding|worried)|find|have\s+(?:trouble|difficulty)|feel|prefer|wish|like|want|need)|you(?:'re|\s+are)\s+(?:not\s+sure|unsure|new\s+to|having)|"
    r"in\s+doubt|necessary|needed|desired|preferred|(?:the|your)\s+(?:gauge|tension|edge|edges|fabric|hat|fit|yarn|piece)\s+(?:is|are|feels?|looks?|seems?))"
)

EXPLAINED: tuple[Synonym, ...] = (
    # --- making up ---
    said_row(
        "sew|seam|stitch|stuff|embroider|press|steam|block|weave|darn|run in|pin |pins|attach|thread|insert|turn|fold|join|close|cut |lay |leave|rinse|wash|soak|trim|make|tie |knot|wrap|dry",
        rf"{BEGIN}(?P<said>(?:(?:finishing|making\s+up|to\s+make\s+up|to\s+finish|assembly|make\s+up|(?:(?:neck|front|button)?\s?bands?|collar|pockets|hood|neckband|armbands|edgings)\s*:)\s*[:.-]*\s*)?(?:(?:then|now|finally|lastly|next|also|carefully|gently|lightly|firmly|neatly|with\s+(?:right|wrong)\s+sides\s+(?:together|facing|out)|with\s+rs\s+together|using\s+(?:the\s+|a\s+|your\s+)?(?:long\s+|flat\s+|back\s?|mattress\s+|yarn\s+|matching\s+|[a-z]+\s+)?(?:tail|tails|ends?|seam|stitch|thread|yarn|tapestry\s+needle|needle)|with\s+(?:a\s+)?(?:tapestry|yarn|sewing)\s+needle)\s*(?:,\s*)?)*"
        rf"(?:(?:and\s+)?(?:sew|seam|oversew|overcast|whip-?\s?stitch|slip-?\s?stitch(?=\s+(?:the|in|to|down|hem|facing|edges?|seams?|into)\b)|stitch(?=\s+(?:the|on|up|to|down|in(?:to)?|together|ears?|arms?|legs?|head)\b)|stuff|embroider|press(?!\s+on)|steam|block|wet-?\s?block|weave\s+in|darn\s+in|run\s+in|pin|attach(?=\s+(?:the\s+|an?\s+|all\s+|\d+\s+|two\s+|small\s+|large\s+|safety\s+|[a-z]+-?shaped\s+)*{_PIECES})"
        rf"|thread\s+(?:the\s+)?(?:elastic|ribbon|cord|lace)|insert\s+(?:the\s+|a\s+)?(?:zip|zipper|elastic|cushion|pad|ribbon)|turn\s+(?:(?:down|up|back)\s+(?:the\s+)?{_THINGS}|(?:the\s+)?{_THINGS}\s+(?:up|down|back|over)|(?:it\s+|the\s+[a-z]+\s+|work\s+)?right\s+side\s+out)"
        rf"|fold(?=\s+(?:the\s+|in\b|it\b|over\b|along\b|down\b|{_THINGS}|[a-z]+\s+(?:in\s+half|over|along))|\s*,)|join(?=\s+{_EDGES}(?:seams?|edges|ends)\b)(?!\s+in\b)|close\s+(?:the\s+|any\s+|up\s+)*(?:opening|seams?|holes?|gaps?)|cut\s+(?:\d+|several|some|[a-z]+)\s+(?:strands|lengths|pieces)|lay\s+(?:it\s+|the\s+[a-z]+\s+|pieces\s+|out\s+)?flat|leave\s+(?:it\s+)?to\s+dry|dry\s+flat|rinse|hand-?\s?wash|wash|soak|trim"
        rf"|make\s+(?:an?\s+|the\s+|\d+\s+|two\s+|small\s+|large\s+)*{_DECORATION}|tie(?=\s+(?:the\s+|all\s+)*(?:loose\s+|yarn\s+)?(?:ends?|tails?|cords?|bows?|knots?|ribbons?|straps?)\b)|knot(?=\s+(?:the\s+)?(?:ends|tails|fringe)\b)))(?![\w-]){_SEWN}){_E}",
        "Turn right side out and stuff firmly.",
    ),
    # --- what was worked, and what will be seen ---
    said_row(
        "this |that |it |these |those |the |your ",
        rf"{BEGIN}(?P<said>{_THIS}\s+(?:(?:will|should|would|may|might|can|does|do)\s+)?(?:(?:now|also|just|simply|later|all)\s+)?{_SHOWS}{_QUIET}){_E}",
        "This decrease row shapes the brim.",
    ),
    said_row(
        "will form|form the|will be for|are for",
        rf"{BEGIN}(?P<said>(?:the|these|those)\s+(?:remaining\s+|other\s+|cent(?:er|re)\s+|held\s+|new\s+|cast-on\s+)?(?:sts|stitches)\s+(?:will\s+)?(?:form|be\s+for|are\s+for)\s+the\s+(?:(?:left|right|first|second)\s+)?(?:front|back|sole|instep|heel|toe|thumb|palm|hand|underarm|neck|shoulder|sleeve|collar|cuff|flap|strap|edge)){_E}",
        "The remaining stitches will form the back.",
    ),
    said_row(
        "you'll|you will|you should|you can|you may|you might|you now",
        rf"{BEGIN}(?P<said>(?:here\s+|now\s+|at\s+this\s+point\s*,?\s+)?you(?:'ll|\s+(?:will|should|can|may|might))?\s+(?:now\s+|also\s+|soon\s+|start\s+to\s+|be\s+able\s+to\s+)*(?:notice|see|feel|recogni[sz]e)(?![\w-]){_QUIET}){_E}",
        "You'll notice that the edge begins to curl.",
    ),
    said_row(
        "later|afterwards|when finishing|in finishing|making up",
        rf"{BEGIN}(?P<said>(?:these|those|the|this)\s+(?:[a-z'-]+\s+){{0,3}}?(?:sts|stitches|edges?|ends?|seams?|loops?|openings?|holes?|gaps?|tails?)\s+(?:will|can|may)\s+be\s+(?:picked\s+up|sewn(?:\s+(?:up|together|down))?|seamed|grafted|joined|used|closed(?:\s+up)?|woven\s+in|worked|trimmed|hidden)\s+(?:later(?:\s+on)?|afterwards|when\s+finishing|in\s+finishing|when\s+making\s+up)(?:\s+for\s+(?:the\s+)?[a-z]+(?:\s+[a-z]+)?)?){_E}",
        "These stitches will be picked up later for the thumb.",
    ),
    said_row(
        "instructions|directions|figures|numbers|changes",
        rf"{BEGIN}(?P<said>(?:the\s+)?(?:instructions|directions|figures|numbers|changes)\s+(?:are\s+(?:given|written)\s+)?(?:for|in)\s+[a-z ,'()-]*(?:sizes?|brackets|parentheses)[a-z ,'()-]*){_E}",
        "Changes for larger sizes are in parentheses.",
    ),
    # --- what stands above rows, and only names them ---
    said_row(
        "as foll",
        rf"^\s*(?P<said>(?:now\s+|then\s+|next\s*,?\s+)?(?:{_HEADED})(?![\w-])(?:(?!(?<![\w-])(?:rows?|rnds?|rounds?|every|each|both|while|same|times|twice|needles?|needle|change|changing|flat|back\s+and\s+forth|join\w*|turn(?!\s+heel)|turning|keeping|leaving|without|until|"
        r"using|with|rs|ws|(?:right|wrong)\s+sides?|reversing|then|only|not|hold|place(?!\s+for\b)|slip|pick\w*|bind|cast|ending|beginning|starting|at)(?![\w-]))[a-z' -])*?\bas\s+foll(?:ow)?s)\s*[:.]?\s*$",
        "Divide sts for body as follows:",
    ),
    said_row(
        "row:|rnd:|round:|row :|rnd :|round :|ing for|ing the",
        r"^\s*(?P<said>(?:(?:next|dec(?:rease)?|inc(?:rease)?|decreasing|increasing|set-?\s?up|foundation|dividing|joining|ribbing)\s+(?:row|rnd|round)|(?:decreasing|increasing|shaping)\s+(?:for\s+)?(?:the\s+)?(?:top|crown|toe|thumb|tip|gusset|yoke|sleeves?|neck|armholes?|heel|waist|hips?|shoulders?))\s*)\s*:\s*$",
        "Decreasing for the top:",
    ),
    # --- advice that chooses nothing ---
    said_row(
        "if you|if in doubt|if necessary|if needed|if desired|if preferred|if the|if your",
        rf"{BEGIN}(?P<said>if\s+{_ADVISED}(?![\w-]){_QUIET}(?:,\s*(?:just\s+)?(?:use\s+(?:an?\s+)?[a-z' -]*?cast[-\s]on(?:\s+method)?|check\s+your\s+(?:gauge|tension)|adjust\s+the\s+length|try\s+[a-z' -]+ing{_QUIET}))?){_E}",
        "If you're not sure what to use, we suggest a thumb cast-on.",
    ),
    said_row(
        "count your|measure",
        rf"{BEGIN}(?P<said>(?:count\s+your\s+(?:sts|stitches)\s+(?:to\s+be\s+sure|carefully|often|now|before\s+going\s+on)|(?:your|the)\s+(?:work|piece|knitting)\s+(?:should|will)\s+(?:now\s+)?measure\s+(?:about\s+|approx(?:imately)?\.?\s+)?\d[\d./½¼¾]*\s*(?:cm|in|inch|inches|\")(?:\s+(?:long|wide|across))?)){_E}",
        "Count your stitches to be sure.",
    ),
)  # fmt: skip
"""The rows, in the order tried."""
