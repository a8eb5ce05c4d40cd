"""Mappings are read key by key, and nothing in them goes unnoticed."""

from __future__ import annotations

from stepper.project.fields import Fields
from stepper.project.problems import Problem
from stepper.project.source import Mapping, read_nodes


def fields(text: str) -> tuple[Fields, list[Problem]]:
    """Open the outermost mapping of a text."""
    root, problems = read_nodes(text)
    assert isinstance(root, Mapping)
    return Fields(root, "the file", problems), problems


def test_a_key_given_twice_names_the_first() -> None:
    """YAML alone would let the second win silently."""
    _, problems = fields("name: a\nsize: 1\nname: b\n")
    assert problems[0].line == 3
    assert "line 1" in problems[0].message


def test_a_key_nobody_asked_for_is_answered_with_the_nearest() -> None:
    """A misspelt key would otherwise be ignored."""
    opened, problems = fields("titel: a\n")
    opened.text("title")
    opened.close()
    assert 'Did you mean "title"?' in problems[0].hint


def test_a_missing_key_is_told_once() -> None:
    """With the line to add."""
    opened, problems = fields("a: 1\n")
    opened.text("title", required=True)
    assert "Add a line `title: …`." in problems[0].hint


def test_wrong_shapes_are_told() -> None:
    """A list where a value belongs, a value where a list belongs, a value where keys belong."""
    opened, problems = fields("a: [1]\nb: 1\nc: 1\n")
    assert opened.text("a") is None
    assert opened.items("b") == []
    assert opened.mapping("c") is None
    assert len(problems) == 3
