"""Sentences that work no stitch, and their look-alikes that do. All are invented; what each is, is common practice."""

from __future__ import annotations

import pytest

from stepper.project.instructions import Remark
from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.remarks.idle import is_idle, is_imprint, orders_besides
from tests.plan.test_compile import plan_of
from tests.project.samples import project
from tests.tables import each_row

IDLE = (
    # facts
    "The Fern repeats over 6 rounds, the Twig over 4.",
    "The Ladder repeats over 4 rows, the Rope over 8 and the Diamond over 10, so keep three little counters going, or a pencil.",
    "The stitch count is unchanged at the end of every round.",
    "The number of stitches varies from round to round.",
    "The lace is a multiple of 8 sts plus 1 on each side of the center st.",
    "The rounds begin at the left side.",
    "The change of round lies between the 4th and 1st needle, this is the centre back.",
    "The hem is meant to roll a little.",
    "Sleeves drop a little in wear.",
    "A circular needle gives the stitches more room.",
    "The ferns look best in a smooth, light-coloured yarn.",
    "As you can see, the columns of purl run into the rib.",
    "Short rows give the back of the neck a little more height.",
    # what is to come
    "The next row makes the extra stitches for the ropes.",
    "Now comes the shaping of the neck.",
    "Shaping of the armholes comes next.",
    "This edge will later be folded to the inside.",
    # advice
    "If the fabric puckers here, do not worry: it will relax in the wash.",
    "If you are not sure which stitch is which, look at the photograph on the back page.",
    "Care should be taken not to pull the floats tight.",
    "Count your stitches often, as a yarn over is easily lost.",
    "The pocket is optional and may be left out without any harm to the fit.",
    # making up
    "When dry, trim ends.",
    "Join left back raglan and the ends of neckband.",
    "Cut the ribbon in two and thread one half through each hole.",
    "Press work as instructed on ball band, omitting ribbing.",
    "Do not press the garter stitch band.",
    "Leave until completely dry.",
)

ORDERS = (
    # the sign of a yarn that may be brought in
    "Here comes A.",
    "Now it's time for A.",
    "Next comes B.",
    # the same words as above, with something to knit
    "Repeat the Fern over the next 6 rounds.",
    "The Fern is worked over 6 rounds, the Twig over 4.",
    "Keep the stitch count unchanged by making one stitch for each one decreased.",
    "The stitch count is unchanged at the end of every round but the last, where 4 sts are added.",
    "The round now begins in the middle of these 4 stitches.",
    "The rounds begin 4 stitches before the marker.",
    "Let the hem roll by knitting 4 rounds.",
    "The hem is meant to be doubled.",
    "The next row makes 6 extra stitches for the ropes.",
    "The next row makes the extra stitches for the ropes as before.",
    "Now comes the shaping of the neck: cast off the centre 21 stitches.",
    "Shape the armholes next as for the back.",
    "This edge is now folded and each stitch knitted together with its loop of the cast-on.",
    "If the fabric puckers here, work two more plain rounds.",
    "If you are not sure of the length, add ten rounds.",
    "If you leave out the pocket, knit straight on over all stitches.",
    "The waist shaping is optional.",
    "Count 8 stitches in from each marker and decrease there.",
    "When dry, pick up and knit 48 stitches along the lower edge.",
    "Join raglan seams, then work the collar over the stitches left on holders.",
    "Join the shoulders.",
    "Join in the contrast yarn at the end.",
    "Run the yarn through the remaining 8 stitches.",
    "Do not cast off the garter stitch band.",
    "Leave these stitches until needed.",
    "Make a strap of 6 stitches, 40 cm long, and sew it to the side.",
    "Make a pompom, working 12 rounds of i-cord for the loop.",
    # facts that change what is knitted, how often or for whom
    "The sole is plain so that it wears well.",
    "The ferns are worked on right-side rows only.",
    "In the larger sizes the panels are worked once more.",
    "Both fronts are worked alike, the second with all shaping reversed.",
    "The steek is knitted in alternate colours.",
    "The cuff is doubled in length for the child's version.",
    "The shoulder slopes over four rows, six stitches at a time.",
    "The yoke is now worked back and forth.",
    "A stitch holder takes the next 14 stitches.",
    "The last repeat ends with k2 instead of k4.",
    "No round of the first colour is repeated.",
    "The left front is identical to the right.",
    "The left front mirrors the right.",
    "The cable is mirrored on the left front.",
    "The collar is reversible rib.",
    "The hem looks pretty in blue.",
    "Run a thread through the top stitches and draw up.",
)

