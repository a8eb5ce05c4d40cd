"""Lists of sizes in which brackets come and go, with halves too: "64 (68-72) 76 (80-84)" has six numbers. No I/O.

Chains by dashes are in `stepper.project.rewording.signs.one_form_synonyms`, which comes first.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.signs.one_form_synonyms import COUNTED
from stepper.project.rewording.synonym import Synonym, row

_FIGURE: Final = r"\d+(?:\.\d+)?(?:\s?[½¼¾])?"
_LIST: Final = rf"{_FIGURE}(?:\s*[,-]\s*{_FIGURE})*"

MIXED_LISTS: tuple[Synonym, ...] = (
    row(
        ") |)(",
        rf"((?<![\d./]){_FIGURE}\s*[(]\s*{_LIST})\s*(?:([)])\s*({_LIST})(?=\s*{COUNTED}|\s*[(]\s*{_LIST}\s*[)])|[)]\s*[(]\s*(?={_LIST}\s*[)]\s*(?:{COUNTED}|[(]|\d)))",
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
)  # fmt: skip
"""The rows, in the order tried."""
