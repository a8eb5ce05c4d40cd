"""Other wordings for places: markers, needles and their sizes, edges picked up along, a gusset and its instep. No I/O.

Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.craft.needles import SIZE
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import CLOSED, ROUND, STS, N, Synonym, row

_MARK: Final = r"(?:marker\s+threads?|markers?|m)"
_SET: Final = r"(?:insert|place|put|set|hang|pm)"
_NUMBERS: Final = ("", "", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")
_KIND: Final = r"(?:(?:(?:short|long|shorter|longer)\s+)?(?:circular|double[-\s]pointed|dp|sock|straight)\s+)?"
_NDLS: Final = r"(?:needles?|dpns?)"
_PICK: Final = r"(?:pick\s+up(?:\s+(?:and|&)\s+(?:knit|k))?|pu(?:\s+(?:and|&)\s+k(?:nit)?)?|knit\s+up)"
_HOLDER: Final = r"(?:(?:the|a|an|st|stitch|waste|scrap|spare|left|right|front|back|neck|pocket)\s+)*(?:holders?|yarn|thread|wool|needle|safety[\s-]pin|pin)"
_SPOT: Final = r"(?:(?:the|top|bottom|lower|upper|left|right|front|back|neck|neckband|neckline|edge|shoulder|seam|cent(?:er|re)|of|underarm|cast-?\s?on|hem|side|corner|armhole|collar|rib|ribbing|and|at|end(?:ing)?|finish(?:ing)?|opening)\b\s*)+(?<!\s)"
_CORNER: Final = r"(?:\s+(?:in|at|from|between)\s+(?:the\s+)?(?:gap|corner|space|top\s+of\s+(?:the\s+)?(?:flap|heel|gusset))(?:\s+(?:between|of|before)\s+[a-z ]{3,40}?)?)?"
_INSTEP: Final = r"(?:across\s+)?(?:the\s+)?(?:\d+\s+)?instep(?:\s+sts|\s+stitches)?\s*(?:even\s+)?(?:in\s+(?:established\s+|set\s+|charted\s+)?patt(?:ern)?(?:\s+as\s+(?:set|established))?|as\s+(?:set|established)|in\s+(?:est|estab)\.?\s+patt(?:ern)?)"
_BESIDE: Final = "|".join(
    rf"{which}\b[^.,;]*?(?:needle\s+|N){one}\b[^.,;]*?(?:needle\s+|N){other}\b"
    for which, one, other in (("last", 1, 2), ("last", 2, 3), ("last", 3, 4), ("first", 2, 1), ("first", 3, 2), ("first", 4, 3))
)
"""A stitch that moves to the needle beside it: the last of one is not next to the end of the one before."""
_HEEL_BEGINS: Final = r"(?:(?:this|which|it)\s+is\s+(?:now\s+)?(?:the|your)\s+(?:new\s+)?(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?(?:rnd|round)s?|(?:the\s+|your\s+)?(?:rnd|round|beg(?:inning)?\s+of\s+(?:the\s+)?(?:rnd|round)|bor)\s+(?:now\s+)?(?:begins|starts|is)(?:\s+now)?\s+(?=(?:at|in)\b))(?:\s*,?\s*(?:at|in)\s+(?:the\s+)?(?:cent(?:er|re)|middle)\s+of\s+(?:the\s+)?(?:heel|sole))?"

_DOUBLED: Final = rf"(?:ds|double\s+{STS})(?:'?s)?"

PLACES: tuple[Synonym, ...] = (
    # --- the turns of short rows ---
    row("past|beyond|to", rf"\b(k|p|knit|purl|work)\s+(?:past|beyond|to)\s+(?:the\s+)?(bor|marker|m|beg(?:inning)?\s+of\s+(?:the\s+)?(?:rnd|round))(?:\s+{_MARK})?\s*,?\s+and\s+(?:then\s+)?(?:an?\s+(?:further|additional|extra)\s+|another\s+)({N})(?:\s+more)?\s+{STS}(?=\s*[,;.]|\s*$)", r"\1 to \3 sts past \2", "P past the marker and a further 8 sts, turn."),
    row("turning", r"\b(past|beyond|after|before)\s+(?:the\s+|your\s+)?(last|previous|next|first)\s+turning(?:\s+(?:point|place))?(?![\w-])", r"\1 \2 turn", "Row 3: K to 5 sts past the last turning, w&t."),
    said_row_behind("count", rf"(\b(?:past|beyond|before)\s+(?:the\s+)?(?:(?:last|previous|next|first)\s+)?(?:turn|{_DOUBLED}))\s*\(\s*(?P<said>(?:count|counting|treat|treating)\s+(?:the\s+|each\s+|every\s+)?{_DOUBLED}\s+as\s+(?:one|1)(?:\s+{STS})?)\s*\)", "Row 3: K to 5 sts past last turn (count the DS as one stitch), turn."),
    said_row_behind("where|in which|ds|double", rf"\b(knit\s+{N}\s+{ROUND})\s*,?\s+(?P<said>(?:where|in\s+which)\s+(?:you\s+(?:knit|work)\s+)?(?:all\s+)?(?:of\s+)?(?:the\s+)?{_DOUBLED}\s+(?:(?:are|is)\s+(?:knit(?:ted)?|worked)\s+)?(?:together\s+)?(?:as|into)\s+(?:one|1|a\s+single)(?:\s+{STS})?)(?=\s*[.;]|\s*$)", "Knit 1 rnd where all the DS are knitted as one stitch."),
    # --- markers ---
    *(
        row(
            "apart",
            rf"\b{_SET}\s+(?:{count}|{_NUMBERS[count]})\s+{_MARK}\s*(?:(?:in|on|around)\s+(?:the\s+)?(?:piece|work|round|needle)\s*)?,?\s*({N})\s+{STS}\s+apart\b",
            "place markers in turn after " + " and ".join([r"\1"] * (count - 1)) + " sts",
            f"CO {count * 12} sts. Join in the round. Insert {count} markers in the piece, 12 sts apart.",
        )
        for count in range(3, 11)
    ),
    row("each side|both sides", rf"\b{_SET}\s+an?\s+{_MARK}\s+(?:on|at|in)\s+(?:each|both)\s+sides?\s*,?\s+(?:with|so\s+that\s+there\s+are)\s+({N})\s+{STS}\s+(?P<said>(?:for|on)\s+(?:the\s+)?(?:front|back)\s+and\s+(?:for\s+|on\s+)?(?:the\s+)?(?:front|back)){CLOSED}", r"place markers in turn after \1 sts", "CO 48 sts. Join in the round. Place a marker on each side with 24 sts for the front and the back.", spelt_out=True),
    row("after", rf"\b{_SET}\s+(?:another|an?|the\s+second|a\s+second|2nd|1|one)\s+{_MARK}\s+after\s+({N})\s+{STS}\s*(?:\(\s*=?\s*(?P<said>(?:the\s+)?(?:(?:left|right|other)\s+)?sides?(?:\s+seam)?)\s*\))?{CLOSED}", r"place markers in turn after \1 sts", "CO 48 sts. Join in the round. Place another marker after 24 sts (= right side).", spelt_out=True),
    row("after", rf"\bplace\s+marker\s+for\s+beginning\s+of\s+the\s+round\s*,?\s+and\s+(?:another|one|1|an?)(?:\s+{_MARK})?\s+after\s+({N})\s+{STS}\s*(?:\(\s*=?\s*(?P<said>(?:the\s+)?(?:(?:left|right|other)\s+)?sides?)\s*\))?{CLOSED}", r"place markers in turn after \1 sts", "CO 48 sts. Join in the round. Insert a marker thread at the start of the round and another after 24 stitches (the sides).", spelt_out=True),
    row("in turn", rf"(\b(?:knit|purl|k|p)\s+{N}\s+{ROUND})\s*,?\s+and\s+(?=place\s+markers\s+in\s+turn)", r"\1. ", "CO 48 sts. Join in the round. Knit 1 rnd and put 2nd marker after 24 sts (= right side)."),
    row("from each", rf"\b{_SET}\s+(?:(?:2|two)\s+|an?\s+)?{_MARK}\s+({N})\s+{STS}\s+(?:in\s+)?from\s+each\s+(?:edge|end|side)\b", r"place markers \1 sts in from each side", "CO 48 sts. Work flat. Place markers 12 sts in from each edge."),
    row("remov", r"^(\s*(?:[^:.]{1,30}:\s*)?)(work\s+in\s+[^.;:,*]*?)\s*,\s*removing\s+markers(?:\s+as\s+you\s+(?:come|go)(?:\s+to\s+them)?)?(?=\s*\.?\s*$)", r"\1remove markers. \2", "Next row: Work in moss st across all sts, removing markers."),
    # --- needles ---
    row("change|switch|go to|go back", rf"\b((?:change|switch|go)\s+(?:back\s+)?to\s+(?:the\s+|a\s+)?)({_KIND}{_NDLS})\s+(?:size\s+)?no\.?\s*(?!10\.5\b)(\d{{1,2}}\.\d+)(?!\s*mm|\d)", r"\1\3 mm \2", "Change to circular needle no. 4.5."),
    row("change|switch|go to|go back", rf"\b((?:change|switch|go)\s+(?:back\s+)?to\s+(?:the\s+|a\s+)?)({_KIND}{_NDLS})\s+(?:size\s+)?(\d+(?:\.\d+)?\s?mm)\b", r"\1\3 \2", "Change to short circular needle 4.5 mm."),
    row("change|switch|go to|go back", r"\b((?:change|switch|go)\s+(?:back\s+)?to\s+)(?:the\s+|a\s+)?(?:((?:circular|double[-\s]pointed)\s+)needles?|needles)\s+(?:size\s+)?(\d{1,2}(?:\.\d+)?)(?=\s*[.,;](?!\d)|\s+and\b|\s*$)", r"\1size \3 \2needles", "Change to circular needle 3."),
    said_row_behind("(", rf"(\b(?:change|switch)\s+(?:back\s+)?to\s+(?:the\s+|a\s+)?(?:{SIZE}|smaller|larger)\s+{_KIND}{_NDLS})\s*\(\s*(?P<said>(?:\d{{2,3}}\s*(?:cm|in|inch(?:es)?|\")|dpns?|double[-\s]pointed|circular)(?:\s+long|\s+length|\s+cable)?)\s*\)", "Change to 4 mm needle (40 cm)."),
    # --- picked up, and worked across ---
    row("pick up", r"\b(pick\s+up\s+and\s+(?:knit|k))\s*:\s*(?=\d)", r"\1 ", "Pick up and knit: 36 sts across back neck, 20 sts down left neck."),
    row("all r|all a|all the way", r"\ball\s+(?:the\s+way\s+)?(a?round)\s+(?=(?:the\s+|each\s+)?(?:armhole|neck|edge|neckline|collar|hood|sleeve)\b)", r"\1 ", "With RS facing, pick up and knit 44 sts evenly all round armhole edge."),
    said_row("hold", r"(?:^|(?<=[.]))\s*(?P<said>hold\s+(?:the\s+)?(?:back|front|body|sleeve|piece|work)\s+with\s+(?:the\s+)?(?:rs|right\s+side)\s+facing(?:\s+you)?(?:\s+and\s+(?:the\s+)?(?:cast-?on|lower|upper|neck|bound-?off)\s+edge\s+(?:on|at\s+the)\s+(?:top|bottom|right|left))?)\s*(?:[.]|$)", "Hold the back with RS facing and the cast-on edge on top."),
    row("sleeve|thumb", rf"(\b{_PICK}\b[^.;:]*?(?:,\s*(?:and\s+|then\s+)*|\s+and\s+(?:then\s+)?))(knit|k)\s+(?:across\s+)?(?:the\s+)?(?:({N})\s+)?(?:held\s+)?(sleeve|thumb)\s+{STS}(?:\s+(?:from|on)\s+(?:{_HOLDER}|hold))?(?=\s*[,.;]|\s*$|\s+and\b)", r"\1\2 across \3 held \4 sts", "Pick up and knit 3 sts, k 15 thumb sts from waste yarn."),
    said_row("end at|ending at|to end", r"\s*,?\s*(?P<said>(?:to\s+end|ending|finishing)\s+at\s+(?:the\s+)?cent(?:er|re)\s+of\s+(?:the\s+)?underarm)(?=\s*[.,;(]|\s*$)", "Pick up and knit 4 sts, k held sts, pick up and knit 4 sts to end at center of underarm."),
    row("these|those|them", rf"\b(knit|k)\s+(?:across\s+)?(?:these|those|them)(?:\s+(?:{N}\s+)?{STS})?\s*(?:,\s*(?:and\s+|then\s+)*|\s+and\s+(?:then\s+)?)(?={_PICK}\b)", r"\1 to end, ", "Return 15 held thumb sts to dpns. Knit these sts, then pick up and knit 3 sts."),
    said_row_behind("finger|thumb", rf"(\b{_PICK}\s+{N}\s+{STS}\s+(?:along|from|in)\s+(?:the\s+)?(?:co|cast-?\s?on)\s+(?:{STS}|edge))\s+(?P<said>of\s+(?:the\s+)?(?:(?:index|middle|ring|little|first|second|third|fourth|last)\s+)?(?:finger|thumb))(?=\s*[.,;]|\s*$)", "Attach yarn, knit across all sts and pick up 2 sts along the CO sts of the middle finger."),
    said_row_behind("cast|co ", rf"(\b{_PICK}\s+(?:{N})\s+{STS})\s+(?P<said>(?:from|in|along|across|over)\s+(?:the\s+)?(?:{N}\s+)?(?:(?:cast-?\s?on|co)(?:\s+{STS})?|{STS}\s+(?:that\s+(?:you|were)\s+)?cast\s+on))(?=\s*[,.;]|\s*$|\s+and\b)", "Pick up and knit 2 sts from the 2 cast-on sts."),
    said_row_behind("beg|start|end", rf"(\b{_PICK}\s+{N}\s+{STS}[^.;:,]*?)\s*,\s*(?P<said>(?:beg(?:inning)?|start(?:ing)?)(?:\s+and\s+(?:ending|finishing))?\s+at\s+{_SPOT}){CLOSED}", "Pick up and knit 80 sts down left front edge, beg at top of neckband."),
    said_row_behind("mark them", rf"(\b(?:knit|k)\s+(?:the\s+)?{N}\s+{STS}\s+from\s+(?:the\s+)?(?:safety[\s-]pin|pin|holder))\s+(?P<said>and\s+mark\s+(?:them|it|this\s+{STS}))(?=\s*[,.;])", "Pick up and knit 20 sts down left neck, knit the 2 sts from safety pin and mark them, pick up and knit 20 sts up right neck."),
    # --- pockets ---
    row("pocket", rf"(?:,\s*(?:and\s+)?|\s+and\s+)(?:in\s+(?:place\s+of\s+(?:these|them)|their\s+place)\s*,?\s*)?(k|knit|p|purl|work|patt)\s+(?:across\s+)?(?:the\s+)?({N})\s+{STS}\s+(?:of|from)\s+(?:the\s+|one\s+|a\s+)?(?:(?:first|second|other|left|right)\s+)?pocket(?:\s+lining)?(?:\s+{STS})?(?=\s*[,.;]|\s*$)", r", \1 across \2 held pocket lining sts", "K10, slip next 20 sts on a holder, k across 20 sts of pocket lining, k to end."),
    row("pocket", rf"(?:,\s*(?:and\s+)?|\s+and\s+)(?:in\s+(?:place\s+of\s+(?:these|them)|their\s+place)\s*,?\s*)?(k|knit|p|purl|work|patt)\s+(?:across|over)\s+(?:the\s+|held\s+)*(?:{STS}\s+(?:of|from)\s+)?(?:the\s+|one\s+|a\s+)?(?:(?:first|second|other|left|right)\s+)?pocket(?:\s+lining)?(?:\s+{STS})?(?=\s*[,.;]|\s*$)", r", \1 across held pocket lining sts", "K10, slip next 20 sts on a holder, k across sts of one pocket lining, k to end."),
    row("pocket", rf"(^\s*|[:.,]\s*)(?:k|knit)\s+(?:across\s+)?(?:the\s+)?({N})\s+{STS}\s+(?:on|from)\s+(?:the\s+|each\s+)?pocket\s+(?:st(?:itch)?\s+)?holder\s*,\s*(inc|dec)(?:reas(?:e|ing))?\.?\s+({N}\s+{STS}\s+evenly)(?:\s+across)?", r"\1return \2 held sts to needles. Knit 1 row, \3reasing \4", "With RS facing, knit across 20 sts on pocket holder, inc 2 sts evenly across."),
    # --- a gusset and its instep ---
    row("extra", rf"\b{_PICK}\s+(?:(?:an|a|one|1)\s+extra(?:\s+{STS})?|(?:one|1)\s+(?:more\s+)?{STS}){_CORNER}(?=\s*[,.;]|\s*$|\s+and\b|\s+plus\b)", "pick up and knit 1 st", "Pick up and knit 15 sts along the side of the heel flap, pick up 1 extra stitch in the gap."),
    said_row_behind("to reach|to the cent|to the mid", rf"(\b(?:k|knit)\s*{N}(?:\s+(?:heel\s+)?{STS})?)\s+(?P<said>to\s+(?:reach\s+|get\s+to\s+)?(?:the\s+)?(?:cent(?:er|re)|middle)\s+of\s+(?:the\s+)?(?:sole|heel))(?=\s*[.;,]|\s*$)", "Pick up and knit 12 sts, then knit 7 heel sts to reach the middle of the sole."),
    row("begin|start|bor|beg", rf"(?:,\s*(?:and\s+|then\s+)*|\s+and\s+(?:then\s+)?|[.;]\s*|^\s*)(?:k|knit)\s*({N})(?:\s+(?:heel\s+)?{STS})?\s*[.;,]\s*(?P<said>{_HEEL_BEGINS})\s*[.;,(-]*\s*({N}\s+{STS}(?:\s+total)?)\s*\)?\s*\.?\s*$", r". k\1 sts to new beginning. \3", "Pick up and knit 4 sts, k40, k9. This is the new beginning of the round, at the center of the heel. 44 sts.", spelt_out=True),
    row("instep|established", rf"((?:needles?\s*|N)\d(?:\s*(?:,|and|&)\s*(?:needles?\s*|N)?\d)*\s*:\s*)(?:work\s+{_INSTEP}|work\s+in\s+established\s+patt(?:ern)?)(?=\s*[.;]|\s*$)", r"\1work in pattern", "N1: Knit to last 3 sts, k2tog, k1; N2 and N3: work instep in pattern; N4: k1, ssk, knit to end."),
    row("instep", rf"(\bto\s+(?:the\s+)?(?:(?:first|1st)\s+)?(?:marker|m))\s*,\s*(?:work|patt|knit)\s+{_INSTEP}\s*,\s*(?=(?:k|knit)\s+to\s+end)", r"\1, sm, work in pattern to marker, sm, ", "Rnd 2: Knit to marker, work instep in pattern, knit to end."),
    row("instep", rf"(\b(?:sm|slip\s+(?:the\s+)?(?:marker|m)|sl\s+(?:marker|m))\s*,\s*)(?:work|patt)\s+{_INSTEP}(?:\s+to\s+(?:the\s+)?(?:next\s+)?(?:marker|m))?\s*,\s*(?=sm\b|slip\b|sl\s+m)", r"\1work in pattern to marker, ", "Rnd 1: Knit to 3 sts before first marker, k2tog, k1, slip marker, work instep in pattern, slip marker, k1, ssk, knit to end."),
    row("needle 1|needle 4", rf"((?:k|knit)\s+to\s+last\s+{N}\s+{STS})\s+(?:of|on)\s+needle\s+1\s*,\s*([^;:.]*?)\s*;\s*(?:work\s+)?{_INSTEP}\s*;\s*(?:on\s+)?needle\s+4\s*[,:]\s*", r"needle 1: \1, \2; needles 2 and 3: work in pattern; needle 4: ", "Rnd 1: Knit to last 3 sts of needle 1, k2tog, k1; work instep even in pattern; on needle 4, k1, ssk, knit to end."),
    row("needle|n1|n2", rf"\b(?:slip|move|transfer)\s+(?:the\s+)?(?={_BESIDE})(?:first|last)\s+(?:st|stitch)\s+(?:of|from|on)\s+(needle\s+\d|N\d)\s+(?:on)?to\s+(?:the\s+(?:end|beginning|start)\s+of\s+)?(needle\s+\d|N\d)\b", r"slip 1 st from \1 to \2", "CO 40 sts. Divide over 2 needles. Slip last st of N1 onto N2."),
)  # fmt: skip
"""The rows, tried early, when lists stand in one form."""
