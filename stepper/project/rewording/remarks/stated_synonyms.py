"""Counts, patterns and ends that a page states in a sentence, put into the words of a line. No I/O.

A count is checked wherever it stands: "When all the decreases are done, 20 sts remain for the shoulder" is the count
behind those decreases, and what it says besides is only told. A sum whose parts are told ("153 sts: 73 between each border
and the marker, …") is checked as a sum. "From 1st to 2nd row forms rib" names the rows of a pattern as "Rows 1-2 form rib"
does. A length "for a folded collar, or … for a single one" is taken as printed first, and the other is told. These are
tried only on lines that nothing else reads. Source: leaflets and pages of independent designers; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, ROUND, STS, N, Synonym, row

_S: Final = r"((?:^|[.!?]|;)\s*)"
_L: Final = r"\d[\d\s()\[\]{},:/.-]*"
_SHAPED: Final = r"(?:(?:raglan|neck|armhole|neckline|yoke|crown|toe|gusset|thumb|waist|sleeve|heel|back|front|v-neck)\s+)*(?:decreases?|decs?|increases?|incs?|shapings?|short\s+rows|decreasing|increasing)"
_DONE: Final = r"(?:(?:are|is|have\s+been|has\s+been|were)\s+)?(?:all\s+)?(?:done|complete|completed|finished|worked|made|over)"
_WHEN: Final = (
    rf"(?P<said>(?:when|once|after|as\s+soon\s+as)\s+(?:(?:you(?:'ve|\s+have)|we\s+have)\s+(?:finished|completed|worked|done|made)\s+)?(?:(?:all|both)\s+)?(?:of\s+)?(?:the\s+|these\s+|your\s+)?(?:sets\s+of\s+)?{_SHAPED}(?:\s+(?:and|or)\s+(?:the\s+)?{_SHAPED})?(?:\s+(?:at|on|for)\s+(?:the\s+)?(?:neck|armholes?|both\s+edges)(?:\s+and\s+(?:the\s+)?(?:neck|armholes?))?)?(?:\s+{_DONE})?"
    rf"|(?:all\s+)?(?:the\s+)?{_SHAPED}\s+(?:is|are)\s+(?:now\s+)?{_DONE}\s+and|(?:when|once)\s+the\s+last\s+(?:increase|decrease|inc|dec)\s+(?:row|round|rnd)\s+(?:is|has\s+been)\s+(?:done|worked|completed)|on\s+(?:completion|reaching\s+the\s+end)\s+of\s+(?:the|this|all)\s+{_SHAPED}|after\s+(?:working|finishing|completing)\s+(?:all\s+)?(?:the\s+|these\s+|those\s+)?{_SHAPED}|at\s+the\s+end(?:\s+of\s+(?:the|this|all\s+the)\s+(?:{_SHAPED}|section|part|yoke|row|round|rnd))?|after\s+(?:the|this)\s+last\s+(?:decrease|increase|dec|inc|shaping)?\s*(?:row|round|rnd)?)"
)
_LEAD: Final = (
    r"(?:(?:at\s+this\s+(?:stage|point)|by\s+now|by\s+this\s+point|now|then|so|here|finally|altogether|all\s+in\s+all|all\s+told|in\s+the\s+end|(?:you|we)(?:\s+(?:will|should|must|now|then|only|just)|'ll|'ve|'re)*\s+(?:have|be\s+left\s+with|end\s+up\s+with|are\s+left\s+with|count|get)|(?:(?:please\s+)?(?:double[-\s]check|check|make\s+sure)\s+(?:that\s+)?)?there(?:\s+(?:will|should|must|now|ought\s+to))*\s+(?:be|are)"
    r"|(?:(?:the|your)\s+)?(?:stitch\s+count|total(?:\s+number)?(?:\s+of\s+(?:sts|stitches))?|count|number\s+of\s+(?:sts|stitches))\s+(?:now\s+)?(?:is|should\s+(?:now\s+)?be|will\s+be|comes\s+to)|(?:this|that|which)\s+(?:gives|leaves|brings)(?:\s+(?:you|us|it|the\s+total))?(?:\s+(?:with|to))?|a\s+total\s+of|exactly|now|only)(?![\w-])\s*[,:]?\s*)+"
)
_LEFT: Final = r"(?:\s+(?:(?:will\s+)?(?:now\s+)?(?:rem(?:ain)?|be\s+left)|are\s+left|left|remaining|in\s+(?:all|total)|altogether|now|at\s+this\s+(?:point|stage)|in\s+hand|on\s+(?:the|your)?\s*needles?))*"
_FOR: Final = r"(?:\s+(?:for|on|at)\s+(?:the|your)\s+[a-z]+(?:\s+[a-z]+)?)?"
"""What a count is for. "70 sts on each piece" is no count of what is on the needles."""
_SAME: Final = r"(?P<said>(?:as\s+many|half(?:\s+of\s+them)?)\s+(?:for|on)\s+(?:the\s+)?[a-z]+\s+(?:as|and\s+half)\s+(?:for|on)\s+(?:the\s+)?[a-z]+|(?:and\s+|with\s+)?(?:the\s+same|an\s+equal)\s+number(?:\s+of\s+(?:sts|stitches))?\s+(?:for|on|in)\s+(?:(?:the|each|both)\s+)?[a-z]+(?:\s+(?:as|and)\s+(?:for\s+|on\s+)?(?:the\s+)?[a-z]+)?)"
_PIECE: Final = rf"(?:{_L}|one|a|an)?\s*(?:spine|cent(?:er|re)|edge|border|garter|steek|middle|marked|neck|axis)?\s*(?:{STS}\s*)?(?:\s*(?:between|in|on|at|to|for|each|either|both|every|the|side|sides|half|halves|of|edge|edges|border|borders|wing|wings|nearest|and|marker|markers|spine|cent(?:er|re)|band|bands|panel|panels|section|sections|beyond|before|after)(?![\w-]))*"
_NTH: Final = r"(\d+)(?:st|nd|rd|th)"
_WORN: Final = r"(?:an?|the|one\s+that\s+is|one)\s+(?:(?:folded|single|double|unfolded|doubled|turned-?\s?(?:up|down|over)?|short|long|deep|high|low|crew|roll|polo)\s*)+(?:collar|brim|cuff|neck|neckband|hem|band|hat|one)?"
_SEWN_IN: Final = r"(?:gather(?:ing)?\s+up|pull(?:ing)?|draw(?:ing)?|gather(?:ing)?|close|closing)\s+(?:it\s+|them\s+|up\s+)*(?:tight(?:ly)?|snug(?:ly)?|firmly|together|closed|up)(?:\s+to\s+close(?:\s+(?:the|any)\s+(?:hole|top|gap|opening|tip))?)?"

_GAINED: Final = r"(?:more|gained|added|extra)(?:\s+now)?\s*[)\]]?(?=\s*\.?\s*$)"
_LOST: Final = r"(?:gone|fewer|less|lost)(?:\s+now)?\s*[)\]]?(?=\s*\.?\s*$)"

STATED_FACTS: tuple[Synonym, ...] = (
    row("number|as many|half", rf"\b({N}\s+{STS}(?:\s+in\s+(?:all|total)|\s+altogether|\s+on\s+(?:the|your)\s+needles?)?)\s*[,:;(-]?\s+{_SAME}(?=\s*[.;)]|\s*$)", r"\1", "You should have 156 sts in total, and the same number of sts for the front as for the back.", spelt_out=True),
    row("when|once|after|at the end|soon as|finished|done|complete", rf"{_S}{_WHEN}\s*,?\s+(?:{_LEAD})?({N}\s+{STS}){_LEFT}{_FOR}(?=\s*[.;:)]|\s*$)", r"\1\3", "When all of the decreases are done, 20 sts remain for the shoulder.", spelt_out=True),
    row("when|once|after|at the end", rf"{_S}({N}\s+{STS}){_LEFT}\s+{_WHEN}(?=\s*[.;:)]|\s*$)", r"\1\2", "20 sts remain when all the decreases are done.", spelt_out=True),
    row("have|be |are |is |gives|leaves|brings|left with|count|total", rf"{_S}{_LEAD}({N}\s+{STS}){_LEFT}{_FOR}(?=\s*[.;:)]|\s*$)", r"\1\2", "There should now be 60 stitches on your needles."),
    row(":", rf"(^|(?<=[.!?]\s))\s*[(\[]?\s*({N}\s+{STS})(?:\s+in\s+(?:all|total))?\s*(?::|=|-\s)\s*(?P<said>{_PIECE}(?:\s*(?:,\s*and|,|\+|and)\s+{_PIECE})+)\s*[)\]]?(?=\s*\.?\s*[)\]]?\s*$)", r"\1\2", "(153 sts: 73 between each border and the marker, 1 spine st and 3 sts in each border)", spelt_out=True),
    row("should|now|are|be ", rf"{_S}({N}\s+{STS})\s+(?:should|will|must|are|should\s+be)(?:\s+(?:now|then|be))*\s+(?:left|remaining|on\s+(?:the|your)\s+needles?)(?:\s+(?:now|on\s+(?:the|your)\s+needles?))*(?=\s*[.;:)]|\s*$)", r"\1\2", "60 stitches should now be on the needle."),
    row("after ", rf"\b(after\s+(?:rnd|round|row)\s+\d+\b[^.;]*?\b{STS})\s*,\s+(?:and\s+)?(?=after\s+(?:rnd|round|row)\s+\d)", r"\1. ", "After round 20 there are 180 sts, after round 28 120 sts.", again=True),
    row("after ", rf"((?:^|[.;])\s*)after\s+(?:working\s+)?(?:(?:rnd|round|row)\s+(\d+)|(?:the\s+)?(\d+)(?:st|nd|rd|th)\s+(?:rnd|round|row))\s*[:,]?\s+(?:there\s+(?:are|will\s+be|should\s+be)\s+|you(?:'ll|\s+will|\s+should)?\s+have\s+)?({N}\s+{STS})(?:\s+on\s+(?:the|your)\s+needles?)?(?=\s*[.;)]|\s*$)", r"\1\4 after row \2\3", "After round 12: 160 sts."),
    row("decreased|lost|gone", rf"{_S}({N}\s+{STS})\s+(?:are|is|have\s+been|will\s+be)\s+(?:decreased|lost|gone|taken\s+away)\s+(?:per|in\s+this|on\s+this|(?:in\s+|on\s+)?each|(?:in\s+|on\s+)?every|with\s+(?:each|every))\s+(?:rnd|round|row)(?=\s*[.;)]|\s*$)", r"\1\2 decreased", "Repeat round 2 twice. Two sts are decreased per round."),
    row("increased|gained|added|made", rf"{_S}({N}\s+{STS})\s+(?:are|is|have\s+been|will\s+be)\s+(?:increased|gained|added|made)\s+(?:per|in\s+this|on\s+this|(?:in\s+|on\s+)?each|(?:in\s+|on\s+)?every|with\s+(?:each|every))\s+(?:rnd|round|row)(?=\s*[.;)]|\s*$)", r"\1\2 increased", "Repeat round 2 twice. Two sts are gained per round."),
    row("more|gained|added|extra", rf"^\s*[(\[]?\s*({N}\s+{STS})\s+{_GAINED}", r"\1 increased", "(2 sts more)"),
    row("more|gained|added|extra", rf"(?<=[\w)\]*.;!])\s*(?:-+\s*)?(?:[(\[]\s*|(?<=[.;!])\s+)({N}\s+{STS})\s+{_GAINED}", r". \1 increased", "Row 3: K1, m1, k to last st, m1, k1. (2 sts more)"),
    row("more", rf"(?<=[\w)\]*.;!])\s*[(\[]\s*({N})\s+more\s+({STS})\s*[)\]](?=\s*\.?\s*$)", r". \1 \2 increased", "Row 3: K1, m1, k to last st, m1, k1. (2 more sts)"),
    row("more", rf"^\s*[(\[]\s*({N})\s+more\s+({STS})\s*[)\]](?=\s*\.?\s*$)", r"\1 \2 increased", "(2 more sts)"),
    row("gone|fewer|less|lost", rf"^\s*[(\[]?\s*({N}\s+{STS})\s+{_LOST}", r"\1 decreased", "(2 sts gone)"),
    row("gone|fewer|less|lost", rf"(?<=[\w)\]*.;!])\s*(?:-+\s*)?(?:[(\[]\s*|(?<=[.;!])\s+)({N}\s+{STS})\s+{_LOST}", r". \1 decreased", "Row 3: K1, k2tog, k to last 3 sts, ssk, k1. (2 sts gone)"),
    row("form|set|establish", rf"{_S}(?:the\s+)?({N}\s+{ROUND})\s+(?:just\s+worked|you\s+have\s+just\s+worked)\s+(?=(?:form|set|establish)s?\s+(?:up\s+)?(?:the\s+)?(?:[a-z0-9, ]+\s+)?(?:patt(?:ern)?|rib(?:bing)?|sts|stitches|repeat)\b(?![^.]*\band\b))", r"\1These \2 ", "The 4 rows just worked form the pattern."),
    row("form", rf"(^\s*)(?:from\s+)?{_NTH}\s+(to|and)\s+{_NTH}\s+(rows?|rounds?|rnds?)\s+forms?\s+", r"\1Rows \2-\4 form ", "From 1st to 2nd row forms rib."),
    row("set", rf"{_S}((?:these|the\s+last|last)\s+{N}\s+{ROUND})\s+sets?\s+(?:up\s+)?(?:the\s+)?(?:sts|stitches|patt(?:ern)?)\s*[(:]\s*(?P<said>(?:{_L}\s*)?(?:(?:sts|stitches|in|with|at|and|of|each|both|the|rest|front|back|side|edge|edges|end|ends|either|border|borders|panel|rib|ribbing|st|moss|seed|garter|g|rev|stocking|stockinette|stitch|between|beyond|outside|markers|centre|center|middle|\d+)(?:\s*[,;.-]\s*|\s+|(?=[)\s]*\.?$)))+)\)?(?=\s*\.?\s*$)", r"\1\2 form the pattern", "These 2 rows set the sts (st st with g st border at each front edge).", spelt_out=True),
    row("set", rf"{_S}((?:these|the\s+last|last)\s+{N}\s+{ROUND})\s+sets?\s+(?:up\s+)?(?:the\s+)?(?:sts|stitches|pattern|patt)(?:\s+(?P<said>as\s+they\s+will\s+be\s+worked|as\s+it\s+will\s+be\s+worked|for\s+the\s+rest\s+of\s+the\s+[a-z]+))?(?=\s*\.?\s*$)", r"\1\2 form the pattern", "The last 2 rows set the stitches as they will be worked.", spelt_out=True),
    row(" for ", rf"\b((?:for|measures?|is)\s+(?:about\s+)?{LONG})\s*,?\s+(?P<said>for\s+{_WORN}\s*,?\s+or\s+(?:for\s+)?{LONG}\s*,?\s+for\s+{_WORN})(?=\s*[.]|\s*$)", r"\1", "Repeat rnd 1 until the brim measures 4\" for a folded brim or 2\" for a single one.", spelt_out=True),
    said_row_behind("safety pin|holder", r"\b((?:leave|place|slip)\s+(?:the\s+|these\s+)?(?:remaining\s+|rem\s+)?(?:sts|stitches)\s+on\s+(?:a\s+)?(?:safety\s+pin|(?:st(?:itch)?\s+)?holder))\s+and\s+(?P<said>(?:slip-?\s?stitch|sew|slipstitch)\s+(?:the\s+)?(?:button\s?)?(?:band|border|edging)\s+(?:neatly\s+)?(?:in(?:to)?\s+(?:place|position)|to\s+(?:the\s+)?[a-z]+\s+edge))(?=\s*\.?\s*$)", "Leave sts on a safety pin and slip stitch band neatly in place."),
    row("onto a|on to a|on a|into a", r"\bthread\s+(?:it|(?:the\s+)?(?:tail|end|yarn|wool))\s+(?:of\s+(?:yarn\s+)?[A-Z]+\s+)?(?:on\s?to|on|into|through)\s+an?\s+(?:(?:tapestry|darning|wool|yarn|blunt|sewing)\s+)*needle\s*(?:,\s*(?:and\s+)?(?:then\s+)?|\.\s+(?:then\s+)?|\s+and\s+(?:then\s+)?)(?:draw|run|pass|pull|thread|slip)\s+(?:it|the\s+(?:yarn|tail|needle))\s+(?=through\s)", "draw yarn ", "Thread the tail onto a tapestry needle, run it through the remaining sts and pull tight."),
    row("through", rf"\b(?:draw|run|pass|pull|thread)\s+(?:(?:the\s+)?(?:tail|end|yarn|wool)\s+)(?:of\s+(?:yarn\s+)?[A-Z]+\s+)?through\s+(?:all\s+)?(?:of\s+)?(?:the\s+|your\s+)?((?:(?:remaining|rem|last)\s+)?(?:{N}\s+)?{STS})(?:\s+(?:twice|two\s+times|once\s+or\s+twice))?\s*(?:,\s*(?:and\s+)?|\s+and\s+){_SEWN_IN}", r"draw yarn through \1, pull tight", "Thread the tail of A through the rem sts, pull snugly to close hole."),
    row("fasten|secure", rf"\b(?:draw|run|pass|pull|thread)\s+(?:the\s+)?(?:tail|end|yarn|wool)\s+through\s+(?:all\s+)?(?:of\s+)?(?:the\s+|your\s+)?((?:(?:remaining|rem|last)\s+)?(?:{N}\s+)?{STS})\s*,?\s+and\s+(?:fasten\s+off|secure)(?P<said>(?:\s+(?:well|securely|firmly|it|on\s+the\s+(?:inside|wrong\s+side|ws)))*)(?=\s*\.?\s*$)", r"draw yarn through \1, pull tight", "Draw the wool through the last stitches and fasten off on the inside.", spelt_out=True),
    said_row_behind("sew in|fasten|weave in|darn in", r"(\bpull\s+tight)\s*,?\s+(?:and\s+)?(?P<said>(?:fasten(?:\s+off)?|sew\s+in|weave\s+in|darn\s+in|secure)(?:\s+(?:it|the\s+(?:end|tail)|well|securely))*(?:\s+on\s+(?:the\s+)?(?:ws|wrong\s+side|inside))?)(?=\s*\.?\s*$)", "Draw yarn through rem sts, pull tight and fasten off on WS."),
    said_row_behind("leaving", rf"(\b(?:cut|break)\s+(?:off\s+)?(?:the\s+)?(?:yarn|wool|[A-Z]))\s*,?\s+(?P<said>leaving\s+(?:about\s+|approx(?:imately)?\s+)?{LONG}(?:\s+(?:tail|end|hanging|long))?)(?=\s*[.;]|\s*$)", "Cut the yarn, leaving about 12\"."),
    said_row("inside|wrong side", r"(?:(?<=^)|(?<=[.!?]))\s*(?P<said>take\s+the\s+(?:tail|end|yarn)\s+(?:through\s+)?to\s+the\s+(?:inside|wrong\s+side)\s+and\s+(?:fasten\s+off|weave\s+it\s+in))\s*(?:\.|$)", "Take the tail to the inside and fasten off."),
)  # fmt: skip
"""The rows, in the order tried."""
