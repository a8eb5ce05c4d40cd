"""Everything that may be said, as a tree of a model's tokens with the numbers hung into each frame. No I/O.

The numbers are kept once, since there are thousands of ways to say them and two dozen frames to say them in.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field

from stepper.voice.wordings import Frame, Wordings

Tokens = tuple[int, ...]


@dataclass(slots=True)
class Node:
    """A place in a tree; what may follow and what is complete here."""

    children: dict[int, Node] = field(default_factory=dict)
    phrase: str = ""
    """The phrase, or the number as it is said, that is complete here."""
    frames: list[Frame] = field(default_factory=list)
    """Frames whose words in front of the number are complete here."""

    def grow(self, tokens: Iterable[int]) -> Node:
        """Walk on, making what is not there yet."""
        node = self
        for token in tokens:
            node = node.children.setdefault(token, Node())
        return node


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """How far one reading has come."""

    node: Node
    frame: Frame | None = None
    """The frame it is in."""
    said: str = ""
    """The number that is complete, on the words behind it."""


class TokenTree:
    """The tree, to be walked token by token."""

    def __init__(self, wordings: Wordings, address: str, split: Callable[[str], Tokens]) -> None:
        """Build it.

        Args:
            wordings: What may be said.
            address: What stands in front of everything; empty for nothing.
            split: Gives the tokens of a text.
        """
        front = f"{address}, " if address else ""
        split = _word_by_word(split)
        self._root = Node()
        for phrase in wordings.phrases:
            self._root.grow(split(written(front + phrase))).phrase = phrase
        self._numbers, self._first_numbers, self._tails = Node(), Node(), Node()
        for said, number in wordings.numbers.items():
            for text in (said, str(number)):
                self._numbers.grow(split(text)).phrase = said
                self._first_numbers.grow(split(written(text))).phrase = said
        self._bare: list[Frame] = []
        self._behind: dict[str, Node] = {}
        for frame in wordings.frames:
            if frame.before or front:
                self._root.grow(split(written(front + frame.before))).frames.append(frame)
            else:
                self._bare.append(frame)
            if frame.after:
                tail = self._behind.setdefault(frame.after, Node())
                tail.grow(split(frame.after)).phrase = frame.after

    def start(self) -> list[Place]:
        """Give the places where every reading begins."""
        return [Place(node=self._root), *(Place(node=self._first_numbers, frame=each) for each in self._bare)]

    def following(self, place: Place) -> Iterator[tuple[int, Place]]:
        """Give every token that may come next, and where it leads."""
        for token, node in place.node.children.items():
            yield token, Place(node=node, frame=place.frame, said=place.said)
        for frame in place.node.frames:
            for token, node in self._numbers.children.items():
                yield token, Place(node=node, frame=frame)
        if place.frame is not None and place.frame.after and place.node.phrase and not place.said:
            for token, node in self._behind[place.frame.after].children.items():
                yield token, Place(node=node, frame=place.frame, said=place.node.phrase)

    @staticmethod
    def complete(place: Place) -> tuple[str, Frame | None, str] | None:
        """Give what is complete at a place: the text, its frame and the number as it is said."""
        if not place.node.phrase:
            return None
        if place.frame is None:
            return place.node.phrase, None, ""
        said = place.said or place.node.phrase
        is_whole = not place.frame.after or place.said
        return (place.frame.around(said), place.frame, said) if is_whole else None


def _word_by_word(split: Callable[[str], Tokens]) -> Callable[[str], Tokens]:
    """Split each word once; no token reaches over the space between two."""
    known: dict[str, Tokens] = {}

    def tokens(text: str) -> Tokens:
        found: list[int] = []
        for word in text.split():
            if word not in known:
                known[word] = split(word)
            found += known[word]
        return tuple(found)

    return tokens


def written(text: str) -> str:
    """Write a text as a model that was taught on prose does: a capital first, and for "I"."""
    text = f"{text[:1].upper()}{text[1:]} ".replace(" i ", " I ")
    return text.strip()
