"""Patterns that a page defines under a name: kept, worked where they are called. Worked out by hand."""

from __future__ import annotations

import pytest

from stepper.plan.model import flatten
from tests.plan.fabric.test_established import knit, told
from tests.plan.test_compile import faults
from tests.project.samples import project
from tests.tables import each_row

TRELLIS = (
    "Cast on 25 sts. Work flat.\nTrellis pattern (multiple of 6 + 1):\nRow 1 (RS): *K1, p5; rep from * to last st, k1.\n"
    "Row 2: *P1, k5; rep from * to last st, p1.\nRow 3: Knit.\nRow 4: Purl.\n"
)


def test_a_definition_works_nothing() -> None:
    """Four rows too many at the beginning would shift every length."""
    plan = knit(f"{TRELLIS}Knit 2 rows.")
    assert [round_.instruction for round_ in plan.rounds] == ["cast on 25", "knit", "knit"]


def test_a_pattern_is_worked_where_it_is_called() -> None:
    """All rows in order, from the row the line names."""
    assert told(knit(f"{TRELLIS}Work 2 rows in Trellis pattern."), 2) == [
        "(k1, p5) 4 times, k1",
        "(p1, k5) 4 times, p1",
    ]
    assert told(knit(f"{TRELLIS}Work 2 rows in trellis patt, beg with row 3."), 2) == ["knit", "purl"]


def test_a_pattern_without_a_multiple_is_kept_if_it_is_called() -> None:
    """A heading with rows below it that nobody calls is worked as it stands."""
    rows = "Cast on 24 sts.\nJoin in the round.\nLace pattern:\nRnd 1: *K1, yo, k2tog; rep from * to end.\nRnd 2: Knit.\n"
    assert len(knit(f"{rows}Purl 1 rnd.\nWork 2 rnds in lace pattern.").rounds) == 4
    assert len(knit(f"{rows}Rep rnds 1-2 once.").rounds) == 5


@pytest.mark.parametrize(
    "work",
    [
        "Cast on 20 sts. Work flat.\n" + TRELLIS.split("\n", 1)[1] + "Work 2 rows in Trellis pattern.",
        f"{TRELLIS}Work 2 rows in Trellis pattern, beg with row 5.",
        f"{TRELLIS}Knit 1 row.\nWork 2 rows in Trellis pattern.",
        TRELLIS.replace("Row 3: Knit.\n", "") + "Work 2 rows in Trellis pattern.",
    ],
)
def test_a_pattern_that_does_not_fit_is_refused(work: str) -> None:
    """Another count, a row it does not have, a right-side row on the wrong side, a row left out."""
    assert faults(project(work, sizes="S", size="S"))


def test_a_pattern_may_be_a_single_row() -> None:
    """Ridged fabrics are printed so: one line under the name."""
    rows = "Cast on 24 sts.\nJoin in the round.\nMoss pattern:\nRnd 1: *K1, p1; rep from * to end.\n"
    assert (
        told(knit(f"{rows}Purl 1 rnd.\nWork 2 rnds in moss pattern."), 2)
        == ["*k1, p1; rep from * to end"] * 2
    )


LACE = (
    "Cast on 16 sts.\nJoin in the round.\nLadder lace (multiple of 8 sts):\nRnd 1: *K6, yo, k2tog; rep from * to end.\n"
    "Rnd 2: Knit.\nRnd 3: *K4, yo, k2tog, k2; rep from * to end.\nRnd 4: Purl.\n"
)
OPEN, HIGHER = "*k6, yo, k2tog; rep from * to end", "*k4, yo, k2tog, k2; rep from * to end"


def test_lace_that_is_called_again_goes_on_where_it_stands() -> None:
    """Its yarn overs change no count, so six rounds of four are followed by the third."""
    plan = knit(f"{LACE}Work 6 rnds in ladder lace.\nWork 2 rnds in ladder lace.")
    assert told(plan, 8) == [OPEN, "knit", HIGHER, "purl", OPEN, "knit", HIGHER, "purl"]


