"""Other wordings of leaflets and hobby pages: sums told twice, needles and steps in lists, fabrics changed. No I/O."""

from __future__ import annotations

from stepper.project.part_names import PART
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import (
    CHANGE,
    HELD_BY,
    KEPT,
    LONG,
    OFF,
    ROUND,
    SIDE,
    STOCKINETTE,
    STS,
    YARN,
    N,
    Synonym,
    row,
)

_BODY = r"(?:(?:left|right|first|second|other|back|front|neck|underarm|thumb|hand|sleeve|body|shoulder)\s+){0,2}"
_EASED = r"(?:divide|distribute|arrange|place|put|split)\s+(?:the\s+|these\s+|all\s+)*(?:sts\s+|stitches\s+)?(?:evenly\s+)?(?:on|onto|over|between|among|across)\s+(?:the\s+|your\s+)*"
_NEEDLES = r"(?:needles|dpns|double-pointed\s+needles)"
_NUMBERED = r"(?:N|needle\s*(?:number|no\.?|\#)?\s*)"
_SLIPPED = r"(?:sl(?:ip)?\s?(?:1|one)(?:\s+st)?\s*,\s*(?:k(?:nit)?\s?(?:1|one)(?:\s+st)?)\s*,\s*(?:psso|pass\s+(?:the\s+)?sl(?:ip(?:ped)?)?\s+st(?:itch)?\s+over(?:\s+(?:the\s+)?k(?:nit)?\s+st(?:itch)?)?))"


def _listed(needles: int, sizes: int) -> Synonym:
    """Return the row for stitches on each needle in figures alone: "8:10:8 (8:12:8, 10:10:10)"."""
    one = r"(\d+)" + r"\s*:\s*(\d+)" * (needles - 1)
    more = rf"\s*[(\[]\s*{one}" + rf"\s*[,;]\s*{one}" * (sizes - 2) + r"\s*[)\]]" if sizes > 1 else ""
    parts = []
    for number in range(1, needles + 1):
        groups = [rf"\{number + needles * size}" for size in range(sizes)]
        count = f"{groups[0]} ({', '.join(groups[1:])})" if sizes > 1 else groups[0]
        parts.append(f"{count} sts on needle {number}")
    figures = ":".join(["8"] * needles)
    others = f" ({', '.join([figures] * (sizes - 1))})" if sizes > 1 else ""
    return row(
        ":",
        rf"^\s*{_EASED}{_NEEDLES}(?:\s+as\s+follows)?\s*:\s*{one}{more}(?=\s*\.?\s*$)",
        f"divide over {needles} needles, {', '.join(parts)}",
        f"Divide sts on dpns: {figures}{others}.",
    )


def _named(needles: int) -> Synonym:
    """Return the row for stitches placed on one needle after the other: "Place 8 sts on needle number 1 …"."""
    one = [rf"(?:place|put|slip)?\s*({N})\s+{STS}\s+on(?:to)?\s+(?:the\s+)?{_NUMBERED}{number}" for number in range(1, needles + 1)]
    parts = ", ".join(rf"\{number} sts on needle {number}" for number in range(1, needles + 1))
    return row(
        "place|put|slip",
        r"^\s*(?=place|put|slip)" + r"\s*[.,;]?\s*(?:and\s+)?".join(one) + r"(?=\s*\.?\s*$)",
        f"divide over {needles} needles, {parts}",
        " ".join(f"Place 8 sts on needle number {number}" for number in range(1, needles + 1)) + ".",
    )


_TO_NEXT = r"(?:(?:all\s+)?(?:the\s+)?(?:next\s+)?STS\s+(?:(?:up\s+)?to\s+(?:the\s+)?(?:next\s+)?marker|before\s+(?:the\s+)?next\s+marker))".replace("STS", STS)

