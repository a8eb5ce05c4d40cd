"""Other wordings of garment patterns of today: what holds stitches, another part, ends of a length, ways out. No I/O.

They are put into the words that the rows further down know. What is left open besides - which of two holders, which
bind-off she likes, how long she wants it - is said with the line; the work that is printed is done.
"""

from __future__ import annotations

from typing import Final

from stepper.craft.needles import SIZE, UK_SIZE
from stepper.project.pairs import WHOLES
from stepper.project.part_names import PIECE
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import JOIN_YARN, LONG, OFF, ROUND, STS, N, Synonym, row

_E: Final = r"(?=\s*[.;!]|\s*$)"
_B: Final = r"(^\s*|[.;!]\s+)"
_PIECE: Final = rf"(?:{PIECE}|it)"
_TWICE: Final = rf"(sleeve|{WHOLES}|arm\s?warmer|leg|arm|strap|pocket|cuff|panel|ear|wing|paw)"
_SIDED: Final = r"((?:left|right)\s+(?:front|sleeve|back|strap|shoulder|side|mitten|mitt|half|panel))"
_HOLDER: Final = (
    r"(?:(?:an?|some|the|your)\s+)?(?:(?:bit|piece|length|strand|scrap)\s+of\s+)?(?:(?:(?:scrap|waste|spare|smooth|contrast(?:ing)?|extra|separate|another)\s+)+(?:circular\s+)?"
    r"(?:yarn|needle|cable|thread|wool|cord|dpn)|(?:st(?:itch)?\s+)?holder|cable|(?:large\s+)?safety\s+pins?)\b"
)
_HOLDERS: Final = rf"{_HOLDER}(?:(?:\s*,\s*(?:or\s+)?|\s*/\s*|\s+or\s+){_HOLDER})+"
_NEEDLE: Final = rf"(?:{SIZE}|{UK_SIZE}|smaller|larger)\s+(?:(?:circular|double[-\s]pointed|straight)\s+)?(?:needles?|circulars?|dpns?)\b(?:\s*\([^()]*\))?"
_BIND: Final = rf"(?:{OFF}|bo)\b(?:\s+(?:all|rem(?:aining)?|the|{STS}|loosely|very|in|pattern|patt|rib|ribbing|knitwise|purlwise|knit|purl|k\d,?|p\d,?|\dx\d))*"
_WAY: Final = r"(?![^.;]*\b(?:three|needle\s+bind))(?:(?:an?|the|your)\s+)?(?:\d(?:\.\d+)?\s?mm\s+)?(?:[a-z'-]+\s+){0,4}?(?:bind[-\s]?off|cast[-\s]?off|bo|method|technique)(?:\s+such\s+as\s+(?:the\s+|an?\s+)?[a-z' -]{1,40}?(?:bind[-\s]?off|cast[-\s]?off|bo))?(?:\s+if\s+(?:desired|preferred|you\s+(?:like|prefer|wish)))?"
_WANTED: Final = r"(?:(?:the\s+|your\s+)?(?:desired|wanted|required|preferred)(?:\s+(?:total\s+|finished\s+)?(?:length|measurement))?|(?:the\s+length\s+)?(?:you|you'd)\s+(?:want|like|would\s+like|prefer|need)(?:\s+it)?(?:\s+to\s+be)?)"
_BOTH: Final = rf"{LONG}(?:\s*[/(\[]\s*{LONG}\s*[)\]]?)?"
_AT: Final = r"(?:the\s+)?(?:(?:cent(?:er|re)|middle|base|start|beginning|bottom)\s+of\s+(?:the\s+)?)?(?:(?:left|right|back|front)\s+)?(?:underarm|armhole|shoulder(?:\s+seam)?|side\s+seam|back\s+neck|neck|back|front)"
_PICKED: Final = r"(?:pick\s+up\s+and\s+(?:knit|k)|pu\s+and\s+k(?:nit)?|pick\s+up|pu)"
_SHAPED: Final = r"(inc|dec)(?:rease)?s?"