def test_a_pattern_begun_in_its_middle_goes_on_from_there() -> None:
    """Four rounds from the third end with the second; the next is the third again."""
    plan = knit(f"{LACE}Work 4 rnds in ladder lace, beg with rnd 3.\nWork 1 rnd in ladder lace.")
    assert told(plan, 5) == [HIGHER, "purl", OPEN, "knit", HIGHER]


def test_rows_of_a_pattern_are_worked_by_their_numbers() -> None:
    """ "Rounds 1-4 of ladder lace twice, then rounds 1 and 2 once" is ten rounds; the eleventh is the third."""
    plan = knit(
        f"{LACE}Work rnds 1-4 of ladder lace twice, then rnds 1 and 2 once.\nWork 1 rnd in ladder lace."
    )
    assert told(plan, 11) == [OPEN, "knit", HIGHER, "purl"] * 2 + [OPEN, "knit", HIGHER]


@pytest.mark.parametrize(
    "line",
    [
        "Work the 4 rnds of ladder lace 3 times.",
        "Work 3 repeats of ladder lace.",
        "Work all rnds of ladder lace 3 times.",
    ],
)
def test_a_whole_pattern_is_worked_so_often(line: str) -> None:
    """Three times four rounds."""
    assert told(knit(f"{LACE}{line}"), 12) == [OPEN, "knit", HIGHER, "purl"] * 3


def test_a_sentence_that_closes_a_definition_works_nothing() -> None:
    """ "Rep rnds 1-4 for pattern" says that the four rounds are the pattern; "These 4 rnds form" names it."""
    closed = f"{LACE}Rep rnds 1-4 for pattern.\nWork 1 rnd in ladder lace."
    assert told(knit(closed), 1) == [OPEN]
    named = f"{LACE}These 4 rnds form step pattern.\nWork 1 rnd in step pattern."
    assert told(knit(named), 1) == [OPEN]


def test_rows_like_others_are_kept_with_them() -> None:
    """ "Rows 3-4: as rows 1-2" makes a pattern of four rows."""
    rows = "Cast on 24 sts.\nJoin in the round.\nRidge pattern (multiple of 2):\nRnd 1: Knit.\nRnd 2: Purl.\n"
    plan = knit(
        f"{rows}Rnds 3-4: As rnds 1-2.\nRnd 5: *K1, p1; rep from * to end.\nWork the 5 rnds of ridge pattern once."
    )
    assert told(plan, 5) == ["knit", "purl", "knit", "purl", "*k1, p1; rep from * to end"]


@pytest.mark.parametrize(
    "line",
    [
        "Work the 5 rows of trellis pattern.",
        "Work rows 4-6 of trellis pattern.",
        "Work rows 1-2 of ribble pattern.",
        "Work row 2 of trellis pattern.",
        "Work rows 1-3 of trellis pattern twice.",
    ],
)
def test_rows_that_a_pattern_does_not_have_are_refused(line: str) -> None:
    """Another number, another name, a wrong-side row on the right side, three rows that come on both sides."""
    assert faults(project(f"{TRELLIS}{line}", sizes="S", size="S"))


@pytest.mark.parametrize("label", ["Heel flap (28 sts):", "Heel flap, 28 sts:", "Left wing (worked over 28 sts):"])
def test_a_part_with_its_stitches_is_no_pattern(label: str) -> None:
    """Its rows were kept for a pattern that no line calls: the flap was not knitted, and the plan was called sound."""
    rounds = knit(f"Cast on 28 sts. Work flat.\n{label}\nRow 1: Knit.\nRow 2: Purl to last 2 sts, p2tog. 27 sts.\nBind off.").rounds
    assert [each.after for each in rounds] == [28, 28, 27, 0]


def test_a_definition_that_nobody_calls_is_told() -> None:
    """Its heading may have been meant as the beginning of the work."""
    (said,) = knit(f"{TRELLIS}Knit 2 rows.").warnings
    assert "no line calls them" in said.text


