"""A fabric or a pattern of the page over a part of a row: borders in seed stitch, a cable panel. No I/O.

Only where stitches stand beside it: "work cable pattern" alone is a row, or many, of it.
"""

from __future__ import annotations

from stepper.project.rewording.synonym import STS, N, Synonym, row

_FABRIC = r"(?:seed|moss|garter|st|stockinette|stocking|rev(?:erse)?\.?\s+(?:st|stockinette|stocking))"
_FULL = rf"(?:{_FABRIC}\s+st(?:itch)?\b\.?|stockinette\b)"
_STITCH = r"(?:[kp]\s?\d+|knit|purl|k|p|sm|slm|pm|rm|ssk|k2tog|m1[lr]?|slip\s+(?:the\s+)?marker|place\s+(?:a\s+)?marker|remove\s+(?:the\s+)?marker)"
_BESIDE = rf"(?=\s*[,;]\s*(?:and\s+|then\s+)?(?:{_STITCH}|work|seed|garter)(?=\W|$))"
_BEHIND = rf"(\b(?:{_STITCH}|\d+\s+{STS})(?:\s+(?:to|until)\s+[^,;.]*)?\s*[,;]\s*(?:and\s+|then\s+)?)"
_GOAL = r"(?=\s+to\s+(?:the\s+)?(?:last\b|end\b|next\b|marker\b|m\b|first\b|second\b|third\b|within\b|\d+\s+(?:sts?|stitch)))"
_NO = (
    r"in|even|next|established|est|rib|the|this|that|these|same|to|as|rows?|rnds?|rounds?|sts?|of|set|chart\w*|first|last|all|each|every|"
    r"stripe|lace\s+and|st|garter|seed|moss|stockinette|stocking|reverse|rev|end|across|over|main|your|both|patt(?:ern)?|on|with|work\w*|until|body|color\w*|colour\w*"
)
_NAME = rf"((?:(?!(?:{_NO})\b)[a-z][a-z'-]*\s+){{1,3}}(?:patt(?:ern)?|panel|cable|motif|lace)\b\.?)"

STRETCHES: tuple[Synonym, ...] = (
    row("seed|garter", rf"((?:^|[,;:])\s*(?:and\s+)?)(?:work\s+)?(seed|garter)(?:\s+st(?:itch)?)?\s+(\d+)(?:\s+{STS})?{_BESIDE}", r"\1work \3 sts in \2 st", "Seed 5, k to last 5, seed 5."),
    row("seed|garter", rf"{_BEHIND}(?:work\s+)?(seed|garter)(?:\s+st(?:itch)?)?\s+(\d+)(?:\s+{STS})?(?=\s*[,;.(]|\s*$)", r"\1work \3 sts in \2 st", "K to last 5 sts, seed 5."),
    row("in seed|in moss|in garter|in st|in rev", rf"((?:^|[,;:])\s*(?:and\s+)?)(?:[kp]\s?|work\s+)?({N})(?:\s+{STS})?\s+in\s+({_FULL}){_BESIDE}", r"\1work \2 sts in \3", "5 sts in seed st, k to last 5 sts, 5 sts in seed st."),
    row("in seed|in moss|in garter|in st|in rev", rf"{_BEHIND}(?:[kp]\s?|work\s+)?({N})(?:\s+{STS})?\s+in\s+({_FULL})(?=\s*[,;.(]|\s*$)", r"\1work \2 sts in \3", "K to last 5 sts, k5 in garter st."),
    row("over", rf"((?:^|[,;:])\s*(?:and\s+)?)work\s+(?:in\s+)?({_FULL})\s+over\s+(?:the\s+)?(?:first\s+|next\s+|last\s+)?({N})(?:\s+{STS})?(?=\s*[,;.]|\s*$)", r"\1work \3 sts in \2", "Work seed st over next 5 sts, k to end."),
    row("to", rf"([,;:]\s*(?:and\s+)?)({_FULL}){_GOAL}", r"\1work in \2", "K5, seed st to last 5 sts, k5."),
    row("patt", rf"([,;:]\s*(?:and\s+)?)work\s+(?:in\s+)?(?:the\s+)?((?:(?!(?:{_NO})\b)[a-z][a-z'-]*\s+){{1,3}})patt(?:ern)?\b\.?{_GOAL}", r"\1work next rnd of \2stitch", "K to m, sm, work in Rope Pattern to m, sm, k to end."),
    row("panel|cable|motif|lace", rf"([,;:]\s*(?:and\s+)?)work\s+(?:in\s+)?(?:the\s+)?{_NAME}{_GOAL}", r"\1work next rnd of \2", "K to m, sm, work in Rope Cable to m, sm, k to end."),
    row("patt|panel|cable|motif|lace", rf"([,;:]\s*(?:and\s+)?)work\s+(?:in\s+)?(?:the\s+)?{_NAME}\s+(?:over|across)\s+(?:the\s+)?(?:next\s+)?({N})(?:\s+{STS})?(?=\s*[,;.]|\s*$)", r"\1work next rnd of \2 over \3 sts", "K5, work Rope Cable over next 6 sts, k5."),
    row("patt|panel|cable|motif|lace", rf"([,;:]\s*(?:and\s+)?)work\s+(?:in\s+)?(?:the\s+)?{_NAME}{_BESIDE}", r"\1work next rnd of \2 to fill", "K to m, sm, work Rope Cable, sm, k to end."),
    row("patt|panel|cable|motif|lace", rf"([,;:]\s*(?:and\s+)?)work\s+((?:row|rnd|round)\s+\d+\s+of\s+)(?:the\s+)?{_NAME}{_BESIDE}", r"\1work \2\3 to fill", "P2, work row 1 of Rope Cable, p2."),
)
"""The rows, in the order tried."""
