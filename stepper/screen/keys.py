"""The one table of keys: what is pressed, what it asks for, and how to say the same aloud.

The help page is drawn from it. Pedals send PageUp and PageDown, arrows, space or enter, so those step. No key
does what cannot be said: each row names a cue that can be spoken too. No I/O.
"""

from __future__ import annotations

from collections.abc import Callable
from enum import Enum
from types import MappingProxyType
from typing import Final

from stepper.language.understanding.vocabulary import recommend_wordings
from stepper.records import dataclass
from stepper.session import cues
from stepper.session.state import State


class Page(Enum):
    """What the screen shows."""

    ROUND = "the round"
    KEYS = "keys"
    JOURNAL = "journal"
    CHART = "chart"
    YOKE = "from above"
    REMEDIES = "remedies"


class TypedEntry(Enum):
    """Words that can be typed in without leaving the round."""

    NOTE = "note"
    LENGTH = "length"
    WEIGHT = "weight"
    WORDS = "say"


@dataclass(frozen=True, slots=True, kw_only=True)
class Key:
    """One row of the table."""

    keys: tuple[str, ...]
    """Names of the keys; a letter is its own name."""
    says: str
    """What it does, in a few words."""
    cue: Callable[[State], cues.Cue] | None = None
    """The cue it stands for in a given state."""
    kinds: tuple[type[cues.Cue], ...] = ()
    """The kinds of cue it can lead to."""
    page: Page | None = None
    view: cues.View | None = None
    """What its spoken form turns the screen to."""
    entry: TypedEntry | None = None
    steps: bool = False
    """Whether a pedal may send it; if so, it counts once however long it is held."""

    @property
    def spoken(self) -> tuple[str, ...]:
        """How to say the same aloud."""
        if self.view is not None:
            return (recommend_wordings(cues.Look, view=self.view)[0],)
        return tuple(recommend_wordings(kind)[0] for kind in self.kinds)


def _key(keys: str, cue: type[cues.Cue], says: str, *, steps: bool = False) -> Key:
    return Key(keys=tuple(keys.split("|")), says=says, cue=lambda state: cue(), kinds=(cue,), steps=steps)


PAGES: Final = MappingProxyType(
    {
        cues.View.ROUND: Page.ROUND,
        cues.View.CHART: Page.CHART,
        cues.View.YOKE: Page.YOKE,
        cues.View.JOURNAL: Page.JOURNAL,
    }
)
"""What the view cues turn the screen to."""


def _shows(key: str, view: cues.View, says: str) -> Key:
    return Key(keys=(key,), says=says, page=PAGES[view], view=view, kinds=(cues.Look,))


def _ears(state: State) -> cues.Cue:
    return cues.Listen() if state.asleep else cues.Wait()


def _reading(state: State) -> cues.Cue:
    if state.reading is None:
        return cues.ReadAlong()
    return cues.GoOn() if state.reading.held else cues.PauseReading()


def _tally(state: State) -> cues.Cue:
    return cues.CountAloud() if state.knitting.tens is None else cues.ThatIsAll()


KEYS: Final[tuple[Key, ...]] = (
    _key("space|enter|page down|right|down", cues.Next, "step done, the next one", steps=True),
    _key("page up|left|up", cues.Back, "back to the step before", steps=True),
    _key("u|backspace", cues.Undo, "take the last thing back"),
    _key("r", cues.Redo, "do it again after all"),
    _key("a", cues.Again, "say it again, slower"),
    _key("w", cues.Where, "say where I am"),
    _key("h", cues.HowMany, "how many stitches there should be"),
    _key("i", cues.Spacing, "where the increases or decreases are"),
    _key("f", cues.HowFar, "how far to go"),
    _key("m", cues.AtMarker, "I am at the next marker"),
    _key("b", cues.Stride, "one step is a round, a repeat, a colour"),
    Key(keys=("e",), says="close or open the ears", cue=_ears, kinds=(cues.Wait, cues.Listen)),
    Key(
        keys=("c",), says="count aloud; again to end it", cue=_tally, kinds=(cues.CountAloud, cues.ThatIsAll)
    ),
    Key(keys=("+",), says="ten more in that count", cue=lambda s: cues.Ten(stitches=10), kinds=(cues.Ten,)),
    Key(
        keys=("k",),
        says="read along; again to hold it, to go on",
        cue=_reading,
        kinds=(cues.ReadAlong, cues.PauseReading, cues.GoOn),
    ),
    _key("x", cues.WhatHappened, "what probably went wrong"),
    _key("y", cues.Remedies, "how to mend it"),
    _key("p", cues.Respace, "space the rest of the round anew"),
    _key("v", cues.Lifeline, "a lifeline lies here"),
    Key(keys=("n",), says="make a note", entry=TypedEntry.NOTE, kinds=(cues.Note,)),
    Key(keys=("l",), says="enter a length", entry=TypedEntry.LENGTH, kinds=(cues.Length,)),
    Key(keys=("g",), says="enter a weight", entry=TypedEntry.WEIGHT, kinds=(cues.Weight,)),
    Key(keys=("/",), says="type any other cue", entry=TypedEntry.WORDS, kinds=(cues.Help,)),
    _shows("d", cues.View.CHART, "the whole chart"),
    _shows("o", cues.View.YOKE, "the yoke from above"),
    _shows("j", cues.View.JOURNAL, "the journal: go back to any point"),
    Key(keys=("?",), says="these keys", page=Page.KEYS, kinds=(cues.Help,)),
    _key("q q", cues.Enough, "stop for tonight"),
)
"""Every key. `q q` is q pressed twice, so that a cat does not end the evening."""

BY_KEY: Final[dict[str, Key]] = {name: row for row in KEYS for name in row.keys}
"""The row of each key."""


@dataclass(frozen=True, slots=True, kw_only=True)
class NumberKey:
    """What a key does with the figures typed before it."""

    key: str
    says: str
    cue: Callable[[int], cues.Cue]
    kind: type[cues.Cue]
    for_instance: int
    """A number that makes sense there, as an example."""


NUMBER_KEYS: Final = (
    NumberKey(
        key="enter", says="count", cue=lambda n: cues.Count(stitches=n), kind=cues.Count, for_instance=246
    ),
    NumberKey(
        key="s", says="at stitch", cue=lambda n: cues.AtStitch(stitch=n), kind=cues.AtStitch, for_instance=84
    ),
    NumberKey(
        key="r", says="go to round", cue=lambda n: cues.GoTo(round_number=n), kind=cues.GoTo, for_instance=12
    ),
    NumberKey(key="t", says="unknit", cue=lambda n: cues.Tink(stitches=n), kind=cues.Tink, for_instance=6),
    NumberKey(
        key="y", says="take remedy", cue=lambda n: cues.Choose(number=n), kind=cues.Choose, for_instance=1
    ),
)
"""What can be done with a number; `enter` makes it a count unless the session asked for something else."""

LONGEST_NUMBER: Final = 4
"""Most figures a number can have."""
