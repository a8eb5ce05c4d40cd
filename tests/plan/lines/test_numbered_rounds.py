"""Numbered rounds in the order of their numbers, and rows that stand for many."""

from __future__ import annotations

import pytest

from stepper.plan.model import flatten
from tests.plan.lines.test_section_lines import sides
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project
from tests.tables import each_row


@pytest.mark.parametrize(
    "back",
    ["Row 2 and all WS rows: Purl.", "Row 2 (WS) and all following WS rows: purl.", "All WS rows: Purl.", "Rows 2 and 4: Purl."],
)
def test_a_line_for_all_wrong_side_rows_stands_between_the_others(back: str) -> None:
    """However it is printed, rows 2 and 4 are purled."""
    said = sides(f"Row 1 (RS): K1, yo, k2tog, k to end.\n{back}\nRow 3: Knit.")
    assert said[:3] == [("RS", "k1, yo, k2tog, k7"), ("WS", "purl"), ("RS", "knit")]
    assert said[3] == ("WS", "purl")


def test_even_rounds_stand_between_odd_ones() -> None:
    """`Rnd 2 and all even rnds: knit`."""
    plan = plan_of(project("Cast on 8 sts.\nJoin in the round.\nRnd 1: Purl.\nRnd 2 and all even rnds: Knit.\nRnd 3: *K1, p1; rep from * to end.\nBind off."))
    assert [round_.instruction for round_ in plan.rounds[1:-1]] == ["purl", "knit", "*k1, p1; rep from * to end", "knit"]


def test_a_row_that_is_left_out_is_a_fault() -> None:
    """Going on from row 1 with row 3 would put every later row on the wrong side."""
    assert "round 2 is not written out" in faults(project("Cast on 8 sts.\nRow 1 (RS): Knit.\nRow 3: Knit.\nBind off."))


def test_a_line_for_all_rows_of_a_side_gives_a_row() -> None:
    """Anything else was taken for stockinette."""
    assert sides("Row 1 (RS): *K1, p1; rep from * to end.\nRow 2 and all WS rows: Work in pattern.\nRow 3: Knit.")[1] == (
        "WS",
        "*k1, p1; rep from * to end",
    )
    bad = "Cast on 10 sts.\nRow 1 (RS): Knit.\nRow 2 and all WS rows: Decrease evenly to 8 sts.\nRow 3: Knit.\nBind off."
    assert "gives one row" in faults(project(bad))


def test_a_number_may_stand_before_what_works_no_row() -> None:
    """"Rnd 1: Join in the round" is printed so, and is told neither as a row too many nor as one that is missing."""
    plan = plan_of(project("Cast on 8 sts.\nRnd 1: Join in the round.\nRnd 2: Knit.\nBind off."))
    assert plan.warnings == ()
    assert [round_.instruction for round_ in plan.rounds[1:-1]] == ["knit"]


def test_the_rows_of_a_chart_come_to_those_that_are_numbered() -> None:
    """A chart of two rounds worked twice is four; where the numbers say two, either may be meant."""
    assert "its chart comes to others" in faults(project("Cast on 12 sts.\nRows 1-2: Chart peak, 2 times.\nBind off."))
    assert len(plan_of(project("Cast on 12 sts.\nRows 1-4: Chart peak, 2 times.\nBind off.")).rounds) == 6


def test_the_count_of_a_line_for_many_rounds_is_that_of_its_last() -> None:
    """"Rnds 1-3: K1, k2tog, k to end. 17 sts": the first of them leaves 19, and nobody says otherwise."""
    plan = plan_of(project("Cast on 20 sts.\nJoin in the round.\nRnds 1-3: K1, k2tog, k to end. 17 sts.\nBind off.", sizes="S", size="S"))
    assert [round_.after for round_ in plan.rounds[1:-1]] == [19, 18, 17]


