"""Lists of sizes in which brackets come and go, or that are chained by dashes, with halves too. No I/O.

"64 (68-72) 76 (80-84)" has six numbers, "4-4½-5 cm" three. A chain needs three of them: "8-9 cm" may be a choice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.synonym import ROUND, STS, Synonym, row

_FIGURE: Final = r"\d+(?:\.\d+)?(?:\s?[½¼¾])?"
_LIST: Final = rf"{_FIGURE}(?:\s*[,-]\s*{_FIGURE})*"
_COUNTED: Final = (
    rf"(?:(?:(?:new|band|edge|more)\s+)?{STS}|{ROUND}|(?:more\s+)?times\b|cms?\b|mm\b|inch|ins\b|in\.?(?=\s|$)|\"|ridges?\b|repeats?\b)"
)
"""What such a list is of."""

MIXED_LISTS: tuple[Synonym, ...] = (
    row(
        ") |)(",
        rf"((?<![\d./]){_FIGURE}\s*[(]\s*{_LIST})\s*(?:([)])\s*({_LIST})(?=\s*{_COUNTED}|\s*[(]\s*{_LIST}\s*[)])|[)]\s*[(]\s*(?={_LIST}\s*[)]\s*(?:{_COUNTED}|[(]|\d)))",
        r"\1, \3\2",
        "Cast on 64(68) 72 sts.",
        again=True,
    ),
    row(
        ") ",
        rf"\b(knit|purl|k|p|to)\s*({_FIGURE})\s*([(]\s*{_LIST})\s*[)]\s*({_LIST})(?=\s*(?:[,;]|[.]?\s*$))",
        r"\1 \2 \3, \4)",
        "Next round: Knit 20(22) 24, bind off 8 sts, k to end.",
    ),
    row(
        "-",
        rf"(?<![\w./(\[½¼¾-])({_FIGURE})\s*-\s*({_FIGURE}(?:\s*-\s*{_FIGURE})+)(?=\s*{_COUNTED})",
        r"\1 (\2)",
        "Knit 3-5-6 ridges.",
    ),
    row(
        "-",
        rf"(\d(?:\s?[½¼¾])?\s*[(]\s*{_FIGURE}(?:\s*,\s*{_FIGURE})*)\s*-\s*(?={_LIST}\s*[)]\s*{_COUNTED})",
        r"\1, ",
        "Knit 3-5-6 ridges.",
        again=True,
    ),
)  # fmt: skip
"""The rows, in the order tried."""
