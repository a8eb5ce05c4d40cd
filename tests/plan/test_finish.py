"""Places of shaping, derived from the runs."""

from __future__ import annotations

from itertools import pairwise

from stepper.plan.finish import in_size
from stepper.plan.model import Run
from stepper.plan.stitches.evenly import shaping_places
from tests.plan.test_compile import SWITCHBACK, plan_of
from tests.project.samples import project


def test_shaping_is_placed_by_the_stitches_used_before_it() -> None:
    """Stitches of the old round, as a knitter counts them on the left needle."""
    runs = (Run("k", 5, "MC"), Run("m1", 1, "MC"), Run("k", 4, "MC"), Run("k2tog", 2, "MC"), Run("k", 1, "MC"))
    assert shaping_places(runs) == (5, 9, 11)


def test_a_remark_names_the_stitches_of_her_size_alone() -> None:
    """"Ending four, four, five, five stitches before" is no place to stop at; one number is."""
    listed = "ending last rnd 4 (4, 5, 5) sts before the marker"
    assert in_size(listed, 2, 4) == "ending last rnd 5 sts before the marker"
    assert in_size(listed, 0, 4) == "ending last rnd 4 sts before the marker"
    assert in_size("2 (2.5; 3) cm", 1, 3) == "2.5 cm"
    assert in_size(listed, 1, 3) == listed
    assert in_size("after 102 / 112 / 122 sts", 1, 3) == "after 112 sts"
    assert in_size("rows 2 / 4 / 6, this rnd 6 / 8 / 10 times", 1, 3) == "rows 2 / 4 / 6, this rnd 8 times"
    assert in_size("[4: 4: 5: 6] loops for 2¾ (3, 3¼, 3½) in", 2, 4) == "5 loops for 3¼ in"
    assert in_size("4 (5, 6) (7) loops", 3, 4) == in_size("4 (5-6-7) loops", 3, 4) == "7 loops"
    assert in_size("after its 4th (5th, 6th) 7th (8th, 9th) st", 2, 6) == "after its 6th st"
    assert in_size("Cast on 168 (180) 192 (208) 228 stitches", 1, 5) == "Cast on 180 stitches"
    assert in_size("4 (4, 5, 5) 12 times", 2, 4) == "5 12 times"
    assert in_size("twirl 4 (see page 3), 2/4 (5) and row 1 (RS)", 0, 2) == "twirl 4 (see page 3), 2/4 (5) and row 1 (RS)"


def test_an_end_is_told_at_the_end_of_each_section_and_nowhere_else() -> None:
    """A count "at the end of the body" in the middle of it would be taken for a finished piece."""
    rounds = plan_of(SWITCHBACK.read_text(encoding="utf-8")).rounds
    told = 0
    for round_, following in pairwise([*rounds, None]):
        assert round_ is not None
        check = round_.checkpoint
        if check is not None and check.reason.startswith("end of the"):
            told += 1
            assert check.reason == f"end of the {round_.section}"
            assert following is None or following.section != round_.section
        elif following is not None and following.section != round_.section:
            assert check is not None or not round_.after, "the end of a section is always worth a count"
    assert told


def test_where_all_stitches_lie_on_hold_none_are_counted() -> None:
    """"Count now: 0 expected" is no help, on paper or aloud; where some stay, the others are counted."""
    work = "Cast on 20 sts. Work flat.\nKnit 2 rows.\n{}"
    rounds = plan_of(project(work.format("Place all sts on a holder."))).rounds
    assert rounds[-1].after == 0
    assert rounds[-1].checkpoint is None
    some = plan_of(project(work.format("Next row: Place 8 sts on a holder, k to end.\nBind off."))).rounds[-2]
    assert some.checkpoint is not None
    assert (some.checkpoint.expect, some.checkpoint.reason) == (12, "after the divide")


def test_the_number_that_the_yarn_is_drawn_through_is_said_where_the_page_says_it() -> None:
    """It went to the check of the count, and "draw through remaining  sts" was left."""
    work = "Cast on 10 (20, 30) sts. Join in the round.\nKnit 2 rounds.\nCut yarn and draw through remaining 10 (20, 30) sts."
    assert plan_of(project(work, size="L")).rounds[-1].remarks == ("Cut yarn and draw through remaining 30 sts",)
    tight = "Cast on 10 sts. Join in the round.\nKnit 2 rounds.\nDraw yarn through remaining 10 sts, pull tight."
    assert set(plan_of(project(tight, sizes="S", size="S")).rounds[-1].remarks) == {"pull tight", "draw yarn through 10 sts"}


def test_what_the_repeat_is_is_told_once() -> None:
    """Told in front of each round of a colour pattern it is one more thing to hear, with both hands full."""
    yarns = "Cast on 40 sts.\nJoin in the round.\nRound 1: 1 A, 3 MC\nRound 2: 2 A, 2 MC\nKnit 1 round.\nRound 4: 2 A, 2 MC\n"
    rounds = plan_of(project(yarns, size="M")).rounds
    told = [any("are the repeat" in each for each in round_.remarks) for round_ in rounds]
    assert told == [False, True, False, False, True]
