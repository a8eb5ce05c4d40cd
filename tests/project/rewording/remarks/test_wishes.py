"""What is done only by her who wishes to, and look-alikes that are for all or for some. All are invented."""

from __future__ import annotations

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.remarks.idle import is_idle
from stepper.project.rewording.remarks.wishes import tells_wish
from tests.project.rewording.remarks.veiled_orders import VEILED_ORDERS
from tests.tables import each_row

WISHES = (
    "To avoid a hole, pick up one or two extra sts at each corner and knit them together with their neighbours on the next round.",
    "For a slouchier fit, knit as many rounds as you wish before going on.",
    "Pompom optional, but in my brother's case it makes the hat easier to spot on a ferry.",
    "If it's short, knit an inch without increases.",
    "If you want a turtleneck keep going until 8 inches and be cozy.",
    "If liked, the rope may be crossed the opposite way by holding the cable needle at the back.",
    "If preferred, work the rib in garter stitch instead.",
    "Too wavy? Pick up fewer.",
    "For a firmer sole, go down a size after the gusset.",
    "If you're one or two off nobody will know, just fudge an increase in the next round.",
    "If you'd rather not do short rows, leave this paragraph out and no one will say a word.",
    "Skip it if you hate short rows, the sweater will survive.",
    "If your person has a lot of hair, add another half inch.",
    "To adjust the length, do so here.",
    "Short rows (optional)",
    "Short rows (optional, but the back of your neck will thank you)",
    "Pockets - optional",
    "If your row gauge differs from mine, work more or fewer rounds here.",
    "Lengthen here if you wish.",
    "Feel free to leave out the bobbles.",
    "The bobbles can be left out if you do not care for them.",
    "To make a longer scarf, simply repeat the chart until you like the length.",
    "Add more rounds here for a deeper yoke.",
    "Stop sooner if you want a shorter cowl.",
    "If you don't like ties, leave them off.",
    "If your yoke does not reach your underarm yet, knit a few more rounds without increasing.",
    "If the sleeve is too short for you, work a few more rounds before the cuff.",
    "Want a slouchy hat? Add another full repeat here.",
    "If you are running short of yarn, you can skip this section.",
    "If you are low on yarn, leave out the last repeat.",
    "If you prefer a boat neck, skip the short rows.",
    "Skip this section if you like a boat neck.",
    "The short rows are optional.",
    "This section can be skipped.",
    "Long cuffs are lovely under a coat, so do make them longer if you feel like it.",
    "If the yoke feels short, add a few plain rounds here.",
    "If the body seems short, knit a few more rounds.",
    "If the neck is too wide, work it on smaller needles.",
    "If you like, place a marker after each repeat.",
    "If you wish, place a marker between the repeats.",
    "If you've got lots of yarn left you can do another 10 rows of the plain part here.",
    "If you have enough yarn, you can work another repeat.",
    "If you want a folded brim, make it twice as long.",
    "If you'd like a longer cuff, knit 10 more rounds.",
    "If you would prefer a deeper hem, work a few more rows.",
    "For a slouchy hat work on to rnd 24.",
    "For a longer hat, work 8 more rounds.",
    "For a deeper yoke, add 4 rounds.",
    "If your row gauge is off, add or remove repeats here.",
    "If you wish, work a row of crochet along the sides.",
    "If you find a hole at either corner, pick up an extra stitch there and work it together with its neighbor on the next rnd.",
    "Tip: to avoid holes, pick up an extra st on each side of the underarm and decrease it away in the next rnd.",
    "Alternatively, work 14 rnds of ribbing and fold the band to the inside.",
    'If you need more depth, knit without increasing until the yoke is 7 (7.25, 7.5)" deep.',
    "Make it longer if you like.",
    "Too long? Fewer rows are fine.",
    "Slouchier? Knit 10 more rounds.",
    "No marker? A loop of yarn will do.",
    "No cable needle? Use a double-pointed one.",
)

ORDERS = (
    "If you're two stitches short, then increase 2 in every round.",
    "If it's the second sleeve, knit 2 rounds more.",
    "If your child is a size 2, knit 10 rounds.",
    "For a firmer edge, slip the first st of every row.",
    "If liked, cast off here.",
    "If desired, bind off and begin again.",
    "If you want pockets, place 20 sts on hold now and knit to end.",
    "Short rows (optional, work them for sizes M and L)",
    "Short rows (optional; if not wanted, knit 2 rounds)",
    "No buttons? Then just rib.",
    "No buttons? Work the band in rib without buttonholes.",
    "Don't like pockets? Knit straight on.",
    "Out of yarn? Stop here.",
    "No beads? Purl those stitches instead.",
    "If you need a longer sleeve, add rows, otherwise cast off.",
    "Add 4 rounds for the second size.",
    "Add one stitch at each edge.",
    "Stop here for the short version and cast off.",
    "For a folded collar work 12 cm, for a single one 6 cm.",
    "For a folded brim work 12 cm.",
    "For a doubled neckband, knit 20 rounds.",
    "If you skipped the short rows, knit 6 rounds now.",
    "If your yoke does not reach your underarm yet, repeat rounds 3 and 4, otherwise go on.",
    "If you are short of yarn, skip the next row.",
    "Skip this round in the two smallest sizes.",
    "The short rows are left out for a boat neck.",
    "Want a slouchy hat? The second size is worked to Row 24.",
    "If you like it plain, skip to Row 5.",
    "If you are making the larger size, knit 4 more rounds.",
    "If you want the second size, cast on 80 sts.",
    "If you leave out the pocket, knit straight on over all stitches.",
    "If the fabric puckers here, work two more plain rounds.",
    "For the longer version, work 8 more rounds.",
    "For a larger size, knit 10 more rounds.",
    "For a neat edge, slip the first st of every row.",
    "For a neater edge, slip the first st of every row.",
    "If you want short sleeves, bind off; otherwise continue.",
    "If you like, knit 2 rounds, then continue with the crown.",
    "If you have 80 sts, knit 4 rounds.",
    "If you have enough stitches, begin the yoke.",
    "If the count is odd, k2tog once.",
    "To avoid a hole, pick up an extra stitch in the corner.",
    "If you want the garter version, skip to section 4.",
    "If the body is 40 cm long, bind off.",
    "If you need 2 more sts, increase them here.",
    "If you wish, bind off now and work the second sleeve.",
    "If you find a hole, pick up an extra stitch there.",
    "If you like, work row 3 as given for the back.",
    "For a snugger cowl, leave off 8 stitches at the cast-on.",
    "Alternatively, work k1, p1.",
)


@each_row("sentence", WISHES)
def test_what_is_done_only_by_her_who_wishes_to_is_only_said(sentence: str) -> None:
    """The pattern as printed is knitted without it, and she hears of it at its place."""
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
    assert not tells_wish(plain)
    assert not is_idle(made_plain(sentence))
