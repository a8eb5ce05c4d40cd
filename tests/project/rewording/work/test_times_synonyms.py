"""How often rows and rounds are worked, in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword
from tests.tables import each_row


@each_row(
    ("printed", "read"),
    [
        ("Purl 1 rnd, knit 1 rnd, then purl 1 rnd more.", "Purl 1 rnd. knit 1 rnd. purl 1 more rnd."),
        ("Knit 1 row, purl 1 row, then knit 1 more row.", "Knit 1 row. purl 1 row. knit 1 more row."),
        ("Purl 1 round, knit 1 round, purl 1 round.", "Purl 1 round. knit 1 round. purl 1 round."),
        ("Knit 2 rows, then purl 1 row more.", "Knit 2 rows. purl 1 more row."),
        ("Purl one round, knit one round, then purl one more round.", "Purl one round. knit one round. purl one more round."),
        ("Knit 1 rnd, then purl 1 rnd more.", "Knit 1 rnd. purl 1 more rnd."),
        ("Knit 1 more round, then purl 1 round.", "Knit 1 more round. purl 1 round."),
        ("Purl 1 row, knit 1 row, purl another row.", "Purl 1 row. knit 1 row. purl 1 row."),
        ("Repeat these 2 rows 14 (16, 18) more times—30 (34, 38) rows total.", "Repeat last 2 rows 14 (16, 18) more times. 30 (34, 38) rows."),
        ("Rep rows 1 and 2 12 (13, 14) times more (26 (28, 30) rows in all).", "Rep rows 1 and 2 12 (13, 14) times more. 26 (28, 30) rows."),
        ("Repeat Rows 1 and 2 thirteen (fifteen, seventeen) more times — 28 (32, 36) rows worked.", "Repeat Rows 1 and 2 13 (15, 17) more times. 28 (32, 36) rows."),
        ("Rep Rows 1 and 2 14 more times: 30 rows total.", "Rep Rows 1 and 2 14 more times. 30 rows."),
        ("Rep rows 1 and 2 nine more times (20 rows worked).", "Rep rows 1 and 2 nine more times. 20 rows."),
        ("Rep these two rows 9 more times, for a total of 20 rows.", "Rep last two rows 9 more times. 20 rows in all."),
        ("Rep these 2 rows 9 times more = 20 rows.", "Rep last 2 rows 9 times more. 20 rows."),
        ("Repeat last 2 rounds 4 more times (10 rounds in total).", "Repeat last 2 rounds 4 more times. 10 rounds in total."),
        ("Rep last 2 rows 7 more times; 16 rows in all.", "Rep last 2 rows 7 more times. 16 rows."),
        ("Repeat these two rows 13 (15, 17) more times: 28 (32, 36) rows total.", "Repeat last two rows 13 (15, 17) more times. 28 (32, 36) rows."),
        ("Repeat rows 1 and 2 another 13 times, 28 rows altogether.", "Repeat rows 1 and 2 13 times more. 28 rows."),
        ("Work Rounds 1 and 2 a total of 8 (9, 10) times, then work Round 1 only 3 (4, 5) times. 16 (16, 16) sts remain.", "Work Rounds 1 and 2 8 (9, 10) times in all. work Round 1 3 (4, 5) times. 16 (16, 16) sts remain."),
        ("Work Rounds 1 and 2 a total of 8 times, then Round 1 only 3 times.", "Work Rounds 1 and 2 8 times in all, then Round 1 3 times."),
        ("Work rounds 1 and 2 eight times, then round 1 only three times.", "Work rounds 1 and 2 eight times, then round 1 three times."),
        ("Rep rnds 1 and 2 7 more times, then rep rnd 1 only 3 times.", "Rep rnds 1 and 2 7 more times. rep rnd 1 3 times."),
        ("Work rnds 1 and 2 8 times in all, then work only rnd 1 3 times.", "Work rnds 1 and 2 8 times in all, then work rnd 1 3 times."),
        ("Rep Rnds 1 and 2 four more times, then rnd 1 only, 3 times.", "Rep Rnds 1 and 2 four more times, then rnd 1 3 times."),
        ("Now work Rnd 1 only, 3 (4, 5) times – 20 sts rem, 10 on each needle.", "work Rnd 1 3 (4, 5) times - 20 sts rem. 10 sts on each needle."),
        ("Now work Rnd 1 only 3 times.", "work Rnd 1 3 times."),
        ("Work round 1 only 3 more times. 16 sts rem.", "Work round 1 3 more times. 16 sts rem."),
        ("Repeat round 1 only another 3 times.", "Repeat round 1 3 times more."),
        ("Work only round 1 3 times more.", "Work round 1 3 times more."),
        ("Work rnds 1 to 8 altogether 4 times, then rnds 1 to 4 once more.", "Work rnds 1-8 4 times in all, then rnds 1-4 once more."),
        ("Work rows 1–2, then row 1 once more.", "Work rows 1-2 once. work row 1 once more."),
        ("Work rows 1 and 2, then work row 1 again.", "Work rows 1 and 2 once. work row 1 once more."),
        ("Work rows 1 to 4 twice, then rows 1 and 2 once.", "Work rows 1-4 twice, then rows 1 and 2 once."),
        ("Rep rows 1-8 3 times more, then work rows 1-4 once.", "Rep rows 1-8 3 times more. work rows 1-4 once."),
        ("Work rounds 1-6 in all 5 times.", "Work rounds 1-6 5 times in all."),
        ("Then work Rnds 1–14 once more.", "work Rnds 1-14 once more."),
        ("Work rounds 1-4 a total of four times and then rounds 1-2 once.", "Work rounds 1-4 four times in all and then rounds 1-2 once."),
        ("Work rows 1 to 6 five times altogether and rows 1 to 3 once more.", "Work rows 1-6 five times in total, then rows 1-3 once more."),
        ("Work these 2 rnds until you have 28 (32, 36) sts, then work only Rnd 1 until 16 (16, 20) sts are left.", "rep last 2 rnds until you have 28 (32, 36) sts. rep Rnd 1 until 16 (16, 20) sts rem."),
        ("Repeat rounds 1–2 until you have 24 (28, 32) stitches, then repeat round 1 only until you have 12 (12, 16).", "Repeat rounds 1-2 until you have 24 (28, 32) stitches. rep round 1 until you have 12 (12, 16) sts."),
        ("Rep rnds 1 and 2 until 28 sts rem, then rep rnd 1 only until 16 sts rem.", "Rep rnds 1 and 2 until 28 sts rem. rep rnd 1 until 16 sts rem."),
        ("Repeat these 2 rounds until 24 sts remain, then work round 1 only until 12 sts remain.", "Repeat last 2 rounds until 24 sts remain. rep round 1 until 12 sts remain."),
        ("Rep these two rnds until 32 sts remain, then rep only rnd 1 until 16 sts remain.", "Rep last two rnds until 32 sts remain. rep rnd 1 until 16 sts remain."),
        ("Work rnds 1 and 2 until 24 sts are left, then only rnd 1 until 8 sts are left.", "Work rnds 1 and 2 until 24 sts rem. rep rnd 1 until 8 sts rem."),
        ("Rep last 2 rnds until there are 24 sts, then rep dec rnd every rnd until there are 12 sts.", "Rep last 2 rnds until there are 24 sts. rep dec rnd every rnd until there are 12 sts."),
        ("Repeat Rounds 1 and 2 until 36 sts remain. Repeat Round 1 only until 20 sts remain.", "Repeat Rounds 1 and 2 until 36 sts remain. Repeat Round 1 until 20 sts remain."),
        ("Do these two rounds over and over until there are 28 [32, 36] sts on each needle, 56 [64, 72] altogether.", "rep last two rounds until there are 56 [64, 72] sts. 28 [32, 36] sts on each needle."),
        ("Rep rnds 1 and 2 until there are 14 sts on each needle (28 sts in all).", "Rep rnds 1 and 2 until there are 28 sts. 14 sts on each needle."),
        ("Rep last 2 rnds until there are 10 sts on each needle. 20 sts.", "Rep last 2 rnds until there are 20 sts. 10 sts on each needle."),
        ("Repeat these 2 rounds until you have 28 sts on each needle, 56 sts in total.", "Repeat last 2 rounds until there are 56 sts. 28 sts on each needle."),
        ("Work these two rounds until there are 56 sts.", "rep last two rounds until there are 56 sts."),
        ("Keep repeating these two rows until you have 149 stitches.", "rep last two rows until you have 149 stitches."),
        ("Keep repeating rows 1 and 2 until there are 60 sts.", "rep rows 1 and 2 until there are 60 sts."),
        ("Continue repeating these 2 rows until there are 60 sts.", "rep last 2 rows until there are 60 sts."),
        ("Continue to repeat rows 1 and 2 until there are 60 sts on the needle.", "rep rows 1 and 2 until there are 60 sts."),
        ("Carry on repeating the last two rows until 20 sts remain.", "rep last two rows until 20 sts remain."),
        ("Do rows 1 and 2 until 20 sts remain.", "work rows 1 and 2 until 20 sts remain."),
        ("Go on repeating these 2 rows until 12 sts are left.", "rep last 2 rows until 12 sts rem."),
        ("Repeat Rows 1–2 until you have worked them 31 [43] times altogether: 199 [271] sts.", "Repeat Rows 1-2 31 [43] times in all. 199 [271] sts."),
        ("Rep rows 1 and 2 until you have worked them 12 times in all.", "Rep rows 1 and 2 12 times in all."),
        ("Rep rows 1-4 until they have been worked 5 times. ", "Rep rows 1-4 5 times in all. "),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """A second number is a sentence of its own; the words that only say the same go."""
    assert reword(made_plain(printed)).text == read
    assert reads(printed)


@pytest.mark.parametrize(
    "printed",
    [
        "Rep rnds 1 and 2 until there are 28 sts on each needle.",

        "Rep rows 1 and 2 over and over.",
        "Keep repeating rows 1 and 2.",
        "Work these 2 rows a total of 12 times, then turn the heel.",
        "Do the two rows 4 times over the next 12 sts.",
        "Rep rows 1 and 2 until you have worked them often enough.",
        "Work rnd 1 only on the last needle 3 times.",
        "Rep rows 1-8 twice more, omitting the last.",
    ],
)
def test_what_means_another_thing_is_not_read(printed: str) -> None:
    """A number of needles nobody gives, an end nobody gives, other stitches: none of these is a repeat that can be worked."""
    assert not reads(printed)
