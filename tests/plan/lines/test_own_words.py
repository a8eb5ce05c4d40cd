"""Rows in the page's own words: what is taken of them, and what is not known behind them.

Source: the counts are those of the lines, added up by hand; that a row of unknown stitches tells nothing of the
fabric is plain sense.
"""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.plan.compile import compile_plan
from stepper.plan.model import Run
from stepper.project.reader import read_project
from tests.invariants import broken_invariants
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project
from tests.tables import each_row


def told_of(text: str) -> str:
    """Return what the plan of a file tells."""
    return " ".join(caution.text for caution in plan_of(text).warnings)


RING = "Cast on 80 sts.\nJoin in the round.\nKnit 2 rounds.\n"
ROWS = "Cast on 20 sts.\nWork flat.\nKnit 2 rows.\n"
OWN = "Own words: lift every third st over its neighbour, catching the loop."
GROWS = f"{OWN} 84 sts."


def test_a_row_is_said_in_its_words_and_leaves_what_is_printed() -> None:
    """She knits it herself; the program says it, counts it, and goes on with the printed number."""
    plan = plan_of(project(RING + GROWS + "\nKnit 1 round."))
    own = plan.rounds[3]
    assert own.words == own.instruction == "lift every third st over its neighbour, catching the loop"
    assert (own.before, own.after, own.phrase) == (80, 84, (Run("own 80 to 84", 1, "MC"),))
    assert own.shaping == ()  # where its stitches come from is not known
    assert own.checkpoint is not None
    assert (own.checkpoint.expect, own.checkpoint.reason) == (84, "as printed for this row")
    assert plan.rounds[4].before == 84


@pytest.mark.parametrize(
    ("line", "told"),
    [
        (GROWS, "the stitches of this row are yours: 80 before, 84 after as printed."),
        (f"{OWN} 80 sts.", "the stitches of this row are yours: 80 before and after as printed."),
        (OWN, "the stitches of this row are yours: 80 before and after, as no count is printed behind them."),
        (f"{OWN} 5 sts dec'd.", "the stitches of this row are yours: 80 before, 75 after as printed, and 5 fewer each time."),
        (
            "Own words, 3 rounds: work the motif of page 3.",
            "the stitches of these rows are yours: 80 before and after, as no count is printed behind them.",
        ),
    ],
)
def test_what_is_taken_of_its_stitches_is_told(line: str, told: str) -> None:
    """A plan with such a row is sound only as far as she vouches for it, so it says where."""
    assert told in told_of(project(RING + line))


def test_every_size_has_its_own_count_and_words() -> None:
    """A list of as many numbers as there are sizes is one for each; any other list is only words."""
    text = project(
        "Cast on 80 (90) sts.\nJoin in the round.\nOwn words: twist 4 (5) cords over 2 (3, 4) sts. 84 (95) sts.",
        sizes="S (M)",
        size="S",
    )
    small, medium = plan_of(text), plan_of(text.replace("size: S", "size: M"))
    assert (small.rounds[1].words, small.rounds[1].after) == ("twist 4 cords over 2 (3, 4) sts", 84)
    assert (medium.rounds[1].words, medium.rounds[1].after) == ("twist 5 cords over 2 (3, 4) sts", 95)


def test_rows_in_own_words_turn_like_any_other() -> None:
    """Four rows by the same words leave her on the side on which she began."""
    plan = plan_of(project(ROWS + "Own words, 4 rows: as the drawing shows.\nRow 1 (RS): Knit."))
    assert [each.side for each in plan.rounds[3:]] == ["RS", "WS", "RS", "WS", "RS"]
    assert all(each.flat for each in plan.rounds[3:])


def test_they_are_measured_like_the_fabric_in_hand() -> None:
    """By hand: 28 rounds make 10 cm, so 14 reach 5 cm, and 6 of them are hers."""
    work = "Cast on 80 sts.\nJoin in the round.\nOwn words, 6 rounds: as the drawing shows.\nKnit until piece measures 5 cm."
    assert len(plan_of(project(work)).rounds) == 1 + 14


