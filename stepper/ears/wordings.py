"""What a recogniser may hear, handed in from outside: phrases, numbers in their frames, and an address word.
No I/O.

A phrase is a text in lower case, one space between words. What it means is any value that can be compared:
phrases that mean the same do not compete.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Mapping
from dataclasses import field
from enum import Enum
from functools import cache
from typing import Final

from stepper.records import dataclass


class Reply(Enum):
    """What may answer an open question without the address word."""

    YES_OR_NO = "yes or no"
    NUMBER = "a number"
    NO_ANSWER = "no answer"
    """That she cannot tell, or will not now."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Called:
    """What a wording means that is heard only where she surely speaks to the program: a single word, or what
    people say to each other in any film."""

    means: Hashable
    answers: Reply | None = None
    """The question it answers without the address word; None for none. A single word that answers one is
    heard behind the address word, too, only while that is open."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Frame:
    """Words around a number: "count is" before, "left over" after; one of them may be empty.

    If both are, it is a number alone, which is heard only behind the address word or in answer to a question.
    """

    before: str
    after: str
    means: Hashable
    """What the frame means with any number in it."""
    numbers: Mapping[str, float] | None = None
    """Every way to say each number that may stand in it, and the number; None for those of all frames."""

    @property
    def is_bare(self) -> bool:
        """Whether there is no word around the number."""
        return not (self.before or self.after)

    def around(self, number: str) -> str:
        """Put a spoken number into the frame."""
        return " ".join(filter(None, (self.before, number, self.after)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Wordings:
    """Everything that may be heard, without the address word."""

    phrases: Mapping[str, Hashable]
    """Phrases without a number, each with what it means."""
    called: Mapping[str, Called] = field(default_factory=dict)
    """Wordings heard behind the address word, or alone in answer to a question."""
    frames: tuple[Frame, ...] = ()
    numbers: Mapping[str, int] = field(default_factory=dict)
    """Every way to say each number that is scored, and the number."""
    known: Callable[[str], bool] = lambda text: False
    """Whether a text is a cue just as it stands, slots and all."""
    openings: frozenset[str] = frozenset()
    """What cues begin with that go on as she likes, with a name or a remark: "make a note"."""
    remark: Callable[[str], bool] = lambda text: False
    """Whether a text is a cue that only keeps what is said, so that a number misheard in it does no harm."""
    only_called: Callable[[str], bool] = lambda text: False
    """Whether a text is a cue that people say to each other in any film, so that it counts only behind the
    address word."""
    moves: Callable[[Hashable], bool] = lambda means: False
    """Whether what a wording means moves the knitting, so that it has to be surer than a question."""
    last_number: Callable[[str], float | None] = lambda text: None
    """The number that a text ends with, apart from one word such as a unit; None if there is none."""
    english: Callable[[str], str] = lambda text: text
    """What a cue said in another language is passed on as."""

    def numbers_of(self, frame: Frame) -> Mapping[str, float]:
        """Return the numbers that may stand in a frame."""
        return self.numbers if frame.numbers is None else frame.numbers

    def may_go_on(self, text: str) -> bool:
        """Return whether more words after a cue with a number make another number of it, or give it a unit.

        "count is two hundred" may go on, "i have two hundred stitches" may not.
        """
        for frame in self.frames:
            front = f"{frame.before} " if frame.before else ""
            said = text.removeprefix(front)
            if not frame.after and text.startswith(front) and said in self.numbers_of(frame):
                alike = (each for each in self.frames if each.before == frame.before)
                has_unit = any(each.after and said in self.numbers_of(each) for each in alike)
                if has_unit or said in _beginnings(tuple(self.numbers_of(frame))):
                    return True
        return False

    def is_begun(self, text: str) -> bool:
        """Return whether a text is a cue with a number up to the number, which is still to come."""
        return any(frame.before == text for frame in self.frames if frame.before)

    def beginnings(self) -> frozenset[str]:
        """List every text with which a longer cue begins: "go back", since there is "go back to yoke"."""
        whole = (*self.phrases, *self.called)
        fronts = (*self.openings, *(frame.before for frame in self.frames))
        return _beginnings(whole) | _beginnings(tuple(f"{front} ..." for front in fronts if front))

    def spoken_numbers(self) -> tuple[str, ...]:
        """List every way to say any number."""
        kinds = {id(numbers): numbers for numbers in map(self.numbers_of, self.frames)}
        return tuple(dict.fromkeys((*self.numbers, *(said for kind in kinds.values() for said in kind))))

    def number_words(self) -> frozenset[str]:
        """List every word that makes a text one about a number."""
        return frozenset(word for said in self.numbers for word in said.split()) - {"and"}

    def words(self) -> frozenset[str]:
        """List every word of what is heard wherever it is said, and every single word."""
        texts = (
            *self.phrases,
            *(text for text in self.called if " " not in text),
            *(frame.around("") for frame in self.frames),
            *self.spoken_numbers(),
        )
        return frozenset(word for text in texts for word in text.split())


@cache
def _beginnings(numbers: tuple[str, ...]) -> frozenset[str]:
    """Return every text with which some longer number begins."""
    split = (said.split() for said in numbers)
    return frozenset(" ".join(words[:count]) for words in split for count in range(1, len(words)))


CALLS: Final = ("okay", "hey")
"""Words with which somebody may be called: "okay stepper"."""


def list_address_ways(address: str) -> tuple[str, ...]:
    """List every way to say the address word, the plain one first: alone, and behind a word that calls.

    Args:
        address: The address word or words; empty if none is asked for.
    """
    if not address:
        return ()
    plain = address.split()[0] not in CALLS
    return (address, *(f"{call} {address}" for call in CALLS if plain))


def strip_address(text: str, address: str) -> str | None:
    """Take the address word off the front of a text, whichever way it is said.

    Args:
        text: Words in lower case.
        address: The address word or words; empty if none is asked for.

    Returns:
        The rest, or None if the text does not begin with the address word or there is no rest.
    """
    if not address:
        return text
    rest = next(
        (text[len(way) + 1 :] for way in list_address_ways(address) if text.startswith(f"{way} ")), ""
    )
    return rest or None
