"""How long a step is to listen to, against what is really said."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from stepper.craft.even.manners import Manner
from stepper.language.aloud import spell_out
from stepper.language.numbers import words
from stepper.language.phrasing import said_items
from stepper.language.places import place_name, round_name
from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan, Round, flatten
from stepper.project.reader import read_project
from stepper.session.speech_length import (
    LONGEST_S,
    MOST_S,
    number_letters,
    seconds_of,
    seconds_of_items,
    seconds_of_lead,
    yarns_said,
)
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
    """What is said of each step with its place in front, against words really said; a longer one is lost while it is
    heard. `seconds_of` falls short of rendered speech by 0.7 s at most."""
    garment = load_project(path).plan
    for phrase_, round_ in {(round_.phrase, round_.evenly): round_ for round_ in garment.rounds}.items():
        assert phrase_[0] == round_.phrase
        for part in cut_into_steps(round_, by):
            if part.again:
                continue
            name = f"round {round_.number}" if round_.number > 1 else place_name(round_)
            number = f", repeat {part.repeat[0]} of {part.repeat[1]}" if part.repeat is not None else ""
            place = (name if not part.start else "" if number else f"at stitch {part.start}") + number
            said = spell_out(f"{place}: {said_items(part.items, round_, garment)}.")
            assert seconds_of(said) <= LONGEST_S - 0.2, said


@pytest.mark.parametrize("manner", Manner)
def test_no_step_of_an_even_round_takes_longer_in_any_manner(manner: Manner) -> None:
    """Also where the gaps are mixed stitch by stitch and the round takes a hundred words."""
    for before, after in ((175, 300), (294, 364), (225, 246), (163, 199), (398, 529), (127, 124), (398, 267)):
        garment, round_ = even(before, after, manner)
        cut = cut_into_steps(round_, By.ROUND)
        assert sum(part.end - part.start for part in cut) == round_.after
        for part in cut:
            said = said_items(part.items, round_, garment)
            assert part.again or seconds_of(f"Round two: {said}.") <= MOST_S


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
def test_the_estimate_by_stitches_is_that_of_what_is_said(text: str) -> None:
    """Against the words of the phrasing, with a comma behind the last."""
    items = phrase(text)
    garment = plan(("body", [f"co{sum(run.uses for run in flatten(items))}", text]))
    said = said_items(items, garment.rounds[1], garment)
    nothing_said = seconds_of("")
    assert seconds_of_items(items) == pytest.approx(seconds_of(f"{said},") - nothing_said, abs=0.6)


def test_a_yarn_counts_as_a_word_beside_the_stitch_or_in_its_place() -> None:
    """"Three chalk, two ember" has no "knit" in it; with a purl both are said."""
    plain, purled = phrase("k3 k2:CC"), phrase("k3 p2:CC")
    assert [yarns_said(each).value for each in (phrase("k3 p2"), plain, purled)] == ["unsaid", "instead", "beside"]
    alone, beside = (seconds_of_items(each, yarns_said(each)) for each in (plain, purled))
    assert alone < beside == pytest.approx(seconds_of("knit three carmine, purl two carmine,") - seconds_of(""), abs=0.2)


def test_the_letters_of_a_number_are_those_said() -> None:
    """Source: the numbers that the program says, which are compared with an independent library."""
    for number in (*range(1, 1000), 1000, 1019, 1200, 2468, 9999):
        assert number_letters(number) == len(words(number).replace(" ", "").replace("-", "")), number


def test_the_place_in_front_is_estimated_as_it_is_said() -> None:
    """The first round of a section with all of its name, a later one with its number and side alone."""
    garment = load_project(ROOT / "sample_projects" / "hat.yaml").plan
    for round_ in garment.rounds:
        name = place_name(round_) if round_.number == 1 else round_name(replace(round_, label=None, chart=None))
        assert seconds_of_lead(round_) == pytest.approx(seconds_of(f"{spell_out(name)}:"), abs=0.3), name
