"""Mappings are read key by key, and nothing in them goes unnoticed."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.strategies import DataObject

from stepper.project.problems import Problem
from stepper.project.reader import read_project
from stepper.project.yaml_file.fields import FORMS, KEYS, Fields
from stepper.project.yaml_file.source import Mapping, read_nodes
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


@pytest.mark.parametrize("key", ["gauge", "tension"])
def test_what_is_shown_to_write_is_read_as_shown(key: str) -> None:
    """Who wrote one value where keys belong copies the example; it must not lead to the next problem."""
    rows = {"title": "Cowl", "sizes": "M", "knit": "M", "yarn": "chalk", key: "20 sts"}
    work = "sections:\n  - name: cowl\n    work: |\n      CO 20 sts.\n      Bind off.\n"

    def read(rows: dict[str, str]) -> list[str]:
        text = "".join(f"{name}: {value}\n" for name, value in rows.items()) + work
        return [problem.hint for problem in read_project(text).problems]

    shown = [f'Write it as "{name}: {FORMS[name]}".' for name in ("knit", "yarn", key)]
    assert read(rows) == shown
    assert read({**rows, "knit": FORMS["knit"], "yarn": FORMS["yarn"], key: FORMS[key]}) == []
    inner = {**rows, "knit": FORMS["knit"], "yarn": FORMS["yarn"], key: "{stockinette: 20 sts}"}
    assert read(inner) == shown[2:]


def test_wrong_shapes_are_told() -> None:
    """A list where a value belongs, a value where a list belongs, a value where keys belong."""
    opened, problems = fields("a: [1]\nb: 1\nc: 1\n")
    assert opened.text("a") is None
    assert opened.items("b") == []
    assert opened.mapping("c") is None
    assert len(problems) == 3


SWITCHBACK = (Path(__file__).parents[2] / "fixtures" / "switchback.yaml").read_text(encoding="utf-8")
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


@pytest.mark.parametrize(
    ("written", "form"),
    [("[S, M, L]", "S (M, L)"), ("[one]", "one"), ("{a: b}", "S (M, L)"), ("\n  - 36\n  - 40", "36 (40)")],
)
def test_sizes_written_as_a_list_are_shown_as_a_pattern_prints_them(written: str, form: str) -> None:
    """ "Must be a single value" alone told nobody how several sizes are one value."""
    found, problems = fields(f"sizes: {written}\n")
    assert found.text("sizes") is None
    assert [problem.hint for problem in problems] == [f'Write it as "sizes: {form}".']
