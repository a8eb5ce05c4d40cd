"""Shaping at intervals."""

from __future__ import annotations

from itertools import pairwise

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project


@pytest.mark.parametrize(
    ("every", "times", "rounds"),
    [("10th", 10, 100), ("9th", 4, 36)],
)
def test_every_so_many_rounds_takes_so_many_rounds(every: str, times: int, rounds: int) -> None:
    """Ten times every 10th and four times every 9th are 136 rows (check-values 4.3.1)."""
    plan = plan_of(
        project(
            "Cast on 60 sts.\nJoin in the round.\nInc round: K1, m1l, k to last st, m1r, k1.\n"
            f"Work inc round every {every} round {times} times. {60 + 2 * times} sts.\nBind off."
        )
    )
    assert len(plan.rounds) - 2 == rounds


def test_a_round_is_found_whether_its_name_is_written_in_full_or_not() -> None:
    """"Dec rnd:" and "dec round" name one round, as do "decrease round" and "dec rnd"."""
    for written, asked in (("Dec rnd", "dec round"), ("Decrease round", "dec rnd"), ("Inc rnd", "increase round")):
        plan = plan_of(
            project(f"Cast on 60 sts.\nJoin in the round.\n{written}: K1, ssk, k to last 3 sts, k2tog, k1.\nWork {asked} every 4th round twice. 54 sts.\nBind off.")
        )
        assert [round_.after for round_ in plan.rounds[1:-1]] == [58, 58, 58, 58, 56, 56, 56, 56, 54]


def test_a_round_asked_for_with_its_article_is_the_round_of_that_name() -> None:
    """"Repeat the decrease round every 4th round": an article is no part of a name, which may have two words more."""
    for written, asked in (("Decrease round", "the decrease round"), ("Waist decrease round", "the waist dec rnd")):
        shaping = f"{written}: K1, ssk, k to last 3 sts, k2tog, k1.\nRepeat {asked} every 4th round 2 more times. 54 sts."
        plan = plan_of(project(f"Cast on 60 sts.\nJoin in the round.\n{shaping}\nBind off."))
        assert [round_.after for round_ in plan.rounds[1:-1]] == [58, 58, 58, 58, 56, 56, 56, 56, 54]


def test_a_decrease_is_never_offered_for_an_increase() -> None:
    """They look alike and do the opposite."""
    shown = faults(project("Cast on 60 sts.\nDecrease round: K1, k2tog, k to end.\nWork the increase round every 4th round twice.\nBind off."))
    assert '"increase round" has not been written out' in shown
    assert "Did you mean" not in shown


def test_a_right_side_row_stays_on_the_right_side() -> None:
    """Shaping on RS rows only: every second row from the first, and never on a purl row."""
    plan = plan_of(project("Cast on 20 sts.\nWork flat.\nInc row (RS): K1, m1, k to end.\nWork inc row every RS row 4 times. 24 sts.\nBind off."))
    assert [(round_.side, round_.after) for round_ in plan.rounds[1:-1]] == [
        ("RS", 21), ("WS", 21), ("RS", 22), ("WS", 22), ("RS", 23), ("WS", 23), ("RS", 24),
    ]  # fmt: skip


def test_stitches_are_bound_off_at_the_beginning_of_two_rows() -> None:
    """An underarm: four at each side, one row after the other. Source: common practice."""
    plan = plan_of(project("Cast on 40 sts.\nWork flat.\nRow 1 (RS): Knit.\nRow 2: Purl.\nBind off 4 sts at the beginning of the next 2 rows. 32 sts.\nBind off."))
    assert [round_.instruction for round_ in plan.rounds[3:5]] == ["bind off 4, k36", "bind off 4, p32"]


def test_stitches_are_cast_on_at_the_beginning_of_rows() -> None:
    """The other way round, and in the other order of words."""
    plan = plan_of(project("Cast on 20 sts.\nWork flat.\nRow 1 (RS): Knit.\nRow 2: Purl.\nAt the beg of the next 2 rows, cast on 6 sts. 32 sts.\nBind off."))
    assert [round_.after for round_ in plan.rounds[3:5]] == [26, 32]


