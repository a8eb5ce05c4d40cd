"""Other wordings for a piece that is divided: what waits, on what, what is cast on between, and how it is taken up. No I/O.

Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.craft.needles import SIZE
from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import STS, N, Synonym, row

_PUT: Final = r"(?:place|put|slip|sl|leave|transfer|move|thread)"
_YARN: Final = r"(?:yarn|wool|cotton|thread)"
_HOLDER: Final = rf"(?:(?:an?|the|another|your|some|one|separate|spare|st|stitch|waste|scrap|contrasting|long|short|large|small)\s+)*(?:(?:st|stitch)?-?\s?holders?|(?:waste|scrap)\s+{_YARN}|spare\s+(?:needle|{_YARN})|(?:length|piece|strand|bit|scrap)\s+of\s+(?:(?:waste|scrap|spare|contrasting)\s+)?{_YARN}|(?:circular\s+)?needle\s+cable|safety[\s-]pin|thread|pin)"
_ONTO: Final = r"(?:on\s+to|onto|on|to)"
_PART: Final = r"(?:(?:left|right|first|second|other|half\s+(?:of\s+)?(?:the\s+)?)\s*)?(?:front|back|sleeve|body|yoke|hand|thumb|palm|neck|hood)s?"
_SIDE: Final = r"(?:rs|ws|right[-\s]side|wrong[-\s]side)"
_FACING: Final = rf"with\s+(?:the\s+)?({_SIDE})(?:\s+of\s+(?:the\s+)?work)?\s+facing(?:\s+you)?"
_REJOIN: Final = rf"(?:re-?)?(?:join|attach)\s+(?:the\s+|a\s+|an\s+)?(?:(?:new|working|main)\s+)?(?:ball\s+of\s+|strand\s+of\s+|end\s+of\s+)?{_YARN}"
_AT: Final = r"(?:\s+(?:at|to|in|by)\s+(?:the\s+)?(?:(?:neck|armhole|front|side|inner|outer|left|right|underarm|thumb|palm|cent(?:er|re)|beginning|start|base|edge|end|middle|of|the|back|gap|inside|row|rnd|round|heel|opening)\b\s*)+(?<!\s))?"
_NEEDLE: Final = rf"(?:(?:the|a|your|left|right|left-hand|spare|working|one|{SIZE}|smaller|larger|circular|double[-\s]pointed)\s+)*(?:needles?|dpns?)(?:\s+(?:size\s+)?\d+(?:\.\d+)?\s?mm)?"
_BACK: Final = rf"(?:place|put|slip|sl|transfer|return|move)\s+(?:the\s+|all\s+|held\s+)*(?:{N}\s+)?(?:(?:rem(?:aining)?|held|other|{_PART})\s+)*{STS}(?:\s+(?:from|off)\s+(?:the\s+)?(?:(?:{_PART}|first|second)\s+)?{_HOLDER})?\s+(?:back\s+)?{_ONTO}\s+{_NEEDLE}"
_E: Final = r"(?=\s*[.;]|\s*$)"

PARTINGS: tuple[Synonym, ...] = (
    # --- what waits, on what ---
    row("marker", r"\btake\s+(?:(?:the|both|all)\s+)*markers?\s+(?:off|out)\b", "remove marker", "K8, take the marker off, k to end."),
    row("holder", rf"(\b{_PUT}\b[^.;:]*?\b{_ONTO}\s+{_HOLDER})\s*,?\s+and\s+(?=(?:make|knit|work)\s+(?:the\s+|an?\s+)?(?:second|other|another|2nd)\b)", r"\1. ", "Slip the sts onto a holder and make the second sleeve in the same way."),
    row(
        "rest|remain|other|left",
        rf"(\b(?:k|p|knit|purl|patt|work|rib)\s*{N}(?:\s+{STS})?)\s*(?:[,;]\s*(?:and\s+)?|\s+and\s+)(turn\s*[,;]?\s*(?:and\s+)?)?(?:then\s+)?(?:{_PUT}|leav(?:e|ing)|slip(?:ping)?|plac(?:e|ing)|put(?:ting)?)\s+(?:the\s+)?(?:rest(?:\s+of\s+the\s+{STS})?|remainder(?:\s+of\s+the\s+{STS})?|all\s+(?:the\s+)?other\s+{STS}|remaining\s+{STS})\s+(?:where\s+they\s+are\s+or\s+)?{_ONTO}\s+{_HOLDER}(?:\s+for\s+(?:now|later))?{_E}",
        r"\1, turn, leaving remaining sts on a holder",
        "K22, put the rest on a holder.",
    ),
    row(
        "only|alone",
        rf"(\b(?:k|p|knit|purl|patt|work|rib)\s*({N})(?:\s+{STS})?\s*,\s*turn)\s*[,;]?\s*(?:and\s+)?(?:cont(?:inue)?|work|proceed)\s+on\s+these\s+(?:\2\s+)?{STS}\s*(?:only|alone)?\s*[,;]\s*(?:slipping|leaving|placing|putting)\s+(?:the\s+)?rem(?:aining)?\.?\s+{STS}\s+{_ONTO}\s+{_HOLDER}{_E}",
        r"\1, leaving remaining sts on a holder",
        "K20, turn, and continue on these 20 sts only, slipping remaining sts on to a spare needle.",
    ),
    row("first", rf"(^\s*|[:,.]\s*)(work|k|knit|p|purl|patt)\s+(?:the\s+)?first\s+({N})\s+{STS}\s*,?\s*(?:and\s+|then\s+)*{_PUT}\s+(?:them\s+|these\s+(?:{STS}\s+)?)?{_ONTO}\s+(?=a\s+holder|{_HOLDER})", r"\1\2 \3 sts, place these sts on ", "Next row: Work first 8 sts and place on a holder, finish row."),
    row("finish", r"([,;]\s*(?:and\s+)?)(?:finish|complete)\s+(?:the\s+)?(row|rnd|round)(?=\s*[.;]|\s*$)", r"\1work to end", "Next row: K8, bind off 8 sts, finish row."),
    row("only", rf"(^\s*|[.]\s*)(?:cont(?:inue)?|work|proceed)\s+on\s+(?:the\s+)?({_PART})\s+{STS}\s+only\s*,\s*(?:leaving|placing|putting|slipping)\s+(?:the\s+)?({_PART})\s+{STS}\s+(?:on\s+the\s+needle\s+or\s+)?{_ONTO}\s+{_HOLDER}(?:\s+or\s+{_HOLDER})?{_E}", r"\1place \3 sts on a holder and continue on \2 sts only", "Cont on right front sts only, leaving left front sts on a holder."),
    row("this set|this group|this side", rf"\bon\s+this\s+(?:set|group|lot)\s+of\s+{STS}\b", "on these sts", "K8, hold rem 8 sts. Work on this set of sts only."),
    # --- cast on between ---
    said_row_behind("underarm", rf"(\b(?:co|cast\s+on)\s+{N})\s+(?P<said>(?:new\s+)?underarm)\s+(?={STS})", "K8, hold 8 sts for sleeve, cast on 4 underarm sts, k to end."),
    row("bor", r"\b(?:k|knit)\s+to\s+(?:the\s+)?old\s+(?:bor|beg(?:inning)?\s+of\s+(?:rnd|round))(?:\s+(?:marker|m))?\s*,\s*(?:remove\s+(?:it|marker|m)|rm)\s*,\s*(?:k|knit)\s+to\s+(?:the\s+)?new\s+(?:bor|beg(?:inning)?\s+of\s+(?:rnd|round))(?:\s+(?:marker|m))?", "k to end", "K8, pm for new BOR, k8, k to old BOR, rm, k to new BOR."),
    row("continue", r"\b(k|knit)\s+to\s+end\s+of\s+(?:the\s+)?(?:back|front|body)(?:\s+(?:sts|stitches))?\s*,?\s*and\s+(?:continue|knit\s+on|keep\s+knitting|k)\s+to\s+(?:the\s+)?(?:new\s+)?bor(?:\s+(?:marker|m))?\b", r"\1 to end", "K8, pm for new BOR, knit to end of back sts and continue to BOR marker."),
    row("across", rf"\b(k|knit|purl|p)\s+across\s+(?:the\s+)?(?:(?:left|right)\s+)?(?:front|back)(?:\s+{STS})?(?:\s+to\s+(?:the\s+)?(?:first|next|second|third|fourth)\s+(?:marker|m))?(?=\s*,\s*(?:(?:remove\s+(?:marker|m)|rm)\s*,\s*)?{_PUT}\s+(?:the\s+)?(?:next\s+)?{N}\s+(?:(?:left|right)\s+)?(?:sleeve\s+)?{STS}\s+{_ONTO}\s)", r"\1 to marker", "K8, pm, k24. Knit across back to first marker, place 8 sleeve sts on a holder, k to end."),
    row("needle", rf"(^\s*|[.;:=(]\s*|\s-\s*)({N})\s+(?:{_PART}\s+)?({STS})(?:\s+(?:remain|rem|left|now|are))*\s+on\s+(?:the|your)\s+(?:(?:circular|working)\s+)?needles?(?:\s+for\s+(?:the\s+)?{_PART})?(?=\s*\)?\s*\.?\s*$)", r"\1\2 \3", "K8, hold 8 sts, k16. 24 body sts remain on the needle."),
    row("sleeve", rf"\b(k|knit|p|purl|work|patt)\s+across\s+(?:the\s+)?(?:(?:{STS}\s+)?(?:of|from)\s+)?(?:the\s+)?(?:(?:one|first)\s+|((?:left|right|second)\s+)|other\s+)?sleeve(?:\s+{STS})?(?=\s*[,.;(]|\s*$|\s+and\b)", r"\1 across held \2sleeve sts", "Next rnd: Knit across left sleeve, k16."),
    row("held", rf"\b(k|knit|p|purl)\s*({N})\s+held\s+((?:(?:left|right|first|second)\s+)?(?:sleeve|body|front|back|thumb)\s+)?{STS}(?=\s*[,.;(]|\s*$|\s+and\b)", r"\1 across \2 held \3sts", "Next rnd: K30 held sleeve sts, k40."),
    row("patt", r"\bpatt\s+across\s+(?=(?:the\s+)?(?:held|left|right|front|back|sleeve)\b)", "work across ", "Next row: Patt across left front."),
    # --- taken up again ---
    row("needle", r"\b(onto|on|to)\s+(?:the\s+)?((?:circular\s+|double[-\s]pointed\s+)?(?:needles?|dpns?))\s+(?:size\s+)?(\d+(?:\.\d+)?\s?mm)\b", r"\1 \3 \2", "Slip the 28 sts from the thread onto needle 4 mm."),
    row("join|attach", rf"(^\s*|[.:]\s*|facing\s*,\s*)({_BACK})\s*(?:[;,]\s*(?:and\s+)?|\s+and\s+){_REJOIN}{_AT}(?:\s*,\s*(?:and\s+)?|\s+and\s+|(?=\s*[.;]|\s*$))", r"\1\2. ", "Place 30 sts from holder on needle, join yarn at neck edge and knit to end."),
    row("held", rf"\b{_REJOIN}\s+to\s+(?:the\s+)?({N}\s+)?held\s+({_PART})\s+{STS}(?:\s*(?:,\s*(?:and\s+)?|\s+and\s+)|{_E})", r"return \1held \2 sts to needles. ", "With RS facing, rejoin yarn to held front sts."),
    said_row_behind("edge", rf"(\b{_REJOIN}\s+to\s+(?:the\s+)?rem(?:aining)?\s+(?:{N}\s+)?{STS})\s+(?P<said>at\s+(?:the\s+)?(?:neck|armhole|front|side)\s+edge)(?=\s*[,.;]|\s+and\b)", "Join yarn to remaining sts at neck edge, bind off 12 sts, k to end."),
    *(
        row(
            "join|attach",
            rf"(^\s*|[.:]\s*|facing\s*,\s*){_PUT}\s+(?:the\s+)?(?:cent(?:er|re)|middle|next|first)\s+{number}{STS}\s+{_ONTO}\s+{_HOLDER}(?:\s+for\s+(?:the\s+)?[a-z ]{{4,20}}?)?\s*[,.;]\s*(?:and\s+)?{before}(?P<said>{_REJOIN}\s+to\s+(?:the\s+)?rem(?:aining|ainder)?(?:\s+{STS})?){after}(?:\s*(?:,\s*(?:and\s+)?|\s+and\s+)|{_E})",
            words,
            re.sub(r"(?<=next |ntre )\d+ sts", "st", example) if one else example,
            spelt_out=True,
        )
        for number, held, one in (("()", "1", True),)
        for before, after, words, example in (
            (rf"{_FACING}\s*,?\s*", "", rf"\1with \3 facing, take up remaining sts. Hold {held} sts, ", "K20, turn. Leave centre 12 sts on a holder; with RS facing, rejoin yarn to rem sts, k to end."),
            ("", rf"\s+{_FACING}", rf"\1with \4 facing, take up remaining sts. Hold {held} sts, ", "K20, turn. Leave centre 12 sts on a holder, rejoin yarn to rem sts with RS facing and k to end."),
            ("", "", rf"\1take up remaining sts. Hold {held} sts, ", "K20, turn. With RS facing, slip next 12 sts onto a holder, rejoin yarn to rem 20 sts, k to end."),
        )
    ),
    row("all", rf"\b(knit|k)\s+(?:across\s+)?all\s+{STS}\s*(?:,\s*(?:and\s+)?|\s+and\s+)(?:then\s+)?(?=pick\s+up\b|pu\b)", r"\1 to end, ", "Attach yarn, knit across all sts and pick up 2 sts along the CO sts."),
)  # fmt: skip
"""The rows, tried early, when lists stand in one form."""

