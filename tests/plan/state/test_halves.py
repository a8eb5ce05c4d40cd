"""Front and back of a body that waits as one for its yoke. Counts by hand; a seamless yoke from the hem up, common practice."""

from __future__ import annotations

import textwrap

import pytest

from stepper.plan.model import flatten
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

BODY = "CO 80 sts. Join in the round.\nKnit 4 rounds.\n"
UNDERARMS = "Next rnd: K6, slip these sts to waste yarn, k34 for front, k6 and slip these sts to waste yarn, k34 for back.\n"
SLEEVES = (
    "CO 30 sts. Join in the round.\nKnit 4 rounds.\n"
    "Next rnd: Place next 6 sts on waste yarn, k to end. 24 sts.\nCut yarn.\nMake a second sleeve.\n"
)
JOINED = "Joining rnd: Knit across left sleeve, front, right sleeve and back. 116 sts.\nKnit 1 round.\nBind off.\n"


def garment(*, body: str = BODY + UNDERARMS, sleeves: str = SLEEVES, yoke: str = JOINED) -> str:
    """Write a body, two sleeves and the yoke that joins them, each a section of its own."""
    text = project(body)
    for name, lines in (("sleeves", sleeves), ("yoke", yoke)):
        text += f"  - name: {name}\n    gauge: plain\n    work: |\n{textwrap.indent(lines, '      ')}"
    return text


def test_the_yoke_joins_what_the_body_and_both_sleeves_left_waiting() -> None:
    """By hand: 24 + 34 + 24 + 34 = 116 of 80 - 12 and 30 - 6 twice; no line says that anything waits."""
    plan = plan_of(garment())
    joined = next(each for each in plan.rounds if each.section == "yoke")
    taken = [(run.yarn, run.times) for run in flatten(joined.phrase) if run.stitch == "return"]
    assert taken == [("sleeves", 24), ("body", 34), ("sleeves, second", 24), ("body", 34)]
    waiting = {run.yarn: run.times for each in plan.rounds for run in flatten(each.phrase) if run.stitch == "hold"}
    assert waiting["body"] == 68


def test_underarms_that_were_bound_off_part_front_and_back_too() -> None:
    """By hand: 80 - 2 * 6 = 68 = 34 + 34."""
    off = "Next rnd: BO 6 sts, k34, BO 6 sts, k to end.\n"
    joined = next(each for each in plan_of(garment(body=BODY + off)).rounds if each.section == "yoke")
    assert [run.times for run in flatten(joined.phrase) if run.yarn == "body"] == [34, 34]


@pytest.mark.parametrize(
    "underarms",
    [
        "Next rnd: K6, slip these sts to waste yarn, k30, k6 and slip these sts to waste yarn, k38.\n",
        "Knit 1 round.\n",
        "Next rnd: K6, slip these sts to waste yarn, k to end.\n",
    ],
)
def test_halves_that_are_not_alike_are_not_guessed(underarms: str) -> None:
    """Which of 30 and 38 is the front the page has not said; without underarms nothing parts them."""
    yoke = "Joining rnd: Knit across left sleeve, front, right sleeve and back.\nKnit 1 round.\nBind off.\n"
    assert "front" in faults(garment(body=BODY + underarms, yoke=yoke))


def test_a_body_in_rows_does_not_wait_by_itself() -> None:
    """A back that nobody bound off is a line that was left out of the page."""
    body = "CO 40 sts. Work flat.\nKnit 4 rows.\n"
    sleeves = "CO 30 sts. Work flat.\nKnit 4 rows.\nBind off.\n"
    assert "are still others, 40 of them" in faults(garment(body=body, sleeves=sleeves, yoke="CO 8 sts.\nBind off.\n"))
