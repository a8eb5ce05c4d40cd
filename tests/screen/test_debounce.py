from __future__ import annotations

from itertools import accumulate

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.screen.debounce import BOUNCE_S, Presses, PressVerdict, judge_press
from tests.tables import each_row


def _judged(times: list[float], key: str = "space") -> list[PressVerdict]:
    presses, verdicts = Presses(), []
    for at_s in times:
        verdict, presses = judge_press(presses, key, at_s)
        verdicts.append(verdict)
    return verdicts


@given(st.lists(st.floats(0.001, BOUNCE_S - 0.001), max_size=50))
def test_a_burst_counts_once(gaps: list[float]) -> None:
    """However long a pedal is held, as long as it repeats faster than four times a second."""
    verdicts = _judged(list(accumulate([1.0, *gaps])))

    assert verdicts[0] is PressVerdict.COUNTS
    assert set(verdicts[1:]) <= {PressVerdict.IGNORED}


@given(st.lists(st.floats(BOUNCE_S + 0.001, 60), min_size=1, max_size=20))
def test_presses_a_quarter_of_a_second_apart_all_count(gaps: list[float]) -> None:
    """A quick knitter is not slowed down."""
    assert set(_judged(list(accumulate([1.0, *gaps])))) == {PressVerdict.COUNTS}


def test_another_key_counts_at_once() -> None:
    """Undo right after a step is meant."""
    verdict, presses = judge_press(Presses(), "space", 1.0)
    assert verdict is PressVerdict.COUNTS
    assert judge_press(presses, "u", 1.01)[0] is PressVerdict.COUNTS


@each_row("wait", [0.26, 0.4, 0.5, 0.66, 1.0])
@each_row("every", [0.02, 0.033, 0.04, 0.1])
def test_a_key_held_down_counts_once_in_the_end(wait: float, every: float) -> None:
    """The first repeat of a keyboard looks like a press; the pace of the next ones gives it away."""
    verdicts = _judged([1.0, 1.0 + wait, *(1.0 + wait + every * n for n in range(1, 40))])

    assert verdicts[:2] == [PressVerdict.COUNTS, PressVerdict.COUNTS]
    assert verdicts.count(PressVerdict.TAKE_BACK) == 1
    assert verdicts.count(PressVerdict.COUNTS) - verdicts.count(PressVerdict.TAKE_BACK) == 1


@pytest.mark.parametrize("bounces", [[0.004], [0.004, 0.003], [0.2], [0.03]])
def test_a_second_press_that_bounces_is_not_taken_back(bounces: list[float]) -> None:
    """Two presses half a second apart, the second with a bouncing contact, are two steps."""
    verdicts = _judged(list(accumulate([1.0, 0.5, *bounces])))

    assert verdicts.count(PressVerdict.COUNTS) == 2
    assert PressVerdict.TAKE_BACK not in verdicts
