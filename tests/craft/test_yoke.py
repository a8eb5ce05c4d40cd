"""The percentage system against its published examples."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.yoke import DEPTH_SHARE, UNDERARM_SHARE, joined_width
from tests.percentages import yoke_counts


@pytest.mark.parametrize(
    ("body", "sleeve", "underarm", "neck", "joined"), [(200, 66, 16, 80, 268), (250, 82, 20, 100, 335)]
)
def test_published_key_numbers(body: int, sleeve: int, underarm: int, neck: int, joined: int) -> None:
    """Yoke cheat sheet: at a key number of 200 the joined yoke has 268 stitches; at 250 it is 335 before the sleeve of
    82.5 is made even. A yoke drawn from other sums would fit nobody."""
    counts = yoke_counts(body)
    assert (counts.sleeve, counts.underarm, counts.neck) == (sleeve, underarm, neck)
    assert joined_width(body, sleeve) == pytest.approx(counts.joined)
    assert abs(counts.joined - joined) <= 1
    assert body * UNDERARM_SHARE == underarm


@given(st.floats(60, 600))
def test_a_joined_yoke_is_134_percent(body: float) -> None:
    """1 + 2 x 33 % - 4 x 8 % = 134 % (arithmetic)."""
    assert joined_width(body, 0.33 * body) == pytest.approx(1.34 * body)


def test_a_yoke_is_a_quarter_of_the_body_deep() -> None:
    """Yoke cheat sheet, citing Knitting Without Tears: a body of 40 in has a yoke of 10 in."""
    assert 40 * DEPTH_SHARE == 10
