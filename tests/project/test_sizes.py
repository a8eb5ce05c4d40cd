"""The size line."""

from __future__ import annotations

import pytest

from stepper.project.sizes import (
    find_size,
    is_for_some,
    is_other_make,
    names_people,
    nearest_size,
    read_sizes,
    sizes_called,
    sizes_in_prose,
)


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("1 (2, 3, 4, 5, 6)", ("1", "2", "3", "4", "5", "6")),
        ("S (M, L)", ("S", "M", "L")),
        ("XS [S, M]", ("XS", "S", "M")),
        ("One size", ("One size",)),
        ("", ()),
    ],
)
def test_sizes_read_as_printed(text: str, names: tuple[str, ...]) -> None:
    """The order of the names is the order of every list."""
    assert read_sizes(text) == names


def test_a_size_is_found_whatever_the_case() -> None:
    """`m` means size M."""
    assert find_size("m", ("S", "M")) == 1
    assert find_size("XL", ("S", "M")) is None


@pytest.mark.parametrize(
    ("name", "sizes", "near"),
    [
        ("7", ("1", "2", "6"), "6"),
        ("0", ("1", "2", "6"), "1"),
        ("34", ("32", "36", "40"), "32"),
        ("medium", ("S", "M", "L"), "M"),
        ("XL", ("S", "M", "L"), "L"),
        ("2x", ("1X", "2X-3X", "4X"), "2X-3X"),
    ],
)
def test_an_unknown_size_is_answered_with_the_nearest(name: str, sizes: tuple[str, ...], near: str) -> None:
    """Numbers by their distance, letters by their words or their spelling; all are listed."""
    told = nearest_size(name, sizes)
    assert told.startswith(f"The nearest is {near}; ")
    assert all(size in told for size in sizes)


def test_a_size_like_none_is_answered_with_all() -> None:
    """Nothing is guessed."""
    assert nearest_size("grandmother", ("1", "2")) == "The sizes are 1, 2."
    assert nearest_size("1", ()) == ""


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ("S, M and L", (0, 1, 2)),
        ("1, 2 and 3", (0, 1, 2)),
        ("1 & 4", (0, 3)),
        ("M-XL", (1, 2, 3)),
        ("2 to 4", (1, 2, 3)),
        ("second and extra large", (1, 3)),
        ("largest", (3,)),
    ],
)
def test_sizes_are_found_by_name_number_and_range(words: str, found: tuple[int, ...]) -> None:
    """A line for some sizes is worked in those alone."""
    assert sizes_called(words, ("S", "M", "L", "XL")) == (found, "")


def test_a_number_is_no_place_where_sizes_are_numbers() -> None:
    """Of the sizes 2, 4 and 6, "size 4" is the second, and there is no size 3."""
    assert sizes_called("4", ("2", "4", "6")) == ((1,), "")
    assert sizes_called("3", ("2", "4", "6")) == ((), "3")
    assert sizes_called("S and 5", ("S", "M")) == ((), "5")


@pytest.mark.parametrize(
    ("words", "places"),
    [
        ("the two largest", (2, 3)),
        ("smallest three", (0, 1, 2)),
        ("smaller sizes (S and M)", (0, 1)),
        ("M or L", (1, 2)),
        ("- (-, L, XL)", (2, 3)),
        ("second and third", (1, 2)),
    ],
)
def test_sizes_are_called_in_prose(words: str, places: tuple[int, ...]) -> None:
    """Garments of many sizes name some of them by where they stand in the list."""
    assert sizes_called(words, ("S", "M", "L", "XL")) == (places, "")


def test_more_sizes_than_there_are_are_missed() -> None:
    """"The four largest" of three is a slip of the page, and no size is guessed."""
    assert sizes_called("the four largest", ("S", "M", "L")) == ((), "the four largest")


@pytest.mark.parametrize(
    ("line", "names"),
    [
        ("For size S only, knit 2 rounds.", "S"),
        ("Only for sizes L and XL: knit 1 round.", "L and XL"),
        ("If you are making size S, M or L, knit 1 round.", "S, M or L"),
        ("For the two largest sizes only, knit 1 round.", "two largest"),
        ("For left front only, knit 1 row.", ""),
        ("For size S only, knit 2 rounds. Purl 1 round.", ""),
    ],
)
def test_sizes_before_a_comma_are_for_that_sentence(line: str, names: str) -> None:
    """What follows in another sentence may be for all sizes again, so the line is not read as a whole."""
    match = sizes_in_prose(line)
    assert (match is not None and match.group(match.lastindex or 0)) == (names or False)


@pytest.mark.parametrize(
    ("words", "found"),
    [("men", (1,)), ("Women", (0,)), ("ladies and men", (0, 1)), ("Women's", (0,)), ("children", ()), ("the men", (1,))],
)
def test_people_are_found_by_what_pages_call_them(words: str, found: tuple[int, ...]) -> None:
    """"Men:" is the size called "man". Words for people: common practice."""
    assert sizes_called(words, ("woman", "man"))[0] == found


def test_two_sizes_for_the_same_people_are_not_told_apart() -> None:
    """Where both sizes are a child's, "Kids:" names neither of them alone."""
    assert sizes_called("kids", ("child", "children")) == ((), "kids")


@pytest.mark.parametrize(
    ("line", "some"),
    [
        ("Grown-up size only: knit 1 round.", True), ("Child and adult sizes: knit 1 round.", True), ("Men: knit 1 round.", True),
        ("For size S: knit 1 round.", True), ("All sizes: knit 1 round.", False), ("Needle size: 4 mm.", False),
        ("Crown: knit 1 round.", False), ("Knit 1 round.", False),
    ],
)  # fmt: skip
def test_a_line_for_some_sizes_is_known_by_its_head(line: str, some: bool) -> None:
    """It is never cut: how far its head reaches nobody can tell from a part of it."""
    assert is_for_some(line) is some


def test_names_of_people_are_no_names_of_parts() -> None:
    """A label of people is for their size; "Thumb" is the name of a line."""
    assert names_people("Women and children")
    assert names_people("For a child")
    assert not names_people("Thumb")


@pytest.mark.parametrize(
    ("line", "sizes", "other"),
    [
        ("For a child: cast on 96 sts and work just three bands.", ("S", "M"), True),
        ("For a baby, cast on 48 sts.", (), True),
        ("For a child: cast on 60 sts.", ("child", "adult"), False),
        ("For a child: knit 4 rounds.", ("S", "M"), False),
        ("For a child: cast on 60 sts. For an adult: cast on 80 sts.", ("S", "M"), False),
        ("For a brim: cast on 60 sts.", ("S", "M"), False),
    ],
)
def test_a_piece_for_people_without_a_size_is_another(line: str, sizes: tuple[str, ...], other: bool) -> None:
    """It is told; what is worked in the middle of the piece for somebody is asked about."""
    assert is_other_make(line, sizes) is other
