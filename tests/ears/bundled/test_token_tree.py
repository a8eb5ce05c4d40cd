from __future__ import annotations

from stepper.ears.bundled.token_tree import Node, as_model_writes, build_token_tree


def walked(root: Node, way: str) -> str | None:
    """Walk the letters of a way; give the text that is complete at its end, or None off the tree."""
    node: Node | None = root
    for letter in way:
        node = node.children.get(ord(letter)) if node else None
    return node.text if node else None


def letters(text: str) -> tuple[int, ...]:
    """Take each letter for one token."""
    return tuple(map(ord, text))


def test_every_text_is_a_way_through_the_tree_and_beginnings_are_shared() -> None:
    """Nothing is complete but the texts; what begins alike takes the same way."""
    root = build_token_tree(["go on", "go back", "go"], letters)
    for text in ("go on", "go back", "go"):
        assert walked(root, text) == text
    assert walked(root, "go b") == ""
    assert walked(root, "no") is None
    assert len(root.children) == 1


def test_no_texts_are_an_empty_tree() -> None:
    """There is nothing to say and nowhere to go."""
    assert build_token_tree([], letters) == Node()


def test_a_text_is_written_as_prose_is() -> None:
    """A capital in front and for "I"."""
    assert as_model_writes("where am i") == "Where am I"
    assert as_model_writes("i count six") == "I count six"
