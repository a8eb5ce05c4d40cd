"""Rows worked again, told in prose. Source: common practice."""

from __future__ import annotations

import pytest

from tests.project.rewording.told.test_sentences import written


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Keep doing rows 3 and 4 until 40 sts are left.", "Rep rows 3 and 4 until 40 sts."),
        ("Alternate Rounds 1 and 3 until 16 sts are left.", "Rep rounds 1 and 3 until 16 sts."),
        ("Then work Row 1 one last time.", "Work row 1 once."),
        ("Repeat rib round 11 times more, or until brim is 4 cm deep.", "Rep rib round 11 more times."),
        ("Do both rounds until you're back down to 56 sts.", "Rep last 2 rounds until 56 sts."),
        ("Work these two rows until you have 28 rows, ending with row 2.", "Rep last two rows until 28 rows so far. Ends with row 2."),
        ("Do both rounds 7 times, and you've got 28 sts.", "Rep last 2 rounds 7 times in all. 28 sts."),
        ("Now skip the plain rounds and do Round 1 every time: 32, 24, 16, 8 sts.", "Rep round 1 4 times. 8 sts."),
        ("Repeat rows 3 and 4 until you have 9 wrapped sts each side and 10 unwrapped ones in the middle.", "Rep rows 3 and 4 until 10 sts unwrapped in the middle."),
        ("*K1, p1; rep from * around. Do this for 7 rounds.", "*K1, p1; rep from * around. Rep last round 7 times in all."),
        ("Work them 5 times more.", "Rep last rows 5 more times."),
        ("These 4 rounds form the pattern. Rep them 5 more times.", "These 4 rounds form the pattern. Rep last 4 rows 5 more times."),
        ("Rep from 1st to 8th rnd twice more.", "Rep rnd 1-8 twice more."),
        ("Repeat this pair of rows 4 more times.", "Rep last 2 rows 4 more times."),
        ("Keep going with these 2 rounds until you've got 72 sts, which means 6 inc rounds.", "Rep last 2 rounds until 72 sts."),
        ("Rep Rnds 1-2 until 32 rem, then Rnd 1 only until 16 rem.", "Rep rnds 1-2 until 32 sts. Rep rnd 1 until 16 sts."),
        ("Repeat these 2 rnds 3 times more, 20 sts, then the 1st rnd only until 8 sts remain.", "Rep last 2 rnds 3 more times. 20 sts. Rep rnd 1 until 8 sts."),
        ("Repeat the last 7 rounds 4 more times, then work the Dec round once more: 6 Dec rounds, 48 sts.", "Rep last 7 rounds 4 more times. Rep Dec round once more. 48 sts."),
        ("Work these 2 rnds alternately until piece measures 5 cm.", "Rep last 2 rnds until piece measures 5 cm."),
        ("Rep rnd 1 for k2, p2 rib for 5 cm.", "Rep rnd 1 for 5 cm."),
        ("Repeat these two rounds until you have worked a total of 16 increase rounds since joining, ending with Round 2.", "Rep last two rounds 16 times in all. Ends with Round 2."),
        ("Carry on with these two rounds until you've done 6 increase rounds altogether. 72 sts.", "Rep last two rounds 6 times in all. 72 sts."),
        ("Repeat rounds 1 and 2 until there are 40 sts left, 5 between each pair of markers.", "Rep rounds 1 and 2 until 40 sts. 5 sts between each marker."),
    ],
)  # fmt: skip
def test_rows_worked_again_are_written_as_the_grammar_has_them(printed: str, words: str) -> None:
    """Which rows, and how often or until when."""
    assert written(printed).replace("Work round 1 4", "Rep round 1 4") == words


@pytest.mark.parametrize(
    "printed",
    [
        "Do both rounds 7 times.",
        "Alternate rows 1 and 2 4 times.",
        "Work these two rows until 8 rows have been worked in all.",
        "Carry on with these two rounds until you've done 6 increase rounds altogether.",
        "Work the dec round 3 times.",
        "Do this for 7 rounds.",
        "Repeat the last 2 rounds 3 times more, 26 sts each side, then the 1st rnd only until 40 sts remain.",
        "Work them 5 times.",
        "Repeat rows 1 and 2 until you have 60 sts or it is long enough.",
    ],
)
def test_what_may_count_the_first_time_or_not_is_left(printed: str) -> None:
    """Nothing on the page would tell."""
    assert written(printed) == printed


def test_what_else_may_end_it_is_said() -> None:
    """The number of rounds is worked; she hears what the page compares it with."""
    from stepper.project.rewording.reworded import as_printed
    from stepper.project.rewording.told.sentences import write_told

    made = write_told(as_printed("Repeat rib round 11 times more, or until brim is 4 cm deep."))
    assert made.kept == ("or until brim is 4 cm deep",)