@pytest.mark.parametrize(
    ("words", "at"),
    [
        ("Dec rnd: K1, k2tog, k to end.\nKnit 5 rounds.\nWork dec rnd every 6 rnds 2 times.", [1, 7, 13]),
        ("Dec rnd: K1, k2tog, k to end.\nKnit 5 rounds.\nRep dec rnd every 6th round 2 times more.", [1, 7, 13]),
        ("Dec rnd: K1, k2tog, k to end.\nKnit 3 rounds.\nRep dec rnd every 6 rounds twice.", [1, 7, 13]),
        ("Dec rnd: K1, k2tog, k to end.\nRep dec rnd every 6th rnd 2 times.", [1, 7, 13]),
        ("Dec rnd: K1, k2tog, k to end.\nKnit 8 rounds.\nRep dec rnd every 6th rnd 2 times.", [1, 15, 21]),
        ("Dec 1 st at each end of next rnd.\nKnit 5 rounds.\nDec 1 st at each end of every 6th rnd 2 times.", [1, 7, 13]),
        ("Knit 5 rounds.\nDec rnd: K1, k2tog, k to end.\nWork dec rnd every 6 rounds 2 times.", [11, 17]),
    ],
)  # fmt: skip
def test_an_interval_counts_from_the_last_shaping(words: str, at: list[int]) -> None:
    """Five plain rounds and the sixth: rounds knitted since count, unless the interval is over. Common practice."""
    plan = plan_of(project(f"Cast on 40 sts. Join in the round.\n{words}\nBind off."))
    assert [each.index for each in plan.rounds[1:-1] if each.shaping] == at


def test_rounds_that_count_towards_an_interval_are_told() -> None:
    """It is an assumption, with its place."""
    words = "Cast on 40 sts. Join in the round.\nDec rnd: K1, k2tog, k to end.\nKnit 5 rounds.\nRep dec rnd every 6 rnds 2 times."
    assert [each.text for each in plan_of(project(words)).warnings] == [
        "the 5 rounds since the last such shaping count towards the first 6."
    ]


def test_between_shapings_the_fabric_goes_on() -> None:
    """A shaped round with its own knit and purl is worked over a rib, and the rounds between are that rib."""
    work = (
        "Cast on 40 sts. Join in the round.\n*K2, p2; rep from * to end. Work 2 rounds.\n"
        "Dec rnd: K1, k2tog, *p1, k1; rep from * to last 3 sts, ssk, k1.\n"
    )
    seed = "Rnd 1: *K1, p1; rep from * to end.\nRnd 2: *P1, k1; rep from * to end.\nRep rnds 1-2 2 times.\n"
    work = work.replace("*K2, p2; rep from * to end. Work 2 rounds.\n", seed)
    plan = plan_of(project(f"{work}Rep dec rnd every 4th rnd once more.", sizes="S", size="S"))
    between = ["".join(run.stitch * run.times for run in each.runs)[3:-3] for each in plan.rounds[-4:-1]]
    assert between == ["pk" * 16, "kp" * 16, "pk" * 16]


def test_plain_rounds_after_a_pattern_are_told() -> None:
    """The shaped round is written plain all along, so the rounds between are; the rib before it is not gone on with."""
    words = (
        "Cast on 40 sts. Join in the round.\n*K2, p2; rep from * to end. Work 2 rounds.\n"
        "Dec rnd: K1, k2tog, k to end.\nWork dec rnd every 4th rnd 2 times."
    )
    plan = plan_of(project(words))
    assert [each.instruction for each in plan.rounds[3:6]] == ["knit"] * 3
    assert any("worked plain" in each.text for each in plan.warnings)