_FABRIC: Final = r"(?:stockinette|stocking|garter|moss|seed)(?:\s+st(?:itch)?)?|st\s+st"
_LIKE: Final = r"(?:exactly\s+|just\s+)?(?:like|as\s+for|as|the\s+same\s+(?:way\s+)?as|same\s+as|in\s+the\s+same\s+way\s+as|identical(?:ly)?\s+to)"
_MIRRORED: Final = (
    r"\s*,?\s*(?:but\s+)?(?:(?:revers(?:e|ing)|mirror(?:ing)?)\s+(?:all\s+)?(?:the\s+)?shapings?|with\s+(?:all\s+|the\s+)*shapings?\s+(?:reversed|mirrored)"
    r"|(?:in|as\s+a)\s+mirror(?:ed)?\s+image|(?<=but\s)(?:mirrored|reversed))"
)

PHRASES: tuple[Synonym, ...] = (
    # --- verbs and joints ---
    row("keep going|carry on|knit on", rf"{_B}(?:keep\s+going|carry\s+on|knit\s+on)\s+(?=(?:even|straight|until|as\s+(?:set|established)|in\s+(?:the\s+)?(?:{_FABRIC}|pattern|patt|rib))\b)", r"\1work ", "Keep going until piece measures 18 cm."),
    row("straight up", r"\b(work|continue|cont)\s+straight\s+up\s+(?=until\b)", r"\1 straight ", "Work straight up until piece measures 22 cm."),
    row("straight up", r"\bknit\s+straight\s+up\s+(?=until\b)", "knit ", "Knit straight up until the piece measures 22 cm."),
    row("proceed", rf"{_B}(?:proceed|continue|cont)\s+(?=as\s+for\s+(?:the\s+)?(?:back|front|left|right|first))", r"\1work ", "Proceed as for the back to armholes."),
    row(" ws row| rs row", r"^(\s*)work\s+(?:1|one)\s+(?:more\s+)?(ws|rs)\s+row(?=\s*\.?\s*$)", r"\1next row (\2): work in pattern", "Work 1 WS row."),
    row(" ws row| rs row", r"^(\s*)(knit|purl|k|p)\s+(?:1|one)\s+(?:more\s+)?(ws|rs)\s+row(?=\s*\.?\s*$)", r"\1next row (\3): \2", "Purl 1 WS row."),
    row("for a total of", rf"(\brep(?:eat)?\s+(?:rows|rnds|rounds)\s+\d+(?:\s*(?:-|to|and)\s*\d+)?)\s+for\s+a\s+total\s+of\s+({N}\s+{ROUND})", r"\1 until you have worked \2 in total", "Rep rounds 1-4 for a total of 24 rounds."),
    row("sts to the end|stitches to the end|all stitches|all sts", rf"\b(knit|purl|k|p)\s+all\s+(?:the\s+)?{STS}\s+to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?", r"\1 to end", "Knit all stitches to the end of the row, turn."),
    row("altogether|in total|in all", rf"\buntil\s+you\s+have\s+(?:completed|knit|knitted|made)\s+({N}\s+{ROUND})\s+(?:altogether|in\s+total|in\s+all)", r"until you have worked \1 in total", "Rep last 2 rows until you have completed 40 rows altogether."),
    # --- lengths ---
    row("armholes are|armhole is|armholes measure", rf"\buntil\s+(?:the\s+)?armholes?\s+(?:are|is|measures?)\s+({LONG})\s+(?:deep|long|high)(?=\s*[,.;]|\s*$)", r"until armhole measures \1", "Work even until the armholes are 20 cm deep."),
    row("sleeve seam", r"\buntil\s+(?:the\s+|your\s+)?sleeve\s+seam\s+(?=measures\b)", "until sleeve ", "Work in st st until the sleeve seam measures 45 cm."),
    row("wrong side", r"\b(end(?:ing)?)\s+on\s+(?:the|a)\s+wrong\s+side(?:\s+row)?(?=\s*[.;]|\s*$)", r"\1 with a WS row", "Work even for 4 cm, ending on the wrong side."),
    row("division|separation|split", r"\bfrom\s+(?:the\s+)?(?:division|separation|split)(?:\s+(?:row|rnd|round))?\b", "from divide", "Work even until piece measures 30 cm from the division."),
    said_row_behind("without", rf"(\bin\s+(?:{_FABRIC}))\s+(?P<said>without\s+(?:any\s+|further\s+)?shaping){_E}", "Work another 5 cm in stockinette without shaping."),
    row("another|further", rf"\bwork\s+(?:another|a\s+further)\s+({LONG})\s+in\s+({_FABRIC})", r"work in \2 for another \1", "Work another 5 cm in stockinette."),
    row("in the r", r"\bcont(?:inue)?\s+(?P<said>in\s+the\s+(?:round|rnd))\s+(?=until\b)", "work ", "Continue in the round until piece measures 20 cm.", spelt_out=True),
    # --- another part ---
    row("second|other", rf"{_B}(?:the\s+|your\s+)?(?:second|other)\s+{_TWICE}\s+is\s+(?:worked|made|knit|knitted)\s+{_LIKE}\s+(?:the\s+)?first(?:\s+one|\s+\2)?{_E}", r"\1Make second \2 same as first", "The second sleeve is worked just like the first."),
    row("instructions|steps|directions|procedure", rf"{_B}(?:repeat|follow)\s+(?:all\s+)?(?:the\s+|these\s+)?(?:same\s+)?(?:instructions|steps|directions|procedure)\s+for\s+(?:the\s+|your\s+)?(?:second|other)\s+{_TWICE}{_E}", r"\1Make second \2 same as first", "Repeat these instructions for the other sleeve."),
    row("follow", rf"{_B}(?:follow|work)\s+(?:the\s+)?(?:instructions|directions)\s+(?:given\s+)?(?:for|of)\s+(?:the\s+)?(back|front|{_SIDED[1:-1]})(?=\s*,\s*(?:but\s+)?revers|\s+(?:up\s+)?to\s+(?:the\s+)?armholes?\b|\s*[.]|\s*$)", r"\1Work as for \2", "Follow the directions for the left front, reversing all shaping."),
    row("left", rf"{_B}(?:now\s+)?(?:work|make|knit)\s+(?:the\s+)?left\s+(shoulder|front|side|back|strap|half)\s+(?:in\s+)?(?:the\s+same\s+way|similarly|likewise){_MIRRORED}{_E}", r"\1Work as for right \2, reversing shaping", "Work the left shoulder in the same way, mirroring the shaping."),
    row("right", rf"{_B}(?:now\s+)?(?:work|make|knit)\s+(?:the\s+)?right\s+(shoulder|front|side|back|strap|half)\s+(?:in\s+)?(?:the\s+same\s+way|similarly|likewise){_MIRRORED}{_E}", r"\1Work as for left \2, reversing shaping", "Now work the right shoulder in the same way, mirroring the shaping."),
    row("back|front", rf"{_B}(?:work|make|knit)\s+(?:the\s+)?(?:front|back)\s+{_LIKE}\s+(?:the\s+)?(back|front)\s+(?=(?:until|to|up\s+to)\b)", r"\1Work as for \2 ", "Work the front like the back until it measures 40 cm."),
    row("to match", rf"{_B}(?:complete|finish|work)\s+(?:the\s+)?second\s+(shoulder|front)\s+to\s+match\s+(?:the\s+)?first(?:\s+\2)?{_MIRRORED}{_E}", r"\1Complete to match first \2, reversing shaping", "Complete second shoulder to match the first, reversing all shapings."),
    # --- what holds stitches ---
    said_row_behind("without", r"(\b(?:holder|yarn|needle|hold|pin))\s*,?\s+(?P<said>without\s+(?:working|knitting)\s+(?:them|these|those|the\s+(?:sts|stitches)))(?=\s*[.,;]|\s*$)", "Place next 8 sts on a holder without working them."),
    row("slide|move", rf"{_B}(?:slide|move)\s+((?:the\s+|all\s+|next\s+|first\s+|last\s+|held\s+|rem(?:aining)?\s+)*(?:{N}\s+)?(?:[a-z]+\s+)?{STS}\s+(?:back\s+)?(?:on|onto|to)\b)", r"\1slip \2", "Move the first 8 sts to a stitch holder."),
    row("your ", r"\b(onto|on|to)\s+your\s+(needles?)\b", r"\1 the \2", "Slip the held sts onto your needle."),
    row("aside", rf"{_B}set\s+((?:the\s+|these\s+|all\s+|next\s+|first\s+|last\s+|rem(?:aining)?\s+)*(?:{N}\s+)?{STS})\s+aside\s+(?=on\s)", r"\1place \2 ", "Set the remaining 30 stitches aside on waste yarn."),
    said_row("multiple of|divisible by", r"\s*[;,]\s+(?P<said>(?:the|this|your)\s+(?:final\s+|total\s+)?number\s+(?:of\s+(?:sts|stitches)\s+)?(?:must|should|has\s+to|needs\s+to)\s+be\s+(?:a\s+multiple\s+of|divisible\s+by)\s+\d+)(?=\s*[.]|\s*$)", "Pick up 80 sts evenly around the neckline; the number must be a multiple of 4."),
    row("live", rf"\blive\s+(?={STS})", "", "Place the 20 live stitches on a holder."),
    row("from the right side|from the wrong side", rf"{_B}from\s+the\s+(right|wrong)\s+side\s*,\s*(?={_PICKED}\b)", r"\1With \2 side facing, ", "From the right side, pick up and knit 48 sts along the bottom edge."),
    row("needle", r"\b(?:using|with)\s+(?:an?\s+|the\s+)?(?:3|three)[-\s]needle\s+(?:bind[-\s]?off|cast[-\s]?off)(?:\s+(?:method|technique))?", "with a three-needle bind-off", "Bind off all sts using a 3-needle bind off."),
    said_row_behind("on next|on the next|on following|on the following", rf"(\b{_BIND})\s+(?P<said>on\s+(?:the\s+)?(?:next|following)\s+(?:row|rnd|round)){_E}", "Bind off all sts on the next row."),
    # --- needles ---
    row("take up", rf"{_B}take\s+up\s+(?:the\s+|your\s+)?((?:smaller|larger)\s+(?:circular\s+)?needles?)(?:\s+again)?{_E}", r"\1change to \2", "Take up the larger needles."),
    row("move to|transfer to|switch over to", rf"{_B}(?:move|transfer|switch\s+over)\s+to\s+(?=(?:dpns|double[-\s]pointed|magic\s+loop)\b)", r"\1change to ", "Move to dpns when needed."),
    row("stockinette|stocking|st st|garter", rf"\b(change\s+to\s+{_NEEDLE})\s+and\s+({_FABRIC})\s*,?\s+and\s+(?:work|knit)\s+(?=until\b|for\b)", r"\1. Work in \2 ", "Change to larger needles and stockinette stitch, and work until piece measures 20 cm."),
    # --- shaping ---
    row("of this and", r"(\bat\s+(?:each|both)\s+ends?\s+)of\s+this\s+and\s+(?=(?:every|each)\s)", r"\1of next and ", "Dec 1 st at each end of this and every foll 6th row until 46 sts remain."),
    row("work a|work one|make a", rf"{_B}(?:work|make)\s+(?:an?|one|1)\s+(inc|dec)(?:rease)?\s+(?=at\s+(?:the\s+)?(?:neck|armhole|front|side)\s+edge\b)", r"\1\2 1 st ", "Work a decrease at the neck edge of the next 3 RS rows."),
    row("every", rf"{_B}on\s+(?:the\s+)?next\s+(row|rnd|round)\s*,?\s+and\s+(?:on\s+)?(every|each)\s+(?:foll(?:owing)?\s+)?(\d+(?:st|nd|rd|th)|other|alternate|alt)\s+\2(?:\s+(?:thereafter|after(?:wards)?|after\s+that|following))?\s*,\s*(inc|dec)(?:rease)?\s+((?:1|one)\s+(?:st|stitch)\s+(?:at\s+)?(?:each|both)\s+(?:ends?|sides?))\s*,?\s*(?=\d|twice|until|to\s|\w+\s+times)", r"\1\5 \6 of next and \3 foll \4 \2 ", "On the next row, and every 6th row thereafter, increase 1 st at each end, 8 times in all."),
    row("by inc|by dec", rf"{_B}(?:shape\s+)(?P<said>(?:the\s+)?(?:armholes?|neck|(?:sleeve\s+)?(?:cap|head|top)|crown|sides?|waist|raglan|shoulders?|neckline))\s+by\s+(inc|dec)reasing\s+(?=(?:1|one)\s+(?:st|stitch)\b)", r"\1\3 ", "Shape the armhole by decreasing 1 st at each end of the next 5 rows.", spelt_out=True),
    row("every r", rf"{_B}(inc|dec)(?:rease)?\s+(?:on\s+|in\s+)?every\s+(row|rnd|round)\s+(?=until\s+(?:\d|there|you|only))", r"\1rep same \2 \3 every \3 ", "Decrease every round until 12 sts remain."),
)  # fmt: skip
"""Phrases that stand in many sentences, in the order tried; they come before the sentences."""

