"""What continental pages tell the knitter beside the work, sentence by sentence. Told at its place, worth no stitches. No I/O.

Each row spells out its words: a sentence with any other is none of these, and is refused. What says in which rows, how
often or up to where something is worked is never a remark. Source: pattern pages of continental houses in English;
common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row
from stepper.project.rewording.synonym import BEGIN, LONG, STOP, STS, N, Synonym, row

_PART: Final = (
    r"(?:jumper|sweater|pullover|cardigan|jacket|garment|piece|work|body|sleeves?|yoke|fronts?|backs?|(?:front|back)\s+pieces?|neck|neckline|collar|hat|sock|"
    r"mitten|skirt|dress|vest|slipover|top|shawl|leg|foot|cuff|ear\s+flaps?|flaps?|hood|neck\s+warmer|parts?)"
)
_BUILT: Final = (
    rf"(?:{_PART}|(?:the|this|it|they|each|then|first|finally|both|2|two|and|is|are|as\s+one|worked|knitted|knit|divided|split|continued|joined|sewn|together|"
    r"in\s+the\s+round|in\s+(?:one\s+)?pieces?|back\s+and\s+forth|separately|in\s+sections|on|with|an?|short|long|circular|double[-\s]pointed|straight|needles?|dpns|"
    r"in\s+rounds|in\s+rows|underarms?|armholes?|one|from|at|to|for|between|around|below|mid(?:dle)?|centre|center|of|under|side|edge|top\s+down|bottom\s+up|bottom|down|up|downwards|upwards|inside|"
    r"onwards|before|after\s+which|while|placed?|put|thread|stitch\s+holders?|aside))"
)
"""Words of which a sentence on how the garment is built is made; none says how many stitches, how often or how long."""
_THREAD: Final = r"(?:(?:marker|marking)\s+threads?|threads?|markers?)"
_DOING: Final = r"(?:increasing|decreasing|working|sewing|measuring|dividing|the\s+(?:increases|decreases|assembly|shaping))"
_LATER: Final = (
    rf"(?:the\s+(?:{_THREAD})|(?:this|these)(?:\s+{_THREAD})?|it|they)\s+(?:is|are|will\s+be|should\s+be)\s+(?:used\s+)?(?:later\s+)?(?:used\s+)?(?:later\s+)?"
    rf"(?:for|when|to)\s+(?:{_DOING}|measur(?:e|ing)\s+(?:the\s+length\s+of\s+)?(?:the\s+)?{_PART})(?:\s+(?:later|(?:for|on|in|under|along|at)\s+(?:the\s+)?{_PART}))*(?:\s+later)?"
)
_YO: Final = r"(?:yarn\s*overs?|yos)"

CONTINENTAL_REMARKS: tuple[Synonym, ...] = (
    said_row("read", rf"{BEGIN}(?P<said>(?:please\s+)?read\s+(?:through\s+)?(?:the|this|all\s+of\s+the)\s+(?:whole\s+|entire\s+|next\s+|following\s+|complete\s+)*(?:sections?|paragraphs?|patterns?|explanations?|instructions)(?:\s+(?:carefully|below))?\s+before\s+(?:you\s+)?(?:continu(?:e|ing)|begin(?:ning)?|start(?:ing)?|knit(?:ting)?|work(?:ing)?)(?:\s+(?:to\s+)?(?:knit|work)|\s+on|\s+the\s+(?:piece|work|knitting))?){STOP}", "Read the whole section before you continue!"),
    said_row("gauge|tension", rf"{BEGIN}(?P<said>(?:(?:remember|maintain|keep|follow|check|mind)\s+(?:to\s+(?:keep|check|maintain|follow)\s+)?|be\s+careful\s+to\s+(?:keep|maintain)\s+|note\s+)(?:the|your)\s+(?:knitting\s+)?(?:gauge|tension)(?:\s+(?:all\s+the\s+time|throughout|along\s+the\s+way|as\s+you\s+go))?){STOP}", "Remember the gauge!"),
    said_row("round", rf"{BEGIN}(?P<said>(?:the|each)\s+rounds?\s+(?:starts?|begins?)\s+(?:at|in|on|mid|under)(?:\s+(?:the|of|mid|middle|centre|center|back|front|sides?|under|sleeve|arm|one|right|left|transition|between|and))*(?:\s+(?:back|front|side|foot|sleeve|arm|piece))?){STOP}", "The round begins at mid back."),
    said_row("measures|is approx|long", rf"{BEGIN}(?P<said>(?:the\s+)?(?!(?:piece|work)\b){_PART}\s+(?:now\s+)?measures?\s+(?:approx(?:\.|imately)?\s+|about\s+)?{LONG}(?:\s+(?:from|in)\s+(?:the\s+)?(?:[a-z]+(?:[\s-]+(?:of|the|mid|on|and|down|up|edge|front|back|shoulder|neck|side|sleeve|division|marker|thread|cast-on))*))?(?:\s+(?:down|downwards))?){STOP}", "The jumper measures approx. 54 cm from the shoulder down."),
    said_row("yarn over|yo", rf"{BEGIN}(?P<said>(?:then\s+)?on\s+the\s+next\s+(?:round|row)\s*,?\s+(?:(?:knit|work|purl)\s+(?:all\s+)?(?:the\s+)?{_YO}\s+twisted|(?:all\s+)?(?:the\s+)?{_YO}\s+(?:is|are)\s+(?:knitted|worked|purled)\s+twisted)(?:\s+(?:so\s+(?:that\s+)?there\s+(?:are|will\s+be)\s+no\s+holes|(?:to|in\s+order\s+to)\s+(?:avoid|prevent)\s+(?:a\s+)?holes?))?){STOP}", "On the next round knit the yarn overs twisted to avoid holes."),
    said_row("new st|increased st", rf"{BEGIN}(?P<said>(?:then\s+)?(?:(?:work|knit)\s+(?:the|all)\s+(?:new|increased)\s+{STS}|(?:the|all)\s+(?:new|increased)\s+{STS}\s+are\s+(?:then\s+)?(?:worked|knitted))\s+in\s+(?:stockinette|stocking)(?:\s+st(?:itch)?)?(?:\s+(?:as\s+you\s+go|along\s+the\s+way))?){STOP}", "Then work the new stitches in stockinette stitch."),
    said_row("right side", rf"(?:(?<=^)|(?<=[.!?:]))\s*(?P<said>(?:all\s+|the\s+)?(?:increases|decreases)(?:\s+and\s+(?:increases|decreases))?\s+are\s+(?:all\s+)?(?:worked|made|done|knitted)\s+(?:from|on)\s+the\s+right\s+side){STOP}", "All decreases are worked from the right side!"),
    said_row("thread|marker|this ", rf"(?<=[\w)])\s*(?:\s-+\s*|[,;]\s*|[(]\s*)(?P<said>{_LATER})\s*[)]?(?=\s*[.!]|\s*$)", "Mark the last row - this is used later to measure the foot."),
    said_row("thread|marker", rf"{BEGIN}(?P<said>{_LATER}){STOP}", "The marker threads are used when decreasing under the sleeve."),
    said_row("thread|marker", rf"{BEGIN}(?P<said>(?:let|allow|move|carry|bring)\s+(?:the\s+)?{_THREAD}\s+(?:to\s+)?(?:follow|upwards?|up|along|with\s+you)(?:\s+(?:your|the)\s+(?:work|piece|knitting))?(?:\s+(?:onwards|upwards|up|along|as\s+you\s+go|in\s+the\s+piece))*){STOP}", "Allow the marker threads to follow your work onwards."),
    said_row("example", rf"{BEGIN}(?P<said>(?:if|in)\s+(?:we\s+use\s+)?this\s+example\s*,\s*[^.!?*]*?(?:after|approx|together)\b[^.!?*]*?\b(?:alternately|each|every)\b[^.!?*]*?{STS}){STOP}", "In this example, make 1 yarn over after alternately every 6th and 7th stitch."),
    said_row("how often|how to|evenly", rf"{BEGIN}(?P<said>to\s+(?:work\s+out|calculate|figure\s+out|find\s+out)\s+how\s+(?:often\s+)?to\s+(?:increase|decrease)(?:\s*/\s*decrease)?(?:\s+evenly)?\s*,\s*[^!?*]*?[=]\s*\d+[.,]\d+){STOP}", "To calculate how to increase evenly, count the stitches on the needle (e.g. 160 stitches) and divide by the number of increases to be made (e.g. 24) = 6.7."),
    said_row("worked|knitted|divided", rf"{BEGIN}(?P<said>(?:the\s+)?{_PART}(?:\s*(?:,|and)\s*(?:the\s+)?{_PART})*\s+(?:is|are)\s+(?:then\s+)?(?:worked|knitted|knit|divided|continued)(?:\s*(?:[,/]\s*)?{_BUILT})*){STOP}", "Neck and yoke are worked in the round on circular needle, from mid back and top down."),
    said_row("finish each|work each|now worked|worked separately", rf"{BEGIN}(?P<said>(?:now\s+)?(?:(?:finish|work|complete)\s+(?:each|the)\s+(?:shoulders?|pieces?|parts?|sides?)\s+separately|(?:the\s+)?(?:back|front)(?:\s+piece)?\s+and\s+(?:the\s+)?(?:back|front)(?:\s+piece)?\s+are\s+now\s+(?:worked|knitted|finished)\s+separately)){STOP}", "The back and the front are now worked separately."),
    said_row("after the last", rf"{BEGIN}(?P<said>(?:there\s+are\s+)?{N}\s+{STS}\s+(?:left|remain(?:ing)?)(?:\s+on\s+the\s+(?:round|row|needle))?\s+after\s+the\s+last\s+{_THREAD}(?:\s*[(]\s*=?\s*(?:half\s+)?(?:back|front)(?:\s+piece)?\s*[)])?){STOP}", "There are 16 stitches left on the round after the last marker thread."),
    row("start the piece", rf"{BEGIN}(?P<said>start\s+the\s+(?:piece|work)\s+here)\s*[:!.]*\s*$", "", "Start the piece here:", spelt_out=True),
)  # fmt: skip
"""The rows, in the order tried."""