@pytest.mark.parametrize(
    ("line", "rows"),
    [
        ("Own words, until piece measures 5 cm: as the drawing shows.", 14),
        ("Own words, until piece measures 5 cm, ending with a RS row: as the drawing shows.", 15),
        ("Own words, until piece measures 5 cm, ending with a WS row: as the drawing shows.", 14),
        ("Own words, for 5 cm: as the drawing shows.", 2 + 14),
        ("Own words, until 20 rows have been worked in all: as the drawing shows.", 20),
    ],
)
def test_they_are_worked_to_a_length(line: str, rows: int) -> None:
    """By hand: 28 rows make 10 cm and 14 make 5; behind 2 knitted rows a right-side row comes, so the
    fourteenth row is of the wrong side, and of 13 and 15 as near the later one is taken."""
    plan = plan_of(project(ROWS + line))
    assert len(plan.rounds) == 1 + rows
    assert {each.words for each in plan.rounds[3:]} == {"as the drawing shows"}
    assert {(each.before, each.after) for each in plan.rounds[1:]} == {(20, 20)}


def test_each_size_has_its_own_length() -> None:
    """By hand: 14 rounds to 5 cm, 28 to 10 cm."""
    line = "Own words, until piece measures 5 (10) cm: as the drawing shows."
    text = project("Cast on 80 (90) sts.\nJoin in the round.\n" + line, sizes="S (M)", size="S")
    assert len(plan_of(text).rounds) == 1 + 14
    assert len(plan_of(text.replace("size: S", "size: M")).rounds) == 1 + 28


@given(
    before=st.integers(0, 12),
    millimetres=st.integers(10, 300),
    words=st.sampled_from(("until piece measures {} cm", "for {} cm", "until piece measures {} cm from cast-on")),
    end=st.sampled_from(("", ", ending with a WS row", ", ending with a RS row")),
)
@settings(max_examples=40, deadline=None)
def test_a_length_comes_to_as_many_rows_as_in_any_other_line(
    before: int, millimetres: int, words: str, end: str
) -> None:
    """The words say what she knits, not how long it gets: plain rows to that length are as many."""
    lasts = words.format(millimetres / 10) + end
    work = f"Cast on 20 sts.\nWork flat.\n{f'Knit {before} rows.' if before else ''}\n{{}}\nBind off."
    own = read_project(project(work.format(f"Own words, {lasts}: as drawn."))).project
    plain = read_project(project(work.format(f"Work in stockinette {lasts}."))).project
    assert own is not None
    assert plain is not None
    mine, theirs = compile_plan(own).plan, compile_plan(plain).plan
    assert (mine is None) == (theirs is None)
    if mine is not None and theirs is not None:
        assert [(each.side, each.before, each.after) for each in mine.rounds] == [
            (each.side, each.before, each.after) for each in theirs.rounds
        ]


@pytest.mark.parametrize(
    ("repeat", "rounds"),
    [
        ("Rep last 2 rounds 3 times.", 6),
        ("Rep rnds 1-2 3 times.", 6),
        ("Rep these 2 rounds 3 times.", 6),
        ("Work in pattern for 3 rounds.", 3),
        ("Rnds 3-6: Rep rnds 1-2.", 4),
    ],
)
def test_rows_that_keep_their_count_come_again_in_their_order(repeat: str, rounds: int) -> None:
    """The same words said again are the same work; nothing of their stitches has to be known for it."""
    pair = "Rnd 1: Own words: twist every st.\nRnd 2: Purl.\n"
    plan = plan_of(project(RING + pair + repeat))
    said = [each.instruction for each in plan.rounds[3:]]
    assert said == (["twist every st", "purl"] * 5)[: 2 + rounds]


FERN = "Fern pattern (any number of sts):\nRnd 1: Own words: twist every st.\nRnd 2: Purl.\nRnd 3: Knit.\n"


def test_a_pattern_of_the_page_may_have_such_rows() -> None:
    """It is worked by its name, and goes on where it stands."""
    plan = plan_of(project(RING + FERN + "Work 4 rounds in fern pattern.\nWork 2 rounds in fern pattern."))
    assert [each.instruction for each in plan.rounds[3:]] == [
        "twist every st", "purl", "knit", "twist every st", "purl", "knit",
    ]  # fmt: skip


