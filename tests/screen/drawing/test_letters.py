from __future__ import annotations

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.screen.drawing.letters import (
    HIGH,
    LETTERINGS,
    LETTERS,
    NARROW,
    can_draw,
    draw_letters,
    enlarge,
    letterings_for,
)
from stepper.screen.drawing.rows import row_width, text_of
from stepper.screen.drawing.style import Terminal
from tests.screen.scenes import terminal

_WIDE = max(len(rows[0]) for rows in LETTERS.values())


def _padded(letter: str) -> str:
    return "".join(row.ljust(_WIDE, ".") for row in LETTERS[letter])


def test_no_two_letters_look_alike() -> None:
    """Across a room an a must not be an o: every two differ in two places of the field or more."""
    for one, other in combinations(filter(str.isalnum, LETTERS), 2):
        assert sum(a != b for a, b in zip(_padded(one), _padded(other), strict=True)) >= 2, (one, other)


def test_every_field_is_whole() -> None:
    """A row too short would shift all that follows it."""
    for letter, rows in LETTERS.items():
        assert len(rows) == HIGH, letter
        assert len({len(row) for row in rows}) == 1, letter
        assert set("".join(rows)) <= {"#", "."}, letter


def test_letters_and_digits_are_all_there() -> None:
    """One letter that is missing would leave the whole step small."""
    assert can_draw("abcdefghijklmnopqrstuvwxyz ABCDEFGHIJKLMNOPQRSTUVWXYZ 0123456789 .,;:-'’()/?!")
    assert can_draw("café Ängelholm ñandú")
    assert not can_draw("毛糸")
    assert not can_draw("ß")


def test_a_word_is_what_it_is() -> None:
    """Read by eye."""
    drawn = draw_letters("Knit 2", LETTERINGS[-2], 40, terminal())
    assert drawn is not None

    assert [text_of(row).rstrip() for row in drawn] == [
        "█ ▄▀      ▀  ▄    ▀▀▀▄",
        "██   █▀▀▄ █ ▀█▀    ▄█▀",
        "█ ▀▄ █  █ █  █▄   ██▄▄",
        "",
    ]


def test_four_places_share_a_cell_in_the_narrow_size() -> None:
    """As high as the next size, half as wide."""
    narrow, normal = (draw_letters("purl", each, 60, terminal()) for each in (NARROW, LETTERINGS[-2]))
    assert narrow is not None
    assert normal is not None

    assert len(narrow) == len(normal) == 4
    assert max(map(row_width, narrow)) * 2 in (
        max(map(row_width, normal)),
        max(map(row_width, normal)) + 1,
    )


@given(st.text(alphabet="knit purl,.", max_size=60), st.integers(1, 120), st.integers(0, 50))
def test_large_text_never_leaves_its_room(text: str, columns: int, rows: int) -> None:
    """Whatever the window, it is as large as fits or not drawn at all."""
    drawn = enlarge(text, columns, rows, terminal())

    assert drawn is None or (len(drawn) <= rows and all(row_width(row) <= columns for row in drawn))


def test_the_largest_size_that_fits_is_taken() -> None:
    """One row less, and it is a size smaller."""
    heights = [len(enlarge("Knit", 200, rows, terminal()) or ()) for rows in (16, 15, 11, 7, 3)]

    assert heights == [16, 12, 8, 4, 0]


@pytest.mark.parametrize(
    ("blocks", "solid", "sizes"), [(True, True, 5), (False, True, 4), (False, False, 2)]
)
def test_a_terminal_gets_the_sizes_it_can_show(blocks: bool, solid: bool, sizes: int) -> None:
    """Quarter blocks need more than a code page; of ASCII only whole cells make letters."""
    window = Terminal(columns=200, rows=60, blocks=blocks, solid=solid)
    signs = {"█", "▀", "▄"} if solid else {"#"}

    assert len(letterings_for(window)) == sizes
    if not blocks:
        for lettering in letterings_for(window):
            drawn = draw_letters("Purl two", lettering, 200, window)
            assert drawn is not None
            assert set("".join(map(text_of, drawn))) - {" "} <= signs


def test_an_accent_is_drawn_above_a_small_letter() -> None:
    """A yarn called Blé is not Ble."""
    plain, accented = (draw_letters(word, LETTERINGS[-2], 40, terminal()) for word in ("e", "é"))

    assert plain != accented
