"""Other wordings for stitches put on hold, returned, picked up along edges and laid over needles. No I/O."""

from __future__ import annotations

from stepper.craft.needles import NEEDLES, SIZE
from stepper.project.part_names import PART, WHICH
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import END, HELD_BY, JOIN_YARN, KEPT, OFF, STS, N, Synonym, row

_PUT = r"(?:place|put|slip|sl|leave|leaving|transfer|move)"
_BACK = r"(?:place|put|slip|sl|transfer|return|move)"
_DPNS = r"(?:(?:double[-\s]pointed|circular)\s+needles?|dpns?|needles?)"
_SIZED = rf"(?:{SIZE}|smaller|larger)\s+(?:(?:circular|double-pointed)\s+)?(?:needles?|dpns?)"
_PART = rf"({WHICH}{PART})"
_OTHERS = rf"(?:{WHICH}(?:{PART}|side|half)|rem(?:aining)?|other)"
_FEW = r"(?:two|three|four|five|[2-5])"
_SIDE = (
    r"(?:(?:left|right|front|back|cent(?:er|re)|side|neck|neckline|shoulder|armhole|underarm|thumb|heel|gusset|flap|edge|edges|selvedge|"
    r"selvage|band|button|buttonhole|collar|hood|body|sleeve|cuff|hem|lower|upper|bottom|top|first|second|other|straight|shaped|curved|"
    r"cast-?on|bound-?off|bind-?off|cast-?off|opening|gap|corner|steek|slope|seam|of|the|and|to)\b\s*)"
)
_EDGE = (
    rf"(?:(?:evenly\s+)?(?:round|around|down|up|along|across|over|from|at)\s+(?:the\s+)?{_SIDE}{{1,8}}(?<!\bto\s)(?<!\band\s)(?<!\s)|evenly)"
)
_PICK = r"pick\s+up\s+and\s+(?:knit|k)"
_PICKED = rf"(?:{_PICK}|pu\s+and\s+k(?:nit)?|pick\s+up)"

