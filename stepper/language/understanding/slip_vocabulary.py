"""The part of the vocabulary for slips that no count shows, and what is asked in their place. No I/O.

They are for the keyboard, but for the row that is not read and one that is heard behind the address word.
"""

from __future__ import annotations

from typing import Final

from stepper.language.understanding.wordings import Wording
from stepper.session import cues
from stepper.session.questions.topics import Topic

SLIP_WORDINGS: Final[tuple[Wording, ...]] = (
    Wording(
        cue=cues.About,
        fixed={"topic": Topic.WORKED_TWICE},
        says="says what comes of it that you worked a round twice",
        typed=(
            "i did that round twice",
            "i did this round twice",
            "i did the last round twice",
            "i did the same round twice",
            "i knitted that round twice",
            "i knitted this round twice",
            "i knitted the last round twice",
            "i knitted the same round twice",
            "i worked that round twice",
            "i did one round too many",
            "i knitted one round too many",
            "one round too many",
        ),
        called=("i did that round twice",),
    ),
    Wording(
        cue=cues.About,
        fixed={"topic": Topic.WRONG_YARN},
        says="says how stitches in a wrong yarn are mended",
        typed=(
            "i knitted the wrong colour",
            "i used the wrong yarn",
            "i used the wrong colour",
            "i took the wrong yarn",
            "i knitted a wrong colour",
            "i see a wrong colour",
            "there is a wrong colour",
            "wrong yarn",
            "wrong colour",
        ),
    ),
    Wording(
        cue=cues.About,
        fixed={"topic": Topic.LONG_FLOAT},
        says="says what is done about a float that is too long",
        typed=(
            "my float is too long",
            "float is too long",
            "my floats are too long",
            "floats are too long",
            "float too long",
            "i forgot to catch the float",
            "i forgot to catch a float",
            "float is too tight",
            "my floats are too tight",
        ),
    ),
    Wording(
        cue=cues.About,
        fixed={"topic": Topic.YARN_OUT},
        says="says how to go on where a yarn ends",
        typed=(
            "i ran out of yarn",
            "yarn ran out",
            "my yarn ran out",
            "yarn is finished",
            "my yarn is finished",
            "my ball is finished",
            "i need a new ball",
            "how do i join a new ball",
            "how do i join new yarn",
            "my yarn broke",
            "yarn broke",
        ),
    ),
    Wording(
        cue=cues.About,
        fixed={"topic": Topic.MARKER_LOST},
        says="says where the round begins and where the markers stand",
        typed=(
            "i lost my marker",
            "i lost the marker",
            "i lost a marker",
            "my marker fell off",
            "my marker fell out",
            "marker fell out",
            "marker is gone",
            "my marker is gone",
            "where does the round begin",
            "where is the beginning of the round",
            "where do the markers go",
        ),
    ),
    Wording(
        cue=cues.About,
        fixed={"topic": Topic.UNREAD},
        says="says the words of the row that is not read",
        spoken=("read that row", "which row do you not read"),
        typed=(
            "read the row",
            "read me that row",
            "what does that row say",
            "what is that row",
            "which row is not read",
        ),
    ),
    Wording(
        cue=cues.About,
        fixed={"topic": Topic.CARRIED},
        says="says which yarn is carried below",
        typed=(
            "which colour is dominant",
            "which yarn is dominant",
            "which colour goes below",
            "which yarn goes below",
            "which colour goes underneath",
            "which yarn goes underneath",
            "which yarn do i carry below",
            "which colour do i carry below",
            "how do i carry the yarns",
            "how do i hold the yarns",
        ),
    ),
)
"""In the order of the help."""
