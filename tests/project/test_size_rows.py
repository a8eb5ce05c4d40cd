from __future__ import annotations

import pytest

from stepper.project.size_rows import find_sizes, infer_sizes, sizes_of


@pytest.mark.parametrize(
    ("rows", "sizes"),
    [
        (["Sizes: XS (S, M, L, 1X)"], ("XS", "S", "M", "L", "1X")),
        (["SIZE", "Small (Medium, Large)"], ("Small", "Medium", "Large")),
        (["Sizes 1 (2, 3, 4)"], ("1", "2", "3", "4")),
        (["To fit chest 81 [86, 91] cm"], ("81", "86", "91")),
        (["Size: 2-4 yrs (6-8 yrs)"], ("2-4 yrs", "6-8 yrs")),
        (["Size: one size"], ("one size",)),
        (["Sizes run small, so measure first."], ()),
        (["The size 4 needles"], ()),
    ],
)
def test_sizes_are_found_as_printed(rows: list[str], sizes: tuple[str, ...]) -> None:
    """Every list of the pattern is read by them."""
    assert find_sizes(rows) == sizes


def test_without_names_the_lists_tell_how_many_sizes() -> None:
    """Most lists of a pattern are whole."""
    assert infer_sizes(["Cast on 8 (9, 10) sts.", "K4 (5, 6).", "Hold 3 (4)."]) == 3
    assert infer_sizes(["Knit."]) == 1
