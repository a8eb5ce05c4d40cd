"""The part of the vocabulary about counting and searching for a fault. No I/O."""

from __future__ import annotations

from typing import Final

from stepper.language.understanding.wordings import Wording
from stepper.session import cues
from stepper.session.state import Asking, Seen

FAULT_WORDINGS: Final[tuple[Wording, ...]] = (
    Wording(
        cue=cues.SectionCount,
        fills={"number": "stitches"},
        says="answers with the stitches counted between two landmarks",
        spoken=("there are {number}", "in between are {number}"),
        typed=("there {number}",),
    ),
    Wording(
        cue=cues.MarkerCounts,
        fills={"numbers": "counts"},
        says="gives the counts between all markers at once",
        spoken=("between the markers are {numbers}", "the markers have {numbers}"),
        typed=("between {numbers}",),
    ),
    Wording(
        cue=cues.Saw,
        fixed={"seen": Seen.LOOP, "number": 1},
        says="says that a loose loop hangs there, or that you dropped a stitch",
        spoken=("i see a loop", "there is a loose loop", "i see a ladder", "i dropped a stitch"),
        typed=(
            *("i lost a stitch", "a stitch fell off", "i dropped one", "i dropped a yarn over"),
            *("it is not caught", "the loop is not caught"),
        ),
    ),
    Wording(
        cue=cues.Saw,
        fixed={"seen": Seen.LOOP, "number": 0},
        says="says that no loop hangs there, or not any more",
        spoken=("no loop", "i see no loop", "it is caught", "the loop is caught"),
        typed=(
            *("caught", "i caught it", "i have caught it", "i caught the loop", "i got it", "got it"),
            *("there is no loop", "there is no loose loop", "there are no loops", "no loops"),
            *("i do not see a loop", "i do not see any loop", "i cannot see a loop", "i cannot see any loop"),
            *("i did not drop a stitch", "i have not dropped a stitch", "i dropped no stitch"),
        ),
    ),
    Wording(
        cue=cues.Saw,
        fixed={"seen": Seen.LEFT, "number": 0},
        says="says that the round came out at its end",
        spoken=("it came out", "the round came out"),
    ),
    Wording(
        cue=cues.Saw,
        fixed={"seen": Seen.LEFT},
        says="says how many stitches were left over",
        spoken=("{number} left over", "i have {number} left over"),
        typed=(
            "{number} stitch left over",
            "{number} stitches left over",
            "i have {number} stitch left over",
            "i have {number} stitches left over",
        ),
    ),
    Wording(
        cue=cues.Saw,
        fixed={"seen": Seen.LEFT, "sign": -1},
        says="says how many stitches the round came out short",
        spoken=("{number} short", "i am {number} short"),
    ),
    Wording(
        cue=cues.Saw,
        fixed={"seen": Seen.WHOLE, "number": 1},
        says="says that the round looks like another",
        spoken=("it looks like another", "it looks like another round"),
    ),
    Wording(
        cue=cues.Saw,
        fixed={"seen": Seen.WHOLE, "number": 0},
        says="says that the round looks right",
        spoken=("it looks right",),
    ),
    Wording(
        cue=cues.Saw,
        fixed={"seen": Seen.CHANGES, "number": 0},
        says="says that the increases and decreases are right",
        spoken=("changes are right", "the increases are right", "the decreases are right"),
    ),
    Wording(
        cue=cues.Saw,
        fixed={"seen": Seen.CHANGES},
        says="says how many increases or decreases too many there are",
        spoken=("{number} too many",),
    ),
    Wording(
        cue=cues.Saw,
        fixed={"seen": Seen.CHANGES, "sign": -1},
        says="says how many increases or decreases too few there are",
        spoken=("{number} too few",),
    ),
    Wording(
        cue=cues.OffBy,
        fills={"number": "stitches"},
        says="says how many stitches you have too many",
        spoken=("i have {number} too many", "i have {number} stitches too many"),
        typed=(
            "{number} stitches too many",
            "{number} stitch too many",
            "i am {number} over",
            "i am {number} too many",
            "i am {number} stitches too many",
            "i am {number} stitch over",
            "i am {number} stitches over",
        ),
    ),
    Wording(
        cue=cues.OffBy,
        fixed={"sign": -1},
        fills={"number": "stitches"},
        says="says how many stitches are missing",
        spoken=("{number} stitches are missing", "i miss {number} stitches"),
        typed=("{number} stitch missing", "{number} stitches missing", "{number} stitch is missing",
            "i am {number} stitches short", "i am {number} stitch short", "i have {number} stitches too few"),
    ),
    Wording(
        cue=cues.OffBy,
        fixed={"sign": -1, "stitches": 1},
        says="says that an increase was forgotten",
        spoken=("i forgot an increase", "i missed an increase"),
    ),
    Wording(
        cue=cues.OffBy,
        fixed={"sign": 1, "stitches": 1},
        says="says that a decrease was forgotten",
        spoken=("i forgot a decrease", "i missed a decrease"),
    ),
    Wording(
        cue=cues.FaultIn,
        fills={"number": "round_number"},
        says="says in which round you see a fault",
        spoken=("mistake in round {number}", "there is a mistake in round {number}"),
    ),
    Wording(
        cue=cues.FaultIn,
        fills={"number": "back"},
        says="says how many rounds below the needles you see a fault",
        typed=tuple(
            f"{seen} {{number}} {rounds} {below}"
            for seen in ("mistake", *(f"{i} a mistake" for i in ("there is", "i see", "i found", "i made")))
            for rounds in ("rounds", "round")
            for below in ("down", "below", "back", "ago", "further down")
        ),
    ),
    Wording(
        cue=cues.FaultIn,
        fixed={"back": 1},
        says="says that you see a fault in the last round",
        typed=tuple(f"{seen} mistake in the last round" for seen in ("there is a", "i see a", "i made a")),
    ),
    Wording(
        cue=cues.WhatHappened,
        says="says what probably went wrong",
        spoken=("what happened", "what went wrong"),
        typed=(
            "i made a mistake",
            "i think i made a mistake",
            "i think i made a mistake a few rounds ago",
            "i made a mistake a few rounds ago",
            "i think something is wrong",
            "it looks wrong",
            "this looks wrong",
            "is this right",
            "did i do this right",
            "did i do it right",
            "am i doing this right",
            "how do i know if it is right",
            "i split the yarn",
            "something looks wrong",
            "pattern does not line up",
            "it does not line up",
            "pattern is off",
            "i skipped a round",
        ),
    ),
    Wording(
        cue=cues.Remedies,
        says="says how it can be mended and what each way costs",
        spoken=("what can i do", "how do i mend it", "how can i fix it"),
        typed=("remedies",),
    ),
    Wording(
        cue=cues.WhatElse,
        says="says the other ways to mend it",
        spoken=("what else", "any other way"),
    ),
    Wording(
        cue=cues.CountAgain,
        says="takes the last count for a slip and asks for another",
        spoken=("i miscounted", "count again", "let me count again"),
        typed=("i lost count", "i counted wrong", "i think i miscounted"),
    ),
    Wording(
        cue=cues.Yes,
        says="answers with yes",
        spoken=("yes it is", "yes that is right", "that is right"),
        typed=("yes", "y", "yes i did", "yep", "yeah", "yup", "all right", "sure", "correct"),
        surest=("yes",),
    ),
    Wording(
        cue=cues.No,
        says="answers with no",
        spoken=("no it is not", "that is wrong"),
        typed=("no", "nope", "nah", "no i did not", "that is not right", "it is not right"),
        surest=("no",),
    ),
    Wording(
        cue=cues.No,
        fixed={"later": True},
        says="leaves the search for a fault, or a number that was read back",
        typed=(
            "not now",
            "not right now",
            "stop asking",
            "stop searching",
            "stop looking",
            "leave the search",
            "i will look later",
            "i will count later",
        ),
        called=("not now",),
    ),
    Wording(
        cue=cues.No,
        fixed={"unsure": True},
        says="says that you cannot tell, and leaves what is asked open",
        typed=("i do not know", "i cannot tell", "i am not sure", "i have no idea"),
        called=("i do not know", "i don't know"),
    ),
    Wording(
        cue=cues.Choose,
        says="takes one of the remedies, or of the places asked about",
        spoken=("take remedy {number}", "remedy {number}", "take number {number}"),
    ),
    Wording(
        cue=cues.Tink,
        fills={"number": "stitches"},
        says="undoes stitches, the last one first",
        spoken=("unknit {number}", "tink {number}", "tink back {number}"),
    ),
    Wording(
        cue=cues.Tink,
        fixed={"stitches": 1},
        says="undoes one stitch",
        spoken=("unknit one more", "one stitch back"),
        typed=("tink",),
    ),
    Wording(
        cue=cues.Respace,
        fills={"number": "made"},
        says="spaces the remaining increases or decreases so that the count comes right without ripping",
        spoken=(
            "respace the rest",
            "space the rest anew",
            "respace with {number} made",
            "respace at stitch {stitch} with {made} made",
        ),
        typed=("respace", "respace at stitch {stitch}", "respace {number}"),
    ),
    Wording(
        cue=cues.Lifeline,
        says="notes a lifeline here",
        spoken=("lifeline here", "the lifeline is in"),
        typed=("lifeline",),
    ),
    Wording(
        cue=cues.Ask,
        fixed={"asking": Asking.MORE},
        says="asks for a count twice as often, and where the pattern does",
        spoken=("ask more", "ask me more often"),
    ),
    Wording(
        cue=cues.Ask,
        fixed={"asking": Asking.LESS},
        says="asks for a count only where a fault would be locked in",
        spoken=("ask less", "ask me less often"),
    ),
    Wording(
        cue=cues.Ask,
        fixed={"asking": Asking.NEVER},
        says="asks for no counts",
        spoken=("never ask", "do not ask for counts"),
    ),
    Wording(
        cue=cues.Ask,
        fixed={"asking": Asking.PATTERN},
        says="asks for a count where the pattern does, and nowhere else",
        spoken=("ask as the pattern does",),
    ),
    Wording(
        cue=cues.Ask,
        fixed={"asking": Asking.COST},
        says="asks for a count where one pays, as at the beginning",
        spoken=("ask where it pays", "ask as usual"),
    ),
    Wording(
        cue=cues.CountAloud,
        says="begins a count aloud, or says how far it has come",
        spoken=("count with me", "keep the tally", "where was i counting"),
    ),
    Wording(
        cue=cues.Ten,
        fills={"tens": "stitches"},
        says="adds to the count aloud",
        spoken=("and {tens}", "plus {tens}"),
    ),
    Wording(
        cue=cues.ThatIsAll,
        says="ends the count aloud and compares it",
        spoken=("that is all of them", "count finished"),
    ),
)
"""All rows, in the order of the help."""
