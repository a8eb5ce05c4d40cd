"""Rounds of even changes for the ear, and what is said of their look."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.craft.even.manners import Manner
from stepper.language.even_words import LOOKS, NAMES, said_evenly
from stepper.language.phrasing import say_round
from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan, Round
from stepper.project.reader import read_project
from tests.plans import phrase, plan
from tests.project.samples import project


def even(
    before: int, line: str, manner: Manner = Manner.SAYABLE, *, rows: bool = False
) -> tuple[Plan, Round]:
    """Compile a cast-on and one line; give the round."""
    begin = "Work flat.\nKnit 1 row." if rows else "Join in the round."
    read = read_project(project(f"Cast on {before} sts.\n{begin}\n{line}"))
    assert read.project is not None
    garment = compile_plan(replace(read.project, spacing=manner)).plan
    assert garment is not None
    return garment, garment.rounds[-1]


@pytest.mark.parametrize(
    ("before", "line", "said"),
    [
        (
            200,
            "Increase evenly to 256 sts.",
            "eight times: knit four, make one, four times; knit three, make one, three times",
        ),
        (
            225,
            "Increase evenly to 246 sts.",
            "knit eleven, make one, fifteen times; knit ten, make one, six times",
        ),
        (72, "Increase evenly to 90 sts.", "knit four, make one, eighteen times"),
        (80, "Decrease evenly to 70 sts.", "knit six, knit two together, ten times"),
        (60, "Decrease evenly to 30 sts.", "knit two together, thirty times"),
    ],
)
def test_a_round_is_a_phrase_times_a_number(before: int, line: str, said: str) -> None:
    """The counts are divided by hand: 8 × (4 × 4 + 3 × 3) = 200, 15 × 11 + 6 × 10 = 225, 18 × 4 = 72, 10 × 8 = 80."""
    garment, round_ = even(before, line)
    assert say_round(round_, garment) == said


def test_three_hundred_from_one_hundred_and_seventy_five_takes_a_breath() -> None:
    """It took 868 letters when every gap was told."""
    garment, round_ = even(175, "Increase evenly to 300 sts.")
    assert len(say_round(round_, garment)) < 100


def test_the_manners_differ_in_words_alone() -> None:
    """The same stitches leave the same count; in two runs is told in two parts."""
    told = {}
    for manner in Manner:
        garment, round_ = even(200, "Increase evenly to 256 sts.", manner)
        told[manner] = say_round(round_, garment)
        assert (round_.before, round_.after, len(round_.shaping)) == (200, 256, 56)
    assert (
        told[Manner.RUNS] == "knit four, make one, thirty two times; knit three, make one, twenty four times"
    )
    assert len(set(told.values())) == 3


def test_a_purled_row_is_told_likewise() -> None:
    """Of its own stitches."""
    garment, round_ = even(40, "Purl 1 row, increasing evenly to 48 sts.", rows=True)
    assert say_round(round_, garment).count("make one purlwise") <= 2
    assert "knit" not in say_round(round_, garment)


def test_a_printed_phrase_stays_as_it_is_printed() -> None:
    """What stands between the stars is the designer's; only an even change is put into words here."""
    garment, round_ = even(120, "*K4, m1; rep from * to end.")
    assert round_.instruction == "*k4, m1; rep from * to end"
    assert say_round(round_, garment) == "knit four, make one, thirty times"


def test_other_stitches_are_left_to_the_phrasing() -> None:
    """A round of two kinds of change, or of another stitch, is no phrase of gaps."""
    for text in ("k5 m1 k5 k2tog", "k5 m1 sl5", "k5:A m1 k5"):
        garment = plan(("body", [f"co{12 if 'k2tog' in text else 10}", text]))
        assert said_evenly(phrase(text), garment.rounds[1]) is None


def test_every_manner_has_a_name_and_says_what_it_does_to_the_look() -> None:
    """She chooses by the look."""
    assert set(LOOKS) == set(NAMES) == set(Manner)
    assert len(set(LOOKS.values())) == len(Manner)
