"""Repeats inside a round. Source: common practice."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

HEAD = "Cast on 23 sts.\nJoin in the round.\n"


@pytest.mark.parametrize(
    ("line", "purls"),
    [
        ("*K5, p2; rep from * as many times as fit, k to end.", 6),
        ("*K5, p2; rep from * 2 times more, k2.", 6),
        ("K2, *p1, k2; rep from * to end.", 7),
    ],
)
def test_a_repeat_is_worked_as_often_as_its_words_say(line: str, purls: int) -> None:
    """By its number, up to its place, or as often as it fits in whole."""
    round_ = plan_of(project(f"{HEAD}{line}\nBind off.")).rounds[1]
    assert sum(run.times for run in round_.runs if run.stitch == "p") == purls


def test_a_repeat_that_does_not_come_out_is_refused() -> None:
    """Without "as many times as fit" what is over has no words."""
    assert faults(project(f"{HEAD}*K5, p2; rep from * to end.\nBind off."))


def test_a_repeat_within_a_repeat_goes_to_each_marker_where_that_hangs() -> None:
    """The stitches up to the first marker were worked again for the others, in silence, wherever these hang.

    By hand: markers behind 6, 10 and 18 of 23 stitches; each decrease takes the two before its marker.
    """
    line = "*(K to 2 sts before marker, k2tog, sm) once, k1; rep from * 2 times more, k to end."
    rounds = plan_of(project(f"{HEAD}K6, pm, k4, pm, k8, pm, k5.\n{line}\nBind off.")).rounds
    assert rounds[2].shaping == (4, 8, 16)


def test_stitches_held_in_a_repeat_are_counted_each_time() -> None:
    """Half of the sleeves would else be gone when they come back."""
    text = f"{HEAD}K3. \n*K4, hold 6, cast on 2; rep from * once more.\nBind off.".replace(
        "Cast on 23", "Cast on 20"
    ).replace("K3. \n", "")
    assert sum(plan_of(project(text)).rounds[1].held.values()) == 12


@pytest.mark.parametrize(
    ("line", "held", "left"),
    [
        ("*K5, place next 5 sts on holder; rep from * to end.", 20, 20),
        ("*K5, place next 5 sts on holder; rep from * once more, k to end.", 10, 30),
        ("(K3, place next 4 sts on holder) 3 times, k to end.", 12, 28),
        ("*K2, (k3, place next 2 sts on holder) twice; rep from * to last 4 sts, k4.", 12, 28),
    ],
)
def test_what_a_repeat_puts_on_hold_is_held_each_time(line: str, held: int, left: int) -> None:
    """Held once and worked on all the same, the sleeve would be short of its stitches. By hand, of forty."""
    plan = plan_of(project(f"Cast on 40 sts.\nJoin in the round.\n{line}", sizes="S", size="S"))
    assert (sum(plan.rounds[1].held.values()), plan.rounds[1].after) == (held, left)
