"""How older pages say what is repeated and how it ends: "repeat from * to * across row, end k 1". No I/O."""

from __future__ import annotations

from stepper.project.grammar import stitch_words
from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_STITCH = rf"(?:(?:[kp]|knit|purl|sl|slip)\.?\s?\d+(?!\d*\s*(?:{ROUND}|\w*\s*rib))|(?:{stitch_words()})(?![\w&/-]))"
_ALL = rf"(?:(?:all\s+)?(?:across|around)(?:\s+(?:the\s+)?{ROUND})?|to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?{ROUND})?)"
_FROM = r"rep(?:eat)?\.?\s+from\s+\*+"
_ONE_STAR = r"^([^*]*\*[^*]*)"
"""One star before the repeat: with a second, what stands behind it may not be repeated."""
_PLACE = rf"(?:to\s+(?:the\s+)?(?:next\s+)?(?:marker|m)\b|to\s+(?:the\s+)?last\s+{N}\s+{STS})"
_BRACKET = r"([(\[][^()\[\]]*[)\]])"

REPEATS: tuple[Synonym, ...] = (
    row("to *", rf"{_ONE_STAR}\b({_FROM})\s+to\s+\*", r"\1\2", "*K 1, p 1, repeat from * to * across row."),
    row("end", rf"({_FROM})(?:\s+{_ALL})?\s*,?\s*end(?:ing)?\s+(?:with\s+)?(?={_STITCH})", r"\1, ", "*K1, p1, repeat from * across row, end k 1."),
    row("*", rf"\*([^*]+?)[,;]?\s*\*\s*,?\s*rep(?:eat)?\s+between\s+(?:the\s+)?(?:\*'?s?|stars|asterisks|\*\s+and\s+\*)\s+{_ALL}", r"*\1; rep from * to end", "*K 1, p 1 *, repeat between *s across row."),
    row("to last|to the last", rf"({_FROM})\s+(?:across|around)\s+(?=to\s+(?:the\s+)?last\s)", r"\1 ", "K2, *p1, k1; repeat from * across to last 6 sts, k 6."),
    row("end", rf"(\*[^*]*(?<!\*)[,;])\s*rep(?:eat)?\s+{_ALL}\s*,?\s*end(?:ing)?\s+(?:with\s+)?(?={_STITCH})", r"\1 rep from *, ", "*K5, k2tog, repeat across, ending k 1."),
    row("rep", r"(\*[^*]*(?<!\*)[,;])\s*rep(?:eat)?(?:\s+\*)?(?=\s*\.?\s*$|\s*[.=-]\s*\(?\d)", r"\1 rep from * to end", "Row 1: *K5, k2tog, repeat."),
    row("rep", rf"(\*[^*]*(?<!\*)[,;])\s*rep(?:eat)?\s+(?={_PLACE})", r"\1 rep from * ", "*K6, k2tog, repeat to marker, k to end."),
    row("rep", rf"{_BRACKET}\s*,?\s*rep(?:eat(?:ed)?)?\s+(?={_PLACE})", r"\1 ", "(K2, p2) repeat to last 2 sts, k2."),
    row("rep", rf"((?:^|:)[^.*]*?){_BRACKET}\s*,?\s*rep(?:eat)?(?=\s*\.?\s*$|\s*[.=-]\s*\(?\d)", r"\1\2 to end", "Row 1: (K1, p1, k2tog) repeat."),
    # --- steps that a page numbers, rows or not ---
    said_row_behind("next|following", r"^(\s*)(?P<said>\d{1,3})[.)]?\s+(?=(?:next|following)\s+(?:row|rnd|round)\b)", "3 Next row: K2, k2tog, k to end."),
    said_row_behind("rep", r"^(\s*)(?P<said>\d{1,3})[.)]?\s+(?=rep(?:eat)?\s+last\s)", "10 Rep last 2 rows 3 times."),
    said_row_behind("step", r"(\blast\s+(?:2|two)\s+(?:rows|rnds|rounds))\s*\(\s*(?P<said>steps?\s+\d+\s*(?:and|&)\s*\d+)\s*\)", "Rep last 2 rows (steps 8 and 9) 3 times."),
    row("alternately", r"\b(in\s+k\s?\d+\s*,?\s*p\s?\d+)(?:\s+rib(?:bing)?)?\s+alternately\b", r"\1 rib", "Work 6 rows in k 1, p 1 alternately."),
    row("alternately", rf"((?:^|:)\s*)({_STITCH}(?:\s*,\s*|\s+){_STITCH})\s*,?\s+alternately\s+{_ALL}(?=\s*[.]|\s*$)", r"\1(\2) to end", "K 1, p 1 alternately across."),
)
"""The rows, in the order tried."""
