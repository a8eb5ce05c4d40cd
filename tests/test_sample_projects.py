"""Every garment in `sample_projects/` is whole: each printed size can be knitted to its last stitch."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from stepper.language.phrasing import say_round
from tests.fixtures import plans_of
from tests.invariants import broken_invariants

SHIPPED = sorted((Path(__file__).parents[1] / "sample_projects").glob("*.yaml"))


@pytest.mark.parametrize("path", SHIPPED, ids=lambda path: path.stem)
def test_every_size_is_knitted_to_its_last_stitch(path: Path) -> None:
    """No size of a sample loses a stitch, and none is left on a needle or a holder at the end."""
    for plan in plans_of(path):
        assert broken_invariants(plan) == ()
        assert plan.rounds[-1].after == 0
        assert plan.rounds[-1].held == {}


@pytest.mark.parametrize("path", SHIPPED, ids=lambda path: path.stem)
def test_every_round_can_be_read_and_said(path: Path) -> None:
    """A round without words would leave the knitter sitting there."""
    plan = plans_of(path)[0]
    for round_ in plan.rounds:
        assert round_.instruction
        assert re.fullmatch(r"[a-z ,;'-]+", say_round(round_, plan)), say_round(round_, plan)
