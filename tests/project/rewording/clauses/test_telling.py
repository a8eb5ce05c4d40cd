"""Sentences that work no stitch are told by their clauses; no order in disguise is. All are invented, common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.clauses.telling import asks_to_do, works_nothing
from tests.project.rewording.clauses.disguised_orders import DISGUISED_ORDERS
from tests.project.rewording.remarks.test_idle import TAILS
from tests.project.rewording.remarks.veiled_orders import VEILED_ORDERS
from tests.tables import each_row

TOLD = (
    "I designed this shawl during a rainy week by the sea.",
    "The yarn I used is soft and has lots of drape.",
    "If you are between sizes, choose the smaller one.",
    "Don't worry if your stitches look uneven at first.",
    "The cowl looks lovely in two colors as well.",
    "Blocking will even everything out.",
    "This is the trickiest part of the pattern.",
    "Take a deep breath.",
    "It helps to have a pencil at hand.",
    "My sample took about 180 m of yarn.",
    "The edge will curl a little; that is normal.",
    "The lace pattern is easy to memorize.",
    "You are now halfway through the crown.",
    "Almost there!",
    "Keep a note of how many repeats you have worked.",
    "The beginning of the round is at the center back.",
    "Your thumb will thank you.",
    "There is no need to break the yarn.",
    "These mittens are a generous fit, so go down a size if your hands are narrow.",
    "The ribbing pulls in quite a lot, so it may look small at this point.",
    "The markers show where the gussets begin.",
    "Choose a yarn that you love.",
    "Leave a long tail if you plan to sew.",
    "From here it is plain sailing.",
    "As the hat gets narrower, the stitches will no longer fit on the circular needle.",
    "The sleeves are meant to be long.",
    "Some knitters find a lifeline useful here.",
    "Count your stitches after this row; it is easy to drop one.",
    "The pattern is written for dpns, but magic loop works just as well.",
    "This makes a neat edge.",
    "You should be able to slip it over your head.",
    "It doesn't matter which needle you start with.",
    "The holes that form here are part of the design.",
    "What you do with the ends is up to you.",
    "A little patience pays off.",
    "Your blanket is now as wide as it will ever be.",
    "If your gauge is off by a stitch, the hat will be 2 cm too big.",
    "The heel is deep and fits high insteps.",
    "Remember that the wrong side is the outside of this bag.",
    "Wash by hand in cool water.",
    "The body of the sweater should hang freely without pulling.",
    "Have fun!",
    "Ready?",
    "Make yourself a cup of tea first.",
    "Sizes are given from smallest to largest.",
    "The schematic shows the finished measurements.",
    "One skein is enough for a pair.",
    "The strap stretches with wear, hence the short length.",
    "A lifeline here saves tears later.",
    "Nobody will see the inside.",
    "Check your count before the colorwork starts.",
    "This number will vary with your gauge.",
    "I learned this trick from my aunt.",
    "Since the garter edge is firm, no border is needed.",
    "It will look odd until blocked.",
    "The first few rounds are fiddly.",
    "Then comes the best part.",
    "Use whichever increase you like best.",
    "Be careful not to twist.",
    "Please read through the whole section before starting.",
    "The bind-off must be stretchy enough to go over the heel.",
    "You'll have a triangle by now.",
    "The number of stitches depends on the size of your foot.",
    "The sample is shown in size M, worn with 5 cm of ease.",
    "When the hat reaches your eyebrows, it is long enough.",
    "Unlike stockinette, this fabric lies flat.",
    "If you made the longer version, your count will be higher.",
    "That's it!",
    "Give it a gentle tug to settle the stitches.",
    "Tidy up any loose stitches at the thumb with the tail.",
    "Each skein of hand-dyed yarn differs a little.",
    "A larger needle makes the edge more elastic.",
    "For those who dislike sewing, this piece is a relief.",
    "Should be easy from here.",
    "So far so good.",
    "Then let it dry flat, away from the sun.",
    "Knitting is more fun in company.",
    "The purl bumps make a natural fold line.",
    "The recipient of mine wears it every day.",
    "You can stop at any time.",
    "The gusset makes room for the instep.",
    "On the needle it looks narrower than it is.",
)
UNTOLD = (
    "We are going to shape the toe now.",
    "If you run out of yarn, stop here and bind off in the contrast color.",
    "Stop whenever you like the look of it.",
    "Those who like a snug brim can use a smaller needle for it.",
    "The back is 4 cm longer than the front.",
    "The pocket can be placed on either side.",
    "Turn the work inside out and admire it.",
    "Only the first sock has the picture on the left.",
)
"""Sentences of the same kind that say how something is worked, or for which piece."""


@each_row("sentence", TOLD)
def test_a_sentence_whose_clauses_do_nothing_is_told(sentence: str) -> None:
    """A fact, a reason, advice or talk is heard at its place, in whatever words it comes."""
    assert works_nothing(made_plain(sentence))
    assert reads(sentence)


@each_row("sentence", [*DISGUISED_ORDERS, *UNTOLD, *VEILED_ORDERS])
def test_an_order_in_disguise_is_not_told(sentence: str) -> None:
    """What is only said is not knitted: where an order may hide, the sentence stays unread."""
    assert not works_nothing(made_plain(sentence))


@each_row("sentence", TOLD)
def test_an_order_behind_a_told_clause_is_never_told_with_it(sentence: str) -> None:
    """Each clause of a sentence is looked through."""
    plain = made_plain(sentence).rstrip(".!?")
    assert [tail for tail in TAILS if works_nothing(f"{plain}{tail}.")] == []


@pytest.mark.parametrize(
    "sentence",
    ["Count your stitches often.", "Leave a long tail.", "Block it gently.", "It looks nice, so try it on."],
)
def test_what_is_done_off_the_needles_is_something_to_do(sentence: str) -> None:
    """She may want to do it before she goes on."""
    assert works_nothing(sentence)
    assert asks_to_do(sentence)


def test_a_question_on_which_it_hangs_what_is_done_next_is_not_told() -> None:
    """Without it the answer would be an order for everybody."""
    assert not works_nothing("Is it too short?")
    assert not reads("Is it too short?")
    assert works_nothing("Can you believe it?")
