"""Orders for the yarns between two colour bands: which are cut, joined and gone on with. No I/O.

"Break CC1 after this round", "Cut A and B and continue in MC only" and "Break off both pattern colours; the rest
is grey" are made of the same few phrases. A yarn that is cut is named by the page; "both colours" are only said,
and only where the sentence tells which yarn goes on. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.synonym import LONG
from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, prepare_kinds
from stepper.project.rewording.told.shaping import Piece
from stepper.project.rewording.yarn_names import CALLED
from stepper.regex import regex

YARN: Final = rf"(?:the\s+)?(?:(?-i:MC|CC\d?|[DLBP]C|[A-HYZ])|{CALLED})(?![-'\w])(?:\s+(?:yarn|wool)\b)?"
"""A yarn by its letter or colour."""
_YARNS: Final = rf"{YARN}(?:\s*,\s*{YARN})*(?:\s*,?\s*(?:and|&)\s+{YARN})?"
_ONLY: Final = r"(?:\s+(?:only|alone|again|throughout))?"
_IN: Final = r"(?:in|with|using)"
YARN_ORDERS: Final[Kinds] = prepare_kinds(
    ("kept", rf"(?:do\s+not|don't)\s+(?:break|cut)(?:\s+off)?\s+{_YARNS}"),
    ("cut", rf"(?:break|cut)(?:\s+off)?\s+(?P<yarns>{_YARNS})"),
    (
        "cut all",
        r"(?:break|cut)(?:\s+off)?\s+(?:both|all|the)\s+(?:the\s+|two\s+|of\s+the\s+)?(?:pattern\s+|contrast(?:ing)?\s+|other\s+)?(?:colou?rs|yarns|CCs)\b",
    ),
    ("join", rf"(?:re-?)?join(?:\s+in)?\s+(?P<yarns>{_YARNS})"),
    (
        "go on",
        rf"(?:cont(?:inu(?:e|ing))?\.?|carry\s+on|go\s+on|work|knit)(?:\s+on)?(?:\s+(?:working|knitting))?\s+{_IN}\s+(?P<yarn>{YARN}){_ONLY}",
    ),
    ("go on", rf"(?:change|switch|go|swap)\s+(?:back\s+)?to\s+(?P<yarn>{YARN}){_ONLY}"),
    (
        "go on",
        rf"the\s+(?:rest|remainder)(?:\s+of\s+(?:the|your)\s+\w+)?\s+is\s+(?:(?:all|now|then|worked|knitted|knit|plain)\s+)*(?:{_IN}\s+)?(?P<yarn>{YARN}){_ONLY}",
    ),
    (
        "when",
        r"(?:after|at\s+the\s+(?:end|beginning|start)\s+of)\s+(?:this|the(?:\s+last)?)\s+(?:round|rnd|row)\b|from\s+(?:here|now)(?:\s+on(?:wards)?)?\b|(?:now|here|at\s+this\s+point)\b",
    ),
    (
        "tail",
        rf"leaving\s+(?:an?\s+)?(?:(?:about\s+)?{LONG}\s+)?(?:long\s+|short\s+)?(?:tails?|ends?)(?:\s+to\s+(?:weave|darn|sew)\s+in(?:\s+later)?)?\b",
    ),
)
"""The kinds of phrases of a sentence about yarns."""
_NAMES: Final = regex(rf"(?<![-'\w])(?!the\s){YARN}", re.IGNORECASE)
_SAID: Final = frozenset({"kept", "cut all", "when", "tail"})


def write_yarn_orders(phrases: tuple[ToldPhrase, ...]) -> tuple[tuple[Piece, ...], tuple[str, ...]] | None:
    """Write a sentence about yarns.

    Returns:
        The orders, each with its place, and what is said with them; None if the sentence has none, or if it
        is not clear from it which yarn goes on.
    """
    kinds = [phrase.kind for phrase in phrases]
    going = [phrase for phrase in phrases if phrase.kind == "go on"]
    if not set(kinds) & {"cut", "go on"} or len(going) > 1 or (going and phrases[-1].kind == "cut"):
        return None
    if "cut all" in kinds and not going:
        return None
    pieces: list[Piece] = []
    said: list[str] = []
    for phrase in phrases:
        at = phrase.match.start()
        if phrase.kind == "count":
            return None
        if phrase.kind in _SAID:
            said.append(phrase.match.group().strip())
            continue
        names = _names(phrase.get("yarns") or phrase.get("yarn"))
        if phrase.kind == "join" and (len(names) > 1 or going):
            said.append(phrase.match.group().strip())
            continue
        verb = "Break" if phrase.kind == "cut" else "With"
        pieces += [
            (f"{'. ' if pieces or number else ''}{verb} {name}", at) for number, name in enumerate(names)
        ]
    return (tuple(pieces), tuple(said)) if pieces else None


def _names(words: str) -> list[str]:
    """Return the names of yarns in a list of them."""
    bare = re.sub(r"\b(?:the|yarn|wool)\b", " ", words, flags=re.IGNORECASE)
    return [match.group() for match in _NAMES.finditer(" ".join(bare.split()))]