def test_times_behind_other_rounds_may_be_in_all() -> None:
    """"Dec rnd: … Knit 5 rounds. Work dec rnd every 6 rnds 3 times": the count says whether the first is one of them."""
    words = "Cast on 40 sts. Join in the round.\nDec rnd: K1, k2tog, k to end.\nKnit 5 rounds.\nWork dec rnd every 6 rnds 3 times."
    for count, at in (("36 sts.", [1, 7, 13, 19]), ("37 sts.", [1, 7, 13])):
        plan = plan_of(project(f"{words} {count}"))
        assert [each.index for each in plan.rounds if each.shaping] == at
    assert any("in all" in each.text for each in plan_of(project(words)).warnings)


def test_shaping_falls_on_the_side_that_its_interval_names() -> None:
    """"Every RS row" is a right-side row, also where the round itself names no side; the other side is refused."""
    work = "Cast on 20 sts.\nWork flat.\nInc row{}: K1, m1, k to end.\nKnit 1 row.\nWork inc row every {} row 2 times. 22 sts.\nBind off."
    rows = plan_of(project(work.format("", "RS"))).rounds
    assert [row.side for row in rows[1:-1] if row.after > row.before] == ["RS", "RS"]
    assert "asked for on WS rows" in faults(project(work.format(" (RS)", "WS")))


@pytest.mark.parametrize("side", ["RS", "WS"])
@pytest.mark.parametrize("plain", [0, 1, 2, 3])
def test_whatever_was_knitted_since_the_next_row_of_the_side_is_shaped_and_every_second_from_there(plain: int, side: str) -> None:
    """A row too early or too late puts the decreases on the side where they are purled. By hand: the decrease row is row
    1, of the right side, so that odd rows are right-side rows."""
    since = f"Knit {plain} row{'s' * (plain > 1)}.\n" * (plain > 0)
    work = f"Cast on 20 sts.\nWork flat.\nDec row: K1, k2tog, k to end.\n{since}Rep dec row on every {side} row 2 times."
    first = next(number for number in (plain + 2, plain + 3) if (number % 2 == 1) == (side == "RS"))
    shaped = [each.index for each in plan_of(project(work)).rounds if each.after < each.before]
    assert shaped == [1, first, first + 2]


@pytest.mark.parametrize(("plain", "next_"), [(1, 7), (4, 7), (5, 7), (6, 13), (7, 14)])
def test_plain_rounds_short_of_an_interval_count_towards_it(plain: int, next_: int) -> None:
    """Five of six leave the sixth to be shaped; where all six are knitted plain an interval of its own begins. By hand, the
    first decrease being round 1 after the cast-on."""
    since = "Knit 1 round." if plain == 1 else f"Knit {plain} rounds."
    text = project(f"Cast on 40 sts. Join in the round.\nDec rnd: K1, k2tog, k to end.\n{since}\nWork dec rnd every 6 rnds 3 times.")
    assert [each.index for each in plan_of(text).rounds if each.shaping] == [1, next_, next_ + 6, next_ + 12]


def test_garter_in_rows_is_knitted_between_shapings() -> None:
    """Rows knitted on both sides stay so, beside one shaping and beside two."""
    start = "Cast on 20 sts.\nWork flat.\nWork 4 rows in garter stitch.\n"
    alone = plan_of(project(f"{start}Inc row (RS): K1, m1, k to end.\nWork inc row every 4th row 2 times."))
    assert {round_.instruction for round_ in alone.rounds[5:] if not round_.shaping} == {"knit"}
    assert "WS" in {round_.side for round_ in alone.rounds[5:] if not round_.shaping}


def test_a_shaping_asked_for_more_often_than_any_garment_has_ends_at_once() -> None:
    """A slip of the pen must not keep her waiting a minute."""
    told = faults(project("Cast on 20 sts. Work flat.\nKnit 2 rows.\nInc 1 st at each end of every 3rd row 9999 times.\nBind off."))
    assert "more stitches than any has" in told


