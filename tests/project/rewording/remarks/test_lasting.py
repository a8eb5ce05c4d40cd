"""Orders that last and change no stitch, and their look-alikes that do. All are invented; what each is, is common practice."""

from __future__ import annotations

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.remarks.idle import is_idle
from stepper.project.rewording.remarks.lasting import tells_lasting
from tests.project.rewording.remarks.test_idle import plan_of_line
from tests.project.rewording.remarks.veiled_orders import VEILED_ORDERS
from tests.tables import each_row

LASTING = (
    "When changing colours, twist the yarns on the wrong side to prevent holes.",
    "Floats of more than 5 stitches should be caught at the back.",
    "Always carry the dark yarn below the light one.",
    "The unused yarn is carried loosely up the side of the work.",
    "Let the idle colour run along loosely inside.",
    "Long floats are trapped on the wrong side.",
    "To avoid long floats, catch the yarn every fourth stitch.",
    "Take care that the floats do not get tight.",
    "Remember to keep your tension even.",
    "Don't forget to slip your markers as you go.",
    "Use a row counter to keep track of the rows.",
    "Count the rows as you go.",
    "When the stitches get too tight on the short needle, change to the long one.",
    "Work on dpns when it becomes necessary.",
    "Carry the yarn not in use loosely across the back of the work.",
    "Carry the colour not in use loosely on the wrong side and twist the yarns every 4 sts.",
    "Carry colours not in use loosely up the side of the work, twisting them round each other every other row.",
    "Strand the unused colour loosely behind the work.",
    "Take the yarn not in use up the side.",
    "Catch floats longer than 5 sts on the wrong side.",
    "Carry the yarn not in use loosely across the WS and catch any float longer than 5 sts.",
    "Twist the two yarns around each other where a float would pass behind more than five stitches.",
    "Twist yarns at each colour change to avoid holes.",
    "Do not cut the yarn between stripes.",
    "Keep the floats loose.",
    "Hold Colour B as the dominant colour throughout.",
    "Hold MC in your right hand and CC in the left to keep the contrasting colour dominant.",
    "Keep track of where you are in the stitch pattern.",
    "Keep careful track of your rows.",
    "Slip markers on every row.",
    "Slip markers as you come to them unless told otherwise.",
    "Move the markers up as you work, and keep track of the rows.",
    "Switch to a longer needle whenever the stitches feel crowded.",
    "Change to the short circular needle when there are enough stitches.",
    "Change to the short circular needle if you have not already done so.",
    "Swap to dpns when the circumference gets too small for the circular needle.",
    "Use a shorter needle as soon as the sts become too few for the circular.",
    "Work instructions in round brackets the number of times stated.",
    "Work the instructions in square brackets as many times as stated after the brackets.",
    "Where only one number is given, it applies to all sizes.",
)
ORDERS = (
    "Carry both yarns and knit them together.",
    "The yarn is drawn through.",
    "Slip every marker and the stitch with it.",
    "Place a marker every 10 stitches.",
    "Move the markers 2 sts in on every round.",
    "Change to the longer needle.",
    "Use the circular needle to work the round.",
    "Work the round on the circular needle if necessary.",
    "Keep the number of stitches even.",
    "Keep the increases on the right side.",
    "Count the rows and increase on every sixth.",
    "Break the yarn between the sleeves.",
    "While changing colour, cross the yarns and slip one stitch.",
    "To avoid holes, catch the yarn and knit it with the stitch.",
    "Work on dpns until 8 sts remain.",
    "Carry the yarn not in use up the side and knit 4 rows.",
    "Take the yarn over the needle.",
    "Take the yarn over.",
    "Bring the yarn to the front.",
    "Carry on with the yarn not in use for 4 rounds.",
    "Hold the two colours together for the next round.",
    "Hold Colour B double throughout.",
    "Twist the yarns at each stitch on the next round.",
    "Twist 2 sts at the beginning of every round.",
    "Keep track of where you are, and stay in pattern throughout.",
    "Keep track of the rows and decrease on every 8th.",
    "Slip the markers and the first stitch as you come to them.",
    "Switch to a longer needle and purl one round.",
    "Change to the short circular needle when there are 60 sts, then purl.",
    "Use a smaller needle whenever the lace is worked.",
    "Change to the larger needle when the stitches feel crowded.",
    "Swap to dpns when 40 sts remain and work the toe in pattern.",
    "Work instructions in round brackets 4 times.",
    "Where only one number is given, work it for the smallest size only.",
)


@each_row("sentence", LASTING)
def test_what_lasts_and_changes_no_stitch_is_told(sentence: str) -> None:
    """She hears of it where it is printed, and no row comes of it."""
    assert is_idle(made_plain(sentence))
    assert reads(sentence)


@each_row("sentence", ORDERS)
def test_an_order_on_stitches_in_the_same_words_is_none(sentence: str) -> None:
    """Only said, it would not be knitted."""
    assert not tells_lasting(made_plain(sentence).rstrip("."))
    assert plan_of_line(sentence) != "remark"


def test_no_veiled_order_is_only_said() -> None:
    """Neither as a sentence of its own nor by a row of the tables that takes words out of a line."""
    assert [each for each in VEILED_ORDERS if tells_lasting(made_plain(each).rstrip("."))] == []
    assert [each for each in VEILED_ORDERS if plan_of_line(each) == "remark"] == []
