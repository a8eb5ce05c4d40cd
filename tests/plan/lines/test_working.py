"""Each kind of instruction changes the needles as a knitter would."""

from __future__ import annotations

import pytest

from stepper.plan.model import flatten
from tests.plan.lines.again.test_another_part import knit, refused
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project
from tests.tables import each_row


def test_bobbles_are_left_out_where_the_knitter_does() -> None:
    """`no bobbles` knits the stitch plain."""
    text = project("Cast on 8 sts.\n*K3, mb; rep from * to end.\nBind off.")
    altered = text.replace("sections:", "alterations: [no bobbles]\nsections:")
    assert "mb" in plan_of(text).rounds[1].instruction
    assert "mb" not in plan_of(altered).rounds[1].instruction


def test_a_needle_of_her_own_takes_the_place_of_the_printed_one() -> None:
    """`needle 3.75 mm instead of 4 mm`."""
    text = project("Cast on 8 sts.\nChange to 4 mm needles.\nKnit 1 round.\nBind off.")
    altered = text.replace("sections:", "alterations: [needle 3.75 mm instead of 4 mm]\nsections:")
    assert plan_of(altered).rounds[1].needle_mm == 3.75
    assert "instead of" in " ".join(plan_of(altered).rounds[1].remarks)


def test_held_stitches_come_back_under_their_name() -> None:
    """What was put on hold is what returns."""
    plan = plan_of(
        project(
            "Cast on 20 sts.\nHold 6 sts for thumb, k to end.\nBind off.\nReturn thumb to needles.\n"
            "Pick up and knit 2 sts, k to end. 8 sts.\nBind off."
        )
    )
    assert [r.after for r in plan.rounds] == [20, 14, 0, 6, 8, 0]
    assert plan.rounds[1].held == {"thumb": 6}
    assert plan.rounds[3].held == {}


def test_a_yarn_is_said_when_it_changes_and_when_it_is_broken() -> None:
    """By the name it has in the file, also after the last round."""
    plan = plan_of(project("Cast on 8 sts.\nWith A, knit 1 round.\nBind off.\nBreak A."))
    assert plan.rounds[1].remarks == ("with moss",)
    assert plan.rounds[1].runs[0].yarn == "A"
    assert plan.rounds[-1].remarks == ("break moss when it is done",)


def test_a_definition_is_worked_only_where_it_is_called() -> None:
    """Two readings: "work dec round … 2 times" is two in all, "rep dec round … 2 times" comes on top."""
    define = "Cast on 20 sts.\nDec round: K1, k2tog, k to last 3 sts, ssk, k1.\n"
    work = plan_of(project(define + "Work dec round every 3rd round 2 times.\nBind off."))
    again = plan_of(project(define + "Rep dec round every 3rd round 2 times.\nBind off."))
    assert [r.after for r in work.rounds] == [20, 20, 20, 18, 18, 18, 16, 0]
    assert [r.after for r in again.rounds] == [20, 18, 18, 18, 16, 16, 16, 14, 0]


def test_a_repeat_whose_times_may_count_the_first_takes_the_reading_that_fits() -> None:
    """ "Rep rnds 1 and 2 3 times" is on top of the once, unless only the other reading meets the printed count."""
    work = "Cast on 20 sts. Join in the round.\nRnd 1: K1, ssk, k to end.\nRnd 2: Knit.\nRep rnds 1 and 2 3 times. {} sts.\nBind off."
    assert plan_of(project(work.format(16))).warnings == ()
    told = plan_of(project(work.format(17))).warnings
    assert "3 times on top of the once" in told[0].text
    assert "read as 3 times in all, which alone fits" in told[0].text


def test_an_even_change_is_worked_in_the_stitch_that_the_line_names() -> None:
    """ "Purl 1 row, increasing evenly" is no knitted row, on whichever side it falls."""
    lines = "Cast on 20 sts. Work flat.\n{} 1 row, increasing evenly to 25 sts.\n{} 1 row, decreasing evenly to 20 sts.\nBind off."
    for first, second in (("Purl", "Knit"), ("Knit", "Purl")):
        rows = plan_of(project(lines.format(first, second))).rounds[1:3]
        for row, word in zip(rows, (first, second), strict=True):
            assert {run.stitch[0] for run in row.runs if run.stitch != "m1p"} <= (
                {"p"} if word == "Purl" else {"k", "m"}
            )
    assert [row.after for row in rows] == [25, 20]


