from __future__ import annotations

import math

from hypothesis import given
from hypothesis import strategies as st

from stepper.ears.room_levels import RoomLevels, level_at_share

LEVELS = st.lists(st.one_of(st.integers(-60, -50).map(float), st.floats(-100, 0)), max_size=60)


@given(LEVELS, st.integers(1, 20), st.integers(0, 60), st.integers(0, 60), LEVELS)
def test_the_room_is_as_loud_as_its_levels_put_in_order_anew(
    levels: list[float], most: int, begin: int, end: int, later: list[float]
) -> None:
    """However many were let go of, left out or alike: the gate opens for what it always did."""
    room = RoomLevels(most)
    kept: list[tuple[int, float]] = []
    for when, level_db in enumerate(levels):
        room.take(level_db, when)
        kept = [*kept, (when, level_db)][-most:]
        assert room.at_share(0.85) == level_at_share([level for _, level in kept], 0.85)
    room.leave_out(begin, end)
    kept = [each for each in kept if not begin <= each[0] <= end]
    for level_db in later:
        room.take(level_db, 0)
        kept = [*kept, (0, level_db)][-most:]
    assert room.at_share(0.85) == level_at_share([level for _, level in kept], 0.85)


def test_of_ten_levels_seven_do_not_exceed_the_one_at_seven_tenths() -> None:
    """Counted from the softest, worked out by hand; where nothing was heard yet everything is louder."""
    assert level_at_share([-10.0 * each for each in range(1, 11)], 0.7) == -40.0
    assert level_at_share([], 0.7) == RoomLevels(3).at_share(0.7) == -math.inf
