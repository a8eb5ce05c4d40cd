"""Turns of phrase that mean the same, so that a wording need not be listed in each of them. No I/O.

Only what changes nothing of the meaning stands here: "until" for "to", "still to come" for "left". Two texts
say the same if they come to the same words.
"""

from __future__ import annotations

from typing import Final

from stepper.regex import regex

_ALIKE: Final = tuple(
    (regex(rf"\b(?:{pattern})\b"), plain)
    for pattern, plain in (
        (r"until|till|before|up to", "to"),
        (r"(?:do|will|must|should|shall|can) i (?:have to |need to )?", "do i "),
        (r"(?:are |is )?(?:still |yet )?(?:to come|to go|to do|to be done|remaining|left)", "left"),
        (r"(?:have i|did i) (?:done|made|worked|do|make|work|knit|knitted)", "have i done"),
        (r"(?:in|of|on|at) (?:this|the|my)? ?round", "here"),
        (r"(?:tell|read|give|say) (?:me|us)", "tell me"),
        (r"which|what", "what"),
        (r"right now|now|at moment|currently|nearly|almost|yet|again$", ""),
        (r"another|one more|further", "more"),
        (r"have i got|do i have", "have i"),
        (r"have no idea|have no clue|have not idea", "do not know"),
        (r"carry on with|go on with", "go on"),
    )
)
"""Patterns over a normal text, each with what stands for it."""


def in_plain_words(normal_text: str) -> str:
    """Return the words to which all texts come that say the same.

    Args:
        normal_text: Without articles, in one form, as `understand` compares it.
    """
    for pattern, plain in _ALIKE:
        normal_text = pattern.sub(plain, normal_text)
    return " ".join(normal_text.split())