TAILS = (
    ", then knit 2 rows", ", and cast off", ": purl one round", ", ending with a WS row", ", leaving 8 sts", " and decrease there", " until 10 sts remain",
    " on every round", " twice", ", so purl it", " and pick up one stitch", " except on the last row", " and work 4 more rounds", " as for the back",
    ", but only on right-side rows", " unless you work the short version", "; repeat on the other side", " over the next 8 stitches", " and turn",
    ", placing a marker", ", slipping the first stitch", ", k2", " after 4 rows", " and graft the toe", " and continue plain", " and go on to the heel",
)  # fmt: skip
"""What makes an order of any sentence it stands behind."""


@each_row("sentence", IDLE)
def test_a_sentence_that_works_no_stitch_is_only_said(sentence: str) -> None:
    """Nobody has to be asked what is knitted by it."""
    assert is_idle(made_plain(sentence))
    assert reads(sentence)


@each_row("sentence", ORDERS)
def test_a_sentence_that_orders_is_never_only_said(sentence: str) -> None:
    """What is only said is not knitted: in doubt it stays unread."""
    assert not is_idle(made_plain(sentence))


@each_row("sentence", IDLE)
def test_an_order_behind_such_a_sentence_is_never_said_with_it(sentence: str) -> None:
    """The second half of a sentence orders as well as the first."""
    plain = made_plain(sentence).rstrip(".")
    assert [tail for tail in TAILS if is_idle(f"{plain}{tail}.")] == []


def test_a_sentence_that_works_no_stitch_stands_beside_the_round_it_is_printed_at() -> None:
    """It is heard where it helps, and makes no round of its own."""
    rounds = plan_of(project("CO 40 sts. Join in the round.\nKnit 2 rounds.\nThe hem is meant to roll a little.\nKnit 1 round.")).rounds
    assert [each.after for each in rounds] == [40, 40, 40, 40]
    assert [each.remarks for each in rounds][2:] == [(), ("The hem is meant to roll a little",)]


def test_what_a_leaflet_says_of_itself_is_an_imprint() -> None:
    """It is of no use while she knits."""
    assert all(is_imprint(each) for each in ("Printed in England.", "Have you a question about this pattern?", "All rights reserved."))
    assert not is_imprint("Printed in England, then knit 2 rows.")
    assert not is_imprint("Knit 2 rows.")


@pytest.mark.parametrize(
    "line",
    [
        "Weave in all ends, ending with a WS row.",
        "Press the pieces lightly, leaving 8 sts.",
        "Trim ends and graft the toe.",
        "Steam the strip and turn.",
        "Fasten off, leaving the loop of 8 chain at each corner.",
        "Pin out 5 points and put a stitch back on the needle at each.",
        "Close the gap beneath each arm by joining the 10 held stitches with those of the body.",
        "Join raglan seams, then work the collar over the stitches left on holders.",
    ],
)
def test_rows_of_the_tables_take_no_order_out_either(line: str) -> None:
    """Their open ends let pass whatever stands behind "weave in all ends"."""
    assert orders_besides(made_plain(line))
    made = plan_of_line(line)
    assert made != "remark"


def plan_of_line(line: str) -> str:
    """Return "remark" if a line is read and only said."""
    from stepper.project.problems import Span
    from stepper.project.reading.wording import Words, read_line

    read = read_line(line, lambda _offset, _length: Span(line=1, column=1), Words(sizes=1)).line
    said = read is not None and all(isinstance(each, Remark) for each in read.sentences)
    return "remark" if said else "line" if read is not None else ""