def test_what_a_line_for_many_rounds_says_besides_is_said_once() -> None:
    """She hears it when the first of them begins, as she would read it on the page."""
    plan = plan_of(project("Cast on 20 sts.\nJoin in the round.\nRnds 1-3: Sl1 kwise wyib, k to end.\nBind off.", sizes="S", size="S"))
    assert [any("wyib" in remark for remark in round_.remarks) for round_ in plan.rounds] == [False, True, False, False, False]


def test_a_line_for_all_even_rounds_may_be_a_round_of_a_chart() -> None:
    """Every other round of a mosaic is drawn once and worked again and again."""
    lines = "Rnd 1: Knit.\nRnd 2 and all even rnds: Chart peak, round 2.\nRnd 3: Purl."
    plan = plan_of(project(f"Cast on 12 sts.\nJoin in the round.\n{lines}\nBind off.", sizes="S", size="S"))
    assert [round_.chart_round for round_ in plan.rounds[1:-1]] == [None, 2, None, 2]


@pytest.mark.parametrize("back", ["All WS rows: P1, k to end.", "All even rows: P1, k to end.", "Row 2 and all even rows: P1, k to end."])
def test_a_line_for_all_rows_of_the_back_holds_for_the_rows_numbered_later(back: str) -> None:
    """A page prints it once, above all charts of the section. By hand: each right-side row, then the one for all."""
    said = sides(f"{back}\nRow 1 (RS): Purl.\nRow 3: K2, p to end.\nRow 1 (RS): Knit.\nRow 3: K3, p to end.")
    front = ["purl", "k2, p8", "knit", "k3, p7"]
    assert said == [row for words in front for row in (("RS", words), ("WS", "p1, k9"))]


def test_a_line_for_all_rows_of_the_front_leaves_the_back_to_its_own_rows() -> None:
    """Rows 2 and 4 are written, and none that comes later is worked as the front."""
    work = "Row 1 and all odd rows: K1, p to end.\nRow 2 (WS): P1, k to end.\nRow 4: P2, k to end."
    assert [words for _, words in sides(work)] == ["k1, p9", "p1, k9", "k1, p9", "p2, k8"]
    missing = f"Cast on 10 sts.\nWork flat.\n{work}\nRow 7 (RS): Knit.\nRow 9: Purl.\nBind off."
    assert "is not written out" in faults(project(missing))


def test_a_line_for_all_even_rows_is_for_no_odd_row() -> None:
    """Where row 2 is a right-side row, the wrong-side row behind it is row 3, and "all even rows" is not about it."""
    said = sides("All even rows: K2, p to end.\nRow 2 (RS): K1, p to end.")
    assert said == [("RS", "k1, p9")]
    missing = f"{NAMED.replace('all WS rows', 'all odd rows')}All even rows: K1, p to end.\nRow 2 (RS): Knit.\nRow 4: Purl.\nBind off."
    assert "round 3 is not written out" in faults(project(missing))


ROUNDS = "Cast on 20 sts. Join in the round.\nRnd 1: Knit.\nRnd 2: Purl.\n"


def test_numbers_that_begin_anew_take_the_place_of_those_before() -> None:
    """Behind a new round 1 the old round 3 is another pattern's, and "rep rnds 1-3" would mix the two."""
    old = "Cast on 20 sts. Join in the round.\nRnd 1: Knit.\nRnd 2: Purl.\nRnd 3: *K1, p1; rep from * to end.\nKnit 2 rounds.\n"
    new = "Rnd 1: *K2, p2; rep from * to end.\nRnd 2: Knit.\n"
    assert "round 3 has not been written out" in faults(project(f"{old}{new}Rep rnds 1-3.\nBind off."))
    plan = plan_of(project(f"{old}{new}Rep rnds 1-2.\nBind off."))
    assert [round_.instruction for round_ in plan.rounds[-5:-1]] == ["*k2, p2; rep from * to end", "knit"] * 2


