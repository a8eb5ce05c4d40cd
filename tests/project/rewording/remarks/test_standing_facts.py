"""Facts on how a pattern lies, and their look-alikes that order. All are invented; what each is, is common practice."""

from __future__ import annotations

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.remarks.idle import is_idle
from stepper.project.rewording.remarks.standing_facts import STANDING, facts_of
from tests.project.rewording.remarks.veiled_orders import VEILED_ORDERS
from tests.tables import each_row

FACTS = (
    "Each round has 7 repeats of the chart.",
    "The motif comes 12 times around the yoke.",
    "The markers sit on either side of the spine stitch.",
    "The ribbing pulls in more than you expect.",
    "A thick line marks the repeat.",
    "All chart rounds are read from right to left.",
    "The chart is read from right to left on every rnd, and the 6-st repeat is worked 18 (20, 22) times.",
    "The 8-stitch repeat is worked 12 (13, 14) times around.",
    "Each repeat has 12 sts and you'll work it 8 (9, 10) times per round.",
    "The pattern is repeated 14 (15, 16) times in the round.",
    "The beginning of the rnd is at the start of N1.",
    "This is the center back.",
    "The back neck lies between the two markers.",
    "There are no raglan increases in this part.",
    "You now have one stitch more on the front than on the back.",
    "The front has 2 sts more than the back.",
    "Each repeat of the six rows adds one full motif on each side, so you'll find that the lace falls neatly into line.",
    "The held sts stay on their thread until the body is finished.",
    "The slipped stitches are included in the counts.",
    "In the chart, work the stitches inside the heavy lines as many times as they will fit.",
    "The repeat is outlined in red.",
    "The charts show the right side of the work.",
    "Every square of the chart is one stitch and one round.",
    "The picot edging uses quite a lot of yarn, but gives plenty of stretch.",
    "I weigh my ball: the cuff needs about 6 grams.",
    "Leave at least 12% of your yarn for the bind-off.",
    "Cotton relaxes, so re-check the length after washing.",
    "Tip: place a marker after every repeat.",
)
ORDERS = (
    "Each round has 7 repeats of the chart and one stitch more at the end, which is purled.",
    "Each round has one stitch more than the last.",
    "The ribbing pulls in, so increase 8 sts.",
    "A thick line marks the stitches that are purled.",
    "The markers sit on either side of the spine stitch, which is knitted on every row.",
    "The chart is worked twice in all.",
    "The pattern is worked 4 times.",
    "The pattern is repeated twice on the body.",
    "The 8-stitch repeat is worked 12 times and the last 4 sts are knitted.",
    "The repeat is worked 9 times across, ending with k1.",
    "The chart is read from right to left, and the last row is left out.",
    "The beginning of the rnd is now 4 sts later.",
    "This marker is your BOR from now on.",
    "This is your BOR from now on.",
    "The sts on N1 rest while the heel is being worked.",
    "The instep stitches wait on needles 2 and 3 while you work the heel.",
    "The heel is worked back and forth over half of the stitches.",
    "The toe is worked in stockinette over all stitches.",
    "There are always 3 sts in garter stitch at each edge.",
    "The armhole and neck are shaped at the same time.",
    "Each repeat adds one motif on each side, so knit 2 sts more before the marker.",
    "The held sts are knitted while the body waits.",
    "The slipped stitches are picked up along the edges.",
    "In the chart, the stitches inside the heavy lines are worked 4 times.",
    "Leave at least 12 sts for the bind-off.",
    "The cuff needs about 6 more rounds.",
    "Tip: place a marker after every repeat and decrease there.",
)


@each_row("sentence", FACTS)
def test_a_fact_of_the_pattern_is_told(sentence: str) -> None:
    """It states what the lines around it make, and no row comes of it."""
    assert is_idle(made_plain(sentence))
    assert reads(sentence)


@each_row("sentence", ORDERS)
def test_what_orders_or_sets_stitches_apart_is_no_fact(sentence: str) -> None:
    """Only said, it would not be knitted."""
    assert not is_idle(made_plain(sentence))


def test_a_sentence_is_cut_where_a_second_fact_is_joined() -> None:
    """Each half has to be a fact by itself."""
    assert facts_of("the chart is read so; and it fits 4 times") == ["the chart is read so", "it fits 4 times"]
    assert facts_of("one fact alone") == ["one fact alone"]
    assert not any(STANDING.fullmatch(made_plain(each).rstrip(".")) for each in VEILED_ORDERS)
