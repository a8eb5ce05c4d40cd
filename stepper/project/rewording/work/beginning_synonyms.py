"""Other wordings for how a piece begins: joined into a ring, its stitches spread over needles. No I/O.

Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import STS, N, Synonym, row

_CO: Final = rf"(?:cast\s+on|co)\s+{N}(?:\s+{STS})?"
_RING: Final = r"(?:(?:rnd|round|ring|circle|tube|loop)s?)"
_FREE: Final = r"(?:not|nothing|no|none|that|to|you|do|don't|doesn't|the|your|any|sts|stitches|st|is|are|isn't|aren't|has|have|gets?|become|becomes|of|cast-?\s?on|edge|row|work|it|them|ever|there's|there|as|really|very|around|round|needles?|on)"
_TWIST: Final = rf"(?:(?:be|being|tak(?:e|ing)|mak(?:e|ing)|mind(?:ing)?|without|do|don't|check(?:ing)?|watch(?:ing)?|ensur(?:e|ing)|first)\s+(?:careful\s+|care\s+|sure\s+|out\s+)?(?:{_FREE}\s+)*twist(?:ed|ing|s)?\b|mind\s+the\s+twist)(?:\s+{_FREE})*?"
"""The care not to twist, in words that say nothing else."""
_JOIN: Final = r"(?:re-?)?join(?:\s+(?:the\s+|your\s+)?(?:work|piece|knitting|ends|sts|stitches|cast-?\s?on))?(?:\s+(?:to|for|and)\s+(?:begin\s+|start\s+)?(?:knit|work)(?:ing)?)?"
_BEG: Final = r"(?:the\s+|your\s+)?(?:bor|(?:rnd|round)(?:\s+(?:transition|start|beginning))|(?:beg(?:inning)?|start)(?:\s*-?\s*of\s*-?\s*(?:the\s+|your\s+|each\s+)?(?:rnd|round))?)"
_LAY: Final = r"(?:divid|distribut|spread|arrang|split|plac|put|lay)(?:e|ing|ting)?"
_ON: Final = r"(?:over|on|onto|on\s+to|between|among|amongst|across)"
_NDLS: Final = r"(?:(?:double[-\s]pointed|dp|d\.?p\.?|sock|working)\s+)?(?:needles|dpns|ndls?\.?)"
_FEW: Final = r"(?:three|four|five|two|[2-5])"

BEGINNINGS: tuple[Synonym, ...] = (
    row("smallest|largest", r"\b(small|larg)est\s+(?=(?:(?:circular|double[-\s]pointed|circ\.?|long|short|straight)\s+)?(?:needles?|dpns?|circulars?)\b)", r"\1er ", "With the largest circular needle, cast on 40 sts."),
    said_row_behind("provisional", r"(^\s*|[.:]\s*)(?P<said>provisionally)\s+(?=(?:cast\s+on|co)\b)", "Provisionally cast on 96 sts."),
    # --- joined into a ring ---
    row("close", rf"(^\s*|[.,;]\s*(?:and\s+)?|\s+and\s+)close\s+(?:the\s+(?:work|piece|sts|stitches)\s+)?(?:to|into|in)\s+(?:the|a)\s+{_RING}\b", r"\1join in the round", "CO 96 sts. Close to the round."),
    row("join", rf"\b{_JOIN}\s+(?:in|into|to)\s+(?:the|a)\s+{_RING}\b(?=[^.]*\b(?:twist|mark)|\s*[,;.]|\s*$|\s+and\b)", "join in the round", "CO 96 sts. Join the work into a round and place a marker at the beginning of the round."),
    row("twist", rf"\bjoin(?:\s+in\s+the\s+round)?\s*[,;(]?\s*(?:and\s+|but\s+)?(?P<said>{_TWIST})\)?(?=\s*[.,;!]|\s*$|\s+and\s+(?:place|mark|pm)\b)", "join in the round", "CO 96 sts. Join in the round, mind the twist.", spelt_out=True),
    said_row("twist", rf"(^\s*|(?<=[.!])\s*)(?P<said>{_TWIST})\s*(?:[.!]+|$)", "CO 96 sts. Join in the round. Mind you don't twist them!"),
    row("place|put|insert|hang", rf"\b(place|put|insert|hang)\s+(?:(?:a|the)\s+)?(?:marker|(?-i:M))(?=\s+(?:at|for|on)\s+{_BEG})", r"\1 a marker", "CO 48 sts. Join in the round. Place M at beg of rnd (left side) and another after 24 sts."),
    row("marker", rf"(\b(?:place|put|insert|set|hang)\s+a\s+marker(?:\s+thread)?|\bpm)\s+(?:at|for|on)\s+{_BEG}(?:\s*\(\s*=?\s*(?P<said>(?:the\s+)?(?:left\s+side|right\s+side|(?:cent(?:er|re)|middle|mid)\s+(?:of\s+(?:the\s+)?)?(?:back|front)|underarm|side(?:\s+seam)?))\s*\))?(?=\s*[.,;]|\s*$|\s+and\b)", "place marker for beginning of the round", "CO 48 sts. Join in the round. Put a marker at the start of the round and another after 24 sts (the sides).", spelt_out=True),
    # --- spread over needles ---
    row("equally", r"\bequally\b(?=\s+(?:over|on|onto|between|among|amongst|across)\b)", "evenly", "CO 56 sts. Divide equally between 4 needles."),
    *(
        row(
            "divid|distribut|spread|arrang|split|plac|put|lay",
            rf"{before}{_LAY}\s+(?:(?:them|these|all|the|your)\s+)*(?:{STS}\s+)?(?:out\s+)?(?:evenly\s+)?{_ON}\s+(?:to\s+)?({_FEW})\s+{_NDLS}(?:\s*[,;]?\s*(?:and\s+)?(?=join|close|be\b|being|taking)|\s*(?=[.;:(]|$|,(?!\s*\d)))",
            words,
            example,
        )
        for before, words, example in (
            (rf"({_CO})\s*(?:[,;.]\s*(?:and\s+)?(?:then\s+)?|\s+and\s+)", r"\1. divide over \2 needles. ", "CO 56 sts, distribute them equally on 4 needles and join."),
            (r"(^\s*|[.]\s+)", r"\1divide over \2 needles. ", "Spread them over three needles and join into a ring."),
        )
    ),
    row("per needle|per dpn|each needle", rf"(\bdivide\s+over\s+{_FEW}\s+needles)[\s.]*[(:,-]+\s*({N})(?:\s+{STS})?\s+(?:per|each|on\s+each)\s+(?:needle|dpn)\s*\)?\s*,?\s*(?:and\s+)?(?=join|close|[.,;]|$)", r"\1. \2 sts on each needle. ", "CO 56 sts and distribute over 4 dpns: 14 sts each needle."),
    *(
        row(
            "first",
            rf"({_CO})\s*[,;:-]+\s*(?:with\s+)?" + r"\s*,?\s*(?:and\s+)?".join(rf"({N})(?:\s+{STS})?\s+on\s+(?:the\s+|your\s+)?(?:{word})(?:\s+(?:needle|dpn))?" for word in ("first|1st", "second|2nd", "third|3rd", "fourth|4th")[:needles]) + r"(?=\s*[.,;]|\s*$)",
            rf"\1. divide over {needles} needles, " + ", ".join(rf"\{at + 1} sts on needle {at}" for at in range(1, needles + 1)),
            f"CO {needles * 16} sts, " + ", ".join(f"16 on the {word} needle" for word in ("first", "second", "third", "fourth")[:needles]) + ".",
        )
        for needles in (4, 3, 2)
    ),
)  # fmt: skip
"""The rows, tried early, when lists stand in one form."""
