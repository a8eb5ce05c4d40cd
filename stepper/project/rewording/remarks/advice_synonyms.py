"""Advice, opinions and explanations beside the work: told at their place, worth no stitches. No I/O.

What is a remark has to be certain from its words alone. A sentence that may change what is knitted ("remember
to slip the first stitch", "the longer cuff has 10 more rounds") is none, nor one with a word that says
what to do, how often or in which rows (`asides`), unless its row spells out every word.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row
from stepper.project.rewording.synonym import BEGIN, STOP, STS, N, Synonym, row

_PLAIN = r"[a-z' ,-]+?"
"""Words without a number, a colon or a stop."""
_MORE = (
    r"(?:wider|longer|shorter|looser|tighter|snugger|larger|bigger|smaller|deeper|thicker|firmer|neater|stretchier|slouchier|narrower|"
    r"taller|roomier|closer|warmer|fuller)"
)
_NAMED = (
    r"(?:instep|sole|heel|toe|top|bottom|front|back|palm|thumb|gusset|hand|body|neck|collar|crown|brim|cuff|edging|border|band|button\s+band|"
    r"left\s+front|right\s+front|left\s+sleeve|right\s+sleeve|sleeve|sleeves|yoke|hem|facing|pocket|flap|underarm)"
)
_MADE = r"(?:button\s?holes?|thumb\s+opening|thumb\s?hole|eyelets?|picot\s+edge|pocket\s+opening|neck\s+opening|slit|opening|cable|bobble|short\s+row)"

ADVICE: tuple[Synonym, ...] = (
    said_row(
        " is the | are the | be the ",
        rf"{BEGIN}(?P<said>(?:the|these|this|those)\s+(?:(?:first|last|other|second|remaining|next)\s+)?(?:(?:\d+\s+)?(?:sts|stitches)|half(?:\s+of\s+the\s+(?:round|rnd|row|sock|sts|stitches|needle))?|(?:\d+\s+)?needles?)\s+"
        rf"(?:is|are|will\s+be)\s+the\s+{_NAMED}(?:\s+(?:sts|stitches))?(?:\s+of\s+the\s+[a-z]+)?)(?=[.!]|$){STOP}",
        "The first half of the round is the instep.",
    ),
    said_row(
        "if you",
        rf"{BEGIN}(?P<said>if\s+you(?:'d)?\s+(?:would\s+)?(?:want|like|prefer|wish(?:\s+for)?|need)\s+(?:to\s+have\s+|it\s+to\s+be\s+)?(?:an?\s+|your\s+[a-z]+\s+|the\s+[a-z]+\s+)?(?:slightly\s+|much\s+|even\s+|a\s+bit\s+)?{_MORE}\b[^.!?:*]*)(?=[.!]|$){STOP}",
        "If you want a wider toe, cast on more to start.",
    ),
    said_row(
        "(or",
        rf"\s*\(\s*(?P<said>or\s+(?:a\s+few\s+)?(?:more|less|fewer|longer|shorter)\s+for\s+(?:an?\s+)?{_MORE}\s+[a-z ]+)\)",
        "Knit 12 rounds (or more for a longer cuff).",
    ),
    said_row(
        "(i ",
        r"\s*\(\s*(?P<said>I\s+(?:went\s+with|used|like(?:d)?|prefer(?:red)?|found|chose|got)\s+[^()*:\d]*)\)",
        "Knit 12 rounds. (I used the length of my foot.)",
    ),
    row(
        "i like|i found|i love|i prefer|i think|i recommend|i suggest|i chose",
        rf"{BEGIN}(?P<said>I\s+(?:also\s+|always\s+|usually\s+|really\s+)?(?:like|liked|found|love|prefer|preferred|think|recommend|suggest|chose)\s+{_PLAIN})(?=[.!]|$){STOP}",
        "",
        "I recommend a stretchy cast-on for this hat.",
    ),
    said_row(
        "you will have|you'll have|you should have|you have",
        rf"{BEGIN}(?P<said>you(?:'ll|\s+will|\s+should)?\s+(?:now\s+)?have\s+(?:made\s+)?\d+\s+(?:(?:garter\s+|purl\s+)?ridges|(?:purl\s+)?bumps|[\"']?(?:slipped|slip|edge|selvedge|chain)[\"']?\s+(?:rows|{STS}|loops)|eyelets|holes|loops)"
        rf"(?:\s+(?:along|on|at|down)\s+(?:the\s+|each\s+)?(?:edge|side|edges|sides|right\s+side|wrong\s+side))?)(?=[.!]|$){STOP}",
        "You will have 16 slipped stitches along the edge.",
    ),
    row(
        "check that|make sure|ensure|be sure",
        rf"{BEGIN}(?:please\s+)?(?:check|make\s+sure|ensure|be\s+sure)\s+(?:that\s+)?(?:you\s+(?:still\s+|now\s+)?have|there\s+are(?:\s+still|\s+now)?)\s+({N}\s+{STS})(?:\s+(?:on\s+(?:the|your)\s+needles?|in\s+(?:all|total)))?(?=[.!]|$){STOP}",
        r" \1.",
        "Make sure you have 20 sts.",
    ),
    said_row(
        "make sure|check|take care|be careful|careful",
        rf"{BEGIN}(?P<said>(?:(?:make\s+sure|check)\s+(?:that\s+)?(?:the\s+|your\s+)?(?:cast-?\s?on(?:\s+edge)?|sts|stitches|row|round|work|knitting|edge)\s+(?:is|are)(?:\s+not|n't)\s+twisted"
        rf"|(?:be\s+careful|take\s+care|taking\s+care|being\s+careful)\s+not\s+to\s+(?:twist|pull|drop|split|stretch)(?:\s+(?:the|your|any|it|them|too|yarn|cast-?\s?on|edge|sts|stitches|work|tight|tightly|hard|row|round))*"
        rf"|(?:count|check)\s+(?:your|the)\s+(?:sts|stitches|numbers?|(?:stitch\s+)?counts?|gauge|tension)(?:\s+(?:here|now|again))?))(?=[.!]|$){STOP}",
        "Be careful not to twist the stitches.",
    ),
    row(
        "this |these ",
        rf"{BEGIN}(?P<said>(?:this|these)\s+(?:(?:will|should|would|does)\s+)?(?:also\s+)?(?:makes?|creates?|gives?|prevents?|helps?|ensures?|allows?|avoids?|keeps?|completes?|concludes?|lets?|looks?|is\s+(?:normal|fine|ok|intentional|important|optional))\b{_PLAIN})(?=[.!]|$){STOP}",
        "",
        "This makes a neat edge.",
    ),
    row(
        "necessary|needed|required|comfortabl|fit",
        r"(?:(?<=^)|(?<=[.!?])|(?<=shaping:)|(?<=decreases:)|(?<=crown:)|(?<=top:))\s*(?P<said>(?:change|switch)\s+to\s+(?:dpns?|double[-\s]pointed\s+needles|double\s+points|magic\s+loop|a\s+shorter\s+(?:circular\s+)?needle)\s+"
        r"(?:as\s+soon\s+as|when(?:ever)?|if|once)\s+(?:it\s+(?:is|becomes)\s+|they\s+are\s+|the\s+)?(?:necessary|needed|required|(?:(?:sts|stitches)\s+)?(?:no\s+longer\s+|do\s+not\s+|don't\s+)?fit(?:\s+comfortably)?)\b"
        rf"(?![^.]*\b(?:knit|purl|work|rep|repeat|then|and|dec|inc|next|row|rnd)\b)[a-z -]*)(?=[.!]|$){STOP}",
        ".",
        "Crown shaping: Change to dpns as soon as necessary to avoid stretching the hat.",
        spelt_out=True,
    ),
    said_row(
        "multiple of",
        rf"{BEGIN}(?P<said>(?:the|this)\s+(?:[a-z]+\s+){{0,2}}pattern\s+is\s+(?:worked\s+(?:over|on)\s+)?an?\s+(?:multiple|repeat)\s+of\s+\d+\s+{STS}(?:\s*(?:\+|plus)\s*\d+(?:\s+{STS})?)?)(?=[.!]|$){STOP}",
        "The stitch pattern is a multiple of 4 sts.",
    ),
    said_row(
        "from the|in one piece|sideways|seamless",
        rf"{BEGIN}(?P<said>(?:the|this|your)\s+{_PLAIN}\s+(?:is|are)\s+(?:worked|knit|knitted|made)\s+(?:from\s+the\s+(?:top\s+down|bottom\s+up|toe\s+up|cuff\s+down|top|bottom|neck\s+down)|in\s+one\s+piece|sideways|seamlessly))(?=[.!]|$){STOP}",
        "The blanket is knit sideways.",
    ),
    row(
        "see |photo|picture",
        rf"{BEGIN}[(\[]?\s*(?P<said>(?:(?:see|look\s+at|refer\s+to)\s+(?:also\s+)?(?:the\s+)?(?:photos?|pictures?|images?|diagrams?|schematic|videos?|tutorials?|abbreviations?|glossary)|(?:the\s+)?(?:photo|picture|diagram)\s+shows)\b{_PLAIN[:-2]}*)(?=[.!)\]]|$)[)\]]?{STOP}",
        "",
        "See the photo for the finished edge.",
    ),
    row(
        "there will be|there may be|there might be",
        rf"{BEGIN}(?P<said>there\s+(?:will|may|might)\s+be\s+(?:an?\s+|some\s+)?(?:small\s+|little\s+|tiny\s+|slight\s+)?(?:holes?|gaps?|loops?|bumps?|ladders?|puckers?)\b{_PLAIN[:-2]}*)(?=[.!]|$){STOP}",
        "",
        "There will be a small hole at the underarm.",
    ),
    row(
        "it is|it's|you may|you can|you might",
        rf"{BEGIN}(?P<said>(?:it(?:'s|\s+is)\s+(?:easier|helpful|useful|normal|fine|ok|okay|a\s+good\s+idea|best)|you\s+(?:may|might|can)(?:\s+also|\s+now)?\s+(?:need|want|wish|find|see|notice|have|use|try))\b{_PLAIN})(?=[.!]|$){STOP}",
        "",
        "You may need to adjust the length.",
    ),
    said_row(
        "tension|tight|snug|floats",
        rf"{BEGIN}(?P<said>(?:(?:keep|maintain)\s+(?:an?\s+|your\s+|the\s+)?(?:(?:even|loose|firm|steady)\s+)?(?:tension|floats)(?:\s+(?:even|loose|firm|steady|relaxed))?"
        rf"|(?:pull|tug|snug)\s+(?:the\s+|your\s+)?(?:working\s+)?(?:yarn|tail)\s+(?:tight(?:ly)?|snug(?:ly)?|firmly)(?:\s+(?:here|to\s+(?:avoid|prevent|close)\s+(?:an?\s+|the\s+|any\s+)?(?:gaps?|holes?|ladders?))?)?"
        rf"|do(?:\s+not|n't)\s+pull\s+(?:the\s+yarn\s+)?(?:too\s+)?tight(?:ly)?))(?=[.!]|$){STOP}",
        "Pull yarn tightly to avoid a gap.",
    ),
    said_row(
        " is at | is in |marks| falls ",
        rf"{BEGIN}(?P<said>(?:(?:the\s+)?(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?(?:round|rnd)s?\s+(?:is|falls)\s+(?:at|in)\s+(?:the\s+)?(?:cent(?:er|re)\s+(?:back|front|of\s+the\s+(?:back|front|sole|heel|palm))|side|left\s+side|right\s+side|back|underarm|left\s+underarm|right\s+underarm)"
        rf"|(?:the|your)\s+(?:yarn\s+tail|tail|cast-on\s+tail|yarn\s+end)\s+marks\s+the\s+(?:beg(?:inning)?|start|end)\s+of\s+(?:the\s+)?(?:round|rnd|row)s?))(?=[.!]|$){STOP}",
        "The yarn tail marks the beginning of the round.",
    ),
    said_row(
        "made|formed|completed|finished",
        rf"{BEGIN}[(\[]?\s*(?P<said>(?:the\s+)?(?:(?:first|second|third|next|last|all|one)\s+)?{_MADE}\s+(?:(?:is|are|has\s+been|have\s+been)\s+)?(?:now\s+)?(?:made|formed|completed|finished))(?=[.!)\]]|$)[)\]]?{STOP}",
        "First buttonhole made.",
    ),
    row(
        "note that|please note",
        rf"{BEGIN}(?P<said>(?:please\s+)?note\s+(?:that\s+|,\s*)?(?:the|this|these|your|there)\s+{_PLAIN})(?=[.!]|$){STOP}",
        "",
        "Please note that the front is longer than the back.",
    ),
    said_row(
        "congratulations|enjoy|well done|happy knitting|fun begins|hooray|hurray",
        rf"{BEGIN}(?P<said>(?:congratulations|enjoy(?:\s+your\s+(?:new\s+)?[a-z]+)?|well\s+done|happy\s+knitting|(?:now\s+)?the\s+fun\s+begins|hoo?rray|hurray)(?:\s*,?\s*(?:you(?:'re|\s+are)\s+done|you(?:'ve|\s+have)\s+finished))?)(?=[.!]|$){STOP}",
        "Congratulations!",
    ),
    row(
        "?",
        rf"{BEGIN}(?P<said>(?:isn't|aren't|doesn't|do\s+you\s+see|can\s+you\s+see|did\s+you\s+know|notice\s+how)\b[a-z' ,-]*)\?+",
        "",
        "Isn't it pretty?",
    ),
)
"""The rows, in the order tried."""
