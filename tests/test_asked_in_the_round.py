"""Forty things a knitter asks or says in the middle of a round, written before looking at what the program knows.

Each row: where she is (the places of `tests.test_questions`), what she says, what she needs to hear, and, once it
is answered, what the answer holds; "?" is a plain refusal.
"""

QUESTIONS = """
yoke     | what do I knit with now              | the yarn of the next stitch
yoke     | which yarn comes next                | the next yarn, and after how many stitches
yoke     | how many chalk stitches now          | how many are worked before the colour changes
yoke     | how many stitches to the end of the round | those from here to the round's end
yoke     | am I halfway round                   | the stitch in hand and those of the round
yoke     | what is the next round like          | the next round in short
yoke     | what is the round after that         | the round after the next
yoke     | how many rounds until I increase     | rounds to the next increase round
yoke     | do I increase in this round          | no, and when
yoke     | when does the chart end              | rounds left of the chart
yoke     | how many chart rounds are left       | the same
yoke     | two rounds finished                  | on by two rounds; what is taken as done is said
yoke     | I am at round sixteen                | goes there, says what is taken as done
yoke     | I am back at the start of the round  | the place at the round's beginning
yoke     | I have done five repeats             | the place after five repeats
yoke     | I knitted the wrong colour           | help with that fault
yoke     | I skipped a round                    | help with that fault, or how to go back
yoke     | something looks wrong                | the search begins
yoke     | no, go back                          | one step back
yoke     | remind me when I divide              | a reminder at the divide
yoke     | remind me to try it on after five rounds | a reminder in five rounds
yoke     | do I need anything soon              | needle, marker, yarn, holder that come
body     | how much longer must it be           | length left
body     | it is fifteen centimetres now        | the measurement is kept
body     | will I finish the body tonight       | time for the rest of the section
body     | how long does a round take           | minutes for a round
body     | do I have enough yarn                | yes or no
body     | when do I change needles             | rounds to the other needle
neckband | which round is this                  | number of the round, of how many
neckband | how many stitches do I have          | stitches on the needles
sleeve   | how many rounds between decreases    | the interval
sleeve   | is this a decrease round             | no, and when
sleeve   | how many stitches at the cuff        | stitches after the last decrease
lace     | how many stitches left in this row   | those from here to the row's end
lace     | what is a double decrease            | a stitch explained, or a plain refusal
raglan   | where is the next marker             | stitches to it
raglan   | how many stitches on the back        | count of that part
rows     | which side am I on                   | the side
heel     | how many stitches before I turn      | stitches to the turn
heel     | how many more turns                  | short rows left
"""
ROWS = [tuple(part.strip() for part in line.split("|")) for line in QUESTIONS.strip().splitlines()]
