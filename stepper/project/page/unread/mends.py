"""Find the smallest changes with which an unread row is read: a word spelt anew, words struck, a cut. No I/O.

Theory of operation. Most unread rows fail for one word or one clause. A row is looked at sentence by sentence
and three kinds of change are tried: a word that is none is taken for the one trade's
word near in spelling; a run of words that order nothing is struck (`struck_words`), the fewest first; the
sentence is cut behind its first work, and what follows stays open. Whether the row then fits where it stands
is for the plan to say. What is found is offered to the knitter and never taken without her answer.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from enum import Enum
from functools import lru_cache
from itertools import islice
from typing import Final

from stepper.project.page.orders import holds_instruction
from stepper.project.page.stops import sentences_of
from stepper.project.page.unread.struck_words import ways_to_strike
from stepper.project.reading.clauses import first_work
from stepper.project.reading.parsing import legal_words, made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.clauses import word_classes as of
from stepper.project.rewording.synonym import word_set
from stepper.project.spelling import near
from stepper.records import dataclass
from stepper.regex import regex

LONGEST: Final = 600
"""Most letters of a sentence that is looked at."""
_MOST_TRIED: Final = 10
"""Most ways to strike words that are tried for a row; each costs the reading of a line."""
_MOST_SENTENCES: Final = 4
"""Most sentences of a row that are looked at."""
_MOST_MEANT: Final = 4
"""Most words that a misspelt one is tried as."""
_LONG: Final = 7
"""Letters of a word that may hold two slips: "stick" is none for "stitch"."""
_TRADE: Final = of.CRAFT | of.STITCH_THINGS | of.FABRIC
"""Words of the trade that a shorter one may be meant for: "wall" is none for "will"."""
_WORD: Final = regex(r"(?<![\w'-])[^\W\d_]{4,}(?![\w'-])")
_OTHER: Final = word_set("knot knots pearl torn")
"""Words near to one of the trade that mean themselves, too."""
_COUNT: Final = regex(r"\W*\d[\d\s()\[\]{},:;/–—-]*(?:sts?|stitches)\b[^.]{0,24}\.?\s*", re.I)
"""A sentence that is only the count behind the one before."""


class MendKind(Enum):
    """What is changed."""

    STRUCK = "struck"
    """Words are struck, and said with the row."""
    SPELT = "spelt"
    """A word that is none is read as another."""
    CUT = "cut"
    """What follows the first work stays open."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Mend:
    """A row with one change, and what of it stays open."""

    kind: MendKind
    text: str
    """What is read."""
    words: str
    """The words struck or misspelt, or those that stay open behind a cut, as printed."""
    start: int
    """Where they begin in the row, from 0. Unit: letters."""
    end: int
    """Where they end."""
    instead: str = ""
    """`SPELT`: the word read in their place."""
    front: str = ""
    """What stands in front of what is read and stays open; empty if nothing does."""
    behind: str = ""
    """What stays open behind it; empty if nothing does."""
    told: bool = False
    """`STRUCK`: whether the words are told beside the work, as an alternative or a reason."""

    @property
    def hangs(self) -> bool:
        """Whether an order that stays open stands in front of it, which may change what it comes to."""
        return any(map(holds_instruction, sentences_of(self.front))) if self.front else False

    @property
    def cost(self) -> tuple[bool, int]:
        """How much is changed, as `stepper.project.page.unread.struck_words.Struck.cost`."""
        return not self.told, len(self.words.split()) if self.kind is MendKind.STRUCK else 1


@lru_cache(maxsize=256)
def find_mends(text: str) -> tuple[Mend, ...]:
    """Find the changes with which a row is read.

    Args:
        text: The row as printed, not read as it stands.

    Returns:
        Those of one kind, the smallest first; none if no change makes it a line.
    """
    plain = " ".join(text.split())
    at, sentences = 0, sentences_of(plain)
    for number, sentence in enumerate(sentences):
        found = tuple(_of_sentence(sentence)) if len(sentence) <= LONGEST else ()
        if found:
            front = " ".join(sentences[:number])
            rest = sentences[number + 1 :]
            counted = next(iter(rest), "") if rest and _COUNT.fullmatch(rest[0]) else ""
            if counted and found[0].kind is not MendKind.CUT:
                found = tuple(replace(each, text=f"{each.text} {counted}") for each in found)
                rest = rest[1:]
            return tuple(_placed(each, front, rest, at) for each in found)
        if sentence.endswith(":") or number + 1 == _MOST_SENTENCES:
            return ()  # what stands behind the colon hangs on it
        at += len(sentence) + 1
    return ()


def _placed(found: Mend, front: str, rest: list[str], at: int) -> Mend:
    """Return a change in one sentence as one in its row."""
    behind = " ".join([found.behind, *rest] if found.behind else rest)
    return replace(found, front=front, behind=behind, start=found.start + at, end=found.end + at)


def _of_sentence(sentence: str) -> Iterator[Mend]:
    """Yield the changes with which a sentence is read, of the first kind that has any."""
    spelt = _spelt(sentence)
    if spelt is not None:
        yield spelt
        return
    if not holds_instruction(sentence):
        return
    struck = [way for way in islice(ways_to_strike(sentence), _MOST_TRIED) if reads(way.text)]
    for way in struck:
        yield Mend(
            kind=MendKind.STRUCK,
            text=way.text,
            words=way.words,
            start=way.start,
            end=way.end,
            told=way.told,
        )
    cut = first_work(sentence) if not struck else None
    if cut is not None:
        end, begin = cut
        words = sentence[begin:]
        yield Mend(
            kind=MendKind.CUT,
            text=f"{sentence[:end].rstrip('.')}.",
            words=words,
            start=begin,
            end=len(sentence),
            behind=f"{words[:1].upper()}{words[1:]}",
        )


def _spelt(sentence: str) -> Mend | None:
    """Return a sentence with its one misspelt word as it is meant; None if that is not sure."""
    plain = made_plain(sentence)
    slips = [(match, choices) for match in _WORD.finditer(plain) if (choices := _meant(match[0]))]
    if len(slips) != 1:
        return None
    ((slip, choices),) = slips
    start, end = slip.span()
    ways = []
    for choice in choices[:_MOST_MEANT]:
        instead = choice[:1].upper() + choice[1:] if slip[0][0].isupper() else choice
        text = f"{sentence[:start]}{instead}{sentence[end:]}"
        if reads(text):
            ways.append((text, choice))
    if len(ways) != 1:
        return None
    ((text, instead),) = ways
    return Mend(kind=MendKind.SPELT, text=text, words=slip[0], start=start, end=end, instead=instead)


def _meant(word: str) -> tuple[str, ...]:
    """Return the words of the trade that a word may be a slip for, all as near; none if it means itself."""
    lower = word.lower()
    if lower in of.ALL | _OTHER or lower in legal_words() or word.isupper():
        return ()
    found = near(lower, legal_words())
    if not found or (found[0][0] > 1 and len(lower) < _LONG):
        return ()
    return tuple(
        choice
        for slips, choice in found
        if slips == found[0][0] and (choice in _TRADE or len(choice) >= _LONG)
    )
