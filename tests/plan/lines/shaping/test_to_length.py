"""Shapings that end at a length. Source: the gauge of the file, 28 rows to 10 cm, worked out by hand.

Common practice: "every 4th row until sleeve measures 8 cm" shapes on every fourth row that comes before the piece is
so long, and works the rows that are left without.
"""

from __future__ import annotations

import pytest

from stepper.craft.gauge import half_up
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

SLEEVE = "Cast on 40 (44, 48) sts. Work flat.\nWork 2 rows in st st.\n"
TAPER = "Inc 1 st each end of next and every foll 4th row until sleeve measures 5 (6, 8) cm."


def counts(work: str, size: str = "M") -> list[int]:
    """Return the stitches after every row behind the cast-on."""
    return [round_.after for round_ in plan_of(project(work, size=size)).rounds[1:]]


@pytest.mark.parametrize(
    ("size", "rows", "shaped"),
    # 5 cm are 14 rows, 6 cm 16.8, so 17, 8 cm 22.4, so 22; the third row is the first shaped one.
    [("S", 14, [3, 7, 11]), ("M", 17, [3, 7, 11, 15]), ("L", 22, [3, 7, 11, 15, 19])],
)
def test_it_is_shaped_as_often_as_fits_before_the_length(size: str, rows: int, shaped: list[int]) -> None:
    """Every size has its own length, so its own number of increases and of rows."""
    found = counts(SLEEVE + TAPER, size)
    assert len(found) == rows
    before = [{"S": 40, "M": 44, "L": 48}[size], *found]
    assert [at for at in range(1, rows + 1) if before[at] == before[at - 1] + 2] == shaped
    assert sum(after != was for was, after in zip(before, found, strict=False)) == len(shaped)


def test_the_counts_printed_behind_are_checked_in_every_size() -> None:
    """46 (52, 58) is right; one stitch pair off in one size is told with that size."""
    assert counts(f"{SLEEVE}{TAPER} 46 (52, 58) sts.")[-1] == 52
    told = faults(project(f"{SLEEVE}{TAPER} 46 (52, 60) sts."))
    assert "size L" in told
    assert "60 stitches" in told


def test_the_next_line_goes_on_from_that_length() -> None:
    """Even to 10 cm is 28 rows in all, however many of them were shaped."""
    assert len(counts(f"{SLEEVE}{TAPER}\nThen work even until sleeve measures 10 cm.")) == 28


@pytest.mark.parametrize("every", ["1.5 cm", "2 cm", "3 cm"])
def test_intervals_by_a_length_do_not_drift(every: str) -> None:
    """2 cm are 5.6 rounds: rounded one by one, five of them would be 30 rounds and not 28."""
    work = (
        "Cast on 60 sts.\nJoin in the round.\nKnit 2 rounds.\nDec rnd: K1, k2tog, k to last 3 sts, ssk, k1.\n"
    )
    found = counts(f"{work}Rep dec rnd every {every} until piece measures 14 cm.")
    apart = float(every.split()[0]) * 2.8
    # Three rounds of the 39 are worked where the first interval begins.
    expected = [3 + half_up(time * apart) for time in range(1, 20) if 3 + half_up(time * apart) <= 39]
    assert [at + 1 for at in range(1, 39) if found[at] < found[at - 1]] == [3, *expected]
    assert len(found) == 39


def test_it_ends_with_the_side_that_the_line_says() -> None:
    """17 rows would end on the right side: 5 cm and a wrong-side row are 14."""
    plan = plan_of(project(f"{SLEEVE}{TAPER[:-1]}, ending with a WS row.", size="M"))
    assert plan.rounds[-1].side == "WS"
    assert len(plan.rounds) - 1 in (16, 18)


@pytest.mark.parametrize(("ends", "left"), [("each end", 52), ("beg", 48)])
def test_how_often_is_told(ends: str, left: int) -> None:
    """Her rows may be of another height, and the number of increases is no longer the printed page's then."""
    plan = plan_of(project(SLEEVE + TAPER.replace("each end", f"at {ends}" if ends == "beg" else ends), size="M"))
    told = [caution.text for caution in plan.warnings]
    assert any("shaped 4 times to" in text and f"leaves {left} stitches" in text for text in told), told


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Inc 1 st each end of every 4th row until sleeve measures 0.5 cm.", "measures 0.5 cm already"),
        ("Inc 1 st each end of every 20th row until sleeve measures 4 cm.", "before the first such row"),
        (
            "Inc 1 st each end of every 4th row until sleeve measures 4 cm, then every 6th row twice.",
            "the last of its line",
        ),
        (
            "Inc 1 st each end of every 4th row until sleeve measures 4 cm, ending with row 3.",
            "ends with a right-side",
        ),
        (
            "Work 12 rows, at the same time inc 1 st each end of every 4th row until sleeve measures 4 cm.",
            "side by side",
        ),
    ],
)
def test_what_no_row_could_do_is_refused(line: str, told: str) -> None:
    """A length that is passed, or that lies before the first shaped row, is a slip in the file."""
    assert told in faults(project(SLEEVE + line))


def test_a_sleeve_is_not_made_longer_by_more_increases() -> None:
    """ "Sleeve 2 cm longer" would shape once more; where nothing is worked even, the rule finds nothing to alter."""
    text = project(f"{SLEEVE}{TAPER}").replace("sections:", "alterations:\n  - body 2 cm longer\n\nsections:")
    assert "finds nothing to alter" in faults(text)
