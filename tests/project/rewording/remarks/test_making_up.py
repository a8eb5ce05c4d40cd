"""What is done off the needles, and look-alikes on them. All are invented."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.remarks.idle import is_idle
from stepper.project.rewording.remarks.making_up import makes_up
from tests.hanging import hung_on, needs_clock
from tests.project.rewording.remarks.veiled_orders import VEILED_ORDERS
from tests.tables import each_row

MADE_UP = (
    "The garment should be washed and dressed on a board, or stretched while damp to the measurements, and must not be pressed.",
    "The finished shawl should be soaked and pinned out to size.",
    "Turn up hem at the picot round and slip-stitch on the wrong side.",
    "With the tail, close the small gap at the underarm.",
    "Turn the work inside out and weave in all ends.",
    "Dampen the piece, pin it to size and let it dry.",
    "Roll the brim up and tack it in place.",
    "Give a final press to all the seams.",
    "Join cast off sts at underarms.",
    "Run a blocking wire through the straight top edge and pin it out flat, then pull out the spine and pin each picot to a point.",
    "Leave it until it is bone dry.",
    "For the folded collar, turn it to the inside and slip stitch loosely in place.",
    "If you're using a pompom, tie it on through the center of the crown so you can take it off for washing.",
    "Fold the brim up twice.",
    "Take the tail to the inside and fasten off.",
    "Leave until bone dry.",
    "Leave until bone dry before unpinning.",
    "Leave to dry completely.",
    "Stitch bands in position.",
    "Slip stitch band neatly in place.",
    "Join cast-on and cast-off edges neatly.",
    "Cover with a damp cloth and leave until quite dry.",
    "Cover with damp cloths and leave to dry.",
    "Cover with clean, damp tea towels and leave until dry.",
    "Lay it between wet towels and let it dry.",
    "Lay the sweater between wet towels in the right measurements and let it dry.",
    "Use the tail at the base of the thumb to close any holes.",
    "Use the cast-on tail to sew up the hole.",
    "Use the beginning tail to sew up any holes at the base of the thumb.",
    "Fold collar in half to the inside and whipstitch the CO edge loosely to the first rnd of the yoke.",
    'Make a 3" pompom and sew to top, if desired.',
    "Cords: Cut 6 threads of 60 cm each.",
    "Pull 3 threads halfway through the tip of each flap and braid them.",
    "Tie a knot at the end.",
    "Gather the top of the sleeves and set into the armholes, arranging the fulness evenly on the shoulder.",
    "Stretch the beret over a dinner plate 10 ins. across, damp it well, and leave until quite dry.",
    "Finishing: stretch scarf according to measurements, moisten and let dry.",
    "Stretch it over a plate and let it dry.",
    "Graft the small openings under the arms if needed.",
    "Graft together the openings under the arms.",
    "Close the openings under the arms.",
    "Mark positions for buttons on button band, first to be 1 cm from lower edge, last 1 cm from top, and rem 4 (4: 5: 5) spaced evenly between.",
    "Mark the positions for 6 buttons, the first ½ in. from lower edge and the sixth 3 ins. below neck edge, with the others evenly spaced between; the 7th buttonhole comes in the neckband.",
    "Mark position of buttons on this band, first to come 1cm up from cast on edge, last one to be in the neckband 1.5cm above the safety pin, with the other 4 [4:5:5:5] spaced evenly between.",
    "With pins mark position for 5 buttons evenly spaced on border, first one 1 inch from lower edge, the last one 1½ inches below neck edge (6th buttonhole will be in neckband).",
    "Place markers for six buttons along the left edge, the first 1 cm from the bottom.",
    'Mark 7.5 (8, 8.5, 9, 9.5)" down from the shoulder on front and back and sew the sleeve between the markers, fitting the last inch or so into the underarm notch.',
    "Weave in ends vertically along a purl ridge, w/o splitting the plies.",
    "Weave in all ends, then wear it until the elbows go.",
    "Pin it out in a triangle and wait till it's dry.",
    "Squeeze out the water gently and roll in a towel.",
    "Roll in a towel to remove the water.",
    "Thread blocking wires through the top edge, pin out each picot, and let dry completely.",
    "Pin out each point.",
    "See ball band for washing instructions.",
    "Weave in ends on the inside, block on sock blockers if you own them.",
    "The welt seam may be left open for the bottom 7 cm.",
    "Turn the vest inside out.",
    "A gentle steam will help the eyelets open up.",
    "Steam lightly on the wrong side.",
    "Felt the slippers in the machine at 60 degrees, with a pair of old jeans.",
    "Line the bag with cotton cut to the size of the front.",
)

ORDERS = (
    "The edge should be knitted and pressed.",
    "The piece should be washed before the next row.",
    "Leave the sts until the collar is dry.",
    "Sew the seams, working the last 4 stitches together.",
    "Roll the brim up and knit both layers together.",
    "Lay the piece flat and pick up along the edge.",
    "Join cast off sts at underarms and k the sleeve sts.",
    "Turn it to the inside and cast off together with the cast-on edge.",
    "For the folded collar, knit 20 rounds, then turn it to the inside.",
    "Fold the brim and pick up 60 sts along the fold.",
    "Take the tail to the inside and knit 2 sts.",
    "Leave the stitches on a holder until the piece is dry.",
    "Stitch 4 is dropped.",
    "Slip stitch the first stitch of every row.",
    "Slip stitch pattern for 4 rows.",
    "Join the shoulders.",
    "Join cast-on and cast-off edges and pick up 40 sts.",
    "Use the tail to cast on 4 sts over the gap.",
    "Use the cast-on tail to work the gap in garter stitch.",
    "Fold the collar to the inside and knit the two edges together.",
    "Make a 3 cm strap.",
    "Cut the yarn and pull it through.",
    "Cut B.",
    "Pull the first stitch over the second.",
    "Pull 3 threads through the remaining stitches and fasten off.",
    "Graft the toe.",
    "Graft together the 10 underarm stitches.",
    "Close the openings under the arms by picking up 4 stitches.",
    "Mark the positions for 6 buttons and make the holes to match.",
    "Mark the 4th stitch.",
    "Mark position of buttons, then work the second band with a buttonhole at each mark.",
    "Place markers for the raglan.",
    "Place markers for six repeats.",
    "Mark 7 cm down from the shoulder and pick up 60 sts between the marks.",
    "Stretch it to 20 cm and knit on.",
    "Turn the sock inside out.",
    "Turn the work inside out.",
    "Roll the work and purl one row.",
    "Gather the top stitches.",
    "Line up the markers.",
    "Tie a knot in B.",
    "The seam stitches may be left open for 4 rows.",
    "Steam the strip and turn.",
)


@each_row("sentence", MADE_UP)
def test_what_is_done_off_the_needles_is_only_said(sentence: str) -> None:
    """It is told at the end of its part, and makes no round."""
    assert is_idle(made_plain(sentence))
    assert reads(sentence)


@each_row("sentence", ORDERS)
def test_a_look_alike_that_orders_is_not(sentence: str) -> None:
    """What is only said is not knitted: in doubt it stays unread."""
    assert not is_idle(made_plain(sentence))


@each_row("sentence", VEILED_ORDERS)
def test_no_order_in_other_words_is_taken_for_one(sentence: str) -> None:
    """Written before these forms, in the passive and of a third person."""
    plain = made_plain(sentence).strip(" .()")
    assert not makes_up(plain)
    assert not is_idle(made_plain(sentence))


@needs_clock
@pytest.mark.parametrize("again", ["1 ", "4 (", "first ", "a, ", "\u00bd "])
def test_a_word_or_number_said_again_is_told_at_once(again: str) -> None:
    """Where buttons sit is told by words in any order, each of which may come again."""
    assert not hung_on([makes_up], f"Mark positions for 6 buttons {again * 60}~")