def test_bound_off_at_the_beginning_of_rows_is_rows() -> None:
    """In the round there is no beginning of the next row: it is turned after each."""
    for words in ("at beg of next 2 rows", "for underarm at beg of next 2 rows", "at begin of the next 2 rows",
                  "for armholes at the beginning of each of the next 2 rows"):  # fmt: skip
        plan = plan_of(project(f"Cast on 20 sts.\nBind off 4 sts {words}. 12 sts.\nBind off."))
        assert [(row.side, row.after) for row in plan.rounds[1:3]] == [("RS", 16), ("WS", 12)]
        assert [run.stitch for run in plan.rounds[2].runs] == ["bo", "p"]


def test_a_piece_made_twice_in_a_note_is_refused() -> None:
    """ "Note: make 2" would be said, and the second sleeve never knitted."""
    told = faults(project("Cast on 8 sts.\nKnit 2 rows.\nBind off.\nNote: Make 2."))
    assert "made more than once" in told


def test_what_is_said_of_two_things_that_are_no_pieces_stays_a_note() -> None:
    """ "Make two buttonholes" is advice; the hint for a piece made twice is a note that is read."""
    notes = ("Make two buttonholes in the left band.", "Make 2 pompoms.", "The second sleeve is the same.")
    for note in notes:
        assert plan_of(project(f"Cast on 8 sts.\nBind off.\nNote: {note}")).rounds[-1].remarks


def test_a_missing_cast_on_is_told_once_and_the_rest_compared_from_the_next_count() -> None:
    """Thirteen faults of one cause send her to thirteen lines; the count printed next says how many there are."""
    told = faults(
        project(
            "Rnd 1: Knit. 40 sts\nRnd 2: *K2, k2tog; rep from * to end. 30 sts\nKnit 2 rounds.\nBind off."
        )
    )
    assert told.count("error:") == 1
    assert "Cast on first" in told
    wrong = faults(project("Rnd 1: Knit. 40 sts\nRnd 2: *K2, k2tog; rep from * to end. 31 sts\nBind off."))
    assert "the pattern prints 31 stitches; the lines so far come to 30" in wrong


def test_a_repeat_of_two_readings_that_no_count_bears_out_is_told() -> None:
    """ "Rep rnds 1 and 2 3 times" may count the once; the count printed after it, however late, settles it."""
    work = "Cast on 20 sts. Join in the round.\nRnd 1: K1, ssk, k to end.\nRnd 2: Knit.\nRep rnds 1 and 2 3 times.\n{}Bind off."
    assert plan_of(project(work.format("Knit 4 rounds. 16 sts.\n"))).warnings == ()
    told = plan_of(project(work.format("Knit 4 rounds.\n"))).warnings
    assert "read as 3 times on top of the once; no count printed after it" in told[0].text
    plain = work.replace("K1, ssk, k to end", "Purl")
    assert plan_of(project(plain.format(""))).warnings == ()


@pytest.mark.parametrize(
    ("line", "fits"),
    [
        # On top of the once just worked, or that once included: the printed count tells which.
        ("Rep rnds 1-2 3 times.", {16, 17}),
        ("Rep last 2 rnds 3 times.", {16, 17}),
        # "More" and "in all" leave nothing open, nor does a line that works rounds rather than repeats them.
        ("Rep rnds 1-2 3 times more.", {16}),
        ("Rep rnds 1-2 3 more times.", {16}),
        ("Rep rnds 1-2 3 times in all.", {17}),
        ("Work rnds 1-2 3 times in all.", {17}),
        ("Work rnds 1-2 3 times.", {17}),
        ("Rep rnds 1-2 once more.", {18}),
        ("Rep rnds 1-2 once.", {18}),
    ],
)
def test_how_often_a_repeat_is_worked_is_settled_by_its_words_or_by_the_count(
    line: str, fits: set[int]
) -> None:
    """Two stitches too few at the underarm come of "3 times" that were four. Source of the two readings: common practice."""
    start = "Cast on 20 sts. Join in the round.\nRnd 1: K2tog, k to end.\nRnd 2: Knit.\n"
    for count in range(15, 20):
        text = project(f"{start}{line} {count} sts.\nBind off.", sizes="S", size="S")
        if count in fits:
            assert plan_of(text).rounds[-2].after == count
        else:
            assert f"prints {count} stitches" in faults(text)


