from __future__ import annotations

from datetime import datetime, timedelta

from stepper.sitting.clock import now


def test_the_time_carries_its_offset_and_whole_seconds() -> None:
    """A journal taken along on a journey stays in order."""
    before = datetime.now().astimezone().replace(microsecond=0)
    read = datetime.fromisoformat(now())

    assert read.utcoffset() is not None
    assert read.microsecond == 0
    assert before <= read <= before + timedelta(seconds=60)
