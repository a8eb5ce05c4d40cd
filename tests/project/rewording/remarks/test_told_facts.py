"""Facts with numbers and what knitters find, and their look-alikes that order. All are invented."""

from __future__ import annotations

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.remarks.idle import is_idle
from stepper.project.rewording.remarks.told_facts import tells_fact
from tests.project.rewording.remarks.veiled_orders import VEILED_ORDERS
from tests.tables import each_row

FACTS = (
    "From here the crown adds about 5 cm.",
    "The gansey is the same back and front and can be worn either way round, so that wear is shared.",
    "I soaked mine in the sink and dried it flat by the woodstove.",
    "I use German short rows but any sort will do.",
    "Leave the yarn attached.",
    "Keep the working yarn hanging for later.",
    "You have now worked 8 raglan increases and 6 neck increases on either side.",
    "12 (13, 14) raglan decreases have been worked in all.",
    "The first two rounds will be tight at the corners.",
    "There will be a hole at each end, which can be pulled together with the tail.",
    "Make a note of how many reps so sock 2 matches.",
    "Short rows are given in the wrap-and-turn method, but any other may be substituted.",
    "There are 6 (7) panels of 20 sts.",
    "There are 14 (16, 18) reps of the pattern around.",
    "There are 14 (16, 18) repeats of the chart in the round.",
    "There will be 16 [22] repeats of the 12-stitch pattern across.",
    "There are now 10 repeats in each wing.",
    "There are 8 pattern repeats per round.",
    "There should be 12 repeats around.",
    "The pattern fits 12 (13, 14) times into the round.",
    "The repeat goes 22 (24) 26 times around.",
    "That's 9 (10, 11) decrease rnds.",
    "That is 24 more right-side rows.",
    "That makes 12 rows in all.",
    "This makes 8 repeats altogether.",
    "(28 [36] rows of lace worked.)",
    "(12 ridges worked.)",
    "You will have made 10 increase rounds.",
    "You should be able to count 14 (16, 18) slipped chain sts along each edge.",
    "You should see 14 slipped stitches along the side.",
    "You can count 12 loops along the edge.",
    "(If you like to count: you'll have made 9 [10 : 12] increase rounds.)",
    "There will be 10 stitches you haven't knitted, that's right.",
    "You never carry the other yarn for more than 7 stitches, so it's a good first yoke.",
    "No float is longer than 5 sts.",
    "I've knit this three times though and my sister knit the largest one.",
    "There are 14 sts between the two cables.",
    "Each time you work them you will add 6 sts.",
    "16 sts have been added.",
    "The marker indicates the center of the back neck.",
    "The marker shows the middle of the front.",
    "The markers mark the sides of the body.",
    "The back neck is raised with German short rows.",
    "The neck is now shaped with German short rows.",
    "The heel is turned with short rows.",
    "The heel is shaped with short rows, without a flap.",
    "The toe is shaped in wedges.",
    "The shoulders are shaped with short rows.",
    "Armhole shaping is now complete.",
    "The neck shaping is finished.",
    "The raglan shaping is now complete.",
    "All the increases are now done.",
    "The two wings always have the same number of stitches.",
    "Both halves have the same number of stitches.",
    "The armhole edge is left unshaped for ease of sewing.",
    "The charts are read from right to left on every round.",
    "Read every round from right to left.",
    "Read the chart from right to left.",
    "Read RS rows from right to left and WS rows from left to right.",
    "All rounds of the chart are read from right to left.",
    "Things happen at the same time!",
    "Several things happen at once here.",
    "This takes about as far as the second big bridge.",
    "This takes an evening or two.",
    "It took me three evenings.",
    "They're not left and right, you can wear them either way round!",
    "Beginners may find row 3 the hardest.",
    "Some knitters find the first round fiddly.",
    "You may find the first rows tricky.",
    "The first few rounds are fiddly, but it gets easier.",
    "The first round is the hardest.",
    "It's a lot of plain knitting but it's good for you.",
    "This may feel like a lot of plain knitting.",
    "Markers are not essential but save a lot of counting.",
    "The rib pulls in more than you might think.",
    "Wool with some grip is best for the colourwork.",
    "A smooth yarn is best for the cables.",
    "The ease allowed is 6 cm at the chest.",
    "It is easier to knit both sleeves at once on one long needle.",
    "A row counter is a help from here on.",
    "A lifeline is a good idea here.",
    "Here, I recommend running a lifeline.",
    "The slipped edge makes picking up easy.",
    "It does not matter on which side the ends come out.",
    "Try it on!",
    "Try the hat on.",
    "Mind you don't twist them!",
    "Be careful with the twist.",
    "Move the marker up now and then.",
    "Move the markers up as you go.",
    "Move the markers up with the work.",
    "Carry colours not in use loosely up the side of the work.",
    "Carry the unused yarn up the side.",
    'Your leg should be about 6 1/2" long.',
    'The hat measures approx 9 (10)" from the cast-on edge.',
    'Hat measures approx 9 (10)" from CO with brim unfolded.',
    "The jumper measures approx. 54-56-58-60-62-64 cm from the shoulder down.",
    "The sleeve measures approx. 45-44-43-42-40-39 cm from the division.",
    "The work is now approx. 17 (18) cm high.",
    "The piece should measure about 20 cm.",
    "The foot now measures 18 cm from the heel.",
    "Make a note of which row of the stripe sequence you ended on.",
    "Make a note of the row you ended with.",
    "Note which row of the pattern you ended on.",
    "Remember which pattern row you ended with.",
    "Write down how many rounds you knitted.",
)

