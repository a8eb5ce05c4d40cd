"""Two pieces that wait and are bound off together, told in prose: what, how they are held, by which method. No I/O.

"With RS together, work a three-needle bind-off across both shoulders", "3-needle BO each shoulder" and "place the
shoulder sts on two needles and bind off front and back together" are one thing. How the pieces are held and which of
them meet is said; that a third needle binds them off is the order. Source: the wording of patterns in print, US and
UK; common practice.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from stepper.project.rewording.synonym import SIDE, STS, N
from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, prepare_kinds
from stepper.project.rewording.told.shaping import Piece

_SHOULDER: Final = rf"(?:(?:the|each|both|all|left|right|first|second|back|front|pair|pairs|sets?|of|{N}|held|live)\s+)*shoulders?(?:\s+(?:{STS}|seams?|at\s+a\s+time|separately|in\s+turn))?"
_FRONT: Final = r"(?:the\s+)?(?:fronts?\s+(?:and|to|with)\s+(?:the\s+)?backs?|backs?\s+(?:and|to|with)\s+(?:the\s+)?fronts?)(?:\s+(?:shoulders?|sts))?"
_SIDES: Final = rf"(?:{SIDE}s?)"

CLOSING: Final[Kinds] = prepare_kinds(
    (
        "said",
        rf"(?:(?:hold(?:ing)?|place|with|put|bring)\s+)*(?:the\s+)?(?:(?:pieces|needles|work|{_FRONT})\s+)?(?:with\s+)?(?:the\s+)?{_SIDES}\s+(?:(?:of\s+(?:the\s+)?(?:work|fabric|pieces)|held|facing)\s+)*(?:together|(?:facing\s+)?(?:each\s+other|in|inwards?|out|outwards?)|facing\s+each\s+other)\b",
    ),
    ("said", r"(?:turn\s+(?:(?:the\s+)?(?:work|piece|body|garment|it)\s+)?)?inside\s+out\b|(?:hold(?:ing)?\s+)?(?:the\s+)?(?:two\s+)?needles\s+(?:held\s+)?parallel\b"),
    ("put", rf"(?:place|put|slip|return|transfer)\s+(?:{_SHOULDER}|{_FRONT})\s+(?:back\s+)?(?:onto|on\s+to|on|to)\s+(?:the\s+|your\s+)?(?:two\s+|2\s+|separate\s+|spare\s+|[\d.]+\s?mm\s+)*(?:needles|dpns)\b"),
    ("three", r"(?:(?:with|using|by|in|work|do)\s+)?(?:an?\s+|the\s+)?(?:three|3)[-\s]?needle\s+(?:(?:bind|cast)[-\s]?off|bo)(?:\s+(?:method|technique))?\b"),
    ("together", rf"(?:(?:bind|cast)\s+off|bo)\s+(?:{_FRONT}|{_SHOULDER}|them|these|both)(?:\s+{STS})?\s+together\b"),
    ("join", r"(?:join|work|close|bind\s+off|cast\s+off|bo)(?=\s)"),
    ("what", rf"(?:(?:to\s+(?:join|close)|across|on|for|at|of)\s+)?(?:{_SHOULDER}|{_FRONT})(?:\s+together)?"),
)
"""The kinds of phrases of which such a sentence is made."""


def write_closing(phrases: Sequence[ToldPhrase]) -> tuple[tuple[Piece, ...], tuple[str, ...]] | None:
    """Write two pieces bound off together in the grammar's words.

    Args:
        phrases: The phrases of the sentence.

    Returns:
        The words, each with its place, and what is only said; None if no third needle or no two pieces are told.
    """
    kinds = [phrase.kind for phrase in phrases]
    told = kinds.count("three") + kinds.count("together")
    if told != 1 or "count" in kinds or ("together" not in kinds and "what" not in kinds and "put" not in kinds):
        return None
    said = tuple(phrase.match.group() for phrase in phrases if phrase.kind not in ("three", "join"))
    start = phrases[0].match.start()
    return ((("bind off with a three-needle bind-off", start),), said)
