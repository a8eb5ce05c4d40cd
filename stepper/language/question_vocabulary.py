"""The part of the vocabulary that asks about the knitting in hand. No I/O.

The first wording of a row is the one the help names. Common questions have several wordings; each wording has
several words, and none is the beginning of another.
"""

from __future__ import annotations

from typing import Final

from stepper.language.wordings import Wording
from stepper.session import cues
from stepper.session.questions.topics import Topic


def _about(topic: Topic, says: str, *spoken: str, typed: tuple[str, ...] = ()) -> Wording:
    return Wording(cue=cues.About, fixed={"topic": topic}, says=says, spoken=spoken, typed=typed)


QUESTION_WORDINGS: Final[tuple[Wording, ...]] = (
    _about(
        Topic.NEXT_STEP,
        "says what comes after this step",
        "what comes next",
        "what is next",
        "what comes after this",
        typed=("ahead",),
    ),
    _about(
        Topic.STEP_AFTER,
        "says what comes after the next step",
        "what comes after that",
        "and after that",
    ),
    _about(
        Topic.NEXT_ROUND,
        "says what the next round is",
        "what is the next round",
        "tell me the next round",
        typed=("what comes after this round", "what is the round after this"),
    ),
    _about(
        Topic.THIS_ROUND,
        "reads the round in hand from its beginning",
        "read the whole round",
        "read me this round",
        typed=("what is this round", "whole round"),
    ),
    _about(
        Topic.LAST_STEP,
        "says what you have just worked",
        "what did i just do",
        "what was the last step",
        typed=("last",),
    ),
    _about(
        Topic.LAST_ROUND,
        "says what the last round was",
        "what did i do last round",
        "what was the last round",
    ),
    _about(
        Topic.YARN,
        "says which yarn is in hand and which ones this round needs",
        "which yarn is it",
        "which colour is it",
        "what colour now",
        "which colours are in this round",
        typed=("yarn", "which yarn", "which colour"),
    ),
    _about(
        Topic.COLOUR_CHANGE,
        "says when the next colour comes",
        "when does the colour change",
        "when do i change colour",
        "when is the next colour",
    ),
    _about(
        Topic.FLOAT,
        "says how long the floats are",
        "how long is the float",
        "is the float caught",
        "do i catch the float",
        typed=("floats",),
    ),
    _about(
        Topic.NEXT_INCREASE,
        "says when the next increases come",
        "when is the next increase",
        "when do i increase",
        typed=("when is the next raglan increase",),
    ),
    _about(
        Topic.NEXT_DECREASE,
        "says when the next decreases come",
        "when is the next decrease",
        "when do i decrease",
    ),
    _about(
        Topic.INCREASES_LEFT,
        "says how many increases are left",
        "how many increases are left",
        "how many more increases",
        typed=("how many increases left", "how many increases have i done"),
    ),
    _about(
        Topic.DECREASES_LEFT,
        "says how many decreases are left",
        "how many decreases are left",
        "how many more decreases",
        typed=("how many decreases left", "how many decreases have i done"),
    ),
    _about(
        Topic.DIVISION,
        "says when stitches are put on hold",
        "when do i divide",
        "how far to the division",
        "when is the divide",
    ),
    _about(
        Topic.SIDE,
        "says which side of the work is in front of you",
        "which side is this",
        "right side or wrong side",
        "is this the right side",
        typed=("side",),
    ),
    _about(
        Topic.REPEAT,
        "says which repeat it is and how many are left",
        "which repeat is this",
        "which repeat am i in",
        "how many repeats are left",
        typed=("which repeat", "how many repeats left"),
    ),
    _about(
        Topic.CHART,
        "says which round of the chart it is",
        "which chart round is it",
        "how much of the chart is left",
        typed=("which round of the chart", "what chart round is this"),
    ),
    _about(
        Topic.MARKER,
        "says where the next marker is and what lies between them",
        "where is the next marker",
        "how far to the marker",
        "how many between the markers",
        typed=(
            "markers",
            "next marker",
            "what is at the next marker",
            "how many stitches between the markers",
        ),
    ),
    _about(
        Topic.TURN,
        "says where to turn, and how many short rows are left",
        "where do i turn",
        "when do i turn",
        "how many short rows are left",
        typed=("how many short rows left",),
    ),
    _about(
        Topic.NEEDLE,
        "says which needle",
        "which needle is it",
        "which needle do i need",
        "what size needle",
        typed=("needle", "which needle"),
    ),
    _about(
        Topic.SIZE,
        "says which size is knitted here",
        "which size is it",
        "what size am i knitting",
        typed=("size",),
    ),
    _about(Topic.GAUGE, "says the gauge", "what is the gauge", "what was the gauge", typed=("gauge",)),
    _about(
        Topic.LENGTH,
        "says how long it is by the rounds, and how long it should be",
        "how long is it now",
        "how long should it be",
        "how long is this piece",
        "is it long enough",
        typed=(
            "how long is this",
            "am i there yet",
            "how many more cm",
            "how many cm to go",
            "how much longer",
        ),
    ),
    _about(
        Topic.YARN_LEFT,
        "says how much yarn the rest takes",
        "how much yarn is left",
        "will the yarn last",
        "do i have enough yarn",
        typed=("is there enough yarn", "when do i need a new ball", "how much yarn do i need"),
    ),
    _about(
        Topic.YARN_USED,
        "says how much yarn is knitted",
        "how much yarn have i used",
        "how much yarn is used",
    ),
    _about(
        Topic.PACE,
        "says how fast you knit",
        "how fast am i",
        "what is my pace",
        typed=("pace",),
    ),
    _about(
        Topic.DONE_WHEN,
        "says when it will be finished",
        "when will it be finished",
        "when will i be done",
        "will i make it in time",
        typed=("when", "how long until i am done", "how long till i am done", "will i make it by the date"),
    ),
    _about(
        Topic.TONIGHT,
        "says what is ahead this evening",
        "what is ahead tonight",
        "what comes this evening",
        typed=("tonight",),
    ),
    _about(
        Topic.KNITTED_TODAY,
        "says how much you have knitted this evening",
        "how much have i knitted tonight",
        "how many rounds did i knit",
        typed=("how many rounds tonight", "how many rounds have i knitted"),
    ),
    _about(
        Topic.REMINDERS,
        "says what you asked to be reminded of",
        "what did i want to remember",
        "what are my reminders",
        typed=("reminders", "what reminders are there", "what did you remind me of"),
    ),
    _about(
        Topic.LAST_COUNT,
        "says what the last right count was",
        "what was the last count",
        "when did i last count",
        typed=("how many have i counted", "where did i last count"),
    ),
    _about(
        Topic.ALTERATIONS,
        "says what is knitted otherwise than printed",
        "what did i change",
        "what is different from the pattern",
        typed=("alterations",),
    ),
    Wording(
        cue=cues.HowFarTo,
        says="says how many rounds there are before a section or a labelled line",
        spoken=("how far to {place}", "how many rounds to {place}"),
        typed=("when is {place}", "when does {place} begin"),
    ),
    Wording(
        cue=cues.Explain,
        fills={"abbreviation": "text"},
        says="says what an abbreviation means",
        spoken=("tell me the meaning of {abbreviation}", "explain the stitch {abbreviation}"),
        typed=(
            "what is {abbreviation}",
            "what does {abbreviation} mean",
            "explain {abbreviation}",
            "how do i {abbreviation}",
        ),
    ),
)
"""In the order of the help."""
