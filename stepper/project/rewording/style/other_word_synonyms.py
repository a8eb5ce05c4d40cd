"""Other words for one thing, by whole classes: thicker needles, a length of wool, "6 x in every 4th row". No I/O.

Each row puts the word of the other tables for a class of words, wherever the thing is named, so that the tables behind
it have to know one name of a thing only.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.synonym import CUT_YARN, LONG, ROUND, STS, N, Synonym, row

_NEEDLE: Final = r"(?:(?:pair|set)\s+of\s+)?(?:(?:straight|circular|double[-\s]pointed|long|short)\s+)?(?:needles?|ndls?|pins|dpns?|circulars?|pair\s+of\s+needles|set\s+of\s+needles|pair|set)\b"
_WOOL: Final = r"(?:wool|yarn|thread|cotton|string|twine)"
_LENGTH: Final = rf"(?:(?:an?|the|some|another|any)\s+)?(?:(?:bit|piece|length|strand|scrap|end|loop)s?\s+of\s+)(?:(?:spare|waste|scrap|contrast(?:ing)?|odd|different|smooth|colou?red|strong|other)\s+)*{_WOOL}"
_PUT: Final = r"(?:place|put|slip|sl|leave|leaving|transfer|move|thread|run|keep)"
_PART: Final = r"(?:cuffs?|leg|welt|hem|yoke|neckband|collar|border|brim|toe|foot|body|sleeves?|edging|ribbing|hand|bodice|skirt|basque|waistband)"
_NTH: Final = r"(?:\d{1,2}(?:st|nd|rd|th)|other|alt(?:ernate)?)"
_ACTS: Final = r"(?:(?:k|p|knit|purl|work|ssk|skp|sl|slip|in\s+patt(?:ern)?|k2tog|p2tog)\b|[kp]\d)"
_ONES: Final = ((r"(?:1st|first)", "1"), (r"(?:2nd|second)", "2"), (r"(?:3rd|third)", "3"), (r"(?:4th|fourth)", "4"))
_N: Final = r"(?:needles?|ndls?|dpns?|(?-i:N))(?!\w)"
_ON: Final = r"((?:^|[,;:.])\s*)(?:and\s+|then\s+)?(?:on|over|along)\s+(?:the\s+)?"


def _on(one: int) -> Synonym:
    """Return the row that reads "on the first needle" as the head of what is worked on it."""
    first, number = _ONES[one]
    word = ("first", "second", "third", "fourth")[one]
    return row(
        "needle|ndl|dpn| n",
        rf"{_ON}{first}\s+{_N}\s*[,:]?\s*(?={_ACTS})",
        rf"\1needle {number}: ",
        f"On the {word} needle k to last 3 sts, k2tog, k1.",
    )


def _both(one: int, other: int) -> Synonym:
    """Return the row that reads "on the first and third needles" as the head of what is worked on them."""
    (first, number), (second, last) = _ONES[one], _ONES[other]
    words = ("1st", "2nd", "3rd", "4th")
    return row(
        "needle|ndl|dpn| n",
        rf"{_ON}{first}\s+(?:and|&)\s+(?:the\s+)?{second}\s+{_N}\s*[,:]?\s*(?={_ACTS})",
        rf"\1needles {number} and {last}: ",
        f"On the {words[one]} and {words[other]} needles k1, ssk, k to end.",
    )


OTHER_WORDS: tuple[Synonym, ...] = (
    # --- needles told by their thickness ---
    row("fine|thin", rf"\b(?:finer|thinner|finest|thinnest)(?:[-\s]sized?)?\s+(?:pair\s+of\s+|set\s+of\s+)?(?={_NEEDLE})", "smaller ", "Change to finer needles."),
    row("thick", rf"\b(?:thicker|coarser|thickest)(?:[-\s]sized?)?\s+(?:pair\s+of\s+|set\s+of\s+)?(?={_NEEDLE})", "larger ", "Change to the thicker needles and knit 6 rows."),
    # --- what holds stitches ---
    row(
        "wool|yarn|thread|cotton|string|twine|pin",
        rf"\b({_PUT}\s+(?:[^.,;*]*?\b{STS}|them|rest|others?)\.?\s+)(?:on\s*to|on|to)\s+(?:{_LENGTH}|(?:an?\s+)?(?:large\s+)?safety[-\s]pins?)(?!\w)",
        r"\1on a holder",
        "K10, put next 12 sts on a length of wool, k to end.",
    ),
    # --- numbers of times ---
    row("x ", rf"\b({N})\s*x\s+(?:in\s+|on\s+)?(?:the\s+)?(?:every|each)\s+({_NTH}\s+)?(rnd|round|row)s?\b", r"every \2\3 \1 times", "Dec 1 st at each end 3 x in every 4th row."),
    row("x ", rf"\b({N})\s*x\s+(?:in|on)\s+(?:the\s+)?foll(?:owing)?\s+({_NTH})\s+(rnd|round|row)\b", r"every \2 \3 \1 times", "Dec 1 st at each end 1 x in the following 4th row."),
    row("decreases|increases", rf"\brep(?:eat)?\s+(?:the|these)\s+(inc|dec)reases\s+(?=(?:in\s+|on\s+)?(?:every|each)\b)(?:in\s+|on\s+)?(every|each)\s+({_NTH}\s+)?(rnd|round|row)", r"rep same \1 \4 \2 \3\4", "Repeat the decreases in every 4th round 3 times."),
    row("in every|on every", rf"(\btimes\s*,?\s*(?:and\s+)?(?:then\s+)?)(?:in|on)\s+(?=every\s+(?:{_NTH}\s+)?{ROUND})", r"\1", "Rep dec round every 4th round 3 times, then in every round twice."),
    # --- needles by their place in the round ---
    *(_both(one, other) for one, other in ((0, 2), (1, 3), (1, 2), (0, 3))),
    *(_on(one) for one in range(4)),
    row("needle| n ", rf"{_ON}(?:needles?|ndls?|(?-i:N))\s*(\d)\s+(?:and|&)\s+(?:N\s*)?(\d)\s*[,:]?\s*(?={_ACTS})", r"\1needles \2 and \3: ", "Needle 1: k1, ssk, k to end; on needles 2 and 3 knit to end."),
    row("needle| n", rf"{_ON}(?:needle|ndl|(?-i:N))\s*(\d)\s*[,:]?\s*(?={_ACTS})", r"\1needle \2: ", "On needle 1 k to last 3 sts, k2tog, k1."),
    row("needle|n", r"(\b(?:needles?\s+|N)\d(?:\s+and\s+N?\d)?\s*:\s*)in\s+(?:patt(?:ern)?)(?=\s*[;,.]|\s*$)", r"\1work in pattern to end", "Needle 1: k1, ssk, k to end; needles 2 and 3: in pattern."),
    row(" n:| needles:", rf"((?:^|[;.])\s*){_ONES[0][0]}\s+and\s+{_ONES[2][0]}\s+{_N}\s*:\s*(?={_ACTS})", r"\1needles 1 and 3: ", "1st and 3rd needles: K1, ssk, k to end."),
    row(" n:| needles:", rf"((?:^|[;.])\s*){_ONES[1][0]}\s+and\s+{_ONES[3][0]}\s+{_N}\s*:\s*(?={_ACTS})", r"\1needles 2 and 4: ", "1st and 3rd needles: K1, ssk, k to end; 2nd and 4th needles: K to end."),
    # --- rows and shapings told otherwise ---
    row("after ", rf"\bthe\s+({N}\s+{ROUND})\s+after(?:\s+(?:that|this|those|these|them))?(?=\s*[.,;]|\s*$|\s+[a-z])", r"next \1", "Cast off 6 sts at beg of the 2 rows after that."),
    row("after it|after that|thereafter", rf"(?<!^on\sthe\s)(\b(?:next|\d{{1,2}}(?:st|nd|rd|th)))(?:\s+(?:row|rnd|round))?\s*,?\s*(?:and|,)\s+(?:(?:of|on|in)\s+)?every\s+({_NTH}(?:\s*[(\[][^)\]]*[)\]])?)\s+(row|rnd|round)\s+(?:after\s+(?:it|that|this)|thereafter)", r"\1 and every foll \2 \3", "Inc 1 st at each end of the 5th row and of every 8th row after it until there are 66 sts."),
    row("row and of|rnd and of|round and of|row, and of", r"(\b\d{1,2}(?:st|nd|rd|th))\s+(?:row|rnd|round)\s*,?\s+and\s+(?:of|on|in)\s+(?=every\b)", r"\1 and ", "Inc 1 st at each end of the 5th row and of every foll 8th row until there are 66 sts."),
    row("every ", rf"(\bevery\s+foll(?:owing)?\s+{_NTH}(?:\s*[(\[][^)\]]*[)\]])?\s+(?:row|rnd|round))\s*,\s*(?=to\s+{N}\s+{STS})", r"\1 ", "Inc 1 st at each end of the 5th row and of every 8th row after it, to 65 sts."),
    row("times and every", r"(\bevery\b[^.;:]*?\btimes)\s+and\s+(?=every\b)", r"\1, then ", "Rep dec round 4 x in every 2nd round and 5 x in every round."),
    row("each |both |neck edge|armhole edge|front edge|raglan edge", r"(?<![\w-])(?<!\ba\s)(?<!\ban\s)(?<!\bone\s)(inc|dec)(?:rease)?\.?\s+(?=(?:at|on)\s+(?:the\s+)?(?:(?:each|both)\s+(?:ends?|sides?|edges?)|(?:neck|armhole|front|raglan)\s+edges?)\b)", r"\1 1 st ", "Dec at both ends of every RS row 4 times."),
    row("beg", rf"(?<![\w-])(inc|dec)(?:rease)?\.?\s+(?=at\s+(?:the\s+)?beg(?:inning)?\.?\s+of\s+(?:each\s+of\s+)?(?:the\s+)?next\s+{N}\s+rows)", r"\1 1 st ", "Dec at beg of next 2 rows."),
    row("work these|knit these|work the last", rf"\b(?:work|knit)\s+(?:these|(?:the\s+)?last)\s+({N}\s+)?({ROUND})\s+(?=until\s+(?!all\b|the\s+end\b|{N}\s+{ROUND}))", r"rep last \1\2 ", "Work these 2 rows until piece measures 5 cm."),
    # --- the last stitch ---
    row("fasten", rf"((?:^|[:,.;]\s*|\bthen\s+)(?:[kp]\s?[2-9]\s*tog(?:\s+tbl)?|ssk|skpo?|sk2po?|s2kpo?|sl\s?1\s*,\s*k\s?(?:1|2\s?tog)\s*,\s*psso))\s*,?\s*(?:and\s+|then\s+)*(?:{CUT_YARN}\s*,?\s*(?:and\s+)?)?fasten\s+off(?=\s*\.?\s*$)", r"\1. Bind off rem 1 st", "K2tog and fasten off."),
    # --- lengths in two units ---
    # --- where a length is taken, and how it ends ---
    row("measured", r"\b(until\s+(?:the\s+)?(?:armholes?|piece|work|sleeve|back|front))\s*,?\s*(?:when\s+)?measured\s+(?:vertically|straight(?:\s+up)?|flat)\s*,?\s*(?:is|measures|comes\s+to)\s+", r"\1 measures ", "Work even until the armhole, measured vertically, is 20 cm."),
    row("measured", rf"(\b(?:measures|is)\s+{LONG})\s*,?\s*(?:when\s+)?measured\s+(?:vertically|straight(?:\s+up)?|flat)(?:\s+up)?", r"\1", "Work even until armhole measures 19 cm, measured straight up."),
    row("end with|finish with|end after", r"(^\s*|[.!]\s+)(?:end|finish)\s+(?:with|after|on)\s+(?=an?\s+(?:rs|ws|right[-\s]side|wrong[-\s]side)\s+row\b(?=\s*\.?\s*$))", r"\1ends with ", "Work even until piece measures 20 cm. End with a WS row."),
    # --- what a sentence is for ---
    row("for ", rf"^(\s*)for\s+(?:the\s+)?({_PART})\s*,?\s+(?=(?:work|knit|purl|cont(?:inue)?|cast|[kp])\b)", r"\1\2: ", "For the cuff work 16 rounds in k2, p2 rib."),
    row("as foll", r"\s*(\bas\s+foll(?:ow)?s)\s*:\s*-+\s*$", r" \1:", "Change to larger needles and work as follows:-"),
)  # fmt: skip
"""The rows, in the order tried."""
