"""Other wordings for how stitches are closed: bound off within a row and at its end, drawn up, grafted, and buttonholes. No I/O.

The stitch left on the right needle by a bind-off is the first of those worked behind it: "until there are 16 sts on
right needle after last BO" is 16 stitches, of which the first needs no more work. Source: the wording of patterns in
print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import CLOSED, CUT_YARN, LONG, OFF, ROUND, STS, N, Synonym, row

_BO: Final = rf"(?:{OFF}|bo|b\.o\.)"
_VERB: Final = r"(?:k|p|knit|purl|work|patt|rib|moss)"
_BOUND: Final = r"(?:(?:the\s+|last\s+|first\s+|previous\s+|these\s+)*(?:(?:cast|bound|bind)[-\s]off|bo|buttonhole|gap)(?:\s+(?:sts|stitches|st|edge))?)"
_ON_RIGHT: Final = r"on\s+(?:the\s+|your\s+)?(?:right(?:[-\s]hand)?|rh)\s+needle"
_YARN: Final = r"(?:yarn\s+)?(?-i:MC|CC\d?|[A-H])(?![\w'&/-])"
_OVER: Final = rf"(?:over|above|at|in|across|in\s+place\s+of)\s+(?:(?:the|each|every|all|those|these|of)\s+)*(?:(?:pair|group|set|lot)s?\s+of\s+)?(?:{N}\s+)?(?:(?:cast|bound|bind)[-\s]?off(?:s|\s+{STS})?|{STS}\s+(?:(?:that\s+were|you)\s+)?(?:cast|bound)\s+off|(?:buttonhole\s+)?(?:gap|hole|opening)s?|buttonholes?)(?:\s+(?:of|in|on)\s+(?:the\s+)?(?:previous|last)\s+{ROUND})?"
_OFF_FIRST: Final = rf"{_BO}\s+(?:(?:the|next|first)\s+)*{N}(?:\s+{STS})?[^,;:.]*?\s*[,;]\s*(?:and\s+|then\s+)*"
_SINCE: Final = rf"(?:after|from|since|beyond|past)\s+{_BOUND}"
_LOOPS: Final = r"(?:with|using|by)\s+(?:the\s+|an?\s+)?(?:backwards?|twisted|half-hitch|cable|knitted)[\s-](?:loops?|cast[\s-]?on)(?:\s+(?:cast[\s-]?on|method))?"
_FOR_PART: Final = r"(?:and\s+leave\s+(?:them\s+)?on\s+(?:the\s+)?needle\s+)?for\s+(?:the\s+)?(?:left\s+|right\s+|back\s+|front\s+)*(?:front|back|neck|sleeve|shoulder)"
_NAMED: Final = r"\(\s*(?:this\s+is\s+|for\s+)?(?:the\s+)?(?:left\s+|right\s+|back\s+|front\s+)*(?:front|back|neck|sleeve|shoulder)(?:\s+(?:sts|stitches))?\s*\)"
_SEEN: Final = rf"(?:as\s+(?:you\s+(?:meet|see|come\s+to)\s+(?:them|it)|they\s+(?:appear|face\s+you|come|show|present))|knitting\s+(?:the\s+)?knit(?:s|\s+{STS})?\s*(?:,|and|&)\s*(?:and\s+)?purling\s+(?:the\s+)?purl(?:s|\s+{STS})?)"
_THROUGH: Final = r"(?:thread|draw|pull|run|pass)"
_REST: Final = r"(?:rem(?:aining)?\.?|final|last)"
_THREE: Final = r"(?:an?\s+|the\s+)?(?:three|3)[-\s]needle\s+(?:(?:bind[-\s]?off|cast[-\s]?off|bo)(?:\s+(?:method|technique))?|method|technique)"
_TOGETHER: Final = r"(?:(?:with|place|holding)\s+)?(?:the\s+)?(?:rs|ws|(?:right|wrong)\s+sides?)\s+(?:(?:held|facing|of\s+(?:the\s+)?(?:work|fabric|pieces))\s+)*(?:together|(?:facing\s+)?(?:each\s+other|in|inwards?|out|outwards?))"
_KITCHENER: Final = r"(?P<said>(?:using|with|in|by)\s+(?:the\s+)?kitchener(?:\s+(?:stitch|st))?(?:\s+method)?(?:\s*\(\s*see\s+[^().;\d]*\))?)"

CLOSINGS: tuple[Synonym, ...] = (
    # --- within a row ---
    *(
        row("until", rf"{before}{verb}\s+until\s+(?:(?:there\s+are|you\s+have)\s+)?({N})(?:\s+(?:{STS}))?(?:\s+(?:are|lie))?(?:\s+(?:{_ON_RIGHT}|on\s+(?:the\s+|your\s+)?needle))?{behind}(?=\s*[,;.*)\]]|\s*$|\s+and\b)", words, example, again=True, spelt_out=True)
        for before, behind, examples in (
            (rf"((?:^|:)\s*(?:(?:on\s+)?(?:the\s+)?next\s+{ROUND}\s*(?:\([rw]s\))?\s*[:,]?\s*)?{_OFF_FIRST})", rf"(?:\s+{_SINCE})?(?:\s*,?\s+(?P<said>{_FOR_PART}|{_NAMED}))?", ("Next row: BO 8 sts, rib until there are 16 sts on the needle, k to end.", "Next row: BO 8 sts, work until there are 20 sts on the right-hand needle, BO 8 sts, work to end.")),
            (rf"(\b{_OFF_FIRST})", rf"(?:\s+{_SINCE}(?:\s*,?\s+(?P<said>{_FOR_PART}|{_NAMED}))?|\s*,?\s+(?P<told>{_FOR_PART}|{_NAMED}))".replace("?P<told>", "?:"), ("Next row: K8, BO 2 sts, rib until there are 6 sts on right needle (back), BO 2 sts, k to end.", "Next row: K6, k2tog, BO 8 sts, work until there are 20 sts on the right-hand needle for the back, BO 8 sts, work to end.")),
        )
        for verb, words, example in (
            (r"(k|p|knit|purl|rib|patt|moss)(?:\s+across(?:\s+(?:the\s+)?(?:front|back))?)?", r"\1\2 \3", examples[0]),
            (r"work(?:\s+in\s+(?:patt(?:ern)?|rib))?", r"\1work \2 sts in pattern", examples[1]),
        )
    ),
    row("until there|until you|until ", rf"\b({_VERB})\s+until\s+(?:there\s+are\s+|you\s+have\s+)({N})\s+{STS}\s+(?:{_ON_RIGHT}\s+)?(?:after|from|since|beyond)\s+{_BOUND}(?=\s*[,;.*(]|\s*$|\s+and\b|\s+for\b)", r"\1 \2", "K4, cast off 2, (k until there are 8 sts on right-hand needle after cast off, cast off 2) twice, k to end."),
    said_row_behind("st", rf"({{N}}(?:\s+{STS})?|marker)\s*\(\s*(?P<said>(?:(?:including|incl\.?|counting)\s+)?(?:the\s+)?(?:(?:one|1|last)\s+)?st(?:itch)?\s+(?:that\s+is\s+)?(?:(?:already|left|remaining|on|the|your|right|right-hand|rh|needle|after|from|last|{_BOUND})\s*)+(?:counts?\s+as\s+(?:the\s+)?(?:first|1st)(?:\s+st(?:itch)?)?(?:\s+of\s+(?:the\s+)?(?:front|back|sleeve|next\s+st(?:itche)?s))?|is\s+(?:included|counted|the\s+first\s+(?:of\s+them|st(?:itch)?)))?)\s*\)".replace("{N}", N), "Next round: BO 4 sts, k16 (including the st left after the bind off), BO 8 sts, k to end."),
    row("rem", rf"([,;]\s*(?:and\s+|then\s+)*){_BO}\s+(?:(?:all|the)\s+)*{_REST}\s+{STS}(?=\s*[.;]|\s*$)", r"\1bind off to end", "Next row: Bind off 8 sts, k until there are 16 sts on needle, bind off rem sts."),
    row("cent", rf"(\bbind\s+off\s+to\s+end\.\s*)(?:place|put|slip|leave)\s+(?:the\s+)?cent(?:er|re)\s+{STS}\s+on\s+(?:an?\s+|the\s+)?(?:st(?:itch)?\s+)?holder", r"\1Hold all sts", "Next row: Bind off 8 sts, k until there are 16 sts on needle, bind off rem sts. Place center sts on holder for neck."),
    said_row_behind("including|incl", rf"(\b{_VERB}\s*{N}(?:\s+{STS})?)\s*[(,]?\s*(?P<said>(?:including|incl\.?|counting)\s+(?:the\s+)?(?:one\s+|1\s+)?{STS}\s+(?:that\s+is\s+)?(?:already\s+|left\s+)*on\s+(?:the\s+)?(?:right(?:[-\s]hand)?\s+)?needle(?:\s+(?:after|from)\s+{_BOUND})?)\s*\)?", "Next row: K8, cast off 2 sts, k6 including st on needle after cast off, cast off 2 sts, k to end."),
    said_row_behind("armhole", rf"(^\s*(?:(?:on\s+)?(?:the\s+)?(?:next|foll(?:owing)?)\s+{ROUND}\s*[:,]?\s*|when\s+[^.;:,]*,\s*)?)(?P<said>{_BO}(?:\s+{N}\s+{STS}\s+(?:on|at|in)\s+(?:each|both)\s+sides?)?\s+for\s+(?:the\s+)?armholes?)\s*(?:as\s+foll(?:ow)?s|thus|like\s+this|this\s+way)?\s*:\s*(?={_BO}\s+{N})", "Next row: bind off for the armholes: bind off 4 sts, k to last 4 sts, bind off 4 sts."),
    row("it is", rf"\buntil\s+it\s+is\s+({N}\s+{STS})\s+left\b(?:\s+(?:on|in)\s+(?:the\s+)?(?:rnd|round|row)(?=\s*[,.;]))?", r"until \1 remain", "Next round: bind off 5 sts, knit until it is 5 sts left on the round, bind off 5 sts."),
    row("these", rf"(\b(?:until|last)\s+({N})\s+{STS}(?:\s+remain)?[^.;:,]*,\s*(?:and\s+)?)(?:{_BO})\s+(?:these|them)(?:\s+{STS})?(?=\s*[.;]|\s*$)", r"\1bind off \2 sts", "Next round: bind off 5 sts, knit until 5 sts remain, bind off these."),
    said_row_behind("side", r"(\bbefore\s+(?:the\s+)?(?:second\s+|other\s+|next\s+)?(?:marker\s+thread|marker|m))\s+(?P<said>(?:in|on|at)\s+(?:the\s+)?(?:right|left|other)\s+side)(?=\s*,)", "Next round: bind off 5 sts, knit until 5 sts remain before the marker in the right side, bind off 10 sts, k to end."),
    row("each p|each h", rf"(^\s*|[.]\s*)({N}\s+{STS})\s+(?:remain|rem|are\s+left)\s+(?:on|for)\s+each\s+(?:part|piece|half)(?=\s*\.?\s*$)", r"\1\2 each for front and back", "Next round: bind off 5 sts, k20, bind off 5 sts, k to end. 20 sts remain on each part."),
    # --- at the end ---
    row("work rib|work moss|work seed", r"\bwork\s+(rib|moss|seed)(?:\s+st(?:itch)?)?\s+as\s+(?:set|established|before)\s+(?=(?:for|until)\b)", r"work in \1 ", "Work 1 row in k1, p1 rib. Work rib as set for 6 rows."),
    row("cast off|bind off|bo ", rf"(^\s*|[.]\s*)({_BO}(?:\s+(?:all\s+|the\s+|{STS}\s*|loosely\s*)*)?(?:\s*(?:in|with)\s+(?:(?:moss|garter|seed)\s+st(?:itch)?|(?:k\d+,?\s*p\d+\s+)?rib(?:bing)?|patt(?:ern)?))?)\s+(?:in|with|using)\s+({_YARN}){CLOSED}", r"\1with \3, \2", "Cast off in moss st with CC."),
    row("knit over knit", rf"(\b{_BO}(?:\s+(?:all\s+{STS}|loosely))*)\s+(?:with\s+)?knit\s+over\s+knit{CLOSED}", r"\1 in pattern", "Bind off with knit over knit."),
    row("as you|as they|knitting the", rf"(\b{_BO}(?:\s+(?:all|the|rem(?:aining)?|{STS}|loosely))*)\s*,?\s+{_SEEN}{CLOSED}", r"\1 in pattern", "Bind off all sts as you meet them."),
    said_row_behind("larger|bigger", rf"(\b{_BO}\b[^.;:]*?)\s*,\s*(?P<said>using\s+an?\s+(?:larger|bigger)\s+needle(?:\s+(?:if\s+(?:necessary|needed|desired|required|you\s+(?:tend\s+to\s+)?bind\s+off\s+tightly)|to\s+do\s+so))?)(?=\s*[.;]|\s*$)", "Bind off loosely in rib, using a larger needle if necessary."),
    said_row_behind("incl", rf"(\b{_BO}\s+all\s+{STS})\s*,\s*(?P<said>incl(?:uding|\.)?\s+(?:the\s+)?steek(?:\s+{STS})?)\s*(?:,(?=\s*in\b)|(?=[.;]|$))", "Bind off all sts, incl. the steek, in pattern."),
    # --- shoulders, grafting, drawing up ---
    said_row_behind("inside out|right sides|rs", r"(^\s*|[.:]\s*)(?P<said>turn\s+(?:(?:the\s+)?(?:work|piece|body|garment|sweater|sock|it)\s+)?inside\s+out|(?:fold|hold|place|put)\s+(?:the\s+)?(?:(?:work|pieces?|body|garment|front\s+and\s+back)\s+)?with\s+(?:the\s+)?(?:rs|right\s+sides)\s+(?:facing(?:\s+(?:each\s+other|in(?:wards)?))?|together))(?:\s*[.,]\s*(?:and\s+)?|\s+and\s+)(?=(?:join|bind|cast|graft|close|work)\b)", "Turn the work inside out. Place the shoulder sts on two needles and bind off front and back together."),
    row("kitchener", r"(\bgraft\b[^.;:\d]*?)\s+(?:with|by|in)\s+(?:the\s+)?(?=kitchener\b)", r"\1 using ", "CO 20 sts. Graft the shoulder sts together with Kitchener stitch."),
    row("kitchener", rf"(^\s*|[.]\s*)(?:close|weave|join|sew)\s+(?:the\s+)?(?P<said>(?:toe|top|tip|opening|underarms?)(?:\s+together)?)\s+(?:with|using|in)\s+(?:the\s+)?kitchener(?:\s+(?:stitch|st))?(?:\s+over\s+(?:the\s+)?(?:rem(?:aining)?\s+)?({N})\s+{STS})?{CLOSED}", r"\1graft \3 sts", "CO 20 sts. Close the toe with Kitchener stitch over 20 sts.", spelt_out=True),
    row("graft", rf"(^\s*|[.]\s*)graft\s+(?P<said>(?:the\s+)?(?:{N}\s+)?(?:held\s+)?underarm\s+{STS}\s+(?:to|with)\s+(?:those|the\s+(?:{N}\s+)?(?:held\s+|underarm\s+)?{STS})\s+(?:of|on|at)\s+(?:the\s+)?(?:body|sleeves?|yoke)){CLOSED}", r"\1graft the underarm", "Graft the 8 underarm sts to those of the body.", spelt_out=True),
    row("onto|on to", r"(\b(?:onto|on\s+to)\s+(?:needle\s*|N)\d)\s*,?\s*and\s+(?=(?:put|slip|place|lay|arrange|graft)\b)", r"\1. ", "Knit the sts of N1 onto N4, and put N2 and N3 together on one needle. Cut the yarn and graft."),
    row("graft", rf"(^\s*|[.]\s*)(?P<said>(?:slip|put|place|move|divide|arrange|transfer|lay)\s+(?:(?:(?:the|instep|sole|palm|top|first|last|next|other|another|each|those|them|rem(?:aining)?|half|together|back|of|on|onto|to|and|over|held|parallel|a|spare|second|{STS}|needles?(?:\s*\d)?|N\d|dpns?)\b|{N})[\s,]*)+)(?<=[\s,])(?:and\s+)?(?:then\s+)?graft\b(?:\s+(?:them|these|(?:the\s+)?{STS}))?(?:\s+together)?(?=\s*[.;]|\s*$|\s+(?:using|with|in)\b)", r"\1graft the sts", "CO 16 sts. Slip the first 8 sts to one needle and the last 8 to another and graft them together.", spelt_out=True),
    row("graft", rf"(^\s*|[.]\s*)(?P<said>(?:slip|put|place|move|divide|arrange|transfer|lay)\s+(?:(?:(?:the|instep|sole|palm|top|first|last|next|other|another|each|those|them|rem(?:aining)?|half|together|back|of|on|onto|to|and|over|held|parallel|a|spare|second|{STS}|needles?(?:\s*\d)?|N\d|dpns?)\b|{N})[\s,]*)+)\s*[.;]\s*(?=(?:cut|break)\b[^.]*[.,]?\s*(?:and\s+)?graft\b)", r"\1", "Put N2 and N3 together on one needle. Cut the yarn and graft.", spelt_out=True),
    said_row_behind("graft", rf"(^\s*graft\s+(?:the\s+)?(?:rem(?:aining)?\s+)?(?:{N}\s+)?{STS})\s+(?P<said>(?:of|on|from)\s+(?:(?:each|both|the\s+two|the)\s+needles?|(?:the\s+)?(?:front|back|palm|instep|sole|top)\s+and\s+(?:the\s+)?(?:front|back|palm|instep|sole)))(?=\s+(?:together|using|with)\b|\s*[.;]|\s*$)", "Graft the remaining sts of each needle together."),
    row("kitchener", rf"\bgraft(?:\s+(?:tog(?:ether)?|closed|the|rem(?:aining)?|toe|top|all|live|tip|of|sts|stitches))*\s*,?\s+{_KITCHENER}(?=\s*[.;]|\s*$)", "graft the sts together", "CO 8 sts. Graft the toe with Kitchener stitch.", spelt_out=True),
    row("tail|length|end", rf"(\b{CUT_YARN})\s*,?\s+(?P<said>(?:with|leaving)\s+an?\s+(?:{LONG}\s+)?(?:(?:good|long)\s+)?(?:tail|end|length))\s*,?\s*(?=and\s+graft|thread|draw|pull|run|pass)", r"\1 ", "CO 8 sts. Cut the yarn with a 12 cm tail and graft the sts.", spelt_out=True),
    row("sets", rf"\bgraft\s+(?:the\s+|both\s+)?(?:two\s+)?sets(?:\s+of\s+(?:{N}\s+)?{STS})?\s+together", "graft the sts together", "CO 8 sts. Graft the two sets of sts together."),
    row("graft", rf"(\b{CUT_YARN})\s*,?\s*(?:and\s+)?(?=graft\b)", r"\1. ", "CO 8 sts. Cut the yarn and graft the sts."),
    said_row_behind("leav", rf"(\b{CUT_YARN})\s*,?\s+(?P<said>(?:but\s+|and\s+)?leav(?:e|ing)\s+(?:the\s+|all\s+)*{STS}\s+on\s+(?:the\s+)?needles?)(?=\s*[.;]|\s*$)", "Break yarn, leaving sts on the needle."),
    row("through", rf"\b({CUT_YARN}\s*,?\s*(?:and\s+)?{_THROUGH}\s+(?:it|the\s+(?:yarn|end|tail)))\s+through(?=\s*[,.;]|\s+and\b|\s*$)", r"\1 through remaining sts", "CO 8 sts. Cut the yarn, thread it through, pull tight."),
    row("double", rf"\b({_THROUGH}(?:\s+(?:it|the\s+(?:yarn|end|tail)))?)\s+(?P<said>double)\s+(?=through)", r"\1 ", "CO 8 sts. Cut the yarn, pull it double through the remaining sts.", spelt_out=True),
    row("through", rf"(^\s*|[.,]\s+)((?:{CUT_YARN}\s*(?:,\s*(?:and\s+)?|\s+and\s+))?{_THROUGH}\s+(?:(?:the\s+)?(?:yarn|wool|tail|end|it)\s+)?(?:twice\s+)?through\s+)(?:the\s+|all\s+)*{_REST}\s+({N})(?:\s+({STS}))?", r"\1\3 sts. \2remaining sts", "CO 8 sts. Cut the yarn and thread it through the final 8 sts."),
    row("draw up", rf"^(\s*)draw\s+up\s+(?:the\s+)?rem(?:aining)?\s+{STS}(?P<said>\s+with\s+an?\s+(?:double|doubled)\s+(?:thread|yarn|strand))?{CLOSED}", r"\1draw yarn through remaining sts", "Draw up the remaining stitches with a double thread.", spelt_out=True),
    row("leaving", rf"(\b{CUT_YARN})\s*,?\s+(?P<said>leaving\s+(?:an?\s+)?(?:about\s+|approx\.?\s+|roughly\s+)?{LONG}(?:\s+(?:tail|end|length))?)\s*,?\s*(?:and\s+)?(?=graft)", r"\1. ", "CO 8 sts. Cut the yarn, leaving about 30 cm, and graft.", spelt_out=True),
    row("graft", r"(^\s*|[.]\s*)graft\s+(?:the\s+|both\s+)?underarms(?=\s*[.;]|\s*$)", r"\1Graft the underarm", "Graft underarms."),
    row("both sets|sets of", rf"(^\s*|[.]\s*)(?P<said>{_TOGETHER}\s*(?:,|and)\s*)?(?:bind|cast)\s+off\s+(?:both|the\s+two)\s+sets\s+of\s+(?:{N}\s+)?(?:shoulder\s+)?{STS}\s+together\s*[(,]?\s*(?:(?:using|with|in)\s+)?{_THREE}\s*\)?{CLOSED}", r"\1join shoulders with 3-needle bind off", "With right sides together, bind off both sets of 20 sts together (3-needle bind-off).", spelt_out=True),
    row("close|by ", r"(^\s*|[.]\s*)(?P<said>close\s+(?:the\s+)?(?:(?:top|tip)\s+of\s+(?:the\s+)?)?(?:thumb|toe|top|tip|crown|hat|opening|mitten|finger))\s+by\s+(?:draw|pull|thread|runn?)ing\s+(?:the\s+)?(?:(?:yarn|tail|end)\s+)?(?=through\b)", r"\1draw the yarn ", "CO 8 sts. Close the thumb by drawing the yarn through the remaining 8 sts.", spelt_out=True),
    row("bind-off|cast-off|bind off|cast off", r"^\s*(?P<said>(?:(?:very|super)[-\s]+)?(?:stretchy|loose|elastic|sewn|tubular))\s+(?:bind|cast)[-\s]off\s*\.\s*$", "bind off all sts.", "Stretchy bind-off.", spelt_out=True),
    # --- buttonholes ---
    row("buttonhole", r"^\s*(?:now\s+)?(?:work|make)\s+(?:a|the|one|1)\s+buttonhole(?:\s+(?:as\s+foll(?:ow)?s|thus|like\s+this|over\s+the\s+next\s+rows?))?\s*:\s*", "Buttonhole row: ", "Work a buttonhole: k2, yo, k2tog, k to end."),
    row("rib to|patt to", r"\b(?:rib|patt)\s+to\s+(?=(?:the\s+)?(?:next\s+)?(?:cast|bound|bind)[-\s]?off\b|buttonhole)", "work in pattern to ", "Next row: Rib to bound-off sts, cast on 2 sts, rib to end."),
    row("casting on", rf"\b(casting\s+on\s+{N}(?:\s+{STS})?)\s+{_OVER}(?:\s*,?\s+(?P<said>{_LOOPS}))?(?=\s*[.;,]|\s*$)", r"\1 over each buttonhole", "Next row: Work in pattern, casting on 2 sts over each pair of bound-off sts.", spelt_out=True),
    row("cast on|co ", rf"^(\s*)(?:(?:on|in)\s+(?:the\s+)?)?(?:next|foll(?:owing)?|return)\s+(row|rnd|round)(\s*\([rw]s\))?\s*[,:]?\s*(?:(?:work|rib|patt|k|knit|p|purl)\s*,?\s*(?:and\s+)?)?(?:cast\s+on|co)\s+({N}(?:\s+{STS})?)\s+{_OVER}(?:\s*,?\s+(?P<said>{_LOOPS}))?{CLOSED}", r"\1next \2\3: work in pattern, casting on \4 over each buttonhole", "On the next row, cast on 2 sts over the bound-off sts.", spelt_out=True),
)  # fmt: skip
"""The rows, tried early, when lists stand in one form."""
