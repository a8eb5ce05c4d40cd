"""Other wordings within a row told stitch by stitch: full stops, fabrics by their first word, the middle stitch. No I/O.

These rows come before all that look at a row as a whole: a row known with one dress of its stitches is known with each.
A stitch said several times - "k2tog 3 times" - is put in brackets only where nothing stands before it that could
belong to it: "yo, k2tog 3 times" may be three holes, and stays as it is.
"""

from __future__ import annotations

from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_END = r"(?=\s*[.,;)\]*]|\s*$)"
_BEGUN = r"(^\s*|[,;:(*]\s*|\b(?:and|then)\s+)"
_GOAL = r"to\s+(?:the\s+)?(?:end\b|last\b|within\b|next\b|m\b|marker\b|first\b|second\b|cent(?:re|er)\b|marked\b|\d)"
_ONCE = r"(?:k2tog|p2tog|ssk|ssp|skp|skpo|k3tog|p3tog|sk2p|cdd|s2kp|kfb|pfb)(?:\s+tbl)?"

_AS_SEEN = r"(?:\s+as\s+(?:they|the\s+(?:sts|stitches))\s+(?:appear|face\s+you|present\s+themselves|come|show|look))?"


def _worked(how: str, seen: str) -> str:
    """Return the expression of "k the purl sts", "k over p", of stitches by what they show."""
    made = {"k": "k(?:nit)?", "p": "p(?:url)?"}
    shown = {"knit": r"k(?:nit)?s?", "purl": r"p(?:url)?s?"}[seen]
    return rf"{made[how]}\s+(?:over\s+(?:the\s+)?|(?:all\s+)?the\s+|all\s+){shown}(?:\s+{STS})?"


