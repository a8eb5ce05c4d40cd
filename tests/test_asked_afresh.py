"""Sixty things a knitter asks or says, of which no wording was chosen by what the program knows.

Each row: where she is (the places of `tests.asking`), what she says, what she needs to hear, and what the answer holds;
"?" is a plain refusal. `THIRD` was written before looking at what the program knows: when first asked, 1 of the 30 was
answered, 29 refused, none with something else. `FIFTH` was written before the vocabulary was looked at once more: 14 were
answered, 15 refused (five of them with the right wording offered), and one answered with something else: the stitches left
for those at the end of the round.
"""

from __future__ import annotations

import pytest

from tests.asking import hears, rows_of
from tests.tables import each_row

THIRD = rows_of("""
yoke     | how many pine stitches are in this round     | pine stitches of the round | ?
yoke     | do I knit the next stitch in pine            | the yarn of the next stitch | ?
yoke     | when is the next plain round                 | the next round in one colour or without shaping | ?
yoke     | how many stitches will I have after the next increase | 225, after round 16 | 75 increases, 225 stitches after it
yoke     | read me the next round                       | round 14 whole | Round 14, chart trail round 5
yoke     | is this a good place to stop                 | where to stop best, or how far to the round's end | 110 stitches to the end of this round
yoke     | how many stitches have I done in this round  | 40 of 150 | at stitch 40 of 150
yoke     | where did I stop                             | the place | at stitch 40 of 150
yoke     | how many rounds of the yoke have I done      | 12 of 37 | 12 of 37 rounds done
yoke     | start the yoke again                         | what comes first in it: the needle | Change to 3.75 mm needles
yoke     | which chart am I on                          | chart trail and its round | Round 4 of chart trail
yoke     | I used the wrong yarn                        | help with that fault | cover them in duplicate stitch
yoke     | I am three stitches short                    | 147: 3 fewer | 147: 3 fewer than 150
yoke     | I have to stop in the middle of the round    | the place kept; good night, or a plain refusal | ?
yoke     | one more round done                          | round 14 | Round 14
body     | how many rounds to the ribbing               | 57 rounds, round 97 | In 57 rounds, round 97
body     | how many centimetres have I knitted          | about 13 cm | About 13 cm by the rounds
body     | how many grams have I used                   | the grams used so far | 65 g of chalk
body     | is there enough chalk for the rest           | what the rest takes | The rest takes about 130 g of chalk
body     | how much did I knit yesterday                | nothing yet, or yesterday's rounds | ?
body     | remind me to count at the ribbing            | a reminder at round 97 | round 97 of 113: count
body     | when should I try it on                      | plain refusal or a time | ?
sleeve   | how often do I decrease                      | the interval | Every 12 rounds, 7 times. The next in 1 round, round 31
sleeve   | how many stitches after the next decrease    | 56 | 2 decreases, 56 stitches after it
sleeve   | how many rounds until the cuff               | rounds to the cuff | ?
lace     | how many stitches to the next repeat         | stitches to the edge of the repeat | Repeat 1 of 3, 2 after it; 4 stitches to its end
lace     | do I purl back next                          | the next row, wrong side | Row 39, wrong side: knit three, purl sixty three
raglan   | how many raglan increases are still to come  | the rows of raglan increases left | ?
raglan   | which marker am I at                         | the marker, or the place in the row | after 24 stitches, the first of 4
heel     | how many stitches do I leave unworked        | stitches beyond the turn | ?
""")

FIFTH = rows_of("""
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
body     | where does the round begin                              | the place of the join, or a refusal                | This round begins where the yarn comes from
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
neckband | how do I cast off                                       | how, or a refusal                                  | lift the first over the second
raglan   | how many stitches will be left for the neck             | the count, or a refusal                            | ?
""")


@each_row(("place", "said", "needed", "answer"), [*THIRD, *FIFTH])
def test_she_hears_what_she_needs(place: str, said: str, needed: str, answer: str) -> None:
    """At the prompt; what is not known is refused, never answered with something else."""
    hears(place, said, answer)


@pytest.mark.parametrize(("rows", "share"), [(THIRD, 1 / 2), (FIFTH, 1 / 5)], ids=["third", "fifth"])
def test_few_are_refused(rows: list[tuple[str, str, str, str]], share: float) -> None:
    """A refusal is an honest answer, but it sends her to the printed page."""
    assert len(rows) == 30
    assert sum(row[-1] == "?" for row in rows) <= len(rows) * share
