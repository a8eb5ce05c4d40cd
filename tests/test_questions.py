"""A hundred things that a knitter asks or says with both hands full, written down before the answers were built.

Each row: where she is, what she says, what the answer must hold. The figures were counted by hand on the printed
garments of `tests/fixtures`; a row with "?" is one the program refuses plainly, which is an answer too.
"""

from __future__ import annotations

import re

from tests.asking import answer_to, hears, rows_of
from tests.tables import each_row

QUESTIONS = """
yoke     | what's next                        | Next: round 14, chart trail round 5
yoke     | and after that                     | After that: round 15: in chalk, knit all one hundred fifty
yoke     | what comes after this round        | Round 14
yoke     | which round am I on                | Yoke, round 13 of 37
yoke     | where am I                         | at stitch 40 of 150
yoke     | what did I just do                 | Last: two pine, one chalk
yoke     | what did I do last round           | Round 12, chart trail round 3
yoke     | which colour now                   | Chalk now. In this round: chalk and pine
yoke     | which yarn                         | chalk and pine
yoke     | what colours are in this round     | chalk and pine
yoke     | when does the colour change        | Pine after 1 stitch
yoke     | how many stitches should I have    | 150 stitches
yoke     | how many stitches after this round | 150 stitches
yoke     | when is the next increase          | In 3 rounds, round 16, Second increase: 75 increases
yoke     | how many increases are left        | 2 increase rounds left in yoke, 96 stitches; 1 done
yoke     | how many to go                     | 25 rounds left in yoke
yoke     | how many rounds left               | 25 rounds left in yoke
yoke     | how long till I am done            | of knitting left
yoke     | when do I divide                   | In 24 rounds, round 37, Divide
yoke     | is the float caught                | 4 stitches of pine, about 1.8 cm. It needs no catching
yoke     | how long is the float              | 4 stitches of pine
yoke     | which row of the chart             | Round 4 of chart trail
yoke     | which repeat am I in               | Repeat 5 of 15, 10 after it
yoke     | read the whole round               | Round 13, chart trail round 4: one chalk
yoke     | again                              | At stitch 40: one chalk
yoke     | pardon                             | At stitch 40: one chalk
yoke     | what                               | At stitch 40: one chalk
yoke     | say that again                     | At stitch 40: one chalk
yoke     | slower                             | read along
yoke     | not so fast                        | read along
yoke     | shorter                            | ?
yoke     | what size am I knitting            | Size 4 here; 2 from Yoke, round 30 of 37, Final increase
yoke     | what was the gauge                 | 22 stitches and 26 rounds to 10 cm
yoke     | which needle                       | 3.75 mm; from Body, round 97 of
neckband | what needle do I need              | 3.5 mm; from Yoke, round 1 of 37, 3.75 mm
neckband | how long is the rib                | of 3 cm; 8 rounds left
neckband | how many rounds of rib             | Rib: 2 of 10 rounds done
neckband | how long should it be              | of 3 cm
body     | how long should it be              | of 32 cm; 57 rounds left
body     | how long is it now                 | About 13 cm by the rounds
body     | how many more centimetres          | 57 rounds left
body     | how many rounds is that            | rounds left in body
body     | it measures eleven centimetres     | 11 cm: 35.5 rounds to 10 cm
body     | am I there yet                     | 57 rounds left
body     | how much yarn have I used          | so far, by the rounds
body     | will the yarn last                 | The rest takes about
body     | how much yarn is left              | of chalk
body     | chalk weighs thirty grams          | 30 g of chalk left
body     | when do I need a new ball          | The rest takes about
body     | remind me in ten rounds to try it on | Body, round 50 of
body     | remind me at the left sleeve to count | Left sleeve, round 1
body     | remind me when it is twenty centimetres long | I will remind you at Body, round
body     | what reminders are there           | No reminders
body     | what did you remind me of          | No reminders
body     | forget the reminder                | There are no reminders
body     | how long have I been knitting      | Nothing
body     | how long have I knitted            | Nothing
body     | how many rounds tonight            | Nothing this evening yet
body     | how fast am I                      | 30 stitches a minute
body     | when will it be finished           | Done about
body     | will I make it by the date         | To be done by 14 February 2027
body     | what is ahead tonight              | A two-hour film brings 21 rounds
sleeve   | when is the next decrease          | In 1 round, round 31: 2 decreases
sleeve   | how many decreases left            | 7 decrease rounds left in left sleeve, 14 stitches; 1 done
sleeve   | how many decreases have I done     | 1 done
sleeve   | do both sleeves match              | ?
sleeve   | I forgot a decrease                | 59: 1 more than 58
sleeve   | I forgot an increase               | 57: 1 fewer than 58
sleeve   | I have one too many                | 59: 1 more
sleeve   | one stitch missing                 | 57: 1 fewer
sleeve   | I have two too many                | 60: 2 more
yoke     | I dropped a stitch                 | hook
yoke     | I split the yarn                   | Count your stitches
yoke     | I lost count                       | a marker every
yoke     | I am lost                          | Yoke, round 13
yoke     | I don't know where I am            | Yoke, round 13
yoke     | I made a mistake                   | Count your stitches
lace     | which repeat                       | Repeat 1 of 3, 2 after it
lace     | how many repeats left              | 2 after it
lace     | what row is this                   | Shawl, row 38
lace     | right side or wrong side           | The right side, row 38
lace     | what is k2tog                      | Knit two together: 2 stitches become 1
lace     | what does ssk mean                 | 2 stitches become 1
lace     | what is SK2P                       | 3 stitches become 1
lace     | next marker                        | The next marker
raglan   | to the marker                      | At stitch 24
raglan   | when is the next raglan increase   | In 1 row, row 31: 8 increases
raglan   | how many stitches in the sleeve    | Left sleeve: 57 stitches at its beginning, 44 at its end
raglan   | how many between the markers       | 24, 37, 52, 37, 24
rows     | is this a right side row           | The wrong side, row 4
rows     | which side is this                 | The wrong side
heel     | how many short rows left           | 38 short rows left
heel     | where do I turn                    | After 29 stitches, in row 2
yoke     | done                               | At stitch 47
yoke     | finished                           | At stitch 47
yoke     | next                               | At stitch 47
yoke     | okay next                          | At stitch 47
yoke     | finished the round                 | Round 14
yoke     | round done                         | Round 14
yoke     | end of round                       | Round 14
body     | three rounds done                  | Taken as done: up to Body, round 42 of
body     | did three rounds                   | Taken as done: up to Body, round 42 of
body     | go back two rounds                 | Body, round 38 of
yoke     | go to round twelve                 | Yoke, round 12 of 37
yoke     | go to the divide                   | Taken as done: up to Yoke, round 36 of 37
yoke     | the pine row is finished           | Round 14
yoke     | the green row is finished          | No yarn here is called green
yoke     | undo                               | Taken back
yoke     | take that back                     | Taken back
yoke     | count is one hundred and fifty     | 150, as it should be
yoke     | I counted one hundred and fifty    | 150, as it should be
yoke     | I miscounted                       | Count once more
yoke     | count again                        | Count once more
yoke     | what was the last count            | No count stands
yoke     | how many have I counted            | No count stands
yoke     | where did I last count             | No count stands
neckband | note: used the larger needle       | Noted: used the larger needle
neckband | what did I note here               | Nothing is noted yet
yoke     | stop listening                     | Not listening until
yoke     | be quiet                           | Not listening until
yoke     | wake up                            | I am listening
neckband | good night                         | First next time: Neckband, round 4
neckband | that is enough for tonight         | First next time: Neckband, round 4
yoke     | what can I say                     | For more, say help with
yoke     | help                               | For more, say help with
yoke     | what did I change                  | as printed
neckband | how do I cast on                   | make the first loops on the needle
neckband | what does join in the round mean   | the yarn at the right one
neckband | how many more rows are like this one | 7 more after this round, up to round 11
neckband | how many more rounds like this     | 7 more after this round, up to round 11
neckband | I forgot what row I'm on            | Neckband, round 4
neckband | did I do this right                | Count your stitches
neckband | how do I know when to stop         | by the rounds
neckband | how do I purl                      | from right to left
yoke     | what does stocking stitch mean     | In rounds knit every round
body     | how many stitches are on hold      | 50 stitches for left sleeve
yoke     | which section is next              | Body, in 25 rounds
body     | how wide is it now                 | around by the gauge, 164 stitches
body     | am I halfway                       | 37 percent of the stitches; 87 of 425 rounds
sleeve   | how far am I through the sleeve    | Left sleeve: 29 of 132 rounds done
sleeve   | when will the sleeve be finished   | for the rest, at a usual pace
yoke     | when do the sleeves begin          | left sleeve, round 1
body     | when does the ribbing start        | In 57 rounds, round 97
rows     | is this a purl row                 | Row 4, wrong side: purl two
yoke     | when should I count next           | After this round: 150 expected
sleeve   | how many rounds since the last decrease | 11 rounds ago, round 19: 2 decreases
sleeve   | did I decrease in the last round   | 11 rounds ago
yoke     | start this round again             | Yoke, round 13 of 37
body     | I ripped back two rounds           | Body, round 38 of
yoke     | I undid ten stitches               | at stitch 30
yoke     | I am one stitch over               | 151: 1 more than 150
neckband | how many stitches did I cast on    | 100 stitches, cast on for neckband
yoke     | what time is it                    | ?
"""
ROWS = rows_of(QUESTIONS)


def test_there_are_more_than_a_hundred() -> None:
    """And at most one in twenty is refused."""
    assert len(ROWS) > 100
    assert sum(answer == "?" for _, _, answer in ROWS) <= len(ROWS) / 20


@each_row(("place", "said", "answer"), ROWS)
def test_she_is_answered(place: str, said: str, answer: str) -> None:
    """At the prompt, where a slip of the fingers is forgiven; nothing is answered with a wrong thing."""
    hears(place, said, answer)
    assert re.search(r"[.?]$|needle$", answer_to(place, said)[1])
