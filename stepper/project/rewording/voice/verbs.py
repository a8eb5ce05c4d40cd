"""The verbs of the trade in all their forms: an order's, and those that a page uses to say the same. No I/O.

A verb is entered once, by the form of an order; the participle of "is slipped", the form of "slipping" and of
"she slips" follow by the rules of spelling, or stand beside it where English has them otherwise. Source: common
practice.
"""

from __future__ import annotations

from typing import Final

_REGULAR: Final = (
    "work", "purl", "slip", "increase", "decrease", "place", "transfer", "move", "divide", "join", "rejoin", "pick", "turn",
    "repeat", "continue", "change", "switch", "fasten", "thread", "pull", "graft", "fold", "mark", "remove", "measure",
    "rib", "shape", "wrap", "cross", "return", "attach", "distribute", "arrange", "insert", "lift", "pass", "drop", "close",
    "gather", "replace", "add", "start", "finish", "stop", "swap", "transform", "separate", "position", "steam", "wash",
    "block", "trim", "proceed", "end",
)  # fmt: skip
_OTHERWISE: Final = {
    "knit": ("knitted", "knit"),
    "cast": ("cast", "casted"),
    "bind": ("bound",),
    "cut": ("cut",),
    "put": ("put",),
    "set": ("set",),
    "split": ("split",),
    "draw": ("drawn",),
    "sew": ("sewn", "sewed"),
    "weave": ("woven",),
    "break": ("broken",),
    "leave": ("left",),
    "hold": ("held",),
    "lay": ("laid",),
    "make": ("made",),
    "take": ("taken",),
    "begin": ("begun",),
    "keep": ("kept",),
    "slide": ("slid",),
    "run": ("run",),
    "go": ("gone",),
    "do": ("done",),
}
"""Verbs whose participles do not follow by rule."""
_DOUBLED: Final = {
    "slip",
    "rib",
    "wrap",
    "drop",
    "stop",
    "swap",
    "trim",
    "transfer",
    "knit",
    "cut",
    "put",
    "set",
    "split",
    "begin",
    "run",
}
"""Verbs that double their last letter before an ending."""
_STAYS: Final = {"block", "steam", "wash", "trim", "end", "go", "do"}
"""Verbs that are known only in the form of an order: their participles are as often about what lies there."""


def _before_vowel(verb: str) -> str:
    if verb in _DOUBLED:
        return verb + verb[-1]
    return verb[:-1] if verb.endswith("e") else verb


VERBS: Final = (*_REGULAR, *_OTHERWISE)
"""Each verb as an order has it."""
PARTICIPLES: Final[dict[str, str]] = {
    form: verb
    for verb in VERBS
    if verb not in _STAYS
    for form in _OTHERWISE.get(verb, (f"{_before_vowel(verb)}ed",))
}
"""The order's form of each participle: `slipped` is of `slip`."""
GERUNDS: Final[dict[str, str]] = {f"{_before_vowel(verb)}ing": verb for verb in VERBS}
"""The order's form of each form in -ing: `slipping` is of `slip`."""
