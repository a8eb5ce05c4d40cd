"""How far a fabric in the page's own words is known.

Source: that a row which keeps its number keeps it on any number is what the words are taken for; all else is
refused.
"""

from __future__ import annotations

from stepper.plan.drafts import Template
from stepper.plan.fabric.own_fabric import hers, in_own_words, keeps_its_count
from stepper.project.instructions import OwnWords, PrintedCount
from stepper.project.problems import Span
from stepper.project.stitchwork import Numbers, Until, Work

HERE = Span(line=7, column=1)
OWN = Template((), HERE, own=OwnWords("twist", None, None, HERE))
COUNTED = Template((), HERE, own=OwnWords("twist", None, PrintedCount(Numbers((64,), HERE), HERE), HERE))
PURL = Template((Until("p", "end", None, None, HERE),), HERE)
LACE = Template((Work("yo", Numbers((1,), HERE), None, HERE), Until("k", "end", None, None, HERE)), HERE)


def test_all_its_columns_are_the_knitters() -> None:
    """No other stitch is told of them."""
    assert hers(3) == [(("own", ""),)] * 3


def test_rows_without_a_count_and_plain_ones_keep_their_number() -> None:
    """A count is for the stitches it was printed for, and a row that shapes was never worked through."""
    assert keeps_its_count((OWN, PURL), [])
    assert not keeps_its_count((OWN, COUNTED), [])
    assert not keeps_its_count((OWN, LACE), [])


def test_one_row_alone_is_no_fabric_that_goes_on() -> None:
    """It may be meant once; which of the two nobody can tell."""
    alone = in_own_words((OWN,), 7, 3, [])
    assert (alone.cycle, alone.hers) == ((), False)
    assert alone.why == "the row in line 7 is in your own words"
    pair = in_own_words((OWN, PURL), 7, 3, [])
    assert (pair.cycle, pair.hers, pair.why) == ((OWN, PURL), True, "")
