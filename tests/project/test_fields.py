"""Mappings are read key by key, and nothing in them goes unnoticed."""

from __future__ import annotations

import re
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.strategies import DataObject

from stepper.project.fields import KEYS, Fields
from stepper.project.problems import Problem
from stepper.project.reader import read_project
from stepper.project.source import Mapping, read_nodes
from tests.project.slips import slips_of


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


SWITCHBACK = (Path(__file__).parents[1] / "fixtures" / "switchback.yaml").read_text(encoding="utf-8")
KEY_PLACES = [
    match
    for match in re.finditer(r"(?:(?<=^)|(?<=[\s{]))[a-z_]+(?=: |:$)", SWITCHBACK, re.M)
    if match.group() in KEYS
    and "#" not in SWITCHBACK[SWITCHBACK.rfind("\n", 0, match.start()) : match.start()]
]


@given(st.sampled_from(KEY_PLACES), st.data())
@settings(max_examples=80, deadline=None)
def test_a_misspelt_key_is_told_once_and_taken_for_the_one_meant(
    match: re.Match[str], data: DataObject
) -> None:
    """One slip in one key gives one problem, with the key that was meant; nothing else seems to be missing."""
    key = match.group()
    slip = data.draw(st.sampled_from([each for each in slips_of(key) if each not in KEYS]))
    text = SWITCHBACK[: match.start()] + slip + SWITCHBACK[match.end() :]
    (problem,) = read_project(text).problems
    assert problem.message.startswith(f"`{slip}` is not a key of")
    assert problem.hint == f'Did you mean "{key}"?'
