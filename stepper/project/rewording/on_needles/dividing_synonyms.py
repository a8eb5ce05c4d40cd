"""Other wordings for a row that divides a piece, and for going on with one of its parts. No I/O.

"Work 40 sts for the right front, bind off 8, work until there are 84 sts on right needle after the bind-off for the
back": for which part stitches are is said with the row. Which part goes on is told by its stitches; those beyond wait,
whether the page leaves them on the needle or moves them. A part that is told by its name alone is not read: where it
lies is not said. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.part_names import PART, SIDED, STRIP
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import CUT_YARN, STS, N, Synonym, row

_PART: Final = rf"(?:(?:the|a|one|half|of|{SIDED})\s+)*(?:{PART}|{STRIP})s?"
_VERB: Final = r"(?:k|p|knit|purl|work|patt|rib)"
_IN_PATT: Final = r"(?:\s+in\s+(?:the\s+)?(?:patt(?:ern)?|rib(?:bing)?)(?:\s+as\s+(?:set|established))?)"
_NEEDLE: Final = r"(?:(?:the|your|left|right|left-hand|right-hand|lh|rh|main|circular|working|spare)\s+)*(?:needles?|cable)(?:\s+of\s+(?:the\s+|your\s+)?(?:circular\s+)?needle)?"
_YARN: Final = r"(?:yarn|wool|thread)"
_HOLDER: Final = rf"(?:(?:(?:an?|the|another|separate|some|st|stitch|waste|scrap|spare|contrasting)\s+)*(?:(?:st|stitch)?-?\s?holders?|(?:waste|scrap|spare)\s+(?:{_YARN}|needles?)|(?:lengths?|pieces?)\s+of\s+(?:(?:waste|scrap|spare)\s+)?{_YARN}|threads?|pins?|hold))"
_WHERE: Final = rf"(?:(?:unworked|waiting|where\s+they\s+are|aside)(?:\s+on\s+{_NEEDLE})?|(?:on\s+to|onto|on|to)\s+(?:{_HOLDER}|{_NEEDLE}))"
_OTHERS: Final = rf"(?:the\s+)?(?:rest(?:\s+of\s+the\s+{STS})?|(?:all\s+(?:the\s+)?)?others?(?:\s+{STS})?|remaining(?:\s+{STS})?|remainder(?:\s+of\s+the\s+{STS})?|rem\.?\s+{STS}|(?:(?:back|front|left|right|and)\s+)+{STS})"
_LEAVE: Final = rf"(?:leav(?:e|ing)|plac(?:e|ing)|put(?:ting)?|mov(?:e|ing)|slip(?:ping)?|transfer(?:ring)?|keep(?:ing)?)\s+{_OTHERS}\s+{_WHERE}(?:\s*,?\s+or\s+(?:(?:move|put|slip|place|transfer)\s+(?:them\s+|these\s+)?)?(?:on\s+to|onto|on|to)\s+{_HOLDER})?(?:\s+(?:for\s+(?:now|later)|while\s+you\s+work|in\s+the\s+meantime))?"
_GO_ON: Final = r"(?:now\s+)?(?:cont(?:inue)?|work|proceed|go\s+on|knit)(?:\s+(?:working|knitting|even))?(?:\s+(?:flat|in\s+rows|back\s+and\s+forth(?:\s+in\s+rows)?))?\s+(?:on|over|with)"
_ONE: Final = r"(?:(?:the|these|those)\s+)?"
_SHAPED: Final = r"(?:(?:left|right)\s+front|front|back|(?:left|right|first)\s+(?:side|shoulder|half))"
_STEP: Final = r"for\s+(?:the\s+)?(?:first|left|right|second)\s+(?:side|front|shoulder|half)(?:\s+of\s+(?:the\s+)?(?:neck|front|back))?"
_REMOVE: Final = r"remov(?:e|ing)\s+(?:both\s+|the\s+|all\s+)*(?:gusset\s+|thumb\s+)?(?:markers|ms)(?:\s+as\s+you\s+(?:go|come\s+to\s+them))?"
_START: Final = r"(^\s*|[.:]\s*)"
_FLAT: Final = r"\s+(?:flat|in\s+rows|back\s+and\s+forth(?:\s+in\s+rows)?)"
_CLOSED: Final = r"(?=\s*[.:]|\s*$)"
_AND_ON: Final = r"\s*,?\s+(?:and\s+)?(?=(?:work|knit|purl|dec|inc|bind|cast|bo|k|p)\b)"
_WITH_ROW: Final = r"\s*[,;:]?\s+(?:beg(?:inning)?|start(?:ing)?)\.?\s+with\s+an?\s+(ws|rs)\s+row(?=\s*[.:]|\s*$)"
_E: Final = r"(?=\s*[.;:]|\s*$)"

DIVISIONS: tuple[Synonym, ...] = (
    # --- for which part stitches are ---
    row("for ", rf"(\b{_VERB}(?:{_IN_PATT})?\s+to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?)\s+(?P<said>for\s+{_PART})(?=\s*[.;(]|\s*$)", r"\1", "Next rnd: K34, k2tog, hold 40 sts for sleeve, CO 8 sts, k to end for the other half of the back.", spelt_out=True),
    said_row_behind("(", rf"(\b{_VERB}(?:{_IN_PATT})?\s+to\s+(?:the\s+)?end)\s*\(\s*=?\s*(?P<said>{_PART})\s*\)", "Next row: K20, k to end (other half of the back)."),
    row("work", rf"((?:[:,]\s+|\band\s+))work\s+({N})\s+{STS}(?=\s*(?:,|\.?\s*$))", r"\1work \2 sts in pattern", "Next row: Work 24 sts for the left front, hold 40 sts, cast on 8 sts, work 48 sts."),
    row("rest|remainder|half", rf"(\b{_VERB})\s+(?P<said>(?:the\s+)?(?:rest|remainder|(?:other|second|last)\s+half)\s+of\s+(?:the\s+)?{_PART})(?:\s+{STS})?\s*[,:=(-]\s*({N})(?:\s+{STS})?\)?(?=\s*[.;]|\s*$)", r"\1 \3 sts", "Next rnd: K36, hold 40 sts for sleeve, CO 8 sts, knit the rest of the back, 36.", spelt_out=True),
    # --- going on with one part ---
    row("flat|back and forth|in rows", rf"{_START}(?:(?:(?:the\s+)?(?:heel(?:\s+flap)?|flap)\s+)?is\s+)?(?:now\s+)?(?:worked|knit(?:ted)?)\s+(?:flat|back\s+and\s+forth(?:\s+in\s+rows)?|in\s+rows)\s+(?:over|on|across)\s+(?:the\s+)?(?:next\s+|first\s+)({N})\s+(?:heel\s+)?{STS}(?:\s+(?:only|alone))?{_E}", r"\1work in rows over next \2 sts", "Heel flap: worked flat over the next 32 sts."),
    row("only|alone|just|leav", rf"{_START}{_GO_ON}\s+(?:just\s+|only\s+)?{_ONE}(?:next\s+)?({N})\s+(?:(?:{_SHAPED})\s+{STS}|{STS}\s+(?:of|for)\s+(?:the\s+)?{_SHAPED})(?:\s+(?:only|alone))?(?:\s*[.,;]\s*(?:and\s+)?{_LEAVE}){_E}", r"\1work in rows over next \2 sts, hold others", "Cast on 180 sts. Work flat. Continue on the 40 left front sts only. Leave the rest on the cable or move them to waste yarn."),
    row("only|alone|just", rf"{_START}{_GO_ON}\s+(?:just\s+|only\s+)?{_ONE}(?:next\s+)?({N})\s+(?:(?:{_SHAPED})\s+{STS}|{STS}\s+(?:of|for)\s+(?:the\s+)?{_SHAPED})(?:\s+(?:only|alone)){_E}", r"\1work in rows over next \2 sts", "Cast on 180 sts. Work flat. Continue on the 40 sts of the left front only."),
    row("over", rf"{_START}(?:now\s+)?work\s+(?:the\s+)?(?:left|right)\s+front\s+(?:back\s+and\s+forth\s+|in\s+rows\s+)?(?:over|on)\s+(?:the\s+)?next\s+({N})\s+{STS}(?:\s+only)?\s*[.,;]\s*(?:and\s+)?{_LEAVE}{_E}", r"\1work in rows over next \2 sts, hold others", "Cast on 180 sts. Work flat. Work the left front over the next 40 sts, leaving the other sts on hold."),
    row("hold", rf"(\bhold\s+(?:rem|all)\b[^.;]*[.;,]\s*(?:turn\s*(?:,|and\b)\s*(?:and\s+)?)?){_GO_ON}\s+(?:just\s+|only\s+)?(?:the|this)\s+(?:(?:first|left|right|other)\s+)*(?:set|group|lot|side|half|shoulder|front)(?:\s+of\s+{STS})?(?:\s+(?:only|alone))?\s*(?P<said>\([^()\d]*\))?{_E}", r"\1work on these sts only", "K8, hold 8 sts, hold rem 8 sts. Turn and work on the first set only (left front as worn).", spelt_out=True),
    row("last", rf"{_START}{_GO_ON}\s+(?:the\s+)?last\s+(?:set|group|lot)\s+of\s+({N}\s+)?{STS}\s+(?:only|alone|{_STEP})(?:\s*[.,;]\s*(?:and\s+)?{_LEAVE})?{_E}", r"\1hold sts beyond gap", "Cast on 60 sts. Work flat. Continue on the last set of sts for the left shoulder."),
    *(
        row("only|alone", rf"{_START}(?:now\s+)?(?:cont(?:inu(?:e|ing))?|work(?:ing)?|proceed(?:ing)?|go\s+on|knit(?:ting)?)(?:\s+(?:working|knitting|even))?{flat}\s+(?:on|over|with)\s+(?:the\s+)?((?:(?:left|right)\s+)?front|back)(?:\s+{STS})?\s+(?:only|alone)(?:\s+as\s+(?:foll(?:ow)?s?\.?|given\s+below))?{end}", words, example)
        for flat, end, words, example in (
            (_FLAT, _WITH_ROW, r"\1Next row (\3): go on over \2 sts only. Work back and forth", "Working back and forth on back sts only, beg with a WS row."),
            (_FLAT, _CLOSED, r"\1Go on over \2 sts only. Work back and forth", "Work back and forth on the back sts only."),
            (_FLAT, _AND_ON, r"\1Go on over \2 sts only. Work back and forth. ", "Working back and forth on the back sts only, purl 1 row."),
            ("", _CLOSED, r"\1Go on over \2 sts only", "Continue on back sts only."),
            ("", _AND_ON, r"\1Go on over \2 sts only. ", "Working on back sts only, purl 1 row."),
        )
    ),
    row("only for|first group|first set", rf"(\bon\s+(?:these|this))\s+(?:first\s+)?({N}\s+{STS}|(?:set|group|lot)\s+of\s+{STS})\s+(only)(?:\s+{_STEP})?{_E}", r"\1 \2 \3", "Turn and work on these 24 sts only for the first side of neck."),
    row("sets of|groups of|lots of", rf"{_START}({CUT_YARN}\s*(?:[.;,]\s*(?:and\s+)?|\s+and\s+))?(?:leave|place|put|slip)\s+(?:these|the|all)\s+(?:{N}\s+)?(?:sets|groups|lots)\s+of\s+{STS}\s+(?:on\s+to|onto|on)\s+{_HOLDER}{_E}", r"\1break yarn. Hold all sts", "Break yarn and leave these 3 sets of sts on holders."),
    said_row_behind("loop", rf"((?:^\s*|[.,:]\s*(?:and\s+|then\s+)*))(?P<said>using\s+(?:the\s+)?(?:backward|backwards|half-hitch|twisted)[-\s]loops?(?:\s+(?:method|cast-?\s?on))?)\s*,?\s+(?=(?:co|cast\s+on)\s+{N})", "Next rnd: K18, k2tog, hold 17 sts for sleeve, using backward loop co 3, k to end."),
    row("leave", rf"(\b{CUT_YARN})\s*[,;]\s*(?=leave{_E})", r"\1 and ", "Break yarn, leave."),
    said_row("leave", rf"^\s*(?P<said>leave\s+(?:(?:the|this|first|second|left|right)\s+)*(?:body|sleeve|piece|back|front|mitten|work)\s+on\s+(?:(?:its|the|a|spare|own|circular)\s+)*needles?){_E}", "Leave first sleeve on its spare needle."),
    row("set aside|leaving", rf"^(\s*)(?:set\s+(?:the\s+)?(?:body\s+|work\s+|piece\s+)?aside|({CUT_YARN})\s*,\s*leaving\s+(?:the\s+)?{STS}\s+on\s+{_NEEDLE}\s*,?)(?P<said>\s*\(?(?:do\s+not|don't)\s+{CUT_YARN}\)?)?\s*,?\s+and\s+(?:make|knit|work)\s+the\s+sleeves{_E}", r"\1\2. Hold all sts for body", "Set aside (do not break yarn) and make the sleeves.", spelt_out=True),
    row("these", rf"{_START}(?:now\s+)?(?:cont(?:inue)?|work|knit)\s+now\s+on\s+these\s+(?:last\s+)?({N}\s+{STS})\s+(?P<said>for\s+(?:the\s+)?{_SHAPED}){_E}", r"\1\2", "Work now on these last 20 sts for Back.", spelt_out=True),
    # --- the gusset of a thumb waits ---
    row("gusset", r"\b(k|p|knit|purl|work)\s+to\s+(?:the\s+)?(?:thumb\s+)?gusset(?=\s*,|\s+and\b)", r"\1 to marker", "Next rnd: Knit to the gusset, hold 17 sts, knit to end."),
    row("remov", rf"\b(to\s+(?:the\s+)?(?:first\s+|next\s+)?(?:gusset\s+|thumb\s+)?(?:marker|m))\s*,\s*hold\s+({N})\s+{STS}(?:\s+for\s+(?:gusset|thumb))?(?:\s*,\s*|\s+(?:and\s+|while\s+)?){_REMOVE}", r"\1, remove marker, hold \2 sts for thumb, remove marker", "Next rnd: Knit to gusset marker, place 17 gusset sts on waste yarn and remove markers, knit to end."),
    row("gusset", rf"\b(?:place|put|slip|transfer|move)\s+(?:the\s+)?({N})\s+gusset\s+{STS}\s+(?:on\s+to|onto|on|to)\s+{_HOLDER}(?=\s*[,;]|\s+and\b)", r"hold \1 sts for thumb", "Next rnd: Knit to marker, put the 17 gusset sts on hold, CO 3 sts, knit to end."),
    said_row_behind("their place|the gap|the hole|the opening|them", rf"(\b(?:co|cast\s+on)\s+{N}(?:\s+{STS})?)\s+(?P<said>(?:in\s+(?:their|its)\s+place|in\s+place\s+of\s+(?:them|these)|(?:to\s+bridge|over|across|above)\s+(?:the\s+)?(?:gap|hole|opening|thumb)))(?=\s*[,.;]|\s*$|\s+and\b)", "Next rnd: K20, hold 17 sts for thumb, cast on 3 sts in their place, k to end."),
)  # fmt: skip
"""The rows, tried on lines that nothing else reads."""
