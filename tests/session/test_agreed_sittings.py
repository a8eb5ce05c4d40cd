"""Whole sittings are as they were agreed on, letter for letter: all that is said, and all that is kept in the journal.

The texts in `tests/session/agreed/` only notice change. Their scripts were typed at random, most of them what makes sense
where the sitting stands: steps, counts right and wrong, answers to what is asked, remedies, every wording there is, undo,
jumps, another evening, another size, a line changed in the file. Some of them were read when they were kept, not
all; whether what is said is right is judged elsewhere, by knitters with loops of their own (`tests.mending`, `tests.hunt`), by the invariants of any
sitting (`tests.invariants`) and by hand. A sitting is a script that anybody may add to.

Of conversations on a mistake (`mistakes-…`) the knitter is `tests.mending`'s, who answers by what hangs on her needles.
"""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from stepper.session.machine import Considered
from stepper.session.state import State
from tests import mending
from tests.agreed import compare
from tests.agreed_sitting import kept_rows, plan_of, replayed, shortened, state_rows

AGREED = Path(__file__).parent / "agreed"
FIXTURES = Path(__file__).parents[1] / "fixtures"
SITTINGS = sorted(path.stem for path in AGREED.glob("*.txt") if not path.stem.startswith("mistakes-"))
MENDED = ("hat", "socks", "shawl", "cardigan", "mittens")
"""Garments that mistakes are made in: round, with a heel in rows, flat with every other row shaped, in pieces with short rows, with a thumb."""
TRIES = 80
"""Places tried for a mistake before it is left out."""


@pytest.mark.parametrize("name", SITTINGS)
def test_a_sitting_goes_as_agreed(name: str) -> None:
    """What she was told at a place last year she is told there today, unless somebody meant it to change."""
    path = AGREED / f"{name}.txt"
    script = [line[2:] for line in path.read_text(encoding="utf-8").splitlines() if line.startswith("> ")]
    compare(path, replayed(name.partition("-")[0], script))


@pytest.mark.parametrize("garment", MENDED)
def test_a_mistake_is_talked_about_as_agreed(garment: str) -> None:
    """The way that is said first, and each question before it, is what stands between her and ripping."""
    plan = plan_of((FIXTURES / f"{garment}.yaml").read_text(encoding="utf-8"), None)
    assert plan is not None
    piece = mending.piece(garment, plan)
    rows: list[str] = []
    for number, kind in enumerate(mending.KINDS * 2):
        dice = random.Random(f"agreed {garment} {number}")
        knitter, midway = mending.KNITTERS[number % 3], number % 4 == 3
        tried = (
            mending.mend(piece, kind, knitter, dice, midway=midway, tell=_told) for _ in range(TRIES)
        )
        outcome = next((each for each in tried if each is not None), None)
        rows.append(f"== {kind}, answers {knitter}{', midway' * midway}")
        rows += outcome.log if outcome else ["no room"]
        rows.append(f"first {outcome.first}, right {outcome.right}, {outcome.harm}" if outcome else "")
    as_ever = f"at='{mending.AT}', heard=None"
    plain = [shortened(row.replace(f"{as_ever}, ", "").replace(as_ever, "")) for row in rows]
    compare(AGREED / f"mistakes-{garment}.txt", plain)


def _told(considered: Considered, was: State, now: State) -> list[str]:
    return [*kept_rows(considered), *state_rows(was, now)]


def test_no_text_is_left_over() -> None:
    """A sitting nobody knits any more must not be kept as if it were agreed on."""
    expected = {*SITTINGS, *(f"mistakes-{garment}" for garment in MENDED)}
    assert {path.stem for path in AGREED.glob("*.txt")} == expected
