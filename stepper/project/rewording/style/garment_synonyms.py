"""Other wordings of garment patterns of today: what holds stitches, another part, ends of a length, ways out. No I/O.

They are put into the words that the rows further down know. What is left open besides - which of two holders, which
bind-off she likes, how long she wants it - is said with the line; the work that is printed is done.
"""

from __future__ import annotations

from typing import Final

from stepper.craft.needles import SIZE, UK_SIZE
from stepper.project.rewording.synonym import LONG, OFF, ROUND, STS, N, Synonym, row

_E: Final = r"(?=\s*[.;!]|\s*$)"
_B: Final = r"(^\s*|[.;!]\s+)"
_PIECE: Final = r"(?:piece|work|body|sleeve|back|front|cuff|hem|rib|ribbing|yoke|panel|leg|foot|hand|hat|sock|scarf|cowl|shawl|brim|collar|neckband|it)"
_TWICE: Final = r"(sleeve|sock|mitten|mitt|glove|bootie|bootee|slipper|leg\s?warmer|arm\s?warmer|wrist\s?warmer|leg|arm|strap|pocket|cuff|panel|ear|wing|paw)"
_SIDED: Final = r"((?:left|right)\s+(?:front|sleeve|back|strap|shoulder|side|mitten|mitt|half|panel))"
_HOLDER: Final = (
    r"(?:(?:an?|some|the|your)\s+)?(?:(?:bit|piece|length|strand|scrap)\s+of\s+)?(?:(?:(?:scrap|waste|spare|smooth|contrast(?:ing)?|extra|separate|another)\s+)+(?:circular\s+)?"
    r"(?:yarn|needle|cable|thread|wool|cord|dpn)|(?:st(?:itch)?\s+)?holder|cable|(?:large\s+)?safety\s+pins?)\b"
)
_HOLDERS: Final = rf"{_HOLDER}(?:(?:\s*,\s*(?:or\s+)?|\s*/\s*|\s+or\s+){_HOLDER})+"
_NEEDLE: Final = rf"(?:{SIZE}|{UK_SIZE}|smaller|larger)\s+(?:(?:circular|double[-\s]pointed|straight)\s+)?(?:needles?|circulars?|dpns?)\b(?:\s*\([^()]*\))?"
_BIND: Final = rf"(?:{OFF}|bo)\b(?:\s+(?:all|rem(?:aining)?|the|{STS}|loosely|very|in|pattern|patt|rib|ribbing|knitwise|purlwise|knit|purl|k\d,?|p\d,?|\dx\d))*"
_WAY: Final = r"(?:an?|the|your)\s+(?:\d(?:\.\d+)?\s?mm\s+)?(?:[a-z'-]+\s+){0,4}?(?:bind[-\s]?off|cast[-\s]?off|bo|method|technique|needle)(?:\s+such\s+as\s+(?:the\s+|an?\s+)?[a-z' -]{1,40}?(?:bind[-\s]?off|cast[-\s]?off|bo))?"
_WANTED: Final = r"(?:(?:the\s+|your\s+)?(?:desired|wanted|required|preferred)(?:\s+(?:total\s+|finished\s+)?(?:length|measurement))?|(?:the\s+length\s+)?(?:you|you'd)\s+(?:want|like|would\s+like|prefer|need)(?:\s+it)?(?:\s+to\s+be)?)"
_BOTH: Final = rf"{LONG}(?:\s*[/(\[]\s*{LONG}\s*[)\]]?)?"
_AT: Final = r"(?:the\s+)?(?:(?:cent(?:er|re)|middle|base|start|beginning|bottom)\s+of\s+(?:the\s+)?)?(?:(?:left|right|back|front)\s+)?(?:underarm|armhole|shoulder(?:\s+seam)?|side\s+seam|back\s+neck|neck|back|front)"
_PICKED: Final = r"(?:pick\s+up\s+and\s+(?:knit|k)|pu\s+and\s+k(?:nit)?|pick\s+up|pu)"
_SHAPED: Final = r"(inc|dec)(?:rease)?s?"