def test_work_that_was_joined_and_is_worked_flat_again_begins_its_fabric_anew() -> None:
    """A hem in garter stitch, a body in the round, a back in rows: the rows between its shapings are stockinette, not garter."""
    hem = "Cast on 20 sts.\nWork flat.\nWork 4 rows in garter stitch.\n"
    body = "Join in the round.\nKnit 4 rounds.\nWork flat.\n"
    shaped = "Dec row (RS): K1, k2tog, k to end.\nRep dec row every 4th row once more.\nBind off."
    back = plan_of(project(f"{hem}{body}{shaped}")).rounds
    assert [(each.side, each.instruction) for each in back[-5:-2]] == [
        ("WS", "purl"),
        ("RS", "knit"),
        ("WS", "purl"),
    ]
    garter = plan_of(project(f"{hem}{shaped}")).rounds
    assert [(each.side, each.instruction) for each in garter[-5:-2]] == [
        ("WS", "knit"),
        ("RS", "knit"),
        ("WS", "knit"),
    ]


def test_a_piece_is_not_cast_on_beside_one_that_is_on_the_needles() -> None:
    """ "Cast on 40 sts. Join in the round" of a sleeve, behind a body that is neither bound off nor held, is no part of its round."""
    told = faults(
        project(
            "Cast on 60 sts.\nJoin in the round.\nKnit 2 rounds.\nCast on 40 sts. Join in the round.\nKnit 1 round.\nBind off."
        )
    )
    assert "60 others are still on the needles" in told


def test_a_section_does_not_cast_on_beside_what_the_one_before_left() -> None:
    """A front that nobody bound off is no part of the sleeve behind it; within a section stitches are added so (common practice)."""
    front, sleeve = (
        ("== front", "CO 33 sts. Work flat.", "Knit 2 rows."),
        ("CO 35 sts.", "Knit 2 rows.", "Bind off."),
    )
    told = refused(*front, "== sleeve", *sleeve)
    assert "cast on where a section begins; on the needles are still others, 33 of them" in told
    bound_off = knit(*front, "Bind off.", "== sleeve", *sleeve)
    assert [each.after for each in bound_off.rounds][-4:] == [35, 35, 35, 0]
    added = knit(*front, "CO 35 sts.", "Knit 2 rows.", "Bind off.")
    assert [each.after for each in added.rounds][-2] == 68


@pytest.mark.parametrize(
    ("every", "markers"), [(0, None), (1, (1, 2, 3, 4)), (2, (2, 4)), (4, (4,)), (5, None)]
)
def test_markers_stand_between_stitches_of_the_round(every: int, markers: tuple[int, ...] | None) -> None:
    """Every 2 of 5 are two markers besides the beginning (counted); every 5, or none at all, are no markers to place."""
    work = project(
        f"Cast on 5 sts. Join in the round.\nPlace a marker every {every} sts.\nKnit 1 rnd.\nBind off."
    )
    if markers is None:
        assert f"a marker every {every} stitches does not go on 5 stitches" in faults(work)
    else:
        assert plan_of(work).rounds[1].markers == markers


def test_nothing_is_cast_on_with_no_stitch() -> None:
    """A size with 0 stitches got a round of none."""
    assert "no stitch is cast on here" in faults(project("Cast on 0 sts.\nJoin in the round.\nBind off."))


