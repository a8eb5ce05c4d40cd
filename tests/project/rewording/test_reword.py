"""A printed line in the grammar's words, every letter with its place in print."""

from __future__ import annotations

import pytest

from stepper.plan.model import Plan
from stepper.project.rewording.reword import reword
from stepper.project.rewording.reworded import as_printed
from tests.plan.test_compile import compiled, plan_of
from tests.project.samples import project
from tests.tables import each_row


def said(work: str) -> list[str]:
    """Return the instructions of the rounds that lines come to, without the cast-on."""
    return [round_.instruction for round_ in plan_of(project(work)).rounds[1:]]


def test_a_line_that_needs_nothing_is_left_alone() -> None:
    """Every letter has its own place."""
    line = reword("K1, k2tog, k to end.")
    assert line == as_printed("K1, k2tog, k to end.")
    assert line.place(4, 5) == (4, 5)


def test_letters_keep_their_places_when_words_change_around_them() -> None:
    """A problem stands under the words as they are printed."""
    line = reword("Inc 10 sts evenly, using the backward loop method, over 3 tiny rows.")
    offset = line.text.index("tiny")
    first, length = line.place(offset, 4)
    assert "Inc 10 sts evenly, using the backward loop method, over 3 tiny rows."[first : first + length] == "tiny"
    assert line.kept == ("using the backward loop method",)


def test_words_taken_out_are_said_without_what_joined_them_to_the_line() -> None:
    """"Pm and." is half a sentence, and the knitter waits for the rest of it."""
    kept = reword("CO 92 sts. Place marker for beg of rnd and join for working in the rnd, being careful not to twist sts.").kept
    assert kept
    assert not [each for each in kept if each.lower().startswith("and ") or each.lower().endswith("and")]


def test_a_name_in_the_head_becomes_the_label() -> None:
    """"Row 5 (dec row):" is worked again as the dec row."""
    assert (reword("Next row (RS) (dec): K1, ssk, k to end.").name, reword("Row 5 (RS): Knit.").name) == ("dec row", "")
    rows = said(
        "Cast on 20 sts. Work flat.\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3 (dec row): K1, ssk, k to end.\n"
        "Rep dec row every 4th row 2 times. 17 sts.\nBind off."
    )
    assert [number for number, row in enumerate(rows, start=1) if "ssk" in row] == [3, 7, 11]


def test_a_problem_in_other_words_stands_under_the_printed_ones() -> None:
    """The words put in have no place of their own in the file."""
    problem = compiled(project("Cast on 20 sts. Work flat.\nPurl two together, p40, p to end.\nBind off.")).problems[0]
    assert (problem.column, problem.length) == (26, 3)


@each_row(
    ("one", "other"),
    [
        ("Knit to last 2 sts, k2 tog.", "K18, k2tog."),
        ("K across all sts.", "K20."),
        ("*K2, p2* around.", "*K2, p2; rep from * to end."),
        ("(K2, p2) x5.", "(K2, p2) 5 times."),
        ("K10, sl 1, k2tog, psso, k to end.", "K10, sk2p, k7."),
        ("K10, sl1-k1-psso, k to end.", "K10, skp, k8."),
        ("Inc 1, k to last st, inc 1.", "Inc 1, k18, inc 1."),
        ("Inc 1 st at each end of next row.", "K1, inc 1, k16, inc 1, k1."),
        ("K 2 rounds.", "Knit 2 rounds."),
        ("Knit 5 cm.", "Knit for 5 cm."),
        ("K2, p2 rib for 5 cm.", "Work in k2, p2 rib for 5 cm."),
        ("K10, place marker A, k to end.", "K10, pm for a, k10."),
        ("Inc 10 sts evenly around.", "Increase 10 sts evenly."),
        ("(K1, yo, k1) in next st, k to end.", "(k1, yo, k1) into the same stitch, k19."),
        ("*K1 A, k1 B; rep from * to end.", "*K1 in A, k1 in B; rep from * to end."),
        ("K12, sl 2 sts to cn and hold in front, k2, k2 from cn, k4.", "K12, 2/2 LC, k4."),
        ("K13, sl 1 st to cn and hold in back, k2, k1 from cn, k4.", "K13, 2/1 RC, k4."),
    ],
)
def test_two_wordings_of_one_thing_come_to_the_same_stitches(one: str, other: str) -> None:
    """What is printed in other words is the same round. Source: common practice; cables as the CYC writes them."""
    head = "Cast on 20 sts. Join in the round.\n"
    with_b = project("").replace("  A:", "  B: birch\n  A:")
    text = with_b[: with_b.rindex("\n", 0, len(with_b) - 1) + 1]
    plans: list[Plan] = [plan_of(text + "".join(f"      {row}\n" for row in f"{head}{line}\nBind off.".splitlines())) for line in (one, other)]
    assert [round_.runs for round_ in plans[0].rounds] == [round_.runs for round_ in plans[1].rounds]


def test_words_that_change_no_stitch_are_said_with_the_line() -> None:
    """How and where are what the knitter needs to hear; they are not dropped."""
    plan = plan_of(
        project(
            "Cast on 20 sts using the long-tail method. Work flat.\nK to end, picking up wraps as you come to them.\n"
            "With RS facing, p10, using the backward loop method, cast on 4 sts, p10.\nBind off.\nWeave in ends."
        )
    )
    assert [round_.remarks for round_ in plan.rounds[:3]] == [
        ("cast on using the long-tail method",),
        ("work in rows", "picking up wraps as you come to them"),
        ("using the backward loop method", "with RS facing"),
    ]
    assert "Weave in ends" in " ".join(plan.rounds[-1].remarks)


@pytest.mark.parametrize("lead", ["Do not break yarn; ", "Don't cut yarn, ", "Do not break yarn. ", "Weave in ends, then "])
def test_what_stands_behind_a_remark_is_knitted(lead: str) -> None:
    """"Do not break yarn; k10, k2tog, …" swallowed the round."""
    line = f"{lead}k10, k2tog, k to end. 19 sts."
    assert said(f"Cast on 20 sts. Join in the round.\n{line}\nBind off.") == ["k10, k2tog, k8", "bind off"]


@pytest.mark.parametrize(
    "line",
    [
        "Place marker and join to begin working in the round.",
        "Join to begin working in the round.",
        "PM and join for working in the rnd.",
        "Join to work in rnds, being careful not to twist.",
    ],
)
def test_joining_takes_up_no_yarn(line: str) -> None:
    """"Join to begin" is the join in the round, and "to" no yarn."""
    assert said(f"Cast on 20 sts.\n{line}\nKnit 2 rounds.\nBind off.") == ["knit", "knit", "bind off"]


def test_a_yarn_named_behind_the_cast_on_is_taken_up() -> None:
    """"Cast on 80 sts using A" is in A, and so is what follows."""
    plan = plan_of(project("Cast on 20 sts using A.\nKnit 1 round.\nBind off."))
    assert {run.yarn for round_ in plan.rounds for run in round_.runs} == {"A"}