HOLDING: tuple[Synonym, ...] = (
    row(
        "held",
        rf"\b(?:(return)|place|put|slip|transfer)\s+(?:the\s+)?held\s+({N})\s+{STS}\s+(?=(?:back\s+)?(?:on|onto|to)\b)",
        r"return \2 sts ",
        "Return held 20 sts to dpns.",
    ),
    # --- what holds the stitches ---
    row("on to", r"\bon\s+to\s+(?=(?:an?\s+|the\s+)?(?:st|hold|waste|scrap|spare|needle|dpn|thread))", "onto ", "K10, sl next 12 sts on to a holder, k to end."),
    # --- stitches that the row has just worked ---
    row(
        "these|those|them|just worked|just knit",
        rf"((?:[\d)\]]|\b{STS}|\b(?:needle|marker|end|patt(?:ern)?|rib|tog)\b))(?:\s*[,;]\s*|\s+(?=(?:and|then)\s))(?:and\s+|then\s+)*{_PUT}\s+(?:these|those|them|(?:the\s+)?(?={N}\s+{STS}\s+just\s))\s*({N}(?=\s))?\s*(?:{STS})?"
        rf"(?:\s+just\s+(?:worked|knit(?:ted)?|purled))?\s+(?:on|onto|on\s+to|to)\s+{HELD_BY}(?=\s+for\s|\s*[,;.]|\s+(?:and|then)\b)",
        r"\1, hold these \2 sts",
        "K8 and place these 8 sts on a holder, bind off 12 sts, k to end.",
    ),
    row(
        "right needle|right-hand needle|right hand needle",
        rf"(\bhold\s+these\b[^.]*?\b(?:{OFF}|bo)\s+{N}(?:\s+{STS})?(?:\s+for\s+(?:the\s+)?[a-z ]+?)?\s*,\s*(?:and\s+|then\s+)*)(k|p|knit|purl|work)\s+"
        rf"(?P<said>until\s+(?:there\s+are\s+|you\s+have\s+)({N})\s+{STS}\s+on\s+(?:the\s+)?right(?:[-\s]hand)?\s+needle)(?=\s*[,;]|\s+(?:and|then)\b)",
        r"\1\2 \4",
        "K8 and place these sts on a holder, bind off 4 sts, k until there are 16 sts on right needle, place these sts on a holder, bind off 4 sts, k to end.",
        again=True,
        spelt_out=True,
    ),
    said_row(
        "aside|leave",
        r"\s*,?\s*(?P<said>(?:and|then)\s+(?:set\s+(?:them\s+)?aside|leave(?:\s+(?:them|it))?(?:\s+(?:aside|to\s+one\s+side|there))?(?:\s+for\s+(?:now|later|(?:the\s+)?(?:(?:back|front|left|right|button)\s+)?(?:neck|neckband|neckline|collar|hood|border|band|thumb|heel|sleeves?)))?))(?=\s*\.?\s*$)",
        "Place sts on holder and set aside.",
    ),
    said_row(
        "rem|these|first",
        rf",?\s*(?P<said>and\s+(?:continue|cont|work|proceed)\s+(?:only\s+)?on\s+(?:the\s+)?(?:rem(?:aining)?|these)(?:\s+{STS})?(?:\s+only)?)(?=\s*\.?\s*$)",
        "Slip first 15 sts to a holder and continue on remaining sts.",
    ),
    row(
        "rem|these",
        rf",?\s*\band\s+(?:continue|cont|work|proceed)\s+(?:only\s+)?on\s+(?:the\s+)?(?:rem(?:aining)?|these)\s+({N}\s+{STS})(?:\s+only)?(?=\s*\.?\s*$)",
        r". \1",
        "Slip first 15 sts to a holder and continue on remaining 25 sts.",
    ),
    row(
        "from",
        rf"\b({_BACK}\s+[^.,;]*?{STS})\s+from\s+(?:the\s+)?{HELD_BY}(?=\s+(?:back\s+)?(?:on|onto|to)\s)",
        r"\1",
        "Transfer left sleeve sts from holder to needles.",
    ),
    row(
        "needle",
        rf"\b(k|knit)\s?({N}\s+{STS})\s+(?P<said>onto\s+(?:one|a|the\s+first)\s+needle(?:\s+for\s+(?:the\s+)?(?:heel|flap|instep|sole|front|back))?)(?=\s*[,;])",
        r"\1 \2",
        "K16 sts onto one needle for heel, hold 16 for instep.",
        spelt_out=True,
    ),
    row(
        "hold",
        rf"\b{_PUT}\s+(?:the\s+)?(?:next\s+)?rem(?:aining)?\s+({N})\s+{STS}\s+(?:on|onto|to)\s+{HELD_BY}",
        r"hold rem \1 sts",
        "K16, leave rem 16 sts on hold for instep.",
    ),
    row(
        "hold|yarn|needle",
        rf"\b{_PUT}\s+(?:the\s+|next\s+|first\s+)*({N})\s+{_PART}\s+{STS}\s+(?:on|onto|to)\s+{HELD_BY}",
        r"hold \1 sts for \2",
        "Place 20 left sleeve sts on scrap yarn, k to end.",
    ),
    row(
        "hold|yarn|needle",
        rf"\b{_PUT}\s+(?:the\s+|all\s+)*{_PART}\s+{STS}\s+(?:on|onto|to)\s+{HELD_BY}\s*[,;]?\s*(?P<said>(?:and|then|and\s+then)\s+(?:cont(?:inue)?|go\s+on|work|proceed)"
        rf"(?:\s+(?:working|knitting))?(?:\s+(?:flat|in\s+rows|back\s+and\s+forth))?\s+(?:(?:on|over|with|across)\s+)?(?:the\s+|just\s+)*{_OTHERS}(?:\s+{STS})?(?:\s+(?:only|alone))?){END}",
        r"hold sts beyond gap for \1",
        "Place front sts on hold and continue on back sts only.",
        spelt_out=True,
    ),
    row(
        "hold|yarn|needle",
        rf"\b{_PUT}\s+(?:the\s+|all\s+)*{_PART}\s+{STS}\s+(?:on|onto|to)\s+{HELD_BY}",
        r"hold all sts for \1",
        "Place body sts on holder.",
    ),
    row(
        "bor|beg|end",
        r"\b(remove|slip|sl)\s+(?:the\s+)?(?:bor|beg(?:inning)?(?:[-\s]of[-\s](?:the\s+)?(?:rnd|round))?|end[-\s]of[-\s](?:the\s+)?(?:rnd|round))\s+(?:marker|m)\b",
        r"\1 marker",
        "Remove BOR marker, place 12 sts on scrap yarn, k to end.",
    ),
    row(
        "bor",
        r"\b(k|p|knit|purl|work)\s+to\s+(?:the\s+)?bor(?:\s+(?:marker|m))?\b",
        r"\1 to end",
        "K10, p to BOR.",
    ),
    # --- returned to the needles ---
    row(
        "needle|dpn",
        rf"\b{_BACK}\s+((?:the\s+)?(?:{N}\s+)?(?:held\s+)?(?:(?!to\b|on\b|from\b|one\b|each\b)[a-z]+\s+){{0,5}}?)({STS}\s+)?(?:back\s+)?(?:on|onto|to)\s+(?:the\s+)?({_SIZED})",
        r"change to \3. return \1sts to needles",
        "Place 20 held sts on US 6 (4 mm) double-pointed needles.",
    ),
    row(
        "needle|dpn",
        rf"\b{_BACK}\s+(?:the\s+)?((?:{N}\s+)?(?:held\s+)?(?:(?!to\b|on\b|from\b|one\b|each\b|held\b)[a-z]+\s+){{0,5}}?){STS}\s+(?:back\s+)?(?:on|onto|to)\s+(?:the\s+|a\s+)?{_DPNS}(?!\s*\d)",
        r"return \1sts to needles",
        "Place 20 held left sleeve sts on dpns. Join in the rnd.",
    ),
    row(
        "to needles",
        r"\b(to\s+needles)(?:\s+and\s+(?=(?:join|pick|pu)\b)|\s*[,;]\s*(?:and\s+|then\s+)?(?=[a-z]))",
        r"\1. ",
        "Return 20 sts to dpns, pick up and knit 3 sts over gap.",
    ),
    row(
        "rem",
        rf"\b{JOIN_YARN}\s+to\s+(?:the\s+)?rem(?:aining)?\s+({N}\s+)?{STS}\s+with\s+"
        r"(?:rs|right\s+side)\s+facing(?:\s*[,;]\s*|\s*(?=\.)|\s*$)",
        r"with rs facing, take up \1remaining sts. ",
        "Rejoin yarn to remaining 20 sts with RS facing, bind off 10 sts, k to end.",
    ),
    row(
        "rem",
        rf"\b{JOIN_YARN}\s+to\s+(?:the\s+)?rem(?:aining)?\s+({N}\s+)?{STS}(?!\s+(?:on\s+)?{HELD_BY})"
        r"(?:\s*,?\s*(?:and|then)\s+|\s*[,;]\s*|\s*(?=\.)|\s*$)",
        r"take up \1remaining sts. ",
        "With RS facing, rejoin yarn to remaining 20 sts, k to end.",
    ),
    row(
        "join",
        rf"\b{JOIN_YARN}\s+to\s+(?:the\s+)?(?:rem(?:aining)?\s+|held\s+)*({N}\s+)?(?:rem(?:aining)?\s+|held\s+)*{STS}(?:\s+(?:on\s+)?{HELD_BY})?\s+with\s+"
        r"(?:rs|right\s+side)\s+facing(?:\s*[,;]\s*|\s*(?=\.)|\s*$)",
        r"with rs facing, return \1held sts to needles. ",
        "Rejoin yarn to held sts with RS facing, bind off 10 sts, k to end.",
    ),
    row(
        "join",
        rf"\b{JOIN_YARN}\s+to\s+(?:the\s+)?(?:rem(?:aining)?\s+|held\s+)*({N}\s+)?(?:rem(?:aining)?\s+|held\s+)*{STS}"
        rf"(?:\s+(?:on\s+)?{HELD_BY})?(?:\s*,?\s*(?:and|then)\s+|\s*[,;]\s*|\s*(?=\.)|\s*$)",
        r"return \1held sts to needles. ",
        "With RS facing, rejoin yarn to held sts.",
    ),
    row(
        "worked|knit",
        rf"(?:(?<=^)|(?<=[.!]))(\s*)(?P<said>(?:the\s+)?(?:(?:left|right|upper|lower)\s+)?(?:front|back|heel|flap|yoke|body|piece|top|bodice|collar|hood|band|tab|strap|half|side))\s+"
        rf"is\s+(?:now\s+)?(?:worked|knit|knitted)\s+(?:flat|in\s+rows|back\s+and\s+forth(?:\s+in\s+rows)?)(?:\s+(?:on|over)\s+(?:the\s+|these\s+)?(?:rem(?:aining)?\s+)?({N}\s+{STS}))",
        r"\1turn work. \3",
        "Hold 30 sts for back, k30. Front is worked back and forth on 30 sts.",
        spelt_out=True,
    ),
    # --- picked up ---
    row(
        "with",
        rf"^(\s*)with\s+((?:rs|right\s+side)(?:\s+of\s+(?:the\s+)?work)?\s+facing)(?:,\s*(?:using|with)|\s+and(?:\s+(?:using|with))?)\s+({NEEDLES})\s*,?\s*(?=(?:beg|start|{_PICKED}))",
        r"\1change to \3. with \2, ",
        "With RS facing and smaller needles, pick up and knit 44 sts.",
    ),
    row(
        "at",
        rf"(?:(?<=^)|(?<=[.,]))\s*(?:and\s+)?(?:starting|beginning|beg|start)\s+at\s+(?:the\s+)?(?:{_SIDE}){{1,6}}\s*,\s*(?=pick\s+up|pu\b)",
        KEPT,
        "With RS facing, beg at right shoulder, pick up and knit 44 sts.",
    ),
    said_row_behind(
        "pick|pu",
        rf"\b({_PICKED}\s+{N}(?:\s+{STS})?)\s+(?P<said>{_EDGE})(?=\s*[,;.(]|\s+and\s+\d|\s*$)",
        "Pick up and k 30 sts round neck.",
    ),
    *(
        row(
            "holder|hold|yarn",
            rf"\b({_PICKED}\s+{N}\b[^.;]*?)\s*,\s*(?:and\s+|then\s+)?(?:k(?:nit)?\s*(?:across\s+)?)?(?:the\s+)?({N})\s+(?:held\s+)?{STS}\s+"
            rf"(?:from|on)\s+(?:the\s+)?{name}(?:st(?:itch)?\s+)?(?:holder|hold|waste\s+yarn)\b",
            words,
            example,
            again=True,
        )
        for name, words, example in (
            (
                r"((?:(?:left|right)\s+)?(?:front|back|cent(?:er|re)|neck|thumb|instep)(?:\s+(?:front|neck|back))?)\s+",
                r"\1, k across \2 \3 sts",
                "Pick up and knit 18 sts down left neck, 24 sts from front neck holder.",
            ),
            ("", r"\1, k across \2 held sts", "Pick up and knit 18 sts down left neck, 24 sts from holder."),
        )
    ),
    row(
        "pick|pu",
        rf"\b({_PICKED}\s+{N}(?:\s+{STS})?(?:\s*,\s*(?:and\s+)?(?:{_PICKED}\s+{N}(?:\s+{STS})?|k\s+across\s+{N}\s+[a-z ]+?\s+sts))*)\s*,?\s*(?:and\s+|then\s+|,\s*)*({N}\s+{STS})\s+(?P<said>{_EDGE})(?=\s*[,;.]|\s+and\s+\d|\s*$)",
        r"\1, pick up and knit \2",
        "Pick up and knit 12 sts down left side of neck, 10 sts across front, and 12 sts up right side of neck.",
        again=True,
        spelt_out=True,
    ),
    # --- over needles ---
    row(
        "needle|dpn",
        rf"\b(?:divide|arrange|distribute|split|spread|place|put)\s+(?:all\s+|the\s+|these\s+)*(?:{STS}\s+)?(?:evenly\s+)?(?:over|onto|on|among|between|across)\s+({_FEW})\s+{_DPNS}\s*[:,]\s*(?={N}\s+{STS}\s+on\s+(?:the\s+)?(?:N|needle\s*|first|1st)\d?)",
        r"divide over \1 needles, ",
        "Divide sts over 5 needles: 8 sts on N1, 8 sts on N2, 8 sts on N3, 8 sts on N4, 8 sts on N5.",
    ),
    row(
        "needle|dpn",
        rf"\b(?:divide|arrange|distribute|split|spread|place|put)\s+(?:all\s+|the\s+|these\s+)*(?:{STS}\s+)?(?:evenly\s+)?(?:over|onto|on|among|between|across)\s+({_FEW})\s+{_DPNS}",
        r"divide over \1 needles",
        "Divide sts evenly over 3 needles.",
    ),
    row(
        "needles|dpns",
        rf"\b(divide\s+over\s+{_FEW}\s+needles)\s*,\s*(?=(?:pm|place|join|and\b))(?:and\s+)?",
        r"\1. ",
        "Divide evenly onto 4 needles, pm, and join in the rnd.",
    ),
    row("pm", r"(\.\s*pm)\s*,\s*(?:and\s+)?(?=join\b)", r"\1 and ", "Divide evenly onto 4 needles, pm, and join in the rnd."),
    row(
        "each|per needle|per dpn",
        rf"(divide\s+over\s+{_FEW}\s+needles)\s*[,:;.(-]\s*(?:with\s+)?({N})(?:\s+{STS})?\s+(?:(?:on|to)\s+each(?:\s+(?:needle|dpn))?|per\s+(?:needle|dpn))\s*\)?\s*,?\s*and\s+(?=join\b)",
        r"\1. \2 sts on each needle. ",
        "Divide sts evenly over 4 needles (14 sts on each) and join in the round.",
    ),
    row(
        "each|per needle|per dpn",
        rf"((?:cast\s+on|co)\s+{N}\s+{STS}|divide\s+over\s+{_FEW}\s+needles)\s*[,:;.(-]\s*(?:with\s+)?({N})(?:\s+{STS})?\s+(?:(?:on|to|per)\s+each(?:\s+(?:needle|dpn))?|per\s+(?:needle|dpn))\s*\)?",
        r"\1. \2 sts on each needle",
        "Using a magic cast-on, CO 24 sts, with 12 on each needle.",
    ),
)
"""The rows, in the order tried."""