STITCH_ROWS: tuple[Synonym, ...] = (
    # --- full stops and wool ---
    row(".;|. ;|.,", r"(?<=[a-z])\.\s*(?=[;,])", "", "3rd row : k.1, * wl. fwd., k.2 tog. ; rep. from * to end."),
    row("tog", r"\b([kp])\.\s*([23])\s?tog(?:ether)?\b\.?(?=\s*[;)\]*])", r"\1\2tog", "3rd row : k.1, * yo, k.2 tog. ; rep. from * to end."),
    row("m.1|m. 1", r"(?<![\w.])m\.\s?1\b(?!\s*st)", "m1", "5th row : k.1, * m.1, k.20 ; rep. from * to end."),
    row(
        "r.n|o.n|rd|rnd n|round n",
        r"(?<![\w-])(?:w\.?\s?r\.\s?n|w\.?\s?o\.\s?n|y\.\s?r\.\s?n|y\.\s?o\.\s?n|(?:wool|wl\.?|yarn)\s+(?:rd|rnd|round)\.?\s+(?:the\s+)?(?:n|ndl|needle))\b\.?(?=\s*[,;.)\]*]|\s*$)",
        "yo",
        "4th row : k.1, * wl. rd. n., p.2 tog. ; rep. from * to end.",
    ),
    # --- a stitch several times ---
    row(
        "times|twice",
        rf"([*(\[]\s*)({_ONCE})\s+(?={N}\s+times{_END}|twice{_END}|three\s+times{_END})",
        r"\1(\2) ",
        "Rnd 5: *K2tog 3 times, p1; rep from * around.",
    ),
    # --- a fabric by its first word ---
    row("m.st|m. st", rf"(?<![\w.])m\.\s?st\b\.?(?=\s+(?:\d|{_GOAL}))", "moss", "1st row: M.st 3, cast off 1 st, m.st to end."),
    row("moss|seed", rf"{_BEGUN}(?:work\s+)?(moss|seed)\.?\s+(?={_GOAL})", r"\1work in \2 st ", "Next row: Moss to last 5 sts, k2tog, yo, moss 3."),
    row("seed|garter", rf"{_BEGUN}(?:work\s+)?(seed|garter)(?:\s+st(?:itch)?)?\.?\s+(\d+)(?:\s+{STS})?{_END}", r"\1work \3 sts in \2 st", "Next row: Seed 3, yo, k2tog, seed to end."),
    row("g st|g.st|g. st", rf"{_BEGUN}g(?:\.\s?|\s)st\b\.?\s+(\d+)(?:\s+{STS})?{_END}", r"\1work \2 sts in garter st", "Next row: G st 5, k to last 5 sts, g st 5."),
    row("patt 1|patt. 1|patt one|patt 2|patt. 2|patt two|patt 3|patt 4", rf"(^\s*|[.]\s+)patt(?:ern)?\.?\s+({N}\s+{ROUND})(?:\s+(?:straight|even))?{_END}", r"\1work \2 in patt", "Patt 1 row."),
    row(
        "tog",
        r"\b(?:rib|patt|moss|seed|work)\s+(?:2|two)\s?tog(?:ether)?\b\.?(?!\s+tbl)",
        "k2tog",
        "Buttonhole row: Rib 3, yrn, rib 2 tog, rib 2.",
    ),
    *(
        row("inc", rf"\binc(?:rease)?\.?\s+{how}wise\s+in(?:to)?\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+st(?:itch)?\b", made, f"K1, inc {how}wise in next st, k to end.")
        for how, made in (("knit", "kfb"), ("purl", "pfb"))
    ),
    row("each of first|each of the first", rf"\bin\s+each\s+of\s+(?:the\s+)?first\s+(?={N}\s+{STS})", "in each of next ", "Next row: Inc in each of first 17 sts, k1."),
    row("every st|each st", rf"\b(?:inc(?:rease)?(?:\s+(?:1|one))?|(kfb|pfb))\s+in(?:to)?\s+(?:every|each)\s+{STS}\s+(?=to\s+last\b)", r"*kfb; rep from * ", "Next row: K1, inc in each st to last st, k1."),
    row("row/r|rnd/r|round/r", r"(^\s*|:\s*)(?:row|rnd|round)s?/(?=(?:row|rnd|round)s?\s+\d)", r"\1", "Rnd/Row 1: *K1, p1; rep from * to end."),
    row("turn|altern|contin|through", r"(:\s*|^\s*)((?:[kp](?:nit|url)?\s?\d{1,2}(?:\s+tbl)?\s*,\s*)+[kp](?:nit|url)?\s?\d{1,2}(?:\s+tbl)?)\s*,?\s+(?:in\s+turn|alternately|alternating|continuously|throughout)" + _END, r"\1*\2; rep from * to end", "Rib pattern: K2, p2 in turn."),
    row("contin|always|throughout", r"(\brep(?:eat)?\.?\s+from\s+\*)\s*,?\s+(?:continuously|always|throughout)" + _END, r"\1 to end", "Rnd 1: *K1, p1, rep from * continuously."),
    row("always|contin|throughout", rf"^(?=.*\b(?:always|continuously|throughout)\b)(\s*)(?:always\s+)?(rep(?:eat)?)\s+(these\s+{N}\s+{ROUND}|{ROUND}\s+\d+\s*(?:-|to|and|&)\s*\d+)(?:\s+(?:always|continuously|throughout))?(?=\s*\.?\s*$)", r"\1\2 \3 for pattern", "Always repeat rows 1-8."),
    row("tbl|back loop", r"(\bin\s+)(?:1\s?x\s?1\s+)?rib(?:bing)?\s*\(\s*k\s?1?\s?(?:tbl|through\s+(?:the\s+)?back\s+loop)\s*,\s*p\s?1\s*\)", r"\1twisted rib", "Work in 1x1 ribbing (k1 tbl, p1) for 4 cm."),
    row("flat", r"^(\s*)work\s+(flat|back\s+and\s+forth(?:\s+in\s+rows)?)\s+(?=in\s+(?:\d\s?x|k\s?\d|rib|st\b|stock|garter|moss|seed|patt))", r"\1Work \2. Work ", "Work flat in 1x1 rib for 8 rows, ending with a WS row."),
    row("more", rf"(\b(?:knit|purl|work)\s+(?:1|one|2|two|3|three))\s+({ROUND})\s+more(?=\s*[.,;]|\s*$)", r"\1 more \2", "Purl 1 rnd, knit 1 rnd, then purl 1 rnd more."),
    # --- rows by what the stitches show ---
    *(
        row(
            "purl|k over|knit over|p over|p st",
            rf"(:\s*|^\s*){first}(?:\s*,\s*|\s*[,;]?\s+(?:and|&)\s+){second}{_AS_SEEN}{_END}",
            r"\1work in opposite to end",
            f"Row 2: {example}.",
        )
        for first, second, example in (
            (_worked("k", "purl"), _worked("p", "knit"), "Knit the purls and purl the knits"),
            (_worked("p", "knit"), _worked("k", "purl"), "P the k sts and k the p sts"),
        )
    ),
    row("as they", rf"(\b{STS}\s+as\s+they\s+[a-z]+(?:\s+(?:you|themselves))?)\s*\(\s*k(?:nit)?\s+(?:all\s+)?(?:the\s+)?k(?:nit)?s?(?:\s+{STS})?\s*(?:,|and|&)\s*(?:and\s+)?p(?:url)?\s+(?:all\s+)?(?:the\s+)?p(?:url)?s?(?:\s+{STS})?\s*\)", r"\1", "Row 2: Work the sts as they appear (k the knit sts, p the purl sts)."),
    row("row|rnd|round", rf"^(\s*)(?:({ROUND})\s+2|2nd)\s*(?:and|&)\s*(?:all|every)\s+(?:foll(?:owing)?\.?|subsequent|other|later)\s+({ROUND})(?:\s*\(?[rw]s\)?)?\s*:\s*(?=work\s+in\s+opposite\b)", r"\1Row 2: ", "2nd and all foll rows: K the purls and p the knits."),
    row("row|rnd|round", r"^(\s*)(?:all\s+)?(?:foll(?:owing)?\.?|subsequent|next)\s+(?:rows|rnds|rounds)\s*:\s*(?=work\s+in\s+opposite\b)", r"\1Row 2: ", "Following rows: K the purls and p the knits."),
)  # fmt: skip
"""The rows, in the order tried."""
