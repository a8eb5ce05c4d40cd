"""How far apart changes are and where they are spread, in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword
from tests.tables import each_row


@each_row(
    ("printed", "read"),
    [
        ("Knit every round, AT THE SAME TIME inc 1 st at each side of marker on the 5th and every following 8th [8th, 7th, 7th, 6th] round until there are 66 [68, 72, 76, 82] sts.", "work in stockinette, inc 1 st at each side of marker on 5th and every following 8th [8th, 7th, 7th, 6th] round until there are 66 [68, 72, 76, 82] sts."),
        ("Knit every round, at the same time inc 1 st each side of marker on 5th and every foll 8th round until there are 66 sts.", "work in stockinette, inc 1 st each side of marker on 5th and every foll 8th round until there are 66 sts."),
        ("Inc 1 st at each side of marker on the 5th and every following 8th round until there are 66 sts.", "Inc 1 st at each side of marker on 5th and every following 8th round until there are 66 sts."),
        ("Inc 1 st before and after marker on every 8th round 6 times.", "Inc 1 st at each side of marker on every 8th round 6 times."),
        ("Dec 1 st on each side of the marker every 6th round 8 times.", "Dec 1 st at each side of the marker every 6th round 8 times."),
        ("Inc 1 st each end of next and every following 8th {6th-4th-4th} row until there are 58 {68-82-88} sts.", "Inc 1 st each end of next and every following 8th (6th, 0th, 4th, 0th, 4th) row until there are 58 (68, 82, 88) sts."),
        ("Inc 1 st each end of next and every foll 8th (6th-4th-4th) row until there are 58 (68-82-88) sts.", "Inc 1 st each end of next and every foll 8th (6th, 0th, 4th, 0th, 4th) row until there are 58 (68, 82, 88) sts."),
        ("Work in St st, increasing 1 st each side on the 5th row, then every 8 (6, 6, 4) rows 7 (9, 11, 14) times — 50 (56, 62, 70) sts.", "Work in St st, increasing 1 st each side every 5th row 1 times, then every 8 (6, 6, 4) rows 7 (9, 11, 14) times. 50 (56, 62, 70) sts."),
        ("Work in St st, inc 1 st each side on 5th row, then every 8 rows 7 times.", "Work in St st, inc 1 st each side every 5th row 1 times, then every 8 rows 7 times."),
        ("Dec 1 st at each end of the next 3 (5, 5) rows – 75 (79, 85) sts – and then at each end of every RS row 2 (3, 4) times.", "Dec 1 st at each end of next 3 (5, 5) rows. 75 (79, 85) sts. Dec 1 st at each end of every RS row 2 (3, 4) times."),
        ("Dec 1 st each end of next 3 rows (75 sts), then every RS row 2 times.", "Dec 1 st each end of next 3 rows. 75 sts. Dec 1 st at each end of every RS row 2 times."),
        ("Dec 1 st at beg and end of every K row 10 (11-12) times.", "Dec 1 st at beg and end of every K row 10 (11, 12) times."),
        ("Dec 1 st at both ends of every purl row 4 times.", "Dec 1 st at each end of every purl row 4 times."),
        ("Dec 1 st each end every K row until 20 sts rem.", "Dec 1 st at each end of every K row until 20 sts rem."),
        ("K2tog at both ends of every row until 101 sts remain.", "Dec 1 st at each end of every row until 101 sts remain, working decreases 0 sts in from edge."),
        ("K.2 tog. at both ends of next 6 rows.", "Next 6 rows: k2tog, work in pattern to last 2 sts, k2tog."),
        ("K2 tog at each end of every alt row until 40 sts rem.", "Dec 1 st at each end of every alt row until 40 sts rem, working decreases 0 sts in from edge."),
        ("K2tog at beg and end of next row.", "Dec 1 st at each end of next row, working decreases 0 sts in from edge."),
        ("Cast off 6 sts at the beg of the next 2 rows, then k2tog at both ends of every row until 101 sts remain.", "Cast off 6 sts at beg of next 2 rows. Dec 1 st at each end of every row until 101 sts remain, working decreases 0 sts in from edge."),
        ("At armhole edge, bind off 4 sts once, then dec 1 st every other row 3 (4-4) times.", "bind off 4 sts at armhole edge once. dec 1 st at armhole edge every other row 3 (4, 4) times."),
        ("At neck edge, bind off 4 sts once, then dec 1 st every other row 3 times.", "bind off 4 sts at neck edge once. dec 1 st at neck edge every other row 3 times."),
        ("At arm edge, bind off 4 sts once, then dec 1 st every RS row 3 times.", "bind off 4 sts at armhole edge once. dec 1 st at armhole edge every RS row 3 times."),
        ("Bind off 4 sts at armhole edge once, then dec 1 st at same edge every other row 3 times.", "Bind off 4 sts at armhole edge once. dec 1 st at armhole edge every other row 3 times."),
        ("Dec 1 st at neck edge only on next and foll 2 (2:1) alt rows, then on every foll 4th row until 18 (19:20) sts rem.", "Dec 1 st at neck edge on next row, then every alt row 2 (2, 1) times, then on every foll 4th row until 18 (19, 20) sts rem."),
        ("Cont to dec at neck edge only on next and foll 2 [2:1:-:-] alt rows, then on every foll 4th row until 18 [19:20:21:23] sts rem.", "dec 1 st at neck edge on next row, then every alt row 2 (2, 1, 0, 0) times, then on every foll 4th row until 18 [19, 20, 21, 23] sts rem."),
        ("Keeping neck edge straight, cont to dec at raglan edge on every RS row until 2 sts rem.", "dec 1 st at armhole edge on every RS row until 2 sts rem."),
        ("Cont to dec at raglan edge only on every RS row until 2 sts rem.", "dec 1 st at armhole edge on every RS row until 2 sts rem."),
        ("Increase 1 st on each side of the marker every 2 cm until there are 60 sts.", "Increase 1 st at each side of the marker every 2 cm until there are 60 sts."),
        ("Cont to increase in this way on every alt rnd until there are 88 sts.", "rep alike inc rnd on every alt rnd until there are 88 sts."),
        ("Continue to dec in this manner, working one st less between the decreases in every right side row, until 19 sts remain.", "rep closer dec rnd every right side row until 19 sts remain."),
        ("Continue to decrease in this manner on every other round, with one stitch fewer between decreases each time, until 56 stitches are left.", "rep closer dec rnd on every other round until 56 stitches rem."),
        ("Carry on like that, increasing in every third round, until there are 13 (15) stitches between the markers and you have 49 (59) stitches in total.", "Carry on like that, increasing in every third round, until there are 13 (15) stitches between the markers. 49 (59) stitches."),
        ("Cont inc in this way every 3rd rnd until there are 15 sts between markers.", "rep alike inc rnd every 3rd rnd until there are 15 sts between markers."),
        ("Repeat this increase every 7th round 5 times more.", "rep same inc round every 7th round 5 times more."),
        ("Repeat this decrease every 6th rnd until a total of 18 (20, 25) decreases have been made.", "rep same dec rnd every 6th rnd 18 (20, 25) times in all."),
        ("Repeat this dec rnd every 6th rnd until 8 decs have been worked.", "rep same dec rnd every 6th rnd 8 times in all."),
        ("Decrease like this every 8th (7th – 5th – 6th) round a total of 4 (5 – 8 – 8) times = 32 (34 – 36 – 38) stitches.", "rep same Dec round every 8th (7th, 0th, 5th, 0th, 6th) round 4 (5, 8, 8) times in total. 32 (34, 36, 38) stitches."),
        ("Repeat this increase every other row (i.e. on every row from the right side) a total of 8-9-9 times = 21-23-23 sts.", "rep same inc row every RS row 8 (9, 9) times in all. 21 (23, 23) sts."),
        ("Repeat these decreases in every 3rd rnd another 4 (4, 4, 5) times.", "rep same dec rnd every 3rd rnd 4 (4, 4, 5) times more."),
        ("Repeat these decreases in every 3rd rnd another 4 times, until there are 56 sts.", "rep same dec rnd every 3rd rnd 4 times more. 56 sts."),
        ("Rep Left Front Dec Row every RS row until 16 sts remain, ending with a RS row.", "Rep Left Front Dec Row every RS row until 16 sts remain. ends with a RS row."),
        ("Rep Dec Row every RS row until 16 sts remain, ending with a RS row.", "Rep Dec Row every RS row until 16 sts remain. ends with a RS row."),
        ("Dec 1 st each end of every RS row until 16 sts rem, ending with a WS row.", "Dec 1 st each end of every RS row until 16 sts rem. ends with a WS row."),
        ("Dec 1 st each end of every foll alt row until 16 sts rem, ending with a P row.", "Dec 1 st each end of every foll alt row until 16 sts rem. ends with a P row."),
        ("Rep inc rnd every 8th rnd until there are 60 sts, then work even until sleeve measures 40 cm.", "Rep inc rnd every 8th rnd until there are 60 sts. work even until sleeve measures 40 cm."),
        ("On the next round, increase 1 stitch at each end of the round.", "increase 1 stitch at each end of next round."),
        ("Knit 1 round, at the same time as 16 (16, 20) sts are increased evenly distributed = 176 (192, 224) sts.", "Knit 1 round, increase 16 (16, 20) sts evenly. 176 (192, 224) sts."),
        ("Knit 1 round, at the same time increasing 16 sts evenly. 176 sts.", "Knit 1 round, increasing 16 sts evenly. 176 sts."),
        ("Knit 1 round where you increase 8 sts evenly = 48 sts.", "Knit 1 round, increase 8 sts evenly. 48 sts."),
        ("Knit 1 rnd, dec'ing 4 sts.", 'Knit 1 rnd, decreasing 4 sts.'),
        ("Knit 1 rnd, dec'ing 0 (0, 4) sts.", 'Knit 1 rnd, decreasing 0 (0, 4) sts.'),
        ("Continuing in MC, knit 1 round, decreasing 4 sts evenly.", "with MC, knit 1 round, decreasing 4 sts evenly."),
        ("Knit 1 round and decrease evenly 8 (12, 16) sts = 80 (84, 88) sts.", "Knit 1 round, decrease evenly 8 (12, 16) sts. 80 (84, 88) sts."),
        ("Knit 1 round and decrease 8 sts evenly spaced.", "Knit 1 round, decrease 8 sts evenly."),
        ("Next round: knit, increasing 2 sts evenly: 38 sts.", "Next round: knit, increasing 2 sts evenly. 38 sts."),
        ("Knit 8 rounds. On the last round decrease 8 sts evenly.", "Knit 8 rounds, decreasing 8 sts evenly across the last round."),
        ("Knit 8 rounds, decreasing 8 sts evenly on the last round.", "Knit 8 rounds, decreasing 8 sts evenly across the last round."),
        ("Work 6 cm in rib, ending on a WS row and dec 2 sts evenly across last row. 36 sts.", "work in rib for 6 cm, ending with a WS row, decrease 2 sts evenly across the last row. 36 sts."),
        ("Knit, inc 2 sts evenly across. 22 sts.", "Knit, increase 2 sts evenly across. 22 sts."),
        ("Increase 10 sts evenly across next row.", "Increase 10 sts evenly."),
        ("Purl 1 row, inc 8 sts evenly across row.", "Purl 1 row, increase 8 sts evenly across row."),
        ("Next rnd: Inc 8 sts evenly around.", "Next rnd: Increase 8 sts evenly around."),
        ("Next row: Knit, dec 5 sts evenly spaced across row.", "Next row: Knit, decrease 5 sts evenly spaced across row."),
        ("Knit 1 row increasing 4 sts evenly spaced.", "Knit 1 row increasing 4 sts evenly."),
        ("Purl one row, decreasing one stitch in the middle.", "Purl one row, decrease 1 st evenly."),
        ("Knit. There should be 17 (17, 19) sts between markers and 64 (68, 74) sts in total.", "Knit. 17 (17, 19) sts between markers. 64 (68, 74) sts."),
        ("K1, k2tog, k to last 3 sts, ssk, k1. — 2 sts decreased.", "K1, k2tog, k to last 3 sts, ssk, k1. 2 sts decreased."),
        ("Knit. 296 sts, 73 sts on each side.", "Knit. 296 sts."),
        ("Knit. 48 sts: 24 sts on each needle.", "Knit. 48 sts. 24 sts on each needle."),
        ("Knit. 28 sts on each needle, 56 altogether.", "Knit. 56 sts. 28 sts on each needle."),
        ("Knit. (9 sts on each needle.)", "Knit. 9 sts on each needle"),
        ("Knit. Now there are 78 sts each on front and back piece.", "Knit. 78 sts each for front and back."),
        ('Knit. 8 sts have been decreased.', "Knit.  8 sts dec'd."),
        ("Knit. You should now have 40 sts on your needles.", "Knit. 40 sts."),
        ("Knit. There will be 40 sts on the needle.", "Knit. 40 sts."),
        ("Knit. 40 sts now remain.", "Knit. 40 sts rem."),
        ("Knit. 40 sts left on needle.", "Knit. 40 sts rem."),
        ("Knit. This leaves you with 40 sts.", "Knit. 40 sts."),
        ("Knit. This gives 40 sts.", "Knit. 40 sts."),
        ("Knit. Total: 40 sts.", "Knit. 40 sts."),
        ("Knit. Stitch count: 40 sts.", "Knit. 40 sts."),
        ("Knit. 40 sts: 20 for front and 20 for back.", "Knit. 40 sts."),
        ("Knit. 40 sts, 10 on each needle.", "Knit. 40 sts. 10 sts on each needle."),
        ("Knit. (38, 42, 46 stitches)", "Knit.. 38 (42, 46) stitches"),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is counted behind a shaping is a sentence of its own, which is checked."""
    assert reword(made_plain(printed)).text == read
    assert reads(printed)


@pytest.mark.parametrize(
    "printed",
    [
        "Continue to dec in this manner, working 2 sts less between decreases in every RS row, until 19 sts remain.",
        "Dec 1 st at neck edge only until 2 sts rem.",
        "Inc 1 st at each side of markers 1 and 3 on the 5th row.",
        "Decrease 5 sts on the next row.",
        "Knit 1 round, increasing 8 sts over the thumb.",
        "Repeat this decrease every 6th rnd until a total of 8 stitches have been made.",
        "Rep dec rnd 4 times more, or until 56 sts remain.",
        "Knit. +4 rows.",
    ],
)
def test_what_means_another_thing_is_not_read(printed: str) -> None:
    """Another number less, no interval, other markers, a place of its own: none of these is what looks like it."""
    assert not reads(printed)
