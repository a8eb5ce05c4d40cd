"""Stripes, and lines in the stripe sequence of a page: where it goes on, and where it ends. Source: common practice."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.corpus_judge import text_of, worked
from tests.project.samples import project

HEAD = "Cast on 20 sts.\nJoin in the round.\nKnit 1 round.\n"


def yarns(line: str) -> list[str]:
    """Return the yarn of every round of a line."""
    return [round_.runs[0].yarn for round_ in plan_of(project(f"{HEAD}{line}\nBind off.")).rounds[2:-1]]


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        ("Work 6 rounds in stripes of 2 rnds A, 1 rnd MC.", ["A", "A", "MC", "A", "A", "MC"]),
        ("Knit 4 rounds in stripes of 1 rnd A and 2 rnds MC.", ["A", "MC", "MC", "A"]),
        ("Work in stripes of 2 rnds A, 2 rnds MC for 4 rounds.", ["A", "A", "MC", "MC"]),
    ],
)
def test_each_stripe_has_its_rounds(line: str, expected: list[str]) -> None:
    """One yarn after the other, begun anew when all were worked."""
    assert yarns(line) == expected


def test_the_fabric_goes_on_under_the_stripes() -> None:
    """A rib stays one, whatever its colour."""
    rib = "Cast on 20 sts.\nJoin in the round.\n*K2, p2; rep from * to end. Work for 2 rounds.\n"
    plan = plan_of(project(f"{rib}Work 2 rounds in stripes of 1 rnd A, 1 rnd MC.\nBind off."))
    assert [run.stitch for run in plan.rounds[3].runs][:4] == ["k", "p", "k", "p"]


def test_a_yarn_that_is_not_there_is_told() -> None:
    """A stripe in no yarn cannot be knitted."""
    assert 'no yarn "C"' in faults(project(f"{HEAD}Work 6 rounds in stripes of 2 rnds C, 1 rnd MC.\nBind off."))


def test_a_stripe_without_end_is_told() -> None:
    """A number with a slip of the finger in it ends in a sentence."""
    assert "is no stripe" in faults(project(f"{HEAD}Work 6 rounds in stripes of {'4' * 25} rnds A, 1 rnd MC.\nBind off."))


# --- sequences of the page ----------------------------------------------------------------------------

SEQUENCE = "Stripe sequence: 2 rnds A, 1 rnd B."


def knitted(*lines: str) -> tuple[list[str], list[str]]:
    """Work lines; give the yarn of every round that is worked, and what is told or refused."""
    text, _ = text_of(["CO 20 sts. Join in the round.", SEQUENCE, *lines], 1, "cm")
    plans, problems = worked(text, 1)
    if not plans:
        return [], [problem.message for problem in problems]
    (plan,) = plans
    yarns = [
        "+".join(sorted({run.yarn for run in one.runs if run.yarn})) for one in plan.rounds if one.before
    ]
    return yarns, [caution.text for caution in plan.warnings]


def test_the_stripes_go_on_through_lines_that_do_not_name_them() -> None:
    """Told once, because a page may mean that they are over."""
    yarns, told = knitted(
        "Knit 1 round in stripe sequence.", "Knit 1 round.", "Purl 2 rounds.", "Inc 2 sts evenly."
    )
    assert yarns == ["A", "A", "B", "A", "A"]
    assert sum("the stripes go on here" in words for words in told) == 1


def test_a_yarn_ends_them_and_a_line_that_continues_takes_them_up() -> None:
    """With the round that is next; told, because some begin anew."""
    yarns, told = knitted("Knit 1 round in stripe sequence.", "With MC, knit 1 round.", "Knit 1 round.",
                          "Continue in stripe sequence for 3 rounds.")  # fmt: skip
    assert yarns == ["A", "MC", "MC", "A", "B", "A"]
    assert any("goes on where it was left, with its round 2 of 3" in words for words in told)


def test_a_line_that_does_not_continue_begins_anew_behind_a_yarn() -> None:
    """ "Work in stripe sequence" says nothing of going on."""
    yarns, _ = knitted(
        "Knit 1 round in stripe sequence.", "With MC, knit 1 round.", "Knit 3 rounds in stripe sequence."
    )
    assert yarns == ["A", "MC", "A", "A", "B"]


def test_each_section_begins_its_own() -> None:
    """A sleeve is striped from its cuff on."""
    yarns, told = knitted("Knit 1 round in stripe sequence.", "Bind off.", "== sleeve",
                          "CO 10 sts. Join in the round.", "Knit 1 round.", "Continue in stripe sequence for 3 rounds.")  # fmt: skip
    assert yarns == ["A", "A", "MC", "A", "A", "B"]
    assert any("it begins here" in words for words in told)


def test_it_is_bound_off_in_the_yarn_of_the_last_stripe() -> None:
    """Source: common practice; told where the next stripe is another yarn."""
    yarns, told = knitted("Knit 2 rounds in stripe sequence.", "Bind off.")
    assert yarns == ["A", "A", "A"]
    assert any("that of the last stripe, rust" in words for words in told)
    assert not any(
        "last stripe" in words for words in knitted("Knit 1 round in stripe sequence.", "Bind off.")[1]
    )


def test_rows_in_another_yarn_are_worked_again_in_the_stripes() -> None:
    """The line that repeats them says in which yarns."""
    yarns, _ = knitted("Rnd 1 (CC): Knit.", "Rnd 2: Purl.", "Rep rnds 1-2 in stripe sequence once more.")
    assert yarns == ["CC", "CC", "A", "A"]


@pytest.mark.parametrize(
    ("lines", "why"),
    [
        (("Knit 1 round in stripe sequence.", "Chart wave, 1 time."), "other yarns than the stripe sequence"),
        (("Knit 1 round in stripe sequence.", "K10, turn.", "P10, turn."), "whether a short row is a row"),
        (
            ("Knit 1 round.", "Work stripe sequence once.", "Knit 1 round."),
            "worked as often as its line says",
        ),
        (("With CC, knit 2 rounds in stripe sequence.",), "names a yarn and a stripe sequence"),
        (
            ("Beginning with CC, knit 1 round in stripe sequence.",),
            "no stripe of the stripe sequence is in CC",
        ),
    ],
)
def test_what_nobody_can_tell_is_refused(lines: tuple[str, ...], why: str) -> None:
    """A yarn that is guessed is seen when the piece is done."""
    yarns, told = knitted(*lines)
    assert yarns == []
    assert any(why in words for words in told), told