@pytest.mark.parametrize(
    "line",
    [
        "Bind off 0 sts at the beginning of the next 2 rows.",
        "Dec 1 st at each end of next and every foll alt row 0 times in all.",
    ],
)
def test_shaping_by_nothing_is_no_row_and_told(line: str) -> None:
    """A size list with a 0 gives the rows to the other sizes; two plain rows would make an armhole longer. Common practice."""
    plan = plan_of(project(f"Cast on 20 sts.\nWork flat.\nKnit 2 rows.\n{line}\nBind off."))
    assert len(plan.rounds) == 4
    assert "in all" in line or any("0 in this size" in caution.text for caution in plan.warnings)


@pytest.mark.parametrize("often", ["3 times in all", "3 times in total", "3 times altogether", "a total of 3 times"])
@pytest.mark.parametrize("rows", ["next and foll alt rows", "next row and on foll alt rows", "next and every foll alt row"])
def test_times_in_all_count_the_next_row_in(rows: str, often: str) -> None:
    """Without an "every" the next row was one besides, and a piece became two stitches narrower than printed. Common practice."""
    plan = plan_of(project(f"Cast on 20 sts.\nWork flat.\nDec 1 st at each end of {rows} {often}.\nBind off."))
    assert [round_.after for round_ in plan.rounds if round_.shaping] == [18, 16, 14]


@pytest.mark.parametrize(
    ("line", "counts"),
    [
        ("Dec 1 st at each end of next and every foll alt row 0 times.", [18]),
        ("Dec 1 st at each end of next and every foll alt row 0 times more.", [18]),
        ("Dec 1 st at each end of next and every foll alt row 0 times. 20 sts.", []),
        ("Dec 1 st at each end of next RS row and every foll RS row 0 times in all.", []),
    ],
)
def test_of_next_and_no_times_the_next_row_is_left(line: str, counts: list[int]) -> None:
    """As in the sizes with more the next row is one besides, where neither "in all" nor a count says otherwise; it was left out.

    Common practice.
    """
    plan = plan_of(project(f"Cast on 20 sts.\nWork flat.\nKnit 2 rows.\n{line}\nBind off."))
    assert [round_.after for round_ in plan.rounds[3:-1]] == counts
    asked = any("can mean 1 times in all" in caution.text for caution in plan.warnings)
    assert asked == ("more" not in line and "in all" not in line)


@pytest.mark.parametrize(
    ("rows", "words", "shaped"),
    [
        (2, "every other row 3 times", [3, 5, 7]),
        (1, "every other row 3 times", [3, 5, 7]),
        (2, "every 4th row 2 times", [5, 9]),
        (2, "every WS row 2 times", [4, 6]),
        (2, "every row 3 times", [3, 4, 5]),
        (2, "every 3rd row 2 times", [5, 8]),
    ],
)
def test_shaping_whose_side_is_not_named_is_worked_on_the_right_side(rows: int, words: str, shaped: list[int]) -> None:
    """Behind a wrong-side row "every other row" would only meet wrong-side rows, where nobody shapes unless she is told to: common practice.

    Row 1 is the first right-side row. Intervals with both sides in them are counted as they are printed, and where a side is taken it is told.
    """
    plan = plan_of(project(f"Cast on 40 sts.\nWork flat.\nWork in stockinette for {rows} rows.\nDec 1 st at each end {words}.\nWork 2 rows even.\nBind off."))
    assert [at for at, each in enumerate(plan.rounds) if 0 < each.after < each.before] == shaped
    told = any("right-side rows are taken" in each.text for each in plan.warnings)
    assert told == (rows == 2 and words.startswith(("every other", "every 4th")))


def test_shaping_goes_on_on_the_side_where_it_was_begun() -> None:
    """A decrease row on the wrong side before says where this one's rows are."""
    plan = plan_of(
        project(
            "Cast on 40 sts.\nWork flat.\nWork in stockinette for 3 rows.\nDec 1 st at each end of next row.\n"
            "Dec 1 st at each end of every other row 2 times.\nBind off."
        )
    )
    assert [each.side for each in plan.rounds if 0 < each.after < each.before] == ["WS", "WS", "WS"]
    assert not any("right-side rows are taken" in each.text for each in plan.warnings)


