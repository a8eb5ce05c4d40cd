"""Other wordings for casting on: the needles and yarn it names, the manner, and what is worked next. No I/O."""

from __future__ import annotations

from stepper.craft.needles import NEEDLES, SIZE
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import OFF, ROUND, STS, N, Synonym, row

_YARN = r"(?:yarn\s+|colou?r\s+)?(?-i:MC|CC\d?|[A-Z])"
_BARE = r"(?:(?:straight|circular|double[-\s]point(?:ed)?|long|short)\s+){0,2}(?:needles?|dpns?)"
"""Needles named by their kind alone, which change nothing: "the circular needle"."""
_SIZED = rf"(?:an?\s+|the\s+)?(?:pair\s+of\s+|set\s+of\s+)?({NEEDLES})"
_WITH = r"(?:with|using)\s+"
_NEXT = rf"(?=(?:cast\s+on|co\b|{OFF}|bo\b|pick\s+up|knit\b|work\b|cont(?:inue)?\b|k\b|p\b|purl\b))"
_KINDS = r"\b(smaller|larger)(?:\s+size(?:d)?)?\s+(?:straight|circular|double[-\s]pointed?|dp|d\.?p\.?)\s+(?:needles?|dpns?)"

CASTING: tuple[Synonym, ...] = (
    row("smaller|larger", _KINDS, r"\1 needles", "Using smaller straight needles, cast on 80 sts."),
    row(
        "double",
        r"\bdouble[-\s]point\s+(?=needles?\b)",
        "double-pointed ",
        "Change to 4 mm double-point needles.",
    ),
    # --- what is cast on with ---
    row(
        "us",
        rf"^(\s*)((?:cast\s+on|co)\s+{N}\s+{STS})\s*,?\s+(?:with|using|on)\s+(?:your\s+|the\s+)?({SIZE})(?=\s*[.;]|\s*$)",
        r"\1with \3 needles, \2",
        "CO 120 sts with US 7.",
    ),
    row(
        "us",
        rf"^(\s*(?:with|using|on)\s+)(?:your\s+|the\s+)?({SIZE})\s*,?\s+(?=(?:cast\s+on|co)\s+{N})",
        r"\1\2 needles, ",
        "With US 7 CO 120 sts.",
    ),
    row(
        "with|using|beg|start",
        rf"^(\s*)(?P<said>(?:(?:beg(?:inning)?|start(?:ing)?)\s+)?{_WITH}(?:an?\s+|the\s+|two\s+|three\s+|four\s+|2\s+|3\s+|4\s+)?{_BARE})\s+and\s+{_WITH[:-3]}?\s*({_YARN})\s*,\s*{_NEXT}",
        r"\1with \3, ",
        "Using circular needle and MC, cast on 80 sts.",
        spelt_out=True,
    ),
    said_row_behind(
        "with|using|beg|start",
        rf"^(\s*)(?P<said>(?:(?:beg(?:inning)?|start(?:ing)?)\s+)?{_WITH}(?:an?\s+|the\s+|two\s+|three\s+|four\s+|2\s+|3\s+|4\s+)?{_BARE}(?:\s+and\s+(?:using\s+)?(?:an?\s+|the\s+|your\s+)?[a-z' -]+?cast-?\s?on(?:\s+method)?)?)\s*,?\s*{_NEXT}",
        "With circular needle, cast on 80 sts.",
    ),
    row(
        "with|using",
        rf"^(\s*)((?:cast\s+on|co|pick\s+up\s+and\s+k(?:nit)?)\s+{N}\s+{STS})\s*,?\s+{_WITH}{_SIZED}\s+and\s+({_YARN})(?=\s*[.,;]|\s*$)",
        r"\1change to \3. with \4, \2",
        "Cast on 80 sts using 4 mm needles and yarn A.",
    ),
    row(
        "with|using|on",
        rf"^(\s*)((?:cast\s+on|co|pick\s+up\s+and\s+k(?:nit)?)\s+{N}\s+{STS})\s*,?\s+(?:with|using|on(?:to)?)\s+{_SIZED}(?=\s*[.,;]|\s*$)",
        r"\1change to \3. \2",
        "Cast on 80 sts on 4 mm needles.",
    ),
    *(
        row(
            "with|using|on",
            rf"^(\s*)(cast\s+on|co)\s+(?:{_WITH}|on(?:to)?\s+)(?:the\s+)?(?:needles?\s+(?:size\s+)?)?({SIZE})(?:\s+needles?)?{yarn}\s*,?\s+({N}\s+{STS})(?=\s*[.,;]|\s*$)",
            words,
            example,
        )
        for yarn, words, example in (
            (rf"\s+(?:and|in)\s+(?:{_WITH})?({_YARN})", r"\1change to \3 needles. with \4, \2 \5", "Cast on with 4 mm and A 84 sts."),
            ("", r"\1change to \3 needles. \2 \4", "Cast on with 4 mm needles 84 sts."),
        )
    ),
    # --- the manner ---
    said_row_behind(
        "tail|loop|cable|knit|thumb|italian|tubular|twisted|norwegian|island",
        rf"(\b(?:cast\s+on|co)\s+{N}\s+{STS})\s*(?:,\s*|[(\[]\s*)(?P<said>(?:long[-\s]tail|backwards?[-\s]loop|e-?loop|cabled?|knit(?:ted)?|thumb|italian|tubular|german\s+twisted|twisted(?:\s+german)?|old\s+norwegian|channel\s+island)(?:\s+(?:cast[-\s]?on|method|technique)|(?=\s*[)\]])))\s*[)\]]?(?=\s*[.,;)]|\s*$)",
        "Cast on 56 sts (long-tail).",
    ),
    said_row_behind(
        "long",
        rf"(\b(?:cast\s+on|co)\s+{N}\s+{STS})\s*,\s*(?P<said>(?:in\s+)?long[-\s]tail|backwards?[-\s]loop)(?=\s*[.;]|\s*$)",
        "Cast on 56 sts, long-tail.",
    ),
    said_row_behind(
        "method",
        rf"(\b(?:cast\s+on|co)\s+{N}\s+{STS})\s*,\s*(?P<said>(?:in\s+|by\s+|with\s+|using\s+)?(?:your|any|an?)\s+(?:(?:most|very|favou?rite)\s+)*(?:stretchy|stretchiest|elastic|loosest|usual|favou?rite|stretch)\s+(?:cast-?\s?on\s+)?method)(?=\s*[.;]|\s*$)",
        "Cast on 56 sts, your stretchiest method.",
    ),
    said_row(
        "loosely",
        rf"\b(?P<said>(?:very\s+)?loosely)\s*,?\s+(?=(?:cast\s+on|co|{OFF}|bo)\b)",
        "Loosely cast on 80 sts.",
    ),
    said_row_behind(
        "loosely",
        rf"\b((?:cast\s+on|co|{OFF}|bo)\b(?:\s+(?:all|rem(?:aining)?))*)\s*,?\s+(?P<said>(?:very\s+)?loosely)(?=\s+(?:\d|{N}))",
        "Cast off loosely 6 sts at beg of next 2 rows.",
    ),
    said_row_behind(
        "loosely",
        rf"\b((?:{OFF}|bo)\s+(?:the\s+|all\s+|rem(?:aining)?\s+)*{N}\s+{STS})\s*,?\s+(?P<said>(?:very\s+)?loosely)(?=\s*[.,;]|\s*$|\s+(?:in|at)\b)",
        "Bind off 6 sts loosely at beg of next 2 rows.",
    ),
    row(
        "cast of ",
        r"\bcast\s+of\s+(?=\d)",
        "cast off ",
        "Cast of 5 sts at beg of next 2 rows.",
    ),
    # --- what is worked next ---
    row(
        ",",
        rf"((?:^|:)\s*(?:cast\s+on|co)\s+{N}\s+{STS})\s*,\s*(?=(?:k|knit|p|purl|work)\s+{N}\s+rows\b)",
        r"\1. work flat. ",
        "Cast on 40 sts, k 8 rows.",
    ),
    row(
        ",",
        rf"^(\s*(?:cast\s+on|co)\s+{N}\s+{STS})\s*,\s*(?=(?:k|knit|p|purl|work)\s+(?:{N}\s+)?(?:rnds|rounds)\b)",
        r"\1. ",
        "Cast on 40 sts, k 8 rnds.",
    ),
    row(
        "for",
        rf"(^\s*|[.]\s+)(k|p|knit|purl)\s+for\s+(?={N}\s+{ROUND})",
        r"\1\2 ",
        "K for 6 rows.",
    ),
)
"""The rows, in the order tried."""
