"""Thirty more things a knitter asks or says, written before looking at what the program knows.

Each row: where she is (the places of `tests.asking`), what she says, what she needs to hear, and what the
answer holds; "?" is a plain refusal. When they were first asked, 1 of the 30 was answered, 29 refused, none with
something else.
"""

from __future__ import annotations

import pytest

from tests.asking import hears, rows_of

QUESTIONS = """
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
yoke     | I used the wrong yarn                        | help with that fault | give a count first
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
"""
ROWS = rows_of(QUESTIONS)


@pytest.mark.parametrize(("place", "said", "needed", "answer"), ROWS, ids=lambda part: part.replace(" ", "-"))
def test_she_hears_what_she_needs(place: str, said: str, needed: str, answer: str) -> None:
    """At the prompt; what is not known is refused, never answered with something else."""
    hears(place, said, answer)


def test_half_is_answered() -> None:
    """Thirty wordings that nothing was chosen on show what a knitter meets; a refusal sends her to the page."""
    assert len(ROWS) == 30
    assert sum(row[-1] == "?" for row in ROWS) <= len(ROWS) / 2
