"""How long a pattern is worked."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.compile import compile_plan
from stepper.plan.model import flatten
from stepper.project.reader import read_project
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project
from tests.tables import each_row
from tests.waiting import processor_s, usual_s


def test_stockinette_is_knit_on_the_right_side_and_purled_on_the_wrong() -> None:
    """Common practice: in rows the sides alternate; in the round there is only the right one."""
    flat = plan_of(project("Cast on 8 sts.\nWork flat.\nWork in St st for 2 cm.\nBind off."))
    assert [(r.side, r.instruction) for r in flat.rounds[1:5]] == [
        ("RS", "knit"),
        ("WS", "purl"),
        ("RS", "knit"),
        ("WS", "purl"),
    ]
    around = plan_of(project("Cast on 8 sts.\nJoin in the round.\nWork in St st for 2 cm.\nBind off."))
    assert {(r.side, r.instruction) for r in around.rounds[1:-1]} == {("RS", "knit")}


def test_garter_in_the_round_alternates_knit_and_purl() -> None:
    """Common practice: in rows every row is knit, in the round every other one is purled."""
    plan = plan_of(project("Cast on 8 sts.\nJoin in the round.\nWork 4 rounds in garter st.\nBind off."))
    assert [r.instruction for r in plan.rounds[1:-1]] == ["knit", "purl", "knit", "purl"]


def test_more_rounds_come_on_top() -> None:
    """"2 more rounds" are two more, "work 4 rounds" in the same line four in all."""
    head = "Cast on 8 sts.\nJoin in the round.\n*K2, p2; rep from * to end."
    assert len(plan_of(project(f"{head} Work 4 rounds.\nBind off.")).rounds) == 1 + 4 + 1
    assert len(plan_of(project(f"{head} Work 4 more rounds.\nBind off.")).rounds) == 1 + 5 + 1


def test_a_repeat_can_end_with_a_round_of_its_own() -> None:
    """"ending with rnd 1": the nearest end that is one."""
    work = (
        "Cast on 8 sts.\nRnd 1: Knit.\nRnd 2: Purl.\nRnd 3: Purl.\n"
        "Rep rnds 1-3 until piece measures 8 cm, ending with rnd 1.\nBind off."
    )
    plan = plan_of(project(work))
    assert [r.instruction for r in plan.rounds[-3:-1]] == ["purl", "knit"]
    assert abs(len(plan.rounds) - 2 - 0.8 * 28) <= 2


def test_a_length_that_is_passed_is_told() -> None:
    """A piece does not grow shorter."""
    assert "already measures" in faults(
        project("Cast on 8 sts.\nKnit for 9 cm.\nKnit until piece measures 3 cm.")
    )


@pytest.mark.parametrize("words", ["from cast-on edge", "from the cast on", "from beg", "from the beginning"])
def test_a_second_piece_is_measured_from_its_own_cast_on(words: str) -> None:
    """28 rounds are 10 cm; before, the first piece counted, and the second was long enough at once."""
    pieces = f"Cast on 40 sts.\nKnit 28 rounds.\nBind off.\nCast on 20 sts.\nKnit until piece measures 10 cm {words}.\nBind off."
    plan = plan_of(project(pieces))
    assert len([each for each in plan.rounds[30:] if each.instruction == "knit"]) == 28
    assert plan.stretches[0].origin == 30
    other = project("Cast on 40 sts.\nKnit 28 rounds.\nBind off.") + (
        "  - name: strap\n    gauge: plain\n    work: |\n"
        f"      Cast on 20 sts.\n      Knit 4 rounds.\n      Knit until piece measures 10 cm {words}.\n"
    )
    assert len([each for each in plan_of(other).rounds if each.section == "strap"]) == 1 + 28


def test_a_section_of_two_pieces_is_measured_from_the_second() -> None:
    """A length with no place counts from the beginning of the section, or of the piece where that is later."""
    work = "Cast on 40 sts.\nKnit 28 rounds.\nBind off.\nCast on 20 sts.\nKnit until piece measures 10 cm.\nBind off."
    assert len(plan_of(project(work)).rounds) == 30 + 30


def test_stitches_that_another_section_held_have_no_cast_on_edge() -> None:
    """Where they were cast on another piece began; a plain refusal is better than any guess."""
    work = "Cast on 40 sts.\nKnit 28 rounds.\nHold all sts for strap.\nCast on 8 sts.\nKnit 1 round.\nBind off."
    strap = "Return strap to needles.\n      Knit until piece measures 20 cm from cast-on edge."
    assert "no cast-on edge to measure from" in faults(f"{project(work)}  - name: strap\n    work: |\n      {strap}\n")


def test_stitches_that_came_back_are_measured_from_their_own_cast_on() -> None:
    """Another piece was cast on meanwhile: 28 rounds are below them, and 28 more make the 20 cm."""
    work = (
        "Cast on 40 sts.\nKnit 28 rounds.\nHold all sts for strap.\nCast on 8 sts.\nKnit 1 round.\nBind off.\n"
        "Return strap to needles.\nKnit until piece measures 20 cm from cast-on edge.\nBind off."
    )
    plan = plan_of(project(work))
    back = next(at for at, each in enumerate(plan.rounds) if each.runs[0].stitch == "return")
    assert len(plan.rounds) - back - 2 == 28
    assert any("28 rows below" in each.text for each in plan.warnings)


DIVIDED = "Cast on 40 sts.\nJoin in the round.\nKnit 6 rounds.\nDivide: K10, hold 10 for left sleeve, k10, hold 10 for right sleeve. 20 sts.\n"


@pytest.mark.parametrize("place", ["divide", "underarm"])
def test_a_length_from_the_divide_begins_behind_the_round_that_divides(place: str) -> None:
    """4 cm at 28 rounds to 10 cm are 11 rounds, one of them worked; the yoke above was counted in."""
    plan = plan_of(project(f"{DIVIDED}Knit 1 round.\nKnit until body measures 4 cm from {place}."))
    assert [round_.after for round_ in plan.rounds[8:]] == [20] * 11


def test_a_sleeve_that_came_back_has_its_underarm_where_it_begins() -> None:
    """The held stitches come back at the underarm: 4 cm from there are 11 rounds, the first of them the return."""
    plan = plan_of(
        project(f"{DIVIDED}Bind off.\nReturn left sleeve to needles.\nJoin in the round.\nKnit until sleeve measures 4 cm from underarm.")
    )
    sleeve = [round_ for round_ in plan.rounds if round_.after == 10]
    assert len([round_ for round_ in sleeve if round_.instruction == "knit"]) == 11


def test_an_underarm_that_nobody_made_is_refused() -> None:
    """Measured from the beginning of the section it was some other length."""
    told = faults(project("Cast on 40 sts.\nJoin in the round.\nKnit until body measures 4 cm from underarm.\nBind off."))
    assert "nobody can tell where the underarm is" in told


ROWS = "Cast on 10 sts.\nWork flat.\nRow 1: Knit.\nRow 2: Purl.\nRow 3: *K1, p1; rep from * to end.\nRow 4: Purl.\n"


def test_a_repeat_does_not_end_with_a_row_that_it_has_not() -> None:
    """Row 7 of rows 1-4 was taken for row 3."""
    told = faults(project(f"{ROWS}Rep rows 1-4 until piece measures 4 cm, ending with row 7.\nBind off."))
    assert "ends with round 7" in told


@pytest.mark.parametrize(("row", "words"), [(3, "*k1, p1; rep from * to end"), (4, "purl")])
def test_a_repeat_that_begins_later_ends_with_the_row_of_that_number(row: int, words: str) -> None:
    """Rows 3 and 4 repeated, "ending with row 3": the number is that of the line, not the place in the repeat."""
    plan = plan_of(project(f"{ROWS}Rep rows 3-4 until piece measures 6 cm, ending with row {row}.\nBind off."))
    assert plan.rounds[-2].instruction == words


def test_one_of_two_rows_taken_alone_is_told() -> None:
    """Two rows without numbers, then "in pattern": the last is worked alone, and she is told so."""
    rows = "Cast on 12 sts.\nJoin in the round.\n*K2, p2; rep from * to end.\n*P2, k2; rep from * to end.\n"
    plan = plan_of(project(f"{rows}Work 4 rounds in pattern."))
    assert [round_.instruction for round_ in plan.rounds[-4:]] == ["*p2, k2; rep from * to end"] * 4
    assert "alone" in " ".join(warning.text for warning in plan.warnings)
    ridge = rows.replace("*K2, p2; rep from * to end.", "P to end.")
    assert plan_of(project(f"{ridge}Work 4 rounds in pattern.")).warnings == ()


def test_one_row_in_rows_goes_on_as_it_looks() -> None:
    """A rib row is written once and worked from both sides; a row knitted all along stays garter; a round stays itself."""
    flat = plan_of(project("Cast on 10 sts.\nWork flat.\n*K3, p2; rep from * to end. Work 3 rows in pattern."))
    assert [round_.instruction for round_ in flat.rounds[1:3]] == ["*k3, p2; rep from * to end", "*k2, p3; rep from * to end"]
    garter = plan_of(project("Cast on 10 sts.\nWork flat.\nK to end. Work 3 rows in pattern."))
    assert {round_.instruction for round_ in garter.rounds[1:]} == {"knit"}
    around = plan_of(project("Cast on 10 sts.\nJoin in the round.\n*K3, p2; rep from * to end. Work 3 rounds in pattern."))
    assert {round_.instruction for round_ in around.rounds[1:]} == {"*k3, p2; rep from * to end"}


def test_a_repeat_that_goes_away_from_its_count_is_refused_soon() -> None:
    """Increases never come to fewer stitches; a thousand rounds more say no more than four times the repeat."""
    work = "CO 20 sts. Join in the round.\nRnd 1: K1, m1l, k to last st, m1r, k1.\nRnd 2: Knit.\nRep rnds 1 and 2 until 10 sts remain."
    found = list[str]()
    assert processor_s(lambda: found.append(faults(project(work, sizes="S", size="S"))), tries=1) < usual_s(2)
    assert "away from it" in found[0]


@each_row("ending", ["RS", "WS"])
@each_row("mm", range(20, 36))
def test_a_length_ends_on_the_side_it_asks_for_at_the_nearest_row(ending: str, mm: int) -> None:
    """Of the rows that end on that side the one nearest to the length, midway the longer: it is rounded once."""
    ends = f"Cast on 8 sts.\nWork flat.\nWork in St st for {mm} mm, ending with a {ending} row.\nBind off."
    ended = plan_of(project(ends)).rounds[1:-1]
    assert ended[-1].side == ending
    exact = mm * 28 / 100
    fits = [rows for rows in range(1, 40) if (rows % 2 == 1) is (ending == "RS")]
    assert len(ended) == min(fits, key=lambda rows: (round(abs(rows - exact), 6), -rows))


@pytest.mark.parametrize(("ending", "rows"), [("", 72), (", ending with a WS row", 72), (", ending with a RS row", 71)])
def test_a_length_is_rounded_once(ending: str, rows: int) -> None:
    """27.5 cm at 26 rows are 71.5: 72, and 71 where the last is to be a right-side row, not 73 by way of 72."""
    head = HEAD.replace("rounds: 28", "rounds: 26")
    work = f"Cast on 8 sts.\nWork flat.\nWork in St st until piece measures 27.5 cm{ending}.\nBind off."
    assert len(plan_of(project(work, head=head)).rounds[1:-1]) == rows


def test_rows_counted_in_all_are_those_of_the_piece() -> None:
    """Ten rows in all are eight more; where the words leave that open it is told."""
    head = "Cast on 20 sts. Work flat.\nWork 2 rows in St st.\n"
    whole = plan_of(project(f"{head}Cont in St st until 10 rows have been worked in all.\nBind off."))
    assert len(whole.rounds) == 1 + 10 + 1
    plan = plan_of(project(f"{head}Cont in St st until 10 rows have been worked.\nBind off."))
    assert len(plan.rounds) == 1 + 10 + 1
    assert any("2 rows of this piece before the line count" in caution.text for caution in plan.warnings)
    assert "rows are worked already" in faults(project(f"{head}Work even until 2 rows have been worked in all."))


def test_stitches_between_two_markers_end_a_repeat() -> None:
    """The gusset grows between its markers; with another number of markers nobody can tell which are meant."""
    head = "Cast on 20 sts.\nJoin in the round.\nK8, pm, k4, pm, k to end.\n"
    rounds = "Rnd 1: K to m, sm, m1l, k to m, m1r, sm, k to end.\nRnd 2: Knit.\n"
    plan = plan_of(project(f"{head}{rounds}Rep rnds 1-2 until there are 10 sts between markers.\nBind off."))
    assert plan.rounds[-2].after == 26
    one = "Cast on 20 sts.\nJoin in the round.\nK8, pm, k12.\nRnd 1: K to m, sm, m1l, k to end.\n"
    assert "two markers are counted" in faults(project(f"{one}Rep rnd 1 until there are 10 sts between markers."))


def test_stitches_between_two_wraps_end_a_repeat() -> None:
    """A heel is turned until so many stitches in the middle have no wrap; with none wrapped there is no such number."""
    head = "Cast on 30 sts.\nWork flat.\nKnit 2 rows.\nRow 1 (RS): K20, w&t.\nRow 2 (WS): P10, w&t.\n"
    rows = "Row 3: Knit to 1 st before wrapped st, w&t.\nRow 4: Purl to 1 st before wrapped st, w&t.\n"
    more = "Rep rows 3 and 4 until 4 sts rem unwrapped in center.\nKnit 2 rows.\nBind off."
    plan = plan_of(project(f"{head}{rows}{more}"))
    assert len(plan.rounds) == 1 + 2 + 2 + 6 + 2 + 1
    whole = "Cast on 30 sts.\nWork flat.\nRow 1: Knit.\nRow 2: Purl.\n"
    assert "were wrapped" in faults(project(f"{whole}Rep rows 1 and 2 until 4 sts rem between the wraps."))


def test_in_rib_over_plain_rounds_is_refused() -> None:
    """The last round was knitted, so that "in rib" over it would be knitted as well."""
    work = "Cast on 20 sts. Join in the round.\nWork in k2, p2 rib for 4 rounds.\nKnit 1 round.\nWork 3 rounds in rib.\nBind off."
    assert "no rib stands under these stitches" in faults(project(work))


def test_one_row_that_is_missing_is_worked() -> None:
    """Nine of ten rows are there: one more, and with ten there none, which is told."""
    head = "Cast on 20 sts. Work flat.\nWork {} rows in stockinette st.\nCont in St st until 10 rows have been worked in all.\nBind off."
    assert len(plan_of(project(head.format(9))).rounds) == 1 + 10 + 1
    assert "10 rows are worked already" in faults(project(head.format(10)))


@pytest.mark.parametrize(
    ("cm", "side", "old", "new"),
    [
        # 28 rows are 10 cm, the first of them a right-side row: odd rows are right-side rows.
        (5.0, "WS", 14, 14),
        (5.0, "RS", 15, 15),  # 14.0 lies midway between 13 and 15, and the longer is taken
        (4.9, "RS", 15, 13),  # 13.72: to the nearest row, 14, and one more; the nearest odd one
        (4.9, "WS", 14, 14),
        (4.5, "WS", 14, 12),  # 12.6: 13 and one more; the nearest even one
        (4.5, "RS", 13, 13),
    ],
)
def test_a_length_that_ends_on_a_side_is_the_nearest_such_row(cm: float, side: str, old: int, new: int) -> None:
    """By hand. The plan of a journal begun before that is worked as it was then: a garment on the needles must not change
    under her hands."""
    text = project(f"Cast on 20 sts.\nWork flat.\nWork in stockinette for {cm} cm, ending with a {side} row.\nBind off.")
    assert len(plan_of(text).rounds) == 1 + new + 1
    reading = read_project(text)
    assert reading.project is not None
    formerly = compile_plan(replace(reading.project, spacing=None)).plan
    assert formerly is not None
    assert len(formerly.rounds) == 1 + old + 1


def test_a_length_just_passed_works_no_row() -> None:
    """The last decrease of a sleeve comes a few millimetres below the printed length: that is no fault of the page."""
    plan = plan_of(project("Cast on 20 sts. Join in the round.\nKnit 30 rounds.\nKnit until piece measures 10 cm.\nBind off."))
    assert len(plan.rounds) == 32
    assert any("is passed: no row is worked for it" in warning.text for warning in plan.warnings)
    told = faults(project("Cast on 20 sts. Join in the round.\nKnit 33 rounds.\nKnit until piece measures 10 cm.\nBind off."))
    assert "so 10 cm is passed" in told
    exact = plan_of(project("Cast on 20 sts. Join in the round.\nKnit 28 rounds.\nKnit until piece measures 10 cm.\nBind off."))
    assert [warning.text for warning in exact.warnings] == [
        "the piece already measures 10.0 cm here, so 10 cm is reached: no row is worked for it."
    ]


def test_a_repeat_that_comes_by_its_first_count_again_goes_on_to_the_one_wanted() -> None:
    """One decreased in the first round, two made in the second: 21, 20, 22, 21, 23, 22, 24 (counted by hand)."""
    rounds = "Rnd 1: K1, k2tog, k to end.\nRnd 2: K1, m1, k to last st, m1, k1.\n"
    work = f"Cast on 20 sts. Join in the round.\n{rounds}Rep rnds 1-2 until there are 24 sts.\nBind off."
    counts = [each.after for each in plan_of(project(work)).rounds[:-1]]
    assert counts == [20, 19, 21, 20, 22, 21, 23, 22, 24]


@pytest.mark.parametrize("fabric", ["Knit", "Work in stockinette"])
def test_rounds_in_all_count_those_of_the_line_before(fabric: str) -> None:
    """Six rounds and ten in all are ten; they were sixteen once, since the words stand on another line."""
    first = "Knit 6 rounds." if fabric == "Knit" else "Work 6 rounds in stockinette."
    plan = plan_of(project(f"Cast on 40 sts. Join in the round.\n{first}\n{fabric} until there are 10 rounds in all.", sizes="one", size="one"))
    assert len(plan.rounds) == 1 + 10


def test_rows_of_another_fabric_are_told_not_to_count_in_rows_in_all() -> None:
    """Whether the rib counts in ten rows of garter stitch in all, the page leaves open."""
    plan = plan_of(project("Cast on 40 sts. Work flat.\nWork 6 rows in k1, p1 rib.\nWork in garter st until there are 10 rows in all.", sizes="one", size="one"))
    assert len(plan.rounds) == 1 + 6 + 10
    assert "the others before it in this part do not count" in plan.warnings[0].text


@pytest.mark.parametrize(("first", "told"), [("Next row: K.", True), ("Knit 1 row.", False)])
def test_a_plain_next_row_before_the_one_that_goes_on_is_told(first: str, told: bool) -> None:
    """"Next row" twice, then "in pattern": both may be the pattern, or the second alone; a row on the way to it is not."""
    rows = f"Cast on 24 sts. Work flat.\n{first}\nNext row: *K2, p1; rep from * to end.\nWork 4 rows in pattern."
    assert any("alone" in warning.text for warning in plan_of(project(rows)).warnings) == told


@pytest.mark.parametrize(
    ("before", "count"),
    [
        ("Work 5 rows in st st.\nKnit 1 row.", 43),  # a turning ridge, and the rib begins on the right side
        ("Work 4 rows in st st.\nPurl 1 row.", 42),  # on the wrong side
        ("Work in k2, p2 rib for 3 rows.\nKnit 1 row.", 42),
    ],
)
def test_a_rib_in_rows_stands_by_itself_on_a_ridge(before: str, count: int) -> None:
    """Each stitch is knit on one side and purled on the other, whatever lies below. Source: common practice."""
    plan = plan_of(project(f"Cast on {count} sts.\nWork flat.\n{before}\nWork in k1, p1 rib for 4 rows.\nBind off."))
    rows = plan.rounds[-5:-1]
    told = ["".join(run.stitch * run.times for run in flatten(row.phrase)) for row in rows]
    first = ("kp" * count)[:count]
    turned = first[::-1].translate(str.maketrans("kp", "pk"))
    assert told == [first, turned, first, turned]


def test_rows_of_a_repeat_are_counted_from_its_first() -> None:
    """Four rows of stockinette, then two of a pattern that is repeated until eight are worked: six more, by hand, and that is told.

    They were taken as the rows of the whole piece, so that two were worked. "In all" leaves it open: those of the piece, told.
    """
    head = "Cast on 20 sts. Work flat.\nWork 4 rows in St st.\nRow 1 (RS): K1, *p1, k1; rep from * to last st, k1.\nRow 2: Purl.\n"
    plan = plan_of(project(f"{head}Rep rows 1 and 2 until 8 rows have been worked.\nBind off."))
    assert len(plan.rounds) == 1 + 4 + 8 + 1
    assert any("2 rows just worked of these count" in caution.text for caution in plan.warnings)
    plan = plan_of(project(f"{head}Rep rows 1 and 2 until 8 rows have been worked in all.\nBind off."))
    assert len(plan.rounds) == 1 + 8 + 1
    assert any("6 rows of this piece before the line count" in caution.text for caution in plan.warnings)


@pytest.mark.parametrize("start", ["start", "beg", "the beginning", "beg of work", "start of piece", "cast-on edge"])
def test_from_the_start_is_from_the_cast_on_edge(start: str) -> None:
    """By hand: 10 cm are 28 rounds, ten of which are the hem's. "From start" was measured from the heading, "from beg" was not."""
    work = f"Cast on 40 sts.\nJoin in the round.\nKnit 10 rounds.\n  - name: leg\n    work: |\nKnit until piece measures 10 cm from {start}.\nBind off."
    text = project(work).replace("        - name: leg\n          work: |", "  - name: leg\n    work: |")
    assert len(plan_of(text).rounds) == 1 + 28 + 1


def test_from_the_start_of_a_part_is_from_there() -> None:
    """By hand: 10 cm are 28 rounds behind the ten of the hem."""
    work = "Cast on 40 sts.\nJoin in the round.\nKnit 10 rounds.\n  - name: leg\n    work: |\nKnit 4 rounds.\nKnit until piece measures 10 cm from start of leg.\nBind off."
    text = project(work).replace("        - name: leg\n          work: |", "  - name: leg\n    work: |")
    assert len(plan_of(text).rounds) == 1 + 38 + 1


def test_a_rib_begun_with_its_second_row_has_its_first_on_the_other_side() -> None:
    """Begun with row 1 on the wrong side, the band shows purl stitches at both ends. Source: common practice."""
    rows = "Cast on 14 sts. Work flat.\nRow 1 (RS): Knit.\nWork 2 rows in k2, p2 rib, beginning with row "
    begun = [plan_of(project(f"{rows}{number}.")).rounds[-2].phrase for number in (1, 2)]
    worked = ["".join(run.stitch * run.times for run in flatten(phrase)) for phrase in begun]
    assert worked == ["kkppkkppkkppkk", "ppkkppkkppkkpp"]
