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


@pytest.mark.parametrize("size", SLIPOVER)
def test_a_slipover_divided_at_the_armholes(size: str) -> None:
    """Divided by binding off, one part left on the needle; the front worked as the back, its sides mirrored."""
    project = read_project((WHOLE / "slipover.yaml").read_text(encoding="utf-8")).project
    assert project is not None
    index = project.sizes.index(size)
    plan = compile_plan(replace(project, size=index)).plan
    assert plan is not None
    counts = {
        section: [after for after, _ in groupby(round_.after for round_ in rounds)]
        for section, rounds in groupby(plan.rounds, lambda round_: round_.section)
    }
    assert counts == SLIPOVER[size]
    assert plan.rounds[-1].held == {}
    back = [round_ for round_ in plan.rounds if round_.section == "back" and not round_.held.get("back neck")]
    front = [round_ for round_ in plan.rounds if round_.section == "front"]
    shoulder = next(at for at, round_ in enumerate(back) if round_.runs[0].stitch == "bo")
    left = next(at for at, round_ in enumerate(front) if round_.runs[0].stitch == "bo")
    assert left - 1 == shoulder, "the front has as many rows below the shoulder as the back, besides that of its return"
    assert [round_.flat for round_ in plan.rounds if round_.section == "neckband"][1:-1] == [False] * 5