ORDERS = (
    "The front is the same as the back.",
    "I cast on 80 sts.",
    "The crown takes 12 rounds.",
    "I dried it and knit 2 rounds.",
    "8 increase rounds.",
    "You have to work 8 raglan increases.",
    "There will be a hole at each end of the next row.",
    "The first two rounds will be purled.",
    "Short rows are worked with wraps.",
    "Never slip more than 5 sts, so it lies flat.",
    "Knit this three times.",
    "There are 3 rounds of each colour.",
    "There are 5 buttonholes, one on every tenth row.",
    "There are to be 14 sts between the two cables.",
    "There are 6 repeats of the chart, the last without the bobble.",
    "There are 6 panels of 20 sts, so increase 2 sts in each.",
    "The repeat goes 22 times around and then once in plain stitches.",
    "That makes 12 rows more than on the back.",
    "That is 2 more rows on the larger size.",
    "You have 84 sts.",
    "You will have made 76 picots when you cast off the last 3 sts.",
    "The body now measures 30 cm, so begin the armholes.",
    "The body measures 30 cm: cast off.",
    "The marker marks the 12th stitch.",
    "The heel is shaped with short rows as for the first sock.",
    "The heel is turned over 22 stitches with short rows.",
    "The neck shaping is finished with a purl row.",
    "The armhole edge is left unshaped on the smallest size.",
    "The charts are read from left to right on every round.",
    "Read WS rows from right to left.",
    "Row 3 is the hardest, so knit it plain.",
    "Beginners may leave row 3 as plain knit.",
    "This takes another 20 rounds.",
    "This takes one more repeat.",
    "They are not left and right, so work the second the same way.",
    "Try it on and knit on until it reaches the hip.",
    "Move the markers up 2 rows.",
    "Carry B up the side for 4 rows.",
    "Twist the first stitch.",
    "Note which row you ended with and begin the second sleeve there.",
    "It is easier to knit both sleeves the same length.",
    "A smooth yarn is best for the cables, so change to B.",
)


@each_row("sentence", FACTS)
def test_a_fact_that_follows_from_the_lines_around_it_is_only_said(sentence: str) -> None:
    """Nobody is asked what is knitted by it."""
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
    assert not tells_fact(plain)
    assert not is_idle(made_plain(sentence))
