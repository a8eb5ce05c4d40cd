"""Counts, patterns and ends that a page states in a sentence. The sentences are invented."""

from __future__ import annotations

import pytest

from stepper.project.instructions import BindOff, Forms, PrintedCount
from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.remarks.stated_synonyms import STATED_FACTS
from tests.project.reading.test_wording import read
from tests.tables import each_row


@each_row(
    ("printed", "count"),
    [
        ("You should have 132 sts in total, and the same number of sts for the front as for the back.", 132),
        ("When all the decreases are done, 22 sts remain for the shoulder.", 22),
        ("Once all increases have been worked there are 98 sts.", 98),
        ("After the last decrease 18 sts are left.", 18),
        ("At the end of the shaping you have 64 sts.", 64),
        ("20 sts remain when all the decreases are done.", 20),
        ("There should now be 60 stitches on your needles.", 60),
        ("By now there should be 54 sts left on your needle.", 54),
        ("The neck decreases are now finished and 24 sts remain.", 24),
        ("When you have finished the shaping you will be left with 12 stitches.", 12),
        ("Your total should be 210 sts.", 210),
        ("60 stitches should now be on the needle.", 60),
        ("At this stage you should have 168 stitches altogether: as many for the back as for the front.", 168),
        ("This gives you a total of 88 sts.", 88),
        ("(145 sts: 69 between each border and the marker, 1 spine st, and 3 sts in each border.)", 145),
        ("[149 sts: 71 sts each side of the spine, 1 spine st and 3 sts in each edge]", 149),
    ],
)
def test_a_count_in_a_sentence_is_a_count(printed: str, count: int) -> None:
    """It is checked like one in brackets behind a row."""
    line = read(printed).line
    assert line is not None
    assert [each.number.values for each in line.sentences if isinstance(each, PrintedCount)] == [(count,)]


@pytest.mark.parametrize(
    "printed",
    ["The 4 rows just worked form the pattern.", "From 1st to 2nd row forms rib.", "These 2 rows set the sts (st st with g st border at each front edge).", "The last 2 rows set the stitches as they will be worked."],
)
def test_rows_that_set_the_stitches_form_the_pattern(printed: str) -> None:
    """What comes "as set" goes on with them."""
    line = read(printed).line
    assert line is not None
    assert [type(each) for each in line.sentences] == [Forms]


def test_a_tail_through_the_last_stitches_ends_them() -> None:
    """It is an order on stitches, and never making up."""
    for printed in ("Thread the tail onto a tapestry needle, run it through the remaining sts twice, and pull tight.", "Thread the tail of A through the rem sts, pull snugly to close hole, and fasten off on WS."):
        line = read(printed).line
        assert line is not None
        assert any(isinstance(each, BindOff) for each in line.sentences)


@pytest.mark.parametrize(
    "printed",
    [
        "You should have 132 sts in total when 8 more have been increased.",
        "When all of the decreases are done, bind off the remaining 20 sts.",
        "When all of the decreases are done, 20 sts are put on a holder for the shoulder.",
        "These 2 rows set the sts and are repeated until piece measures 10 cm.",
        "60 stitches should now be put on the needle.",
        "You are now left with 16 sts to bind off.",
        "After Rnd 12 work 4 rounds plain.",
        "The first 2 rows set the rib.",
        "After Rnd 12, decrease to 160 sts.",
        "There should be 96 sts; if not, decrease to that number.",
        "(145 sts: 69 between each border and the marker, then k1)",
    ],
)
def test_an_order_around_a_number_is_no_count(printed: str) -> None:
    """Taken for a count, it would not be knitted."""
    assert not reads(made_plain(printed))


def test_every_row_reads_its_example() -> None:
    """A row whose example it does not change does nothing."""
    assert [row.example for row in STATED_FACTS if not row.pattern.search(row.example)] == []
