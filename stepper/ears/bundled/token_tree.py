"""Texts as a tree of a model's tokens, so that a beginning that several share is weighed once. No I/O."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import field

from stepper.records import dataclass

Tokens = tuple[int, ...]


@dataclass(slots=True)
class Node:
    """A place in the tree."""

    children: dict[int, Node] = field(default_factory=dict)
    """What each token that may follow leads to."""
    text: str = ""
    """The text that is complete here; empty for none."""


def build_token_tree(texts: Iterable[str], split: Callable[[str], Tokens]) -> Node:
    """Build the tree.

    Args:
        texts: Written as the model writes them.
        split: Returns the tokens of a text.

    Returns:
        Its root.
    """
    root = Node()
    for text in texts:
        node = root
        for token in split(text):
            node = node.children.setdefault(token, Node())
        node.text = text
    return root


def as_model_writes(text: str) -> str:
    """Write a text as a model trained on prose does: a capital first, and for "I"."""
    text = f"{text[:1].upper()}{text[1:]} ".replace(" i ", " I ")
    return text.strip()
