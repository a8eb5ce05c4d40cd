"""Lengths that the page leaves to the knitter and the file gives. Source: arithmetic at 28 rounds to 10 cm."""

from __future__ import annotations

import pytest

from stepper.project.keys.own_lengths import split_own
from stepper.project.reader import read_project
from tests.plan.test_compile import plan_of
from tests.project.samples import project

FOOT = "Cast on 40 sts.\nJoin in the round.\nKnit until body measures 5 cm less than desired length.\nBind off."


def given(work: str, lengths: str) -> str:
    """Write a file with lengths of her own."""
    return project(work).replace("charts:", f"lengths: {{{lengths}}}\ncharts:")


def problems(text: str) -> list[tuple[int, str]]:
    """Return the line and words of every problem of a file."""
    return [(found.line, found.message) for found in read_project(text).problems]


@pytest.mark.parametrize(
    ("words", "name", "less"),
    [
        ("desired length of piece", "piece", ""),
        ("desired length of foot__total__foot____ less 4 cm", "total foot", "4 cm"),
        ("the desired length of body_____underarm", "body to underarm", ""),
        ("desired length of hand__to_tip_of_little_finger", "hand to tip of little finger", ""),
        ("desired length of piece__finished_____", "total piece", ""),
        ("20 cm", "", "20 cm"),
    ],
)
def test_one_name_is_made_of_the_words(words: str, name: str, less: str) -> None:
    """The knitter finds in her file what the page calls it, each word once."""
    assert split_own(words) == (name, less)


def test_a_length_that_is_given_is_worked_and_told_with_its_line() -> None:
    """Worked by hand: 15 - 5 = 10 cm are 28 rounds; with the cast-on and the bind-off 30."""
    plan = plan_of(given(FOOT, "body: 15 cm"))
    assert len(plan.rounds) == 30
    (told,) = [warning.text for warning in plan.warnings if "lengths" in warning.text]
    assert told == "body: 15 cm by `lengths`, so 10 cm here."


def test_a_length_that_is_not_given_is_asked_for_where_it_stands() -> None:
    """It is never guessed; what to write is told."""
    (found,) = read_project(project(FOOT)).problems
    assert found.message == 'how long it is to be is left to you, and the file does not give "body".'
    assert found.hint == 'Write "lengths:" and below it "  body: 24 cm".'


@pytest.mark.parametrize(
    ("lengths", "told"),
    [
        ("body: 15 cm, sleeve: 40 cm", 'no line leaves the length of "sleeve" to you.'),
        ("body: 4 cm", '"body" is 4 cm: nothing is left of it.'),
        ("body: long", '"long" is not a length; write it as 32 cm or 12 1/2 in.'),
        ("body: 15 (16, 17) cm", "a length of yours is one length, of the size that you knit."),
        ('body: ""', 'how long "body" is to be is not said.'),
    ],
)
def test_a_length_that_cannot_be_taken_is_told_once(lengths: str, told: str) -> None:
    """A key that changes nothing would let her believe that the garment is as long as she wrote."""
    text = given(FOOT, lengths.replace("body: 15 (16, 17) cm", 'body: "15 (16, 17) cm"'))
    assert [message for _, message in problems(text)] == [told]


def test_a_part_that_names_no_length_is_called_by_its_section() -> None:
    """"Until piece measures desired length" under "body" asks for that of the body."""
    work = FOOT.replace("body measures 5 cm less than desired length", "piece measures desired length")
    assert len(plan_of(given(work, "body: 10 cm")).rounds) == 30


def test_a_length_of_hers_is_altered_like_any_other() -> None:
    """What she writes under `alterations` comes on top: 12 cm are 33.6 rounds."""
    text = given(FOOT, "body: 15 cm").replace("charts:", "alterations:\n  - body 2 cm longer\ncharts:")
    assert len(plan_of(text).rounds) == 2 + 34
