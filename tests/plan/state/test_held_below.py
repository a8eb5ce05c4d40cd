"""The rows below stitches that came back from hold. The wordings, and what they mean, are common practice."""

from __future__ import annotations

import pytest

from stepper.plan.model import Plan
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

FRONT = """Cast on 40 sts. Work flat.
Work 20 rows in st st.
Bind off 3 sts at beg of next 2 rows.
Work 10 rows.
Next row (RS): K17, place remaining 17 sts on holder, turn.
Next row: Purl.
{first}
Bind off.
With RS facing, rejoin yarn to held sts.
Next row (RS): Knit.
Next row: Purl.
{second}
Bind off."""


def _sides(plan: Plan) -> tuple[int, int]:
    """Return the rows of both sides from the dividing row on, the binding off left out."""
    back = next(at for at, row in enumerate(plan.rounds) if row.runs[0].stitch == "return")
    return back - 1 - (1 + 20 + 2 + 10), len(plan.rounds) - back - 2


@pytest.mark.parametrize(
    "length",
    ["Work until armhole measures 14 cm.", "Work until piece measures 24 cm from cast-on edge."],
)
def test_the_second_side_of_a_neck_is_as_long_as_the_first(length: str) -> None:
    """The armhole was opened below the held stitches; measured from where they came back it was 4 cm too long."""
    plan = plan_of(project(FRONT.format(first=length, second=length)))
    first, second = _sides(plan)
    assert first == second > 10


def test_what_measures_the_same_as_another_part_counts_the_rows_below() -> None:
    """As long as the back: not the whole length of it once more, from where the stitches came back."""
    back = "Cast on 40 sts. Work flat.\nWork 70 rows in st st.\nShape shoulders: Bind off 8 sts at beg of next 2 rows.\nBind off."
    like = "Work until front measures same as back to shoulders."
    file = project(back).replace("  - name: body", "  - name: back")
    lines = "".join(f"      {line}\n" for line in FRONT.format(first=like, second=like).splitlines())
    plan = plan_of(f"{file}\n  - name: front\n    work: |\n{lines}")
    front = [row for row in plan.rounds if row.section == "front"]
    back_row = next(at for at, row in enumerate(front) if row.runs[0].stitch == "return")
    assert back_row - 2 == 70
    assert 32 + len(front) - back_row - 2 == 70


def test_all_of_a_piece_or_what_came_back_is_not_guessed() -> None:
    """"Until piece measures 24 cm" may be either, and they differ by the rows below."""
    told = faults(project(FRONT.format(first="Work 20 rows.", second="Work until piece measures 24 cm.")))
    assert "nobody can tell whether the rows below them count" in told
    assert "from cast-on edge" in told
    short = FRONT.format(first="Work 20 rows.", second="Work until piece measures 6 cm.")
    assert plan_of(project(short)), "less than what is there already can only be measured from here"


def test_a_part_of_its_own_begins_where_its_stitches_come_back() -> None:
    """A thumb is measured from the hand, not from the cuff."""
    file = project("Cast on 40 sts. Join in the round.\nKnit 20 rounds.\nNext round: Place 12 sts on holder, k to end.\nBind off.")
    thumb = "Place held sts on needles. Join in the round.\nKnit until piece measures 10 cm.\nBind off."
    lines = "".join(f"      {line}\n" for line in thumb.splitlines())
    plan = plan_of(f"{file}\n  - name: thumb\n    work: |\n{lines}")
    rows = [row for row in plan.rounds if row.section == "thumb"]
    assert len(rows) == 1 + 28 + 1


def test_a_round_that_casts_on_between_held_stitches_has_a_cast_on_edge() -> None:
    """A hat goes on from its flaps, and is measured from what was cast on between them."""
    flap = "Cast on 12 sts.\nKnit 8 rows.\nPlace sts on holder."
    hat = "Cast on 14 sts, k across 12 sts of flap, cast on 14 sts. Join in the round.\n      Knit until hat measures 10 cm from cast-on edge.\n      Bind off."
    file = project(flap).replace("  - name: body", "  - name: flap")
    plan = plan_of(f"{file}  - name: hat\n    work: |\n      {hat}\n")
    assert len([each for each in plan.rounds if each.section == "hat"]) == 1 + 28 + 1
