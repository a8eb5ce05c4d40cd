"""How long a step is to listen to, against what is really said."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from stepper.craft.even.manners import Manner
from stepper.language.phrasing import said_items
from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan, Round, flatten
from stepper.project.reader import read_project
from stepper.session.speech_length import LONGEST_S, MOST_WORDS, WORDS_PER_MINUTE, words_of
from stepper.session.steps import By, cut_into_steps
from stepper.sitting.project_file import load_project
from tests.plans import phrase, plan
from tests.project.samples import project

ROOT = Path(__file__).parents[2]
GARMENTS = sorted((*ROOT.glob("sample_projects/*.yaml"), *ROOT.glob("tests/report/garments/*.yaml")))


def even(before: int, after: int, manner: Manner) -> tuple[Plan, Round]:
    """Return a plan of a cast-on and an even round, in a manner."""
    word = "Increase" if after > before else "Decrease"
    read = read_project(project(f"Cast on {before} sts.\nJoin in the round.\n{word} evenly to {after} sts."))
    assert read.project is not None
    garment = compile_plan(replace(read.project, spacing=manner)).plan
    assert garment is not None
    return garment, garment.rounds[1]


@pytest.mark.parametrize("by", [By.ROUND, By.REPEAT, By.COLOUR])
@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_no_step_of_a_garment_takes_longer_than_eight_seconds(path: Path, by: By) -> None:
    """What is said of each step, with four words in front, at 150 words a minute; a longer one is lost while it is
    heard.

    Source: the rate lies in the middle of ordinary speech, 120 to 180 words a minute (check-values 9.11, 9.14).
    """
    garment = load_project(path).plan
    for phrase_, round_ in {(round_.phrase, round_.evenly): round_ for round_ in garment.rounds}.items():
        assert phrase_[0] == round_.phrase
        for part in cut_into_steps(round_, by):
            if not part.again:
                words = len(said_items(part.items, round_, garment).split())
                assert (words + 4) * 60 / 150 <= LONGEST_S, said_items(part.items, round_, garment)


@pytest.mark.parametrize("manner", Manner)
def test_no_step_of_an_even_round_takes_longer_in_any_manner(manner: Manner) -> None:
    """Also where the gaps are mixed stitch by stitch and the round takes a hundred words."""
    for before, after in ((175, 300), (294, 364), (225, 246), (163, 199), (398, 529), (127, 124), (398, 267)):
        garment, round_ = even(before, after, manner)
        cut = cut_into_steps(round_, By.ROUND)
        assert sum(part.end - part.start for part in cut) == round_.after
        for part in cut:
            said = said_items(part.items, round_, garment)
            assert part.again or len(said.split()) <= MOST_WORDS == LONGEST_S * WORDS_PER_MINUTE / 60 - 4


@pytest.mark.parametrize(
    "text",
    [
        "k5 m1 k5",
        "(k11 m1)x15",
        "k34 hold46:left_sleeve co8 k68",
        "(k1 p1)x40",
        "k5 k2tog k121 ssk",
        "sl1 k3 p121",
        "bo14 k3",
        "(k2 m1 (k3 m1)x4)x21",
    ],
)
def test_the_estimate_is_what_is_said(text: str) -> None:
    """Word by word, against the words of the phrasing; "then" between parts is not counted, inside a repeat it is."""
    items = phrase(text)
    garment = plan(("body", [f"co{sum(run.uses for run in flatten(items))}", text]))
    said = said_items(items, garment.rounds[1], garment).replace("; then ", "; ").split()
    assert words_of(items) == len(said)