@each_row(
    ("work", "why"),
    [
        (RING + OWN + "\nWork 4 rounds in pattern.", "line 21 is in your own words"),
        (RING + OWN + "\nWork even for 2 cm.", "line 21 is in your own words"),
        (RING + OWN + "\nWork in pattern until 70 sts rem.", "line 21 is in your own words"),
        (RING + OWN + "\nK1, work in pattern to end.", "line 21 is in your own words"),
        (RING + OWN + "\nKnit 1 round, dec 4 sts evenly.\nWork 2 rounds even.", "line 21 is in your own words"),
        (RING + "*K2, p2; rep from * to end.\n" + OWN + "\nK1, rib to end.", "in your own words"),
        (ROWS + OWN + "\nNext row (RS): Work in pattern.", "in your own words"),
        (RING + GROWS + "\nRep last round 2 times.", "its count is for 80 stitches, and 84 are on the needles"),
        (
            RING + "Dec round: " + OWN + " 76 sts.\nKnit 1 round.\nRep dec round every 2nd round 3 times.",
            "line 21 is in your own words, and not worked at intervals",
        ),
        (RING + "Twist round: " + OWN + "\nWork twist round.", "was worked where it is written"),
        (
            RING + "K10, pm, k20, pm, k to end.\n" + GROWS + "\nK to marker, p to end.",
            "nobody can tell where the markers are: the row in line 22 is in your own words",
        ),
        (
            RING + "K10, pm, k to end.\nOwn words: twist to marker, plain to end.\nK to marker, p to end.",
            "nobody can tell where the markers are: the row in line 22 is in your own words",
        ),
        (RING + "Own words, 3 rounds: twist. 84 sts.", "several rows in your own words go from 80 stitches to 84"),
        (RING + "Rnds 1-3: Own words: twist. 84 sts.", "several rows in your own words go from 80 stitches to 84"),
        (RING + "Next 3 rounds: Own words: twist. 84 sts.", "several rows in your own words go from 80"),
        (RING + "Own words, cast on 8 sts: at the side.", "80 stitches are on the needles, and the words may"),
        (RING + "Own words, hold 80 sts for back: slip them.", "80 stitches go on hold, and 80 are on the"),
        ("Own words, cast on 38 sts: begin. 40 sts.", "the pattern prints 40 stitches"),
        ("Own words: begin as pictured. 38 sts.", "there are no stitches on the needles"),
        (RING + "Own words, for 5 cm: twist. 84 sts.", "several rows in your own words go from 80"),
        (ROWS + "Own words, for 5 cm, ending with a knit row: twist.", "cannot be told"),
        (RING + "Own words, 4 rounds: twist.\nWork in pattern for 2 cm.", "line 21 is in your own words"),
        (RING + "Own words: twist. 80 sts dec'd.", "no stitches would be left after this row"),
        ("Own words: twist. 84 sts.", "there are no stitches on the needles"),
        (ROWS + "Own words, 2 rounds: twist.", "the work goes in rows here, and the line speaks of rounds"),
        (RING + "Own words: twist to end, turn.", "the work goes in rounds here, and the row is turned"),
        (ROWS + "K10, turn.\n" + OWN, "short rows are open here"),
        (ROWS + "K8, bind off 4 sts, k to end.\n" + OWN, "works across the gap"),
    ],
)
def test_what_asks_for_unknown_stitches_is_refused(work: str, why: str) -> None:
    """A guess would be a wrong plan called sound; the row that stands in the way is named."""
    assert why in faults(project(work))


def test_a_chart_is_not_continued_behind_such_a_row() -> None:
    """The row may have been one of the chart's; named by its number the round is sure again."""
    work = RING + "Work rnd 1 of chart peak.\n" + OWN + "\n"
    told = "which round of peak comes next cannot be told: the row in line 22 is in your own words"
    assert told in faults(project(work + "Work next rnd of chart peak."))
    assert told in faults(project(work + "K4, chart peak over 8 sts, k to end."))
    plan = plan_of(project(work + "Work rnd 2 of chart peak.\nWork next rnd of chart peak."))
    assert [each.chart_round for each in plan.rounds[3:]] == [1, None, 2, 1]


