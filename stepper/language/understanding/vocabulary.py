"""The one table of what can be said: from wording to cue.

It feeds `understand`, the recogniser's word list, the help and the documentation. It is long because it
is one list, in the order of the help; questions, faults and slips have parts of their own. No I/O.

`spoken` wordings are chosen for the ear: several distinctive words each, because a recogniser hears "next
step" but may miss "next". The first is the one the help names. `typed` forms are short and only ever typed: a
single letter heard during a film would be a guess. `surest` ones are single words that recordings of many
people taught the ears; they count behind the address word, and alone only in answer to an open question.

Slots in braces are filled by what is said there: `{number}`, `{length}`, `{weight}`, `{yarn}`, `{place}` (a
section or a label), `{text}` (anything, only at the end); `fills` names the field of the cue if it is not
called like the slot. A bare number is not a cue: it would be heard half a dozen times during an hour of film,
so a count needs words around it.

"done" alone is for the keyboard, where it finishes the step: of the people asked, half meant "this step" and
half "for tonight" when they said it.

It is longer than other modules: one table, in the order in which the help tells it.
"""

from __future__ import annotations

from types import MappingProxyType
from typing import Any, Final

from stepper.language.understanding.fault_vocabulary import FAULT_WORDINGS
from stepper.language.understanding.question_vocabulary import QUESTION_WORDINGS
from stepper.language.understanding.wordings import Wording
from stepper.session import cues
from stepper.session.questions.topics import HelpWith
from stepper.session.steps import By

_HELP_MEANT: Final = MappingProxyType(
    {
        HelpWith.PLACES: (
            "i forgot to say next",
            "i forgot to press next",
            "i am further than that",
            "i already did that round",
        ),
        HelpWith.LISTENING: (
            "how do i stop", "how do i end", "how do i quit", "i want to stop", "i need to stop",
            "i have to stop",
            "i have to go",
        ),
    }
)
"""What is said by who needs such help, though she does not ask for it."""

