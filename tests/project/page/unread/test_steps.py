"""The count after each row of a shaping in words, worked out by hand. Source of the readings: common practice."""

from __future__ import annotations

import pytest

from stepper.project.page.unread.steps import counts_by_words


@pytest.mark.parametrize(
    ("words", "before", "last", "counts"),
    [
        (
            "Rep dec loop every other rnd 3 (4) more times, then every rnd 2 (3) times.",
            32,
            12,
            (32, 28, 28, 24, 24, 20, 16, 12),
        ),
        ("Dec 1 loop at each end of the next 3 rows, and then at each end of every RS row twice.", 81, 71, (79, 77, 75, 75, 73, 73, 71)),
        ("Loosen 1 at the neck on the next 4 rows, then on the 3 following alternate rows.", 28, 21, (27, 26, 25, 24, 24, 23, 23, 22, 22, 21)),
        ("Twirl, casting off 3 sts. at the beginning of each of the next 2 rows.", 26, 20, (23, 20)),
        ("Inc 2 loops every 4th row 2 times.", 20, 24, (20, 20, 20, 22, 22, 22, 22, 24)),
        ("Cast off 7 (8) sts at the beginning of the next 2 rows, and 6 sts at the beg of the 2 rows after that.", 55, 0, (48, 41, 35, 29)),
    ],
)
def test_rows_told_in_words_are_counted(words: str, before: int, last: int, counts: tuple[int, ...]) -> None:
    """Each with as many stitches, to the count that is printed."""
    assert counts_by_words(words, before, last, 0, 2) == counts


@pytest.mark.parametrize(
    ("words", "before", "last"),
    [
        ("Dec 1 loop every other rnd 3 times.", 32, 0),  # no count says how many each
        ("Dec 1 loop every other rnd 3 times.", 32, 27),  # 5 stitches in 3 rows do not come out
        ("Dec 1 loop every other rnd 3 times.", 32, 32),
        ("Dec 1 loop every other rnd 3 (4, 5) times.", 32, 29),  # a list of three sizes
        ("Dec 1 loop every other rnd until it fits, then every rnd twice.", 32, 28),
        ("At the same time dec 1 loop every rnd twice.", 32, 30),
        ("Dec 1 loop on the next 2 rows, then on every RS row twice.", 32, 28),  # on which side it goes on is not known
        ("Cast off 7 sts at the beginning of the next 2 rows and cast off the rest.", 32, 0),
        ("Cast off 7 sts at the beginning of the next 2 rows.", 32, 19),
        ("Twirl.", 32, 30),
    ],
)
def test_what_is_not_all_told_is_not_worked_out(words: str, before: int, last: int) -> None:
    """She counts it herself then."""
    assert counts_by_words(words, before, last, 0, 2) == ()