def test_the_second_side_of_a_neck_is_shaped_on_the_right_side_as_the_first() -> None:
    """The shaping of the first side says nothing of the second, whose neck would be decreased at the armhole."""
    neck = "Work 2 rows in stockinette.\nDec 1 st at {} of every 4th row 2 times.\nBind off."
    work = (
        "Cast on 40 sts.\nWork flat.\nWork in stockinette for 4 rows.\nNext row (RS): K20, place remaining 20 sts on holder, turn.\n"
        f"Next row: Purl.\n{neck.format('end')}\nWith RS facing, rejoin yarn to held sts.\n{neck.format('beg')}"
    )
    plan = plan_of(project(work))
    assert [each.side for each in plan.rounds if each.before - each.after == 1] == ["RS"] * 4
    assert sum("right-side rows are taken" in each.text for each in plan.warnings) == 2


@pytest.mark.parametrize(
    "rows",
    [
        "Dec row (RS): K1, ssk, k to end.\nPurl 1 row.\nRep dec row every 3rd row 3 times.",
        "Dec row: K1, ssk, k to end.\nPurl 1 row.\nRep dec row every 3rd row 3 times.",
        "Row 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1.\nRow 2: Purl.\nContinue decreasing in this manner every row until 32 sts rem.",
    ],
)
def test_a_knitted_shaping_is_not_worked_on_the_purl_side_of_stockinette(rows: str) -> None:
    """After an odd number of rows it falls there every other time, and how it is worked there nobody can tell."""
    told = faults(project(f"Cast on 40 sts. Work flat.\nWork 2 rows in stockinette.\n{rows}"))
    assert "the shaping is worked on RS rows, and so often it also falls on others" in told


def test_in_garter_stitch_a_shaping_is_worked_alike_on_both_sides() -> None:
    """There every row is knitted, so that every third row is as good as every second."""
    rows = "Knit 4 rows.\nDec row: K1, ssk, k to end.\nRep dec row every 3rd row twice."
    plan = plan_of(project(f"Cast on 40 sts. Work flat.\n{rows}", sizes="one", size="one"))
    assert [(each.side, each.after) for each in plan.rounds if each.before > each.after > 0] == [("RS", 39), ("WS", 38), ("RS", 37)]


@pytest.mark.parametrize("rows", ["every row 3 times", "on next 3 rows", "every RS row twice, then every row 3 times"])
def test_a_right_side_row_asked_for_in_each_row_is_refused(rows: str) -> None:
    """It was worked on every second row, in silence: twice as long, and the edge half as steep."""
    page = "Cast on 40 sts.\nWork flat.\nDec row (RS): K1, ssk, k to last 3 sts, k2tog, k1.\nPurl 1 row.\n"
    assert "so often it also falls on others" in faults(project(f"{page}Rep dec row {rows}.\nBind off."))


def test_a_right_side_row_asked_for_so_often_comes_on_its_side() -> None:
    """"Rep dec row 3 times" names no row between: common practice."""
    page = "Cast on 40 sts.\nWork flat.\nDec row (RS): K1, ssk, k to last 3 sts, k2tog, k1.\n"
    plan = plan_of(project(f"{page}Rep dec row 3 times.\nBind off."))
    assert [round_.after for round_ in plan.rounds[1:-1]] == [38, 38, 36, 36, 34, 34, 32]


def test_a_shaping_in_every_other_row_and_then_in_every_row_begins_on_the_right_side() -> None:
    """A sleeve cap: behind two rows bound off, every other row would else be a wrong-side one, up to the last."""
    page = "Cast on 50 sts.\nWork flat.\nWork 4 rows in stockinette.\nBO 4 sts at beg of next 2 rows.\n"
    line = "Dec 1 st at each end of every alt row until 36 sts rem, then every row until 30 sts rem."
    plan = plan_of(project(f"{page}{line}\nBind off."))
    shaped = [(round_.side, round_.after) for round_ in plan.rounds[7:-1] if round_.shaping]
    assert shaped == [("RS", 40), ("RS", 38), ("RS", 36), ("WS", 34), ("RS", 32), ("WS", 30)]
    assert any("right-side rows are taken" in warning.text for warning in plan.warnings)