def test_markers_stay_where_nothing_speaks_of_them_and_none_is_changed() -> None:
    """That is an assumption, and told."""
    work = project(RING + "K10, pm, k to end.\n" + OWN + "\nK to marker, sm, p to end.")
    assert "The markers are taken to stay where they are." in told_of(work)
    assert [(run.stitch, run.times) for run in plan_of(work).rounds[-1].runs][:1] == [("k", 10)]


def test_a_piece_begins_and_ends_in_words() -> None:
    """What is cast on and bound off is known; how, the words say with it."""
    work = "Own words, cast on 38 sts: begin softly at the chin.\nWork flat.\nKnit 2 rows.\nOwn words, bind off all sts: as pictured."
    first, *_, last = plan_of(project(work)).rounds
    assert (first.before, first.after, first.instruction) == (0, 38, "cast on 38")
    assert first.remarks == ("begin softly at the chin",)
    assert (last.before, last.after, last.instruction, last.remarks) == (38, 0, "bind off", ("as pictured",))


@pytest.mark.parametrize(("words", "code"), [("cast on with two strands", "co"), ("pick up along the rim", "pu")])
def test_a_count_behind_words_that_begin_a_piece_is_what_comes(words: str, code: str) -> None:
    """With nothing on the needles there is nothing else that it could mean."""
    (round_,) = plan_of(project(f"Own words: {words}. 38 sts.")).rounds
    assert (round_.before, round_.after, round_.runs[0].stitch, round_.remarks) == (0, 38, code, (words,))


def test_stitches_wait_for_the_line_that_takes_them_back() -> None:
    """By hand: 80 less 12 is 68, and 2 more over the gap 70 as printed; 12 come back under their name."""
    work = (
        RING + "Own words, hold 12 sts for thumb: slip 12 to a thread, cast on 2 over it, twist on. 70 sts.\n"
        "Knit 2 rounds.\nBind off.\nPlace thumb on needle.\nKnit 1 round.\nBind off."
    )
    plan = plan_of(project(work))
    row = plan.rounds[3]
    assert (row.before, row.after, row.held) == (80, 70, {"thumb": 12})
    assert row.words == "slip 12 to a thread, cast on 2 over it, twist on"
    assert row.checkpoint is not None
    assert row.checkpoint.reason == "after the divide"
    assert [each.after for each in plan.rounds[-3:]] == [12, 12, 0]
    assert "80 before, 12 on hold, 70 after as printed" in told_of(project(work))
    assert broken_invariants(plan) == ()


def test_two_parts_go_on_hold_in_one_row() -> None:
    """By hand: 80 less 14 and 12 is 54, as no count is printed."""
    line = "Own words, hold 14 sts for left sleeve, hold 12 sts for right sleeve: leave the sleeves on waste yarn."
    row = plan_of(project(RING + line)).rounds[-1]
    assert (row.after, row.held) == (54, {"left sleeve": 14, "right sleeve": 12})


@given(start=st.integers(8, 90), held=st.integers(1, 7), printed=st.one_of(st.none(), st.integers(1, 99)))
@settings(max_examples=40, deadline=None)
def test_what_is_left_is_what_was_there_less_what_waits(start: int, held: int, printed: int | None) -> None:
    """Unless the page prints how many there are: then that many, as of any row in own words."""
    count = "" if printed is None else f" {printed} sts."
    line = f"Own words, hold {held} sts for thumb: slip them to a thread, twist on.{count}"
    project_ = read_project(project(f"Cast on {start} sts.\nJoin in the round.\n{line}")).project
    assert project_ is not None
    plan = compile_plan(project_).plan
    assert plan is not None
    row = plan.rounds[-1]
    assert (row.before, row.after) == (start, start - held if printed is None else printed)
    assert row.held == {"thumb": held}
    assert broken_invariants(plan) == ()


