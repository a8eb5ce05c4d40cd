"""What she hears of a row that is not read."""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.model import OpenKind, Plan, Proposed
from stepper.session.open_row.telling import TellOpenAhead, TellOpenRow, tell_ahead, tell_open_row
from stepper.session.state import Knitting, OpenWork, State
from tests.playbook import check
from tests.session.open_row.evening import ONE_ROUND, ROW, cowl, evening
from tests.tables import each_row


def test_an_evening_comes_to_the_row_counts_it_and_asks_back() -> None:
    """She knits by the words; the program does what a row counter does."""
    check(
        evening(cowl(), index=2),
        """
        > next step
        Body goes on with words that I do not read: Twirl the loops over the thumb. Knit it by its words: next step after each round, then the count. Is nothing knitted, say no.
        > next step
        Round 1 of these words is done. Say next step after the next, or the count if it was the last.
        > next step
        Round 2 of these words is done. Say next step after the next, or the count if it was the last.
        > count is 44
        2 rounds, 44 stitches after them: is that so?
        > no
        Round 2 of these words is done. Say next step after the next, or the count if it was the last.
        > where am i
        Body, at a row that I do not read. 40 stitches on the needles.
        > when will it be finished
        First the row that I do not read. To hear it, say: again.
        """,
    )


def test_what_the_page_says_is_proposed() -> None:
    """A yes is enough then; a no lets her knit and count."""
    check(
        evening(cowl(proposed=ONE_ROUND)),
        """
        > say again
        Body goes on with words that I do not read: Twirl the loops over the thumb. I take it for 1 round, 36 stitches after it as printed: is that so?
        > no
        Knit it by its words: next step after each round, then the count. Is nothing knitted, say no.
        > no
        Nothing is knitted for these words: is that so?
        > no
        Knit it by its words: next step after each round, then the count. Is nothing knitted, say no.
        > next step
        Round 1 of these words is done. Are they done, with 36 stitches as printed? Say yes, or the count.
        """,
    )


def lines_of(garment: Plan, *lines: int) -> Plan:
    """Return a garment whose rounds come from lines of the file."""
    rounds = (replace(each, line=line) for each, line in zip(garment.rounds, lines, strict=True))
    return replace(garment, rounds=tuple(rounds))


@each_row(
    ("lines", "told_at"),
    [((3, 4, 4), [1]), ((3, 3, 3), [0]), ((3, 4, 5), []), ((4, 3, 4), [])],
)
def test_it_is_announced_where_the_line_above_it_begins(lines: tuple[int, ...], told_at: list[int]) -> None:
    """The row may speak of what she knits now; a single round is over soon enough."""
    garment = lines_of(cowl(), *lines)
    told = [index for index in range(4) if list(tell_ahead(garment, index))]
    assert told == told_at
    assert list(tell_ahead(replace(garment, open=None), told_at[0] if told_at else 0)) == []
    for index in told:
        assert list(tell_ahead(garment, index)) == [TellOpenAhead(row=ROW)]


def test_a_count_is_asked_for_once_as_many_rows_are_done_as_are_printed() -> None:
    """Before that another one is to be knitted; a count that is not printed is hers to say."""
    two = replace(ROW, proposed=replace(ONE_ROUND, rows=2))
    kept = replace(ROW, proposed=Proposed(kind=OpenKind.ROWS, rows=1, stitches=40))

    def fits(row: TellOpenRow) -> bool:
        return row.fits

    for rows, row, found in ((1, two, False), (2, two, True), (3, two, False), (1, kept, False), (1, ROW, False)):
        state = State(knitting=Knitting(open=OpenWork(rows=rows)))
        assert fits(tell_open_row(row, state)) is found
