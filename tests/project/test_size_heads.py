"""Heads of lines that are for some sizes. Source: common practice of patterns in many sizes."""

from __future__ import annotations

import pytest

from stepper.plan.compile import compile_plan
from stepper.project.reader import read_project
from stepper.project.size_heads import cut_at_sizes, size_head
from tests.project.samples import project
from tests.tables import each_row

SIZES = ("XS", "S", "M", "L", "XL", "2XL")


@each_row(
    ("line", "sizes"),
    [
        ("XS only: Knit 1 rnd.", "XS"),
        ("XL and 2XL: Knit 4 rnds.", "XL 2XL"),
        ("For the two larger sizes, knit 2 rnds.", "XL 2XL"),
        ("First three sizes: Purl 1 rnd.", "XS S M"),
        ("Not for XS: Knit 1 rnd.", "S M L XL 2XL"),
        ("All sizes but the smallest: Knit 1 rnd.", "S M L XL 2XL"),
        ("Sizes L and up: Knit 1 rnd.", "L XL 2XL"),
        ("Size M \u2013 knit 2 rnds.", "M"),
        ("For size M, (K21, k2tog) 4 times. 88 sts.", "M"),
        ("XS/S: Knit 1 rnd.", "XS S"),
        ("L and up: Knit 1 rnd.", "L XL 2XL"),
        ("Two largest: Knit 1 rnd.", "XL 2XL"),
        ("In size 2XL, knit 2 rnds.", "2XL"),
        ("On size M, knit 2 rnds.", "M"),
        ("Medium - Knit 2 rnds.", "M"),
        ("(Sizes M and L only) Knit 1 rnd.", "M L"),
        ("[Size L only: Knit 1 rnd.]", "L"),
        ("Knit 1 rnd (size S only).", "S"),
        ("Next rnd (size L only): K2tog, k to end.", "L"),
        ("Next rnd: Small only: Knit.", "S"),
        ("Next row: Small\u2014(K3, inc in next st) 12 times.", "S"),
    ],
)
def test_whatever_marks_the_names_of_sizes_they_are_those(line: str, sizes: str) -> None:
    """Words that lead in and mark stand on either side of the names."""
    head = size_head(line, SIZES)
    assert head is not None
    assert " ".join(SIZES[place] for place in head.places) == sizes
    assert not head.missing


@pytest.mark.parametrize(
    "line",
    [
        "Rnd 1: M, k2.",
        "With size 4 needles: knit 2 rnds.",
        "For the back: knit 2 rnds.",
        "M: Knit 2 rnds.",  # the main colour, as soon
        "In M, knit 2 rnds.",
        "All sizes: Knit 1 rnd.",
        "For size M, knit 2 rnds. Knit 3 rnds.",  # the second may be for all
        "Other sleeve: Knit 1 rnd.",
        "(Size S, you just knit.)",  # tells of the row before it
        "L - Knit 3.",
        "Next row: M, k2.",
        "Next rnd (size L only): Knit. Rnd 3: Purl.",
        "Knit 1 rnd, then purl 1 rnd (size S only).",  # both, or the last
        "Rib (M).",
        "(2 sizes only) Knit 1 rnd.",
        "Back and front: Knit 1 rnd.",
    ],
)
def test_what_may_be_something_else_is_no_head_of_sizes(line: str) -> None:
    """A yarn, a needle, a part; or a sentence behind it that may be for all sizes."""
    assert size_head(line, SIZES) is None


def test_numbers_alone_are_rows_as_soon_as_sizes() -> None:
    """ "2 and 3:" may number rows."""
    assert size_head("2 and 3: Knit.", ("1", "2", "3")) is None
    assert size_head("Sizes 2 and 3: Knit.", ("1", "2", "3")) is not None
    assert size_head("Two: Knit.", ("One", "Two")) is None


def test_a_row_is_cut_before_each_further_head() -> None:
    """Each is for its own size; a sentence behind a head goes with it."""
    text = "XL only: (K11, k2tog) 8 times. 96 sts. 2XL only: (K5, k2tog) 16 times. Purl 1 rnd."
    stretches = [text[start:end] for start, end in cut_at_sizes(text)]
    assert stretches == [
        "XL only: (K11, k2tog) 8 times. 96 sts.", "2XL only: (K5, k2tog) 16 times. Purl 1 rnd."
    ]  # fmt: skip


@pytest.mark.parametrize(("size", "rounds"), [("S", 2), ("M", 3), ("L", 4), ("XL", 4)])
def test_all_other_sizes_are_those_not_named_right_above(size: str, rounds: int) -> None:
    """The cast-on counts as the first."""
    work = "Cast on 40 sts. Join in the round.\nSize S: Knit 1 rnd. Size M: Knit 2 rnds. All other sizes: Knit 3 rnds."
    made = compile_plan(read_project(project(work, sizes="S (M, L, XL)", size=size)).project)
    assert made.plan is not None
    assert len(made.plan.rounds) == rounds


@pytest.mark.parametrize(
    "lines",
    [
        "Knit 1 rnd.\nAll other sizes: Knit 3 rnds.",
        "Sizes S and M: Knit 1 rnd.\nSize M: Knit 1 rnd.\nAll other sizes: Knit 3 rnds.",
        "Sizes S and M: Knit 1 rnd.\nSizes L and XL: Knit 1 rnd.\nAll other sizes: Knit 3 rnds.",
    ],
)
def test_others_than_whom_must_be_clear(lines: str) -> None:
    """Where the lines above name no size, some twice or all of them, nobody can tell."""
    read = read_project(
        project(f"Cast on 40 sts. Join in the round.\n{lines}", sizes="S (M, L, XL)", size="M")
    )
    assert "which sizes the others are is not clear" in read.problems[0].message


def test_a_row_told_size_by_size_is_cut_and_worked_by_each() -> None:
    """Each size has its own row, in figures for it alone; a garment by age is as printed in older leaflets."""
    row = "Next row: 2-year size\u2014(K3, inc. in next st.) 12 times. 4-year size\u2014K3, (k3, inc. in next st.) 12 times, k3."
    assert [row[start:end][:8] for start, end in cut_at_sizes(row, ("2", "4"))] == ["Next row", "4-year s"]
    for size, cast_on, worked in (("2", 48, 60), ("4", 54, 66)):
        work = f"Cast on 48 (54) sts. Work flat.\nKnit 1 row.\n{row}"
        made = compile_plan(read_project(project(work, sizes="2 (4)", size=size)).project)
        assert made.plan is not None
        assert [one.after for one in made.plan.rounds] == [cast_on, cast_on, worked]