VOCABULARY: Final[tuple[Wording, ...]] = (
    Wording(
        cue=cues.Next,
        says="finishes this step and says the next one",
        spoken=("next step", "move on", "carry on", "step done", "next one please"),
        typed=("next", "n", "next round", "forward", "done", "finished"),
        surest=("forward",),
    ),
    Wording(
        cue=cues.Back,
        says="returns to the step before",
        spoken=("go back", "step back", "one step back", "previous step"),
        typed=(
            "back",
            "b",
            "previous",
            "backward",
            "no go back",
            "i said next twice",
            "i said next too early",
            "i pressed next twice",
            "i am one step too far",
        ),
        surest=("backward",),
    ),
    Wording(
        cue=cues.Again,
        says="says this step again, slower",
        spoken=(
            "say again",
            "say that again",
            "once more please",
            "repeat that",
            "what was that",
            "read that again slowly",
        ),
        typed=(
            "again",
            "repeat",
            "pardon",
            "what",
            "sorry",
            "read that again",
            "say that again slowly",
            "once more slowly",
            "what do i do now",
            "what should i do",
            "i forgot what to do",
            "i do not understand",
        ),
    ),
    Wording(
        cue=cues.Where,
        says="says where you are",
        spoken=("where am i", "where are we", "which round is this", "what round is this"),
        typed=(
            "where",
            "w",
            "place",
            "which round am i on",
            "what round am i on",
            "i am lost",
            "i do not know where i am",
            "where did i stop",
            "where was i",
            "i lost my place",
            "i have lost my place",
            "i forgot which round i am on",
            "i forgot what round i am on",
            "i forgot where i am",
            "i forgot where i was",
            "where do i begin",
            "where do i go on",
            "how many stitches have i done in this round",
            "how many stitches have i knitted in this round",
        ),
    ),
    Wording(
        cue=cues.Spacing,
        says="says how the increases or decreases are spaced and when the next one comes",
        spoken=(
            "where are the increases",
            "where are the decreases",
            "where is the next increase",
            "where is the next decrease",
            "how is it spaced",
        ),
        typed=("spacing", "increases", "decreases"),
    ),
    Wording(
        cue=cues.HowMany,
        says="says how many stitches there should be",
        spoken=("how many stitches", "how many should there be", "how many stitches should i have"),
        typed=("how many", "stitches", "expected", "how many stitches after this round"),
    ),
    Wording(
        cue=cues.Count,
        fills={"number": "stitches"},
        says="compares your count with the right one",
        spoken=(
            "count is {number}",
            "my count is {number}",
            "i count {number}",
            "i counted {number}",
            "i have {number} stitches",
        ),
        typed=("count {number}", "c {number}"),
    ),
    Wording(
        cue=cues.AtStitch,
        fills={"number": "stitch"},
        says="sets the place in the round",
        spoken=("stitch {number}", "at stitch {number}", "i am at stitch {number}"),
        typed=("s {number}",),
    ),
    Wording(
        cue=cues.AtMarker,
        says="sets the place to the next marker",
        spoken=("at the marker", "i am at the marker", "reached the marker"),
        typed=("marker", "m", "to the marker"),
    ),
    Wording(
        cue=cues.Stride,
        fixed={"by": By.ROUND},
        says="reads a whole round at a time",
        spoken=("by round", "go by round", "round by round"),
    ),
    Wording(
        cue=cues.Stride,
        fixed={"by": By.REPEAT},
        says="reads one repeat at a time",
        spoken=("by repeat", "go by repeat", "repeat by repeat"),
    ),
    Wording(
        cue=cues.Stride,
        fixed={"by": By.COLOUR},
        says="reads up to the next change of colour",
        spoken=("by colour", "go by colour", "colour by colour"),
    ),
    Wording(
        cue=cues.Stride,
        fixed={"by": By.MARKER},
        says="reads up to the next marker",
        spoken=("by marker", "go by marker", "marker by marker"),
    ),
    Wording(
        cue=cues.Stride,
        fixed={"by": By.GAP},
        says="reads up to and with the next increase or decrease, and which one it is",
        spoken=("by gap", "go by gap", "gap by gap"),
    ),
    Wording(
        cue=cues.HowFar,
        says="says what is left",
        spoken=("how far to go", "how much is left", "how many rounds to go"),
        typed=(
            "how far",
            "far",
            "left",
            "how many to go",
            "how many rounds left",
            "how many rounds are left",
            "how many rounds is that",
        ),
    ),
    Wording(
        cue=cues.HowLong,
        says="says how long you have knitted this evening and in all",
        spoken=("how long have i knitted", "how long have i been knitting", "how much time was that"),
        typed=("how long",),
    ),
    Wording(
        cue=cues.Why,
        says="says why it was asked or advised",
        spoken=("why is that asked", "what is that good for"),
        typed=("why", "tell me why", "why is that", "why do you ask", "what for", "why should i"),
        called=("tell me why",),
    ),
    Wording(
        cue=cues.Length,
        fills={"length": "length_mm"},
        says="notes a length and corrects the rounds left",
        spoken=("measures {length}", "it measures {length}", "piece measures {length}", "length is {length}"),
        typed=("measure {length}", "length {length}", "it is {length} now", "it is {length} long"),
    ),
    Wording(
        cue=cues.Weight,
        fills={"weight": "grams"},
        says="notes what is left of a yarn",
        spoken=("{yarn} weighs {weight}", "weight of {yarn} is {weight}"),
        typed=("weigh {yarn} {weight}", "weight {yarn} {weight}"),
    ),
    Wording(
        cue=cues.Note,
        says="keeps a note here",
        spoken=("make a note {text}", "take a note {text}", "make a note", "take a note"),
        typed=("note {text}", "note"),
    ),
    Wording(
        cue=cues.Note,
        fixed={"text": "a new ball"},
        says="notes that a new ball begins here",
        typed=(
            "new ball",
            "new skein",
            "i changed the ball",
            "i changed balls",
            *(
                f"i {began} a new {ball}"
                for began in ("joined", "started", "began", "took")
                for ball in ("ball", "skein")
            ),
        ),
    ),
    Wording(
        cue=cues.RemindMe,
        fills={"number": "rounds"},
        says="reminds you after a number of rounds",
        spoken=(
            "remind me in {number} rounds to {text}",
            "remind me in {number} rounds",
            "tell me again in {number} rounds",
        ),
        typed=(
            "remind me in {number} round to {text}",
            "remind me in {number} round",
            "remind me to {text} in {number} rounds",
            "remind me to {text} after {number} rounds",
        ),
    ),
    Wording(
        cue=cues.RemindMe,
        fixed={"place": "division"},
        says="reminds you where the stitches are divided",
        spoken=("remind me at the division", "remind me at the divide"),
        typed=("remind me when i divide",),
    ),
    Wording(
        cue=cues.RemindMe,
        fills={"length": "length_mm"},
        says="reminds you at a length, or at a place",
        spoken=(
            "remind me at {length} to {text}",
            "remind me at {length}",
            "remind me at {place} to {text}",
            "remind me at {place}",
        ),
        typed=(
            "remind me when it is {length} long to {text}",
            "remind me when it is {length} long",
            "remind me to {text} at {place}",
        ),
    ),
    Wording(
        cue=cues.ForgetReminders,
        says="forgets what you asked to be reminded of",
        spoken=("forget the reminders", "forget the reminder", "no more reminders"),
    ),
    Wording(
        cue=cues.RoundsDone,
        fixed={"rounds": 1},
        says="takes the round in hand for done",
        spoken=("finished the round", "the round is done", "round is finished", "end of the round"),
        typed=(
            "one more round done",
            "another round done",
            "i have done this round",
            "i already did this round",
        ),
    ),
    Wording(
        cue=cues.RoundsDone,
        fills={"number": "rounds"},
        says="takes so many rounds for done, the one in hand among them",
        spoken=("{number} rounds done", "i did {number} rounds", "i knitted {number} rounds"),
        typed=("did {number} rounds", "{number} rounds finished"),
    ),
    Wording(
        cue=cues.RoundsBack,
        fills={"number": "rounds"},
        says="returns so many rounds",
        spoken=("go back {number} rounds", "{number} rounds back"),
        typed=(
            "back {number} rounds",
            "go back {number} round",
            "{number} round back",
            "i ripped back {number} rounds",
            "i ripped {number} rounds",
            "i ripped out {number} rounds",
            "rip back {number} rounds",
            "rip back {number} round",
            "rip {number} rounds",
            "rip out {number} rounds",
        ),
    ),
    Wording(
        cue=cues.RoundsBack,
        fixed={"rounds": -1},
        says="asks how many rounds you ripped back",
        typed=(
            "rip back",
            "rip it back",
            "rip out",
            "rip it out",
            "i ripped back",
            "i ripped it back",
            "i ripped out",
        ),
        called=("rip back",),
    ),
    Wording(
        cue=cues.RoundsBack,
        fixed={"wrong": True},
        fills={"number": "rounds"},
        says="asks whether you rip back to what is wrong so far down",
        typed=(
            "wrong colour {number} rounds down",
            "wrong colour {number} round down",
            "wrong yarn {number} rounds down",
            "wrong colour {number} rounds back",
            "wrong colour {number} rounds below",
            "wrong yarn {number} rounds below",
        ),
    ),
    Wording(
        cue=cues.RoundsBack,
        fixed={"rounds": 0},
        says="returns to the beginning of this round",
        spoken=("start the round again", "begin the round again"),
        typed=(
            "start this round again",
            "start over this round",
            "i am back at the start of the round",
            "i am at the start of the round",
        ),
    ),
    Wording(
        cue=cues.StitchesBack,
        fills={"number": "stitches"},
        says="moves the place back by stitches you have undone",
        spoken=("i undid {number} stitches", "i took back {number} stitches"),
        typed=("i unknit {number} stitches", "i tinked {number} stitches", "i ripped {number} stitches"),
    ),
    Wording(
        cue=cues.YarnDone,
        says="takes the round in that yarn for done",
        spoken=("the {yarn} round is finished", "the {yarn} round is done"),
        typed=("{yarn} round done",),
    ),
    Wording(
        cue=cues.GoTo,
        fills={"number": "round_number"},
        says="sets the place to a round, a section or a labelled line",
        spoken=(
            "go to round {number}",
            "go to {place}",
            "go to {place} round {number}",
            "go to round {number} of {place}",
        ),
        typed=(
            "goto round {number}",
            "go back to round {number}",
            "go back to {place} round {number}",
            "back to round {number}",
            "back to {place} round {number}",
            "goto {place}",
            "round {number}",
            "r {number}",
            "i am at round {number}",
            "i am on round {number}",
            "start {place} again",
        ),
    ),
    Wording(
        cue=cues.Undo,
        says="takes the last thing back",
        spoken=("undo that", "take that back", "that was wrong"),
        typed=("undo", "u", "never mind", "cancel"),
    ),
    Wording(
        cue=cues.Redo,
        says="does again what was taken back",
        spoken=("redo that", "do that again"),
        typed=("redo",),
    ),
    Wording(
        cue=cues.Wait,
        says="closes the ears",
        spoken=("stop listening", "close your ears"),
        typed=("wait", "pause", "wait for me", "wait a minute", "wait a moment", "be quiet"),
        called=("wait a minute",),
    ),
    Wording(
        cue=cues.Listen,
        says="opens the ears",
        spoken=("start listening", "listen again", "open your ears"),
        typed=("listen", "wake up"),
    ),
    Wording(
        cue=cues.Film,
        fixed={"on": True},
        says="asks for the address word in front of every cue",
        spoken=("film on", "the film is on", "a film is on"),
    ),
    Wording(
        cue=cues.Film,
        fixed={"on": False},
        says="no longer asks for the address word",
        spoken=("film off", "the film is off", "the film is over"),
    ),
    Wording(
        cue=cues.Enough,
        says="says where you stop and closes",
        spoken=("that is all for tonight", "that is all for today"),
        # What people say to each other in any film must not end her evening, so these are only typed.
        typed=(
            "enough",
            "quit",
            "exit",
            "q",
            "that is all",
            "that is enough",
            "that is enough for tonight",
            "good night",
            "goodbye",
            "all done",
            "done for today",
            "done for tonight",
            "stop for today",
            "stop for tonight",
        ),
    ),
    Wording(
        cue=cues.Help,
        says="says what can be said",
        spoken=("what can i say", "what can you do", "help me please"),
        typed=("help", "h", "?"),
    ),
    *(
        Wording(
            cue=cues.Help,
            fixed={"about": group},
            says=f"says what can be said about {group.value}",
            spoken=(f"help with {group.value}",),
            typed=_HELP_MEANT.get(group, ()),
        )
        for group in HelpWith
        if group is not HelpWith.NOW
    ),
    Wording(
        cue=cues.ReadAlong,
        says="reads the round run by run at your pace",
        spoken=("read along", "read it along", "read along with me"),
    ),
    Wording(
        cue=cues.Slower,
        says="reads along more slowly",
        spoken=("read slower", "a bit slower", "slower please"),
        typed=("not so fast",),
    ),
    Wording(
        cue=cues.Faster,
        says="reads along faster",
        spoken=("read faster", "a bit faster", "faster please"),
    ),
    Wording(
        cue=cues.PauseReading,
        says="pauses reading along",
        spoken=("hold on", "hold it there", "hold the reading"),
        typed=("hold", "stop"),
        surest=("stop",),
    ),
    Wording(
        cue=cues.GoOn,
        says="goes on with reading along, or with the next step",
        spoken=("go on", "go on reading"),
        typed=("go",),
        surest=("go",),
    ),
    Wording(
        cue=cues.Look,
        fixed={"view": cues.View.CHART},
        says="shows the whole chart on the screen",
        spoken=("the whole chart", "show the whole chart"),
        typed=("chart",),
    ),
    Wording(
        cue=cues.Look,
        fixed={"view": cues.View.YOKE},
        says="shows the yoke from above on the screen",
        spoken=("yoke from above", "show the yoke from above"),
        typed=("yoke",),
    ),
    Wording(
        cue=cues.Look,
        fixed={"view": cues.View.JOURNAL},
        says="shows the journal on the screen",
        spoken=("open the journal", "show the journal"),
        typed=("journal",),
    ),
    Wording(
        cue=cues.Look,
        fixed={"view": cues.View.ROUND},
        says="shows the round on the screen again",
        spoken=("back to the round", "show the round"),
    ),
    *QUESTION_WORDINGS,
    *FAULT_WORDINGS,
)
"""Every wording, in the order of the help."""


def recommend_wordings(cue: type[cues.Cue], **fixed: Any) -> tuple[str, ...]:
    """Return the wordings to recommend for a cue: the first of each of its rows.

    Args:
        cue: The kind of cue.
        fixed: Fields of the cue; only rows that fix them to these values count.
    """
    rows = [wording for wording in VOCABULARY if wording.cue is cue and wording.spoken]
    return tuple(row.spoken[0] for row in rows if fixed.items() <= row.fixed.items())