@pytest.mark.parametrize(
    ("back", "shaped", "told"),
    [
        ("K3, p to last 3 sts, k3", "K3, m1, k to last 3 sts, m1, k3", ["k3, p26, k3", "knit", "k3, p26, k3"]),
        ("K4, p to end", "K to last 6 sts, k2tog, k4", ["k4, p25", "knit", "k4, p25"]),
    ],
)
def test_between_rows_that_are_knit_as_the_pattern_is_the_pattern_goes_on(back: str, shaped: str, told: list[str]) -> None:
    """Edges in garter stitch ended with the first shaped row: the rows between were stockinette to the edge."""
    page = f"Cast on 30 sts.\nWork flat.\nRow 1 (RS): Knit.\nRow 2: {back}.\nRep rows 1-2 twice.\n"
    plan = plan_of(project(f"{page}Dec row (RS): {shaped}.\nRep dec row every 4th row twice.\nBind off."))
    assert [round_.instruction for round_ in plan.rounds[8:11]] == told
    assert any("go on in pattern" in warning.text for warning in plan.warnings)


@pytest.mark.parametrize(
    ("before", "told"),
    [
        ("Rnd 1: *K1, p1; rep from * to end.\nRnd 2: *P1, k1; rep from * to end.\nRep rnds 1-2 twice.\n", True),
        ("*K1, p1; rep from * to end. Work for 6 rounds.\n", True),
        ("*K1, p1; rep from * to end. Work for 6 rounds.\nKnit 1 round.\n", False),
        ("Knit 4 rounds.\n", False),
    ],
)
def test_plain_rounds_between_shapings_right_on_a_texture_are_told(before: str, told: bool) -> None:
    """Whether moss stitch or a rib ended with the first decrease, the page does not say."""
    shaped = "Dec rnd: K1, ssk, k to last 3 sts, k2tog, k1.\nRep dec rnd every 4th rnd twice more.\nBind off."
    plan = plan_of(project(f"Cast on 24 sts.\nJoin in the round.\n{before}{shaped}"))
    assert any("worked plain" in warning.text for warning in plan.warnings) == told


@pytest.mark.parametrize(
    ("way", "before", "told"),
    [
        ("Join in the round.", "Purl 4 rounds.", ["purl"] * 3),
        ("Join in the round.", "Rnd 1: Knit.\nRnd 2: Purl.\nRep rnds 1-2 once more.", ["knit"] * 3),
        ("Work flat.", "Row 1 (RS): Purl.\nRow 2: Knit.\nRep rows 1-2 once more.", ["knit", "purl", "knit"]),
        ("Work flat.", "Row 1 (RS): Knit.\nRow 2: Purl.\nRep rows 1-2 once more.", ["purl", "knit", "purl"]),
    ],
)
def test_between_purled_shapings_of_a_purled_fabric_it_goes_on(way: str, before: str, told: list[str]) -> None:
    """Reverse stockinette shaped in purl has no knit rounds between. Source: common practice."""
    side = " (RS)" if way == "Work flat." else ""
    shaped = f"Dec row{side}: P1, p2tog, p to last 3 sts, p2tog, p1.\nWork dec row every 4th row twice more."
    plan = plan_of(project(f"Cast on 40 sts.\n{way}\n{before}\n{shaped} 34 sts.\nBind off."))
    assert [round_.instruction for round_ in plan.rounds[6:9]] == told


@pytest.mark.parametrize(
    "row",
    ["Cast on 40 sts.", "Pick up and knit 40 sts along edge.", "Cast on 40 sts. Work flat.\nKnit 2 rows.\nPick up and knit 6 sts along edge."],
)  # fmt: skip
def test_this_increase_is_no_cast_on_and_nothing_picked_up(row: str) -> None:
    """Forty stitches were cast on anew in the middle of the piece: they are more than before, and yet nobody increased."""
    assert "has not been written out" in faults(project(f"{row}\nRep this inc on every foll 4th row 2 times."))
    grown = plan_of(project("Cast on 40 sts. Work flat.\nK1, m1, k to end.\nRep this inc on every foll 4th row 2 times."))
    assert [round_.after for round_ in grown.rounds if round_.after > round_.before] == [40, 41, 42, 43]