def test_markers_taken_out_no_longer_matter() -> None:
    """What was unknown of them is gone with them."""
    work = RING + "K10, pm, k to end.\n" + GROWS + "\nRemove all markers.\nK20, pm, k to end.\nK to marker, p to end."
    assert plan_of(project(work)).rounds[-1].runs[0].times == 20


def test_a_part_is_worked_again_only_on_the_same_stitches() -> None:
    """As for back: 20 to 24 again; on other stitches the printed count would hide that."""
    back = "Cast on 20 sts.\nWork flat.\nKnit 2 rows. ***\nOwn words: twist. 24 sts. **\nBind off."
    again = "\n  - name: front\n    work: |\n      Cast on {n} sts.\n      Work flat.\n      Knit 2 rows.\n      Work as for body from *** to **.\n      Bind off.\n"
    assert plan_of(project(back) + again.format(n=20)).rounds[-1].before == 24
    assert "its count is for 20 stitches, and 22 are on" in faults(project(back) + again.format(n=22))


def test_no_mirror_image_is_made_of_such_a_row() -> None:
    """What leans in it is not known."""
    front = "\n  - name: front\n    work: |\n      As body, reversing shaping.\n"
    back = "Cast on 20 sts.\nWork flat.\nKnit 2 rows.\n" + OWN + "\nBind off."
    assert "in your own words, which have no mirror image" in faults(project(back) + front)


TWO_SIZES = "Cast on 80 (90) sts.\nJoin in the round.\nKnit 2 rounds.\n{line}\nKnit 1 round.\nBind off."


def test_another_size_may_begin_there_only_with_its_own_stitches() -> None:
    """A count printed for ninety stitches would silently swallow the ten that are missing."""
    grows = TWO_SIZES.format(line="Twist round: Own words: twist. 84 (95) sts.")
    switched = "knit:\n  size: S\n  then:\n    - {from: Twist round, size: M}"
    text = project(grows, sizes="S (M)", size="S").replace("knit: {size: S}", switched)
    assert "its count is for 90 stitches, and 80 are on the needles here" in faults(text)


@given(
    cast_on=st.integers(4, 60),
    steps=st.lists(
        st.tuples(st.integers(2, 90), st.integers(1, 4), st.booleans(), st.booleans()), min_size=1, max_size=6
    ),
    flat=st.booleans(),
)
@settings(max_examples=60, deadline=None)
def test_counts_before_and_after_are_always_as_printed(
    cast_on: int, steps: list[tuple[int, int, bool, bool]], flat: bool
) -> None:
    """Whatever stands between: a row in own words is worked on what is there and leaves what it prints."""
    lines, wanted, count = [f"Cast on {cast_on} sts.", "Work flat." if flat else "Join in the round."], [], cast_on
    for number, rows, printed, plain in steps:
        if rows > 1:
            lines.append(f"Own words, {rows} {'rows' if flat else 'rounds'}: as drawn.")
            wanted += [(count, count)] * rows
        else:
            lines.append(f"Own words: as drawn.{f' {number} sts.' if printed else ''}")
            wanted.append((count, number if printed else count))
            count = wanted[-1][1]
        if plain:
            lines.append("Knit 1 row." if flat else "Knit 1 round.")
    project_ = read_project(project("\n".join(lines))).project
    assert project_ is not None
    plan = compile_plan(project_).plan
    assert plan is not None
    assert broken_invariants(plan) == ()
    own = [each for each in plan.rounds if each.words]
    assert [(each.before, each.after) for each in own] == wanted
    assert plan.rounds[-1].after == count


def test_what_a_row_gains_each_time_is_gained_each_time() -> None:
    """By hand: 80 and four times 4 more is 96; the count that the page prints at the end is checked."""
    work = RING + "Own words: lift twice. 4 sts inc'd.\nKnit 1 round.\nRep last 2 rounds 3 times. {n} sts."
    plan = plan_of(project(work.format(n=96)))
    assert [each.after for each in plan.rounds if each.words] == [84, 88, 92, 96]
    assert "the pattern prints 95 stitches; the lines so far come to 96" in faults(project(work.format(n=95)))


