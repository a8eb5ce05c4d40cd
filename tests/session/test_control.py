from __future__ import annotations

from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, State
from tests.plans import final_increase
from tests.playbook import check, opened


def _at(index: int) -> Session:
    return Session(final_increase(), State(seq=1, knitting=Knitting(place=Position(index=index))))


def test_undo_and_redo_say_what_and_where() -> None:
    """The knitter hears what was taken back and where she now is."""
    check(
        _at(8),
        """
        > next step
        Round 2: knit all one hundred fifty six.
        > count is 156
        156, as it should be.
        > undo that
        Taken back: the count.
        > undo that
        Taken back: the step.
        Body, round 1 of 15: knit all one hundred fifty six.
        > undo that
        There is nothing to take back.
        > redo that
        Done again: the step.
        Body, round 2 of 15: knit all one hundred fifty six.
        > redo that
        Done again: the count.
        > redo that
        There is nothing to do again.
        """,
    )


def test_undo_takes_back_what_was_done_again() -> None:
    """Back and forth as often as she likes."""
    check(
        _at(8),
        """
        > by repeat
        By repeat, in plain rounds.
        Round 1: knit all one hundred fifty six.
        > undo
        Taken back: how much a step reads.
        Body, round 1 of 15: knit all one hundred fifty six.
        > redo
        Done again: how much a step reads.
        Body, round 1 of 15: knit all one hundred fifty six.
        > undo
        Taken back: how much a step reads.
        Body, round 1 of 15: knit all one hundred fifty six.
        """,
    )


def test_closed_ears_open_again() -> None:
    """What is typed meanwhile is done; start listening is heard."""
    check(
        _at(8),
        """
        > stop listening
        You begin body round 1.
        Not listening until you say: start listening.
        > stop listening
        I am not listening. Say: start listening.
        > start listening
        Listening.
        Body, round 1 of 15: knit all one hundred fifty six.
        > start listening
        I am listening.
        > where am i
        Body, round 1 of 15, at its beginning. 156 stitches on the needles.
        """,
    )


def test_enough_says_where_and_what_first_and_ends() -> None:
    """The last thing heard tonight is the first thing to do tomorrow."""
    check(
        _at(3),
        """
        > that is all for tonight
        Done so far: Yoke, round 1 of 6.
            First next time: Yoke, round 2 of 6, Final increase: knit five, make one;
            then knit eleven, make one, eight times.
        > next step
        This sitting is over.
        > enough
        This sitting is over.
        """,
    )


def test_enough_at_the_ends_of_the_garment() -> None:
    """Before the first stitch nothing is done yet; after the last nothing is left."""
    check(
        opened(final_increase()),
        "> enough\nFirst next time: Neckband, round 1 of 2: cast on two hundred twenty five.",
    )
    check(_at(23), "> enough\nEvery round is done. The garment is finished.")


def test_a_finished_garment_can_still_be_asked() -> None:
    """All done, she may want to look, go back or note something; only the work itself is refused."""
    check(
        _at(23),
        """
        > next step
        The garment is finished; no round is left.
        > where am i
        Finished: all 23 rounds done. No stitches on the needles.
        > how many stitches
        0 stitches, now and at the end.
        > how far to go
        Nothing is left: every round is done.
        > say again
        Every round is done. The garment is finished.
        > by repeat
        By repeat.
        """,
    )
