"""Garments written as pages are printed, worked from the cast-on to the last stitch in every size.

The counts were worked out by hand from the page, before its plan was looked at; what each wording means is common
practice.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import groupby
from pathlib import Path

import pytest

from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.project.reader import read_project

WHOLE = Path(__file__).parent / "project" / "whole"

SLIPOVER = {
    "1-2": {
        "body": [128, 112, 56],
        "back": [54, 52, 50, 48, 42, 36, 30, 24, 0],
        "front": [56, 54, 52, 50, 48, 18, 17, 16, 15, 14, 13, 12, 6, 0, 30, 18, 17, 16, 15, 14, 13, 12, 6, 0],
        "neckband": [72, 0],
        "armhole edgings": [64, 0],
    },
    "5-6": {
        "body": [152, 132, 66],
        "back": [64, 62, 60, 58, 56, 49, 42, 34, 26, 0],
        "front": [66, 64, 62, 60, 58, 56, 22, 21, 20, 19, 18, 17, 16, 15, 8, 0, 34, 22, 21, 20, 19, 18, 17, 16, 15, 8, 0],
        "neckband": [78, 0],
        "armhole edgings": [74, 0],
    },
    "7-8": {
        "body": [160, 162, 142, 71],
        "back": [69, 67, 65, 63, 61, 59, 51, 43, 35, 27, 0],
        "front": [71, 69, 67, 65, 63, 61, 59, 24, 23, 22, 21, 20, 19, 18, 17, 16, 8, 0,
                  35, 24, 23, 22, 21, 20, 19, 18, 17, 16, 8, 0],
        "neckband": [82, 0],
        "armhole edgings": [80, 0],
    },
}  # fmt: skip

_SLEEVE = [57, *range(66, 91, 2), 85, 80, *range(78, 49, -2), 46, 42, 38, 34, 30, 26, 0]
PIECES = {
    "back": [119, 114, 109, *range(107, 94, -2), 86, 77, 68, 59, 49, 39, 0],
    "left front": [57, 52, *range(51, 44, -1), 37, *range(36, 27, -1), 19, 10, 0],
    "right front": [57, 52, *range(51, 44, -1), *range(36, 27, -1), 19, 10, 0],
    "sleeves": _SLEEVE,
    "sleeves, second": _SLEEVE,
}
"""In the first size. Mirrored, the stitches bound off for the neck fall on the row of its first decrease."""


def counts_of(plan: Plan) -> dict[str, list[int]]:
    """Return the counts of each section, each count once as long as it stays."""
    return {
        section: [after for after, _ in groupby(round_.after for round_ in rounds)]
        for section, rounds in groupby(plan.rounds, lambda round_: round_.section)
    }


def test_a_cardigan_in_pieces_of_the_old_style() -> None:
    """Ribs as given for the back, shaping on alternate rows, a front as the other reversed, sleeves made twice."""
    project = read_project((WHOLE / "pieces.yaml").read_text(encoding="utf-8")).project
    assert project is not None
    plan = compile_plan(project).plan
    assert plan is not None
    assert counts_of(plan) == PIECES
    fronts = [[round_ for round_ in plan.rounds if round_.section == name] for name in ("left front", "right front")]
    assert len(fronts[1]) == len(fronts[0]) + 1, "each step of a shoulder is at the beginning of a row: the other side's, a row later"
    assert [round_.needle_mm for round_ in fronts[0][:2]] == [2.75, 2.75]
    ribs = [sum({run.stitch for run in round_.runs} == {"k", "p"} for round_ in front) for front in fronts]
    assert ribs == [22, 22], "6 cm at 36 rows to 10 cm are 21.6 rows, and the rib ends with its second row"


@pytest.mark.parametrize("size", SLIPOVER)
def test_a_slipover_divided_at_the_armholes(size: str) -> None:
    """Divided by binding off, one part left on the needle; the front worked as the back, its sides mirrored."""
    project = read_project((WHOLE / "slipover.yaml").read_text(encoding="utf-8")).project
    assert project is not None
    index = project.sizes.index(size)
    plan = compile_plan(replace(project, size=index)).plan
    assert plan is not None
    assert counts_of(plan) == SLIPOVER[size]
    assert plan.rounds[-1].held == {}
    back = [round_ for round_ in plan.rounds if round_.section == "back" and not round_.held.get("back neck")]
    front = [round_ for round_ in plan.rounds if round_.section == "front"]
    shoulder = next(at for at, round_ in enumerate(back) if round_.runs[0].stitch == "bo")
    left = next(at for at, round_ in enumerate(front) if round_.runs[0].stitch == "bo")
    assert left - 1 == shoulder, "the front has as many rows below the shoulder as the back, besides that of its return"
    assert [round_.flat for round_ in plan.rounds if round_.section == "neckband"][1:-1] == [False] * 5