def test_every_row_may_say_that_it_turns() -> None:
    """A row worked to its end is followed by a turn, said or not; in the round the word would change how it is knitted."""
    rows = "Row 1 (RS): *Sl 1, k1; rep from * to end. Turn.\nRow 2: Purl to end. Turn.\n"
    plain = rows.replace(" Turn.", "")
    start = "Cast on 12 sts.\nWork flat.\n"
    assert (
        plan_of(project(f"{start}{rows}Bind off.")).rounds
        == plan_of(project(f"{start}{plain}Bind off.")).rounds
    )
    assert "turns before a stitch" in faults(
        project("Cast on 12 sts.\nJoin in the round.\nKnit to end. Turn.\nBind off.")
    )


def test_underarms_are_grafted_only_where_they_are_on_the_needles() -> None:
    """ "Graft the underarm sts" takes no neck off the needles."""
    start = "Cast on 40 sts. Join in the round.\nKnit 2 rounds.\nK10, place next 8 sts on a holder for underarm, k to end.\n"
    assert "the line grafts underarm stitches" in faults(project(f"{start}Graft the underarm sts."))
    plan = plan_of(project(f"{start}Bind off.\nReturn underarm sts to needle.\nGraft the underarm sts."))
    assert (plan.rounds[-1].before, plan.rounds[-1].after) == (8, 0)
    finishing = "  - name: finishing\n    work: |\n      Graft the underarms.\n"
    plan = plan_of(project(f"{start}Bind off.") + finishing)
    assert plan.rounds[-1].remarks == ("when it is done: graft what is left open",)
    assert "no stitches on the needles" in faults(project("Cast on 40 sts.\nKnit 2 rows.\nBind off.") + finishing)


@each_row(
    "lines, rows",
    [
        ("Next rnd: K to end. Work 5 rnds.", 6),
        ("Next rnd: K to end. Work 1 full rnd.", 2),
        ("Rnd 1: *K1, p1; rep from * to end. Work 5 rnds.", 6),
        ("Dec rnd: K2tog, k to end. Work 5 rnds even.", 6),
        ("Next rnd: *K1, p1; rep from * to end. Work 5 rnds in all.", 5),
        ("*K1, p1; rep from * to end. Work 5 rnds.", 5),
    ],
)
def test_rounds_counted_behind_a_row_come_on_top_of_it(lines: str, rows: int) -> None:
    """Unless the row has no head and only says how they are worked, or the line says "in all"."""
    assert len(plan_of(project(f"Cast on 20 sts. Join.\n{lines}")).rounds) == rows + 1


def test_rows_counted_behind_a_knit_row_of_stockinette_go_on_in_it() -> None:
    """That row is one of the fabric below, and no garter stitch begins with it."""
    rounds = plan_of(project("Cast on 20 sts. Work flat.\nWork 4 rows in st st.\nNext row: K to end. Work 3 rows.")).rounds
    assert [run.stitch for round_ in rounds[5:] for run in flatten(round_.phrase)] == ["k", "p", "k", "p"]


def test_the_middle_stitches_where_yarn_is_rejoined_come_next() -> None:
    """The shoulder before them is bound off: what is on the needle has another middle."""
    begun = "Next row: Bind off 10 sts, k until there are 2 sts on the right needle after the bind-off, and turn; bind off these 2.\n"
    start = f"Cast on 76 sts. Work flat.\nWork 4 rows in st st.\n{begun}"
    last = plan_of(project(f"{start}Rejoin the yarn and bind off the middle 32 sts, knit to the end.")).rounds[-1]
    assert [(run.stitch, run.times) for run in flatten(last.phrase)] == [("bo", 32), ("k", 32)]


def test_that_a_stretch_may_end_sooner_is_said_where_it_begins() -> None:
    """Behind its last round it would be too late."""
    lines = "Cast on 8 sts. Join.\nKnit 1 round.\nWork k1, p1 rib for 6 rounds.\nNote: If you like, stop at 3 rounds.\nBind off."
    plan = plan_of(project(lines))
    assert [at for at, each in enumerate(plan.rounds) if "If you like, stop at 3 rounds" in " ".join(each.remarks)] == [2]