GARMENTS: tuple[Synonym, ...] = (
    *PHRASES,
    # --- rows and what ends them ---
    row("turn", r",\s*(?:and\s+)?turn\s+(?:the\s+|your\s+)?work(?=\s*[.;)]|\s*$)", ", turn", "Row 5: K to end, turn work."),
    row("the row|the r", r"\b(rep(?:eat)?)\s+the\s+(rows|rnds|rounds)\s+(?=\d)", r"\1 \2 ", "Rows 15-20: Repeat the rows 13 and 14 three more times."),
    row("a total of", rf"\buntil\s+(?:you\s+have|there\s+are|you\s+have\s+(?:worked|knit|knitted))\s+a\s+total\s+of\s+({N}\s+{ROUND})", r"until you have worked \1 in total", "Rep rows 1 and 2 until you have a total of 14 rows."),
    row("the yarn|working yarn", rf"\b(break|cut)\s+(?:off\s+)?(?:the\s+|your\s+)(?:working\s+)?yarn{_E}", r"\1 yarn", "Break the yarn."),
    row("to make|to form|to create", rf"\b((?:knit|purl|k|p)\s+{N}\s+{ROUND})\s*\(\s*on\s+(?:the\s+)?(rs|ws)\s*\)\s*(?P<said>(?:for|to\s+(?:make|form|create))\s+(?:the\s+|a\s+)?(?:turning|fold(?:ing)?)\s+(?:ridge|row|edge|line)(?:\s+(?:for|of)\s+(?:the\s+)?(?:hem|facing|neckband|cuff))?){_E}", r"\1 on \2", "P 1 row (on RS) to make turning ridge for hem.", spelt_out=True),
    said_row_behind("to make|to form|to create", rf"\b((?:knit|purl|k|p)\s+{N}\s+{ROUND}(?:\s+on\s+(?:the\s+)?(?:rs|ws|right\s+side|wrong\s+side))?)\s+(?P<said>to\s+(?:make|form|create)\s+(?:the\s+|a\s+)?(?:turning|fold(?:ing)?)\s+(?:ridge|row|edge|line)(?:\s+(?:for|of)\s+(?:the\s+)?(?:hem|facing|neckband|cuff))?){_E}", "P 1 row on RS to make turning ridge for hem."),
    # --- lengths ---
    row("above", rf"\buntil\s+(?:(?:the\s+|your\s+)?{_PIECE}\s+(?:measures|is)\s+)?({LONG})\s+above\s+(?:the\s+)?(?:start|beg(?:inning)?)\s+of\s+(?:the\s+)?armholes?(?:\s+shapings?)?", r"until armhole measures \1", "Work even until 14 cm above beginning of armhole, ending with a WS row."),
    row("your", rf"\buntil\s+your\s+({_PIECE}\s+(?:is|measures)\b)", r"until \1", "Work even until your sleeve is 40 cm long measured from the underarm."),
    row("underarm", r"\bfrom\s+(?:the\s+)?underarm\s+(?:cast[-\s]?on(?:\s+(?:edge|sts|stitches))?|sts|stitches|join)\b", "from underarm", "Work even until piece measures 30 cm from the underarm cast on."),
    said_row_behind("less|short", rf"(\buntil\b[^.;]*?{LONG}[^.;,]*?),?\s+(?P<said>or\s+(?:until\s+)?(?:(?:it|the\s+{_PIECE}|{_PIECE})\s+(?:is|measures)\s+)?{_BOTH}\s+(?:less|shorter|short)\s+(?:than|of)\s+{_WANTED}(?:\s+of\s+(?:the\s+)?{_PIECE})?)(?=\s*[.,;]|\s*$)", "Work even until sleeve measures 40 cm from underarm, or until it is 5 cm shorter than you want it."),
    row("(or until", r"\s*\((?P<said>or\s+until\s+[^()*]*)\)", "", "Rep rnds 1 and 2 5 times (or until the brim measures about 4 cm)."),
    # --- what holds stitches ---
    row(" or ", rf"\b(on|onto|on\s+to|to)\s+(?P<said>{_HOLDERS})", r"\1 a holder", "Place next 20 sts on a stitch holder, spare needle or waste yarn.", spelt_out=True),
    row("hold on", rf"\b((?:put|place|leave)\s+(?:the\s+|all\s+|these\s+|rem(?:aining)?\s+|next\s+|first\s+|last\s+)*(?:{N}\s+)?{STS})\s+on\s+hold\s+on(?:to)?\s+(?=(?:a\s+)?(?:holder|waste|scrap|spare|bit|piece|some))", r"\1 on ", "Put stitches on hold on a holder."),
    said_row_behind("for later|for now|aside|there", r"(\b(?:holder|waste\s+yarn|scrap\s+yarn|spare\s+needle|hold))\s*,?\s+(?P<said>and\s+(?:leave|set|keep)\s+(?:them|these|it|those)\s+(?:aside|there|on\s+hold|for\s+(?:later|now)|aside\s+for\s+(?:later|now)))(?=\s*[.]|\s*$)", "Place next 20 sts on waste yarn and leave them for later."),
    said_row("join|attach", rf",?\s*\b(?:and\s+)?(?P<said>{JOIN_YARN}\s+at\s+(?:the\s+)?(?:cent(?:er|re)\s+of\s+(?:the\s+)?)?underarm){_E}", "Place held sleeve sts back on the needles and join yarn at the centre of the underarm."),
    said_row_behind("join|attach", rf"{_B}(?P<said>{JOIN_YARN}\s+at\s+(?:the\s+)?(?:cent(?:er|re)\s+of\s+(?:the\s+)?)?underarm)\s*,?\s*(?:and\s+)?(?={_PICKED}\b)", "Rejoin yarn at underarm, pick up and knit 8 sts, k across sleeve sts."),
    # --- picking up ---
    row("pick", r"\b(pick\s+up(?:\s+and\s+(?:knit|k))?)\s+one\s+(?=st)", r"\1 1 ", "Pick up one stitch in each cast-on stitch."),
    row("cast-on sts|cast on sts|cast-on st|cast on st", rf"(\b{_PICKED}\s+{N}(?:\s+{STS})?\s+(?:from|along|over)\s+(?:the\s+)?)cast[-\s]on\s+(?:sts|stitches)\b", r"\1cast-on edge", "Pick up and knit 8 sts from the cast-on sts."),
    row("approx|about|roughly|around ", rf"\b({_PICKED})\s+(?P<said>approx(?:imately|\.)?|about|roughly|around)\s+(?={N}\s+{STS})", r"\1 ", "Pick up and knit approximately 40 sts around the neck edge.", spelt_out=True),
    said_row_behind("starting|beginning", rf"(\b{_PICKED}\s+{N}\s+{STS}\s+[^.;]*?),\s*(?P<said>(?:starting|beginning)\s+(?:at|from)\s+{_AT}){_E}", "Pick up and knit 40 sts around the armhole, starting at the centre of the underarm."),
    row("held", rf"(,\s*(?:and\s+)?(?:knit|k))\s+(?:the\s+)?({N})\s+held\s+((?:[a-z]+\s+)?{STS})\b", r"\1 across \2 held \3", "Pick up and knit 6 sts along the underarm, knit the 30 held sts, k2."),
    row("across|over|onto|on ", rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s*,?\s*(?:(?:and\s+)?(?:divided?|distributed?|arranged?|spread)\s+)?(?:evenly\s+)?(?:across|over|onto|on|between)\s+(\d|two|three|four|five)\s+(?:double[-\s]pointed\s+needles|dpns|needles){_E}", r"\1. Divide over \2 needles", "CO 60 sts over 4 needles."),
    # --- binding off ---
    said_row_behind("using|with|use", rf"(\b{_BIND})\s*,?\s*(?P<said>(?:preferably\s+(?:using|with)\s+|(?:using|with)\s+(?!(?:an?\s+|the\s+)?(?:stretchy|sewn)\s+bind[-\s]?off(?:\s+method)?{_E})){_WAY}(?:\s*,?\s+or\s+(?:use\s+|with\s+|using\s+)?{_WAY})?){_E}", "Bind off loosely, preferably with a stretchy bind off such as the tubular bind off."),
    said_row_behind("or use|or with|or using", rf"(\b{_BIND}(?:[^.;,]|\.\d)*?)\s*,?\s+(?P<said>or\s+(?:use|with|using)\s+{_WAY}){_E}", "Bind off all sts in pattern, or use a tubular bind off."),
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
    row("first", rf"{_B}(?:make|work|knit)\s+(?:the\s+)?second\s+(shoulder|front|strap|half)\s+{_LIKE}\s+(?:the\s+)?first(?:\s+one|\s+\2)?{_MIRRORED}{_E}", r"\1Work as for first \2, reversing shaping", "Work second shoulder as first, in mirror image."),
    row("first", rf"{_B}(?:complete|finish)\s+(?:the\s+)?(?:second|other)\s+(side|shoulder)\s+{_LIKE}\s+(?:the\s+)?first(?:\s+one|\s+\2)?{_E}", r"\1Complete to match first \2", "Finish the second side the same as the first."),
    row("first", rf"{_B}(?:make|work|knit)\s+(?:the\s+)?second\s+(shoulder|front|side|half)\s+(?:exactly\s+|just\s+)?(?:as|like|the\s+same\s+(?:way\s+)?as|in\s+the\s+same\s+way\s+as)\s+(?:the\s+)?first(?:\s+one|\s+\2)?{_E}", r"\1Work as for first \2", "Knit the second shoulder as the first one."),
    row("same as|like|as for|as the|as ", rf"{_B}(?:(?:make|work|knit)\s+)?(?:the\s+)?{_SIDED}(?:\s+is\s+(?:worked|made|knit|knitted))?\s+{_LIKE}\s+(?:the\s+)?{_SIDED}{_MIRRORED}{_E}", r"\1Work as for \3, reversing shaping", "Work left front same as right front, reverse all shaping."),
    row("return to", rf"{_B}return\s+to\s+(?:the\s+)?(?:held\s+|rem(?:aining)?\s+)?{STS}\s+(?:for|of)\s+(?:the\s+)?((?:left|right)\s+(?:front|shoulder|side|back|neck))\s*,?\s*(?:and\s+)?{JOIN_YARN}\s+with\s+(rs|right\s+side|ws|wrong\s+side)\s+facing\s*,?\s+and\s+(?=(?:work|complete|finish)\b)", r"\1With \3 facing, rejoin yarn to \2 sts. ", "Return to held sts for right front, join yarn with RS facing and work to match left front, reversing all shaping."),
    row("return to", rf"{_B}return\s+to\s+(?:the\s+)?(held|rem(?:aining)?)\s+{STS}\s*,?\s*(?:and\s+)?{JOIN_YARN}\s+with\s+(rs|right\s+side|ws|wrong\s+side)\s+facing\s*,?\s+and\s+(?=(?:work|complete|finish)\b)", r"\1With \3 facing, rejoin yarn to \2 sts. ", "Return to held sts, join yarn with RS facing and complete to match first side, reversing shaping."),
    row("marker", r"\bplace\s+(?:a\s+)?marker\s*[,;-]+\s*(?:this|it|which)\s+(?:will\s+|now\s+)?(?:marks?|be|is|indicates?)\s+the\s+(?:beginnings?|start)\s+of\s+(?:your|the|each)\s+(?:rounds?|rnds?)\b", "place marker for beginning of round", "Place marker, it is the start of each round."),
)  # fmt: skip
"""The rows, in the order tried; they come before those on stitches and lengths."""