@pytest.mark.parametrize("between", ["Knit 2 rounds.", "Change to 3.5 mm needles.", ""])
def test_numbers_that_go_on_stand_beside_those_before(between: str) -> None:
    """Rounds 1 and 2 on one page and 3 and 4 on the next are four rounds."""
    plan = plan_of(project(f"{ROUNDS}{between}\nRnd 3: *K1, p1; rep from * to end.\nRnd 4: Knit.\nRep rnds 1-4.\nBind off."))
    assert [round_.instruction for round_ in plan.rounds[-5:-1]] == ["knit", "purl", "*k1, p1; rep from * to end", "knit"]


@pytest.mark.parametrize("repeats", [1, 2, 3])
def test_a_chart_is_laid_as_often_as_it_fits_also_once(repeats: int) -> None:
    """Four stitches of a chart over 4, 8 and 12: the motif stands in each four, and in the only one."""
    plan = plan_of(project(f"Cast on {4 * repeats} sts.\nJoin in the round.\nRnd 1: Chart peak.\nBind off."))
    yarns = "".join("a" * run.leaves if run.yarn == "A" else "." * run.leaves for run in plan.rounds[1].runs)
    assert yarns == ".aa." * repeats


NAMED = "Cast on 20 sts.\nWork flat.\nRow 1 and all WS rows: Purl.\nRow 2 (Inc row): Kfb in each st across. 40 sts.\n"


def test_the_rows_between_rows_with_names_are_worked() -> None:
    """Row 3 is a wrong-side row of "all WS rows", whether row 4 has a name or not."""
    rounds = plan_of(project(NAMED + "Row 4 (Dec row): K2tog across. 20 sts.\nBind off.")).rounds
    assert [(each.instruction, each.label) for each in rounds[1:5]] == [
        ("purl", None),
        ("*kfb; rep from * to end", "Inc row"),
        ("purl", None),
        ("k2tog 20 times", "Dec row"),
    ]


@pytest.mark.parametrize(
    ("row", "told"),
    [
        ("Row 6 (Dec row)", "rounds 3 to 5 are not written out between rounds 2 and 6"),
        ("Row 5 (Dec row)", "rounds 3 to 4 are not written out between rounds 2 and 5"),
    ],
)
def test_rows_left_out_before_a_row_with_a_name_are_told(row: str, told: str) -> None:
    """Passed over in silence they would be a shorter piece, called sound."""
    assert told in faults(project(NAMED + row + ": K2tog across. 20 sts.\nBind off."))


def test_rows_without_numbers_may_stand_between_rows_with_names() -> None:
    """The numbering of the page goes on behind them, and the program does not count along."""
    rounds = plan_of(project(NAMED + "Work 3 rows in stockinette.\nRow 6 (Dec row): K2tog across. 20 sts.")).rounds
    assert len(rounds) == 1 + 2 + 3 + 1


def test_rows_said_to_begin_on_the_other_side_are_a_fault() -> None:
    """Rows 2 to 5 behind row 1 on the right side begin on the wrong one; knitted as numbered, the side printed would be lost."""
    told = faults(project("Cast on 8 sts.\nRow 1 (RS): Knit.\nRows 2-5 (RS): Work in st st.\nBind off."))
    assert "the first of these rows is a WS row by the rows before, not a RS row" in told
    plan_of(project("Cast on 8 sts.\nRow 1 (RS): Knit.\nRows 2-5 (WS): Work in st st.\nBind off."))


@pytest.mark.parametrize("rows", ["Row 3: Knit.\nRow 2: Purl.\nRow 3: K1, p to last st, k1.", "Row 2: Purl.\nRow 1: Knit."])
def test_a_row_written_behind_a_higher_number_is_refused(rows: str) -> None:
    """Nobody can tell whether the number is wrong or the order, and sorting them would knit a misprint in silence."""
    assert "is written behind row" in faults(project(f"Cast on 20 sts. Work flat.\n{rows}\nBind off."))