def test_where_no_marker_hangs_none_is_told_of() -> None:
    """ "M1" in the words is no marker, and nothing is lost that was not there."""
    row = "Own words: *k3, m1; rep from * around. 106 sts."
    assert "markers hang" not in told_of(project(RING + row))
    assert "Where markers hang is not known" in told_of(project(RING + "K10, pm, k to end.\n" + row))


@each_row(
    ("line", "runs", "held"),
    [
        ("work 25 sts, bind off 10 sts, work 25 sts", [("own", 25), ("bo", 10), ("own", 25)], {}),
        ("work 25 sts to 24, turn, hold rem 35 sts for hood", [("own 25 to 24", 1), ("hold", 35)], {"hood": 35}),
        ("bind off 8 sts, work 52 sts", [("bo", 8), ("own", 52)], {}),
        ("work 10 sts, hold 15 sts for thumb, cast on 3 sts, work 35 sts", [("own", 10), ("hold", 15), ("co", 3), ("own", 35)], {"thumb": 15}),
        ("work 40 sts, wrap and turn", [("own", 40), ("w&t", 1), ("rest", 20)], {}),
    ],
)
def test_a_row_is_told_stretch_by_stretch(line: str, runs: list[tuple[str, int]], held: dict[str, int]) -> None:
    """What is worked by the words, bound off, cast on and put on hold, in the order of the row."""
    row = plan_of(project(f"Cast on 60 sts. Work flat.\nKnit 3 rows.\nOwn words, {line}: work as the neck is drawn.")).rounds[4]
    assert [(run.stitch, run.times) for run in row.runs] == runs
    assert row.held == held
    assert row.remarks == ("work as the neck is drawn",)


def test_what_was_worked_first_may_wait_and_both_come_back() -> None:
    """By hand: 60 less 10 is 50, of which the 25 worked last go on; later the others are joined to 20 of a sleeve."""
    work = (
        "Cast on 20 sts. Join in the round.\nKnit 1 round.\nPlace all sts on hold for sleeve.\n"
        "Cast on 60 sts. Work flat.\nKnit 1 row.\n"
        "Own words, work 25 sts, hold these 25 sts for left side, bind off 10 sts, work 25 sts: as drawn.\nBind off.\n"
        "With RS facing, place left side sts back on needles.\nOwn words, work 25 sts to 23, k across sleeve sts: join them."
    )
    plan = plan_of(project(work))
    assert [each.after for each in plan.rounds[-5:]] == [50, 25, 0, 25, 43]
    assert plan.rounds[-1].held == {}
    assert broken_invariants(plan) == ()


@each_row(
    ("work", "why"),
    [
        ("Own words, work 25 sts, bind off 10 sts, work 24 sts: as drawn.", "works 59 of the 60 stitches"),
        ("Own words, work 25 sts, hold 36 sts: as drawn.", "36"),
        ("Own words, work 25 sts, turn, hold 34 sts: as drawn.", "34 stitches go on hold at the turn"),
        # Behind it nothing is known of the fabric, of markers, of what was in the middle.
        ("Own words, work 25 sts, turn, hold 35 sts: as drawn.\\nWork 2 rows in pattern.", "in your own words"),
        ("K10, pm, k to end.\\nOwn words, work 50 sts, turn, hold 10 sts: as drawn.\\nK to marker, p to end.", "no marker is left"),
        ("Own words, work 25 sts, hold these 25 sts, bind off 10 sts, work 25 sts: as drawn.\\nBind off.\\nPlace held sts back on needles.\\nWork 2 rows in pattern.", "pattern"),
        ("Own words, work 25 sts, bind off 10 sts, work 25 sts: as drawn.\\nKnit 1 row.", "works across the gap"),
    ],
)
def test_a_row_told_so_is_refused_where_it_does_not_come_out(work: str, why: str) -> None:
    """Every stitch that it meets stands in it, and what it leaves is known by number alone."""
    assert why in faults(project("Cast on 60 sts. Work flat.\nKnit 3 rows.\n" + work.replace("\\n", "\n")))