GARMENTS: tuple[Synonym, ...] = (
    # --- rows and what ends them ---
    row("turn", r",\s*(?:and\s+)?turn\s+(?:the\s+|your\s+)?work(?=\s*[.;)]|\s*$)", ", turn", "Row 5: K to end, turn work."),
    row("the row|the r", r"\b(rep(?:eat)?)\s+the\s+(rows|rnds|rounds)\s+(?=\d)", r"\1 \2 ", "Rows 9-12: Repeat the rows 7 and 8 two more times."),
    row("a total of", rf"\buntil\s+(?:you\s+have|there\s+are|you\s+have\s+(?:worked|knit|knitted))\s+a\s+total\s+of\s+({N}\s+{ROUND})", r"until you have worked \1 in total", "Rep rows 1 and 2 until you have a total of 14 rows."),
    row("the yarn|working yarn", rf"\b(break|cut)\s+(?:off\s+)?(?:the\s+|your\s+)(?:working\s+)?yarn{_E}", r"\1 yarn", "Break the yarn."),
    row("to make|to form|to create", rf"\b((?:knit|purl|k|p)\s+{N}\s+{ROUND})\s*\(\s*on\s+(?:the\s+)?(rs|ws)\s*\)\s*(?P<said>(?:for|to\s+(?:make|form|create))\s+(?:the\s+|a\s+)?(?:turning|fold(?:ing)?)\s+(?:ridge|row|edge|line)(?:\s+(?:for|of)\s+(?:the\s+)?(?:hem|facing|neckband|cuff))?){_E}", r"\1 on \2", "P 1 row (on RS) to make turning ridge for hem.", spelt_out=True),
    row("to make|to form|to create", rf"\b((?:knit|purl|k|p)\s+{N}\s+{ROUND}(?:\s+on\s+(?:the\s+)?(?:rs|ws|right\s+side|wrong\s+side))?)\s+(?P<said>to\s+(?:make|form|create)\s+(?:the\s+|a\s+)?(?:turning|fold(?:ing)?)\s+(?:ridge|row|edge|line)(?:\s+(?:for|of)\s+(?:the\s+)?(?:hem|facing|neckband|cuff))?){_E}", r"\1", "P 1 row on RS to make turning ridge for hem.", spelt_out=True),
    # --- lengths ---
    row("above", rf"\buntil\s+(?:(?:the\s+|your\s+)?{_PIECE}\s+(?:measures|is)\s+)?({LONG})\s+above\s+(?:the\s+)?(?:start|beg(?:inning)?)\s+of\s+(?:the\s+)?armholes?(?:\s+shapings?)?", r"until armhole measures \1", "Continue straight in st st until 12 cm above start of armhole, ending with a purl row."),
    row("your", rf"\buntil\s+your\s+({_PIECE}\s+(?:is|measures)\b)", r"until \1", "Work even until your sleeve is 40 cm long measured from the underarm."),
    row("underarm", r"\bfrom\s+(?:the\s+)?underarm\s+(?:cast[-\s]?on(?:\s+(?:edge|sts|stitches))?|sts|stitches|join)\b", "from underarm", "Work even until piece measures 30 cm from the underarm cast on."),
    row("less|short", rf"(\buntil\b[^.;]*?{LONG}[^.;,]*?),?\s+(?P<said>or\s+(?:until\s+)?(?:(?:it|the\s+{_PIECE}|{_PIECE})\s+(?:is|measures)\s+)?{_BOTH}\s+(?:less|shorter|short)\s+(?:than|of)\s+{_WANTED}(?:\s+of\s+(?:the\s+)?{_PIECE})?)(?=\s*[.,;]|\s*$)", r"\1", "Work even until sleeve measures 40 cm from underarm, or until it is 5 cm shorter than you want it.", spelt_out=True),
    row("(or until", r"\s*\((?P<said>or\s+until\s+[^()*]*)\)", "", "Rep rnds 1 and 2 5 times (or until the brim measures about 4 cm)."),
    # --- what holds stitches ---
    row(" or ", rf"\b(on|onto|on\s+to|to)\s+(?P<said>{_HOLDERS})", r"\1 a holder", "Place next 20 sts on a spare needle, stitch holder or waste yarn.", spelt_out=True),
    row("hold on", rf"\b((?:put|place|leave)\s+(?:the\s+|all\s+|these\s+|rem(?:aining)?\s+|next\s+|first\s+|last\s+)*(?:{N}\s+)?{STS})\s+on\s+hold\s+on(?:to)?\s+(?=(?:a\s+)?(?:holder|waste|scrap|spare|bit|piece|some))", r"\1 on ", "Put stitches on hold on a holder."),
    row("bit of|piece of|length of|strand of|some", r"\b(on|onto|on\s+to|to)\s+(?:an?\s+|some\s+)?(?:bit|piece|length|strand)\s+of\s+((?:waste|scrap|spare|contrasting|smooth)\s+(?:yarn|wool|thread))\b", r"\1 waste yarn", "Slip next 20 sts onto a piece of waste yarn."),
    row("for later|for now|aside|there", r"(\b(?:holder|waste\s+yarn|scrap\s+yarn|spare\s+needle|hold))\s*,?\s+(?P<said>and\s+(?:leave|set|keep)\s+(?:them|these|it|those)\s+(?:aside|there|on\s+hold|for\s+(?:later|now)|aside\s+for\s+(?:later|now)))(?=\s*[.]|\s*$)", r"\1", "Place next 20 sts on waste yarn and leave them for later.", spelt_out=True),
    row("join|attach", rf",?\s*\b(?:and\s+)?(?P<said>(?:re-?)?(?:join|attach)\s+(?:the\s+)?yarn\s+at\s+(?:the\s+)?(?:cent(?:er|re)\s+of\s+(?:the\s+)?)?underarm){_E}", "", "Place held sleeve sts back on the needles and join yarn at the centre of the underarm.", spelt_out=True),
    row("join|attach", rf"{_B}(?P<said>(?:re-?)?(?:join|attach)\s+(?:the\s+)?yarn\s+at\s+(?:the\s+)?(?:cent(?:er|re)\s+of\s+(?:the\s+)?)?underarm)\s*,?\s*(?:and\s+)?(?={_PICKED}\b)", r"\1", "Rejoin yarn at underarm, pick up and knit 8 sts, k across sleeve sts.", spelt_out=True),
    # --- picking up ---
    row("pick", r"\b(pick\s+up(?:\s+and\s+(?:knit|k))?)\s+one\s+(?=st)", r"\1 1 ", "Pick up one stitch in each cast-on stitch."),
    row("cast-on sts|cast on sts|cast-on st|cast on st", rf"(\b{_PICKED}\s+{N}(?:\s+{STS})?\s+(?:from|along|over)\s+(?:the\s+)?)cast[-\s]on\s+(?:sts|stitches)\b", r"\1cast-on edge", "Pick up and knit 8 sts from the cast-on sts."),
    row("approx|about|roughly|around ", rf"\b({_PICKED})\s+(?P<said>approx(?:imately|\.)?|about|roughly|around)\s+(?={N}\s+{STS})", r"\1 ", "Pick up and knit approximately 40 sts around the neck edge.", spelt_out=True),
    row("starting|beginning", rf"(\b{_PICKED}\s+{N}\s+{STS}\s+[^.;]*?),\s*(?P<said>(?:starting|beginning)\s+(?:at|from)\s+{_AT}){_E}", r"\1", "Pick up and knit 40 sts around the armhole, starting at the centre of the underarm.", spelt_out=True),
    row("held", rf"((?:\b{_PICKED}\b)[^.;:]*?,\s*{N})\s+held\s+(?:[a-z]+\s+)?({STS})(?=\s*,|\s+and\b)", r"\1 \2 from holder", "Pick up and knit 30 sts across back neck, 16 sts down left neck, 20 held front sts and 16 sts up right neck."),
    row("held", rf"(,\s*(?:and\s+)?(?:knit|k))\s+(?:the\s+)?({N})\s+held\s+((?:[a-z]+\s+)?{STS})\b", r"\1 across \2 held \3", "Pick up and knit 6 sts along the underarm, knit the 30 held sts, k2."),
    row("across|over|onto|on ", rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s*,?\s*(?:(?:and\s+)?(?:divided?|distributed?|arranged?|spread)\s+)?(?:evenly\s+)?(?:across|over|onto|on|between)\s+(\d|two|three|four|five)\s+(?:double[-\s]pointed\s+needles|dpns|needles){_E}", r"\1. Divide over \2 needles", "CO 48 sts evenly across 3 dpns."),
    # --- binding off ---
    row("using|with|use", rf"(\b{_BIND})\s*,?\s*(?P<said>(?:preferably\s+(?:using|with)\s+|(?:using|with)\s+(?!(?:an?\s+|the\s+)?(?:stretchy|sewn)\s+bind[-\s]?off(?:\s+method)?{_E})){_WAY}(?:\s*,?\s+or\s+(?:use\s+|with\s+|using\s+)?{_WAY})?){_E}", r"\1", "Bind off loosely, preferably using a stretchy method such as the sewn bind off.", spelt_out=True),
    row("or use|or with|or using", rf"(\b{_BIND}[^.;,]*?)\s*,?\s+(?P<said>or\s+(?:use|with|using)\s+{_WAY}){_E}", r"\1", "Bind off all sts in pattern, or use a tubular bind off.", spelt_out=True),
    row("wrong side|ws", rf"^(\s*)({OFF}|bo)\b([^.;:,\d]*?)\s+(?:on|from)\s+(?:the\s+)?(?:wrong\s+side|ws)(?:\s+of\s+(?:the\s+)?work)?((?:\s+in\s+(?:knit|purl|pattern|rib))?){_E}", r"\1next row (WS): \2\3\4", "Bind off on the wrong side in knit."),
    row("right side|rs", rf"^(\s*)({OFF}|bo)\b([^.;:,\d]*?)\s+(?:on|from)\s+(?:the\s+)?(?:right\s+side|rs)(?:\s+of\s+(?:the\s+)?work)?((?:\s+in\s+(?:knit|purl|pattern|rib))?){_E}", r"\1next row (RS): \2\3\4", "Bind off on the RS in purl."),
    # --- needles ---
    row("swap|go back|move|return to|revert", rf"{_B}(?:swap|go\s+back|move|return|revert|change\s+over)\s+to\s+(?:the\s+|your\s+)?(?={_NEEDLE})", r"\1change to ", "Swap to 4.5 mm needles and knit 2 rounds."),
    row("needle|circular|dpn", rf"{_B}(?:continue|cont|work|knit|carry\s+on)\s+(?:using|with|on)\s+(?:the\s+|your\s+)?({_NEEDLE})\s+from\s+(?:here|now|this\s+point)(?:\s+on(?:wards?)?)?{_E}", r"\1change to \2", "Work with smaller needles from here on."),
    row("needle|circular|dpn", rf"{_B}(?:continue|cont|carry\s+on)\s+(?:using|with|on)\s+(?:the\s+|your\s+)?({_NEEDLE})\s+and\s+(?:the\s+)?((?-i:MC|CC\d?|[A-F])\b){_E}", r"\1change to \2. With \3", "Continue using larger needles and MC."),
    # --- shaping ---
    row("a dec|a inc|an inc", rf"{_B}(?:work|repeat|rep)\s+an?\s+(?=(?:inc|dec)(?:rease)?\s+(?:rnd|round|row)\s+(?:on\s+)?every\b)", r"\1work ", "Work a dec round every 8th round 6 times."),
    row("every", rf"\b(every\s+\S+\s+{ROUND})\s*,\s+(?={N}\s+times\b)", r"\1 ", "Work dec round every 8th round, 6 times in total."),
    row("work inc|work dec", rf"{_B}work\s+(?:an?\s+|the\s+)?{_SHAPED}\s+(?:at|on)\s+(?:each|both)\s+(?:sides?|ends?|edges?)\s+of\s+(?=every|next|the\s+next|foll)", r"\1\2 1 st at each end of ", "Work increases at each side of every 5th row until there are 60 sts."),
    row("as before|as established", rf"{_B}(inc|dec)(?:rease)?\s+(?:as\s+before|as\s+established)\s*,?\s*(?:on\s+)?(?=every\s)", r"\1rep this \2 ", "Decrease as before on every other round until 20 sts remain."),
    # --- another part ---
    row("second|other", rf"{_B}(?:make|work|knit)\s+(?:the\s+|your\s+)?(?:second|other)\s+{_TWICE}\s+(?:exactly\s+|just\s+)?(?:as|like|the\s+same\s+(?:way\s+)?as|identical(?:ly)?\s+to|in\s+the\s+same\s+way\s+as)\s+(?:you\s+(?:did|made|worked)\s+)?(?:for\s+)?(?:the\s+)?first(?:\s+one|\s+\2)?{_E}", r"\1Make second \2 same as first", "Make the second sleeve exactly as the first."),
    row("first", rf"{_B}(?:make|work|knit)\s+(?:the\s+)?second\s+(shoulder|front|side|half)\s+(?:exactly\s+|just\s+)?(?:as|like|the\s+same\s+(?:way\s+)?as|in\s+the\s+same\s+way\s+as)\s+(?:the\s+)?first(?:\s+one|\s+\2)?{_E}", r"\1Work as for first \2", "Knit the second shoulder as the first one."),
    row("same as|like|as for|as the|as ", rf"{_B}(?:make|work|knit)\s+(?:the\s+)?{_SIDED}\s+(?:the\s+same\s+as|same\s+as|as\s+for|as|like|in\s+the\s+same\s+way\s+as)\s+(?:the\s+)?{_SIDED}\s*,?\s*(?:but\s+)?revers(?:e|ing)\s+(?:all\s+)?(?:the\s+)?shapings?{_E}", r"\1Work as for \3, reversing shaping", "Work left front same as right front, reverse all shaping."),
    row("return to", rf"{_B}return\s+to\s+(?:the\s+)?(?:held\s+|rem(?:aining)?\s+)?{STS}\s+(?:for|of)\s+(?:the\s+)?((?:left|right)\s+(?:front|shoulder|side|back|neck))\s*,?\s*(?:and\s+)?(?:re-?)?(?:join|attach)\s+(?:the\s+)?yarn\s+with\s+(rs|right\s+side|ws|wrong\s+side)\s+facing\s*,?\s+and\s+(?=(?:work|complete|finish)\b)", r"\1With \3 facing, rejoin yarn to \2 sts. ", "Return to held sts for right front, join yarn with RS facing and work to match left front, reversing all shaping."),
    row("return to", rf"{_B}return\s+to\s+(?:the\s+)?(held|rem(?:aining)?)\s+{STS}\s*,?\s*(?:and\s+)?(?:re-?)?(?:join|attach)\s+(?:the\s+)?yarn\s+with\s+(rs|right\s+side|ws|wrong\s+side)\s+facing\s*,?\s+and\s+(?=(?:work|complete|finish)\b)", r"\1With \3 facing, rejoin yarn to \2 sts. ", "Return to held sts, join yarn with RS facing and complete to match first side, reversing shaping."),
    row("to match", rf"{_B}work\s+to\s+match\s+(?:the\s+)?{_SIDED}\s*,\s*revers(?:e|ing)\s+(?:all\s+)?(?:the\s+)?shapings?{_E}", r"\1Work as for \2, reversing shaping", "Work to match left front, reversing all shaping."),
    row("marker", r"\bplace\s+(?:a\s+)?marker\s*[,;-]+\s*(?:this|it|which)\s+(?:will\s+|now\s+)?(?:marks?|be|is|indicates?)\s+the\s+(?:beginnings?|start)\s+of\s+(?:your|the|each)\s+(?:rounds?|rnds?)\b", "place marker for beginning of round", "Place a marker - this will mark the beginning of your rounds."),
)  # fmt: skip
"""The rows, in the order tried; they come before those on stitches and lengths."""
