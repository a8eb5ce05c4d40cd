"""Say what can be said, a handful at a time: nobody listens to a whole list. No I/O."""

from __future__ import annotations

import re
from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

from stepper.language.understanding.vocabulary import recommend_wordings
from stepper.plan.model import Plan
from stepper.session.cues import Enough
from stepper.session.effects import TellHelp
from stepper.session.questions.topics import HelpWith

GROUPS: Final[Mapping[HelpWith, tuple[str, ...]]] = MappingProxyType(
    {
        HelpWith.PLACES: (
            "finished the round",
            "{number} rounds done",
            "go back {number} rounds",
            "go to {place}",
            "stitch {number}",
            "at the marker",
        ),
        HelpWith.QUESTIONS: (
            "what comes next",
            "when is the next increase",
            "which yarn is it",
            "how long is it now",
            "how far to go",
            "when will it be finished",
        ),
        HelpWith.COUNTS: (
            "how many stitches",
            "count is {number}",
            "count with me",
            "what happened",
            "what can i do",
            "ask less",
        ),
        HelpWith.READING: ("by round", "by repeat", "by colour", "read along", "hold on", "say again"),
        HelpWith.NOTES: (
            "make a note {text}",
            "remind me in {number} rounds to {text}",
            "measures {length}",
        ),
        HelpWith.LISTENING: ("film on", "stop listening", "start listening", "that is all for tonight"),
    }
)
"""Wordings of the vocabulary that are named together: about eight seconds of speech for each."""
_DIGITS: Final = "Surest in noise: count is two four six."


def tell_help(effect: TellHelp, plan: Plan) -> str:
    """Say what can be said: a handful that fits now and how to hear more, or one group of it."""
    if effect.about is HelpWith.NOW:
        named = [phrase for cue in effect.cues for phrase in recommend_wordings(cue)[:1]]
        groups = ", ".join(group.value for group in GROUPS)
        stop = recommend_wordings(Enough)[0]
        return f"Say: {_shown(named, plan)}. For more, say help with: {groups}. To stop, say: {stop}."
    said = f"Say: {_shown(GROUPS[effect.about], plan)}."
    return f"{said} {_DIGITS}" if effect.about is HelpWith.COUNTS else said


def _shown(phrases: list[str] | tuple[str, ...], plan: Plan) -> str:
    """Fill the slots of some wordings with examples."""
    filled = "; ".join(phrases)
    for slot, example in _examples(plan).items():
        filled = filled.replace(slot, example)
    return re.sub(r"\bi\b", "I", filled)


def _examples(plan: Plan) -> dict[str, str]:
    return {
        "count is {number}": "count is 246",
        "stitch {number}": "stitch 130",
        "{number} rounds": "3 rounds",
        "{number}": "2",
        "{stitch}": "130",
        "{made}": "12",
        "{numbers}": "30, 31, 30",
        "{tens}": "ten",
        "{length}": "30 cm",
        "{weight}": "42 grams",
        "{text}": "and your words",
        "to {text}": "and your words",
        "{yarn}": next(iter(plan.yarns.values()), "the yarn"),
        "{place}": plan.rounds[0].section if plan.rounds else "the body",
    }
