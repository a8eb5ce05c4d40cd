"""Other wordings for stitches that wait: who waits, on what, in every form of the verb. No I/O.

"Let the front rest on a thread while you work the back", "the 12 gusset sts are put on a safety pin", "leaving the others to
wait": whatever the verb and its form, the sentence says which stitches, and that they wait. It is put into one order, "place
the next 12 gusset sts on a holder", which the rest of the tables knows. What holds them changes no stitch. Stitches told by
their place alone ("the centre 16") wait only where the same sentence or the next takes up those beyond them: elsewhere
nobody can tell where they lie. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.part_names import PART, WHICH
from stepper.project.rewording.synonym import CLOSED, STS, N, Synonym, row

# --- who waits ---
_PART: Final = rf"{WHICH}(?:{PART}|gusset|panel)(?:'s)?"
"""A part of a piece by its name, without an article."""
_ARTICLE: Final = r"(?:(?:the|your|all|of|both|just|now)\s+)*"
_NAMED: Final = rf"(?:(?:other|second|first)\s+)?(?P<named>{_PART})s?(?:\s+{STS})?|{STS}\s+(?:of|for)\s+(?:the\s+)?(?P<whose>{_PART})"
_REST: Final = rf"(?:rest(?:\s+of\s+(?:the|your)\s+{STS})?|remainder(?:\s+of\s+the\s+{STS})?|(?:other|remaining|unworked|rem\.?)\s+(?:{_PART}\s+)?{STS}|others)"
_COUNTED: Final = rf"(?:{_REST}|(?:other|remaining|unworked|rem\.?)\s+({N})(?:\s+(?:{_PART}\s+)?{STS})?)"
"""The rest, with its number where it is told: it is held against what is left."""

# --- that they wait, and on what ---
_YARN: Final = r"(?:yarn|wool|cotton|thread|string)"
_HOLDER: Final = (
    rf"(?:(?:(?:an?|the|another|your|some|its|their|own|one|two|2nd|second|separate|spare|safety|st|stitch|waste|scrap|contrast(?:ing)?|colou?red|long|short|large|small|"
    rf"smooth|locking|extra|removable|(?:length|piece|strand|bit|end|scrap)s?\s+of)[\s-]+)*(?:holders?|{_YARN}s?|pins?|cables?|cords?|hold|(?:stitch\s+)?markers?)|(?:(?:an?|the|another|second|2nd|extra|separate|short)\s+)*spare\s+(?:circular\s+|double[-\s]pointed\s+)?(?:needles?|dpns?)|an?(?:other)?\s+extra\s+needle)"
)
_ON: Final = r"(?:on\s+to|onto|on|to|over\s+to)"
_BETTER: Final = rf"(?:\s*,?\s+or\s+(?:(?:on\s+to|onto|on|to)\s+)?{_HOLDER})?"
ON_HOLDER: Final = rf"(?:{_ON}\s+{_HOLDER}(?:\s+of\s+(?:the\s+|your\s+)?(?:circular\s+)?needles?)?{_BETTER})"
"""On what stitches wait."""
_LEFT_ON: Final = rf"(?:{ON_HOLDER}|{_ON}\s+(?:(?:the|your|their|its|other|left|right|left-hand|circular|working|main)\s+)*needles?)"
_STAY: Final = r"(?:rest|wait|stay|remain|sit|sleep|hang|be)"
_WAITING: Final = rf"(?:\s+(?:to\s+)?{_STAY}\b)?(?:\s+(?:waiting|resting|sitting|unworked|where\s+they\s+are|there|behind|aside))?"
_PUT: Final = r"(?:place|put|slip|sl|slide|leave|transfer|move|thread|lay|park|set|keep|hold|store|take|rest)"
_PUTTING: Final = (
    r"(?:placing|putting|slipping|sliding|leaving|transferring|moving|keeping|setting|parking|holding)"
)
_ARE_PUT: Final = r"(?:(?:are|is|should\s+be|will\s+be|get)\s+(?:now\s+|then\s+|all\s+)?(?:placed|put|slipped|slid|transferred|moved|threaded|set|parked)|(?:now\s+|all\s+)?goe?s?)"
_STAYING: Final = r"(?:(?:are|is)\s+(?:left|kept|held)|(?:will\s+|can\s+|may\s+|should\s+|now\s+|all\s+|just\s+)*(?:rest|wait|stay|remain|sit|hang)s?)"
"""What may be said of stitches that wait already: an order only where it says of which of those on the needle."""
_FOR_NOW: Final = (
    r"(?:\s*,?\s+(?:(?:for|until)\s+(?:now|later)|until\s+(?:they\s+are\s+)?(?:needed|wanted)(?:\s+again)?|without\s+(?:knitting|working)\s+(?:them|these)|"
    r"(?:in\s+)?the\s+same\s+way|as\s+before|in\s+the\s+meantime|to\s+be\s+(?:worked|knitted|picked\s+up|used)\s+later(?:\s+on)?))"
)
_E: Final = r"(?=\s*[.;:,]|\s*$|\s+and\b|\s+then\b)"
_START: Final = r"(^\s*|[.!:]\s+|[;,]\s*(?:and\s+|then\s+)*|\band\s+(?:then\s+)?)"
_WHILE: Final = rf"(?:\s*,?\s+while\s+(?:you\s+(?:work|knit|finish|make)|(?:working|knitting))\s+(?:on\s+)?(?:the\s+)?{_PART}(?:\s+{STS})?)"

# --- that the work goes on with the others ---
_HAS: Final = "hold|yarn|needle|pin|thread|wool|cable|marker|string|cotton|cord"

WAITING: tuple[Synonym, ...] = (
    # --- what is done with them, and to the yarn behind them ---
    row("back on|back to", rf"(^\s*|[.!:]\s+)(?:now\s+)?(?:pop|stick|get|bring|lift|load|pick\s+up)\s+((?:the\s+)?(?:{N}\s+)?(?:held\s+|live\s+)?(?:{_PART}\s+)?{STS}\s+back\s+(?:on|onto|on\s+to|to)\b)", r"\1place \2", "Pop the 20 sleeve sts back on your needles."),
    row("snug|tight|firm|draw|pull", r"(?:\s*[,;]\s*(?:and\s+)?|\s+and\s+)(?P<said>(?:pull|draw|tug|tighten|snug)(?:ing)?\s+(?:up\s+)?(?:the\s+)?(?:working\s+)?yarn(?:\s+up)?(?:\s+(?:snug|tight|firm)(?:ly)?)?(?:\s+(?:across|over|at|behind|to\s+close)\s+the\s+(?:gap|hole|opening))?)(?:\s*,\s*(?:and\s+)?|\s+and\s+)", ", ", "K8, hold 8 sts for thumb, pull the yarn snug across the gap and knit to end.", spelt_out=True),
    row("both|two", r"\b(?:both|the\s+two)\s+(?:shoulders|fronts|halves|sides\s+of\s+the\s+neck)(?=\s+(?:at\s+once|at\s+the\s+same\s+time|together|simultaneously)\b)", "both sides", "K8, join a second ball, bind off 4 sts, k8. Work both shoulders at the same time, each with its own ball."),
    row("both", r"\bboth\s+(?:sides|shoulders|fronts|halves)(?:\s+of\s+the\s+neck)?\s+are\s+(?:now\s+|then\s+)?(?:worked|knit|knitted|finished)\s+(?=(?:at\s+once|at\s+the\s+same\s+time|together|simultaneously)\b)", "work both sides ", "K8, join a second ball, bind off 4 sts, k8. Both sides are now worked at once, each from its own ball."),
    row("balls", r"^(\s*)(?:with|using)\s+(?:separate|two|2)\s+balls(?:\s+of\s+yarn)?(?:\s+for\s+(?:each\s+side|the\s+two\s+sides))?\s*,\s*(?=(?:dec|inc|bind|cast|bo|work|knit|purl)\b|decrease|increase)", r"\1work both sides at once. ", "With separate balls of yarn for each side, decrease 1 st at each neck edge on every RS row 4 times."),
    row("aside", r"^(\s*)set\s+(?:(?:the\s+)?(?:body|sleeve|piece|work|front|back|it|this|these)\s+)?aside(?P<said>\s+(?:for\s+(?:now|later)|until\s+(?:later|needed)|(?:and\s+)?without\s+(?:breaking|cutting)\s+(?:the\s+)?yarn))?(?=\s*\.?\s*$)", r"\1place all sts on a holder", "Set the body aside without breaking the yarn.", spelt_out=True),
    row(_HAS, rf"(\b{_PUT}\s+(?:(?:the|next|first|last|{N}|{STS}|{_PART})\s+)+{ON_HOLDER})\s+and\s+(?:then\s+)?(?=(?:cast\s+on|co)\s+\d)", r"\1, ", "K8, pm, k8, pm, k8. K to marker, put the thumb stitches on hold and cast on 2 sts in the gap."),
    # --- a row that divides: what is worked between lies on the needle ---
    row("hold", rf"\b(k|knit|work|p|purl)\s+(?:across\s+)?(?:the\s+)?(?:next\s+)?({N})\s+(?P<said>{_PART})\s+{STS}(?=\s*,\s*(?:(?:remove\s+(?:the\s+)?(?:marker|m)|rm)\s*,\s*)?hold\s+(?:{N}|all)\s+{STS})", r"\1 \2 sts", "Knit the 20 front sts, place the next 8 sts on a holder.", spelt_out=True),
    *(
        row("same way", rf"{before}\b(k|knit|work|p|purl)\s+(?:across\s+)?(?:the\s+)?(?P<said>(?:(?:left|right)\s+)?(?:front|back))(?:\s+{STS})?\s*,\s*({_PUT}\s+{_ARTICLE}(?:{N}\s+)?(?:(?:left|right|second|other)\s+)?sleeve(?:\s+{STS})?\s+{ON_HOLDER})\s+(?:in\s+)?the\s+same\s+way(?=\s*,)", words, f"K8, pm, k8, pm, k20, pm, k8, pm. K to marker,{said} hold 8 sts,{said} knit the back, put the other sleeve on waste yarn the same way, cast on 4 sts, k to end.", spelt_out=True)
        for before, words, said in (
            (r"(\bremov(?:e|ing)\s+(?:it|(?:the\s+|next\s+)*(?:marker|m))\b[^.]*?,\s*)", r"\1\2 to marker, remove marker, \4, remove marker", " remove marker,"),
            (r"(?<!,)(,\s*)", r"\1\2 to marker, \4", ""),
        )
    ),
    # --- those in the middle wait, those beyond come back ---
    # --- the rest waits, behind a row that is turned or on which the work goes on ---
    row("rest|other|rem|unworked", rf"(\bturn)(?:\s+(?:the\s+|your\s+)?work)?\s*(?:,\s*(?:and\s+)?|;\s*|\s+and\s+|\.\s+)(?:(?:{_PUTTING}|{_PUT}|let)\s+(?:the\s+|all\s+)*{_COUNTED}{_WAITING}(?:\s+{_LEFT_ON})?|(?:the\s+)?{_COUNTED}\s+(?:{_ARE_PUT}|{_STAYING}){_WAITING}(?:\s+{_LEFT_ON})?(?:\s+for\s+(?:the\s+)?{_PART})?){_FOR_NOW}?{CLOSED}", r"\1, leaving remaining \2\3 sts on a holder", "K20, turn, leaving the remaining sts to wait."),
    row("rest|other|rem", rf"(\b(?:only|alone))\s*[.;,]\s*(?:and\s+)?(?:the\s+|all\s+)*{_REST}\s+(?:{_ARE_PUT}|{_STAYING}){_WAITING}(?:\s+{_LEFT_ON})?{_FOR_NOW}?{CLOSED}", r"\1, leaving the other sts on a holder", "Cast on 60 sts. Work flat. Work on the 20 sts of the left front only; the others can stay on the needle."),
    row("last", rf"(^\s*|[.:]\s*)(?:now\s+)?(?:cont(?:inue)?|work|proceed|go\s+on|knit)(?:\s+(?:working|knitting|even|flat))?\s+(?:on|over|with)\s+(?:only\s+|just\s+)?(?:the\s+|these\s+)?last\s+({N})\s+{STS}(?:\s+(?:only|alone))?(?:\s*,\s*leaving\s+the\s+other\s+sts\s+on\s+a\s+holder)?{CLOSED}", r"\1Hold sts beyond gap. \2 sts", "Cast on 60 sts. Work flat. K20, bind off 20 sts, k20. Continue on the last 20 sts only; the others can stay on the needle."),
    row("cent|middle", rf"(^\s*|[.!:]\s+){_PUT}\s+(?:the\s+)?(?:cent(?:er|re)|middle)\s+({N})\s+{STS}\s+{ON_HOLDER}(\s+for\s+(?:the\s+)?(?:back\s+|front\s+)?{_PART})?{CLOSED}", r"\1place rem \2 sts on a holder\3", "Next row: bind off 8 sts, k until there are 12 sts on the needle, bind off rem sts. Slip the centre 12 sts to a holder."),
    # --- one half waits while the other is worked ---
    row("while", rf"(^\s*|[.!]\s+)(?:let|{_PUT})\s+{_ARTICLE}(?:(?:{N}\s+)?(?P<named>{_PART})s?(?:\s+{STS})?|(?:{N}\s+)?{STS}\s+(?:of|for)\s+(?:the\s+)?(?P<whose>{_PART})){_WAITING}(?:\s+{ON_HOLDER})?{_WHILE}(?:\s*:\s*({N}\s+{STS}))?{CLOSED}", r"\1hold sts beyond gap for \2\3. \4", "Let the front rest on a thread while you work the back."),
    # --- every form of the verb ---
    *(
        row(_HAS, rf"{_START}{head}{_ARTICLE}(?:{_NAMED}){verb}\s+{ON_HOLDER}{_FOR_NOW}?{_E}", r"\1place \2\3 sts on a holder", example)
        for head, verb, example in (
            (rf"(?:{_PUT}|let)\s+", _WAITING, "K8, pm, k8. K to marker, put the other sleeve on waste yarn the same way, cast on 4 sts."),
        )
    ),
    row(_HAS, rf"(^\s*|[.!]\s+){_PUT}(?:\s+(?:the|all|these|them|it|remaining|rem|live|shoulder|{STS}))*{_WAITING}\s+{ON_HOLDER}{_FOR_NOW}?{CLOSED}", r"\1place all sts on a holder", "Leave on a safety pin."),
)  # fmt: skip
"""The rows, tried on lines that nothing else reads."""
