"""Other wordings for pieces that are joined in one row or round: worked across, with stitches cast on between. No I/O.

"Knit the 40 sts of the left sleeve, pm, knit the front sts" works what waits or what lies on the needle; which of the
two is for the plan to say. Stitches cast on between two parts stand in their row, and "join" begins a sentence of its
own behind them. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.craft.needles import SIZE
from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import STS, N, Synonym, row

_PART: Final = r"(?:(?:(?:left|right|first|second|other)\s+)?(?:front|back|sleeve))"
_VERB: Final = r"(?:knit|k|purl|p|work)"
_CO: Final = rf"(?:(?:co|cast\s+on)\s+{N}(?:\s+(?:more\s+|new\s+)?(?:underarm\s+)?{STS})?)"
_FOR: Final = r"for\s+(?:the\s+)?(?:(?:left|right|front|first|second|other|back)\s+)*(?:underarm|neck|neckline|armhole|armpit|front|steek|sleeve)s?"
_NEEDLES: Final = rf"(?:{SIZE}|smaller|larger)"
_NDL: Final = r"(?:\s+(?:\d+\s*(?:cm|in\.?|inch|\"))?\s*(?:long\s+)?(?:circular\s+)?(?:needles?|circ|circular))?"
_FACING: Final = r"(?:with\s+)?(?:the\s+)?(?:rs|right\s+sides?)(?:\s+of\s+(?:all\s+)?(?:the\s+)?(?:work|pieces))?\s+facing(?:\s+you)?"
_UNITE: Final = r"(?:now\s+)?(?:join|unite|put\s+together)\s+(?:the\s+)?(?:(?:body|fronts?|back|sleeves?|pieces|all|both|and|two|three|four|the|yoke)[\s,]+)+(?:together\s+)?(?:as\s+foll(?:ow)?s|in\s+(?:the\s+)?following\s+order|thus)"

UNITED: tuple[Synonym, ...] = (
    # --- what only heads the row ---
    row("across all", rf"((?:\bneedles?|\bfacing)\s*,\s*|^\s*|[.:]\s*)(?:join\s+(?:in\s+)?(?:the\s+)?yarn\s+and\s+)?work\s+across\s+all\s+{STS}(?:\s+on\s+(?:the\s+)?(?:holders|needles?))?\s+as\s+foll(?:ow)?s\.?\s*[:;]\s*-?\s*(?:next\s+(?:row|rnd|round)\s*:\s*)?(?=[kpw])", r"\1", "With RS facing and smaller needles, work across all sts as follows: K31 of right front, K37 of first sleeve."),
    row("as follows|as folls|order|thus", rf"^(\s*)(?:using|with)\s+(?:the\s+|a\s+)?({_NEEDLES}){_NDL}(?:\s*(?:,|\band)\s*{_FACING})?\s*,\s*(?P<said>{_UNITE})\s*:?\s*$", r"\1change to \2 needles", "Using the larger 32 in needle, join body and sleeves as follows:", spelt_out=True),
    row("as follows|as folls|order|thus", rf"^(\s*)(?P<said>{_UNITE})\s*,?\s*(?:using|with)\s+(?:the\s+|a\s+)?({_NEEDLES}){_NDL}(?:\s*(?:,|\band)\s*{_FACING})?\s*:?\s*$", r"\1change to \3 needles", "Join body and sleeves as follows, using larger needle and with right sides facing:", spelt_out=True),
    said_row_behind("as follows|as folls|order|thus", rf"^(\s*)(?P<said>{_UNITE})(?:\s*,?\s*{_FACING})?\s*:?\s*$", "Join body and sleeves as follows:"),
    said_row_behind("join|unite", r"^(\s*)(?P<said>(?:now\s+)?(?:join|unite|knit|put)\s+(?:(?:all|both|the|pieces|parts|sleeves?|body|and|of|together|onto|to|yoke|for|work)\b\s*)+):\s*(?=(?:k|knit|work|with|using|pm|next)\b)", "Join all pieces for the yoke: knit 40 sts of first sleeve and 70 sts of front."),
    said_row_behind("attached|from|of", r"((?:^|:)\s*)(?P<said>with\s+(?:the\s+)?(?:(?:working|main)\s+)?(?:yarn|wool)\s+(?:(?:that\s+is\s+)?(?:still\s+)?attached\s+to|from|of)\s+(?:the\s+)?(?:body|back|front|sleeve|piece))\s*[,:]\s*", "With the yarn attached to the body, knit across left sleeve, front, right sleeve, back."),
    row("attached", r"(\bneedles?)\s+and\s+((?-i:MC|CC\d?|[A-H])|(?:the\s+)?(?:yarn|wool))\s+(?P<said>(?:still\s+)?attached\s+to\s+(?:the\s+)?(?:body|back|front|sleeve|piece))\s*,\s*", r"\1 and \2, ", "With larger needle and MC attached to back, knit across 30 sts of one sleeve, front, second sleeve, and back.", spelt_out=True),
    said_row_behind("starting|beginning", r"((?:^|:)\s*(?:with|using)\s+[^,.;:]*?needles?)\s+and\s+(?P<said>(?:starting|beginning)\s+(?:at|with)\s+(?:the\s+)?(?:left|right)\s+(?:back|front|sleeve))(?=\s*,)", "Joining rnd: with 80 cm needle and starting at left back, k 20 of left sleeve, pm, k 20 of body."),
    # --- worked across ---
    said_row_behind("for the", rf"(?<=[,:]\s)((?:and\s+|then\s+)*{_VERB}\s+(?:the\s+)?(?:(?:next|remaining|rem|other)\s+)?{N})(?P<gap>\s+body)?(?P<sts>\s+{STS})\s+(?P<said>for\s+the\s+(?:front|back))(?=\s*[,.;(]|\s*$|\s+and\b)", "Place 10 sts on a thread, knit across left sleeve, knit 74 body sts for the front, place 10 sts on a thread."),
    row("sleeve", rf"(\b(?:place|put|slip|hold)\s[^.;]*?,\s+(?:and\s+|then\s+)*{_VERB})\s+(?:the\s+)?((?:second|other|left|right|first)\s+sleeve)(?=\s*[,.;(]|\s*$|\s+and\b)", r"\1 across held \2 sts", "Place 10 sts on a thread, knit the second sleeve, k 74.", again=True),
    row("sts of|stitches of|sts from|sts for", rf"\b({_VERB})(?:\s+|(?=\d))(?:across\s+)?(?:the\s+|all\s+)*({N}\s+)?(?:held\s+)?{STS}\s+(?:of|from|for)\s+(?:the\s+|one\s+)?({_PART})(?=\s*[,.;(]|\s*$|\s+and\b)", r"\1 across \2held \3 sts", "Next row: Knit the 30 sts of the left front, cast on 24 sts, knit the 30 held sts of the right front."),
    row("front sts|back sts|front stitches|back stitches|sleeve sts|sleeve stitches", rf"((?:[:,]\s+(?:and\s+|then\s+)*|^\s*))(?<!\bsm,\s)({_VERB})\s+(?:all\s+|the\s+)*(held\s+)?({_PART})\s+{STS}(?=\s*[,.;]|\s*$|\s+and\b)(?![^.]*\bsm\b)", r"\1\2 across \3\4 sts", "Joining round: K front sts, CO 8 sts, k back sts, CO 8 sts."),
    row("at |for ", rf"\b({_VERB})(?:\s+|(?=\d))(?:across\s+)?(?:the\s+)?({N})\s+{STS}\s+(?:(?:left\s+)?on\s+(?:an?\s+|the\s+)?(?:st(?:itch)?\s+)?holder\s+(?:at|for)|held\s+(?:for|at))\s+(?:the\s+)?((?:(?:left|right|cent(?:er|re)|front|back)\s+)*(?:front|back|neck|sleeve|thumb))(?=\s*[,.;(]|\s*$|\s+and\b)", r"\1 across \2 held \3 sts", "K across 13 sts on holder at front neck."),
    row("held", rf"\b(work)\s+across\s+(?:the\s+)?((?:{N}\s+)?held\s+(?:thumb\s+|sleeve\s+)?{STS})\s+in\s+(?:established\s+)?(?:patt(?:ern)?|rib(?:bing)?)(?:\s+as\s+(?:set|established))?(?=\s*[.;,]|\s*$)", r"\1 across \2", "Work across the held sts in pattern."),
    row("last st", rf"([,;]\s*(?:and\s+|then\s+)*)(k|p|knit|purl)\s+(?:the\s+)?last\s+st(?:itch)?(?=\s*[.(]\s*{N}\s+{STS})", r"\1\2 1", "Next rnd: K19, hold 10 sts, cast on 6 sts, k10, k the last st. 36 sts."),
    # --- cast on between, and joined ---
    said_row_behind("for ", rf"(\b{_CO})\s+(?P<said>{_FOR})(?=\s*,?\s+(?:and|then)\s+|\s*,)", "Knit to the end of the row, CO 16 sts for the front neck, and join in the rnd."),
)  # fmt: skip
"""The rows, tried on lines that nothing else reads."""
