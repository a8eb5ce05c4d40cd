"""Thirty more things asked in the middle of a round, written before the vocabulary was looked at once more.

Each row: where she is (the places of `tests.asking`), what she says, what she needs to hear, and what the answer
holds; "?" is a plain refusal. When they were first asked, 14 were answered, 15 refused (five of them with the right
wording offered), and one answered with something else: the stitches left for those at the end of the round.
"""

from __future__ import annotations

import pytest

from tests.asking import hears, rows_of

QUESTIONS = """
sleeve   | how many rounds since the last decrease round           | 11 rounds                                          | 11 rounds ago, round 19
yoke     | was the last round an increase round                    | no, or when the last was                           | 11 rounds ago, round 2
sleeve   | is this a plain round                                   | yes: nothing is decreased in it; or the round itself | Round 30: knit all fifty eight
sleeve   | how many stitches will I have at the end of this round  | 58 stitches                                        | 58 stitches, now and at the end
yoke     | how many stitches are done in this round                | 39 or 40 of 150                                    | at stitch 40 of 150
raglan   | how many stitches until the next marker                 | 24                                                 | after 24 stitches, the first of 4
raglan   | how many stitches between the markers                   | 24, 37, 52, 37, 24                                 | 24, 37, 52, 37, 24
body     | how many stitches do I cast on under the arm            | the underarm stitches                              | 9 stitches each time, in Yoke, round 37
body     | how many stitches are waiting on the thread             | those on hold                                      | 50 stitches for left sleeve and 50 stitches
body     | how many stitches did I have before the divide          | the count before it                                | 246 stitches before Divide, 164 after it
yoke     | which size am I making                                  | size 4 here                                        | Size 4 here
body     | how wide is it now                                      | around by the gauge                                | About 74.5 cm around by the gauge, 164 stitches
yoke     | how far is it to the underarm                           | 24 rounds                                          | In 24 rounds, round 37, Divide
body     | where does the round begin                              | the place of the join, or a refusal                | ?
sleeve   | when do I change to double pointed needles              | the next needle, or a refusal                      | ?
neckband | how many rounds of ribbing do I knit                    | 10 rounds                                          | Ribbing: 2 of 10 rounds done
yoke     | which row of the chart am I on                          | round 4 of the chart                               | Round 4 of chart trail
yoke     | how many rows does the chart have                       | the rounds of the chart                            | Round 4 of chart trail, 1 round of it left
raglan   | is there something else going on at the same time       | what goes on at once                               | Yoke, row 30 of 51
body     | read me what the pattern says here                      | the printed line                                   | Round 40: knit all one hundred sixty four
body     | how many rounds have I knitted tonight                  | none yet                                           | Nothing this evening yet
body     | when did I last count                                   | no count stands                                    | No count stands
lace     | can I stop here                                         | whether it is a good place, or a refusal           | 59 stitches to the end of this row, of 69
yoke     | how long will the sleeve take                           | time for a sleeve                                  | Left sleeve: 132 rounds to knit
lace     | what does ssk mean                                      | slip slip knit                                     | Slip, slip, knit: 2 stitches become 1
lace     | which way does it lean                                  | left or right, or a refusal                        | ?
rows     | is it a right side row                                  | wrong side                                         | The wrong side, row 4
body     | will the ball last to the end of the round              | whether the yarn lasts, or a refusal               | ?
neckband | how do I cast off                                       | how, or a refusal                                  | ?
raglan   | how many stitches will be left for the neck             | the count, or a refusal                            | ?
"""
ROWS = rows_of(QUESTIONS)


@pytest.mark.parametrize(("place", "said", "needed", "answer"), ROWS, ids=lambda part: part.replace(" ", "-"))
def test_she_hears_what_she_needs(place: str, said: str, needed: str, answer: str) -> None:
    """At the prompt; what is not known is refused, never answered with something else."""
    hears(place, said, answer)


def test_at_most_one_in_five_is_refused() -> None:
    """A refusal is an honest answer, but it sends her to the printed page."""
    assert len(ROWS) == 30
    assert sum(row[-1] == "?" for row in ROWS) <= len(ROWS) / 5