def test_a_definition_among_stitches_is_told() -> None:
    """With stitches on the needles its rows might be meant to be worked at once; before the cast-on they cannot be."""
    (said,) = knit(f"{LACE}Work 1 rnd in ladder lace.").warnings
    assert "ladder lace pattern are not worked here: they are kept for where a line calls them" in said.text
    cast_on, join, *rest = LACE.splitlines(keepends=True)
    assert knit("".join([*rest, cast_on, join]) + "Work 1 rnd in ladder lace.").warnings == ()


def test_a_pattern_of_one_row_may_be_told_with_its_name() -> None:
    """Worked where it stands, the rib before the cast-on would have no stitches, and any other be a row too many."""
    rows = "Twisted rib pattern (multiple of 4 sts): *(K1 tbl) twice, p2; rep from * to end.\n"
    plan = knit(f"{rows}Cast on 24 sts.\nJoin in the round.\nWork in twisted rib pattern for 2 rounds.")
    assert [round_.instruction for round_ in plan.rounds][1:] == ["*(k1 tbl) 2 times, p2; rep from * to end"] * 2
    assert len(knit(f"Cast on 24 sts.\nJoin in the round.\n{rows}Knit 1 round.").rounds) == 2


def test_a_rib_told_on_the_needles_is_worked() -> None:
    """"Rib: k2, p2" behind the cast-on is the first round of the cuff."""
    assert len(knit("Cast on 24 sts.\nJoin in the round.\nRib: *K2, p2; rep from * to end.").rounds) == 2


SHINGLE = "Shingle stitch (multiple of 2):\nRnd 1: With A, knit.\nRnd 2: Purl.\nRnd 3: With MC, *k1, p1; rep from *.\nRnd 4: Knit.\n"
ROUND = "With MC, cast on 12 sts. Join in the round.\nKnit 1 rnd.\n"


@each_row(
    "called, yarns",
    [
        ("Work rnds 1-4 of shingle stitch.", "AAMM"),
        ("Work rnds 2-3 of shingle stitch.", "AM"),
        ("Work 6 rnds in shingle stitch.", "AAMMAA"),
        ("Work rnds 1-4 of shingle stitch twice.", "AAMMAAMM"),
        ("Work rnd 2 of shingle stitch.\nKnit 1 rnd.\nWith MC, knit 1 rnd.", "AAM"),
    ],
)
def test_rows_of_a_pattern_keep_the_yarns_they_name(called: str, yarns: str) -> None:
    """Stripes knitted in one colour would look right in every count: a row without a yarn goes on in that before it."""
    rounds = knit(f"{SHINGLE}{ROUND}{called}").rounds[2:]
    assert [{run.yarn for run in flatten(one.phrase)} for one in rounds] == [{"MC" if yarn == "M" else yarn} for yarn in yarns]


@each_row("row", ["Purl. Change to 4 mm needles.", "With 4 mm needles, purl.", "Break A. Purl.", "Purl. Break A.", "With A, purl. With MC, knit 1 rnd."])
def test_what_a_row_of_a_pattern_orders_besides_is_refused(row: str) -> None:
    """Whether a needle changes each time that the row is worked, its words do not say."""
    work = f"{SHINGLE.replace('Rnd 4: Knit.', f'Rnd 4: {row}')}{ROUND}Work rnds 1-4 of shingle stitch."
    assert faults(project(work, sizes="S", size="S"))


def test_a_first_row_without_a_yarn_is_refused_where_a_later_one_has_one() -> None:
    """The second time it would go on in the yarn of the last."""
    work = f"{SHINGLE.replace('With A, knit', 'Knit')}{ROUND}Work rnds 1-4 of shingle stitch."
    assert "names no yarn" in faults(project(work, sizes="S", size="S"))


def test_a_row_in_another_yarn_is_worked_over_no_part_of_a_row() -> None:
    """Its stitches alone would be in that yarn, and the rest of the row is not."""
    work = f"{SHINGLE.replace('stitch (multiple of 2)', 'panel (4 sts)')}{ROUND}Next rnd: K4, work row {{}} of shingle panel, k4."
    assert faults(project(work.format(1), sizes="S", size="S"))
    assert told(knit(work.format(3)), 1) == ["k4, k1, p1, k1, p1, k4"]
