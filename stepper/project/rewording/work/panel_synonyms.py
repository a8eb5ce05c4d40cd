"""Other wordings for panels beside each other in a row: "work 1st row of Panel A over next 12 sts, panel B, p2". No I/O.

A panel is called by a name that ends as such names do, or in a letter or a number. Without a row it goes on
with its next one, but behind a panel whose first row is called it begins too. Alone in a line it is no part of a row.
"""

from __future__ import annotations

from stepper.project.rewording.synonym import ROUND, ROW, STS, N, Synonym, row

_NO = (
    r"in|even|next|established|est|rib|the|this|that|these|those|same|to|as|rows?|rnds?|rounds?|sts?|stitch(?:es)?|of|set|charts?|first|last|all|each|every|"
    r"stripe|st|garter|seed|moss|stockinette|stocking|reverse|rev|end|across|over|main|your|both|patt(?:ern)?|on|with|work\w*|until|body|"
    r"colou?r\w*|and|or|for|from|then|k|p|knit|purl|keep\w*|place|pm|sm|slm|set|position\w*|establish\w*|one|two|either|between|beside|cent(?:re|er)|side"
)
_WORD = rf"(?:(?!(?:{_NO})\b)[a-z][a-z'-]*\s+)"
_LETTERED = r"(?:(?:panel|cable|motif|patt(?:ern)?)\s+(?:[a-h]|[ivx]{1,3})\b|(?:panel|motif)\s+\d{1,2}\b)"
_ENDS = r"(?=\s*[,;.()]|\s*$|\s+(?:over|across|to|row|rnd|round)\b)"
_HERE = r"(?=[a-z\s'-]*(?:panel|cable|motif|lace|patt))"
"""Most stretches between two commas hold no such word: that is looked at before words are taken one by one."""
_NAMED = rf"{_HERE}(?:{_WORD}{{0,3}}{_LETTERED}{_ENDS}|{_WORD}{{1,3}}(?:panel|cable|motif|lace|patt(?:ern)?)\b|panel\b)"
_PANEL = rf"(?:the\s+)?({_NAMED})(?:\s+patt(?:ern)?\b\.?)?"
_AT = r"((?:^|[,;:])\s*(?:and\s+|then\s+)?)"
_AT_OR_AS = r"((?:^|[,;:])\s*(?:and\s+|then\s+)?|\bas\s+)"
_BEHIND = r"([,;:]\s*(?:and\s+|then\s+)?)"
_OVER = rf"(?:over|across|on)\s+(?:the\s+)?(?:next\s+|foll(?:owing)?\s+|these\s+|last\s+)?({N})(?:\s+{STS})?(?=\s*[,;.]|\s*$)"
_HAS = "panel|cable|motif|lace|patt"

PANELS: tuple[Synonym, ...] = (
    row(_HAS, rf"{_AT_OR_AS}(?:work\s+)?(?:across\s+)?(?:the\s+)?(\d{{1,2}})(?:st|nd|rd|th)\s+({ROW})\s+of\s+(?=(?:the\s+)?{_NAMED})", r"\1work \3 \2 of ", "K9, 3rd row of Panel A over next 12 sts, k9.", again=True),
    row("first", rf"{_AT_OR_AS}(?:work\s+)?(?:across\s+)?(?:the\s+)?first\s+({ROW})\s+of\s+(?=(?:the\s+)?{_NAMED})", r"\1work \2 1 of ", "K9, work first row of panel over next 12 sts, k9.", again=True),
    row("row|rnd|round", rf"{_AT}(?:across\s+)?(?:the\s+)?((?:next\s+{ROW}|{ROW}\s+\d{{1,2}})\s+of\s+)(?=(?:the\s+)?{_NAMED})", r"\1work \2", "K9, row 2 of Rope Panel over next 8 sts, k9.", again=True),
    row("row|rnd|round", rf"{_AT}(?:work\s+)?(?:across\s+)?{_PANEL}\s*,?\s*\(?\s*(?:beg(?:inning)?\s+(?:with|at)\s+)?({ROW})\s+(\d{{1,2}})\)?(?:\s*,(?=\s*(?:over|across)\b))?(?=\s+(?:over|across)\b|\s*[,;])", r"\1work \3 \4 of \2", "K9, work Panel A, row 3, over next 12 sts, k9.", again=True),
    row("as row|as rnd|as round|as next|as the|as work", rf"{_AT}(?:work\s+)?(?:the\s+)?(?:next\s+)?({N})(?:\s+{STS})?\s+as\s+(?:the\s+)?(?:for\s+)?(?:work\s+)?({ROW}\s+\d{{1,2}}|next\s+{ROW})\s+of\s+{_PANEL}(?=\s*[,;.]|\s*$)", r"\1work \3 of \4 over \2 sts", "P2, work next 12 sts as row 3 of Panel A, p2."),
    row("1 of", rf"(work\s+({ROW}\s+1)\s+of\s+[^:.]*?[,;]\s*(?:and\s+|then\s+)?)(?:work\s+)?{_PANEL}\s+{_OVER}", r"\1work \2 of \3 over \4 sts", "K2, work row 1 of Panel A over 12 sts, Panel B over 22 sts, k2.", again=True),
    row(_HAS, rf"(work\s+(?:{ROW}\s+\d{{1,2}}|next\s+{ROW})\s+of\s+){_PANEL}\s+{_OVER}", r"\1\2 over \3 sts", "K5, work row 5 of Panel A across next 14 sts, k5.", again=True),
    row(_HAS, rf"{_AT}(?:work\s+)?(?:in\s+)?{_PANEL}\s+{_OVER}", r"\1work next rnd of \2 over \3 sts", "K9, panel over next 12 sts, k9.", again=True),
    row(_HAS, rf"{_AT}(?:work\s+)?(?:the\s+)?(?:next\s+)?({N})\s+{STS}\s+(?:in|of|as)\s+(?:the\s+)?({_NAMED})(?:\s+patt(?:ern)?\b\.?)?(?=\s*[,;.]|\s*$)", r"\1work next rnd of \3 over \2 sts", "K9, work 12 sts of Panel A, k9.", again=True),
    row("(", rf"(?!\s*[\w' -]+\([^()]*\)\s*$){_AT}(?:work\s+)?{_PANEL}\s*\(\s*(?:over\s+)?(?:next\s+)?({N})\s+{STS}\s*\)(?=\s*[,;.]|\s*$)", r"\1work next rnd of \2 over \3 sts", "K9, Panel A (12 sts), k9.", again=True),
    row("1 of", rf"(work\s+({ROW}\s+1)\s+of\s+[^:.]*?[,;]\s*(?:and\s+|then\s+)?)(?:work\s+)?{_PANEL}(?=\s*[,;.]|\s*$)", r"\1work \2 of \3 to fill", "K2, work row 1 of Panel A, Panel B, k2.", again=True),
    row("panel|patt", rf"{_BEHIND}(?:work\s+)?(?:the\s+)?{_HERE}({_WORD}{{0,3}}{_LETTERED}|{_WORD}{{0,3}}panel\b)(?=\s*[,;.]|\s*$)", r"\1work next rnd of \2 to fill", "K9, Panel A, k9.", again=True),
    row("row|rnd|round", rf"{_BEHIND}work\s+({ROW}\s+\d{{1,2}}|next\s+{ROW})\s+of\s+{_PANEL}(?=\s*[,;.]|\s*$)", r"\1work \2 of \3 to fill", "K9, work row 3 of Panel A, k9.", again=True),
)  # fmt: skip
"""The rows, in the order tried."""