def test_a_gusset_shaped_by_length_grows_to_the_stitches_between_its_markers() -> None:
    """Two of forty stitches become twelve by five increases of two: fifty in all, and not twelve."""
    start = "Cast on 40 sts. Join in the round.\nKnit 2 rounds.\nNext rnd: K10, pm, k2, pm, k28.\n"
    inc = "Inc rnd: K to marker, sm, m1, k to marker, m1, sm, k to end.\n"
    plan = plan_of(project(f"{start}{inc}Rep inc rnd every 2 cm until there are 12 sts between the markers.\nBind off."))
    assert [before.after for before, after in pairwise(plan.rounds) if after.after > before.after] == [40, 42, 44, 46, 48]
    assert plan.rounds[-2].after == 50


def test_every_row_behind_every_rs_row_falls_on_both_sides() -> None:
    """As a sleeve cap is shaped: "1 st each end" names no stitches of one side. A row written out does."""
    work = "Cast on 40 sts. Work flat.\nWork 2 rows in stockinette.\nDec 1 st at each end of every RS row 3 times, then every row 4 times. 26 sts.\nBind off."
    rows = plan_of(project(work, sizes="S", size="S")).rounds[3:-1]
    assert [(row.side, row.after) for row in rows if row.before != row.after] == [
        ("RS", 38), ("RS", 36), ("RS", 34), ("WS", 32), ("RS", 30), ("WS", 28), ("RS", 26)
    ]  # fmt: skip
    row = "Dec row: K1, ssk, k to last 3 sts, k2tog, k1.\nWork dec row every RS row 3 times, then every row 4 times. 26 sts."
    told = faults(project(work.replace(work.splitlines()[2], row), sizes="S", size="S"))
    assert "it also falls on others" in told


def test_every_knit_row_is_a_right_side_row_of_stockinette_and_of_nothing_else() -> None:
    """In garter stitch every row is knit; in the round none is a row of one side. Source: common practice."""
    shaped = "Dec 1 st at each end of every k row 2 times.\nBind off."
    plan = plan_of(project(f"Cast on 20 sts. Work flat.\nWork 2 rows in stockinette.\n{shaped}"))
    assert [(one.side, one.after) for one in plan.rounds[3:6]] == [("RS", 18), ("WS", 18), ("RS", 16)]
    for before in ("Cast on 20 sts. Work flat.\nWork 2 rows in garter st.", "Cast on 20 sts. Join in the round.\nKnit 2 rounds."):
        assert "cannot be told" in faults(project(f"{before}\n{shaped}"))


def test_a_point_is_decreased_at_its_very_edges_where_too_few_stitches_are_left() -> None:
    """Five stitches become three by k2tog, k1, ssk: one stitch in from the edges it cannot be worked. Where the line says
    that it is, it is refused. Source: common practice."""
    start = "Cast on 17 sts.\nWork flat.\nWork 4 rows in st st.\n"
    point = "each end of next row and every foll alt row until 3 sts rem."
    plan = plan_of(project(f"{start}Dec 1 st at {point}\nBind off."))
    *_, last, bound_off = plan.rounds
    assert [(run.stitch, run.times) for run in last.runs] == [("dec", 1), ("k", 1), ("dec", 1)]
    assert (last.before, last.after, bound_off.after) == (5, 3, 0)
    assert any("very edges" in remark for remark in last.remarks)
    assert [each.before for each in plan.rounds if any("very edges" in remark for remark in each.remarks)] == [5]
    assert "past the one to work to" in faults(project(f"{start}Work all decreases 1 st in from the edge. Dec 1 st at {point}\nBind off."))
