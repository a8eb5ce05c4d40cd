"""The part of the vocabulary that asks about a part, a line or a stitch by its name, and how often. No I/O.

The first wording of a row is the one the help names.
"""

from __future__ import annotations

from typing import Final

from stepper.language.understanding.wordings import Wording
from stepper.session import cues
from stepper.session.questions.topics import Topic


def _rhythm(topic: Topic, word: str, verb: str) -> Wording:
    """Return the row that asks how often something is worked."""
    return Wording(
        cue=cues.About,
        fixed={"topic": topic},
        says=f"says how often there are {word}s in this part",
        spoken=(f"how often do i {verb}", f"how many rounds between {word}s"),
    )


PART_WORDINGS: Final[tuple[Wording, ...]] = (
    _rhythm(Topic.INCREASE_RHYTHM, "increase", "increase"),
    _rhythm(Topic.DECREASE_RHYTHM, "decrease", "decrease"),
    _rhythm(Topic.CABLE_RHYTHM, "cable", "cross the cable"),
    Wording(
        cue=cues.About,
        fixed={"topic": Topic.UNDERARM},
        says="says how many stitches are cast on under each arm",
        spoken=("what is cast on under the arm", "how many do i cast on under the arm"),
    ),
    Wording(
        cue=cues.HowFarTo,
        says="says how many rounds there are before a section or a labelled line",
        spoken=("how far to {place}", "how many rounds to {place}"),
        typed=(
            "when is {place}",
            "when does {place} begin",
            "when do {place} begin",
            "when does {place} start",
            "how far is it to {place}",
            "how many rounds until {place}",
            "how many rounds before {place}",
        ),
    ),
    Wording(
        cue=cues.HowFarIn,
        says="says how far this part is, and how long the rest of it takes",
        spoken=("how long does this part take", "how far is this part"),
        typed=("how long will this part take", "how long will this section take", "how far is this section"),
    ),
    Wording(
        cue=cues.HowFarIn,
        says="says how far a part is, and how long the rest of it takes",
        spoken=("how long does {place} take", "how far is {place}"),
        typed=(
            "how long will {place} take",
            "how long will this {place} take",
            "how far am i through {place}",
            "how many rounds of {place} have i done",
            "how many rounds of {place} have i knitted",
            "how many rounds of {place} are done",
            "how much of {place} is done",
            "how much of {place} have i done",
            "when will {place} be finished",
            "when will {place} be done",
            "will i finish {place} tonight",
        ),
    ),
    Wording(
        cue=cues.Explain,
        fills={"abbreviation": "text"},
        says="says what an abbreviation means",
        spoken=("tell me the meaning of {abbreviation}", "explain the stitch {abbreviation}"),
        typed=(
            "what is {abbreviation}",
            "what are {abbreviation}",
            "what does {abbreviation} mean",
            "explain {abbreviation}",
            "how do i {abbreviation}",
            "what is meant by {abbreviation}",
            "i do not know what {abbreviation} means",
            "i do not know what {abbreviation} is",
            "how do you {abbreviation}",
            "show me how to {abbreviation}",
            "tell me how to {abbreviation}",
            "i do not know how to {abbreviation}",
        ),
    ),
    Wording(
        cue=cues.Explain,
        fixed={"text": ""},
        says="says what the words of this step mean",
        typed=(
            "what does that mean",
            "what does this mean",
            "what does it mean",
            "what does all that mean",
            "what do you mean",
            "what do you mean by that",
            "what is that",
            "what is this",
            "explain that",
            "explain this",
            "explain this step",
            "how do i do that",
            "how do i do this",
            "how is that done",
            "i do not know what that means",
            "i do not know what you mean",
            "i do not understand that word",
            "i do not know that word",
            "i do not know how to do that",
            "say it in plain words",
        ),
    ),
    Wording(
        cue=cues.Explain,
        fixed={"text": "twist"},
        says="says how to see whether the cast-on is twisted",
        typed=(
            "is it twisted",
            "is my cast on twisted",
            "how do i know it is twisted",
            "how do i know if it is twisted",
            "how do i see if it is twisted",
            "how can i tell if it is twisted",
            "what if it is twisted",
        ),
    ),
)
"""In the order of the help."""
