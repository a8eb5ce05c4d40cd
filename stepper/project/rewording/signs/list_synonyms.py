"""Lists of sizes and counts in the dress of printed pages: a comma before the bracket, brackets in pairs. No I/O.

A bracket of numbers alone behind a number is a list of sizes wherever it stands: nothing else is printed so.
"""

from __future__ import annotations

from stepper.project.rewording.synonym import ROUND, STS, Synonym, row

_LIST = r"\d+(?:\s*[,;:/-]\s*\d+)*"
_TENTHS = r"\d+(?:\.\d+)?(?:\s*[¼½¾⅛⅜⅝⅞]|\s+[1-7]/[248])?"
_LENGTH_LIST = rf'{_TENTHS}\s*(?:"|in|cm)?(?:\s*[,;]\s*{_TENTHS}\s*(?:"|in|cm)?)*'
_COUNTED = rf"\d+(?:\s*[(\[]\s*{_LIST}\s*[)\]])?"
_SAYS = r"(?:there\s+(?:are|will\s+be|should\s+(?:now\s+)?be)|you(?:\s+(?:will|should))?(?:\s+now)?\s+have|now\s+you\s+have)(?:\s+now)?(?:\s+a\s+total\s+of)?"
_HERE = r"(?:\s+(?:on|in)\s+(?:(?:the|your|each)\s+)?needles?|\s+(?:in\s+(?:all|total)|total))?"

LISTS: tuple[Synonym, ...] = (
    row("''", r"(?<=[\d.¼½¾⅛⅜⅝⅞])\s*''", '"', "Work even until piece measures 7''."),
    row(",", rf"(?<=\d)\s*,\s*(?=[(\[]\s*\d+(?:\s*[,;:/-]\s*\d+)+\s*[)\]]|[(\[]\s*\d+\s*[)\]]\s*(?:{STS}|{ROUND}|(?:more\s+)?times\b))", " ", "CO 82, (92, 100) sts."),
    row('"|in|cm', rf'(\d(?:\s*[¼½¾⅛⅜⅝⅞])?\s*(?:"|in|cm))\s*,\s*(?=[(\[]\s*{_LENGTH_LIST}\s*[)\]])', r"\1 ", 'Work even until piece measures 7", (7.5", 8").'),
    row("(|[", rf"\b(co|cast\s+on|bo|bind\s+off|cast\s+off|knit|purl|[kp])\s*[(\[]\s*(\d+)\s*,\s*(\d+(?:\s*,\s*\d+)*)\s*[)\]](?=\s+{STS})", r"\1 \2 (\3)", "CO [58, 60, 62] sts."),
    row("/", r"\b([kp])\s?(\d+)\s?/\s?(\d+(?:/\d+)+)(?![\d/])", r"\1\2 (\3)", "K10/12/14, p2, k to end."),
    row("[(|((", rf"[(\[]\s*\(\s*({_COUNTED}\s*{STS})\s*\)\s*[)\]]", r"(\1)", "Knit to end. [(106 (110, 116) sts)]"),
    row("[", rf"(\b{ROUND})\s*\[\s*({_COUNTED}\s*{STS}(?:\s+rem(?:ain(?:ing)?)?)?)\s*\](?=\s*\.?\s*$)", r"\1. \2", "Knit 6 (6, 7) rounds [118 (122, 128) sts]."),
    row("-", rf"(^\s*|[.;]\s*)-\s*({_COUNTED}\s*{STS}(?:\s+(?:rem|remain)\w*)?)\s*-?(?=\s*\.?\s*$)", r"\1\2", "- 58 (60, 62) sts remain -"),
    row("->", rf"\s*-+>\s*(?={_COUNTED}\s*{STS}(?:\s+(?:rem|remain)\w*|\s+in\s+(?:all|total))?\s*\.?\s*$)", ". ", "Row 5: K1, k2tog, k to end -> 28 sts."),
    row("total|count", rf"(^\s*|[.;]\s*)(?:total(?:\s+{STS})?(?:\s+count)?|st(?:itch)?(?:es)?\s+count)\s*[:=-]?\s*({_COUNTED})(?:\s*{STS})?(?=\s*[.)]?\s*$)", r"\1\2 sts", "Total sts: 58 (60, 62)."),
    row("total of", rf"^(\s*)(?:a\s+)?total\s+of\s+({_COUNTED}\s*{STS}){_HERE}(?=\s*\.?\s*$)", r"\1\2", "Total of 96 (104, 112) sts on needles."),
    row("(=|[=|( =|[ =", rf"[(\[]\s*=\s*({_COUNTED}\s*{STS})\s*[)\]]", r"(\1)", "Row 5: Knit. (= 88 (92, 96) sts)"),
    row("there|you", rf"[(\[]\s*{_SAYS}\s+({_COUNTED}\s*{STS}){_HERE}\s*\.?\s*[)\]]", r"(\1)", "Row 5: Knit. (There should be 58 sts on your needle.)"),
    row("there will", rf"(^\s*|[.;]\s*)there\s+will\s+be\s+({_COUNTED}\s*{STS}){_HERE}(?=\s*\.?\s*$)", r"\1\2", "There will be 58 sts."),
)
"""The rows, in the order tried."""
