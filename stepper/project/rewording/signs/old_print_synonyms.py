"""Other wordings of old print, of rows in prose or in a table, and of what is only stated. No I/O.

"Second row, knit", "(Row 1) K4", "R3-8: rep R1 and R2" are heads of rows: `stepper.project.reading.clauses` cuts a
sentence at them, and each row then reads by itself.

What a sentence states of the knitting behind it - markers, ridges, about how long it is - works no stitch and is said
at its place; a number of stitches is none of these and is checked. Where a length is printed and her own may be
taken in its place, the printed one is worked and the words are said.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import BEGIN, LONG, OFF, PAUSE, ROUND, STS, YARN_A_H, N, Synonym, row

_E = r"(?=[.!]|$)\s*(?:[.!]+|$)"
_YARN = r"(?-i:MC|CC\d?)"
_BEGINS = r"(?=\*|[kp]\s?\d|[kp]\b|knit\b|purl\b|sl\b|ssk\b|k2tog\b)"
_ORDINALS = (("1st", "first"), ("2nd", "second"), ("3rd", "third"), ("4th", "fourth"))
_COUNTABLE = (
    r"(?:(?:garter|purl|knit|pattern|stitch|colou?red)\s+)?(?:markers|ridges|bumps|bump\s+rows|rows\s+of\s+(?:squares|bumps|holes|eyelets|ridges|loops)|"
    r"repeats|pattern\s+repeats|squares|stripes|holes|eyelets|cables|points|petals)"
)
_HERS = r"(?:you|your|desired|wanted|required|preferred|wished|needed|satisfied)"
_NO_WORK = (
    r"(?:(?!(?<![\w-])(?:knit|knitting|purl|k|p|work|working|row|rows|rnds?|rounds?|sts?|stitch(?:es)?|inc\w*|dec\w*|bind|bound|cast|pick|rep|repeat\w*|"
    r"every|each|both|times|twice|more|less|fewer|short\w*|change|turn|chart|pattern|patt|marker\w*|not|only|except|unless|needles?|yarn)(?![\w-]))[a-z' -])*?"
)
_LONG = r"(\d[\d\s./¼½¾⅛⅜⅝⅞]*(?:cms?\b|mm\b|inch(?:es)?\b|ins?\b\.?|\"))"
_PIECE = r"(?:ear|earflap|flap|arm|leg|wing|paw|foot|hand|mitten|mitt|glove|sock|slipper|bootee|bootie|shoe|boot|strap|handle|horn|fin|thumb|tie)"
_HEAD = r"(?:(?:rows?|rnds?|rounds?)\s+\d[\d\s,and-]*|\d[\w\s,-]*\b(?:rows?|rnds?|rounds?)):\s*"
_IN_WORDS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")
_STITCH = r"(?=\*|\(|\[|[kp]\b|[kp]\s?\d|knit\b|purl\b|sl\b|slip\b|ssk\b|k2tog\b|p2tog\b|yo\b|m1|inc\b|kfb\b|rib\b|as\b|like\b)"
_FABRIC = r"(?:(?:reverse\s+|rev\.?\s+)?(?:st\.?[\s-]?st\b\.?|stockinette|stocking)(?:\s+st(?:itch)?)?|garter(?:\s+st(?:itch)?)?|rib(?:bing)?|patt(?:ern)?|moss\s+st(?:itch)?|seed\s+st(?:itch)?)"
_NUMBERED = r"^(\s*(?:rows?|rnds?|rounds?)\s+\d{1,3}(?:\s*(?:-|to|and|&)\s*\d{1,3})?)"

STATED: tuple[Synonym, ...] = (
    said_row_behind("or ", rf"{_LONG}\s*,?\s*(?P<said>or\s+{_NO_WORK}(?<![\w-]){_HERS}(?![\w-]){_NO_WORK}){PAUSE}", "Repeat these 2 rows until hat is 7 inches, or as tall as you need."),
    said_row(
        "you |there |this |that ",
        rf"{BEGIN}(?P<said>(?:at\s+this\s+point\s*,?\s*)?(?:you\s+(?:should\s+|will\s+|'ll\s+|now\s+)*have|there\s+(?:should|will)\s+(?:now\s+)?be|there\s+are(?:\s+now)?|(?:this|that)\s+(?:will\s+)?(?:gives?|makes?)(?:\s+you)?)\s+(?:now\s+)?(?:a\s+total\s+of\s+)?{N}\s+{_COUNTABLE}"
        rf"(?:\s+(?:in\s+(?:total|all)|altogether|around|on\s+(?:each|the\s+(?:right|wrong))\s+side|at\s+this\s+point|now))*){_E}",
        "You should have 6 markers in total.",
    ),
    said_row(
        "measures|should be|now be",
        rf"{BEGIN}(?P<said>(?:the\s+|your\s+)?(?:work|piece|knitting)\s+(?:(?:should\s+(?:now\s+)?|now\s+)?(?:be|measures?))\s+(?:(?:now|about|approx(?:imately|\.)?|roughly|around)\s+)*\d[\d\s./¼½¾]*(?:cm|in|inch|inches|\")(?:\s+(?:long|wide|across|at\s+this\s+point|now))*){_E}",
        "Knitting measures approx. 9 inches.",
    ),
    said_row(
        "finish|work|crochet",
        rf"{BEGIN}(?P<said>(?:finish|edge|trim)\s+(?:(?:the|all|off|necks?|armholes?|edges?|lower|upper|fronts?|bottom|top|and|sleeves?|cuffs?|collar|outer)\s+)+with\s+(?:a|an|one|two|1|2)\s+(?:rows?|rounds?)\s+of\s+(?:single\s+crochet|double\s+crochet|crochet|slip\s+st(?:itch(?:es)?)?|sc|blanket\s+stitch)(?:\s+(?:all\s+)?around)?){_E}",
        "Finish neck with a row of slip stitch.",
    ),
    said_row(
        "loop",
        rf"{BEGIN}(?P<said>(?:work|make|sew|crochet)\s+(?:an?\s+|the\s+)?(?:small\s+|button\s*|hanging\s+)?loops?\s+(?:(?:at|on|to|for|the|a|of|one|each|end|ends|top|corner|edge|neck|back|front|button|buttons|hanging|fastening|scarf|cap|hat|side|other|pass|through)\s*)+){_E}",
        "Work a loop at end for hanging.",
    ),
    said_row(
        "gather",
        rf"{BEGIN}(?P<said>gather\s+(?:up\s+)?(?:the\s+)?(?:cast-?\s?on\s+(?:sts|stitches|edge)|(?:lower|outer|bottom)\s+edge|edges?)(?:\s*(?:,\s*)?(?:and\s+)?(?:draw|pull|fasten|secure|sew|tie)(?:\s+(?:up|it|off|tight|tightly|firmly|securely|in|together|closed)\b)*)*){_E}",
        "Gather the cast-on sts and draw up tightly.",
    ),
)  # fmt: skip
"""The rows for what is only stated, tried after all others."""

OLD_PRINT: tuple[Synonym, ...] = (
    row("side", r"^(\s*(?:\d+(?:st|nd|rd|th)|next|first)\s+(?:row|rnd|round))\s*\.\s*[(\[]\s*((?:right|wrong)\s+side|rs|ws)\s*[)\]]\s*\.?\s*(?=[a-z*(])", r"\1 (\2). ", "1st row. (Right side). K2, p to end."),
    row("and patt", r"(\b(?:change\s+to|using|with)\s+[^.;:]*?\bneedles?)\s+and\s+patt(?:ern)?\b(?:\s+as\s+follows)?\s*:\s*$", r"\1 and work in patt as follows:", "Change to 4 mm needles and patt:"),
    row("rib ", rf"(^\s*|[.;,]\s+)rib\s+({LONG})\s+as\s+(?:given\s+)?(?:for\s+)?(back|front|(?:left|right)\s+front|sleeves?)\b", r"\1work \2 in rib as given for \3", "Rib 3 cm as given for back, ending with 1st row."),
    said_row_behind("will|would|may|might", rf"(\b(?:{OFF}|bo)\b[^.;,]*?)\s*,?\s+(?P<said>(?:not\s+too\s+(?:tight|loose)(?:ly)?\s*,?\s+)?(?:or|or\s+else)\s+(?:it|they|the\s+[a-z]+)\s+(?:will|would|may|might)\s+(?:not\s+)?(?:hitch|pull|flare|ruffle|curl|roll|pucker|gape|draw|bind|stretch)(?:\s+(?:up|in|out|over|on))?)(?=\s*[.]|\s*$)", "Cast off in rib, not too tightly or the front will hitch up."),
    said_row_behind("(mark", r"(\bending\s+with\s+a\s+(?:right|wrong|rs|ws)[-\s]?(?:side)?\s+row)\s*\(\s*(?P<said>marking\s+(?:the\s+)?(?:sleeve|armhole|pocket)\s+positions?\s+as\s+(?:for\s+|on\s+)?(?:the\s+)?(?:back|front)(?:\s+at\s+(?:the\s+)?(?:side|front)\s+edges?)?)\s*\)", "Work even until piece measures 8 cm, ending with a right side row (marking sleeve position as back at side edge)."),
    # --- heads ---
    *(
        row(
            f"{ordinal} r",
            rf"^(\s*)(?:the\s+)?{ordinal}\s+(row|rnd|round)\s*[,:]\s*{_STITCH}",
            rf"\1\2 {number}: ",
            f"{ordinal.capitalize()} row, knit 2, purl to the end.",
        )
        for number, ordinal in enumerate(_IN_WORDS, 1)
    ),
    row("row|rnd|round", rf"^(\s*(?:row|rnd|round)\s+\d{{1,3}})\s*,\s*{_STITCH}", r"\1: ", "Round 5, purl."),
    row("(row|(rnd|(round", r"^(\s*)\(\s*((?:row|rnd|round)\s+\d{1,3})\s*\)\s*:?\s*", r"\1\2: ", "(Row 1) K3, purl to end."),
    row("r", r"^(\s*)(?-i:R)\s?(\d{1,3})\s*(?:-|to)\s*(?-i:R)?\s?(\d{1,3})\s*:", r"\1Rows \2-\3:", "R3-R4: rep rows 1 and 2."),
    row("first r", r"^(\s*)(knit|purl)\s+the\s+first\s+(row|rnd|round)(?:\s+plain)?(?=\s*[.]?\s*$)", r"\1\3 1: \2", "Knit the first row plain."),
    row("next r", r"^(\s*)(knit|purl)\s+the\s+next\s+(row|rnd|round)(?:\s+plain)?(?=\s*[.]?\s*$)", r"\1Next \3: \2", "Purl the next round."),
    # --- what stands behind a head ---
    row("using|with|in ", rf"{_NUMBERED}\s*:?\s*(?:using|with|in)\s+(?:yarn\s+|colou?r\s+)?({YARN_A_H})(?=\s*[.]?\s*$)", r"\1: with \2, work in pattern", "Rows 5 and 6 Using B."),
    row("using|with", rf"{_NUMBERED}\s+(?=(?:using|with)\s+(?:yarn\s+|colou?r\s+)?{YARN_A_H}\b)", r"\1: ", "Row 7 Using yarn B, knit."),
    row("beg", rf"{_NUMBERED}\s*:\s*(?:beg(?:inning)?|start(?:ing)?)\s+with\s+an?\s+(?:p|purl)\s+row\s*,?\s*(?:work\s+)?in\s+(st\.?\s?st\b\.?|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?)", r"\1 (WS): work in \2", "Rows 3-9: Beg with a p row, work in st st."),
    row("beg", rf"{_NUMBERED}\s*:\s*(?:beg(?:inning)?|start(?:ing)?)\s+with\s+an?\s+(?:k|knit)\s+row\s*,?\s*(?:work\s+)?in\s+(st\.?\s?st\b\.?|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?)", r"\1 (RS): work in \2", "Rows 3-8: Beg with a k row, work in st st."),
    row("twice|times", r"^([^:]*\b(?:rows|rnds|rounds)\s+\d{1,3}\s*(?:-|to|and)\s*\d{1,3})\s*,\s*(?=(?:twice|\d{1,2}\s+times)\s*\.?\s*$)", r"\1 ", "Rows 9 to 20 As rows 3 to 8, twice."),
    # --- what stands above rows ---
    row("thus|like this|in this way", r"((?:^\s*|\band\s+)(?:now\s+)?(?:work|set|place|cont(?:inue)?|proceed|begin|commence)\b[^.:*\d]*?)\s+(?:thus|like\s+this|in\s+this\s+way)\s*:\s*$", r"\1 as follows:", "Work in pattern thus:"),
    said_row("as foll", r"^\s*(?P<said>(?:now\s+)?work\s+(?:the\s+|next\s+)*(?:\d{1,2}|two|three|four|five|six|eight|ten)\s+(?:pattern\s+|patt\.?\s+)?(?:rows|rnds|rounds)(?:\s+as\s+foll(?:ow)?s)?)\s*:\s*$", "Now work next 4 rows as follows:"),
    # --- between rows and shapings ---
    row("row|rnd|round", rf"(^\s*|[.;,]\s+)(work|cont(?:inue)?)\s+((?:even\s+)?in\s+{_FABRIC})\s+(?:for\s+)?({N}\s+(?:more\s+)?{ROUND})(?=\s*[.,;]|\s*$)", r"\1work \4 \3", "Work in pattern 10 rows."),
    row("on the rem|on these|on rem", rf"^(\s*)(?:and\s+)?on\s+(?:the\s+|these\s+)?(?:rem(?:aining)?\.?\s+)?({N}\s+{STS})\s*,?\s+(?=(?:knit|purl|k|p|work|rib)\s+(?:{N}\s+{ROUND}|even\b|in\b|until\b|for\b))", r"\1\2. ", "On the remaining 22 stitches knit 6 rows."),
    row("needle", r"\b(?:off\s+)?on(?:to)?\s+an?(?:other)?\s+(?:extra|separate|third|(?<=another\s))\s*needle\b", "on a spare needle", "K5, slip next 6 sts on an extra needle, k to end."),
    row("underarm|armhole", r"\bwork(?:\s+even|\s+straight)?\s+to\s+(?:the\s+)?(?:underarms?|armholes?)\s*,?\s+(?=\d[\d\s./¼½¾]*(?:in\b|inch|cm|\"))", "work even until piece measures ", "Work to underarm 7 inches."),
    # --- spelling ---
    row("co", r"\b(co)(?=\d)", r"\1 ", "CO40 sts."),
    row("1st]|1st)", r"(?<=[\w)\]])\s*[(\[]\s*1st\s*[)\]](?=\s*\.?\s*$)", " (1 st)", "Row 5: sl1, k2tog, psso [1st]"),
    row("tog", r"\b([kp])\.\s?([23])\s+tog(?:ether)?\b\.?(?=\s+at\s+(?:each|both)\b)", r"\1\2tog", "K.2 tog. at both ends of next 6 rows."),
    row("throw", r"\bthrow(?:ing)?\s+(?:the\s+)?(?:wool|yarn|cotton|thread)\s+(?:forward|over)\b", "yo", "Row 3: Slip 1, throw the wool forward, k2tog, knit 4."),
    row("knitted|purled", rf"^(\s*{_HEAD})(knit|purl)(?:t?ed)(?:\s+plain)?" + PAUSE, r"\1\2", "4th round: Knitted."),
    row("quite plain", rf"^(\s*{_HEAD})quite\s+plain" + PAUSE, r"\1knit", "4th round: Quite plain."),
    row("like the", rf"^(\s*{_HEAD})like\s+the\s+(\d+)(?:st|nd|rd|th)" + PAUSE, r"\1rep round \2", "8th and 9th rounds: Like the 3rd."),
    row("kfb|k1fb", r"\b(k1?fb)\s+(?:in(?:to)?\s+)?all\s+(?:sts|stitches)\b(?:\s+around)?", r"*\1; rep from * to end", "Round 1: kfb all stitches."),
    row("cast on cast|bind off bind|cast off cast|work work|repeat repeat", r"\b(cast\s+on|cast\s+off|bind\s+off|work|repeat)\s+\1\b", r"\1", "Cast on cast on 48 sts."),
    row("/", r"(?<=\d)\.\s?(?=\d/\d)", " ", "Work until piece measures 4.1/2 inches."),
    row("inches", r"(?<=[\"])\s*\(\s*inches\.?\s*\)", "", "Work until piece measures 4\" ( inches )."),
    row("facing)", r"\(\s*(rs|ws|right\s+side|wrong\s+side)\s+facing\s*\)(?!\s*:)", r"(\1)", "1st row (RS facing) K to end."),
    row("k/p|knit/purl", r"(^\s*|[.;,]\s+)(?:k/p|knit/purl)\s+rows\s+(?=for\b)", r"\1K 1 row, P 1 row ", "K/P rows for 12 rows."),
    row("and p", r"(^\s*|[.;,]\s+)k\.?\s?(\d{1,2})\s+and\s+p\.?\s?(\d{1,2})\s*,?\s+(?=(?:for|until|to\s+(?:the\s+)?end|across)\b)", r"\1k\2, p\3 ", "K.3 and p. 3 for 4 inches."),
    row("(mc|(cc", rf"^(?=(?:[^:(]*:\s*)?(?:(?:\({_YARN}\)\s*[kp]\s?\d{{1,3}}|[kp]\s?\d{{1,3}}\s+in\s+{_YARN})\s*(?:,\s*)?){{2,}}(?:around|across|to\s+(?:the\s+)?end)?\s*[.]?\s*$)([^(]*)\(({_YARN})\)\s*([kp]\s?\d{{1,3}})", r"\1\3 in \2", "Rnd 4: (MC) k2, (CC) k2 around.", again=True),
    row("to end|to the end", r"(\*[^*;]*?)\s*;\s*to\s+(?:the\s+)?end" + PAUSE, r"\1; rep from * to end", "Row 2: *p3, k1; to end."),
    row("end", rf"(\bto\s+last\s+{N}\s+(?:sts|stitches))\.?\s+end\s+(?:with\s+)?(?=[kp]\s?\d|k2tog|ssk|sl\s?\d)", r"\1, ", "K to last 3 sts. end k2tog, k1."),
    row("marker", r"\b((?:sl|slip)\s+marker)\s+(?=(?:[kp]\s?\d|m1|[kp]\s+(?:to|rnd|round|row))\b)", r"\1, ", "Rnd 2: Sl marker m1, k to end."),
    # --- needles of a sock ---
    *(
        row(f"{figure} n|{word} n", rf"(^\s*|[.;,:]\s+)(?:on\s+)?(?:the\s+)?(?:{figure}|{word})\s+needle\s*(?::\s*(?=work\b)|[:,-]\s*{_BEGINS})", rf"\1needle {number}: ", f"{word.capitalize()} needle: k1, ssk, k to end.")
        for number, (figure, word) in enumerate(_ORDINALS, 1)
    ),
    row("needle|n1|n2|n3", r"^(\s*)work\s+(?:the\s+)?(?:sts|stitches)\s+on\s+(?:the\s+)?(?:needle\s*|N)(\d)\s+as\s+foll(?:ow)?s\s*:\s*", r"\1needle \2: ", "Work sts on Needle 1 as follows: K2, k2tog, k to end."),
    row("each", rf"^\s*needles\s+1\s+and\s+3\s*[:(]\s*({N})\)?\s*(?:sts|stitches)\s+each\s*[.,;]\s*needles\s+2\s+and\s+4\s*[:(]\s*({N})\)?\s*(?:sts|stitches)\s+each", r"divide over 4 needles, \1 sts on needle 1, \2 sts on needle 2, \1 sts on needle 3, \2 sts on needle 4", "Needles 1 and 3: 12 sts each, needles 2 and 4: 10 sts each."),
    row("needle", rf"^\s*(?:(?:place|put|k|knit|arrange|divide|distribute)\s+|(?:divide|arrange|distribute)\s+(?:the\s+)?(?:sts|stitches)\s*[:,]?\s*)({N})\s*(?:sts|stitches)\s+on(?:to)?\s+(?:the\s+)?(?:1st|first)\s+needle\s*,\s*({N})\s*(?:sts|stitches)\s+on(?:to)?\s+(?:the\s+)?(?:2nd|second)(?:\s+needle)?\s*,?\s*(?:and\s+)?({N})\s*(?:sts|stitches)\s+on(?:to)?\s+(?:the\s+)?(?:3rd|third)(?:\s+needle)?(?=\s*[.]?\s*$)", r"divide over 3 needles, \1 sts on needle 1, \2 sts on needle 2, \3 sts on needle 3", "Place 12 sts on first needle, 24 sts on second needle, 12 sts on third needle."),
    row("needles as foll", rf"^\s*(?:arrange|divide|distribute)\s+(?:the\s+)?(?:sts|stitches)\s+(?:on|over|onto)\s+(?:3|three)\s+needles\s+as\s+foll(?:ow)?s\s*:\s*({N})\s*,\s*({N})\s*,\s*({N})(?=\s*[.]?\s*$)", r"divide over 3 needles, \1 sts on needle 1, \2 sts on needle 2, \3 sts on needle 3", "Arrange sts on 3 needles as follows: 20, 10, 10."),
    # --- lengths that may be hers ---
    row("as long as|as tall as|as deep as", r"(?<!\bor\s)\buntil\s+(?:it\s+is\s+)?as\s+(?:long|tall|deep)\s+as\s+you\s+(?:like|want|wish|prefer|need)(?:\s+(?:it|them))?(?:\s+to\s+be)?" + PAUSE, "until piece measures desired length", "Work in garter st until as long as you want."),
    row("length you", r"\buntil\s+you\s+have\s+(?:reached\s+)?the\s+length\s+you\s+(?:like|want|wish|prefer|need)" + PAUSE, "until piece measures desired length", "Continue until you have the length you want."),
    # --- a part again ---
    row("same", rf"(^\s*|[.!:]\s+)(?:make|work|knit)\s+(?:the\s+|a\s+)?(?:second|2nd|other|another|left|right)\s+({_PIECE})\s+(?:in\s+)?(?:exactly\s+)?(?:the\s+)?same(?:\s+(?:way|manner|fashion))?(?=\s*[.]?\s*$)", r"\1make again 1 \2", "Work left ear in the same way."),
    row("same", r"(^\s*|[.!:]\s+)(?:work|complete|finish)\s+(?:the\s+)?(?:second|2nd|other|opposite)\s+(?:side|shoulder|half|front)\s+(?:in\s+)?(?:exactly\s+)?(?:the\s+)?same(?:\s+(?:way|manner|fashion))?(?=\s*[.]?\s*$)", r"\1Complete to match first side, reversing shaping", "Work the other shoulder the same way."),
)  # fmt: skip
"""The rows, in the order tried, before all others."""
