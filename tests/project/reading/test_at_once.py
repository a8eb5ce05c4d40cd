"""Two lines told to be worked at the same time. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.instructions import AtOnce, EdgesTogether, Line, Remark, Together
from stepper.project.problems import Span
from stepper.project.reading.at_once import ANNOUNCED, join_at_once
from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import Words, read_line

TOLD = "Armhole and neck are shaped at the same time."
ARMHOLE = "Armhole: Dec 1 st at armhole edge every RS row 3 times."
NECK = "Neck: Dec 1 st at neck edge every 4th row 2 times. 20 sts."
ROW, OTHER = "Every RS row 3 times: K1, ssk, k to end.", "Every 4th row 2 times: K to last 3 sts, k2tog, k1."


def lines_of(*texts: str) -> list[Line]:
    """Read lines."""
    found = [read_line(made_plain(text), lambda offset, length: Span(line=1, column=offset + 1, length=length), Words(sizes=0)).line for text in texts]
    return [line for line in found if line is not None]


def test_two_lines_below_become_one() -> None:
    """Both edges, or both rows written out, side by side; the count behind the second stays."""
    for above in (TOLD, f"Note: {TOLD}"):
        told, both = join_at_once(lines_of(above, ARMHOLE, NECK))
        assert isinstance(told.sentences[0], Remark)
        assert isinstance(both.sentences[0], EdgesTogether)
        assert len(both.sentences) == 2
    _, rows = join_at_once(lines_of(TOLD, ROW, OTHER))
    assert isinstance(rows.sentences[0], Together)


@pytest.mark.parametrize("below", [(ARMHOLE,), (ARMHOLE, "Knit 2 rows."), (ARMHOLE, OTHER), ("Knit 2 rows.", ARMHOLE, NECK), ()])
def test_where_two_such_lines_do_not_follow_it_stays(below: tuple[str, ...]) -> None:
    """What it says is refused when it is worked, rather than one thing worked behind the other."""
    first, *rest = join_at_once(lines_of(f"Note: {TOLD}", *below))
    assert isinstance(first.sentences[-1], AtOnce)
    assert rest == lines_of(*below)


def test_a_line_that_is_side_by_side_already_needs_nothing() -> None:
    """A note above it only tells of it."""
    line = "Dec 1 st at armhole edge every row 3 times, at the same time dec 1 st at neck edge every 4th row twice."
    assert join_at_once(lines_of(f"Note: {TOLD}", line)) == lines_of(f"Note: {TOLD}", line)


@pytest.mark.parametrize(
    ("words", "announced"),
    [
        ("Note that the front neck and the armholes are worked simultaneously", True),
        ("At the same time, armhole and neck are shaped", True),
        ("The next two sections are worked at the same time", True),
        ("Armholes and neck are shaped next", False),
        ("Both sleeves are worked at the same time", False),
    ],
)
def test_only_words_that_say_so_announce_it(words: str, announced: bool) -> None:
    """Two sleeves on one needle are no two shapings."""
    assert bool(ANNOUNCED.search(words)) == announced
