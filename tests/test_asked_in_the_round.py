"""Forty things a knitter asks or says in the middle of a round, written before looking at what the program knows.

Each row: where she is (the places of `tests.asking`), what she says, what she needs to hear, and what
the answer holds; "?" is a plain refusal. When they were first asked, 8 of the 40 were answered, 3 with something
else.
"""

from __future__ import annotations

from tests.asking import hears, rows_of
from tests.tables import each_row

QUESTIONS = """
yoke     | what do I knit with now              | the yarn of the next stitch                               | Chalk now
yoke     | which yarn comes next                | the next yarn, and after how many stitches                | Pine after 1 stitch
yoke     | how many chalk stitches now          | how many are worked before the colour changes             | ?
yoke     | how many stitches to the end of the round | those from here to the round's end                   | 110 stitches to the end of this round
yoke     | am I halfway round                   | the stitch in hand and those of the round                 | 110 stitches to the end of this round, of 150
yoke     | what is the next round like          | the next round in short                                   | Round 14
yoke     | what is the round after that         | the round after the next                                  | Round 15
yoke     | how many rounds until I increase     | rounds to the next increase round                         | In 3 rounds, round 16
yoke     | do I increase in this round          | no, and when                                              | In 3 rounds, round 16
yoke     | when does the chart end              | rounds left of the chart                                  | 1 round of it left
yoke     | how many chart rounds are left       | the same                                                  | 1 round of it left
yoke     | two rounds finished                  | on by two rounds; what is taken as done is said           | Taken as done: up to Yoke, round 14 of 37
yoke     | I am at round sixteen                | goes there, says what is taken as done                    | Taken as done: up to Yoke, round 15 of 37
yoke     | I am back at the start of the round  | the place at the round's beginning                        | Yoke, round 13 of 37
yoke     | I have done five repeats             | the place after five repeats                              | ?
yoke     | I knitted the wrong colour           | help with that fault                                      | cover them in duplicate stitch
yoke     | I skipped a round                    | help with that fault, or how to go back                   | Count your stitches
yoke     | something looks wrong                | the search begins                                         | Count your stitches
yoke     | no, go back                          | one step back                                             | Yoke, round 13 of 37
yoke     | remind me when I divide              | a reminder at the divide                                  | I will remind you at Yoke, round 37 of 37
yoke     | remind me to try it on after five rounds | a reminder in five rounds                             | round 18 of 37, chart ridge round 2: try it on
yoke     | do I need anything soon              | needle, marker, yarn, holder that come                    | On the way: round 17, ember
body     | how much longer must it be           | length left                                               | of 32 cm; 57 rounds left
body     | it is fifteen centimetres now        | the measurement is kept                                   | 15 cm: 26 rounds to 10 cm
body     | will I finish the body tonight       | time for the rest of the section                          | Body: 39 of 113 rounds done
body     | how long does a round take           | minutes for a round                                       | minutes for this round
body     | do I have enough yarn                | yes or no                                                 | The rest takes about
body     | when do I change needles             | rounds to the other needle                                | from Body, round 97 of 113, 3.5 mm
neckband | which round is this                  | number of the round, of how many                          | Neckband, round 4 of 11
neckband | how many stitches do I have          | stitches on the needles                                   | 100 stitches
sleeve   | how many rounds between decreases    | the interval                                              | Every 12 rounds, 7 times
sleeve   | is this a decrease round             | no, and when                                              | In 1 round, round 31
sleeve   | how many stitches at the cuff        | stitches after the last decrease                          | ?
lace     | how many stitches left in this row   | those from here to the row's end                          | 59 stitches to the end of this row
lace     | what is a double decrease            | a stitch explained, or a plain refusal                    | ?
raglan   | where is the next marker             | stitches to it                                            | after 24 stitches
raglan   | how many stitches on the back        | count of that part                                        | ?
rows     | which side am I on                   | the side                                                  | The wrong side, row 4
heel     | how many stitches before I turn      | stitches to the turn                                      | After 29 stitches
heel     | how many more turns                  | short rows left                                           | 38 short rows left
"""
ROWS = rows_of(QUESTIONS)


@each_row(("place", "said", "needed", "answer"), ROWS)
def test_she_hears_what_she_needs(place: str, said: str, needed: str, answer: str) -> None:
    """At the prompt; what is not known is refused, never answered with something else."""
    hears(place, said, answer)


def test_at_most_one_in_six_is_refused() -> None:
    """A refusal is an honest answer, but it sends her to the printed page."""
    assert sum(row[-1] == "?" for row in ROWS) <= len(ROWS) / 6