def test_lines_for_several_rounds_are_sorted_among_each_other() -> None:
    """ "Rnds 2 and 4" is written behind "Rnds 1 and 3", and comes in between."""
    plan = plan_of(project("Cast on 8 sts.\nJoin in the round.\nRnds 1 and 3: Purl.\nRnds 2 and 4: Knit.\nBind off."))
    assert [round_.instruction for round_ in plan.rounds[1:-1]] == ["purl", "knit", "purl", "knit"]


BEGUN = "With MC, cast on 12 sts. Join in the round.\n"
LAST = f"{BEGUN}Rnd 1: Knit.\nRnd 2: Purl.\nRnd 3: With A, knit.\n"
FIRST = f"{BEGUN}Rnd 1: With A, knit.\nRnd 2: Purl.\nRnd 3: With MC, knit.\n"


@each_row(
    ("work", "yarns"),
    [
        (f"{LAST}Rep rnds 1-3 once.", "MMAMMA"),
        (f"{LAST}Rep these rnds once.", "MMAMMA"),
        (f"{LAST}Continue in pattern for 5 rnds.", "MMAMMAMM"),
        (f"{LAST}Rnds 4-6: Rep rnds 1-3.", "MMAMMA"),
        (f"{LAST}These 3 rnds form the stripe pattern.\nWork 4 rnds in stripe pattern.", "MMAMMAM"),
        (f"{FIRST}Rep rnd 2 once.\nKnit 1 rnd.", "AAMAA"),
        (f"{FIRST}Break MC.\nRep rnds 1-3 once.", "AAMAAM"),
        (f"{FIRST}With MC, rep rnd 2 once.", "AAMM"),
        (f"{FIRST}With MC, rep rnds 1-3 once.", "AAMAAM"),
        (f"{FIRST}With MC, continue in pattern for 3 rnds.", "AAMMMM"),
        (f"{BEGUN}Rnd 1: With A, knit.\nRnd 2: Purl.\nWith MC, rep rnds 1-2 once.", "AAMM"),
        (f"{BEGUN}Rnd 1: With A, knit.\nRnd 2: Purl.\nRep rnds 1-2 once.", "AAAA"),
        (f"{BEGUN}Rnd 1: Knit.\nRnd 2: Purl.\nChange to A.\nRep rnds 1-2 once.", "MMAA"),
    ],
)
def test_numbered_rounds_come_again_in_their_own_yarns(work: str, yarns: str) -> None:
    """Stripes of which every count is right may be knitted in one colour: only the yarn of each round shows it."""
    rounds = plan_of(project(work, sizes="S", size="S")).rounds[1:]
    found = [{run.yarn for run in flatten(one.phrase)} for one in rounds]
    assert found == [{"MC" if yarn == "M" else yarn} for yarn in yarns]


DROPPED = "With 4 mm needles, cast on 12 sts. Join in the round.\nRnd 1: With 6 mm needles, knit.\nRnd 2: With 4 mm needles, purl.\n"


@each_row(
    "again",
    [
        "Rep rnds 1-2 once.",
        "Rnds 3-6: Rep rnds 1-2.",
        "Continue in pattern for 4 rnds.",
        "Work in pattern until piece measures 3 cm.",
        "These 2 rnds form the drop pattern.\nWork 4 rnds in drop pattern.",
    ],
)
def test_rounds_on_two_needles_by_turns_do_not_come_again_on_one(again: str) -> None:
    """Long stitches are knitted so: a round on a thick needle, a round on a thin one. Source: common practice."""
    assert "on two needles" in faults(project(f"{DROPPED}{again}", sizes="S", size="S"))


def test_rounds_behind_one_change_of_needles_go_on_with_the_last() -> None:
    """A rib goes over into the pattern; nothing changes back."""
    work = "With 4 mm needles, cast on 12 sts. Join in the round.\nRnd 1: *K1, p1; rep from *.\nChange to 6 mm needles.\nRnd 2: Knit.\nRnd 3: Purl.\nContinue in pattern for 3 rnds."
    assert {one.needle_mm for one in plan_of(project(work, sizes="S", size="S")).rounds[2:]} == {6.0}
