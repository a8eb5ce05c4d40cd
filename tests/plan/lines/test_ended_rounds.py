"""Where the rounds of a line end, said behind a number, a repeat or a count."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

FLAT = "Cast on 20 sts. Work flat.\n"
SHAPED = "Row 1 (RS): K1, k2tog, k to end.\nRow 2: Purl.\n"


def test_a_repeat_to_a_count_goes_on_to_the_row_it_ends_with() -> None:
    """Stopped at the count, the next right-side row would fall on the wrong side."""
    plan = plan_of(project(f"{FLAT}{SHAPED}Rep rows 1-2 until 16 sts rem, ending with a WS row.\nBind off."))
    assert [(round_.side, round_.after) for round_ in plan.rounds[-4:-1]] == [("WS", 17), ("RS", 16), ("WS", 16)]


@pytest.mark.parametrize("words", ["ending with row 2", "ending with a purl row", "ending with a WS row"])
def test_the_row_is_named_by_its_number_its_stitch_or_its_side(words: str) -> None:
    """All three are printed and mean the same row here."""
    work = f"{FLAT}Work 2 rows in stockinette.\n{SHAPED}Rep last 2 rows until 16 sts rem, {words}.\nBind off."
    if "row 2" in words:
        work = work.replace("last 2 rows", "rows 1-2")
    plan = plan_of(project(work))
    assert (plan.rounds[-2].side, plan.rounds[-2].after) == ("WS", 16)


def test_a_number_of_rows_that_ends_elsewhere_is_told() -> None:
    """The number and the side disagree, and nobody can tell which is meant."""
    told = faults(project(f"{FLAT}Work 5 rows in stockinette, ending with a WS row.\nBind off."))
    assert "end with a RS row" in told


def test_a_repeat_that_would_shape_on_before_it_ends_so_is_told() -> None:
    """16 stitches are there after row 1; row 4 comes only behind another decrease, which the count forbids."""
    rows = "Row 1 (RS): K1, k2tog, k to end.\nRow 2: Purl.\nRow 3: K to last 3 sts, ssk, k1.\nRow 4: Purl.\n"
    told = faults(project(f"{FLAT}{rows}Rep rows 1-4 until 17 sts rem, ending with row 4.\nBind off."))
    assert "the rounds of the line end with a" in told
    good = plan_of(project(f"{FLAT}{rows}Rep rows 1-4 until 16 sts rem, ending with row 4.\nBind off."))
    assert (good.rounds[-2].side, good.rounds[-2].after, good.rounds[-2].instruction) == ("WS", 16, "purl")


@pytest.mark.parametrize(("words", "right"), [("row 3", True), ("row 1", False), ("row 2", False)])
def test_a_row_is_known_by_its_number_in_the_repeat(words: str, right: bool) -> None:
    """Three rows in the round, the third of which decreases: the count is reached in row 3 and in no other."""
    rows = "Rnd 1: Knit.\nRnd 2: Purl.\nRnd 3: K2tog, k to end.\n"
    text = project(f"Cast on 20 sts. Join in the round.\n{rows}Rep rnds 1-3 until 17 sts rem, ending with {words.replace('row', 'rnd')}.\nBind off.")
    if right:
        assert plan_of(text).rounds[-2].instruction == "k2tog, k16"
    elif "1" in words:  # two rounds that change nothing may still be worked: the count is 17 in rounds 1 and 2 too
        assert [each.instruction for each in plan_of(text).rounds[-3:-1]] == ["k2tog, k16", "knit"]
    else:
        assert [each.instruction for each in plan_of(text).rounds[-3:-1]] == ["knit", "purl"]


def test_a_number_of_repeats_is_not_gone_on_with() -> None:
    """"Twice more" and "ending with a RS row" disagree: a row more in silence would be a row that nobody printed."""
    rows = "Row 1 (RS): Knit.\nRow 2: Purl.\nRow 3: K1, k2tog, k to end.\nRow 4: Purl.\n"
    repeat = "Rep rows 1-4 2 more times"
    told = faults(project(f"{FLAT}{rows}{repeat}, ending with a RS row.\nBind off."))
    assert "end with a WS row" in told
    good = plan_of(project(f"{FLAT}{rows}{repeat}, ending with a WS row.\nBind off."))
    assert [each.after for each in good.rounds[:-1]] == [20, *[20, 20, 19, 19], *[19, 19, 18, 18], *[18, 18, 17, 17]]


def test_where_the_page_says_how_a_repeat_ends_no_round_is_said_to_be_left_out() -> None:
    """"What follows in it (1 round) is not worked" was told beside that very round; where the page is silent it stays told."""
    rounds = "Cast on 20 sts. Join in the round.\nRnd 1: M1, k to end.\nRnd 2: Knit.\nRep rnds 1-2 until there are 24 sts"
    told = {end: [each.text for each in plan_of(project(f"{rounds}{end}.\nKnit.")).warnings] for end in (", ending with rnd 2", ", ending with rnd 1", "")}
    assert not any("is not worked" in text for end in (", ending with rnd 2", ", ending with rnd 1") for text in told[end])
    assert any("(1 round) is not worked" in text for text in told[""])
