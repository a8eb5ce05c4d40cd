"""Rows that are for some sizes: heads, jumps and where they end. Source: common practice of patterns in many sizes."""

from __future__ import annotations

import pytest

from stepper.project.draft import FileDraft
from stepper.project.problems import Span
from stepper.project.size_blocks import SizeBlocks, jump_of, names_sizes

SIZES = ("S", "M", "L", "XL")


def worked(*texts: str, behind: str = "") -> tuple[list[tuple[str, str]], list[str]]:
    """Return each row that is knitted with the sizes it is for, and the problems."""
    draft = new_draft()
    rows = [(text, Span(line=number, column=1, length=len(text))) for number, text in enumerate(texts, 1)]
    blocks = SizeBlocks(SIZES, rows, behind, draft)
    knitted = [row for row in rows if not row[0].startswith("#")]
    found = []
    for at, row in enumerate(knitted):
        if not blocks.take(row, knitted[at + 1 :]):
            found.append((row[0], " ".join(SIZES[size] for size in blocks.sizes()) or "all"))
    return found, [problem.message for problem in draft.problems]


def new_draft() -> FileDraft:
    """Return a draft of nothing, to hold problems."""
    return FileDraft(text_lines=[])


def test_a_jump_sends_its_sizes_on_to_the_heading() -> None:
    """The lines between are for the others, and an open head ends where all come together."""
    found, problems = worked(
        "Knit 1 rnd.", 'Sizes S and M: proceed to "Hem band".', "Knit 2 rnds.", "Sizes XL:", "Knit 3 rnds.",
        "# HEM BAND", "Knit 4 rnds.",
    )  # fmt: skip
    assert problems == []
    assert [sizes for _, sizes in found] == ["all", "L XL", "XL", "all"]


def test_a_jump_may_go_to_the_section_behind() -> None:
    """Then what is left of this section is for the others."""
    found, problems = worked("Size S: skip ahead to Body.", "Knit 2 rnds.", behind="body")
    assert (found, problems) == ([("Knit 2 rnds.", "M L XL")], [])


@pytest.mark.parametrize("place", ["Hem", "the border", "rnd 12"])
def test_a_jump_to_nowhere_is_told(place: str) -> None:
    """Nobody could tell where the size goes on."""
    _, problems = worked(f"Size S: proceed to {place}.", "Knit 2 rnds.", "# YOKE", "Knit 1 rnd.")
    assert problems or place == "rnd 12"
    assert jump_of("Size S: proceed to rnd 12.", SIZES) is None


def test_a_head_ends_at_a_heading_for_all_sizes() -> None:
    """So does one with a range that the page prints with a long dash."""
    found, problems = worked("Sizes L–XL only:", "Knit 2 rnds.", "# Border (all sizes)", "Knit 1 rnd.")
    assert (found, problems) == ([("Knit 2 rnds.", "L XL"), ("Knit 1 rnd.", "all")], [])


def test_a_line_that_says_all_sizes_ends_the_head() -> None:
    """What it says is for all of them."""
    found, problems = worked("Size L only:", "Knit 2 rnds.", "All sizes: Knit 1 rnd.", "Knit 3 rnds.")
    assert [sizes for _, sizes in found] == ["L", "all", "all"]
    assert problems == []


def test_a_head_without_an_end_and_all_sizes_in_a_jump_are_told() -> None:
    """The end of the first is not said, and the second contradicts itself."""
    assert "ends is not said" in worked("Size L only:", "Knit 2 rnds.")[1][0]
    assert worked("Size S: proceed to Hem.", "All sizes:", "Knit 1 rnd.", "# Hem", "Knit 1 rnd.")[1]


def test_a_line_that_no_size_comes_to_is_told() -> None:
    """All were sent on before it."""
    assert worked("Sizes S-XL: proceed to Hem.", "Knit 2 rnds.", "# Hem", "Knit 1 rnd.")[1]


@pytest.mark.parametrize(
    ("row", "below", "names"),
    [
        ("Sizes L–XL only:", [], True),
        ("All sizes again:", [], True),
        ("Border (all sizes)", [], True),
        ("Work in rib for 2 cm (all sizes)", [], False),
        ("Sizes S and M: proceed to Hem.", ["HEM"], True),
        ("Sizes S and M: proceed to Hem.", ["Knit the hem."], False),
        ("Sizes S and M: knit 2 rnds.", ["HEM"], False),
    ],
)
def test_a_row_names_sizes_alone(row: str, below: list[str], names: bool) -> None:
    """A row with work of its own is a line of the pattern; a jump needs its place below."""
    assert names_sizes(row, SIZES, below) is names
