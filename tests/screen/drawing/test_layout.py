from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from stepper.screen.drawing.layout import Block, stack_blocks
from stepper.screen.drawing.rows import row, row_width, text_of


def _texts(blocks: list[Block], rows: int) -> list[str]:
    return [text_of(each) for each in stack_blocks(blocks, 20, rows)]


def test_what_matters_most_stays_when_room_is_short() -> None:
    """The lower rank goes in first, and the order stays that of the screen."""
    blocks = [
        Block(rank=2, rows=[row("head")]),
        Block(rank=0, rows=[row("round"), row("do")]),
        Block(rank=1, rows=[row("count")]),
    ]

    assert _texts(blocks, 4) == ["head", "round", "do", "count"]
    assert _texts(blocks, 3) == ["round", "do", "count"]
    assert _texts(blocks, 1) == ["round"]


def test_a_block_that_grows_takes_what_is_left_and_the_foot_stays_below() -> None:
    """It stays out where there is less than it needs."""
    blocks = [
        Block(rank=0, rows=[row("top")]),
        Block(rank=8, grown=lambda rows: [row("grown")] * rows, floor=2),
        Block(rank=0, rows=[row("foot")]),
    ]

    assert _texts(blocks, 5) == ["top", "grown", "grown", "grown", "foot"]
    assert _texts(blocks, 3) == ["top", "", "foot"]


def test_a_gap_gives_way_to_what_grows() -> None:
    """Empty rows are the first to go."""
    blocks = [
        Block(rank=0, rows=[row("top")]),
        Block(rank=9, rows=[()]),
        Block(rank=8, grown=lambda rows: [row("grown")] * rows, floor=2),
    ]

    assert _texts(blocks, 3) == ["top", "grown", "grown"]


@given(
    st.lists(st.tuples(st.integers(0, 9), st.integers(0, 6), st.none() | st.integers(1, 2)), max_size=8),
    st.integers(1, 20),
    st.integers(1, 20),
)
def test_the_stack_is_exactly_as_high_as_the_screen(
    made: list[tuple[int, int, int | None]], columns: int, rows: int
) -> None:
    """Whatever is in it."""
    blocks = [Block(rank=rank, rows=[row("x" * 30)] * high, least=least) for rank, high, least in made]
    shown = stack_blocks(blocks, columns, rows)

    assert len(shown) == rows
    assert all(row_width(each) <= columns for each in shown)
