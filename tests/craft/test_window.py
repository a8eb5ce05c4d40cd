"""The window that gaps have to stay in, and the sums behind it."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.window import Task, divisors, find_multipliers


@given(st.integers(-20, 20), st.integers(-100, 100), st.integers(-100, 100), st.integers(0, 30))
def test_what_fits_is_what_a_trial_of_each_number_finds(step: int, low: int, high: int, most: int) -> None:
    """Both signs of a step, and a step of nothing."""
    assert list(find_multipliers(step, low, high, most)) == [
        n for n in range(1, most + 1) if low <= n * step <= high
    ]


@given(st.integers(1, 400))
def test_divisors_are_those_that_leave_nothing(number: int) -> None:
    """A repeat of everything needs one of them."""
    assert divisors(number) == tuple(n for n in range(2, number + 1) if number % n == 0)


@given(st.integers(2, 9), st.integers(-30, 30), st.integers(-60, 60), st.integers(-5, 5))
def test_an_equal_share_stays_in_the_window_each_time(times: int, each: int, at: int, inside: int) -> None:
    """A place inside a repeat is in the window every time it is worked, not only the first."""
    share = Task(times, times, at, -50, 50).shared(times, each * times)
    always = all(-50 <= at + turn * each + inside <= 50 for turn in range(times))
    assert (share.low <= at + inside <= share.high) == always


def test_at_the_very_bounds_an_equal_share_is_still_in_the_window() -> None:
    """Every place about either bound, worked two or three times forth, back and on the spot: tried by hand each time."""
    for times, each in ((2, 7), (3, 7), (2, -7), (3, -7), (3, 0)):
        share = Task(times, times, 0, -50, 50).shared(times, each * times)
        for at in (*range(-66, -30), *range(30, 67)):
            assert (share.low <= at <= share.high) == all(-50 <= at + turn * each <= 50 for turn in range(times))


def test_what_is_left_is_what_was_not_brought() -> None:
    """Seven larger and five smaller gaps, less three and two."""
    assert Task(7, 5, 0, -9, 9).less(3, 2, 4, True) == Task(4, 3, 4, -9, 9, True)


def test_every_small_case_is_what_a_trial_finds() -> None:
    """All bounds, steps and numbers about nought, where a sum is most easily one off."""
    for step in range(-3, 4):
        for low in range(-5, 6):
            for high in range(-5, 6):
                for most in range(5):
                    found = list(find_multipliers(step, low, high, most))
                    assert found == [n for n in range(1, most + 1) if low <= n * step <= high], (step, low, high, most)
