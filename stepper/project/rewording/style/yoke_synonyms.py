"""Wordings of sweaters knitted in the round, from the neck or from the hem: counts, joins, the divide, lengths of a yoke. No I/O.

Such a page tells the same few things in the words of each designer: how many stitches there are, where the round
begins, from where a yoke is measured, which stitches wait. The words are listed, so that none can hide an
instruction. Source: the print of such pages; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.part_names import PART, WHICH
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import BEGIN, CUT_YARN, LONG, ROUND, STOP, STS, N, Synonym, row

_Y: Final = r"(?-i:MC|CC\d?|C\d|[A-H]|[YZ])"
_BOR: Final = r"(?:bor|(?:the\s+)?(?:beg(?:inning)?|start)\.?\s+of\s+(?:the\s+)?(?:rnd|round)s?)"
_PART: Final = rf"(?:the\s+)?{WHICH}{PART}s?"
_WANTED: Final = r"(?:your\s+|the\s+|its\s+)?(?:desired|preferred|wanted|required)(?:\s+(?:total|full|finished|final|body|sleeve))*(?:\s+length)?"
_NEEDLES: Final = r"(?:(?:longer|shorter|next)\s+|\d+\s*(?:cm|in|\")\s+)?(?:circular\s+)?(?:needles?|circulars?|circs?|dpns?|double[-\s]pointed\s+needles|cables?|cords?|magic\s+loop)(?:\s+or\s+dpns?)?"
_ON: Final = r"(?:(?:an?|the|another|a\s+separate|a\s+second|a\s+third)\s+)?(?:(?:st(?:itch)?\s+)?holders?|(?:piece\s+of\s+)?(?:waste|scrap)\s+yarn|safety\s+pin)"

YOKES: tuple[Synonym, ...] = (
    # --- how many there are ---
    row("still|again", rf"{BEGIN}(?:still|once\s+again|again)\s+(?={N}\s+{STS}{STOP})", "", "Knit 1 rnd. Still 40 sts."),
    row("total", rf"({BEGIN}|[\[(]\s*)({N})\s+total\s+({STS})(?=\s*[.)\]]|\s*$)", r"\1\2 \3", "Knit 1 rnd. 40 total sts."),
    row("body", rf"({BEGIN})(?:the\s+)?body\s+(?:now\s+)?has\s+({N}\s+{STS})(?=\s*\.?\s*$)", r"\1 \2", "Knit 1 rnd. Body now has 40 sts."),
    row("have", rf"(\bhave\s+(?:a\s+total\s+of\s+)?{N})\s+(?:body|sleeve|yoke)\s+({STS})(?=\s*\.?\s*$)", r"\1 \2", "Knit 1 rnd. You now have 40 body sts."),
    row("needle", rf"({BEGIN})({N}\s+)(?:body\s+|sleeve\s+|yoke\s+)?({STS})\s+(?:are\s+)?(?:now\s+)?on\s+(?:the\s+|your\s+)?needles?(?:\s+for\s+(?:the\s+)?(?:body|sleeve|yoke|back|front))?(?=\s*\.?\s*$)", r"\1 \2\3", "Knit 1 rnd. 40 sts on needles for body."),
    row("body|sleeve|yoke", rf"\.\s*-\s*({N})\s+(?:body|sleeve|yoke)\s+({STS})(?=\s*\.?\s*$)", r". \1 \2", "K20, CO 4 sts. - 44 body sts."),
    said_row_behind(
        "marker",
        rf"(\b{N}\s+{STS})\s+(?P<said>and\s+(?:\d+|two|three|four|five|six|eight)\s+(?:raglan\s+)?markers?)(?=\s+on\s+(?:the|your)\s+needles?{STOP})",
        "You should have 40 sts and 4 markers on your needle.",
    ),
    said_row(
        "placed",
        rf"{BEGIN}(?P<said>(?:you\s+have\s+)?(?:now\s+)?placed\s+(?:a\s+total\s+of\s+)?(?:\d+|two|three|four|five|six|eight)\s+(?:raglan\s+|side\s+)?markers?(?:\s*,?\s+(?:in\s+addition\s+to|including|plus|not\s+counting)\s+(?:the\s+)?(?:bor|beginning\s+of\s+(?:rnd|round))(?:\s+(?:marker|m))?)?){STOP}",
        "Knit 1 rnd. You have now placed 4 raglan markers in addition to the BOR marker.",
    ),
    row("increased|decreased", rf"({BEGIN})you(?:'ve|\s+have)\s+(inc|dec)reased\s+({N}\s+{STS})(?=\s*\.?\s*$)", r"\1 \3 \2'd", "Rnd 1: *K9, M1L; rep from * around. You have increased 4 sts."),
    row("have been", rf"({BEGIN})({N}\s+{STS})\s+(?:have\s+been|were)\s+(?:(inc)reased|(dec)reased)(?=\s*\.?\s*$)", r"\1 \2 \3\4'd", "Rnd 1: *K9, M1L; rep from * around. 4 sts have been increased."),
    row("count", rf"({BEGIN})(?:the\s+)?stitch\s+count\s+(?:(inc)reases|(dec)reases)\s+by\s+({N})(?:\s+{STS})?(?=\s*\.?\s*$)", r"\1 \4 sts \2\3'd", "Rnd 1: *K9, M1L; rep from * around. Stitch count increases by 4."),
    row("short row|short-row", rf"\b(rep(?:eat)?|work)\s+(?:(?:the\s+)?(?:last|previous|prev\.?)|these)\s+({N})\s+short[-\s]rows\b", r"\1 last \2 short rows", "Rep the last 2 short rows twice more."),
    row("est", r"\b(as|in)\s+est(?:ab)?\b\.?", r"\1 established", "Work 4 rows as est."),
    said_row(
        "on hold",
        rf"{BEGIN}(?P<said>(?:the\s+)?(?:(?:sleeve|body|front|back|other|remaining|rem|held)\s+)+{STS}\s+(?:will\s+)?(?:remain|stay|rest|wait|are\s+left|are)\s+on\s+hold(?:\s+(?:while|until)\s+(?:you\s+)?(?:work|knit|the)\s+(?:the\s+)?(?:body|sleeves?|yoke)(?:\s+is\s+(?:done|finished|complete))?)?){STOP}",
        "Knit 1 rnd. Sleeve sts remain on hold.",
    ),
    # --- the round begun ---
    row("marker", r"\bplace\s+(?:the|a|your)\s+(?:bor|beg(?:inning)?[-\s]of[-\s](?:the[-\s])?(?:rnd|round))\s+(?:marker|m)\b", "pm for BOR", "CO 40 sts. Place the BOR marker and join to work in the round."),
    row("pm to|marker to", rf"\b(?:pm|place\s+(?:a\s+)?marker)\s+to\s+(?:mark|indicate|show|denote)\s+{_BOR}\s*,?\s*", "pm for BOR ", "CO 40 sts. Pm to mark beg of rnd, and join to work in the round."),
    row("join", rf"\bjoin\s+to\s+work\s+in\s+the\s+(?:rnd|round)\s+again\s+and\s+(?=(?:k|knit)\s+to\s+(?:{_BOR}|end)\b)", "join in the round. ", "CO 40 sts. Join to work in the rnd again and knit to BOR."),
    row("beg|start|bor", rf"\b(k|knit)\s+(?:across\s+)?(?:all\s+sts\s+)?to\s+{_BOR}(?!\s*(?:marker|m)\b)(?=\s*[,.;]|\s*$)", r"\1 to end", "Knit to the beginning of the round."),
    row("then", rf"\b((?:k|knit)\s+to\s+(?:end|{_BOR}))\s*,?\s*(?:and\s+)?then\s+(?=(?:k|knit)\s+(?:\d+|one|two)\s+(?:more\s+|complete\s+|full\s+)?(?:rnds?|rounds?)\b)", r"\1. ", "Knit to BOR, then knit one round."),
    row("from here", r"^\s*(?:from\s+here(?:\s+on)?\s*,?\s*)?(?:now\s+)?(?:work|knit|continue)\s+in\s+(?:the\s+)?(?:rnd|round|rounds)(?:\s+again)?\s+from\s+(?:here|this\s+point|now)(?:\s+on(?:wards?)?)?(?=\s*\.?\s*$)", "Resume working in the round", "Work in the rnd from here."),
    row(
        "omitting",
        r"\*\s*([^*;.]+?),\s*(pm|place\s+marker)\s*[,;]\s*rep(?:eat)?\s+from\s+\*\s+(?:once(?:\s+more)?|one\s+more\s+time)\s*,?\s*omitting\s+(?:the\s+)?(?:last|final)\s+(?:pm|marker)(?=\s*\.?\s*$)",
        r"\1, \2, \1",
        "Set-up rnd: *K8, pm, k12, pm; rep from * once more, omitting the last pm.",
    ),
    row("double", rf"\b(knit|purl|k)\s+(?:one|1)\s+(?:rnd|round)(?:\s+over\s+all\s+{STS})?\s+and\s+(?P<said>(?:work|knit)\s+(?:the\s+|all\s+|remaining\s+)*(?:double\s+stitches|ds|wraps)\s+together\s+as\s+you\s+(?:pass|reach|come\s+to|meet)\s+them)(?=\s*\.?\s*$)", r"\1 1 round", "Knit one round over all sts and work the double stitches together as you pass them.", spelt_out=True),
    row("resolve", r"\bresolve\s+(?=(?:the\s+|each\s+)?(?:ds|double\s+st(?:itch)?)\b(?!\s+(?:of|on)))", "work ", "Row 3 (RS): Make a DS, k to DS, resolve DS, k3, turn."),
    row("past next|past the next", rf"\b(knit|purl|k|p)\s+to\s+({N})\s+{STS}\s+past\s+(?:the\s+)?next\s+(?:two|2)\s+(?:markers|m)\b", r"\1 to marker, sm, \1 to marker, sm, \1 \2", "Row 2 (WS): Make a DS, p to 3 sts past next two markers, turn."),
    row("previous|last", r"^((?![^:]*\b[rw]s\b)[^:]*:[^:]*?\b(?:k|knit)\s+to)\s+(?:the\s+)?(ds|double\s+st(?:itch)?)\s+(?P<said>(?:of|from)\s+(?:the\s+)?(?:previous|last)\s+rs\s+row)", r"\1 \2", "Short Row 3: Make DS, knit to DS of previous RS row, work DS as one st, k4, turn.", spelt_out=True),
    row("previous|last", r"^((?![^:]*\b[rw]s\b)[^:]*:[^:]*?\b(?:p|purl)\s+to)\s+(?:the\s+)?(ds|double\s+st(?:itch)?)\s+(?P<said>(?:of|from)\s+(?:the\s+)?(?:previous|last)\s+ws\s+row)", r"\1 \2", "Short Row 4: Make DS, purl to DS of previous WS row, work DS as one st, p4, turn.", spelt_out=True),
    row("twisted", rf"\btaking\s+care\s+(?:that\s+)?(?:your|the)\s+{STS}\s+(?:aren't|are\s+not)\s+twisted", "being careful not to twist", "CO 40 sts. Join in the round, taking care your stitches aren't twisted."),
    row("last st", r"(,\s*|;\s*)(k|p|knit|purl)\s+(?:the\s+)?last\s+st(?:itch)?(?=\s*\.?\s*$)", r"\1\2 1", "Work flat. CO 20 sts. K10, bind off 9 sts, k the last st."),
    # --- what is beside a row ---
    said_row(
        "to longer|to shorter|to the longer|to the shorter|to a longer|to dpn|to the dpn|to magic|to double|to the double|to circ|to a shorter|to the next|to next",
        rf"\s*,?\s*(?P<said>(?:switch(?:ing)?|chang(?:e|ing)|moving|transferring)\s+to\s+(?:the\s+|a\s+|your\s+)?{_NEEDLES}\s+(?:when(?:ever)?|as|once|if)\s+(?:(?:it\s+is\s+)?(?:needed|required|necessary|desired)|there\s+are\s+(?:enough|too\s+many|too\s+few)\s+{STS}|(?:the\s+)?{STS}\s+no\s+longer\s+fit(?:\s+comfortably)?(?:\s+(?:on|around)\s+the\s+needles?)?|you\s+(?:need(?:\s+to)?|have\s+(?:enough|too\s+many)\s+{STS})))(?=\s*[.;]|\s*$)",
        "Knit 2 rnds, switching to the longer needle when there are enough stitches.",
    ),
    row("and decrease|and increase|and dec|and inc", rf"(^\s*|:\s*)(knit|purl)\s+and\s+(?:(inc)|(dec))(?:rease)?\s+({N}\s+{STS}\s+evenly)", r"\1\2, \3\4reasing \5", "Next round: Knit and decrease 4 sts evenly."),
    row(
        "on the last|on last",
        rf"^(\s*knit\s+{N}\s+{ROUND})\s*[.;]\s*on\s+(?:the\s+)?(last|final)\s+(?:of\s+these\s+)?({ROUND})\s*,?\s*(?:(inc)|(dec))(?:rease)?\s+({N}\s+{STS})\s+evenly(?:\s+(?:spaced|distributed|around))*",
        r"\1, \4\5reasing \6 evenly on the last \3",
        "Knit 3 rounds. On the last round, decrease 4 sts evenly.",
    ),
    row("over all|across all", r"(\bchart\s+[A-Z\d]+)\s+(?:over|across)\s+all\s+(?:sts|stitches)\b", r"\1", "Join CC and work Chart A over all sts."),
    row("loosely,|loosely and", r"(\b(?:bo|bind\s+off|cast\s+off)\b[^.;,]*?\bloosely)\s*(?:,|and)\s*(?=(?:knitwise|purlwise|in\s+(?:rib|patt(?:ern)?)|k(?:nit)?wise)\b)", r"\1 ", "BO loosely, in rib."),
    # --- needles and fabrics ---
    row(
        "on |using|with",
        rf"^(\s*)(cast\s+on|co)\s+({N}\s+{STS})\s+(?:with|in|using)\s+({_Y})\s+(?:on|onto|using)\s+(?:an?\s+|the\s+)?(?:(\d+(?:[.,]\d+)?\s*mm)\s+(?:circular|double[-\s]pointed|dp)?\s*(?:needles?|dpns?)|(?:circular\s+|double[-\s]pointed\s+)?(?:needles?|dpns?)\s+(\d+(?:[.,]\d+)?\s*mm))(?P<said>\s*,\s*\d+\s*cm)?(?=\s*\.|\s*$)",
        r"\1Change to \5\6 needles. With \4, \2 \3",
        "Cast on 40 sts with MC on a 3.5 mm circular needle, 80 cm.",
        spelt_out=True,
    ),
    row("circular", r"(\b(?:change|switch)\s+to\s+(?:the\s+)?(?:larger|smaller|bigger|longer|shorter))\s+(?:\d+\s*(?:in|cm|\")?\s*)(circular|dpn)s?(?:\s+needles?)?(?=\s*[.,;]|\s*$)", r"\1 needles", "Change to larger 16\" circular."),
    row("mm", r"(\bchange\s+to\s+(?:an?\s+)?\d+(?:[.,]\d+)?\s*mm\s+(?:circular\s+)?needles?)(?P<said>\s*,\s*\d+\s*cm)(?=\s*\.)", r"\1", "Change to a 3.5 mm circular needle, 40 cm. Work in k1, p1 rib for 8 cm.", spelt_out=True),
    row("rib", rf"\bwork\s+({LONG})\s+(?:of\s+|in\s+)?rib(?:bing)?\s*[(]\s*(k\s?\d+(?:\s?tbl)?)\s*,\s*(p\s?\d+(?:\s?tbl)?)\s*[)]", r"work in \2, \3 rib for \1", "Work 6 cm rib (k1tbl, p1)."),
    # --- how long ---
    row("(measured", rf"({LONG})\s*[(]\s*measured\s+(from\s+(?:the\s+)?(?:underarm|cast[-\s]on(?:\s+edge)?|armhole|divide))\s*[)]", r"\1 \2", "Work even until body measures 8 cm (measured from cast-on edge)."),
    row("neckband|collar|ribbing", rf"({LONG})\s*,?\s+from\s+(?:the\s+)?(?:(?:bottom|underside|base|lower\s+edge|last\s+(?:rnd|round|row))\s+of\s+(?:the\s+)?(neckband|collar|neck\s+ribbing)|last\s+(?:rnd|round|row)\s+of\s+(?:the\s+)?(ribbing))(?:\s+edge)?\b", r"\1 from end of \2\3", "Work even until yoke measures 8 cm from bottom of neckband."),
    said_row_behind("front|back", rf"(\buntil\b[^.;]*?{LONG}(?:\s+from\s+end\s+of\s+[a-z]+)?)\s*,?\s+(?P<said>(?:measured\s+)?(?:at|in|down)\s+(?:the\s+)?(?:cent(?:er|re)|middle)?\s*(?:of\s+the\s+)?(?:front|back))(?=\s*[.]|\s*$)", "Work even until yoke measures 8 cm at center front."),
    said_row_behind(
        "desired|preferred|wanted|required",
        rf"(\buntil\b[^.;]*?{LONG}(?:\s+from\s+[a-z -]{{3,24}}?)?)\s*[,(]?\s+(?P<said>or\s+(?:until\s+|to\s+|about\s+|approx\.?\s+)*(?:(?:it|piece|body|sleeve|yoke)\s+is\s+)?(?:{LONG}\s+(?:less\s+than|shorter\s+than|short\s+of|before|from)\s+{_WANTED}|{_WANTED}\s+(?:minus|less)\s+{LONG}))[)]?(?=\s*[.]|\s*$)",
        "Work even until body measures 12 in / 30 cm from cast-on edge, or to 2 in / 5 cm less than desired length.",
    ),
    row("stopping", rf"\s*,?\s*(?:and\s+)?stopping\s+({N}\s+{STS})\s+before\s+{_BOR}(?:\s+(?:marker|m))?(?:\s+(?:on|of|in)\s+(?:the\s+)?(?:last|final)\s+(?:rnd|round))?(?=\s*\.?\s*$)", r", ending last rnd \1 before BOR", "Knit until piece measures 8 cm, stopping 4 sts before BOR on the final rnd."),
    said_row_behind("raglan", rf"({LONG}(?:\s+from\s+end\s+of\s+[a-z]+)?)\s*,?\s+(?P<said>measured\s+(?:straight\s+)?(?:down|along)\s+(?:the\s+)?raglan(?:\s+(?:line|sts|stitches))?)(?=\s*\.?\s*$)", "Knit until yoke measures 8 cm, measured straight down the raglan line."),
    said_row_behind("or until", rf"(\bknit\s+{N}\s+{ROUND})\s*,?\s+(?P<said>or\s+until\s+(?:the\s+|your\s+)?(?:yoke|body|sleeve|piece|collar|neckband)\s+(?:measures|is)\s+(?:about\s+|approx\.?\s+|approximately\s+)?{LONG}(?:\s+from\s+(?:the\s+)?(?:bottom|end|base)\s+of\s+(?:the\s+)?(?:collar|neckband|ribbing)|\s+from\s+(?:the\s+)?(?:underarm|cast-on(?:\s+edge)?|co\s+edge))?(?:\s+at\s+(?:the\s+)?cent(?:er|re)\s+(?:front|back))?)(?=\s*\.?\s*$)", "Knit 4 rnds, or until yoke measures approx 8 cm from bottom of collar at center front."),
    row("match", r"\b((?:front\s+|back\s+)?armholes?)\s+match(?:es)?\s+(?:those\s+of\s+)?(?:the\s+)?(back|front)\b", r"armhole measures same as \2", "Work even until front armholes match back."),
    # --- the divide, and what waits ---
    row("bor", r"^(\s*(?:[^:.*]{1,40}:\s*)?)remov(?:e|ing)\s+(?:the\s+)?(?:bor|beginning\s+of\s+(?:rnd|round))(?:\s+(?:marker|m))?\s*[.,;]\s*(?=(?:k|p)\s?\d|k\s|knit|purl)", r"\1remove marker, ", "Remove BOR. K20, hold 8 sts, k to end."),
    said_row_behind("(", rf"(\b(?:place|slip|put)\s+(?:the\s+)?(?:next\s+)?{N}\s+{STS})\s*[(](?P<said>{_PART})[)](?=\s+(?:on|onto|to)\b)", "K20, place the next 8 sts (left sleeve) on waste yarn, k to end."),
    said_row_behind("incl", rf"(\b(?:k|p|knit|purl)\s?{N}(?:\s+(?:{_PART}\s+)?{STS})?)\s*[(](?P<said>incl(?:uding|\.|udes)?\s+(?:the\s+|all\s+|both\s+|2\s+|4\s+|two\s+)*(?:raglan|seam|side)\s+{STS})[)](?=\s*[,.;]|\s*$)", "K20 back sts (incl. the raglan sts), hold 8 sts, k to end."),
    said_row_behind("(that|(this", rf"(\b(?:place|slip|put)\s+(?:the\s+)?next\s+{N}\s+{STS}\s+(?:on|onto|to)\s+{_ON})\s*[(](?P<said>(?:that's|that\s+is|this\s+is)\s+(?:your\s+|the\s+)?(?:left|right|first|second)\s+sleeve)[)]", "K20, put the next 8 sts onto scrap yarn (that's your first sleeve), k to end."),
    row("more", rf"\b((?:co|cast\s+on)\s+{N})\s+more\s+({STS})", r"\1 \2", "K20, CO 4 sts, pm, CO 4 more sts, k to end."),
    said_row_behind("co |cast|underarm", rf"(\bpick\s+up\s+and\s+(?:knit|k)\s+{N}(?:\s+{STS})?)\s+(?P<said>(?:from|along|in|into|across|through|over)\s+(?:the\s+|each\s+)?(?:rem(?:aining)?\s+)?(?:co\s+{STS}|underarm\s+(?:{STS}|(?:(?:co|cast[-\s]on)\s+)?(?:{STS}|edge))))(?=\s*[,;.]|\s+and\b|\s*$)", "CO 20 sts. Pick up and knit 4 sts from the CO sts, k to end."),
    row("more", rf"(\bpick\s+up\s+and\s+(?:knit|k)\s+{N})\s+more\s+({STS})", r"\1 \2", "CO 20 sts. Pick up and knit 4 more sts."),
    row(
        "holder|waste|scrap|pin",
        rf"(\b(?:place|slip|put)\s+(?:the\s+)?(?:first\s+|next\s+|last\s+)?{N}\s+{STS}\s+(?:on|onto|to)\s+{_ON}(?:\s+for\s+{_PART})?)\s*,\s*(?:and\s+)?(?:then\s+)?(?:the\s+)?(?:next|following|last|rem(?:aining)?)\s+({N}\s+{STS})\s+(?=(?:on|onto|to)\s+{_ON}\b)",
        r"\1, place next \2 ",
        "Place first 8 sts on a holder, the next 24 sts on another holder, and the last 8 sts on a third holder.",
        again=True,
    ),
    row("sleeve|held", rf"(\bpick\s+up\s+and\s+(?:knit|k)\b[^.;:]*?,\s*(?:and\s+)?(?:then\s+)?)(?:knit|k)\s+(?:the\s+)?((?:held\s+sleeve|held|sleeve)\s+{STS})(?=\s*[,.;]|\s*$)", r"\1knit across \2", "Pick up and knit 4 sts, knit the sleeve sts, pick up and knit 4 sts."),
    row("but do not|but don't", rf"\s*,?\s*but\s+(?:do\s+not|don't)\s+{CUT_YARN}(?:\s+this\s+time)?(?=\s*\.?\s*$)", ". Do not cut the yarn", "Knit the other sleeve the same way, but do not cut the yarn."),
    # --- charts, turned rows and what is left of a round ---
    row("work", r"\bwork\s+(?=\*[^*]+\brep(?:eat)?\s+from\s+\*\s+(?:around|across|to\s+(?:the\s+)?end(?:\s+of\s+(?:rnd|round))?)\s+(?:until|for)\b)", "", "Work *k1, p1; rep from * around until piece measures 2 cm."),
    said_row("where|as", r"(?<=\w)\s*,\s*(?P<said>working\s+(?:the\s+|all\s+)?(?:increases|decreases|shaping)\s+(?:where|as)\s+(?:indicated|shown|marked|charted)(?:\s+(?:on|in)\s+(?:the\s+)?chart)?)(?=\s*[,.]|\s+and\b|\s*$)", "Work chart grow once, working increases where indicated."),
    row("all", r"\b(work|knit)\s+(?:through\s+)?all\s+(?:of\s+)?(?:the\s+)?(?:rounds|rnds|rows)\s+of\s+(?:the\s+)?(?=(?:[a-z]+\s+)?chart\b)", r"\1 ", "Work all rnds of chart grow."),
    row("across|over", rf"(\bwork\s+(?:rnd|row|round)\s+\d+\s+of\s+(?:the\s+)?(?:[a-z]+\s+)?chart(?:\s+(?-i:[A-Z]|\d)\b)?)\s+(?:across|over)\s+(?:the\s+)?({N})\s+(?P<said>instep|front|sole|back|body)\s+({STS})", r"\1 over next \2 \4", "Work Rnd 1 of chart over 4 instep sts, knit to end."),
    row("to end|to the end", rf"\b([kp])\s?({N})\s+{STS}\s+to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:rnd|round|row))?(?=\s*[.;]|\s*$)", r"\1\2", "K20, p20 sts to end of rnd."),
    row("between", rf"(\b(?:marker|m)\s*,\s*)(slip|place|put|sl|transfer)\s+(?:all\s+)?(?:(?:the|of|sleeve|these)\s+)*{STS}\s+between\s+(?:the\s+)?(?:next\s+)?(?:two\s+|2\s+)?markers\s+(?=(?:on|to|onto)\b)", r"\1\2 sts to next marker ", "K10, pm, k20, pm, k10. K to marker, remove marker, place all sts between markers on hold, k to end."),
    row("wraps", r"\bpicking\s+up\s+and\s+(?:knitting|working)\s+(?:the\s+|all\s+)?wraps\s+(?:together|tog)\s+with\s+(?:the\s+|their\s+)?(?:wrapped\s+)?(?:sts|stitches)", "picking up wraps and knitting them together with the wrapped sts", "Knit 1 rnd, picking up and knitting wraps together with wrapped sts."),
    row("dec|inc", rf"{BEGIN}(dec|inc)(?:rease)?\s+(?:on\s+|in\s+)?(?=every\s+(?:other|alt(?:ernate)?|\d+(?:st|nd|rd|th)|RS)\s+(?:rnd|round|row)\s+{N}\s+times\b(?!\s*,?\s*(?:and\s+|then\b)))", r" rep same \1 rnd ", "Knit 1 rnd. Dec on every other rnd 6 times. 28 sts."),
    said_row("short", rf"{BEGIN}(?P<said>(?:now\s+)?shape\s+(?:the\s+)?(?:shoulders?|back\s+neck|neck|hem|bust|back)\s+(?:using|with|by)\s+(?:german\s+)?short[-\s]rows){STOP}", "Shape shoulders using short rows. Row 1 (RS): K16, turn."),
    row("each|every", rf"\b(pick\s+up\s+and\s+(?:knit|k))\s+(?P<said>(?:1|one)\s+st(?:itch)?\s+(?:in|from|for|into)\s+(?:each|every)\s+(?:cast[-\s]on\s+st(?:itch)?|st(?:itch)?\s+cast\s+on)(?:\s+(?:around|along|across)\s+(?:the\s+)?(?:neck(?:line)?|edge|neck\s+edge|hem|cuff))?)\s*[.,:=(-]+\s*({N})\s+({STS})\s*\)?(?=\s*\.?\s*$)", r"\1 \3 \4", "Pick up and knit 1 st in each cast-on st around neck. 88 sts.", spelt_out=True),
    row("new yarn|another yarn", r"(\b[kp]\s?\d+[\d\s(),]*,\s*)join\s+(?:new|another)\s+yarn\s*(?:,|and)\s*(?=(?:bo|bind\s+off|cast\s+off)\b)", r"\1join a second ball of yarn, ", "K10, join new yarn and bind off 20 sts, k to end."),
    row("sleeve|front|back", r"\b(k|knit)\s+(?:left\s+|right\s+)?(?:sleeve|front|back)\s*,\s*(?=(?:sl(?:ip)?\s*(?:the\s+)?|s)(?:m\b|marker))", r"\1 to m, ", "[K sleeve, sl m, k1, M1L, k to 1 st before m, M1R, k1, sl m] twice."),
    said_row_behind("only", rf"(\b{N}\s+{STS}\s+(?:inc|dec)(?:'?d|reased)?\b\.?)\s*,?\s*(?P<said>(?:on\s+)?(?:the\s+)?(?:front|back|body|sleeves?)(?:\s+and\s+(?:the\s+)?(?:front|back|body|sleeves?))?\s+only)(?=\s*\.?\s*$)", "K1, M1L, k to last st, M1R, k1. 2 sts inc, front and back only."),
    said_row("marker", rf"{BEGIN}\(?(?P<said>{N}\s+markers?\s+(?:incl\.?|including|counting)\s+(?:the\s+)?(?:BOR|beg(?:inning)?[\s-]of[\s-](?:rnd|round))(?:\s+marker)?)\s*\)?{STOP}\)?", "K10, pm, k30. 2 markers incl. BOR."),
    # --- put together ---
    said_row(
        "all the p|all p|all pieces|all parts",
        r"^\s*(?P<said>(?:now\s+)?(?:knit|work|place|join|put)\s+all\s+(?:the\s+)?(?:parts|pieces)\s+(?:together\s+)?(?:onto|on)\s+(?:the\s+|one\s+|a\s+)?(?:same\s+|larger\s+|long\s+|\d+\s*cm\s+)*(?:circular\s+)?needle(?:\s+(?:in\s+the\s+following\s+order|as\s+follows))?)\s*:\s*(?=k)",
        "Now knit all the parts onto the 80 cm circular needle: knit across 20 sts.",
    ),
    said_row(
        "tail",
        rf"{BEGIN}(?P<said>(?:(?:and\s+)?use\s+(?:the\s+|your\s+)?(?:yarn\s+|underarm\s+)?tails?\s+(?:(?:at|from)\s+(?:the\s+)?underarms?\s+)?to\s+(?:close|sew|tighten)\s+(?:up\s+)?(?:any\s+|the\s+)?(?:holes?|gaps?)(?:\s+(?:at|under|in)\s+(?:the\s+|each\s+)?(?:underarms?|arms?))?)){STOP}",
        "Bind off. Use the tails at the underarms to close any holes.",
    ),
    said_row(
        "underarm",
        rf"{BEGIN}(?P<said>(?:graft|sew|weave|seam)(?:\s+(?:or|/)\s+(?:graft|sew))?\s+(?:the\s+)?underarms?(?:\s+{STS})?\s+(?:together|closed|shut)){STOP}",
        "Bind off. Graft or sew the underarms together.",
    ),
)  # fmt: skip
"""The rows, tried before those that put single words in order."""
