"""Other wordings for the heel of a sock, for the row that closes buttonholes, and for a garter tab. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import HELD_BY, ROUND, STS, N, Synonym, row

_ROWS = r"(?:back\s+and\s+forth(?:\s+in\s+rows)?|in\s+rows|flat)"
_PUT = r"(?:leav|plac|put|keep|slip|mov|transferr?)(?:e|ing|ting|ping)?"
_OTHERS = r"(?:the\s+)?(?:rem(?:aining)?|others?|rest(?:\s+of\s+the)?)"
_HEEL = r"(?:the\s+)?heel(?:\s+flap)?"
_WHERE = rf"(?:over|on|across)\s+(?:the\s+)?(?:(?:first|next)\s+)?({N})(?:\s+heel)?\s+{STS}(?:\s+only)?"
_HEEL_ON = rf"(?:over|on|across)\s+(?:the\s+|these\s+)?(?:(?:first|next)\s+)?({N})(?:\s+heel)?\s+{STS}(?:\s+only)?"
_APART = rf"\bwork\s+in\s+rows\s+over\s+(?:next\s+{N}\s+)?sts(?:\s+of\s+heel)?(?:\s+on\s+needle\s+\d)?"
_RESTS = r"(?:(?:to\s+|at\s+)?(?:rest|wait)(?:ing|s)?|unworked|not\s+worked|(?:left\s+)?(?:on|at)\s+hold|aside)"
_ON_WHAT = r"(?:\s+(?:for\s+now|for\s+later|(?:on|to)\s+(?:the\s+|your\s+|their\s+)?(?:other\s+|second\s+)?(?:cables?|needles?(?:\s+\d(?:\s*(?:,|and|&)\s*\d)*)?)))*"
_GAP = r"(?:across|over|to\s+close|closing)\s+(?:the\s+)?gap"
_MORE = rf"(?:k|knit)\s*({N})(?:\s+(?:(?:more|of\s+the|heel)\s+)*(?:{STS}))?"
_BOR = r"(?:bor|(?:the\s+)?(?:new\s+)?(?:rnds?|rounds?|(?:beg(?:inning)?|start)\.?(?:\s+of\s+(?:the\s+)?(?:rnds?|rounds?))?))"
_BEGINS = (
    rf"(?:{_BOR}\s+(?:(?:is|are|will|now|begins?|starts?|moves?|be)\s+)*(?:(?:now|here|there|at|in|to|the|cent(?:er|re)|middle|of|back|heel|sole)\b\s*)+"
    rf"|this\s+is\s+(?:now\s+)?(?:the\s+)?{_BOR})"
)
_OFF = rf"(?:(?:bound|cast)[-\s]?off\s+{STS}|(?:those|{STS})\s+(?:that\s+were\s+)?(?:bound|cast)[-\s]?off)"
_BEFORE = rf"(?:\s+(?:of|on|in)\s+(?:the\s+)?(?:previous|last|prev)\.?\s+{ROUND})?"

HEELS: tuple[Synonym, ...] = (
    # --- the heel of a sock: rows over half the stitches, gaps closed, needles in prose ---
    # --- rows over a part of the stitches ---
    row("heel", rf"(?:(?<=^)|(?<=[.:;]))(\s*)(?P<said>{_HEEL})\s+is\s+(?:now\s+)?(?:worked|knit(?:ted)?)(?:\s+{_ROWS})?\s+{_HEEL_ON}", r"\1work in rows over next \3 sts of heel", "The heel flap is worked back and forth over the first 32 sts."),
    row("heel", rf"(?:(?<=^)|(?<=[.:;]))(\s*)work\s+(?P<said>{_HEEL})(?:\s+{_ROWS})?\s+{_HEEL_ON}", r"\1work in rows over next \3 sts of heel", "Work heel flap back and forth over next 32 sts."),
    row("back and|in rows|flat", rf"(?:(?<=^)|(?<=[.:;]))(\s*)(?:now\s+)?work\s+{_ROWS}\s+{_HEEL_ON}(?:\s+(?:for|as)\s+(?:the\s+)?heel(?:\s+flap)?)(?![\w-])", r"\1work in rows over next \2 sts of heel", "Work back and forth over the first 32 sts for heel."),
    row("back and|in rows|flat", rf"(?:(?<=^)|(?<=[.:;]))(\s*)(?:you(?:\s+will|'ll)?\s+)?(?:now\s+)?work\s+{_ROWS}\s+{_WHERE}", r"\1work in rows over next \2 sts", "Work back and forth over the first 32 sts."),
    row(
        "in rows over",
        rf"({_APART})\s*[;,.]?\s*(?:and\s+|then\s+|while\s+)?{_PUT}\s+{_OTHERS}\s+(?:({N})\s+)?(?:{STS}\s+)?(?:(?:on|onto|to)\s+{HELD_BY}|unworked|{_RESTS}{_ON_WHAT}(?P<said>\s*[;,(]\s*(?:these|those|they)\s+are\s+(?:your\s+|the\s+)?instep\s+{STS}\)?)?(?=\s*[.;]|\s*$))",
        r"\1, hold others \2 sts",
        "Work in rows over next 32 sts of heel; leave others on hold.",
        spelt_out=True,
    ),
    row("in rows over", rf"({_APART})\s*[;,.]\s*(?P<said>(?:the\s+)?(?:(?:other|second|rem(?:aining)?|instep)\s+)?(?:half\s+of\s+(?:the\s+)?|({N}\s+))?(?:instep\s+)?{STS}\s+(?:(?:on\s+needles?\s+\d(?:\s*(?:,|and|&)\s*\d)*|will|are|is|now|be|left|held|not\s+worked|unworked|remain|stay|at\s+this\s+time|for\s+now|for\s+later)\s*)*(?:{_RESTS})?{_ON_WHAT}(?:\s*for\s+(?:the\s+)?instep)?)(?=\s*[.;]|\s*$)", r"\1, hold others \3 sts", "Work in rows over next 32 sts of heel. The instep sts will wait on the cable.", spelt_out=True),
    row("rem", rf"(\b(?:k|p|knit|purl)\s?\d+(?:\s+{STS})?)\s*\.\s*(?=(?:place|put|slip|sl|leave|transfer)\s+(?:the\s+)?rem(?:aining)?\s+{N}\s+{STS}\s+(?:on|onto|to)\s+{HELD_BY})", r"\1, ", "K16. Place remaining 16 sts on hold for instep."),
    row("last", rf"\b(?:place|put|slip|sl|leave|transfer)\s+(?:the\s+)?last\s+({N})\s+{STS}\s+(?:on|onto|to)\s+{HELD_BY}(?=(?:\s+for\s+[a-z ]+)?\s*(?:[.]|$))", r"hold last \1 sts", "Slip last 32 sts to a holder for instep."),
    # --- the turn of the heel ---
    said_row_behind("gap", rf"\b((?:ssk|k2tog|skp|p2tog|ssp)(?:\s+tbl)?)\s*\(?\s*(?P<said>{_GAP})\s*\)?", "Sl 1, k to 1 st before gap, ssk across gap, k1, turn."),
    row("until all|until the heel", rf"\b(rep(?:eat)?\s+[^.;*]*?)\buntil\s+all\s+(?:of\s+)?(?:the\s+)?(?:heel\s+|flap\s+)?{STS}\s+(?:have\s+been|are)\s+(?:worked|used(?:\s+up)?)(?=\s*[.]?\s*$|\s*,?\s*end)", r"\1until all sts are worked", "Repeat rows 3 and 4 until all heel sts have been worked."),
    # --- where the rounds begin from now on ---
    row("begin|bor|beg", rf"(?:^\s*|[,;.]\s*(?:and\s+|then\s+)?){_MORE}\s*[.;,]\s*(?:and\s+)?(?P<said>{_BEGINS})(?=\s*\.?\s*$)", r". k\1 sts to new beginning", "Knit 9 heel sts. Beginning of round now at centre of heel.", spelt_out=True),
    # --- buttonholes closed, a garter tab that is turned ---
    row("casting", rf"\bcasting\s+on\s+({N})(?:\s+{STS})?\s+(?:over|above|at|in\s+place\s+of)\s+(?:each\s+(?:buttonhole|gap|opening|set\s+of\s+{_OFF})|(?:the\s+)?{_OFF}){_BEFORE}", r"casting on \1 sts over each buttonhole", "Knit, casting on 2 sts over those bound off on previous row."),
    row("off", rf"\b(to\s+(?:the\s+)?(?:next\s+)?){_OFF}{_BEFORE}(?=\s*,\s*(?:co|cast\s+on)\b)", r"\1buttonhole", "K to bound-off sts, cast on 2 sts, k to end."),
    said_row_behind("rotate|turn", r"(^\s*|[:,.]\s*)(?P<said>(?:(?:do\s+not|don't)\s+turn(?:\s+(?:the\s+)?(?:work|piece|tab))?(?:\s+(?:after|at\s+(?:the\s+)?end\s+of)\s+(?:the\s+)?(?:last|this)\s+(?:row|ridge))?\s*(?:[.;,]\s*(?:and\s+)?|\s+and\s+|\s+but\s+))?(?:(?:then\s+)?rotate(?:\s+(?:the\s+)?(?:work|piece|tab))?|turn\s+(?:the\s+)?(?:work|piece|tab)(?=\s+(?:90|a\s+quarter)))(?:\s+(?:90\s*(?:degrees|°)|a\s+quarter\s+turn))?(?:\s+(?:counter-?)?(?:clockwise|to\s+(?:the\s+)?right))?(?:\s+(?:again|once\s+more))?)\s*,?\s*(?:and\s+)?(?=pick\s+up\b)", "Rotate work 90 degrees clockwise and pick up and knit 7 sts along the edge."),
    row("across", rf"(\bpick\s+up\s+and\s+(?:knit|k)\s+{N}\s+{STS})\s+across\s+(?:the\s+)?(?:co|cast-?\s?on)\s+edge\b", r"\1 along cast-on edge", "K3, rotate, pick up and knit 3 sts along edge, pick up and knit 3 sts across CO edge."),
    row("each", rf"(\bpick\s+up\s+and\s+(?:knit|k)\s+{N})\s+(along\s+(?:the\s+)?side(?:\s+edge)?\s*,\s+one\s+(?:in|for)\s+each\s+(?:garter\s+)?ridge\s*,\s+(?:and\s+)?then\s+{N})\s+(?=from\s+the\s+cast-?\s?on)", r"\1 sts \2 sts ", "Pick up and knit 3 along the side, one for each ridge, then 3 from the cast-on edge."),
    said_row_behind("in each|for each", rf"(\bpick\s+up\s+and\s+(?:knit|k)\s+{N}(?:\s+{STS})?\s+along\s+(?:the\s+)?(?:(?:side\s+|long\s+)?edge|side))\s*[,(]\s*(?P<said>(?:one|1)(?:\s+{STS})?\s+(?:in|for)\s+each\s+(?:garter\s+)?(?:ridge|bump))\s*\)?", "Pick up and knit 7 sts along side edge, one in each garter ridge, k to end."),
    row("provisional", rf"(?P<said>(?:unravel|undo|unzip|remove)\s+(?:the\s+)?provisional\s+cast-?\s?on)\s*,?\s*(?:and\s+)?(?:knit|k)\s+(?:the\s+)?({N})\s+{STS}\s+from\s+(?:it|(?:the\s+)?(?:provisional\s+)?cast-?\s?on(?:\s+edge)?)", r"pick up and knit \2 sts", "K3, rotate, pick up and knit 7 sts along edge, undo provisional cast-on and knit 3 sts from it.", spelt_out=True),
)
"""The rows, in the order tried."""
