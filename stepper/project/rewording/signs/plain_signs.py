"""Put the signs of a line as the tables know them: heads of rows, brackets and stars, marks in front of a count. No I/O.

Designers agree on what a row says and on nothing about its signs: "R1 [RS] - ", "Row #1:-", "1st row: (RS)." are one
head, "*k2, p2*, rep between * * to end" and "rep [k2, p2] to end" one repeat. A line that nothing else reads is
put into these forms before all other rows of the tables, so that these know each sentence in one form; what it says is never changed. "R1" is a row or a round as the
work goes, and becomes "Rnd 1", of which only the number is kept: whether rows or rounds are worked is looked for in the words
as printed. Source: the print of patterns, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.grammar import stitch_words
from stepper.project.rewording.on_needles.marker_synonyms import BETWEEN_PARTS
from stepper.project.rewording.synonym import ROUND, SIDE, N, Synonym, row

_NTH: Final = r"\d{1,3}(?:st|nd|rd|th)"
_JOINT: Final = r"\s*(?:-|,|&|to|and|thru|through)\s*"
_NAMED: Final = (
    r"(?:(?:next|foll(?:owing)?|first|dec|inc|decrease|increase|set-?\s?up|foundation|eyelet|turning|buttonhole|ridge|preparation|joining|edging|"
    r"fold|picot|cable|rib|lace|short|dividing|division)\.?)"
)
_CALLED: Final = (
    r"(?!(?:knit|purl|work|rep(?:eat)?|every|each|all|cont\w*|slip|last|this|these|those|on|in|for|at|to|with|using|join\w*|turn|cast|bind|end\w*|"
    r"beg\w*|start\w*|where|when|after|until|from|of|change|dec|inc)\b)(?-i:[A-Z])[a-z'-]+(?:\s+(?!of\b|every\b|each\b|and\b)[a-z'-]+){0,2}?\s+(?:row|rnd|round)"
)
"""What a page calls a row: "Moss stitch row", "Neck dec row"."""
_HEAD: Final = (
    rf"(?:(?:short[-\s])?{ROUND}\s+\d{{1,3}}(?:{_JOINT}\d{{1,3}})*|{_NTH}(?:{_JOINT}{_NTH})*\s+{ROUND}|{_NAMED}\s+(?:{_NAMED}\s+)?(?:row|rnd|round)(?:\s+\d{{1,2}})?"
    rf"|(?:all|every)\s+(?:(?:other|foll)\s+)?(?:{SIDE}|even|odd)\s+{ROUND}|{_CALLED})"
)
"""How a row is called: by its number, by its place, by what it is for."""
_SIDED: Final = rf"(?:\s*\(\s*(?:{SIDE}|(?:inc|dec)[a-z]*(?:\s+(?:row|rnd|round))?)\s*\))?"
_REST: Final = r"(?![a-z\s-]{1,30}(?:\([rw]s\)\s*)?:)(?=[a-z*(\[])"
"""What is worked in the row, and no second name of it: "Row 1 - Set-up row (RS): K2"."""
_COUNT: Final = (
    r"\d(?:[\d\s,;:()\[\]/-]*[\d)\]])?\s(?:sts|stitches|st|stitch)(?![a-z])\.?(?:\s+(?:rem(?:ain(?:ing)?)?|inc|dec|increased|decreased|inc'd|dec'd|total|in\s+all|in\s+total)\b\.?)?"
)
_STITCHES: Final = r"[^()\[\]{}*]*[a-z][^()\[\]{}*]*"
_STITCH: Final = rf"(?:{stitch_words()})(?![\w&/-])"
_ONE: Final = rf"(?:(?<![\w/-])(?:[kp]\s?\d{{1,3}}(?!\w)|sl\s?\d(?!\w)|{_STITCH}))"
"""One stitch, or several worked alike."""
_LONG: Final = r"(?:\d+(?:\.\d+)?(?:\s?[½¼¾⅛⅜⅝⅞])?|[½¼¾⅛⅜⅝⅞])(?:\s*[(\[{][\d\s.,;:/½¼¾⅛⅜⅝⅞-]+[)\]}])*"
_FAR: Final = r"(?:to\s+(?:the\s+)?(?:end|last|\d|m\b|marker)|around|across|until)\b"
_AT: Final = r"(?:^\s*|(?<=[a-z)]:\s))"
"""Where a head may stand: at the front, or behind the name of a part."""

ORNAMENTS: Final = "❖■□▪▫◆◇❦✦✧★☆✿❀♥♡♦♣♠●○◦✽✻"
"""Signs that only adorn a page, in front of a row or behind a sentence."""

HEAD_SIGNS: tuple[Synonym, ...] = (
    # --- ornaments of the page ---
    row("|".join(ORNAMENTS), rf"^(\s*)[{ORNAMENTS}]+\s+(?=(?:(?:next|set-?up|inc|dec)\s+)?(?:rows?|rnds?|rounds?)\b|{_NTH}\s|cast\s|bind\s|work\s|rep(?:eat)?\s|change\s)", r"\1", "❖ Row 6: Purl."),
    row("|".join(ORNAMENTS), rf"(?<=[.!?)\]])\s*[{ORNAMENTS}]+\s*$", "", "Knit 1 round. ■"),
    # --- the word of a head ---
    row("2d ", rf"(?<!\d)(\d?)2d(?=\s+{ROUND})", r"\12nd", "2d row.- K2, p2, k to end."),
    row("3d ", rf"(?<!\d)(\d?)3d(?=\s+{ROUND})", r"\13rd", "3d row.- K2, p2, k to end."),
    row("rd", rf"(?<![\w.'/-])rd(s?)\b(?!\s+(?:{ROUND}|needle|size|time|st)s?)", r"rnd\1", "2nd rd.: K2, p2, k to end.", again=True),
    row("r", rf"{_AT}()(?-i:[Rr]|Rw|RW|Rd|RD)\.?\s?#?(\d{{1,3}})(?=\s*[-,&]|\s+(?:to|and|thru)\b)((?:\s*(?:-|,|&|to|and|thru)\s*(?:R\s?)?\d{{1,3}})+)(?=\s*[(\[:.=)-]|\s+[a-z*])", r"\1Rnds \2\3", "R1-R4 (RS): Knit."),
    row("rnds ", rf"{_AT}(Rnds\s+\d[^:.(\[]*?[-,&\s])R\s?(?=\d)", r"\1", "R1, R3: Knit.", again=True),
    row("r", rf"{_AT}()(?-i:[Rr]|Rw|RW|Rd|RD)\.?\s?#?(\d{{1,3}})(?=\s*[(\[:.=),;-]|\s+(?:[kp]\s?\d|[kp]\b|knit\b|purl\b|sl\b|\*|[rw]s\b))", r"\1Rnd \2", "R1 - K2, p2, k to end."),
    row("row|rnd|round", rf"{_AT}((?:rows?|rnds?|rounds?))\.?(?:\s*(?:#|№|no\.)\s*|(?<=\.)\s+|)(?=\d)", r"\1 ", "Row #1: K2, p2, k to end."),
    row("st|nd|rd|th", rf"{_AT}()(\d{{1,3}})(?:st|nd|rd|th)({_JOINT})(\d{{1,3}})(?:st|nd|rd|th)\s+(rows|rnds|rounds)\b(?!\s*:)", r"\1\5 \2\3\4", "2nd-4th rows - Work in st st."),
    row(").", rf"{_AT}()((?:next\s+)?(?:row|rnd|round)\s*\([^():]{{2,30}}\))\s*\.\s*-+\s*(?=\S)", r"\1\2: ", "Next row (dec. row).—K6, k2tog, k to end."),
    row(".:|. :", rf"{_AT}({_HEAD})\.(?=\s*:)", r"\1", "Dec. rnd.: K1, k2tog, k to end."),
    row("as|like", rf"{_AT}((row|rnd|round)s?\s+\d[\d\s,&-]*(?:and\s+\d+)?{_SIDED})\s*:\s*(?:work\s+)?(?:as|like)\s+(\d{{1,3}})(?=\s*\.?\s*$)", r"\1: as \2 \3", "Rnd 8: As 1."),
    row("+", r"\b(rows|rnds|rounds)\s+(\d{1,3})\s*[+]\s*(\d{1,3})\b", r"\1 \2 and \3", "Rows 2 + 4: Purl."),
    row("rep|work", r"\b(rep(?:eat)?|work)\b\.?\s+(?-i:R)\s?(\d{1,3})\s*(-|to|and|&)\s*(?-i:R)?\s?(\d{1,3})\b", r"\1 rows \2 \3 \4", "Rep R1-R4 until piece measures 10 cm."),
    row("cast|co", r"^(\s*)(cast\s+on|co)\s*:\s*(?=\d)", r"\1\2 ", "Cast on: 64 sts."),
    row("&", r"(?<=\w) &(?-i:(?= [a-z]))", " and", "Dec 1 st at each end of next & every foll 4th row 5 times."),
    row("@", r"(?<=\s)@\s?(?=(?:the\s+)?(?:beg|end|each|both|neck|armhole))", "at ", "BO 5 sts @ beg of next 2 rows."),
    # --- the side ---
    row("[rs|[ws|[right|[wrong|{rs|{ws", rf"{_AT}({_HEAD}\s*)[\[{{]\s*({SIDE})\s*[\]}}]", r"\1(\2)", "Row 1 [RS]: K2, p2, k to end."),
    row("rs|ws|side", rf"{_AT}({_HEAD})\s*(?:,|-)\s*({SIDE})(?:\s+facing)?\s*(?=[:.]|-\s)", r"\1 (\2)", "Row 1, RS: K2, p2, k to end."),
    row("(rs|(ws|[rs|[ws|(right|(wrong|rs|ws", rf"{_AT}()[(\[]?\s*({SIDE})\s*[)\]]?\s*[:-]?\s+({_HEAD})(?=\s*[:.=-])(?!\s*:\s*\()", r"\1\3 (\2)", "(RS) Row 1: K2, p2, k to end."),
    row("rs)|ws)|side)|rs]|ws]", rf"{_AT}({_HEAD})\s*[:.]\s*[(\[]\s*({SIDE})\s*[)\]]\s*(?:[:.]|-(?=\s))?\s+(?=\S)", r"\1 (\2): ", "Row 1: (RS). K2, p2, k to end."),
    # --- the sign behind it ---
    row(":-|:.|: -", rf"{_AT}({_HEAD}{_SIDED}\s*):\s*[-.]+\s*(?=\S)", r"\1: ", "Row 1 (RS):- K2, p2, k to end."),
    row("-|=|)|;|]|>||", rf"{_AT}({_HEAD}{_SIDED})(?:\s*(?:\.\s*)?-+\s*|\s*[=);\]>|]\s+){_REST}", r"\1: ", "Row 1 (RS).- K2, p2, k to end."),
    row("st |nd |rd |th ", rf"{_AT}({_NTH}(?:{_JOINT}{_NTH})*\s+{ROUND}{_SIDED})\s+(?=(?-i:[A-Z*(\[]))(?!\([rw]s)", r"\1: ", "3rd row (RS) Make a DS, k to end."),
    row("plain", rf"{_AT}({_HEAD}{_SIDED})\s*[.:-]+\s*plain(?:ly)?(?=\s*\.?\s*$)", r"\1: knit", "4th row.- Plain."),
    row(". ", rf"{_AT}({_HEAD}{_SIDED})\s*\.\s+(?=(?-i:[A-Z*(\[])|[kp]\s?\d)", r"\1: ", "Next row (RS). With MC, knit."),
)  # fmt: skip
"""The rows for heads, in the order tried."""

STITCH_SIGNS: tuple[Synonym, ...] = (
    row("tog", r"\b([kp])\s?([23])\s?-\s?tog\b", r"\1\2tog", "*K3, K2-tog; rep from * to end."),
    row("tog.", r"(tog)\.(?=\s*[*)\]]|\s+(?:\d{1,2}\s+times|twice|all|to|around|across)\b)", r"\1", "(K1, k2tog.) to end."),
    row("k|p|s|y|m", rf"({_ONE})\s+(?={_ONE}|[srp]l?m\b)(?![kp]\d+\s+rib)", r"\1, ", "Row 1: *K1 sl1 yo k2tog; rep from * to end.", again=True),
    row("k.|p.", rf"\b([kp])\.\s?(?=\d)(?!\d+\s+(?:more\s+)?{ROUND})", r"\1", "(K. 1 p. 1) 5 times, k. 10."),
    row("m1 |m 1", r"(?<![\w-])m\s?1\s?([lr])?(?=\s*[,;.)\]*]|\s*$)", r"m1\1", "*K to 1 st before m, M1 R, k1, sm; rep from * around."),
    row("k. |p. ", r"(?<![\w.])([kp])\.(?=\s+(?:across|to\s+(?:the\s+)?(?:end|last)|rem(?:aining)?)\b)", r"\1", "Pick up and K. 14 sts. down left side of neck, K. across 11 sts. on holder at front."),
    row(";", rf"({_ONE})\s*;\s*(?={_ONE}|[kp]\s+to\b|psso\b)", r"\1, ", "K1, *yf, k2; sl 1; k2 tog, psso; k1; rep from * to end.", again=True),
    row(";", r"(?<=[a-z\d)])\s*;\s*(?=[kp]\s+to\s+(?:the\s+)?(?:end|last|m\b|marker))", ", ", "Rnd 2: K5, slip marker; k to end."),
    row(". ", rf"([(\[*][^()\[\]*:]*?{_ONE})\.\s+(?={_ONE}[^()\[\]*:]*[)\]*])", r"\1, ", "(K2. P2) to end.", again=True),
    row("k|p", rf"({_ONE})\s+(?=[kp]\s+to\b)", r"\1, ", "Row 2: K4 p to end."),
    row("last", rf"(\bto\s+(?:the\s+)?last\s+(?:{N}\s+)?(?:sts?|stitch(?:es)?)\b|\bbefore\s+(?:the\s+)?(?:m|marker)\b)\s+(?={_ONE})", r"\1, ", "Row 2: K2, p to last 2 sts k2."),
    row("rnd.|rnds.", r"\b(rnds?)\.\s+(?-i:(?=[a-z])|(?=\d{1,3}\s*(?:-|to\b|and\b|&|until\b|only\b|once\b|twice\b|(?:more\s+)?times\b|\.?\s*$)))", r"\1 ", "Rep rnds. 2 and 3 twice."),
    row("rem.", r"(\b(?:leave|place|slip|put|hold|the|on|off|to|purl|knit|last)\s+)rem\.\s+(?=\d|sts?\b|stitch)", r"\1rem ", "Place rem. 24 sts on a holder for back neck."),
    row("rep.", r"\b(rep)\.\s+(?=(?:these|the|last|row|rnd|round)s?\b)", r"\1 ", "Rep. these 2 rows 3 times."),
    row("inc.|dec.", r"\b(inc|dec)\.(?=\s+(?:in|into|once)\b)", r"\1", "(K3, inc. in next st) 4 times, k to end."),
    row("st.)|sts.)|st.]|sts.]", r"\b(sts?)\.(?=\s*[)\]])", r"\1", "(K3, inc in next st.) 4 times, k to end."),
    row("[", r"\[\s*((?:(?:left|right|front|back|sleeve|body|heel|instep|sole|thumb|palm|hand|neck|raglan|underarm|cent(?:er|re)|shoulder|half|first|second|other|of)\s*){1,3})\]", r"(\1)", "K10 [front], pm, k10 [back]."),
    row("sts.|st.", r"(?<!\bst\s)\b((?<=\d\s)sts?)\.\s+(?-i:(?=[a-z]))(?!st\b)", r"\1 ", "K to last 2 sts. of row, k2."),
)  # fmt: skip
"""The rows for single stitches and what joins them, in the order tried."""

REPEAT_SIGNS: tuple[Synonym, ...] = (
    row("{", rf"\{{({_STITCHES})\}}", r"[\1]", "{K2, p2} to end."),
    row("times)|times]|twice)|twice]|x", r"([)\]*])\s*[(\[]\s*((?:\d{1,2}|two|three|four|five|six)\s+times|twice|x\s?\d{1,2}|\d{1,2}\s?x)\s*[)\]]", r"\1 \2", "[K2, p2] (3 times), k to end."),
    row("x", r"([)\]*])\s*(?:(\d{1,2})\s?x|x\s?(\d{1,2}))(?!\w)", r"\1 \2\3 times", "Next rnd: *k7, m1* 8x. 64 sts."),
    row("-", r"(\*[^*]*?)\s+-+\s*(?=rep(?:eat)?\b\.?\s+from\s+\*)", r"\1; ", "*K2, p2 - rep from * to end."),
    row("*", r"\brep(?:eat)?\b\.?\s+\*\s*(?:to|-)\s*\*", "rep between *s", "* K4, K2 tog *, rep. * to * to end."),
    row("rep", rf"\*([^*]+?)[,;]?\s*\*\s*[,;]?\s*rep(?:eat)?\b\.?\s+(?={_FAR})", r"*\1; rep from * ", "*K2, p2*; rep to last 2 sts, k2."),
    row("rep", r"(\*[^*;]*?)[,;]\s*rep(?:eat)?\b\.?\s+(?=(?:to\s+(?:the\s+)?last|to\s+(?:the\s+)?end|across|around)\b[^*]*$)", r"\1; rep from * ", "K1, *p1, k1; rep to last st, k1."),
    row("*", rf"^([^*]*)\*((?:(?!\brep(?:eat)?\b)[^*])+?)[,;]?\s*\*(?=\s*\.\s*[(\[]?{_COUNT}\s*[)\]]?\s*\.?\s*$)", r"\1*\2; rep from * to end", "Dec rnd: *K2tog, k3*. 16 sts."),
    row("between", rf"\*([^*]+?)[,;.]?\s*\*\s*[,;.]?\s*rep(?:eat)?\b\.?\s+between\s+(?:the\s+)?(?:\*\s*(?:and|to|&|,|-)?\s*\*|\*'?s?|stars|asterisks)\s*,?\s+(?={_FAR}|\d|once|twice)", r"*\1; rep from * ", "*K2, p2*, rep between * * to end."),
    row("between", r"\*([^*]+?)[,;.]?\s*\*\s*[,;.]?\s*rep(?:eat)?\b\.?\s+between\s+(?:the\s+)?(?:\*\s*(?:and|to|&|,|-)?\s*\*|\*'?s?|stars|asterisks)(?=\s*\.?\s*$)", r"*\1; rep from * to end", "*K2, p2*, rep between stars."),
    row("rep", rf"([(\[]{_STITCHES}[)\]])\s*[;,.]?\s*rep(?:eat)?\b\.?\s+(?:(?:from\s+)?[(\[]\s*(?:to|-)?\s*[)\]]\s+|between\s+(?:the\s+)?brackets\s+)?(?={_FAR})", r"\1 ", "[K2, p2]; repeat to end."),
    row("rep", rf"\brep(?:eat)?\b\.?\s+([(\[]{_STITCHES}[)\]])\s*(?={_FAR})", r"\1 ", "Rep [k2, p2] to end."),
)  # fmt: skip
"""The rows for repeats, in the order tried."""

COUNT_SIGNS: tuple[Synonym, ...] = (
    row("→|⇒|►|▶|»|//|||>|…|...", rf"(?<=\S)\.?\s*(?:[-=]*>+|[→⇒►▶»]|/{{2,}}|\|+|…|\.{{2,}})\s*(?={_COUNT}\s*\.?\s*$)", ". ", "Next row: Knit → 70 sts."),
    row("=", rf"(?<=[\w)\]*.])\s*[(\[]\s*=\s*({_COUNT})\s*[)\]](?=\s*\.?\s*$)", r". \1", "Next row: Knit (= 70 sts)."),
    row(";|=", rf"(?<=[a-z)\]*\d])(?:\s*;|\.?\s*=)\s*(?={_COUNT}\s*\.?\s*$)", ". ", "Next row: Inc in first and last st; 42 sts."),
    row(",", rf"((?<![\w-])(?:[kp]\s?\d{{1,2}}|{_STITCH}|armholes?|each\s+(?:side|end)))\s*,\s*(?={_COUNT}\s*\.?\s*$)", r"\1. ", "K1, k2tog, work in pattern to last 3 sts, ssk, k1, 22 sts."),
    row("sts)|sts]|sts.)|sts.]|s)|d)|m)|n)|s]|d]", rf"(?<=[a-z)\]*\d])\.?\s*[(\[]\s*({_COUNT})\s*[)\]](?=\s*\.?\s*$)(?<!each[)\]])", r". \1", "Inc 1 st at each end of next row, taking inc sts into patt (44 sts)."),
    row("-", rf"(?<=[a-z)\]*\d])\s*-{{1,2}}\s*(?={_COUNT}\s*\.?\s*$)(?<!\d-)(?<!\d\s-)(?<!\d-\s)(?<!\d\s-\s)", ". ", "Next row: Dec 1 st at each end of row-38 sts."),
    row("<|_", rf"(?<=\S)\.?\s*[<_]+({_COUNT})[>_]+(?=\s*\.?\s*$)", r". \1", "Next row: Knit. <70 sts>"),
    row("*", r"(?<=\*)\s*-+\s*(\d{1,3}(?:\s*[(\[][\d\s,;:]+[)\]])?)\s*\.?\s*$", r". \1 sts.", "*K4, k2tog* - 40"),
)  # fmt: skip
"""The rows for the stitches printed behind a row, in the order tried."""

UNIT_WORDS: tuple[Synonym, ...] = (
    row("½|1/2", r"(?<![\w.,/(\[-])(\d{1,2})(?:\s?½|\s1/2)\s?mm\b", r"\1.5 mm", "Change to 4½ mm."),
    row("mm", r"(?<![\w.,/(\[-])(?<![,(\[]\s)(\d{1,2}),(\d{1,2})\s?mm\b", r"\1.\2 mm", "Change to 4,5 mm and knit 1 rnd."),
    row("needle", r"(\b(?:change|switch)\s+(?:back\s+)?to\s+(?:the\s+)?needle)\s+(?=\d{1,2}(?:\.\d+)?\s?mm\b)", r"\1 size ", "Change to needle 4 mm."),
    row("mm", r"(\bon(?:to|\s+to)?\s+(?:the\s+)?)(\d{1,2}(?:\.\d+)?\s?mm)(?=\s*[,.;]|\s+and\b|\s*$)", r"\1\2 needles", "Cast on 40 sts on 4 mm."),
    row("''", r"(?<=[\d½¼¾⅛⅜⅝⅞)\]])\s*''", '"', "Knit until piece measures 2''."),
    row("cms|centimet", r"(?<=[\d½¼¾⅛⅜⅝⅞)\]])\s*(?:cms\b\.?|-?centimet(?:er|re)s?\b)", " cm", "Work until piece measures 3 cms, ending with a WS row."),
    row("in.|cm.", r"(?<=[\d½¼¾⅛⅜⅝⅞)\]])\s*(in|cm)\.(?=\s*[/(\[,])", r" \1", "Work even until piece measures 2 in./5 cm from cast-on edge."),
    row(",", rf"({_LONG}\s*cm)\s*,\s*({_LONG}\s*(?:in\b|\"))\s*(?:,\s+(?=[a-z]))?", r"\1 [\2] ", "Knit until piece measures 5 cm, 2 in, from beg."),
)  # fmt: skip
"""The rows for units spelt out."""

PLAIN_SIGNS: tuple[Synonym, ...] = (*UNIT_WORDS, *BETWEEN_PARTS, *STITCH_SIGNS, *REPEAT_SIGNS, *COUNT_SIGNS)
"""The rows that are tried behind those for heads and the lists of sizes, in their order."""