_PANELS = r"(?:(?:cable|lace|centre|center|side)\s+(?:and\s+(?:cable|lace)\s+)?)?(?:cables?|panels?|motifs?)\b"
_MANY = rf"(?:{_PANELS}|lace\b|(?:textured\s+)?patt(?:ern)?s?\b)"
_AS_FOLLOWS = r"(?:as\s+follows?|thus|as\s+folls?\.?)"
_FABRIC = r"(?:(?:double\s+|single\s+|irish\s+|reversed?\s+|rev\.?\s+)?(?:moss|seed|garter|g|st|stocking|stockinette)\.?\s*(?:st(?:itch)?\b\.?)?|rib(?:bing)?|patt(?:ern)?)"
_SIDES = r"(?:(?:at|on|to)\s+(?:each|both|either|the|all)?\s*(?:sides?|ends?|edges?)(?:\s+(?:edges?|of\s+(?:them|panels?|(?:the\s+)?(?:row|work))))?|between(?:\s+(?:them|panels?))?)"
_BESIDE_THEM = rf"(?:\s*,?\s*(?P<said>(?:with|over|on)\s+(?:(?:the\s+)?(?:side|edge|rem(?:aining)?)\s+{STS}\s+in\s+)?{_FABRIC}(?:\s+background|\s+{_SIDES})?))?"

PANELS_SET: tuple[Synonym, ...] = (
    row("panel|motif|cable", rf"\b((?:these|the\s+last|last)\s+(?:{N}\s+)?{ROUND}\s+(?:form|make|set|complete|establish)\s+)((?:the\s+|one\s+)?(?:{_WORD}{{0,3}}(?:panel|cable|motif)(?:\s+(?:[a-h]|[ivx]{{1,3}}|\d{{1,2}}))?))(?=\s*[.,;]|\s+and\b|\s*$)", r"\1\2 pattern", "These 8 rows form Panel A."),
    row("panel|motif|cable", rf"\b(rep(?:eat)?\s+(?:these|the\s+last|last)\s+(?:{N}\s+)?{ROUND}|rep(?:eat)?\s+{ROUND}\s+\d+\s*(?:-|to|and)\s*\d+)\s+(?P<said>(?:for|to\s+form)\s+(?:the\s+)?{_WORD}{{0,3}}(?:panel|cable|motif)(?:\s+(?:[a-h]|[ivx]{{1,3}}|\d{{1,2}}))?)(?=\s*[.;]|\s*$)", r"\1 for pattern", "Rep these 16 rows for Panel B.", spelt_out=True),
    row("panel|cable|patt|motif", rf"\b((?:these|the\s+last|last)\s+(?:{N}\s+)?{ROUND}\s+)(?:set|place|form|establish)s?\s+(?:the\s+)?(?:(?:position|placing|placement)s?\s+(?:of|for)\s+(?:the\s+)?{_MANY}|(?:patt(?:ern)?\s+(?:and|with)\s+(?:the\s+)?)?{_PANELS})(?:\s+and\s+{_MANY})?{_BESIDE_THEM}(?=\s*[.;]|\s*$)", r"\1set pattern", "These 2 rows set position of panels with moss st at each side.", spelt_out=True),
    row("panel|cable|patt|motif", rf"(?:(^|[.;])\s*|,?\s*(?:and|then)\s+)(?:place|set|position|establish|arrange)\s+(?:the\s+)?(?:position\s+of\s+(?:the\s+)?)?{_MANY}\s+{_AS_FOLLOWS}\s*[.:]?\s*$", r"\1 work as follows:", "Change to 5 mm needles and place panels as follows:"),
)  # fmt: skip
"""What is said of panels where they are set up or explained, in the order tried."""
