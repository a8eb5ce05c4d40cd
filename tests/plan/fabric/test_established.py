"""What "even" and "in pattern" go on with: the fabric as it was, without shaping, every column in its place.

The rounds are worked out by hand, or by a second rule: columns are numbered on the needle, and each looks as its
number says, whatever was eaten or added beside it. Source of the reading: common practice ("keep pattern correct").
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.plan.model import Plan, Round, flatten
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project
from tests.tables import each_row

ROUND = "Cast on 40 sts.\nJoin in the round.\n"
ROWS = "Cast on 40 sts. Work flat.\n"
RIB = "*K2, p2; rep from * to end. Work 2 rounds.\n"
SEED = "Row 1 (RS): *K1, p1; rep from * to end.\nRow 2: *P1, k1; rep from * to end.\nRep rows 1-2 2 times.\n"
DEC = "K1, k2tog, work in pattern to last 3 sts, ssk, k1."


def knit(work: str) -> Plan:
    """Compile lines in one size."""
    return plan_of(project(work, sizes="S", size="S"))


def told(plan: Plan, last: int) -> list[str]:
    """Return the instructions of the last rounds."""
    return [round_.instruction for round_ in plan.rounds[-last:]]


def seen(round_: Round) -> str:
    """Return what a round looks like from the right side, from the first stitch there: k or p for each stitch."""
    letters = "".join(run.stitch[0] * run.times for run in flatten(round_.phrase))
    return letters if round_.side == "RS" else letters[::-1].translate(str.maketrans("kp", "pk"))


EVEN = [
    "Work even for 1 cm.",
    "Work 3 rounds even.",
    "Work 3 rnds straight.",
    "Work straight for 1 cm.",
    "Cont straight for 1 cm.",
    "Continue even in patt for 1 cm.",
    "Cont in pattern as established for 1 cm.",
    "Work even in pattern until piece measures {long} cm.",
    "Cont as set for 1 cm.",
    "Work 3 rounds in pattern.",
    "Work 3 more rounds.",
]


@each_row("even", EVEN)
@each_row(
    ("shaped", "rounds", "count"),
    [
        ("Knit 2 rnds.\nDec rnd: K1, k2tog, k to last 3 sts, ssk, k1. 38 sts.\n", 3, 38),
        ("Knit 2 rnds.\nNext round: K1, m1, k to last st, m1, k1. 42 sts.\n", 3, 42),
        ("Knit 2 rnds.\nInc 1 st at each end of next round. 42 sts.\n", 3, 42),
        ("Rnd 1: K1, k2tog, k to end.\nRnd 2: Knit.\nRep rnds 1-2 until there are 35 sts.\n", 10, 35),
        ("Rnd 1: K1, k2tog, k to end.\nRep rnd 1 3 times more.\n", 4, 36),
        ("Dec rnd: K1, k2tog, k to end.\nRep dec rnd every 2nd round 3 times more.\n", 7, 36),
    ],
)
def test_even_shapes_no_more(shaped: str, rounds: int, count: int, even: str) -> None:
    """Before, the last round was repeated, decreases and all: 40 stitches were none after ten centimetres."""
    words = even.format(long=round((rounds + 3) / 2.8, 2))
    plan = knit(f"{ROUND}{shaped}{words} {count} sts.")
    assert [(each.instruction, each.after) for each in plan.rounds[-3:]] == [("knit", count)] * 3
    assert plan.rounds[-4].before != count or rounds == 10


def test_even_in_rows_goes_on_in_stockinette() -> None:
    """Knit on the right side, purl on the wrong one; the shaped row was a right-side row."""
    work = f"{ROWS}Row 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1.\nRow 2: Purl.\nRep rows 1-2 3 times.\nWork 4 rows even."
    assert told(knit(work), 4) == ["knit", "purl", "knit", "purl"]


def test_even_after_shaped_garter_stays_garter() -> None:
    """Every row is knitted, on both sides; so too where the shaped rows are the first of the piece."""
    rows = "Row 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1.\nRow 2: Knit.\nRep rows 1-2 3 times.\n"
    assert told(knit(f"{ROWS}{rows}Work 4 rows even."), 4) == ["knit"] * 4


def test_garter_in_the_round_keeps_its_phase() -> None:
    """A knit round was shaped, so a purl round follows; stopped in the middle it goes on with the other one."""
    garter = "Rnd 1: Knit.\nRnd 2: Purl.\nRep rnds 1-2 once more.\n"
    plan = knit(f"{ROUND}{garter}Next rnd: *K8, k2tog; rep from * to end.\nWork 3 rounds even. 36 sts.")
    assert told(plan, 3) == ["purl", "knit", "purl"]
    plan = knit(f"{ROUND}Work 3 rounds in garter stitch.\nWork 2 rounds in pattern.")
    assert told(plan, 2) == ["purl", "knit"]


def test_rib_stays_rib_after_a_decrease() -> None:
    """Worked out by hand: k2 p2 over 40, one stitch of the second and one of the last but one column eaten."""
    plan = knit(
        f"{ROUND}{RIB}Next rnd: {DEC} 38 sts.\nWork even in pattern for 1 cm.\nNext rnd: {DEC} 36 sts.\nWork 1 round."
    )
    rib = "kkpp" * 10
    assert seen(plan.rounds[4]) == "kk" + rib[3:37] + "kkk"[:2]
    assert {seen(each) for each in plan.rounds[5:-2] if each.after == 38 == each.before} == {
        "k" + "k" + rib[3:37] + "kk"
    }
    assert seen(plan.rounds[-1]) == "kk" + rib[4:36] + "kk"


def test_a_rib_goes_on_between_decreases_at_intervals() -> None:
    """The plain rounds between are no plain knitting where the shaped one says "in pattern"."""
    plan = knit(f"{ROUND}{RIB}Dec rnd: {DEC}\nRep dec rnd every 3rd round 2 times more. 34 sts.")
    assert all("p2" in each.instruction for each in plan.rounds[1:])


def test_new_stitches_are_worked_into_the_rib() -> None:
    """By hand: k2 p2 over 40, growing one stitch in: at the beginning k, p, p grow outwards, at the end k, k, p; the edges stay."""
    plan = knit(
        f"{ROUND}{RIB}Inc 1 st at each end of every 2nd round 3 times. 46 sts.\nWork 1 round in pattern."
    )
    # The edge stitch, then what comes before the second stitch of the rib: p, p, k. At the end k, k before a p that was there.
    assert seen(plan.rounds[-1]) == "k" + "ppk" + ("kkpp" * 10)[1:] + "kkp"


def test_seed_stitch_keeps_its_phase_around_a_decrease() -> None:
    """Knit over purl and purl over knit, away from the edges, in every row after."""
    plan = knit(f"{ROWS}{SEED}Next row (RS): {DEC} 38 sts.\nWork even in pattern for 2 cm.")
    rows = [seen(each) for each in plan.rounds[1:]]
    inner = [row[3:37] if len(row) == 40 else row[2:36] for row in rows]
    assert inner == [("pk" if number % 2 == 0 else "kp") * 17 for number in range(len(inner))]


@given(
    rib=st.sampled_from([(1, 1), (2, 2), (3, 2), (1, 3), (4, 4)]),
    repeats=st.integers(6, 12),
    shaping=st.lists(st.sampled_from(["dec", "inc", "even", "bo"]), min_size=1, max_size=6),
    flat=st.booleans(),
)
@settings(max_examples=60, deadline=None)
def test_columns_that_stay_look_as_they_did(
    rib: tuple[int, int], repeats: int, shaping: list[str], flat: bool
) -> None:
    """A second rule: the middle of the needle is numbered, and its columns look the same in every round."""
    knits, purls = rib
    count = (knits + purls) * repeats
    lines = [f"Cast on {count} sts.", "Work flat." if flat else "Join in the round."]
    lines += [
        f"*K{knits}, p{purls}; rep from * to end. Work 2 rows."
        if flat
        else f"*K{knits}, p{purls}; rep from * to end."
    ]
    first, left = 0, count
    for kind in shaping:
        if kind == "dec" and left > 14:
            lines.append(DEC)
            first, left = first + 1, left - 2
        elif kind == "inc":
            lines.append("K1, m1, work in pattern to last st, m1, k1.")
            first, left = first - 1, left + 2
        elif kind == "bo" and left > 18 and flat:
            lines.append("Bind off 2 sts at the beginning of the next 2 rows.")
            first, left = first + 2, left - 4
        lines.append("Work 2 rounds even." if not flat else "Work 2 rows even.")
    plan = knit("\n".join(lines))
    look = ("k" * knits + "p" * purls) * repeats
    margin = 8
    last = seen(plan.rounds[-1])
    low, high = max(first, 0) + margin, min(first + left, count) - margin
    assert len(last) == left
    for column in range(low, high):
        assert last[column - first] == look[column], (lines, column)


def left_standing(round_: Round) -> str:
    """Return what the stitches that a round leaves look like from the right side, from the first one there."""
    letters = "".join(run.stitch[0] * run.leaves for run in flatten(round_.phrase))
    return letters if round_.side == "RS" else letters[::-1].translate(str.maketrans("kp", "pk"))


BASKET = "".join(f"Rnd {number}: *K3, p3; rep from * to end.\n" for number in (1, 2, 3)) + "".join(
    f"Rnd {number}: *P3, k3; rep from * to end.\n" for number in (4, 5, 6)
)


def test_a_round_that_hangs_in_a_marker_is_a_round_of_its_pattern() -> None:
    """By hand: the marker is hung in round 1, two even rounds are 2 and 3, and the next three are 4 to 6. They began with 1 again
    once, in silence, as two lines said "even" behind the marker."""
    work = (
        f"Cast on 42 sts.\nJoin in the round.\n{BASKET}Work 20 sts in pattern, pm, work in pattern to end.\n"
    )
    plan = knit(f"{work}Work 2 rounds even.\nWork 3 rounds even.\nWork 1 round in pattern.")
    assert [left_standing(each)[:6] for each in plan.rounds[-7:]] == ["kkkppp"] * 3 + ["pppkkk"] * 3 + [
        "kkkppp"
    ]


TILES = {
    "seed": ("kp", "pk"),
    "double seed": ("kp", "kp", "pk", "pk"),
    "broken rib": ("kp", "kk"),
    "box": ("kkpp", "kkpp", "ppkk", "ppkk"),
    "basket": ("kkkppp", "kkkppp", "kkkppp", "pppkkk", "pppkkk", "pppkkk"),
    "three rows": ("kkp", "kpk", "pkk"),
    "garter": ("kk", "pp"),
}
"""Patterns of knit and purl as they look from the right side, a string for each row. Source: common practice."""
STRAIGHT = (
    "Work {n} {rows} even.", "Work {n} {rows} in pattern.", "Continue in pattern as established for {n} {rows}.",
    "Work in pattern for {n} {rows}.", "Work {n} {rows} straight.",
)  # fmt: skip


def printed_row(looks: str, *, wrong: bool) -> str:
    """Print a row of a pattern as it is worked from either side."""
    worked = looks[::-1].translate(str.maketrans("kp", "pk")) if wrong else looks
    runs = ", ".join(f"{''.join(run)[0]}{len(list(run))}" for run in re.findall(r"k+|p+", worked))
    return f"*{runs}; rep from * to end."


@given(
    name=st.sampled_from(sorted(TILES)),
    flat=st.booleans(),
    once_more=st.integers(0, 1),
    odd=st.integers(0, 5),
    done=st.lists(
        st.one_of(
            st.sampled_from(["dec", "inc", "buttonhole", "bind off", "mark"]),
            st.tuples(st.sampled_from(STRAIGHT), st.integers(1, 5)),
        ),
        min_size=1,
        max_size=7,
    ),
)  # fmt: skip
@settings(max_examples=20, deadline=None, derandomize=True)
def test_a_pattern_of_rows_keeps_its_row_and_its_columns(
    name: str, flat: bool, once_more: int, odd: int, done: list[str | tuple[str, int]]
) -> None:
    """A second rule on squared paper: the stitch of a column in a row looks as the square there says, counted from the first
    row of the pattern and the first stitch of the cast-on, whatever is shaped at the edges in between."""
    tile = TILES[name]
    width, high = len(tile[0]), len(tile)
    count = width * (60 // width)
    rows = "rows" if flat else "rounds"
    if flat and high % 2:
        tile, high = (*tile, *tile), 2 * high  # each row comes on either side
    lines = [f"Cast on {count} sts.", "Work flat." if flat else "Join in the round."]
    for number, looks in enumerate(tile, start=1):
        side = (" (RS)" if number % 2 else " (WS)") if flat else ""
        lines.append(
            f"{'Row' if flat else 'Rnd'} {number}{side}: {printed_row(looks, wrong=flat and number % 2 == 0)}"
        )
    if once_more:
        lines.append(f"Rep {'rows' if flat else 'rnds'} 1-{high} once more.")
    row = high * (1 + once_more)
    if (odd and not flat) or (odd % 2 == 0 and odd):
        lines.append(f"Work {odd} {rows} in pattern.")
        row += odd
    first, left, expected = 0, count, {}
    for each in done:
        if isinstance(each, tuple):
            words, n = each
            lines.append(words.format(n=n, rows=rows))
            for _ in range(n):
                expected[row] = (first, left)
                row += 1
            continue
        wrong = flat and row % 2 == 1
        if each == "dec":
            lines.append("K1, k2tog, work in pattern to last 3 sts, ssk, k1.")
            first, left = first + 1, left - 2
        elif each == "inc":
            lines.append("K1, m1, work in pattern to last st, m1, k1.")
            first, left = first - 1, left + 2
        elif each == "buttonhole":
            lines.append("Work 3 sts in pattern, yo, k2tog, work in pattern to end.")
        elif each == "mark":
            lines.append("Work 20 sts in pattern, pm, work in pattern to end.")
        elif flat and not wrong:
            lines.append("Bind off 2 sts at the beginning of the next 2 rows.")
            first, left = first + 2, left - 2
            expected[row] = (first, left)
            row, left = row + 1, left - 2
        else:
            continue
        expected[row] = (first, left)
        row += 1
    plan = knit("\n".join(lines))
    assert len(plan.rounds) == row + 1
    margin = 9
    for number, (begin, stitches) in expected.items():
        looks = left_standing(plan.rounds[number + 1])
        assert len(looks) == stitches == plan.rounds[number + 1].after
        low, top = max(begin, 0) + margin, min(begin + stitches, count) - margin
        wanted = "".join(tile[number % high][column % width] for column in range(low, top))
        assert looks[low - begin : top - begin] == wanted, (lines, number)


def test_a_buttonhole_is_no_pattern_and_leaves_the_columns() -> None:
    """Rib of 4 with buttonholes that fall anywhere in it, as on a band: the rows after are the rows before."""
    work = f"{ROUND}{RIB}Buttonhole rnd: Rib 4, (yo, k2tog, rib 7) 3 times, work in pattern to end.\nWork 2 rounds in pattern."
    assert [seen(each) for each in knit(work).rounds[-2:]] == ["kkpp" * 10] * 2
    work = f"{ROUND}{RIB}K3, yo, k2tog, work in pattern to end.\nWork 2 rounds in pattern."
    assert seen(knit(work).rounds[-1])[5:] == ("kkpp" * 10)[5:]


def test_a_buttonhole_row_in_stockinette_is_made_once() -> None:
    """Written without "in pattern" it is a single change all the same, and no lace."""
    work = f"{ROUND}Knit 2 rounds.\nK3, yo, k2tog, k to end.\nWork 3 rounds even."
    assert told(knit(work), 3) == ["knit"] * 3


def test_a_buttonhole_row_knitted_over_a_rib_does_not_leave_two_purls_of_it() -> None:
    """Knitted throughout, it says neither that the rib goes on nor that it ends: any guess may be wrong."""
    work = "Work 6 rows in k2, p2 rib.\nNext row (RS): K10, yo, k2tog, k to end.\nWork 2 rows in pattern.\nBind off."
    assert "shapes it in other stitches" in faults(project(ROWS + work, sizes="S", size="S"))


def test_a_rib_that_was_knitted_plain_for_its_increases_goes_on_in_stockinette_and_that_is_told() -> None:
    """Every stitch was knitted, so "even" is stockinette; "in pattern" says that one goes on, and nobody can tell which row."""
    work = f"{ROUND}{RIB}Inc rnd: K10, m1, k20, m1, k10.\n"
    plan = knit(f"{work}Work 3 rounds even. 42 sts.")
    assert told(plan, 3) == ["knit"] * 3
    line = plan.rounds[3].line
    assert any(f"line {line} was knitted plain over the pattern" in caution.text for caution in plan.warnings)
    assert "nobody can tell" in faults(project(f"{work}Work 3 rounds in pattern.", sizes="S", size="S"))
    spread = knit(f"{ROUND}{RIB}Knit 1 round, increasing 4 sts evenly. 44 sts.\nWork 3 rounds even.")
    assert told(spread, 3) == ["knit"] * 3
    assert any("was knitted plain over the pattern" in caution.text for caution in spread.warnings)


def test_lace_that_fills_the_round_is_a_pattern() -> None:
    """What makes up for itself all around is repeated, as before."""
    work = f"{ROUND}Rnd 1: *K2tog, yo; rep from * to end.\nRnd 2: Knit.\nWork 4 rounds in pattern."
    assert told(knit(work), 4) == ["*k2tog, yo; rep from * to end", "knit"] * 2


def test_a_pattern_that_cannot_be_told_is_refused() -> None:
    """Lace cut by a decrease, a rib after a change spread over it: the line says what to write instead."""
    lace = f"{ROUND}Rnd 1: *K2tog, yo; rep from * to end.\nRnd 2: Knit.\n"
    for work in (
        f"{lace}Next rnd: K1, k2tog, k to end.\nWork even for 2 cm.",
        f"{ROUND}{RIB}Increase evenly to 44 sts.\nK4, work in pattern to end.",
    ):
        assert "nobody can tell how the pattern goes on here" in faults(project(work, sizes="S", size="S"))


def test_rows_of_an_odd_number_come_on_the_other_side_each_time() -> None:
    """Row 1 is knitted on the right side, then on the wrong side, where it shows purl. By hand: row 7 shapes row 1, so that
    rows 8 to 12 are 2, 3, 1, 2, 3 as printed, less the first stitch."""
    three = "Cast on 21 sts. Work flat.\nRow 1: Knit.\nRow 2: Purl.\nRow 3: *K1, p1; rep from * to last st, k1.\nRepeat rows 1-3 once.\n"
    assert told(knit(f"{three}K2tog, work in pattern to end.\nWork 5 rows in pattern."), 6) == [
        "k2tog, k19", "purl", "*p1, k1; rep from * to end", "knit", "purl", "*k1, p1; rep from * to end",
    ]  # fmt: skip


def test_a_rib_after_an_even_increase_begins_anew_and_says_so() -> None:
    """Nobody can keep its columns; where it fits the new count it is set up again, with a note."""
    plan = knit(f"{ROUND}{RIB}Increase evenly to 44 sts.\nWork 2 rounds in pattern.")
    assert told(plan, 2) == ["*k2, p2; rep from * to end"] * 2
    assert any("begins anew" in each.text for each in plan.warnings)


@each_row(
    "change", ["Increase 0 sts evenly.", "Decrease 0 sts evenly.", "Increase evenly to 40 sts."]
)
@each_row(
    ("work", "behind"),
    [
        ("Work 2 rounds in pattern.", ["kkpp" * 10] * 2),
        ("Work 2 rounds even.", ["kkpp" * 10] * 2),
        ("Work 20 sts in pattern, k to end.", ["kkpp" * 5 + "k" * 20]),
        (f"{DEC}\nWork 1 round even.", ["kk" + ("kkpp" * 10)[3:37] + "kk"]),
    ],
)
def test_a_change_of_no_stitches_leaves_the_pattern_as_it_was(
    change: str, work: str, behind: list[str]
) -> None:
    """ "Increase 0 (4, 8) sts evenly" is a plain round in the smallest size, and the rib goes on behind it as in the others. It was
    knitted from there on, in silence."""
    plan = knit(f"{ROUND}{RIB}{change}\n{work}")
    assert [left_standing(each) for each in plan.rounds[-len(behind) :]] == behind
    assert plan.rounds[3].instruction == "knit"


def test_a_pattern_of_two_rounds_begins_anew_with_its_first() -> None:
    """Behind an even increase nobody can keep the columns of seed stitch; it is set up again as it was at first, row 1 and row 2."""
    seed = "Rnd 1: *K1, p1; rep from * to end.\nRnd 2: *P1, k1; rep from * to end.\n"
    for before in ("", "Rep rnd 1 once more.\n"):
        plan = knit(f"{ROUND}{seed}{before}Increase evenly to 44 sts.\nWork 3 rounds in pattern.")
        assert [seen(each)[:2] for each in plan.rounds[-3:]] == ["kp", "pk", "kp"]
        assert any("begins anew" in each.text for each in plan.warnings)


def test_colours_are_columns_too() -> None:
    """A chart of two rounds cut by one stitch at each side goes on in its colours."""
    plan = knit(f"{ROUND}Chart peak, 2 times.\nNext rnd: {DEC}\nWork 2 rounds in pattern.")
    peak = {1: "-aa-" * 10, 2: "a--a" * 10}
    yarns = [
        "".join(("a" if run.yarn == "A" else "-") * run.leaves for run in each.runs)
        for each in plan.rounds[-3:]
    ]
    assert [row[2:36] for row in yarns] == [peak[number][3:37] for number in (1, 2, 1)]


def test_what_was_on_hold_comes_back_with_its_pattern() -> None:
    """A sleeve in rib is in rib after the body was knitted plain."""
    work = (
        f"{ROUND}{RIB}K10, hold 20 for strap, k to end.\nKnit 2 rounds.\nBind off.\n"
        "Return strap to needles.\nJoin in the round.\nRnd 1: Work in pattern to end."
    )
    assert seen(knit(work).rounds[-1]) == ("kkpp" * 10)[10:30]


def test_an_instep_comes_back_in_its_pattern_beside_a_plain_heel() -> None:
    """Its two rounds, one of them knitted, went on plain for the rest of the foot, as the heel beside it did. Where
    they stand is counted by hand: the heel was divided behind round 2, the round that picks up is round 1."""
    work = (
        f"{ROUND}Round 1: Knit.\nRound 2: *K3, p1; rep from * to end.\nRep rounds 1 and 2 twice more.\n"
        "Work in rows over next 20 sts of heel; leave others on hold.\nRow 1: Knit.\nRow 2: Purl.\n"
        "Next round: Knit across heel sts, pm, work across instep sts, pm. Join in the round.\n"
        "K10 to new beginning.\n"
        + "Next round: Knit to marker, sm, work in pattern to marker, sm, knit to end.\n" * 3
    )
    rows = [flatten(each.phrase) for each in knit(work).rounds[-3:]]
    after = ["".join(run.stitch * run.times for run in row if run.stitch in ("k", "p"))[10:30] for row in rows]
    assert after == ["kkkp" * 5, "k" * 20, "kkkp" * 5]


def test_a_row_that_agrees_with_the_fabric_sets_up_nothing() -> None:
    """Markers placed in a knit row of stockinette do not make garter stitch of it."""
    work = f"{ROWS}Work in stockinette for 1 cm, ending with a WS row.\nK10, pm, k to end.\nWork 3 rows even."
    assert told(knit(work), 3) == ["purl", "knit", "purl"]


def test_until_a_count_still_shapes() -> None:
    """Only shaping reaches another count, so that is what the line means."""
    plan = knit(
        f"{ROUND}Rnd 1: K1, k2tog, k to end.\nRnd 2: Knit.\nWork in pattern until 36 sts rem. 36 sts."
    )
    assert plan.rounds[-1].after == 36


def test_a_line_that_does_not_say_even_is_told_how_it_was_read() -> None:
    """Another knitter might repeat the round; that is an assumption, told once with its place."""
    work = f"{ROUND}Knit 2 rnds.\nK1, k2tog, k to end.\nWork 3 rounds."
    assert [each.text for each in knit(work).warnings] == [
        "read as worked even: the shaping of line 21 is not worked again."
    ]
    assert knit(work.replace("Work 3 rounds", "Work 3 rounds even")).warnings == ()


def test_work_on_the_line_of_a_shaped_round_does_not_shape_either() -> None:
    """Only a round that is a pattern itself goes on on its own line."""
    plan = knit(f"{ROUND}Knit 2 rnds.\nK1, k2tog, k to end. Work 3 rounds even. 39 sts.")
    assert told(plan, 4) == ["k1, k2tog, k37", "knit", "knit", "knit"]


def test_the_rib_of_a_button_band_outlives_its_buttonholes() -> None:
    """The band of the sample in its smallest size, where the buttonholes fall between the ribs."""
    text = (Path(__file__).parents[2] / "fixtures" / "cardigan.yaml").read_text(encoding="utf-8")
    band = [
        each for each in plan_of(text.replace("size: M", "size: S")).rounds if each.section == "right band"
    ]
    rib = "kk" + "ppkk" * 24
    assert [seen(each) for each in band[5:8]] == [rib] * 3


def test_short_rows_are_no_pattern() -> None:
    """Even rounds after a turn are whole rounds again, in the fabric as it looks."""
    plan = knit(f"{ROUND}Knit 2 rounds.\nK20, turn.\nP10, turn.\nWork 2 rounds even.")
    assert [
        sum(run.times for run in each.runs if run.stitch in ("k", "ds")) for each in plan.rounds[-1:]
    ] == [40]
    assert not any(run.stitch == "turn" for each in plan.rounds[-2:] for run in each.runs)


SHORT_BACK = "Short Row 2 (RS): K5, turn.\nShort Row 3: DS, p to end.\n"


@each_row(
    "before",
    [
        f"Short Row 1 (WS): P40.\n{SHORT_BACK}",
        SHORT_BACK,
        f"Knit 6 rows.\n{SHORT_BACK}",
        "Next row (WS): P2tog, p to end.\n",
    ],
)
def test_a_knit_row_behind_rows_that_purl_back_is_stockinette(before: str) -> None:
    """Short rows set nothing up, but a knit row behind them goes on as they look; it is no ridge of garter stitch."""
    plan = knit(f"{ROWS}{before}Next row (RS): K across all sts.\nWork 7 rows even.")
    assert told(plan, 8) == ["knit", "purl"] * 4


def test_a_knit_row_behind_short_rows_knit_back_is_garter_stitch() -> None:
    """Rows that are knit to and fro say nothing else."""
    back = SHORT_BACK.replace("p to end", "k to end")
    plan = knit(f"{ROWS}{back}Next row (RS): K across all sts.\nWork 3 rows even.")
    assert told(plan, 4) == ["knit"] * 4


def test_rows_back_as_they_look_belong_to_the_pattern() -> None:
    """Lace or cables on the right side, "knit the knits" on the wrong: all four rows are the pattern."""
    rows = (
        "Row 1 (RS): *2/2 RC, p1; rep from * to end.\nRow 2: Knit the knit sts and purl the purl sts.\n"
        "Row 3: *K2tog, yo, k2, p1; rep from * to end.\nRow 4: Work in pattern to end.\n"
    )
    plan = knit(f"{ROWS}{rows}Work 5 rows in pattern.")
    first = [each.instruction for each in plan.rounds[1:5]]
    assert first[1] == first[3] == "*k1, p4; rep from * to end"
    assert told(plan, 5) == [*first, first[0]]


def test_a_count_that_is_wrong_before_a_pattern_row_is_told() -> None:
    """78 by the lines, 88 printed: the rows after it have more stitches than the fabric before it, which is a
    problem of the file and never one of the program."""
    cast_on = "Cont in St st, cast on 9 sts at beg of next 2 rows. 88 sts.\n"
    work = f"Cast on 60 sts. Work flat.\nWork 6 rows in stockinette st.\n{cast_on}"
    eyelets = "Work even for 3 cm, ending with a WS row.\nEyelet row (RS): K2, [yo, k2tog] to end.\n"
    found = faults(project(f"{work}{eyelets}Bind off.", sizes="S", size="S"))
    assert "prints 88 stitches; the lines so far come to 78" in found


@pytest.mark.parametrize("row", ["Next row (RS): Knit.", "Next row (RS): K to end."])
@pytest.mark.parametrize(
    ("fabric", "stitches"),
    [("Work 4 rows in stockinette.", "kpkpk"), ("Knit 4 rows.", "kkkkk")],
)
def test_stitches_back_from_hold_go_on_in_their_own_fabric(row: str, fabric: str, stitches: str) -> None:
    """One knit row over held stockinette is no garter stitch: the second side of a neck was worked in it, in silence."""
    work = (
        f"{ROWS}{fabric}\nNext row (RS): K20, place remaining sts on holder, turn.\nWork 5 rows.\nBind off.\n"
        f"With RS facing, rejoin yarn to held sts.\n{row}\nWork 4 rows.\nBind off."
    )
    rounds = plan_of(project(work)).rounds
    back = next(at for at, each in enumerate(rounds) if each.runs[0].stitch == "return")
    assert "".join(each.runs[0].stitch for each in rounds[back + 1 : -1]) == stitches


def test_a_pattern_that_begins_anew_behind_a_change_keeps_its_sides() -> None:
    """The change took the place of row 1; row 1 on the wrong side then made reverse stockinette between the edges.

    By hand: behind a right-side row comes row 2, purl between six knit stitches, and so every wrong-side row.
    """
    plan = plan_of(
        project(
            "Cast on 60 sts. Work flat.\nRow 1 (RS): Knit.\nRow 2: K6, p to last 6 sts, k6.\nRep rows 1-2 5 times.\n"
            "Dec 6 sts evenly across next row.\nWork in pattern for 5 rows.\nBind off."
        )
    )
    rows = [f"{each.side} {each.instruction}" for each in plan.rounds[-6:-1]]
    assert rows == ["WS k6, p42, k6", "RS knit", "WS k6, p42, k6", "RS knit", "WS k6, p42, k6"]


TWO = """\
title: Reed sock
sizes: one
yarn:
  MC: {{name: oat}}
