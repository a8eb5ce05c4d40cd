from __future__ import annotations

import pytest

from stepper.session.fault.symptoms import ODDS, Cause, list_symptoms, work_items
from tests.plans import plan

ROUNDS = plan(("yoke", ["co80", "(k8 m1)x10", "k90", "(k4 k2tog)x15", "(k3 yo k2tog)x15"]))


def told(index: int, cause: Cause) -> list[tuple[int, int, int, bool]]:
    """Return what is foretold of a cause: difference, changes, left over, loop."""
    found = [each for each in list_symptoms(ROUNDS, index) if each.cause is cause]
    return [(each.difference, each.changes, each.left, each.loop) for each in found]


def test_what_each_kind_leads_to() -> None:
    """Worked out by hand for eighty stitches with ten increases, and for ninety with fifteen decreases."""
    assert told(1, Cause.LEFT_OUT) == [(-1, -1, 0, False)]
    assert told(3, Cause.LEFT_OUT) == [(1, -1, 0, False)]
    # An increase too many, or two stitches worked together by mistake.
    assert told(1, Cause.ONE_TOO_MANY) == [(1, 1, 0, False), (-1, 1, 0, False)]
    assert told(1, Cause.DROPPED) == [(-1, 0, 0, True)]
    assert told(4, Cause.YARN_OVER) == [(-1, -1, 0, True)]
    assert told(1, Cause.REPEAT_LEFT_OUT) == [(-1, -1, 8, False)]
    # Eight stitches of the eleventh repeat are not there: it stops before its first increase.
    assert told(1, Cause.REPEAT_TWICE) == [(0, 0, -8, False)]
    # The plain round in the place of the ten increases.
    assert (-10, -10, -10, False) in told(1, Cause.OTHER_ROUND)


def test_where_a_fault_can_lie() -> None:
    """An increase left out lies at an increase, a dropped stitch anywhere, a repeat among the repeats."""
    of = {each.cause: each for each in list_symptoms(ROUNDS, 1)}
    assert of[Cause.LEFT_OUT].inside(0, 0.5) == pytest.approx(0.5)
    assert of[Cause.LEFT_OUT].inside(0, 8 / 90) == 0
    assert of[Cause.LEFT_OUT].inside(8 / 90, 9 / 90) == pytest.approx(0.1)
    assert of[Cause.DROPPED].inside(0, 8 / 90) == pytest.approx(0.1)
    assert of[Cause.LEFT_OUT].inside(81 / 90, 82 / 90, turned=True) == pytest.approx(0.1)
    for each in of.values():
        assert each.inside(0, 1) == pytest.approx(1)


def test_every_kind_has_its_odds() -> None:
    """A kind without odds could never be named."""
    assert set(ODDS) == set(Cause)
    assert all(each.odds > 0 for index in range(1, 5) for each in list_symptoms(ROUNDS, index))


def test_what_runs_out_is_left() -> None:
    """Over seventy stitches only eight of the ten repeats fit, and the stitches after them are plain."""
    assert work_items(ROUNDS.rounds[1].phrase, 70) == (8, 8)
