"""Other wordings for the row that closes buttonholes, and for a garter tab that is turned. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_OFF = rf"(?:(?:bound|cast)[-\s]?off\s+{STS}|(?:those|{STS})\s+(?:that\s+were\s+)?(?:bound|cast)[-\s]?off)"
_BEFORE = rf"(?:\s+(?:of|on|in)\s+(?:the\s+)?(?:previous|last|prev)\.?\s+{ROUND})?"

BUTTONHOLES: tuple[Synonym, ...] = (
    row("casting", rf"\bcasting\s+on\s+({N})(?:\s+{STS})?\s+(?:over|above|at|in\s+place\s+of)\s+(?:each\s+(?:buttonhole|gap|opening|set\s+of\s+{_OFF})|(?:the\s+)?{_OFF}){_BEFORE}", r"casting on \1 sts over each buttonhole", "Knit, casting on 2 sts over those bound off on previous row."),
    row("off", rf"\b(to\s+(?:the\s+)?(?:next\s+)?){_OFF}{_BEFORE}(?=\s*,\s*(?:co|cast\s+on)\b)", r"\1buttonhole", "K to bound-off sts, cast on 2 sts, k to end."),
    said_row_behind("rotate|turn", r"(^\s*|[:,.]\s*)(?P<said>(?:rotate(?:\s+(?:the\s+)?(?:work|piece|tab))?|turn\s+(?:the\s+)?(?:work|piece|tab)(?=\s+(?:90|a\s+quarter)))(?:\s+(?:90\s*(?:degrees|°)|a\s+quarter\s+turn))?(?:\s+clockwise)?)\s*,?\s*(?:and\s+)?(?=pick\s+up\b)", "Rotate work 90 degrees clockwise and pick up and knit 7 sts along the edge."),
    said_row_behind("in each", rf"(\bpick\s+up\s+and\s+(?:knit|k)\s+{N}\s+{STS}\s+along\s+(?:the\s+)?(?:side\s+|long\s+)?edge)\s*[,(]\s*(?P<said>(?:one|1)(?:\s+{STS})?\s+(?:in|for)\s+each\s+(?:garter\s+)?(?:ridge|bump))\s*\)?", "Pick up and knit 7 sts along side edge, one in each garter ridge, k to end."),
    row("provisional", rf"(?P<said>(?:unravel|undo|unzip|remove)\s+(?:the\s+)?provisional\s+cast-?\s?on)\s*,?\s*(?:and\s+)?(?:knit|k)\s+(?:the\s+)?({N})\s+{STS}\s+from\s+(?:it|(?:the\s+)?(?:provisional\s+)?cast-?\s?on(?:\s+edge)?)", r"pick up and knit \2 sts", "K3, rotate, pick up and knit 7 sts along edge, undo provisional cast-on and knit 3 sts from it.", spelt_out=True),
)
"""The rows, in the order tried."""