gauge:
  plain: {{needle: 4 mm, stitches: 20, rounds: 28}}
sections:
  - name: leg
    work: |
      Cast on 40 sts.
      Join in the round.
      {leg}
  - name: foot
    work: |
      {foot}
      Bind off.
"""


@pytest.mark.parametrize(
    ("leg", "foot", "row", "told"),
    [
        ("Knit 3 rounds.", "Work even for 4 rounds.", "knit", ""),
        ("Knit 3 rounds.\n      Dec rnd: K2tog, k to end.", "Work even for 4 rounds.", "knit", ""),
        ("*K2, p2; rep from * to end. Work 4 rounds.", "Work even for 4 rounds.", "*k2, p2; rep from * to end", "leg"),
        (
            "*K2, p2; rep from * to end. Work 4 rounds.\n      Place next 12 sts on hold for thumb, rib to end.\n      Bind off.",
            "Return 12 thumb sts to needles. Join in the round.\n      Work even for 4 rounds.",
            "*k2, p2; rep from * to end",
            "the held stitches",
        ),
    ],
)
def test_a_heading_and_a_holder_leave_the_fabric_as_it_is(leg: str, foot: str, row: str, told: str) -> None:
    """"Even" below a new heading goes on with what is on the needle; held ribbing was gone on with in stockinette."""
    plan = plan_of(TWO.format(leg=leg, foot=foot))
    assert [round_.instruction for round_ in plan.rounds[-5:-1]] == [row] * 4
    goes_on = [warning.text for warning in plan.warnings if "goes on" in warning.text]
    assert goes_on == ([f"the pattern of {told} goes on."] if told else [])


LACE = (
    "Cast on 40 sts. Work flat.\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3: K2, *k2tog, yo; rep from * to last 2 sts, k2.\nRow 4: Knit.\n"
    "Rep rows 1-4 once more.\n"
)


def test_edges_bound_off_in_the_plain_rows_of_lace_go_on_with_those_rows() -> None:
    """Its columns are not known, but its next two rows are knitted and purled whatever stands below."""
    plan = plan_of(project(f"{LACE}Bind off 4 sts at beg of next 2 rows. 32 sts.\nBind off."))
    assert [row.instruction for row in plan.rounds[9:11]] == ["bind off 4, k36", "bind off 4, p32"]


def test_lace_goes_on_beside_what_is_shaped_row_by_row_and_keeps_its_number() -> None:
    """Where its holes fall at the edges no page prints: the stitches are hers, the row that is due and the count are not.

    By hand: 40 - 4 x 4 = 24; the third and the fourth row of the four are lace and purl.
    """
    plan = knit(f"{LACE}Bind off 4 sts at beg of next 4 rows. 24 sts.\nDec 1 st at each end of next row. 22 sts.")
    assert [row.after for row in plan.rounds[-5:]] == [36, 32, 28, 24, 22]
    assert "row 3" in plan.rounds[-3].instruction
    assert any("the stitches are yours, and keep their number" in caution.text for caution in plan.warnings)
    # A row that is not worked in the pattern leaves nobody to tell which row of it comes next.
    other = f"{LACE}Next row (RS): K1, k2tog, k to last 3 sts, ssk, k1.\nWork 3 rows in pattern."
    assert "its stitches are increased and decreased in the pattern" in faults(project(other))
