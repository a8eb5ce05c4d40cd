"""Other wordings of the side of a row, and of stitches with their number in front. No I/O."""

from __future__ import annotations

from stepper.project.rewording.synonym import STS, N, Synonym, row

_ROW = r"(?:row|rnd|round)"

SIDES: tuple[Synonym, ...] = (
    row("right side|from rs|from the rs", rf"^(\s*(?:next\s+{_ROW}|{_ROW}\s+\d{{1,3}}))\s*,?\s*(?:as\s+)?(?:seen\s+)?from\s+(?:the\s+)?(?:right\s+side|rs)\s*([:.]|-(?=\s))", r"\1 (RS):", "Row 1 from right side: Knit."),
    row("wrong side|from ws|from the ws", rf"^(\s*(?:next\s+{_ROW}|{_ROW}\s+\d{{1,3}}))\s*,?\s*(?:as\s+)?(?:seen\s+)?from\s+(?:the\s+)?(?:wrong\s+side|ws)\s*([:.]|-(?=\s))", r"\1 (WS):", "Row 2 from wrong side: Purl."),
    row("right-side rows|right side rows", r"^(\s*)(?:all\s+|on\s+(?:all\s+)?)?right[-\s]side\s+rows\s*:", r"\1RS rows:", "Right-side rows: Knit."),
    row("wrong-side rows|wrong side rows", r"^(\s*)(?:all\s+|on\s+(?:all\s+)?)?wrong[-\s]side\s+rows\s*:", r"\1WS rows:", "Wrong-side rows: Purl."),
    row("right side row|right-side row|rs row", r"^(\s*)on\s+(?:the|a)\s+(?:next\s+|foll(?:owing)?\s+)?(?:right[-\s]side|rs)\s+row\s*[,:]\s*(?:work\s+)?", r"\1Next row (RS): ", "On the right side row, k2, ssk, k to end."),
    row("wrong side row|wrong-side row|ws row", r"^(\s*)on\s+(?:the|a)\s+(?:next\s+|foll(?:owing)?\s+)?(?:wrong[-\s]side|ws)\s+row\s*[,:]\s*(?:work\s+)?", r"\1Next row (WS): ", "On the next wrong side row, p2, k to end."),
    # --- the number in front, where no stitch of the row has it behind ---
    row("tog", r"^((?!.*\b[kp]\s?\d(?!\s?tog)).*?(?<![\w./-]))([23])\s?([kp])\s?tog(?:ether)?\b", r"\1\3\2tog", "Row 1: 1 k, 2 k tog, k to end.", again=True),
    row("k.|p.", rf"(?<![\w./-])(\d+)\s?([kp])\.(?=\s+{N}\s+{STS})", r"\2\1.", "Row 1: 1k, 2k tog, k to last 3 sts, 2k tog, 1k. 18 sts."),
)  # fmt: skip
"""The rows, in the order tried."""
