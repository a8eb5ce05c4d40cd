"""Shapings side by side, alone and beside other rounds. Source: common practice ("at the same time")."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

BOTH = (
    "Cast on 40 sts.\nWork flat.\n"
    "Armhole dec row (RS): K1, ssk, k to end.\nNeck dec row (RS): K to last 3 sts, k2tog, k1.\n"
)


ROUND = "Cast on 40 sts. Join in the round.\nDec rnd: K1, k2tog, k to end.\n"


def shaped(work: str) -> tuple[list[int], int]:
    """Return the rounds of a text that change the count, from 1 behind the cast-on, and how many there are."""
    rounds = plan_of(project(f"{work}\nBind off.")).rounds[1:-1]
    return [each.index for each in rounds if each.before != each.after], len(rounds)


def test_two_shapings_run_side_by_side_and_share_a_row_where_they_meet() -> None:
    """Armhole every 2nd row six times, neck every 4th row three times: nine stitches in all, at their ends.

    Source: common practice ("at the same time").
    """
    plan = plan_of(
        project(
            BOTH + "Work armhole dec row every 2nd row 6 times, at the same time work neck dec row every 4th row "
            "3 times. 31 sts.\nBind off."
        )
    )
    shaped = [round_ for round_ in plan.rounds[1:-1] if round_.shaping]
    assert {round_.side for round_ in shaped} == {"RS"}
    assert [round_.instruction for round_ in shaped if len(round_.shaping) == 2] == [
        "k1, ssk, k33, k2tog, k1",
        "k1, ssk, k30, k2tog, k1",
        "k1, ssk, k27, k2tog, k1",
    ]
    assert len(shaped) == 6


def test_two_shapings_of_the_same_end_are_a_fault() -> None:
    """Both cannot take the first stitches of one row."""
    text = BOTH.replace("K to last 3 sts, k2tog, k1", "K2, ssk, k to end")
    assert "both shapings change the same end" in faults(
        project(
            text + "Work armhole dec row every 2nd row 6 times, at the same time work neck dec row every 4th row "
            "3 times.\nBind off."
        )
    )


@pytest.mark.parametrize(
    ("line", "at", "rounds"),
    [
        ("Knit 14 rounds, at the same time rep dec rnd every 4th rnd 3 times. 36 sts.", [1, 5, 9, 13], 15),
        # 28 rounds are 10 cm: 5 cm are 14 rounds in all, of which one is worked.
        ("Work until piece measures 5 cm, at the same time rep dec rnd every 4th rnd 3 times.", [1, 5, 9, 13], 14),
        ("Work for 5 cm, at the same time rep dec rnd every 4th rnd 3 times.", [1, 5, 9, 13], 15),
        ("Knit 14 rounds, at the same time rep dec rnd every 4th rnd.", [1, 5, 9, 13], 15),
        ("Knit 3 rounds. Knit 12 rounds, at the same time rep dec rnd every 6th rnd twice.", [1, 7, 13], 16),
    ],
)
def test_the_rounds_beside_a_shaping_say_how_long_it_all_lasts(line: str, at: list[int], rounds: int) -> None:
    """The shaping falls within the rounds of the line and adds none; what is left is worked even."""
    assert shaped(ROUND + line) == (at, rounds)


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Knit 8 rounds, at the same time rep dec rnd every 4th rnd 3 times.", "takes 12 rounds, and 8 are"),
        ("Work until piece measures 4 cm, at the same time rep dec rnd every 4th rnd 3 times.", "takes 12 rounds"),
        ("Work until piece measures 9 cm, at the same time rep dec rnd every 4th rnd.", "how often it is shaped"),
        ("Purl 12 rounds, at the same time rep dec rnd every 4th rnd 3 times.", "beside a shaping"),
        ("Rep dec rnd every 4th rnd twice, at the same time, when 20 sts rem, rep dec rnd every rnd twice.", "never leave 20"),
        ("Rep dec rnd every 4th rnd twice, at the same time, when piece measures 9 cm, change to A.", "the yarn changes"),
        ("Knit 12 rounds, at the same time, when piece measures 9 cm, change to A.", "the yarn changes"),
        ("Rep dec rnd every 2 cm twice, at the same time rep dec rnd every 4th rnd twice.", "rows between them"),
    ],
)  # fmt: skip
def test_what_does_not_fit_beside_each_other_is_told(line: str, told: str) -> None:
    """Neither is worked in silence at the cost of the other."""
    assert told in faults(project(f"{ROUND}{line}\nBind off."))


def test_a_pattern_is_not_lost_beside_a_shaping_written_plain() -> None:
    """A rib goes on beside rounds that go on in it, and is not knitted over by those that do not."""
    rib = "Cast on 40 sts. Join in the round.\n*K2, p2; rep from * to end. Work for 4 rounds.\n"
    line = "Work 4 rounds in pattern, at the same time work dec rnd every 2nd rnd twice.\nBind off."
    assert "goes on beside a shaped round" in faults(project(f"{rib}Dec rnd: K1, k2tog, k to end.\n{line}"))
    rounds = plan_of(project(f"{rib}Dec rnd: K1, k2tog, work in pattern to end.\n{line}")).rounds[-5:-1]
    assert [each.instruction for each in rounds] == [
        "*k2, p2; rep from * to end",
        "k1, k2tog, p1, *k2, p2; rep from * to end",
        "k2, p1, *k2, p2; rep from * to end",
        "k1, k2tog, *k2, p2; rep from * to end",
    ]


def test_stripes_go_on_through_the_shaped_rounds() -> None:
    """The stripe says the yarn of a round, whether it shapes or not."""
    line = "Knit 8 rounds in stripes of 2 rnds A, 2 rnds MC and at the same time rep dec rnd every 4th rnd once."
    rounds = plan_of(project(f"{ROUND}{line}\nBind off.")).rounds[2:-1]
    assert [each.runs[0].yarn for each in rounds] == ["A", "A", "MC", "MC"] * 2
    assert [each.after for each in rounds] == [39] * 3 + [38] * 5


def test_the_yarn_changes_at_a_length_beside_a_shaping() -> None:
    """28 rounds are 10 cm: at 2.5 cm seven are worked, and the eighth is the first in the other yarn."""
    line = "Rep dec rnd every 4th rnd 3 times, at the same time, when piece measures 2.5 cm, change to A."
    rounds = plan_of(project(f"{ROUND}{line}\nBind off.")).rounds[1:-1]
    assert [each.runs[0].yarn for each in rounds] == ["MC"] * 7 + ["A"] * 6


def test_a_shaping_begins_at_the_stitches_it_is_told_for() -> None:
    """From 38 stitches on the neck is shaped too, on the right-side rows from the next one."""
    text = BOTH + (
        "Work armhole dec row every RS row 4 times, at the same time, when 38 sts rem, work neck dec row every RS "
        "row 2 times. 34 sts.\nBind off."
    )
    counts = [each.after for each in plan_of(project(text)).rounds[1:-1]]
    assert counts == [39, 39, 38, 38, 36, 36, 34]


@pytest.mark.parametrize(
    ("line", "rows", "shapes"),
    [
        # 28 rows are 10 cm. 5 cm are 14 rows, of which the last is a wrong-side row as they begin with a right-side one.
        ("Work in stockinette for 5 cm, ending with a WS row, at the same time rep armhole dec row every 4th row 3 times.", 14, 3),
        ("Work in stripes of 2 rows A, 2 rows MC for 5 cm, at the same time rep armhole dec row every 4th row 3 times.", 14, 3),
    ],
)
def test_a_length_beside_a_shaping_may_be_striped_or_end_on_a_side(line: str, rows: int, shapes: int) -> None:
    """Either says when it is over; only both at once are left to be written otherwise."""
    text = f"Cast on 40 sts.\nWork flat.\nArmhole dec row (RS): K1, ssk, k to end.\nPurl 1 row.\n{line}"
    made = plan_of(project(f"{text}\nBind off.")).rounds[3:-1]
    assert len(made) == rows
    shaped = [each for each in made if each.before != each.after]
    assert [each.side for each in shaped] == ["RS"] * shapes
    assert [one.index - other.index for one, other in zip(shaped[1:], shaped, strict=False)] == [4] * (shapes - 1)


def test_stripes_to_a_length_that_ends_on_a_side_are_not_read_beside_a_shaping() -> None:
    """Both would move the end, and nobody can tell which stripe it falls in."""
    line = "Work in stripes of 2 rows A, 2 rows MC for 5 cm, ending with a WS row, at the same time rep armhole dec row every 4th row 3 times."
    text = f"Cast on 40 sts.\nWork flat.\nArmhole dec row (RS): K1, ssk, k to end.\nPurl 1 row.\n{line}"
    assert "beside a shaping, rounds are read" in faults(project(f"{text}\nBind off."))


def test_two_shapings_worked_otherwise_between_their_ends_are_a_fault() -> None:
    """One knits and one purls the stitches between, and one row can do only one of both."""
    text = BOTH.replace("K to last 3 sts, k2tog, k1", "P to last 3 sts, p2tog, p1")
    line = "Work armhole dec row every 2nd row 6 times, at the same time work neck dec row every 4th row 3 times.\nBind off."
    assert "worked otherwise between their ends" in faults(project(text + line))


def test_a_length_of_which_one_round_is_left_is_that_round() -> None:
    """5 cm are 14 rounds at 28 to 10 cm; with 13 worked one is left, and with 14 the piece measures them already."""
    line = "Work until piece measures 5 cm, at the same time rep dec rnd every rnd once."
    start = "Cast on 40 sts. Join in the round.\nDec rnd: K1, k2tog, k to end.\nKnit {} rounds.\n"
    assert shaped(start.format(12) + line) == ([1, 14], 14)
    assert "measures 5 cm already" in faults(project(f"{start.format(13)}{line}\nBind off."))


@pytest.mark.parametrize("often", ["every 3rd row", "every row"])
def test_a_right_side_row_that_also_falls_on_others_is_refused_beside_another(often: str) -> None:
    """Every second of them was moved by a row, in silence, as it is not where it stands alone."""
    line = f"Rep armhole dec row {often} 4 times, at the same time rep neck dec row every 4th row 3 times."
    assert "so often it also falls on others" in faults(project(f"{BOTH}Purl 1 row.\n{line}\nBind off."))
