"""Other wordings for a piece that is divided: what waits, on what, what is cast on between, and how it is taken up. No I/O.

Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.part_names import PART, WHICH
from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import CLOSED, STS, N, Synonym, row

_PUT: Final = r"(?:place|put|slip|sl|leave|transfer|move|thread)"
_YARN: Final = r"(?:yarn|wool|cotton|thread)"
_HOLDER: Final = rf"(?:(?:an?|the|another|your|some|one|separate|spare|st|stitch|waste|scrap|contrasting|long|short|large|small)\s+)*(?:(?:st|stitch)?-?\s?holders?|(?:waste|scrap)\s+{_YARN}|spare\s+(?:needle|{_YARN})|(?:length|piece|strand|bit|scrap)\s+of\s+(?:(?:waste|scrap|spare|contrasting)\s+)?{_YARN}|(?:circular\s+)?needle\s+cable|safety[\s-]pin|thread|pin)"
_ONTO: Final = r"(?:on\s+to|onto|on|to)"
_PART: Final = rf"(?:half\s+(?:of\s+)?(?:the\s+)?)?{WHICH}{PART}s?"

PARTINGS: tuple[Synonym, ...] = (
    # --- what waits, on what ---
    row("marker", r"\btake\s+(?:(?:the|both|all)\s+)*markers?\s+(?:off|out)\b", "remove marker", "K8, take the marker off, k to end."),
    row(
        "only|alone",
        rf"(\b(?:k|p|knit|purl|patt|work|rib)\s*({N})(?:\s+{STS})?\s*,\s*turn)\s*[,;]?\s*(?:and\s+)?(?:cont(?:inue)?|work|proceed)\s+on\s+these\s+(?:\2\s+)?{STS}\s*(?:only|alone)?\s*[,;]\s*(?:slipping|leaving|placing|putting)\s+(?:the\s+)?rem(?:aining)?\.?\s+{STS}\s+{_ONTO}\s+{_HOLDER}{CLOSED}",
        r"\1, leaving remaining sts on a holder",
        "K20, turn, and continue on these 20 sts only, slipping remaining sts on to a spare needle.",
    ),
    row("first", rf"(^\s*|[:,.]\s*)(work|k|knit|p|purl|patt)\s+(?:the\s+)?first\s+({N})\s+{STS}\s*,?\s*(?:and\s+|then\s+)*{_PUT}\s+(?:them\s+|these\s+(?:{STS}\s+)?)?{_ONTO}\s+(?=a\s+holder|{_HOLDER})", r"\1\2 \3 sts, place these sts on ", "Next row: Work first 8 sts and place on a holder, finish row."),
    row("finish", r"([,;]\s*(?:and\s+)?)(?:finish|complete)\s+(?:the\s+)?(row|rnd|round)(?=\s*[.;]|\s*$)", r"\1work to end", "Next row: K8, bind off 8 sts, finish row."),
    row("only", rf"(^\s*|[.]\s*)(?:cont(?:inue)?|work|proceed)\s+on\s+(?:the\s+)?({_PART})\s+{STS}\s+only\s*,\s*(?:leaving|placing|putting|slipping)\s+(?:the\s+)?({_PART})\s+{STS}\s+(?:on\s+the\s+needle\s+or\s+)?{_ONTO}\s+{_HOLDER}(?:\s+or\s+{_HOLDER})?{CLOSED}", r"\1place \3 sts on a holder and continue on \2 sts only", "Cont on right front sts only, leaving left front sts on a holder."),
    row("this set|this group|this side", rf"\bon\s+this\s+(?:set|group|lot)\s+of\s+{STS}\b", "on these sts", "K8, hold rem 8 sts. Work on this set of sts only."),
    # --- cast on between ---
    said_row_behind("underarm", rf"(\b(?:co|cast\s+on)\s+{N})\s+(?P<said>(?:new\s+)?underarm)\s+(?={STS})", "K6, k2tog, hold 8 sts for sleeve, cast on 4 underarm sts, k to end."),
    row("bor", r"\b(?:k|knit)\s+to\s+(?:the\s+)?old\s+(?:bor|beg(?:inning)?\s+of\s+(?:rnd|round))(?:\s+(?:marker|m))?\s*,\s*(?:remove\s+(?:it|marker|m)|rm)\s*,\s*(?:k|knit)\s+to\s+(?:the\s+)?new\s+(?:bor|beg(?:inning)?\s+of\s+(?:rnd|round))(?:\s+(?:marker|m))?", "k to end", "K8, pm for new BOR, k8, k to old BOR, rm, k to new BOR."),
    row("continue", r"\b(k|knit)\s+to\s+end\s+of\s+(?:the\s+)?(?:back|front|body)(?:\s+(?:sts|stitches))?\s*,?\s*and\s+(?:continue|knit\s+on|keep\s+knitting|k)\s+to\s+(?:the\s+)?(?:new\s+)?bor(?:\s+(?:marker|m))?\b", r"\1 to end", "K8, pm for new BOR, knit to end of back sts and continue to BOR marker."),
    row("across", rf"\b(k|knit|purl|p)\s+across\s+(?:the\s+)?(?:(?:left|right)\s+)?(?:front|back)(?:\s+{STS})?(?:\s+to\s+(?:the\s+)?(?:first|next|second|third|fourth)\s+(?:marker|m))?(?=\s*,\s*(?:(?:remove\s+(?:marker|m)|rm)\s*,\s*)?hold\s+(?:{N}|all)\s+{STS})", r"\1 to marker", "K8, pm, k24. Knit across back to first marker, place 8 sleeve sts on a holder, k to end."),
    row("needle", rf"(^\s*|[.;:=(]\s*|\s-\s*)({N})\s+(?:{_PART}\s+)?({STS})(?:\s+(?:remain|rem|left|now|are))*\s+on\s+(?:the|your)\s+(?:(?:circular|working)\s+)?needles?(?:\s+for\s+(?:the\s+)?{_PART})?(?=\s*\)?\s*\.?\s*$)", r"\1\2 \3", "K8, hold 8 sts, k16. 24 body sts remain on the needle."),
    row("sleeve", rf"\b(k|knit|p|purl|work|patt)\s+across\s+(?:the\s+)?(?:(?:{STS}\s+)?(?:of|from)\s+)?(?:the\s+)?(?:(?:one|first)\s+|((?:left|right|second)\s+)|other\s+)?sleeve(?:\s+{STS})?(?=\s*[,.;(]|\s*$|\s+and\b)", r"\1 across held \2sleeve sts", "Next rnd: Knit across left sleeve, k16."),
    row("held", rf"\b(k|knit|p|purl)\s*({N})\s+held\s+((?:(?:left|right|first|second)\s+)?(?:sleeve|body|front|back|thumb)\s+)?{STS}(?=\s*[,.;(]|\s*$|\s+and\b)", r"\1 across \2 held \3sts", "Next rnd: K30 held sleeve sts, k40."),
    row("patt", r"\bpatt\s+across\s+(?=(?:the\s+)?(?:held|left|right|front|back|sleeve)\b)", "work across ", "Next row: Patt across left front."),
    # --- taken up again ---
    row("all", rf"\b(knit|k)\s+(?:across\s+)?all\s+{STS}\s*(?:,\s*(?:and\s+)?|\s+and\s+)(?:then\s+)?(?=pick\s+up\b|pu\b)", r"\1 to end, ", "Attach yarn, knit across all sts and pick up 2 sts along the CO sts."),
)  # fmt: skip
"""The rows, tried early, when lists stand in one form."""

