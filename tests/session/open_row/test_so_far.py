"""While the pattern is not read to its end, nothing is said of its end."""

from __future__ import annotations

from dataclasses import replace

from stepper.session.answers import TellFar, TellTimeLeft
from stepper.session.open_row.so_far import as_far_as_read
from stepper.session.open_row.telling import TellSoFar
from stepper.session.pace.outlook import look_ahead
from tests.playbook import AT, check
from tests.session.open_row.evening import ROW, cowl, evening

FAR = TellFar(section="body", section_rounds=2, rounds=2, stitches=80)


def test_what_needs_the_whole_garment_is_left_out_and_what_looks_ahead_is_marked() -> None:
    """When it will be finished, whether the yarn lasts: worked out of a part, both would comfort her wrongly."""
    session = evening(cowl(), index=1)
    garment, time = session.plan, TellTimeLeft(outlook=look_ahead(session.plan, session.state, AT))
    assert as_far_as_read(garment, (FAR, time)) == (FAR, TellSoFar(row=ROW, known=True))
    assert as_far_as_read(garment, (time,)) == (TellSoFar(row=ROW, known=False),)
    assert as_far_as_read(replace(garment, open=None), (FAR, time)) == (FAR, time)


def test_it_is_said_in_words() -> None:
    """After the rounds that are known, or in place of an answer."""
    check(
        evening(cowl(), index=1),
        """
        > how far to go
        2 rounds left in body, 2 altogether, 80 stitches.
        That is as far as the pattern is read.
        > when will it be finished
        That is not known while a row of the pattern is not read.
        > how many stitches
        40 stitches, now and at the end.
        """,
    )