LEAFLETS: tuple[Synonym, ...] = (
    # --- signs ---
    row("mm", r"(?<![\d/])(\d)\s+1/4\s?(?=mm)", r"\1.25 ", "Change to 3 1/4mm needles."),
    row("mm", r"(?<![\d/])(\d)\s+1/2\s?(?=mm)", r"\1.5 ", "Change to 4 1/2mm needles."),
    row("mm", r"(?<![\d/])(\d)\s+3/4\s?(?=mm)", r"\1.75 ", "Change to 3 3/4mm needles."),
    said_row_behind("us", r"\b(\d(?:\.\d+)?\s?mm)\s*\(\s*(?P<said>(?:uk\s+\d+\s*(?:,|/)\s*)?us\s+\d{1,2}\s?/\s?\d{1,2})\s*\)(?=\s*needles?\b)", "Using 3 mm (UK 11, US 2 /3) needles, cast on 40 sts."),
    row("*", r"^([^*]*\b[kp]\d+)\*(?=[a-z(])", r"\1, *", "Row 6: K1*yo, k2tog* k1."),
    # --- a stitch told twice ---
    said_row_behind("make", r"\b(m1[lr]?)\s*\(\s*(?P<said>make\s+(?:one|1)(?:\s+st(?:itch)?)?(?:\s+(?:left|right))?)\s*\)", "K2, m1 (make one), k to end."),
    row("skp|skpo|s1", rf"(?<![\w-])(skp|skpo)\s*\(\s*(?P<said>{_SLIPPED})\s*\)", r"skp", "K2, skp (sl 1, k1, pass sl st over k st), k to end.", spelt_out=True),
    row(
        "knit|purl",
        r"\b((?:knit|purl|k|p)\s?\d+(?:\s*[(\[][\d\s,;:]+[)\]])?)\s+(?=(?:skp|ssk|k2tog|p2tog|kfb|m1|sm|sl)\b)",
        r"\1, ",
        "Knit 3 (7, 9) skp, k to end.",
    ),
    row("yarn in front", r"\bwith\s+yarn\s+in\s+front(?:\s+of\s+(?:the\s+)?work)?\s*,?\s*(?:sl|slip)\s+((?:1|one)|\d+)\s+st(?:s|itch|itches)?(?:\s+as\s+(?:if\s+)?to\s+p(?:url)?)?\b", r"sl \1 wyif", "P1, with yarn in front of work, slip 1 st as to p, p to end."),
    row("as to|as if to", r"\b(?:sl|slip)\s+(?:(1|one)|(\d+))\s+st(?:s|itch|itches)?\s+as\s+(?:if\s+)?to\s+p(?:url)?\b", r"sl \1\2 purlwise", "P1, slip 1 st as to p, p to end."),
    # --- counts ---
    row(
        "adding|increasing|decreasing",
        rf"\b(?:(inc)rease|(dec)rease)\s+to\s+({N})\s+{STS}\s*,?\s+by\s+(?:adding|increasing|decreasing)\s+({N})\s*{STS}\s*,?\s*evenly(?:\s+spaced)?",
        r"\1\2 \4 sts evenly. \3 sts",
        "Increase to 38 sts, by adding 4sts, evenly spaced.",
    ),
    row(
        "you ",
        rf"^\s*end(?:ing)?\s+(?:on|with)\s+an?\s+(knit|purl|k|p|{SIDE})\s+row\s*,\s*you\s+(?:will\s+|should\s+)?(?:now\s+)?have\s+(?:a\s+total\s+of\s+)?({N})\s+(?:(?:heel|toe|gusset|body|sleeve|front|back)\s+)?{STS}",
        r"ends with a \1 row. \2 sts",
        "Ending on a knit row, you will now have a total of 16 heel sts.",
    ),
    row("in row|in r", rf"^(\s*{ROUND}\s+\d+\s+(?:and|&)\s+(\d+)\s*:[^.;]*?\d)\s*-+\s*({N}\s+{STS})\s+in\s+(?:row|rnd|round)\s+\2(?=\s*\.?\s*$)", r"\1. \3", "Rows 4 and 5: Repeat rows 2 and 3 - 36 sts in row 5."),
    row(
        "last row",
        rf"\b(for\s+{N}\s+{ROUND})\s*,\s*end(?:ing)?\s+with\s+an?\s+({SIDE})\s+row\s*,?\s*and\s+({CHANGE}\s+{N}\s+{STS})\s+(?:on|in|across)\s+(?:the\s+)?last\s+row(?:\s*-+\s*({N}\s+{STS}))?",
        r"\1, \3 evenly on last row. ends with a \2 row. \4",
        "Work in k3, p3 rib for 3 rows, ending with a WS row, and inc 2 sts on last row - 29 sts.",
    ),
    row(
        "obtained",
        rf"\b(?:cont(?:inue)?|work)\s+(in\s+[a-z][a-z -]*?)\s+on\s+(?:the\s+)?({N}\s+{STS})\s+obtained\b",
        r"\2. work \1",
        "Cont in st st on the 41 sts obtained until piece measures 9 cm.",
    ),
    row("total", rf"({LONG}(?:\s*,?\s*\([^)]*\))?)(?P<said>\s*,\s*{LONG})?\s*,\s*({N}\s+{ROUND})\s+total(?=\s*\.?\s*$)", r"\1. \3 in total", "Work in st st until piece measures 6 cm, 2¼ in, 20 rows total.", spelt_out=True),
    row("with ", rf"^(\s*)with\s+({N})\s+{STS}\s*,?\s+(?=(?:work|cont(?:inue)?)\s+(?:even|straight|in)\b)", r"\1\2 sts. ", "With 83 sts. work even for 3 cm."),
    row(
        "increas|decreas",
        rf"\b(rep(?:eat)?\s+rows\s+\d+\s*(?:and|-|&)\s*\d+)\s*\(\s*(inc|dec)reasing\s+({N})\s+{STS}\s+(?:every|each|on\s+every)\s+(?:inc|dec)rease\s+row\s*\)\s*(until\s+(?:you\s+have|there\s+are)\s+{N}\s+{STS})",
        r"\1 \4. at a pace of \2rease \3 sts every 2nd row",
        "Repeat rows 3 and 4 (increasing 8 stitches every increase row) until you have 76 stitches.",
    ),
    *(
        said_row_behind(
            f"{more} more",
            rf"\b({more}\s+more\s+times)\s*,?\s+(?:so\s+(?:that\s+)?you\s+(?:will\s+)?have|for)\s+(?P<said>a\s+total\s+of\s+{more + 1}\s+(?:rep(?:eat)?s|times))(?=\s*\.?\s*$)",
            f"Rep rows 1-2 {more} more times so you have a total of {more + 1} repeats.",
        )
        for more in range(2, 20)
    ),
    row("last row of", r"\b(evenly\s+(?:on\s+|in\s+|across\s+|over\s+)?(?:the\s+)?last\s+row)\s+of\s+(?:the\s+)?rib(?:bing)?\b", r"\1", "Work in k1, p1 rib for 3 rows, inc 3 sts evenly on last row of ribbing."),
    row("this row|this rnd|this round", rf"\b({CHANGE}\s+{N}(?:\s+{STS})?)\s+evenly\s+(?:on|in|over|across)\s+this\s+(?:row|rnd|round)\b", r"\1 evenly", "Next row (RS): Increase 3 sts evenly on this row."),
    row("this ", rf"\brep(?:eat)?\s+this\s+(inc|dec)(?:rease)?(?:\s+{ROUND})?\s+((?:on\s+)?(?:every|each)\s+(?:foll(?:owing)?\s+)?\S+\s+(row|rnd|round)s?)\b", r"rep same \1 \3 \2", "Rep this inc on every foll 8th row 2 times."),
    row("evenly", rf"^(\s*)\(\s*(rs|ws)\s*\)\s*({CHANGE}\s+{N}(?:\s+{STS})?\s+evenly)(?:\s+(?:on|in|over|across)\s+this\s+row)?", r"\1next row (\2): \3", "(RS) Increase 3 sts evenly on this row."),
    # --- edges ---
    row(
        "at the beg|at beg",
        rf"\b((?:{OFF}|bo))(?:\s+(?P<said>for\s+(?:the\s+)?(?:armholes?|shoulders?|neck)))?\s+at\s+(?:the\s+)?(beg(?:inning)?)\.?\s+of\s+(?:the\s+)?(next|foll(?:owing)?)\s+({N})\s+rows\s+({N})\s+{STS}\s*,\s*(?:then\s+)?at\s+(?:the\s+)?beg(?:inning)?\.?\s+of\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+({N})\s+rows\s+({N})\s+{STS}",
        r"\1 \6 sts at \3 of \4 \5 rows, then \8 sts at \3 of next \7 rows",
        "Bind off at the beg of the next 2 rows 6 sts, at the beg of the next 4 rows 2 sts.",
    ),
    row(
        "at the beg|at beg",
        rf"\b((?:{OFF}|bo))(?:\s+(?P<said>for\s+(?:the\s+)?(?:armholes?|shoulders?|neck)))?\s+at\s+(?:the\s+)?(beg(?:inning)?)\.?\s+of\s+(?:the\s+)?(next|foll(?:owing)?)\s+({N})\s+rows\s+({N})\s+{STS}",
        r"\1 \6 sts at \3 of \4 \5 rows",
        "Bind off for shoulders at the beg of the next 6 rows 4 sts.",
    ),
    row(
        "rem",
        rf"\s*,\s*rem(?:aining)?\.?\s+({N})\s+{STS}\s+((?:{OFF}))(?P<said>\s+for\s+(?:the\s+)?(?:neck|back\s+neck|back\s+of\s+neck))?(?=\s*\.?\s*$)",
        r". \2 rem \1 sts",
        "Bind off 4 sts at beg of next 6 rows, rem 16 sts bind off for neck.",
        spelt_out=True,
    ),
    row("mark ", r"\bmark\s+(?:the\s+)?beg(?:inning)?\.?\s+and\s+(?:the\s+)?end\s+of\s+(?:the\s+)?(last|this)\s+(row)(?P<said>\s+for\s+(?:the\s+)?beg(?:inning)?\.?\s+of\s+(?:the\s+)?(?:armholes?|neck))?", r"mark each end of \1 \2", "Mark beg and end of last row for beg of armholes.", spelt_out=True),
    row("armhole sh", rf"\buntil\s+(?:the\s+)?(?:piece|work|panel|front|back|it|body)\s+measures\s+({LONG})\s+from\s+(?:the\s+)?(?:beg(?:inning)?\s+of\s+(?:the\s+)?)?armhole\s+shaping\b", r"until armhole measures \1", "Work until piece measures 9 cm from armhole shaping."),
    said_row(
        "and matches",
        r"\s+(?P<said>and\s+(?:matches|is\s+the\s+same\s+as)\s+(?:the\s+)?length\s+of\s+(?:the\s+)?(?:back|front|first\s+side|left\s+front|right\s+front))(?=\s*\.?\s*$)",
        "Work even until armhole measures 9 cm and matches length of back.",
    ),
    # --- lengths and rows ---
    row("rows of rib|rnds of rib|rounds of rib", rf"\b((?:these|last|the\s+last)\s+{N}\s+{ROUND})\s+of\s+rib(?:bing)?\b", r"\1", "Repeat these 2 rows of ribbing 3 times more."),
    row(
        "beg|start",
        rf"^(\s*)(?:cont(?:inue)?|work)\s+in\s+([a-z]+\.?\s+st(?:itch)?)\s*,\s*(?:beg(?:inning)?|start(?:ing)?)\s+with\s+an?\s+(?:p|purl|ws)\s+row\s*,\s*(?:working\s+across\s+all\s+{STS}\s*,\s*)?(?=until\b)",
        r"\1next row (ws): work in \2 ",
        "Cont in stocking st, beg with a purl row, until piece measures 30 cm, ending with a purl row.",
    ),
    row("plain", r"\b((?:knit|k)\s*(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten)\s+(?:rounds|rnds))\s+(?:plain|in\s+plain)\s+(?:stockinette|stocking|st)(?:\s+st(?:itch)?)?(?=\s*[.,;]|\s*$)", r"\1", "K 5 rounds plain stockinette."),
    row("work in rounds|in the rounds", r"\bwork\s+in\s+the\s+rounds\b", "join in the round", "CO 70 sts. Work in the rounds."),
    row(
        "front|work|centre|center",
        rf"^\s*(?:from\s+now\s+on\s*,?\s*)?keep(?:ing)?\s+(?:the\s+)?first\s+({N})\s+and\s+(?:the\s+)?last\s+\1\s+{STS}(?:\s+of\s+(?:the\s+|each\s+|every\s+)?row)?\s+in\s+([a-z]+\s+st(?:itch)?)\s*,?\s*(?:and\s+)?(?:work\s+)?(?:the\s+)?(?:cent(?:er|re)|remaining|rem|other)\s+{STS}\s+in\s+([a-z]+(?:\s+st(?:itch)?)?)\s*,?\s*until\s+(?:length\s+from\s+(?:the\s+)?beginning\s+is|piece\s+measures)\s+(?:about\s+)?({LONG})",
        r"work in \3 until piece measures \4 from beg, keeping \1 edge sts in \2",
        "Keep first 3 and last 3 sts of row in seed st, and work center sts in stockinette st, until length from beginning is about 11 cm.",
    ),
    row("work st", r"\bwork\s+(st\.?\s?st|stockinette(?:\s+st)?|stocking\s+st|garter\s+st|seed\s+st|moss\s+st)\s+(?=to\b)", r"work in \1 ", "K3, work st st to last 3 sts, k3."),
    row("decrease 1|increase 1", r"(?<=,)\s*(inc|dec)rease\s+(?:1|one)(?:\s+st(?:itch)?)?(?=\s*,)", r" \1 1", "K3, decrease 1 st, k to end."),
    # --- needles ---
    row(
        "needle",
        rf"(^|[;:.]\s*)(?<!\d:)(?<!\d:\s)([^;:.]*?\bto\s+(?:end|last\s+(?:{N}\s+)?{STS}))\s+(?:of|on)\s+(?:the\s+)?needle\s*(\d)\b(?=[^;:.]*[;.]\s*[^;:]*needle\s*\d|[^;:.]*\.?\s*$)",
        r"\1needle \3: \2",
        "K1, m1r, k to end of needle 1; k to last st on needle 2, m1l, k1.",
    ),
    row("needles", rf"\bwork\s+(?:the\s+)?(?:{STS}\s+)?on\s+needles\s+(\d)\s+and\s+(\d)\s+in\s+patt(?:ern)?\b", r"needles \1 and \2: work in pattern to end", "Work sts on needles 1 and 2 in pattern; needle 3: k1, m1r, k to end."),
    _listed(3, 1),
    _listed(3, 3),
    _listed(4, 1),
    row(
        "needles",
        rf"\b{_EASED}{_NEEDLES}\s*\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*\)",
        r"divide over 3 needles, \1 sts on needle 1, \2 sts on needle 2, \3 sts on needle 3",
        "Divide over needles (15, 10, 10).",
    ),
    row(
        "needles",
        rf"\b{_EASED}(?:four|4)\s+{_NEEDLES}\s+as\s+follows\s*:\s*needles\s+1\s+and\s+3\s*[:(]\s*({N})\s*[)]?\s*{STS}\s+each\s*[.,;]?\s*needles\s+2\s+and\s+4\s*[:(]\s*({N})\s*[)]?\s*{STS}\s+each",
        r"divide over 4 needles, \1 sts on needle 1, \2 sts on needle 2, \1 sts on needle 3, \2 sts on needle 4",
        "Divide sts between 4 needles as follows: Needles 1 and 3: 6 sts each. Needles 2 and 4: 5 sts each.",
    ),
    _named(2),
    _named(3),
    _named(4),
    said_row("onto either|on either", r"\s+(?P<said>on(?:to)?\s+either\s+(?:3\s+|4\s+|three\s+|four\s+)?(?:dpns?|double-pointed\s+needles)\s+or\s+(?:an?\s+)?circular\s+needle)\b", "Cast on 62 sts onto either 3 dpns or circular needle and join in round."),
    row("onto each|on each", rf"\b((?:cast\s+on|co))\s+({N})\s+{STS}\s+on(?:to)?\s+each\s+of\s+(2|two)\s+needles\s*[:.;(-]\s*({N})\s+{STS}\s*[)]?", r"\1 \4 sts. divide over \3 needles. \2 sts on each needle", "CO 10 sts onto each of 2 needles: 20 sts."),
    row("needle|dpn", rf"\b(?:slip|place|put|transfer|move|return)\s+(?:the\s+)?({N}\s+)?({_BODY}){STS}\s+(?:back\s+)?on(?:to)?\s+(?:an?\s+|the\s+)?(?:\d+\s*(?:\"|in|inch|cm)\s+)?(?:circular\s+needle|dpns|double-pointed\s+needles)(?:\s*,?\s*and\s+(?=pick\b))", r"return \1\2sts to needles. ", "Slip the 11 thumb sts onto dpns, and pick up and knit 1 st, k to end."),
    row("circular", rf"\b(?:slip|place|put|transfer|move|return)\s+(?:the\s+)?({N}\s+)?({_BODY}){STS}\s+(?:back\s+)?on(?:to)?\s+(?:an?\s+|the\s+)?\d+\s*(?:\"|in|inch|cm)\s+circular\s+needle(?=\s*[.,;]|\s*$)", r"return \1\2sts to needles", "Slip sleeve stitches back onto a 40 cm circular needle."),
    row("ready", rf"^(\s*)(return\s+(?:the\s+)?(?:{N}\s+)?[a-z ]*?{STS}\s+to\s+(?:the\s+)?needles?)\s+and\s+(join\s+(?-i:MC|CC\d?|[A-Z]))\s*,\s*ready\s+to\s+(?:work|beg(?:in)?|start)\s+(?:with\s+)?an?\s+({SIDE})\s+row", r"\1with \4 facing, \2. \3", "Return the 20 back sts to needles and join A, ready to work a wrong side row."),
    row("connect", r"\bconnect\s+(?=(?:the\s+)?yarn\b)", "rejoin ", "With RS facing, connect yarn to remaining sts."),
    said_row(
        "work next|work second|work other",
        r"\s*,?\s*(?P<said>and\s+work\s+(?:the\s+)?(?:next|second|other)\s+(?:ear|side|flap|half|shoulder|finger|earflap))\s*:?\s*$",
        "With RS facing, rejoin yarn to remaining sts, and work next ear:",
    ),
    # --- markers ---
    row("marker a|marker b|marker c", r"\bplace\s+marker\s+[A-D]\b(?P<said>\s+to\s+mark\s+[^,;.]*)(?=\s*,|\s*\.|\s*$)", "pm", "K10, place marker B to mark side \"seam\", k to end."),
    # --- picked up ---
    row("edge", rf"\s*,?\s*(?P<said>beg(?:inning)?\.?\s+and\s+ending\s+at\s+(?:the\s+)?(?:inner|outer|right|left)?\s*(?:edge|end|shoulder)\s+of\s+(?:the\s+)?(?:cast-?off|bound-?off|held)\s+{STS}\s+at\s+(?:the\s+)?(?:front|back)\s+neck)\s*,", ", ", "With RS facing, beg and ending at inner edge of cast-off sts at front neck, pick up and knit 30 sts.", spelt_out=True),
    said_row_behind("end to end", rf"\b(pick\s+up(?:\s+and\s+k(?:nit)?)?\s+{N}\s+{STS})\s+(?P<said>from\s+end\s+to\s+end)\b", "Pick up 62 sts from end to end."),
    # --- said ---
    row("des", r"\bor\s+(?:any\s+)?des(?:ired|\.)\s+(?:len(?:gth|\.)?)\s+(?=to\b)", "or desired length ", "Work even until piece measures 36 cm or any des. length to underarm."),
    said_row("reaches", r"\s*,?\s*(?P<said>or\s+until\s+(?:the\s+)?(?:knitting|piece|work|it|mitten|mitt|hand|glove)\s+reaches\s+(?:the\s+)?(?:(?:base|tip|top|nail|end|middle|knuckles?|wrist|elbow|finger|thumb|little|pinky|index|ring|of|the|on|your)\b\s*)+)(?=\s*\.?\s*$)", "K even for 6 rows or until the knitting reaches the base of the nail on your pinky finger."),
    row("sew", r"(?:(?<=^)|(?<=[.!]))\s*(?:starting|beginning)\s+at\s+(?:the\s+)?(?:cast[-\s]?(?:on|off)|bound[-\s]?off|lower|upper|top|bottom)\s+edge\s*,\s*sew\b[^.!;]*", KEPT, "Starting at the cast off edge, sew up the side seam."),
    row("four rows|these ", rf"^(\s*)rep(?:eat)?\s+these\s+({N})\s+({ROUND})\s+for\s+(?:the\s+)?((?:[a-z]+\s+){{1,3}}(?:rib|patt(?:ern)?|stitch|st))(?=\s*\.?\s*$)", r"\1these \2 \3 form \4", "Repeat these four rows for Mock Cable Rib."),
    # --- fabrics ---
    row("change|switch", rf"((?:^|[.])\s*)(?:now\s+|then\s+)?(?:change|switch)\s+to\s+({STOCKINETTE})(?=\s*\.?\s*$|\s*\.\s)", r"\1go on in \2", "Change to st st."),
    row("begin|start", rf"^(\s*)(?:begin|start)\s+({STOCKINETTE})(?=\s*\.?\s*$)", r"\1go on in \2", "Begin stockinette."),
    row("beg|start", rf"\b(with\s+(?:yarn\s+)?{YARN}\s*,\s*)work\s+({N}\s+rows)\s+in\s+({STOCKINETTE})\s*,?\s*(?:beg(?:inning)?|start(?:ing)?)\s+with\s+an?\s+(?:k|knit|rs)\s+row", r"next row (rs): \1work \2 in \3", "With A, work 6 rows in st st beg with a knit row."),
    # --- rows ---
    row("on ws rows|on rs rows", r"^(\s*)(\*[^*]+\*\s*(?:across|around|to\s+end))\s+on\s+(rs|ws)\s+rows(?=\s*\.?\s*$)", r"\1\3 rows: \2", "*Sl 1, p1* across on WS rows."),
    row("rs row|ws row", rf"((?:twice|once|times)(?:\s+more)?)\s*,?\s*then\s+(?:work|rep(?:eat)?)\s+(?:the\s+)?(rs|ws)\s+row\s+only\s+(once)\s+more\b(?:\s*-+\s*({N}\s+{STS}))?", r"\1. rep \2 row \3. \4", "Rep last 2 rows twice more, then work RS row only once more."),
    said_row_behind("pattern", r"^(\s*)(?P<said>pattern)\s*(?:-+|:)\s*(?=row\s+\d+\b)", "Pattern - Row 1 - P."),
    row("(k|(p", r"\b(k|p)(\d+)\s*\(\s*\1(\d+)\s*,\s*\1(\d+)\s*\)(?=\s*[,;.]|\s+(?:pm|sm))", r"\1\2 (\3, \4)", "K1 (k2, k2), pm, k16, pm, k to end."),
    row("back loops", r"\b(?:k|knit)\s+(?:1|one)\s+(?:rnd|round)\s*,\s*knitting\s+(?:all\s+)?(?:the\s+)?(?:sts|stitches)\s+on\s+(?:the\s+)?(?:second|2nd)\s+needle\s+through\s+(?:the\s+|their\s+)?back\s+loops?", "needle 1: k to end; needle 2: k tbl to end", "K 1 round, knitting all sts on second needle through back loops."),
    # --- binding off ---
    row(
        "folls|follows",
        rf"^\s*((?:{OFF}|bo))\s+at\s+(?:the\s+)?(neck|armhole|shoulder|front|side)\s+edge\s+on\s+every\s+(?:alt(?:ernate)?|other|2nd|second)\s+row\s+as\s+foll(?:ow)?s\s*:\s*({N})\s+{STS}\s+({N})\s+times\s*,?\s*(?:and\s+|then\s+)*({N})\s+{STS}\s+({N})\s+times(?=\s*\.|\s*$)",
        r"\1 \3 sts at \2 edge every 2nd row \4 times. \1 \5 sts at \2 edge every 2nd row \6 times",
        "Cast off at the neck edge on every alt row as folls: 5 sts 3 times, then 4 sts 2 times.",
    ),
    row("shoulder edge", r"\bat\s+(?:the\s+)?shoulder\s+edge\b", "at armhole edge", "Bind off 6 sts at shoulder edge every 2nd row 3 times."),
    row("side", rf"\b((?:{OFF}|bo)\s+{N}\s+{STS})\s+({N}\s+times|twice)\s+(?:from|at)\s+(?:the\s+)?(neck|armhole|shoulder|front)\s+(?:side|edge)(?=\s*\.|\s*$)", r"\1 at \3 edge every 2nd row \2", "Bind off 6 sts 3 times from armhole side."),
    row("first binding|first bind", rf"\bfor\s+({LONG})\.?\s+from\s+(?:the\s+)?first\s+(?:binding|bind|bound)[-\s]off\b", r"until armhole measures \1", "Work even for 9 cm from the first binding off."),
    # --- on hold ---
    row(
        "marker",
        rf"\b(?:place|put|slip|sl|transfer)\s+{_TO_NEXT}\s+(?:on|onto|to)\s+(?:to\s+)?{HELD_BY}(\s+for\s+(?:the\s+)?{PART})?(?:\s*\(\s*(?P<said>these\s+are\s+(?:the\s+)?(?:left\s+|right\s+)?sleeve\s+(?:sts|stitches))\s*\))?",
        r"hold to next marker\1",
        "K to marker, slip sts between markers onto scrap yarn (these are the sleeve stitches), k to end.",
        spelt_out=True,
    ),
    row(
        "slip|place",
        rf"^(\s*)(?:slip|place|put)\s+(?:the\s+)?first\s+({N})\s+{STS}\s+for\s+(?:first\s+)?shoulder\s+on(?:to)?\s+(?:an?\s+)?(?:st(?:itch)?\s+)?holder\s*,\s*(?:slip|place|put)\s+(?:the\s+)?(?:next\s+)?cent(?:er|re)\s+({N})\s+{STS}\s+for\s+back\s+neck\s+(?:on)?to\s+(?:an?\s+)?(?:second\s+|another\s+)?holder\s*,\s*(?:and\s+)?(?:slip|place|put)\s+(?:the\s+)?rem(?:aining)?\s+{STS}\s+(?:on)?to\s+(?:an?\s+)?(?:third\s+|another\s+)?holder\s+for\s+(?:(?:second|other)\s+)?shoulder",
        r"\1hold \2 sts for first shoulder, hold \3 sts for back neck, hold all sts for second shoulder",
        "Slip first 6 sts for shoulder onto st holder, slip center 24 sts for back neck to another holder, slip remaining sts to another holder for shoulder.",
    ),
    # --- joining and picking up ---
    row("join care", r"\bjoin\s+carefully\s+(?P<said>not\s+to\s+twist)(?:\s+(?:sts|stitches))?\s*,?\s*and\s+", "join in the round. ", "Join carefully not to twist and knit 3 rnds.", spelt_out=True),
    row("in rib|p1 rib|p2 rib", rf"\bknit\s+({N}\s+(?:rnds|rounds|rows))\s+in\s+((?:k\s?\d\s*,\s*p\s?\d\s+)?rib)(?:bing)?(?:\s+patt(?:ern)?)?(?=\s*[.,]|\s*$|\s+or\s)", r"work \1 in \2", "Knit 3 rnds in ribbing pattern."),
    # --- said ---
    said_row("ready|done|finished", r"^\s*(?P<said>turn\s+(?:it\s+|work\s+)?(?:on|to)\s+(?:the\s+)?(?:rs|right\s+side)\s+and\s+you\s+are\s+(?:ready|done|finished))\s*\.?\s*$", "Turn on RS and you are ready."),
    row("aside", r"^\s*(?:set|put)\s+(?:that|this)\s+(?:part|piece)\s+aside(?:\s+and\s+now\s+we(?:'ll|\s+will)\s+(?:work|knit)\s+the\s+[a-z]+)?(?=\s*\.?\s*$)", KEPT, "Set that part aside and now we'll work the front."),
)
"""The rows, in the order tried."""
