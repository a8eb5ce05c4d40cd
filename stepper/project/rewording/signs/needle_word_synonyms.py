"""Other wordings of needles told by a word and by their size at once: "larger needles (4 mm)". No I/O.

The size is read; whether the word agrees with it is looked at when the needles are changed.
"""

from __future__ import annotations

from stepper.project.rewording.synonym import Synonym, row

_TO = r"\b(change\s+to|switch\s+to|with|using)\s+(?:the\s+)?(?:larger|smaller|bigger)(?:[-\s]sized?)?\s+"
_SIZE = r"((?:us\s*)?(?:size\s*)?#?\d+(?:\.\d+)?\s*mm|us\s*(?:size\s*)?#?\d+(?:\.5)?|uk\s*(?:no\.?\s*)?\d+|no\.?\s*\d+)"
_KIND = r"(?:(?:circular|double[-\s]pointed)\s+)?"

NEEDLE_WORDS: tuple[Synonym, ...] = (
    row("larger|smaller|bigger", rf"{_TO}{_KIND}(?:needles?|circulars?|dpns?)\s*,?\s*[(\[]\s*(?:size\s+)?{_SIZE}\s*[)\]]", r"\1 \2 needles", "Change to larger needles (4 mm)."),
    row("larger|smaller|bigger", rf"{_TO}{_KIND}(?:needles?|circulars?|dpns?)\s*,?\s*(?:size\s+)?{_SIZE}(?=\s*[.,;]|\s*$|\s+and\b)", r"\1 \2 needles", "Change to smaller needles, No. 10."),
    row("larger|smaller|bigger", rf"{_TO}{_SIZE}\s+{_KIND}(?=needles?\b)", r"\1 \2 ", "Change to the larger No. 10 needles."),
)  # fmt: skip
"""The rows, in the order tried."""
