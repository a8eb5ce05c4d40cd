"""Other wordings of pages that talk to the knitter: counts and repeats in the second person, "and so on". No I/O.

Most rows are for a bag of small words in any order ("you'll now end up with", "until you're back down to") around a
number that can be checked. A number of times without "more" or "in all" is left alone: it may count the rows already
worked or not. Source: blogs and newsletters of hobby knitters; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row
from stepper.project.rewording.synonym import LONG, ROUND, STS, N, Synonym, row

_COUNTED: Final = rf"{N}\s+{STS}"
_ADVERBS: Final = r"(?:\s+(?:now|then|finally|again|still|just|only|all))*"
_GETS: Final = r"(?:have(?:\s+got)?|get|see|be\s+(?:back|down|up)\s+(?:to|at)|be\s+left\s+with|end(?:\s+up)?\s+with)"
_IS_BACK: Final = rf"(?:'re|\s+are){_ADVERBS}\s+(?:(?:back|down|up)\s+(?:to|at)|at|left\s+with)"
_HAVING: Final = (
    rf"(?:(?:you|we)(?:(?:'ll|\s+will|\s+should|\s+must)?{_ADVERBS}\s+{_GETS}|(?:'ve|\s+have){_ADVERBS}\s+got|'ve{_ADVERBS}|{_IS_BACK})"
    r"|there(?:'s|'re|\s+are|\s+is|(?:'ll|\s+will|\s+should)\s+be)"
    r"|(?:that(?:'s|\s+is|\s+makes|\s+gives\s+you)|(?:that|this|which)\s+(?:leaves(?:\s+you(?:\s+with)?)?|(?:brings|takes)\s+(?:you|us)\s+(?:(?:back|down|up)\s+)?to(?:\s+the\s+full)?))"
    rf"|(?:back|down|up){_ADVERBS}\s+(?:to|at))(?:\s+(?:now|again|exactly))*"
)
"""Small words in front of a count: "you'll end up with", "that leaves you with"."""
_HERE: Final = r"(?:\s*,?\s+(?:now|again|altogether|all\s+together|in\s+(?:all|total)|total|at\s+this\s+point|on\s+(?:your|the)\s+needles?))*"
_BEHIND: Final = r"(?=\s*[.!)\]:]|\s*$|\s+for\s+(?:the|your)\s+[a-z]+\s*(?:[.!)]|$))"
_FIRST: Final = r"(?:(?:now|then|so|there|ok(?:ay)?|phew|good|great)\s*[,!]?\s+)*"

SPOKEN: tuple[Synonym, ...] = (
    row("count|check", rf"((?:^|[.!?]\s)\s*)(?P<said>(?:count|check)(?:\s+(?:again|now|here|your\s+{STS}|them|once\s+more))*)\s*[:,-]+\s*({N})(?:\s+{STS})?(?=\s*[.!]|\s*$)", r"\1\3 sts", "Row 5: K1, k2tog, k to end. Check: 19.", spelt_out=True),
    row("until|till|'til", r"\b(?:till|til)\b(?=\s+(?:you|there|the|it|your|\d))|'til\b", "until", "Keep going till you're down to 20 sts."),
    row(
        "so on|so forth",
        rf"(\*[^*]+\*[^.]*?\b{ROUND})\s*,?\s*and\s+so\s+(?:on|forth)\s*,?\s*(?:always\s+|each\s+time\s+)?(?:with\s+(?:one|1)\s+(?:stitch|st)\s+(?:less|fewer)\s+(?:between|before)\s+(?:the\s+)?dec(?:rease)?s?(?:\s+(?:each|every)\s+(?:time|round|rnd))?\s*,?\s*)?(?=until\b)",
        r"\1. Continue in this manner ",
        "*K6, k2tog* around, knit one round, *k5, k2tog* around, knit one round, and so on until 10 sts are left.",
    ),
    row(
        "one r|1 r|two r|2 r",
        rf"(\*[^*.]+\*(?:\s+(?:all\s+the\s+way\s+)?(?:a?round|to\s+(?:the\s+)?end))?)\s*,\s*(?:then\s+)?((?:knit|purl)\s+(?:one|1|two|2)\s+{ROUND})(?:\s*,\s*(?:then\s+|and\s+)*(?=\*)|(?=\.))",
        r"\1. \2. ",
        "*K6, k2tog* around, knit one round, *k5, k2tog* around.",
        again=True,
    ),
    row(
        "new st|extra st|more st|st",
        rf"((?:^|[.!?])\s*){_FIRST}(?:that's|that\s+is|that\s+makes|this\s+makes|you(?:'ve|\s+have)(?:\s+(?:just|now))?\s+(?:added|made|increased))\s+({N})\s+(?:(?:new|extra|more)\s+{STS}|{STS}\s+(?:more|added|increased))(?=\s*[.!]|\s*$)",
        r"\1\2 sts increased",
        "Row 3: *K1, m1; rep from * 3 times, k to end. That's 3 new stitches.",
    ),
    row(
        "fewer|less|decreased|gone",
        rf"((?:^|[.!?])\s*){_FIRST}(?:that's|that\s+is|you(?:'ve|\s+have)(?:\s+(?:just|now))?)\s+({N})\s+(?:fewer\s+{STS}|{STS}\s+(?:fewer|less|decreased|gone))(?=\s*[.!]|\s*$)",
        r"\1\2 sts decreased",
        "Row 3: K1, k2tog, k to last 3 sts, ssk, k1. That's 2 stitches fewer.",
    ),
    row(
        "you|we|there|that|this|which|back|down|up",
        rf"((?:^|[.!?(\[])\s*){_FIRST}{_HAVING}\s+(?:a\s+total\s+of\s+|exactly\s+)?({_COUNTED})((?:\s+(?:left|remaining))?){_HERE}{_BEHIND}",
        r"\1\2\3",
        "Row 5: K1, k2tog, k to end. You'll see 19 stitches now.",
    ),
    row(
        "you|that|which|leaving you",
        rf"(?:\s*(?:,|-)\s*|\s+(?=and\s))(?:and\s+|so\s+(?:that\s+)?)?(?:now\s+|then\s+)?(?:{_HAVING}|leaving\s+you\s+with)\s+(?:a\s+total\s+of\s+)?({_COUNTED})((?:\s+(?:left|remaining))?){_HERE}(?=\s*[.!]|\s*$)",
        r". \1\2",
        "Row 5: K1, k2tog, k to end, and you'll see 19 stitches on your needle.",
    ),
    row(
        "until",
        rf"\b((?:knit|purl|work|k|p)\s+)until\s+(?:you(?:'re|'ve|\s+are|\s+have)(?:\s+(?:got|only|just))*|there(?:'s|\s+is|\s+are)(?:\s+(?:only|just))?|it's)\s+({_COUNTED})\s*(?:left\s+|remaining\s+|away\s+)?(before|from)\b",
        r"\1to \2 \3",
        "Row 3: Knit until there's 1 stitch left before the marker, kfb, slip marker, knit to end.",
    ),
    row(
        "until there's|until you",
        rf"\b((?:knit|purl|work|k|p)\s+)until\s+(?:you(?:'ve|\s+have)(?:\s+(?:got|only|just))*|there's(?:\s+(?:only|just))?)\s+({_COUNTED})\s+(?:left|remaining)(?=\s*[,;])",
        r"\1to last \2",
        "Row 3: K1, k2tog, knit until there's 1 stitch left, k1.",
    ),
    row(
        "until you|until there",
        rf"\buntil\s+(?:you(?:(?:'ll|\s+will)?{_ADVERBS}\s+{_GETS}|(?:'ve|\s+have){_ADVERBS}\s+got|'ve{_ADVERBS}|{_IS_BACK})|there're)\s+({_COUNTED})",
        r"until there are \1",
        "Keep going until you're down to 20 sts.",
    ),
    row(
        "do |work|repeat",
        rf"((?:^|[.!?;])\s*){_FIRST}(?:do|work|repeat)\s+(?:this|that|all\s+(?:of\s+)?this|these|it\s+all)(?:\s+again)?\s+(?=(?:for\s+)?(?:{N}\s+more\s+times|{N}\s+times\s+more|once\s+more|twice\s+more|{N}\s+times\s+(?:altogether|in\s+all|in\s+total))\s*(?:[.!,(]|$))",
        r"\1repeat ",
        "Do this 4 more times.",
    ),
    row("and ", r"^(\s*)and\s+(?:then\s+)?(?=(?:divide|join|place|knit|work|purl|spread|arrange|change|turn)\b)", r"\1", "and divide sts over four needles."),
    row("a r|a p|plain", r"\b(knit|purl|work)\s+(?:a|one)\s+(?:plain\s+|single\s+)?(round|rnd|row)\b(?=\s*[.,!]|\s*$|\s+and\b)", r"\1 1 \2", "Knit a plain round."),
    row("plain", rf"\b(knit|purl|work)\s+({N})\s+(?:more\s+)?plain\s+({ROUND})", r"\1 \2 \3", "Knit two plain rounds."),
    row("until you|until there's", r"\buntil\s+(?:you've(?:\s+got)?|there's)(?=\s+(?:about\s+|roughly\s+|around\s+)?\d)", "until you have", "Work in stockinette until you've got 20 cm."),
    row("it's", r"\buntil\s+it's\b(?=\s+(?:about\s+|roughly\s+|around\s+)?\d)", "until it is", "Knit every round until it's about 20 cm long."),
    row("turn ", r"\bturn\s+(?:the|your)\s+(?:work|knitting|piece|needles?)(?:\s+(?:a?round|over))?(?=\s*[.,;!]|\s*$|\s+and\s+(?:purl|knit|work)\b)", "turn", "Turn your knitting."),
    said_row(
        "pull",
        r"(?:(?<=^)|(?<=[.!?]))\s*(?P<said>(?:and\s+|now\s+|then\s+)?pull\s+(?:it\s+|them\s+|everything\s+|up\s+|together\s+|the\s+hole\s+)*(?:tight(?:ly)?|closed|snug(?:ly)?|firmly|up|together)(?:\s+to\s+close(?:\s+(?:the\s+)?(?:hole|top|gap|opening|toe|crown))?)?(?:\s+like\s+an?\s+[a-z ]{1,30})?)\s*(?:[.!]+|$)",
        "Break yarn and thread it through the sts. Pull tight.",
    ),
    row(
        "gap|hole|opening",
        rf"\bcast\s+on\s+({N})\s+(?:new\s+)?(?:ones|{STS})\s+(?P<said>(?:over|across|above|in|at)\s+(?:the|this)\s+(?:gap|hole|opening|thumb\s+opening|thumb\s+hole))\s+and\s+(?=(?:knit|k|purl|work)\b)",
        r"cast on \1 sts, ",
        "K5, hold 12 sts for thumb, cast on 12 new ones over the gap and k to end.",
        spelt_out=True,
    ),
    row(
        "gap|hole|opening",
        rf"\bcast\s+on\s+({N})\s+(?:new\s+)?(?:ones|{STS})\s+(?P<said>(?:over|across|above|in|at)\s+(?:the|this)\s+(?:gap|hole|opening|thumb\s+opening|thumb\s+hole))\b(?!\s+and\b)",
        r"cast on \1 sts",
        "K5, hold 12 sts for thumb, cast on 12 new ones over the gap, k to end.",
        spelt_out=True,
    ),
    row("as long as you", r"\b(?:is|are)\s+(?:just\s+)?as\s+long\s+as\s+you(?:'d)?\s+(?:want|like|need|wish|please|prefer)(?:\s+(?:it|them|yours))?(?:\s+to\s+be)?\b", "measures desired length", "Knit every round until the leg is as long as you want it to be."),
    row(
        "reaches|comes|covers",
        rf"\b(until\s+)(?:the\s+|your\s+)?([a-z]+)\s+(?P<said>(?:reaches|comes\s+(?:up\s+)?to|covers)\s+(?:the\s+)?(?:(?:tip|top|end|base|middle|bottom)\s+of\s+)?your\s+[a-z ]{{2,30}}?)\s*[,(]\s*(?:that's\s+|which\s+is\s+)?(?:about\s+|roughly\s+|around\s+|approx\.?\s+)?({LONG})(?:\s+or\s+so)?\s*\)?(?=\s*\.|\s*$)",
        r"\1\2 measures \4",
        "Knit every round until the thumb reaches the tip of your own thumb, 5 cm or so.",
        spelt_out=True,
    ),
    row("or so", rf"\b({LONG})\s+or\s+so(?=\s*[.,)]|\s*$|\s+(?:long|tall|from|above)\b)", r"about \1", "Knit until the thumb measures 5 cm or so."),
    row("your own", r"\byour\s+own\b(?=\s+(?:thumb|finger|little|middle|index|head|foot|hand|toe|wrist))", "your", "Work even until the thumb reaches the tip of your own thumb."),
    row(
        "then start|then begin|then do",
        r"(?:\s*,)?\s+(?:and\s+)?(?P<said>then\s+(?:start|begin)\s+(?:with\s+|on\s+)?(?:the|your)\s+(?:decreases|increases|decreasing|increasing|heel|toe|thumb|crown|top|shaping|body|foot|leg|edging|yoke))(?=\s*[.!:]|\s*$)",
        "",
        "Knit one more round and then start the decreases.",
        spelt_out=True,
    ),
    said_row(
        "change to|switch to|move to",
        r"(?:(?<=^)|(?<=[.!?]))\s*(?P<said>(?:(?:you(?:'ll|\s+will|\s+may|\s+might)?\s+)?(?:(?:have|need|want)\s+to\s+)?)?(?:change|switch|move)\s+to\s+(?:(?:the|your|a)\s+)?(?:set\s+of\s+)?(?:dpns?|double[-\s]?point(?:ed\s+needle)?s|magic\s+loop)\s+(?:when(?:ever)?|once|as\s+soon\s+as)\b(?![^.!]*\b(?:knit|purl|work|rep|repeat|then|and|dec\w*|inc\w*|next|rows?|until|k2tog)\b)[a-z' ,-]*)\s*(?:[.!]+|$)",
        "You will have to change to the double pointed needles when there aren't enough stitches to go around the needle any more.",
    ),
    said_row(
        "able to|can count|can see|should see|should count|'ll see",
        rf"(?:(?<=^)|(?<=[.!?]))\s*(?P<said>(?:now\s+)?you(?:'ll|\s+will|\s+should|\s+can)?\s+(?:now\s+)?(?:be\s+able\s+to\s+)?(?:count|see)\s+{N}\s+(?:[a-z]+\s+){{0,2}}(?:stitches|ridges|bumps|holes|loops|eyelets|chains)\s+(?:along|at|on|down|up)\s+(?:the|each|both)\s+(?:sides?|edges?))\s*(?:[.!]+|$)",
        "You should be able to count 15 long slipped stitches along the side.",
    ),
    row("to the end|to end", rf"(\*[^*]+\*)\s+(?:all\s+the\s+way\s+)?to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+|your\s+)?{ROUND})?(?=\s*[.,;(]|\s*$)", r"\1 to end", "Row 1: *Slip 1, knit 1* all the way to the end."),
    row("on each", rf"\s*(?:\(\s*|,\s+)({N})(?:\s+{STS})?\s+on\s+each(?:\s+(?:one|needle))?(?:\s*\))?(?=\s*\.|\s*$)", r". \1 sts on each needle", "Divide sts over four needles, 15 on each one."),
    row("the", rf"\b(knit|purl)\s+(?:all\s+)?(?:of\s+)?the\s+({N})\s+(?:heel\s+)?({STS})(?=\s*[.,;])", r"\1 \2 \3", "Knit the 18 heel stitches."),
    row(
        "like this|like that|this way|that way|doing this|doing that",
        rf"((?:^|[.!?;])\s*){_FIRST}(?:keep\s+(?:on\s+)?(?:going|working|knitting)|keep\s+(?:on\s+)?doing|carry\s+on|go\s+on)\s+(?:like\s+(?:this|that)|(?:in\s+)?(?:this|that)\s+way|(?<=doing\s)(?:this|that))\s*,?\s+(?=(?:working\s+1\s+st\s+less\b[^.]*,\s*)?until\b)",
        r"\1continue in this manner ",
        "Keep going like this until there are 26 sts.",
    ),
    row(
        "decrease|increase",
        rf"(?:\s*,)?\s+(?:and\s+)?then\s+(decreas|increas)e\s+(?:in\s+|on\s+)?every\s+({ROUND})\s+(?=until\b)",
        r". Continue \1ing in this manner every \2 ",
        "Keep doing this until 12 sts remain, and then decrease in every round until 8 sts remain.",
    ),
    row(
        "whole|everything|it all|your|thing",
        r"\buntil\s+(?:the\s+whole\s+(?:thing|lot|piece|work)|everything|it\s+all|your\s+(?:piece|work|knitting))\s+(measures|is)\b",
        r"until piece \1",
        "Knit until the whole thing measures 16 cm.",
    ),
    row("back and forth", r"\b(?:knit|work)\s+back\s+and\s+forth\s+(?=(?:for|until)\b)", "work even ", "Knit back and forth for another 13 cm."),
    row("you should|you must|you want to|you need to", r"((?:^|[.!?,])\s*)you\s+(?:should|must|want\s+to|need\s+to)\s+(?=(?:end|finish)\s+(?:with|on|after)\b)", r"\1", "You should end with a wrong side row."),
    row("take out|take off|take away", r"\btak(e|ing)\s+(?:out|off|away)\s+(?=(?:the\s+|all\s+(?:the\s+)?)?markers?\b)", r"remov\1 ", "Take out the markers as you come to them."),
    said_row(
        "needle",
        r"\s+(?P<said>(?:with|using)\s+(?:a|your|the)\s+(?:tapestry|darning|wool|yarn|sewing|blunt)\s+needle)(?=\s*[.,]|\s+and\b|\s*$)",
        "Graft the stitches with your tapestry needle.",
    ),
    row(
        "twice",
        rf"\b((?:pull|draw|thread|run|pass)\s+(?:it|(?:the\s+)?(?:yarn|tail|end))\s+)(through\s+(?:the\s+|all\s+(?:the\s+)?)?(?:(?:last|remaining|rem)\s+)?(?:{N}\s+)?(?:remaining\s+)?{STS})\s+twice\b",
        r"\1twice \2",
        "Pull the yarn through the remaining sts twice.",
    ),
    row(
        "then|now|next|first|so|after",
        r"((?:^|[.!?])\s*)(?:(?:ok(?:ay)?|and|now|then|next|first|so|finally|after\s+that|from\s+here|right|good)\s*,?\s+)+(?:(?:you|we)(?:'ll|\s+will|'re\s+going\s+to|\s+just|\s+simply|\s+need\s+to|\s+have\s+to)*\s+|let's\s+)?(?=(?:knit|purl|k2tog|ssk|\*|bind\s+off|cast\s+off|cast\s+on|pick\s+up|join|slip|place|put|turn|repeat|change|switch|cut|break)\b|\*)",
        r"\1",
        "Then k2tog all the way around, so that 10 stitches remain.",
    ),
)  # fmt: skip
"""The rows, in the order tried."""
