"""Numbers in figures, against decimal arithmetic."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import ROUND_HALF_EVEN, Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.figures import format_number, list_words


@pytest.mark.parametrize(
    ("value", "places", "written"),
    [
        (22, 2, "22"),
        (21.5, 2, "21.5"),
        (21.504, 2, "21.5"),
        (100, 0, "100"),
        (100, 1, "100"),
        (0.04, 1, "0"),
        (-0.04, 1, "0"),
        (-0.05, 2, "-0.05"),
        (1234567.25, 2, "1234567.25"),
    ],
)
def test_noughts_after_the_point_are_left_out_and_no_others(value: float, places: int, written: str) -> None:
    """A gauge of 22.00 looks measured to the hundredth, and 100 must not become 1."""
    assert format_number(value, places) == written


@given(st.floats(-1e9, 1e9), st.integers(0, 4))
def test_what_is_written_is_the_number_rounded(value: float, places: int) -> None:
    """Decimal arithmetic rounds the exact value the same way, and nothing written can be left out."""
    written = format_number(value, places)
    assert Decimal(written) == Decimal(value).quantize(Decimal(1).scaleb(-places), ROUND_HALF_EVEN)
    assert "." not in written or written[-1] not in "0."
    assert written != "-0"


@pytest.mark.parametrize(
    ("words", "listed"), [(["a"], "a"), (["a", "b"], "a and b"), (iter(["a", "b", "c"]), "a, b and c")]
)
def test_words_are_listed_as_in_a_sentence(words: Iterable[str], listed: str) -> None:
    """No comma before the "and" (British usage, common practice)."""
    assert list_words(words) == listed


def test_two_places_are_enough_for_a_knitter_unless_more_are_asked_for() -> None:
    """Hundredths of a gram or a centimetre are finer than any scale or tape at home."""
    assert [format_number(each) for each in (1.005, 1.234, 1.236, 22)] == ["1", "1.23", "1.24", "22"]
