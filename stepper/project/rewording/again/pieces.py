"""A piece that is made a second time, told in prose: "Same for the other sleeve", "Make another to match". No I/O.

Theory of operation. Such a sentence has a verb or none, what is made again ("the second", "another", "one more"), the
piece or none, and words that say it is the same, in any order. "The second sleeve" alone is a heading: of what is
only called second or other it has to be said that it is the same. "Another" says so itself. What is no whole
piece of the page (a side, a row, a buttonhole) is not read here. Source: common practice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, prepare_kinds
from stepper.project.rewording.told.shaping import Piece
from stepper.regex import regex

_PIECE: Final = (
    r"(?:sleeve|sock|stocking|mitten|mitt|glove|cuff|pocket|ear\s?flap|flap|slipper|bootee|bootie|(?:leg|arm|hand|wrist)\s?warmer|leg|arm|ear|wing|paw|strap|panel|piece|band|thumb|"
    r"gauntlet|wristlet|foot|hand|shoe|boot|handle|horn|fin|tie|square|wedge|tier|front)"
)
_AS_FIRST: Final = rf"(?:as|like)\s+(?:(?:for|you\s+did)\s+)?(?:the\s+)?(?:first|1st|other)(?:\s+(?:one|{_PIECE}))?"
PIECES_AGAIN: Final[Kinds] = prepare_kinds(
    ("lead", r"(?:now|then|next|finally)\b"),
    ("for", rf"(?:(?:make|do|work|knit)\s+)?(?:(?:exactly|just)\s+)?(?:the\s+)?same(?:\s+(?:again|thing))?\s+for\s+(?:the\s+|your\s+)?(?:second|2nd|other)\s+(?P<item>{_PIECE})\b"),
    ("for", rf"rep(?:eat)?\s+(?:(?:all|everything|this)\s+)?for\s+(?:the\s+|your\s+)?(?:second|2nd|other)\s+(?P<item>{_PIECE})\b"),
    ("verb", r"(?:make|work|knit)(?=\s)"),
    ("more", rf"(?:another|one\s+(?:more|further)|a\s+second)(?:\s+(?:(?P<item>{_PIECE})|one))?(?=\s*[.!,]|\s*$|\s+(?:to\s+match|in\s+|exactly|just|the\s+same|the\s+same|like|as|alike|identical))"),
    ("other", rf"(?:the\s+|your\s+)?(?:second|2nd|other|left|right)\s+(?:(?P<item>{_PIECE})|one)\b"),
    ("is", r"(?:=|is|are)(?:\s+(?:worked|made|knit(?:ted)?|done))?(?=\s)|(?:worked|made|knit(?:ted)?|done)(?=\s)"),
    ("same", rf"(?:(?:exactly|just)\s+)?(?:(?:in\s+)?(?:exactly\s+)?(?:the\s+)?same(?:\s+(?:way|manner|fashion|thing))?(?:\s+again)?(?:\s+{_AS_FIRST})?|{_AS_FIRST}|like\s+it|to\s+match(?:\s+(?:the\s+)?(?:first|1st|other)(?:\s+(?:one|{_PIECE}))?)?|alike|identical(?:ly)?|ditto)\b"),
)  # fmt: skip
"""The kinds of phrases of which such a sentence is made."""
_FORMS: Final = regex(r"f|vm?(?:m|os)|vm?ms|ms|ois|os|vois")
_ENDED: Final = regex(
    r"\b(?:(?:bind|cast|fasten)\s+off|(?:on|to)\s+(?:a\s+|the\s+)?(?:hold(?:er)?|(?:spare|other)\s+needle|thread|(?:waste|scrap)\s+yarn)|aside)\b[^.]*\.\s+$",
    re.IGNORECASE,
)
"""A sentence that ends a piece."""
_SIGNS: Final = {"for": "f", "verb": "v", "more": "m", "other": "o", "is": "i", "same": "s"}


def write_piece_again(phrases: Sequence[ToldPhrase]) -> tuple[tuple[Piece, ...], tuple[str, ...]] | None:
    """Write a sentence about a piece made a second time in the grammar's words.

    Args:
        phrases: The phrases it is made of.

    Returns:
        The words with their place, and nothing that is only said; None if they are not read.
    """
    kinds = "".join(_SIGNS.get(phrase.kind, "" if phrase.kind == "lead" else "?") for phrase in phrases)
    if _FORMS.fullmatch(kinds) is None:
        return None
    what = next(phrase for phrase in phrases if phrase.kind in ("for", "more", "other"))
    words = what.match.group().lower()
    if what.kind == "other" and ("left" in words or "right" in words) and "v" not in kinds:
        return None  # "left front the same": of which of them is not said
    item = what.get("item")
    if what.kind == "more" and not item and "s" not in kinds and _ENDED.search(what.match.string[: phrases[0].match.start()]) is None:
        return None  # another buttonhole, perhaps
    return ((f"make again 1 {item}".rstrip(), what.match.start()),), ()
