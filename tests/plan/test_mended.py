"""What a changed row works where it stands, and when it does not fit there. All rows are invented."""

from __future__ import annotations

import pytest

from stepper.plan.mended import Worked, find_worked
from tests.project.samples import project

MARK = "# LOOK (row 9 of the text)."


def tried(row: str, behind: str = "Bind off.", above: str = "Knit 1 round.") -> Worked | None:
    """Try a row in a hat of 44 stitches, in the place of one that is open."""
    text = project(f"Cast on 40 (44, 48) sts.\nJoin in the round.\n{above}\n{MARK}\nNote: Twirl.\n{behind}", size="M")
    first = next(at for at, line in enumerate(text.split("\n"), start=1) if MARK in line)
    (found,) = find_worked(text, first, first + 1, [(["Note: … so it is", row], 1)], lambda _: "no picture")
    return found


def test_a_row_is_worked_where_it_stands() -> None:
    """As many rounds as it has, with the stitches before and after it."""
    found = tried("*K2tog, k2; rep from * to end. 30 (33, 36) sts.")
    assert found is not None
    assert (len(found.rounds), found.before, found.after, found.flat) == (1, 44, 33, False)
    plain = tried("Knit 4 rounds.")
    assert plain is not None
    assert (len(plain.rounds), plain.before, plain.after) == (4, 44, 44)


def test_a_row_that_works_no_stitch_has_no_rounds() -> None:
    """It fits all the same."""
    assert tried("Break yarn.") == Worked()


def test_below_stitches_that_are_not_known_it_is_not_known_what_it_comes_to() -> None:
    """It fits as well as any line there."""
    assert tried("Knit 4 rounds.", above="Twirl 2 loops.") == Worked(known=False)


@pytest.mark.parametrize(
    ("row", "behind"),
    [
        ("Twirl the walls.", "Bind off."),
        ("*K2tog, k2; rep from * to end. 34 (38, 42) sts.", "Bind off."),
        ("*K2tog, k5; rep from * to end.", "Bind off."),
        ("*K2tog, k2; rep from * to end.", "Knit 1 round. 40 (44, 48) sts."),
        ("Bind off.", "Knit 1 round."),
    ],
)
def test_what_does_not_fit_comes_to_nothing(row: str, behind: str) -> None:
    """Not read, another count than is printed in it or below it, stitches left over, nothing left to knit."""
    assert tried(row, behind) is None


def test_what_did_not_fit_before_is_no_fault_of_the_row() -> None:
    """The row below never came out."""
    assert tried("Knit 4 rounds.", "K3, *k10; rep from * to end.\nBind off.") is not None


def test_a_file_that_is_none_has_nothing() -> None:
    """Nothing is tried in it."""
    assert find_worked("title: [", 1, 1, [(["Knit."], 0)], lambda _: "no picture") == [None]
