from __future__ import annotations

import pytest

from stepper.project.page.size_rows import infer_sizes, sizes_of
from tests.tables import each_row


@pytest.mark.parametrize(
    ("rows", "sizes"),
    [
        (["Sizes: XS (S, M, L, 1X)"], ("XS", "S", "M", "L", "1X")),
        (["SIZE", "Small (Medium, Large)"], ("Small", "Medium", "Large")),
        (["Sizes 1 (2, 3, 4)"], ("1", "2", "3", "4")),
        (["SIZES", "1 [2, 3] (4, 5) {6, 7}"], ("1", "2", "3", "4", "5", "6", "7")),
        (["Sizes: XS (S, M) [L, XL] {2XL}"], ("XS", "S", "M", "L", "XL", "2XL")),
        (["To fit chest 81 [86, 91] cm"], ("81", "86", "91")),
        (["Size: 2-4 yrs (6-8 yrs)"], ("2-4 yrs", "6-8 yrs")),
        (["Size: one size"], ("one size",)),
        (['Mitts {S, M, L}: {7, 7¾, 8½}" hand circumference'], ("S", "M", "L")),
        (["Motif (S, M): see the chart"], ()),
        (["Sizes run small, so measure first."], ()),
        (["The size 4 needles"], ()),
    ],
)
def test_sizes_are_found_as_printed(rows: list[str], sizes: tuple[str, ...]) -> None:
    """Every list of the pattern is read by them."""
    assert sizes_of(rows).names == sizes


def test_without_names_the_lists_tell_how_many_sizes() -> None:
    """Most lists of a pattern are whole."""
    assert infer_sizes(["Cast on 8 (9, 10) sts.", "K4 (5, 6).", "Hold 3 (4)."]) == 3
    assert infer_sizes(["Cast on 8 [9, 10] (11) {12} sts.", "K4 (5, 6)."]) == 5
    assert infer_sizes(["Cast on 8, 9, 10 (11, 12) sts.", "K4, 5, 5 (6, 6), pm."]) == 5
    assert infer_sizes(["Knit."]) == 1


@each_row(
    ("rows", "sizes"),
    [
        (["XS, (S, M, L)"], ("XS", "S", "M", "L")),
        (["Sizes: XS, (S, M, L)"], ("XS", "S", "M", "L")),
        (["Size S [M, L]"], ("S", "M", "L")),
        (["SIZES: XS[S:M:L]"], ("XS", "S", "M", "L")),
        (["Sizes: S-M-L"], ("S", "M", "L")),
        (["Sizes: XS–S–M–L"], ("XS", "S", "M", "L")),
        (["Sizes: S/M/L"], ("S", "M", "L")),
        (["Sizes: S/M (L/XL)"], ("S/M", "L/XL")),
        (["Size XS (S) M (L) XL"], ("XS", "S", "M", "L", "XL")),
        (["Sizes: Small, Medium, and Large"], ("Small", "Medium", "Large")),
        (["Size S M L XL", "Bust 80 90 100 110 cm"], ("S", "M", "L", "XL")),
        (["Sizes: S (M, L); to fit bust 81 (86, 91) cm"], ("S", "M", "L")),
        (["To fit bust 32 [34, 36] in"], ("32", "34", "36")),
        (["To fit bust: 32 (34, 36) in [81 (86, 91) cm]"], ("32", "34", "36")),
        (['To fit bust 32" (34", 36")'], ("32", "34", "36")),
        (["Sizes", "To fit bust", "32 [34, 36] in"], ("32", "34", "36")),
        (["To fit age 2 (4, 6) years"], ("2", "4", "6")),
        (["Sizes: 32-34 [36-38, 40-42]"], ("32-34", "36-38", "40-42")),
        (["Shoe sizes 36/37 (38/39, 40/41)"], ("36/37", "38/39", "40/41")),
        (["Sizes: XS (S, M,", "L)"], ("XS", "S", "M", "L")),
        (["Sizes: 1 (2, 3) Adult"], ("1", "2", "3")),
        (["Sizes: toddler (child, grown-up)"], ("toddler", "child", "grown-up")),
        (["Sizes: women (men)"], ("women", "men")),
        (["Size 8 needles"], ()),
        (["Finished size: 20 cm wide"], ()),
    ],
)
def test_a_list_of_sizes_is_read_however_it_is_printed(rows: list[str], sizes: tuple[str, ...]) -> None:
    """One size too few, and every list of the pattern is refused, or worse. Forms: common practice."""
    found = sizes_of(rows)
    assert (found.names, found.doubt) == (sizes, "")


def test_two_readings_are_settled_by_the_lists_of_the_pattern() -> None:
    """ "S/M" is one size between two, or two sizes."""
    assert sizes_of(["Size: S/M", "CO 80 (90) sts"]).names == ("S", "M")
    assert sizes_of(["Size: S/M", "CO 80 sts"]).names == ("S/M",)


@pytest.mark.parametrize(
    "rows",
    [
        ["Sizes S to XL"],
        ["Size: S–L"],
        ["Sizes: S (M, L)", "CO 80 (84, 88, 92) sts", "K4 (5, 6, 7)"],
        ["CO 8 (9) sts", "K 3 (4, 5)"],
    ],
)
def test_where_it_is_not_sure_no_size_is_named(rows: list[str]) -> None:
    """A wrong number of sizes gives every line the numbers of another."""
    found = sizes_of(rows)
    assert (found.names, found.number) == ((), 0)
    assert found.doubt.endswith(".")


def test_sizes_and_their_lists_in_groups_of_brackets() -> None:
    """Groups of sizes in brackets of their own are one list, as are the numbers behind them."""
    found = sizes_of(["XS (S, M) (L, XL)", "Cast on 77 (81, 83) (87, 91) sts.", "K14 (15, 15) [16, 17], pm."])
    assert found.names == ("XS", "S", "M", "L", "XL")
