"""Sixty more things a knitter asks or says, written before looking at what the program knows.

Each row: where she is (the places of `tests.asking`), what she says, what she needs to hear, and what the
answer holds; "?" is a plain refusal. The first thirty were developed on: 1 was answered when they were first asked.
The last thirty were asked once, when all was built, though their writer knew them: 22 answered, 8 refused, none
answered with something else.
"""

from __future__ import annotations

from tests.asking import hears, rows_of
from tests.tables import each_row

DEVELOPED_ON = """
yoke     | what colour am I holding                       | the yarn in hand | Chalk now
yoke     | how far to the next colour change              | stitches (or rounds) until the yarn changes | Pine after 1 stitch
yoke     | tell me the round after this one               | the next round's kind | Round 14
yoke     | how many rounds have I got left in the yoke    | rounds to the section's end | 12 of 37 rounds done
yoke     | what should be on my needles by now            | the count | 150 stitches
body     | how long has it got to be                      | the length wanted | of 32 cm
body     | how many centimetres have I done               | the length now | About 13 cm
body     | am I nearly there                              | rounds and length left | 57 rounds left
body     | will I run out of wool                         | whether the yarn lasts | The rest takes about
body     | how much of this ball is left                  | yarn left | The rest takes about
body     | when should I have the next ball ready         | rounds until a new ball | The rest takes about
sleeve   | how long until I decrease again                | rounds until the next decrease | In 1 round, round 31
sleeve   | how many times do I still have to decrease     | decreases left | 7 decrease rounds left
sleeve   | how many decreases are behind me               | decreases done | 1 done
neckband | what size needle is it for this bit            | the needle | 3.5 mm
neckband | do I change needles soon                       | when the needle changes / the needle | from Yoke, round 1 of 37, 3.75 mm
lace     | how many more repeats in this row              | repeats left | 2 after it
lace     | what does yarn over mean again                 | the stitch explained | Yarn over
rows     | is this a knit row or a purl row               | the side | wrong side
rows     | how far off is the next buttonhole             | rows until it | ?
raglan   | how many stitches does the sleeve have         | count of the sleeve section | Left sleeve: 57 stitches at its beginning, 44 at its end
raglan   | when do I put the sleeves on hold              | rounds until the division | In 21 rows, row 51
heel     | where's my next turn                           | the turn | After 29 stitches
yoke     | I think I skipped an increase                  | fault help (or offered) | 149: 1 fewer than 150
yoke     | there's a stitch too many                      | fault help, one too many (or offered) | 151: 1 more than 150
yoke     | whoops I let a stitch fall                     | fault help, a dropped stitch (or offered) | put a hook through it
body     | what day will I be done                        | the day with its range | Done about
body     | how many rounds did I manage this evening      | rounds tonight | Nothing this evening yet
yoke     | sorry I didn't catch that                      | the last line once more | At stitch 40
neckband | what did I write down about this rib           | the notes | Nothing is noted yet
"""
ASKED_ONCE = """
yoke     | which strand comes next                        | the next yarn (or when the yarn changes) | Pine after 1 stitch
yoke     | what do I have to do in the next round         | the next round | Round 14
yoke     | how far into the round am I                    | where: stitch of the round | at stitch 40 of 150
yoke     | how many stitches is this round                | the count | 150 stitches
yoke     | when do I increase again                       | rounds until the next increase | In 3 rounds, round 16
yoke     | how many more increase rounds to come          | increases left | 2 increase rounds left
yoke     | how long is the longest float here             | the float | 4 stitches of pine
yoke     | which line of the chart am I on                | chart row | Round 4 of chart trail
body     | what's the length supposed to be               | the length wanted | of 32 cm
raglan   | how far is it to the underarm                  | rounds until the division | In 21 rows, row 51
body     | is there enough yarn for the rest              | whether the yarn lasts | The rest takes about
body     | how many grams have gone into it               | yarn used | 65 g of chalk
body     | what's coming up this evening                  | what is ahead | A two-hour film
body     | how quick am I knitting                        | the pace | 30 stitches a minute
body     | how many hours have I put in                   | time knitted | Nothing has been knitted yet
body     | will I get it done in time                     | by the date | To be done by
sleeve   | in how many rounds is the next decrease        | rounds until it | In 1 round, round 31
sleeve   | how many have I decreased so far               | decreases done | 7 decrease rounds left in left sleeve, 14 stitches; 1 done
sleeve   | was the other sleeve done like this            | notes of the other sleeve | Nothing is noted in right sleeve
neckband | what gauge is this meant to be                 | gauge | 24 stitches and 32 rounds
neckband | how deep should the rib be                     | the length of the rib | of 3 cm
lace     | how do I work a centred double decrease        | the stitch explained | 3 stitches become 1
lace     | which side is facing me                        | the side | The right side
rows     | how many buttonholes have I still got to make  | buttonholes left | ?
raglan   | how many stitches to the next marker           | to the marker | after 24 stitches
heel     | how many turns are left                        | short rows left | 38 short rows left
yoke     | my count is off by one                         | fault help (or offered) | ?
yoke     | I've no idea where I am                        | lost: how to find the place (or offered) | Yoke, round 13 of 37
yoke     | what was that again                            | the last line once more | At stitch 40
yoke     | what have I altered so far                     | the alterations | as printed
"""


ROWS = [*rows_of(DEVELOPED_ON), *rows_of(ASKED_ONCE)]


@each_row(("place", "said", "needed", "answer"), ROWS)
def test_she_hears_what_she_needs(place: str, said: str, needed: str, answer: str) -> None:
    """At the prompt; what is not known is refused, never answered with something else."""
    hears(place, said, answer)


def test_of_those_that_nothing_was_chosen_on_two_thirds_are_answered() -> None:
    """They show what a knitter meets: a wording that carries is one that nobody had to list."""
    fresh = rows_of(ASKED_ONCE)
    assert len(fresh) == 30
    assert sum(row[-1] != "?" for row in fresh) >= 20
